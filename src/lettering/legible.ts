/**
 * How a chart will read once it is worked: boxes that meet only at corners, counters that may close,
 * boxes in doubt. Findings point into the chart's text.
 */
import type { Grid } from '../filet/index.ts';
import {
  boxInDoubt,
  cornerTouch,
  counterCloses,
  type Finding,
  type Label,
} from '../finding/index.ts';
import type { Span } from '../source/index.ts';
import { type Boxes, openBoxes } from './boxes.ts';
import type { Coverage } from './lettering.ts';
import { cornerTouches, countersOf } from './shape.ts';

/** A grid whose rows stand in a text: a chart block, printed or read. */
export interface ChartText extends Grid {
  /** Where each row stands, in the order of the rows. */
  readonly rowSpans: readonly Span[];
}

/** Boxes as near to the threshold as this are in doubt: a tenth of a box (ours). */
const DOUBT = 0.1;

/** Labels beside the main mark; the renderer shows fewer. */
const MOST_LABELS = 40;

/** All that can be told of the chart; what lies in doubt only where a coverage is given. */
export function legibility(chart: ChartText, coverage: Coverage | null = null): Finding[] {
  return [
    ...cornerFindings(chart),
    ...closingFindings(chart),
    ...(coverage ? doubtFindings(chart, coverage) : []),
  ];
}

/** Filled boxes of a grid as a field; lacets, bars and places without a box are open. */
function boxesOfGrid({ rows }: Pick<Grid, 'rows'>): Boxes {
  const boxes = openBoxes(Math.max(0, ...rows.map((row) => row.length)), rows.length);
  for (const [y, row] of rows.entries()) {
    for (const [x, cell] of row.entries()) {
      if (cell === 'filled') boxes.filled[y * boxes.width + x] = 1;
    }
  }
  return boxes;
}

/** One note for the chart: normal practice, but such boxes share a post only and read as broken. */
export function cornerFindings(chart: ChartText): Finding[] {
  const touches = cornerTouches(boxesOfGrid(chart));
  const [first, ...more] = touches;
  if (!first) return [];
  const spanOf = ({ x, y }: { x: number; y: number }): Span => ({
    from: boxSpan(chart, x, y).from,
    to: boxSpan(chart, x + 1, y).to,
  });
  const labels = more.slice(0, MOST_LABELS).map((touch) => ({ ...spanOf(touch), text: '' }));
  const words = { chart: said(chart), places: touches.length };
  return [cornerTouch(spanOf(first), words, { labels })];
}

/** Single open boxes shut in by filled ones, in a mesh of one chain: thick yarn closes them. */
function closingFindings(chart: ChartText): Finding[] {
  if (chart.mesh === null || chart.mesh.gap > 1) return [];
  const field = boxesOfGrid(chart);
  const single = countersOf(field).filter(({ boxes }) => boxes.length === 1);
  const spans = single.map(({ boxes: [at = 0] }) =>
    boxSpan(chart, at % field.width, Math.floor(at / field.width)),
  );
  const [first, ...more] = spans;
  if (!first) return [];
  const words = { chart: said(chart), places: spans.length };
  return [counterCloses(first, words, { labels: labelsOf(more) })];
}

function doubtFindings(chart: ChartText, coverage: Coverage): Finding[] {
  const spans: Span[] = [];
  let filled = 0;
  for (const [at, share] of coverage.shares.entries()) {
    if (!isInDoubt(coverage, share)) continue;
    if (share >= coverage.threshold) filled++;
    spans.push(boxSpan(chart, at % coverage.width, Math.floor(at / coverage.width)));
  }
  const [first, ...more] = spans;
  if (!first) return [];
  const words = { boxes: spans.length, filled, open: spans.length - filled };
  return [boxInDoubt(first, words, { labels: labelsOf(more) })];
}

/** Whether a share lies so near to the threshold that a little more or less would turn the box. */
export const isInDoubt = ({ threshold }: Pick<Coverage, 'threshold'>, share: number): boolean =>
  Math.abs(share - threshold) < DOUBT;

function labelsOf(spans: readonly Span[]): Label[] {
  return spans.slice(0, MOST_LABELS).map((span) => ({ ...span, text: '' }));
}

const said = ({ name }: Grid): string => (name === '' ? 'the chart' : `chart ${name}`);

/** A box in the text. All signs of a row are equally long: one or two units. */
function boxSpan({ rows, rowSpans }: ChartText, x: number, y: number): Span {
  const row = rowSpans[y] ?? { from: 0, to: 0 };
  const unit = (row.to - row.from) / Math.max(1, rows[y]?.length ?? 0);
  const from = row.from + Math.floor(x * unit);
  return { from, to: Math.min(row.to, from + Math.ceil(unit)) };
}
