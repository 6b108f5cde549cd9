/** Stitches counted by yarn and kind, and the stretches that each yarn is worked in. */
import type { Cloth, Fabric } from '../fabric/index.ts';
import { pieceStarts } from './pieces.ts';
import { type YarnKey, type YarnShare, yarnShareOf } from './yarn-path.ts';

export interface YarnTally {
  /** Name of the yarn; '' where the pattern names none. */
  readonly name: string;
  /** Plain stitches by key, bunches and turns already counted as so many. */
  readonly amounts: ReadonlyMap<YarnKey, number>;
  /** Nodes that the hook makes, for hours. */
  readonly stitches: number;
  /** Share of the yarn's stitches that stand out from the fabric. */
  readonly textured: number;
  /** How often the yarn is taken up: each has two tails. */
  readonly stretches: number;
}

const NONE = 255;

/** One tally a yarn, in the order of the pattern's yarns; yarns not worked with are left out. */
export function yarnTallies(cloth: Cloth, fabric: Fabric): readonly YarnTally[] {
  const shares = fabric.kinds.kinds.map(yarnShareOf);
  const kinds = shares.length;
  const yarns = Math.max(1, fabric.yarns.length);
  const counts = new Uint32Array(yarns * kinds);
  const stretches = new Uint32Array(yarns);
  const { kind, yarn, n } = cloth.nodes;
  const starts = pieceStarts(cloth);
  let last = -1;
  let piece = 0;
  for (let id = 0; id < n; id++) {
    const named = yarn[id]!;
    const at = named === NONE || named >= yarns ? Math.max(last, 0) : named;
    counts[at * kinds + kind[id]!]!++;
    const isNewPiece = piece < starts.length && id >= starts[piece]!;
    if (isNewPiece) piece++;
    // The chain before the first row belongs to it: the very first piece is taken up once.
    if (at !== last || (isNewPiece && piece > 1)) stretches[at]!++;
    last = at;
  }
  const rows = cloth.rows.length + starts.length;
  return Array.from({ length: yarns }, (_, at) =>
    tallyOf(fabric.yarns[at] ?? '', {
      counts: counts.subarray(at * kinds, (at + 1) * kinds),
      shares,
      // Yarns that change oftener than rows do are carried along, not cut.
      stretches: Math.min(stretches[at]!, Math.max(1, rows)),
    }),
  ).filter(({ stitches }) => stitches > 0);
}

interface Counted {
  readonly counts: Uint32Array;
  readonly shares: readonly YarnShare[];
  readonly stretches: number;
}

function tallyOf(name: string, { counts, shares, stretches }: Counted): YarnTally {
  const amounts = new Map<YarnKey, number>();
  let stitches = 0;
  let textured = 0;
  shares.forEach(({ key, factor, isTextured }, at) => {
    const n = counts[at]!;
    if (n === 0) return;
    amounts.set(key, (amounts.get(key) ?? 0) + n * factor);
    stitches += n;
    if (isTextured) textured += n;
  });
  return { name, amounts, stitches, textured: stitches === 0 ? 0 : textured / stitches, stretches };
}
