/**
 * Doilies, mandalas and lace of our own invention, each round worked by hand. Behind a round stands what it
 * makes: stitches, then its spaces as "how many x chains".
 */
import { compile } from '../../../src/index.ts';
import { expect, it } from 'vitest';
import { complaints } from './worked.ts';

interface Told {
  readonly text: string;
  /** What the rounds make, by the offset at which the round's words end. */
  readonly made: readonly { readonly end: number; readonly is: string }[];
}

/** The text without what is told by hand, and that. */
function told(piece: string): Told {
  const made: { end: number; is: string }[] = [];
  let text = '';
  for (const line of piece.split('\n')) {
    if (line.startsWith('#= ')) made.push({ end: text.length, is: line.slice(3).trim() });
    else text += `${line}\n`;
  }
  return { text, made };
}

type Row = ReturnType<typeof compile>['rows'][number];

/** "24 | 12x2 12x5": what the last row that begins before an offset makes. */
function madeBefore(rows: readonly Row[], end: number): string {
  const row = rows.findLast(({ from }) => from < end);
  const spaces = (row?.spaces ?? []).map(({ chains, n }) => `${n}x${chains}`);
  return `${row?.made} | ${spaces.join(' ')}`.trim();
}

const sorted = (is: string): string => {
  const [n = '', spaces = ''] = is.split(' |');
  const byChains = (one: string): number => Number(one.split('x')[1]);
  return `${n} | ${spaces.trim().split(' ').sort((a, b) => byChains(a) - byChains(b)).join(' ')}`.trim();
};

const PIECES: readonly string[] = [
  `Fern Hollow Doily

Starting at center, ch 8. Join with sl st to form ring.
1st rnd: Ch 3, 23 dc in ring. Sl st to 3rd ch of ch-3 first made.
#= 24 |
2nd rnd: Ch 4, * dc in next dc, ch 1. Rep from * around. Join last ch-1 to 3rd ch of ch-4.
#= 24 | 24x1
3rd rnd: Sl st in next sp, ch 3, 2 dc in same sp, * ch 2, skip 1 sp, 3 dc in next sp. Rep from * around. End with ch 2, join.
#= 36 | 12x2
4th rnd: Sl st in next dc, sc in same place, * ch 5, sc in next sp, ch 5, sc in center dc of next group. Rep from * around, ending with ch 5, sl st in first sc.
#= 24 | 24x5
5th rnd: Sl st to center of next loop, sc in same loop, * ch 5, sc in next loop. Rep from * around, ending with ch 2, dc in first sc.
#= 24 | 24x5
6th rnd: Sc in loop just formed, * ch 3, in next loop make 3 dc, ch 3 and 3 dc (shell made); ch 3, sc in next loop. Rep from * around, ending with ch 3, sl st in first sc.
#= 84 | 36x3
7th rnd: Sl st to sp of next shell, ch 3, in same sp make 2 dc, ch 3 and 3 dc; * ch 5, shell in sp of next shell. Rep from * around, ending with ch 5. Join to top of ch-3.
#= 72 | 12x3 12x5
8th rnd: Sl st in next 2 dc and in sp, ch 3, in same sp make 2 dc, ch 3 and 3 dc; * ch 4, sc in next ch-5 loop, ch 4, shell over shell. Rep from * around, ending with ch 4. Join.
#= 84 | 12x3 24x4
9th rnd: Sl st to center of shell, sc in same sp, * (ch 5, sc in next loop) twice, ch 5, sc in sp of next shell. Rep from * around, ending with ch 5, sl st in first sc.
#= 36 | 36x5
10th rnd: Sl st to center of next loop, sc in same loop, * ch 3, 7 dc in next loop, ch 3, sc in next loop, ch 5, sc in next loop. Rep from * around, ending with ch 5. Join.
#= 108 | 24x3 12x5
11th rnd: Sl st to first dc of shell, ch 4, (dc in next dc, ch 1) 5 times, dc in next dc, * ch 2, sc in next ch-5 loop, ch 2, dc in first dc of next shell, (ch 1, dc in next dc) 6 times. Rep from * around, ending with ch 2. Join to 3rd ch of ch-4.
#= 96 | 72x1 24x2
12th rnd: Sl st in next ch-1 sp, sc in same sp, * (ch 4, sc in next ch-1 sp) 5 times, ch 3, sc in next sc, ch 3, sc in next ch-1 sp. Rep from * around, ending with ch 3. Join and break off.
#= 84 | 60x4 24x3
`,
  `Willow Mandala

US terms

Special stitches
Beginning cluster (beg cl): Ch 2, dc2tog in same sp.
Cluster (cl): dc3tog in same sp.
Picot: Ch 3, sl st in first ch.
Shell: (2 dc, ch 2, 2 dc) in same sp.
Beg shell: (Ch 3, dc, ch 2, 2 dc) in same sp.

Round 1: Make a magic ring, ch 1, 12 sc in ring, sl st to first sc. (12 sc)
#= 12 |
Round 2: Ch 4 (counts as dc, ch 1), [dc in next st, ch 1] 11 times, sl st to 3rd ch of beg ch-4. (12 dc, 12 ch-1 sps)
#= 12 | 12x1
Round 3: Sl st in first ch-1 sp, beg cl in same sp, ch 3, [cl in next ch-1 sp, ch 3] around, join. (12 clusters, 12 ch-3 sps)
#= 12 | 12x3
Round 4: Sl st in first ch-3 sp, beg shell in same sp, ch 1, [shell in next ch-3 sp, ch 1] around; join. (12 shells)
#= 48 | 12x2 12x1
Round 5: Sl st in next dc and in ch-2 sp, ch 1, (sc, ch 3, sc) in same sp, ch 3, sc in next ch-1 sp, ch 3, *(sc, ch 3, sc) in ch-2 sp of next shell, ch 3, sc in next ch-1 sp, ch 3; rep from * around; join. (36 ch-3 sps)
#= 36 | 36x3
Round 6: Sl st in next ch-3 sp, (beg cl, ch 3, cl) in same sp, ch 2, sk next ch-3 sp, sc in next sc, ch 2, sk next ch-3 sp, *(cl, ch 3, cl) in next ch-3 sp, ch 2, sk next ch-3 sp, sc in next sc, ch 2, sk next ch-3 sp; rep from * around; join. (24 clusters, 12 sc)
#= 36 | 12x3 24x2
Round 7: Sl st in ch-3 sp, ch 3, 6 dc in same sp, sc in next sc, *7 dc in next ch-3 sp, sc in next sc; rep from * around; join.
#= 96 |
Round 8: Sl st in next 3 dc, ch 1, sc in same st, ch 5, dc in next sc, ch 5, *sc in center dc of next 7-dc group, ch 5, dc in next sc, ch 5; rep from * around; join.
#= 24 | 24x5
Round 9: Ch 1, *sc in sc, 5 sc in ch-5 sp, sc in dc, 5 sc in ch-5 sp; rep from * around; join. (144 sc)
#= 144 |
Round 10: Ch 3, dc in next 4 sts, ch 2, sk 1 st, *dc in next 5 sts, ch 2, sk 1 st; rep from * around; join. (120 dc, 24 ch-2 sps)
#= 120 | 24x2
Round 11: Sl st in next 2 dc, ch 1, sc in same st, *(3 dc, picot, 3 dc) in next ch-2 sp, sc in 3rd dc of next 5-dc group; rep from * around, omitting last sc, sl st in first sc. Fasten off.
#= 168 | 24x3
`,
  `Ripplebrook Mat (UK terms)

Commence with 6 ch, join with ss to form a ring.
1st row: 3 ch (to stand for 1 tr), 15 tr into ring, ss to top of 3 ch.
#= 16 |
2nd row: 5 ch, * 1 tr into next tr, 2 ch; repeat from * to end, ss to 3rd of 5 ch.
#= 16 | 16x2
3rd row: Ss into sp, 3 ch, 2 tr into same sp, * 1 ch, 3 tr into next sp; repeat from * ending with 1 ch, ss to 3rd of 3 ch.
#= 48 | 16x1
4th row: Ss into next tr, 1 d.c. into same place, * 6 ch, 1 d.c. into centre tr of next group; repeat from * omitting 1 d.c. at end of last repeat, 1 ss into first d.c.
#= 16 | 16x6
5th row: Ss to centre of first loop, 1 d.c. into same loop, * 4 ch, into next loop work 3 d.tr., 3 ch, 3 d.tr. (shell made), 4 ch, 1 d.c. into next loop; repeat from * omitting 1 d.c. at end of last repeat, 1 ss into first d.c.
#= 56 | 8x3 16x4
6th row: Ss to sp of next shell, 4 ch, 2 d.tr., 3 ch, 3 d.tr. into same sp, * 5 ch, 1 d.c. into next d.c., 5 ch, into sp of next shell work 3 d.tr., 3 ch, 3 d.tr.; repeat from * ending with 5 ch, 1 d.c. into next d.c., 5 ch, 1 ss into 4th of 4 ch.
#= 56 | 8x3 16x5
7th row: Ss to sp, 4 ch, 1 d.tr., (3 ch, 2 d.tr.) twice into same sp, * 4 ch, 1 d.c. into next 5 ch loop, 3 ch, 1 d.c. into next 5 ch loop, 4 ch, into sp of next shell work 2 d.tr. (3 ch, 2 d.tr.) twice; repeat from * omitting shell at end of last repeat, 1 ss into 4th of 4 ch.
#= 64 | 24x3 16x4
8th row: Ss to next 3 ch sp, 1 d.c. into same sp, 5 ch, 1 d.c. into next 3 ch sp, * 5 ch, 1 d.c. into next 4 ch sp, 5 ch, miss 3 ch sp, 1 d.c. into next 4 ch sp, (5 ch, 1 d.c. into next 3 ch sp) twice; repeat from * ending with 5 ch, 1 d.c. into next 4 ch sp, 5 ch, miss 3 ch sp, 1 d.c. into next 4 ch sp, 5 ch, 1 ss into first d.c.
#= 32 | 32x5
9th row: Into each loop work 1 d.c., 1 h.tr., 3 tr., 1 h.tr., 1 d.c., 1 ss into first d.c. Fasten off.
#= 224 |
`,
  `Moorland Doily (US terms)

Ch 10, sl st in first ch to form ring.
Rnd 1: Ch 4, 31 tr in ring, sl st in top of ch 4. (32 tr)
#= 32 |
Rnd 2: Ch 1, sc in same st, *ch 5, sk 3 tr, sc in next tr; repeat from * around, ending with ch 5, sl st in first sc. (8 loops)
#= 8 | 8x5
Rnd 3: Sl st in next loop, ch 4, [2 trc, ch 3, 3 trc] in same loop, *ch 2, [3 trc, ch 3, 3 trc] in next loop; repeat from * around, ch 2, join.
#= 48 | 8x3 8x2
Rnd 4: Sl st to ch-3 sp, ch 4, in same sp work 2 trc, ch 3, 3 trc, *ch 3, sc in ch-2 sp, ch 3, in next ch-3 sp work 3 trc, ch 3, 3 trc; repeat from * around, ending last repeat with ch 3, sc in last ch-2 sp, ch 3, join.
#= 56 | 24x3
Rnd 5: Sl st to next ch-3 sp, [ch 4, 8 trc] in same sp, *ch 4, sk next ch-3 sp, sc in next sc, ch 4, sk next ch-3 sp, 9 trc in next ch-3 sp; repeat from * around, ending with ch 4, sc in last sc, ch 4, join in top of ch 4.
#= 80 | 16x4
Rnd 6: Ch 5 (counts as trc and ch-1), trc in next trc, [ch 1, trc in next trc] 7 times, *ch 3, sc in next sc, ch 3, trc in next trc, [ch 1, trc in next trc] 8 times; repeat from * around, ch 3, sc in next sc, ch 3, join in 4th ch of ch 5.
#= 80 | 64x1 16x3
Rnd 7: Sl st in ch-1 sp, ch 1, sc in same sp, [ch 3, sc in next ch-1 sp] 7 times, *ch 5, sk next 2 ch-3 sps, sc in next ch-1 sp, [ch 3, sc in next ch-1 sp] 7 times; repeat from * around, ch 5, join with sl st in first sc.
#= 64 | 56x3 8x5
Rnd 8: Sl st in ch-3 sp, ch 1, sc in same sp, [ch 3, sc in next ch-3 sp] 6 times, *ch 4, [dc, ch 3, dc] in next ch-5 sp, ch 4, sc in next ch-3 sp, [ch 3, sc in next ch-3 sp] 6 times; repeat from * around, ch 4, [dc, ch 3, dc] in next ch-5 sp, ch 4, join.
#= 72 | 56x3 16x4
Rnd 9: Sl st in ch-3 sp, ch 1, sc in same sp, [ch 3, sc in next ch-3 sp] 5 times, *ch 4, sk ch-4 sp, 9 dc in next ch-3 sp, ch 4, sk ch-4 sp, sc in next ch-3 sp, [ch 3, sc in next ch-3 sp] 5 times; repeat from * around, ch 4, sk ch-4 sp, 9 dc in next ch-3 sp, ch 4, join.
#= 120 | 40x3 16x4
Rnd 10: Sl st in ch-3 sp, ch 1, sc in same sp, [ch 3, sc in next ch-3 sp] 4 times, *ch 4, [dc in next dc, ch 1] 8 times, dc in next dc, ch 4, sc in next ch-3 sp, [ch 3, sc in next ch-3 sp] 4 times; repeat from * around, ch 4, [dc in next dc, ch 1] 8 times, dc in next dc, ch 4, join. Fasten off.
#= 112 | 32x3 16x4 64x1
`,
  `Larkspur Centerpiece

Abbreviations: US terms. lp = loop, tr = treble.
Chain 12, join with a slip stitch to form a ring.
Round 1—Ch 4, 3 tr in ring, (ch 4, 4 tr in ring) 5 times, ch 4. Join with sl st to top of ch 4.
#= 24 | 6x4
Round 2—Ch 4, holding back on hook the last lp of each tr make tr in each of next 3 tr, thread over and draw through all lps on hook (cluster made); * ch 5, sc in next lp, ch 5, make a cluster over the next 4 tr; repeat from * around, ending with ch 5, sc in last lp, ch 5. Join.
#= 12 | 12x5
Round 3—Sl st to center of next lp, sc in lp, * ch 6, sc in next lp; repeat from * around, ending with ch 3, dc in first sc.
#= 12 | 12x6
Round 4—* Ch 7, sc in next lp; repeat from * around, ending with ch 3, tr in dc.
#= 11 | 12x7
Round 5—Ch 4, 4 tr in loop just made, * ch 3, 5 tr in next loop; repeat from * around, ending with ch 3, join.
#= 60 | 12x3
Round 6—Ch 4, tr in each of next 4 tr, * ch 2, sc in next loop, ch 2, tr in each of next 5 tr; repeat from * around, ending with ch 2, sc in last loop, ch 2. Join.
#= 72 | 24x2
Round 7—Sl st in next tr, ch 4, tr in each of next 2 tr, * ch 5, sc in next sc, ch 5, skip next tr, tr in each of next 3 tr; repeat from * around, ending with ch 5, sc in last sc, ch 5. Join.
#= 48 | 24x5
Round 8—Sl st in next tr, sc in same tr, * (ch 5, sc in next loop) twice, ch 5, sc in center tr of next group; repeat from * around, ending with ch 5, sl st in first sc. Fasten off.
#= 36 | 36x5
`,
  `Sandbar Shawl (US terms)

Shell: 5 dc in same st.
V-stitch (V-st): (Dc, ch 1, dc) in same st or sp.

Ch 4, sl st in first ch to form ring.
Row 1 (RS): Ch 4 (counts as dc, ch 1), 3 dc in ring, ch 2, 3 dc in ring, ch 1, dc in ring, turn. (8 dc)
#= 8 | 2x1 1x2
Row 2: Ch 4, 3 dc in first ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in ch-2 sp, ch 1, 3 dc in last ch-1 sp, ch 1, dc in 3rd ch of turning ch, turn. (14 dc)
#= 14 | 4x1 1x2
Row 3: Ch 4, 3 dc in first ch-1 sp, ch 1, 3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in ch-2 sp, (ch 1, 3 dc in next ch-1 sp) twice, ch 1, dc in 3rd ch of turning ch, turn.
#= 20 | 6x1 1x2
Row 4: Ch 1, sc in first dc, *ch 3, sc in next ch-1 sp, ch 3, sc in center dc of next 3-dc group; rep from * to ch-2 sp, ch 3, (sc, ch 3, sc) in ch-2 sp, **ch 3, sc in center dc of next 3-dc group, ch 3, sc in next ch-1 sp; rep from ** across, ending with ch 3, sc in 3rd ch of turning ch, turn.
#= 16 | 15x3
`,
  `Scallop Lace Scarf (US terms)

Ch 38.
Row 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (6 shells)
#= 37 |
Row 2: Ch 5 (counts as dc, ch 2), sc in center dc of next shell, *ch 2, dc in next sc, ch 2, sc in center dc of next shell; rep from * across, ending with ch 2, dc in last sc, turn.
#= 13 | 12x2
Row 3: Ch 3, 2 dc in first dc, sc in next sc, *5 dc in next dc, sc in next sc; rep from * across, 3 dc in 3rd ch of turning ch-5, turn.
#= 37 |
Row 4: Ch 1, sc in first dc, *ch 2, dc in next sc, ch 2, sc in center dc of next shell; rep from * across to last sc, ch 2, dc in last sc, ch 2, sc in top of turning ch, turn.
#= 13 | 12x2
Row 5: Ch 1, sc in first sc, *5 dc in next dc, sc in next sc; rep from * across, turn.
#= 37 |
`,
  `Ending stitch (US terms)

Special stitches:
Shell: 5 dc in same st.
Ending dc: Dc in top of turning chain.
V: dc, ch 2, dc in same st or sp.
Beg V: ch 5, dc in same sp.

Ch 6, join to form a ring.
Rnd 1: Ch 1, 12 sc in ring, join. (12 sc)
Rnd 2: Ch 5, dc in same st, *sk 1 sc, V in next sc; rep from * around, join in 3rd ch of ch 5. (6 V)
#= 12 | 6x2
Rnd 3: Sl st in ch-2 sp, beg V in same sp, *ch 1, V in next V; rep from * around, ch 1, join. (6 V)
#= 12 | 6x2 6x1
Rnd 4: Sl st in ch-2 sp, ch 3, 4 dc in same sp, *sc in next ch-1 sp, shell in next V; rep from * around, sc in last ch-1 sp, join. (6 shells)
#= 36 |
Rnd 5: Sl st to center dc of shell, sc in same st, *ch 4, sc in next sc, ch 4, sc in center dc of next shell; rep from * around, ending with ch 4, sc in last sc, ch 4, join. (12 loops)
#= 12 | 12x4
`,
  `Corner mark (US terms)

Ch 4, join.
Rnd 1: Ch 3, 11 dc in ring, join. (12 dc)
#= 12 |
Rnd 2: Ch 3, dc in next dc, *2 dc, ch 2, 2 dc in next dc (makes corner), dc in next 2 dc; rep from * around, ending with 2 dc, ch 2, 2 dc in last dc, join.
#= 24 | 4x2
`,
  `Leaflet hook (US terms)

Ch 8, join.
1st rnd: Ch 5, 23 d tr in ring (thread over hook 3 times for d tr), join. 24 d tr.
#= 24 |
2nd rnd: Ch 6, * d tr in next d tr, ch 1; repeat from * around, join to 5th st of ch-6. (24 sps)
#= 24 | 24x1
3rd rnd: Sl st in sp, ch 3, dc in same sp, 2 dc in each sp around, join. (total 48 dc)
#= 48 |
4th rnd: Ch 4, holding last loop of each st on hook, make 2 tr in same st, thread over and through all loops on hook (cluster made), + ch 4, skip 2 dc, 3-tr cluster in next dc +; repeat from + to + around, ending with ch 4, join to top of 1st cluster. (16 clusters)
#= 16 | 16x4
5th rnd: Sl st in sp, 4 sc in same sp, 4 sc in each sp around making 5 petals.
`,
  `Petals (US terms)

Ch 6, join.
Rnd 1: Ch 1, (sc in ring, ch 5) 6 times, join. (6 lps)
#= 6 | 6x5
Rnd 2: In each lp around make: sc, hdc, 4 dc, hdc, sc. (6 petals made)
#= 48 |
Rnd 3: Ch 1, *sl st bet next 2 petals, ch 7; rep from * around making 6 loops.
#= 0 | 6x7
Rnd 4: In each loop make sc, hdc, 7 dc, hdc, sc, making 6 petals.
#= 66 |
Rnd 5: Sl st to 4th dc of first petal, ch 1, sc in same st, *ch 5, sc between petals, ch 5, sc in 4th dc of next petal; rep from * around, ending with ch 5, sc between petals, ch 5, join.
#= 12 | 12x5
Rnd 6: Sl st to center of lp, ch 6, dc in same lp, *ch 3, (dc, ch 3, dc) in next lp; rep from * around, ch 3, join to 3rd ch of ch-6. (12 V-sts)
#= 24 | 24x3
Rnd 7: Sl st in V, ch 3, 2 dc, ch 2, 3 dc in same sp, *sc in next ch-3 sp, in next V make 3 dc, ch 2, 3 dc; rep from * around, end with sc in last ch-3 sp, join. (12 shells)
#= 84 | 12x2
`,
  `Fans (UK terms)

6 ch, ss into ring.
1st round: 1 ch, 16 dc into ring, ss into first dc.
#= 16 |
2nd round: 6 ch, 1 tr into same place as ss, * miss 1 dc, (1 tr, 3 ch, 1 tr) into next dc; rep from * 6 times more, ss into 3rd of 6 ch. (8 V)
#= 16 | 8x3
3rd round: ss into 3-ch sp, 3 ch, 6 tr into same sp, * 7 tr into next 3-ch sp; rep from * all round, ss into 3rd of 3 ch.
#= 56 |
4th round: ss between first and last groups, 1 dc into same place, * 7 ch, 1 dc between next 2 groups; rep from * ending 7 ch, ss into first dc.
#= 8 | 8x7
5th round: 1 ch, 9 dc into each 7-ch loop, ss into first dc. (72 dc)
#= 72 |
6th round: ss into each of next 2 dc, 1 dc into same place, 1 dc into each of next 4 dc, * 5 ch, miss 4 dc, 1 dc into each of next 5 dc; rep from * ending 5 ch, miss 4 dc, ss into first dc.
#= 40 | 8x5
7th round: ss into next dc, 1 dc into same place, 1 dc into each of next 2 dc, * 4 ch, 1 dc into loop, 4 ch, miss 1 dc, 1 dc into each of next 3 dc; rep from * ending 4 ch, 1 dc into loop, 4 ch, ss into first dc.
#= 32 | 16x4
8th round: ss into next dc, 1 dc into same place, * 5 ch, (1 dc into next loop, 5 ch) twice, miss 1 dc, 1 dc into next dc; rep from * omitting last dc, ss into first dc.
#= 24 | 24x5
9th round: ss to centre of first loop, 4 ch, leaving last loop of each on hook work 2 dtr into same loop, yrh and draw through all loops (a cluster), * 5 ch, 3 dtr cluster into next loop; rep from * ending 5 ch, ss into top of first cluster. (24 clusters)
#= 24 | 24x5
10th round: 1 ch, (3 dc, 3 ch, 3 dc) into each loop to end, ss into first dc. Fasten off.
#= 144 | 24x3
`,
  `Bay Mat (US terms)

Ch 6, join to form a ring.
1st Row. Ch 1, 16 sc in ring, join.
2nd Row. *Ch 5, sk 1 sc, sc in next sc, repeat all around, join.
#= 8 | 8x5
3rd Row. Sl st to center of ch, ch 6, sc in next loop, ch 6, sc in next loop, repeat all around.
#= 7 | 8x6
4th Row. Sl st to center of ch, ch 7, sc in next loop, ch 7, sc in next loop, repeat all around.
#= 7 | 8x7
`,
  `Cove Centre (US terms)

Ch 6, join to form a ring.
1st rnd: Ch 1, 16 sc in ring, join.
2nd rnd: Sc in same place, *ch 5, sk 1 sc, sc in next sc. Repeat from * around, ending with ch 5, sl st in first sc.
#= 8 | 8x5
3rd rnd: Sl st in next sp, ch 3, in same sp make dc, ch 2 and 2 dc; * ch 4, sc in next loop, ch 4, in next loop make 2 dc, ch 2 and 2 dc (shell made). Repeat from * around, ending with ch 4, sc in last loop, ch 4. Join.
#= 20 | 4x2 8x4
4th rnd: Sl st in next dc and in next sp, ch 3, in same sp make dc, ch 2 and 2 dc; * ch 3, sc in next ch-4 loop, ch 3, sc in next ch-4 loop, ch 3, in sp of next shell make shell, ch 1 and shell. Repeat from * around, ending with shell, ch 1, sl st in top of ch-3.
#= 40 | 8x2 12x3 4x1
5th rnd: Sl st in next dc and in next sp, ch 3, in same sp make dc, ch 2 and 2 dc; * ch 4, sc in next ch-3 loop, (ch 3, sc in next loop) twice; ch 4, shell in sp of next shell (shell made over shell), ch 5, shell over shell. Repeat from * around. Join.
#= 44 | 8x2 8x4 8x3 4x5
6th rnd: Sl st in next dc and in next sp, ch 3, in same sp make dc, ch 2 and 2 dc; * ch 4, sc in next ch-3 loop, ch 3, sc in next loop; ch 4, shell over shell, ch 5, sc in next ch-5 loop, ch 5, shell over shell. Repeat from * around. Join.
#= 44 | 8x2 8x4 4x3 8x5
`,
  `Dune Mat (US terms)

Ch 8, join.
1st rnd: Ch 3, 17 dc in ring. Sl st in top of ch-3.
#= 18 |
2nd rnd: Sc in same place, *ch 8, sc in 4th ch from hook (picot made), ch 4, skip 2 dc, sc in next dc. Repeat from * around, ending with ch 4, sl st in first sc.
3rd rnd: Sl st to center of next picot, in same picot make sc, ch 7 and sc; * ch 4, picot, ch 4, in next picot make sc, ch 7 and sc. Repeat from * around, ending with ch 4, sl st in first sc.
#= 12 | 6x7 12x4
4th rnd: Sl st in next 3 ch, sl st in same loop, ch 3, in same loop make dc, ch 2 and 2 dc (shell made); * ch 5, in next picot make 2 dc, ch 2 and 2 dc (another shell made); ch 5, shell in next ch-7 loop. Repeat from * around. Join.
#= 48 | 12x2 12x5
`,
  `Estuary Mat (US terms)

Ch 8, join.
1st rnd: Ch 1, 12 sc in ring, join.
2nd rnd: Ch 4, holding back on hook the last loop of each tr make a 3-tr cluster in same place as sl st, ch 4, make another 3-tr cluster in same place as last cluster was made, * ch 6, sk 1 sc, in next sc make cluster, ch 4 and cluster. Repeat from * around. Join.
#= 12 | 6x4 6x6
3rd rnd: Sl st to center of next sp, sc in same sp, * ch 5, in center st of next chain make dc, ch 3 and dc; ch 5, sc in next sp. Repeat from * around. Join.
#= 18 | 6x3 12x5
`,
  `Alder Mat (US terms)

Ch 6, join to form a ring.
1st Round. Ch 1, 10 sc in ring, join.
2nd Round. *Ch 6, sc in next sc, repeat from * all around ending with ch 3, trc in first sc.
#= 9 | 9x6 1x7
3rd Round. *Ch 9, sc in next loop, repeat from * all around ending with ch 4, double crochet treble ([d trc] 3 times over hook) in trc.
#= 9 | 10x9
4th Round. *Ch 9, sc in next loop, repeat from * all around ending with ch 4, d trc (3 times over hook) in d trc.
#= 9 | 10x9
5th Round. *Ch 10, sc in next loop, repeat from * all around ending with ch 5, double treble crochet (dtr: thread 3 times over hook) in d trc.
#= 9 | 10x10
`,
  `Fir Ring (US terms)

1st Rnd: Ch 4, dc in 1st st of ch, * ch 3, 2 dc in same space, repeat from * 4 times, ch 3, join in 4th st of ch.
#= 12 | 6x3
`,
  `Gorse Mat (US terms)

Ch 8, join.
Rnd 1: Ch 1, 24 sc in ring, join.
Rnd 2: Sc in same place, *ch 3, skip 1 sc, sc in next sc. Repeat from * around, ending with ch 3, sl st in first sc.
#= 12 | 12x3
Rnd 3: Sl st in next ch, sc in loop, ch 7, * tr in next loop, ch 3. Repeat from * around. Join last ch 3 to 4th ch of ch-7.
#= 12 | 12x3
Rnd 4: Ch 4, tr in same place as sl st, * ch 3, 2 tr in next tr. Repeat from * around. Join.
#= 24 | 12x3
Rnd 5: Ch 4, tr in next tr, * ch 4, tr in next 2 tr. Repeat from * around. Join.
#= 24 | 12x4
Rnds 6 to 9 incl: Repeat 5th rnd, having ch-4 between tr-groups on 6th rnd, ch-5 on 7th rnd, ch-6 on 8th and 9th rnds.
#= 24 | 12x6
`,
  `Hazel Doily (US terms)

Ch 6, join with a sl st into a ring.
1ST ROUND: Ch 4, 9 tr into ring, a sl st in top st of ch 4 at beginning of round.
#= 10 |
2ND ROUND: Ch 1, 1 sc in same st as last sl st, * ch 5, 1 sc in next tr; repeat from * around ending with ch 5, a sl st in first sc of round (there will be 10 chain loops in round).
#= 10 | 10x5
3RD ROUND: A sl st in each of next 2 sts, ch 1, 1 sc in same (ch 5) loop as last sl st, * ch 6, 1 sc in next (ch 5) loop; repeat from * around ending with ch 6, a sl st in first sc of round.
#= 10 | 10x6
4TH ROUND: Same as last round but ch 7 instead of ch 6.
#= 10 | 10x7
5TH ROUND: A sl st in each of 4 sts, ch 4, 3 tr in same st as last sl st, * ch 3, 4 tr in center st of next (ch 7) loop; repeat from * around ending with ch 3, a sl st in top st of first ch 4.
#= 40 | 10x3
`,
  `Heather Doily (US terms)

Ch 6, join.
1st Round. Ch 1, 20 sc in ring, join.
2nd Round. Ch 6, d c in next s c, * ch 3, skip 3 s c, tr c in next s c, ch 3, tr c in next s c (shell), ch 3, skip 3 s c, d c in next s c, ch 3, d c in next s c (shell), repeat from * all around ending round with ch 3, skip 3 s c, tr c in next s c, ch 3, tr c in next s c, ch 3, join in 3rd st of ch.
#= 8 | 8x3
3rd Round. Sl st into loop, ch 3 (counts as part of 1st cluster st), 2 cluster sts with ch 5 between in same space, * ch 1, skip 1 loop, 2 cluster sts with ch 5 between in center of next shell, repeat from * all around, ch 1, join in 3rd st of ch.
#= 8 | 4x1 4x5
`,
  `Hop Scarf (US terms)

Special stitches: Double V-stitch (2V-st): (Dc, ch 2, 2 dc, ch 2, dc) in indicated st or sp. Fan: 4 dc in indicated sp.

Row 1 (RS): Ch 31, dc in 4th ch from hook (beg 3 sk chs count as first dc), [sk next 3 chs, 2V-st in next ch, sk next 3 chs, dc in each of next 2 chs] 3 times, turn. (8 dc, 3 2V-sts)
#= 20 | 6x2
Row 2: Ch 4 (counts as dc, ch 1), fan in each ch-2 sp of next 2V-st, [ch 2, fan in each ch-2 sp of next 2V-st] twice, ch 1, sk next 2 dc, dc in top of beg ch-3, turn. (2 dc, 6 fans, 2 ch-1 sps, 2 ch-2 sps)
#= 26 | 2x1 2x2
Row 3: Ch 3, dc in first ch-1 sp, 2V-st in sp between next 2 fans, [2 dc in next ch-2 sp, 2V-st in sp between next 2 fans] twice, dc in last ch-1 sp, dc in 3rd ch of beg ch-4, turn. (8 dc, 3 2V-sts)
#= 20 | 6x2
Row 4: Rep row 2.
#= 26 | 2x1 2x2
`,
  `Maple Mat (US terms)

Ch 8, join.
1ST ROUND: Ch 4, 1 tr in ring, ch 2, (2 tr, ch 2) 7 times in ring, join in top of ch 4.
#= 16 | 8x2
2ND ROUND: Work a shell in first space as follows: A sl st in next tr, a sl st in next (ch 2) loop, ch 4, (1 tr, ch 2 and 2 tr) all in same chain loop as last sl st (first shell will always be worked this way), * ch 1, (always working shells in ch 2 loop of shells below) work a shell of (2 tr, ch 2 and 2 tr) in next ch-2 loop; repeat from * around, end with ch 1, a sl st in top st of first ch 4.
#= 32 | 8x2 8x1
`,
  `Mallow Block (US terms)

1st rnd: Ch 4, make 11 half dc in 3rd ch from hook. Join with sl st to top st of ch-4.
2nd rnd: Ch 3 (to count as dc), dc in same place as joining, 2 dc in each of next 11 half dc (24 dc in all). Join to top of ch-3.
#= 24 |
3rd rnd: Ch 3, 2 dc in same place as sl st; * ch 4, sc in 1st ch of ch-4 (a p made); skip 2 dc, 3 dc in next dc. Repeat from * around, ending with p, join.
#= 24 |
`,
  `Moss Shawl (US terms)

Chain 6, join to form a ring.
Row 1: Chain 4 (counts as first dc and ch-1), dc, ch 1, (3 dc, ch 2, 3 dc)-shell made-, ch 1, dc-ch 1-dc (V-stitch made). Ch 4, turn.
#= 10 | 4x1 1x2
`,
  `Nettle Square (US terms)

Ch 10, join.
1st rnd: Ch 4, 11 tr in ring. Join.
2nd rnd: Sc in same place as sl st, * ch 7, skip 1 tr, sc in next tr. Repeat from * around. Join.
#= 6 | 6x7
3rd rnd: Sl st in next loop, ch 3, 6 dc in same loop, * in next loop make dc, ch 9 and dc; 7 dc in next loop. Repeat from * around. Join.
#= 27 | 3x9
4th rnd: Sl st in next 3 dc, ch 8, dc in same place as last sl st, * in next loop make 5 dc, ch 5 and 5 dc; in center dc of next group make dc, ch 5 and dc. Repeat from * around. Join to 3rd ch of ch-8.
#= 36 | 6x5
5th rnd: Sl st in next loop, ch 4, 6 tr in same loop, * ch 3, 13 tr in next loop, ch 3, 7 tr in next loop. Repeat from * around. Join.
#= 60 | 6x3
6th rnd: Ch 5, (tr in next tr, ch 1) 5 times; tr in next tr, * ch 3, (tr in next tr, ch 1) 6 times; in next tr make tr, ch 5 and tr; (ch 1, tr in next tr) 6 times; ch 3, (tr in next tr, ch 1) 6 times; tr in next tr. Repeat from * around. Join to 4th ch of ch-5.
#= 63 | 54x1 6x3 3x5
`,
  `Narcissus Square (US terms)

Ch 10, join.
1st rnd: Ch 4, holding back on hook the last loop of each tr, make 2 tr in ring, thread over and draw through all loops on hook (cluster made); * ch 5, make a 3-tr cluster in ring. Repeat from * until 8 clusters in all are made; ch 5. Join to tip of first cluster.
#= 8 | 8x5
2nd rnd: Sl st in next sp, ch 4, in same sp make 2-tr cluster, ch 5 and 3-tr cluster; * ch 3, 7 dc in next sp, ch 3, in next sp make cluster, ch 5 and cluster. Repeat from * around. Join.
#= 36 | 8x3 4x5
3rd rnd: Sl st in next sp, ch 4, in same sp make 2-tr cluster, (ch 5, 3-tr cluster) twice; * ch 3, (dc in next dc, ch 1) 6 times; dc in next dc, ch 3, skip next sp, in next sp make (cluster, ch 5) twice and cluster. Repeat from * around. Join.
#= 40 | 24x1 8x3 8x5
4th rnd: Sl st in next sp, ch 3, dc in same sp, ch 3, 2 dc in same sp (shell made); * ch 7, in next sp make 2 dc, ch 3 and 2 dc (another shell made); (ch 3, sc in next ch-1 sp) 6 times; ch 3, skip next sp, shell in next sp. Repeat from * around. Join.
#= 56 | 36x3 4x7
5th rnd: Sl st in next dc and in next sp, ch 3, in same sp make dc, ch 3 and 2 dc (shell made over shell), * ch 3, 7 tr in next ch-7 sp, ch 3, shell over next shell, ch 3, skip next sp, (sc in next loop, ch 3) 5 times; shell over next shell. Repeat from * around. Join.
#= 80 | 40x3
`,
  `Quillwort Mat (US terms)

Ch 8, join.
Rnd 1: Ch 1, 16 sc in ring, join.
Rnd 2: Ch 5, dc in same space, *ch 5, skip 1 sc, 1 dc, ch 3, 1 dc in next sc, repeat from * all around, ch 5, join in 3rd st of ch.
#= 16 | 7x3 1x2 8x5
Rnd 3: Sl st into loop, ch 3, dc in same space, ch 3, 2 dc in same space, * ch 3, skip 1 loop, 8 trc in next loop, ch 3, skip 1 loop, 2 dc, ch 3, 2 dc (shell) in next loop, repeat from * all around ending row with ch 3, skip 1 loop, 8 trc in next loop, ch 3, join in 3rd st of ch.
#= 48 | 12x3
Rnd 4: Sl st into center of shell, ch 3, dc in same space, ch 3, 2 dc in same space, * ch 3, 1 trc in each trc with ch 1 between each trc, ch 3, 2 dc, ch 3, 2 dc (shell) in center of next shell, repeat from * all around ending row with ch 3, 1 trc in each trc with ch 1 between each trc, ch 3, join in 3rd st of ch.
#= 48 | 28x1 12x3
`,
  `Quince Doily (US terms)

Ch 10, join.
1st rnd: Ch 5, * tr in ring, ch 1. Repeat from * until there are 15 tr in ring, ch 1, sl st in 4th st of ch-5.
#= 16 | 16x1
2nd rnd: * Sc in next sp, ch 5, holding back on hook the last loop of each tr, make 3 tr in next sp, thread over and draw through all loops on hook (cluster made), ch 5. Repeat from * around, ending with ch 5, sl st in 1st sc made.
#= 16 | 16x5
3rd rnd: Sl st in next 3 ch, sc in loop, * ch 5, sc in next loop. Repeat from * around, ending with ch 2, dc in 1st sc made.
#= 16 | 16x5
4th rnd: Ch 9, * tr in next loop, ch 5. Repeat from * around. Sl st in 4th st of ch-9.
#= 16 | 16x5
`,
];

it.each(PIECES.map((piece) => [piece.slice(0, piece.indexOf('\n')), piece] as const))(
  'each round of %s',
  (_, piece) => {
    const { text, made } = told(piece);
    expect(complaints(text).filter((one) => !/row-missing|special-unused/.test(one))).toEqual([]);
    const { rows } = compile(text, { fixes: false });
    expect(made.map(({ end }) => madeBefore(rows, end))).toEqual(made.map(({ is }) => sorted(is)));
  },
);
