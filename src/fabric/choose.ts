import { MADE } from './attempt.ts';
import { chooseCount } from './chosen-count.ts';
import type { Hands } from './hands.ts';
import { mark, restore } from './mark.ts';
import { type Need, type PartRun, type PartSetting, runPart } from './part.ts';
import type { Choices } from './readings.ts';
import { AS_BENEATH } from './supposed.ts';

/** Fewer rows that do not come out is better; then fewer that read otherwise than their sisters. */
const scoreOf = (run: PartRun): number => {
  if (run.isCut) return Number.POSITIVE_INFINITY;
  let score = 0;
  for (const row of run.rows) {
    // No reading is better for leaving a count aside.
    const isAside = row.stated.some(({ compared }) => !compared);
    if (row.verdict === 'mismatch' || row.verdict === 'unread' || isAside) score += 1000;
  }
  // A count that is met only otherwise speaks louder than a row that does not come out.
  for (const need of run.needs) score += need.local ? 1 : need.proven ? 3000 : 10;
  return score + unlike(run).length;
};

/**
 * Start chains read by custom, where the part's count has the chains skipped at its start otherwise:
 * makers count both alike, if the rows come out so.
 */
function unlike({ asked }: PartRun): Need[] {
  const all = [...asked.values()];
  const skipped = all.find(({ doubt }) => doubt.startsWith('skipped chains'));
  if (!skipped || skipped.reading === skipped.custom) return [];
  const reading = skipped.reading === 'do not count' ? 'does not count' : 'counts';
  return all
    .filter((start) => start.doubt.startsWith('start-chain') && start.reading === start.custom)
    .filter((start) => start.reading !== reading)
    .map((start) => ({ ...start, reading, local: true, proven: false }));
}

/** At most so many joint readings of a part are tried. */
const MOST_RUNS = 8;

/** The part in the reading that comes out best; `choices` differ from custom only where needed. */
export function workPart(
  hands: Hands,
  setting: PartSetting,
  usual: Choices,
): { run: PartRun; choices: Choices; untried: number } {
  const start = mark(hands);
  const historyLength = hands.history.length;
  const joinedLength = hands.joined.length;
  const originsLength = hands.bench.origins.length;
  const again = (choices: Choices, former: PartRun | null = null): PartRun => {
    restore(hands, start);
    hands.history.length = historyLength;
    hands.joined.length = joinedLength;
    hands.bench.origins.length = originsLength;
    return runPart(hands, setting, choices, former);
  };
  let choices = usual;
  let run = chooseCount(hands, runPart(hands, setting, choices), () => again(usual));
  let last = choices;
  let score = scoreOf(run);
  let runs = 1;
  const wholes = wholeReadings(run);
  const tried = new Set<string>();
  for (
    let candidate = nextCandidate(run, choices, tried);
    candidate && score > 0 && runs < MOST_RUNS && !run.isCut;
    runs++
  ) {
    const trial = new Map(choices).set(candidate.doubt, candidate.reading);
    last = trial;
    const other = again(trial);
    if (scoreOf(other) <= score - leastGain(candidate.doubt)) {
      run = other;
      choices = trial;
      score = scoreOf(other);
    }
    candidate = nextCandidate(run, choices, tried);
  }
  // A reading of the whole part that custom brought up may have been lost on the way to another.
  for (const { doubt, reading } of score > 0 && !run.isCut ? wholes : []) {
    if (tried.has(`${doubt}=${reading}`)) continue;
    const trial = new Map(usual).set(doubt, reading);
    last = trial;
    const other = again(trial);
    if (scoreOf(other) > score - leastGain(doubt)) continue;
    run = other;
    choices = trial;
    score = scoreOf(other);
  }
  const untried = score > 0 && nextCandidate(run, choices, tried) ? 1 : 0;
  for (const doubt of [...run.carried].slice(0, MOST_CARRIED)) {
    const trial = new Map(choices).set(doubt, MADE);
    if (faultsIn(run) < 2) break;
    last = trial;
    const other = again(trial);
    if (faultsIn(other) < faultsIn(run)) {
      run = other;
      choices = trial;
    }
  }
  const supposed = supposedIn(run, choices, again);
  if (supposed) {
    ({ run, choices } = supposed);
    last = supposed.last;
  }
  const isDoubtful = !run.isCut && run.rows.some(({ verdict }) => verdict === 'mismatch');
  if (isDoubtful) {
    const former = run;
    run = again(choices, former);
    last = choices;
    const behind = supposedIn(run, choices, (other) => again(other, former));
    if (behind) ({ run, choices, last } = behind);
    if (last !== choices) run = again(choices, former);
  } else if (last !== choices) run = again(choices);
  return { run, choices, untried };
}

/**
 * Rows that were not understood and that rows behind them show to leave what they stand on; `last`: what was
 * worked last.
 */
function supposedIn(
  run: PartRun,
  choices: Choices,
  again: (choices: Choices) => PartRun,
): { run: PartRun; choices: Choices; last: Choices } | null {
  const { openings } = run.supposing;
  if (openings.size === 0 || run.isCut || !run.rows.some(isUnchecked)) return null;
  const withAll = new Map([
    ...choices,
    ...[...openings].map((name) => [name, AS_BENEATH] as const),
  ]);
  const all = again(withAll);
  if (all.rows.length !== run.rows.length) return { run, choices, last: withAll };
  const { borneOut, refuted } = all.supposing;
  const kept = [...openings].filter((name) => borneOut.has(name) && !refuted.has(name));
  if (all.isCut || kept.length === 0) return { run, choices, last: withAll };
  if (kept.length === openings.size) return { run: all, choices: withAll, last: withAll };
  const withKept = new Map([...choices, ...kept.map((name) => [name, AS_BENEATH] as const)]);
  return { run: again(withKept), choices: withKept, last: withKept };
}

const isUnchecked = ({ verdict }: PartRun['rows'][number]): boolean => verdict === 'unchecked';

/**
 * A ch 3 that each round is joined to counts as a stitch, by custom and by the join. That in this part it does
 * not must be shown by two rows at least: one may have a wrong count.
 */
const leastGain = (doubt: string): number => (doubt === 'start-chain 3 joined to' ? 2000 : 1);

/** Other readings of doubts that only all of the part can settle. */
const wholeReadings = ({ asked }: PartRun): { doubt: string; reading: string }[] =>
  [...asked.values()].flatMap(({ doubt, whole, alternatives }) =>
    whole ? alternatives.map((reading) => ({ doubt, reading })) : [],
  );

/** At most so many wrong counts are tried as what is not worked on, where rows behind come out on both. */
const MOST_CARRIED = 3;

/** Instructions with a row that does not come out, or only otherwise than its sisters. */
const faultsIn = ({ rows, needs, isCut }: PartRun): number =>
  isCut
    ? Number.POSITIVE_INFINITY
    : new Set(rows.flatMap((row) => (row.verdict === 'mismatch' ? [row.instruction] : []))).size +
      needs.filter(({ local }) => !local).length;

/** Readings that rows needed come first, then other readings of doubts that arose at all. */
function nextCandidate(run: PartRun, choices: Choices, tried: Set<string>): Need | null {
  const misfits = run.rows.some((row) => row.verdict === 'mismatch');
  const open: Need[] = [...run.needs, ...unlike(run)];
  if (misfits) {
    for (const asked of run.asked.values()) {
      for (const reading of asked.alternatives) open.push({ ...asked, reading, proven: false });
    }
  }
  for (const need of open) {
    const key = `${need.doubt}=${need.reading}`;
    if (tried.has(key) || choices.get(need.doubt) === need.reading) continue;
    // A note, a join or other rows' own words have settled it: one row's count does not unsettle it.
    const settled = run.settled.get(need.doubt);
    if (settled && settled.reading !== need.reading) continue;
    tried.add(key);
    return need;
  }
  return null;
}
