/** Where "to last 3 sts", "across to corner" end, and whether there is more before that. */
import { type Place, type StemWord, stemOf, type Until } from '../notation/index.ts';
import { COUNTED, groupAround, NAMED, SPACE } from './edge.ts';
import { type Hands, numberFor } from './hands.ts';
import { checkSize, isCornerStitch, isSpaceOfSpecial, startChainLimit } from './next.ts';
import { nounOf } from './noun.ts';
import { endOfSide, isOnPiece } from './steps/border.ts';
import { centreSpace, centreStitch, type Gaps, nextGroup, nextSpace, seek } from './take.ts';

/** Entry at which "to last 3 sts", "to next corner" stops; the edge's end for "around", "across". */
export function limitOf(hands: Hands, until: Until | null): number {
  const { edge } = hands;
  if (!until || until.kind === 'end' || until.kind === 'length') return hands.limit;
  if (until.kind === 'last') {
    if (until.noun?.kind === 'group' && until.noun.word === 'group')
      return beforeLastGroups(hands, numberFor(hands, until.n) ?? 1);
    let left = numberFor(hands, until.n) ?? 0;
    const block = hands.cornerBlocks && until.noun?.kind === 'box';
    const wanted = until.noun?.kind === 'space' || block ? SPACE : COUNTED;
    const row = until.chain ? Math.min(edge.n, startChainLimit(hands)) : behindLast(hands, until);
    const end = wanted === COUNTED ? Math.min(row, endOfPass(hands)) : row;
    for (let i = end - 1; i >= hands.pos; i--) {
      if (left === 0) break;
      if (edge.type[i] === wanted && --left === 0) return i;
    }
    return left === 0 ? hands.limit : hands.pos;
  }
  const entry = placeLimit(hands, until);
  return until.before === null ? entry : sooner(hands, entry, numberFor(hands, until.before) ?? 0);
}

/**
 * "To last sc, ch 2, dc in last sc" where stitches of other names stand behind the last sc: the entry behind
 * it; the edge's end where none do, or none is so called.
 */
function behindLast(
  { edge, nodes, bench, pos }: Hands,
  { noun }: Until & { kind: 'last' },
): number {
  if (!noun?.stem || edge.kind !== 'row') return edge.n;
  const wanted = stemOf(noun.stem, bench.terms);
  for (let i = edge.n - 1; i >= pos; i--) {
    const kind = bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0];
    if (edge.type[i] === COUNTED && kind?.stem === wanted) return i + 1;
  }
  return edge.n;
}

/** "To last 3-dc group": where the last of the stitches begin that stand side by side in one place. */
function beforeLastGroups({ edge, nodes, pos, limit }: Hands, n: number): number {
  let left = n;
  for (let i = edge.n - 1; i >= pos; i--) {
    if (edge.type[i] !== COUNTED) continue;
    const { size, at } = groupAround(edge, nodes, i);
    if (size < 2) continue;
    const first = i - at;
    if (--left === 0) return Math.max(pos, first);
    i = first;
  }
  return left === n ? limit : pos;
}

/**
 * "*Ch 3, 2 sc in next sp, sc in each sc to last sc of group; rep from * around": in a repeat the last are
 * those of the pass, before the next space; the row's own would leave nothing to repeat.
 */
function endOfPass(hands: Hands): number {
  const { edge, limit } = hands;
  if (hands.repeats === 0 || edge.kind !== 'row' || edge.spaces === 0) return edge.n;
  const first = seek(hands, (i) => edge.type[i] === COUNTED);
  for (let i = first; i >= 0 && i < limit; i++) if (edge.type[i] === SPACE) return i;
  return edge.n;
}

/** So many stitches before an entry. */
function sooner({ edge, pos }: Hands, entry: number, n: number): number {
  let left = n;
  let i = entry;
  while (left > 0 && i > pos) if (edge.type[--i] === COUNTED) left--;
  return i;
}

function placeLimit(hands: Hands, until: Until & { readonly kind: 'place' }): number {
  const { edge } = hands;
  const noun = nounOf(until.place);
  if (noun.kind === 'marker') {
    hands.loose = true;
    return hands.limit;
  }
  if (noun.kind === 'start-chain') return startChainLimit(hands);
  // "1 dc in each dc to next 3-dc group"
  const group = noun.kind === 'group' && until.place.pick === 'next' ? nextGroup(hands) : null;
  if (group) return group.from;
  const centre = until.place.pick === 'centre' ? centreSpace(hands) : -1;
  if (noun.kind === 'space' && centre >= 0) return centre;
  if (until.place.pick === 'centre' && noun.kind !== 'space')
    return centreStitch(hands) ?? hands.limit;
  const entry =
    noun.kind === 'space' || (noun.kind === 'corner' && edge.spaces > 0)
      ? nextSpace(hands, numberFor(hands, noun.chains), noun.kind === 'corner' || noun.corner)
      : noun.kind === 'corner'
        ? seek(hands, (i) => isCornerStitch(hands, i))
        : -1;
  if (entry >= 0 && noun.kind === 'space') checkSize(hands, entry, noun, until);
  if (entry < 0 && noun.kind === 'corner' && isOnPiece(hands)) return endOfSide(hands, hands.limit);
  return entry < 0 ? hands.limit : entry;
}

/** "In each ch-2 sp of next shell": the end of that shell; elsewhere where the words say. */
export function limitWithin(hands: Hands, place: Place | null, until: Until | null): number {
  const of = until ? null : (place?.of ?? null);
  if (of?.pick !== 'next' || nounOf(of).kind !== 'group') return limitOf(hands, until);
  const { pos } = hands;
  let end = -1;
  for (let left = numberFor(hands, of.n) ?? 1; left > 0; left--) {
    const group = nextGroup(hands, nounOf(of).word);
    if (!group) break;
    end = group.to;
    hands.pos = end;
  }
  hands.pos = pos;
  return end < 0 ? limitOf(hands, until) : end;
}

/**
 * "*Ch 3, dc in each dc; rep from * 5 times": in each pass the stitches up to the next space, not all that
 * are left of the row. `leadsOn`: a chain follows, as in "sc in each dc, *ch 3, dc in each sc; rep from *".
 */
export function endOfRun(
  hands: Hands,
  { place, until, leadsOn }: { place: Place | null; until: Until | null; leadsOn: boolean },
): number {
  const { edge, limit } = hands;
  const [noun, more] = place?.nouns ?? [];
  const isRun =
    (hands.repeats > 0 || leadsOn) &&
    place?.pick === 'each' &&
    !place.n &&
    (!place.of || isRunOfStitches(place.of)) &&
    !until;
  if (!isRun || more || noun?.kind !== 'stem' || edge.kind !== 'row' || edge.spaces === 0)
    return limit;
  const first = seek(hands, (i) => edge.type[i] === COUNTED);
  for (let i = first; i >= 0 && i < limit; i++) if (edge.type[i] === SPACE) return i;
  return limit;
}

/** "Each remaining sc of sc group": those side by side, up to the next space. */
const isRunOfStitches = ({ pick, nouns: [noun, more], n }: Place): boolean =>
  pick === 'this' && !n && !more && noun?.kind === 'group' && noun.stem !== null;

/** "In ch-1 sp of each V-st across": each such space; and the first of the next group. */
export function ofEach(place: Place): Place {
  // "V-st in centre of each V-st", "sc in centre dc of each shell": the middle of each.
  if (place.of?.pick === 'each' && place.pick === 'centre' && isGroupOnly(place.of))
    return nounOf(place).kind === 'space' ? { ...place.of, nouns: place.nouns } : place.of;
  if (place.of?.pick === 'each')
    return { ...place, pick: 'each', each: true, until: place.of.until, n: null, of: null };
  // "In 1st 3 dc of next petal": the next three there are.
  const begins = place.pick === 'first' && place.n && place.of?.pick === 'next' && !place.of.n;
  return begins && nounOf(place.of).kind === 'group' ? { ...place, pick: 'next', of: null } : place;
}

const isGroupOnly = (place: Place): boolean =>
  nounOf(place).kind === 'group' && place.nouns.length === 1;

/** "Shell in each sc" over stitches of that name and of others. */
export function hasOthers(hands: Hands, place: Place | null): boolean {
  const { stem } = nounOf(place);
  if (!stem || hands.edge.kind !== 'row') return false;
  let called = 0;
  let others = 0;
  for (let i = hands.pos; i < hands.limit; i++) {
    if (hands.edge.type[i] !== COUNTED) continue;
    if (isCalled(hands, i, stem)) called++;
    else others++;
  }
  return called > 0 && others > 0;
}

/** A name, and what the first stitch ahead that has another is. */
export function otherCalled(
  hands: Hands,
  word: StemWord,
): { readonly named: string; readonly found: string } | null {
  const { edge, nodes, bench } = hands;
  const named = stemOf(word, bench.terms);
  for (let i = hands.pos; i < hands.limit; i++) {
    if (edge.type[i] !== COUNTED) continue;
    const found = bench.kinds.kinds[nodes.kind[edge.node[i] ?? 0] ?? 0]?.stem;
    if (named && found && found !== named) return { named, found };
  }
  return null;
}

/** Has the stitch at an entry that name? */
function isCalled({ edge, nodes, bench }: Hands, entry: number, word: StemWord): boolean {
  const kind = bench.kinds.kinds[nodes.kind[edge.node[entry] ?? 0] ?? 0];
  return kind?.stem === stemOf(word, bench.terms);
}

/** "V-st in each V-st, dc in last dc": the last group was taken, and plain stitches follow. */
function isPastGroups(hands: Hands): boolean {
  const { edge, nodes, last, pos } = hands;
  if (edge.kind !== 'row' || edge.ring || !last || last.entry < 0 || pos === 0) return false;
  return groupAround(edge, nodes, pos - 1).size > 1 && nextGroup(hands) === null;
}

/** Is there another place of this kind before the limit? */
export function hasNext(hands: Hands, place: Place | null, gaps: Gaps): boolean {
  const noun = nounOf(place);
  const { edge } = hands;
  const both = place !== null && place.nouns.length > 1;
  // "Sc in each ch across" over a row that has no chains: its stitches are meant.
  const inChains = noun.kind === 'chain' && edge.kind !== 'foundation' && edge.spaces > 0;
  const wanted = inChains || (noun.kind === 'space' && edge.spaces > 0) ? SPACE : COUNTED;
  const inGroups = noun.kind === 'group' || isSpaceOfSpecial(hands, noun);
  if (inGroups && !both && isPastGroups(hands)) return false;
  for (let i = hands.pos; i < hands.limit; i++) {
    const type = edge.type[i];
    if (type === NAMED) continue;
    if (hands.namedOnly && noun.stem && !isCalled(hands, i, noun.stem)) continue;
    if (both || (gaps !== 'passed' && noun.kind === 'stitch')) return true;
    if (type === wanted) return true;
  }
  return false;
}
