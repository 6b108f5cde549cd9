/**
 * Words that change nothing, and words that were not understood. A clause that opens like a side
 * job or like a sentence of advice is a remark to its end; other left-over words are a remark only
 * when every one of them is known.
 */

import { isAside } from './aside.ts';
import { startsChain } from './chain.ts';
import { formOf, mayBeStitch, PROSE, type SenseId } from './dictionary.ts';
import { readOtherSide } from './orders.ts';
import {
  clauseEnds,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { formsPattern } from './row-numbers.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';

/** Words that open a side job or advice. */
const OPENERS = (
  'place move mark stuff stuffing insert attach sew see note notes pull make sure be careful remember ' +
  'keep weave block press stiffen embroider secure fix hide glue fill adjust check use ' +
  'the this that these those read it its there here if when once before after note you your we i do ' +
  'dont not for at on from as while with by to where count counting number of add put try check pm ' +
  'leave leaving trim carry tighten flip fold lay pin push gather thread darn wind remove ' +
  'slip hold holding keeping making taking take which what all they enjoy repeat start ' +
  'begin optional option tip hint important using set don is are will should so because but however ' +
  'always never only also lightly gently wet damp steam starch wash dry size materials finished ' +
  'align pinch flatten squeeze stretch bend roll crease overlap wrap slide shape paint cover hang decorate brush alternatively ' +
  "you're you'll you've youre youll we're we'll we've i'm i've i'll " +
  'otherwise thats its my mine placing moving marking pulling being adding noting measuring inserting attaching sewing cut tie knot draw close none'
).split(' ');

/** Whether the clause here tells a side job or gives advice, by its first word. */
export function opensRemark(r: Reader): boolean {
  // Asked of many words, of which few open any: no string is made for the others.
  if (kindAt(r) !== T.word || !isOneOf(r, MAY_OPEN)) return false;
  return RULES.get(spelled(r, r.at).replace('’', "'"))?.(r) ?? false;
}

const isProse = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead) === T.word && wordAt(r, ahead) === PROSE;

/** "working last sc in top of tch": tells where a stitch named before goes, and adds none. */
const tellsHow = (r: Reader): boolean => {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  return (
    isWord(r, W.last, k) ||
    // "3 sc in middle st, making the corner"
    (isWord(r, W.corner, isWord(r, W.a, 1) ? 2 : k) && spelled(r, r.at) === 'making') ||
    // "working between trs on rnd 4, (tr, ch 2, tr) in …": the way, before the work.
    betweenOthers(r) ||
    // "working in dc, increase 4 evenly"
    (isWord(r, W.in, 1) && mayBeStitch(wordAt(r, 2)) && kindAt(r, 3) === T.comma) ||
    // "working down first side": where the row goes; the opposite side of a chain is an order.
    isWord(r, W.along, 1) ||
    kindAt(r, k) === T.ordinal ||
    (isWord(r, W.from, 1) && /^(left|right)$/.test(spelled(r, r.at + 2))) ||
    /^(your|it|them|sure)$/.test(spelled(r, r.at + k))
  );
};

/** "Rep from * across, work last sc in top of ch 3": where the repeat's last stitch goes. */
function tellsLastOf(r: Reader): boolean {
  const behind = kindAt(r, -1) === T.comma && (isWord(r, W.across, -2) || isWord(r, W.row, -2));
  if (!behind || !isWord(r, W.last, isWord(r, W.the, 1) ? 2 : 1)) return false;
  let k = isWord(r, W.the, 1) ? 3 : 2;
  if (kindAt(r, k) === T.number && r.value[r.at + k] === 1) k++;
  return mayBeStitch(wordAt(r, k)) && isWord(r, W.in, k + 1);
}

function betweenOthers(r: Reader): boolean {
  if (!/^(between|behind|over)$/.test(spelled(r, r.at + 1))) return false;
  let k = 2;
  while (k < 12 && !clauseEnds(r, k)) k++;
  return kindAt(r, k) === T.comma && kindAt(r, k + 1) !== T.end;
}

/** "Starting at narrow end, ch 50": words without number or stitch, and then a chain. */
function tellsWhere(r: Reader): boolean {
  let k = 1;
  while (k < 10 && kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k)) && !isWord(r, W.ch, k))
    k++;
  if (kindAt(r, k) === T.comma) k++;
  // "Beg at lower edge, with A, ch 26"
  if (isWord(r, W.with, k) || isWord(r, W.using, k)) {
    let end = k + 1;
    while (end < k + 7 && kindAt(r, end) !== T.comma && kindAt(r, end) !== T.end) end++;
    if (kindAt(r, end) === T.comma && (isWord(r, W.ch, end + 1) || isWord(r, W.ch, end + 2)))
      return true;
  }
  const start = r.at;
  r.at += k;
  const chain = k > 1 && startsChain(r);
  r.at = start;
  return chain;
}

/** "3 sc in last sc, making the corner": what the stitches before are. */
function makesCorner(r: Reader): boolean {
  const k = isWord(r, W.the, 1) || isWord(r, W.a, 1) ? 2 : 1;
  return kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k)) && clauseEnds(r, k + 1);
}

const CHAINED = wordsOf('chained');
const COLOUR = wordsOf('color colour stripe');
const SEQUENCE = wordsOf('sequence order pattern scheme');

const anotherOne = (r: Reader): boolean =>
  // "Make 4. Beginning at center, ch 8.": so many of the piece.
  (kindAt(r, 1) === T.number && kindAt(r, 2) === T.stop) ||
  (isWord(r, W.another, 1) && !mayBeStitch(wordAt(r, 2)) && !isWord(r, W.ch, 2)) ||
  (kindAt(r, 1) === T.number && isWord(r, W.more, 2) && (clauseEnds(r, 3) || isWord(r, W.and, 3)));

/** "*Make 1st corner, ch 6, …": what the loop is to be. */
const aCorner = (r: Reader): boolean =>
  (kindAt(r, 1) === T.ordinal || isWord(r, W.a, 1) || isWord(r, W.first_word, 1)) &&
  isWord(r, W.corner, 2) &&
  clauseEnds(r, 3);

/** "Starting with color 1, rep row 2": the yarn alone. */
function startsInColour(r: Reader): boolean {
  if (!isWord(r, W.with, 1)) return false;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  if (!isWord(r, W.color, k)) return false;
  return clauseEnds(r, k + 1) || (kindAt(r, k + 1) !== T.end && clauseEnds(r, k + 2));
}

type Rule = (r: Reader) => boolean;
const always: Rule = () => true;

/** "drawing it up from 2 rows down", "bringing the yarn to the front" */
const leadsYarn: Rule = (r) =>
  isWord(r, W.the, 1) || isWord(r, W.color, 1) || /^(it|them|up)$/.test(spelled(r, r.at + 1));

/** What more must stand behind a word that opens a remark; a later line wins. */
const RULES: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...OPENERS.map((word): [string, Rule] => [word, always]),
  // "Make one more": another of these.
  [
    'make',
    (r) => /^(sure|note|it|them)$/.test(spelled(r, r.at + 1)) || anotherOne(r) || aCorner(r),
  ],
  ['color', (r) => isWord(r, W.change, 1)],
  ['colour', (r) => isWord(r, W.change, 1)],
  ['do', (r) => isWord(r, W.not, 1)],
  // "Fasten the eyes between rows 7 and 8"
  // "in the following colour sequence:"
  [
    'in',
    (r) =>
      isOneOf(r, COLOUR, isWord(r, W.the, 1) ? 3 : 2) &&
      isOneOf(r, SEQUENCE, isWord(r, W.the, 1) ? 4 : 3),
  ],
  ['fasten', (r) => isWord(r, W.the, 1) || isProse(r, 1)],
  ['working', tellsHow],
  ['work', tellsLastOf],
  ['making', (r) => tellsHow(r) || makesCorner(r)],
  ['starting', (r) => tellsWhere(r) || startsInColour(r)],
  ['beginning', tellsWhere],
  ['beg', tellsWhere],
  ['commencing', tellsWhere],
  ['i', (r) => !(isOneOf(r, CHAINED, 1) && kindAt(r, 2) === T.number)],
  ['resulting', (r) => isWord(r, W.in, 1) && kindAt(r, 2) !== T.number],
  ['drawing', leadsYarn],
  ['bringing', leadsYarn],
  ['picking', leadsYarn],
  ['carrying', leadsYarn],
  // "alternating colors every two rows, starting with white"
  ['alternating', (r) => isWord(r, W.color, 1)],
  ['slip', (r) => !isWord(r, W.st, 1) && isWord(r, W.loop, 1)],
  // "Turn, no chain"
  ['no', (r) => isWord(r, W.ch, 1) && clauseEnds(r, 2)],
  ['all', () => false],
  ['rows', formsPattern],
  ['rnds', formsPattern],
  ['rounds', formsPattern],
  // ", last dc in top of tch" behind a repeat: only where the last of them goes.
  ['last', (r) => mayBeStitch(wordAt(r, 1)) && isWord(r, W.in, 2)],
]);
const MAY_OPEN = wordsOf([...RULES.keys()].join(' '));

/** "working behind last tr work 1 dc in …", "working in front of last 2 dc work …": the way; or 0. */
export function behindMade(r: Reader): number {
  if (!isWord(r, W.working)) return 0;
  const front = isWord(r, W.in, 1) && isWord(r, W.front, 2) && isWord(r, W.of, 3);
  let k = front ? 4 : /^(?:behind|over)$/.test(spelled(r, r.at + 1)) ? 2 : 0;
  if (k === 0) return 0;
  while (isWord(r, W.the, k) || isWord(r, W.last, k) || isWord(r, W.these, k)) k++;
  if (kindAt(r, k) === T.number) k++;
  if (!mayBeStitch(wordAt(r, k++))) return 0;
  if (isWord(r, W.just, k)) k++;
  if (isWord(r, W.made, k)) k++;
  return isWord(r, W.work, k) ? k : 0;
}

/** Puts the rest of the clause down as a remark. */
export function remarkClause(r: Reader, run: Run): void {
  const start = r.at;
  run.aside = true;
  const leads = LEADS_TO_CHAIN.test(spelled(r, start)) || toBegin(r) || forPiece(r, run);
  const begins = isOneOf(r, LEADS_TO_WORK);
  const behind = isOneOf(r, WHEN);
  while (
    !(leads && chainHere(r)) &&
    !(begins && workHere(r)) &&
    !(behind && (sideHere(r) || totalHere(r))) &&
    !ringHere(r) &&
    !clauseEnds(r) &&
    kindAt(r) !== T.star &&
    !workBracketHere(r) &&
    !countBracketHere(r) &&
    !countHere(r)
  ) {
    if (isChoice(r)) passSentence(r);
    else skipToken(r);
  }
  if (NOTE.test(spelled(r, start)) && r.kind[start + 1] === T.colon) passNote(r);
  if (r.at === start) r.at++;
  putWords(r, run, start, tellsWork(r, start) ? 'unread' : 'remark');
  if (behind && !clauseEnds(r)) run.aside = false;
}

/** "but begin working hdc in each sc around", "now start to work dc in each st": the work that begins. */
const LEADS_TO_WORK = wordsOf('but begin beginning start starting');

/** "When you arrive at the end continue working down the opposite side": the order behind the advice. */
function sideHere(r: Reader): boolean {
  if (!isWord(r, W.continue) && !isWord(r, W.working) && !isWord(r, W.work)) return false;
  const from = r.at;
  const side = readOtherSide(r);
  r.at = from;
  return side !== null;
}

const WHEN = wordsOf('when once after');

/** "When you complete the round you should have 72 sts": the count behind the clause. */
function totalHere(r: Reader): boolean {
  if (!isWord(r, W.you)) return false;
  const k = /^(?:should|will|must|now)$/.test(spelled(r, r.at + 1)) ? 2 : 1;
  return isWord(r, W.have, k) && kindAt(r, k + 1) === T.number;
}

function workHere(r: Reader): boolean {
  if (!mayBeStitch(wordAt(r)) || !isWord(r, W.in, 1)) return false;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  return isWord(r, W.each, k) || isWord(r, W.every, k) || isWord(r, W.next, k);
}

/** "If you want it wider, ch 90": another way to do it, told to its full stop. */
const isChoice = (r: Reader): boolean =>
  spelled(r, r.at) === 'if' &&
  isWord(r, W.you, 1) &&
  /^(want|like|prefer|wish|need|choose|desire|would|d|are|use|plan|find)$/.test(
    spelled(r, r.at + 2),
  );

/** "Note: each stitch has a dc in its top, and a FPdc around it.": talk to its full stop. */
const NOTE = /^(?:note|notes|tip|hint|important)$/;

/** "Note: pm on 1st sc (12)": up to the count that ends the row. */
function passNote(r: Reader): void {
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop && !countBracketHere(r)) skipToken(r);
}

function passSentence(r: Reader): void {
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop) skipToken(r);
}

/** "We crochet 5 dc out of the first sc": work, told in words that are not understood. */
function tellsWork(r: Reader, start: number): boolean {
  // "sc in 2nd ch from hok and in next 20 sts": no remark tells of the next 20 stitches.
  if (spelled(r, start) === 'from') return worksNext(r, start);
  if (!/^(?:(?:we|you|i)(?:['’]?(?:re|ll|ve|m))?|to|now|so)$/.test(spelled(r, start))) return false;
  let stitches = false;
  for (let i = start; i < r.at; i++) {
    const sense = r.word[i] ?? 0;
    if (TALLIES.has(sense)) return false;
    stitches ||= r.kind[i] === T.number && mayBeStitch(r.word[i + 1] ?? 0) && i + 1 < r.at;
  }
  return stitches;
}

function worksNext(r: Reader, start: number): boolean {
  for (let i = start + 1; i + 2 < r.at; i++) {
    const isNext = r.word[i] === W.next && r.kind[i + 1] === T.number;
    if (isNext && (r.word[i + 2] === W.st || mayBeStitch(r.word[i + 2] ?? 0))) return true;
  }
  return false;
}

/** "1 sc in each sc, at the same time inc 3 sc evenly": the words before the shaping. */
export function passSameTime(r: Reader): boolean {
  if (spelled(r, r.at) !== 'at' || !isWord(r, W.the, 1)) return false;
  if (spelled(r, r.at + 2) !== 'same' || spelled(r, r.at + 3) !== 'time') return false;
  const shape = formOf(wordAt(r, kindAt(r, 4) === T.comma ? 5 : 4))?.shape;
  if (shape !== 'increase' && shape !== 'together') return false;
  r.at += 4;
  return true;
}

/** Words of sentences that count or measure what was made. */
const TALLIES: SenseSet = new SenseSet([
  W.have,
  W.count,
  W.measures,
  W.total,
  W.is,
  W.made,
  W.remaining,
  W.marker,
]);

/** "Using a 4 mm hook make 75 ch", "with main colour ch 40": the remark ends where the chain begins. */
const LEADS_TO_CHAIN = /^(us(e|ing)|with|start(ing)?|begin(ning)?|commenc(e|ing)|holding|taking)$/;

/** "To begin ch 65 and join": as "begin with" does. */
const toBegin = (r: Reader): boolean =>
  isWord(r, W.to) && /^(?:begin|start)$/.test(spelled(r, r.at + 1));

/** "For the cuff make a chain of 44 stitches": the piece before its chain; no size, and no other way. */
function forPiece(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || r.at !== FIRST || !isWord(r, W.for)) return false;
  if (!isWord(r, W.the, 1) && !isOneOf(r, EACH, 1)) return false;
  for (let k = 2; k < 7; k++) {
    if (isWord(r, W.ch, k) || isWord(r, W.work, k)) return k > 2;
    if (kindAt(r, k) !== T.word || isWord(r, W.size, k) || isWord(r, W.more, k))
      return k > 2 && kindAt(r, k) === T.comma;
    if (/..er$|est$/.test(spelled(r, r.at + k)) && !isOneOf(r, NAMES_IN_ER, k)) return false;
  }
  return false;
}

const EACH = wordsOf('each');
const NAMES_IN_ER = wordsOf('border flower center corner lower upper cover runner under');

function chainHere(r: Reader): boolean {
  // "chain (ch) 24"
  const twice = isWord(r, W.ch) && kindAt(r, 1) === T.open && isWord(r, W.ch, 2);
  if (twice && kindAt(r, 3) === T.close) return kindAt(r, 4) === T.number;
  if (isWord(r, W.work) || kindAt(r) === T.number) return startsChain(r) && !isWord(r, W.ch);
  // "start with chain of 14 stitches"
  const k = isWord(r, W.of, 1) ? 2 : 1;
  const ends =
    clauseEnds(r, k + 1) ||
    kindAt(r, k + 1) === T.open ||
    isWord(r, W.st, k + 1) ||
    (isWord(r, W.and, k + 1) && (isWord(r, W.join, k + 2) || isWord(r, W.turn, k + 2))) ||
    /^loos/.test(spelled(r, r.at + k + 1));
  return isWord(r, W.ch) && kindAt(r, k) === T.number && ends;
}

/** "(ch 5) with the larger hook and form a ring": the remark ends where the ring is formed. */
const ringHere = (r: Reader): boolean =>
  isWord(r, W.and) &&
  isWord(r, W.form, 1) &&
  (isWord(r, W.a, 2) || kindAt(r, 2) === T.number) &&
  isWord(r, W.ring, 3);

/** "pull ring taut – 12 sc" */
const countHere = (r: Reader): boolean =>
  kindAt(r, 1) === T.number &&
  (kindAt(r) === T.equals
    ? kindAt(r, 2) === T.end || isUnit(r)
    : kindAt(r) === T.dash && isUnit(r));

const isUnit = (r: Reader): boolean =>
  (isWord(r, W.st, 2) || mayBeStitch(wordAt(r, 2))) && clauseEnds(r, 3);

/** A bracket of work ends the remark; one that tells more of it does not. */
function workBracketHere(r: Reader): boolean {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  return close > r.at && !isAside(r, r.at, close);
}

/** "pull tight (6)", "pull to close (6 sc)": the count at the row's end is none of the remark's. */
function countBracketHere(r: Reader): boolean {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || kindAt(r, 1) !== T.number) return false;
  const behind = r.kind[close + 1];
  if (behind !== T.end && behind !== T.stop) return false;
  const unit = r.at + 2;
  const sense = r.word[unit] ?? 0;
  return unit === close || (unit + 1 === close && (sense === W.st || mayBeStitch(sense)));
}

/** One token, or a whole bracket. */
function skipToken(r: Reader): void {
  const partner = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  r.at = partner > r.at ? partner + 1 : r.at + 1;
}

/** Words that begin no step: up to the clause's end or to the next word that does. */
export function leftOver(r: Reader, run: Run): void {
  const start = r.at;
  let known = isKnown(r);
  r.at++;
  // "12 sc on the second leg = 24 sc": the count is none of the words before its sign.
  const counts = (): boolean => kindAt(r) === T.equals && kindAt(r, 1) === T.number;
  while (!clauseEnds(r) && !beginsStep(r) && !counts()) {
    known &&= isKnown(r);
    r.at++;
  }
  const alone = r.at === start + 1 && kindAt(r, -1) !== T.word && kindAt(r, -1) !== T.number;
  if (alone && kindAt(r, -1) !== T.ordinal) {
    // A stray sign is a slip of typing and says nothing.
    return;
  }
  const aside =
    known ||
    run.aside ||
    isTitle(r, run, start) ||
    isProseSentence(r, run, start) ||
    leadsByDoing(r, start) ||
    isLead(r, run, start) ||
    isCry(r, run, start);
  putWords(r, run, start, aside ? 'remark' : 'unread');
}

/**
 * A sentence of its own behind the work, of several words and none of them notation: talk. One word,
 * or one with a number or a stitch in it, might be work.
 */
function isProseSentence(r: Reader, run: Run, start: number): boolean {
  if (!beginsSentence(r, run, start) || r.at - start < 3) return false;
  const ends = kindAt(r) === T.stop || kindAt(r) === T.end;
  if (!ends && kindAt(r) !== T.comma) return false;
  let strange = 0;
  let talk = 0;
  for (let i = start; i < r.at; i++) {
    const sense = r.word[i] ?? 0;
    if (r.kind[i] !== T.word ? !tellsRow(r, i) : mayBeStitch(sense)) return false;
    if (ORDERS.has(sense) && !isRowWord(sense)) return false;
    if (sense === 0) strange++;
    else if (TALK.has(sense)) talk++;
  }
  const least = r.kind[start - 1] === T.stop ? 1 : 2;
  if (talk < least || (talk + strange) * 3 < r.at - start) return false;
  if (!ends) run.aside = true;
  return true;
}

/** "Work directly into next round by doing 2 sc in …": the work stands behind. */
const leadsByDoing = (r: Reader, start: number): boolean =>
  r.at - start > 2 &&
  kindAt(r) === T.number &&
  spelled(r, r.at - 2) === 'by' &&
  /^(?:doing|making|working|putting)$/.test(spelled(r, r.at - 1));

/** Behind a full stop, or behind the count that closes the row. */
const beginsSentence = (r: Reader, run: Run, start: number): boolean =>
  (r.kind[start - 1] === T.stop && run.out.length > 0 && run.sentence === run.out.length) ||
  (r.kind[start - 1] === T.close && r.counts.at(-1)?.from === run.out.length) ||
  r.kind[start - 1] === T.star ||
  (run.out.length === 0 && run.end === 'text');

/** Words of sentences; rows have none of them, however they are misspelt. */
const TALK: ReadonlySet<SenseId> = new Set([
  PROSE,
  W.you,
  W.is,
  W.have,
  W.measures,
  W.there,
  W.so,
  W.like,
]);

const isRowWord = (sense: SenseId): boolean =>
  sense === W.row || sense === W.round || sense === W.work;

/** "round 13", "20 cm": a number that counts no stitches. */
function tellsRow(r: Reader, token: number): boolean {
  if (r.kind[token] !== T.number) return false;
  const before = r.word[token - 1] ?? 0;
  const after = r.word[token + 1] ?? 0;
  if (before === W.row || before === W.round) return true;
  return after === W.row || after === W.round || LENGTHS.has(after);
}

const LENGTHS: SenseSet = new SenseSet([W.cm, W.mm, W.inch, W.metre]);

/** "Motif. Ch 6, join": the name of the piece before its first row, up to three words and no number. */
function isTitle(r: Reader, run: Run, start: number): boolean {
  if (namesItsRow(r, run, start)) return true;
  if (run.out.length > 0 || start > FIRST || r.at > FIRST + 3) return false;
  if (kindAt(r) !== T.stop && kindAt(r) !== T.colon) return false;
  for (let i = FIRST; i < r.at; i++) {
    const sense = r.value[i] ?? 0;
    if (r.kind[i] !== T.word || mayBeStitch(sense) || ORDERS.has(sense)) return false;
  }
  return true;
}

/** "Ta-da!", "Voila!": a word or two that cry out behind the work. */
function isCry(r: Reader, run: Run, start: number): boolean {
  if (kindAt(r) !== T.stop || r.at - start > 3 || !beginsSentence(r, run, start)) return false;
  if (run.out.length === 0 || spelled(r, r.at)[0] !== '!') return false;
  for (let i = start; i < r.at; i++)
    if ((r.kind[i] !== T.word && r.kind[i] !== T.dash) || (r.word[i] ?? 0) > 0) return false;
  return true;
}

/** "Turning the second corner: in last ch …": what the clause behind the colon is for. */
function isLead(r: Reader, run: Run, start: number): boolean {
  if (kindAt(r) !== T.colon || r.at - start > 5 || r.at - start < 2) return false;
  if (r.kind[start - 1] !== T.stop && start !== FIRST && run.out.length > 0) return false;
  for (let i = start; i < r.at; i++) {
    if (r.kind[i] !== T.word && r.kind[i] !== T.ordinal) return false;
    if (mayBeStitch(r.word[i]!) || ORDERS.has(r.word[i]!)) return false;
  }
  return true;
}

/** "Row 6: Beading row. *2 dc in next st …": what the row is, in words that order nothing. */
function namesItsRow(r: Reader, run: Run, start: number): boolean {
  const last = r.at - 1;
  if (run.out.length > 0 || last === start || last > start + 2 || kindAt(r) !== T.stop)
    return false;
  if (r.word[last] !== W.row && r.word[last] !== W.round) return false;
  for (let i = start; i < last; i++)
    if (r.kind[i] !== T.word || mayBeStitch(r.word[i]!) || ORDERS.has(r.word[i]!)) return false;
  return true;
}

function isKnown(r: Reader): boolean {
  const kind = kindAt(r);
  if (kind !== T.word) return kind !== T.number && kind !== T.ordinal;
  const sense = r.value[r.at] ?? 0;
  return sense === PROSE || (sense > 0 && !mayBeStitch(sense) && !ORDERS.has(sense));
}

/** Words of orders: left over, they mean that an order was not understood. */
const ORDERS: SenseSet = new SenseSet([
  W.skip,
  W.ch,
  W.repeat,
  W.times,
  W.each,
  W.every,
  W.next,
  W.tch,
  W.chart,
  W.box,
  W.mesh,
  W.omit,
  W.twice,
  W.once,
  W.thrice,
  W.more,
  W.x,
  W.v,
  W.fasten,
  W.join,
  W.yo,
  W.row,
  W.round,
  W.work,
]);

function beginsStep(r: Reader): boolean {
  const kind = kindAt(r);
  if (kind === T.open || kind === T.star) return true;
  if (kind === T.number) {
    const sense = wordAt(r, 1);
    return sense === W.ch || mayBeStitch(sense);
  }
  const sense = wordAt(r);
  if (sense <= 0) return false;
  if (sense === W.ch) return kindAt(r, 1) === T.number || kindAt(r, 1) === T.dash;
  return (
    mayBeStitch(sense) ||
    sense === W.skip ||
    sense === W.turn ||
    sense === W.fasten ||
    sense === W.repeat ||
    (sense === W.join && !isWord(r, W.of, -1))
  );
}
