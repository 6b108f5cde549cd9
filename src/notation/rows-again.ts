/** Rows worked again: "Rep rnd 4", "As row 2", "Rep rows 2 and 3 until …, ending with row 3". */

import type { Span } from '../source/index.ts';
import { mayBeStitch } from './dictionary.ts';
import { readFirstRows } from './first-rows.ts';
import { hintOf, isHinted } from './hints.ts';
import { readMeasure } from './measure.ts';
import { readNumbers } from './numbers.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  endsInS,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  passWords,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { readBareRows, readRowNumbers } from './row-numbers.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { readTimes } from './times.ts';
import { FIRST, T } from './tokens.ts';
import type { Numbers, RowsAgainStep } from './tree.ts';

type Draft = { -readonly [K in keyof RowsAgainStep]: RowsAgainStep[K] };

/** Rows worked again, of which nothing is said yet. */
export const plainRowsAgain = (from: number): Draft => ({
  kind: 'rows-again',
  rows: [],
  lastN: null,
  onward: false,
  named: null,
  part: null,
  times: null,
  moreRows: null,
  rowsInAll: null,
  stitchesAtEnd: null,
  measure: null,
  endingWith: null,
  // biome-ignore lint/suspicious/noThenProperty: the tree's name; nothing here is awaited.
  then: [],
  even: false,
  changes: [],
  every: null,
  from,
  to: 0,
});

/** The rows of these numbers in another part, as words say it that stand at a span. */
export const rowsOfPart = (
  rows: readonly number[],
  part: string,
  { from, to }: Span,
): RowsAgainStep => ({ ...plainRowsAgain(from), rows, part, to });

/** An order to work rows again, or `null`, which leaves the reader where it was. */
export function readRowsAgain(r: Reader): RowsAgainStep | null {
  const start = r.at;
  const first = isWord(r, W.work) && r.depth === 0 ? readFirstRows(r) : null;
  if (first) return { ...plainRowsAgain(fromOf(r, start)), ...first, to: toOf(r) };
  if (!verb(r)) {
    r.at = start;
    return null;
  }
  const draft = plainRowsAgain(fromOf(r, start));
  if (!which(r, draft)) {
    r.at = start;
    return null;
  }
  for (let guard = 0; guard < 8; guard++) {
    const before = r.at;
    tail(r, draft);
    if (r.at === before) break;
  }
  draft.to = toOf(r);
  return draft;
}

/**
 * "Repeat this for 7 more rows", "Keep doing this until you have 12 rows", "Repeat until it measures 20 cm":
 * the row just made, though no word names it; how often is told in rows or by a length. `null`, with the
 * reader where it was: nothing of the kind, and no beginning of a sentence.
 */
export function readThisAgain(r: Reader): RowsAgainStep | null {
  if (r.depth > 0 || !isHinted(r, AGAIN)) return null;
  const start = r.at;
  if (isWord(r, W.and) && isWord(r, W.repeat, 1)) r.at++;
  const repeats = isWord(r, W.repeat);
  // "… chain one and turn, and repeat for ten rows": the whole row, told in its own sentence.
  const whole = repeats && isWord(r, W.for, 1) && kindAt(r, 2) === T.number;
  const opens = start === FIRST || whole || OPENS.has(kindAt(r, -1));
  if (!opens || (!repeats && !isWord(r, W.continue) && !isOneOf(r, GOING_ON))) {
    r.at = start;
    return null;
  }
  r.at++;
  while (kindAt(r) === T.word && isOneOf(r, THIS)) r.at++;
  const draft = plainRowsAgain(fromOf(r, start));
  draft.lastN = 1;
  if (isWord(r, W.for)) readMoreRows(r, draft);
  else if (isWord(r, W.to)) {
    draft.measure = isOneOf(r, UNTIL) ? readMeasure(r) : null;
    if (draft.measure === null) readUntilRows(r, draft);
  }
  const said = draft.moreRows ?? draft.rowsInAll ?? draft.measure;
  if (said === null || draft.stitchesAtEnd !== null) {
    r.at = start;
    return null;
  }
  for (let before = -1; before !== r.at; ) {
    before = r.at;
    tail(r, draft);
  }
  draft.to = toOf(r);
  return draft;
}

const OPENS: ReadonlySet<number> = new Set([T.stop, T.colon, T.dash, T.close]);
const GOING_ON = wordsOf('keep do');
const AGAIN = hintOf([W.repeat, W.continue], 'keep do');
const THIS = wordsOf(
  'this that doing going working on in the same way manner like so step process crocheting row',
);
const UNTIL = wordsOf('until till');

/** "Rep", "As", "Same as", "Work as for", "Like the", "Alternate", "Continue to repeat". */
function verb(r: Reader): boolean {
  const start = r.at;
  // "R5: = R3", and "Row 5 = Row 3", whose label has taken the sign.
  if (kindAt(r) === T.equals) r.at++;
  if (kindAt(r, -1) === T.equals && rowAhead(r)) return true;
  passWords(r, BEFORE_ORDER);
  if (eatWord(r, W.repeat) || eatWord(r, W.alternate)) {
    eatWord(r, W.as);
    eatWord(r, W.for);
    // "Alternate between row 2 and 4"
    if (isWord(r, W.alternate, -1)) eatWord(r, W.between);
    // "repeat and follow rounds 6 and 7"
    if (isWord(r, W.and) && spelled(r, r.at + 1) === 'follow') r.at += 2;
    return true;
  }
  if (kindAt(r, 2) === T.number && isRow(r, 1) && spelled(r, r.at) === 'follow') {
    r.at++;
    return true;
  }
  if (/^(are|is|worked)$/.test(spelled(r, r.at))) r.at++;
  eatThe(r);
  const same = eatWord(r, W.same);
  if (eatWord(r, W.as) || eatWord(r, W.like)) {
    eatWord(r, W.for);
    eatWord(r, W.in);
    return true;
  }
  // "Work pattern row until it reaches 30 cm"
  if (r.at > start && isPatternRow(r, 0)) return true;
  // "Continue to row 2" only goes on.
  if (r.at > start && !same && !isWord(r, W.to, -1) && rowAhead(r)) return !tellsWhatFollows(r);
  return false;
}

/** "Work rounds 1 to 5 through the back loop with the following increases:": of rows to come. */
function tellsWhatFollows(r: Reader): boolean {
  let follows = false;
  let k = r.at;
  for (; r.kind[k] !== T.end && r.kind[k] !== T.stop && r.kind[k] !== T.colon; k++) {
    follows ||= /^follow(?:ing|s)$/.test(spelled(r, k));
  }
  return follows && r.kind[k] === T.colon;
}

const BEFORE_ORDER: SenseSet = new SenseSet([
  W.work,
  W.continue,
  W.afterwards,
  W.now,
  W.to,
  W.working,
  W.and,
]);

const isRow = (r: Reader, ahead = 0): boolean =>
  isWord(r, W.row, ahead) ||
  isWord(r, W.round, ahead) ||
  (isWord(r, W.r, ahead) && kindAt(r, ahead + 1) === T.number);

const rowAhead = (r: Reader): boolean => isRow(r) && kindAt(r, 1) === T.number;

/** Which rows: by number, "last 2", "these 2", "previous". */
function which(r: Reader, draft: Draft): boolean {
  const onward = isWord(r, W.from) || (isWord(r, W.the) && isWord(r, W.from, 1));
  passWords(r, BEFORE_ROWS);
  const last =
    isWord(r, W.last) || isWord(r, W.previous) || isWord(r, W.these) || isWord(r, W.both);
  if (last) return lastRows(r, draft);
  // "Rep row 3 times": the row just made.
  if (isRow(r) && !endsInS(r, r.at) && kindAt(r, 1) === T.number && isWord(r, W.times, 2)) {
    r.at++;
    draft.lastN = 1;
    return true;
  }
  // "Repeat pattern row until …": the row just told.
  if (isPatternRow(r, -1)) {
    r.at++;
    draft.lastN = 1;
    return true;
  }
  const from = r.at;
  const rows = readRowNumbers(r) ?? readBareRows(r);
  if (!rows) return namedRow(r, draft);
  draft.rows = rows;
  draft.onward = onward && rows.length === 1;
  draft.rowsInAll = upToRow(r, from, rows);
  const again = r.at;
  if (kindAt(r) === T.comma && isWord(r, W.and, 1)) r.at++;
  if (eatWord(r, W.and) && isRow(r)) {
    const more = readRowNumbers(r);
    // "rows 2-3, and row 2 once more"
    const once = isWord(r, W.once) || spelled(r, r.at) === 'again';
    if (more && once) {
      // biome-ignore lint/suspicious/noThenProperty: the tree's name; nothing here is awaited.
      draft.then = more;
      r.at += isWord(r, W.more, 1) ? 2 : 1;
    } else if (more) draft.rows = [...draft.rows, ...more];
    else r.at = again;
  } else r.at = again;
  return true;
}

/** "Repeat row 2 to row 67": one row, until there are so many; where all of them are told, these. */
function upToRow(r: Reader, from: number, rows: readonly number[]): Numbers | null {
  const last = rows.at(-1) ?? 0;
  if (rows.length < 3) return null;
  const words = r.text.slice(r.base + fromOf(r, from), r.base + toOf(r));
  if (!UP_TO_ROW.test(words)) return null;
  return { from: fromOf(r, r.at - 1), to: toOf(r), values: [last] };
}

const UP_TO_ROW = /^(?:row|round|rnd) ?\d+ ?(?:to|through|thru|until) ?(?:row|round|rnd)? ?\d+$/i;

/** Whether "pattern row", of no number, stands `ahead` tokens on, with an end or a length behind it. */
const isPatternRow = (r: Reader, ahead: number): boolean =>
  isWord(r, W.pattern, ahead) &&
  (isWord(r, W.row, ahead + 1) || isWord(r, W.round, ahead + 1)) &&
  !endsInS(r, r.at + ahead + 1) &&
  (isWord(r, W.to, ahead + 2) || isWord(r, W.for, ahead + 2) || clauseEnds(r, ahead + 2));

/** "Rep Dec row", "repeat the increase round": the row that was labelled so. */
function namedRow(r: Reader, draft: Draft): boolean {
  if (!isOneOf(r, NAMES) || !(isWord(r, W.row, 1) || isWord(r, W.round, 1))) return false;
  draft.named = nameOfRow(spelled(r, r.at));
  r.at += 2;
  return true;
}

const NAMES = wordsOf(
  'increase increasing inc decrease decreasing dec eyelet beading picot shell ruffle border edging short',
);

/** "Increase", "inc", "increasing": one name. */
export const nameOfRow = (word: string): string =>
  word.toLowerCase().replace(/^(inc|dec)(?:reas(?:e|ing))?$/, '$1');

const BEFORE_ROWS: SenseSet = new SenseSet([W.the, W.in, W.pattern, W.of, W.for, W.from]);

function lastRows(r: Reader, draft: Draft): boolean {
  const both = isWord(r, W.both);
  r.at++;
  if (/^(two|2)$/.test(spelled(r, r.at)) && kindAt(r) !== T.number) r.at++;
  const n = kindAt(r) === T.number ? valueAt(r) : both ? 2 : 1;
  if (kindAt(r) === T.number) r.at++;
  if (!isRow(r)) return false;
  r.at++;
  draft.lastN = Math.min(n, 1000);
  return true;
}

/** Everything that may stand behind the rows. */
function tail(r: Reader, draft: Draft): void {
  const start = r.at;
  // "… for pattern. Ending with row 5": a sentence of its own says how they end.
  const ends =
    kindAt(r) === T.stop &&
    (isWord(r, W.ending, 1) || (isWord(r, W.end, 1) && isWord(r, W.with, 2)));
  if (kindAt(r) === T.comma || kindAt(r) === T.semicolon || kindAt(r) === T.other || ends) r.at++;
  if (rowsInAll(r) || orUntil(r)) return;
  if (isWord(r, W.alternate)) {
    r.at++;
    return;
  }
  const adverb = isWord(r, W.include) && kindAt(r, 1) !== T.word;
  if (
    adverb ||
    (kindAt(r) === T.word && /^(consecutively|sequentially|again|incl)$/.test(spelled(r, r.at)))
  ) {
    r.at++;
    return;
  }
  if (orDesired(r) || colourOrder(r) || colourChange(r) || omitsTurn(r)) return;
  if (isWord(r, W.for) && isWord(r, W.pattern, 1)) {
    r.at += isWord(r, W.st, 2) ? 3 : 2;
    return;
  }
  if (everyOther(r, draft)) return;
  if (readThen(r, draft) || readEndingWith(r, draft) || overRest(r)) return;
  const rows = isWord(r, W.for) || (isWord(r, W.about) && kindAt(r, 1) === T.number);
  if ((rows && readMoreRows(r, draft)) || readPart(r, draft)) return;
  const measure = draft.measure === null ? readMeasure(r) : null;
  if (measure) {
    draft.measure = measure;
    fromBeginning(r);
    return;
  }
  if (untilYarnEnds(r)) {
    draft.measure ??= { mm: null, since: null };
    return;
  }
  if (readUntilRows(r, draft)) return;
  if (eitherTimes(r)) return;
  const times = draft.times === null ? readTimes(r, null) : null;
  if (times?.kind === 'times') {
    draft.times = times.n;
    return;
  }
  r.at = start;
}

/** "two/three times", "nineteen/twenty times": no number of times is told by two. */
function eitherTimes(r: Reader): boolean {
  const two = kindAt(r) === T.number && kindAt(r, 1) === T.slash && kindAt(r, 2) === T.number;
  if (!two || !isWord(r, W.times, 3)) return false;
  r.at += 4;
  return true;
}

/** "until piece is 36 in long or desired size, ending with row 4": the maker may choose. */
function orDesired(r: Reader): boolean {
  if (!isWord(r, W.or) || !isWord(r, W.desired, isWord(r, W.the, 1) ? 2 : 1)) return false;
  while (kindAt(r) === T.word) r.at++;
  return true;
}

/** ", or until you reach the handle": what else may end it, with no number and no work. */
function orUntil(r: Reader): boolean {
  if (!isWord(r, W.or) || !isOneOf(r, UNTIL, 1)) return false;
  let k = 2;
  while (kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k))) k++;
  if (!clauseEnds(r, k)) return false;
  r.at += k;
  return true;
}

/** "in the following colour sequence: 2 rows CB, 1 row CC": how many rows there are is said already. */
function colourOrder(r: Reader): boolean {
  if (!isWord(r, W.in) && !isWord(r, W.with)) return false;
  const words = r.text.slice(r.base + fromOf(r, r.at), r.base + fromOf(r, r.at) + 60);
  if (!COLOUR_ORDER.test(words)) return false;
  while (kindAt(r) !== T.colon && !clauseEnds(r, 0)) r.at++;
  if (kindAt(r) !== T.colon || kindAt(r, 1) !== T.number) return true;
  while (kindAt(r) !== T.stop && kindAt(r) !== T.end) r.at++;
  return true;
}

/** "Work Rows 3 and 4 over rem 8 sts": the stitches that are there. */
function overRest(r: Reader): boolean {
  if (!isWord(r, W.over) && !isWord(r, W.on)) return false;
  const start = r.at++;
  eatThe(r);
  eatWord(r, W.these);
  const rest = eatWord(r, W.remaining);
  const n = readNumbers(r);
  const named = kindAt(r) === T.word && endsInS(r, r.at);
  if (!named || (!rest && !n) || !clauseEnds(r, 1)) return reset(r, start);
  r.at++;
  return true;
}

/** "omitting turning ch at end of last row": what would be for a row that does not come. */
function omitsTurn(r: Reader): boolean {
  if (!isWord(r, W.omit)) return false;
  const words = r.text.slice(r.base + fromOf(r, r.at), r.base + fromOf(r, r.at) + 60);
  if (!OMITS_TURN.test(words)) return false;
  while (!clauseEnds(r, 0)) r.at++;
  return true;
}

const OMITS_TURN =
  /^omit\w* (?:the )?(?:last )?(?:(?:turning|t)[ -]?(?:ch|chain)\b|(?:ch|chain)[ -]?\d)/i;

/** "Rep Row 3 changing to CA in last st": another yarn, and the same work. */
function colourChange(r: Reader): boolean {
  if (kindAt(r) !== T.word || !/^(changing|switching|alternating)$/.test(spelled(r, r.at)))
    return false;
  while (!clauseEnds(r, 0)) r.at++;
  return true;
}

const COLOUR_ORDER =
  /^(?:in|with) (?:(?:the|this|following) )*(?:colou?r|stripe) (?:sequence|order|pattern)\b/i;

/** "making 18 rows in all", "for a total of 18 rows" behind "16 more times": what the times come to. */
const MAKING = wordsOf('making giving');

function rowsInAll(r: Reader): boolean {
  const start = r.at;
  if (!isOneOf(r, MAKING)) return false;
  r.at++;
  if (readNumbers(r) && isRow(r)) {
    r.at++;
    if (isWord(r, W.in) && isWord(r, W.all, 1)) r.at += 2;
    else eatWord(r, W.total);
    return true;
  }
  return reset(r, start);
}

/** "for all odd rows", "on every following even-numbered round": rows that are not written out. */
function everyOther(r: Reader, draft: Draft): boolean {
  if (!isWord(r, W.for) && !isWord(r, W.on)) return false;
  const start = r.at++;
  while (ALL.has(wordAt(r)) || isOneOf(r, TO_COME)) r.at++;
  const even = eatWord(r, W.even);
  if (!even && !eatWord(r, W.odd)) return reset(r, start);
  while (kindAt(r) === T.dash || isOneOf(r, TO_COME)) r.at++;
  if (!isRow(r)) return reset(r, start);
  r.at++;
  draft.every = even ? 'even' : 'odd';
  return true;
}

const ALL: SenseSet = new SenseSet([W.all, W.every, W.each, W.the, W.next, W.remaining, W.other]);
const TO_COME = wordsOf('following subsequent numbered further rest of');

/** ", then rows 2-4 once", "then rnd 7 again". */
function readThen(r: Reader, draft: Draft): boolean {
  const start = r.at;
  eatWord(r, W.and);
  if (!eatWord(r, W.afterwards)) return reset(r, start);
  eatWord(r, W.work);
  eatWord(r, W.repeat);
  const rows = isRow(r) || kindAt(r) === T.ordinal ? readRowNumbers(r) : null;
  if (!rows) return reset(r, start);
  // biome-ignore lint/suspicious/noThenProperty: the tree's name; nothing here is awaited.
  draft.then = [...draft.then, ...rows];
  if (/^(again|once)$/.test(spelled(r, r.at))) r.at++;
  if (isWord(r, W.more)) r.at++;
  return true;
}

function reset(r: Reader, start: number): false {
  r.at = start;
  return false;
}

/** "ending with row 3", "ending with a WS row". */
function readEndingWith(r: Reader, draft: Draft): boolean {
  const start = r.at;
  if (!eatWord(r, W.ending) && !eatWord(r, W.end)) return false;
  passWords(r, BEFORE_LAST);
  if (isWord(r, W.rs) || isWord(r, W.ws) || isWord(r, W.right) || isWord(r, W.wrong)) {
    while (kindAt(r) === T.word && !isRow(r)) r.at++;
    if (isRow(r)) r.at++;
    return true;
  }
  // "ending with 2 rows of A"
  if (kindAt(r) === T.number && isRow(r, 1) && (isWord(r, W.of, 2) || isWord(r, W.in, 2))) {
    r.at += 3;
    while (kindAt(r) === T.word) r.at++;
    return true;
  }
  const rows = readRowNumbers(r);
  if (!rows) return reset(r, start);
  draft.endingWith = rows.at(-1) ?? null;
  return true;
}

const BEFORE_LAST: SenseSet = new SenseSet([W.with, W.on, W.a, W.after, W.the, W.by, W.working]);

/** "of Front", "in B": another part or another yarn. */
function readPart(r: Reader, draft: Draft): boolean {
  if (!isWord(r, W.of) && !isWord(r, W.for) && !isWord(r, W.from)) return false;
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (kindAt(r, k) !== T.word || isWord(r, W.a, k) || isWord(r, W.pattern, k)) return false;
  if (isWord(r, W.beginning, k) || isWord(r, W.total, k) || isWord(r, W.desired, k)) return false;
  const from = r.from[r.at + k] ?? 0;
  const start = r.at;
  r.at += k;
  for (let guard = 0; guard < 4 && kindAt(r) === T.word && !isWord(r, W.to); guard++) r.at++;
  draft.part = r.text.slice(r.base + from, r.base + toOf(r));
  return r.at > start;
}

/** "for 12 more rows", "for 3 rnds". */
function readMoreRows(r: Reader, draft: Draft): boolean {
  const start = r.at++;
  eatThe(r);
  if (isWord(r, W.next) || isWord(r, W.another) || isWord(r, W.a)) r.at++;
  if (isWord(r, W.about)) r.at++;
  // "for a total of 16 rows": those worked already among them
  const total = isWord(r, W.total) && isWord(r, W.of, 1);
  if (total) r.at += 2;
  const n: Numbers | null = readNumbers(r);
  const more = eatWord(r, W.more);
  if (!n || !isRow(r)) return reset(r, start);
  r.at++;
  if (total && !more && !eatWord(r, W.more)) draft.rowsInAll = n;
  else draft.moreRows = n;
  eatWord(r, W.more);
  return true;
}

const WHICHEVER = wordsOf('whichever');

/** "until you run out of yarn", "until the yarn is used up, whichever comes first": a length of its own. */
function untilYarnEnds(r: Reader): boolean {
  if (isOneOf(r, WHICHEVER)) {
    while (kindAt(r) === T.word || kindAt(r) === T.ordinal) r.at++;
    return true;
  }
  if (!isWord(r, W.to)) return false;
  for (let k = 1; k < 7 && kindAt(r, k) === T.word; k++) {
    if (!isWord(r, W.color, k)) continue;
    r.at += k + 1;
    return true;
  }
  return false;
}

/** "until row 20", "until you have 14 rows", "until 9 sts remain": told by labels, rows in all, or stitches. */
function readUntilRows(r: Reader, draft: Draft): boolean {
  if (!isWord(r, W.to)) return false;
  const start = r.at++;
  for (let guard = 0; guard < 8; guard++) {
    if (kindAt(r) === T.number) {
      const n = readNumbers(r);
      if (wordAt(r) <= 0) break;
      // "until 12 sc rows have been worked"
      if (!isRow(r) && mayBeStitch(wordAt(r)) && isRow(r, 1)) r.at++;
      const rows = isRow(r);
      if (rows && draft.moreRows === null) draft.rowsInAll ??= n;
      const stitches = isWord(r, W.st) || mayBeStitch(wordAt(r)) || isWord(r, W.remaining);
      if (n && kindAt(r) === T.word) r.at++;
      if (kindAt(r) === T.word && /^(remain|left|total|worked|complete)/.test(spelled(r, r.at)))
        r.at++;
      if (stitches && clauseEnds(r, 0)) draft.stitchesAtEnd ??= n;
      return true;
    }
    if (isRow(r)) {
      r.at++;
      if (kindAt(r) === T.number) r.at++;
      return true;
    }
    if (kindAt(r) !== T.word) break;
    r.at++;
  }
  return reset(r, start);
}

function fromBeginning(r: Reader): void {
  if (kindAt(r) === T.word && /^(diagonally|wide|tall|deep|high|long)$/.test(spelled(r, r.at)))
    r.at++;
  if (!isWord(r, W.from)) return;
  let k = 1;
  while (k < 5 && kindAt(r, k) === T.word && !isWord(r, W.ending, k)) k++;
  r.at += k;
}
