/**
 * A traced picture as text at several thresholds, side by side: as boxes where the terminal has room,
 * else small, in dots, over the boxes at the threshold taken.
 */
import { type Coverage, isInDoubt, type Tracing } from '../src/index.ts';

/** Below and above the threshold taken, in parts of full darkness (ours). */
const STEPS: readonly number[] = [-0.15, 0, 0.15];
const GAP = '   ';
const KEY = '█ filled, · open; ▓ filled and ░ open, but in doubt';

/** The picture alone, uncleaned and without its frame. */
export function preview({ coverage }: Tracing, width: number): string {
  const thresholds = STEPS.map((step) => Math.min(1, Math.max(0, coverage.threshold + step)));
  const room = (width - GAP.length * (STEPS.length - 1)) / STEPS.length;
  if (coverage.width <= room) {
    const signs = 2 * coverage.width <= room ? 2 : 1;
    const panels = thresholds.map((threshold) => panel(coverage, threshold, signs));
    return [...beside(panels), KEY, ''].join('\n');
  }
  const small = thresholds.map((threshold) => dots(coverage, threshold));
  const large = panel(coverage, coverage.threshold, 1);
  return [...beside(small), '', ...large, KEY, ''].join('\n');
}

function beside(panels: readonly (readonly string[])[]): string[] {
  const rows = (panels[0] ?? []).map((_, y) => panels.map((lines) => lines[y] ?? '').join(GAP));
  return rows.map((row) => row.trimEnd());
}

const headOf = (threshold: number, width: number): string =>
  `threshold ${threshold.toFixed(2)}`.slice(0, width).padEnd(width);

/** Boxes of one or two signs, under a line with the threshold. */
function panel(coverage: Coverage, threshold: number, signs: 1 | 2): string[] {
  const { width, height, shares } = coverage;
  const rows = Array.from({ length: height }, (_, y) =>
    Array.from(shares.subarray(y * width, (y + 1) * width), (share) =>
      signOf(share, threshold).repeat(signs),
    ).join(''),
  );
  return [headOf(threshold, width * signs), ...rows];
}

function signOf(share: number, threshold: number): string {
  const isDoubtful = isInDoubt({ threshold }, share);
  if (share >= threshold) return isDoubtful ? '▓' : '█';
  return isDoubtful ? '░' : '·';
}

/** Bits of the dots of a Braille pattern, two across and four down (Unicode Standard, block 2800). */
const DOTS: readonly (readonly [x: number, y: number, bit: number])[] = [
  [0, 0, 0x01],
  [0, 1, 0x02],
  [0, 2, 0x04],
  [1, 0, 0x08],
  [1, 1, 0x10],
  [1, 2, 0x20],
  [0, 3, 0x40],
  [1, 3, 0x80],
];

/** Two boxes across and four down in a sign: as terminals are, the dots stand nearly square. */
function dots(coverage: Coverage, threshold: number): string[] {
  const { width, height, shares } = coverage;
  const isFilled = (x: number, y: number): boolean =>
    x < width && y < height && (shares[y * width + x] ?? 0) >= threshold;
  const [across, down] = [Math.ceil(width / 2), Math.ceil(height / 4)];
  const rows = Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (_, column) => {
      const bits = DOTS.map(([x, y, bit]) => (isFilled(2 * column + x, 4 * row + y) ? bit : 0));
      return String.fromCodePoint(0x2800 + bits.reduce((sum, bit) => sum + bit, 0));
    }).join(''),
  );
  return [headOf(threshold, across), ...rows];
}
