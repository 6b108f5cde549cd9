// npm run bench [-- NAME]: runs each bench/*.ts (or those with NAME in their file name) in a process
// of its own, one after the other, so that none warms up or crowds another.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setUp } from './setup.mjs';
import { root, runNode } from './tools.mjs';

setUp();

const filters = process.argv.slice(2);
const folder = join(root, 'bench');
const files = (existsSync(folder) ? readdirSync(folder) : [])
  .filter((name) => name.endsWith('.ts'))
  .filter((name) => filters.length === 0 || filters.some((filter) => name.includes(filter)))
  .sort();

if (files.length === 0) {
  console.error(
    filters.length > 0 ? `No bench file is named like ${filters.join(', ')}.` : 'No bench files.',
  );
  process.exitCode = 1;
}
for (const name of files) {
  console.log(`\n== bench/${name}`);
  // --expose-gc lets a bench take memory figures from a settled heap.
  const status = runNode(['--expose-gc', '--import', 'tsx', join('bench', name)]);
  if (status === 0) continue;
  console.error(`bench/${name} failed (status ${status}).`);
  process.exitCode = 1;
}
