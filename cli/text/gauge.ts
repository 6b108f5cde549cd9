/** The gauges of the sheet: every fabric over the usual length, how sure it is, and its blocking. */
import { type GaugeRecord, type Sheet, type Units, wrap } from '../../src/index.ts';

const TEN_CM = 100;
const FOUR_IN = 101.6;

export function gaugeLines({ gauges }: Sheet, units: Units, width: number): string[] {
  return gauges.records.flatMap((record) => wrap('  ', recordSaid(record, units), width, '      '));
}

function recordSaid(record: GaugeRecord, units: Units): string {
  const { fabric, counts } = record;
  const lengths = [
    ...(units === 'us' ? [] : [`${countsSaid(record, TEN_CM)} to 10 cm`]),
    ...(units === 'metric' ? [] : [`${countsSaid(record, FOUR_IN)} to 4 in`]),
  ];
  const sure = Math.round(100 * Math.max(record.widthSpread, record.heightSpread));
  const from = counts.length === 1 ? 'one swatch' : `the mean of ${counts.length} swatches`;
  return `${fabric || 'Fabric'}: ${lengths.join(', ')}, give or take ${sure} %; ${from}${blockingSaid(record)}`;
}

const UNITS: Readonly<Record<GaugeRecord['unit'], string>> = {
  stitch: 'sts',
  box: 'boxes',
  repeat: 'repeats',
};

function countsSaid({ unit, worked, unitWidthMm, rowHeightMm }: GaugeRecord, mm: number): string {
  const n = (one: number): string => String(Number((mm / one).toFixed(1)));
  const rows = worked === 'rounds' ? 'rnds' : 'rows';
  return [
    ...(unitWidthMm === null ? [] : [`${n(unitWidthMm)} ${UNITS[unit]}`]),
    ...(rowHeightMm === null ? [] : [`${n(rowHeightMm)} ${rows}`]),
  ].join(' x ');
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
