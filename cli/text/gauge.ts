/** The gauges of the sheet: every fabric over the usual length, how sure it is, and its blocking. */
import { type GaugeRecord, type Sheet, type Units, wrap } from '../../src/index.ts';

const TEN_CM = 100;
const FOUR_IN = 101.6;

export function gaugeLines({ gauges }: Sheet, units: Units, width: number): string[] {
  return gauges.records.flatMap((record) => wrap('  ', recordSaid(record, units), width, '      '));
}

function recordSaid(record: GaugeRecord, units: Units): string {
  const { fabric, counts } = record;
  const [only] = counts;
  // Rounds of a motif are measured as a piece: over 10 cm nobody counts them.
  if (only?.up?.isWhole && counts.length === 1 && !only.across)
    return `${fabric || 'Fabric'}: ${only.words.replace(/\.$/, '')}${blockingSaid(record)}`;
  const sure = Math.round(100 * Math.max(record.widthSpread, record.heightSpread));
  const from = counts.length === 1 ? 'one swatch' : `the mean of ${counts.length} swatches`;
  return `${fabric || 'Fabric'}: ${lengthSaid(record, units)}, give or take ${sure} %; ${from}${blockingSaid(record)}`;
}

/** Ten centimetres and four inches differ by less than any count is sure: the trade takes them as one. */
function lengthSaid(record: GaugeRecord, units: Units): string {
  if (units === 'metric') return `${countsSaid(record, TEN_CM)} to 10 cm`;
  if (units === 'us') return `${countsSaid(record, FOUR_IN)} to 4 in`;
  const inInches = record.counts.some(({ across, up }) => (across ?? up)!.mm % 25.4 < 0.01);
  return inInches
    ? `${countsSaid(record, FOUR_IN)} to 4 in or 10 cm`
    : `${countsSaid(record, TEN_CM)} to 10 cm or 4 in`;
}

const UNITS: Readonly<Record<GaugeRecord['unit'], string>> = {
  stitch: 'sts',
  box: 'boxes',
  repeat: 'repeats',
};

function countsSaid(record: GaugeRecord, mm: number): string {
  const { unit, worked, unitWidthMm, rowHeightMm } = record;
  const n = (one: number, spread: number): string => countSaid(mm / one, spread);
  const rows = worked === 'rounds' ? 'rnds' : 'rows';
  return [
    ...(unitWidthMm === null ? [] : [`${n(unitWidthMm, record.widthSpread)} ${UNITS[unit]}`]),
    ...(rowHeightMm === null ? [] : [`${n(rowHeightMm, record.heightSpread)} ${rows}`]),
  ].join(' x ');
}

/** Tenths, halves or whole ones: at least half of how far the count may be off. */
function countSaid(n: number, spread: number): string {
  const step = [0.1, 0.5, 1].find((each) => each >= (n * spread) / 2) ?? 1;
  return String(Number((Math.round(n / step) * step).toFixed(1)));
}

/** What a length on the hook becomes: what a maker lays the tape to before the piece is washed. */
function blockingSaid({ blocking, before, unitWidthMm, rowHeightMm }: GaugeRecord): string {
  if (blocking === 'before') return ', before blocking: what blocking does is not known.';
  if (!before) return blocking === 'after' ? ', after blocking.' : '.';
  const side = (after: number | null, was: number | null, way: string): string[] =>
    after === null || was === null ? [] : [`${growthSaid(after / was)} ${way}`];
  const both = [
    ...side(unitWidthMm, before.unitWidthMm, 'across'),
    ...side(rowHeightMm, before.rowHeightMm, 'up'),
  ];
  return `, after blocking. What measures 10 on the hook becomes ${both.join(' and ')}.`;
}

const growthSaid = (factor: number): string => String(Number((10 * factor).toFixed(1)));
