/** Stitches counted by yarn and kind, and the stretches that each yarn is worked in. */
import { type Cloth, type Fabric, NO_YARN } from '../fabric/index.ts';
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
  /** Of `amounts`: chains that stand in no row, and slip stitches that close rounds. */
  readonly foundation: number;
  readonly joins: number;
}

/** One tally a yarn, in the order of the pattern's yarns; yarns not worked with are left out. */
export function yarnTallies(cloth: Cloth, fabric: Fabric): readonly YarnTally[] {
  const shares = fabric.kinds.kinds.map(yarnShareOf);
  const yarns = Math.max(1, fabric.yarns.length);
  const counted = countedNodes(cloth, { kinds: shares.length, yarns });
  const joins = joinsByYarn(cloth, yarns);
  const courses = cloth.rows.length + counted.pieces;
  return Array.from({ length: yarns }, (_, at) =>
    tallyOf(fabric.yarns[at] ?? '', {
      counts: counted.counts.subarray(at * shares.length, (at + 1) * shares.length),
      shares,
      // Yarns that change oftener than rows do are carried along, not cut.
      stretches: Math.min(counted.stretches[at]!, Math.max(1, courses)),
      foundation: counted.foundation[at]!,
      joins: joins[at]!,
    }),
  ).filter(({ stitches }) => stitches > 0);
}

interface CountedNodes {
  /** Nodes by yarn and kind, a block of kinds a yarn. */
  readonly counts: Uint32Array;
  readonly stretches: Uint32Array;
  /** Nodes by yarn that stand in no row. */
  readonly foundation: Uint32Array;
  readonly pieces: number;
}

function countedNodes(
  cloth: Cloth,
  { kinds, yarns }: { readonly kinds: number; readonly yarns: number },
): CountedNodes {
  const counts = new Uint32Array(yarns * kinds);
  const stretches = new Uint32Array(yarns);
  const foundation = new Uint32Array(yarns);
  const { kind, yarn, n } = cloth.nodes;
  const starts = pieceStarts(cloth);
  const rows = cloth.rows.filter(({ nodes }) => nodes.to > nodes.from);
  let last = -1;
  let piece = 0;
  let row = 0;
  for (let id = 0; id < n; id++) {
    const named = yarn[id]!;
    const at = named === NO_YARN || named >= yarns ? Math.max(last, 0) : named;
    counts[at * kinds + kind[id]!]!++;
    while (row < rows.length && id >= rows[row]!.nodes.to) row++;
    if (row >= rows.length || id < rows[row]!.nodes.from) foundation[at]!++;
    const isNewPiece = piece < starts.length && id >= starts[piece]!;
    if (isNewPiece) piece++;
    // The chain before the first row belongs to it: the very first piece is taken up once.
    if (at !== last || (isNewPiece && piece > 1)) stretches[at]!++;
    last = at;
  }
  return { counts, stretches, foundation, pieces: starts.length };
}

/** A round's join is made with the yarn that its last stitch was. */
function joinsByYarn({ rows, nodes }: Cloth, yarns: number): Uint32Array {
  const joins = new Uint32Array(yarns);
  for (const row of rows) {
    if (row.nodes.to === row.nodes.from || !row.joined) continue;
    const named = nodes.yarn[row.nodes.to - 1] ?? NO_YARN;
    joins[named === NO_YARN || named >= yarns ? 0 : named]!++;
  }
  return joins;
}

interface Counted {
  readonly counts: Uint32Array;
  readonly shares: readonly YarnShare[];
  readonly stretches: number;
  readonly foundation: number;
  readonly joins: number;
}

function tallyOf(name: string, counted: Counted): YarnTally {
  const { counts, shares, stretches, foundation, joins } = counted;
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
  if (joins > 0) amounts.set('slip', (amounts.get('slip') ?? 0) + joins);
  return {
    name,
    amounts,
    stitches,
    textured: stitches === 0 ? 0 : textured / stitches,
    stretches,
    foundation,
    joins,
  };
}
