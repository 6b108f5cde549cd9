/** How a piece is looked at: a parallel view, so that a length on paper is a length of the fabric. */
import type { ShapedPiece } from '../figures/index.ts';
import { cos, PI, sin } from '../units/index.ts';

export interface View {
  /** Rows of the turn: to the right and down on paper, and away from the eye. */
  readonly right: Axis;
  readonly down: Axis;
  readonly away: Axis;
}

type Axis = readonly [number, number, number];

/** Degrees from which standing pieces are seen: a little from above and from one side. */
const ABOVE = (20 * PI) / 180;
const ASIDE = (22 * PI) / 180;

/** Flat pieces are seen from their right side, which faces -z; others from +y, where a bag's front is. */
export function viewOf({ dimensions }: Pick<ShapedPiece, 'dimensions'>): View {
  if (dimensions.pose === 'flat') {
    const [c, s] = [cos(dimensions.turn), sin(dimensions.turn)];
    return { right: [-c, s, 0], down: [-s, -c, 0], away: [0, 0, 1] };
  }
  const up = dimensions.pose === 'hanging' ? -1 : 1;
  const [ca, sa, ce, se] = [cos(ASIDE), sin(ASIDE), cos(ABOVE), sin(ABOVE)];
  // From +y with up = z the right hand is -x. Hung, the piece is turned about x, and y turns too.
  return {
    right: [-ca, up * sa, 0],
    down: [sa * se, up * ca * se, -up * ce],
    away: [-sa * ce, -up * ca * ce, -up * se],
  };
}

export const project = (axis: Axis, at: ArrayLike<number>, from: number): number =>
  axis[0] * at[from]! + axis[1] * at[from + 1]! + axis[2] * at[from + 2]!;
