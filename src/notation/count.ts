/** Stated counts: "(28)", "[24 sc]", "- 28 sts", "(16 dc, 8 ch-1 sps)", "24 sts total", "= 12". */

import { readTrail } from './count-trail.ts';
import { applyNoun, type Draft, readUnit } from './count-unit.ts';
import { formOf, PROSE } from './dictionary.ts';
import { readNoun } from './noun.ts';
import { opensDashed, readNumbers, sizeList } from './numbers.ts';
import {
  clauseEnds,
  endsInS,
  fromOf,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Numbers, StatedCount } from './tree.ts';

/** Never added to. */
const NONE: StatedCount[] = [];

/** All counts up to a token, or `null` when anything else stands there. */
export function readCounts(r: Reader, end: number): StatedCount[] | null {
  const start = r.at;
  let counts: StatedCount[] = NONE;
  while (r.at < end) {
    if (counts.length > 0 && commaTrail(r, counts, end)) continue;
    // "(11 + 11 = 22 dc)": parts of a sum have no count of their own.
    if (kindAt(r) === T.equals && counts.length > 1 && counts.every(({ unit }) => unit === null))
      counts = NONE;
    // "(6 shells or 42 dc)": told in two ways.
    if (isWord(r, W.or) && counts.at(-1)?.unit && kindAt(r, 1) === T.number) r.at++;
    skipLead(r, end);
    if (r.at >= end) break;
    const count = countItem(r);
    if (!count) {
      if (counts.length > 0 && readTrail(r, counts, end)) continue;
      r.at = start;
      return null;
    }
    // Nearly all are alone: a list of one has no room for more.
    if (counts === NONE) counts = [count];
    else counts.push(count);
    readTrail(r, counts, end);
  }
  if (counts.length === 0) r.at = start;
  if (counts.length > 1) {
    shareSide(r, counts);
    partEnds(r, counts);
  }
  return counts.length > 0 ? counts : null;
}

/** "One 3-dc group and 2 ch-1 sps on each side", "1 ch-1 sp one each side": both are of a side alone. */
function shareSide(r: Reader, counts: StatedCount[]): void {
  for (let i = counts.length - 1; i > 0; i--) {
    const [before, count] = [counts[i - 1]!, counts[i]!];
    if (!count.partial || before.partial || before.word === 'corner') continue;
    const between = r.text.slice(r.base + before.to, r.base + count.from);
    if (/[,;.]/.test(between)) continue;
    counts[i - 1] = { ...before, partial: true };
    if (count.unit === null && !/\S/.test(between)) counts.splice(i, 1);
  }
}

/** "5 hdc at beg, 5 hdc at end": of an end alone, where both of them are told. */
function partEnds(r: Reader, counts: StatedCount[]): void {
  const wordsOf = ({ from, to }: StatedCount): string => r.text.slice(r.base + from, r.base + to);
  if (!counts.some((count) => AT_BEGINNING.test(wordsOf(count)))) return;
  counts.forEach((count, i) => {
    if (AT_AN_END.test(wordsOf(count))) counts[i] = { ...count, partial: true };
  });
}

const AT_BEGINNING = /\bat (?:the )?(?:beg\w*|start)\b/i;
const AT_AN_END = /\bat (?:the )?(?:beg\w*|start|end)\b/i;

/** "total:", "you now have", "count", "for a total of", signs. */
function skipLead(r: Reader, end: number): void {
  while (r.at < end) {
    const kind = kindAt(r);
    const sense = wordAt(r);
    const sign =
      kind === T.colon ||
      kind === T.equals ||
      kind === T.dash ||
      kind === T.comma ||
      kind === T.plus ||
      kind === T.semicolon ||
      kind === T.stop ||
      kind === T.slash;
    // "(there will be 16 loops)"
    const be =
      sense === PROSE &&
      (isWord(r, W.have, 1) || isWord(r, W.still, 1)
        ? spelled(r, r.at) === 'should'
        : r.at > 0 && isWord(r, W.have, -1) && spelled(r, r.at) === 'be');
    const talk = passTalk(r) || passNext(r);
    if (talk > 0) {
      r.at += talk;
      continue;
    }
    // The "a" in "(2x, a)" is a decrease.
    const letter = sense === W.a && kindAt(r, 1) !== T.word && kindAt(r, 1) !== T.number;
    if (letter || (!sign && !LEADS.has(sense) && !be) || opensDashed(r)) return;
    r.at++;
  }
}

/** "for the next 9 rounds": so many of them. */
function passNext(r: Reader): number {
  if (!isWord(r, W.for, -1)) return 0;
  const k = isWord(r, W.the) ? 1 : 0;
  if (!isWord(r, W.next, k) || kindAt(r, k + 1) !== T.number) return 0;
  return isWord(r, W.row, k + 2) || isWord(r, W.round, k + 2) ? k + 1 : 0;
}

/** "you will find that you make 13 dc", "there should be 8 lps": words before a number; or 0. */
function passTalk(r: Reader): number {
  if (isWord(r, W.end) && isWord(r, W.total, 1)) return endTotal(r);
  // "(this makes 24 sc)"
  if (!isWord(r, W.you) && !isWord(r, W.there) && !isWord(r, W.these)) return 0;
  let k = 1;
  while (k < 9 && kindAt(r, k) === T.word && TALK.has(spelled(r, r.at + k))) k++;
  return k > 1 && kindAt(r, k) === T.number ? k : 0;
}

/** "End total: 73", "End total of stitches in row: 71" */
function endTotal(r: Reader): number {
  let k = 2;
  while (k < 8 && kindAt(r, k) === T.word) k++;
  if (kindAt(r, k) === T.colon) k++;
  return kindAt(r, k) === T.number ? k : 0;
}

const TALK = new Set(
  'will should would find see that then now you have has made make makes gives get be is are end ends up with finish'.split(
    ' ',
  ),
);

const LEADS: SenseSet = new SenseSet([
  W.total,
  W.count,
  W.you,
  W.have,
  W.now,
  W.of,
  W.for,
  W.a,
  W.and,
  W.st,
  W.there,
  W.with,
  W.include,
  W.still,
]);

/** "160 dc, counting the ch-3", "24 sts, not including ch 1". */
function commaTrail(r: Reader, counts: StatedCount[], end: number): boolean {
  if (!opensExtent(r, r.at)) return false;
  r.at++;
  return readTrail(r, counts, end);
}

/** Whether the comma at this token leads to what the count in front of it holds. */
export const opensExtent = (r: Reader, token: number): boolean =>
  r.kind[token] === T.comma && r.kind[token + 1] === T.word && EXTENT.has(r.word[token + 1] ?? 0);

const EXTENT: SenseSet = new SenseSet([W.count, W.not, W.include, W.excluding]);

/** One number with its unit. */
export function countItem(r: Reader): StatedCount | null {
  const start = r.at;
  // "(24)": nothing but the number, as in most counts.
  const isBare = kindAt(r) === T.number && kindAt(r, 1) === T.close;
  if (!isBare) {
    if (isSizeOfGroup(r) || isOneGroupMade(r)) return null;
    const named = startChainItem(r) ?? stitchFirst(r);
    if (named) return named;
  }
  const n = kindAt(r) === T.open ? bracketNumbers(r) : readNumbers(r);
  if (!n) return null;
  // "(1 increase) repeat to the end of the round"
  if (kindAt(r) === T.word && kindAt(r, 1) === T.close && repeatsStitches(r, 2)) return null;
  const draft: Draft = {
    n,
    unit: null,
    stem: null,
    chains: null,
    word: '',
    startChainIncluded: null,
    partial: false,
    from: fromOf(r, start),
    to: 0,
  };
  readUnit(r, draft);
  draft.to = toOf(r);
  return draft;
}

/** "repeat to the end", but not "(19 sc) Rep Row 2", "Rep last 2 rows" or "Rep Dec row": see `isRepeatOrder`. */
function repeatsStitches(r: Reader, ahead: number): boolean {
  if (!isWord(r, W.repeat, ahead)) return false;
  const k = isWord(r, W.the, ahead + 1) ? ahead + 2 : ahead + 1;
  return !ROWS.has(wordAt(r, k)) && !ROWS.has(wordAt(r, k + 1));
}

const ROWS: SenseSet = new SenseSet([W.row, W.round, W.r, W.last, W.previous, W.these]);

/** "+ ch3" in "(62dc + ch3)": the start chain, told with its length behind the word. */
function startChainItem(r: Reader): StatedCount | null {
  const told = isWord(r, W.ch) && kindAt(r, 1) === T.number && kindAt(r, 2) === T.close;
  if (!told || kindAt(r, -1) !== T.plus) return null;
  const from = fromOf(r, r.at++);
  const n = readNumbers(r);
  if (!n) return null;
  const plain = { stem: null, chains: null, word: '', startChainIncluded: null, partial: false };
  return { n, unit: 'chain', ...plain, from, to: toOf(r) };
}

/** "(dc 77)" behind the row's last full stop or turn: the count, with its stitch in front. */
function stitchFirst(r: Reader): StatedCount | null {
  if (kindAt(r, -1) !== T.open || kindAt(r, 1) !== T.number || kindAt(r, 2) !== T.close)
    return null;
  const ends = kindAt(r, 3) === T.end || (kindAt(r, 3) === T.stop && kindAt(r, 4) === T.end);
  if (!ends || (kindAt(r, -2) !== T.stop && !isWord(r, W.turn, -2))) return null;
  const start = r.at;
  const from = fromOf(r, start);
  const noun = formOf(wordAt(r))?.shape === 'one' || isWord(r, W.st) ? readNoun(r) : null;
  const n = noun ? readNumbers(r) : null;
  if (!n || !noun || kindAt(r) !== T.close) {
    r.at = start;
    return null;
  }
  const draft: Draft = {
    n,
    unit: null,
    stem: null,
    chains: null,
    word: '',
    startChainIncluded: null,
    partial: false,
    from,
    to: toOf(r),
  };
  applyNoun(draft, noun);
  return draft;
}

/** "(2dc grouping)", "(3-dc group)": what one group is made of. */
function isSizeOfGroup(r: Reader): boolean {
  if (kindAt(r) !== T.number || !isGlued(r)) return false;
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  if (formOf(wordAt(r, k)) === null || !isWord(r, W.group, k + 1)) return false;
  return !endsInS(r, r.at + k + 1) && valueAt(r) > 1;
}

/** "(3 dc cluster formed)", "(2-tr cluster made)": one of them, and its legs. */
function isOneGroupMade(r: Reader): boolean {
  if (kindAt(r) !== T.number || kindAt(r, -1) !== T.open) return false;
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  const group = formOf(wordAt(r, k + 1));
  if (formOf(wordAt(r, k))?.shape !== 'one' || group === null || group.shape === 'one')
    return false;
  const made = isWord(r, W.made, k + 2) || /^(?:formed|completed)$/.test(spelled(r, r.at + k + 2));
  return made && !endsInS(r, r.at + k + 1);
}

/** "(33, 41, 49)" as a count of its own, one number a size. */
function bracketNumbers(r: Reader): Numbers | null {
  const from = fromOf(r, r.at);
  const values: (number | null)[] = [];
  if (!sizeList(r, values)) return null;
  return { from, to: toOf(r), values };
}

/** Whether the number here is a count although no bracket says so: it has a unit that no step has. */
export function isPlainCount(r: Reader): boolean {
  const start = r.at;
  const n = readNumbers(r);
  const unit =
    isWord(r, W.st) ||
    (isWord(r, W.total) && valueAt(r) > 0) ||
    // "12 petals total"
    (kindAt(r) === T.word && isWord(r, W.total, 1) && clauseEnds(r, 2));
  r.at = start;
  return n !== null && unit;
}
