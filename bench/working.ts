/**
 * The whole chain on pieces of a known size: read, worked and proven, before fixes are tried, by
 * the built engine. Median and minimum of warm runs, in ms, and the heap that the outcome holds.
 * Sizes double so that growth can be seen: the time for 10,000 stitches must not rise.
 * `npm run bench -- working`
 */
import { type Compiled, compile } from '../dist/src/index.js';
import { bagOf } from './patterns.ts';

/** One frame of a screen at 60 Hz: a bag of 10,000 stitches has to be done within it. */
const FRAME_MS = 16;
const BAG = 10_000;

/** Rounds of 240 and of 480 stitches; the nearest whole rounds to the sizes that are named. */
const PIECES: readonly { readonly stitches: number; readonly around: number }[] = [
  { stitches: BAG, around: 240 },
  { stitches: 25_000, around: 240 },
  { stitches: 50_000, around: 240 },
  { stitches: 100_000, around: 480 },
  { stitches: 250_000, around: 480 },
  { stitches: 500_000, around: 480 },
];

console.log('stitches   text     median        min  min/10,000  heap kept  rows proven');
for (const { stitches, around } of PIECES) {
  const text = bagOf(Math.ceil(stitches / around), around);
  const { heap, made } = held(text);
  const { median, least } = timed(text, Math.max(5, Math.round(600_000 / stitches)));
  // By the least: what else the machine does at the time only ever adds.
  const per = (least * BAG) / made.stitches;
  console.log(
    `${String(made.stitches).padStart(8)} ${kB(text.length)} ${ms(median)} ${ms(least)} ` +
      `${ms(per)}      ${(heap / 1e6).toFixed(1).padStart(5)} MB  ${made.proven} of ${made.rows}`,
  );
  if (stitches !== BAG) continue;
  console.log(
    `  bar of ${FRAME_MS} ms: ${verdict(median)} by the median, ${verdict(least)} by the least`,
  );
}

function timed(text: string, runs: number): { readonly median: number; readonly least: number } {
  const times: number[] = [];
  // As many runs again go before, so that the engine is warm.
  for (let run = -runs; run < runs; run++) {
    const start = performance.now();
    prove(text);
    if (run >= 0) times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return { median: times[times.length >> 1]!, least: times[0]! };
}

/** Bytes that the outcome keeps, its buffers included, measured on a settled heap. */
function held(text: string): { readonly heap: number; readonly made: Made } {
  prove(text);
  const before = memory();
  const piece = prove(text);
  const heap = memory() - before;
  return { heap, made: madeBy(piece) };
}

function memory(): number {
  // The second run frees what only the finalisers of the first let go.
  globalThis.gc?.();
  globalThis.gc?.();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

interface Made {
  readonly stitches: number;
  readonly rows: number;
  readonly proven: number;
}

function madeBy({ totals }: Compiled): Made {
  const [total] = totals;
  if (!total) throw new Error('nothing was worked');
  return { stitches: total.stitches, rows: total.rows, proven: total.proven };
}

function prove(text: string): Compiled {
  return compile(text, { fixes: false });
}

function ms(time: number): string {
  return `${time.toFixed(1).padStart(7)} ms`;
}

function verdict(time: number): string {
  return time <= FRAME_MS ? 'met' : 'not met';
}

function kB(length: number): string {
  return `${(length / 1000).toFixed(0).padStart(4)} kB`;
}
