/** The shape of a pattern in words: sizes with how sure they are, how each piece lies, what is open. */
import {
  type Figure,
  printFigure,
  type RoundGirth,
  type Shape,
  type ShapedPiece,
  shortFigure,
  type Units,
} from '../../src/index.ts';

export interface ShapeLayout {
  readonly units: Units;
  readonly sizeName: string;
}

/** Crochet gives, and a model of springs is a model: added to the spread of the gauge (judgement). */
const MODEL_SPREAD = 0.05;

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
  const said = measuresOf(piece).map(
    ({ name, mm }) => `about ${shortFigure(figureOf(mm, shape), units)} ${name}`,
  );
  return [`${piece.name}${copies}`, ...said];
}

function sizesOf(piece: ShapedPiece, shape: Shape, units: Units): readonly string[] {
  return measuresOf(piece).map(
    ({ name, mm }) => `about ${printFigure(figureOf(mm, shape), units)} ${name}`,
  );
}

interface NamedMeasure {
  readonly name: string;
  readonly mm: number;
}

function measuresOf(piece: ShapedPiece): readonly NamedMeasure[] {
  const { widthMm, depthMm, heightMm, girthMm } = piece.dimensions;
  const mean = (widthMm + depthMm) / 2;
  const isRound = Math.abs(widthMm - depthMm) < 0.06 * widthMm;
  if (heightMm === null) {
    if (isRound) return [{ name: isSquare(piece) ? 'square' : 'across', mm: mean }];
    return [
      { name: 'wide', mm: widthMm },
      { name: 'long', mm: depthMm },
    ];
  }
  const high = piece.hasHandles ? 'high, handles included' : 'high';
  return [
    ...(isRound
      ? [{ name: 'across', mm: mean }]
      : [
          { name: 'wide', mm: widthMm },
          { name: 'deep', mm: depthMm },
        ]),
    { name: high, mm: heightMm },
    ...(girthMm === null ? [] : [{ name: 'round', mm: bodyGirth(piece) ?? girthMm }]),
  ];
}

/** A flat figure with four corners is measured along its side. */
const isSquare = (piece: ShapedPiece): boolean => piece.girths.some(({ corners }) => corners === 4);

/** Round the widest round below the handles. */
function bodyGirth({ girths }: ShapedPiece): number | null {
  return girths.length === 0 ? null : Math.max(...girths.map(({ girthMm }) => girthMm));
}

function figureOf(mm: number, { sizes }: Shape): Figure {
  const spread = Math.sqrt(sizes.spread ** 2 + MODEL_SPREAD ** 2);
  return { mm, spread, how: sizes.how, because: sizes.because };
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

function openOf({ relaxed, graph, foldedShare }: ShapedPiece): readonly string[] {
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
  }
  return open;
}
