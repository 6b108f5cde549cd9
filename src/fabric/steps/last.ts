/** Places counted from the end of the row. */
import type { Place, Until } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { COUNTED, SPACE } from '../edge.ts';
import { fact, type Hands, numberFor, remaining, spanAt } from '../hands.ts';
import { startChainLimit } from '../next.ts';
import { nounOf } from '../noun.ts';
import { nextSpace, takeStitch } from '../take.ts';
import { endOfSide, isOnPiece } from './border.ts';

/** "In last 3 sts": what stands before them would be left over. */
export function openLast(hands: Hands, place: Place, many: number): void {
  const before = remaining(hands) - many;
  if (nounOf(place).kind === 'space' || before <= 0 || hands.edge.open) return;
  const have = hands.edge.counted;
  fact(hands, { kind: 'left', left: before, have, used: have - before, ...spanAt(hands, place) });
  for (let i = 0; i < before; i++) {
    takeStitch(hands, 'passed');
    hands.used--;
  }
}

/** "Dc in last 2 dc, dc in top of ch 3": the chain's top, which is named behind, is none of the two. */
export function beforeTop(hands: Hands, place: Place | null, here: Here, work: () => void): void {
  const { kind } = nounOf(place);
  const stitch = kind === 'stitch' || kind === 'stem';
  if (place?.pick !== 'last' || !stitch || !namesStartChain(here)) return work();
  const { limit } = hands;
  hands.limit = Math.min(limit, startChainLimit(hands));
  work();
  hands.limit = limit;
}

/** "(Skip 2 ch, shell in next ch) across to the last ch", with nothing for that last one: it is taken too. */
export const throughLast = (hands: Hands, until: Until | null, here: Here): boolean =>
  until?.kind === 'last' &&
  !until.chain &&
  here.top &&
  numberFor(hands, until.n) === 1 &&
  !here.steps.slice(here.i + 1).some(({ kind }) => WORKS.has(kind));

const WORKS: ReadonlySet<string> = new Set(['work', 'group', 'repeat', 'even', 'boxes', 'join']);

/** "To last 2 dc, dc in last 2 dc, dc in top of ch 3": the chain stands behind the last two. */
export function beforeTopToo(hands: Hands, until: Until | null, here: Here): Until | null {
  if (until?.kind !== 'last' || until.chain || !namesStartChain(here)) return until;
  // "To last space; 2 dc in last space, dc in 3rd ch of ch-4": the chain's own space is the last one.
  if (until.noun?.kind === 'space') return until;
  const next = here.steps.slice(here.i + 1).find(({ kind }) => kind !== 'remark');
  const last = next?.kind === 'work' && next.place?.pick === 'last' ? next.place : null;
  const same = last && (numberFor(hands, last.n) ?? 1) === numberFor(hands, until.n);
  return same ? { ...until, chain: true } : until;
}

/** Entry before which "each st to end" stops, since words that follow name what is there. */
export function reserved(hands: Hands, here: Here): number {
  const limit = namesStartChain(here) ? startChainLimit(hands) : hands.edge.n;
  const next = here.steps
    .slice(here.i + 1)
    .find((step) => step.kind !== 'remark' && step.kind !== 'mark');
  const place = next?.kind === 'work' || next?.kind === 'group' ? next.place : null;
  const corner = place !== null && nounOf(place).kind === 'corner';
  if (corner && (overStitches(here) || overChains(here)) && isOnPiece(hands))
    return endOfSide(hands, limit);
  if (place && goesToSpace(place) && overStitches(here)) return beforeSpace(hands, place, limit);
  if (place?.pick === 'last' && nounOf(place).kind === 'space')
    return Math.min(limit, lastSpaceBehind(hands, here));
  if (place?.pick !== 'last') return limit;
  // "Hdc in each to end. 6 hdc in last": the last one is not in "each".
  let left = numberFor(hands, place.n) ?? 1;
  for (let i = hands.edge.n - 1; i >= hands.pos; i--) {
    if (hands.edge.type[i] === COUNTED && --left === 0) return Math.min(limit, i);
  }
  return limit;
}

/** "Sc in each st and ch-sp around, 2 sc in last ch-sp": the last space is not in "each". */
function lastSpaceBehind({ edge, pos }: Hands, here: Here): number {
  const step = here.steps[here.i];
  const nouns = step?.kind === 'work' ? (step.place?.nouns ?? []) : [];
  if (nouns.length < 2 || !nouns.some(({ kind }) => kind === 'space')) return edge.n;
  for (let i = edge.n - 1; i >= pos; i--) if (edge.type[i] === SPACE) return i;
  return edge.n;
}

/** The words at hand go over stitches alone, and to no end that they name. */
function overStitches(here: Here): boolean {
  const step = here.steps[here.i];
  if (step?.kind !== 'work') return false;
  const until = step.place?.until ?? step.until;
  const { kind } = nounOf(step.place);
  const stitchesOnly =
    (step.place?.nouns.length ?? 0) <= 1 && (kind === 'stitch' || kind === 'stem');
  return stitchesOnly && (until === null || until.kind === 'end');
}

/** "Sc in each ch across", along the foundation. */
function overChains({ steps, i }: Here): boolean {
  const step = steps[i];
  const place = step?.kind === 'work' ? step.place : null;
  return nounOf(place).kind === 'chain' && (place?.until ?? null)?.kind !== 'last';
}

const goesToSpace = (place: Place): boolean =>
  (place.pick === 'next' || place.pick === 'this') &&
  (nounOf(place).kind === 'space' || nounOf(place).kind === 'corner');

/** "Dc in each dc across side, (dc, ch 2, dc) in corner sp": the side ends where the space is. */
function beforeSpace(hands: Hands, place: Place, limit: number): number {
  const noun = nounOf(place);
  if (hands.edge.spaces === 0) return limit;
  const corner = noun.kind === 'corner' || noun.corner;
  const entry = nextSpace(hands, numberFor(hands, noun.chains), corner);
  return entry > hands.pos ? Math.min(limit, entry) : limit;
}

/** "…in each st across, dc in top of tch": the chain's top is left for what names it. */
const namesStartChain = (here: Here): boolean =>
  here.steps
    .slice(here.i + 1)
    .some(
      (next) =>
        (next.kind === 'work' || next.kind === 'group') &&
        next.place !== null &&
        nounOf(next.place.of ?? next.place).kind === 'start-chain',
    );
