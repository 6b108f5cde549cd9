/**
 * What a row of boxes meets: for each column what fills it, for each boundary between columns which
 * post stands there. Columns and boundaries are those of the picture, boundary b left of column b.
 */

/** chain: of a foundation, or of boxes added; stitch: a plain row, one place each. */
export type Ground = 'open' | 'filled' | 'lacet' | 'bar' | 'chain' | 'stitch';

export interface Beneath {
  /** Where a column is not known. */
  readonly ground: Ground;
  readonly fills: ReadonlyMap<number, Ground>;
  /** Word of the post ("dc", "sc", "ch"), where it is not the usual one. */
  readonly posts: ReadonlyMap<number, string>;
  /** Boundary at which the row began with a chain; `null` where none is known. */
  readonly start: number | null;
}

export const groundOf = (on: 'chain' | 'boxes' | 'stitches'): Beneath => ({
  ground: on === 'chain' ? 'chain' : on === 'boxes' ? 'open' : 'stitch',
  fills: new Map(),
  posts: new Map(),
  start: null,
});

export const fillAt = (beneath: Beneath, column: number): Ground =>
  beneath.fills.get(column) ?? beneath.ground;

/** The word of the post at a boundary; `usual` is that of the mesh. */
export function postAt(beneath: Beneath, boundary: number, usual: string): string {
  const named = beneath.posts.get(boundary);
  if (named !== undefined) return named;
  if (beneath.fills.size > 0) return usual;
  return beneath.ground === 'chain' ? 'ch' : beneath.ground === 'stitch' ? 'st' : usual;
}
