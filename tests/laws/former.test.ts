/** A run that is handed an earlier result gives what a run from nothing gives, after any edit. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Compiled, compile } from '../../src/index.ts';
import { pieces, written } from './pieces.ts';
import { SEED } from './seed.ts';

const hat = readFileSync(
  new URL('../../examples/weather-watch-hat.pattern.md', import.meta.url),
  'utf8',
);

const edit = fc.record({
  at: fc.nat(),
  cut: fc.integer({ min: 0, max: 12 }),
  put: fc.oneof(
    fc.constantFrom('', '7', '2', '(', ')', '*', '\n\n', 'sc', ' in next st', 'Rnd 3: ', 'turn, '),
    fc.string({ maxLength: 4 }),
  ),
});

const edited = (
  text: string,
  { at, cut, put }: { at: number; cut: number; put: string },
): string => {
  const from = at % (text.length + 1);
  return text.slice(0, from) + put + text.slice(from + cut);
};

const outcome = ({ rows, findings, totals, conventions, notChecked }: Compiled): unknown => ({
  rows,
  findings,
  totals,
  conventions,
  notChecked,
});

const holds = (text: string, edits: { at: number; cut: number; put: string }[]): void => {
  let now = text;
  let former = compile(now, { fixes: false });
  for (const one of edits) {
    now = edited(now, one);
    const again = compile(now, { fixes: false, former });
    expect(outcome(again), now).toEqual(outcome(compile(now, { fixes: false })));
    former = again;
  }
};

it('after edits of random pieces', () => {
  fc.assert(
    fc.property(pieces(), fc.array(edit, { minLength: 1, maxLength: 3 }), (piece, edits) =>
      holds(written(piece), edits),
    ),
    { seed: SEED, numRuns: 40 },
  );
});

it('after edits of a hat in four sizes', () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 2 }), (edits) => holds(hat, edits)),
    { seed: SEED, numRuns: 8 },
  );
});
