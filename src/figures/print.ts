/** Lengths as a sheet prints them: rounded as the trade rounds, and never finer than they are known. */
import { length, lengthIn } from '../units/index.ts';
import type { Figure } from './figure.ts';

export type Units = 'metric' | 'us' | 'both';

/** Steps in mm: a tenth, a half, one, two and five centimetres. */
const METRIC_STEPS = [1, 5, 10, 20, 50];
/** An eighth, a quarter, a half, one and two inches. */
const US_STEPS = [3.175, 6.35, 12.7, 25.4, 50.8];

/**
 * The step that a length is rounded to: at least half of how far it may be off, and no finer than
 * the trade prints (tenths under 10 cm, halves under 60 cm, then whole ones: common practice). A finer
 * one where rounding would move the length by a quarter of its doubt.
 */
function stepFor(mm: number, off: number, steps: readonly number[]): number {
  const least = mm < 100 ? 0 : mm < 600 ? 1 : 2;
  const found = steps.findIndex((step, at) => at >= least && step >= off / 2 - 1e-9);
  let at = found < 0 ? steps.length - 1 : found;
  const moves = (step: number): number => Math.abs(Math.round(mm / step) * step - mm);
  while (at > least && moves(steps[at]!) > off / 4) at--;
  return steps[at]!;
}

export interface Rounded {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** A figure in centimetres or inches with its bounds, rounded. */
export function rounded({ mm, spread }: Figure, unit: 'cm' | 'in'): Rounded {
  const off = mm * spread;
  const step = stepFor(mm, off, unit === 'cm' ? METRIC_STEPS : US_STEPS);
  const by = (value: number): number => {
    const whole = Math.round(value / step) * step;
    return Number(lengthIn(length(whole, 'mm'), unit).toFixed(3));
  };
  return { value: by(mm), from: by(mm - off), to: by(mm + off) };
}

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

function inchesSaid(value: number): string {
  const eighths = Math.round(value * 8);
  const whole = Math.floor(eighths / 8);
  const part = EIGHTHS[eighths % 8] ?? '';
  return `${whole === 0 && part !== '' ? '' : whole}${part}`;
}

const said = (value: number, unit: 'cm' | 'in'): string =>
  unit === 'cm' ? String(Number(value.toFixed(1))) : inchesSaid(value);

/** "65 cm (63-67)", "25½ in (24¾-26¼)"; both: the metric one first. */
export function printFigure(figure: Figure, units: Units): string {
  if (units === 'both') return `${printFigure(figure, 'metric')}, ${printFigure(figure, 'us')}`;
  const unit = units === 'us' ? 'in' : 'cm';
  const { value, from, to } = rounded(figure, unit);
  const range = from === to ? '' : ` (${said(from, unit)}-${said(to, unit)})`;
  return `${said(value, unit)} ${unit}${range}`;
}

/** The same without its bounds, for drawings and tables: "65 cm". */
export function shortFigure(figure: Figure, units: Units): string {
  if (units === 'both') return `${shortFigure(figure, 'metric')} / ${shortFigure(figure, 'us')}`;
  const unit = units === 'us' ? 'in' : 'cm';
  return `${said(rounded(figure, unit).value, unit)} ${unit}`;
}
