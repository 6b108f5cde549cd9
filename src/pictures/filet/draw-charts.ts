/** All charts of a pattern as drawings, with their words: what the command line and editions ask for. */
import type { Fabric } from '../../fabric/index.ts';
import { readGauges } from '../../gauge/index.ts';
import type { Manuscript } from '../../manuscript/index.ts';
import type { Drawing } from '../drawing.ts';
import { chartTitle } from './captions.ts';
import { chartDrawing, idOf } from './chart.ts';
import { lookOf } from './look.ts';
import { type SheetOptions, sheetOf } from './make-sheet.ts';
import { chartPages } from './pages.ts';
import type { Paper } from './paper.ts';
import { previewDrawing } from './preview.ts';
import { surroundOf } from './surround.ts';
import { chartInWords } from './words.ts';

export interface DrawChartsOptions extends SheetOptions {
  /** Only charts of this name, whatever its capitals; default all. */
  readonly only?: string;
  /** Cut to sheets of paper; default one drawing a chart, as large as it is. */
  readonly paper?: Paper;
  /** Shorter side of a box on paper in mm; default 4.5, on paper as fits. */
  readonly boxMm?: number;
}

export interface DrawnChart {
  /** "Tide"; "Chart" for one without a name. */
  readonly name: string;
  /** For file names: "tide", "tide-left-handed"; no two charts of a pattern have the same. */
  readonly slug: string;
  /** One, or with `paper` each page. */
  readonly drawings: readonly Drawing[];
  /** How it will look in its yarn; `null` where the pattern does not tell enough. */
  readonly preview: Drawing | null;
  readonly words: string;
}

/** Charts in the order of the manuscript; one without a box is left out (a finding tells of it). */
export function drawCharts(
  { manuscript, fabric }: { readonly manuscript: Manuscript; readonly fabric: Fabric },
  options: DrawChartsOptions = {},
): readonly DrawnChart[] {
  const { only, paper, boxMm, hand = 'right' } = options;
  const gauges = readGauges(manuscript);
  const slugs = new Set<string>();
  return manuscript.charts
    .filter((chart) => chart.rows.some((row) => row.some((cell) => cell !== 'none')))
    .filter(({ name }) => only === undefined || sameName(name, only))
    .map((chart) => {
      const sheet = sheetOf(chart, { manuscript, fabric, gauges }, options);
      const size = boxMm === undefined ? {} : { boxMm };
      const look = lookOf(chart, { fabric, gauges, mesh: sheet.mesh });
      return {
        name: chartTitle(sheet),
        slug: `${freeSlug(idOf(sheet), slugs)}${hand === 'left' ? '-left-handed' : ''}`,
        drawings: paper ? chartPages(sheet, { paper, ...size }) : [chartDrawing(sheet, size)],
        preview:
          look &&
          previewDrawing(
            sheet,
            look,
            surroundOf(sheet, sheet.uses, { fabric, cloth: fabric.cloths[0] }),
          ),
        words: chartInWords(sheet),
      };
    });
}

const sameName = (name: string, only: string): boolean =>
  chartTitle({ name }).toLowerCase() === only.trim().toLowerCase();

function freeSlug(slug: string, taken: Set<string>): string {
  let free = slug;
  for (let n = 2; taken.has(free); n++) free = `${slug}-${n}`;
  taken.add(free);
  return free;
}
