/** The key: exactly the boxes that the chart uses, each drawn as in the chart and told in stitches. */
import { type Cell, chainsOfBar } from '../../filet/index.ts';
import { wordFor } from '../../notation/index.ts';
import type { Mark } from '../drawing.ts';
import { measureText, wrapText } from '../text.ts';
import { meshMarks } from './mesh-marks.ts';
import type { Sheet, SheetRow } from './sheet.ts';
import { TYPE } from './type.ts';
import { type Scale, wholeOf } from './window.ts';

const ORDER: readonly Exclude<Cell, 'none'>[] = ['open', 'filled', 'lacet', 'bar'];

/** What one kind of box is, in stitches of the chart's own terms. */
export function boxInWords(sheet: Pick<Sheet, 'mesh' | 'terms'>, cell: Cell): string {
  const { post, gap } = sheet.mesh;
  const sc = wordFor('w0', sheet.terms);
  switch (cell) {
    case 'open':
      return gap === 0 ? `open box: 2 ${post}` : `open box: ${post}, ch ${gap}, ${post}`;
    case 'filled':
      return `filled box: ${gap + 2} ${post}`;
    case 'lacet':
      return `lacet, 2 boxes wide: ch 3, ${sc} in the middle, ch 3, ${post}`;
    case 'bar':
      return `bar, 2 boxes wide: ch ${chainsOfBar(gap)}, ${post}`;
    case 'none':
      return 'nothing drawn: no box';
  }
}

/** Kinds of boxes in the chart, in the key's order. */
export const kindsIn = (sheet: Pick<Sheet, 'rows'>): readonly Exclude<Cell, 'none'>[] =>
  ORDER.filter((cell) => sheet.rows.some((row) => row.cells.includes(cell)));

export interface Block {
  readonly marks: readonly Mark[];
  readonly heightMm: number;
}

/** Samples with their words, in lines no wider than given; its top left corner is the origin. */
export function keyBlock(sheet: Sheet, scale: Scale, widthMm: number): Block {
  const sampleScale = smaller(scale);
  const lineMm = Math.max(sampleScale.boxHeightMm + 2.4, TYPE.textMm * 1.6);
  const marks: Mark[] = [];
  let [x, line] = [0, 0];
  for (const cell of kindsIn(sheet)) {
    const columns = cell === 'lacet' || cell === 'bar' ? 2 : 1;
    const words = boxInWords(sheet, cell);
    const sampleMm = columns * sampleScale.boxWidthMm;
    const itemMm = sampleMm + 3 + measureText(words, TYPE.textMm) * 1.05;
    if (x > 0 && x + itemMm > widthMm) [x, line] = [0, line + 1];
    const y = line * lineMm + 1;
    const room = widthMm - x - sampleMm - 3;
    const lines = wrapText(words, room, { sizeMm: TYPE.textMm });
    marks.push({
      kind: 'group',
      at: [x + 0.5, y],
      marks: meshMarks(
        sampleOf(sheet, cell, columns),
        wholeOf(sheetOfSample(columns)),
        sampleScale,
        `key-${cell}-`,
      ),
    });
    lines.forEach((text, i) => {
      const at = [
        x + sampleMm + 3,
        y + sampleScale.boxHeightMm / 2 + TYPE.textMm * (0.34 + i * TYPE.leading),
      ] as const;
      marks.push({ kind: 'text', at, text, sizeMm: TYPE.textMm });
    });
    // A text too long for one line takes room below.
    if (lines.length > 1)
      line += Math.ceil(((lines.length - 1) * TYPE.textMm * TYPE.leading) / lineMm);
    x += itemMm + 7;
  }
  return { marks, heightMm: (line + 1) * lineMm + 1 };
}

/** Samples need not be larger than 6 mm. */
function smaller({ boxWidthMm, boxHeightMm }: Scale): Scale {
  const factor = Math.min(1, 6 / Math.max(boxWidthMm, boxHeightMm));
  return { boxWidthMm: boxWidthMm * factor, boxHeightMm: boxHeightMm * factor };
}

const sheetOfSample = (columns: number): Pick<Sheet, 'rows' | 'columns'> => ({
  columns,
  rows: [SAMPLE_ROW],
});

const SAMPLE_ROW: SheetRow = {
  number: 1,
  label: '',
  side: 'right',
  reads: 'right-to-left',
  cells: [],
  origins: [],
  origin: null,
  before: null,
  after: null,
};

const sampleOf = (sheet: Sheet, cell: Cell, columns: number) => ({
  mesh: sheet.mesh,
  columns,
  rows: [
    { ...SAMPLE_ROW, label: boxInWords(sheet, cell), cells: new Array<Cell>(columns).fill(cell) },
  ],
});
