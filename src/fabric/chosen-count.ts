/**
 * "Chain a multiple of 6 plus 3": the number is the maker's, so the rows are worked on some number of
 * repeats. Where they state counts, it is the number that these ask for.
 */
import type { ChainStep, Multiple } from '../notation/index.ts';
import type { RowRecord } from './fabric.ts';
import { fact, type Hands, spanAt } from './hands.ts';

/** Repeats that are worked: odd, so that a pattern which needs an even number of them does not fit by luck. */
const REPEATS = 5;
/** At least so many stitches, and of wide repeats fewer. */
const LEAST = 16;
const WIDE = 30;

const usualTimes = ({ of }: Multiple): number => {
  if (of >= WIDE) return REPEATS - 2;
  const times = Math.max(REPEATS, Math.ceil(LEAST / of));
  return times % 2 === 0 ? times + 1 : times;
};

/** How many chains are made where the words tell only their multiple; `null` where nothing tells any. */
export function chosenCount(hands: Hands, step: ChainStep): number | null {
  const { multiple } = step;
  if (!multiple) return null;
  const span = spanAt(hands, step);
  const usual = usualTimes(multiple) * multiple.of + multiple.plus;
  const { chosen } = hands.bench;
  const chains = chosen.has(span.from) ? (chosen.get(span.from) ?? null) : usual;
  if (chains === null) return null;
  const times = Math.floor((chains - multiple.plus) / multiple.of);
  fact(hands, { kind: 'chosen-count', chains, times, multiple, ...span });
  return chains;
}

/** Chains to turn that a multiple of stitches may leave unsaid. */
const TO_TURN = [1, 2, 3];

interface Run {
  readonly rows: readonly RowRecord[];
  readonly isCut: boolean;
}

/**
 * The number of chains on which the part comes out best is kept in the bench: the usual one, with chains
 * to turn that the words left unsaid, or so many that the first stated count is met. If no number meets
 * the counts, none is taken.
 */
export function chooseCount<R extends Run>(hands: Hands, first: R, again: () => R): R {
  const open = first.rows.flatMap(({ facts }) => facts).find(isChosen);
  const { chosen } = hands.bench;
  if (!open || chosen.has(open.from) || faultsOf(first) === 0) return first;
  const { multiple, chains } = open;
  let best = { run: first, chains: chains as number | null };
  let worked = first;
  const tryOn = (n: number | null): R => {
    chosen.set(open.from, n);
    worked = again();
    if (faultsOf(worked) < faultsOf(best.run)) best = { run: worked, chains: n };
    return worked;
  };
  if (!multiple.told) for (const n of TO_TURN) if (faultsOf(best.run) > 0) tryOn(chains + n);
  const asked = countOff(best.run.rows);
  if (asked) {
    // One repeat more tells how much a repeat adds to the count.
    const start = best.chains ?? chains;
    const next = tryOn(start + multiple.of).rows.find((row) => isSameRow(row, asked.row));
    const gain = next ? madeBy(next, asked.at) - asked.made : 0;
    const times = gain > 0 ? (asked.stated - asked.made) / gain : 0;
    const n = start + times * multiple.of;
    if (Number.isInteger(times) && n > multiple.plus && n < MOST_CHAINS) tryOn(n);
    if (countOff(best.run.rows)?.at === asked.at) tryOn(null);
  }
  chosen.set(open.from, best.chains);
  return worked === best.run ? best.run : again();
}

const MOST_CHAINS = 2000;

const isChosen = (fact: RowRecord['facts'][number]) => fact.kind === 'chosen-count';

const faultsOf = ({ rows, isCut }: Run): number =>
  isCut ? Number.POSITIVE_INFINITY : rows.filter(({ verdict }) => verdict === 'mismatch').length;

/** The first stated count that differs, and what was made. */
function countOff(rows: readonly RowRecord[]) {
  for (const row of rows) {
    for (const fact of row.facts)
      if (fact.kind === 'count')
        return { row, at: fact.from, stated: fact.value, made: fact.computed };
  }
  return null;
}

const isSameRow = (row: RowRecord, than: RowRecord): boolean =>
  row.instruction === than.instruction && row.from === than.from;

/** What the count at this place comes to in another run: told by the fact, or met. */
function madeBy({ facts, stated }: RowRecord, at: number): number {
  for (const fact of facts) if (fact.kind === 'count' && fact.from === at) return fact.computed;
  return stated.find(({ span }) => span.from === at)?.n ?? 0;
}
