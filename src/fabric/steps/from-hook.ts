/** Counting chains from the hook: "dc in 4th ch from hook", and what the passed chains stand for. */
import {
  heightOf,
  type Place,
  type SkipStep,
  type StemId,
  type Step,
  stemOf,
  type WorkStep,
} from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { edgeBehind } from '../edge.ts';
import { fact, type Hands, make, numberFor, originFor, spanAt, type Target } from '../hands.ts';
import { kindOf } from '../kinds.ts';
import { nounOf } from '../noun.ts';
import { ask } from '../readings.ts';
import { makeChains } from '../start-chain.ts';
import { lack, takeStitch } from '../take.ts';
import { isOnBase } from './box-more.ts';

/** The first of a base made for this row; where the row is one with it, both are its edge from there on. */
function onBase(hands: Hands): Target {
  const target = takeStitch(hands, 'passed');
  const { aside } = hands;
  if (aside?.goesOn && hands.edge !== aside.edge) {
    hands.edge = edgeBehind(hands.edge, aside.edge);
    hands.limit = hands.edge.n;
    hands.aside = aside.back;
  }
  return target;
}

/** Takes the k-th chain from the hook; the chains before it are passed, not used. */
export function countFromHook(
  hands: Hands,
  place: Place,
  step: { from: number; to: number },
): Target {
  const nth = place.nth ?? 1;
  if (isOnBase(hands)) return onBase(hands);
  // "Chain a multiple of 4": how long it is, nobody knows.
  if (nth > hands.edge.n && hands.edge.open) return lack(hands);
  if (nth > hands.edge.n) {
    fact(hands, {
      kind: 'no-place',
      what: `chain ${nth} of ${hands.edge.n}`,
      ...spanAt(hands, step),
    });
    return lack(hands);
  }
  hands.pos = Math.max(hands.pos, nth - 1);
  return takeStitch(hands, 'passed');
}

/**
 * "Ch 4, 11 dc in first ch (12)": the ring is the chain's first, and its others may stand for a stitch, just as
 * in "11 dc in 4th ch from hook".
 */
export function inFirstChain(hands: Hands, { place, stitch, n }: WorkStep): Place | null {
  const { edge, pos, first, into, bench } = hands;
  const ofChain = place?.of?.pick === 'this' && nounOf(place.of).kind === 'chain';
  const inChain = ofChain || (place !== null && nounOf(place).kind === 'chain' && !place.of);
  if (place?.pick !== 'first' || !inChain || place.n) return null;
  if (edge.kind !== 'foundation' || edge.ring || edge.open || pos > 0 || first || into) return null;
  const stem = stitch.stem ? stemOf(stitch.stem, bench.terms) : null;
  const height = stem ? Math.floor(heightOf(stem)) : 0;
  // "Ch 4, dc in first st of ch, *ch 3, 2 dc in same place": just as high as one.
  const many = (numberFor(hands, n) ?? 1) > 3 || (ofChain && edge.n === height + 1);
  if (stitch.shape !== 'one' || height < 2 || !many || edge.n > height + 2) return null;
  return { ...place, pick: 'nth', nth: edge.n, of: null, fromHook: true };
}

/**
 * Do the k - 1 passed chains stand for a stitch? For double crochet (US) in the 4th chain and
 * beyond they do by custom, for shorter stitches not; makers differ, so it is a doubt that the
 * stated count may settle. Longer ones hold a first space: a gap of g over g skipped chains.
 */
export function skippedChains(hands: Hands, step: WorkStep, place: Place): void {
  const passed = (place.nth ?? 1) - 1;
  const named = step.stitch.stem ? stemOf(step.stitch.stem, hands.bench.terms) : null;
  // A special stitch whose making is not followed, in the 5th chain: no single crochet.
  const tall = named === null && hands.stem === 'w0' && passed >= 3;
  const stem = named ?? (tall ? 'w1' : hands.stem);
  const height = Math.floor(heightOf(stem));
  if (hands.first !== null || isOnBase(hands) || standsAlready(hands)) return;
  if (!step.countsAs && (passed < 2 || stem === 'slip')) return;
  if (!step.countsAs && stem === 'w0') return loopBefore(hands, step, passed);
  const counts = passedCount(hands, step, { passed, stem, height });
  if (counts === 'do not count') return leaveTop(hands, step, passed);
  const said = step.countsAs?.chains ?? 0;
  // Mesh: the chains passed hold a space as wide as those that follow ("dc in 8th ch, *ch 2, …").
  const mesh = Math.floor((passed - height) / 2);
  const wide = hands.chainLengths.has(passed - height - 1) ? passed - height - 1 : passed - height;
  const box = isBox(hands, step, { passed, height });
  const gap = counts === WITH_SPACE ? (box ? mesh : wide) : hands.chainLengths.has(mesh) ? mesh : 0;
  // "1 dc in 4th ch (counts as 2 dc)", "2 dc in 3rd ch (counts as 3 dc)": with what is worked there.
  const all = step.countsAs?.stitches ?? 1;
  const n = Math.max(1, all - (numberFor(hands, step.n) ?? 1));
  // A space said in words has as many chains beneath it, where that many were passed.
  const under = said > 0 && passed - height >= 2 * said ? said : gap;
  const base = Math.min(hands.edge.n - 1, passed - 1 - Math.max(0, under));
  for (let i = 0; i < n; i++) standFor(hands, step, { stem, chain: Math.max(0, base) });
  if (said + gap > 0) makeChains(hands, said || gap, originFor(hands, step));
}

/** "Skip 3 ch (counts as dc), dc in 4th ch from hook": the skip has said so. */
function standsAlready({ bench, nodes, rowFrom }: Hands): boolean {
  return nodes.n > rowFrom && bench.kinds.kinds[nodes.kind[rowFrom] ?? 0]?.class === 'start';
}

/** Chains that count as nothing have a top all the same: "dc in top of turning ch" of the next row. */
function leaveTop(hands: Hands, step: WorkStep, passed: number): void {
  if (hands.edge.kind !== 'foundation' || hands.edge.ring || step.countsAs) return;
  const node = hands.edge.node[Math.max(0, passed - 1)] ?? -1;
  const foot = { node, space: false, entry: -1 };
  make(hands, kindOf(hands.bench.kinds, 'low'), originFor(hands, step), foot);
}

/**
 * Fewest chains passed before single crochet that hang as a loop: a turn and what is skipped need three,
 * but three are just what a mesh of one chain passes: "sc in 4th ch, *ch 1, sk 1, sc in next ch".
 */
const LOOP = 4;
const MESH = 3;

/** "Sc in 9th ch from hook, *ch 5, sk 3, sc in next ch": the chains passed are the row's first loop. */
function loopBefore(hands: Hands, step: WorkStep, passed: number): void {
  const { chainLengths } = hands;
  const mesh = passed === MESH && chainLengths.has(1);
  if (!mesh && (passed < LOOP || chainLengths.size === 0)) return;
  const reading = ask(hands.readings, {
    doubt: `skipped chains ${passed}`,
    custom: A_LOOP,
    alternatives: ['do not count'],
    local: false,
    ...spanAt(hands, step),
  });
  if (reading !== A_LOOP) return;
  const wide = [...chainLengths].filter((n) => n <= passed);
  const origin = originFor(hands, step);
  if (mesh) {
    const turn = { node: hands.edge.node[0] ?? -1, space: false, entry: -1 };
    const low = make(hands, kindOf(hands.bench.kinds, 'low'), origin, turn);
    hands.startChains.set(low, { n: passed, height: passed, isTold: false });
    return makeChains(hands, 1, origin);
  }
  makeChains(hands, wide.length > 0 ? Math.max(...wide) : passed - 1, origin);
}

const A_LOOP = 'a loop';

/** Chains that are passed stand for a stitch, whose foot is the chain `chain` of the edge (from 0). */
export function standFor(
  hands: Hands,
  step: WorkStep,
  as: { readonly stem: StemId; readonly chain: number },
): void {
  const node = hands.edge.node[as.chain] ?? -1;
  const kind = kindOf(hands.bench.kinds, 'start', as.stem);
  make(hands, kind, originFor(hands, step), { node, space: false, entry: -1 });
}

function passedCount(
  hands: Hands,
  step: WorkStep,
  chain: { passed: number; stem: StemId; height: number },
): string {
  if (step.countsAs) {
    if (!step.countsAs.counts) return 'do not count';
    // "1 hdc in 3rd ch from hook (counts as 1 hdc)": the chains passed, or the stitch just made.
    const { stitches, from, named } = step.countsAs;
    const own =
      !named && step.n !== null && stitches === numberFor(hands, step.n) && from > step.from;
    if (!own) return 'count';
    return ask(hands.readings, {
      doubt: `skipped chains ${chain.passed}`,
      custom: 'count',
      alternatives: ['do not count'],
      local: false,
      ...spanAt(hands, step),
    });
  }
  // Notes that call a ch 3 no stitch mean the three chains passed as well.
  const stands = chain.height >= 3 && !hands.uncounted.has(chain.passed);
  const box = stands && isBox(hands, step, chain);
  const stitch = chain.passed >= chain.height && stands ? 'count' : 'do not count';
  const custom = box ? WITH_SPACE : stitch;
  // "Hdc in 2nd ch from hook": nobody counts one chain that is only passed (common practice).
  const others = stitch === 'count' ? ['do not count'] : chain.passed > 1 ? ['count'] : [];
  if (box) others.unshift(stitch);
  // "Dc in 5th ch" over a mesh whose ch 3 is dc and ch 1: the space is in the chains passed.
  const beside = chain.passed - chain.height;
  const { chainLengths } = hands;
  const mesh = chainLengths.size > 0 && (beside === 1 || chainLengths.has(beside - 1));
  if (mesh && !box) others.push(WITH_SPACE);
  return ask(hands.readings, {
    doubt: `skipped chains ${chain.passed}`,
    custom,
    alternatives: others,
    local: false,
    ...spanAt(hands, step),
  });
}

/** "Ch 6, dc in 6th ch": the one stitch in the last chain closes a box, with which a corner begins. */
function isBox(
  { chainLengths, edge }: Hands,
  { n, stitch }: WorkStep,
  { passed, height }: { readonly passed: number; readonly height: number },
): boolean {
  const beside = passed - height;
  const last = edge.kind === 'foundation' && !edge.ring && passed === edge.n - 1;
  const noOther = [...chainLengths].every((chains) => chains === edge.n);
  const alone = n === null && stitch.shape === 'one' && noOther;
  return last && alone && beside >= 2 && beside % 2 === 0;
}

const WITH_SPACE = 'count, with a space';

/** The first stitch, with the place of the group that it is in: "(sc, ch 1, sc) in 3rd ch from hook". */
function firstWork(steps: readonly Step[]): WorkStep | null {
  const next = steps.find(({ kind }) => kind === 'work' || kind === 'group');
  if (next?.kind !== 'group') return next?.kind === 'work' ? next : null;
  const inner = firstWork(next.steps);
  return inner && { ...inner, place: next.place };
}

/** "Skip first 3 ch (counts as tr), tr in each ch": the same, told as a skip. */
export function skipFromHook(hands: Hands, step: SkipStep, here: Here): boolean {
  if (hands.edge.kind !== 'foundation' || hands.edge.ring || hands.pos > 0 || hands.first)
    return false;
  const n = numberFor(hands, step.place.n) ?? 1;
  const work = firstWork(here.steps.slice(here.i + 1));
  // "Skip first 2 ch (counts as hdc), hdc in 3rd ch from hook": told of the chains, which the stitch counts again.
  if (work && (!work.place?.fromHook || step.countsAs)) {
    const countsAs = step.countsAs ?? work.countsAs;
    skippedChains(hands, { ...work, countsAs }, { ...step.place, nth: n + 1 });
  }
  hands.pos = Math.min(hands.edge.n, n);
  return true;
}
