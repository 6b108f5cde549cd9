/** What makers lay flat every day is drawn flat and not objected to; handles are what one carries by. */
import { describe, expect, test } from 'vitest';
import { compile, type ShapedPiece, shapeOf } from '../../../src/index.ts';
import { spiral } from '../../published/generate.ts';

const SC = 'sc: 18 sts x 20 rnds = 10 cm';
const HDC = 'hdc: 16 sts x 12 rnds = 10 cm';
const DC = 'dc: 14 sts x 8 rnds = 10 cm';

function tried(title: string, gauge: string, ...rounds: string[]) {
  const text = `---\ntitle: ${title}\nterms: US\ngauge: { ${gauge} }\n---\n\n## ${title}\n\n${rounds.join('\n\n')}\n`;
  const { manuscript, fabric, findings } = compile(text, { fixes: false });
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  const piece: ShapedPiece = step.value.pieces[0]!;
  return {
    piece,
    codes: findings.map(({ code }) => code).filter((code) => code.startsWith('will-')),
    lies: [...new Set(piece.girths.map(({ lies }) => lies))],
  };
}

const counts = (each: number, rounds: number): number[] =>
  Array.from({ length: rounds }, (_, i) => each * (i + 1));

describe('circles of custom (normal practice: sc 6 to 8, hdc 8 to 10, dc 10 to 14)', () => {
  test.each([
    ['sc', 6, SC],
    ['sc', 7, SC],
    ['sc', 8, SC],
    ['hdc', 8, HDC],
    ['hdc', 9, HDC],
    ['hdc', 10, HDC],
    ['dc', 10, DC],
    ['dc', 12, DC],
    ['dc', 14, DC],
  ])('%s with %i a round, 12 rounds: flat, and nothing is said', (stitch, each, gauge) => {
    const { piece, codes, lies } = tried('Placemat', gauge, ...spiral(counts(each, 12), stitch));
    expect([codes, lies, piece.dimensions.pose]).toEqual([[], ['flat'], 'flat']);
    expect(piece.relaxed.settled).toBe(true);
  });

  test.each([
    ['sc', 4, SC, 'will-cup', 'rises'],
    ['sc', 12, SC, 'will-ruffle', 'ruffles'],
    ['dc', 7, DC, 'will-cup', 'rises'],
    ['dc', 18, DC, 'will-ruffle', 'ruffles'],
  ])('%s with %i a round is told, and drawn so', (stitch, each, gauge, code, last) => {
    const { codes, lies } = tried('Placemat', gauge, ...spiral(counts(each, 12), stitch));
    expect(codes).toEqual([code]);
    expect(lies).toContain(last);
  });
});

test('a ruffle that is meant to be one is not objected to, and stays one over an even last round', () => {
  const { piece, codes } = tried('Ruffled coaster', SC, ...spiral([...counts(6, 6), 72, 144, 144]));
  expect(codes).toEqual([]);
  expect(piece.girths.map(({ lies }) => lies).slice(-3)).toEqual(['ruffles', 'ruffles', 'ruffles']);
});

describe('handles are long chains over less than they are long', () => {
  const walls = (...more: string[]) =>
    tried('Basket', SC, ...spiral([...counts(6, 8), 48, 48, 48, 48, 48]), ...more).piece;
  const opening = (chains: number, skipped: number): string[] => {
    const rest = 48 - skipped;
    return [
      `Rnd 14: Ch ${chains}, sk next ${skipped} sts, sc in next ${rest} sts. (${rest} sc, 1 ch-${chains} sp)`,
      `Rnd 15: ${chains} sc in next ch-${chains} sp, sc in next ${rest} sts. (${rest + chains} sc)`,
    ];
  };
  test.each([
    ['a heel', 24, 24],
    ['a thumb', 7, 5],
    ['a slit', 12, 10],
  ])('%s is none: %i chains over %i stitches', (_, chains, skipped) => {
    const piece = walls(...opening(chains, skipped));
    expect(piece.hasHandles).toBe(false);
    // The wall goes on above it.
    expect(piece.girths).toHaveLength(15);
  });
  test('40 chains over 12 stitches are', () => {
    expect(walls(...opening(40, 12)).hasHandles).toBe(true);
  });
});

test('a granny square with 3 chains in its corners lies flat and unfolded', () => {
  const { piece, lies } = tried(
    'Square',
    DC,
    'Ch 4; join with sl st in first ch to form a ring.',
    'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 3, (3 dc in ring, ch 3) 3 times; join with sl st in top of beg ch-3. (12 dc, 4 ch-3 sps)',
    'Rnd 2: Sl st in next 2 dc, sl st in next ch-3 sp, ch 3, (2 dc, ch 3, 3 dc) in same sp, ch 1, *(3 dc, ch 3, 3 dc) in next ch-3 sp, ch 1; rep from * around; join with sl st in top of beg ch-3. (24 dc, 4 ch-3 sps, 4 ch-1 sps)',
    'Rnd 3: Sl st in next 2 dc, sl st in next ch-3 sp, ch 3, (2 dc, ch 3, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 3, 3 dc) in next ch-3 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around; join with sl st in top of beg ch-3. (36 dc, 4 ch-3 sps, 8 ch-1 sps)',
  );
  expect([lies, piece.dimensions.pose, piece.hasHandles]).toEqual([['flat'], 'flat', false]);
  expect(piece.foldedShare).toBeLessThan(0.04);
  expect(piece.relaxed.settled).toBe(true);
  expect(Math.abs(piece.dimensions.widthMm / piece.dimensions.depthMm - 1)).toBeLessThan(0.03);
});

test('a head hangs from its first round; a body beside it stands, whatever the title says', () => {
  const text = `---
title: Bear in a hat
terms: US
gauge: { ${SC} }
---

## Head

Stuff as you go.

${spiral([6, 12, 18, 24, 24, 24, 24, 18, 12]).join('\n\n')}

Fasten off.

## Body

${spiral([6, 12, 18, 24, 24, 24, 24, 18, 12]).join('\n\n')}

Fasten off.
`;
  const { manuscript, fabric } = compile(text, { fixes: false });
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  expect(step.value.pieces.map(({ name, dimensions }) => [name, dimensions.pose])).toEqual([
    ['Head', 'hanging'],
    ['Body', 'standing'],
  ]);
});
