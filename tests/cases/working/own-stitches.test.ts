/** Stitches of the designer's own: where their definitions end, and what may stand around them. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions, worked } from './worked.ts';

const FAN = 'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19 sc)\n';

describe('what is said of the start chain behind a definition is no part of the stitch', () => {
  const ROW =
    'Row 2: Ch 1, sc in first st, *skip 2 sts, shell in next st, skip 2 sts, sc in next st; rep from * across, turn. (3 shells)';
  it.each([
    'Shell: 5 dc in same st. Ch 3 counts as dc.',
    'Shell: 5 dc in same st. Ch 3 does not count as a st.',
    'Shell: 5 dc in same st; the beginning ch 3 always counts as a dc throughout.',
  ])('%s', (definition) => {
    const text = `Special stitches\n${definition}\n\n${FAN}${ROW}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 19 proven']);
  });

  it('and the rows go by it', () => {
    const text = `Special stitches\nShell: 5 dc in same st. Ch 3 counts as dc.\n\n${FAN}Row 2: Ch 3, dc in next st and in each st across, turn. (19 dc)\n`;
    expect(conventions(text)).toContain('start-chain 3: counts (note)');
  });
});

describe('stitches among a list of abbreviations in one line', () => {
  const LIST =
    'Abbreviations: ch = chain, sc = single crochet, V = (dc, ch 1, dc) in same st, dc = double crochet';
  it('are worked where they are used; the start chain goes by what they are made of', () => {
    const text = `${LIST}\n\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRow 2: Ch 3, skip first st, *V in next st, skip 2 sts; rep from * to last st, dc in last st, turn. (6 V, 2 dc)\n`;
    expect(worked(text, 'Row 2')).toEqual(['Row 2 14 proven']);
    expect(conventions(text)).toContain('start-chain 3 for the first: counts (custom)');
  });

  it('plain words explained are no stitches of their own', () => {
    const text = `Abbreviations: ch = chain, sc = single crochet, rep = repeat\n\n${FAN}`;
    expect(worked(text, 'Row 1')).toEqual(['Row 1 19 proven']);
  });
});

describe('"around" before a stitch by its shape names a place', () => {
  it('"FPdc around pop"', () => {
    const text = `Ch 11.
Row 1: Dc in 4th ch from hook and in each ch across, turn. (9 dc)
Row 2: Ch 3, dc in next 6 sts, pop in next dc, dc in last st, turn. (9 sts)
Row 3: Ch 3, FPdc around pop, dc in each dc across, turn. (9 sts)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3')).toEqual(['Row 3 9 proven']);
  });
});

describe('one stitch told alone, with no place and no count, is a whole row', () => {
  const ROW = 'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)\n';
  it.each(['Row 2: Ch 1, sc in BLO. Turn.', 'Row 2: Ch 3, dc, turn.'])('%s', (row) => {
    const text = `${ROW}${row}\nRow 3: Ch 1, sc in each st across. (10 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 10 unstated', 'Row 3 10 proven']);
  });

  it('but not two different ones: what they leave is told', () => {
    const { findings } = compile(`${ROW}Row 2: Ch 1, sc, hdc, turn.\n`, { fixes: false });
    expect(findings.map(({ message }) => message).join()).toMatch(/uses 2 of 10 stitches/);
  });
});

describe('a start chain and the stitches beside it make the first half shell', () => {
  const text = (count: string): string =>
    `Shell = 5 dc in same st. Half shell = 3 dc in same st.

Ch 14.
Row 1: Sc in 2nd ch from hook, *skip 2 ch, shell in next ch, skip 2 ch, sc in next ch; rep from * across; turn - 2 shells, 3 sc.
Row 2: Ch 3 (counts as dc), 2 dc in first sc, *skip 2 dc, sc in next dc, skip 2 dc, shell in next sc; rep from * across, ending last rep with half shell in last sc; turn - 1 shell, ${count}, 2 sc.
`;
  it('told as two', () => {
    expect(complaints(text('2 half shells'))).toEqual([]);
    expect(worked(text('2 half shells'), 'Row 2')).toEqual(['Row 2 13 proven']);
  });
  it('but not as three', () => {
    expect(complaints(text('3 half shells'))).toEqual(['5 count-mismatch']);
  });
});

describe('a stitch named in brackets where it is first made', () => {
  const start = `Ch 8, join to form ring.
Rnd 1: Ch 3, 23 dc in ring, join. (24 dc)
Rnd 2: Ch 5, *sk next dc, dc in next dc, ch 2; rep from * around, join to 3rd ch. (12 sps)
Rnd 3: Sl st in first sp, ch 3, in same sp make dc, ch 2 and 2 dc (starting shell made), *ch 3, sk next sp, in next sp make 2 dc, ch 2 and 2 dc (shell made). Repeat from * around, omitting last shell. Join.
`;
  it('is worked so from then on', () => {
    const text = `${start}Rnd 4: Sl st in next dc and in next sp, starting shell in same sp, *ch 4, shell in next ch-2 sp; rep from * 4 more times, ch 4, join. (24 dc, 6 ch-4 sps)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3', 'Rnd 4')).toEqual(['Rnd 3 24 unstated', 'Rnd 4 24 proven']);
  });

  it('what is said of the repeat is no step of it: the last ch 3 is made', () => {
    const text = `${start}Rnd 4: Ch 1, sc in each st, 2 sc in each ch-2 sp, 3 sc in each ch-3 sp around, join. (54 sc)\n`;
    expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 54 proven']);
  });

  it('a round that begins in the middle of a shell goes on behind it', () => {
    const text = `${start}Rnd 4: Starting shell over shell, *ch 3, sc in next ch-3 sp, ch 3, shell over shell. Repeat from * around, omitting last shell. Join. (24 dc, 6 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 30 proven']);
  });

  it('one that is defined by name is left alone', () => {
    const text = `Special stitches\nShell: (2 dc, ch 2, 2 dc) in same sp.\n\n${start}Rnd 4: Sl st in next dc and in next sp, ch 3, (dc, ch 2, 2 dc) in same sp, *ch 4, shell in next ch-2 sp; rep from * 4 more times, ch 4, join. (24 dc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 24 proven']);
  });
});

describe('a name that begins with a number, and the spaces of one group', () => {
  const text = `Special stitches
Double V-stitch (2V-st): (Dc, ch 2, 2 dc, ch 2, dc) in indicated st or sp.
Fan: 4 dc in indicated sp.

Row 1: Ch 22, dc in 4th ch from hook (3 skipped chs count as first dc), [sk next 3 chs, 2V-st in next ch, sk next 3 chs, dc in each of next 2 chs] twice, turn. (6 dc, 2 2V-sts)
Row 2: Ch 4 (counts as dc and ch 1), fan in each ch-2 sp of next 2V-st, ch 2, fan in each ch-2 sp of next 2V-st, ch 1, sk next 2 dc, dc in top of beg ch-3, turn. (2 dc, 4 fans, 2 ch-1 sps, 1 ch-2 sp)
Row 3: Ch 3, dc in first ch-1 sp, 2V-st in sp between next 2 fans, 2 dc in next ch-2 sp, 2V-st in sp between next 2 fans, dc in last ch-1 sp, dc in 3rd ch of beg ch-4, turn. (6 dc, 2 2V-sts)
`;
  it('are worked as they are named', () => {
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2', 'Row 3')).toEqual([
      'Row 1 14 proven',
      'Row 2 18 proven',
      'Row 3 14 proven',
    ]);
  });
  it('a wrong number of fans is found', () => {
    expect(complaints(text.replace('4 fans', '5 fans'))).toEqual(['6 count-mismatch']);
  });
});

describe('a start chain that is a leg of the first cluster', () => {
  const text = (clusters: number): string => `US terms. Ch 3 counts as a dc.
Rnd 1: Ch 1, 12 sc in ring, join. (12 sc)
Rnd 2: Ch 3, dc2tog in same st, *ch 3, sk next st, dc3tog in next st; rep from * around, ch 3, join to top of dc2tog. (${clusters} clusters)
Rnd 3: Ch 1, *sc in top of cluster, 3 sc in ch-3 sp; rep from * around, join. (24 sc)
`;
  it('is no stitch of its own', () => {
    expect(complaints(text(6))).toEqual([]);
    expect(worked(text(6), 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 6 proven', 'Rnd 3 24 proven']);
  });
  it('a wrong number of clusters is found', () => {
    expect(complaints(text(7))).toEqual(['3 count-mismatch']);
  });
});

describe('a stitch of the list bears a near name in the rows', () => {
  const RING = 'Ch 24, join.\nRnd 1: Ch 1, sc in same st and in each ch around, join. (24 sc)\n';
  it.each([
    ['V-stitch', 'V-st'],
    ['V stitch', 'V-st'],
    ['V-st', 'V-stitch'],
    ['Bean stitch', 'bean'],
    ['Bean', 'bean stitch'],
    ['Bean', 'bean st'],
    ['Vst', 'V'],
    ['Shell stitch', 'shell'],
    ['5-dc shell', 'shell'],
    ['Popcorn stitch (pc)', 'popcorn'],
    ['3-dc cluster', '3dc-cl'],
    ['Granny cluster', 'cluster'],
  ])('%s, worked as "%s"', (name, used) => {
    const definition = `Special stitches\n${name}: (dc, ch 1, dc) in same st.\n\n`;
    const row = `Rnd 2: Ch 1, *${used} in next st, skip next 2 sts; rep from * around, join.`;
    const [rnd] = compile(`${definition}${RING}${row}\n`, { fixes: false }).rows.slice(-1);
    expect([rnd?.made, rnd?.spaces]).toEqual([16, [{ chains: 1, n: 8 }]]);
    expect(complaints(`${definition}${RING}${row} (15 dc)\n`)).toEqual(['6 count-mismatch']);
  });

  it('and is used', () => {
    const text = `Special stitches\nShell stitch: (dc, ch 1, dc) in same st.\n\n${RING}Rnd 2: Ch 1, *shell in next st, skip next 2 sts; rep from * around, join. (8 shells)\n`;
    expect(compile(text, { fixes: false }).findings.map(({ code }) => code)).toEqual([
      'terms-inferred',
    ]);
  });

  it('but a name that two might bear is neither', () => {
    const two = 'Large shell: 7 dc in same st.\nSmall shell: 3 dc in same st.';
    const text = `Special stitches\n${two}\n\n${RING}Rnd 2: Ch 1, *shell in next st, skip next 2 sts; rep from * around, join. (24 dc)\n`;
    expect(complaints(text)).toEqual(['7 special-undefined', '7 count-mismatch']);
  });
});

describe('a stitch of the list told once more in brackets, and begun by a list "in same st"', () => {
  const row = (gloss: string, count = 31): string =>
    `Special stitches\nWave: All in the same stitch [sc, hdc, dc]\n\nCh 32.\nRow 1: 1 sc in 2nd ch from hook, 1 hdc, 1 dc in same st, *skip next 2 ch, wave in next ch${gloss}; rep from * until 3 ch remain, sk 2 ch, 1 sc in last ch. (${count})\n`;
  it.each(['', ' [1 sc, 1 hdc, 1 dc]', ' (sc, hdc, dc)'])('wave%s: 3 x 10 + 1', (gloss) => {
    expect(worked(row(gloss), 'Row 1')).toEqual(['Row 1 31 proven']);
    expect(complaints(row(gloss, 33))).not.toEqual([]);
  });
  it('and it is said how the list was read', () =>
    expect(conventions(row(''))).toContain('list before same: the place worked last (count)'));
});

describe('a list says otherwise what an increase or a decrease is', () => {
  const text = (entry: string, round: string): string =>
    `Abbreviations\nsc = single crochet\n${entry}\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: ${round}\n`;
  it.each([
    ['inc = 3 sc in same st', 'Inc in each st around. (18)', 'sc'],
    ['inc = increase (3 sc in one st)', '(Inc) 6 times. (18)', 'sc'],
    ['Inc: work 2 hdc in the same stitch.', 'Inc in each st around. (12)', 'hdc'],
    ['dec: sc3tog', 'Dec, dec. (2)', 'sc3tog'],
    ['dec = dc2tog', '(Dec) 3 times. (3)', 'dc2tog'],
  ])('%s', (entry, round, kind) => {
    const [rnd] = compile(text(entry, round), { fixes: false }).rows.slice(-1);
    expect([rnd?.verdict, Object.keys(rnd?.byKind ?? {})]).toEqual(['proven', [kind]]);
  });
  it.each(['inc = 2 sc in same st', 'inc = increase', 'inc = 2 stitches in one'])(
    '%s is what it always is',
    (entry) => {
      expect(complaints(text(entry, 'Inc in each st around. (12)'))).toEqual([]);
      expect(complaints(text(entry, 'Inc in each st around. (18)'))).toEqual(['6 count-mismatch']);
    },
  );
  it('"2 dc" of a pattern in UK terms is the plain stitch', () => {
    const uk = `Abbreviations (UK terms)\ninc = 2 dc in same st\n\nRnd 1: 6 dc in magic ring. (6)\nRnd 2: Inc in each st around. (12)\n`;
    expect(complaints(uk)).toEqual([]);
  });
});

it('"(3 sc in one st)" between commas is worked, and behind a name explains it', () => {
  const rnd = (words: string): string =>
    `Rnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc in each st. (12)\nRnd 3: ${words}\n`;
  expect(worked(rnd('5 sc, (3 sc in one st), 6 sc. (14)'), 'Rnd 3')).toEqual(['Rnd 3 14 proven']);
  expect(worked(rnd('5 sc, inc (2 sc in one st), 6 sc. (13)'), 'Rnd 3')).toEqual([
    'Rnd 3 13 proven',
  ]);
});
