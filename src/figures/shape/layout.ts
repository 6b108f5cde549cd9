/**
 * Where the stitches are before the springs pull: rounds as a solid of revolution as far as they go round
 * on each other, flat rows in the plane, everything else grown row by row out of what it is worked into.
 *
 * Axes: a base lies in z = 0 with its right side down and the piece above it; a flat piece lies in
 * z = 0 too, right side down, its rows towards +y. So the right side is seen from -z, and nothing is
 * mirrored for a right-handed maker.
 */

import { PI } from '../../units/index.ts';
import { flatRowsTo, layFlatRows } from './flat-rows.ts';
import { type RoundGirth, straightMm } from './flatness.ts';
import { growRow, settleRow } from './grow.ts';
import { placeLaceRound } from './lace-layout.ts';
import { pointOn } from './outline.ts';
import { profileOf } from './profile.ts';
import { placeRound } from './round-layout.ts';
import type { PieceSprings } from './spring-model.ts';
import { firstIsWrongSide, rowLengthMm, type StitchGraph } from './stitch-graph.ts';

export interface Layout {
  readonly graph: StitchGraph;
  /** x, y, z in mm. */
  readonly at: Float64Array;
  /** Unit vector by node: the way in which the next row is worked out of it. */
  readonly way: Float64Array;
  /** Share of the way round, for nodes of rounds laid as a solid of revolution. */
  readonly share: Float64Array;
  readonly isPlaced: Uint8Array;
  /** Laid in a curve that is meant, and not only grown. */
  readonly keepsCurve: Uint8Array;
  /** Who was worked into a chain last, to tell its other side. */
  readonly user: Int32Array;
}

export interface LayoutTraits {
  /** Filled with stuffing, or with a head. */
  readonly isFilled: boolean;
  readonly girths: readonly RoundGirth[];
}

export function layOut(graph: StitchGraph, springs: PieceSprings, traits: LayoutTraits): Layout {
  const layout: Layout = {
    graph,
    at: new Float64Array(3 * graph.n),
    way: new Float64Array(3 * graph.n),
    share: new Float64Array(graph.n),
    isPlaced: new Uint8Array(graph.n),
    keepsCurve: new Uint8Array(graph.n),
    user: new Int32Array(graph.n).fill(-1),
  };
  const flatTo = flatRowsTo(graph);
  if (flatTo > 0) layFlatRows(layout, flatTo);
  const { girths } = traits;
  const rounds = profileOf(girths, straightMm(graph), traits.isFilled);
  let isRegular = true;
  let isLace = false;
  let next = 0;
  for (const [r, row] of graph.rows.entries()) {
    const girth = girths[next];
    if (r < flatTo) continue;
    if (!row.record && r === 0) placeFoundation(layout);
    else if (isRegular && girth?.row === row && girth.arches === 0) {
      placeRound(layout, row, rounds[next]!, straightMm(graph));
      next++;
    } else if (row.isRing && (isLace || (isRegular && startsLace(girths, next)))) {
      [isRegular, isLace] = [false, true];
      placeLaceRound(layout, row);
    } else {
      isRegular = false;
      growRow(layout, row);
      settleRow(layout, springs, r);
    }
  }
  return layout;
}

/** Many long chains in a round, after rounds that all lie flat: lace that is laid out flat. */
const startsLace = (girths: readonly RoundGirth[], next: number): boolean =>
  (girths[next]?.arches ?? 0) > 0 &&
  girths.slice(0, next).every(({ lies }) => lies === 'flat' || lies === 'ruffles');

/** The chain along x, ring or magic ring that everything else grows from. */
function placeFoundation(layout: Layout): void {
  const { graph, at, way, share, isPlaced } = layout;
  const [row] = graph.rows;
  if (!row) return;
  const { from, to, isRing } = row;
  const length = rowLengthMm(graph, row);
  let along = 0;
  for (let i = from; i < to; i++) {
    isPlaced[i] = 1;
    if (i > from) along += (graph.widthMm[i]! + graph.widthMm[i - 1]!) / 2;
    if (graph.ring === i) continue;
    if (isRing) {
      share[i] = along / length;
      const point = pointOn({ radiusMm: length / (2 * PI), straightMm: 0 }, share[i]!);
      at.set([point.x, point.y, 0], 3 * i);
      way.set([point.nx, point.ny, 0], 3 * i);
    } else {
      at[3 * i] = (firstIsWrongSide(graph) ? -1 : 1) * (length / 2 - along);
      way[3 * i + 1] = 1;
    }
  }
}
