/**
 * How thick the strokes of a letter are and how wide its gaps, from a fine picture of it. At each
 * point, the shorter of the level and the upright run through it: an upright stem is as thick as its
 * level runs, a bar as its upright ones, and at the rim of a bowl the long run does not count.
 */
import { type Boxes, isFilled } from './boxes.ts';

/** In fine boxes; `null` where there is none. */
export interface Thickness {
  readonly stroke: number | null;
  readonly gap: number | null;
}

/** So much of the ink may be thinner: rounded ends and tips are no thin strokes (ours). */
const STROKE_SHARE = 0.15;
/** The same for gaps: the angle inside a V narrows to nothing (ours). */
const GAP_SHARE = 0.3;

/** `parts`: fine boxes across one box. Notches of less than half a box in all are no gap (ours). */
export function thicknessOf(fine: Boxes, parts: number): Thickness {
  const level = runsThrough(fine, 'level');
  const upright = runsThrough(fine, 'upright');
  const strokes: number[] = [];
  const gaps: number[] = [];
  for (const [at, box] of fine.filled.entries()) {
    const run = Math.min(level[at]!, upright[at]!);
    if (box === 1) strokes.push(run);
    else if (run < Number.POSITIVE_INFINITY) gaps.push(run);
  }
  const isNotch = gaps.length < parts ** 2 / 2;
  return {
    stroke: quantile(strokes, STROKE_SHARE),
    gap: isNotch ? null : quantile(gaps, GAP_SHARE),
  };
}

/** For each point the length of the run of its kind through it; open runs that meet the rim are endless. */
function runsThrough(fine: Boxes, way: 'level' | 'upright'): Float64Array {
  const { width, height } = fine;
  const runs = new Float64Array(width * height);
  const [lines, length] = way === 'level' ? [height, width] : [width, height];
  const at = (line: number, i: number): number =>
    way === 'level' ? line * width + i : i * width + line;
  const inkAt = (line: number, i: number): boolean =>
    way === 'level' ? isFilled(fine, i, line) : isFilled(fine, line, i);
  for (let line = 0; line < lines; line++) {
    for (let from = 0; from < length; ) {
      const isInk = inkAt(line, from);
      let to = from + 1;
      while (to < length && inkAt(line, to) === isInk) to++;
      const isOutside = !isInk && (from === 0 || to === length);
      for (let i = from; i < to; i++) {
        runs[at(line, i)] = isOutside ? Number.POSITIVE_INFINITY : to - from;
      }
      from = to;
    }
  }
  return runs;
}

function quantile(values: readonly number[], share: number): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length * share)] ?? null;
}
