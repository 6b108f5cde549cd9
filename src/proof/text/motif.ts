/**
 * A chart that stands to one side of its piece, where it could stand better by a whole box. Rounds are
 * judged only where the notes say that they start at the side of the piece: then the front is the
 * first half of the round.
 */
import { fitChart } from '../../filet/index.ts';
import { type Finding, motifOffCentre } from '../../finding/index.ts';
import type { BoxStep, ChartStep, Instruction, Step } from '../../notation/index.ts';
import { numberIn } from '../amounts.ts';
import { chartName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, type Placed, rowIds } from './rows.ts';

/** Words that tell that it is meant; a round's start that wanders to one side is no such word by itself. */
const ON_PURPOSE =
  /off[- ]?cent(?:re|er)|(?:chart|word|motif|letter\w*)\b[^.]{0,80}to one side|asymmetr|in (?:one|the|a) corner|left on purpose|allow(?:s|ing)? for the (?:lean|slant|travel)/i;

export function motifs(scene: Scene): Finding[] {
  const { text } = scene.manuscript;
  if (scene.manuscript.charts.length === 0 || ON_PURPOSE.test(text)) return [];
  const told = new Set<string>();
  return [...instructionsOf(scene)].flatMap((row) => {
    const sides = sidesOf(row.placed.instruction);
    if (!sides || told.has(sides.chart.name)) return [];
    const worked = scene.fabric.cloths[0]?.rows.find(
      (one) => one.partIndex === row.partIndex && one.instruction === row.index,
    );
    if (!worked || worked.verdict === 'mismatch') return [];
    if (worked.ring) return inRound(scene, row, { sides, boxes: worked.tally.boxes, told });
    if (Math.abs(sides.before - sides.after) < 2) return [];
    told.add(sides.chart.name);
    // Posts are shared: a box is its gap and one post, whichever side is looked at.
    const box = (gapOf(scene, sides.chart.name) ?? 1) + 1;
    const words = {
      chart: chartName(sides.chart.name),
      before: sides.before * box,
      after: sides.after * box,
    };
    const sum = `${sides.before} boxes before it and ${sides.after} after it, of ${box} stitches each.`;
    return [
      motifOffCentre(absolute(row.placed, sides.chart), words, { sum, rows: rowIds(scene, row) }),
    ];
  });
}

/** "The start of the round lies at one side of the bag." */
const STARTS_AT_SIDE =
  /(?:start|beginning|join)s? of (?:the |each |every )?(?:rounds?|rnds?)[^.]{0,60}\bside\b/i;

/** In stitches of the front, which is the first half; only where another box is nearer the middle. */
function inRound(
  scene: Scene,
  row: Placed,
  at: { sides: Sides; boxes: number; told: Set<string> },
): Finding[] {
  const { sides, boxes, told } = at;
  const width = boxes - sides.before - sides.after;
  const front = Math.floor(boxes / 2);
  const onFront = width > 0 && sides.before + width <= front;
  if (!onFront || !STARTS_AT_SIDE.test(scene.manuscript.text)) return [];
  const gap = gapOf(scene, sides.chart.name) ?? 1;
  const asked = { boxes, gap, closing: 'round', width, filledMiddle: null, margin: 0 } as const;
  const { exact, frontStitches } = fitChart(asked);
  const box = gap + 1;
  const before = sides.before * box;
  const after = frontStitches - before - width * box - 1;
  const [best] = exact;
  if (!best || Math.abs(before - after) <= Math.abs(best.before - best.after)) return [];
  told.add(sides.chart.name);
  const sum =
    `The front is the first half of the round, ${frontStitches} stitches. From box ` +
    `${best.firstBox} on it would have ${best.before} before and ${best.after} after it.`;
  const words = { chart: chartName(sides.chart.name), before, after };
  return [
    motifOffCentre(absolute(row.placed, sides.chart), words, { sum, rows: rowIds(scene, row) }),
  ];
}

const gapOf = ({ manuscript }: Scene, name: string): number | null =>
  manuscript.charts.find((chart) => chart.name === name)?.mesh?.gap ?? null;

interface Sides {
  readonly before: number;
  readonly after: number;
  readonly chart: ChartStep;
}

/** Open boxes, a chart, open boxes, and nothing else. */
function sidesOf({ steps }: Instruction): Sides | null {
  const work = steps.filter((step) =>
    ['boxes', 'chart', 'work', 'group', 'repeat'].includes(step.kind),
  );
  const [first, chart, last] = work;
  if (work.length !== 3 || chart?.kind !== 'chart') return null;
  const before = boxesIn(first);
  const after = boxesIn(last);
  return before === null || after === null ? null : { before, after, chart };
}

function boxesIn(step: Step | undefined): number | null {
  if (step?.kind === 'boxes') return step.until ? null : numberIn((step as BoxStep).n, 0);
  if (step?.kind !== 'work' || !/open/.test(step.stitch.special ?? '')) return null;
  return step.place || step.until ? null : numberIn(step.n, 0);
}
