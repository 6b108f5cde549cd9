/**
 * What each star of an instruction is there for. A star may open a repeat, close it, be spoken of
 * ("rep from *"), multiply ("(…)*6"), or mark a place inside a repeat ("ending at **").
 */

import { formOf, mayBeStitch } from './dictionary.ts';
import { onNewLine, type Reader } from './reader.ts';
import { forgetScan } from './scan.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';

export const STAR = {
  none: 0,
  open: 1,
  close: 2,
  named: 3,
  times: 4,
  mark: 5,
  aside: 6,
  whole: 7,
} as const;

/** Roles by token; computed once, when the first star is met. */
export function starRole(r: Reader, token: number): number {
  r.stars ??= findStars(r);
  return r.stars[token] ?? STAR.none;
}

function findStars(r: Reader): Uint8Array {
  const roles = new Uint8Array(r.count);
  const doubles = doubleStars(r);
  const open = new Map<number, number>();
  const stars: Stars = { roles, open, lastNamed: lastNamed(r) };
  for (let i = FIRST; i < r.count; i++) {
    if (r.kind[i] !== T.star) continue;
    const mark = r.value[i] ?? 1;
    if (isNamed(r, roles, i)) {
      roles[i] = STAR.named;
      if (isOpening(r, i)) open.delete(mark);
    } else if (multiplies(r, i)) roles[i] = STAR.times;
    else if (closesWhole(r, i)) roles[i] = STAR.whole;
    else if (isFootnote(r, i) || isNote(r, i, stars.lastNamed)) roles[i] = STAR.none;
    else if (closesAside(r, i) > 0) {
      roles[i] = STAR.aside;
      i = closesAside(r, i);
      roles[i] = STAR.aside;
    } else if ((mark === 2 && doubles === 'mark') || marksRow(r, i)) roles[i] = STAR.mark;
    else placeStar(r, stars, i, mark);
  }
  return roles;
}

/**
 * "1 sc in next sc, 2 sc in next sc* 6 times", "… in next sc*, rep 6 times": the star that opened the list
 * was lost, and this one closes all of the row so far.
 */
function closesWhole(r: Reader, i: number): boolean {
  if (r.value[i] !== 1 || r.to[i - 1] !== r.from[i] || r.kind[i - 1] !== T.word) return false;
  let k = i + 1;
  while (r.kind[k] === T.comma || r.kind[k] === T.stop) k++;
  if (r.word[k] === W.repeat) k++;
  const counted = r.kind[k] === T.number && r.word[k + 1] === W.times;
  if (!counted || (r.from[i + 1] === r.to[i] && r.kind[i + 1] === T.word)) return false;
  for (let at = FIRST; at < r.count; at++) if (at !== i && r.kind[at] === T.star) return false;
  return true;
}

/** "… 25 (28) sts. **" at the end of a row's line: the place to which another part is worked alike. */
function marksRow(r: Reader, i: number): boolean {
  const mark = r.value[i];
  if (mark !== 2 && mark !== 3) return false;
  const ends = r.kind[i - 1] === T.stop || r.kind[i - 1] === T.close || r.word[i - 1] === W.st;
  if (!ends || !(r.kind[i + 1] === T.end || onNewLine(r, i + 1))) return false;
  for (let at = FIRST; at < r.count; at++)
    if (at !== i && r.kind[at] === T.star && r.value[at] === mark) return false;
  return true;
}

interface Stars {
  readonly roles: Uint8Array;
  /** Open stars by mark. */
  readonly open: Map<number, number>;
  readonly lastNamed: number;
}

function placeStar(r: Reader, stars: Stars, i: number, mark: number): void {
  const { roles, open, lastNamed: named } = stars;
  const opened = open.get(mark);
  // "*inc, 2 sc** 6 times"
  if (opened === undefined && mark === 2 && open.has(1) && timesBehind(r, i)) {
    roles[i] = STAR.close;
    open.delete(1);
    return;
  }
  if (opened !== undefined && mark === 1 && opensWithin(r, i)) {
    roles[i] = STAR.open;
    return;
  }
  const twin = opened === undefined && mark === 1 && i > named ? open.get(2) : undefined;
  if (opened !== undefined && (!looksOpening(r, i) || ENDS_REPEAT.has(r.word[i + 1]!))) {
    roles[i] = STAR.close;
    open.delete(mark);
  } else if (twin !== undefined && !looksOpening(r, i)) {
    roles[i] = STAR.close;
    open.delete(2);
  } else {
    roles[i] = STAR.open;
    open.set(mark, i);
  }
}

/**
 * "* ch 5, sc in next lp, * ch 3, sc in next lp, repeat from * once, ch 5, …, repeat from * all around": the
 * second star stands off from its words too, but each has an order of its own.
 */
function opensWithin(r: Reader, i: number): boolean {
  if (r.kind[i - 1] !== T.comma || !opensWork(r.kind[i + 1])) return false;
  if (ENDS_REPEAT.has(r.word[i + 1]!)) return false;
  let orders = 0;
  for (let k = i + 1; k < r.count; k++) {
    if (r.kind[k] !== T.star) continue;
    if (r.value[k] !== 1 || r.value[k - 1] !== W.from || r.kind[k - 1] !== T.word) return false;
    orders++;
  }
  return orders >= 2;
}

/** "*2 sc, sc in next *around": a star typed close to such a word closes all the same. */
const ENDS_REPEAT: ReadonlySet<number> = new Set([W.repeat, W.around, W.across, W.times]);

const timesBehind = (r: Reader, i: number): boolean =>
  r.kind[i + 1] === T.number && r.word[i + 2] === W.times;

/** Where "from *" speaks of a single star for the last time; -1: nowhere. */
function lastNamed(r: Reader): number {
  for (let k = r.count - 1; k > FIRST; k--) {
    if (
      r.kind[k] === T.star &&
      r.value[k] === 1 &&
      r.kind[k - 1] === T.word &&
      r.value[k - 1] === W.from
    )
      return k;
  }
  return -1;
}

/** ", ch 1, *. Repeat": a star before a full stop closes. */
const opensWork = (kind: number | undefined): boolean =>
  kind === T.word || kind === T.number || kind === T.open || kind === T.ordinal;

/** A star that touches the next word and stands off from the last one opens, whatever went before. */
const looksOpening = (r: Reader, i: number): boolean =>
  r.from[i + 1] === r.to[i] &&
  opensWork(r.kind[i + 1]) &&
  // "*inc *x4": how often.
  r.word[i + 1] !== W.x &&
  r.to[i - 1] !== r.from[i];

/** "from *", "between * and *", "*-*", "rep * to *", "at **". */
function isNamed(r: Reader, roles: Uint8Array, i: number): boolean {
  let k = i - 1;
  // "repeat from first *"
  if (isFirst(r, k)) k--;
  if (r.kind[k] === T.word && r.value[k] === W.the) k--;
  const kind = r.kind[k];
  if (kind === T.word) {
    const sense = r.value[k] ?? 0;
    if (sense === W.from || sense === W.between || sense === W.at) return true;
    // "repeat after the *"
    if (sense === W.after && r.word[k - 1] === W.repeat) return true;
    // "continue * to * around"
    if (sense === W.continue && r.word[i + 1] === W.to && r.kind[i + 2] === T.star) return true;
    // "Repeat *sc in next ch, dc in next ch* across" has its work behind the star.
    if (sense === W.repeat) return !opensRepeated(r, i);
    if (sense === W.to || sense === W.and)
      return r.kind[k - 1] === T.star && roles[k - 1] === STAR.named;
    return false;
  }
  // "(…)* repeat 5 times"
  if (kind === T.close && r.from[i] === r.to[k] && r.value[i + 1] === W.repeat) {
    return r.kind[i + 1] === T.word && roles[FIRST] !== STAR.open;
  }
  if (kind === T.dash) return r.kind[k - 1] === T.star && roles[k - 1] === STAR.named;
  if (kind === T.open) return r.value[k - 1] === W.repeat || r.value[k - 1] === W.from;
  return kind === T.star && roles[k] === STAR.named && r.value[k - 1] !== W.from;
}

/** "First", "1st", of stars. */
export const isFirst = (r: Reader, token: number): boolean =>
  (r.kind[token] === T.ordinal && r.value[token] === 1) ||
  (r.kind[token] === T.word && r.word[token] === W.first_word);

function opensRepeated(r: Reader, i: number): boolean {
  if (r.kind[i + 1] === T.number) return mayBeStitch(r.word[i + 2]!) || r.word[i + 2] === W.ch;
  const sense = r.word[i + 1]!;
  return mayBeStitch(sense) || sense === W.ch || sense === W.skip;
}

/** The first star of a "rep from *" ends the repeat that it speaks of. */
const isOpening = (r: Reader, i: number): boolean =>
  r.value[i - 1] === W.from || r.value[i - 1] === W.repeat;

/** "(sc, inc)*6", "sc, inc * 6". */
function multiplies(r: Reader, i: number): boolean {
  if (r.kind[i + 1] !== T.number || r.value[i] !== 1) return false;
  if (r.kind[i - 1] === T.close) {
    const after = r.kind[i + 2];
    return after !== T.word || r.value[i + 2] === W.times || r.value[i + 2] === W.join;
  }
  if (r.kind[i - 1] !== T.word && r.kind[i - 1] !== T.number) return false;
  const after = r.kind[i + 2] ?? T.end;
  // "*sc, inc* 6 (7, 8) times": the number has its sizes behind it, and closes the star.
  if (after === T.open && r.value[(r.partner[i + 2] ?? -1) + 1] === W.times) return false;
  return after !== T.word && after !== T.number && after !== T.star;
}

/** "(*at this point the crown should measure 15 cm)": a bracket of words that a star opens. */
export function isFootnote(r: Reader, i: number): boolean {
  if (r.kind[i] !== T.star || r.kind[i - 1] !== T.open) return false;
  const close = r.partner[i - 1] ?? -1;
  for (let k = i + 1; k < close; k++) {
    if (r.kind[k] === T.star || r.kind[k] === T.comma) return false;
    if (r.kind[k] === T.word && mayBeStitch(r.value[k] ?? 0)) return false;
  }
  return close > i;
}

/** "… around (8) *do not tie off": a star before the last sentence, which talks, and none behind it. */
export function isNote(r: Reader, i: number, named: number): boolean {
  if (named > i || r.kind[i] !== T.star || r.kind[i + 1] !== T.word) return false;
  const word = r.text.slice(r.base + (r.from[i + 1] ?? 0), r.base + (r.to[i + 1] ?? 0));
  if (!NOTES.test(word)) return false;
  for (let k = i + 1; k < r.count; k++) if (r.kind[k] === T.star) return false;
  return true;
}

/**
 * "*using colour B* ch 1, …": stars that set off words in which nothing is worked. The star that closes
 * them, 0 where there is none.
 */
function closesAside(r: Reader, i: number): number {
  if (r.value[i] !== 1 || !ASIDES.has(r.word[i + 1]!)) return 0;
  for (let k = i + 2; k < i + 8; k++) {
    if (r.kind[k] === T.star) return r.to[k - 1] === r.from[k] && !orders(r, k + 1) ? k : 0;
    if (r.kind[k] !== T.word || mayBeStitch(r.word[k]!) || r.word[k] === W.ch) return 0;
  }
  return 0;
}

const ASIDES: ReadonlySet<number> = new Set([W.using, W.with]);

const orders = (r: Reader, k: number): boolean =>
  r.kind[k] === T.number || ENDS_REPEAT.has(r.word[k]!);

const NOTES = /^(?:do|don['’]t|notes?|this|these|if|you|make|remember|optional)$/i;

/** Whether double stars open repeats of their own or only mark a place inside another. */
function doubleStars(r: Reader): 'open' | 'mark' {
  let stand = 0;
  let single = false;
  for (let i = FIRST; i < r.count; i++) {
    if (r.kind[i] !== T.star) continue;
    if (r.value[i] === 1) single = true;
    if (r.value[i] !== 2) continue;
    const before = r.kind[i - 1] === T.word ? r.value[i - 1] : 0;
    if (before === W.at) return 'mark';
    if (before === W.from || before === W.between || before === W.repeat) return 'open';
    // "from * to **", "between * and **": the end of what a single star opened.
    const ends = before === W.to || (before === W.and && r.kind[i - 2] === T.star);
    if (!ends && single && timesBehind(r, i)) return 'open';
    if (!ends) stand++;
    else if (single) return 'mark';
  }
  return stand === 1 && single && !firstIsDouble(r) ? 'mark' : 'open';
}

function firstIsDouble(r: Reader): boolean {
  for (let i = FIRST; i < r.count; i++) if (r.kind[i] === T.star) return r.value[i] === 2;
  return false;
}

/** What a closing star has for a value that is the word "around". */
export const AROUND = 9;

/**
 * "*In next ch-1 sp, 2 dc, ch 1, 2 dc around. Join.": a star that nobody refers to, and "around" or
 * "across" at the end of its clauses. The word becomes the star that closes.
 */
export function closeAround(r: Reader): void {
  let commas = 0;
  let clause = r.at + 1;
  for (let i = r.at + 1; i < r.count; i++) {
    const kind = r.kind[i]!;
    if (kind === T.star || kind === T.stop || kind === T.close || kind === T.end) return;
    const partner = kind === T.open ? r.partner[i]! : -1;
    if (kind === T.comma) {
      commas++;
      clause = i + 1;
    }
    if (partner > i) i = partner;
    if (r.word[i] !== W.around && r.word[i] !== W.across) continue;
    if (commas === 0 || !endsClause(r.kind[i + 1]!) || !isShared(r, clause, i)) return;
    if (isReferredTo(r, i)) return;
    forgetScan();
    r.kind[i] = T.star;
    r.word[i] = -1;
    r.value[i] = AROUND;
    if (r.stars) r.stars[i] = STAR.close;
    return;
  }
}

const endsClause = (kind: number): boolean =>
  kind === T.stop || kind === T.end || kind === T.comma || kind === T.open || kind === T.semicolon;

/** "sc in each st around" and "sc around" go around by themselves; "2 dc around" does not. */
function isShared(r: Reader, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const sense = r.word[i];
    if (sense === W.each || sense === W.every || sense === W.all) return false;
  }
  const form = formOf(r.word[from]!);
  return to - from > 1 || form?.shape === 'increase' || form?.shape === 'together';
}

/** Whether a later star or a word closes the star or names it. */
function isReferredTo(r: Reader, from: number): boolean {
  for (let i = from + 1; i < r.count; i++) {
    if (r.kind[i] === T.star || r.word[i] === W.repeat || r.word[i] === W.times) return true;
  }
  return false;
}

/** The sign of a star as the tree names it. */
export const markOf = (value: number): string =>
  value > 10 ? '†'.repeat(Math.min(value - 10, 3)) : '*'.repeat(value);
