/**
 * A chart that stands to one side of its piece, where it could stand better by a whole box, or where
 * the pattern says that it is centred. Judged by stitches, since posts are shared: a chart of n boxes
 * shows n(g + 1) + 1. The whole width of a flat piece is its front; a piece worked round has two
 * faces, known from its notes or its handles.
 */
import { type ChartUse, type Cloth, firstUseOf } from '../../fabric/index.ts';
import { pitchOf, stitchesOf } from '../../filet/index.ts';
import { type Finding, motifOffCentre } from '../../finding/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import { facesOf } from '../front.ts';
import { chartName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, stepsIn } from './rows.ts';

/** Words that tell that it is meant; a round's start that wanders to one side is no such word by itself. */
const ON_PURPOSE =
  /off[- ]?cent(?:re|er)|(?:chart|word|motif|letter\w*)\b[^.]{0,80}to one side|asymmetr|in (?:one|the|a) corner|left on purpose|allow(?:s|ing)? for the (?:lean|slant|travel)/i;

const MOTIF = '(?:chart|word|motif|letter(?:s|ing)?|name|design)';
const CENTRED = new RegExp(
  `\\b${MOTIF}\\b[^.]{0,80}\\bcent(?:red|ered)\\b|\\bcent(?:red|ered|re|er) (?:the |each )?${MOTIF}\\b`,
  'i',
);

export function motifs(scene: Scene): Finding[] {
  return judged(scene).flatMap((motif) => {
    const worst = motif.seen.find((one) => one !== null && isOff(scene, one));
    return worst ? [findingFor(scene, motif, worst)] : [];
  });
}

/** Charts that are not judged, by name. */
export interface Unplaced {
  /** Nothing tells the front. */
  readonly unknown: string[];
  /** They reach over a side of it. */
  readonly aside: string[];
  /** Several stand in one row, as letters do that are charts of their own. */
  readonly together: string[];
  /** Boxes added or dropped: the middle of a row is not the middle of the chart. */
  readonly shaped: string[];
}

export function motifsUnplaced(scene: Scene): Unplaced {
  const all = judged(scene).map(({ chart, seen }) => ({ name: chartName(chart.name), seen }));
  const aside = all.filter(({ seen }) => seen.length > 0 && seen.every((one) => !isOnFace(one)));
  return {
    unknown: all.filter(({ seen }) => seen.length === 0).map(({ name }) => name),
    aside: aside.map(({ name }) => name),
    ...neverJudged(scene),
  };
}

function neverJudged({ manuscript, fabric }: Scene): Pick<Unplaced, 'together' | 'shaped'> {
  const cloth = fabric.cloths[0];
  if (!cloth || ON_PURPOSE.test(manuscript.text)) return { together: [], shaped: [] };
  const uses = manuscript.charts.flatMap((chart) => {
    const use = firstUseOf(chart, fabric, cloth);
    return use ? [{ chart, use }] : [];
  });
  const named = (wanted: (one: (typeof uses)[number]) => boolean): string[] =>
    uses.filter(wanted).map(({ chart }) => chartName(chart.name));
  const rowOf = ({ record }: ChartUse) => uses.filter(({ use }) => use.record === record);
  const isRoomy = (some: typeof uses): boolean =>
    hasBoxes(some, 'before') && hasBoxes(some, 'after');
  return {
    together: named(({ use }) => rowOf(use).length > 1 && isRoomy(rowOf(use))),
    shaped: named((one) => rowOf(one.use).length === 1 && isShaped(one.chart) && isRoomy([one])),
  };
}

/** Have all of them boxes at that side: those of the others, or of the ground? */
const hasBoxes = (some: readonly { readonly use: ChartUse }[], side: 'before' | 'after'): boolean =>
  some.every(({ use }) => use[side] !== null && use[side].boxes[0] !== 0);

const isShaped = (chart: Chart): boolean => chart.rows.some((row) => row.includes('none'));

/** Half a stitch is shared with the other face. */
const isOnFace = ({ before, after }: Seen): boolean => before >= -0.5 && after >= -0.5;

/** One pass of a chart on its face, in stitches. */
interface Seen {
  readonly use: ChartUse;
  readonly cloth: Cloth;
  readonly before: number;
  readonly after: number;
  readonly pitch: number;
  /** Boxes before it in its row. */
  readonly start: number;
  /** How the front is known. */
  readonly because: string;
}

interface Motif {
  readonly chart: Chart;
  /** In each size the first row's passes; empty where its front is not known. */
  readonly seen: readonly Seen[];
}

/** Charts that are no repeat and no whole row. */
function judged(scene: Scene): Motif[] {
  const { manuscript, fabric } = scene;
  if (ON_PURPOSE.test(manuscript.text)) return [];
  const uses = fabric.cloths.map((cloth) =>
    manuscript.charts.map((chart) => ({ chart, cloth, use: firstUse(chart, scene, cloth) })),
  );
  // Letters that are charts of their own make one motif together: where each stands says nothing.
  const alone = uses.map((some) =>
    some.filter(
      ({ use }) => use && some.filter((one) => one.use?.record === use.record).length === 1,
    ),
  );
  return manuscript.charts.flatMap((chart) => {
    const own = alone.flatMap((some) => some.filter((one) => one.chart === chart));
    const placed = own.filter(({ use }) => use && isPlaced(chart, use));
    if (placed.length === 0) return [];
    return [
      {
        chart,
        seen: placed.flatMap(({ use, cloth }) => seenIn(scene, cloth, chart, use as ChartUse)),
      },
    ];
  });
}

function firstUse(chart: Chart, { fabric }: Scene, cloth: Cloth): ChartUse | null {
  return isShaped(chart) ? null : firstUseOf(chart, fabric, cloth);
}

/** Once or twice in its row, with something beside it; flat, open boxes at both sides. */
function isPlaced(chart: Chart, use: ChartUse): boolean {
  const { record, starts, cells, before, after } = use;
  if (use.acrossJoin !== null && cells) return true;
  if (record.verdict === 'mismatch' || !cells || !before || !after || starts.length > 2)
    return false;
  if (cells.length <= (chart.rows[0]?.length ?? 0)) return false;
  if (record.closes) return true;
  const isOpen = (beside: typeof before): boolean =>
    beside.kind === 'open' && beside.boxes[0] !== 0;
  return starts.length === 1 && isOpen(before) && isOpen(after);
}

function seenIn(scene: Scene, cloth: Cloth, chart: Chart, use: ChartUse): Seen[] {
  const { record, starts } = use;
  const gap = use.gap ?? 1;
  const pitch = pitchOf(gap);
  const boxes = use.cells?.length ?? 0;
  const stitches = stitchesOf(boxes, gap, record.closes ? 'round' : 'flat');
  const wide = stitchesOf(chart.rows[0]?.length ?? 0, gap, 'flat');
  const faces = record.closes ? facesOf(scene, cloth, { record, stitches }) : null;
  if (record.closes && !faces) return [];
  const front = record.closes ? stitches / 2 : stitches;
  // Wider than the front it runs round the sides, and is no motif of a face.
  if (wide > front + 1) return [];
  return starts.map((start) => {
    const middle = start * pitch + wide / 2;
    const offs = (faces?.middles ?? [stitches / 2]).map((one) => around(middle - one, stitches));
    const off = offs.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a));
    const side = (front - wide) / 2;
    const because = faces?.because ?? '';
    return { use, cloth, before: side + off, after: side - off, pitch, start, because };
  });
}

/** The short way round. */
const around = (off: number, stitches: number): number =>
  off - stitches * Math.round(off / stitches);

/**
 * A box nearer the middle there is where it stands more than half a box off; half a stitch more is
 * left to handles that stand a stitch aside. Where it is said to be centred, half a stitch is allowed.
 */
function isOff(scene: Scene, seen: Seen): boolean {
  const { before, after, pitch, use, because } = seen;
  if (!isOnFace(seen)) return false;
  const off = Math.abs(before - after) / 2;
  const slack = use.record.closes && because.startsWith('The handles') ? 0.5 : 0;
  return off > pitch / 2 + slack || (off > 0.5 + slack && CENTRED.test(scene.manuscript.text));
}

function findingFor(scene: Scene, { chart, seen }: Motif, worst: Seen): Finding {
  const { use, before, after, pitch, start, because } = worst;
  const front = before + after + stitchesOf(chart.rows[0]?.length ?? 0, pitch - 1, 'flat');
  const move = Math.round((after - before) / 2 / pitch);
  const boxes = use.cells?.length ?? 1;
  const better = (start + move + boxes) % boxes;
  const there = `From box ${better + 1} on it would have ${before + move * pitch} before and ${after - move * pitch} after it.`;
  const none = 'At this count of boxes no place is nearer the middle.';
  const width = use.record.closes
    ? `${because} The front is half the round, ${front} stitches.`
    : `The row is ${front} stitches wide.`;
  const sum = `${width} ${move === 0 ? none : there}`;
  const words = { chart: chartName(chart.name), before, after };
  const off = seen.filter((one) => isOff(scene, one));
  const sizes = new Set(off.map(({ cloth }) => cloth.sizeIndex));
  const names = scene.manuscript.head.sizes;
  return motifOffCentre(placeOf(scene, chart, use), words, {
    sum,
    rows: [use.record.id],
    sizes:
      sizes.size === scene.fabric.cloths.length
        ? []
        : [...sizes].map((i) => names[i] ?? `size ${i + 1}`),
  });
}

/** The words that ask for the chart; the row where they stand elsewhere ("Rep rnd 4"). */
function placeOf({ manuscript }: Scene, chart: Chart, { record }: ChartUse) {
  const placed = manuscript.parts[record.partIndex]?.instructions[record.instruction];
  const steps = placed ? [...stepsIn(placed.instruction.steps)] : [];
  const step = steps.find(
    (one) =>
      one.kind === 'chart' &&
      (one.name === '' || one.name.toLowerCase() === chart.name.toLowerCase()),
  );
  return step && placed ? absolute(placed, step) : { from: record.from, to: record.to };
}
