/** A traced picture as text at several thresholds, side by side where the terminal has room. */
import { type Coverage, isInDoubt, type Tracing } from '../src/index.ts';

/** Below and above the threshold taken, in parts of full darkness (ours). */
const STEPS: readonly number[] = [-0.15, 0, 0.15];
const GAP = '   ';

/** `█` filled, `·` open; `▓` and `░` the same, but in doubt. Uncleaned and without the frame. */
export function preview({ coverage }: Tracing, width: number): string {
  const across = coverage.width;
  const isWide = STEPS.length * across * 2 + GAP.length * (STEPS.length - 1) <= width;
  const panels = STEPS.map((step) =>
    panel(coverage, Math.min(1, Math.max(0, coverage.threshold + step)), isWide ? 2 : 1),
  );
  const isBeside = STEPS.length * across * (isWide ? 2 : 1) + GAP.length * 2 <= width;
  const key = '█ filled, · open; ▓ filled and ░ open, but in doubt';
  if (!isBeside) return [...panels.map((lines) => lines.join('\n')), key, ''].join('\n');
  const rows = (panels[0] ?? []).map((_, y) => panels.map((lines) => lines[y] ?? '').join(GAP));
  return [...rows.map((row) => row.trimEnd()), key, ''].join('\n');
}

/** Boxes of one or two signs, under a line with the threshold. */
function panel(coverage: Coverage, threshold: number, signs: 1 | 2): string[] {
  const { width, height, shares } = coverage;
  const head = `threshold ${threshold.toFixed(2)}`.slice(0, width * signs).padEnd(width * signs);
  const rows = Array.from({ length: height }, (_, y) =>
    Array.from(shares.subarray(y * width, (y + 1) * width), (share) =>
      signOf(share, threshold).repeat(signs),
    ).join(''),
  );
  return [head, ...rows];
}

function signOf(share: number, threshold: number): string {
  const isDoubtful = isInDoubt({ threshold }, share);
  if (share >= threshold) return isDoubtful ? '▓' : '█';
  return isDoubtful ? '░' : '·';
}
