/** Brackets that say something of the step before them: how often, where, by which name it is known. */

import { type Bracket, leave } from './bracket-span.ts';
import { formOf } from './dictionary.ts';
import { isPair } from './gloss.ts';
import { readOneNumber } from './numbers.ts';
import { readOtherSide } from './other-side.ts';
import { readPlaceAfterPreposition } from './place.ts';
import { clauseEnds, fromOf, kindAt, type Reader, toOf } from './reader.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { wrapSentence } from './sentence-repeat.ts';
import { readStitch } from './stitch.ts';
import { readTimes } from './times.ts';
import { T } from './tokens.ts';

/** "join with sl st (sk ch-2)": what the join passes over. */
export function isPassedByJoin(r: Reader, run: Run, b: Bracket): boolean {
  if (!b.closed || run.out.at(-1)?.kind !== 'join' || r.word[b.start + 1] !== W.skip) return false;
  for (let i = b.start + 1; i < b.close; i++) if (r.kind[i] === T.comma) return false;
  return r.kind[b.close + 1] !== T.word && r.kind[b.close + 1] !== T.number;
}

/** "1 sc, inc (x6)": the number of the sentence at its end, of the last step elsewhere. */
export function timesBracket(r: Reader, run: Run, b: Bracket): boolean {
  if (!b.closed || b.close - b.start > 14 || run.out.length === 0 || !saysTimes(r, b)) return false;
  r.at = b.start + 1;
  const times = readTimes(r, false);
  if (times?.kind !== 'times' || r.at !== b.close) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  if (tellsPasses(r, run)) {
    const { n, from, to } = times;
    const word = { unit: 'group', stem: null, chains: null, word: 'repeat' } as const;
    const count = { n, ...word, startChainIncluded: null, partial: false, from, to };
    r.counts.push({ count, from: run.out.length });
    return true;
  }
  // "rep from * around (4x)": the number says how often that is.
  const last = run.out.at(-1);
  const open = last?.kind === 'repeat' && last.times.kind === 'until' && !last.ending;
  if (open && last.times.until.kind === 'end' && last.order.to === r.to[b.start - 1]) {
    run.out[run.out.length - 1] = { ...last, times: { ...times, more: null }, to: toOf(r) };
    return true;
  }
  const saved = run.sentence;
  const ends = clauseEnds(r) ? kindAt(r) !== T.comma : kindAt(r) === T.open;
  if (!ends) run.sentence = run.out.length - 1;
  wrapSentence(r, run, { times, ending: null, order: { from: times.from, to: times.to } }, '');
  run.sentence = Math.min(saved, run.out.length);
  return true;
}

/** "*dc, ch 2*, rep * to * around, sl st in 4th ch. (8 times)": the round is closed; so often it went. */
function tellsPasses(r: Reader, { out }: Run): boolean {
  const last = out.findLastIndex(({ kind }) => kind !== 'remark');
  const closing = out[last];
  const closes =
    closing?.kind === 'join' || (closing?.kind === 'work' && closing.stitch.stem === 'ss');
  const repeats = out.some((step) => step.kind === 'repeat' && step.times.kind !== 'missing');
  return closes && repeats && (clauseEnds(r) || kindAt(r) === T.open);
}

/** Whether a word or sign of `readTimes` stands in the bracket: most hold a count. */
function saysTimes(r: Reader, b: Bracket): boolean {
  for (let i = b.start + 1; i < b.close; i++) {
    const kind = r.kind[i];
    if (kind === T.times || kind === T.star || kind === T.open || TIMES.has(r.word[i]!))
      return true;
  }
  return false;
}

const TIMES: SenseSet = new SenseSet([W.times, W.x, W.more, W.total, W.once, W.twice, W.thrice]);

/** "1 dc (in ch-3 of previous row)": the place of the step before. */
export function placeBracket(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  if (
    !b.closed ||
    r.kind[b.start + 1] !== T.word ||
    r.value[b.start + 1] !== W.in ||
    last?.kind !== 'work' ||
    last.place
  )
    return false;
  r.at = b.start + 1;
  const place = readPlaceAfterPreposition(r);
  if (!place || r.at !== b.close) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  run.out[run.out.length - 1] = { ...last, place, to: toOf(r) };
  return true;
}

/** "2 sc on chain (opposite side)": the chain is turned to before the work. */
export function sideBracket(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  if (!b.closed || last?.kind !== 'work' || last.place?.nouns[0]?.kind !== 'chain') return false;
  const k = r.word[b.start + 1] === W.the ? b.start + 2 : b.start + 1;
  const other = r.word[k] === W.opposite || r.word[k] === W.other;
  const side =
    r.word[k] === W.opposite_side ? k + 1 : other && r.word[k + 1] === W.side ? k + 2 : 0;
  if (side !== b.close) return false;
  leave(r, b);
  const span = { from: last.from, to: toOf(r) };
  run.out.pop();
  run.out.push({ kind: 'other-side', chains: null, rowEnds: false, ...span });
  run.out.push({ ...last, place: null, to: span.to });
  return true;
}

/** "(now you will be working on the other side of your chain)": the order, told in brackets. */
export function turnsToSide(r: Reader, run: Run, b: Bracket): boolean {
  if (!b.closed || b.close - b.start > 20) return false;
  for (let i = b.start + 1; i < b.close; i++) {
    if (r.word[i] !== W.working && r.word[i] !== W.work) continue;
    r.at = i;
    const side = readOtherSide(r);
    if (!side || r.at > b.close || tellsOfLater(r, b)) break;
    leave(r, b);
    run.out.push({ ...side, from: fromOf(r, b.start), to: toOf(r) });
    return true;
  }
  r.at = b.start;
  return false;
}

/** "(you will work on the other side in the next round)" */
function tellsOfLater(r: Reader, { start, close }: Bracket): boolean {
  for (let i = start + 1; i < close; i++) {
    if (r.kind[i] !== T.word) return true;
    if (r.word[i] !== W.next) continue;
    if (r.word[i + 1] === W.round || r.word[i + 1] === W.row) return true;
  }
  return false;
}

/** "6 dc [6 sc]": the same stitch in the other terms. */
export function translates(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  if (!b.closed || b.close - b.start > 4 || last?.kind !== 'work' || last.place) return false;
  if (last.to !== r.to[b.start - 1] || last.stitch.stem === null) return false;
  r.at = b.start + 1;
  const n = readOneNumber(r)?.values[0];
  const other = readStitch(r);
  const same = other !== null && r.at === b.close && n === last.n?.values[0];
  if (!same || !isPair(last.stitch.stem, other.stem)) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  putWords(r, run, b.start, 'remark');
  return true;
}

/** "Tr (triple/treble crochet) in next st": the stitch before, by its other names. */
export function renames(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  if (!b.closed || b.close - b.start > 7 || last?.kind !== 'work' || last.place) return false;
  if (last.to !== r.to[b.start - 1] || last.stitch.stem === null) return false;
  r.at = b.start + 1;
  let same = kindAt(r) === T.word;
  let names = 0;
  for (; same && r.at < b.close; names++) {
    if (names > 0 && kindAt(r) === T.slash) r.at++;
    same = readStitch(r)?.stem === last.stitch.stem;
  }
  if (!same || names < 2 || r.at !== b.close) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  putWords(r, run, b.start, 'remark');
  return true;
}

/** "2 dc, ch 2, 2 dc (shell) in next dc": what stands before is so called, and goes where the words behind say. */
export function nameBracket(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  const group = last?.kind === 'repeat' && last.times.kind === 'missing';
  const work = last?.kind === 'work' && !last.place && !last.until && last.stitch.shape === 'one';
  if (!b.closed || b.close - b.start > 4 || !(work || group)) return false;
  if (last.to !== r.to[b.start - 1] || r.word[b.close + 1] !== W.in) return false;
  r.at = b.start + 1;
  const name = readStitch(r);
  if (r.at !== b.close || !name || !NAMES.has(name.shape)) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  putWords(r, run, b.start, 'remark');
  return true;
}

/** "2 dc into next dc (inc.1),": what the stitches just told are, behind them. */
export function shapingBracket(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  const shape = formOf(r.word[b.start + 1] ?? 0)?.shape;
  if (!b.closed || last?.kind !== 'work' || last.to !== r.to[b.start - 1]) return false;
  const two = last.n?.values[0] === 2 && last.stitch.shape === 'one' && last.place !== null;
  if (shape === 'increase' ? !two : shape !== 'together' || last.stitch.shape !== 'together')
    return false;
  let k = b.start + 2;
  if (r.kind[k] === T.stop) k++;
  if (r.kind[k] === T.number && r.value[k] === 1) k++;
  const behind = r.kind[b.close + 1];
  const ends = behind === T.end || (behind !== undefined && behind >= T.comma && behind <= T.colon);
  if (k !== b.close || !(ends || behind === T.star || behind === T.close)) return false;
  leave(r, b);
  putWords(r, run, b.start, 'remark');
  return true;
}

const NAMES: ReadonlySet<string> = new Set(['shell', 'v', 'cluster', 'puff', 'popcorn', 'special']);
