/** What a command prints while a test runs it; `vi.restoreAllMocks()` ends the listening. */
import { vi } from 'vitest';

export function listened() {
  const out: string[] = [];
  const err: string[] = [];
  vi.spyOn(process.stdout, 'write').mockImplementation((...given: unknown[]) => {
    out.push(String(given[0]));
    const done = given.at(-1);
    if (typeof done === 'function') done();
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err.push(String(text));
    return true;
  });
  return { out, err, said: () => out.join(''), complained: () => err.join('') };
}
