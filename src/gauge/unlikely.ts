/**
 * Gauges that do not go with yarn, hook or each other. Published ranges are guides: toys and baskets
 * are worked 1 to 2 mm under the table's hook, shawls looser. So only what lies far outside is said.
 */
import { type Finding, gaugeUnlikely, swatchShort } from '../finding/index.ts';
import { wordFor } from '../notation/index.ts';
import { length, printLength } from '../units/index.ts';
import type { GaugeRecord, Gauges } from './gauge.ts';
import { fabricGauge } from './look-up.ts';
import { proportionOf, SC_HEIGHT_BY_WIDTH } from './proportions.ts';
import { classOfRunningLength, classRow } from './weight-classes.ts';
import type { WeightClass, Yarn } from './yarn.ts';

/** How far over the council's range in sc: firm toys reach 1.45 times its upper end (ours). */
const FACTOR = 1.7;
/** Stitch width over hook size: 1.3 to 1.9 in our examples; beyond this it is another hook. */
const WIDTH_BY_HOOK = { from: 0.7, to: 3.5 };
/** Row height over what the proportions say; ripples and post stitches stay well inside. */
const HEIGHT_OFF = 2.2;

export function gaugeFindings(gauges: Gauges): readonly Finding[] {
  return gauges.records.flatMap((record) => [
    ...shortSwatches(record),
    ...unlikely(record, gauges),
  ]);
}

/** A count over more than the swatch holds was worked out, not counted; edges pull in as well. */
function shortSwatches({ counts, span }: GaugeRecord): readonly Finding[] {
  return counts.flatMap(({ across, up, swatch }) => {
    if (!swatch) return [];
    const isShort = (mm: number | undefined, whole: number): boolean =>
      mm !== undefined && mm > 1.02 * whole;
    const isWide = isShort(across?.mm, swatch.widthMm);
    if (!isWide && !isShort(up?.mm, swatch.heightMm)) return [];
    const [over, whole] = isWide ? [across!.mm, swatch.widthMm] : [up!.mm, swatch.heightMm];
    const said = (mm: number): string => printLength(length(mm, 'mm'), 'cm');
    return [swatchShort(span, { over: said(over), swatch: said(whole) })];
  });
}

function unlikely(record: GaugeRecord, gauges: Gauges): readonly Finding[] {
  const why = byItself(record) ?? byYarn(record, gauges) ?? byHook(record, gauges);
  if (why === null || record.counts.length === 0) return [];
  return [
    gaugeUnlikely(
      record.span,
      { gauge: record.counts[0]!.words, why: why.why },
      { sum: why.usual },
    ),
  ];
}

/** What is wrong, short enough for a title, and what is usual, as a sentence. */
interface Why {
  readonly why: string;
  readonly usual: string;
}

function byItself({ unitWidthMm, rowHeightMm, stem, unit, isPlain }: GaugeRecord): Why | null {
  if (unit !== 'stitch' || !isPlain || stem === null) return null;
  if (unitWidthMm === null || rowHeightMm === null) return null;
  const { width, height } = proportionOf(stem);
  const off = rowHeightMm / unitWidthMm / ((SC_HEIGHT_BY_WIDTH * height) / width);
  const usual = '';
  if (off > HEIGHT_OFF)
    return { why: 'its rows are more than twice as high as such stitches are', usual };
  return off < 1 / HEIGHT_OFF
    ? { why: 'its rows are less than half as high as such stitches are', usual }
    : null;
}

function byYarn(record: GaugeRecord, gauges: Gauges): Why | null {
  const { yarns, terms } = gauges;
  const [yarn] = yarns;
  if (record.unit !== 'stitch' || record.isMesh || record.unitWidthMm === null) return null;
  // A second yarn, or a yarn held double, makes any gauge possible.
  if (!yarn || yarns.some(({ weightClass }) => weightClass !== yarn.weightClass)) return null;
  const weightClass = classOf(yarn);
  if (weightClass === null) return null;
  const { scPer4In, name } = classRow(weightClass);
  const sts = 101.6 / record.unitWidthMm;
  if (sts <= scPer4In[1] * FACTOR && sts >= scPer4In[0] / FACTOR) return null;
  const [from, to] = scPer4In;
  const word = wordFor('w0', terms);
  return {
    why: `it makes ${Math.round(sts)} stitches to 4 in, far from what such yarn makes`,
    usual: `Usual for weight ${weightClass}, ${name}, are ${from} to ${to} ${word} to 4 in (yarn council).`,
  };
}

const classOf = ({ weightClass, ball }: Yarn): WeightClass | null =>
  weightClass ?? (ball ? classOfRunningLength((100 * ball.metres) / ball.grams) : null);

function byHook(record: GaugeRecord, gauges: Gauges): Why | null {
  const sizes = gauges.hooks.flatMap(({ mm, orMm }) => [mm, ...orMm]);
  if (sizes.length === 0 || record.unit !== 'stitch' || record.isMesh) return null;
  if (record.unitWidthMm === null || !record.stem) return null;
  const width = fabricGauge({ ...gauges, records: [record] }, record.stem).stitchWidthMm;
  const isUsual = sizes.some(
    (mm) => width / mm >= WIDTH_BY_HOOK.from && width / mm <= WIDTH_BY_HOOK.to,
  );
  if (isUsual) return null;
  const stitch = `a stitch is ${Number(width.toFixed(1))} mm wide`;
  const weightClass = gauges.yarns[0] ? classOf(gauges.yarns[0]) : null;
  return {
    why: `${stitch}, which a hook of ${sizes[0]} mm does not make`,
    usual: usualHooks(weightClass),
  };
}

function usualHooks(weightClass: WeightClass | null): string {
  if (weightClass === null) return '';
  const { name, hookMm } = classRow(weightClass);
  return `Usual for weight ${weightClass}, ${name}, are hooks of ${hookMm[0]} to ${hookMm[1]} mm (yarn council).`;
}
