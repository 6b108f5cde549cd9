/** Stated counts: "(28)", "[24 sc]", "- 28 sts", "(16 dc, 8 ch-1 sps)", "24 sts total", "= 12". */
import { formOf, PROSE } from './dictionary.ts';
import { readNoun, singular } from './noun.ts';
import { opensDashed, readNumbers, sizeList } from './numbers.ts';
import {
  clauseEnds,
  endsInS,
  fromOf,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { CountUnit, Noun, Numbers, StatedCount } from './tree.ts';

type Draft = { -readonly [K in keyof StatedCount]: StatedCount[K] };

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
  return counts.length > 0 ? counts : null;
}

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
  if (!isWord(r, W.you) && !isWord(r, W.there)) return 0;
  let k = 1;
  while (k < 9 && kindAt(r, k) === T.word && TALK.has(spelled(r, r.at + k))) k++;
  return k > 1 && kindAt(r, k) === T.number ? k : 0;
}

const TALK = new Set(
  'will should would find see that then now you have has made make get be are end ends up with finish'.split(
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
  if (isSizeOfGroup(r) || isOneGroupMade(r)) return null;
  const chain = startChainItem(r);
  if (chain) return chain;
  const named = stitchFirst(r);
  if (named) return named;
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

const SHAPING = /^(?:inc|dec)reases?$/i;

/** "(14 hdc, 1 hdc2tog)", "(2 inc, 10 sc)": told beside a count, it says how the row shapes. */
function passShapingBeside(r: Reader): boolean {
  const start = r.at;
  const behind = kindAt(r, -2) === T.comma || isWord(r, W.and, -2);
  const shape = readStitch(r)?.shape;
  const isShaping = shape === 'together' || shape === 'increase';
  if (isShaping && kindAt(r) === (behind ? T.close : T.comma)) return true;
  r.at = start;
  return false;
}

/** "(33, 41, 49)" as a count of its own, one number a size. */
function bracketNumbers(r: Reader): Numbers | null {
  const from = fromOf(r, r.at);
  const values: (number | null)[] = [];
  if (!sizeList(r, values)) return null;
  return { from, to: toOf(r), values };
}

/** "(2, 5dc groups)": two groups, with a comma between. */
function groupsBehindComma(r: Reader, draft: Draft): boolean {
  if (kindAt(r) !== T.comma || kindAt(r, 1) !== T.number) return false;
  const k = kindAt(r, 2) === T.dash ? 3 : 2;
  const named =
    formOf(wordAt(r, k)) !== null && isWord(r, W.group, k + 1) && endsInS(r, r.at + k + 1);
  const closed = kindAt(r, k + 2) === T.close || kindAt(r, k + 2) === T.comma;
  if (!named || !closed) return false;
  r.at += k + 2;
  draft.unit = 'group';
  draft.word = 'group';
  return true;
}

/** "(6, ch-2 spaces)": the comma parts the number from what it counts. */
function passCommaBefore(r: Reader): void {
  if (kindAt(r) !== T.comma || !isWord(r, W.ch, 1)) return;
  const k = kindAt(r, 2) === T.dash ? 3 : 2;
  const spaces = isWord(r, W.sp, k + 1) || isWord(r, W.loop, k + 1);
  // "(63, ch-2 spaces.)"
  const stop = kindAt(r, k + 2) === T.stop ? 1 : 0;
  if (kindAt(r, k) === T.number && spaces && kindAt(r, k + 2 + stop) === T.close) r.at++;
}

/** "13 sc-hdc groups", "8 dc/ch/dc groups": each group told by what it is made of. */
function listedGroup(r: Reader, draft: Draft): boolean {
  let k = 0;
  let listed = 0;
  while (formOf(wordAt(r, k)) !== null || isWord(r, W.ch, k)) {
    listed++;
    k++;
    if (kindAt(r, k) === T.dash && kindAt(r, k + 1) === T.number) k += 2;
    if ((kindAt(r, k) !== T.dash && kindAt(r, k) !== T.slash) || kindAt(r, k + 1) !== T.word) break;
    k++;
  }
  if (listed < 2 || !isWord(r, W.group, k) || !endsInS(r, r.at + k)) return false;
  r.at += k + 1;
  draft.unit = 'group';
  draft.word = 'group';
  return true;
}

const CROSSED = wordsOf('crossed cross');

function readUnit(r: Reader, draft: Draft): void {
  if (groupsBehindComma(r, draft) || listedGroup(r, draft)) return;
  passCommaBefore(r);
  // "(1 decrease)": how the row shapes, not how many stitches it has.
  if (kindAt(r) === T.word && kindAt(r, 1) === T.close && SHAPING.test(spelled(r, r.at))) {
    draft.unit = 'decrease';
    r.at++;
    return;
  }
  if (passShapingBeside(r)) {
    draft.unit = 'decrease';
    return;
  }
  if (isWord(r, W.total)) r.at++;
  // "(1xSC, 1x2SC)" tells the words before again, and counts nothing.
  if (isWord(r, W.x) || kindAt(r) === T.times) passTimes(r);
  if (kindAt(r) === T.dash && isWord(r, W.st, 1)) r.at++;
  if (isWord(r, W.more) || isWord(r, W.remaining)) {
    draft.unit = isWord(r, W.more) ? 'decrease' : null;
    r.at++;
  }
  // "(88 treble rows)": rows, by the stitch that they are of.
  if (formOf(wordAt(r))?.shape === 'one' && kindAt(r, 2) === T.close && endsInS(r, r.at + 1)) {
    if (isWord(r, W.row, 1) || isWord(r, W.round, 1)) r.at++;
  }
  if (isWord(r, W.row) || isWord(r, W.round)) {
    draft.unit = 'row';
    r.at++;
    return;
  }
  // "6 crossed dc" are pairs, or so many stitches: what is counted is not told.
  const crossed = isOneOf(r, CROSSED) && formOf(wordAt(r, 1)) !== null;
  if (crossed) {
    draft.unit = 'group';
    draft.word = `${spelled(r, r.at)} ${spelled(r, r.at + 1)}`;
    r.at += 2;
    return;
  }
  const adjective = isWord(r, W.open) || isWord(r, W.filled);
  if (adjective && !isWord(r, W.skipped)) {
    draft.word = spelled(r, r.at);
    r.at++;
  }
  const noun = readNoun(r);
  if (noun) {
    applyNoun(draft, noun);
    if (isWord(r, W.group) && endsInS(r, r.at)) {
      // "20 cluster groups"
      r.at++;
      Object.assign(draft, { unit: 'group', word: 'group', stem: null, chains: null });
      return;
    }
    groupOf(r);
    holdingEach(r, draft);
  } else if (isNamedStitch(r)) {
    draft.unit = 'group';
    draft.word = singular(spelled(r, r.at));
    r.at += 2;
  } else if (formOf(wordAt(r)) === null && isPlainGroup(r)) {
    draft.unit = 'group';
    draft.word = singular(spelled(r, r.at));
    r.at++;
  }
}

/** "(4 x corner)", "(8 x 1 ch sps)"; but "(1 x 2 sc)" tells the words before again. */
function passTimes(r: Reader): void {
  const start = r.at++;
  if (kindAt(r) !== T.number) return;
  const noun = readNoun(r);
  r.at = noun?.kind === 'space' && noun.word !== 'ch' ? start + 1 : start;
}

/** "6 loops with 5 hdc each": the stitches in all. */
function holdingEach(r: Reader, draft: Draft): void {
  if (!isWord(r, W.with) || kindAt(r, 1) !== T.number) return;
  const start = r.at++;
  const many = valueAt(r);
  r.at++;
  const noun = readNoun(r);
  const around = isWord(r, W.around, 1) ? 2 : 1;
  if (noun && isWord(r, W.each) && kindAt(r, around) === T.close) {
    r.at += around;
    draft.n = { ...draft.n, values: draft.n.values.map((n) => (n === null ? n : n * many)) };
    draft.chains = null;
    draft.word = '';
    applyNoun(draft, noun);
  } else r.at = start;
}

/** "20 sets of three dc" */
function groupOf(r: Reader): void {
  // "3 groups of X st"
  if (isWord(r, W.of) && r.specials?.has(r.hash[r.at + 1] ?? 0)) {
    r.at += isWord(r, W.st, 2) ? 3 : 2;
    return;
  }
  if (!isWord(r, W.of) || kindAt(r, 1) !== T.number) return;
  r.at += 2;
  if (kindAt(r) === T.dash) r.at++;
  readNoun(r);
  // "6 groups of 2-dc and ch-1 sp"
  if (!isWord(r, W.and)) return;
  const and = r.at++;
  if (!readNoun(r)) r.at = and;
}

/** "6 scallops", "5 motifs": a made-up thing that is counted, one plural word before a close. */
const isPlainGroup = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  // "(10 sc, 2 handles)": an everyday word is counted too, behind a count.
  (r.value[r.at] === 0 ||
    (kindAt(r, -2) === T.comma && (wordAt(r) === PROSE || isWord(r, W.post)))) &&
  (kindAt(r, 1) === T.close ||
    isWord(r, W.between, 1) ||
    (isWord(r, W.around, 1) && wordAt(r, 2) === W.the) ||
    spelled(r, r.at + 1) === 'when' ||
    isCloseOfRow(r) ||
    (r.value[r.at] === 0 && kindAt(r, 1) === T.comma && kindAt(r, 2) === T.number)) &&
  /s$/i.test(spelled(r, r.at));

/** "- 13 ripples.": the last word of the row. */
const isCloseOfRow = (r: Reader): boolean =>
  (kindAt(r, -2) === T.dash || kindAt(r, -2) === T.equals) &&
  (kindAt(r, 1) === T.end || (kindAt(r, 1) === T.stop && kindAt(r, 2) === T.end));

/** "21 linen stitches": a stitch by a name of its own, which is no name of the trade. */
const isNamedStitch = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  r.value[r.at] === 0 &&
  isWord(r, W.st, 1) &&
  endsInS(r, r.at + 1) &&
  kindAt(r, 2) !== T.word;

const UNITS: Readonly<Record<string, CountUnit>> = {
  stitch: 'stitch',
  stem: 'stem',
  chain: 'chain',
  space: 'space',
  gap: 'space',
  corner: 'group',
  group: 'group',
  picot: 'group',
  box: 'box',
  ring: 'group',
  'start-chain': 'chain',
  'row-end': 'row',
  marker: 'group',
  join: 'stem',
  center: 'group',
};

function applyNoun(draft: Draft, noun: Noun): void {
  const unit = UNITS[noun.kind] ?? 'group';
  const bareChain = noun.kind === 'space' && noun.word === 'ch';
  draft.unit = draft.unit === 'decrease' ? 'decrease' : bareChain ? 'space' : unit;
  draft.stem = noun.stem;
  draft.chains = noun.chains;
  if (noun.word !== '' && noun.word !== 'ch' && noun.kind !== 'ring') draft.word = noun.word;
  else if (noun.kind === 'corner' || noun.kind === 'picot') draft.word = noun.kind;
}

/** Words behind a number: "total", "in all", "not counting the ch", "each side", "increased". */
function readTrail(r: Reader, counts: StatedCount[], end: number): boolean {
  const start = r.at;
  const last = counts.at(-1);
  if (!last || kindAt(r) !== T.word) return false;
  const draft: Draft = { ...last };
  while (r.at < end && kindAt(r) === T.word && trailWord(r, draft, end));
  if (r.at === start) return false;
  draft.to = toOf(r);
  counts[counts.length - 1] = draft;
  return true;
}

function trailWord(r: Reader, draft: Draft, end: number): boolean {
  const sense = wordAt(r);
  const last = lastRowWords(r);
  if (last > 0) {
    r.at += last;
    return true;
  }
  if (sense === W.increased || sense === W.decreased || sense === W.added) {
    draft.unit = 'decrease';
  } else if (sense === W.per || sense === W.each || sense === W.between) {
    const row = isWord(r, W.row, 1) || isWord(r, W.round, 1);
    draft.partial ||= !row;
    r.at = Math.min(end, r.at + 2);
    return true;
  } else if (sense === W.before && draft.unit !== null) {
    // "4 sts before centre ch-2 sp"
    draft.partial = true;
    restOfClause(r, end);
    return true;
  } else if (sense === W.after || sense === W.form || (sense === W.by && isEndOfRow(r))) {
    // "(11 sts after last repeat)", "12 sps forming 6 ripples"
    restOfClause(r, end);
    return true;
  } else if (sense === W.not || sense === W.excluding || sense === W.count || sense === W.include) {
    draft.startChainIncluded = sense === W.include || sense === W.count;
    restOfClause(r, end);
    return true;
  } else if (sense === W.with && isWord(r, W.ch, 1)) {
    // "20 tr with ch 1 between every tr"
    restOfClause(r, end);
    return true;
  } else if (sense === PROSE && draft.unit !== null && spelled(r, r.at) === 'when') {
    // "5 petals when you finish this round"
    restOfClause(r, end);
    return true;
  } else if (sense === W.for && draft.unit !== null && kindAt(r, 1) === T.word) {
    // "26 sts for hood"
    restOfClause(r, end);
    return true;
  } else if (sense === W.at && draft.unit !== null && isPlaceOfPiece(r)) {
    // "8 sts at shoulder"
    restOfClause(r, end);
    return true;
  } else if (!TRAILS.has(sense) && !/^completed?$/.test(spelled(r, r.at))) return false;
  r.at++;
  // "114 dc at end of row 8"
  if ((sense === W.row || sense === W.round) && kindAt(r) === T.number) r.at++;
  return true;
}

/** "on last row worked", "at end of the last row", "after Row 10": which row of several has the count. */
function lastRowWords(r: Reader): number {
  let k = 0;
  if (isWord(r, W.at) && isWord(r, W.end, 1)) k = isWord(r, W.of, 2) ? 3 : 2;
  else if (isWord(r, W.on) || isWord(r, W.in)) k = 1;
  if (k === 0) return 0;
  if (isWord(r, W.the, k)) k++;
  if (!isWord(r, W.last, k) && !isWord(r, W.final, k)) return 0;
  k++;
  if (!isWord(r, W.row, k) && !isWord(r, W.round, k)) return 0;
  k++;
  return isWord(r, W.work, k) || isWord(r, W.made, k) || spelled(r, r.at + k) === 'worked'
    ? k + 1
    : k;
}

/** "(24 sts by the end of row 9)" */
const isEndOfRow = (r: Reader): boolean => isWord(r, W.end, isWord(r, W.the, 1) ? 2 : 1);

const isPlaceOfPiece = (r: Reader): boolean =>
  /^(shoulders?|neck|neckline|armholes?|underarms?|waist|top|bottom|hem|cuff|wrist|yoke)$/.test(
    spelled(r, r.at + (isWord(r, W.the, 1) ? 2 : 1)),
  );

const TRAILS: SenseSet = new SenseSet([
  W.total,
  W.these,
  W.in,
  W.all,
  W.made,
  W.now,
  W.around,
  W.across,
  W.on,
  W.centre,
  W.ring,
  W.remaining,
  W.st,
  W.round,
  W.row,
  W.beginning,
  W.at,
  W.end,
  W.of,
  W.the,
  W.so,
  W.for,
  W.work,
  W.side,
  W.long,
  W.corner,
  W.every,
]);

function restOfClause(r: Reader, end: number): void {
  while (r.at < end && kindAt(r) !== T.comma && kindAt(r) !== T.semicolon) r.at++;
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
