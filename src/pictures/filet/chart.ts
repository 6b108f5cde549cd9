/**
 * The drawing of a whole filet chart: title, mesh with its numbers, what continues, key, sentences.
 * Left and right edition differ in numbers, arrows and words only; every box stays where it is.
 */
import type { Drawing, Mark } from '../drawing.ts';
import { measureText, wrapText } from '../text.ts';
import { againMarks, againWidth } from './again-marks.ts';
import { besideCaption, besideMarks, besideWidth } from './beside.ts';
import { boxNumbers, boxNumbersHeight } from './box-numbers.ts';
import { captionsOf, chartTitle, whatItShows } from './captions.ts';
import { type Block, keyBlock } from './key.ts';
import { meshMarks } from './mesh-marks.ts';
import { numbersWidth, rowNumbers } from './row-numbers.ts';
import type { Sheet } from './sheet.ts';
import { TYPE } from './type.ts';
import { type Frame, frameOf, type Scale, scaleOf, wholeOf } from './window.ts';
import { chartInWords } from './words.ts';

export interface ChartOptions {
  /** Shorter side of a box on paper in mm; default 4.5. */
  readonly boxMm?: number;
}

/** Room round a drawing, and the narrowest column of text. */
const MARGIN_MM = 8;
const NARROWEST_MM = 105;
const BOX_MM = 4.5;

export function chartDrawing(sheet: Sheet, { boxMm = BOX_MM }: ChartOptions = {}): Drawing {
  const scale = scaleOf(sheet, boxMm);
  const frame = frameOf(wholeOf(sheet), scale);
  const widthMm = Math.max(NARROWEST_MM, windowWidth(sheet, frame));
  const parts = stack([
    titleBlock(sheet, widthMm),
    windowBlock(sheet, frame, widthMm),
    keyBlock(sheet, scale, widthMm),
    sentencesBlock(captionsOf(sheet), widthMm),
  ]);
  return {
    id: idOf(sheet),
    widthMm: widthMm + 2 * MARGIN_MM,
    heightMm: parts.heightMm + 2 * MARGIN_MM,
    title: `${chartTitle(sheet)}: ${whatItShows(sheet)}`,
    description: chartInWords(sheet),
    language: 'en',
    marks: [{ kind: 'group', at: [MARGIN_MM, MARGIN_MM], marks: parts.marks }],
  };
}

/** Letters, digits and hyphens of the name. */
export const idOf = (sheet: Pick<Sheet, 'name'>): string =>
  chartTitle(sheet)
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .replace(/^$/, 'chart');

/** Blocks under each other with some air. */
export function stack(blocks: readonly Block[]): Block {
  const AIR_MM = 3.5;
  let y = 0;
  const marks = blocks
    .filter(({ heightMm }) => heightMm > 0)
    .map((block): Mark => {
      const at = [0, y] as const;
      y += block.heightMm + AIR_MM;
      return { kind: 'group', at, marks: block.marks };
    });
  return { marks, heightMm: Math.max(0, y - AIR_MM) };
}

/** The chart's name large, what it shows and which pattern it belongs to below. */
export function titleBlock(sheet: Sheet, widthMm: number): Block {
  const from = [sheet.pattern, sheet.edition].filter(Boolean).join(', ');
  const what = wrapped(whatItShows(sheet), widthMm);
  const lines = [...what, ...wrapped(from, widthMm)];
  const first = TYPE.titleMm;
  const marks: Mark[] = [
    { kind: 'text', at: [0, first * 0.8], text: chartTitle(sheet), sizeMm: first, weight: 'bold' },
  ];
  lines.forEach((text, i) => {
    const y = first + (i + 1) * TYPE.textMm * TYPE.leading;
    marks.push({
      kind: 'text',
      at: [0, y],
      text,
      sizeMm: TYPE.textMm,
      ink: i < what.length ? 'ink' : 'soft',
    });
  });
  return { marks, heightMm: first + (lines.length + 0.3) * TYPE.textMm * TYPE.leading };
}

const wrapped = (text: string, widthMm: number): readonly string[] =>
  wrapText(text, widthMm * 0.94, { sizeMm: TYPE.textMm });

export function sentencesBlock(sentences: readonly string[], widthMm: number): Block {
  const lines = sentences.flatMap((text) => wrapped(text, widthMm));
  const lineMm = TYPE.textMm * TYPE.leading;
  const marks = lines.map(
    (text, i): Mark => ({ kind: 'text', at: [0, (i + 0.8) * lineMm], text, sizeMm: TYPE.textMm }),
  );
  return { marks, heightMm: lines.length * lineMm };
}

/** Width of a window with all that stands at its sides. */
const windowWidth = (sheet: Sheet, frame: Frame): number =>
  frame.widthMm + 2 * sideOf(sheet, frame);

/** Room at either side of the mesh. */
export const sideOf = (sheet: Sheet, scale: Scale): number =>
  besideWidth(sheet, scale.boxWidthMm) + numbersWidth(sheet) + againWidth(sheet) + 1;

/** Height that a window takes beyond its boxes. */
export const windowFurniture = (sheet: Sheet): number =>
  TYPE.smallMm * 1.6 +
  boxNumbersHeight +
  1 +
  2 * TYPE.numberMm * TYPE.leading * (besideWidth(sheet, 1) > 0 ? 1 : 0);

/** A window of the chart with its numbers, in the middle of the width; `under` lies below the mesh. */
export function windowBlock(
  sheet: Sheet,
  frame: Frame,
  widthMm: number,
  under: readonly Mark[] = [],
): Block {
  const asideMm = besideWidth(sheet, frame.boxWidthMm);
  const headMm = TYPE.smallMm * 1.6;
  const left = (widthMm - frame.widthMm) / 2;
  const below = frame.heightMm + boxNumbersHeight;
  const caption = besideCaption(sheet, frame, { y: below, left: -left, right: widthMm - left });
  const marks: Mark[] = [
    ...under,
    { kind: 'group', id: 'beside', marks: besideMarks(sheet, frame) },
    { kind: 'group', id: 'mesh', marks: meshMarks(sheet, frame.window, frame) },
    { kind: 'group', id: 'rows', marks: rowNumbers(sheet, frame, asideMm) },
    { kind: 'group', id: 'again', marks: againMarks(sheet, frame, asideMm) },
    { kind: 'group', id: 'boxes', marks: boxNumbers(sheet, frame) },
    ...caption.marks,
    ...repeatMarks(sheet, frame, below + caption.heightMm),
  ];
  const heightMm = headMm + below + caption.heightMm + (sheet.times > 1 ? REPEAT_MM : 0) + 1;
  return { marks: [{ kind: 'group', at: [left, headMm], marks }], heightMm };
}

const REPEAT_MM = 7;

/** A bracket under a chart that is worked several times side by side. */
function repeatMarks(sheet: Sheet, { widthMm }: Frame, y: number): readonly Mark[] {
  if (sheet.times < 2) return [];
  const text = `worked ${sheet.times} times`;
  const half = (measureText(text, TYPE.numberMm) + 3) / 2;
  const middle = widthMm / 2;
  const [high, low] = [y + 1.5, y + 3.5];
  const stroke = { ink: 'ink', widthMm: 0.3 } as const;
  return [
    {
      kind: 'path',
      fill: 'none',
      stroke,
      steps: [
        ['M', 0, high],
        ['L', 0, low],
        ['L', middle - half, low],
      ],
    },
    {
      kind: 'path',
      fill: 'none',
      stroke,
      steps: [
        ['M', widthMm, high],
        ['L', widthMm, low],
        ['L', middle + half, low],
      ],
    },
    { kind: 'text', at: [middle, low + 0.9], text, sizeMm: TYPE.numberMm, align: 'middle' },
  ];
}
