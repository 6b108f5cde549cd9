/** The next place of a kind: next stitch, next space, next corner, next shell, top of chain. */
import type { Place } from '../notation/index.ts';
import { heightOf, stemOf } from '../notation/index.ts';
import { bareEdge, COUNTED, chainAt, groupAround, isCorner, SPACE } from './edge.ts';
import {
  countedSince,
  fact,
  type Hands,
  makeRing,
  numberFor,
  placeOfStep,
  spanAt,
  type Target,
} from './hands.ts';
import { firstAnchor } from './nodes.ts';
import { type AnyNoun, gapsOf, nounOf } from './noun.ts';
import { ask } from './readings.ts';
import {
  countedBefore,
  hasGroupsNamed,
  isSpace,
  lack,
  middleOf,
  namedAhead,
  nextGroup,
  nextGroupGap,
  nextSpace,
  noGroupAhead,
  noteStray,
  passOver,
  returnFromAside,
  seek,
  takeChain,
  takeOff,
  takeSpaceAt,
  takeStitch,
  takeStitchAt,
} from './take.ts';

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
      if (noun.word === PICOT && noun.chains === null) return takePicotLoop(hands, noun, at);
      return takeSpaceOfGroup(hands, place, noun) ?? takeNextSpace(hands, noun, at);
    case 'box':
      return takeNextSpace(hands, noun, at);
    case 'chain':
      noChains(hands, at);
      return takeChain(hands);
    case 'corner':
      return takeCorner(hands, noun, at);
    case 'group':
      return takeGroup(hands, noun, at);
    case 'gap':
      if (noun.word === PICOT && hands.edge.spaces > 0) return takePicotLoop(hands, noun, at);
      return noun.word === '' ? betweenStitches(hands) : takeGap(hands, 2);
    case 'ring':
      return ringTarget(hands);
    case 'start-chain':
      return takeStartChain(hands);
    case 'picot':
      return takeNamed(hands);
    case 'stem':
      return takeStem(hands, noun, at, isOneOfKind(hands, place));
    default:
      return takeStitch(hands, gapsOf(hands, place, at));
  }
}

/** "Sc in each ch across" over a row of stitches: they are meant, and it is noticed. */
function noChains(hands: Hands, at: { from: number; to: number }): void {
  const { edge, nodes, bench, pos } = hands;
  if (edge.kind !== 'row' || edge.spaces > 0 || edge.n - pos < FEWEST_MEANT) return;
  const found = bench.kinds.kinds[nodes.kind[edge.node[pos] ?? 0] ?? 0]?.stem;
  if (found) fact(hands, { kind: 'noun', named: 'chain', found, ...spanAt(hands, at) });
}

/** With fewer places left, the chain may be the one that turned the row. */
const FEWEST_MEANT = 3;

/** "next dc or ch-1 sp": whichever comes, provided that it is one of them. */
function takeEither(hands: Hands, place: Place): Target {
  const wants = (kind: string): boolean => place.nouns.some((noun) => noun.kind === kind);
  const target = takeStitch(hands, wants('chain') ? 'chains' : wants('space') ? 'one' : 'passed');
  const space = place.nouns.find((noun) => noun.kind === 'space');
  if (target.space && space && target.entry >= 0) checkSize(hands, target.entry, space, place);
  return target;
}

function takeNextSpace(hands: Hands, noun: AnyNoun, at: { from: number; to: number }): Target {
  returnFromAside(hands);
  const chains = numberFor(hands, noun.chains);
  // Right after a ring of chain, "loop" is the ring.
  const ringed = hands.edge.kind === 'foundation' && hands.edge.ring && hands.foundation?.joined;
  if (hands.edge.kind === 'into' || ringed) return ringTarget(hands);
  if (hands.standing) standOrPass(hands, at);
  if (hands.edge.spaces === 0) {
    // "In next sp" where no chain stands between: the gap between groups, or "space" for stitch.
    if (chains !== null && isStartChainOf(hands, chains)) return takeStartChain(hands);
    if (chains !== null) return noPlace(hands, at);
    if (isSpaceOfSpecial(hands, noun)) return takeGroup(hands, noun, at);
    return takeGap(hands, 3);
  }
  const entry = nextSpace(hands, chains, noun.corner);
  if (entry < 0) return lack(hands);
  checkSize(hands, entry, noun, at);
  return takeSpaceAt(hands, entry);
}

/** "In sp of next shell": the loops before it are passed; `null`: no group is named, or none has a space. */
function takeSpaceOfGroup(hands: Hands, place: Place | null, noun: AnyNoun): Target | null {
  const { edge, nodes } = hands;
  const of = place?.of;
  if (of?.pick !== 'next' || of.n || nounOf(of).kind !== 'group' || hands.standing) return null;
  const chains = numberFor(hands, noun.chains);
  const fits = (i: number): boolean =>
    isCorner(edge, nodes, i) && (chains === null || edge.run[i] === chains);
  const entry = seek(hands, fits);
  if (entry >= 0) return takeSpaceAt(hands, entry);
  for (let i = 0; i < hands.pos; i++) if (fits(i)) return lack(hands);
  return null;
}

const PICOT = 'picot';

/** "In next picot loop", "in loop between picots": the next loop on which one stands; where none does, the next. */
function takePicotLoop(hands: Hands, noun: AnyNoun, at: { from: number; to: number }): Target {
  const { edge } = hands;
  const onLoop = (i: number): boolean => edge.type[i] === SPACE && hasPicotIn(hands, i);
  let any = false;
  for (let i = 0; i < edge.n && !any; i++) any = onLoop(i);
  if (!any) return edge.spaces > 0 ? takeNextSpace(hands, noun, at) : takeNamed(hands);
  if (hands.standing) standOrPass(hands, at);
  const entry = seek(hands, onLoop);
  return entry < 0 ? lack(hands) : takeSpaceAt(hands, entry);
}

/** Does a picot stand on the chains of a space? */
function hasPicotIn({ bench, nodes, edge }: Hands, entry: number): boolean {
  const classAt = (id: number) => bench.kinds.kinds[nodes.kind[id] ?? 0]?.class;
  let id = edge.node[entry] ?? 0;
  while (classAt(id) === 'chain') id++;
  return classAt(id) === 'picot';
}

/** "V-st in each V-st space", where a V-st has no chain: between its stitches. */
export const isSpaceOfSpecial = ({ edge, bench }: Hands, noun: AnyNoun): boolean =>
  noun.kind === 'space' && edge.spaces === 0 && bench.specials.has(noun.word);

/** "Ch-3 sp": has the space as many chains as its name says? */
export function checkSize(
  hands: Hands,
  entry: number,
  noun: AnyNoun,
  at: { from: number; to: number },
): void {
  const chains = numberFor(hands, noun.chains);
  const found = hands.edge.run[entry] ?? 0;
  if (chains === null || found === chains) return;
  // "Ch 2, turn, sc in ch-1 sp": one of the two is as high as the stitch; makers name either number.
  const first = (hands.edge.node[entry] ?? 0) - 1;
  const kind = hands.bench.kinds.kinds[hands.nodes.kind[first] ?? 0]?.class;
  const whole = hands.startChains.get(first)?.n ?? 0;
  if (kind === 'low' && found < chains && chains <= whole) return;
  // "Dc in last ch-4 loop", of a turning chain that stands for a stitch with a gap beside it: all of it.
  if (kind === 'start' && chains === whole) return;
  // "Ch 11, tr in same st, *tr in next st, ch 4, tr in same st": how much of the chain is the stitch, makers take to be more or less.
  if (kind === 'start' && Math.abs(found - chains) === 1 && hands.edge.run.includes(chains)) return;
  fact(hands, { kind: 'space-size', named: chains, found, ...spanAt(hands, at) });
}

/**
 * "Sl st in first sp, ch 1, *3 sc in next sp": the next one, or the one stood in? A repeat that goes
 * round leaves none out.
 */
function standOrPass(hands: Hands, at: { from: number; to: number }): void {
  const round = hands.edge.ring && hands.repeats > 0;
  const reading = ask(hands.readings, {
    doubt: 'space stood in',
    custom: round ? 'worked first' : 'passed',
    alternatives: [round ? 'passed' : 'worked first'],
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
  leadsAlongSides(hands, at);
  if (hands.edge.spaces > 0) return takeNextSpace(hands, { ...noun, corner: true }, at);
  const entry = seek(hands, (i) => isCornerStitch(hands, i));
  if (entry < 0 && hands.edge.ring && !hands.partly) lacksCorners(hands, at);
  return entry < 0 ? takeStitch(hands, 'passed') : takeStitchAt(hands, entry);
}

/**
 * "Sc around, working 3 sc in each corner" on a piece worked in rows, whose last row has no corner:
 * the hook goes along the sides too, where nothing tells how many stitches there are.
 */
export function leadsAlongSides(hands: Hands, at: { from: number; to: number }): boolean {
  const { edge, nodes } = hands;
  if (edge.kind !== 'row' || edge.ring || hands.partly) return false;
  for (let i = 0; i < edge.n; i++) {
    if (isCorner(edge, nodes, i) || isCornerStitch(hands, i)) return false;
  }
  hands.partly = true;
  hands.loose = true;
  fact(hands, { kind: 'not-worked', what: 'along the sides', ...spanAt(hands, at) });
  return true;
}

/** "4 sc in each corner" of a round that has none: which stitches are meant is not told. */
function lacksCorners(hands: Hands, at: { from: number; to: number }): void {
  for (let i = 0; i < hands.edge.n; i++) if (isCornerStitch(hands, i)) return;
  hands.partly = true;
  hands.loose = true;
  fact(hands, { kind: 'not-worked', what: 'in corners', ...spanAt(hands, at) });
}

/** The middle of three stitches in one place, or of five and so on. */
export function isCornerStitch(hands: Hands, entry: number): boolean {
  if (hands.edge.type[entry] !== COUNTED) return false;
  const { size, at } = groupAround(hands.edge, hands.nodes, entry);
  return size >= 3 && size % 2 === 1 && at === size >> 1;
}

/** "In next shell", "in next cluster": the middle of a group, or the stitch so called. */
function takeGroup(hands: Hands, noun: AnyNoun, at: { from: number; to: number }): Target {
  const { edge, nodes, bench } = hands;
  if (hands.standing && isCorner(edge, nodes, 0)) {
    standOrPass(hands, at);
    if (hands.pos === 0) return takeSpaceAt(hands, 0);
  }
  const named = seek(hands, (i) => {
    const kind = bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0];
    const named = kind?.shape === noun.word || kind?.special === noun.word;
    return edge.type[i] === COUNTED && noun.word !== '' && named;
  });
  if (named >= 0) return takeStitchAt(hands, named);
  const group = nextGroup(hands, noun.word);
  // "Shell over next shell" where the last one is behind the hands: no stitch stands for it.
  const none = !group && (noGroupAhead(hands) || hasGroupsNamed(hands, noun.word));
  if (!group) return none ? lack(hands) : takeStitch(hands, 'passed');
  const middle = middleOf(hands, group);
  const target = isSpace(hands, middle) ? takeSpaceAt(hands, middle) : takeStitchAt(hands, middle);
  // A round may have begun there: the rest of the group is counted from its middle.
  hands.pos += group.to - middle - 1;
  return target;
}

/** "Dc between next 2 dc": each gap follows a stitch; beside "dc in dc" it takes none of its own. */
function betweenStitches(hands: Hands): Target {
  const { from, to } = placeOfStep(hands);
  const reading = ask(hands.readings, {
    doubt: 'between stitches',
    custom: 'a stitch is passed',
    alternatives: ['no stitch is passed'],
    local: true,
    from,
    to,
  });
  if (reading === 'a stitch is passed') return takeStitch(hands, 'passed');
  const node = hands.edge.node[Math.min(hands.pos, hands.edge.n - 1)] ?? -1;
  return takeOff(hands, { node, space: true, entry: -1 });
}

/**
 * Between stitches: every gap follows a stitch; between groups, the gap follows the group. Two
 * stitches in one place are an increase unless the words call them a group: `least` is what makes one.
 */
function takeGap(hands: Hands, least: number): Target {
  const { edge } = hands;
  const behind = nextGroupGap(hands);
  const grouped = behind >= 0 && behind - hands.pos >= least;
  // "2 sc in next sp" on a row of stitches: a space is what they call one. Few may be a loop of chain.
  if (!grouped)
    return least > 2 && edge.counted > FEW ? takeStitch(hands, 'passed') : betweenStitches(hands);
  if (behind >= edge.n && beganInGap(hands)) return lack(hands);
  // Where the round began in a gap, the group before it stays behind the last one.
  hands.passed = Math.max(hands.passed, behind - hands.pos);
  hands.pos = behind;
  hands.tookSpace = true;
  return takeOff(hands, {
    node: edge.node[Math.min(behind, edge.n - 1)] ?? -1,
    space: true,
    entry: behind,
  });
}

/** Stitches of the smallest ring that is worked on, less one (common practice). */
const FEW = 4;

/**
 * "Ch 5, dc in same place as join, *ch 6, dc between next 2 petals; rep from * around": the gap before the
 * first petal is the one behind the last.
 */
function beganInGap(hands: Hands): boolean {
  const { edge, first, rowFrom, repeats } = hands;
  if (!edge.ring || edge.kind !== 'row' || first?.entry !== 0 || repeats === 0) return false;
  if (countedSince(hands, rowFrom) < 2) return false;
  const reading = ask(hands.readings, {
    doubt: 'gap of the join',
    custom: 'worked first',
    alternatives: ['worked last'],
    local: true,
    ...placeOfStep(hands),
  });
  return reading === 'worked first';
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
    const node = edge.node[i] ?? 0;
    const kind = bench.kinds.kinds[nodes.kind[node] ?? 0];
    // Chains passed in the first row that count as nothing: only a stated count shows that they are meant.
    const low = kind?.class === 'low' && (hands.startChains.has(node) || hands.statedStitches > 0);
    return edge.run[i] === 0 && (kind?.class === 'start' || low);
  });
  return entry < 0 ? null : entry;
}

/** "In ch-3 sp", where the only ch 3 is the one that began the row beneath. */
function isStartChainOf(hands: Hands, chains: number): boolean {
  const node = hands.edge.node[startChainEntry(hands) ?? -1] ?? -1;
  const chain = hands.startChains.get(node);
  if (chain) return chain.n === chains;
  // Chains passed at the start of the first row, as high as their stitch.
  const kind = hands.bench.kinds.kinds[hands.nodes.kind[node] ?? 0];
  return (
    node >= 0 && kind?.class === 'start' && kind.stem !== null && heightOf(kind.stem) === chains
  );
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
export function takeStartChain(hands: Hands): Target {
  const { edge } = hands;
  const entry = startChainEntry(hands) ?? -1;
  if (entry >= 0) {
    // "*skip 2 dc, shell in next sc; rep from * across, sc in turning ch": two are skipped there too.
    const before = countedBefore(hands, entry);
    const spanned =
      before <= chainsMade(hands) ||
      hands.skips.has(before) ||
      (before <= hands.passed && ofOneGroup(hands, entry));
    if (!spanned) noteStray(hands, entry, placeOfStep(hands));
    if (edge.type[entry] === COUNTED) return takeStitchAt(hands, entry);
    passOver(hands, entry);
    hands.pos = entry + 1;
    return takeOff(hands, { node: edge.node[entry] ?? -1, space: false, entry });
  }
  const last = edge.n - 1;
  if (!edge.ring && edge.kind === 'row' && hands.pos > last && edge.type[last] === SPACE) {
    // "Sc in last lp, ch 3, sc in 2nd ch of ch-5": the loop is that chain, and the row ends in it.
    const node = chainAt(edge, last, (edge.run[last] ?? 1) - 1);
    return takeOff(hands, { node, space: false, entry: last });
  }
  return takeStitch(hands, 'passed');
}

/** Are the stitches up to an entry all worked into one place, as the half of a shell beside a turning chain? */
function ofOneGroup({ edge, nodes, pos }: Hands, to: number): boolean {
  const feet = new Set<number>();
  for (let i = pos; i < to; i++)
    if (edge.type[i] === COUNTED) feet.add(firstAnchor(nodes, edge.node[i] ?? 0));
  return feet.size === 1;
}

/** Chains made last: they span as many stitches, said or not ("ch 1, dc in top of tch"). */
export function chainsMade({ nodes, bench, rowFrom }: Hands): number {
  let id = nodes.n;
  while (id > rowFrom && bench.kinds.kinds[nodes.kind[id - 1] ?? 0]?.class === 'chain') id--;
  return nodes.n - id;
}

function takeNamed(hands: Hands): Target {
  const picots = hasPicots(hands);
  const at = picots ? picotAhead(hands) : namedAhead(hands);
  if (at < 0) return picots ? lack(hands) : takeStitch(hands, 'passed');
  if (at !== hands.pos) {
    passOver(hands, at);
    hands.sought = true;
  }
  hands.pos = at + 1;
  return takeOff(hands, { node: hands.edge.node[at] ?? -1, space: false, entry: at });
}

const isPicot = ({ bench, nodes, edge }: Hands, entry: number): boolean =>
  bench.kinds.kinds[nodes.kind[edge.node[entry] ?? 0] ?? 0]?.class === 'picot';

/** "Ch 7, sc in next picot": the stitches between two picots are passed. */
export const picotAhead = (hands: Hands): number => seek(hands, (i) => isPicot(hands, i));

const hasPicots = (hands: Hands): boolean => {
  for (let i = 0; i < hands.edge.n; i++) if (isPicot(hands, i)) return true;
  return false;
};

/** From the space or a stitch of a shell on to the "next sc": what is passed is the rest of that shell. */
function behindGroup({ edge, nodes, pos, last }: Hands, to: number): boolean {
  if (!last || last.entry < 0 || (last.space && !isCorner(edge, nodes, last.entry))) return false;
  const at = last.space ? (last.entry + 1) % edge.n : last.entry;
  const foot = firstAnchor(nodes, edge.node[at] ?? 0);
  for (let i = pos; i < to; i++)
    if (edge.type[i] === COUNTED && firstAnchor(nodes, edge.node[i] ?? 0) !== foot) return false;
  return true;
}

/**
 * "Ch 5, sc in next sc" from a run of dc, with a gap between it and the next sc: the rest of that run is passed.
 * Side by side, stitches of two names are as often one name for both.
 */
function behindGap({ edge, last, pos }: Hands, to: number): boolean {
  if (last === null || edge.spaces === 0) return false;
  let gap = pos;
  while (gap < to && edge.type[gap] !== SPACE) gap++;
  for (let i = gap; i < to; i++) if (edge.type[i] === COUNTED) return false;
  return gap < to;
}

/** "In any dc" and, at a row's start, "in first sc": the first of its kind, whatever stands before it. */
const isOneOfKind = ({ pos, first }: Hands, place: Place | null): boolean =>
  place?.pick === 'any' || (place?.pick === 'first' && pos === 0 && first === null);

/** "In next dc": the next stitch; where that is none of that name, noticed. */
function takeStem(
  hands: Hands,
  noun: AnyNoun,
  at: { from: number; to: number },
  any: boolean,
): Target {
  const { edge, nodes, bench } = hands;
  const wanted = noun.stem ? stemOf(noun.stem, bench.terms) : null;
  const stemAt = (i: number): string | null =>
    bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0]?.stem ?? null;
  const next = seek(hands, (i) => edge.type[i] === COUNTED);
  if (next < 0 || wanted === null || edge.kind !== 'row') return takeStitch(hands, 'passed');
  const found = stemAt(next);
  if (found === null || found === wanted) return takeStitch(hands, 'passed');
  const later = seek(hands, (i) => edge.type[i] === COUNTED && stemAt(i) === wanted);
  // Others were passed on the way to the last of that name: there is no more of them.
  if (later < 0 && (hands.namedOnly || (hands.sought && hands.repeats > 0))) return lack(hands);
  // "Join in any dc": the first there is.
  // Between stitches that an earlier row's round made stand those that this round is to go into.
  const named = hands.namedOnly || any || hands.overlaid;
  const seeks = later >= 0 && (named || behindGroup(hands, later) || behindGap(hands, later));
  const reading = ask(hands.readings, {
    doubt: 'noun',
    custom: seeks ? 'seek' : 'next',
    alternatives: later < 0 ? [] : [seeks ? 'next' : 'seek'],
    local: true,
    ...spanAt(hands, at),
  });
  if (reading === 'seek' && later >= 0) {
    hands.sought = true;
    return takeStitchAt(hands, later);
  }
  fact(hands, { kind: 'noun', named: wanted, found, ...spanAt(hands, at) });
  return takeStitch(hands, 'passed');
}
