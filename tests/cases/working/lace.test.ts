/** Lace, squares and motifs: each piece is right. What its rows make, summed by hand, and no complaint. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const ring = (...lines: readonly string[]): string =>
  `Sample (US terms)\n\nMake a magic ring.\n${lines.join('\n')}\n`;

const SQUARE = 'Rnd 1: Ch 3, 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times, join. (12 dc)';
const LOOPS =
  'Rnd 1: Ch 1, 12 sc in ring, join.\n' +
  'Rnd 2: Ch 1, sc in first sc, *ch 5, sk next sc, sc in next sc; rep from * around, ending with ch 5, join. (6 ch-5 lps)';

it.each([
  [
    'several in "same loop" behind one in the next: 6 loops hold 3 x (3 clusters and a sc), less the last sc',
    ring(
      LOOPS,
      'Rnd 3: Sl st in next 2 ch, sc in same lp, *ch 5, 3-tr cluster in next lp, (ch 3, 3-tr cluster in same lp) twice, ' +
        'ch 5, sc in next lp; rep from * around, joining last ch 5 with sl st in first sc.',
    ),
    ['Rnd 3 12 unstated'],
  ],
  [
    'the space in which a slip stitch stands, where a repeat goes round: 6 x 3',
    ring(LOOPS, 'Rnd 3: Sl st in next lp, *3 dc in next lp, ch 1; rep from * around, join.'),
    ['Rnd 3 18 unstated'],
  ],
  [
    'the same stitch in the other terms, in braces or brackets',
    ring(
      'Rnd 1: Ch 3, 11 dc {tr} in ring, join. (12 dc {tr})',
      'Rnd 2: Ch 1, 2 sc (dc) in each dc {tr} around, join. (24 sc {dc})',
    ),
    ['Rnd 1 12 proven', 'Rnd 2 24 proven'],
  ],
  [
    'how a stitch is made, told in brackets behind it',
    ring(
      LOOPS,
      'Rnd 3: Sl st in next lp, ch 1, *2-tr cluster in next lp (2-tr cluster: holding back last loop of each tr work 2 tr in ' +
        'same lp, yo and draw through all loops), ch 4; rep from * around, join.',
    ),
    ['Rnd 3 6 unstated'],
  ],
  [
    'a shell told in brackets where it is first worked, and worked by its name then',
    ring(
      LOOPS,
      'Rnd 3: Sl st in next lp, *shell in next lp (shell: 2 dc, ch 2, 2 dc), ch 1; rep from * around, join. (6 shells)',
      'Rnd 4: Sl st to ch-2 sp, *shell in next shell, ch 2; rep from * around, join. (6 shells)',
    ),
    ['Rnd 3 24 proven', 'Rnd 4 24 proven'],
  ],
  [
    'what is worked "for a shell"',
    ring(
      LOOPS,
      'Rnd 3: Sl st in next lp, ch 1, *(2 dc, ch 2, 2 dc) for a shell in next lp, ch 1; rep from * around, join.',
      'Rnd 4: Sl st to ch-2 sp, *shell in next shell, ch 2; rep from * around, join. (6 shells)',
    ),
    ['Rnd 3 24 unstated', 'Rnd 4 24 proven'],
  ],
  [
    'chains of a point by their numbers, and a stitch by its number behind a skip: 6 x (5 + 1)',
    ring(
      'Rnd 1: 24 dc in ring, join. (24 dc)',
      'Rnd 2: *6 ch, 1 sc in 2nd ch from hook, 1 hdc in third ch, 1 dc in fourth ch, 1 tr in fifth ch, 1 tr in 6th ch, ' +
        'skip 3 dc, 1 sc in fourth dc* 6 times, join. (36 sts)',
    ),
    ['Rnd 2 36 proven'],
  ],
  [
    'a count in the midst of a pass: 8 x (11 x 3 + 2)',
    ring(
      'Rnd 1: 16 sc in ring. (16 sc)',
      'Rnd 2: *Ch 12, 3 sc in 2nd ch from hook, 3 sc in each ch (33 sc), sc in next 2 sts; rep from * around.',
    ),
    ['Rnd 2 280 unstated'],
  ],
  [
    'corners told behind a walk that goes round',
    ring(
      SQUARE,
      'Rnd 2: Ch 1, sc in each dc around, working 3 sc in each corner ch-2 sp, join. (24 sc)',
      'Rnd 3: Ch 3, dc in each sc around, working (dc, ch 2, dc) in center sc of each corner, join. (28 dc)',
      'Rnd 4: Ch 1, sc in each st around, working 3 sc in corners, join. (40 sc)',
      'Rnd 5: Ch 1, sc around, with 3 sc in center of each corner. Join. (48 sc)',
      'Rnd 6: Ch 1, sc in each st around, making 3 sc in center st of each 3-sc group, join. (56 sc)',
      'Rnd 7: Ch 1, sc in each st around, making 5 sc in center st of 3 sc for corner, join. (72 sc)',
      'Rnd 8: Ch 1, sc in each st around, (sc, ch 2, sc) in the 4 corners, join. (76 sc)',
    ),
    [
      'Rnd 2 24 proven',
      'Rnd 3 28 proven',
      'Rnd 4 40 proven',
      'Rnd 5 48 proven',
      'Rnd 6 56 proven',
      'Rnd 7 72 proven',
      'Rnd 8 76 proven',
    ],
  ],
  [
    'a round that begins in a space with a chain and stitches: the chain is one of them, 6 x 7',
    ring(LOOPS, 'Rnd 3: Sl st in next lp, ch 3, 6 dc in same lp, *7 dc in next lp; rep from * around. Join. (42 dc)'),
    ['Rnd 3 42 proven'],
  ],
  [
    'shells in shells, wherever the round begins: 6 x 4',
    ring(
      LOOPS,
      'Rnd 3: Ch 1, *(2 dc, ch 2, 2 dc) in next lp, ch 1; rep from * around, join. (24 dc)',
      'Rnd 4: Sl st in next dc and ch-2 sp, ch 3, (dc, ch 2, 2 dc) in same sp, ch 2, *(2 dc, ch 2, 2 dc) in next shell, ch 2; rep from * around, join. (24 dc)',
      'Rnd 5: Ch 1, *(2 dc, ch 2, 2 dc) in next shell, ch 3, sc in next ch-2 sp, ch 3; rep from * around, join. (24 dc, 6 sc)',
      'Rnd 6: Sl st to ch-2 sp, ch 3, (dc, ch 2, 2 dc) in same sp, *ch 3, sc in next sc, ch 3, (2 dc, ch 2, 2 dc) in next shell; rep from * around, ending with ch 3, sc in next sc, ch 3, join. (24 dc, 6 sc)',
    ),
    ['Rnd 3 24 proven', 'Rnd 4 24 proven', 'Rnd 5 30 proven', 'Rnd 6 30 proven'],
  ],
  [
    'V-stitches and petals that bear their name nowhere but in the count',
    ring(
      'Rnd 1: Ch 3, 15 dc in ring, join. (16 dc)',
      'Rnd 2: Ch 5 (counts as dc, ch 2), dc in first st, *ch 1, sk next dc, (dc, ch 2, dc) in next dc; rep from * 6 more times, ch 1, join. (8 V-sts, 8 ch-1 sps)',
      'Rnd 3: Sl st in next ch-2 sp, ch 3, 6 dc in same sp, sc in next ch-1 sp, *7 dc in next ch-2 sp, sc in next ch-1 sp; rep from * around. Join. (8 petals)',
    ),
    ['Rnd 2 16 proven', 'Rnd 3 64 proven'],
  ],
  [
    'groups and corners of a granny square',
    ring(
      `${SQUARE} (4 corners)`,
      'Rnd 2: Sl st to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, join. (8 3-dc groups)',
      'Rnd 3: Sl st to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around, join. (12 groups, 4 corners)',
    ),
    ['Rnd 1 12 proven', 'Rnd 2 24 proven', 'Rnd 3 36 proven'],
  ],
  [
    'each dc of a group, not of the round: 6 x 3',
    ring(
      'Rnd 1: Ch 6, (dc in ring, ch 3) 5 times, join in 3rd ch of beg ch-6. (6 ch-3 sps)',
      'Rnd 2: Ch 3, 2 dc in same first st, *ch 4, 3 dc in next dc; rep from * 4 times more, ch 4, join. (18 dc)',
      'Rnd 3: Ch 3, dc in each of next 2 dc, *ch 5, dc in each dc; rep from * 4 times more, ch 5, join. (18 dc)',
    ),
    ['Rnd 2 18 proven', 'Rnd 3 18 proven'],
  ],
  [
    'a list worked so often in one place: 7 dc with a ch 1 each, 4 x 2 dc',
    ring(
      'Rnd 1: In ring work dc, ch 1 seven times, join. (7 dc, 7 ch-1 sps)',
      'Rnd 2: Ch 1, sc in each dc around, join. (7 sc)',
    ),
    ['Rnd 1 7 proven', 'Rnd 2 7 proven'],
  ],
  [
    'chains before the last stitch span what lies between',
    'Ch 20.\nRow 1: Dc in 4th ch from hook, *ch 3, sk 3 ch, dc in next ch; rep from * twice, ch 3, dc in last ch, turn. (6 dc)',
    ['Row 1 6 proven'],
  ],
  [
    'rounds of loops that end in the middle of a loop: 8 loops each, 7 sc and what closes the last',
    'Ch 6, join to form ring.\n' +
      'Rnd 1: Ch 1, 8 sc in ring, join in first sc.\n' +
      'Rnd 2: *Ch 10, sc in next sc, repeat from * 6 times, ch 4, d tr in next sc. (8 loops)\n' +
      'Rnd 3: *Ch 7, sc in next loop, repeat from * all around ending with ch 3, tr in d tr. (8 loops)\n' +
      'Rnd 4: *Ch 9, sc in next loop, repeat from * all around ending with ch 4, dtr in tr. (8 loops)\n' +
      'Rnd 5: Ch 1, sc in same loop, *ch 9, sc in next loop, repeat from * all around ending with ch 4, dtr in first sc. (8 loops)\n' +
      'Rnd 6: Ch 1, sc in same lp, *ch 5, sc in next lp; rep from * around, ending with ch 5, sl st in first sc. (8 loops)',
    ['Rnd 3 7 proven', 'Rnd 4 7 proven', 'Rnd 5 8 proven', 'Rnd 6 8 proven'],
  ],
  [
    'a tall start chain of a pair, and the first stitches of the next petal',
    'Ch 8, join.\n' +
      'Rnd 1: Ch 1, 12 sc in ring, join with sl st in 1st sc.\n' +
      'Rnd 2: Ch 5, tr in same sc, (ch 6, sk 1 sc, 2 tr in next sc) 5 times, ch 6, join to top of ch-5. (12 tr, 6 sps)\n' +
      'Rnd 3: Ch 3, dc in next tr, (9 dc in next sp, dc in next 2 tr) 5 times, 9 dc in next sp, join to ch-3. (66 dc)\n' +
      'Rnd 4: Sl st in next 2 dc, ch 3, dc in next 8 dc, (ch 7, sk 2 dc, dc in next 9 dc) 5 times, ch 7, join to ch-3. (54 dc)\n' +
      'Rnd 5: Ch 3, dc in next 2 dc, *holding back last lp of each dc make dc in next 3 dc, yo and draw through all lps on hook, ' +
      'dc in next 3 dc, ch 5, sc in next ch-7 lp, ch 5, ** dc in 1st 3 dc of next petal. Repeat from * 4 times and from * to ** again; join to ch-3. (48 sts)',
    ['Rnd 2 12 proven', 'Rnd 3 66 proven', 'Rnd 4 54 proven', 'Rnd 5 48 proven'],
  ],
  [
    'from the centre stitch of a group, as often as the words say and once more: 8 groups',
    'Ch 6, join.\nRnd 1: Ch 1, 8 sc in ring, join in first sc.\n' +
      'Rnd 2: Ch 3, dc in same st, *ch 2, 2 dc in next sc, repeat from * around, ch 2, join.\n' +
      'Rnd 3: Sl st to ch-2 sp, ch 3, 4 dc in same sp, *ch 7, 5 dc in next ch-2 sp, repeat from * around, ch 7, join. (40 dc)\n' +
      'Rnd 4: Sl st to center dc of 1st dc group, *ch 3, sc in same space, ch 3, dc in center st of next loop, ch 5, dc in same space, ' +
      'ch 3, sc in center dc of next dc group, repeat from * 6 times, ch 3, sc in same space, ch 3, dc in center st of next loop, ch 5, ' +
      'dc in same space, ch 3, join in same space as beginning. (8 ch-5 sps)',
    ['Rnd 3 40 proven', 'Rnd 4 31 proven'],
  ],
  [
    'chains between the stitches of a group, 5 x 4, and shells named in brackets before their place',
    ring(
      'Rnd 1: Ch 1, (sc in ring, ch 3) 5 times, join. (5 sc)',
      'Rnd 2: Ch 1, *5 tr in next ch-3 sp, ch 3; rep from * around, join. (25 tr)',
      'Rnd 3: Ch 1, *1 tr in each tr with ch 1 between each tr, ch 3, sc in next ch-3 sp, ch 3; rep from * around, join. (25 tr, 20 ch-1 sps)',
      'Rnd 4: Ch 1, *sc in next ch-1 sp, (ch 3, sc in next ch-1 sp) 3 times, ch 3, 2 dc, ch 2, 2 dc (shell) in next sc, ch 3; rep from * around, join. (20 sc, 20 dc)',
      'Rnd 5: Sl st in next lp, ch 1, *sc in next lp, (ch 3, sc in next lp) twice, ch 3, shell in next shell, ch 3; rep from * around, join. (5 shells)',
    ),
    ['Rnd 2 25 proven', 'Rnd 3 30 proven', 'Rnd 4 40 proven'],
  ],
  [
    'a start chain that is part of a first cluster',
    'Ch 10, join.\nRnd 1: Ch 4, 31 tr in ring, join in 4th st of ch. (32 tr)\n' +
      'Rnd 2: Ch 4 (always counts as part of first cluster), 2 tr in same st keeping last loop of each tr on hook, thread over and ' +
      'work off all loops at one time, *ch 3, sk 1 tr, cluster in next tr (cluster: 3 tr in same st keeping last loop of each on hook, ' +
      'thread over and work off all loops), rep from * around, ch 3, join in top of first cluster. (16 clusters)\n' +
      'Rnd 3: Ch 4, cluster in same sp, *ch 3, tr in next sp, ch 3, cluster in next cluster, rep from * around, ending with ch 3, tr in last sp, ch 3, join. (16 clusters, 16 tr)',
    ['Rnd 2 16 proven', 'Rnd 3 32 proven'],
  ],
  [
    'an ending that leaves the last skip to its chain: 4 x 6 dc and 4 x 5 tr',
    'Ch 8, join.\nRnd 1: Ch 1, 16 sc in ring, join. (16 sc)\nRnd 2: Ch 1, 4 sc in each sc around, join. (64 sc)\n' +
      'Rnd 3: Ch 3, 2 dc in same st, ch 3, 3 dc in same st, *ch 6, sk 7 sc, 5 tr in next sc, ch 6, sk 7 sc, (3 dc, ch 3, 3 dc) in next sc, ' +
      'repeat from * all around ending with ch 6, sk 7 sc, 5 tr in next sc, ch 6, join. (24 dc, 20 tr, 8 ch-6 sps)',
    ['Rnd 3 44 proven'],
  ],
  [
    'to the last stitch of a group, in each pass: 8 groups grow by one, and then shrink',
    'Ch 8, join.\nRnd 1: 15 sc in ring (do not join rnds).\n' +
      'Rnd 2: Ch 3, sc in first sc, (ch 3, sk 1 sc, sc in next sc) 7 times.\n' +
      'Rnd 3: *Ch 3, 2 sc in next loop; repeat from * around. (16 sc)\n' +
      'Rnd 4: *Ch 3, 2 sc in next sp, sc in next sc; repeat from * around. (24 sc)\n' +
      'Rnd 5: *Ch 3, 2 sc in next sp, sc in each sc to within last sc of group; repeat from * around. (32 sc)\n' +
      'Rnd 6: *Ch 3, 2 sc in next sp, sc in each sc to within last sc of group; repeat from * around. (40 sc)\n' +
      'Rnd 7: *Ch 3, sc in next sp, ch 3, skip 1 sc, sc in each sc across to within last sc of group; repeat from * around. (32 sc)',
    ['Rnd 5 32 proven', 'Rnd 6 40 proven', 'Rnd 7 32 proven'],
  ],
  [
    'a round behind petals, whose second chain is said to count',
    'Ch 4, join.\n' +
      'Rnd 1: Ch 4 to count as the first dc and the first ch 1, (dc in ring, ch 1) 7 times; join with a sl st in the 3rd ch of the beg ch 4. (8 dc)\n' +
      'Rnd 2: (Ch 1, 3 dc in the next ch 1 sp, ch 1, sl st in the next dc) 8 times: join with a sl st in the joining sl st. (24 dc)\n' +
      'Rnd 3: Ch 1, from the back, sl st around the post of the first dc on rnd 1, directly below; ch 5 to count as the first dc and the first ' +
      'ch 2, (bpdc around the next dc on rnd 1, ch 2) 7 times; join with a sl st in 3rd ch of beg ch 5. (8 ch-2 sps)\n' +
      'Rnd 4: (Ch 1, 5 dc in the next ch 2 sp, ch 1, sl st in the next dc) 8 times: join with a sl st in the joining sl st. (40 dc)',
    ['Rnd 2 24 proven', 'Rnd 3 8 proven', 'Rnd 4 40 proven'],
  ],
  [
    'a square whose counts stand behind semicolons, and dashes that say where a corner lies',
    'With B, ch 2 for center, work 4 sc in 2nd ch from hook.\n' +
      'Round 2–Do not turn, working in back loop of each sc, work 3 sc in each of 4 sc; 12 sc. Mark last sc for end of round.\n' +
      'Round 3–Do not turn, 1 sc in next sc, * 3 sc in next sc–center sc of corner, 1 sc in each of next 2 sc; repeat from * twice more, 3 sc in next sc, 1 sc in last sc of round; 20 sc.\n' +
      'Round 4–1 sc in each of next 2 sc, * 3 sc in corner sc, 1 sc in each of next 4 sc; repeat from * twice more, 3 sc in corner sc, 1 sc in each of next 2 sc; 28 sc.',
    ['Rnd 2 12 proven', 'Rnd 3 20 proven', 'Rnd 4 28 proven'],
  ],
  [
    'skips that list what they pass: 4 + 1 + 2 + 2 stitches',
    'With A, ch 5.\nRow 1 (RS): Dc in 4th ch from hook, ch 1, tr in same ch, tr in next ch, turn.\n' +
      'Row 2 (WS): Ch 4 (counts as tr), tr in next tr, ch 3, (dc, ch 1, dc) in next ch-1 sp, turn. (4 sts)\n' +
      'Row 3: Ch 3 (counts as dc), (dc, ch 1, 2 dc) in next ch-1 sp, ch 1, sk next (dc, 1 ch), sc in next ch, ch 1, sk next ch, ' +
      '(2 dc, ch 1, tr) in next tr, tr in next tr, turn. (9 sts)',
    ['Row 2 4 proven', 'Row 3 9 proven'],
  ],
  [
    'a yarn of several names, and a group in the next space and in each',
    ring(
      'Rnd 1: Ch 3, dc in ring, ch 1, (2 dc in ring, ch 1) 5 times, join. (12 dc)',
      'Rnd 2: Attach Pale Spray or Linen in any ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, [2 dc, ch 1, 2 dc] in next ch-1 sp and each ch-1 sp around; join. (24 dc)',
    ),
    ['Rnd 2 24 proven'],
  ],
  [
    'where to look it up, told between a stitch and its place; a beginning cluster among the 12',
    'Special stitches\nBeginning 3-double crochet cluster (beg 3-dc cl): Ch 2, yo, insert hook in next st, yo, draw up a lp, yo, draw through 2 lps on hook, yo, draw through all lps on hook.\n' +
      '3-double crochet cluster (3-dc cl): Yo, insert hook in next st, yo, draw up a lp, yo, draw through 2 lps on hook, yo, draw through all 4 lps on hook.\n\nMake a magic ring.\n' +
      'Rnd 1: Ch 4 (see Pattern Notes), (dc, ch 1) 11 times in ring, join (see Pattern Notes) in 3rd ch of beg ch-4. (12 dc, 12 ch-1 sps)\n' +
      'Rnd 2: Sl st in ch-1 sp, beg 3-dc cl (see Special Stitches) in same ch-1 sp, ch 3, [3-dc cl (see Special Stitches) in next ch-1 sp, ch 3] around, join in top of beg 3-dc cl. (12 3-dc cls, 12 ch-3 sps)',
    ['Rnd 1 12 proven', 'Rnd 2 12 proven'],
  ],
  [
    'the last stitch left out in a sentence of its own, and scanned loops: 4 x 6 less one',
    ring(
      'Rnd 1: Ch 1, 32 sc in ring, join. (32 sc)',
      'Rnd 2: Sl st in first sc, ch 1, sc in same sc, *sk 3 sc, 5 dc in next sc, sk 3 sc, sc in next sc; rep from * 3 times. Omit last sc. Join. (20 dc, 4 sc)',
      'Rnd 3: Ch 1, (sc in next dc, ch 3) 19 times, sc in next dc, ch 1, hdc in beg sc. (20 ch Ips)',
    ),
    ['Rnd 2 24 proven'],
  ],
  [
    'a V-stitch defined by numbers, "worked into" its space: 6 + 6 x 2',
    'Special Stitches:\nV-ST – [1 DC; 1 CH; 1 DC] worked into CH space\n\nMake a magic ring.\nRnd 1: 12 dc in ring, join. (12 dc)\n' +
      'Rnd 2: *Dc in next dc, V-st in next dc; rep from * 5 more times, join. (6 dc, 6 V-sts)',
    ['Rnd 2 18 proven'],
  ],
  [
    'the last skip left to the join, where the counts agree: 6 x 4 in 12',
    'CH 6; SL ST to form a ring;\nRND 1: CH 3 (counts as 1 DC); work 11 DC into ring, join. (12 DC)\n' +
      'RND 2: CH 3 (counts as 1 DC); work [1 DC; CH 1; 2 DC] into same st; *SKIP next DC; work [2 DC; CH 1; 2 DC] into next DC. ' +
      'Repeat from * 4 more times; SL ST into 3rd of 3 CH. (24 DC; 6 ch-1 spaces)',
    ['Rnd 2 24 proven'],
  ],
  [
    'a round whose passes end with "(ch 5, sc in next lp) twice", the last sc of which is the join: 3 x 6 loops of 12',
    ring(
      LOOPS,
      'Rnd 3: Sl st in next 2 ch, sc in same lp, *ch 5, 3-tr cluster in next lp, (ch 3, 3-tr cluster in same lp) twice, ' +
        'ch 5, sc in next lp; rep from * around, joining last ch 5 with sl st in first sc.',
      'Rnd 4: Sl st to center of next lp, sc in same lp, *ch 5, 2 tr in next lp, ch 3, 2 tr in next lp, (ch 5, sc in next lp) ' +
        'twice; rep from * around, join. (12 lps)',
      'Rnd 5: Sl st in next lp, ch 3, 4 dc in same lp, 5 dc in each lp around, join. (60 dc)',
    ),
    ['Rnd 4 18 proven', 'Rnd 5 60 proven'],
  ],
  ...['FIRST MOTIF: Starting at center, ch 2.', 'DOILY … Starting at center, ch 2.', 'Doily—Starting at center, ch 2.'].map(
    (start) =>
      [
        `the piece begins behind its name: ${start}`,
        `${start} 1st rnd: 8 sc in 2nd ch from hook. Join with sl st in 1st sc. 2nd rnd: Ch 1, 2 sc in each sc, join. (16 sc)`,
        ['Rnd 1 8 unstated', 'Rnd 2 16 proven'],
      ] as const,
  ),
  [
    'how often a round was gone round, told behind its join',
    ring('Rnd 1: Ch 5, *dc in ring, ch 2, rep from * 6 more times, join in 3rd ch of beg ch-5. (8 times)'),
    ['Rnd 1 8 unstated'],
  ],
] as const)('%s', (_, text, rows) => {
  const labels = rows.map((row) => row.split(' ').slice(0, 2).join(' '));
  expect(worked(text, ...labels)).toEqual(rows);
  expect(complaints(text)).toEqual([]);
});

it('corners that cannot be told are not judged', () => {
  const text = ring(
    'Rnd 1: 24 sc in ring, join. (24 sc)',
    'Rnd 2: Ch 1, sc in each st around, working 3 sc in each corner, join. (32 sc)',
  );
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 unchecked']);
  expect(complaints(text)).toEqual([]);
});

it.each([
  [6, []],
  [7, ['5 count-mismatch']],
  [9, ['5 count-mismatch']],
])('shells all alike are counted, and none of their makers counts slip stitches for that: %d', (n, told) => {
  const text = ring(
    `Rnd 1: 36 sc in ring, join. (36 sc)\n*sk 2 sts, 5 dc in next st, sk 2 sts, sl st in next st; rep from * to end. (${n} shells)`,
  );
  expect(complaints(text)).toEqual(told);
});

it('a wrong number of V-stitches is found, and one of petals is not compared', () => {
  const text = ring(
    'Rnd 1: Ch 1, 16 sc in ring, join. (16 sc)',
    'Rnd 2: Ch 1, *sk next sc, (dc, ch 1, dc) in next sc; rep from * around, join. (7 V-sts)',
    'Rnd 3: Ch 1, *5 dc in next ch-1 sp; rep from * around, join. (9 petals)',
  );
  expect(complaints(text)).toEqual(['5 count-mismatch']);
});

it('a wrong number of a round with corners is found', () => {
  const text = ring(
    SQUARE,
    'Rnd 2: Ch 1, sc in each dc around, working 3 sc in each corner ch-2 sp, join. (25 sc)',
  );
  expect(complaints(text)).toEqual(['5 count-mismatch']);
});

/** Moss or linen stitch (common practice): the chain to turn with is as high as the stitch, and one more. */
describe('a mesh of single crochet and one chain', () => {
  const row1 = 'Ch 22.\nRow 1: sc in 4th ch from hook, *ch 1, skip next ch, sc in next ch; rep from * across.';
  it.each([
    ['Ch 2, turn.', '*sc in next ch-1 space, ch 1; rep from * across, sc in ch-2 space. Ch 2, turn.'],
    ['Ch 2, turn.', 'Sc in first ch-1 space. *Ch 1, sc in the next ch-1 space* x 9. Ch 2 and turn.'],
    ['Turn.', 'Ch 2, sc in first ch-1 sp, *ch 1, sk next sc, sc in next ch-1 sp; rep from * to end. Turn.'],
    ['Turn.', 'Ch 2, *sc in next ch-1 sp, ch 1, sk next sc; rep from * across to last space, sc in turning chain space. Turn.'],
  ])('%s %s', (turn, row) => {
    const text = `${row1} ${turn}\nRow 2: ${row}\nRow 3: ${row}\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([10, 10, 10]);
  });

  it('has the space of the skipped chains in its counts, or not, as they say', () => {
    const row2 = 'Row 2: Ch 2, sc in first ch-1 sp, *ch 1, sk next sc, sc in next ch-1 sp; rep from * to end. Turn.';
    expect(worked(`${row1} Turn. (10 sc, 10 ch-sps)\n${row2} (20 sts)\n`, 'Row 1', 'Row 2')).toEqual([
      'Row 1 10 proven',
      'Row 2 10 proven',
    ]);
    expect(worked(`${row1} Turn. (19 sts)\n`, 'Row 1')).toEqual(['Row 1 10 proven']);
    expect(complaints(`${row1} Turn. (10 sc, 10 ch-sps)\n${row2} (23 sts)\n`)).toEqual(['3 count-mismatch']);
    expect(complaints(`${row1} Turn. (10 sc, 12 ch-sps)\n`)).toEqual(['2 count-mismatch']);
  });
});
