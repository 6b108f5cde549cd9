/**
 * Several steps in one place, without brackets: "3 dc, ch 2, 3 dc in next sp" and "in next sp work
 * 2 dc, ch 2, 2 dc". With brackets they are read in `bracket.ts`.
 */

import { isAside } from './aside.ts';
import { readChain } from './chain.ts';
import { readCountsAs } from './counts-as.ts';
import { mayBeStitch } from './dictionary.ts';
import { readPlace, readPlaceAfterPreposition } from './place.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  toOf,
  wordAt,
} from './reader.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { starInPlace } from './star-in-place.ts';
import { T } from './tokens.ts';
import type { CountsAs, Place, RepeatStep, Step } from './tree.ts';
import { readWork } from './work.ts';

/** Folds the steps before the last work step into its place when they read as one group. */
export function looseGroup(r: Reader, run: Run): void {
  const { out } = run;
  const last = out.at(-1);
  if (last?.kind !== 'work' || !last.place || last.alsoIn.length > 0) return;
  const paired = last.place.all ? null : pairedBefore(r, run);
  const first = last.place.all
    ? firstOfAll(run)
    : (paired ?? firstOfPetal(run) ?? firstOfGroup(run));
  if (first < 0 || first >= out.length - 1) return;
  // "Work 1 sc and 1 dc in next st": two, and no list of which the last alone goes there.
  const isPair = paired !== null && !(paired > run.sentence && isPlaceless(out[paired - 1]));
  const { place } = last;
  const steps: Step[] = [...out.slice(first, -1), { ...last, place: null, to: last.nameTo }];
  const from = steps[0]?.from ?? last.from;
  out.length = first;
  out.push({ kind: 'group', steps, place, loose: !place.all && !isPair, from, to: last.to });
}

/** "dc and tr in next st": the stitch that "and" joins to the last one; `null`: none. */
function pairedBefore(r: Reader, run: Run): number | null {
  const { out } = run;
  const last = out.at(-1);
  const at = out.length - 2;
  const first = out[at];
  if (last?.kind !== 'work' || first?.kind !== 'work' || at < run.sentence) return null;
  if (
    !last.place ||
    !isSinglePlace(last.place) ||
    last.place.fromHook ||
    last.place.pick === 'this'
  )
    return null;
  const plain = isPlaceless(first) && first.stitch.shape === 'one' && !first.numberAfter;
  if (!plain || first.evenly || first.stitch.stem === 'ss' || last.stitch.stem === 'ss')
    return null;
  if (last.stitch.shape !== 'one') return null;
  const between = r.text.slice(r.base + first.to, r.base + last.from);
  return /^ (?:and|&) $/i.test(between) ? at : null;
}

/** "sc, hdc, dc all in next st": everything before that has no place of its own. */
function firstOfAll(run: Run): number {
  let at = run.out.length - 1;
  while (at > run.sentence && isPlaceless(run.out[at - 1])) at--;
  return at;
}

const isPlaceless = (step: Step | undefined): boolean =>
  step !== undefined &&
  ((step.kind === 'work' && !step.place && !step.until) || step.kind === 'chain');

/**
 * Stitch, chain, stitch … with a place only at the end. Chains that stand first open the row and
 * stay outside.
 */
function firstOfGroup(run: Run): number {
  const { out } = run;
  const last = out.at(-1);
  if (last?.kind !== 'work' || !last.place || !isOnePlace(last.place)) return -1;
  let first = -1;
  for (let at = out.length - 2; at >= run.sentence; at -= 2) {
    const chain = out[at];
    const stitch = out[at - 1];
    if (chain?.kind !== 'chain' || stitch?.kind !== 'work' || at - 1 < run.sentence) break;
    if (stitch.place || stitch.until || stitch.stitch.stem === 'ss' || stitch.evenly) break;
    if (stitch.stitch.shape === 'increase' || stitch.stitch.shape === 'together') break;
    // "ch 3, picot, ch 3, sc in next lp": a picot stands on its chain.
    if (stitch.stitch.shape === 'picot') break;
    first = at - 1;
  }
  // "sc-ch 2-sc in 2nd ch from hook" opens a first row; later in a row it is a picot.
  const opensRow = first === 0 && run.end === 'text' && last.stitch.stem !== 'ss';
  return last.place.fromHook && !opensRow ? -1 : first;
}

/** "Ch 2, 4 dc, sl st in same ch-3 sp": the petal with which a round opens; `null`: none. */
function firstOfPetal({ out }: Run): number | null {
  const last = out.at(-1);
  if (last?.kind !== 'work' || last.stitch.stem !== 'ss' || last.place?.pick !== 'same')
    return null;
  if (last.place.nouns[0]?.kind !== 'space' || out[0]?.kind !== 'chain') return null;
  const between = out.slice(1, -1);
  const petal =
    between.length > 0 && between.every((step) => step.kind === 'work' && isPlaceless(step));
  return petal ? 0 : null;
}

/** "10 sc, ch 5, 10 sc in each lp", "sc, ch, sc in each corner": nobody fills every space with half of that. */
const isEachSpace = ({ pick, n, nouns: [noun] }: Place): boolean =>
  pick === 'each' && n === null && (noun?.kind === 'space' || noun?.kind === 'corner');

const isOnePlace = (place: Place): boolean => isEachSpace(place) || isSinglePlace(place);

const isSinglePlace = (place: Place): boolean =>
  !place.each &&
  (place.n === null || place.n.values.every((n) => n === 1)) &&
  place.pick !== 'each' &&
  place.pick !== 'every-other';

const opensPlace = (sense: number): boolean =>
  sense === W.in ||
  sense === W.around ||
  sense === W.over ||
  sense === W.under ||
  sense === W.between;

/** "in next sp work (2 dc, ch 2, 2 dc)", "into each loop 5 dc, 4 ch, 5 dc". */
export function placeFirst(r: Reader, run: Run): boolean {
  const start = r.at;
  // A list within a list would be read over and over.
  if (run.end === 'list') return false;
  // "All in the same st (sc, hdc, dc)"
  const all = isWord(r, W.all) && run.out.length === run.sentence ? 1 : 0;
  if (!opensPlace(wordAt(r, all))) return false;
  const place = readPlaceAfterPreposition(r);
  if (!place) return false;
  // "In first st *2 hdc, hdc in next st*, repeat around": where the repeat begins.
  if (kindAt(r) === T.star && (place.pick === 'first' || place.pick === 'same')) {
    putWords(r, run, start, 'remark');
    return true;
  }
  if (fromThere(r, run, place, start)) return true;
  placeOfAll(r, run, place);
  if (placeBehindAside(r, run, place, start)) return true;
  // ", in next sp" behind steps without a place closes a group.
  if (closesGroup(r, run, place, start)) return true;
  if (beginsAlong(r, place)) {
    const n = { values: [(place.nth ?? 2) - 1], from: place.from, to: place.to };
    const passed: Place = { ...place, pick: 'first', n, nth: null, fromHook: false };
    run.out.push({
      kind: 'skip',
      place: passed,
      countsAs: null,
      from: fromOf(r, start),
      to: toOf(r),
    });
    r.at++;
    return true;
  }
  if (startsRing(r, place, start)) {
    run.out.push({ kind: 'ring', from: fromOf(r, start), to: toOf(r) });
    return true;
  }
  const stands = passAside(r, place);
  if (kindAt(r) === T.comma || kindAt(r) === T.colon) r.at++;
  if (eatWord(r, W.work)) {
    if (kindAt(r) === T.comma) r.at++;
    // "In the 1st stitch work in a single crochet"
    else if (isWord(r, W.in) && isWord(r, W.a, 1) && mayBeStitch(wordAt(r, 2))) r.at++;
  }
  if (kindAt(r) === T.colon) r.at++;
  // "In each st work sc, ch 1."
  const listed = kindAt(r, -1) === T.colon || isWord(r, W.work, -1);
  if (kindAt(r) === T.star) {
    const starred = starInPlace(r, place, start);
    if (starred) run.out.push(starred);
    else r.at = start;
    return starred !== null;
  }
  const steps = kindAt(r) === T.open && !timesBehind(r) ? bracketSteps(r) : listSteps(r);
  if (steps?.length === 0 && worksThere(r, run, place, start)) return true;
  if (!steps || steps.length === 0) {
    r.at = start;
    return false;
  }
  const [first] = steps;
  if (stands && first?.kind === 'work') steps[0] = { ...first, countsAs: stands };
  if (listed && place.pick === 'each' && !place.n) chainInEach(r, steps);
  run.out.push({ kind: 'group', steps, place, loose: false, from: fromOf(r, start), to: toOf(r) });
  return true;
}

/** "In each ch-3 sp: 2 sc, ch 3, repeat around": the chain that ends the list is one of each, too. */
function chainInEach(r: Reader, steps: Step[]): void {
  if (kindAt(r) !== T.comma || !isWord(r, W.ch, 1)) return;
  const start = r.at++;
  const chain = readChain(r);
  const turns = kindAt(r) === T.stop && isWord(r, W.turn, 1);
  const ends = clauseEnds(r) && !turns && (kindAt(r) !== T.comma || isWord(r, W.repeat, 1));
  if (chain && ends) steps.push(chain);
  else r.at = start;
}

/** "In the 2nd ch from hook hdc across": there, and in each of those that follow. */
function fromThere(r: Reader, run: Run, place: Place, start: number): boolean {
  if (!place.fromHook || !mayBeStitch(wordAt(r))) return false;
  const at = r.at;
  const work = readWork(r);
  if (!work || work.place || work.n || work.until?.kind !== 'end' || work.alsoIn.length > 0) {
    r.at = at;
    return false;
  }
  const { until } = work;
  const rest: Place = { ...place, pick: 'each', each: true, nth: null, fromHook: false, until };
  run.out.push({ ...work, place, alsoIn: [rest], until: null, from: fromOf(r, start) });
  return true;
}

/**
 * "In the 2nd chain from the hook: 10 sc, 3 sc in the last chain": where the round begins, for what
 * is worked in the last chain comes after it.
 */
function beginsAlong(r: Reader, { fromHook, nth }: Place): boolean {
  if (!fromHook || (nth ?? 0) < 2 || kindAt(r) !== T.colon) return false;
  if (kindAt(r, 1) !== T.number || !mayBeStitch(wordAt(r, 2)) || kindAt(r, 3) !== T.comma)
    return false;
  for (let k = 4; k < 16 && kindAt(r, k) !== T.stop && kindAt(r, k) !== T.end; k++) {
    if (isWord(r, W.last, k) && isWord(r, W.ch, k + 1)) return true;
  }
  return false;
}

/**
 * "In the last chain (where the round began), work 2 sc": which one it is. "In 4th ch from hook (turning
 * chain counts as dc) make a dc": what the chains passed stand for.
 */
function passAside(r: Reader, place: Place): CountsAs | null {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0) return null;
  if (place.fromHook && close - r.at < 12) {
    const start = r.at++;
    const stands = readCountsAs(r, close);
    r.at = stands ? close + 1 : start;
    if (stands) return stands;
  }
  if (r.kind[close + 1] === T.comma && isAside(r, r.at, close)) r.at = close + 1;
  return null;
}

/** "In the last chain, work 3 sc into that same chain": the place, named twice. */
function worksThere(r: Reader, run: Run, place: Place, start: number): boolean {
  if (kindAt(r) !== T.number || place.n !== null) return false;
  const work = readWork(r);
  const again = work?.place;
  const same = again?.pick === 'same' || again?.pick === 'this';
  if (!work || !again || !same || again.of || again.nouns[0]?.kind !== place.nouns[0]?.kind)
    return false;
  run.out.push({ ...work, place, from: fromOf(r, start), to: toOf(r) });
  return true;
}

/**
 * "Work into ch-3 space (2 sc, ch 1, 2 sc)", "working into the ch-3 sps, *2 sc, ch 1*": the verb says no
 * more. Where the steps have places of their own ("*3 sc in next sp; rep from *"), all of it only tells how.
 */
export function workPlaceFirst(r: Reader, run: Run): boolean {
  if (!opensPlace(wordAt(r, 1))) return false;
  const start = r.at++;
  const place = readPlaceAfterPreposition(r);
  const end = r.at;
  const parted = kindAt(r) === T.comma;
  const next = kindAt(r, parted ? 1 : 0);
  const held = next === T.star || next === T.open || kindAt(r) === T.colon;
  const all = place?.pick === 'each' && kindAt(r) === T.colon;
  r.at = start + 1;
  if (all || (place?.nouns[0]?.kind === 'space' && held)) {
    if (placeFirst(r, run)) return true;
    if (parted && next === T.star) {
      r.at = end;
      putWords(r, run, start, 'remark');
      return true;
    }
  }
  r.at = start;
  return false;
}

/** "*dc, ch 2, dc* in next sp and in each sp around": in all of them. */
function placeOfAll(r: Reader, run: Run, place: Place): void {
  const last = run.out.at(-1);
  if (!last || !isOpenBracket(last) || place.pick !== 'next') return;
  if (!isWord(r, W.and) || !(isWord(r, W.in, 1) || isWord(r, W.each, 1))) return;
  const start = r.at++;
  const all = isWord(r, W.each) ? readPlace(r) : readPlaceAfterPreposition(r);
  if (all?.pick === 'each' && all.nouns[0]?.kind === place.nouns[0]?.kind)
    Object.assign(place, all);
  else r.at = start;
}

/** "(2 dc, ch 2, 2 dc)" with nothing behind that says how often or where. */
const isOpenBracket = (step: Step): step is RepeatStep =>
  step.kind === 'repeat' && step.times.kind === 'missing' && step.order.from === step.order.to;

const isBracket = (step: Step | undefined): boolean => step !== undefined && isOpenBracket(step);

/**
 * "1 dc (US sc) in next st", "(2 dc, ch 1, 2 dc) (shell made) in corner": the place of what stands
 * before the remark.
 */
function placeBehindAside(r: Reader, run: Run, place: Place, start: number): boolean {
  const { out } = run;
  const work = out.at(-2);
  const aside = r.kind[start - 1] === T.close && out.at(-1)?.kind === 'remark';
  if (!aside) return false;
  if (work && isOpenBracket(work)) {
    out.length -= 2;
    const { steps, from } = work;
    out.push({ kind: 'group', steps, place, loose: false, from, to: toOf(r) });
    return true;
  }
  if (work?.kind !== 'work' || work.place || work.until) return false;
  out.length -= 2;
  out.push({ ...work, place, to: toOf(r) });
  looseGroup(r, run);
  return true;
}

/** "In magic ring, ch 2 (not counted), 10 dc": a row that begins in its ring, chain first. */
function startsRing(r: Reader, place: Place, start: number): boolean {
  if (place.nouns[0]?.kind !== 'ring' || place.nouns.length > 1) return false;
  let k = kindAt(r) === T.comma || kindAt(r) === T.colon ? 1 : 0;
  if (isWord(r, W.work, k)) k++;
  const chain = isWord(r, W.ch, k) || (kindAt(r, k) === T.number && isWord(r, W.ch, k + 1));
  const magic = isWord(r, W.mr, start - r.at + 1) || isWord(r, W.mr, start - r.at + 2);
  return (
    chain && (magic || isWord(r, W.magic, start - r.at + 1) || isWord(r, W.magic, start - r.at + 2))
  );
}

function closesGroup(r: Reader, run: Run, place: Place, start: number): boolean {
  const ends =
    kindAt(r) === T.comma ||
    kindAt(r) === T.semicolon ||
    kindAt(r) === T.stop ||
    kindAt(r) === T.end ||
    kindAt(r) === T.close ||
    kindAt(r) === T.star;
  const { out } = run;
  if (!ends || out.length === 0) return false;
  const last = out.at(-1);
  if (last && isOpenBracket(last)) {
    out[out.length - 1] = {
      kind: 'group',
      steps: last.steps,
      place,
      loose: false,
      from: last.from,
      to: toOf(r),
    };
    return true;
  }
  // "* sc, 3 dc, sc ** in next sp": the second mark closes what goes there.
  const end = last?.kind === 'mark' ? out.length - 1 : out.length;
  let first = end;
  while (first > run.sentence && (isPlaceless(out[first - 1]) || isBracket(out[first - 1])))
    first--;
  while (first < end && out[first]?.kind === 'chain') first++;
  const steps = out.slice(first, end).flatMap((step) => (isOpenBracket(step) ? step.steps : step));
  if (steps.length === 0) return false;
  out.length = first;
  const from = steps[0]?.from ?? fromOf(r, start);
  out.push({ kind: 'group', steps, place, loose: true, from, to: toOf(r) });
  return true;
}

/** "2nd ch from hook sc, sc across": the first place with no preposition, and what goes there. */
export function placeAlone(r: Reader, run: Run): boolean {
  if (run.end === 'list' || !isWord(r, W.ch, 1) || !isWord(r, W.from, 2)) return false;
  const start = r.at;
  const place = readPlace(r);
  if (kindAt(r) === T.comma || kindAt(r) === T.colon) r.at++;
  const steps = place?.fromHook && mayBeStitch(wordAt(r)) ? listSteps(r) : null;
  if (!place || !steps || steps.length === 0) {
    r.at = start;
    return false;
  }
  run.out.push({ kind: 'group', steps, place, loose: false, from: fromOf(r, start), to: toOf(r) });
  return true;
}

/** "into next ch work [1 tr, 1 ch] 6 times, 1 tr": the bracket is one item of the list. */
function timesBehind(r: Reader): boolean {
  const close = r.partner[r.at] ?? -1;
  const kind = r.kind[close + 1];
  const sense = kind === T.word ? r.value[close + 1] : 0;
  return close > 0 && (kind === T.number || kind === T.times || sense === W.x || sense === W.twice);
}

function bracketSteps(r: Reader): Step[] | null {
  const close = r.partner[r.at] ?? -1;
  if (close < 0 || r.depth > 60) return null;
  r.at++;
  r.depth++;
  const steps = r.run(r, 'bracket');
  r.depth--;
  if (r.at < close) {
    steps.push({ kind: 'unread', says: 'work', from: fromOf(r, r.at), to: r.to[close - 1] ?? 0 });
  }
  r.at = close + 1;
  return steps;
}

/** The steps named behind the place, up to the end of the clause that they form. */
function listSteps(r: Reader): Step[] | null {
  return r.depth > 60 ? null : r.run(r, 'list');
}
