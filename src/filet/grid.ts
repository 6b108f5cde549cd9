/**
 * A filet grid as plain data: boxes that stand on posts, the right side as seen. A chart block of
 * the manuscript is one; lettering and tracing make others. No algorithm here.
 */
import type { Cell, Chart } from '../manuscript/index.ts';

/**
 * Rows from the top of the picture down; a row's cells from left to right, `none` where the piece
 * has no box. A lacet and a bar are two boxes wide and stand as two neighbouring cells of their
 * kind. The last row is worked first. `mesh`: word of the post as written and the chains of
 * an open box; `null` where nothing names one.
 */
export type Grid = Pick<Chart, 'name' | 'mesh' | 'rows'>;

export type { Cell };
