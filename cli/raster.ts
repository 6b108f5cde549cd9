/**
 * SVG to PNG. Only the face that we bring along is used, so that the picture is the same on every
 * machine: Source Sans 3, SIL Open Font License, whose text stands beside it in its package.
 */
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';

const FACES = ['400Regular/SourceSans3_400Regular', '700Bold/SourceSans3_700Bold'] as const;

const { resolve } = createRequire(import.meta.url);
const fontFiles = FACES.map((face) => resolve(`@expo-google-fonts/source-sans-3/${face}.ttf`));

/** Pixels of a picture at most: a wider or taller one is refused by most viewers (ours). */
const MOST_PIXELS = 100_000_000;

/** CSS pixels in a millimetre, which is how the rasteriser takes the size of our SVG. */
const CSS_PIXELS_PER_MM = 96 / 25.4;

/** PNG bytes of a drawing's SVG at so many pixels a mm; throws RangeError if that is too large. */
export function toPng(svg: string, pixelsPerMm: number): Uint8Array {
  const [, width = 0, height = 0] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)?.map(Number) ?? [];
  if (width * height * pixelsPerMm ** 2 > MOST_PIXELS) {
    throw new RangeError('the picture would have more than 100 million pixels');
  }
  return new Resvg(svg, {
    font: { fontFiles, loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' },
    fitTo: { mode: 'zoom', value: pixelsPerMm / CSS_PIXELS_PER_MM },
  })
    .render()
    .asPng();
}
