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
  const first = path[0];
  if (first?.key === 'counts') return freeCount(first.value as unknown as StatedCount);
  const step = path.findLast(({ key }) => key === 'steps');
  if (!step) return 'no word that is worked';
  const held = heldIn(placed);
  if (step.kind === 'join') return freeJoin(number);
  if (step.kind === 'chain') return freeChain(number, held);
  if (path.at(-1)?.key === 'chains') return null;
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

const freeCount = (count: StatedCount): Free =>
  count.partial || count.unit === 'decrease' ? 'a number that is no total of the row' : null;

/** "3rd ch of beg ch-4": the 4 must be the chain that was made, the 3 tells how it is read. */
function freeJoin({ path, value }: WrittenNumber): Free {
  const last = path.at(-1);
  if (last?.key === 'chains') return null;
  const place = path.find(({ key }) => key === 'place')?.value as Place | undefined;
  const chains = place?.of?.nouns[0]?.chains?.values[0] ?? null;
  if (chains !== null && value === chains) return null;
  return 'the chain of a start chain that a join goes to: custom differs';
}

function freeWork(number: WrittenNumber, step: Node, held: Held): Free {
  const { stitch, place } = step.value as unknown as WorkStep;
  const last = number.path.at(-1);
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
  const upon = placed.next.length > 0 ? placesIn(placed.after) : [];
  const isNamed = (places: readonly Place[], isStart: boolean): boolean =>
    places.some(({ nouns }) =>
      nouns.some(
        ({ kind, chains }) =>
          (kind === 'start-chain') === isStart && chains?.values.includes(value) === true,
      ),
    );
  if (path.length === 2 && isFirstMade(steps, path[0]) && !isIdle(steps)) {
    const named = isNamed([...placesIn(steps), ...upon], true);
    return named ? null : 'a start chain, whose height custom decides';
  }
  if (held.chains || isNamed(upon, false)) return null;
  if (counts.some(({ chains }) => chains?.values.includes(value))) return null;
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

/** All places named in these words, at any depth. */
function placesIn(value: unknown): Place[] {
  if (Array.isArray(value)) return value.flatMap(placesIn);
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(placesIn);
  return 'pick' in value && 'nouns' in value ? [value as Place, ...inner] : inner;
}
