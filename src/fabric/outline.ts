/**
 * The outline of a piece worked in rows: its last row, the ends of its rows on two sides, and the other side
 * of the chain on which it was begun. A border goes along it, from corner to corner.
 */
import type { StemId } from '../notation/index.ts';
import { bareEdge, type Edge, edgeOf, edgeOfPlaces } from './edge.ts';
import type { Hands, Worked } from './hands.ts';
import { firstAnchor, NOWHERE } from './nodes.ts';

export interface Outline {
  /** From the first to the last. */
  readonly rows: readonly Worked[];
  /** How many rows there are is known: none is worked to a length, and all were understood. */
  readonly isCounted: boolean;
  /** Every row has as many stitches as the first. */
  readonly isEven: boolean;
}

/** The piece worked last, if that is one of rows worked upon a chain; `null`: it is none. */
export function outlineOf(hands: Hands): Outline | null {
  const { history } = hands;
  let to = history.length;
  let from = to;
  for (; from > 0; from--) {
    const row = history[from - 1];
    if (!row) break;
    // A border that was worked before is no row of the piece, nor is what was worked on that.
    if (row.isBorder) to = from - 1;
    else if (row.ring || row.to <= row.from) break;
    else if (row.edge.kind === 'foundation') {
      from--;
      break;
    }
  }
  const rows = history.slice(from, to);
  if (rows[0]?.edge.kind !== 'foundation' || rows[0].edge.ring) return null;
  const first = stitchesIn(hands, rows[0]);
  return {
    rows,
    isCounted: rows.every(({ isSure }) => isSure),
    isEven: rows.every((row) => stitchesIn(hands, row) === first),
  };
}

function stitchesIn({ nodes, bench }: Hands, { from, to }: Worked): number {
  let n = 0;
  for (let id = from; id < to; id++) if (bench.kinds.kinds[nodes.kind[id] ?? 0]?.counted) n++;
  return n;
}

/** The stitch of a row: that of its last one, which makes the row's end. */
export function stemOfRow({ nodes, bench }: Hands, { from, to }: Worked): StemId | null {
  for (let id = to - 1; id >= from; id--) {
    const kind = bench.kinds.kinds[nodes.kind[id] ?? 0];
    if (kind?.counted) return kind.stem;
  }
  return null;
}

/**
 * The end of each row, from the first row up. Each is named by the stitch on which the row ends beneath, the
 * first by the chain at the hook: stitches of the last row and chains are places of other sides.
 */
export const endsOf = ({ rows }: Outline): Edge =>
  edgeOfPlaces(
    rows.map(({ from }, i) => (rows[i - 1]?.to ?? from) - 1),
    false,
  );

/** The last row, as it is met when it is not turned. */
export function topOf({ nodes, bench }: Hands, { rows }: Outline): Edge {
  const last = rows.at(-1);
  if (!last) return bareEdge('none');
  const { from, to } = last;
  return edgeOf(nodes, bench.kinds, { from, to, ring: false, reversed: false, open: false });
}

/** The chains that the first row was worked into, in the order made; the foot of a start chain is one of them. */
export function bottomOf({ nodes, bench }: Hands, { rows }: Outline): Edge {
  const from = rows[0]?.from ?? 0;
  const to = rows[0]?.to ?? 0;
  const classOf = (id: number) => bench.kinds.kinds[nodes.kind[id] ?? 0]?.class;
  const chains = new Set<number>();
  for (let id = from; id < to; id++) {
    const foot = firstAnchor(nodes, id);
    if (foot !== NOWHERE && foot < from) chains.add(foot);
  }
  const places = [...chains].sort((a, b) => a - b);
  const last = places.at(-1);
  if (classOf(from) === 'start' && last !== undefined && !chains.has(firstAnchor(nodes, from)))
    places.push(last + 1);
  return edgeOfPlaces(places, false, 'foundation');
}
