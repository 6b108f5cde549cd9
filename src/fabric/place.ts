/** From the words for a place to the place itself. */
import type { Noun, Place, Until } from '../notation/index.ts';
import { stemOf } from '../notation/index.ts';
import { bareEdge, COUNTED, groupEnd, NAMED, SPACE } from './edge.ts';
import { fact, type Hands, makeRing, numberFor, spanAt, type Target } from './hands.ts';
import { ask } from './readings.ts';
import { edgeOfRun, skippedRun } from './skipped.ts';
import { checkNamedChain } from './start-chain.ts';
import {
  type Gaps,
  isSpace,
  lack,
  middleOf,
  namedAhead,
  nextGroup,
  nextGroupGap,
  nextSpace,
  passOver,
  seek,
  spaceTarget,
  takeChain,
  takeOff,
  takeSpaceAt,
  takeStitch,
  takeStitchAt,
} from './take.ts';

const STITCH: Pick<Noun, 'kind' | 'chains' | 'corner' | 'skipped' | 'stem' | 'word'> = {
  kind: 'stitch',
  chains: null,
  corner: false,
  skipped: false,
  stem: null,
  word: '',
};
type AnyNoun = typeof STITCH;

export const nounOf = (place: Place | null): AnyNoun => place?.nouns[0] ?? STITCH;

/** Do "st" and "each st" mean spaces too? Asked only where there are spaces. */
export function gapsOf(hands: Hands, place: Place | null, at: { from: number; to: number }): Gaps {
  if (place && place.nouns.length > 1) return 'one';
  if (hands.edge.spaces === 0) return 'passed';
  const span = spanAt(hands, at);
  return ask(hands.readings, {
    doubt: 'gaps',
    custom: 'passed',
    alternatives: ['one', 'chains'],
    local: true,
    ...span,
  }) as Gaps;
}

/** The next place of a kind: "next st", "next ch-2 sp", "next corner", "next shell". */
export function takeNext(
  hands: Hands,
  place: Place | null,
  at: { from: number; to: number },
): Target {
  const noun = nounOf(place);
  if (place && place.nouns.length > 1) return takeEither(hands, place);
  switch (noun.kind) {
    case 'space':
    case 'box':
      return takeNextSpace(hands, noun, at);
    case 'chain':
      return takeChain(hands);
    case 'corner':
      return takeCorner(hands, noun, at);
    case 'group':
      return takeGroup(hands, noun);
    case 'gap':
      return takeGap(hands);
    case 'ring':
      return ringTarget(hands);
    case 'start-chain':
      return takeStartChain(hands);
    case 'picot':
      return takeNamed(hands);
    case 'stem':
      return takeStem(hands, noun, at);
    default:
      return takeStitch(hands, gapsOf(hands, place, at));
  }
}

/** "next dc or ch-1 sp": whichever comes, provided that it is one of them. */
function takeEither(hands: Hands, place: Place): Target {
  const spaces = place.nouns.some((noun) => noun.kind === 'space' || noun.kind === 'chain');
  return takeStitch(hands, spaces ? 'one' : 'passed');
}

function takeNextSpace(hands: Hands, noun: AnyNoun, at: { from: number; to: number }): Target {
  const chains = numberFor(hands, noun.chains);
  if (hands.edge.kind === 'into') return ringTarget(hands);
  if (hands.standing) standOrPass(hands, at);
  if (hands.edge.spaces === 0) {
    // "In next sp" where no chain stands between: the gap between groups, or "space" for stitch.
    if (chains !== null) return noPlace(hands, at);
    return takeGap(hands);
  }
  const entry = nextSpace(hands, chains, noun.corner);
  if (entry < 0) return lack(hands);
  const found = hands.edge.run[entry] ?? 0;
  if (chains !== null && found !== chains) {
    fact(hands, { kind: 'space-size', named: chains, found, ...spanAt(hands, at) });
  }
  return takeSpaceAt(hands, entry);
}

/** "Sl st in first sp, ch 1, *3 sc in next sp": the next one, or the one stood in? */
function standOrPass(hands: Hands, at: { from: number; to: number }): void {
  const reading = ask(hands.readings, {
    doubt: 'space stood in',
    custom: 'passed',
    alternatives: ['worked first'],
    local: true,
    ...spanAt(hands, at),
  });
  if (reading === 'worked first') workStandingFirst(hands);
  hands.standing = false;
}

/** "In each sp around" takes in the space in which the hook stands, if nothing is in it yet. */
export function workStandingFirst(hands: Hands): void {
  if (!hands.standing) return;
  hands.standing = false;
  hands.pos = 0;
}

function noPlace(hands: Hands, at: { from: number; to: number }): Target {
  const span = spanAt(hands, at);
  if (!hands.edge.open) fact(hands, { kind: 'no-place', what: 'space', ...span });
  hands.loose = true;
  return takeOff(hands, { node: -1, space: true, entry: -1 });
}

function takeCorner(hands: Hands, noun: AnyNoun, at: { from: number; to: number }): Target {
  if (hands.edge.spaces > 0) return takeNextSpace(hands, { ...noun, corner: true }, at);
  const entry = seek(hands, (i) => isCornerStitch(hands, i));
  return entry < 0 ? takeStitch(hands, 'passed') : takeStitchAt(hands, entry);
}

/** The middle of three or more stitches in one place. */
export function isCornerStitch(hands: Hands, entry: number): boolean {
  if (hands.edge.type[entry] !== COUNTED || entry === 0) return false;
  const end = groupEnd(hands.edge, hands.nodes, entry - 1);
  return end - (entry - 1) === 3;
}

/** "In next shell", "in next cluster": the middle of a group, or the stitch so called. */
function takeGroup(hands: Hands, noun: AnyNoun): Target {
  const { edge, nodes, bench } = hands;
  const named = seek(hands, (i) => {
    const kind = bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0];
    const named = kind?.shape === noun.word || kind?.special === noun.word;
    return edge.type[i] === COUNTED && noun.word !== '' && named;
  });
  if (named >= 0) return takeStitchAt(hands, named);
  const group = nextGroup(hands);
  if (!group) return takeStitch(hands, 'passed');
  const middle = middleOf(hands, group);
  const target = isSpace(hands, middle) ? takeSpaceAt(hands, middle) : takeStitchAt(hands, middle);
  hands.pos = group.to;
  return target;
}

/** Between stitches: every gap follows a stitch; between groups, the gap follows the group. */
function takeGap(hands: Hands): Target {
  const { edge } = hands;
  const behind = nextGroupGap(hands);
  const grouped = behind >= 0 && behind - hands.pos > 1;
  if (!grouped) return takeStitch(hands, 'passed');
  hands.pos = behind;
  hands.tookSpace = true;
  return takeOff(hands, {
    node: edge.node[Math.min(behind, edge.n - 1)] ?? -1,
    space: true,
    entry: behind,
  });
}

/**
 * The ring holds any number of stitches. Named without having been made, it is made now: "6 sc in
 * magic ring", or the closed foundation chain is the ring.
 */
export function ringTarget(hands: Hands): Target {
  if (hands.edge.kind !== 'into') {
    const chain = hands.edge.kind === 'foundation' ? (hands.edge.node[0] ?? -1) : -1;
    const made = chain < 0 ? makeRing(hands) : chain;
    hands.edge = bareEdge('into', made);
    hands.pos = 0;
    hands.limit = 0;
    hands.used = 0;
  }
  return takeOff(hands, { node: hands.edge.node[0] ?? -1, space: true, entry: -1 });
}

/** Where on the edge ahead a turning chain has its top, counted or not. */
export function startChainEntry(hands: Hands): number | null {
  const { edge, nodes, bench } = hands;
  const entry = seek(hands, (i) => {
    const kind = bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0];
    return edge.run[i] === 0 && (kind?.class === 'start' || kind?.class === 'low');
  });
  return entry < 0 ? null : entry;
}

/** Before the turning chain, and before the space that it holds beside its stitch. */
export function startChainLimit(hands: Hands): number {
  const entry = startChainEntry(hands);
  if (entry === null) return hands.limit;
  const { edge } = hands;
  const own =
    entry > 0 &&
    edge.type[entry - 1] === SPACE &&
    edge.node[entry - 1] === (edge.node[entry] ?? 0) + 1;
  return own ? entry - 1 : entry;
}

/** Top of the turning chain at a row's end: a place if it counts, else one that is only named. */
function takeStartChain(hands: Hands): Target {
  const { edge } = hands;
  const entry = startChainEntry(hands) ?? -1;
  if (entry >= 0) {
    if (edge.type[entry] === COUNTED) return takeStitchAt(hands, entry);
    passOver(hands, entry);
    hands.pos = entry + 1;
    return takeOff(hands, { node: edge.node[entry] ?? -1, space: false, entry });
  }
  return takeStitch(hands, 'passed');
}

function takeNamed(hands: Hands): Target {
  const entry = namedAhead(hands);
  if (entry < 0) return takeStitch(hands, 'passed');
  hands.pos = entry + 1;
  return takeOff(hands, { node: hands.edge.node[entry] ?? -1, space: false, entry });
}

/** "In next dc": the next stitch; where that is none of that name, noticed. */
function takeStem(hands: Hands, noun: AnyNoun, at: { from: number; to: number }): Target {
  const { edge, nodes, bench } = hands;
  const wanted = noun.stem ? stemOf(noun.stem, bench.terms) : null;
  const stemAt = (i: number): string | null =>
    bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0]?.stem ?? null;
  const next = seek(hands, (i) => edge.type[i] === COUNTED);
  if (next < 0 || wanted === null || edge.kind !== 'row') return takeStitch(hands, 'passed');
  const found = stemAt(next);
  if (found === null || found === wanted) return takeStitch(hands, 'passed');
  const later = seek(hands, (i) => edge.type[i] === COUNTED && stemAt(i) === wanted);
  const reading = ask(hands.readings, {
    doubt: 'noun',
    custom: 'next',
    alternatives: later >= 0 ? ['seek'] : [],
    local: true,
    ...spanAt(hands, at),
  });
  if (reading === 'seek' && later >= 0) return takeStitchAt(hands, later);
  fact(hands, { kind: 'noun', named: wanted, found, ...spanAt(hands, at) });
  return takeStitch(hands, 'passed');
}

/** One place, however it is picked. */
export function takePlace(
  hands: Hands,
  place: Place | null,
  at: { from: number; to: number },
): Target {
  if (hands.into) return takeOff(hands, hands.into);
  if (!place) return takeStitch(hands, gapsOf(hands, null, at));
  const noun = nounOf(place);
  if (noun.skipped) return takeSkipped(hands, place, at);
  if (noun.kind === 'ring') return ringTarget(hands);
  switch (place.pick) {
    case 'same':
    case 'previous':
      return takeSame(hands, place, at);
    case 'first':
      return takeFirst(hands, place, at);
    case 'last':
      return takeLast(hands, place, at);
    case 'nth':
      return takeNth(hands, place, at);
    case 'centre':
      return takeCentre(hands, place, at);
    case 'top':
      return takeNext(hands, place.of ?? place, at);
    default:
      return takeNext(hands, place, at);
  }
}

function takeSame(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  hands.standing = false;
  if (place.of?.pick === 'first' && hands.first) return takeOff(hands, hands.first);
  if (hands.last) return takeOff(hands, hands.last);
  if (hands.edge.kind === 'into') return ringTarget(hands);
  const noun = nounOf(place);
  // After a join the hook is on the first stitch: that one is "the same".
  if (noun.kind === 'space' && hands.edge.spaces > 0) return takeNext(hands, place, at);
  return takeStitch(hands, 'passed');
}

function takeFirst(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const noun = nounOf(place);
  if (!hands.first) return noun.kind === 'chain' ? takeChain(hands) : takeNext(hands, place, at);
  if (noun.kind === 'chain' || hands.edge.kind === 'foundation') return takeOff(hands, hands.first);
  const ahead = seek(
    hands,
    (i) => hands.edge.type[i] === (noun.kind === 'space' ? SPACE : COUNTED),
  );
  if (ahead >= 0 && hands.pos === 0) return takeNext(hands, place, at);
  return takeOff(hands, hands.first);
}

/** "In last st": whatever stands before it is left over, and that is noticed. */
function takeLast(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const noun = nounOf(place);
  if (noun.kind === 'start-chain') return takeStartChain(hands);
  const wanted = noun.kind === 'space' && hands.edge.spaces > 0 ? SPACE : COUNTED;
  let entry = -1;
  for (let i = hands.limit - 1; i >= hands.pos && entry < 0; i--) {
    if (hands.edge.type[i] === wanted) entry = i;
  }
  if (entry < 0) return hands.last && hands.edge.open ? takeOff(hands, hands.last) : lack(hands);
  const before = countBetween(hands, hands.pos, entry);
  if (before > 0 && wanted === COUNTED) leaveOver(hands, before, at);
  return wanted === SPACE ? takeSpaceAt(hands, entry) : takeStitchAt(hands, entry);
}

export function countBetween(hands: Hands, from: number, to: number): number {
  let n = 0;
  for (let i = from; i < to; i++) if (hands.edge.type[i] === COUNTED) n++;
  return n;
}

export function leaveOver(hands: Hands, left: number, at: { from: number; to: number }): void {
  if (hands.edge.open) return;
  const have = hands.edge.counted;
  fact(hands, { kind: 'left', left, have, used: have - left, ...spanAt(hands, at) });
}

/** "2nd ch from hook", "3rd ch of next ch-5 sp", "3rd ch of beg ch-4", "2nd st". */
function takeNth(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const nth = place.nth ?? 1;
  const noun = nounOf(place.of);
  if (place.of && noun.kind === 'start-chain') {
    const target = takeStartChain(hands);
    const of = numberFor(hands, noun.chains);
    checkNamedChain(hands, target.node, { nth, of }, spanAt(hands, place));
    return target;
  }
  if (place.of && (noun.kind === 'space' || noun.kind === 'chain')) {
    const entry = nextSpace(hands, numberFor(hands, noun.chains), noun.corner);
    if (entry < 0) return lack(hands);
    const run = hands.edge.run[entry] ?? 1;
    const target = takeSpaceAt(hands, entry);
    if (nth > run)
      fact(hands, { kind: 'no-place', what: `chain ${nth} of ${run}`, ...spanAt(hands, at) });
    return takeOff(hands, { ...target, node: target.node + Math.min(nth, run) - 1, space: false });
  }
  // "Dc in 3rd ch" at a row's end, with no chain named: the turning chain's.
  if (nounOf(place).kind === 'chain' && !place.of && startChainEntry(hands) !== null) {
    return takeStartChain(hands);
  }
  let target = takeNext(hands, place, at);
  for (let i = 1; i < nth; i++) target = takeNext(hands, place, at);
  return target;
}

function takeCentre(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const of = place.of ?? place;
  const noun = nounOf(of);
  if (noun.kind === 'space' || hands.edge.spaces > 0) return takeNext(hands, of, at);
  const group = nextGroup(hands);
  if (!group) return takeStitch(hands, 'passed');
  const target = takeStitchAt(hands, middleOf(hands, group));
  return target;
}

/** A stitch that was skipped rows ago: the hands move to that run and work round it. */
function takeSkipped(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const named = place.row ?? place.of?.row ?? null;
  if (named === null && hands.skippedHere) return takeOff(hands, hands.skippedHere);
  const onRun = hands.edge === hands.skippedEdge && hands.pos < hands.edge.n;
  if (onRun) return takeStitch(hands, 'passed');
  const run = skippedRun(hands, named);
  if (!run) {
    // Which unworked stitches are meant is known only where a row is named.
    if (named !== null) {
      fact(hands, { kind: 'no-place', what: 'skipped stitch', ...spanAt(hands, at) });
    }
    hands.edge = bareEdge('none');
    hands.pos = 0;
    hands.limit = 0;
    hands.loose = true;
    return takeOff(hands, { node: -1, space: false, entry: -1 });
  }
  hands.edge = edgeOfRun(run);
  hands.skippedEdge = hands.edge;
  hands.pos = 0;
  hands.limit = hands.edge.n;
  return takeStitch(hands, 'passed');
}

/** Entry at which "to last 3 sts", "to next corner" stops; the edge's end for "around", "across". */
export function limitOf(hands: Hands, until: Until | null): number {
  const { edge } = hands;
  if (!until || until.kind === 'end') return hands.limit;
  if (until.kind === 'last') {
    let left = numberFor(hands, until.n) ?? 0;
    const wanted = until.noun?.kind === 'space' ? SPACE : COUNTED;
    for (let i = edge.n - 1; i >= hands.pos; i--) {
      if (left === 0) break;
      if (edge.type[i] === wanted && --left === 0) return i;
    }
    return left === 0 ? hands.limit : hands.pos;
  }
  const noun = nounOf(until.place);
  if (noun.kind === 'marker') {
    hands.loose = true;
    return hands.limit;
  }
  if (noun.kind === 'start-chain') return startChainLimit(hands);
  const entry =
    noun.kind === 'space' || (noun.kind === 'corner' && edge.spaces > 0)
      ? nextSpace(hands, numberFor(hands, noun.chains), noun.kind === 'corner' || noun.corner)
      : noun.kind === 'corner'
        ? seek(hands, (i) => isCornerStitch(hands, i))
        : -1;
  return entry < 0 ? hands.limit : entry;
}

/** "In ch-1 sp of each V-st across": each such space. */
export const ofEach = (place: Place): Place =>
  place.of?.pick === 'each'
    ? { ...place, pick: 'each', each: true, until: place.of.until, n: null, of: null }
    : place;

/** Is there another place of this kind before the limit? */
export function hasNext(hands: Hands, place: Place | null, gaps: Gaps): boolean {
  const noun = nounOf(place);
  const { edge } = hands;
  const both = place !== null && place.nouns.length > 1;
  const inChains = noun.kind === 'chain' && edge.kind !== 'foundation';
  const wanted = inChains || (noun.kind === 'space' && edge.spaces > 0) ? SPACE : COUNTED;
  for (let i = hands.pos; i < hands.limit; i++) {
    const type = edge.type[i];
    if (type === NAMED) continue;
    if (both || (gaps !== 'passed' && noun.kind === 'stitch')) return true;
    if (type === wanted) return true;
  }
  return false;
}

export { spaceTarget };
