/**
 * Lettering a line, in our own letters and in a font, and tracing a picture of 4 megapixels; the engine
 * alone, decoded pixels in. `node --import tsx bench/lettering.ts`
 */
import { legibility, letterWords, openFont, printedChart, trace } from '../src/index.ts';
import { fontBytes } from '../tests/finding/command-example.ts';

const WORDS = 'Slow tide, Łódź & Grüße 1926';
const bytes = fontBytes('sans.ttf');
const { value: font } = openFont(bytes);
if (!font) throw new Error('the font of the bench cannot be opened');

measure('own letters, a line of 28 signs, 7 high', () => lettered({ height: 7 }));
measure('open the font', () => openFont(bytes));
measure('font, the same line, 9 high', () => lettered({ height: 9, font }));
measure('font, the same line, 24 high', () => lettered({ height: 24, font }));

const [width, height] = [2449, 1633];
const rgba = new Uint8Array(width * height * 4);
for (let at = 0; at < rgba.length; at++) rgba[at] = at % 4 === 3 ? 255 : (at * 2654435761) >>> 24;
for (const boxes of [60, 200]) {
  measure(`trace ${(width * height) / 1e6} megapixels, ${boxes} boxes wide`, () =>
    trace({ width, height, rgba }, { width: boxes, clean: 1 }),
  );
}

function lettered(options: Parameters<typeof letterWords>[1]): void {
  const { value } = letterWords(WORDS, options);
  if (value) legibility(printedChart(value.grid), value.coverage);
}

/** First run and median of nine, in milliseconds. */
function measure(what: string, run: () => unknown): void {
  const times = Array.from({ length: 10 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  const [first = 0, ...others] = times;
  const median = others.sort((a, b) => a - b)[4] ?? 0;
  console.log(
    `${what.padEnd(46)} first ${first.toFixed(1).padStart(7)} ms, then ${median.toFixed(1).padStart(7)} ms`,
  );
}
