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
  /**
   * In the round: middle of the front in stitches from the round's start. Default a quarter of the
   * round, where it starts at the side.
   */
  readonly frontMiddle?: number;
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

/**
 * Middle of the filled boxes of a grid in boxes from where a right-side row meets it: from its right
 * edge for right hands, from its left for left ones; `null` if none is filled.
 */
export function filledMiddle(
  rows: readonly (readonly Cell[])[],
  hand: 'right' | 'left' = 'right',
): number | null {
  let [sum, n] = [0, 0];
  for (const row of rows) {
    row.forEach((cell, column) => {
      if (cell !== 'filled') return;
      sum += hand === 'right' ? row.length - column - 0.5 : column + 0.5;
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
  /** Where it begins, in stitches from the start of the row or round. */
  readonly from: number;
  /** Of the whole round; `null` flat. */
  readonly around: number | null;
}

function frontOf({ gap, closing, frontMiddle }: FitAsked, boxes: number): Front {
  const all = stitchesOf(boxes, gap, closing);
  if (closing === 'flat') return { boxes, stitches: all, from: 0, around: null };
  const from = frontMiddle === undefined ? 0 : frontMiddle - all / 4;
  return { boxes: Math.floor(boxes / 2), stitches: all / 2, from, around: all };
}

/** Places within the front whose `off` is nearest to nothing. */
function best(asked: FitAsked, front: Front, off: (at: Position) => number): Position[] {
  const pitch = pitchOf(asked.gap);
  const boxes = front.around === null ? front.boxes : front.around / pitch;
  const all = Array.from({ length: boxes }, (_, i) => positionAt(asked, front, i + 1)).filter(
    (at) => isWithin(at, front) && (front.around !== null || at.lastBox <= boxes),
  );
  const least = Math.min(...all.map((at) => Math.abs(off(at))));
  // Halves and thirds of boxes are exact enough to compare within a thousandth of a stitch.
  return all.filter((at) => Math.abs(off(at)) - least < 0.001);
}

/** A post of the chart may be shared with the other face. */
const isWithin = ({ before, after }: Position, { around }: Front): boolean =>
  before >= 0 && after >= (around === null ? 0 : -1);

/** In the round the first box may lie behind the start and the last one before it. */
function positionAt({ gap, width }: FitAsked, front: Front, firstBox: number): Position {
  const start = (firstBox - 1) * pitchOf(gap) - front.from;
  const before = front.around === null ? start : (start + front.around) % front.around;
  const after = front.stitches - before - stitchesOf(width, gap, 'flat');
  return { firstBox, lastBox: firstBox + width - 1, before, after };
}

/**
 * As near the middle as half a stitch, the margins kept, and in the round two equal faces. Posts are
 * shared, so in a round a chart can stand no nearer: the front has a post less than the chart.
 */
function isGood(asked: FitAsked, boxes: number): boolean {
  const { closing, gap, margin, frontMiddle } = asked;
  const round = closing === 'round';
  if (round && boxes % 2 !== 0) return false;
  // At another count the front lies where it does now by its share of the round.
  const share = frontMiddle === undefined ? null : frontMiddle / asked.boxes;
  const there = share === null ? asked : { ...asked, frontMiddle: share * boxes };
  const least = margin * pitchOf(gap) - (round ? 1 : 0);
  return best(there, frontOf(there, boxes), ({ before, after }) => before - after).some(
    ({ before, after }) => Math.abs(before - after) <= 1 && Math.min(before, after) >= least,
  );
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
