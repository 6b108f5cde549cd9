/**
 * Reading speed: one instruction after the other into trees with spans, beside two readers of a
 * far simpler grammar on JSON of the same size: the Lezer parser, and a hand-written reader that
 * keeps ranges. Prints MB/s and the ratios of one run. `node --import tsx bench/reading.ts`
 */
import { parser } from '@lezer/json';
import { NO_VOCABULARY, readInstruction } from '../src/notation/index.ts';

const LINES = [
  'Rnd 3: Ch 1, sc in same st as join, 2 sc in next st, sc in next 12 sts, (sc in next st, 2 sc in next st) 4 times, sc in next 40 sts; join. (104 sc)',
  'Rnd 10: Ch 4 (counts as dc and ch 1 here and throughout), sk next st, *dc in next st, ch 1, sk next st; rep from * around; join with sl st in 3rd ch of beg ch-4. (52 boxes)',
  'R6: (4 sc, inc) x 6 (36)',
  'Round 4: ss into next 1ch-sp, 3ch, 1tr in same sp, 1ch, *2tr in next 1ch-sp, 1ch; rep from * to end, ss to top of 3ch. (24 tr)',
  'Row 5: Ch 3, turn, (2 dc, ch 2, 3 dc) in next ch-2 sp, *ch 1, 3 dc in next ch-1 sp; rep from * to last 3 sts, dc in last st. 42 dc.',
  '7th Round: Into each loop work 5 dc, 4 ch, 5 dc, 1 ss into first dc. Fasten off.',
];
const SIZE = 1_000_000;
const RUNS = 7;

const text = fill(LINES.map((line) => `${line}\n`));
const ends = lineEnds(text);
const json = fill(
  LINES.map(
    (line, n) => `${JSON.stringify({ row: n, text: line.slice(0, 30), used: [1, 2, 3] })},`,
  ),
);

const ours = best(() => {
  let steps = 0;
  let from = 0;
  for (const to of ends) {
    steps += readInstruction(text, from, to, NO_VOCABULARY).steps.length;
    from = to + 1;
  }
  return steps;
});
const document = `[${json.slice(0, json.lastIndexOf('},') + 1)}]`;
const lezer = best(() => parser.parse(document).length);
const hand = best(() => readJson(document).to);

const rate = (ms: number, size: number): string => `${(size / 1000 / ms).toFixed(1)} MB/s`;
console.log(`pattern text       ${rate(ours, text.length)}`);
console.log(`JSON, Lezer        ${rate(lezer, document.length)}`);
console.log(`JSON, by hand      ${rate(hand, document.length)}`);
console.log(`ours : Lezer       ${(lezer / ours).toFixed(2)}`);
console.log(`ours : by hand     ${(hand / ours).toFixed(2)}`);

function fill(pieces: readonly string[]): string {
  let out = '';
  for (let n = 0; out.length < SIZE; n++) out += pieces[n % pieces.length];
  return out;
}

function lineEnds(all: string): number[] {
  const found: number[] = [];
  for (let at = all.indexOf('\n'); at >= 0; at = all.indexOf('\n', at + 1)) found.push(at);
  return found;
}

/** Shortest of several runs, in ms; the sum keeps the work from being optimised away. */
function best(work: () => number): number {
  let shortest = Number.POSITIVE_INFINITY;
  let sum = 0;
  for (let run = 0; run < RUNS; run++) {
    const start = performance.now();
    sum += work();
    shortest = Math.min(shortest, performance.now() - start);
  }
  if (sum === 0) throw new Error('nothing was read');
  return shortest;
}

interface Node {
  readonly kind: string;
  readonly from: number;
  readonly to: number;
  readonly children: readonly Node[];
}

function readJson(all: string): Node {
  let at = 0;
  return value();

  function value(): Node {
    const from = at;
    const sign = all[at];
    if (sign === '{' || sign === '[') return list(sign === '{' ? 'object' : 'array', from);
    if (sign === '"') {
      for (at++; all[at] !== '"'; at++) if (all[at] === '\\') at++;
      at++;
      return { kind: 'string', from, to: at, children: [] };
    }
    while (at < all.length && all[at] !== ',' && all[at] !== ']' && all[at] !== '}') at++;
    return { kind: 'number', from, to: at, children: [] };
  }

  function list(kind: string, from: number): Node {
    const children: Node[] = [];
    at++;
    while (all[at] !== '}' && all[at] !== ']') {
      children.push(value());
      while (all[at] === ',' || all[at] === ':') at++;
    }
    at++;
    return { kind, from, to: at, children };
  }
}
