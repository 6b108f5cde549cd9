/** The shape of a pattern in words: sizes with how sure they are, how each piece lies, what is open. */
import {
  printFigure,
  type RoundGirth,
  type Shape,
  type ShapedPiece,
  shortFigure,
  type Units,
} from '../../src/index.ts';
import { measuresOf } from '../shape-measures.ts';

export interface ShapeLayout {
  readonly units: Units;
  readonly sizeName: string;
}

export function shapeText(shape: Shape, { units, sizeName }: ShapeLayout): string {
  const size = sizeName === '' ? [] : [`Size: ${sizeName}`, ''];
  const pieces = shape.pieces.flatMap((piece) => pieceLines(piece, shape, units));
  const because = shape.sizes.because.map((sentence) => `  ${sentence}`);
  return [...size, ...pieces, 'How this was had:', ...because, `  ${MODEL}`, ''].join('\n');
}

const MODEL =
  'A fabric of springs as long as the gauge says; crochet gives, so measure the finished piece.';

function pieceLines(piece: ShapedPiece, shape: Shape, units: Units): readonly string[] {
  const copies = piece.copies > 1 ? ` (make ${piece.copies})` : '';
  const lines = [
    `${piece.name}${copies}`,
    ...sizesOf(piece, shape, units).map((line) => `  ${line}`),
    ...liesOf(piece).map((line) => `  ${line}`),
    ...openOf(piece).map((line) => `  ${line}`),
    '',
  ];
  return lines;
}

/** Under a drawing: the name, then a line for each size. */
export function captionOf(piece: ShapedPiece, shape: Shape, units: Units): readonly string[] {
  const copies = piece.copies > 1 ? ` (make ${piece.copies})` : '';
  const said = measuresOf(piece, shape).map(
    ({ name, figure }) => `about ${shortFigure(figure, units)} ${name}`,
  );
  return [`${piece.name}${copies}`, ...said];
}

function sizesOf(piece: ShapedPiece, shape: Shape, units: Units): readonly string[] {
  return measuresOf(piece, shape).map(
    ({ name, figure }) => `about ${printFigure(figure, units)} ${name}`,
  );
}

const LIES = {
  flat: 'flat',
  rises: 'going up',
  closes: 'closing flat',
  ruffles: 'ruffling',
} as const;

/** "Rounds 1-3 flat, 4-30 going up.", counted from the start of the piece. */
function liesOf({ girths }: ShapedPiece): readonly string[] {
  const runs: { lies: RoundGirth['lies']; from: number; to: number }[] = [];
  girths.forEach(({ lies }, i) => {
    const run = runs.at(-1);
    if (run?.lies === lies) run.to = i + 1;
    else runs.push({ lies, from: i + 1, to: i + 1 });
  });
  if (runs.length === 0 || runs.length > MOST_RUNS) return [];
  const said = runs.map(
    ({ lies, from, to }) => `${from === to ? from : `${from}-${to}`} ${LIES[lies]}`,
  );
  return [`Rounds from the start: ${said.join(', ')}.`];
}

/** More changes than this are no longer of use in a line. */
const MOST_RUNS = 6;

/** Shares of stitches face down from which a flat shape is rough, and not to be trusted (judgement). */
const FOLDED = { rough: 0.04, lost: 0.2 };

function openOf({ relaxed, graph, foldedShare, strain }: ShapedPiece): readonly string[] {
  const open = [...graph.leftOut];
  if (foldedShare > FOLDED.rough) {
    const advice =
      foldedShare > FOLDED.lost
        ? 'neither picture nor size can be trusted'
        : 'take picture and size as rough';
    const share = Math.round(100 * foldedShare);
    open.push(`It came out folded over itself, ${share} % of its stitches face down: ${advice}.`);
  }
  if (!relaxed.settled) {
    const pull = relaxed.unsettledMm.toFixed(relaxed.unsettledMm < 0.1 ? 3 : 1);
    open.push(
      `Not at rest after ${relaxed.steps} steps: somewhere a stitch is still pulled by ${pull} mm. Take the shape as near, not final.`,
    );
  } else if (strain.meanShare >= STRAIN.said) open.push(strainSaid(strain));
  return open;
}

/** Shares of their size that stitches give in the mean: worth a word, and worth an explanation (judgement). */
const STRAIN = { said: 0.02, explained: 0.05 };

/** A property of the piece, where not all its stitches can have their size; no fault of the outcome. */
function strainSaid({ meanShare, most }: ShapedPiece['strain']): string {
  const where = most?.row ? `, most in ${most.row} (${percent(most.share)})` : '';
  const gives = `stitches give by ${percent(meanShare)} of their size in the mean${where}`;
  const why = meanShare >= STRAIN.explained ? '; they cannot all have their size at once' : '';
  return `At rest: ${gives}${why}.`;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
