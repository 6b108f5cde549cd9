/**
 * A chart on sheets of paper. What fits on one page stays on one; larger charts are cut into windows
 * that share two boxes and two rows with their neighbours (shaded), with marks to lay pages on each
 * other, a map of the pages, and "page n of N".
 */
import type { Drawing, Mark, Point } from '../drawing.ts';
import { boxNumbersHeight } from './box-numbers.ts';
import { captionsOf, chartTitle, whatItShows } from './captions.ts';
import {
  idOf,
  sentencesBlock,
  sideOf,
  stack,
  titleBlock,
  windowBlock,
  windowFurniture,
} from './chart.ts';
import { type Block, keyBlock } from './key.ts';
import { pageMap, pageMapWidth } from './page-map.ts';
import { OVERLAP, PAPERS, type PagePlan, type PageWindow, type Paper, planPages } from './paper.ts';
import type { Sheet } from './sheet.ts';
import { TYPE } from './type.ts';
import { type Frame, frameOf, type Scale, scaleOf } from './window.ts';
import { chartInWords } from './words.ts';

export interface PageOptions {
  readonly paper: Paper;
  /** Shorter side of a box in mm; default: as large as fits one page, from 6 down to 3, else 3.5 or more. */
  readonly boxMm?: number;
}

/** Printers leave a rim; 12 mm is more than any common one needs (common practice). */
const MARGIN_MM = 12;
const LARGEST_MM = 6;
/** Under 3 mm a box is hard to read on paper (chart hygiene, common practice). */
const SMALLEST_MM = 3;
const SPLIT_MM = 3.5;

/** All pages in the order of work. */
export function chartPages(sheet: Sheet, options: PageOptions): readonly Drawing[] {
  const layout = layoutOf(sheet, options);
  return layout.plan.pages.map((page) => pageDrawing(sheet, layout, page));
}

interface Layout {
  readonly paper: Paper;
  readonly scale: Scale;
  readonly plan: PagePlan;
  /** Between the margins. */
  readonly widthMm: number;
}

function layoutOf(sheet: Sheet, { paper, boxMm }: PageOptions): Layout {
  const widthMm = PAPERS[paper].widthMm - 2 * MARGIN_MM;
  const heightMm = PAPERS[paper].heightMm - 2 * MARGIN_MM;
  const at = (mm: number): Layout => {
    const scale = scaleOf(sheet, mm);
    const sides = 2 * sideOf(sheet, scale);
    const around = aroundHeight(sheet, scale, widthMm);
    const room = { widthMm: widthMm - sides, heightMm: heightMm - around };
    return { paper, scale, widthMm, plan: planPages(sheet, scale, room) };
  };
  if (boxMm !== undefined) return at(boxMm);
  for (let mm = LARGEST_MM; mm >= SMALLEST_MM - 0.001; mm -= 0.25) {
    const layout = at(mm);
    if (layout.plan.pages.length === 1) return layout;
  }
  return roomiest(at);
}

/** As few pages as the split size gives, and then boxes as large as still fit so many. */
function roomiest(at: (mm: number) => Layout): Layout {
  let best = at(SPLIT_MM);
  for (let mm = SPLIT_MM + 0.25; mm <= LARGEST_MM; mm += 0.25) {
    const layout = at(mm);
    if (layout.plan.pages.length > best.plan.pages.length) return best;
    best = layout;
  }
  return best;
}

/** Height of everything on a page but the boxes, with room for the map. */
function aroundHeight(sheet: Sheet, scale: Scale, widthMm: number): number {
  const key = keyBlock(sheet, scale, widthMm).heightMm;
  const sentences = sentencesBlock(captionsOf(sheet), widthMm).heightMm;
  return HEAD_MM + windowFurniture(sheet) + key + sentences + 4 * 3.5 + 4;
}

/** Below the box numbers stand the crosses. */
const ROOM_FOR_CROSSES: Block = { marks: [], heightMm: 1.5 };

/** Room for title, page number and map. */
const HEAD_MM = 32;

function pageDrawing(sheet: Sheet, layout: Layout, page: PageWindow): Drawing {
  const { plan, paper, scale, widthMm } = layout;
  const frame = frameOf(page, scale);
  const parts = stack([
    head(sheet, layout, page),
    windowBlock(sheet, frame, widthMm, joinMarks(frame, plan, page)),
    ...(plan.across > 1 ? [ROOM_FOR_CROSSES] : []),
    keyBlock(sheet, scale, widthMm),
    sentencesBlock(captionsOf(sheet), widthMm),
  ]);
  const where = `page ${page.number} of ${plan.pages.length}`;
  const single = plan.pages.length === 1;
  return {
    id: single ? idOf(sheet) : `${idOf(sheet)}-page-${page.number}`,
    ...PAPERS[paper],
    title: `${chartTitle(sheet)}, ${where}: ${whatItShows(sheet)}`,
    description:
      page.number === 1
        ? chartInWords(sheet)
        : `${windowWords(sheet, page)} Page 1 has the whole chart in words.`,
    language: 'en',
    marks: [{ kind: 'group', at: [MARGIN_MM, MARGIN_MM], marks: parts.marks }],
  };
}

function windowWords(sheet: Sheet, { columns, rows }: PageWindow): string {
  const named = (r: number): string => sheet.rows[r]?.label || `chart row ${r + 1}`;
  const [left, right] = [columns[0] + 1, columns[1]];
  return `Boxes ${left} to ${right} of ${sheet.columns}, counted from the left of the picture, ${named(rows[0])} to ${named(rows[1] - 1)}.`;
}

function head(sheet: Sheet, { plan, widthMm }: Layout, page: PageWindow): Block {
  const mapMm = plan.pages.length > 1 ? pageMapWidth(plan) : 0;
  const title = titleBlock(sheet, widthMm - mapMm - 26);
  const map = pageMap(plan, page);
  const text = `page ${page.number} of ${plan.pages.length}`;
  const marks: Mark[] = [
    ...title.marks,
    {
      kind: 'text',
      at: [widthMm - mapMm - (mapMm > 0 ? 3 : 0), TYPE.titleMm * 0.8],
      text,
      sizeMm: TYPE.textMm,
      align: 'end',
    },
  ];
  if (mapMm === 0) return { marks, heightMm: title.heightMm };
  marks.push({ kind: 'group', id: 'map', at: [widthMm - mapMm, 0], marks: map.marks });
  return { marks, heightMm: Math.max(title.heightMm, map.heightMm) };
}

/** Shade on what another page shows too, and marks on the lines where pages are laid together. */
function joinMarks(frame: Frame, plan: PagePlan, page: PageWindow): readonly Mark[] {
  const { widthMm, heightMm } = frame;
  const w = OVERLAP * frame.boxWidthMm;
  const h = OVERLAP * frame.boxHeightMm;
  const leftMost = page.across === 0;
  const rightMost = page.across === plan.across - 1;
  return [
    ...(leftMost ? [] : [shade([0, 0], w, heightMm), ...upright(w / 2, heightMm, page.across)]),
    ...(rightMost
      ? []
      : [
          shade([widthMm - w, 0], w, heightMm),
          ...upright(widthMm - w / 2, heightMm, page.across + 1),
        ]),
    ...(page.up === 0
      ? []
      : [shade([0, heightMm - h], widthMm, h), ...level(widthMm, heightMm - h / 2)]),
    ...(page.up === plan.up - 1 ? [] : [shade([0, 0], widthMm, h), ...level(widthMm, h / 2)]),
  ];
}

const shade = (at: Point, widthMm: number, heightMm: number): Mark => ({
  kind: 'rect',
  at,
  widthMm,
  heightMm,
  fill: 'wash',
  stroke: 'none',
});

/** Crosses over and under the line where two pages overlap, with a letter that both have. */
function upright(x: number, heightMm: number, boundary: number): readonly Mark[] {
  const letter = String.fromCharCode(65 + ((boundary - 1) % 26));
  return [...cross(x, -3.2, letter), ...cross(x, heightMm + boxNumbersHeight + 2.4, letter)];
}

function cross(x: number, y: number, letter: string): readonly Mark[] {
  const stroke = { ink: 'ink', widthMm: 0.25 } as const;
  const at = [x + 1.8, y + TYPE.smallMm * 0.34] as const;
  return [
    { kind: 'line', from: [x - 1.4, y], to: [x + 1.4, y], stroke },
    { kind: 'line', from: [x, y - 1.4], to: [x, y + 1.4], stroke },
    { kind: 'circle', centre: [x, y], radiusMm: 0.8, fill: 'none', stroke },
    { kind: 'text', at, text: letter, sizeMm: TYPE.smallMm, weight: 'bold' },
  ];
}

/** Points at both ends of the line between the two rows: arrows of the rows leave no more room. */
function level(widthMm: number, y: number): readonly Mark[] {
  const point = (edge: number, out: number): Mark => ({
    kind: 'path',
    fill: 'ink',
    stroke: 'none',
    steps: [
      ['M', edge + out * 0.3, y],
      ['L', edge + out * 1.5, y - 0.7],
      ['L', edge + out * 1.5, y + 0.7],
      ['Z'],
    ],
  });
  return [point(0, -1), point(widthMm, 1)];
}
