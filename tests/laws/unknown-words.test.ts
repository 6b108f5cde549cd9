/**
 * What is not understood in one row is no fault of another: an unknown word put into a right pattern, or
 * a row whose whole wording is unknown but whose count is stated, raises no complaint anywhere but at
 * that row, and there none but that it was not understood.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/index.ts';
import { type Piece, pieces, written } from './pieces.ts';
import { SEED } from './seed.ts';

/** No words of the trade, nor a letter away from one. */
const UNKNOWN = ['zimble', 'quorvex the brandle', 'by plimsy orfling', 'snurgle'];
/** How a designer may put work that has no words here. */
const WORDING = [
  'Wander the blue tower about as the moon does.',
  'Quorvex the brandle to its far bank.',
  'As pictured, snurgle every second plimsy.',
];

/** The lines of the piece that are labelled rows and state a count, by their index in the text. */
const countedLines = (lines: readonly string[]): number[] =>
  lines.flatMap((line, i) => (/^(?:Row|Rnd) \d+: .*\(\d[^()]*\)$/.test(line) ? [i] : []));

/** Complaints that point anywhere but into line `at`, or are not of words. */
function alarms(text: string, at: number): string[] {
  const lineOf = (offset: number): number => text.slice(0, offset).split('\n').length - 1;
  return compile(text, { fixes: false })
    .findings.filter(({ severity }) => severity !== 'note')
    .filter(({ from, code }) => lineOf(from) !== at || !OF_WORDS.has(code))
    .map(({ code, from, message }) => `${lineOf(from) + 1} ${code}: ${message}`);
}

const OF_WORDS: ReadonlySet<string> = new Set(['unread', 'undefined-stitch']);

function holds(change: (line: string, pick: number) => string): void {
  const cases = fc.record({ piece: pieces(), at: fc.nat(), pick: fc.nat() });
  let tried = 0;
  fc.assert(
    fc.property(cases, ({ piece, at, pick }: { piece: Piece; at: number; pick: number }) => {
      const lines = written(piece).split('\n');
      const rows = countedLines(lines);
      const line = rows[at % rows.length];
      if (line === undefined) return;
      tried++;
      lines[line] = change(lines[line] ?? '', pick);
      const text = lines.join('\n');
      expect(alarms(text, line), text).toEqual([]);
    }),
    { seed: SEED, numRuns: 120 },
  );
  expect(tried).toBeGreaterThan(60);
}

describe('what is not understood is no fault of another row', () => {
  it('an unknown word in a right row', () => {
    holds((line, pick) => {
      const word = UNKNOWN[pick % UNKNOWN.length] ?? '';
      const cuts = [...line.matchAll(/, |; /g)].map(({ index }) => index);
      const cut = cuts[pick % Math.max(1, cuts.length)] ?? line.indexOf(' (');
      return `${line.slice(0, cut)}, ${word}${line.slice(cut)}`;
    });
  });

  it('a row of unknown wording that states its count', () => {
    holds((line, pick) => {
      const label = /^[^:]+: /.exec(line)?.[0] ?? '';
      const count = /\([^()]*\)$/.exec(line)?.[0] ?? '';
      return `${label}${WORDING[pick % WORDING.length]} ${count}`;
    });
  });
});
