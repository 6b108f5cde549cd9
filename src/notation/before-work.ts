/** Words before the work itself: "you will make a sc in each st", "working in ch-1 space, work 3 sc". */
import { formOf, mayBeStitch } from './dictionary.ts';
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
import { behindMade } from './remark.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/**
 * "You will make a sc in each st around", "now we'll work 2 dc in each sp", "you need to chain 3": what is to
 * be done, told of those who do it. The words before the work are passed.
 */
export function youWork(r: Reader, run: Run): boolean {
  if (!isOneOf(r, SUBJECT) || !SPELLED.test(spelled(r, r.at))) return false;
  // "so 2 sc in each", "so you work …"
  let k = isWord(r, W.so) && isOneOf(r, SUBJECT, 1) ? 2 : 1;
  while (k < 8 && isOneOf(r, MODALS, k)) k++;
  // "You're going to be working", "you need to": what links is passed only with its verb.
  const verb = isOneOf(r, VERBS, k);
  // "I dc in each st" has an "I" for the number.
  if (k === 1 && !verb && spelled(r, r.at) === 'i') return false;
  if (verb) k++;
  if (announces(r, run)) {
    const start = r.at;
    while (kindAt(r) !== T.stop) r.at++;
    putWords(r, run, start, 'remark');
    return true;
  }
  if (!orderAt(r, k, verb)) return false;
  run.aside = false;
  r.at += k;
  return true;
}

/** "In round 1 you will work 12 dc in a ring. Chain 3, …": told before it is done, and done behind the full stop. */
function announces(r: Reader, run: Run): boolean {
  if (run.out.some(({ kind }) => kind !== 'remark' && kind !== 'yarn')) return false;
  if (!isOneOf(r, FUTURE, 1) && !/ll$/.test(spelled(r, r.at))) return false;
  let k = 1;
  while (k < 40 && kindAt(r, k) !== T.stop && kindAt(r, k) !== T.end) k++;
  if (kindAt(r, k) !== T.stop) return false;
  return (
    isWord(r, W.beginning, k + 1) ||
    (isWord(r, W.ch, k + 1) && kindAt(r, k + 2) === T.number) ||
    (isWord(r, W.work, k + 1) && isWord(r, W.a, k + 2) && isOneOf(r, RINGS, k + 3))
  );
}

const FUTURE = wordsOf('will going are');
const RINGS = wordsOf('magic ring loop circle slip adjustable');

const SUBJECT = wordsOf("you we i you'll we'll i'll you're we're i'm youll youre so");
const SPELLED = /^(?:so|you|we|i|(?:you|we|i)['’](?:ll|re|m)|youll|youre)$/;
/** "you can" leaves it to the maker, and "you have" tells what there is. */
const MODALS = wordsOf(
  'will are am going to be now then just simply also need want must should start begin by next first',
);
const VERBS = wordsOf('make making work working crochet crocheting do doing place placing put');

/** "2 dc in each sp", "a dc in", "chain 3", "(2 dc, ch 2) in …": no "24 sts", and no "12 sc in total". */
function orderAt(r: Reader, k: number, verb: boolean): boolean {
  if (!verb && isWord(r, W.ch, k)) return kindAt(r, k + 1) === T.number;
  if (!verb && (isWord(r, W.skip, k) || isWord(r, W.repeat, k))) return true;
  if (verb && kindAt(r, k) === T.open) return !clauseEnds(r, k + 1);
  const at = kindAt(r, k) === T.number || isWord(r, W.a, k) ? k + 1 : k;
  if (!mayBeStitch(wordAt(r, at)) || isWord(r, W.st, at)) return false;
  let on = at + 1;
  while (on < at + 3 && (isOneOf(r, NAME, on) || mayBeStitch(wordAt(r, on)))) on++;
  if (isWord(r, W.in, on))
    return !isWord(r, W.total, on + 1) && !isWord(r, W.all, on + 1) && !isOneOf(r, IT, on + 1);
  if (isWord(r, W.around, on) || isWord(r, W.across, on)) return true;
  if (at === k) return false;
  // "You make 12 sc" may tell how many there are.
  const tells = kindAt(r, k - 1) === T.word && /^mak/.test(spelled(r, r.at + k - 1));
  return kindAt(r, on) === T.comma || isWord(r, W.and, on) || (verb && !tells && clauseEnds(r, on));
}

const IT = wordsOf('it them');

/** "2 single crochet", "1 half double crochet" */
const NAME = wordsOf('crochet crochets double treble single');

/** "working in ch-1 space, work 3 sc": the place, before what is worked in it. */
function inSpaceWork(r: Reader): boolean {
  if (!isWord(r, W.in, 1)) return false;
  let k = 2;
  while (k < 8 && kindAt(r, k) !== T.comma && kindAt(r, k) !== T.end) k++;
  const space = isWord(r, W.sp, k - 1) || isWord(r, W.loop, k - 1) || isWord(r, W.chsp, k - 1);
  return space && kindAt(r, k) === T.comma && isWord(r, W.work, k + 1);
}

/** "In the next round, join the legs.", "For this round, ch 3", "In round 2 you will …": the words before what is done there. */
export function inNextRound(r: Reader, run: Run): boolean {
  if (!isWord(r, W.in) && !isWord(r, W.for)) return false;
  let k = isWord(r, W.the, 1) || isWord(r, W.these, 1) ? 2 : 1;
  if (isWord(r, W.next, k)) k++;
  const bare = k === 1;
  if (!isWord(r, W.round, k) && !isWord(r, W.row, k)) return false;
  k++;
  if (kindAt(r, k) === T.number) k++;
  else if (bare) return false;
  if (kindAt(r, k) !== T.comma && !isOneOf(r, SUBJECT, k)) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  return true;
}

/** "Decrease round. (4 sc, dec) around": what the round is for, before what is done in it. */
export function namesTheRound(r: Reader): boolean {
  const shape = formOf(wordAt(r))?.shape;
  if (shape !== 'increase' && shape !== 'together') return false;
  const sign = kindAt(r, 2);
  const ends = sign === T.stop || sign === T.colon || sign === T.dash || sign === T.comma;
  return ends && kindAt(r, 3) !== T.end && (isWord(r, W.round, 1) || isWord(r, W.row, 1));
}

/** "sc in each st around, with 3 sc in each corner": what is worked there on the way. */
export function fillsCorners(r: Reader, run: Run): boolean {
  const last = run.out.at(-1);
  const until = last?.kind === 'work' ? (last.place?.until ?? last.until) : null;
  if (until?.kind !== 'end') return false;
  const close = kindAt(r, 1) === T.open ? (r.partner[r.at + 1] ?? -1) : -1;
  const listed = kindAt(r, 1) === T.number && mayBeStitch(wordAt(r, 2));
  return close > 0 ? r.word[close + 1] === W.in : listed && isWord(r, W.in, 3);
}

/** "working behind last tr work …", "working in ch-1 space, work …": passed, up to the work or its place. */
export function passWorking(r: Reader, run: Run): boolean {
  const past = behindMade(r);
  if (past === 0) {
    if (!inSpaceWork(r)) return false;
    r.at++;
    return true;
  }
  const start = r.at;
  r.at += past;
  putWords(r, run, start, 'remark');
  return true;
}
