/**
 * Which rows make one piece, and how it starts. A piece is a run of rows each worked into the one
 * before; a row that is worked into an older one starts an edging of its own.
 */
import {
  type Cloth,
  INTO_SPACE,
  type KindTable,
  NOWHERE,
  type Nodes,
  type RowRecord,
} from '../fabric/index.ts';

/**
 * ring: from a ring or a chain stitch or two. oval: around both sides of a chain. loop: a chain
 * joined to a ring. chain: rows on a foundation. edge: into the edge of work that is there.
 */
export type Start = 'ring' | 'oval' | 'loop' | 'chain' | 'edge';

export interface Piece {
  readonly rows: readonly RowRecord[];
  readonly start: Start;
  /** Chains of the foundation that are worked into; 0 for a ring or an edge. */
  readonly foundation: number;
  /** Chains made before its first row, the turning chain among them; 0 where none are. */
  readonly chains: number;
  /** Heading of its first row; '' without headings. */
  readonly name: string;
  /** How many are made alike. */
  readonly copies: number;
  /** The row that most of its first row stands on; `null`: on no row. */
  readonly beneath: RowRecord | null;
}

/** Pieces of a cloth in the order made; copies are counted, not repeated. */
export function piecesOf(cloth: Cloth, kinds: KindTable): readonly Piece[] {
  const { runs, worked, beneath } = runsOf(cloth);
  const copies = new Map<string, number>();
  for (const [first] of runs) {
    if (first) copies.set(keyOf(first), (copies.get(keyOf(first)) ?? 0) + 1);
  }
  return runs.flatMap((rows) => {
    const [first] = rows;
    if (!first || first.instance > 1) return [];
    const at = worked.indexOf(first);
    return [
      {
        rows,
        ...startOf(first, {
          cloth,
          kinds,
          isOnWork: (beneath[at] ?? NOWHERE) !== NOWHERE,
          isRing: (rows[1] ?? first).ring && !isTurnedOnUnknown(rows),
        }),
        chains: chainsBefore(first, cloth),
        name: first.part,
        copies: copies.get(keyOf(first)) ?? 1,
        beneath: worked[beneath[at] ?? NOWHERE] ?? null,
      },
    ];
  });
}

/** Nodes made before a row that stand in no row. */
function chainsBefore(first: RowRecord, { rows }: Cloth): number {
  let from = 0;
  for (const { nodes } of rows) {
    if (nodes.to > nodes.from && nodes.to <= first.nodes.from) from = Math.max(from, nodes.to);
  }
  return first.nodes.from - from;
}

interface Runs {
  readonly runs: readonly (readonly RowRecord[])[];
  /** Rows that made something. */
  readonly worked: readonly RowRecord[];
  /** For each of these, the one that it stands on. */
  readonly beneath: readonly number[];
}

function runsOf(cloth: Cloth): Runs {
  const runs: RowRecord[][] = [];
  const worked = cloth.rows.filter(({ nodes }) => nodes.to > nodes.from);
  const beneath = worked.map((row) => rowBeneath(row, worked, cloth.nodes));
  worked.forEach((row, at) => {
    const run = runs.at(-1);
    const last = run?.at(-1);
    const goesOn =
      run && last && !row.isBorder && beneath[at] === at - 1 && last.instance === row.instance;
    if (goesOn) run.push(row);
    else runs.push([row]);
  });
  return { runs, worked, beneath };
}

/** On an edge that is not known the hands go round; rows that are turned there are flat work. */
const isTurnedOnUnknown = (rows: readonly RowRecord[]): boolean =>
  rows[0]?.verdict === 'unchecked' && rows.some(({ side }) => side !== rows[0]?.side);

/** Numbers of the first nodes of all pieces, copies too: there yarn is taken up anew. */
export const pieceStarts = (cloth: Cloth): readonly number[] =>
  runsOf(cloth).runs.map(([first]) => first?.nodes.from ?? 0);

const keyOf = (row: RowRecord): string => `${row.partIndex} ${row.label} ${row.instruction}`;

const ENOUGH = 48;

/** Index of the row that most stitches stand on; `NOWHERE`: on no row. */
function rowBeneath(row: RowRecord, rows: readonly RowRecord[], nodes: Nodes): number {
  const votes = new Map<number, number>();
  const { from, to } = row.nodes;
  let best = NOWHERE;
  let seen = 0;
  // Chains stand on nothing and are passed; a few dozen stitches tell the row beneath all of them.
  for (let id = from; id < to && seen < ENOUGH; id++) {
    const anchor = outerAnchor(nodes, id, from);
    if (anchor === NOWHERE) continue;
    seen++;
    const at = rowHolding(rows, anchor);
    votes.set(at, (votes.get(at) ?? 0) + 1);
    if ((votes.get(at) ?? 0) > (votes.get(best) ?? 0)) best = at;
  }
  return best;
}

/** The first anchor that is older than the row itself. */
function outerAnchor(nodes: Nodes, id: number, rowFrom: number): number {
  for (let at = nodes.anchorFrom[id] ?? 0; at < (nodes.anchorFrom[id + 1] ?? 0); at++) {
    const anchor = nodes.anchors[at] ?? NOWHERE;
    if (anchor !== NOWHERE && anchor < rowFrom) return anchor;
  }
  return NOWHERE;
}

function rowHolding(rows: readonly RowRecord[], node: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const { from, to } = rows[middle]!.nodes;
    if (node < from) high = middle - 1;
    else if (node >= to) low = middle + 1;
    else return middle;
  }
  return NOWHERE;
}

interface Ground {
  readonly cloth: Cloth;
  readonly kinds: KindTable;
  readonly isOnWork: boolean;
  /** Worked in rounds: rows that are turned may begin in a ring. */
  readonly isRing: boolean;
}

function startOf(first: RowRecord, ground: Ground): Pick<Piece, 'start' | 'foundation'> {
  if (ground.isOnWork) return { start: 'edge', foundation: 0 };
  const chains = new Set<number>();
  const { nodes } = ground.cloth;
  let intoSpace = 0;
  let anchored = 0;
  for (let id = first.nodes.from; id < first.nodes.to; id++) {
    const anchor = outerAnchor(nodes, id, first.nodes.from);
    if (anchor === NOWHERE) continue;
    anchored++;
    const isChain = ground.kinds.kinds[nodes.kind[anchor] ?? 0]?.class === 'chain';
    if ((nodes.flags[id] ?? 0) & INTO_SPACE || !isChain) intoSpace++;
    else chains.add(anchor);
  }
  // Along an edge that is not known: a border on row ends, say. A ring of its own has anchors.
  if (first.verdict === 'unchecked' && ground.isRing && 4 * anchored < first.tally.stitches)
    return { start: 'edge', foundation: 0 };
  if (!ground.isRing) return { start: 'chain', foundation: Math.max(chains.size, first.used) };
  if (chains.size < 3 || intoSpace > chains.size) return { start: 'ring', foundation: 0 };
  const isBothSides = first.used > 1.5 * chains.size || first.tally.stitches > 1.5 * chains.size;
  return { start: isBothSides ? 'oval' : 'loop', foundation: chains.size };
}
