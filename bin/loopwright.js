#!/usr/bin/env node
// Committed as plain JavaScript, because npm links a bin only if its file is there at install time.
import { existsSync } from 'node:fs';

const main = new URL('../dist/cli/main.js', import.meta.url);
if (existsSync(main)) {
  await import(main.href);
} else {
  console.error('loopwright is not built yet. Run: npm run build');
  process.exitCode = 2;
}
