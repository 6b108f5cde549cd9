/**
 * Words with two readings where nothing in the part decides: no count is stated and no row's end
 * tells. Custom is silent only where makers are of two minds.
 */
import { numberIn } from '../../fabric/index.ts';
import { type Finding, timesTwoReadings, twoReadings } from '../../finding/index.ts';
import type { Part } from '../../manuscript/index.ts';
import type { RepeatStep } from '../../notation/index.ts';
import { doubtWords } from '../doubts.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { type Scene, wordsAt } from '../scene.ts';
import { absolute, instructionsOf, type Placed, rowIds, stepsIn } from './rows.ts';

export function openDoubts(scene: Scene): Finding[] {
  return [...openTimes(scene), ...openChains(scene)];
}

/** "Rep from * 5 times; leave rem sts unworked": neither count nor row's end tells how often. */
function openTimes(scene: Scene): Finding[] {
  return [...instructionsOf(scene)].flatMap((row) => {
    const { steps, counts } = row.placed.instruction;
    const repeat = steps.find(
      (step) => step.kind === 'repeat' && step.times.kind === 'times' && step.times.more === null,
    );
    const leaves = steps.some((step) => step.kind === 'unworked' && step.n === null);
    if (repeat?.kind !== 'repeat' || !leaves || counts.length > 0) return [];
    if (laterCounts(scene, row) || saysTimes(scene, row)) return [];
    return [timesOf(scene, row, repeat)];
  });
}

/** A count in a later row of the part decides. */
const laterCounts = ({ manuscript }: Scene, { partIndex, index }: Placed): boolean =>
  (manuscript.parts[partIndex]?.instructions ?? [])
    .slice(index + 1)
    .some(({ instruction }) => instruction.counts.length > 0);

const saysTimes = ({ manuscript }: Scene, { partIndex }: Placed): boolean =>
  [...manuscript.orders, ...(manuscript.parts[partIndex]?.orders ?? [])].some(
    (order) => order.kind === 'times',
  );

function timesOf(scene: Scene, row: Placed, repeat: RepeatStep): Finding {
  const { text } = scene.manuscript;
  const at = absolute(row.placed, repeat.order);
  const n = repeat.times.kind === 'times' ? (numberIn(repeat.times.n, 0) ?? 1) : 1;
  const words = { words: wordsAt(scene, at), first: n, second: n + 1 };
  const finding = timesTwoReadings(at, words, { rows: rowIds(scene, row) });
  const said = text.slice(at.from, at.to);
  const order = /\b(?:\d+|once|twice|thrice|\w+)(?:\s+times?)?\s*$/i.exec(said);
  if (!order) return finding;
  const span = { from: at.from + order.index, to: at.to };
  return propose(
    finding,
    [n, n - 1]
      .filter((more) => more > 0)
      .map((more) => replacement(text, span, `${more} more ${more === 1 ? 'time' : 'times'}`)),
  );
}

/** Two skipped chains before half doubles count for some makers and not for others. */
const HALF_AND_HALF = /^(?:skipped chains) 2$/;

function openChains({ manuscript, fabric }: Scene): Finding[] {
  return fabric.conventions.flatMap(
    ({ doubt, partIndex, reading, alternatives, because, from, to }) => {
      const part = manuscript.parts[partIndex];
      const other = alternatives[0];
      if (!HALF_AND_HALF.test(doubt) || because !== 'custom' || !part || !other) return [];
      if (decides(part)) return [];
      const words = {
        words: manuscript.text.slice(from, to).replace(/\s+/g, ' '),
        first: doubtWords(doubt, reading),
        second: doubtWords(doubt, other),
      };
      return [twoReadings({ from, to }, words)];
    },
  );
}

/** Any count, or a row told in numbers, shows how many stitches there are. */
const decides = ({ instructions }: Part): boolean =>
  instructions.some(
    ({ instruction: { counts, steps } }, i) =>
      counts.length > 0 ||
      (i > 0 &&
        [...stepsIn(steps)].some(
          (step) => step.kind === 'work' && step.place?.n && !step.place.fromHook,
        )),
  );
