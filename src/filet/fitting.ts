/**
 * Where a chart stands on a piece, and at which counts it stands well. Boxes and stitches are counted
 * in the order of work from the start of the row or round; a round begins at the side of the piece,
 * so its front is the first half. Posts are shared: boxes a to b show from stitch (a - 1)p + 1 to
 * stitch bp + 1, with p stitches to a box.
 */
import type { Cell } from './grid.ts';
import { type Closing, pitchOf, stitchesOf } from './mesh.ts';

export interface FitAsked {
  /** Boxes across, or around the whole piece. */
  readonly boxes: number;
  readonly gap: number;
  readonly closing: Closing;
  /** Boxes that the chart is wide. */
  readonly width: number;
  /** Middle of its filled boxes, in boxes from where work meets the chart first. */
  readonly filledMiddle: number | null;
  /** Open boxes wanted at each side. */
  readonly margin: number;
}

export interface Position {
  readonly firstBox: number;
  readonly lastBox: number;
  /** Stitches of the front before and after it; halves where the front has half a stitch. */
  readonly before: number;
  readonly after: number;
}

export interface Fit {
  readonly frontBoxes: number;
  readonly frontStitches: number;
  /** Best places by the chart's edges: one, or two alike. Empty where it does not fit. */
  readonly exact: readonly Position[];
  /** Best places by the middle of what is filled; empty where nothing is. */
  readonly byEye: readonly Position[];
  /** Does this count allow a place within half a stitch of the middle, with margins? */
  readonly fits: boolean;
  /** Nearest counts of boxes below and above that do. */
  readonly below: number | null;
  readonly above: number;
}

/** Middle of the filled boxes of a grid, read in the order of work from the right; `null` if none. */
export function filledMiddle(rows: readonly (readonly Cell[])[]): number | null {
  let [sum, n] = [0, 0];
  for (const row of rows) {
    row.forEach((cell, column) => {
      if (cell !== 'filled') return;
      sum += row.length - column - 0.5;
      n++;
    });
  }
  return n === 0 ? null : sum / n;
}

/** Positions and counts; nothing is chosen. */
export function fitChart(asked: FitAsked): Fit {
  const { boxes, closing } = asked;
  const front = frontOf(asked, boxes);
  const middle = asked.filledMiddle;
  const pitch = pitchOf(asked.gap);
  return {
    frontBoxes: front.boxes,
    frontStitches: front.stitches,
    exact: best(asked, front, ({ before, after }) => before - after),
    byEye:
      middle === null
        ? []
        : best(asked, front, ({ before }) => 2 * (before + middle * pitch + 0.5) - front.stitches),
    fits: isGood(asked, boxes),
    below: nearest(asked, boxes, -1),
    above: nearest(asked, boxes, 1) ?? leastOf(asked, closing),
  };
}

interface Front {
  readonly boxes: number;
  readonly stitches: number;
}

const frontOf = ({ gap, closing }: FitAsked, boxes: number): Front =>
  closing === 'flat'
    ? { boxes, stitches: stitchesOf(boxes, gap, 'flat') }
    : { boxes: Math.floor(boxes / 2), stitches: stitchesOf(boxes, gap, 'round') / 2 };

/** Places within the front whose `off` is nearest to nothing. */
function best(asked: FitAsked, front: Front, off: (at: Position) => number): Position[] {
  const all: Position[] = [];
  for (let first = 1; first + asked.width - 1 <= front.boxes; first++) {
    all.push(positionAt(asked, front, first));
  }
  const least = Math.min(...all.map((at) => Math.abs(off(at))));
  // Halves and thirds of boxes are exact enough to compare within a thousandth of a stitch.
  return all.filter((at) => Math.abs(off(at)) - least < 0.001);
}

function positionAt({ gap, width }: FitAsked, front: Front, firstBox: number): Position {
  const before = (firstBox - 1) * pitchOf(gap);
  const after = front.stitches - before - stitchesOf(width, gap, 'flat');
  return { firstBox, lastBox: firstBox + width - 1, before, after };
}

/**
 * As near the middle as half a stitch, the margins kept, and in the round two equal faces. Posts are
 * shared, so in a round a chart can stand no nearer: the front has a post less than the chart.
 */
function isGood(asked: FitAsked, boxes: number): boolean {
  if (asked.closing === 'round' && boxes % 2 !== 0) return false;
  const front = frontOf(asked, boxes);
  const least = asked.margin;
  const rest = front.boxes - asked.width;
  for (let before = least; before <= rest - least; before++) {
    const at = positionAt(asked, front, before + 1);
    if (Math.abs(at.before - at.after) <= 1) return true;
  }
  return false;
}

/** Good counts come at least every four boxes, from the least that holds chart and margins. */
function nearest(asked: FitAsked, from: number, step: -1 | 1): number | null {
  const least = leastOf(asked, asked.closing);
  for (let boxes = from + step; boxes >= least && boxes <= from + 4; boxes += step) {
    if (isGood(asked, boxes)) return boxes;
  }
  return null;
}

const leastOf = ({ width, margin }: FitAsked, closing: Closing): number =>
  (width + 2 * margin) * (closing === 'round' ? 2 : 1);
