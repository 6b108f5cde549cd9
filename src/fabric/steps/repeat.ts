/** Repeats: so many times, or to the end, or as often as the row holds. */

import {
  type Ending,
  type Place,
  type RepeatStep,
  type Step,
  stemOf,
  type Until,
  type WorkStep,
} from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { COUNTED } from '../edge.ts';
import {
  atStart,
  countedSince,
  fact,
  guessNumber,
  type Hands,
  numberFor,
  remaining,
  remainingSpaces,
  spanAt,
} from '../hands.ts';
import { hasOthers, limitOf } from '../limit.ts';
import { type Mark, mark, restore } from '../mark.ts';
import { ask } from '../readings.ts';
import { noGroupAhead, passOver, seek, takeStitch } from '../take.ts';
import { bareBehindSkip } from './bare-behind-skip.ts';
import { beforeClosed } from './close-space.ts';
import { beforeTopToo, throughLast } from './last.ts';
import { cutShort, endsInPass, leavesSkip, stopsAtEnding } from './last-pass.ts';
import { shellBehindSkip } from './shell-behind-skip.ts';

/** Works the repeat. True: what follows it in the list has been worked too. */
export function doRepeat(hands: Hands, told: RepeatStep, row: RowContext, here: Here): boolean {
  const flat = firstPartAgain(hands, told, here);
  if (flat) {
    row.walk(hands, flat, row, { from: here.i, top: here.top });
    return true;
  }
  const step = lastOfEach(bareBehindSkip(hands, shellBehindSkip(hands, told)));
  if (hasLostStar(step) && hands.statedStitches < 0) guessNumber(hands);
  const turned = chainBehindEnding(step, here);
  if (turned) {
    row.walk(hands, turned, row, { from: here.i, top: here.top });
    return true;
  }
  const times = totalTimes(hands, step, here);
  if (times === 'to end') return toEnd(hands, step, row, here);
  const most = hands.bench.limit.most;
  if (times > most) {
    fact(hands, { kind: 'limit', what: 'repeat', ...spanAt(hands, step) });
    hands.loose = true;
    return false;
  }
  for (let pass = 1; pass <= times; pass++) {
    const last = pass === times && (step.again || times > 1 || step.ending?.kind === 'at');
    const own = last ? { ...step, steps: withoutLastChain(step, here) } : step;
    onePass(hands, own, row, last);
  }
  return false;
}

/**
 * "*Dc in next st, ch 1, rep from * once, tr in next st, rep from * around": the second order may mean all
 * since the star, or once more what the first one did. The row's steps in the latter reading, else `null`.
 */
function firstPartAgain(hands: Hands, step: RepeatStep, here: Here): readonly Step[] | null {
  const [first] = step.steps;
  const isShared =
    step.mark === '*' && first?.kind === 'repeat' && first.mark === '*' && first.from === step.from;
  if (!isShared) return null;
  const reading = ask(hands.readings, {
    doubt: 'rep from * twice over',
    custom: 'all since the star',
    alternatives: ['the first part'],
    local: true,
    ...spanAt(hands, step.order),
  });
  if (reading === 'all since the star') return null;
  const { times, ending, order } = step;
  const again: RepeatStep = { ...first, times, ending, order, again: true };
  const { steps, i } = here;
  return [...steps.slice(0, i), ...step.steps, again, ...steps.slice(i + 1)];
}

/** "(Sc 3, 2 sc in each of last 3 sts) twice": the last of a pass are its next ones. */
function lastOfEach(step: RepeatStep): RepeatStep {
  const { times } = step;
  if (times.kind !== 'times' || step.again || !step.steps.some(inLast)) return step;
  const steps = step.steps.map((inner) =>
    inLast(inner) ? { ...inner, place: { ...inner.place, pick: 'next' as const } } : inner,
  );
  return { ...step, steps };
}

const inLast = (step: Step): step is WorkStep & { place: Place } =>
  step.kind === 'work' &&
  step.place?.pick === 'last' &&
  !step.place.of &&
  step.place.row === null &&
  (step.place.nouns[0]?.kind ?? 'stitch') === 'stitch';

/** "…, ending with sc in last st, ch 1, turn": the chain is the next row's, and not of the ending. */
function chainBehindEnding(step: RepeatStep, here: Here): readonly Step[] | null {
  const { ending } = step;
  const next = here.steps[here.i + 1];
  if (ending?.kind !== 'with' || !here.top || next?.kind !== 'turn') return null;
  const chain = ending.steps.at(-1);
  if (chain?.kind !== 'chain' || ending.steps.length < 2) return null;
  const short: RepeatStep = { ...step, ending: { ...ending, steps: ending.steps.slice(0, -1) } };
  return [...here.steps.slice(0, here.i), short, chain, ...here.steps.slice(here.i + 1)];
}

/** Passes in all; "to end" where the row decides. */
function totalTimes(hands: Hands, step: RepeatStep, here: Here): number | 'to end' {
  const { times } = step;
  if (times.kind === 'until') return timesInRing(hands, times.until) ?? 'to end';
  if (times.kind === 'missing') return missingTimes(hands, step, here);
  const n = numberFor(hands, times.n) ?? 0;
  if (step.again) return n;
  if (times.more !== null) return times.more ? n + 1 : n;
  const reading = ask(hands.readings, {
    doubt: 'rep from * n times',
    custom: 'n more',
    alternatives: ['n in all'],
    local: false,
    ...spanAt(hands, times),
  });
  return reading === 'n more' ? n + 1 : n;
}

/**
 * "Cluster in ring, *ch 4, cluster in ring; rep from * until 8 clusters in all are made": a ring has no end, and
 * so the number tells how often; what stands before the star is the first of them. `null`: no number.
 */
function timesInRing(hands: Hands, until: Until): number | null {
  if (until.kind !== 'end' || !until.word.startsWith('until') || !isRingOfAny(hands)) return null;
  const n = Number(/^until (?:there are |you have )?(\d{1,3}) [a-z]/.exec(until.word)?.[1] ?? 0);
  const first = beginsWithStitch(hands) ? 1 : 0;
  return n > first ? n - first : null;
}

/** Has the row made a stitch, and not only the chain that opens it? */
function beginsWithStitch({ nodes, rowFrom, bench }: Hands): boolean {
  for (let id = rowFrom; id < nodes.n; id++) {
    const kind = bench.kinds.kinds[nodes.kind[id] ?? 0];
    if (kind?.counted && kind.class !== 'start') return true;
  }
  return false;
}

/**
 * "*Tr in ring, ch 1; rep from * until there are 15 tr in ring, ch 1, join": no chain is made upon another, so
 * that the last pass leaves it to the words behind.
 */
function withoutLastChain({ steps, times }: RepeatStep, here: Here): readonly Step[] {
  const next = here.steps.slice(here.i + 1).find(({ kind }) => kind !== 'remark');
  const last = steps.at(-1);
  const told = times.kind === 'until' && next?.kind === 'chain' && last?.kind === 'chain';
  return told && steps.length > 1 ? steps.slice(0, -1) : steps;
}

/** No number is written: as often as the row holds, or once. */
function missingTimes(hands: Hands, step: RepeatStep, here: Here): number | 'to end' {
  const star = step.mark !== '' && step.mark !== '(' && step.mark !== '[' && step.mark !== '{';
  const orderly = step.order.to > step.order.from;
  const reading = ask(hands.readings, {
    doubt: 'repeat without a number',
    custom: star || orderly || here.i === here.steps.length - 1 ? 'to the end' : 'once',
    alternatives: star || orderly ? ['once'] : leavesRest(here) ? [] : ['once', 'to the end'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'once' ? 1 : 'to end';
}

/** "(Sc in first st, inc); *(sc in next st, inc); rep from * around": another repeat takes the rest. */
const leavesRest = ({ steps, i, top }: Here): boolean =>
  top &&
  steps
    .slice(i + 1)
    .some(
      (step) =>
        step.kind === 'repeat' && step.times.kind === 'until' && step.order.to > step.order.from,
    );

/** One pass; the last one ends as the words say. */
function onePass(hands: Hands, step: RepeatStep, row: RowContext, last: boolean): void {
  const { into: outer, usedAtPass } = hands;
  // "*2 sc in same st; rep from * to end": the same for each pass, not for all of them.
  // "Dc in 1st ch, *ch 3, 2 dc in same ch; rep from * 6 times": all in that one chain.
  // "Cluster in next lp, (ch 3, cluster in same lp) twice": in that loop, however often.
  const counted = step.times.kind === 'times';
  const held = counted && (hands.edge.kind === 'foundation' || step.steps.some(makesGap));
  const stays = step.steps.every(staysInPlace) && hands.into === null && !hands.standing;
  if (stays && !held) hands.last = null;
  hands.repeats++;
  hands.usedAtPass = hands.used;
  row.walk(hands, last ? lastPass(hands, step) : step.steps, row, { from: 0, top: false });
  hands.usedAtPass = usedAtPass;
  hands.repeats--;
  hands.into = outer;
}

function lastPass(hands: Hands, step: RepeatStep): readonly Step[] {
  const { ending, steps } = step;
  if (!ending) return steps;
  switch (ending.kind) {
    case 'at': {
      const stop = steps.findIndex((inner) => inner.kind === 'mark' && inner.mark === ending.mark);
      return stop < 0 ? steps : steps.slice(0, stop);
    }
    case 'in':
      return withLastIn(steps, ending.place);
    case 'omit':
      return (
        withFewer(hands, steps, ending.steps) ??
        withoutLast(steps, Math.max(1, ending.steps.length))
      );
    case 'with':
      return endsWith(hands, ending, steps);
  }
}

/** "Ending last rep in top of tch": the last stitches of the pass go there. */
function withLastIn(steps: readonly Step[], place: Place): readonly Step[] {
  const at = steps.findLastIndex(({ kind }) => kind === 'work' || kind === 'group');
  const last = steps[at];
  return last?.kind === 'work' || last?.kind === 'group'
    ? steps.with(at, { ...last, place })
    : steps;
}

/** "*…, 4 tr in next sc; rep from * omitting 1 tr at end of last rep": three; `null` where none are so many. */
function withFewer(
  hands: Hands,
  steps: readonly Step[],
  [omitted, more]: readonly Step[],
): readonly Step[] | null {
  const at = steps.findLastIndex(({ kind }) => kind !== 'remark');
  const last = steps[at];
  if (last?.kind !== 'work' || omitted?.kind !== 'work' || more || omitted.place) return null;
  if (last.stitch.stem !== omitted.stitch.stem || last.place === null || last.place.n) return null;
  const n = (numberFor(hands, last.n) ?? 1) - (numberFor(hands, omitted.n) ?? 1);
  if (n < 1) return null;
  const { from, to } = last;
  return steps.with(at, { ...last, n: { values: [n], from, to } });
}

/** Without the last n steps of work; what is said between them is none. */
function withoutLast(steps: readonly Step[], n: number): readonly Step[] {
  let end = steps.length;
  for (let left = n; left > 0 && end > 0; end--) if (steps[end - 1]?.kind !== 'remark') left--;
  return steps.slice(0, end);
}

const LAST_OF_MANY = 'replaces the last of several';

/** "…; rep from *" in a row that has no star: what is repeated is a guess, which only a count proves. */
const hasLostStar = ({ mark, again, steps: [first], from }: RepeatStep): boolean =>
  mark === '*' && !again && first !== undefined && first.kind !== 'repeat' && first.from === from;

/** "Ending to correspond": it adds nothing. */
const isTalk = ({ steps }: Ending & { kind: 'with' }): boolean =>
  steps.every(({ kind }) => kind === 'remark');

/**
 * Where what the ending replaces begins. "…, ch 4, 1 sc, ch 3, 1 sc in next dc; rep from *, ending to correspond":
 * all that goes into that place is left to the join.
 */
function replacedFrom(steps: readonly Step[], ending: Ending & { kind: 'with' }): number {
  let at = steps.length - ending.steps.length;
  if (!isTalk(ending)) return at;
  const isOpen = (step: Step | undefined): boolean =>
    step?.kind === 'work' && !step.place && !step.until;
  while (at > 1 && steps[at - 1]?.kind === 'chain' && isOpen(steps[at - 2])) at -= 2;
  return at;
}

/** The pass with one stitch less in its last places, for the one stitch of the ending; `null`: not meant. */
function withOneLess(
  hands: Hands,
  steps: readonly Step[],
  [end, more]: readonly Step[],
): readonly Step[] | null {
  const at = steps.findLastIndex(({ kind }) => kind !== 'remark');
  const last = steps[at];
  if (last?.kind !== 'work' || end?.kind !== 'work' || more || end.n || end.place?.n) return null;
  if (last.n || last.stitch.stem !== end.stitch.stem || last.place?.pick !== 'next') return null;
  const many = numberFor(hands, last.place.n);
  if (many === null || many < 2) return null;
  const { from, to } = last;
  return steps.with(at, { ...last, place: { ...last.place, n: { values: [many - 1], from, to } } });
}

/** "Ending with X" adds X, "ending last rep with X" puts it in place of the last step; both occur. */
function endsWith(
  hands: Hands,
  ending: Ending & { kind: 'with' },
  steps: readonly Step[],
): readonly Step[] {
  // "…, dc in next 3 dc) across, end last rep with dc in top of ch 3": the last of the three.
  const shorter = ending.last ? withOneLess(hands, steps, ending.steps) : null;
  const replaces = ending.last || isTalk(ending);
  const readings = replaces ? ['replaces', 'adds'] : ['adds', 'replaces'];
  const [custom, ...alternatives] = shorter ? [LAST_OF_MANY, ...readings] : readings;
  const reading = ask(hands.readings, {
    doubt: 'ending with',
    custom: custom!,
    alternatives,
    local: true,
    ...spanAt(hands, ending),
  });
  if (shorter && reading === LAST_OF_MANY) return [...shorter, ...ending.steps];
  const kept = reading === 'adds' ? steps.length : replacedFrom(steps, ending);
  return [...withoutItsChain(steps.slice(0, Math.max(0, kept)), ending), ...ending.steps];
}

/**
 * "*Dc in next dc, ch 3; rep from * around, ending with ch 1, hdc in 3rd ch": no chain is made upon another,
 * so that the ending's stands for that of the pass; what is skipped beneath it still is.
 */
function withoutItsChain(
  steps: readonly Step[],
  ending: Ending & { kind: 'with' },
): readonly Step[] {
  if (ending.steps[0]?.kind !== 'chain') return steps;
  const last = steps.findLastIndex(({ kind }) => kind !== 'skip' && kind !== 'remark');
  return steps[last]?.kind === 'chain' ? steps.toSpliced(last, 1) : steps;
}

/**
 * "*(Sc, hdc) in next sc; rep from * around" over such pairs: as "(sc, hdc) in each sc", in those that
 * are so called.
 */
function worksIntoNamed(hands: Hands, { steps, ending }: RepeatStep): boolean {
  const [only] = steps;
  const several = only?.kind === 'group' && only.place.pick === 'next' && only.place.n === null;
  return several && steps.length === 1 && ending === null && hasOthers(hands, only.place);
}

interface Passes {
  readonly count: number;
  /** Places that one pass takes. */
  readonly per: number;
  /** States before the last passes, newest last. */
  readonly before: Mark[];
}

/** As many passes as leave room for the ending and for what follows. */
function toEnd(hands: Hands, step: RepeatStep, row: RowContext, here: Here): boolean {
  if (hands.standing && endsWithItsChain(hands, step)) hands.standing = false;
  passToNamed(hands, step);
  standOnFirst(hands, step);
  const outerLimit = hands.limit;
  const told = step.times.kind === 'until' ? step.times.until : null;
  if (told?.kind === 'last') hands.stopsBefore = numberFor(hands, told.n) ?? 0;
  const until = throughLast(hands, told, here) ? null : beforeTopToo(hands, told, here);
  const closed = beforeClosed(hands, step);
  hands.limit = Math.min(hands.limit, limitOf(hands, until), closed);
  const have = remaining(hands);
  const usedBefore = hands.used;
  const madeBefore = countedSince(hands, hands.rowFrom);
  const named = worksIntoNamed(hands, step);
  hands.namedOnly = named;
  const passes = workPasses(hands, step, row);
  if (cameRound(hands, passes, { usedBefore, made: madeBefore }))
    restore(hands, passes.before.pop()!);
  // The loop in which the round began, from the stitch that had closed it, is taken by its chain.
  if (!step.ending && closed < outerLimit && remainingSpaces(hands) === 0) hands.pos = hands.edge.n;
  // Those of another name behind the last of them are passed as those between are.
  if (named) hands.pos = Math.max(hands.pos, hands.limit);
  hands.namedOnly = false;
  leadsToGroup(hands, step, row);
  const finish = (): void => {
    hands.limit = outerLimit;
    row.walk(hands, here.steps, row, { from: here.i + 1, top: here.top });
  };
  const tail = hands.limit === outerLimit;
  const noteRest = (): void => {
    if (!tail && !step.ending) noteRemainder(hands, step, { ...passes, have, tail });
  };
  const skips = passes.count > 0 && leavesSkip(hands, step, row, here);
  noteRest();
  const rounds = hands.edge.ring && usedBefore > 0 && usedBefore + remaining(hands) === passes.per;
  const full = mark(hands);
  const marks = [full, ...[...passes.before].reverse()];
  const whole = passes.count > 0 && here.top;
  if (whole && (stopsAtEnding(hands, step, row) || endsInPass(hands, step, row, marks))) {
    finish();
    return true;
  }
  const cut =
    passes.count > 0 &&
    !skips &&
    cutShort(hands, step, row, { here, madeBefore: madeBefore > 0, rounds });
  const candidates = [...(cut ? [mark(hands)] : []), full, ...[...passes.before].reverse()];
  const again = (): void => {
    restore(hands, passes.before[0] ?? full);
    for (let pass = 0; pass < passes.before.length; pass++) onePass(hands, step, row, false);
    noteRest();
  };
  bestFinish(hands, candidates, { again, finish: () => finishRow(hands, finish, step, row) });
  if (until?.kind === 'length') hands.edge = { ...hands.edge, open: true };
  else if (tail && !hands.into) noteRemainder(hands, step, { ...passes, have, tail });
  return true;
}

/**
 * "Ch 3, tr in each tr with ch 1 between" from the middle of a shell: its other stitches and the space
 * behind it are passed, as the stitches that are named lie behind them.
 */
function passToNamed(hands: Hands, { steps, times }: RepeatStep): void {
  const until = times.kind === 'until' ? times.until : null;
  if (until?.kind !== 'place' || until.place.nouns[0]?.kind !== 'space') return;
  const [first] = steps;
  const noun = first?.kind === 'work' ? first.place?.nouns[0] : null;
  const stem = noun?.kind === 'stem' && noun.stem ? stemOf(noun.stem, hands.bench.terms) : null;
  const { edge, nodes, bench } = hands;
  if (stem === null || edge.kind !== 'row') return;
  const at = seek(
    hands,
    (i) =>
      edge.type[i] === COUNTED &&
      bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0]?.stem === stem,
  );
  if (at > hands.pos) passOver(hands, at);
}

/**
 * "*Ch 6, sc in next sc; rep from * around, ending with ch 3, tr in first sc": the first chain stands on the
 * stitch that the round comes back to.
 */
function standOnFirst(hands: Hands, { steps, ending }: RepeatStep): void {
  const { edge } = hands;
  const [chain] = steps;
  const last = ending?.kind === 'with' ? ending.steps.at(-1) : undefined;
  const loops = chain?.kind === 'chain' && (numberFor(hands, chain.n) ?? 1) >= SHORTEST_TURNED;
  if (!loops || !edge.ring || edge.kind !== 'row' || edge.spaces > 0 || !atStart(hands)) return;
  const closes = last?.kind === 'work' && last.stitch.stem !== 'ss' && last.place?.pick === 'first';
  if (!closes || last.place?.nouns[0]?.kind !== 'stem' || hands.first !== null) return;
  takeStitch(hands, 'passed');
}

/** "Sl st to centre of next lp, *ch 7, sc in next lp; rep from * around, ending with ch 7, join": to there. */
function endsWithItsChain(hands: Hands, { steps, ending }: RepeatStep): boolean {
  const [chain] = steps;
  const last = ending?.kind === 'with' ? ending.steps.at(-1) : undefined;
  if (chain?.kind !== 'chain' || last?.kind !== 'chain' || !hands.edge.ring) return false;
  return numberFor(hands, chain.n) === numberFor(hands, last.n);
}

/**
 * "Ch 4, dc in same place, *ch 7, 2 dc over next dc of rnd 2; rep from * around": where only places of an
 * earlier row are worked, the last of them is the one over which the round began.
 */
function cameRound(
  hands: Hands,
  { before, count }: Passes,
  { usedBefore, made }: { readonly usedBefore: number; readonly made: number },
): boolean {
  const last = before.at(-1);
  if (!last || count < 2 || made === 0 || hands.used !== usedBefore || hands.tookSpace)
    return false;
  return hands.earlier.size > 0 && countedSince(hands, last.nodeCount) === made;
}

/** Full passes until one does not fit. */
function workPasses(hands: Hands, step: RepeatStep, row: RowContext): Passes {
  const before: Mark[] = [];
  let count = 0;
  let per = 0;
  let entries = 0;
  const most = hands.bench.limit.most;
  while (count < most) {
    // Far from the end nothing can go wrong: marks are kept for the last passes only.
    const near = entries === 0 || hands.limit - hands.pos < 5 * entries + 5;
    const start = near ? mark(hands) : null;
    const { pos, inner, used, missing, edge, standing, loose, earlier, cameHome } = hands;
    const facts = hands.facts.length;
    const made = count === 0 && isRingOfAny(hands) ? countedSince(hands, hands.rowFrom) : -1;
    onePass(hands, step, row, false);
    if (made >= 0 && hands.edge.kind === 'into') {
      fillRing(hands, step, row, countedSince(hands, hands.rowFrom) - made);
      break;
    }
    const moved =
      hands.pos !== pos ||
      hands.inner !== inner ||
      hands.earlier !== earlier ||
      hands.cameHome !== cameHome ||
      (standing && !hands.standing && count === 0);
    // Several passes along a chain end with it; one that took a whole side may take the other too.
    const wraps = count > 1 && edge.kind === 'foundation' && hands.edge !== edge;
    // "… to last 3-dc group": into the group itself the pass may come, and that is not meant.
    const beyond = edge === hands.edge && hands.pos > hands.limit && endsAtPlace(step);
    // An ending takes the place of the last pass.
    const ended = hands.cameHome && step.ending !== null;
    const misfits = hands.missing > missing || ended || lacksPlace(hands, facts);
    if (start && (misfits || !moved || wraps || beyond)) {
      // "*Ch 7, 2 dc over next dc of 2nd row": how often is not known where the places lie elsewhere.
      const elsewhere = !moved && hands.loose && !loose;
      restore(hands, start);
      if (elsewhere) {
        hands.loose = true;
        hands.edge = { ...hands.edge, open: true };
      }
      break;
    }
    if (!moved) break;
    if (start) before.push(start);
    if (before.length > 4) before.shift();
    if (count++ === 0) per = hands.used - used;
    entries = Math.max(entries, hands.pos - pos);
    if (hands.edge.n === 0) break;
  }
  return { count, per, before };
}

const endsAtPlace = ({ times }: RepeatStep): boolean =>
  times.kind === 'until' && (times.until.kind === 'place' || endsAtGroup(times.until));

const endsAtGroup = (until: Until): boolean =>
  until.kind === 'last' && until.noun?.kind === 'group' && until.noun.word === 'group';

/**
 * "*Dc in each dc to 3-dc group, …; rep from * to last 3-dc group, …": the stitches up to that group are
 * worked as a pass begins.
 */
function leadsToGroup(hands: Hands, step: RepeatStep, row: RowContext): void {
  const until = step.times.kind === 'until' ? step.times.until : null;
  const [first] = step.steps;
  const stop = first?.kind === 'work' ? (first.place?.until ?? first.until) : null;
  if (!until || !first || !endsAtGroup(until) || stop?.kind !== 'place') return;
  if (remaining(hands) === 0) return;
  const start = mark(hands);
  row.walk(hands, [first], row);
  if (remaining(hands) > 0) restore(hands, start);
}

/** A ring holds any number of stitches. */
const isRingOfAny = ({ edge, foundation }: Hands): boolean =>
  edge.kind === 'into' || (edge.kind === 'foundation' && edge.ring && foundation?.joined === true);

/**
 * "*1 tr into ring, ch 1; rep from * to end (8 tr)": a ring has no end, so that only the count tells
 * how often; it proves nothing then.
 */
function fillRing(hands: Hands, step: RepeatStep, row: RowContext, per: number): void {
  const missing = hands.statedStitches - countedSince(hands, hands.rowFrom);
  if (per <= 0 || (hands.statedStitches >= 0 && (missing <= 0 || missing % per !== 0))) return;
  hands.loose = true;
  if (hands.statedStitches < 0) hands.edge = { ...hands.edge, open: true };
  for (let pass = missing / per; pass > 0; pass--) onePass(hands, step, row, false);
}

const lacksPlace = (hands: Hands, from: number): boolean =>
  hands.facts.slice(from).some((what) => what.kind === 'no-place');

/** The last pass, where it ends otherwise, and what stands behind the repeat. */
function finishRow(hands: Hands, finish: () => void, step: RepeatStep, row: RowContext): void {
  if (step.ending) onePass(hands, step, row, true);
  finish();
}

/**
 * Tries the finish after all passes, then after one or more fewer; the first that fits stays. A mark
 * can be gone back to, never forward: if none fits, the passes are worked `again`.
 */
function bestFinish(
  hands: Hands,
  candidates: readonly Mark[],
  { again, finish }: { readonly again: () => void; readonly finish: () => void },
): void {
  for (const candidate of candidates) {
    restore(hands, candidate);
    const { missing } = hands;
    const facts = hands.facts.length;
    finish();
    const misfits = hands.facts
      .slice(facts)
      .some((f) => f.kind === 'left' || f.kind === 'no-place');
    if (hands.missing === missing && !misfits) return;
  }
  again();
  finish();
}

/** Stitches left over because the repeat does not divide. */
function noteRemainder(
  hands: Hands,
  step: RepeatStep,
  passes: { count: number; per: number; have: number; tail: boolean },
): void {
  const left = remaining(hands);
  if (left === 0 || hands.edge.open || hands.leave || passes.per <= 1) return;
  if (left <= hands.passed && (hands.sought || noGroupAhead(hands))) return;
  // The passes divide, and what stands behind them does not fit: the row's end tells what is left.
  if (passes.tail && passes.have === passes.count * passes.per) return;
  // "*Sk 1, dc in next, ch 2; rep from * around": what is skipped before the join is left for it.
  if (passes.tail && hands.edge.ring && !endsWithSkip(step) && isSkippedInPass(hands, step, left)) {
    hands.leave = true;
    return;
  }
  if (hands.tookSpace && (left <= hands.passed || remainingSpaces(hands) === 0)) return;
  // "*Ch 5, sk 2, sc in next; rep from * across" turned: its first chain stands on the first stitch.
  if (left === 1 && !hands.edge.ring && opensRowWithChain(hands, step)) {
    hands.leave = true;
    return;
  }
  fact(hands, {
    kind: 'remainder',
    per: passes.per,
    // "*Shell in 2nd ch from hook, sl st in next ch*": what is passed at the hook is none of them.
    have: passes.have % passes.per === 0 ? passes.count * passes.per + left : passes.have,
    passes: passes.count,
    left,
    ...spanAt(hands, step),
  });
  hands.leave = true;
}

/** Is the chain of the first pass what the row begins with, long enough to be turned on? */
function opensRowWithChain({ edge, nodes, rowFrom, bench }: Hands, { steps }: RepeatStep): boolean {
  const [first] = steps;
  const isChain = bench.kinds.kinds[nodes.kind[rowFrom] ?? 0]?.class === 'chain';
  return (
    edge.kind === 'row' &&
    isChain &&
    first?.kind === 'chain' &&
    (first.n?.values[0] ?? 0) >= SHORTEST_TURNED
  );
}

/** Chains of a loop that can stand for a stitch and a space (common practice). */
const SHORTEST_TURNED = 3;

/** "*Sc in next sc, ch 8, sk next 6 sc": the last pass has said what its chain spans. */
function endsWithSkip({ steps }: RepeatStep): boolean {
  const chain = steps.findLastIndex(({ kind }) => kind === 'chain');
  const skip = steps.findLastIndex(({ kind }) => kind === 'skip');
  const works = (step: Step): boolean => step.kind === 'work' || step.kind === 'group';
  return skip > chain && !steps.slice(skip).some(works);
}

/** Is it what one skip of a pass takes, or all of them? */
function isSkippedInPass(hands: Hands, step: RepeatStep, left: number): boolean {
  let sum = 0;
  for (const inner of step.steps) {
    if (inner.kind !== 'skip') continue;
    const n = numberFor(hands, inner.place.n) ?? 1;
    if (n === left) return true;
    sum += n;
  }
  return sum === left;
}

const makesGap = (step: Step): boolean => step.kind === 'chain';

/** Works into "the same" place, or nowhere. */
const staysInPlace = (step: Step): boolean =>
  step.kind === 'work' || step.kind === 'group'
    ? step.place?.pick === 'same' && (step.kind === 'group' || step.alsoIn.length === 0)
    : step.kind === 'chain' || step.kind === 'remark' || step.kind === 'mark';
