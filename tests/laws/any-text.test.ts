/** Whatever comes in: no exception, an outcome bounded by the text, and limits that name themselves. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/index.ts';
import { LIMITS } from './limits.ts';
import { SEED } from './seed.ts';

const WORDS = [
  ...[
    'Rnd 1: ',
    'Row 2: ',
    'Rnds 3-9: ',
    'Rep rnd 2',
    'Ch 12',
    'sc',
    '2 dc',
    'in next st',
    ' in ring',
  ],
  ...[
    '(',
    ')',
    '[',
    ']',
    '{',
    '}',
    '*',
    '**',
    '; rep from * around',
    ' 5 times',
    ' 900 times',
    ', ',
  ],
  ...[
    '\n',
    '\n\n',
    '---\n',
    '## Top\n',
    '```chart A\n',
    '```\n',
    '#.#.\n',
    'sizes: [S, M]\n',
    '3 (4, 5)',
  ],
  ...[
    'join with sl st in top of ch-3',
    'turn',
    'sk next 2 sts',
    ' across to last 3 sts',
    '(12 sc)',
  ],
  ...[
    'fasten off',
    'with B, ',
    'inc',
    'sc2tog',
    'sc in 2nd ch from hook',
    '\u0000',
    '\ud800',
    '½',
    '”',
  ],
];

const bytes = fc.uint8Array({ maxLength: 600 }).map((raw) => String.fromCharCode(...raw));
const unicode = fc.string({ unit: 'binary', maxLength: 400 });
const trade = fc.array(fc.constantFrom(...WORDS), { maxLength: 60 }).map((words) => words.join(''));

describe('any text', () => {
  it.each([
    ['bytes', bytes],
    ['characters of all kinds', unicode],
    ['words of the trade in any order', trade],
  ])('%s', (_, texts) => {
    fc.assert(
      fc.property(texts, (text) => {
        const { findings, rows, notChecked } = compile(text, { fixes: false });
        for (const { from, to } of [...findings, ...rows]) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeGreaterThanOrEqual(from);
          expect(to).toBeLessThanOrEqual(text.length);
        }
        expect(findings.length).toBeLessThanOrEqual(20 + 4 * text.length);
        expect(notChecked.length).toBeLessThanOrEqual(20 + text.length);
      }),
      { seed: SEED, numRuns: 120 },
    );
  });
});

describe('what is too much is a finding that says so', () => {
  it.each(LIMITS)('$name', ({ text, code }) => {
    const { findings } = compile(text(), { fixes: false });
    expect(findings.map((finding) => finding.code)).toContain(code);
  });
});
