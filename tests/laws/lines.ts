// Lines of our own invention over every construct that the reader knows, in US and in UK terms.
// What they share with published patterns is the notation only.

export interface Line {
  readonly text: string;
  readonly terms: 'US' | 'UK';
  readonly sizes: number;
}

const us = (sizes: number, lines: string): readonly Line[] => rows(lines, 'US', sizes);
const uk = (sizes: number, lines: string): readonly Line[] => rows(lines, 'UK', sizes);

const rows = (lines: string, terms: 'US' | 'UK', sizes: number): readonly Line[] =>
  lines
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((text) => ({ text, terms, sizes }));

const LABELS = us(
  1,
  `
  Rnd 4: Sc in each st around. (36)
  Rnd 4. Sc in each st around.
  Rnd4: sc around (36)
  ROUND 4 - sc in each st around [36]
  R4: 36 sc
  4. 36 sc (36)
  4) sc in each st around
  4th rnd: Sc in each sc around.
  22nd Row. 1 sc in each st.
  Row 4 (RS): Dc in each st across, turn. (27 dc)
  Row 5 (wrong side): Sc in each st across; turn.
  Row 6 [WS]: Hdc in each st across.
  Row 7: (RS) Hdc in each st across.
  Rnds 7-12: Sc in each st around. (42)
  Rounds 7 to 12: Sc in each st around. (42 sc)
  Rnds 19 and 20: Sc in each st around; join. (52 sc)
  Rnds 3, 5 and 9: Sc in each st around.
  6th, 7th and 8th rows: Dc in each dc across; turn.
  Rounds 12+: Sc in each st around.
  Row 2 and all even rows: Sc in each st across, turn.
  Next row: Sc in each st across; turn.
  Next 6 rows: Sc in each st across; turn.
  Set-up row: Sc in each ch across.
  Row 6 (dec row): Dec, sc in each st to last 2 sts, dec. (20)
  Rnd 14 - Drawstring: Sc in each st around.
  Size M only: Row 11: Sc in each st across.
  R4-7: 36 sc (36)
  WS row 3: Sc in each st across.
  Start: 7 sc in ring.
`,
);

const BEGINNINGS = us(
  1,
  `
  Rnd 1: 7 sc in MR (7)
  Rnd 1: MR, 7 sc [7]
  Rnd 1: Make a magic ring, ch 1, 9 hdc in ring; join. (9 hdc)
  Rnd 1: Ch 2, 7 sc in 2nd ch from hook. (7)
  Rnd 1: Ch 4, 13 dc in 4th ch from hook; join. (13 dc)
  Ch 5, join with sl st to form a ring.
  Ch 8, sl st in first ch to form a ring.
  Ch 43.
  With A, ch 43.
  Row 1: Sc in 2nd ch from hook and in each ch across. (42 sc)
  Row 1: Ch 20, hdc in 3rd ch from hook, hdc across.
  Row 1: Sk 3 ch (counts as dc), dc in each ch across. (29 dc)
  Row 1: Dc in 4th ch from hook (counts as 2 dc), dc in each ch across.
  Row 1: Dc in 8th ch from hook, *ch 2, sk next 2 ch, dc in next ch; rep from * across. (17 sps)
  Rnd 1: 2 sc in 2nd ch from hook, sc in next 40 ch, 4 sc in last ch; working along opposite side of foundation ch, sc in next 40 ch, 2 sc in same ch as first 2 sc; join. (88 sc)
  Rnd 1: Ch 13, sc in 2nd ch from hook, sc in next 10 ch, 3 sc in last ch; working along opposite side, sc in next 10 ch, 2 sc in last ch; join.
  Fsc 36.
  Row 1: 48 fsc. (48)
  Rnd 1: Join A with sl st in any corner ch-2 sp, ch 3, 2 dc in same sp.
  Row 1: Sc in each row end across.
  Rnd 1: 12 sc in ring; join with sl st in first sc. (12 sc)
  Rnd 1: 7 sc in magic ring. (7)
  Ch a multiple of 6 plus 3.
  Ch 40 cm long.
`,
);

const ALONG = us(
  1,
  `
  Rnd 3: Sc around. (35)
  Row 3: Hdc across.
  Row 3: Dc in every st to end.
  Rnd 3: Sc in all 35 sts.
  Rnd 3: Sc in each st and in each ch-1 sp around. (70)
  Row 3: Sc in each st to last 3 sts, dec, sc in last st.
  Row 3: Sc in next 5 sts, hdc in next 4 sts, dc in next 3 sts.
  Row 3: Sc in each of next 5 sts, turn.
  Rnd 3: 2 sc in each of next 4 sts, sc in next 40 sts.
  Rnd 3: 2 sc in next 5 sts, sc in next 6 sts.
  Rnd 3: 5 sc in next 5 sts.
  Rnd 3: Ch 1, sc in same st as join, sc in next 16 sts.
  Rnd 3: Ch 1, sc in same st, sc in next st.
  Rnd 3: 3 dc in same sp, ch 2, sk next 2 sts.
  Row 3: Sk 1, sc in next st.
  Row 3: Sk next 2 dc, dc in next dc.
  Row 3: Skip first st, dc in next 4 sts, skip next ch-1 sp, dc in last st.
  Row 3: Dc in first st, dc in each st to last st, 2 dc in last st.
  Row 3: Sc in each st across, leave last 3 sts unworked; turn.
  Row 3: Sc in next 12 sts, leave rem sts unworked, turn.
  Rnd 3: FPdc around next st, BPdc around next st.
  Rnd 3: *FPdc around next dc, dc in next st; rep from * around.
  Rnd 3: Sc around post of next dc.
  Rnd 3: FPtr around next dc 2 rows below, sk next st.
  Rnd 3: Sc in next st 2 rnds below, sc in next 3 sts.
  Rnd 3: Sc in st below next st.
  Rnd 3: BLO, sc in each st around.
  Rnd 3: Working in back loops only, sc in each st around.
  Rnd 3: Sc in back loop of each st around.
  Rnd 3: Sc in blo of next 5 sts, sc in flo of next 5 sts.
  Rnd 3: Sc in first skipped st of Rnd 24, sc in next 17 skipped sts.
  Rnd 3: Dc in every other st around.
  Rnd 3: Dc between next 2 sts, ch 1.
  Row 3: Sc in each st to next corner, 3 sc in corner.
  Row 3: Sc in each st to marker.
  Rnd 3: Esc in next 5 sts, hdc in next 2 sts.
  Rnd 3: Tr in next 3 sts, dtr in next st, trtr in next st.
  Rnd 3: Reverse sc in each st around; join.
  Rnd 3: Sc in next 3 sts in back loop only.
  Rnd 3: Sc through both loops of next 3 sts.
  Rnd 3: Sc in 3rd loop of each st around.
  Rnd 3: Sc blo in next 3 sts, sc flo in next 3 sts.
  Row 3: Sc in rem sts.
  Row 3: Sc in both sts.
  Row 3: Sc in next, dc in same, hdc in last.
  Row 3: Sc in next 3, 2 sc in next.
  Row 3: Dc in base of ch 3.
  Rnd 3: Sc in unworked loops of foundation ch.
  Working along row ends, sc in next 12 sts.
  Row 3: Ch 3, sk first st, dc in next st, *sk next st, dc in next st, dc in skipped st; rep from * across.
`,
);

const NUMBERS = us(
  1,
  `
  Rnd 4: Sc 5, inc, sc 5.
  Rnd 4: 5 sc, inc, 5 sc. (17)
  Rnd 4: (2 sc, inc) x 6 (24)
  Rnd 4: 6 inc. (12)
  Rnd 4: Inc 6. (12)
  Rnd 4: 3 dec, 6 sc.
  Rnd 4: Inc around. (12)
  Rnd 4: Inc in next 4 sts, sc in next 8 sts.
  Rnd 4: Sc 3 in next st.
  Rnd 4: 4 hdc in last st.
  Rnd 4: Sc2tog, sc in next 48 sts, sc2tog.
  Rnd 4: Sc2tog over next 2 sts, sc in next st.
  Rnd 4: Sc3tog over next 3 sts.
  Rnd 4: Dc3tog, ch 2.
  Rnd 4: Sc2tog around.
  Rnd 4: Dec, sc in next 4 sts, dec.
  Rnd 4: Invisible dec, sc in next 4 sts.
  Rnd 4: 2 sc, inc, (4 sc, inc) x 5, 2 sc. (36)
  Rnd 4: 2 hdc in each st around.
  Rnd 4: 0 sc, inc.
  Rnd 4: Inc 4 evenly around.
  Rnd 4: Double dec, double inc.
  Rnd 4: FPdc2tog over next 2 sts.
  Rnd 4: 3 sc in each corner, sc evenly around.
`,
);

const REPEATS = us(
  1,
  `
  Rnd 4: *Sc in next 3 sts, inc; rep from * around. (30)
  Rnd 4: *Sc in next 3 sts, inc; rep from * 5 times. (30)
  Rnd 4: *Sc in next 3 sts, inc; rep from * 5 more times. (30)
  Rnd 4: *Sc in next 3 sts, inc; rep from * once.
  Rnd 4: *Sc in next 3 sts, inc; rep from * once more.
  Rnd 4: *Sc in next 3 sts, inc; rep from * twice.
  Rnd 4: *Sc in next 3 sts, inc; rep from * twice more.
  Rnd 4: *Sc in next 3 sts, inc; rep from * to last 3 sts, sc in last 3 sts.
  Rnd 4: *Sc in next 3 sts, inc* 6 times.
  Rnd 4: *Sc in next 3 sts, inc* around.
  Rnd 4: *4 sc, dec* [30]
  Rnd 4: (Sc in next st, inc) 6 times. (18)
  Rnd 4: [Sc in next st, inc] twice, sc in next 3 sts.
  Rnd 4: (sc, inc) x6
  Rnd 4: {2 sc, inc} 6 times
  Rnd 4: (Sc, inc) around.
  Rnd 4: Ch 1, 2 sc in next st, *sc in next 3 sts, 2 sc in next st; rep from * 5 more times; join. (36 sc)
  Rnd 4: *(Dc, ch 1) twice in next st, sk next 2 sts; rep from * around.
  Rnd 4: *Dc in next st, ch 1, sk next st; rep from * around, ending with dc in last st.
  Rnd 4: *Dc in next st, ch 1, sk next st; rep from * across, ending last rep with dc in last st.
  Rnd 4: *Sc in next st, ch 3, ** sk next st; rep from * around, ending last rep at **.
  Rnd 4: *[Sc in next st, inc] twice, sc in next 4 sts; rep from * 2 more times.
  Rnd 4: *Sc in next 2 sts, (sc, ch 3, sc) in next st; rep from * around; join.
  Rnd 4: Sc in next 2 sts, *ch 5, sk next 3 sts, sc in next st; rep from * 7 more times, ch 5; join.
  Rnd 4: Sc in next 8 sts, 2 sc in next st. Repeat around.
  Rnd 4: Ch 1, hdc in each of next 4 sts, 2 hdc in next st, 9 times.
  Rnd 4: Sc in next st twice, ch 1.
  Rnd 4: *Sc, ch 1* 3 times, sc in corner, rep between * and * 3 more times.
  Rnd 4: *Sc in next st, ch 1; rep from * once, tr in next st, ch 2; rep from * around; join.
  Rnd 4: *Sc in next st, ch 1; rep from * twice, tr in next st, *ch 2, dc in next st; rep from * once, ch 1; rep from first * 3 more times; join.
  Rnd 4: Ch 3, *sc in next st, ch 1; rep from * once, tr in next st, ch 2; rep from * for a total of 4 times; join.
  Rnd 4: (Sc, ch 1) 3 times, sc in corner, rep from * twice.
  Rnd 4: *Sc in next st, ch 1; rep from * 3 times, omitting last ch 1.
  Rnd 4: *Sc in next st, ch 3; rep from *; join.
  Rnd 4: **Ch 4, *sc in next sp, ch 3; rep from * twice, sc in next sp; rep from ** around.
  Rnd 4: †Sc in next st, ch 1; rep from † 4 times.
  Rnd 4: *Sc in next 2 sts, inc; rep from * for a total of 6 times.
  Rnd 4: (Sc, inc) 5 more times.
`,
);

const ROWS_AGAIN = us(
  1,
  `
  Row 3: Rep row 2.
  Rnds 6-11: Rep rnd 5.
  Rows 4-9: Rep rows 2 and 3.
  Rep rows 2 and 3 until piece measures 30 cm, ending with row 3.
  Rep last 2 rows 3 more times.
  Rep rnds 7 and 8 5 more times, then rep rnd 7.
  Row 8: As row 2.
  Rows 12-15: As rows 4-7 of Front.
  Work even for 10 rows.
  Rows 3-9: Work even.
  Rep row 2 until piece measures 12 in from beg.
  Rep last row for 12 more rows.
  Work even until piece measures 20 cm.
  Work even in sc for 10 rows.
  Rows 5-8: No change.
  Rep rows 2-5 twice more.
`,
);

const START_CHAINS = us(
  1,
  `
  Row 2: Ch 3 (counts as dc here and throughout), dc in next st and in each st across; turn.
  Rnd 2: Ch 3 (counts as dc), dc in next st, 2 dc in next st; join with sl st in top of beg ch-3.
  Rnd 2: Ch 3 (counts as first dc here and throughout), 2 dc in same st.
  Rnd 2: Ch 4 (counts as dc and ch 1), sk next st, *dc in next st, ch 1, sk next st; rep from * around; join with sl st in 3rd ch of beg ch-4. (52 boxes)
  Rnd 2: Ch 2 (does not count as a st), hdc in each st around; join with sl st in first hdc.
  Row 2: Ch 1, turn, sc in each st across. (25 sc)
  Row 2: Sc in each st across, ch 1, turn. (25 sc)
  Row 2: Turn, ch 3, dc in each st across, dc in top of turning ch.
  Row 2: Ch 2, dc in same st, dc in each st across.
  Row 2: Dc in each dc across, dc in 3rd ch of turning ch.
`,
);

const COUNTS = us(
  1,
  `
  Rnd 2: Dc in each st around. (16 dc, 8 ch-1 sps)
  Rnd 2: Dc in each st around - 28 sts
  Rnd 2: Dc in each st around = 28
  Rnd 2: Dc in each st around. 28 dc.
  Rnd 2: Sc in each st around (28 sts), join.
  Rnd 2: Shell in each ch-3 sp around. (9 shells)
  Rnd 2: Sc in each ch-1 sp around. (14 spaces)
  Rnd 2: Hdc in each st around. (28 hdc, not counting the ch)
  Rnd 2: Dc in each st around, 3 dc in each corner. (9 dc each side)
  Rnd 2: Sc around. (28 sts total)
  Rnd 2: Sc around, now you have 28 sc.
  Rnd 2: Sc around (12 sc increased).
  Rnd 2: Sc around (3 more).
  Rnd 2: Sc around. (4 rnds)
  Rnd 2: Sc around. (9 petals)
  Rnd 2: Sc around. (9 loops)
  Rnd 2: Work open boxes around. (12 open boxes, 4 filled boxes)
  Rnd 2: Dc around. (28 dc including beg ch)
  Rnd 2: Sc in next 3 sc, (3 in all), sc in next st.
`,
);

const JOINS = us(
  1,
  `
  Rnd 2: Sc in each st around; join with sl st in first sc. (24 sc)
  Rnd 2: Sc in each st around, sl st in first st to join.
  Rnd 2: Sc in each st around; join. Fasten off. (160 sc)
  Rnd 2: Sc in each st around; do not join. (24)
  Rnd 2: Sl st to next ch-2 sp, ch 3, 2 dc in same sp.
  Rnd 2: Sl st in next 2 dc, sl st in next ch-2 sp, ch 1, 3 sc in same sp.
  Rnd 2: Sc in each st around; join, turn.
  Rnd 2: Sc in each st around; do not turn.
  Rnd 2: With B, sc in each st around, change to A.
  Rnd 2: With RS facing, join A with sl st in first skipped st of Rnd 24, ch 1, sc in same st.
  Rnd 2: Join B with sc in any st, sc in each st around; join.
  Rnd 2: Sc in next 9 sts, ch 12, sk next 12 sts, sc in next 18 sts, ch 12, sk next 12 sts, sc in last 9 sts; join. (36 sc, 2 ch-12 sps)
  Fasten off.
  Fasten off B, join A with sl st in any st.
  Break off A.
  Rnd 2: Join with dc in next sp, dc in next st.
  Rnd 2: Dc around, ss to 3rd of 5 ch.
  Rnd 2: Change color, sc around.
  Rnd 2: Drop A, pick up B, sc around.
  Rnd 2: In MC, sc in next 3 sts, in B sc in next 2 sts.
  Rnd 2: Sc around, do not fasten off.
  Rnd 2: Work in continuous rounds, sc around.
`,
);

const LACE = us(
  1,
  `
  Rnd 2: (2 dc, ch 2, 2 dc) in next ch-2 sp, ch 1.
  Rnd 2: [Dc, ch 1, dc] in same sp.
  Rnd 2: 3 dc, ch 2, 3 dc in next ch-2 sp.
  Rnd 2: Ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next corner ch-2 sp, ch 1; rep from * twice more; join with sl st in top of beg ch-3.
  Rnd 2: (Sc, hdc, dc, hdc, sc) in each ch-3 sp around.
  Rnd 2: 3 dc in next ch-2 sp, 3 dc in next sp, 3 sc in next loop.
  Rnd 2: Dc in next 2 ch, dc in next 3 ch-1 sps.
  Rnd 2: Dc in center st of next shell, ch 3.
  Rnd 2: Shell in next shell, V-st in next V-st.
  Rnd 2: 5-dc shell in next st, sk next 2 sts.
  Rnd 2: 3-dc cluster in next st, ch 3.
  Rnd 2: Bobble in next st, sc in next 3 sts.
  Rnd 2: Puff st in next sp, ch 1.
  Rnd 2: Popcorn in next st, picot, sc in next st.
  Rnd 2: Sc in next picot, ch 5.
  Rnd 2: 2 dc in corner, ch 2, 2 dc in same corner.
  Rnd 2: Dc in next dc or ch-1 sp, ch 1.
  Rnd 2: Sc in 3rd ch of next ch-5 sp.
  Rnd 2: Sc, hdc, dc all in next st.
  Rnd 2: In next sp work (2 dc, ch 2, 2 dc).
  Rnd 2: 3-dc puff st in next st, 5-hdc bobble in next st.
  Rnd 2: Ch 3, sl st in 3rd ch from hook, sc in next st.
  Rnd 2: Hdc in next shell sp, dc in next V-st ch-1 sp.
  Rnd 2: Dc in 2nd ch of next ch-3 sp.
`,
);

const FILET = us(
  1,
  `
  Rnd 11: Work 52 open boxes; join. (52 boxes)
  Rnds 12-18: Work 2 open boxes, work chart Tide over next 21 boxes, work 29 open boxes; join. (52 boxes)
  Row 5: 5 sps, 2 bls, 5 sps.
  Row 5: 1 open mesh, 3 solid meshes, 1 open mesh.
  Row 5: Work open boxes to end.
  Rows 3-22: Follow chart.
  Row 6: Work chart row 3.
  Row 4: Ch 5, turn, dc in next dc, 2 dc in sp, dc in next dc, (ch 2, dc in next dc) 6 times.
  Rnd 11: 2 lacets, 3 bars.
  Rnd 11: Work chart Tide over boxes 3-23.
`,
);

/** Lean on stitches of the designer's own, which the law test defines. */
const OWN_STITCHES = us(
  1,
  `
  Rnd 2: Ripple st in next st, sc in next 3 sts.
  Rnd 2: Ripple st in each st around; join.
  Rnd 2: Beg ripple in same sp, ripple st in next 4 ch-2 sps.
  Rnd 2: 3-dc fin in next st, ch 2, 3-dc fin in next ch-1 sp.
  Rnd 2: *Ripple st in next ripple st, ch 1; rep from * around. (9 ripple sts)
`,
);

const SIDE_JOBS = us(
  1,
  `
  Rnd 5: Sc in each st around, place marker in last st.
  Rnd 5: Sc in each st around. Stuff the body firmly.
  Rnd 5: Sc in next 4 sts (mark the last one), sc in next 4 sts.
  Rnd 5: Ch 4, flumble in next st, sc in next 3 sts.
  Rnd 5: Sc in next 3 sts, 2tr/dc in next st, sc in next st; join.
`,
);

const SIZES = us(
  3,
  `
  Ch 40 (44, 48).
  Row 1: Sc in next 20 (24, 28) sts, 2 sc in next st. (22 (26, 30) sc)
  Rnd 2: (Sc in next st, inc) 6 (7, 8) times. (18, 21, 24)
  Rnd 2: *Sc in next 3 sts, inc; rep from * 5 (6, 7) more times.
  Rnd 2: Sk next 18 (18, 20) sts, sc in each st around. (68 (72, 76) sts)
  Rep last 2 rows 0 (1, 2) times.
  Rnd 2: Ch 12 (12, 14), sk next 12 (12, 14) sts, sc in last 9 (10, 11) sts; join.
  Rows 2-7 (9, 11): Sc in each st across; turn.
`,
);

const UK = uk(
  1,
  `
  Rnd 4: Dc in each st around. (36 dc)
  Rnd 1: 6dc in magic ring. (6)
  Row 1: Miss 3 ch (counts as 1 tr), 1 tr in each ch to end.
  Row 2: 3 ch (counts as 1 tr), miss first st, 1 tr in each st to end, turn.
  Row 2: 1ch, 1dc in each st to end, turn. (25 dc)
  Rnd 2: Ch 3 (counts as tr), 2 tr in same sp, *ch 2, 3 tr in next sp; rep from * to end; ss in top of 3-ch.
  Rnd 2: (3tr, 2ch, 3tr) in next 2ch-sp, 1ch.
  Rnd 2: *Miss 2 sts, 5 tr in next st, miss 2 sts, dc in next st; rep from * to end, join with ss in first dc.
  Row 3: Dc2tog, dc in next 10 sts, dc2tog; turn. (12 dc)
  Row 3: Tr3tog over next 3 sts, htr in next 4 sts.
  Row 3: FPtr around next tr, BPtr around next tr.
  Row 3: Dtr in next 3 sts, trtr in next st.
  Row 3: (Dc in next st, 2 dc in next st) 6 times. (18 dc)
  Row 3: 4 tr, 1 htr, 4 dc, ss.
  Row 3: 3-tr cluster in next st, ch 2.
  Row 3: Edc in next 4 sts.
  Fdc 36.
  Rnd 4: Tr in 8th ch from hook, *ch 2, miss next 2 ch, tr in next ch; rep from * to end. (17 sps)
  Rnd 4: Ch 4 (counts as tr and ch 1), miss next st, *tr in next st, ch 1, miss next st; rep from * around; join with ss in 3rd ch of beg ch-4.
  Rnd 4: Dc in each tr around, 2 dc in each 1ch-sp. (16 dc, 8 ch-1 sps)
  Rows 5-9: Rep row 4.
  Rnd 4: *Dc in next 3 sts, dc2tog; rep from * 5 times. (24)
`,
);

export const ALL_LINES: readonly Line[] = [
  ...LABELS,
  ...BEGINNINGS,
  ...ALONG,
  ...NUMBERS,
  ...REPEATS,
  ...ROWS_AGAIN,
  ...START_CHAINS,
  ...COUNTS,
  ...JOINS,
  ...LACE,
  ...FILET,
  ...OWN_STITCHES,
  ...SIDE_JOBS,
  ...SIZES,
  ...UK,
];
