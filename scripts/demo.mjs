// npm run demo: from a fresh copy to a pattern proven, measured and drawn in one command.
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { setUp } from './setup.mjs';
import { root, runNode } from './tools.mjs';

const example = 'examples/low-tide-errand-bag.pattern.md';

const output = 'demo-output';

setUp();
if (existsSync(join(root, example))) {
  mkdirSync(join(root, output), { recursive: true });
  const status = step('Proving', ['check', example, '--rounds']);
  console.log(`\nloopwright ended with status ${status}: ${meaningOf(status)}`);
  // A faulty pattern is still measured and drawn: everything sound in it counts.
  const later = [
    step('Measuring', ['measure', example, '--schematic', `${output}/schematic.svg`]),
    step('Drawing its chart', ['chart', example, '--preview', '-o', output]),
    step('Working out its shape', ['shape', example, '-o', `${output}/piece.png`]),
  ];
  console.log(`\nThe drawings are in ${join(root, output)}`);
  console.log(whatNext());
  process.exitCode = Math.max(status, ...later);
} else {
  console.error(`The example is not here: ${example}`);
  process.exitCode = 2;
}

function step(title, args) {
  console.log(`\n== ${title}: loopwright ${args.join(' ')}\n`);
  return runNode(['bin/loopwright.js', ...args]);
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
  A word as a filet chart, ready to paste into a pattern:
    node bin/loopwright.js letter "TIDE" --height 7
  For a script:
    node bin/loopwright.js check ${example} --format json`;
}
