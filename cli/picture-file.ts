/** Pictures from files: decoded by sharp, set upright, in plain colours, not larger than is of use. */
import sharp from 'sharp';
import { MOST_PIXELS, type Picture } from '../src/index.ts';
import { Unusable } from './design.ts';
import { whyOf } from './files.ts';

/** Pixels that tracing is given at most: larger pictures are shrunk by the decoder first (ours). */
const ENOUGH = 16_000_000;

export interface DecodedPicture {
  readonly picture: Picture;
  /** What was done to it, each a sentence for the designer. */
  readonly remarks: readonly string[];
}

/** The picture, its first if it holds several; throws `Unusable` with the reason in plain words. */
export async function readPicture(file: string): Promise<DecodedPicture> {
  try {
    const image = sharp(file, { limitInputPixels: MOST_PIXELS, failOn: 'truncated' });
    const meta = await image.metadata();
    const { width, height } = meta.autoOrient;
    const shrink = Math.min(1, Math.sqrt(ENOUGH / (width * height)));
    const upright = image.autoOrient().toColourspace('srgb').ensureAlpha();
    const sized = shrink < 1 ? upright.resize({ width: Math.round(width * shrink) }) : upright;
    const { data, info } = await sized
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    const remarks = [
      ...(shrink < 1 ? [`The picture was shrunk to ${info.width} x ${info.height} pixels.`] : []),
      ...((meta.pages ?? 1) > 1 ? [`Of its ${meta.pages} pictures the first is taken.`] : []),
    ];
    return { picture: { width: info.width, height: info.height, rgba: data }, remarks };
  } catch (error) {
    throw new Unusable(`${file}: ${reasonOf(error)}`);
  }
}

/** The decoder's words are about its own insides; these are about the file. */
const REASONS: readonly (readonly [RegExp, string])[] = [
  [/missing|no such file|ENOENT/i, 'no such file'],
  [/EISDIR|is a directory/i, 'this is a folder'],
  [/EACCES|permission/i, 'reading is not allowed'],
  [/exceeds pixel limit/i, `the picture has more than ${MOST_PIXELS.toLocaleString('en')} pixels`],
  [/unsupported image format/i, 'this is no picture that can be read; PNG or JPEG will do'],
  [/./, 'the picture is damaged or cut off'],
];

function reasonOf(error: unknown): string {
  const words = whyOf(error);
  return REASONS.find(([pattern]) => pattern.test(words))?.[1] ?? words;
}
