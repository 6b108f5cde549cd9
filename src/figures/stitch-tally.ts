/** Stitches counted by yarn and kind, and the stretches that each yarn is worked in. */
import { type Cloth, type Fabric, NO_YARN } from '../fabric/index.ts';
import { pieceStarts } from './pieces.ts';
import { type Strands, strandsSaid } from './strands.ts';
import { type YarnKey, type YarnShare, yarnShareOf } from './yarn-path.ts';

export interface YarnTally {
  /** Name of the yarn; '' where the pattern names none. */
  readonly name: string;
  /** Plain stitches by key, bunches and turns already counted as so many, strands each by itself. */
  readonly amounts: ReadonlyMap<YarnKey, number>;
  /** Nodes that the hook makes, for hours: of strands held together they are counted for one. */
  readonly stitches: number;
  /** Of these by key, for hours. */
  readonly worked: ReadonlyMap<YarnKey, number>;
  /** Share of the yarn's stitches that stand out from the fabric. */
  readonly textured: number;
  /** How often the yarn is taken up: each has two tails. */
  readonly stretches: number;
  /** Of `amounts`: chains that stand in no row, and slip stitches that close rounds. */
  readonly foundation: number;
  readonly joins: number;
  /** Sentences: strands that are held together. */
  readonly strands: readonly string[];
}

/** One tally a yarn, in the order of the pattern's yarns; yarns not worked with are left out. */
export function yarnTallies(
  cloth: Cloth,
  fabric: Fabric,
  strands: readonly (Strands | null)[] = [],
): readonly YarnTally[] {
  const shares = fabric.kinds.kinds.map(yarnShareOf);
  const yarns = Math.max(1, fabric.yarns.length);
  const takes = takersOf(fabric.yarns, strands);
  const counted = countedNodes(cloth, { kinds: shares.length, yarns, takes });
  const joins = joinsByYarn(cloth, { yarns, takes });
  const courses = cloth.rows.length + counted.pieces;
  const part = (of: Float64Array, at: number) =>
    of.subarray(at * shares.length, (at + 1) * shares.length);
  return Array.from({ length: yarns }, (_, at) =>
    tallyOf(fabric.yarns[at] ?? '', {
      counts: part(counted.counts, at),
      made: part(counted.made, at),
      shares,
      // Yarns that change oftener than rows do are carried along, not cut.
      stretches: Math.min(counted.stretches[at]!, Math.max(1, courses)),
      foundation: counted.foundation[at]!,
      joins: joins[at]!,
      strands: counted.held[at]!.map((index) =>
        strandsSaid(cloth.rows.find(({ partIndex }) => partIndex === index)!.part, strands[index]!),
      ),
    }),
  ).filter(({ amounts }) => amounts.size > 0);
}

/** Which yarns a stitch takes, and how many strands of each. */
interface Taking {
  readonly yarns: readonly number[];
  readonly each: number;
}

type Takers = (partIndex: number, own: number) => Taking;

function takersOf(yarns: readonly string[], strands: readonly (Strands | null)[]): Takers {
  // Made once: they are asked for at every stitch.
  const taking = (held: Strands | null): readonly Taking[] => {
    const named = (held?.yarns ?? []).map((name) => yarns.indexOf(name)).filter((at) => at >= 0);
    const each = held?.each ?? 1;
    return Array.from({ length: Math.max(1, yarns.length) }, (_, own) => ({
      yarns: named.length > 1 ? named : [own],
      each,
    }));
  };
  const alone = taking(null);
  const byPart = strands.map((held) => (held ? taking(held) : alone));
  return (partIndex, own) => (byPart[partIndex] ?? alone)[own]!;
}

interface CountedNodes {
  /** Strands by yarn and kind, a block of kinds a yarn. */
  readonly counts: Float64Array;
  /** Nodes by yarn and kind, each once. */
  readonly made: Float64Array;
  readonly stretches: Uint32Array;
  /** Strands by yarn in nodes that stand in no row. */
  readonly foundation: Float64Array;
  readonly pieces: number;
  /** For each yarn the parts in which strands are held together with it. */
  readonly held: readonly number[][];
}

interface Counting {
  readonly kinds: number;
  readonly yarns: number;
  readonly takes: Takers;
}

function countedNodes(cloth: Cloth, { kinds, yarns, takes }: Counting): CountedNodes {
  const counts = new Float64Array(yarns * kinds);
  const made = new Float64Array(yarns * kinds);
  const stretches = new Uint32Array(yarns);
  const foundation = new Float64Array(yarns);
  const held = Array.from({ length: yarns }, (): number[] => []);
  const { kind, yarn, n } = cloth.nodes;
  const starts = pieceStarts(cloth);
  const rows = cloth.rows.filter(({ nodes }) => nodes.to > nodes.from);
  let last = -1;
  let piece = 0;
  let row = 0;
  for (let id = 0; id < n; id++) {
    const named = yarn[id]!;
    const own = named === NO_YARN || named >= yarns ? Math.max(last, 0) : named;
    while (row < rows.length && id >= rows[row]!.nodes.to) row++;
    const isLoose = row >= rows.length || id < rows[row]!.nodes.from;
    const part = rows[Math.min(row, rows.length - 1)]?.partIndex ?? 0;
    const taking = takes(part, own);
    const isNewPiece = piece < starts.length && id >= starts[piece]!;
    if (isNewPiece) piece++;
    // The chain before the first row belongs to it: the very first piece is taken up once.
    const isTakenUp = own !== last || (isNewPiece && piece > 1);
    made[taking.yarns[0]! * kinds + kind[id]!]!++;
    for (const at of taking.yarns) {
      counts[at * kinds + kind[id]!]! += taking.each;
      if (isLoose) foundation[at]! += taking.each;
      if (isTakenUp) stretches[at]! += taking.each;
      const isHeld = taking.each > 1 || taking.yarns.length > 1;
      if (isHeld && held[at]!.at(-1) !== part) held[at]!.push(part);
    }
    last = own;
  }
  return { counts, made, stretches, foundation, pieces: starts.length, held };
}

/** A round's join is made with the yarn that its last stitch was. */
function joinsByYarn(
  { rows, nodes }: Cloth,
  { yarns, takes }: { readonly yarns: number; readonly takes: Takers },
): Uint32Array {
  const joins = new Uint32Array(yarns);
  for (const row of rows) {
    if (row.nodes.to === row.nodes.from || !row.joined) continue;
    const named = nodes.yarn[row.nodes.to - 1] ?? NO_YARN;
    const taking = takes(row.partIndex, named === NO_YARN || named >= yarns ? 0 : named);
    for (const at of taking.yarns) joins[at]! += taking.each;
  }
  return joins;
}

interface Counted extends Pick<YarnTally, 'stretches' | 'foundation' | 'joins' | 'strands'> {
  readonly counts: Float64Array;
  readonly made: Float64Array;
  readonly shares: readonly YarnShare[];
}

function tallyOf(name: string, { counts, made, shares, ...rest }: Counted): YarnTally {
  const amounts = new Map<YarnKey, number>();
  const worked = new Map<YarnKey, number>();
  let stitches = 0;
  let textured = 0;
  let strands = 0;
  const add = (to: Map<YarnKey, number>, key: YarnKey, n: number): void => {
    if (n > 0) to.set(key, (to.get(key) ?? 0) + n);
  };
  shares.forEach(({ key, factor, isTextured }, at) => {
    add(amounts, key, counts[at]! * factor);
    add(worked, key, made[at]! * factor);
    stitches += made[at]!;
    strands += counts[at]!;
    if (isTextured) textured += counts[at]!;
  });
  add(amounts, 'slip', rest.joins);
  add(worked, 'slip', rest.joins);
  return {
    name,
    amounts,
    worked,
    stitches,
    textured: strands === 0 ? 0 : textured / strands,
    ...rest,
  };
}
