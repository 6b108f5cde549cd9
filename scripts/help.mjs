// npm run help: every task with one line on what it does. A task without a line is a fault, so that
// the list cannot fall behind package.json.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './tools.mjs';

const tasks = {
  demo: 'install and build what is missing, then prove, measure and draw the example bag',
  test: 'install what is missing; types, lint, generated files, tests (-- NAME: only those tests)',
  check: 'the same as test',
  build: 'install what is missing; compile the engine and the command line into dist/',
  types: 'check the types of everything, tests included',
  lint: 'check layout and lint rules',
  format: 'put layout right, and what lint can mend safely',
  unused: 'list files, exports and packages that nothing uses',
  bench: 'measure speed and memory (-- NAME: only those files)',
  catalogue:
    'make the typed messages and docs/findings/ from the catalogue (-- --check: only compare)',
  help: 'this list',
};

const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const width = Math.max(...Object.keys(scripts).map((name) => name.length));
for (const [name, line] of Object.entries(tasks)) {
  if (scripts[name]) console.log(`npm run ${name.padEnd(width)}  ${line}`);
}
const untold = Object.keys(scripts).filter((name) => !(name in tasks));
const gone = Object.keys(tasks).filter((name) => !(name in scripts));
for (const name of untold) console.error(`scripts/help.mjs has no line for "${name}".`);
for (const name of gone)
  console.error(`scripts/help.mjs explains "${name}", which package.json lacks.`);
process.exitCode = untold.length + gone.length > 0 ? 1 : 0;
