/** A picture as the host decoded it, and its tones. */

/** Rows from the top, four bytes a pixel: red, green, blue, opacity, none multiplied by another. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array | Uint8ClampedArray;
}

/** What shows through where a picture is transparent: white paper, or black. */
export type Ground = 'white' | 'black';

/**
 * Tones from 0 black to 255 white. Luma with the weights of Recommendation ITU-R BT.709 (0.2126,
 * 0.7152, 0.0722) of the values as stored: they follow the eye, so that a box half black and half white
 * has the tone in the middle. Whole numbers, so that all machines agree.
 */
export function tonesOf({ width, height, rgba }: Picture, ground: Ground): Uint8Array {
  const paper = ground === 'white' ? 255 : 0;
  const tones = new Uint8Array(width * height);
  for (let at = 0, from = 0; at < tones.length; at++, from += 4) {
    const luma = 2126 * rgba[from]! + 7152 * rgba[from + 1]! + 722 * rgba[from + 2]!;
    const opacity = rgba[from + 3]!;
    tones[at] = Math.round((luma * opacity + paper * 10_000 * (255 - opacity)) / 2_550_000);
  }
  return tones;
}
