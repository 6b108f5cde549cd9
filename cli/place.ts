/** `loopwright place`: all ways to place words or a chart on a piece, with their sums. */
import { readFile } from 'node:fs/promises';
import {
  type BoxMeasure,
  boxSize,
  compile,
  type Fit,
  type FitAsked,
  filledMiddle,
  fitChart,
  frontOf,
  leanBefore,
  letterWords,
  type Manuscript,
  type PieceLean,
  type Position,
  readGauges,
  stitchesOf,
} from '../src/index.ts';
import { boxFrom, type MeshWords, meshFrom, tell, Unusable } from './design.ts';
import { whyOf } from './files.ts';
import { write } from './output.ts';

/** As the command line has them. */
export interface PlaceAsked {
  readonly width?: number;
  readonly around?: number;
  readonly across?: number;
  readonly pattern?: string;
  readonly row?: number;
  readonly mesh?: string;
  readonly gauge?: string;
  readonly height: number;
  readonly margin: number;
  readonly faces: number;
  readonly hand: 'right' | 'left';
  readonly start?: 'side' | 'back' | 'front';
  readonly color: boolean;
}

interface Ground {
  readonly boxes: number;
  readonly closing: FitAsked['closing'];
  readonly mesh: Mesh;
  readonly box: BoxMeasure | null;
  /** Middle of the front in stitches from the round's start, and how it is known. */
  readonly front: { readonly middle: number; readonly because: string } | null;
  /** How far the start of round has gone by then; `null` where no pattern tells, or hardly at all. */
  readonly lean: PieceLean | null;
}

type Mesh = NonNullable<MeshWords>;

interface Motif {
  readonly width: number;
  readonly middle: number | null;
  readonly height: number;
}

export async function place(lines: readonly string[], asked: PlaceAsked): Promise<0 | 1> {
  const ground = await groundFrom(asked);
  const words = lines.join('\n').replaceAll('\\n', '\n');
  const motif = motifFrom(words, asked, asked.height);
  if (motif === null) return 1;
  const { boxes, closing, mesh } = ground;
  const wish = { boxes, closing, gap: mesh.gap, width: motif.width, filledMiddle: motif.middle };
  const front = ground.front ? { frontMiddle: ground.front.middle } : {};
  const found = fitChart({ ...wish, ...front, margin: asked.margin });
  const report = [
    ...groundWords(ground, found),
    ...leanWords(ground),
    ...positionWords(motif, ground, found, asked),
    ...countWords(ground, found, asked),
    ...otherHeights(words, ground, asked),
    otherMesh(motif, ground),
  ];
  await write(`${report.join('\n')}\n`);
  return found.exact.length > 0 ? 0 : 1;
}

async function groundFrom(asked: PlaceAsked): Promise<Ground> {
  const given = [asked.around, asked.across, asked.pattern].filter((one) => one !== undefined);
  if (given.length !== 1) {
    throw new Unusable('tell the piece in one way: --around, --across, or --pattern with --row');
  }
  if (asked.pattern !== undefined) return fromPattern(asked.pattern, asked);
  const mesh = meshFrom(asked.mesh) ?? USUAL_MESH;
  const box = boxFrom(asked.gauge, mesh);
  const around = asked.around;
  if (around !== undefined) {
    const front = frontFrom(asked, stitchesOf(around, mesh.gap, 'round'));
    return { boxes: around, closing: 'round', mesh, box, front, lean: null };
  }
  return { boxes: asked.across ?? 0, closing: 'flat', mesh, box, front: null, lean: null };
}

/** As --start says. */
function frontFrom({ start }: PlaceAsked, stitches: number): Ground['front'] {
  if (start === undefined) return null;
  const middle = { side: stitches / 4, back: stitches / 2, front: 0 }[start];
  const where = start === 'side' ? 'the side' : `the centre ${start}`;
  return { middle, because: `The round is said to start at ${where}.` };
}

/** The classic mesh (common practice), where neither option nor pattern names one. */
const USUAL_MESH: Mesh = { post: 'dc', gap: 2 };

async function fromPattern(file: string, asked: PlaceAsked): Promise<Ground> {
  if (asked.row === undefined) throw new Unusable('--pattern needs --row, the row of boxes');
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    throw new Unusable(`${file}: ${whyOf(error)}`);
  }
  const { fabric, manuscript } = compile(text, { fixes: false });
  const row = fabric.cloths[0]?.rows.find((one) => one.number === asked.row && one.tally.boxes > 0);
  if (!row) throw new Unusable(`${file}: row ${asked.row} does not work boxes`);
  const [gap, ...more] = row.tally.spaces.map(({ chains }) => chains);
  const own: Mesh | null =
    gap === undefined || more.length > 0 ? null : { post: postOf(manuscript, gap), gap };
  const mesh = meshFrom(asked.mesh) ?? own;
  if (mesh === null) {
    throw new Unusable(
      `${file}: row ${asked.row} does not tell its mesh; say it, as --mesh "dc, ch 1"`,
    );
  }
  if (own !== null && own.gap !== mesh.gap) {
    throw new Unusable(
      `--mesh "${asked.mesh}": the open boxes of row ${asked.row} have ch ${own.gap} in ${file}`,
    );
  }
  const { boxes } = row.tally;
  const stitches = stitchesOf(boxes, mesh.gap, 'round');
  const told = row.closes ? frontOf(manuscript, fabric, { record: row, stitches }) : null;
  return {
    boxes,
    closing: row.closes ? 'round' : 'flat',
    front:
      frontFrom(asked, stitches) ??
      (told ? { middle: told.middles[0], because: told.because } : null),
    mesh,
    box: boxFrom(asked.gauge, mesh) ?? boxOf(manuscript, mesh),
    lean: leanBefore(row, { manuscript, fabric }),
  };
}

/** The post as a chart of that mesh names it, else dc by the pattern's terms. */
function postOf(manuscript: Manuscript, gap: number): string {
  const named = manuscript.charts.find(({ mesh }) => mesh?.gap === gap)?.mesh?.post;
  return named ?? (manuscript.terms.terms === 'UK' ? 'tr' : 'dc');
}

/** By the pattern's own gauge, measured or estimated from it; `null` where it gives none. */
function boxOf(manuscript: Manuscript, mesh: Mesh): BoxMeasure | null {
  const box = boxSize(readGauges(manuscript), mesh);
  return box.how === 'assumed' ? null : box;
}

/** The words as a chart of this height, or the width given. */
function motifFrom(words: string, asked: PlaceAsked, height: number): Motif | null {
  if (words.trim() === '') {
    if (asked.width === undefined) throw new Unusable('give words, or --width of a chart');
    return { width: asked.width, middle: null, height: 0 };
  }
  const { value, findings } = letterWords(words, { height, name: 'words' });
  if (height === asked.height) tell(findings, words, asked);
  if (value === null) return null;
  const { rows } = value.grid;
  return {
    width: rows[0]?.length ?? 0,
    middle: filledMiddle(rows, asked.hand),
    height: rows.length,
  };
}

const some = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const boxesWord = (n: number): string => some(n, 'box', 'boxes');
const cm = (mm: number): string => `about ${Math.round(mm / 5) / 2} cm`;

function groundWords({ boxes, closing, front, mesh: { gap } }: Ground, found: Fit): string[] {
  const stitches = stitchesOf(boxes, gap, closing);
  const sum = `${boxes} x ${gap + 1}${closing === 'flat' ? ' + 1' : ''} = ${stitches} stitches`;
  if (closing === 'flat') {
    return [`The piece: ${boxesWord(boxes)} across, ${sum}. Boxes are counted in right-side rows.`];
  }
  const half = `its front is half of them, ${found.frontStitches}`;
  const where =
    front?.because ??
    'The round is taken to start at the side, for nothing tells where; --start back or front says otherwise.';
  return [`The piece: ${boxesWord(boxes)} around, ${sum}; ${half}.`, where];
}

/** The places below are by count; what the lean of the start adds to that is said beside them. */
function leanWords({ lean, closing, mesh }: Ground): string[] {
  if (closing !== 'round') return [];
  if (!lean) return ['The lean of the start of round is not counted in.'];
  const { from, to } = lean.lean.stitches;
  if (to === 0) {
    return [
      'How far the start of round has wandered by then is not known: only your own swatch tells.',
    ];
  }
  const boxesOn = Math.round((from + to) / 2 / (mesh.gap + 1));
  const onward = boxesOn > 0 ? `; ${boxesWord(boxesOn)} further on would allow for it` : '';
  return [
    `By then the start of round has wandered ${Math.round(from)} to ${Math.round(to)} stitches, to the right for ` +
      `right-handers${onward}. The places below are by count alone.`,
  ];
}

function positionWords(motif: Motif, ground: Ground, found: Fit, asked: PlaceAsked): string[] {
  const size = `The chart: ${boxesWord(motif.width)} wide.`;
  if (found.exact.length === 0) return [size, ...aroundWords(motif, ground, found)];
  const isOdd = asked.faces > 1 && ground.closing === 'round' && ground.boxes % 2 !== 0;
  const line = ({ firstBox, before, after }: Position): string[] => {
    const half = firstBox + ground.boxes / 2;
    const both = asked.faces > 1 && ground.closing === 'round' && !isOdd ? [firstBox, half] : null;
    const second = both ? `; second face boxes ${spanWords(half, motif, ground)}` : '';
    return [
      `  boxes ${spanWords(firstBox, motif, ground)}: ${some(before, 'stitch', 'stitches')} before, ` +
        `${after} after${second}`,
      `    ${rowWords(both ?? [firstBox], motif, ground)}`,
    ];
  };
  return [
    size,
    'Centred by its edges (posts are shared, so a stitch of difference may be the best there is):',
    ...found.exact.flatMap(line),
    ...(found.byEye.length > 0
      ? [
          `Centred by eye, by the middle of what is filled, as ${asked.hand}-handed makers meet it:`,
          ...found.byEye.flatMap(line),
        ]
      : []),
    ...(isOdd ? ['There is no second place half a round on: the count is odd.'] : []),
  ];
}

/** Too wide for the front: round across the join, where the whole round holds it. */
function aroundWords(motif: Motif, ground: Ground, found: Fit): string[] {
  const { width } = motif;
  const { boxes, closing, front, mesh } = ground;
  const no = `It does not fit: ${boxesWord(width)} on ${found.frontBoxes}.`;
  if (closing === 'flat' || width > boxes) return [no];
  const pitch = mesh.gap + 1;
  const middle = front?.middle ?? (boxes * pitch) / 4;
  const first = Math.round((middle - (width * pitch + 1) / 2) / pitch);
  const start = ((first + boxes) % boxes) + 1;
  return [
    no,
    `Around the whole piece it leaves ${boxesWord(boxes - width)}. With its middle in the middle of ` +
      `the front it stands on boxes ${spanWords(start, motif, ground)}:`,
    `    ${rowWords([start], motif, ground)}`,
  ];
}

/** "3-23"; across the join "48-52 and 1-16". */
function spanWords(first: number, { width }: Motif, { boxes }: Ground): string {
  const from = ((first - 1) % boxes) + 1;
  const last = from + width - 1;
  return last <= boxes ? `${from}-${last}` : `${from}-${boxes} and 1-${last - boxes}`;
}

/** The words of a row, for each place at which the chart begins. */
function rowWords(places: readonly number[], { width }: Motif, { boxes }: Ground): string {
  const starts = places.map((first) => (first - 1) % boxes).sort((a, b) => a - b);
  const behind = (starts.at(-1) ?? 0) + width - boxes;
  const words: string[] = [];
  let at = 0;
  const open = (to: number): void => {
    if (to > at) words.push(`work ${to - at} open ${to - at === 1 ? 'box' : 'boxes'}`);
  };
  if (behind > 0) {
    // What the join cuts off is worked first.
    words.push(`work boxes ${width - behind + 1}-${width} of chart`);
    at = behind;
  }
  for (const start of starts) {
    open(start);
    const fits = Math.min(width, boxes - start);
    words.push(fits < width ? `work boxes 1-${fits} of chart` : 'work chart');
    at = start + fits;
  }
  open(boxes);
  const line = words.join(', ');
  return `${line.charAt(0).toUpperCase()}${line.slice(1)}.`;
}

function countWords(
  { boxes, closing, mesh, box }: Ground,
  found: Fit,
  asked: PlaceAsked,
): string[] {
  const line = (n: number): string => {
    const size = box ? `, ${cm(n * box.widthMm)} ${closing === 'flat' ? 'across' : 'around'}` : '';
    return `  ${boxesWord(n)}: ${stitchesOf(n, mesh.gap, closing)} stitches${size}`;
  };
  const wish = `${boxesWord(asked.margin)} or more at each side, within half a stitch of the middle`;
  const faces = closing === 'round' ? ', two equal faces' : '';
  return [
    `Counts at which all fits (${wish}${faces}):`,
    found.below === null ? '  fewer boxes: none' : line(found.below),
    `${line(boxes)}; the piece as it is ${found.fits ? 'fits' : 'does not fit'}`,
    line(found.above),
    ...(box ? [] : ['  Sizes are not told: give --gauge.']),
  ];
}

function otherHeights(words: string, { box }: Ground, asked: PlaceAsked): string[] {
  const heights = words.trim() === '' ? [] : [5, 7, 9];
  const lines = heights.flatMap((height) => {
    const motif = motifFrom(words, asked, height);
    if (!motif) return [];
    const tall = box
      ? `, ${cm(motif.width * box.widthMm)} x ${cm(motif.height * box.heightMm)}`
      : '';
    return [`  capitals ${height} boxes high: ${motif.width} boxes wide${tall}`];
  });
  return lines.length > 0 ? ['Letters in other heights:', ...lines] : [];
}

/** The same stitches in mesh with the other usual gap; a box is as wide as its stitches. */
function otherMesh({ width }: Motif, { boxes, closing, mesh: { gap }, box }: Ground): string {
  const other = gap === 1 ? 2 : 1;
  const stitches = stitchesOf(boxes, gap, closing);
  const own = stitches - (closing === 'flat' ? 1 : 0);
  const [there, left] = [Math.floor(own / (other + 1)), own % (other + 1)];
  const rest = left === 0 ? '' : `, ${some(left, 'stitch', 'stitches')} left over`;
  const wide = box ? (box.widthMm / (gap + 1)) * (other + 1) : 0;
  const size = box
    ? ` A box would be ${mm(wide)} wide, not ${mm(box.widthMm)}, and the chart ${cm(width * wide)} wide.`
    : '';
  const what = `The same ${stitches} stitches with ch ${other} in place of ch ${gap}`;
  return `${what}: ${boxesWord(there)}${rest}.${size}`;
}

/** To the half, as a box is measured with a tape. */
const mm = (width: number): string => `about ${Math.round(width * 2) / 2} mm`;
