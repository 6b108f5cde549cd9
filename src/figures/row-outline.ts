/**
 * The outline of a flat shaped piece: where each row begins and ends above the ones beneath. A row is as
 * wide as its count says, and stands where its stitches stand: its offset is the one that brings them
 * nearest to the places that they are worked into. The right side is seen, so that right-side rows run
 * from right to left (right-handers).
 */
import { type Cloth, firstAnchor, type KindTable, NOWHERE } from '../fabric/index.ts';
import type { SizedRow } from './phases.ts';

/** One row, in mm; x grows to the right, from the left end of the first row. */
export interface RowSpan {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly heightMm: number;
}

export interface RowOutline {
  readonly rows: readonly RowSpan[];
  /** Rows open up from their middle, as in a shawl from the neck: spans upon spans tell no outline. */
  readonly isFan: boolean;
}

/** Stitches further than this from where they are worked into, on the mean: a fan (ours). */
const FAN = 0.5;

export function rowOutline(
  rows: readonly SizedRow[],
  { cloth, kinds }: { readonly cloth: Cloth; readonly kinds: KindTable },
): RowOutline {
  const x = new Map<number, number>();
  const spans: RowSpan[] = [];
  let off = 0;
  let stitches = 0;
  for (const row of rows) {
    const placed = placeRow(row, spans.at(-1) ?? null, { cloth, kinds, x });
    spans.push(placed.span);
    off += placed.off;
    stitches += placed.stitches;
  }
  return { rows: spans, isFan: stitches > 0 && off / stitches > FAN };
}

interface Ground {
  readonly cloth: Cloth;
  readonly kinds: KindTable;
  /** Middle of each node that is placed, in mm. */
  readonly x: Map<number, number>;
}

interface Placed {
  readonly span: RowSpan;
  /** Sum, in stitches, of how far stitches are from their places once the row is placed. */
  readonly off: number;
  readonly stitches: number;
}

function placeRow({ row, size }: SizedRow, below: RowSpan | null, ground: Ground): Placed {
  const { cloth, x } = ground;
  const perPlace = size.width.mm / Math.max(1, size.places);
  const way = row.side === 'RS' ? -1 : 1;
  if (below) placeTurningChain(row.nodes, { below, way, perPlace, ground });
  const nodes = standing(row.nodes, ground);
  const along = (at: number): number => (way * (at + 0.5) * size.width.mm) / nodes.length;
  const gaps = nodes.flatMap((id, at) => {
    const foot = x.get(firstAnchor(cloth.nodes, id));
    return foot === undefined ? [] : [foot - along(at)];
  });
  // A first row lies with its left end at nought.
  const offset = below && gaps.length > 0 ? mean(gaps) : way < 0 ? size.width.mm : 0;
  nodes.forEach((id, at) => {
    x.set(id, offset + along(at));
  });
  const ends = [offset, offset + way * size.width.mm];
  return {
    span: {
      leftMm: Math.min(...ends),
      rightMm: Math.max(...ends),
      heightMm: size.height.mm,
    },
    off: below ? gaps.reduce((sum, gap) => sum + Math.abs(gap - offset) / perPlace, 0) : 0,
    stitches: below ? gaps.length : 0,
  };
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, n) => sum + n, 0) / numbers.length;

/** Chains made before the row's first stitch go on beyond the end of the row beneath. */
function placeTurningChain(
  { from, to }: { readonly from: number; readonly to: number },
  at: { below: RowSpan; way: number; perPlace: number; ground: Ground },
): void {
  const { below, way, perPlace, ground } = at;
  // The row beneath ran the other way in turned work: it ended where this one begins.
  const end = way < 0 ? below.rightMm : below.leftMm;
  for (let id = from, n = 0; id < to && isLoose(id, ground); id++, n++) {
    ground.x.set(id, end - way * (n + 0.5) * perPlace);
  }
}

const BEFORE: ReadonlySet<string | undefined> = new Set(['chain', 'base', 'low']);

/** A chain that is worked into nothing. */
const isLoose = (id: number, { cloth, kinds }: Ground): boolean =>
  BEFORE.has(kinds.kinds[cloth.nodes.kind[id] ?? 0]?.class) &&
  firstAnchor(cloth.nodes, id) === NOWHERE;

/** Nodes side by side in the row: no chains before it and no slip stitches over what is left. */
function standing(
  { from, to }: { readonly from: number; readonly to: number },
  ground: Ground,
): readonly number[] {
  let first = from;
  while (first < to && isLoose(first, ground)) first++;
  const { cloth, kinds } = ground;
  return Array.from({ length: to - first }, (_, at) => first + at).filter(
    (id) => kinds.kinds[cloth.nodes.kind[id] ?? 0]?.class !== 'slip',
  );
}
