/**
 * Which numbers of a proven row bind, that is, cannot be changed without its count or a walk coming
 * out otherwise. Told from what the words are and from how the sound piece came out, never from
 * whether a change is found.
 */
import type {
  Numbers,
  Place,
  RepeatStep,
  StatedCount,
  Step,
  WorkStep,
} from '../../src/notation/index.ts';
import type { Node, Placed, Row, WrittenNumber } from './numbers.ts';

/** Why a number binds nothing; `null`: it binds. */
export type Free = string | null;

const spacesOf = ({ tally }: Row): number => tally.spaces.reduce((sum, { n }) => sum + n, 0);

/** A stated count tells how many stitches the row makes. */
export const countsStitches = (row: Row): boolean =>
  row.stated.some(({ n, unit }) => {
    if (unit !== null && unit !== 'stitch' && unit !== 'stem') return false;
    const { stitches, chains, byKind } = row.tally;
    const sums = [stitches, stitches + spacesOf(row), stitches + chains, ...byKind.values()];
    return sums.includes(n);
  });

const countsChains = (row: Row): boolean =>
  row.stated.some(
    ({ n, unit }) =>
      unit === 'chain' || (n !== row.tally.stitches && n === row.tally.stitches + row.tally.chains),
  );

/** The walk ends where the row beneath ends. */
const takesAll = (row: Row): boolean => row.available > 0 && row.used === row.available;

/** A row of the same piece takes every stitch that this one makes. */
const isTakenUp = ({ rows, next, part }: Placed): boolean =>
  next.some(
    (row) =>
      row.partIndex === part &&
      row.verdict === 'proven' &&
      takesAll(row) &&
      rows.some(({ tally }) => tally.stitches === row.available),
  );

/** What the sound piece holds fast around a number. */
interface Held {
  /** How many stitches its row makes. */
  readonly made: boolean;
  /** How many places its row uses. */
  readonly used: boolean;
  /** How many chains its row makes. */
  readonly chains: boolean;
}

const heldIn = (placed: Placed): Held => ({
  made: placed.rows.some(countsStitches) || isTakenUp(placed),
  used: placed.rows.some(takesAll),
  chains: placed.rows.some(countsChains),
});

/** Words whose numbers bind nothing, by the kind or the name of their node. */
const SILENT: ReadonlyMap<string, string> = new Map([
  ['remark', 'a remark'],
  ['yarn', 'a yarn'],
  ['orders', 'a note'],
  ['not-worked', 'work that is only named'],
  ['unread', 'words that were not understood'],
  ['rows-again', 'the name of a row, or how often rows are worked'],
  ['even', 'how often rows are worked'],
  ['countsAs', 'what a start chain is said to be: custom differs'],
  ['other-side', 'the name of a chain'],
]);

/** Why this number of a proven row binds nothing; `null`: it binds. */
export function whyFree(number: WrittenNumber): Free {
  const { path, placed } = number;
  for (const { key, kind } of path) {
    const why = SILENT.get(kind) ?? SILENT.get(key);
    if (why) return why;
  }
  if (isNeverWorked(number)) return 'work that this size goes over no times';
  if (!isOfProvenSize(number)) return 'a size in which the row is not proven';
  const first = path[0];
  if (first?.key === 'counts') return freeCount(number, first.value as unknown as StatedCount);
  const step = path.findLast(({ key }) => key === 'steps');
  if (!step) return 'no word that is worked';
  const held = heldIn(placed);
  if (step.kind === 'join') return freeJoin(number);
  if (step.kind === 'chain') return freeChain(number, held);
  if (path.at(-1)?.key === 'chains') return null;
  if (step.kind === 'chart' && path.at(-1)?.key !== 'n')
    return 'the part of a chart that is worked';
  if (step.kind === 'boxes' || step.kind === 'chart') return null;
  if (step.kind === 'work') return freeWork(number, step, held);
  return held.used || held.made ? null : 'neither a count nor the end of the row holds it';
}

/** Of "(10, 8) sts … 0 (6) times", the 10 is worked in no size. */
function isNeverWorked({ path, value }: WrittenNumber): boolean {
  const own = (path.at(-1)?.value as Partial<Numbers> | undefined)?.values ?? [value];
  return path.some(({ kind, value: step }) => {
    const { times } = step as unknown as RepeatStep;
    if (kind !== 'repeat' || times?.kind !== 'times') return false;
    const { values } = times.n;
    const sizes = own.flatMap((n, size) => (n === value ? [size] : []));
    return values.length > 1 && sizes.every((size) => (values[size] ?? 1) === 0);
  });
}

/** Of "35 (37, 39)", is there a proven row in the size that this number is for? */
function isOfProvenSize({ path, value, placed: { rows } }: WrittenNumber): boolean {
  const values = (path.at(-1)?.value as Partial<Numbers> | undefined)?.values ?? [];
  if (rows.length === 0 || values.length < 2) return true;
  return rows.some((row) => row.verdict === 'proven' && values[row.sizeIndex] === value);
}

function freeCount({ path }: WrittenNumber, count: StatedCount): Free {
  if (count.partial || count.unit === 'decrease') return 'a number that is no total of the row';
  if (count.unit === 'group' && ONLY_CONFIRMED.has(count.word))
    return 'a name that no stitch bears';
  return path.length < 2 ? 'words beside a count' : null;
}

/** Said of stitches in one place that are so called nowhere else: as many or none is all that is known. */
const ONLY_CONFIRMED = new Set(['petal', 'fan', 'scallop', 'leaf', 'corner']);

/** "3rd ch of beg ch-4": the 4 must be the chain that was made, the 3 tells how it is read. */
function freeJoin({ path, value }: WrittenNumber): Free {
  const last = path.at(-1);
  if (last?.key === 'chains') return null;
  const place = path.find(({ key }) => key === 'place')?.value as Place | undefined;
  const chains = place?.of?.nouns[0]?.chains?.values[0] ?? null;
  if (chains !== null && value === chains) return null;
  return 'the chain of a start chain that a join goes to: custom differs';
}

/** "In same ch as first 2 sc". */
const NAMES_MADE = 'the name of stitches made before';

function freeWork(number: WrittenNumber, step: Node, held: Held): Free {
  const { stitch, place } = step.value as unknown as WorkStep;
  const last = number.path.at(-1);
  if (number.path.some(({ key }) => key === 'of') && last?.key === 'n') return NAMES_MADE;
  if (stitch.stem === 'ss') return 'slip stitches, which are not counted';
  if (last?.kind === 'place') {
    const { nth, fromHook } = last.value as unknown as Place;
    if (nth === null || nth !== number.value) return 'the name of a row';
    if (!fromHook) return 'which of several places is meant';
  }
  if (last?.kind === 'stitch' && stitch.shape !== 'together' && stitch.shape !== 'increase') {
    return stitch.shape === 'shell' && held.made ? null : 'legs that are closed into one stitch';
  }
  const isAlong = place === null || last?.key !== 'n' || number.path.at(-2) !== step;
  if (held.made || (held.used && isAlong)) return null;
  return 'stitches in a place, which no count holds';
}

/** A chain binds where it is counted, where words name its length, or where it is worked into. */
function freeChain({ placed, path, value }: WrittenNumber, held: Held): Free {
  const { steps, counts } = placed.instruction;
  // A join names the start chain of its own row, and none of this one.
  const behind = placed.after.filter((step) => step.kind !== 'join');
  const upon = placed.next.length > 0 ? placesIn(behind) : [];
  const isNamed = (places: readonly Place[], isStart: boolean): boolean =>
    places.some(({ nouns }) =>
      nouns.some(
        ({ kind, chains }) =>
          (kind === 'start-chain') === isStart && chains?.values.includes(value) === true,
      ),
    );
  const isStart = path.length === 2 && !isIdle(steps) && startsRow(steps, path[0]);
  if (isStart) {
    const joins = steps.filter(({ kind }) => kind === 'join');
    // At the row's end it belongs to the next row, and is named in none that is asked here.
    const isOwn = steps.at(-1) !== path[0]?.value && isFirstMade(steps, path[0]);
    const named = isOwn && (isNamed(placesIn(joins), true) || isNamed(upon, true));
    return named ? null : 'a start chain, whose height custom decides';
  }
  if (held.chains || isNamed(upon, false)) return null;
  if (counts.some(({ chains }) => chains?.values.includes(value))) return null;
  if (isIdle(steps) && worksBoxes(placed.after)) {
    return 'the foundation of boxes, for which two ways are in print';
  }
  if (isIdle(steps)) {
    return steps.some(({ kind }) => kind === 'join') ? 'a ring, which takes any number' : null;
  }
  const isWorkedInto = upon.some(
    ({ pick, of, nouns }) => pick !== 'nth' && !of && nouns[0]?.kind === 'chain',
  );
  return isWorkedInto ? null : 'a chain over a gap';
}

const isIdle = (steps: readonly Step[]): boolean =>
  !steps.some(({ kind }) => ['work', 'group', 'repeat', 'boxes', 'chart'].includes(kind));

function isFirstMade(steps: readonly Step[], node: Node | undefined): boolean {
  const first = steps.find(({ kind }) =>
    ['chain', 'work', 'group', 'repeat', 'boxes'].includes(kind),
  );
  return first !== undefined && first === (node?.value as unknown as Step);
}

const worksBoxes = (steps: readonly Step[]): boolean =>
  steps.some(({ kind }) => kind === 'boxes' || kind === 'chart');

/** The first chain of a row, behind the ring at most; or the last, "ch 1, turn". */
function startsRow(steps: readonly Step[], node: Node | undefined): boolean {
  const at = steps.indexOf(node?.value as unknown as Step);
  const isWork = ({ kind }: Step): boolean => ['work', 'group', 'repeat', 'boxes'].includes(kind);
  const before = steps.slice(0, at);
  const behind = steps.slice(at + 1);
  return (
    (!before.some(isWork) && (isFirstMade(steps, node) || before.some((s) => s.kind === 'join'))) ||
    (!behind.some(isWork) && behind.every(({ kind }) => kind === 'turn' || kind === 'remark'))
  );
}

/** All places named in these words, at any depth. */
function placesIn(value: unknown): Place[] {
  if (Array.isArray(value)) return value.flatMap(placesIn);
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(placesIn);
  return 'pick' in value && 'nouns' in value ? [value as Place, ...inner] : inner;
}

/** Why the words say the same, or nothing false, with the other number. */
export function whyTrue({ path, placed, value }: WrittenNumber, other: number): Free {
  const step = path.findLast(({ key }) => key === 'steps');
  if (step?.kind === 'work' && path.at(-2) === step && path.at(-1)?.key === 'n') {
    const { place } = step.value as unknown as WorkStep;
    const n = place?.each === false ? place.n?.values[0] : null;
    if (value === 1 && n === other)
      return '"2 dc in next 2 sts" says the same as "dc in next 2 sts"';
  }
  if (path[0]?.key !== 'counts' || path.at(-1)?.key !== 'chains') return null;
  const count = path[0].value as unknown as StatedCount;
  const { counts } = placed.instruction;
  if (counts.some(({ chains }) => chains?.values.includes(other))) return null;
  const isTrue = placed.rows.every(({ tally }) =>
    tally.spaces.some(({ chains, n }) => chains === other && n === count.n.values[0]),
  );
  return isTrue ? 'the row has as many spaces of that length too' : null;
}
