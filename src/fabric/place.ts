/** From the words for a place to the place itself, however it is picked. */
import { type Noun, PLAIN_NOUN, type Place, stemOf } from '../notation/index.ts';
import { earlierRow, leftHereAndThere, takeEarlier } from './earlier-row.ts';
import { bareEdge, COUNTED, SPACE } from './edge.ts';
import { fact, type Hands, hasLeft, numberFor, spanAt, type Target } from './hands.ts';
import {
  chainsMade,
  checkSize,
  ringTarget,
  startChainEntry,
  takeNext,
  takeStartChain,
} from './next.ts';
import { type AnyNoun, gapsOf, nounOf } from './noun.ts';
import { ask } from './readings.ts';
import { toSkipped } from './skipped.ts';
import { checkNamedChain } from './start-chain.ts';
import { beginsSide, cornerOfPiece } from './steps/border.ts';
import {
  centreSpace,
  centreStitch,
  endOfGroupStoodIn,
  hasGroupsNamed,
  isSpace,
  lack,
  middleOf,
  middleOfBegun,
  nextGroup,
  nextSpace,
  noGroupAhead,
  ofGroupStoodIn,
  seek,
  takeChain,
  takeOff,
  takeSpaceAt,
  takeStitch,
  takeStitchAt,
} from './take.ts';

/** One place, however it is picked. A space that is not as long as its name says is noticed. */
export function takePlace(
  hands: Hands,
  place: Place | null,
  at: { from: number; to: number },
): Target {
  const target = placeFor(hands, place, at);
  const noun = nounOf(place?.of ?? place);
  if (place && target.space && target.entry >= 0 && noun.kind === 'space') {
    checkSize(hands, target.entry, noun, at);
  }
  return target;
}

function placeFor(hands: Hands, place: Place | null, at: { from: number; to: number }): Target {
  if (hands.into) return takeOff(hands, hands.into);
  if (!place) return takeStitch(hands, gapsOf(hands, null, at));
  const noun = nounOf(place);
  const corner = cornerOfPiece(hands, place);
  if (corner) return corner;
  const within = stitchOfGroup(hands, place) ?? spaceOfGroup(hands, place);
  if (within) return within;
  const earlier = earlierRow(hands, place);
  if (earlier && (!noun.skipped || leftHereAndThere(hands, place, earlier)))
    return takeEarlier(hands, place, earlier);
  if (noun.skipped) return takeSkipped(hands, place, at);
  if (noun.kind === 'ring' || isLoopOfChain(hands, place)) return ringTarget(hands);
  if (isStoodIn(hands, place)) return takeSame(hands, place, at);
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
      return takeTop(hands, place.of ?? place, at);
    default:
      return takeNext(hands, place, at);
  }
}

/** "Sl st in corner sp, ch 3, 2 dc in corner sp", with no word for the next: the one in which the hook stands. */
function isStoodIn(hands: Hands, { pick, n, of, nouns }: Place): boolean {
  const { last, first, edge } = hands;
  const [noun, other] = nouns;
  if (!last?.space || last !== first || pick !== 'this' || n || of || !noun || other) return false;
  if ((noun.kind !== 'space' && noun.kind !== 'corner') || noun.plural) return false;
  const chains = noun.chains?.values[0] ?? null;
  return (chains === null || edge.run[last.entry] === chains) && onlyBegun(hands);
}

/** Nothing is made but what brought the hook here and a chain as high as the row; a pass or a gap leads on. */
function onlyBegun({ rowFrom, nodes, bench, repeats }: Hands): boolean {
  if (repeats > 0) return false;
  for (let id = rowFrom; id < nodes.n; id++) {
    const kind = bench.kinds.kinds[nodes.kind[id] ?? 0]?.class;
    if (kind !== 'slip' && kind !== 'start' && kind !== 'low') return false;
  }
  return true;
}

/** "In 3rd dc of next shell", "in first dc of next group": that stitch of the group; `null`: none is meant. */
function stitchOfGroup(hands: Hands, { pick, nth, of, nouns }: Place): Target | null {
  const { edge } = hands;
  if (pick !== 'nth' && pick !== 'first' && pick !== 'last') return null;
  if (!of || of.n || nounOf(of).kind !== 'group') return null;
  // "Sc in first dc of shell, ch 2, sc in last dc of same shell"
  const end = pick === 'last' && of.pick !== 'next' ? endOfGroupStoodIn(hands) : -1;
  if (end >= 0) return takeStitchAt(hands, end);
  // "Sc in 2nd dc of next shell, ch 1, sc in 4th dc of same shell"
  const same = pick === 'nth' && of.pick === 'same' ? ofGroupStoodIn(hands, nth ?? 1) : -1;
  if (same >= 0) return takeStitchAt(hands, same);
  if (of.pick !== 'next') return null;
  if (edge.kind !== 'row' || (nouns[0] && nouns[0].kind !== 'stem' && nouns[0].kind !== 'stitch'))
    return null;
  const group = nextGroup(hands, nounOf(of).word);
  if (!group && noGroupAhead(hands)) return lack(hands);
  if (!group) return pick === 'first' ? takeStitch(hands, 'passed') : null;
  const stitches: number[] = [];
  for (let i = group.from; i < group.to; i++) if (edge.type[i] === COUNTED) stitches.push(i);
  const entry = pick === 'last' ? stitches.at(-1) : stitches[pick === 'nth' ? (nth ?? 1) - 1 : 0];
  return entry === undefined ? null : takeStitchAt(hands, entry);
}

/**
 * "In sp of next shell", where the spaces between shells are as long as those in them: the one that the
 * shell holds. `null`: none is meant, or the next group has none.
 */
function spaceOfGroup(hands: Hands, { pick, n, of, nouns }: Place): Target | null {
  const { edge } = hands;
  const [noun, other] = nouns;
  if (pick !== 'this' || n || !of || of.n || of.pick !== 'next' || edge.kind !== 'row') return null;
  if (noun?.kind !== 'space' || other || nounOf(of).kind !== 'group' || hands.standing) return null;
  const group = nextGroup(hands, nounOf(of).word);
  if (!group) return null;
  const chains = numberFor(hands, noun.chains);
  const spaces: number[] = [];
  for (let i = group.from; i < group.to; i++)
    if (edge.type[i] === SPACE && (chains === null || edge.run[i] === chains)) spaces.push(i);
  const entry = spaces[(spaces.length - 1) >> 1];
  if (entry === undefined) return null;
  const target = takeSpaceAt(hands, entry);
  // A round may have begun there: the rest of the group is counted from its space.
  hands.pos += group.to - entry - 1;
  return target;
}

/** "4 chain to make a loop", "5 sc into loop": a chain that nobody joined, and that has no other loop. */
const isLoopOfChain = ({ edge, first }: Hands, { pick, nouns, n, of }: Place): boolean =>
  edge.kind === 'foundation' &&
  first === null &&
  pick === 'this' &&
  n === null &&
  of === null &&
  nouns.length === 1 &&
  nouns[0]?.kind === 'space' &&
  nouns[0].chains === null &&
  nouns[0].word === '' &&
  edge.spaces === 0;

function takeSame(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  checkOwnChain(hands, place);
  const stoodIn = hands.standing;
  hands.standing = false;
  if (!stoodIn && opensPass(hands, place)) return takeStitch(hands, 'passed');
  if (place.of?.pick === 'first' && hands.first) return takeOff(hands, hands.first);
  const made = place.pick === 'previous' ? justMade(hands, place) : null;
  if (made) return takeOff(hands, made);
  if (hands.last) return takeOff(hands, hands.last);
  if (hands.edge.kind === 'into') return ringTarget(hands);
  const beside = beneathStart(hands, place);
  if (beside) return takeOff(hands, beside);
  const noun = nounOf(place);
  // After a join the hook is on the first stitch: that one is "the same".
  if (noun.kind === 'space' && hands.edge.spaces > 0 && meansSpace(hands, place)) {
    return takeNext(hands, place, at);
  }
  return takeStitch(hands, 'passed');
}

/** Chains by which a starting chain may slip from its name (judgement). */
const MOST_OFF = 2;

/** "Ch 3, dc in base of ch 4": the chain with which this row began is of another length. */
function checkOwnChain(hands: Hands, { of }: Place): void {
  // "In base of first ch 5 of previous row" is another.
  if (of?.pick === 'first') return;
  const named = of?.nouns[0]?.kind === 'start-chain' ? numberFor(hands, of.nouns[0].chains) : null;
  const own = named === null ? undefined : hands.startChains.get(hands.rowFrom);
  if (!of || named === null || !own || hands.nodes.n <= hands.rowFrom) return;
  const kind = hands.bench.kinds.kinds[hands.nodes.kind[hands.rowFrom] ?? 0];
  if (kind?.class !== 'start' && kind?.class !== 'low') return;
  // "Ch 5 (counts as dc and ch 2), dc in base of ch 3": that of the stitch alone.
  if (own.n === named || (own.isTold && own.height === named)) return;
  // "Ch 2, …, dc in base of first ch 5 in previous row": another chain, which lies beneath.
  if (Math.abs(own.n - named) > MOST_OFF && hands.edge.run.includes(named)) return;
  fact(hands, { kind: 'space-size', named, found: own.n, ofStart: 'here', ...spanAt(hands, of) });
}

/** "Ch 2, turn, dc in base of ch 2 (inc), dc in each st around": a stitch more in the first place. */
function beneathStart(hands: Hands, place: Place): Target | null {
  const { edge, pos } = hands;
  if (edge.kind !== 'row' || place.of?.nouns[0]?.kind !== 'start-chain') return null;
  if (pos !== 0 || edge.type[0] !== COUNTED) return null;
  const reading = ask(hands.readings, {
    doubt: 'base of the start chain',
    custom: 'the first stitch',
    alternatives: ['beside the first stitch'],
    local: true,
    ...spanAt(hands, place),
  });
  return reading === 'the first stitch'
    ? null
    : { node: edge.node[0] ?? -1, space: false, entry: 0 };
}

/** "(3 sc in the same stitch, 2 sc) x 4": three in one stitch, and each pass has another. */
function opensPass(hands: Hands, place: Place): boolean {
  const first = hands.repeats > 0 && hands.used === hands.usedAtPass && hands.last !== null;
  if (!first || place.of || place.pick !== 'same' || nounOf(place).kind !== 'stitch') return false;
  const reading = ask(hands.readings, {
    doubt: 'same in a pass',
    custom: 'the place worked last',
    alternatives: ['one place for each pass'],
    local: true,
    ...spanAt(hands, place),
  });
  return reading !== 'the place worked last';
}

/** "Space" in "same space" very often means stitch (survey 5.3): one with its chains named does not. */
function meansSpace(hands: Hands, place: Place): boolean {
  if (nounOf(place).chains !== null || nounOf(place).corner) return true;
  // "Sl st to center dc of group, ch 1, sc in same space": where the slip stitch went.
  const first = hands.bench.kinds.kinds[hands.nodes.kind[hands.rowFrom] ?? 0];
  if (hands.nodes.n > hands.rowFrom && first?.class === 'slip' && hands.first === null)
    return false;
  const reading = ask(hands.readings, {
    doubt: 'same space',
    custom: 'the stitch of the join',
    alternatives: ['the space ahead'],
    local: true,
    ...spanAt(hands, place),
  });
  return reading === 'the space ahead';
}

/** "In previous dtr" at a row's end, where the row is longer than the one beneath: what was made last. */
function justMade(hands: Hands, place: Place): Target | null {
  const word = nounOf(place).stem;
  const kindAt = (id: number) => hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0];
  let node = hands.nodes.n - 1;
  while (node >= hands.rowFrom && kindAt(node)?.class === 'chain') node--;
  const kind = kindAt(node);
  const atEnd = !hasLeft(hands) && node >= hands.rowFrom;
  const named = word !== null && stemOf(word, hands.bench.terms) === kind?.stem;
  return atEnd && named ? { node, space: false, entry: -1 } : null;
}

function takeFirst(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  if (beginsSide(hands)) return takeNext(hands, { ...place, pick: 'next' }, at);
  const noun = nounOf(place);
  if (noun.kind === 'chain' && endsOnFirstChain(hands)) {
    // A chain made just before it spans what lies between.
    const kind = hands.bench.kinds.kinds[hands.nodes.kind[hands.nodes.n - 1] ?? 0];
    if (kind?.class === 'chain') hands.pos = hands.edge.n - 1;
    return takeLast(hands, { ...place, pick: 'last' }, at);
  }
  if (!hands.first) return noun.kind === 'chain' ? takeChain(hands) : takeNext(hands, place, at);
  const space = noun.kind === 'space' && hands.pos < 3 ? seek(hands, (i) => isSpace(hands, i)) : -1;
  if (space >= 0 && hands.repeats === 0 && !hands.edge.ring) return takeSpaceAt(hands, space);
  // "*1 sc in first st, 2 sc in next; rep from *": the first of each pass is the next there is.
  const again = hands.repeats > 0 && noun.kind !== 'chain' && hasLeft(hands);
  if (again) return takeNext(hands, place, at);
  if (noun.kind === 'chain' || hands.edge.kind === 'foundation') return takeOff(hands, hands.first);
  const ahead = seek(
    hands,
    (i) => hands.edge.type[i] === (noun.kind === 'space' ? SPACE : COUNTED),
  );
  if (ahead >= 0 && hands.pos === 0) return takeNext(hands, place, at);
  return takeOff(hands, hands.first);
}

/** "… ch 1, dc in first ch made" at the end of a first row: the chain made first is the last one there. */
function endsOnFirstChain({ edge, pos, first, foundation, nodes, rowFrom }: Hands): boolean {
  if (edge.kind !== 'foundation' || edge.ring || !first || pos === 0) return false;
  const lastNode = edge.node[edge.n - 1];
  const left = edge.n - pos;
  return (
    lastNode === foundation?.from &&
    lastNode !== first.node &&
    left > 0 &&
    left <= 4 &&
    nodes.n > rowFrom
  );
}

/** "In last st": whatever stands before it is left over, and that is noticed. */
function takeLast(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const noun = nounOf(place);
  if (noun.kind === 'start-chain') return takeStartChain(hands);
  const wanted = noun.kind === 'space' && hands.edge.spaces > 0 ? SPACE : COUNTED;
  const chains = wanted === SPACE ? numberFor(hands, noun.chains) : null;
  const sized = chains !== null && hands.edge.run.includes(chains);
  let entry = lastNamed(hands, noun);
  for (let i = hands.limit - 1; i >= hands.pos && entry < 0; i--) {
    // "In last ch-2 sp (do not work in turning ch)": the last of that length, where there are such.
    if (hands.edge.type[i] === wanted && (!sized || hands.edge.run[i] === chains)) entry = i;
  }
  if (entry < 0) return hands.last && hands.edge.open ? takeOff(hands, hands.last) : lack(hands);
  const before = countBetween(hands, hands.pos, entry);
  // "V-st in each ch-1 sp, dc in last st": the stitches beside the last space are passed with it.
  // From the middle of a shell the rest of it is passed as well.
  const beside =
    (hands.last?.space === true && before <= hands.passed) ||
    endOfGroupStoodIn(hands) === entry - 1;
  const over = chainsMade(hands);
  // "Rep from * to last 5 sc, ch 1, tr in last sc": those between are skipped, as in each repeat.
  const isTold = over > 0 && hands.stopsBefore === before + 1 && hands.skips.has(before);
  if (before > over && wanted === COUNTED && !beside && !isTold) leaveOver(hands, before, at);
  return wanted === SPACE ? takeSpaceAt(hands, entry) : takeStitchAt(hands, entry);
}

/** "Sc in last sc", behind which stitches of other names stand: the half of a shell in which a round began; -1: none. */
function lastNamed(hands: Hands, { stem }: AnyNoun): number {
  const { edge, nodes, bench, limit, pos } = hands;
  if (!stem || edge.kind !== 'row') return -1;
  const wanted = stemOf(stem, bench.terms);
  for (let i = limit - 1; i >= pos; i--) {
    const kind = bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0];
    if (edge.type[i] === COUNTED && kind?.stem === wanted) return i;
  }
  return -1;
}

function countBetween(hands: Hands, from: number, to: number): number {
  let n = 0;
  for (let i = from; i < to; i++) if (hands.edge.type[i] === COUNTED) n++;
  return n;
}

function leaveOver(hands: Hands, left: number, at: { from: number; to: number }): void {
  if (hands.edge.open) return;
  const have = hands.edge.counted;
  fact(hands, { kind: 'left', left, have, used: have - left, ...spanAt(hands, at) });
}

/** "In top of beg ch-3": a chain of that length. */
function takeTop(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const target = takeNext(hands, place, at);
  const noun = nounOf(place);
  if (noun.kind !== 'start-chain') return target;
  const of = numberFor(hands, noun.chains);
  checkNamedChain(hands, target.node, { nth: null, of }, spanAt(hands, place));
  return target;
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
    // "3rd ch of ch", with no number: the turning chain, whose last chains are the space here.
    const ofTurn = noun.kind === 'chain' && nth > run && startChainEntry(hands) !== null;
    if (ofTurn) return takeStartChain(hands);
    const target = takeSpaceAt(hands, entry);
    if (nth > run)
      fact(hands, { kind: 'no-place', what: `chain ${nth} of ${run}`, ...spanAt(hands, at) });
    return takeOff(hands, { ...target, node: target.node + Math.min(nth, run) - 1, space: false });
  }
  // "Ch 6, sc in 2nd ch from hook, hdc in 3rd ch, dc in 4th ch": on along the chain just made.
  if (hands.aside && nounOf(place).kind === 'chain' && !place.of && hands.pos < nth) {
    hands.pos = Math.min(nth - 1, hands.limit);
    return takeStitch(hands, 'passed');
  }
  // "Skip 3 dc, sc in 4th dc": counted from where the skip began.
  if (!place.of && skippedUpTo(hands, nth)) return takeNext(hands, { ...place, pick: 'next' }, at);
  // "Dc in 3rd ch" at a row's end, with no chain named: the turning chain's.
  if (nounOf(place).kind === 'chain' && !place.of && startChainEntry(hands) !== null) {
    return takeStartChain(hands);
  }
  // "Sc in first st, 2 sc in second st": the words count along, and the second is simply the next.
  // "Skip first 2 chs, dc in 3rd ch" counts from the hook.
  const fromHook = hands.edge.kind === 'foundation' && hands.pos === nth - 1;
  const taken = hands.used - hands.usedAtPass === nth - 1;
  const along = !place.of && nth > 1 && (taken || fromHook);
  let target = takeNext(hands, place, at);
  for (let i = 1; i < nth && !along; i++) target = takeNext(hands, place, at);
  return target;
}

/** Were as many places skipped right before as stand in front of the nth? */
const skippedUpTo = ({ skipped, pos, edge }: Hands, nth: number): boolean =>
  nth > 1 && skipped.to === pos && skipped.n === nth - 1 && edge.kind === 'row';

const SPACE_NOUN: Noun = { ...PLAIN_NOUN, kind: 'space' };

function takeCentre(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const of = place.of ?? place;
  const noun = nounOf(of);
  const many = place.of?.pick === 'next' ? numberFor(hands, of.n) : null;
  if (many !== null && many > 2) return takeMiddle(hands, of, many);
  if (place.of === null && noun.kind === 'space') return takeCentreSpace(hands, of, at);
  if (noun.kind === 'gap') return takeNext(hands, of, at);
  const begun = noun.kind === 'space' ? -1 : middleOfBegun(hands, place.of?.pick === 'next');
  if (begun >= 0) return takeStitchAt(hands, begun);
  const side = centreOfSide(hands, place);
  if (side >= 0) return takeStitchAt(hands, side);
  // "In center of next shell" of two stitches side by side with a loop between: that loop.
  const bare = place.of?.pick === 'next' && place.nouns.length === 0 && noun.kind === 'group';
  const known = bare && (noGroupAhead(hands) || hasGroupsNamed(hands, noun.word));
  if (bare && !known && hands.edge.spaces > 0 && !nextGroup(hands))
    return takeNext(hands, { ...of, nouns: [SPACE_NOUN] }, at);
  const run = centreOfRun(hands, place);
  if (run !== null) return run < 0 ? lack(hands) : takeStitchAt(hands, run);
  if (noun.kind === 'space' || hands.edge.spaces > 0) return takeNext(hands, of, at);
  if (place.of === null && centreStitch(hands) === hands.pos) return takeStitch(hands, 'passed');
  const group = nextGroup(hands, noun.word);
  if (!group) return noGroupAhead(hands) ? lack(hands) : takeStitch(hands, 'passed');
  const target = takeStitchAt(hands, middleOf(hands, group));
  return target;
}

/**
 * "In center dc of next 3-dc group" where the next stitches are one side of a corner, 3 dc, ch 2, 3 dc: the
 * stitches up to its space are the group; -1: no group is named by its stitches, or the next holds no space.
 */
function centreOfSide(hands: Hands, { nouns: [own], of }: Place): number {
  const { edge } = hands;
  if (of?.pick !== 'next' || nounOf(of).kind !== 'group' || nounOf(of).stem === null) return -1;
  if (own?.kind !== 'stem' && own?.kind !== 'stitch') return -1;
  const group = nextGroup(hands);
  if (!group) return -1;
  let to = group.from;
  while (to < group.to && edge.type[to] === COUNTED) to++;
  const n = to - group.from;
  return to < group.to && n > 2 && n % 2 === 1 ? group.from + (n >> 1) : -1;
}

/**
 * "Ch 5, sc in center dc of next group" where groups are dc side by side, each in a place of its own, with
 * chains between: the middle of the next such run; -1: no whole one is left; `null`: none is meant.
 */
function centreOfRun(hands: Hands, { nouns: [own], of }: Place): number | null {
  const { edge, pos, limit } = hands;
  const noun = nounOf(of);
  if (of?.pick !== 'next' || noun.kind !== 'group' || edge.kind !== 'row') return null;
  if (edge.spaces === 0 || (own?.kind !== 'stem' && own?.kind !== 'stitch')) return null;
  if ((noun.word !== 'group' && noun.stem === null) || nextGroup(hands)) return null;
  let from = pos;
  // The rest of a run that was begun is none.
  if (pos > 0) while (from < limit && edge.type[from - 1] !== SPACE) from++;
  while (from < limit && edge.type[from] !== COUNTED) from++;
  let to = from;
  while (to < edge.n && edge.type[to] === COUNTED) to++;
  const n = to - from;
  // The first half of that in which the round began lies at its end.
  const isBegun = to === edge.n && edge.ring && pos > 0 && edge.type[0] === COUNTED;
  if (n === 0 || isBegun) return -1;
  return n > 2 && n % 2 === 1 ? from + (n >> 1) : null;
}

function takeCentreSpace(hands: Hands, of: Place, at: { from: number; to: number }): Target {
  const middle = centreSpace(hands);
  return middle < 0 ? takeNext(hands, of, at) : takeSpaceAt(hands, middle);
}

/** "Centre sc of next 3 sc": the stitches around the middle one are passed. */
function takeMiddle(hands: Hands, of: Place, many: number): Target {
  const single: Place = { ...of, n: null };
  const passed = (many - 1) >> 1;
  for (let i = 0; i < passed; i++) takeNext(hands, single, of);
  const target = takeNext(hands, single, of);
  for (let i = passed + 1; i < many; i++) takeNext(hands, single, of);
  hands.last = target;
  return target;
}

/** A stitch that was skipped rows ago: the hands move to that run and work round it. */
function takeSkipped(hands: Hands, place: Place, at: { from: number; to: number }): Target {
  const named = place.row ?? place.of?.row ?? null;
  const onRun = hands.edge === hands.skippedEdge && hands.pos < hands.edge.n;
  // Behind a skip "the skipped st" is what was just passed; on a run "next unworked st" goes on along it.
  const goesOn = onRun && place.pick === 'next';
  if (named === null && hands.skippedHere && !goesOn) return takeOff(hands, hands.skippedHere);
  if (onRun) return takeStitch(hands, 'passed');
  if (hands.edge === hands.skippedEdge && named !== null) return lack(hands);
  if (!toSkipped(hands, named)) {
    // The run is worked to its end, and there is no other.
    if (hands.edge === hands.skippedEdge) return lack(hands);
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
  // "In 3rd unworked st of row 8": those before it are left.
  for (let passed = 1; place.pick === 'nth' && passed < (place.nth ?? 1); passed++) {
    takeStitch(hands, 'passed');
  }
  return takeStitch(hands, 'passed');
}
