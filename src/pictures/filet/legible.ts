/** Whether the designs of a pattern will be seen in its yarn. */
import type { Fabric } from '../../fabric/index.ts';
import { designFaint, type Finding } from '../../finding/index.ts';
import { readGauges } from '../../gauge/index.ts';
import type { Chart, Manuscript } from '../../manuscript/index.ts';
import { FAINT } from './cover.ts';
import { helpsInWords } from './help-words.ts';
import { type ChartLook, lookOf } from './look.ts';
import { sheetOf } from './make-sheet.ts';

/**
 * One finding for each chart whose contrast is too small even with yarn as thin or as thick as it may
 * lie. Silent where gauge or yarn are not known, or a chart has boxes of one kind only.
 */
export function faintDesigns(manuscript: Manuscript, fabric: Fabric): readonly Finding[] {
  const charts = manuscript.charts.filter(hasDesign);
  if (charts.length === 0) return [];
  const gauges = readGauges(manuscript);
  return charts.flatMap((chart) => {
    const { mesh } = sheetOf(chart, { manuscript, fabric, gauges });
    const look = lookOf(chart, { fabric, gauges, mesh });
    if (!look || look.contrastRange[1] >= FAINT) return [];
    const at = { from: chart.from, to: chart.rowSpans[0]?.from ?? chart.to };
    const line = { from: at.from, to: at.from + firstLine(manuscript.text, at) };
    return [designFaint(line, { yarn: look.yarn, chart: said(chart) }, { sum: sumOf(look) })];
  });
}

const hasDesign = (chart: Chart): boolean =>
  ['open', 'filled'].every((kind) => chart.rows.some((row) => row.some((cell) => cell === kind)));

const said = ({ name }: Chart): string => (name === '' ? 'the chart' : `chart ${name}`);

function firstLine(text: string, { from, to }: { from: number; to: number }): number {
  const end = text.indexOf('\n', from);
  return (end < 0 || end > to ? to : end) - from;
}

const hundredths = (share: number): number => Math.round(share * 100);

/** The cover of both boxes, and what each change would give. */
function sumOf(look: ChartLook): string {
  const { mesh, cover } = look;
  const { open, filled, contrast } = cover;
  const first = `Yarn about ${mesh.yarnMm.toFixed(1)} mm thick covers ${hundredths(filled)} % of a filled box and ${hundredths(open)} % of an open one: a contrast of ${hundredths(contrast)}.`;
  return `${first} At the same gauge ${helpsInWords(look).join('; ')}.`;
}
