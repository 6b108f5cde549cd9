/**
 * How the start of the round wanders. Worked round and round without turning, a single crochet sits
 * a little to the side of the one beneath: about a third to half a stitch a round through both loops,
 * to the right for right-handers, joined or in a spiral; turned rounds hardly lean (all common
 * practice; no published measurement was found). For other fabrics, mesh above all, only the
 * designer's own swatch knows: `lean: { sc: 0.4, mesh: 0.1 }` in front matter, stitches a round.
 */
import { fabricNamed } from '../gauge/index.ts';
import type { StemId, Terms } from '../notation/index.ts';
import type { SizedRow } from './phases.ts';

/** Stitches to the side, for a right-hander to the right; `to` is the larger. */
export interface LeanRange {
  readonly from: number;
  readonly to: number;
}

export interface Lean {
  /** Over all rounds whose lean is known. */
  readonly stitches: LeanRange;
  readonly mm: LeanRange;
  readonly knownRounds: number;
  /** Rounds of fabrics that nobody has measured. */
  readonly unknownRounds: number;
  readonly isTurned: boolean;
  readonly isOwn: boolean;
  readonly because: string;
}

const SC_LEAN: LeanRange = { from: 1 / 3, to: 1 / 2 };
const NO_LEAN: LeanRange = { from: 0, to: 0 };

/** Stitches a round by fabric, as the designer measured them. */
export interface OwnLean {
  readonly byStem: ReadonlyMap<StemId, number>;
  readonly mesh: number | null;
}

export function readLean(value: unknown, terms: Terms): OwnLean {
  const byStem = new Map<StemId, number>();
  let mesh: number | null = null;
  if (typeof value === 'object' && value !== null) {
    for (const [name, each] of Object.entries(value)) {
      const n = Number.parseFloat(String(each));
      const { stem, isMesh } = fabricNamed(name, terms);
      if (!(Math.abs(n) < 5)) continue;
      if (isMesh) mesh = n;
      else if (stem) byStem.set(stem, n);
    }
  }
  return { byStem, mesh };
}

/** Lean of one round; `null` where nobody knows. */
export function leanOfRound({ size }: SizedRow, own: OwnLean): LeanRange | null {
  const measured = size.isMesh ? own.mesh : (own.byStem.get(size.stem) ?? null);
  if (measured !== null) return { from: measured, to: measured };
  return size.stem === 'w0' && !size.isMesh && !size.isLoose ? SC_LEAN : null;
}

/** Lean of the rounds from the first to the last of a piece; `null` for rows that are no rounds. */
export function leanOf(rows: readonly SizedRow[], own: OwnLean): Lean | null {
  if (rows.length < 2 || !rows.every(({ row }) => row.ring)) return null;
  const sides = new Set(rows.map(({ row }) => row.side));
  const isTurned = sides.size > 1;
  let stitches = NO_LEAN;
  let mm = NO_LEAN;
  let unknownRounds = 0;
  for (const row of rows) {
    const lean = isTurned ? NO_LEAN : leanOfRound(row, own);
    if (!lean) unknownRounds++;
    const perStitch = row.size.width.mm / Math.max(1, row.size.places);
    stitches = plus(stitches, lean ?? NO_LEAN, 1);
    mm = plus(mm, lean ?? NO_LEAN, perStitch);
  }
  const isOwn = own.byStem.size > 0 || own.mesh !== null;
  return {
    stitches,
    mm,
    knownRounds: rows.length - unknownRounds,
    unknownRounds,
    isTurned,
    isOwn,
    because: becauseOf(isTurned, isOwn),
  };
}

const plus = (sum: LeanRange, lean: LeanRange, by: number): LeanRange => ({
  from: sum.from + lean.from * by,
  to: sum.to + lean.to * by,
});

function becauseOf(isTurned: boolean, isOwn: boolean): string {
  if (isTurned) return 'Rounds that are turned hardly lean (common practice).';
  if (isOwn) return "The lean of the designer's own swatch.";
  return 'A third to half a stitch a round in single crochet through both loops (common practice).';
}

export interface Remedy {
  readonly name: string;
  /** What is written into the pattern. */
  readonly words: string;
  /** What it does and what it costs. */
  readonly effect: string;
}

/** Ways to live with the lean, each as words for the pattern; empty where there is hardly any. */
export function remediesFor({ stitches, isTurned }: Lean, count: number): readonly Remedy[] {
  const middle = (stitches.from + stitches.to) / 2;
  if (isTurned || middle < 1) return [];
  const moved = Math.round(middle);
  return [
    {
      name: 'Turn',
      words: 'Join with sl st in first st, turn. (at the end of every round)',
      effect:
        'The start stays in place. The fabric looks like that worked in rows, and charts are read both ways.',
    },
    {
      name: 'Move the marker on',
      words: `In every 2nd or 3rd round work 1 more st before you move the marker up; the count stays ${count}.`,
      effect:
        'The start stays within half a stitch of its place in single crochet; every 2nd round for half a stitch a round, every 3rd for a third. For spirals.',
    },
    {
      name: 'Move the start once',
      words: `Before the first round of the motif: sl st in next ${moved} sts; the round begins here from now on.`,
      effect: `The start goes on leaning, but is where it should be at the motif; in all it would have moved about ${moved} sts.`,
    },
    {
      name: 'Shift the chart',
      words: `Place the chart ${moved} sts further on than the middle at its first round.`,
      effect:
        'The motif is in the middle at that height. Test it on a swatch: it goes on leaning inside the motif.',
    },
  ];
}
