/** A ring as seen from above: a circle, or two half circles with straight sides between (an oval). */
import { cos, PI, sin } from '../../units/index.ts';

export interface Outline {
  readonly radiusMm: number;
  /** Length of each straight side; they lie along x. */
  readonly straightMm: number;
}

export interface OutlinePoint {
  readonly x: number;
  readonly y: number;
  /** Outwards. */
  readonly nx: number;
  readonly ny: number;
}

/**
 * The point at share `t` of the girth, from the tip at -x on, over +y: clockwise seen from +z, as a
 * right-handed maker goes round when the right side faces down (a base that stands on the table).
 */
export function pointOn({ radiusMm, straightMm }: Outline, t: number): OutlinePoint {
  const half = straightMm / 2;
  const arc = PI * radiusMm;
  const girth = 2 * (arc + straightMm);
  let s = (t - Math.floor(t)) * girth;
  if (s < arc / 2) return onArc(-half, radiusMm, PI - s / Math.max(radiusMm, 1e-9));
  s -= arc / 2;
  if (s < straightMm) return { x: s - half, y: radiusMm, nx: 0, ny: 1 };
  s -= straightMm;
  if (s < arc) return onArc(half, radiusMm, PI / 2 - s / Math.max(radiusMm, 1e-9));
  s -= arc;
  if (s < straightMm) return { x: half - s, y: -radiusMm, nx: 0, ny: -1 };
  return onArc(-half, radiusMm, -PI / 2 - (s - straightMm) / Math.max(radiusMm, 1e-9));
}

function onArc(x: number, radius: number, angle: number): OutlinePoint {
  const nx = cos(angle);
  const ny = sin(angle);
  return { x: x + radius * nx, y: radius * ny, nx, ny };
}

/** Share of the girth of the point on the side +y (or -y) that lies at `x`. */
export function shareAt({ radiusMm, straightMm }: Outline, x: number, side: 1 | -1): number {
  const arc = PI * radiusMm;
  const along = Math.min(Math.max(x + straightMm / 2, 0), straightMm);
  const s = side === 1 ? arc / 2 + along : arc / 2 + straightMm + arc + (straightMm - along);
  return s / Math.max(2 * (arc + straightMm), 1e-9);
}
