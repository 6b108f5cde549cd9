/** Skips: places left behind on purpose. They count as used and stay reachable by name. */
import type { Noun, Place, SkipStep } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { NAMED } from '../edge.ts';
import {
  atStart,
  guessNumber,
  type Hands,
  hasLeft,
  numberFor,
  remaining,
  spanAt,
} from '../hands.ts';
import { hasNext, limitOf } from '../limit.ts';
import { startChainEntry, takeNext } from '../next.ts';
import { gapsOf, nounOf } from '../noun.ts';
import { takePlace } from '../place.ts';
import { ask } from '../readings.ts';
import { isSlip } from '../shape.ts';
import { ofRest, toSkipped } from '../skipped.ts';
import { isSpace, nextSpace, noteStray, seek, takeStitch } from '../take.ts';
import { skipFromHook } from './from-hook.ts';
import { openLast } from './last.ts';

/** "Skip ch 3 to turn with": where it is no stitch, the words pass over what is no place anyway. */
function namesTurningChain(hands: Hands, place: SkipStep['place']): boolean {
  const noun = nounOf(place);
  // "Ch 1, sk ch just made": nothing but that chain is made yet, and no chain lies beneath.
  const low = hands.nodes.n === hands.rowFrom + 1 && hands.startChains.has(hands.rowFrom);
  if (noun.kind === 'chain' && place.n === null && low && hands.edge.spaces === 0)
    return hands.first === null && hands.edge.kind === 'row';
  const chains = numberFor(hands, noun.chains);
  if (noun.kind !== 'start-chain' && (noun.kind !== 'space' || chains === null)) return false;
  const ahead = seek(hands, (i) => isSpace(hands, i) && hands.edge.run[i] === chains);
  const entry = startChainEntry(hands);
  return ahead < 0 && (entry === null || hands.edge.type[entry] === NAMED);
}

/**
 * "Ch 2 (counts as first dc), skip st, dc in each st": the skip may tell of the place the chain has taken
 * already, as "skip first st" does.
 */
function namesItsOwn(hands: Hands, step: SkipStep): boolean {
  const { place } = step;
  // "Skip 1 st" does not say which; "skip next st" does.
  const isOne = place.n === null ? place.pick === 'this' : numberFor(hands, place.n) === 1;
  const { kind } = nounOf(place);
  if (!isOne || place.each || (kind !== 'stitch' && kind !== 'stem')) return false;
  // Nothing is made yet but the chain, and it leaves no space behind it.
  if (hands.first === null || hands.nodes.n !== hands.rowFrom + 1) return false;
  if (!hands.startChains.has(hands.rowFrom)) return false;
  const reading = ask(hands.readings, {
    doubt: 'skip behind the chain',
    custom: 'another stitch',
    alternatives: ['its own'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'its own';
}

/** "Ch 3, skip first 3 sts": the one that the chain stands on is the first of them. */
function ownOfFirst(hands: Hands, step: SkipStep): 0 | 1 {
  const { place } = step;
  if (place.pick !== 'first' || hands.first === null || nounOf(place).kind === 'space') return 0;
  // "Ch 5, skip first 3 sts": what it has of chains over its stitch lies behind that.
  const chain = hands.startChains.get(hands.rowFrom);
  if ((numberFor(hands, place.n) ?? 1) < 2 || !chain) return 0;
  if (hands.nodes.n !== hands.rowFrom + 1 + chain.n - chain.height) return 0;
  const reading = ask(hands.readings, {
    doubt: 'first stitches behind the chain',
    custom: 'its own too',
    alternatives: ['others'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'others' ? 0 : 1;
}

/** "Skip ch2" along the foundation chain: two of its chains, for there is no space in it. */
function alongChain(hands: Hands, place: Place): Place {
  const [noun] = place.nouns;
  const bare = noun?.kind === 'space' && noun.word === 'ch' && noun.chains !== null;
  if (!bare || hands.edge.kind !== 'foundation' || place.n || place.nouns.length > 1) return place;
  if (hands.edge.n - hands.pos < (numberFor(hands, noun.chains) ?? 0)) return place;
  return {
    ...place,
    pick: 'next',
    n: noun.chains,
    nouns: [{ ...noun, kind: 'chain', chains: null }],
  };
}

/** "Fasten off. Skip center 18 sts, join yarn in next st": of the row that the first side left. */
function onOtherSide(hands: Hands, { place }: SkipStep, { steps, i, top }: Here): boolean {
  if (!hands.fastened || !top || !atStart(hands) || nounOf(place).kind !== 'stitch') return false;
  const joins = steps
    .slice(i + 1, i + 4)
    .some((next) => next.kind === 'join' && next.yarn !== null);
  return joins && place.row === null && (numberFor(hands, place.n) ?? 0) >= remaining(hands);
}

/**
 * "Ch 5, sk next 5 hdc" worked again above itself: the chains stand where the stitches were, and as many of
 * them are passed.
 */
function passesChains(hands: Hands, { place }: SkipStep, row: RowContext): boolean {
  const n = numberFor(hands, place.n) ?? 1;
  const named = nounOf(place).kind === 'stem' || nounOf(place).kind === 'stitch';
  if (!row.again || n < 2 || !named || place.pick === 'each' || place.pick === 'last') return false;
  const { edge, pos } = hands;
  return pos < edge.n && isSpace(hands, pos) && edge.run[pos] === n;
}

export function doSkip(hands: Hands, step: SkipStep, row: RowContext, here: Here): void {
  if (passesChains(hands, step, row)) {
    hands.pos++;
    return;
  }
  if (onOtherSide(hands, step, here)) toSkipped(hands, null);
  const place = alongChain(hands, atStart(hands) ? ofRest(hands, step.place) : step.place);
  if (hands.into || skipFromHook(hands, step, here) || endsSpiral(hands, here)) return;
  const { last, first } = hands;
  // "Ch 3, skip first st": the chain has taken the first place already; the words only say so.
  // In a further pass, "*skip 1st sc, sc in each remaining sc of group", it is the first of what is ahead.
  const further = hands.repeats > 0 && hands.used > 1;
  const isFirst = place.pick === 'first' && first !== null && !further;
  // "Working in pattern, sk first sc of each row": told when all of the row is worked.
  if (isFirst && hands.pos >= hands.edge.n && hands.used > 2 && !hands.edge.ring)
    return guessNumber(hands);
  if (isFirst && numberFor(hands, place.n) === null) return;
  // "3ch (counts as 1tr), miss st at base of 3ch": so has this place.
  const base = place.pick === 'same' ? place.of?.nouns[0]?.kind : null;
  if ((base === 'start-chain' || base === 'chain') && first !== null && place.n === null) return;
  if (namesItsOwn(hands, step)) return;
  const noun = nounOf(place);
  if (place.pick === 'this' && namesTurningChain(hands, place)) return;
  if (place.pick === 'each' && place.until) {
    const limit = limitOf(hands, place.until);
    while (hands.pos < limit) takeStitch(hands, 'one');
  } else {
    const n = (numberFor(hands, place.n) ?? 1) - ownOfFirst(hands, step);
    if (!hands.skips.has(n)) hands.skips = new Set([...hands.skips, n]);
    if (place.pick === 'last') openLast(hands, place, n);
    const gaps = gapsOf(hands, place, step);
    const generic = noun.kind === 'stitch' || noun.kind === 'join';
    const { pos, inner } = hands;
    for (let i = 0; i < n; i++) {
      // A picot is no stitch: passing it uses none.
      if (isPicot(noun)) continue;
      if (noun.skipped && place.row !== null) skipOfRest(hands, place, step);
      else if (generic) takeStitch(hands, gaps);
      else if (hasNext(hands, place, gaps)) skipNamed(hands, { ...place, n: null }, step);
      else takeStitch(hands, 'passed');
    }
    notePartSkip(hands, { pos, inner }, step);
  }
  // "Same" is where the hook worked last, not what it skipped.
  hands.skippedHere = hands.last;
  hands.last = last;
  hands.first = first;
  hands.skipped = { to: hands.pos, nodes: hands.nodes.n, n: numberFor(hands, place.n) ?? 1 };
}

/** "… around. Skip next st, sl st.": behind a full round they even its end, and are no part of it. */
function endsSpiral(hands: Hands, { steps, i, top }: Here): boolean {
  const next = steps[i + 1];
  const joins = next?.kind === 'join' && next.place === null && next.yarn === null;
  const slips = next?.kind === 'work' && isSlip(next) && !next.until && next.n === null;
  if (!top || !(joins || slips) || !hands.edge.ring || hasLeft(hands) || atStart(hands))
    return false;
  return !steps.slice(i + 2).some(({ kind }) => kind === 'work' || kind === 'repeat');
}

/** "Sk next 5 unworked sts of Row 2": in mesh some count the chains of its gaps with them. */
function skipOfRest(hands: Hands, place: Place, step: SkipStep): void {
  const onRun = hands.edge === hands.skippedEdge && hands.pos < hands.edge.n;
  if (onRun || toSkipped(hands, place.row)) takeStitch(hands, gapsOf(hands, place, step));
  else takePlace(hands, place, step);
}

const isPicot = (noun: Pick<Noun, 'kind' | 'word'>): boolean =>
  noun.kind === 'picot' || /^picots?$/i.test(noun.word);

/** "Sk next ch-2 sp", "sk next ch": what comes next, with no stitch before it. */
function skipNamed(hands: Hands, place: Place, step: SkipStep): void {
  const noun = nounOf(place);
  const isGap = noun.kind === 'space' || noun.kind === 'chain';
  if (isGap && hands.edge.kind === 'row' && hands.edge.spaces > 0) {
    const entry = nextSpace(hands, numberFor(hands, noun.chains), noun.corner);
    if (entry >= 0) noteStray(hands, entry, spanAt(hands, step));
  }
  takeNext(hands, place, step);
}

/** Did a number of chains end within a space that it began? */
function notePartSkip(hands: Hands, from: { pos: number; inner: number }, step: SkipStep): void {
  const { pos, inner } = hands;
  const n = numberFor(hands, step.place.n);
  const isPart = nounOf(step.place).kind === 'chain' && from.pos === pos && from.inner === 0;
  if (!isPart || inner === 0 || inner !== n) return;
  hands.partSkip = { entry: pos, n, at: spanAt(hands, step) };
}
