/**
 * Boxes read back from the fabric: a row is taken apart into its posts and what stands between them,
 * and placed in the picture by the posts that its posts stand on. The words that made the row do not
 * matter: "7 open boxes", a chart and "ch 2, sk next 2 dc, dc in next dc" give the same cells.
 */
import { asPictured, chainsOfBar, type Grid, LACET_CHAINS, type Mesh } from '../filet/index.ts';
import type { Cell } from '../manuscript/index.ts';
import { type Terms, wordFor } from '../notation/index.ts';
import type { Cloth, Fabric, RowRecord } from './fabric.ts';
import type { Kind } from './kinds.ts';
import { firstAnchor } from './nodes.ts';

export interface MeshRow {
  /** In the order of work; a lacet or a bar as two cells. */
  readonly cells: readonly Cell[];
  /** Node of each post, in the order of work; in rows one more than there are columns. */
  readonly posts: readonly number[];
  /** Column boundary of each post, counted from the row's start: lacets and bars take two. */
  readonly at: readonly number[];
}

/** The boxes of a row; `null` where it is not mesh of this kind through and through. */
export function meshRow(fabric: Fabric, cloth: Cloth, row: RowRecord, mesh: Mesh): MeshRow | null {
  const pieces = piecesOf(fabric, cloth, row);
  const cells: Cell[] = [];
  const posts: number[] = [];
  const at: number[] = [];
  for (let i = 0; i < pieces.length; ) {
    const piece = pieces[i];
    if (piece?.kind !== 'stitch') return null;
    posts.push(piece.node);
    at.push(cells.length);
    if (i === pieces.length - 1) {
      if (row.closes && mesh.gap > 0) return null;
      // Without a gap every post of a round closes a box of its own.
      return { cells: row.closes ? [...cells, 'filled'] : cells, posts, at };
    }
    const box = boxAt(pieces, i + 1, mesh, row.closes);
    if (!box) return null;
    cells.push(...box.cells);
    i += 1 + box.length;
    if (i >= pieces.length) return row.closes ? { cells, posts, at } : null;
  }
  return null;
}

type Piece =
  | { readonly kind: 'stitch'; readonly node: number; readonly stem: Kind['stem'] }
  | { readonly kind: 'chains'; readonly n: number };

/** Stitches and runs of chains; a long chain at the end of a flat row is the next row's. */
function piecesOf(fabric: Fabric, cloth: Cloth, row: RowRecord): Piece[] {
  const pieces: Piece[] = [];
  for (let node = row.nodes.from; node < row.nodes.to; node++) {
    const kind = fabric.kinds.kinds[cloth.nodes.kind[node] ?? 0];
    const last = pieces.at(-1);
    if (kind?.class === 'chain') {
      if (last?.kind === 'chains') pieces[pieces.length - 1] = { kind: 'chains', n: last.n + 1 };
      else pieces.push({ kind: 'chains', n: 1 });
    } else if (kind?.counted) pieces.push({ kind: 'stitch', node, stem: kind.stem });
  }
  if (!row.closes && pieces.at(-1)?.kind === 'chains') pieces.pop();
  return pieces;
}

interface Found {
  readonly cells: readonly Cell[];
  /** Pieces between its posts. */
  readonly length: number;
}

function boxAt(pieces: readonly Piece[], i: number, mesh: Mesh, ring: boolean): Found | null {
  const [first, second, third] = pieces.slice(i, i + 3);
  if (first?.kind === 'chains') {
    const low = second?.kind === 'stitch' && second.stem === 'w0' && mesh.post !== 'w0';
    if (low && first.n === LACET_CHAINS && third?.kind === 'chains' && third.n === LACET_CHAINS) {
      return { cells: ['lacet', 'lacet'], length: 3 };
    }
    if (first.n === mesh.gap) return { cells: ['open'], length: 1 };
    return first.n === chainsOfBar(mesh.gap) ? { cells: ['bar', 'bar'], length: 1 } : null;
  }
  const between = pieces.slice(i, i + mesh.gap);
  const whole = between.length === mesh.gap && between.every((piece) => piece.kind === 'stitch');
  // The last filled box of a round has no post behind it.
  const closed = ring ? i + mesh.gap <= pieces.length : pieces[i + mesh.gap]?.kind === 'stitch';
  return whole && closed ? { cells: ['filled'], length: mesh.gap } : null;
}

export interface MeshRows {
  readonly grid: Grid;
  /** Ids of the rows, the lowest first. */
  readonly rows: readonly string[];
}

/**
 * Rows that follow one another, as a grid: cells that the piece does not have are `none`. `null`
 * where a row is not mesh of this kind, or does not stand on the row before.
 */
export function meshRows(
  fabric: Fabric,
  cloth: Cloth,
  rows: readonly RowRecord[],
  by: {
    readonly mesh: Mesh;
    readonly name: string;
    readonly terms: Terms;
    /** Hands that made them; left hands work right-side rows from left to right. Default 'right'. */
    readonly hand?: 'right' | 'left';
  },
): MeshRows | null {
  const places = new Map<number, number>();
  const drawn: { readonly cells: readonly Cell[]; readonly from: number }[] = [];
  for (const row of rows) {
    const found = meshRow(fabric, cloth, row, by.mesh);
    if (!found) return null;
    const back = (row.side === 'RS') === (by.hand !== 'left');
    const start = startOf(cloth, found, { places, back, first: drawn.length === 0 });
    if (start === null) return null;
    const step = back ? -1 : 1;
    places.clear();
    found.posts.forEach((node, i) => {
      places.set(node, start + step * (found.at[i] ?? 0));
    });
    const width = found.cells.length;
    const from = back ? start - width : start;
    const cells = asPictured(found.cells, back ? 'right-to-left' : 'left-to-right');
    // Rounds are drawn from where they start; the ring has no other edge.
    drawn.push({ cells, from: row.closes ? 0 : from });
  }
  const left = Math.min(...drawn.map(({ from }) => from));
  const right = Math.max(...drawn.map(({ cells, from }) => from + cells.length));
  const none = (n: number): Cell[] => new Array<Cell>(n).fill('none');
  const picture = drawn.map(({ cells, from }) => [
    ...none(from - left),
    ...cells,
    ...none(right - from - cells.length),
  ]);
  const mesh = { post: wordFor(by.mesh.post, by.terms), gap: by.mesh.gap };
  return {
    grid: { name: by.name, mesh, rows: picture.reverse() },
    rows: rows.map(({ id }) => id),
  };
}

/** Boundary of the row's first post, from the first post that stands on a post beneath. */
function startOf(
  cloth: Cloth,
  row: MeshRow,
  by: { places: ReadonlyMap<number, number>; back: boolean; first: boolean },
): number | null {
  if (by.first) return by.back ? row.cells.length : 0;
  for (const [i, node] of row.posts.entries()) {
    const beneath = by.places.get(firstAnchor(cloth.nodes, node));
    if (beneath === undefined) continue;
    const along = row.at[i] ?? 0;
    return by.back ? beneath + along : beneath - along;
  }
  return null;
}
