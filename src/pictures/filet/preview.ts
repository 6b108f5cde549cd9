/** How a chart will look in its yarn: a drawing from figures, with the contrast in numbers. */
import type { Drawing, Mark } from '../drawing.ts';
import { chartTitle } from './captions.ts';
import { idOf, sentencesBlock, stack } from './chart.ts';
import { FAINT, PLAIN } from './cover.ts';
import { helpsInWords } from './help-words.ts';
import type { Block } from './key.ts';
import type { ChartLook } from './look.ts';
import { previewMarks } from './preview-marks.ts';
import type { Sheet } from './sheet.ts';
import type { Surround } from './surround.ts';
import { TYPE } from './type.ts';
import { chartInWords } from './words.ts';

/** The drawing is no wider than this, and never larger than the fabric. */
const WIDEST_MM = 180;
const NARROWEST_MM = 100;
const BEYOND = 'The boxes around the chart are those of the fabric beside, above and beneath it.';
const MARGIN_MM = 8;

export function previewDrawing(
  sheet: Sheet,
  look: ChartLook,
  { rows, isWider }: Surround,
): Drawing {
  const { mesh } = look;
  const columns = rows[0]?.length ?? 0;
  const factor = Math.min(1, WIDEST_MM / (columns * mesh.boxWidthMm));
  const onPaper = {
    ...mesh,
    boxWidthMm: mesh.boxWidthMm * factor,
    boxHeightMm: mesh.boxHeightMm * factor,
    yarnMm: mesh.yarnMm * factor,
  };
  const overhang = mesh.yarnMm * factor * 1.3;
  const fabric: Block = {
    marks: [
      {
        kind: 'group',
        id: 'fabric',
        at: [overhang, overhang],
        marks: previewMarks(rows, onPaper),
      },
    ],
    heightMm: rows.length * onPaper.boxHeightMm + 2 * overhang,
  };
  const widthMm = Math.max(NARROWEST_MM, columns * onPaper.boxWidthMm + 2 * overhang);
  const sentences = [...previewSentences(look, factor), ...(isWider ? [BEYOND] : [])];
  const parts = stack([title(sheet), fabric, sentencesBlock(sentences, widthMm)]);
  return {
    id: `${idOf(sheet)}-preview`,
    widthMm: widthMm + 2 * MARGIN_MM,
    heightMm: parts.heightMm + 2 * MARGIN_MM,
    title: `${chartTitle(sheet)}: drawing of how it will look`,
    description: [...sentences, '', chartInWords(sheet)].join('\n'),
    language: 'en',
    marks: [{ kind: 'group', at: [MARGIN_MM, MARGIN_MM], marks: parts.marks }],
  };
}

function title(sheet: Sheet): Block {
  const text = `${chartTitle(sheet)}: how it will look`;
  const marks: Mark[] = [
    { kind: 'text', at: [0, TYPE.titleMm * 0.8], text, sizeMm: TYPE.titleMm, weight: 'bold' },
  ];
  return { marks, heightMm: TYPE.titleMm };
}

/** The figures behind the picture, each with how it was had. */
function previewSentences(look: ChartLook, factor: number): readonly string[] {
  const { mesh, cover, contrastRange, yarn, because, isMeasured } = look;
  const size =
    factor < 1 ? `Drawn at about ${percent(factor)} of its size` : 'Drawn as large as the fabric';
  const gauge = isMeasured
    ? 'the gauge in mesh'
    : 'other figures of the pattern, for no gauge in mesh is given';
  const [least, most] = contrastRange.map((share) => Math.round(share * 100));
  const verdict =
    cover.contrast < FAINT
      ? 'The design will hardly be seen.'
      : contrastRange[0] < PLAIN
        ? 'The design may look faint: try a swatch.'
        : 'The design will be seen.';
  return [
    `${size}, a drawing from figures, not a picture of a finished piece. Boxes by ${gauge}.`,
    `${yarn.charAt(0).toUpperCase()}${yarn.slice(1)} is about ${mesh.yarnMm.toFixed(1)}\u00a0mm thick: ${because.charAt(0).toLowerCase()}${because.slice(1)}`,
    `Yarn covers about ${percent(cover.filled)} of a filled box and ${percent(cover.open)} of an open one: a contrast of ${Math.round(cover.contrast * 100)} (${least} to ${most}, as thick as the yarn may lie). ${verdict}`,
    ...(cover.contrast < PLAIN
      ? [`What would help, at the same gauge: ${helpsInWords(look).join('; ')}.`]
      : []),
  ];
}

const percent = (share: number): string => `${Math.round(share * 100)}\u00a0%`;
