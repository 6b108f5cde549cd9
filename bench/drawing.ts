/**
 * A chart of 200 x 200 boxes: drawn, written as SVG, told in words, cut to A4, and made a PNG. Median and
 * least of warm runs in ms. `npm run bench -- drawing`
 */
import { toPng } from '../dist/cli/raster.js';
import { compile, drawCharts, toSvg } from '../dist/src/index.js';

const SIDE = 200;
const PIXELS_PER_MM = 4;

/** Waves of filled boxes, so that runs of all lengths come about. */
const cell = (x: number, y: number): string =>
  Math.sin(x / 9) * 12 + Math.sin(y / 7 + x / 31) * 10 > 4 ? '#' : '.';
const rows = Array.from({ length: SIDE }, (_, y) =>
  Array.from({ length: SIDE }, (_, x) => cell(x, y)).join(''),
);
const text = `---
title: Bench
terms: US
gauge: { mesh: 9 boxes x 9 rows = 10 cm }
yarn: { A: { ball: 50 g / 250 m } }
---
## Panel

\`\`\`chart Bench
mesh: dc, ch 2
. open box
# filled box

${rows.join('\n')}
\`\`\`
`;

const compiled = compile(text);
const drawing = drawCharts(compiled)[0]!.drawings[0]!;
const svg = toSvg(drawing);
const png = toPng(svg, PIXELS_PER_MM);
const pages = drawCharts(compiled, { paper: 'a4' })[0]!.drawings.length;

console.log(
  `${SIDE} x ${SIDE} boxes: SVG ${mB(svg.length)}, PNG ${mB(png.length)}, ${pages} pages of A4`,
);
console.log('step                            median      least');
report('drawn (with words and preview)', 7, () => drawCharts(compiled));
report('drawn on pages of A4', 5, () => drawCharts(compiled, { paper: 'a4' }));
report('written as SVG', 7, () => toSvg(drawing));
report(`made a PNG, ${PIXELS_PER_MM} pixels a mm`, 3, () => toPng(svg, PIXELS_PER_MM));

function report(name: string, runs: number, work: () => unknown): void {
  const times: number[] = [];
  for (let run = -1; run < runs; run++) {
    const start = performance.now();
    work();
    if (run >= 0) times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  const ms = (n: number): string => `${n.toFixed(0).padStart(7)} ms`;
  console.log(`${name.padEnd(30)} ${ms(times[times.length >> 1]!)} ${ms(times[0]!)}`);
}

function mB(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}
