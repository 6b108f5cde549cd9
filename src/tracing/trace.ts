/** From a picture to a grid: tones, means, threshold, cleaning, frame. */
import type { Grid } from '../filet/index.ts';
import {
  type Finding,
  loneBox,
  type Outcome,
  pictureBlank,
  pictureCoarse,
  pictureFlat,
  pictureSize,
} from '../finding/index.ts';
import {
  type Border,
  type Boxes,
  type Coverage,
  framed,
  gridOf,
  openBoxes,
  regionsOf,
} from '../lettering/index.ts';
import { meansOf } from './average.ts';
import { type Cleaned, cleaned } from './clean.ts';
import { type Parting, partTones } from './otsu.ts';
import { type Ground, type Picture, tonesOf } from './picture.ts';

export interface TraceOptions {
  /** Boxes across, without margin and border. */
  readonly width: number;
  /** Width of a box over its height, as it comes out in the yarn. Default 1. */
  readonly boxAspect?: number;
  /** How dark a box must be to be filled, 0 white to 1 black; `auto`: by the picture's tones. */
  readonly threshold?: number | 'auto';
  /** dark: dark is filled (default). light: the picture is taken as its negative. */
  readonly fill?: 'dark' | 'light';
  /** Turns the picture left to right. Never for lettering, which would read backwards. */
  readonly facing?: 'as-is' | 'mirrored';
  /** Specks and holes of so many boxes are taken away; default 0, none. */
  readonly clean?: number;
  /** Default white. */
  readonly ground?: Ground;
  readonly margin?: number;
  readonly border?: Border;
  readonly name?: string;
  readonly mesh?: Grid['mesh'];
}

export interface Tracing {
  readonly grid: Grid;
  /** Of the picture alone, before cleaning and without the frame. */
  readonly coverage: Coverage;
  readonly threshold: { readonly share: number; readonly how: 'given' | 'auto' };
  readonly cleaned: Pick<Cleaned, 'opened' | 'filled'>;
}

/** Boxes across or up at most: more than any piece is worked with (ours). */
const MOST_BOXES = 1000;
/** Pixels at most, 67 million: more than cameras take (ours). */
export const MOST_PIXELS: number = 1 << 26;
/** The parting of tones is called unclear below this; an even run of tones has 0.75 (ours). */
const CLEAR = 0.8;

/** The picture in boxes. Findings have no place in a text; `null` where nothing can be traced. */
export function trace(picture: Picture, options: TraceOptions): Outcome<Tracing | null> {
  const size = sizeOf(picture, options);
  if ('code' in size) return { value: null, findings: [size] };
  const tones = tonesOf(picture, options.ground ?? 'white');
  const parting = partTones(tones);
  const coverage = coverageOf(meansOf(tones, picture, size), size, parting, options);
  const raw = boxesFrom(coverage);
  const clean = cleaned(raw, options.clean ?? 0);
  const border = options.border ?? 'none';
  const frame = { border, margin: options.margin ?? (border === 'none' ? 0 : 1) };
  const grid = gridOf(framed(clean.boxes, frame), options.name ?? '', options.mesh ?? null);
  const how = typeof options.threshold === 'number' ? 'given' : 'auto';
  const { opened, filled } = clean;
  return {
    value: {
      grid,
      coverage,
      threshold: { share: coverage.threshold, how },
      cleaned: { opened, filled },
    },
    findings: [
      ...pictureFindings(picture, size, clean.boxes),
      ...(how === 'auto' ? flatFindings(parting) : []),
      ...loneFindings(clean.boxes),
    ],
  };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

const NOWHERE = { from: 0, to: 0 };

/** Rows follow from the picture's shape and the boxes'; at least one. */
function sizeOf({ width, height, rgba }: Picture, options: TraceOptions): Size | Finding {
  const aspect = options.boxAspect ?? 1;
  const isWhole = width > 0 && height > 0 && rgba.length >= width * height * 4;
  if (!isWhole || width * height > MOST_PIXELS) {
    return pictureSize(NOWHERE, { what: 'the picture', least: 1, most: MOST_PIXELS, of: 'pixels' });
  }
  const rows = Math.max(1, Math.round((options.width * height * aspect) / width));
  const isSound = Number.isInteger(options.width) && aspect > 0 && options.width >= 2;
  if (!isSound || options.width > MOST_BOXES || !(rows <= MOST_BOXES)) {
    const what = 'a chart of it, across and up,';
    return pictureSize(NOWHERE, { what, least: 2, most: MOST_BOXES, of: 'boxes' });
  }
  return { width: options.width, height: rows };
}

/** Darkness of each box as its share, or lightness where light is filled. */
function coverageOf(
  means: Float64Array,
  { width, height }: Size,
  parting: Parting,
  options: TraceOptions,
): Coverage {
  const shareOf = (tone: number): number =>
    Math.round((options.fill === 'light' ? tone : 255 - tone) * 4000) / (4000 * 255);
  const shares = new Float64Array(width * height);
  for (const [at, mean] of means.entries()) {
    const x = at % width;
    const to = options.facing === 'mirrored' ? at - x + (width - 1 - x) : at;
    shares[to] = shareOf(mean);
  }
  const asked = options.threshold ?? 'auto';
  return { width, height, shares, threshold: asked === 'auto' ? shareOf(parting.tone) : asked };
}

function boxesFrom({ width, height, shares, threshold }: Coverage): Boxes {
  const boxes = openBoxes(width, height);
  for (const [at, share] of shares.entries()) if (share >= threshold) boxes.filled[at] = 1;
  return boxes;
}

function pictureFindings(picture: Picture, size: Size, { filled }: Boxes): Finding[] {
  const findings: Finding[] = [];
  if (picture.width < size.width || picture.height < size.height) {
    const [pixels, boxes] = [picture.width, size.width];
    findings.push(pictureCoarse(NOWHERE, { pixels, boxes }));
  }
  const n = filled.reduce((sum, box) => sum + box, 0);
  if (n === 0 || n === filled.length) {
    findings.push(pictureBlank(NOWHERE, { kind: n === 0 ? 'open' : 'filled' }));
  }
  return findings;
}

function flatFindings({ clearness }: Parting): Finding[] {
  return clearness > 0 && clearness < CLEAR ? [pictureFlat(NOWHERE)] : [];
}

function loneFindings(boxes: Boxes): Finding[] {
  const lone = regionsOf(boxes, 'filled', 'corners').filter((one) => one.boxes.length === 1);
  return lone.length > 0 ? [loneBox(NOWHERE, { boxes: lone.length })] : [];
}
