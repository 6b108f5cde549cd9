/**
 * Cuffs that are closed by a seam and worked round, rows told by their number in each size, and notes of a
 * numbered list. Sources: common practice; all texts of our own invention.
 */
import { describe, expect, test } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const cuff = (seam: string): string => `Ch 14; turn.
Row 1-30: Hdc in the third loop across (12 sts); ch 2; turn.
${seam}

Round 1: Work 36 sc around the top of the cuff as evenly as possible. Sl st to join.
Round 2: Hdc 36 around; do not join.
Round 3: Hdc 17, 2 hdc in next st, hdc 18. (37)
`;

describe('a seam between the rows of a cuff', () => {
  test.each([
    'Sl st through starting chain and row 30 to join',
    'Sl st row 1 and row 30 together.',
    'Sl st the two short ends together.',
    'Slip stitch the last row to the foundation chain.',
  ])('"%s" ends the rows above it', (seam) => {
    const text = cuff(seam);
    expect(worked(text, 'Row 30', 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
      'Row 30 12 proven',
      'Rnd 1 36 unchecked',
      'Rnd 2 36 unstated',
      'Rnd 3 37 proven',
    ]);
    expect(complaints(text)).toEqual([]);
  });

  test('a wrong number in the round behind it is found', () => {
    expect(complaints(cuff('Sl st the two short ends together.').replace('hdc 18', 'hdc 19'))).toEqual([
      '7 count-mismatch',
    ]);
  });

  test('a slip stitch into places of the row is none', () => {
    const text = `Ch 5, join.
Rnd 1: Ch 1, 8 sc in ring, sl st in the first sc. (8)
Rnd 2: Sl st in the next sc, ch 1, sc in same st, sc in next 7 sts, sl st in first sc. (8)
`;
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 8 proven', 'Rnd 2 8 proven']);
  });
});

describe('labels and notes', () => {
  test('"Next 1 (2) Rounds" names a number of rounds for each size', () => {
    const text = `Sizes: S (L)

Ch 40 (48), join to form a ring.
Round 1: Ch 1, sc in each ch around; join. 40 (48) sc
Next 1 (2) Rounds: Ch 1, sc in each sc around; join.
Next 3 (4) Rounds: Ch 1, sc in each sc around; join. 40 (48) sc
`;
    // One round and then three in the small size, two and then four in the large one.
    expect(made(text)).toEqual([...Array(5).fill(40), ...Array(7).fill(48)]);
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace(/40 \(48\) sc\n$/, '40 (47) sc\n'))).toEqual(['6 count-mismatch']);
  });

  test('a numbered list of notes holds no rows', () => {
    const text = `NOTES

1. Mitts are worked from the top down.

2. When joining rounds, skip the beginning ch-1. Stitch counts do not include the beginning ch-1.

LEFT MITT

Ch 36; join with sl st in first ch to form a ring.

Round 1: Ch 1, sc in each ch around; join with sl st in first sc. 36 sc.
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 36 proven']);
  });
});

describe('a round about a flat piece', () => {
  const strip = `Ch 33.
Row 1: Sc in 2nd ch from hook and in each ch across. Ch 1, turn. (32 sc)
Row 2: Sc across, ch 1, turn.
Repeat row 2 14 more times.
`;
  const round = (words: string, n: number): string =>
    `${strip}Body
Starting from any corner, join yarn with sl st, work ${words} - total of ${n} sc. Sl st to first sc.
Row 1: Sc in same st as joining sl st, sc in next 2 sc, *ch 3, skip 2 sc, sc in next 3 sc; repeat from * to last 2 sc, ch 3, sl st to first sc.
`;

  test.each([
    ['32 sc on each long side and 18 sc on each short side', 100],
    ['32 sc along each long edge and 18 sc along both short edges', 100],
    ['25 sc on each of the four sides', 100],
  ])('"%s"', (words, n) => {
    expect(made(round(words, n)).slice(-2)).toEqual([100, 60]);
    expect(complaints(round(words, n))).toEqual([]);
  });

  test('a total of other sides is another number', () => {
    expect(made(round('32 sc on each long side and 13 sc on each short side', 90)).at(-2)).toBe(90);
  });
});

test('the stitch at the join is worked once, where each pass ends with one like it', () => {
  const text = `Ch 40, join.
Rnd 1: Ch 1, sc in first 3 ch, *ch 3, skip 2 ch, sc in next 3 ch; rep from * to last 2 ch, ch 3, skip last 2 ch, join with sl st to first sc. (24 sc, 8 ch-3 sps)
Rnd 2: Sl st to next sc, ch 1, sc in same sc as sl st, work 9 dc in ch-3 sp, sk sc, sc in next sc, repeat to end.
`;
  // Eight shells of nine, and a single crochet between them.
  expect(made(text).at(-1)).toBe(80);
});
