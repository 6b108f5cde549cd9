/**
 * Hats, mittens, baskets and toys as makers tell them: openings gone round from either side, rounds in so
 * many stitches, chains that only talk tells of. Examples are invented; meanings are common practice.
 */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const mitten = (thumb: string): string => `Frost mitten (US terms)

Hand
Rnd 1: Ch 26, join with sl st in first ch. Ch 1, sc in each ch, join. (26)
Rnds 2-4: Ch 1, sc in each sc, join. (26)
Rnd 5: Ch 1, sc in next 8 sc, ch 6, skip next 6 sc, sc in next 12 sc, join. (26)
Rnd 6: Ch 1, sc in next 8 sc, sc in each of 6 ch, sc in next 12 sc, join. (26)
Rnd 7: Ch 1, sc in each sc, join. Fasten off. (26)

Thumb
${thumb}
Rnd 2: Ch 1, sc in each sc, join. (12)
`;

describe('a thumb that begins along the chain over its opening', () => {
  it.each([
    'Rnd 1: Join yarn in first ch, ch 1, sc in each of 6 ch, sc in 6 skipped sts, join. (12)',
    'Rnd 1: Sc in underside of 6 ch, sc in each of the 6 skipped sts, join. (12)',
    'Rnd 1: Join yarn, 6 sc in the underside of ch-6, sc in 6 skipped sts. (12)',
  ])('%s', (thumb) => {
    const text = mitten(thumb);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 12 proven']);
    expect(complaints(text)).toEqual([]);
  });

  it.each([
    'Rnd 1: Sc in underside of 6 ch, sc in each of the 6 skipped sts, join. (13)',
    'Rnd 1: Sc in underside of 6 ch, sc in each of the 7 skipped sts, join. (12)',
    'Rnd 1: Sc in underside of 5 ch, sc in each of the 6 skipped sts, join. (12)',
  ])('%s is told', (thumb) => {
    expect(complaints(mitten(thumb))[0]).toMatch(/^11 /);
  });
});

it('a joined round that is turned behind a chain goes along that chain first', () => {
  const text = `Cuff (US terms)
Rnd 1: Ch 20, sc in each ch, join with sl st in first sc. (20)
Rnd 2: Ch 1, turn; sc in next 18 sc, leaving last 2 sts unworked. (18)
Rnd 3: Ch 1, turn; sc in next 18 sc, ch 2, sl st in first sc. (20)
Rnd 4: Ch 1, turn; sc in next 2 ch, sc in next 18 sc, join. (20)\n`;
  expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 20 proven']);
  expect(complaints(text)).toEqual([]);
});

it('"24 dc around" are so many in all', () => {
  const text = `Cuff (US terms)
R1: Ch 24, sl st into first chain to form round, 24 dc around, sl st into first stitch to join.
R2: 24 dc around, sl st into first stitch to join.
R3: 22 dc around, sl st into first stitch to join.\n`;
  expect(made(text)).toEqual([24, 24, 22]);
  expect(complaints(text)).toEqual(['4 stitches-left']);
});

it('a chain joined "in the round" is a ring, and its join is a place', () => {
  const text = `Band (US terms)
Ch 14 and join in the round, taking care not to twist the chain.
Rnd 1: Sc in the same ch you sl st'ed into, and in each ch around. (14)
Rnd 2: Sc in the same st you joined in, then in each sc. (14)
Rnd 3: Sc in nt 6 sc, 2 sc in nt sc, sc in nt 7 sc. (15)\n`;
  expect(worked(text, 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
    'Rnd 1 14 proven',
    'Rnd 2 14 proven',
    'Rnd 3 15 proven',
  ]);
});

describe('what stands above the first row', () => {
  it.each([
    'Bodice: Starting at the waist with white, ch13.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (12)',
    'Abbreviations\nCh: chain\nSc: single crochet\nWritten pattern\nCh 13,\nRow 1: Sc in 2nd ch from hook and in each ch across. (12)',
    'Place a marker at the start of each row, leave a long tail, make a slip knot, ch 2 Row 1: 12 sc in 2nd ch from hook. (12)',
  ])('%s', (text) => {
    expect(worked(`${text}\n`, 'Row 1')).toEqual(['Row 1 12 proven']);
  });
});

it('yarn that is joined to go on changes the colour of the same piece', () => {
  const text = `Pot (US terms)
Body
Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in each sc. (12)
Stripes:
Join colour B and continue working sc in each stitch around until the pot measures 10 cm.
Rim
Rnd 8: Sc in next 2 sc, ch 4, skip next 2 sc, sc in next 8 sc. (10)\n`;
  expect(worked(text, 'Rnd 8')).toEqual(['Rnd 8 10 proven']);
});

it('"(1 dec, 4 sc) (15)" and "dc2tog, twice" are work', () => {
  const text = `Cap (US terms)
Rnd 1: 9 sc in magic ring. (9)
Rnd 2: 2 sc in each sc. (18)
Rnd 3: (1 dec, 4 sc) (15)
Rnd 4: 5 sc, dec, dec, 6 sc. (13)
Rnd 5: (sc in next 4 sc, sc2tog), twice, sc in last st. (11)\n`;
  expect(complaints(text)).toEqual([]);
  const flap = `Flap (US terms)\nRow 1: Ch 5, sc in 2nd ch from hook and in each ch. (4)\nRow 2: Ch 1, turn, sc2tog, twice. (2)\n`;
  expect(worked(flap, 'Row 2')).toEqual(['Row 2 2 proven']);
});

it('"join yarn, with sc in unworked st" makes that stitch', () => {
  const text = mitten(
    'Rnd 1: With RS facing, join yarn, with sc in any unworked sc of Rnd 4, work 11 sc evenly spaced around thumb opening, join. (12)',
  );
  expect(complaints(text)).toEqual([]);
});

it('ten dc in the second chain speak for no terms', () => {
  const text = `Hat
Round 1: Ch 2, 10 dc in 2nd ch from hook. Join. (10)
Round 2: Ch 1, sc in each st around. Join. (10)
Round 3: Ch 1, hdc in each st around. Join. (10)\n`;
  expect(complaints(text)).toEqual([]);
});
