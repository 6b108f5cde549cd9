/**
 * Rows worked again with other numbers: "same as last rnd but ch 7 instead of ch 6", "repeat 4th rnd having
 * ch 5 between clusters", "repeat 5th rnd, making 9 dc (instead of 7 dc)", "but ch only 1 to turn".
 */
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  toOf,
  valueAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { ChangedNumber, StemWord } from './tree.ts';

/** What changes, up to the clause's end; `null`, with the reader where it was: anything else. */
export function readChangedNumber(r: Reader): ChangedNumber | null {
  const start = r.at;
  const from = fromOf(r, start);
  // "Rep rnd 3, ch 1, turn", "and ch 1": what is worked behind the row.
  const leads = isOneOf(r, CHANGES);
  while (isOneOf(r, LEADS)) r.at++;
  const now = numberHere(r);
  const changed = now === null ? null : changedTo(r, now);
  const rows = changed ? rowsTold(r) : NO_ROWS;
  const told = leads || rows.length > 0;
  if (changed === null || !endsChange(r) || (!told && changed.was === null)) {
    r.at = start;
    return null;
  }
  return { ...changed, rows, from, to: toOf(r) };
}

const NO_ROWS: readonly number[] = [];

/** "on 6th rnd", "on 8th and 9th rnds", "on rnds 5 and 6": the rows that change so. */
function rowsTold(r: Reader): readonly number[] {
  if (!isWord(r, W.on) && !isWord(r, W.in)) return NO_ROWS;
  const start = r.at++;
  if (isWord(r, W.the)) r.at++;
  let named = isRow(r);
  if (named) r.at++;
  const rows: number[] = [];
  while (kindAt(r) === T.ordinal || (named && kindAt(r) === T.number)) {
    rows.push(valueAt(r));
    r.at++;
    const more = kindAt(r, 1) === T.ordinal || (named && kindAt(r, 1) === T.number);
    if (isWord(r, W.and) && more) r.at++;
  }
  if (!named && isRow(r)) {
    named = true;
    r.at++;
  }
  if (named && rows.length > 0) return rows;
  r.at = start;
  return NO_ROWS;
}

const isRow = (r: Reader): boolean => isWord(r, W.row) || isWord(r, W.round);

/** Another number may change as well: "…, making ch 6 instead of ch 5 and 9 dc instead of 7". */
const endsChange = (r: Reader): boolean =>
  clauseEnds(r) || (isWord(r, W.and) && (isWord(r, W.ch, 1) || kindAt(r, 1) === T.number));

const LEADS = wordsOf(
  'but except that only and having making make working work with using use changing the a an there are is be in all',
);
const CHANGES = wordsOf('but except only having making working with use using changing');
const LOOPS = wordsOf('loop loops lp lps space spaces sp sps arch arches chain chains ch chs');
const INSTEAD = wordsOf('instead rather');
const THAN = wordsOf('of than');
const IN_EACH = wordsOf('in into over under');
const EACH = wordsOf('each every all');
const GROUPS = wordsOf(
  'place loop loops lp lps space spaces sp sps shell shells group groups petal petals scallop scallops fan fans',
);
const AT_END = wordsOf('at of row round rnd end the to turn');

interface Told {
  /** `null`: chains. */
  readonly stem: StemWord | null;
  readonly n: number;
}

type Changed = Omit<ChangedNumber, 'from' | 'to' | 'rows'>;

function changedTo(r: Reader, { stem, n: now }: Told): Changed | null {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close > 0 && isOneOf(r, INSTEAD, 1)) r.at++;
  if (isOneOf(r, INSTEAD) && isOneOf(r, THAN, 1)) {
    r.at += 2;
    while (isOneOf(r, LEADS)) r.at++;
    const ends =
      clauseEnds(r, 1) ||
      kindAt(r, 1) === T.close ||
      isWord(r, W.and, 1) ||
      (isOneOf(r, IN_EACH, 1) && isOneOf(r, EACH, 2));
    const before = kindAt(r) === T.number && ends ? valueAt(r) : null;
    if (before !== null) r.at++;
    const was = before === null ? numberHere(r) : { stem, n: before };
    if (close > 0 && r.at++ !== close) return null;
    passPlaces(r);
    return was === null || was.stem !== stem ? null : { stem, was: was.n, now, atEnd: false };
  }
  if (stem === null && goesToEnd(r)) return { stem, was: null, now, atEnd: true };
  if (stem === null && isWord(r, W.between)) while (!clauseEnds(r) && !isWord(r, W.on)) r.at++;
  passPlaces(r);
  return { stem, was: null, now, atEnd: false };
}

/** "in each loop": where the row has them. */
function passPlaces(r: Reader): void {
  if (isOneOf(r, IN_EACH) && isOneOf(r, EACH, 1) && isOneOf(r, GROUPS, 2)) r.at += 3;
}

/** "1 ch at the end of row to turn", "ch 1 to turn". */
function goesToEnd(r: Reader): boolean {
  const start = r.at;
  while (isOneOf(r, AT_END)) r.at++;
  if (r.at > start + 1 && clauseEnds(r)) return true;
  r.at = start;
  return false;
}

/** "ch 7", "ch-5 lps", "6 ch", "7-ch loops", "9 dc": how many, and of what. */
function numberHere(r: Reader): Told | null {
  const start = r.at;
  let n: number | null = null;
  let stem: StemWord | null = null;
  if (isWord(r, W.ch)) {
    const k = kindAt(r, 1) === T.dash ? 2 : isWord(r, W.only, 1) ? 2 : 1;
    n = kindAt(r, k) === T.number ? valueAt(r, k) : null;
    r.at += k + 1;
  } else if (kindAt(r) === T.number) {
    const k = kindAt(r, 1) === T.dash ? 2 : 1;
    n = valueAt(r);
    if (isWord(r, W.ch, k)) r.at += k + 1;
    else {
      r.at++;
      const stitch = readStitch(r);
      stem = stitch?.shape === 'one' && stitch.special === null ? stitch.stem : null;
      if (stem === null) n = null;
    }
  }
  if (n === null) {
    r.at = start;
    return null;
  }
  if (stem === null && isOneOf(r, LOOPS)) r.at++;
  return { stem, n };
}
