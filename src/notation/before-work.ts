/** Words before the work itself: "you will make a sc in each st", "working in ch-1 space, work 3 sc". */
import { formOf, mayBeStitch } from './dictionary.ts';
import { isWord, kindAt, type Reader, spelled, wordAt } from './reader.ts';
import { behindMade } from './remark.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** "You will make a sc in each st around": what is to be done, told as what will be. */
export function willWork(r: Reader, run: Run): boolean {
  if (spelled(r, r.at + 1) !== 'will' || run.out.some(({ kind }) => kind === 'work')) return false;
  const verb = /^(?:make|work|crochet|do)$/.test(spelled(r, r.at + 2)) ? 3 : 2;
  const k = isWord(r, W.a, verb) || kindAt(r, verb) === T.number ? verb + 1 : verb;
  if (!mayBeStitch(wordAt(r, k)) || !isWord(r, W.in, k + 1) || !isWord(r, W.each, k + 2))
    return false;
  r.at += verb;
  return true;
}

/** "working in ch-1 space, work 3 sc": the place, before what is worked in it. */
function inSpaceWork(r: Reader): boolean {
  if (!isWord(r, W.in, 1)) return false;
  let k = 2;
  while (k < 8 && kindAt(r, k) !== T.comma && kindAt(r, k) !== T.end) k++;
  const space = isWord(r, W.sp, k - 1) || isWord(r, W.loop, k - 1) || isWord(r, W.chsp, k - 1);
  return space && kindAt(r, k) === T.comma && isWord(r, W.work, k + 1);
}

/** "In the next round, join the legs.": the words before what is done there. */
export function inNextRound(r: Reader, run: Run): boolean {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (!isWord(r, W.in) || !isWord(r, W.next, k)) return false;
  if (!isWord(r, W.round, k + 1) && !isWord(r, W.row, k + 1)) return false;
  if (kindAt(r, k + 2) !== T.comma) return false;
  const start = r.at;
  r.at += k + 2;
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
