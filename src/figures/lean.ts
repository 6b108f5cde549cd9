/**
 * How the start of the round wanders. Worked round and round without turning, a single crochet sits
 * a little to the side of the one beneath: about a third to half a stitch a round through both loops,
 * to the right for right-handers, joined or in a spiral; turned rounds hardly lean (all common
 * practice; no published measurement was found). For other fabrics, mesh above all, only the
 * designer's own swatch knows: `lean: { sc: 0.4, mesh: 0.1 }` in front matter, stitches a round.
 */
import type { RowRecord } from '../fabric/index.ts';
import { fabricNamed } from '../gauge/index.ts';
import { type StemId, type Terms, wordFor } from '../notation/index.ts';
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
  /** Of one round that leans, the mean over these; nought where none does. */
  readonly perRound: LeanRange;
  readonly knownRounds: number;
  /** Rounds of fabrics that nobody has measured. */
  readonly unknownRounds: number;
  /** Every round is worked back over the one beneath. */
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
export function leanOfRound({ row, size }: SizedRow, own: OwnLean): LeanRange | null {
  const measured = size.isMesh ? own.mesh : (own.byStem.get(size.stem) ?? null);
  if (measured !== null) return { from: measured, to: measured };
  const isPlain = size.stem === 'w0' && !size.isMesh && !size.isLoose;
  return isPlain && inBothLoops(row) ? SC_LEAN : null;
}

/** Through one loop, or round a post, stitches lean otherwise: nobody has measured how. */
function inBothLoops({ tally }: RowRecord): boolean {
  let other = 0;
  for (const [name, n] of tally.byKind) if (/-(?:loop|post)\b/.test(name)) other += n;
  return 2 * other <= tally.stitches;
}

/** Lean of the rounds from the first to the last of a piece; `null` for rows that are no rounds. */
export function leanOf(rows: readonly SizedRow[], own: OwnLean, terms: Terms = 'US'): Lean | null {
  if (rows.length < 2 || !rows.every(({ row }) => row.ring)) return null;
  let stitches = NO_LEAN;
  let mm = NO_LEAN;
  let unknown = 0;
  let turned = 0;
  let leaning = 0;
  rows.forEach((row, at) => {
    // The first round is turned where the second is.
    const isTurned = row.row.side !== (rows[at - 1] ?? rows[1]!).row.side;
    const lean = isTurned ? NO_LEAN : leanOfRound(row, own);
    if (isTurned) turned++;
    else if (lean) leaning++;
    else unknown++;
    stitches = plus(stitches, lean ?? NO_LEAN, 1);
    mm = plus(mm, lean ?? NO_LEAN, row.size.width.mm / Math.max(1, row.size.places));
  });
  const isTurned = turned === rows.length;
  const isOwn = own.byStem.size > 0 || own.mesh !== null;
  return {
    stitches,
    mm,
    perRound: plus(NO_LEAN, stitches, 1 / Math.max(1, leaning)),
    knownRounds: rows.length - unknown,
    unknownRounds: unknown,
    isTurned,
    isOwn,
    because: becauseOf({ isTurned, isOwn, terms }),
  };
}

const plus = (sum: LeanRange, lean: LeanRange, by: number): LeanRange => ({
  from: sum.from + lean.from * by,
  to: sum.to + lean.to * by,
});

function becauseOf({
  isTurned,
  isOwn,
  terms,
}: Pick<Lean, 'isTurned' | 'isOwn'> & { readonly terms: Terms }): string {
  if (isTurned) return 'Rounds that are turned hardly lean (common practice).';
  if (isOwn) return "The lean of the designer's own swatch.";
  return `A third to half a stitch a round in ${wordFor('w0', terms)} through both loops (common practice).`;
}
