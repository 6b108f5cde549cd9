// npm run demo: from a fresh copy to a proven pattern in one command.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { setUp } from './setup.mjs';
import { root, runNode } from './tools.mjs';

const example = 'examples/low-tide-errand-bag.pattern.md';

setUp();
if (existsSync(join(root, example))) {
  console.log(`\nChecking ${example}: loopwright check ${example} --rounds\n`);
  const status = runNode(['bin/loopwright.js', 'check', example, '--rounds']);
  console.log(`\nloopwright ended with status ${status}: ${meaningOf(status)}`);
  console.log(whatNext());
  process.exitCode = status;
} else {
  console.error(`The example is not here: ${example}`);
  process.exitCode = 2;
}

function meaningOf(status) {
  if (status === 0) return 'every row was read and worked, and no error was found.';
  if (status === 1) return 'a row was not read or worked, or an error was found.';
  return 'it could not run.';
}

function whatNext() {
  return `
What to try next
  Open ${example} in any editor, change one number, then:
    node bin/loopwright.js check ${example}
  All the examples at once:
    node bin/loopwright.js check examples
  A pattern of your own, from a file or pasted (end with Ctrl-D):
    node bin/loopwright.js check my-pattern.md --rounds
    node bin/loopwright.js check -
  For a script:
    node bin/loopwright.js check ${example} --format json`;
}
