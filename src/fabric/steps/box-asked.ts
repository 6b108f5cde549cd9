/** How many boxes the words of a row ask for, as far as the words alone can tell. */
import type { ChartStep, RepeatStep, Step } from '../../notation/index.ts';
import { chartNamed, chartRowNext } from '../charts.ts';
import type { RowContext } from '../context.ts';
import { type Hands, numberFor } from '../hands.ts';
import { type Box, boxesWide } from './box-work.ts';

const BOX_WORD = /^(first |last )?(open|filled|solid|closed) (box|mesh|square|space|sp|block)$/;

export const isBoxWord = (special: string | null): boolean =>
  special !== null && BOX_WORD.test(special);

export const boxOf = (special: string): Box => (/open/.test(special) ? 'open' : 'filled');

/** "Over next 21 boxes", "over boxes 3-23"; null where no number stands. */
export function boxesGiven(hands: Hands, step: ChartStep): number | null {
  if (step.fromBox !== null && step.toBox !== null) return step.toBox - step.fromBox + 1;
  return numberFor(hands, step.n);
}

/** Boxes to be worked into the row beneath; null where "to end" or words of another kind stand too. */
export function boxesAsked(hands: Hands, steps: readonly Step[], row: RowContext): number | null {
  let sum = 0;
  for (const step of steps) {
    const n = boxesOf(hands, step, row);
    if (n === null) return null;
    sum += n;
  }
  return sum;
}

const STITCHES: ReadonlySet<Step['kind']> = new Set(['work', 'group', 'chain', 'skip', 'unread']);

function boxesOf(hands: Hands, step: Step, row: RowContext): number | null {
  if (step.kind === 'repeat') return inRepeat(hands, step, row);
  if (step.kind === 'chart') return inChart(hands, step, row);
  if (step.kind === 'boxes') {
    // Added ones stand on nothing beneath, slipped ones are passed.
    if (step.edge !== null) return 0;
    return step.until || step.n === null
      ? null
      : (numberFor(hands, step.n) ?? 0) * boxesWide(step.box);
  }
  if (step.kind === 'work' && isBoxWord(step.stitch.special)) {
    return step.place || step.until || step.n === null ? null : numberFor(hands, step.n);
  }
  return STITCHES.has(step.kind) ? null : 0;
}

function inRepeat(hands: Hands, step: RepeatStep, row: RowContext): number | null {
  if (step.times.kind !== 'times' || step.times.more === null || step.ending) return null;
  const once = boxesAsked(hands, step.steps, row);
  const said = numberFor(hands, step.times.n);
  if (once === null || said === null) return null;
  const passes = said + (step.times.more && !step.again ? 1 : 0);
  return once * passes;
}

function inChart(hands: Hands, step: ChartStep, row: RowContext): number | null {
  const given = boxesGiven(hands, step);
  if (step.fromBox !== null) return null;
  const chart = chartNamed(row.charts, step.name);
  const nth = chart ? chartRowNext(chart, step, row.chartTold) : 0;
  const cells = chart?.rows[chart.rows.length - 1 - nth];
  // A shaped chart has rows of several widths; only its first is as wide as what lies beneath.
  if (!cells || ((nth > 0 || step.part) && chart?.rows.some((some) => some.includes('none'))))
    return given;
  if (step.part) return step.part.to - step.part.from + 1;
  return given ?? cells.filter((cell) => cell !== 'none').length;
}
