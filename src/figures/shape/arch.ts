/** A run of chains between two stitches: straight, or half an ellipse where it is longer than the gap. */

import { cos, PI, sin, sqrt } from '../../units/index.ts';
import type { Layout } from './layout.ts';
import { across, lengthOf, minus, plus, times, unit, type Vector, vectorAt } from './vector.ts';

export interface Span {
  readonly from: number;
  readonly to: number;
  readonly before: number;
  readonly after: number;
}

export function placeArch(layout: Layout, { from, to, before, after }: Span): void {
  const { graph, at, way, isPlaced } = layout;
  const a = vectorAt(at, before);
  const chord = minus(vectorAt(at, after), a);
  const gap = lengthOf(chord);
  let length = (graph.widthMm[before]! + graph.widthMm[after]!) / 2;
  for (let i = from; i < to; i++) length += graph.widthMm[i]!;
  const along = unit(chord, [1, 0, 0]);
  const up = unit(across(plus(vectorAt(way, before), vectorAt(way, after)), along), [0, 0, 1]);
  const rise = length > 1.02 * gap ? riseFor(gap / 2, length) : 0;
  let done = 0;
  for (let i = from; i < to; i++) {
    done += (graph.widthMm[i]! + graph.widthMm[i === from ? before : i - 1]!) / 2;
    const angle = PI * (1 - done / length);
    const middle = plus(a, times(gap / 2, along));
    const [x, y] =
      rise > 0 ? [(gap / 2) * cos(angle), rise * sin(angle)] : [gap * (done / length - 0.5), 0];
    at.set(plus(plus(middle, times(x, along)), times(y, up)), 3 * i);
    way.set(normalAt({ angle, half: gap / 2, rise }, along, up), 3 * i);
    isPlaced[i] = 1;
  }
}

function normalAt(
  ellipse: { readonly angle: number; readonly half: number; readonly rise: number },
  along: Vector,
  up: Vector,
): Vector {
  const { angle, half, rise } = ellipse;
  if (rise <= 0) return up;
  return unit(plus(times(rise * cos(angle), along), times(half * sin(angle), up)), up);
}

/** Height of an arch of chains that rises so far, at a share of its way. */
export const archMm = (rise: number, share: number): number =>
  rise * sqrt(Math.max(0, 1 - (2 * share - 1) ** 2));

/** Height of the half ellipse of this half width and length; halving an interval 40 times. */
export function riseFor(half: number, length: number): number {
  let low = 0;
  let high = length;
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2;
    if (halfGirth(half, middle) < length) low = middle;
    else high = middle;
  }
  return low;
}

/** Half the girth of an ellipse by Ramanujan's first approximation (1914), right to 0.4 % when thin. */
function halfGirth(a: number, b: number): number {
  return (PI / 2) * (3 * (a + b) - sqrt((3 * a + b) * (a + 3 * b)));
}
