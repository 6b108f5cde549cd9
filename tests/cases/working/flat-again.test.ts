/** More of the wordings of flat pieces: where a place, a count or a chain is told in passing. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions, worked } from './worked.ts';

describe('two stitches joined by "and" go into one place', () => {
  const moss = (n: number): string => `Ch 21.
Row 1: 1 sc and 1 dc in second ch from hook, skip 1 ch, *1 sc and 1 dc in next ch, skip next ch, rep from * to end. Ch 1, turn. (${n} sts)
Row 2: Skip first st, *work 1 sc and 1 dc in next st, skip next st, rep from * to last st, sc in last st. Ch 1, turn.
`;
  it('whatever the count says, and say nothing of the terms', () => {
    expect(complaints(moss(20))).toEqual([]);
    expect(worked(moss(20), 'Row 1', 'Row 2')).toEqual(['Row 1 20 proven', 'Row 2 19 unstated']);
    expect(complaints(moss(30))).toEqual(['2 count-mismatch']);
  });
});

describe('"shell in first sc, shell in each sc" begins with the first sc there is', () => {
  const mat = (n: number): string => `Shell: (sc, 2 dc) in st indicated

Row 1: Ch 17, sc in 2nd ch from hook and in each ch across, turn – 16 sts.
Row 2: Ch 1, Shell in first st, *sk next 2 sts, Shell in next st; rep from * across, turn – 6 Shells.
Rows 3-8: Ch 1, Shell in first sc, Shell in each sc across, turn.
Row 9: Ch 1, sc in each st across, turn – ${n} sts.
`;
  it('so the piece stays as wide as it was', () => {
    expect(complaints(mat(18))).toEqual([]);
    expect(worked(mat(18), 'Row 9')).toEqual(['Row 9 18 proven']);
    expect(complaints(mat(19))).not.toEqual([]);
  });
});

describe('a count behind a chain and its stop', () => {
  const net = (n: number): string => `Sizes: S (M, L)
Ch 18 (22, 26)
Row 1: 1 dc in 4th ch from hook (3 missed ch count as 1 dc), 1 dc in next ch, (ch 2, sk next 2 ch, 1 dc in next 2 ch) 3, (4, 5) times, 1 dc in last ch. ${n} (12, 14) dc
`;
  it('is no length of that chain, and no more work', () => {
    expect(complaints(net(10))).toEqual([]);
    expect(worked(net(10), 'Row 1')).toEqual(['Row 1 14 proven']);
    expect(complaints(net(11))).not.toEqual([]);
  });
});

describe('the top of chains that were passed in the first row and count as nothing', () => {
  const weave = (n: number): string => `Ch 16
Row 1: Dc in the 4th ch from hook, and in each across. Turn. (13)
Row 2: Ch 2, skip the first dc, [fpdc around each of next 3 sts, bpdc around each of the next 3 sts] to end, dc in the top of the turning ch. Turn. (${n})
Row 3: Ch 2, skip the first dc, [bpdc around each of next 3 sts, fpdc around each of the next 3 sts] to end, dc in the top of the turning ch. Turn. (13)
`;
  it('may be worked into, where the counts show it', () => {
    expect(complaints(weave(13))).toEqual([]);
    expect(worked(weave(13), 'Row 2', 'Row 3')).toEqual(['Row 2 13 proven', 'Row 3 13 proven']);
    expect(complaints(weave(14))).not.toEqual([]);
  });
});

describe('what is said of every row at the head is no foundation', () => {
  it('"Chain-3 at beginning of row counts as …"', () => {
    const text = `Chain-3 at beginning of row counts as first double crochet unless otherwise stated.

Row 1 (WS): With rose, ch 19, dc in 4th ch from hook and in each ch across, turn. (17 dc)
Row 2: Ch 3, dc in each of next 2 dc, *ch 3, sk next 3 dc, dc in each of next 3 dc; rep from * across, ending with dc in each of last 2 sts, turn.
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(['Row 1 17 proven']);
    expect(conventions(text)).toContain('start-chain 3: counts (note)');
  });

  it('post stitches explained below "Special abbreviations"', () => {
    const text = `SPECIAL ABBREVIATIONS:
BPdc (back post double crochet) = yarn over, insert hook from back to front to back around the post of indicated stitch and draw yarn through, [yarn over and draw through 2 loops on hook] twice.
FPdc (front post double crochet) = yarn over, insert hook from front to back to front around the post of indicated stitch and draw yarn through, [yarn over and draw through 2 loops on hook] twice.
Ch 13.
Row 1: Dc in 4th ch from hook and in each ch across. (11)
Row 2: Ch 3, turn, *FPdc around next st, BPdc around next st; rep from * to last 2 sts, FPdc around next st, dc in last st. (11)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 11 proven', 'Row 2 11 proven']);
  });
});

describe('groups with a skip between them', () => {
  const scarf = (groups: number): string => `Ch 18, 1sc in 2nd ch from hook, skip 1ch, *(1sc, ch2, 1sc) in next ch, skip 2ch, *rpt from * to * to last 6ch, (1sc, ch2, 1sc) in next ch, skip 2ch, (1sc, ch2, 1sc) in next ch, skip 1ch, 1sc in last ch. Turn. (5, ch2 spaces)
Row 2 - ch3, 3dc in each ch2 space to end, 1dc in last sc. (${groups}, 3dc groups, 1dc + ch3)
Row 3 - ch1, 1sc in base of ch1, skip 1dc, *(1sc, ch2, 1sc) in next dc, skip 2dc, *rpt from * to * to last 4dc and ch3, skip 2dc, (1sc, ch2, 1sc) in next dc, skip 1dc, 1sc in top of ch3. Turn. (5 ch2 spaces)
`;
  it('the skip told behind the repeat is that of its last pass', () => {
    expect(complaints(scarf(5))).toEqual([]);
    expect(worked(scarf(5), 'Row 2', 'Row 3')).toEqual(['Row 2 17 proven', 'Row 3 12 proven']);
    expect(complaints(scarf(6))).not.toEqual([]);
    expect(complaints(scarf(5).replace('last 4dc', 'last 3dc'))).not.toEqual([]);
  });
});

describe('yarn joined on an edge that nobody knows', () => {
  const band = (place: string, row: string): string => `Ch 12
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Row 2: Ch 1, turn, sc in each sc across. Fasten off. (11 sc)

NECKBAND
${place}
Row 1: Ch 1, ${row}. (28 sc)
Row 2: Ch 1, turn, sc in each sc. (28 sc)
`;
  it.each([
    ['Attach yarn at left shoulder.', 'sc in each st around neck'],
    ['With RS facing, join yarn at lower left corner.', 'sc evenly along side'],
    ['Join yarn at underarm.', 'sc in each st around'],
    ['Begin at the top of the opening.', 'sc in each st around'],
  ])('%s', (place, row) => {
    const text = band(place, row);
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 28 proven']);
    expect(complaints(text.replace('each sc. (28', 'each sc. (27'))).not.toEqual([]);
  });
});

describe('a list of stitches before the first place of its row', () => {
  const cloth = (n: number): string => `Chain 20
R1: 1 sc, 2 dc into the 2nd ch from the hook, miss 2 ch *work 1 sc, 2 dc in next ch, miss 2 ch and rep from * across the row to the last 4 chs, 1 sc, 2 dc in next ch, miss 2 chs, 1 sc in last ch. Turn (19 sts)
R2: Ch 1, 1 sc, 2 dc into 1st st, mis 2 st, *work 1 sc, 2 dc into next st, miss 2 st and rep from * across until the last 3 sts. Miss 2 sts, 1 sc into last st. Turn (${n} sts)
`;
  it('goes into it, and so does the same list in the rest of the row', () => {
    expect(complaints(cloth(19))).toEqual([]);
    expect(worked(cloth(19), 'R1', 'R2')).toEqual(['R1 19 proven', 'R2 19 proven']);
    expect(complaints(cloth(18))).not.toEqual([]);
  });

  it('and a bracket may stand inside the place', () => {
    const text = `Row 1: ch 5, (tr, ch 1, tr, ch 1, 2 tr) all in 5th (the last one) chain from hook.
Row 2: ch 4 (counts as tr here and in each following row), turn; tr in same space, 2 tr in next tr, ch 1, tr in next tr, ch 1, 2 tr in each of next 2 tr. (9 tr)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 9 proven']);
  });
});

describe('what stands behind a repeat that divides', () => {
  it('"29 sc with ch 1 between" is told of the row', () => {
    const text = (n: number): string => `Ch 17.
Row 1: Sc in 2nd ch from hook and in each ch across. (16 sc)
Row 2: Ch 1, turn, sc in first sc, sk 1 sc, sc in next sc, * ch 1, sk 1 sc, sc in next sc, repeat from * to last sc, sc in last sc, turn. ${n} sc with ch 1 between.
`;
    expect(complaints(text(9))).toEqual([]);
    expect(worked(text(9), 'Row 2')).toEqual(['Row 2 9 proven']);
    expect(complaints(text(8))).not.toEqual([]);
  });

  it('is what does not fit, and not the repeat', () => {
    const text = `Ch 17.
Row 1: Sc in 2nd ch from hook and in each ch across. (16 sc)
Row 2: Ch 1, turn, sc in first 2 sc, * ch 1, sk 1, 1 sc in next st, repeat from * across, sc in next 3 sts, ch 2.
`;
    expect(complaints(text)).toEqual(['3 stitches-left']);
  });
});

describe('stitches listed behind the name of their section', () => {
  it('are explained in the lines below', () => {
    const text = `Special Stitches: Lhdc, Lsc
Lhdc - Long half double crochet: Yo, insert hook in back loop of next st and in free loop of row below. Yo and pull through all loops.
Lsc - Long single crochet: Insert hook in both loops and in free loop of row below.
Coaster:
Ch 19.
Row 1: Sc in 2nd ch from hook and in each ch across; ch 2, turn (18 sc)
Row 2: Hdc in back loop only of each sc across, ch 2, turn.
Row 3: Lhdc in each st across, ch 2, turn. (18)
Row 4: Lsc in each st across. (18)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3', 'Row 4')).toEqual(['Row 3 18 proven', 'Row 4 18 proven']);
  });
});

describe('what brackets and plain words say of a row', () => {
  it('"(leave remaining 3 unworked)" is work', () => {
    const text = (n: number): string => `Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Row 2: Ch 1, turn, sc in next 9 sc, (leave remaining ${n} unworked) (9 sc)
`;
    expect(complaints(text(3))).toEqual([]);
    expect(worked(text(3), 'Row 2')).toEqual(['Row 2 9 proven']);
    expect(complaints(text(4))).not.toEqual([]);
  });

  it('"sc first two sc tog" draws them together', () => {
    const text = `Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Row 2: Ch 1, turn, sc first two sc tog (dec), sc in each sc to last 2 sc, sc last two sc tog. (10 sc)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
  });

  it('a chain may span what a buttonhole does not say it skips', () => {
    const text = (n: number): string => `Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across. (6 sc)
Row 2: Ch 1, turn, 2 sc, ch ${n}, 2 sc.
`;
    expect(complaints(text(2))).toEqual([]);
  });

  it('"(20 treble rows)" counts rows, those before them among them', () => {
    const text = (n: number): string => `Ch 12.
Row 1: Tr in 5th ch from hook and in each ch across.
Rows 2-20: Ch 4, turn, tr in each st across. (${n} treble rows)
`;
    expect(complaints(text(19))).toEqual([]);
    expect(complaints(text(20))).toEqual([]);
    expect(complaints(text(17))).toEqual(['3 range-mismatch']);
  });

  it('"You will make a sc in each st" tells the work', () => {
    const text = `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Row 2: Turn. You will make a sc in each st across. (11 sc)
Row 3: Ch 1, turn, hdc in ridge of each st across. (11 hdc)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 11 proven', 'Row 3 11 proven']);
  });
});

describe('a corner begun in a box', () => {
  const rows = `Row 2: Ch 4 (counts as dc + ch 1), skip next ch, [dc, ch 1, dc] in next ch. Turn. (2 boxes)
Row 3: Ch 4 (counts as dc + ch 1), dc in same st, repeat [ch 1, dc in next st] across. Turn. (3 boxes)
`;
  it('has the space in the chains that its one stitch skips', () => {
    const text = `Row 1: Ch 6, dc in last ch from hook. Turn. (1 box)\n${rows}`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2', 'Row 3')).toEqual([
      'Row 1 2 proven',
      'Row 2 3 proven',
      'Row 3 4 proven',
    ]);
  });
});

describe('rows that open in their first stitch, and rows that skip it', () => {
  it('need not have the chain count alike', () => {
    const text = `Ch 23.
Row 1: Hdc in 3rd ch from hook, hdc across, turn. (21)
Row 2: Ch 3, skip first st, dc in each st, turn. (21)
Row 3: Ch 2, skip first st, hdc in each st, turn. (21)
Row 4: Ch 3, dc in first st, dc in each st, turn. (21)
Row 5: Ch 2, skip first st, hdc in each st, turn. (21)
Rows 6-9: Repeat rows 2-5. (21)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 4', 'Row 9')).toEqual(['Row 4 21 proven', 'Row 9 21 proven']);
  });
});

describe('words at the end of an order and of a place', () => {
  it('"in ch between next 2 sc" is the space of that chain', () => {
    const text = `Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Row 2: Ch 1, turn, sc in first sc, *ch 1, sk 1 sc, sc in next sc; rep from * to last sc, sc in last sc. (7 sc)
Row 3: Ch 1, turn, *2 sc in ch between next 2 sc; rep from * across. (10 sc)
Rep Rows 2-3 once more, omitting turning ch at end of last row.
`;
    expect(complaints(text)).not.toContain('4 count-mismatch');
    expect(worked(text, 'Row 3')).toEqual(['Row 3 10 proven']);
  });

  it('a long edging with a name is work', () => {
    const text = `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Edging: With right side facing, ch 1, 1 sc in each st to the corner; 3 sc in corner. Working in spaces down the side, work (2 sc in the next space, 1 sc in the next) to the corner; 3 sc in the corner. 1 sc in each st to the corner; 3 sc in the corner. Work (2 sc in the next space, 1 sc in the next space) down the side to the final corner. 2 sc in the final corner, 1 sc in the next space; join with sl st to beginning sc st in 1st corner; fasten off.
`;
    expect(worked(text, 'Edging').length).toBe(1);
  });
});

describe('rows that widen at groups', () => {
  const start = `Ch 21.
Row 1: 1 dc in 4th ch from hook, 1 dc in next 3 ch, 3 dc in next ch, 1 dc in next 7 ch, 3 dc in next ch, 1 dc in next 5 ch. (23 dc)
`;
  it('go "to 3dc group", and into its centre behind its first', () => {
    const text = `${start}Row 2: Ch 3, turn, *1 dc in each dc to 3dc group, 1 dc in next dc, 3 dc in centre dc on 3dc group, *rpt from * to * once more, 1 dc in next dc, 1 dc in each dc to end. (27 dc)
Rows 3-4: Starting with color 1, rpt row 2.
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2', 'Row 4')).toEqual(['Row 2 27 proven', 'Row 4 35 unstated']);
  });
});

describe('stitches below one that was skipped', () => {
  it('take no other stitch of the row', () => {
    const text = `Ch 19.
Row 1: Sc in 2nd ch from hook and in each ch across. (18 sc)
Row 2: Ch 3 (counts as dc here and throughout), turn, dc in each sc across. (18 dc)
Row 3: Ch 1, turn, sc in first 2 dc, *skip next dc, fpdc around sc 2 rows below next dc, fpdc around sc below skipped dc, sc in next 2 dc; repeat from * across. (18 sts)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3')).toEqual(['Row 3 18 proven']);
  });
});

describe('edges of fabric, and rows that slip in', () => {
  it('"around open end of fabric" has as many stitches as are worked there', () => {
    const text = `Row 1: Work a row of sc around open end of fabric, sl st in first sc.
Row 2: Ch 3, dc in next sc, *ch 5, sk 5 sc, dc in each of next 2 sc, rep from * around, sl st in top of ch 3.
`;
    expect(complaints(text)).toEqual([]);
  });

  it('a row that slips in on one side leaves as much on the other', () => {
    const text = (n: number): string => `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, ch 1, turn.
Row 2: Sc across, turn.
Row 3: Sl st in next sc, ch 1, sc in same st, sc in each of next ${n} sts, ch 1, turn.
`;
    expect(complaints(text(7))).toEqual([]);
    expect(complaints(text(5))).not.toEqual([]);
  });

  it('"over rem 8 sts" says where rows are worked again', () => {
    const text = `Ch 12.
Row 1: Working into back side of ch, sc in 2nd ch from hook and in each ch across. (11)
Row 2: Ch 1, turn, sc in each st across.
Row 3: Ch 1, turn, sc in next 8 sts, leave rem sts unworked. (8)
Work Row 2 over rem 8 sts.
`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('words beside the work of a row', () => {
  it('"working behind last tr work 1 dc into each of 2 skipped sts" adds no tr', () => {
    const text = `Special Stitches:
Cr3R = skip 2 sts, 1 tr into next st, working behind last tr work 1 dc into each of 2 skipped sts.
Ch 15.
Row 1: Sc into 2nd ch from hook and into each ch to end, turn. (14 sc)
Row 2: Ch 1, sc in first st, *Cr3R, 1 dc into next sc; rep from * to last st, sc in last st. (14 sts)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 14 proven']);
  });

  it('"working in ch-1 space, work 3 sc" is one place', () => {
    const text = `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Row 2: Ch 3 (counts as dc), turn, dc in next 2 sc, ch 1, sk 1 sc, dc in next 3 sc, ch 1, sk 1 sc, dc in next 3 sc. (9 dc)
Row 3: (Turning ch is first dc of row.) Ch 3, turn, dc in next 2 dc, (working in chain-1 space, work 3 sc), dc in next 3 dc, working in ch-1 space, work 3 sc, dc in next 3 dc. (15 sts)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3')).toEqual(['Row 3 15 proven']);
  });

  it('"Additional Rows: …" and "End with Row 3." are read', () => {
    const text = `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Row 2: Ch 1, turn, sc in each sc.
Row 3: Ch 1, turn, sc in each sc.
Additional Rows: Repeat Rows 2 and 3 for desired length. End with Row 3.
Next to last row: Repeat Row 2.
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Next to last row')).toEqual(['Next to last row 11 unstated']);
  });
});

describe('names and counts told in their own way', () => {
  it('a stitch that is named over and over and defined nowhere is told once, with nothing proposed', () => {
    const text = `Ch 16.
Row 1: Sc in 2nd ch from hook and in next 4 ch, bsc in next 5 ch, sc in last 5 ch, ch 1, turn. (15)
Row 2: Bsc in first 5 sts, sc in next 5 sts, bsc in last 5 sts. (15)
`;
    const found = compile(text).findings.filter(({ code }) => code === 'undefined-stitch');
    expect(found.map(({ fixes }) => fixes.length)).toEqual([0]);
  });

  it('"ch 30 + 1 … (30 + 1)" counts chains', () => {
    const text = (n: number): string => `Row 1: Using blue yarn, ch 30 +1 for the turning ch. (${n} +1)
Row 2: Sc in 2nd ch from hook and in each ch across. (30)
Row 3: Ch 1, turn, sc in each st across. (30)
Row 4: Repeat row 3 omitting the last ch1. (30)
`;
    expect(complaints(text(30))).toEqual([]);
    expect(complaints(text(31))).not.toEqual([]);
  });
});
