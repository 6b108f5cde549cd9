/** From words to a grid: the letters found, set on lines, framed; and what will not read, as findings. */
import type { Grid } from '../filet/index.ts';
import {
  type Finding,
  heightNotDrawn,
  type Outcome,
  pictureSize,
  wordsEmpty,
} from '../finding/index.ts';
import type { Span } from '../source/index.ts';
import { alikeFindings } from './alike.ts';
import { alphabetOf, DRAWN_HEIGHTS, MOST_HEIGHT } from './alphabet.ts';
import type { Boxes } from './boxes.ts';
import type { OutlineFont } from './font.ts';
import type { FontGlyph, FontScale } from './font-glyph.ts';
import { fontLine } from './font-line.ts';
import { type Border, framed, frameWidth } from './frame.ts';
import type { Coverage, Lettering } from './lettering.ts';
import { type Align, type Block, blockOf, type Line } from './line.ts';
import { ownLine } from './own-line.ts';
import { capitalsFindings } from './small-letters.ts';
import { thinFindings } from './thin.ts';
import { cutBlock, cutCoverage, cutOf } from './trim.ts';

export interface LetteringOptions {
  /** Boxes from the foot to the top of a capital; accents and tails stand beyond. Default 7. */
  readonly height?: number;
  /** Without one, our own alphabets. */
  readonly font?: OutlineFont;
  /** Width of a box over its height, as it comes out in the yarn; only fonts ask for it. Default 1. */
  readonly boxAspect?: number;
  /** Share of a box that an outline must cover to fill it; default a half. */
  readonly threshold?: number;
  /**
   * Open boxes between letters. Our own alphabets: at the nearest place, default 2.
   * Fonts: added to what the font says, default 0.
   */
  readonly letterSpace?: number;
  /** Open boxes between words; default 4 or 5 by height, or the font's blank. */
  readonly wordSpace?: number;
  /** Open rows between lines; default 2. */
  readonly lineSpace?: number;
  /** Default centre. */
  readonly align?: Align;
  /** Open boxes around the words, inside the border; default 0, or 1 with a border. */
  readonly margin?: number;
  readonly border?: Border;
  readonly name?: string;
  readonly mesh?: Grid['mesh'];
}

/** Boxes across or up at most, as in tracing (ours). */
const MOST_BOXES = 1000;

/** Signs at most: far more than a piece carries. */
const MOST_SIGNS = 400;

/**
 * The words as boxes; each line break starts a line. Findings point into the words. The value is
 * `null` where nothing can be lettered.
 */
export function letterWords(
  words: string,
  options: LetteringOptions = {},
): Outcome<Lettering | null> {
  const height = options.height ?? 7;
  const whole = { from: 0, to: words.length };
  if (words.trim() === '' || words.length > MOST_SIGNS) {
    return { value: null, findings: [wordsEmpty(whole, { most: MOST_SIGNS })] };
  }
  const lettered = options.font
    ? inFont(words, options.font, height, options)
    : inOwn(words, height, options);
  return lettered.value ? ofSoundSize(lettered, whole) : lettered;
}

/** Where no letter is drawn there is no chart, and a huge one could not be read again. */
function ofSoundSize(
  { value, findings }: Outcome<Lettering | null>,
  whole: Span,
): Outcome<Lettering | null> {
  const [width, height] = [value?.grid.rows[0]?.length ?? 0, value?.grid.rows.length ?? 0];
  if (value?.letters.length === 0) return { value: null, findings };
  if (width <= MOST_BOXES && height <= MOST_BOXES) return { value, findings };
  const said = { what: 'the chart, across and up,', least: 1, most: MOST_BOXES, of: 'boxes' };
  return { value: null, findings: [pictureSize(whole, said)] };
}

function notDrawn(whole: Span, height: number): Finding {
  const isWhole = Number.isInteger(height) && height > 0 && height <= MOST_HEIGHT;
  const heights = `${DRAWN_HEIGHTS.slice(0, -1).join(', ')} and ${DRAWN_HEIGHTS.at(-1)}`;
  const near = Array.from({ length: 9 }, (_, i) => height - 4 + i);
  const drawn = isWhole ? near.filter((each) => alphabetOf(each) !== null) : [];
  return heightNotDrawn(whole, {
    height: String(height),
    heights,
    nearest: drawn.join(', '),
  });
}

function inOwn(
  words: string,
  height: number,
  options: LetteringOptions,
): Outcome<Lettering | null> {
  const alphabet = alphabetOf(height);
  if (alphabet === null) {
    return { value: null, findings: [notDrawn({ from: 0, to: words.length }, height)] };
  }
  const spacing = {
    letterSpace: options.letterSpace ?? alphabet.letterSpace,
    wordSpace: options.wordSpace ?? alphabet.wordSpace,
  };
  const set = linesOf(words).map((line) => ownLine(line.text, line.from, alphabet, spacing));
  const block = blockOf(linesIn(set), layoutOf(options));
  const findings = set.flatMap((line) => line.findings);
  return {
    value: letteringOf(block, options, null),
    findings: [...findings, ...capitalsFindings(words, block, alphabet)],
  };
}

function inFont(
  words: string,
  font: OutlineFont,
  height: number,
  options: LetteringOptions,
): Outcome<Lettering | null> {
  if (!(height >= 3 && height <= MOST_HEIGHT)) {
    const span = { from: 0, to: words.length };
    const said = { height: String(height), heights: `any from 3 to ${MOST_HEIGHT}`, nearest: '' };
    return { value: null, findings: [heightNotDrawn(span, said)] };
  }
  const down = height / font.capHeight;
  const threshold = options.threshold ?? 0.5;
  const scale: FontScale = { across: down / (options.boxAspect ?? 1), down, threshold };
  const glyphs = new Map<string, FontGlyph | null>();
  const spacing = { letterSpace: options.letterSpace ?? 0, wordSpace: options.wordSpace ?? null };
  const setting = { font, scale, glyphs, spacing };
  const set = linesOf(words).map((line) => fontLine(line.text, line.from, setting));
  const whole = blockOf(linesIn(set), layoutOf(options));
  const cut = cutOf(whole);
  const block = cutBlock(whole, cut);
  const coverage = cutCoverage(coverageOfBlock(whole, threshold), cut);
  const drawn = new Map([...glyphs].filter((entry): entry is [string, FontGlyph] => !!entry[1]));
  return {
    value: letteringOf(block, options, coverage),
    findings: [
      ...set.flatMap((line) => line.findings),
      ...thinFindings(block, drawn, height),
      ...alikeFindings(block),
    ],
  };
}

function linesOf(words: string): { readonly text: string; readonly from: number }[] {
  let from = 0;
  return words.split('\n').map((text) => {
    const line = { text, from };
    from += text.length + 1;
    return line;
  });
}

function linesIn(set: readonly { readonly line: Line }[]): Line[] {
  return set.map(({ line }) => line).filter(({ pieces }) => pieces.length > 0);
}

function layoutOf({ align = 'centre', lineSpace = 2 }: LetteringOptions) {
  return { align, lineSpace };
}

/** The shares of all letters in one field; where letters share a box, the larger. */
function coverageOfBlock({ boxes, placed }: Block, threshold: number): Coverage {
  const { width, height } = boxes;
  const shares = new Float64Array(width * height);
  for (const { glyph, column, row } of placed) {
    const own = (glyph as FontGlyph).shares;
    for (const [at, share] of own.entries()) {
      const x = column + (at % glyph.boxes.width);
      const to = (row + Math.floor(at / glyph.boxes.width)) * width + x;
      shares[to] = Math.max(shares[to]!, share);
    }
  }
  return { width, height, shares, threshold };
}

function letteringOf(
  block: Block,
  options: LetteringOptions,
  coverage: Coverage | null,
): Lettering {
  const border = options.border ?? 'none';
  const frame = { border, margin: options.margin ?? (border === 'none' ? 0 : 1) };
  const wide = frameWidth(frame);
  const boxes = framed(block.boxes, frame);
  return {
    grid: gridOf(boxes, options.name ?? '', options.mesh ?? null),
    letters: block.placed.map(({ glyph, from, to, column, row }) => ({
      from,
      to,
      sign: glyph.sign,
      column: column + wide,
      row: row + wide,
      width: glyph.boxes.width,
      height: glyph.boxes.height,
    })),
    coverage: coverage && widened(coverage, wide),
  };
}

/** With so many uncovered boxes on each side. */
function widened(coverage: Coverage, by: number): Coverage {
  const width = coverage.width + 2 * by;
  const height = coverage.height + 2 * by;
  const shares = new Float64Array(width * height);
  for (let y = 0; y < coverage.height; y++) {
    const row = coverage.shares.subarray(y * coverage.width, (y + 1) * coverage.width);
    shares.set(row, (y + by) * width + by);
  }
  return { ...coverage, width, height, shares };
}

/** Boxes as a grid of open and filled ones. */
export function gridOf(boxes: Boxes, name: string, mesh: Grid['mesh']): Grid {
  const { width, height, filled } = boxes;
  const rows = Array.from({ length: height }, (_, y) =>
    Array.from(filled.subarray(y * width, (y + 1) * width), (box) =>
      box === 1 ? ('filled' as const) : ('open' as const),
    ),
  );
  return { name, mesh, rows };
}
