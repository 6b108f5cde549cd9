import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'src/**/*.test.ts', 'cli/**/*.test.ts'],
    // Random tests print seed and path of a failing case; the terminal stays readable otherwise.
    testTimeout: 30_000,
    // Nothing keeps anything between runs, so files may share a process, and modules load once.
    isolate: false,
    // Left to itself, vitest leaves one core free, half of a small machine.
    maxWorkers: '100%',
  },
});
