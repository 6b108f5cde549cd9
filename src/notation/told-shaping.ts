/** Shaping told in words: "inc in every 3rd st", "increasing 6 sts", "with 3 sc in each corner". */
import { formOf, mayBeStitch } from './dictionary.ts';
import { plainCounts } from './plain-count.ts';
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { repeatOf } from './repeat-step.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { termOf, termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { WorkStep } from './tree.ts';
import { plainWork } from './work-draft.ts';

const DOUBLE = wordsOf('double');

/** "double every 3rd double crochet": a translator's increase, of which too little is understood. */
export function doubles(r: Reader, run: Run): boolean {
  if (!isOneOf(r, DOUBLE) || !(isWord(r, W.every, 1) || isWord(r, W.each, 1))) return false;
  const start = r.at;
  while (!clauseEnds(r) && kindAt(r) !== T.equals && kindAt(r) !== T.open) r.at++;
  putWords(r, run, start, 'unread');
  if (kindAt(r) === T.equals) {
    r.at++;
    plainCounts(r, run);
  }
  return true;
}

/** With the reader on a word for an increase or a decrease. */
export const toldShaping = (r: Reader, run: Run): boolean =>
  announces(r, run) ||
  evenlyBy(r, run) ||
  everyNth(r, run) ||
  afterEveryNth(r, run) ||
  (run.out.length > 0 && isOneOf(r, VERBS) && placesOpen(r, run));

/** "Increase every 2nd st, working 1 sc in next st, 2 sc in next": what is announced is told behind. */
function announces(r: Reader, run: Run): boolean {
  if (run.out.length > run.sentence || formOf(wordAt(r))?.shape !== 'increase') return false;
  let k = 1;
  while (k < 8 && !isOneOf(r, TELLING, k) && (kindAt(r, k) < T.comma || kindAt(r, k) === T.comma))
    k++;
  const told = isOneOf(r, TELLING, k) && kindAt(r, k + 1) === T.number;
  if (k < 2 || !told || !mayBeStitch(wordAt(r, k + 2))) return false;
  // "inc in next st by working 2 sc in it": the place is told, and how it is made.
  if (isWord(r, W.by, k - 1) && !isWord(r, W.every, 1)) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  r.at++;
  return true;
}

/** "increase evenly by 8 sc", "increase by 8 sts evenly" */
function evenlyBy(r: Reader, run: Run): boolean {
  const k = isWord(r, W.evenly, 1) ? 2 : 1;
  if (!isWord(r, W.by, k) || kindAt(r, k + 1) !== T.number) return false;
  if (!isWord(r, W.st, k + 2) && !mayBeStitch(wordAt(r, k + 2))) return false;
  const behind = isWord(r, W.evenly, k + 3) ? k + 4 : k + 3;
  if (k === 1 && behind === k + 3) return false;
  const start = r.at;
  const term = readStitch(r);
  if (!term) return false;
  const number = start + k + 1;
  const n = { values: [r.value[number] ?? 0], from: fromOf(r, number), to: r.to[number] ?? 0 };
  r.at = start + behind;
  const span = { from: fromOf(r, start), to: toOf(r) };
  run.out.push({ ...plainWork(term, span), n, numberAfter: true, evenly: true });
  return true;
}

const TELLING = wordsOf('working making placing');

/**
 * "Sc around, inc in every 3rd st": two plain stitches and an increase, all the way round. Where a
 * decrease would begin, and how many stitches lie between two of them, is not told by such words.
 */
function everyNth(r: Reader, run: Run): boolean {
  const start = r.at;
  // "Increase 1 st in every 3rd st"
  const one = kindAt(r, 1) === T.number && valueAt(r, 1) === 1 && isWord(r, W.st, 2) ? 3 : 1;
  const k = isWord(r, W.in, one) ? one + 1 : one;
  if (formOf(wordAt(r))?.shape !== 'increase' || !isWord(r, W.every, k)) return false;
  const nth =
    kindAt(r, k + 1) === T.ordinal ? valueAt(r, k + 1) : isWord(r, W.other, k + 1) ? 2 : 0;
  const end = isWord(r, W.st, k + 2) ? k + 3 : k + 2;
  const round = isWord(r, W.around, end) || isWord(r, W.across, end) ? end + 1 : end;
  if (nth < 2 || !(clauseEnds(r, round) || kindAt(r, round) === T.open)) return false;
  const stem = plainAround(run);
  const inc = readStitch(r);
  if (!inc) return false;
  const name = { from: fromOf(r, start), to: r.to[start] ?? 0 };
  r.at = start + round;
  const span = { from: stem?.from ?? fromOf(r, start), to: toOf(r) };
  const term = termOf({ stem: stem?.stitch.stem ?? inc.stem });
  const between: WorkStep = {
    ...plainWork(term, span),
    n: { values: [nth - 1], from: span.to, to: span.to },
  };
  const until = { kind: 'end' as const, word: 'around', from: span.to, to: span.to };
  const times = { kind: 'until' as const, until, from: span.to, to: span.to };
  const steps = [between, plainWork(termWith(inc, { stem: term.stem }), name)];
  const order = { from: fromOf(r, start), to: span.to };
  if (stem) run.out.pop();
  run.out.push(repeatOf('', steps, { times, ending: null, order }, span));
  return true;
}

/** "Decrease after every 6th st": so many stitches before each, all the way round. */
function afterEveryNth(r: Reader, run: Run): boolean {
  if (!isWord(r, W.after, 1) || !isWord(r, W.every, 2)) return false;
  const told = kindAt(r, 3) === T.ordinal || kindAt(r, 3) === T.number;
  const n = told ? valueAt(r, 3) : 0;
  const end = isWord(r, W.st, 4) || mayBeStitch(wordAt(r, 4)) ? 5 : 4;
  const round = isWord(r, W.around, end) || isWord(r, W.across, end) ? end + 1 : end;
  if (n < 2 || !(clauseEnds(r, round) || kindAt(r, round) === T.open)) return false;
  const start = r.at;
  // "Inc after every 5th st" may be in the fifth or behind it.
  if (formOf(wordAt(r))?.shape === 'increase') {
    r.at += round;
    putWords(r, run, start, 'unread');
    return true;
  }
  const name = readStitch(r);
  if (!name) return false;
  const at = { from: fromOf(r, start), to: toOf(r) };
  r.at = start + round;
  const span = { from: at.from, to: toOf(r) };
  const plain = plainWork(termOf({ stem: name.stem }), { from: at.from, to: at.from });
  const between: WorkStep = { ...plain, n: { values: [n], from: span.to, to: span.to } };
  const until = { kind: 'end' as const, word: 'around', from: span.to, to: span.to };
  const times = { kind: 'until' as const, until, from: span.to, to: span.to };
  const order = { from: at.from, to: span.to };
  run.out.push(repeatOf('', [between, plainWork(name, at)], { times, ending: null, order }, span));
  return true;
}

/** "Sc around", "sc in each st around" right before: the stitches between the increases. */
function plainAround(run: Run): WorkStep | null {
  const last = run.out.at(-1);
  if (last?.kind !== 'work' || last.stitch.shape !== 'one' || last.n !== null) return null;
  const { place } = last;
  const all = place?.pick === 'each' && place.n === null && !place.of && last.alsoIn.length === 0;
  const until = place ? place.until : last.until;
  if (place ? !all : !until) return null;
  return until === null || until.kind === 'end' ? last : null;
}

const VERBS = wordsOf('increasing decreasing');

/**
 * "Sc around, increasing 6 sts": anywhere in the row. "Increasing 3 sc at the toe" has a place that
 * is not known, and how the stitches go there is not told: the words are put down as unread.
 */
function placesOpen(r: Reader, run: Run): boolean {
  if (kindAt(r, 1) !== T.number) return false;
  const noun = isWord(r, W.st, 2);
  if (!noun && !mayBeStitch(wordAt(r, 2))) return false;
  const start = r.at;
  let end = start + 3;
  for (; !endsSentence(r, end); end++) {
    const sense = r.word[end] ?? 0;
    if (
      sense === W.evenly ||
      (sense === W.each && noun && r.word[end + 1] !== W.end) ||
      isRowWord(sense)
    )
      return false;
  }
  if (clauseEnds(r, 3) || kindAt(r, 3) === T.open) {
    const term = readStitch(r);
    if (!term) return false;
    const n = { values: [valueAt(r)], from: fromOf(r, r.at), to: r.to[r.at] ?? 0 };
    r.at = start + 3;
    const span = { from: fromOf(r, start), to: toOf(r) };
    run.out.push({ ...plainWork(term, span), n, numberAfter: true, evenly: true });
    return true;
  }
  r.at = end;
  putWords(r, run, start, 'unread');
  return true;
}

const isRowWord = (sense: number): boolean => sense === W.row || sense === W.round;

const endsSentence = (r: Reader, token: number): boolean =>
  r.kind[token] === T.end || r.kind[token] === T.stop || r.kind[token] === T.open;
