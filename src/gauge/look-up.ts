/** From the gauges of a pattern to the size of a stitch or a box that is asked for. */
import { STEMS, type StemId, stemOf, wordFor } from '../notation/index.ts';
import { fabricNamed } from './fabric-name.ts';
import type { BoxSize, Gauge, GaugeRecord, Gauges, Had } from './gauge.ts';
import {
  PROPORTION_SPREAD,
  type Proportion,
  proportionOf,
  SC_HEIGHT_BY_WIDTH,
} from './proportions.ts';
import { classOfRunningLength, classRow } from './weight-classes.ts';

/** Stitch sizes that follow from one record, for its own stitch. */
interface Known {
  readonly stem: StemId;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly width: Had;
  readonly height: Had;
  /** A mesh tells less of a plain fabric than a plain one does: its boxes draw in. */
  readonly isMesh: boolean;
  /** Height of its rows against those of sc. */
  readonly proportion: Proportion;
  /** For sentences: "sc", "mesh". */
  readonly name: string;
}

/**
 * Size of one stitch of a fabric: a stem ("w0") or a name in the pattern's words ("sc", "mesh").
 * The designer's own count where there is one, be it "in pattern", else an estimate that says so.
 */
export function fabricGauge(gauges: Gauges, fabric: string): Gauge {
  const inPattern = gauges.records.find(({ patternHeight }) => patternHeight !== null);
  const plain = plainGauge(gauges, fabric);
  if (!inPattern || plain.how === 'swatch') return plain;
  const known = knownOf(inPattern, gauges);
  return known ? gaugeOf(fabric, known) : plain;
}

/** The same of a plain stitch by itself: a count "in pattern" tells it by the usual proportions. */
export function plainGauge(gauges: Gauges, fabric: string): Gauge {
  const exact = gauges.records.find((each) => each.fabric.toLowerCase() === fabric.toLowerCase());
  const stem = stemFor(gauges, fabric) ?? exact?.stem ?? 'w0';
  const own = exact ?? recordFor(gauges, stem);
  const known = own ? knownOf(own, gauges) : null;
  if (known && (exact || known.stem === stem)) return gaugeOf(fabric, known);
  return gaugeOf(fabric, estimated(gauges, stem));
}

/** Is any gauge given that tells a stitch's size? Without one all sizes lean on the yarn alone. */
export const isCounted = (gauges: Gauges): boolean =>
  gauges.records.some((record) => knownOf(record, gauges) !== null);

/** Height of a row of this stitch beside others: tall stitches set the height of their row. */
function stemFor({ terms }: Gauges, fabric: string): StemId | null {
  const id = STEMS.find((stem) => stem.id === fabric)?.id;
  return id ?? stemOf(fabric, terms) ?? fabricNamed(fabric, terms).stem;
}

/** A plain fabric of this stitch first, then one in a pattern stitch. */
function recordFor({ records }: Gauges, stem: StemId): GaugeRecord | undefined {
  const same = records.filter(
    (each) => each.stem === stem && !each.isMesh && each.patternHeight === null,
  );
  return same.find(({ isPlain }) => isPlain) ?? same[0];
}

function gaugeOf(fabric: string, known: Known): Gauge {
  const weaker = known.width.spread >= known.height.spread ? known.width : known.height;
  return {
    fabric,
    stitchWidthMm: known.widthMm,
    rowHeightMm: known.heightMm,
    width: known.width,
    height: known.height,
    ...weaker,
  };
}

/** The post of a mesh is dc where the gauge does not say otherwise (common practice of filet). */
const MESH_POST: StemId = 'w1';
/** Two chains to a box where nothing tells: the classic mesh of filet handbooks. */
const CLASSIC_GAP = 2;

function knownOf(record: GaugeRecord, gauges: Gauges): Known | null {
  const stem = record.stem ?? (record.isMesh ? MESH_POST : null);
  if (!stem || record.unit === 'repeat') return null;
  const perUnit = record.unit === 'box' ? (gauges.meshGap ?? CLASSIC_GAP) + 1 : 1;
  const { unitWidthMm, rowHeightMm } = record;
  const name = record.fabric || wordFor(stem, gauges.terms);
  const counted = countedWords(record, name);
  const proportion: Proportion =
    record.patternHeight === null ? proportionOf(stem) : { width: 1, height: record.patternHeight };
  const { width, height } = proportion;
  const byWidth = (SC_HEIGHT_BY_WIDTH * height) / width;
  const derived: Had = {
    how: 'estimate',
    because: `${counted} The other side by the usual proportions of ${name}.`,
    spread: 0.12,
  };
  const own = (spread: number): Had => ({ how: 'swatch', because: counted, spread });
  if (unitWidthMm === null && rowHeightMm === null) return null;
  const widthMm = unitWidthMm === null ? rowHeightMm! / byWidth : unitWidthMm / perUnit;
  return {
    stem,
    name,
    isMesh: record.isMesh,
    proportion,
    widthMm,
    heightMm: rowHeightMm ?? widthMm * byWidth,
    width: unitWidthMm === null ? derived : own(record.widthSpread),
    height: rowHeightMm === null ? derived : own(record.heightSpread),
  };
}

function countedWords({ counts, blocking }: GaugeRecord, name: string): string {
  const said = counts.length === 1 ? counts[0]!.words : `the mean of ${counts.length} swatches`;
  const state = blocking === 'before' ? ', before blocking' : '';
  return `Gauge in ${name}: ${said.replace(/\.$/, '')}${state}.`;
}

/** The fabric nearest in height that is counted both ways, scaled by the table of proportions. */
function estimated(gauges: Gauges, stem: StemId): Known {
  const known = gauges.records.flatMap((record) => knownOf(record, gauges) ?? []);
  const target = proportionOf(stem);
  const far = (one: Known): number =>
    Math.abs(Math.log(target.height / one.proportion.height)) +
    (one.isMesh ? 0.5 : 0) +
    (one.height.how === 'swatch' && one.width.how === 'swatch' ? 0 : 10);
  const nearest = [...known].sort((a, b) => far(a) - far(b))[0];
  const word = wordFor(stem, gauges.terms);
  if (!nearest) return fromYarn(gauges, stem);
  const from = nearest.proportion;
  const had = (own: Had): Had => ({
    how: 'estimate',
    because: `No gauge in ${word} is given: estimated from ${nearest.name} by the usual proportions.`,
    spread: Math.hypot(own.spread, PROPORTION_SPREAD),
  });
  return {
    stem,
    name: word,
    isMesh: false,
    proportion: target,
    widthMm: (nearest.widthMm * target.width) / from.width,
    heightMm: (nearest.heightMm * target.height) / from.height,
    width: had(nearest.width),
    height: had(nearest.height),
  };
}

/** Without any gauge: the middle of the yarn council's range for the weight. */
function fromYarn({ yarns, terms }: Gauges, stem: StemId): Known {
  const [yarn] = yarns;
  const run = yarn?.ball ? (100 * yarn.ball.metres) / yarn.ball.grams : null;
  const weightClass = yarn?.weightClass ?? (run ? classOfRunningLength(run) : null);
  const { name, scPer4In } = classRow(weightClass ?? 4);
  const [from, to] = scPer4In;
  const scWidth = (2 * 101.6) / (from + to);
  const proportion = proportionOf(stem);
  const { width, height } = proportion;
  const had: Had =
    weightClass === null
      ? {
          how: 'assumed',
          because: 'Neither gauge nor yarn is given: a medium yarn is assumed.',
          spread: 0.3,
        }
      : {
          how: 'estimate',
          because: `No gauge is given: ${from} to ${to} ${wordFor('w0', terms)} to 4 in are usual for weight ${weightClass}, ${name}.`,
          spread: Math.hypot((to - from) / (to + from), PROPORTION_SPREAD),
        };
  return {
    stem,
    name: wordFor(stem, terms),
    isMesh: false,
    proportion,
    widthMm: scWidth * width,
    heightMm: scWidth * SC_HEIGHT_BY_WIDTH * height,
    width: had,
    height: had,
  };
}

/**
 * Size of one box of a mesh: post as the chart writes it ("dc"), and the chains of an open box.
 * From a mesh gauge; else from the post's own stitch, which tells less: open boxes draw in and solid
 * ones spread (common practice), so the mesh should be measured by itself.
 */
export function boxSize(
  gauges: Gauges,
  mesh: { readonly post: string; readonly gap: number },
): BoxSize {
  const stitches = mesh.gap + 1;
  const record = gauges.records.find(({ isMesh }) => isMesh);
  const known = record ? knownOf(record, gauges) : null;
  const own = record?.unit === 'box' ? (gauges.meshGap ?? mesh.gap) : mesh.gap;
  const gauge = known ? gaugeOf('mesh', known) : fabricGauge(gauges, mesh.post);
  const { stitchWidthMm, rowHeightMm, how, because, spread } = gauge;
  const widthMm =
    record?.unit === 'box' && own === mesh.gap && record.unitWidthMm !== null
      ? record.unitWidthMm
      : stitchWidthMm * stitches;
  const had = known ? { how, because, spread } : fromPost(gauge, mesh.post);
  return { widthMm, heightMm: rowHeightMm, ...had };
}

function fromPost({ how, because, spread }: Gauge, post: string): Had {
  return {
    how: how === 'assumed' ? 'assumed' : 'estimate',
    because: `${because} No gauge in mesh is given: a box is taken as wide as its stitches in ${post}.`,
    spread: Math.hypot(spread, PROPORTION_SPREAD),
  };
}
