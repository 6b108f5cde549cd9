/** Puts a step that was read on its run, with what only its neighbours tell. */

import { looseGroup } from './groups.ts';
import { hintOf, isHinted } from './hints.ts';
import { joinBehind, settleTarget } from './join.ts';
import { layersAhead, readLayers } from './layers.ts';
import { leftOver } from './left-over.ts';
import { PLAIN_NOUN } from './noun.ts';
import { readPlace } from './place.ts';
import { placeWith } from './place-draft.ts';
import { isMaking } from './plain-count.ts';
import { clauseEnds, isWord, kindAt, type Reader, toOf } from './reader.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { sentenceTimes } from './sentence-repeat.ts';
import { STAR, starRole } from './star.ts';
import { T } from './tokens.ts';
import type { Place, Step, WorkStep } from './tree.ts';
import { readYarnName } from './yarn-name.ts';

export function putStep(r: Reader, run: Run, step: Step | null): void {
  if (step) {
    run.out.push(step);
    if (isMaking(step)) run.aside = false;
  } else leftOver(r, run);
}

/** "3 sc A, 2 sc B": the letter says with which yarn these are worked. */
function yarnBehind(r: Reader, run: Run): void {
  const start = r.at;
  if (kindAt(r) !== T.word || (r.to[start] ?? 0) - (r.from[start] ?? 0) !== 1) return;
  if (!clauseEnds(r, 1) && kindAt(r, 1) !== T.open) return;
  const yarn = readYarnName(r);
  if (yarn === null) return;
  const work = run.out.pop();
  run.out.push({ kind: 'yarn', yarn, act: 'with', from: r.from[start] ?? 0, to: toOf(r) });
  if (work) run.out.push(work);
}

/** "3 sc on the other side of the ch": the chain beneath is turned to before the work. */
function otherSideBehind(r: Reader, work: WorkStep): Step | null {
  const chains = work.place?.pick === 'each' && work.place.nouns[0]?.kind === 'chain';
  if (work.place && work.place.nouns.length > 0 && !chains) return null;
  const start = r.at;
  let k = 0;
  if (
    isWord(r, W.in) ||
    isWord(r, W.of) ||
    isWord(r, W.on) ||
    isWord(r, W.along) ||
    isWord(r, W.across)
  )
    k = 1;
  if (isWord(r, W.the, k)) k++;
  // "in other" was taken for a place before the side was seen.
  const other = isWord(r, W.other, k) || isWord(r, W.opposite, k) || isWord(r, W.other, -1);
  if (!isWord(r, W.other, -1)) k++;
  if (!other || !isWord(r, W.side, k) || !isWord(r, W.of, k + 1)) return null;
  r.at += k + 2;
  const place = readPlace(r);
  const noun = place?.nouns[0];
  if (noun?.kind !== 'chain' && noun?.kind !== 'start-chain') {
    r.at = start;
    return null;
  }
  return { kind: 'other-side', chains: null, rowEnds: false, from: work.from, to: toOf(r) };
}

/** "sc in the bottom of next 21 ch": the same turn to the chain's other side, said by its loops. */
function bottomOfChains(work: WorkStep): Step[] | null {
  const chains = work.place?.pick === 'same' ? work.place.of : eachLoopOf(work.place);
  const many = chains?.pick === 'each' || (chains?.n?.values[0] ?? 1) > 1;
  if (!many || chains?.nouns[0]?.kind !== 'chain') return null;
  const span = { from: work.from, to: work.to };
  return [
    { kind: 'other-side', chains: null, rowEnds: false, ...span },
    { ...work, place: chains },
  ];
}

/** "sc in each remaining loop of foundation ch", "sc across unused loops of beginning chain": one for each chain. */
function eachLoopOf(place: Place | null): Place | null {
  const [noun] = place?.nouns ?? [];
  const all = place?.pick === 'each' || (place?.pick === 'this' && noun?.plural);
  if (!place || !all || place.n || noun?.kind !== 'space' || noun.chains) return null;
  const chain = place.of?.nouns[0];
  if (!chain || chain.chains) return null;
  const isFoundation = chain.kind === 'chain' && FOUNDATION.test(chain.word);
  if (!isFoundation && chain.kind !== 'start-chain') return null;
  return { ...place, pick: 'each', each: true, nouns: [{ ...chain, kind: 'chain' }], of: null };
}

const FOUNDATION = /^(?:foundation|beginning|starting|base)$/;

/** The stitches that go there: as many as are said, before the name or of the chains. */
function sideWork(r: Reader, work: WorkStep): WorkStep {
  let n = work.n;
  for (let k = -1; n === null && k > -6; k--) {
    const at = r.at + k;
    if (r.kind[at] === T.number)
      n = { from: r.from[at] ?? 0, to: r.to[at] ?? 0, values: [r.value[at] ?? 0] };
  }
  return { ...work, n, place: null, to: toOf(r) };
}

/** "4 ch, 1 dc for 7 more": so often again. */
const forSoManyMore = (r: Reader): boolean =>
  isWord(r, W.for) && kindAt(r, 1) === T.number && isWord(r, W.more, 2) && clauseEnds(r, 3);

/** "2 sc inc in next st", "2 dc dec in 4th ch": one increase or decrease, and of how many stitches it is. */
function ofSoMany(work: WorkStep): WorkStep {
  const { n, numberAfter, stitch, place } = work;
  const isShaped = stitch.shape === 'increase' || stitch.shape === 'together';
  if (!isShaped || stitch.stem === null || stitch.legs !== null || numberAfter) return work;
  const legs = n?.values.length === 1 ? (n.values[0] ?? 0) : 0;
  if (!place || place.n || legs < 2 || legs > MOST_LEGS || work.alsoIn.length > 0) return work;
  const isOne = place.pick === 'next' || place.pick === 'nth' || place.pick === 'same';
  const isEach = place.pick === 'each' && stitch.shape === 'increase';
  return isOne || isEach ? { ...work, n: null, stitch: { ...stitch, legs } } : work;
}

const MOST_LEGS = 4;

/** "Working along the row ends, sc in each row": in the end of each. */
function alongEnds(r: Reader, run: Run, work: WorkStep): WorkStep {
  const last = run.out.at(-1);
  if (last?.kind !== 'other-side' || !last.rowEnds || work.place || work.n) return work;
  const each = isWord(r, W.each, -2) || isWord(r, W.every, -2);
  if (!each || !(isWord(r, W.row, -1) || isWord(r, W.round, -1))) return work;
  const span = { from: r.from[r.at - 3] ?? work.from, to: toOf(r) };
  const nouns = [{ ...PLAIN_NOUN, kind: 'row-end' as const }];
  return { ...work, place: placeWith(span, { pick: 'each', each: true, nouns }) };
}

const SIDE = hintOf([W.side]);

export function workStep(r: Reader, run: Run, read: WorkStep): void {
  const work = alongEnds(r, run, ofSoMany(read));
  const join =
    work.stitch.stem === 'ss' && work.stitch.shape === 'one' ? joinBehind(r, work) : null;
  run.aside = false;
  const beneath = isHinted(r, SIDE) ? otherSideBehind(r, work) : null;
  const bottom = bottomOfChains(work);
  if (bottom) run.out.push(...bottom);
  else if (beneath) run.out.push(beneath, work.place?.pick === 'each' ? work : sideWork(r, work));
  else if (layersAhead(r)) {
    const step = readLayers(r, r.at, work);
    run.out.push({ ...step, from: work.from });
  } else if (join) run.out.push(settleTarget(join));
  else {
    run.out.push(work);
    looseGroup(r, run);
    yarnBehind(r, run);
    if (kindAt(r) === T.star && starRole(r, r.at) === STAR.times) return;
    const k = kindAt(r);
    if (
      k === T.number ||
      k === T.times ||
      isWord(r, W.x) ||
      isWord(r, W.once) ||
      isWord(r, W.twice) ||
      isWord(r, W.thrice) ||
      forSoManyMore(r)
    ) {
      sentenceTimes(r, run, r.at);
    }
  }
}
