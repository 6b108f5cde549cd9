/**
 * Words that change nothing, and words that were not understood. A clause that opens like a side
 * job or like a sentence of advice is a remark to its end; other left-over words are a remark only
 * when every one of them is known.
 */

import { startsChain } from './chain.ts';
import { formOf, mayBeStitch, PROSE } from './dictionary.ts';
import { layersBehindAnd } from './layers.ts';
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
import {
  chainHere,
  countBracketHere,
  countHere,
  forPiece,
  LEADS_TO_CHAIN,
  LEADS_TO_WORK,
  nextItemHere,
  orderBehind,
  ringHere,
  sideHere,
  skipToken,
  toBegin,
  totalHere,
  WHEN,
  workBracketHere,
  workHere,
} from './talk-ends.ts';
import { T } from './tokens.ts';

/** Words that open a side job or advice. */
const OPENERS = (
  'place move mark stuff stuffing insert attach sew see note notes pull make sure be careful remember ' +
  'keep weave block press stiffen embroider secure fix hide glue fill adjust check use ' +
  'the this that these those read it its there here if when once before after note you your we i do ' +
  'trying ensuring avoiding watching checking remembering letting ' +
  'dont not for at on from as while with by to where count counting number of add put try check pm ' +
  'leave leaving trim carry tighten flip fold lay pin push gather thread darn wind remove ' +
  'slip hold holding keeping making taking take which what all they enjoy repeat start ' +
  'begin optional option tip hint important using set don is are will should so because but however ' +
  'always never only also lightly gently wet damp steam starch wash dry size materials finished ' +
  'cinch cinching align aligning lining matching pinch flatten flattening folding squeeze stretch bend roll crease overlap wrap slide shape paint cover hang decorate brush alternatively ' +
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
    // "working into the back 2 loops": how the stitches look
    (isWord(r, W.in, 1) && isBackLoops(r, isWord(r, W.the, 2) ? 3 : 2)) ||
    // "working down first side": where the row goes; the opposite side of a chain is an order.
    isWord(r, W.along, 1) ||
    acrossPiece(r) ||
    kindAt(r, k) === T.ordinal ||
    (isWord(r, W.from, 1) && /^(left|right)$/.test(spelled(r, r.at + 2))) ||
    /^(your|it|them|sure)$/.test(spelled(r, r.at + k))
  );
};

const isBackLoops = (r: Reader, k: number): boolean =>
  (isWord(r, W.back, k) || isWord(r, W.front, k)) &&
  kindAt(r, k + 1) === T.number &&
  isWord(r, W.loop, k + 2);

/** "Rep from * across, work last sc in top of ch 3": where the repeat's last stitch goes. */
function tellsLastOf(r: Reader): boolean {
  const behind = kindAt(r, -1) === T.comma && (isWord(r, W.across, -2) || isWord(r, W.row, -2));
  if (!behind || !isWord(r, W.last, isWord(r, W.the, 1) ? 2 : 1)) return false;
  let k = isWord(r, W.the, 1) ? 3 : 2;
  if (kindAt(r, k) === T.number && r.value[r.at + k] === 1) k++;
  return mayBeStitch(wordAt(r, k)) && isWord(r, W.in, k + 1);
}

/** "working across long edge of band, sc in each row end": where the row goes, before the work. */
function acrossPiece(r: Reader): boolean {
  if (!isWord(r, W.across, 1) && !isWord(r, W.up, 1)) return false;
  let k = kindAt(r, 2) === T.ordinal ? 3 : 2;
  for (; k < 10 && kindAt(r, k) === T.word && !isWord(r, W.ch, k); k++)
    if (mayBeStitch(wordAt(r, k)) && !isOneOf(r, EDGES, k + 1)) break;
  return k > 2 && kindAt(r, k) === T.comma && kindAt(r, k + 1) !== T.end;
}

const EDGES = wordsOf('edge edges side sides end ends');

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

/** "Make 6 petals as follows: …" */
const asListed = (r: Reader): boolean =>
  kindAt(r, 1) === T.number && isOneOf(r, AS, 3) && isOneOf(r, FOLLOWS, 4);

const AS = wordsOf('as like');
const FOLLOWS = wordsOf('follows this');

const anotherOne = (r: Reader): boolean =>
  // "Make 4. Beginning at center, ch 8.": so many of the piece.
  (kindAt(r, 1) === T.number && kindAt(r, 2) === T.stop) ||
  (isWord(r, W.another, 1) && !mayBeStitch(wordAt(r, 2)) && !isWord(r, W.ch, 2)) ||
  asListed(r) ||
  (kindAt(r, 1) === T.number && isWord(r, W.more, 2) && (clauseEnds(r, 3) || isWord(r, W.and, 3)));

/** "*Make 1st corner, ch 6, …", "make 2nd corner ch 6": what the loop is to be. */
const aCorner = (r: Reader): boolean =>
  (kindAt(r, 1) === T.ordinal || isWord(r, W.a, 1) || isWord(r, W.first_word, 1)) &&
  isWord(r, W.corner, 2) &&
  (clauseEnds(r, 3) || opensCorner(r, 3));

/** A chain, stitches or a bracket, which make it. */
const opensCorner = (r: Reader, k: number): boolean =>
  isWord(r, W.ch, k) ||
  (kindAt(r, k) === T.open && (r.partner[r.at + k] ?? -1) > r.at + k + 3) ||
  (kindAt(r, k) === T.number && mayBeStitch(wordAt(r, k + 1)));

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
  isWord(r, W.the, 1) ||
  isWord(r, W.color, 1) ||
  /^(it|them|up)$/.test(spelled(r, r.at + 1)) ||
  namesColour(r);

/** "drawing through the next colour": the yarn, with no stitch and no number before it. */
function namesColour(r: Reader): boolean {
  for (let k = 1; k < 6 && kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k)); k++)
    if (isWord(r, W.color, k)) return true;
  return false;
}

/** "Sc around, with 3 sc in each corner", "using 2 sc in corners": work, and no remark. */
const givesWork: Rule = (r) =>
  kindAt(r, 1) === T.number && mayBeStitch(wordAt(r, 2)) && isWord(r, W.in, 3);

/** What more must stand behind a word that opens a remark; a later line wins. */
const RULES: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...OPENERS.map((word): [string, Rule] => [word, always]),
  // "Make one more": another of these.
  [
    'make',
    (r) => /^(sure|note|it|them)$/.test(spelled(r, r.at + 1)) || anotherOne(r) || aCorner(r),
  ],
  // "Time to increase!"
  ['time', (r) => isWord(r, W.to, 1)],
  ['color', (r) => isWord(r, W.change, 1)],
  ['colour', (r) => isWord(r, W.change, 1)],
  ['do', (r) => isWord(r, W.not, 1)],
  ["don't", always],
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
  ['with', (r) => !givesWork(r)],
  ['using', (r) => !givesWork(r)],
  ['work', (r) => tellsLastOf(r) || asListed(r)],
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
  if (isWord(r, W.work, k)) return k;
  return kindAt(r, k) === T.comma && isWord(r, W.work, k + 1) ? k + 1 : 0;
}

/** Puts the rest of the clause down as a remark. */
export function remarkClause(r: Reader, run: Run): void {
  const start = r.at;
  run.aside = true;
  const leads = LEADS_TO_CHAIN.test(spelled(r, start)) || toBegin(r) || forPiece(r, run);
  const begins = isOneOf(r, LEADS_TO_WORK);
  const behind = isOneOf(r, WHEN);
  const closes = isOneOf(r, CLOSES_FLAT);
  const leadsToSide = behind || isWord(r, W.you);
  // "Don't forget to ch 1": behind these words stands an order.
  const reminds = isOneOf(r, FORGET, 1);
  while (
    !(reminds && isWord(r, W.to, -1)) &&
    !(closes && layersBehindAnd(r)) &&
    !(leads && chainHere(r)) &&
    !(begins && workHere(r)) &&
    !(leadsToSide && sideHere(r)) &&
    !(behind && totalHere(r)) &&
    !ringHere(r) &&
    !clauseEnds(r) &&
    kindAt(r) !== T.star &&
    !nextItemHere(r) &&
    !orderBehind(r) &&
    !workBracketHere(r) &&
    !countBracketHere(r) &&
    !countHere(r)
  ) {
    if (isChoice(r)) passSentence(r);
    else skipToken(r);
  }
  if (r.kind[start + 1] === T.colon && NOTE.test(spelled(r, start))) passNote(r);
  if (r.at === start) r.at++;
  putWords(r, run, start, tellsWork(r, start) ? 'unread' : 'remark');
  if ((behind || reminds || orderBehind(r)) && !clauseEnds(r)) run.aside = false;
}

const FORGET = wordsOf('forget');

/** Words with which a round is laid flat before it is closed. */
const CLOSES_FLAT = wordsOf(
  'fold folding flatten flattening press pinch line align hold holding bring',
);

const IF = wordsOf('if');

/** "If you want it wider, ch 90": another way to do it, told to its full stop. */
const isChoice = (r: Reader): boolean =>
  isOneOf(r, IF) &&
  (/^you['’]?ve$/.test(spelled(r, r.at + 1)) ||
    (isWord(r, W.you, 1) &&
      /^(want|like|prefer|wish|need|choose|desire|would|d|are|use|plan|find|ve|divided)$/.test(
        spelled(r, r.at + 2),
      )));

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
  const ahead = start - r.at;
  if (isOneOf(r, FROM, ahead)) return worksNext(r, start);
  if (!isOneOf(r, TELLERS, ahead)) return false;
  let stitches = false;
  for (let i = start; i < r.at; i++) {
    const sense = r.word[i] ?? 0;
    if (TALLIES.has(sense)) return false;
    stitches ||= r.kind[i] === T.number && mayBeStitch(r.word[i + 1] ?? 0) && i + 1 < r.at;
  }
  return stitches;
}

const FROM = wordsOf('from');
const TELLERS = wordsOf(`
  we were well weve wem you youre youll youve youm i ire ill ive im to now so
`);

function worksNext(r: Reader, start: number): boolean {
  for (let i = start + 1; i + 2 < r.at; i++) {
    const isNext = r.word[i] === W.next && r.kind[i + 1] === T.number;
    if (isNext && (r.word[i + 2] === W.st || mayBeStitch(r.word[i + 2] ?? 0))) return true;
  }
  return false;
}

/** "1 sc in each sc, at the same time inc 3 sc evenly": the words before the shaping. */
export function passSameTime(r: Reader): boolean {
  if (!isWord(r, W.the, 1) || spelled(r, r.at) !== 'at') return false;
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
