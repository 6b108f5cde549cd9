/**
 * The sheet of a bag of 10,000 stitches, from a piece that is read and worked: sizes, yarn, hours,
 * lean. Median and minimum of warm runs. `npm run bench -- figures`
 */
import { compile, measure } from '../dist/src/index.js';
import { bagOf } from './patterns.ts';

/** One frame of a screen at 60 Hz. */
const FRAME_MS = 16;
const RUNS = 60;

const head =
  '---\nterms: US\nyarn: { A: { ball: 50 g / 110 m } }\ngauge: { sc: 16 sts x 18 rnds = 10 cm }\n---\n';
const { manuscript, fabric } = compile(head + bagOf(42, 240).replace(/^---[\s\S]*?\n---\n/, ''), {
  fixes: false,
});
const times: number[] = [];
let stitches = 0;
for (let run = -RUNS; run < RUNS; run++) {
  const start = performance.now();
  stitches = measure(manuscript, fabric).sizes[0]?.stitches ?? 0;
  if (run >= 0) times.push(performance.now() - start);
}
times.sort((a, b) => a - b);
const [least = 0] = times;
const median = times[times.length >> 1] ?? 0;
console.log(
  `${stitches} stitches and chains: median ${median.toFixed(2)} ms, least ${least.toFixed(2)} ms`,
);
console.log(`bar of ${FRAME_MS} ms: ${median <= FRAME_MS ? 'kept' : 'missed'}`);
