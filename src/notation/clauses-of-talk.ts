/** Clauses where work may begin, that name or explain it and make nothing. */

import { mayBeStitch, PROSE } from './dictionary.ts';
import {
  fromOf,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';
import { isColour } from './yarn-name.ts';

/** "Mine are ch 60": the chain is told of, not made. */
export const tellsChain = (r: Reader): boolean =>
  isWord(r, W.is, -1) && (isWord(r, W.ch) || kindAt(r) === T.number);

/** "Chain a multiple of 3 + 2. Chain enough for the width.": how many of it, which is the maker's. */
export const chainsEnough = (r: Reader, { out }: Run): boolean =>
  isWord(r, W.ch) && isOneOf(r, ENOUGH, 1) && out.some(({ kind }) => kind === 'chain');

const ENOUGH = wordsOf('enough');

/**
 * "Each block consists of ch 3 and 3 dc.", "You may add 1 increase (2 sc in same st) here.": a clause
 * that says what something is, or what may be done, does nothing.
 */
export function saying(r: Reader, run: Run): boolean {
  const before = r.kind[r.at - 1];
  if (before !== T.stop && before !== T.semicolon) return false;
  // "Rnd 6 will be on the outside when the cuff is turned down."
  const ofRow = (isWord(r, W.round) || isWord(r, W.row)) && kindAt(r, 1) === T.number;
  if (ofRow) {
    if (!/^(will|should|may)$/.test(spelled(r, r.at + 2))) return false;
  } else if (
    !(isWord(r, W.each)
      ? explains(r)
      : isWord(r, W.you) && /^(may|can|could|might)$/.test(spelled(r, r.at + 1)))
  )
    return false;
  const start = r.at;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop) r.at++;
  putWords(r, run, start, 'remark');
  return true;
}

/** "Rows 4-5: CC2, as rows 2-3": the colour, with nothing said of it. */
export function yarnAlone(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  if (sense > 0 && sense !== PROSE && !isOneOf(r, YARN_CODES)) return false;
  const word = spelled(r, r.at);
  if (colourByLetter(r, run)) return true;
  const k = kindAt(r, 1) === T.number && (isGlued(r) || isWord(r, W.color)) ? 2 : 1;
  const coded = k === 2 ? /^(?:c|cc|mc|colou?r|yarn)$/.test(word) : /^(?:cc|mc)$/.test(word);
  if (!coded && !(k === 1 && isColour(word))) return false;
  const sign = kindAt(r, k);
  if (sign !== T.comma && sign !== T.colon && sign !== T.dash && sign !== T.stop) return false;
  const start = r.at;
  r.at += sign === T.dash ? k + 1 : k;
  putWords(r, run, start, 'remark');
  return true;
}

/** "Wh sc in next 5 sts", "DP, sc in next st": the yarn of a list of colours, before its stitches. */
export function yarnByCode(r: Reader, run: Run): boolean {
  const from = fromOf(r, r.at);
  const to = r.to[r.at] ?? 0;
  if (to - from < 2 || to - from > 3) return false;
  const yarn = r.text.slice(r.base + from, r.base + to);
  if (!r.known.yarns.has(yarn) && !r.known.yarns.has(yarn.toUpperCase())) return false;
  const k = kindAt(r, 1) === T.comma || kindAt(r, 1) === T.colon ? 2 : 1;
  if (!mayBeStitch(wordAt(r, k)) && kindAt(r, k) !== T.number && !isWord(r, W.ch, k)) return false;
  run.out.push({ kind: 'yarn', yarn, act: 'with', from, to });
  r.at += k;
  return true;
}

/** "Colour D: Join with dc" */
function colourByLetter(r: Reader, run: Run): boolean {
  if (!isWord(r, W.color) || kindAt(r, 2) !== T.colon || kindAt(r, 1) !== T.word) return false;
  const from = fromOf(r, r.at + 1);
  const to = r.to[r.at + 1] ?? 0;
  const yarn = r.text.slice(r.base + from, r.base + to);
  if (!/^[A-Z]$/.test(yarn)) return false;
  run.out.push({ kind: 'yarn', yarn, act: 'with', from: fromOf(r, r.at), to });
  r.at += 3;
  return true;
}

const YARN_CODES = wordsOf('c cc mc color colour yarn');

/** "each block consists of", "each pair counts as". */
function explains(r: Reader): boolean {
  let k = 1;
  while (k < 5 && kindAt(r, k) === T.word && !EXPLAINS.test(spelled(r, r.at + k))) k++;
  return k > 1 && EXPLAINS.test(spelled(r, r.at + k));
}

const EXPLAINS = /^(is|are|consists?|equals?|counts?|will|means?|contains?|has|should)$/;

/** "Rounds 6-9 create the toe of the slipper. 30 sc around.": what they are for, before the work. */
export function purpose(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || r.at === FIRST || !isOneOf(r, PURPOSE)) return false;
  let k = 1;
  for (; kindAt(r, k) === T.word || kindAt(r, k) === T.slash; k++)
    if (mayBeStitch(wordAt(r, k))) return false;
  if (k < 3 || kindAt(r, k) !== T.stop) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  return true;
}

/** "Base - With 6 mm hook ch 51": the part's name before its first row, parted by a dash. */
export function nameWithDash(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || r.at !== FIRST || run.end !== 'text') return false;
  let k = 0;
  while (k < 3 && kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k)) && !isWord(r, W.ch, k)) k++;
  if (k > 0 && kindAt(r, k) === T.colon) return nameWithColon(r, run, k);
  // "Border 2: ch 1, sc in each st around"
  if (k > 0 && kindAt(r, k) === T.number && kindAt(r, k + 1) === T.colon)
    return nameWithColon(r, run, k + 1);
  if (k === 0 || kindAt(r, k) !== T.dash) return false;
  // "Doily—Starting at center": a long dash parts words without blanks; a hyphen joins them.
  const isLong = /[–—]/.test(r.text[r.base + fromOf(r, r.at + k)] ?? '');
  if (!isLong && (isGlued(r, k) || isGlued(r, k - 1))) return false;
  const code = r.text.charCodeAt(r.base + (r.from[r.at] ?? 0));
  if (code < 65 || code > 90) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  r.at++;
  return true;
}

/** "Finish: sl st in next 3 sts", "Hanging loop: ch 6, …": what is worked, by its name. */
function nameWithColon(r: Reader, run: Run, k: number): boolean {
  // "Between each petal: sc, ch 3, …" is a place.
  if (isWord(r, W.between) || isWord(r, W.in) || isWord(r, W.each, 1)) return false;
  const code = r.text.charCodeAt(r.base + fromOf(r, r.at));
  const at = kindAt(r, k + 1) === T.number ? k + 2 : k + 1;
  const works = mayBeStitch(wordAt(r, at)) || isWord(r, W.ch, at);
  if (code < 65 || code > 90 || !works) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  r.at++;
  return true;
}

const IF = wordsOf('if');

const PURPOSE = wordsOf('create creates form forms shape shapes starts begins completes makes');

/** "If next dc was a FPdc, work a BPdc around it": what is worked hangs on what is there. */
export function dependsOnBeneath(r: Reader, run: Run): boolean {
  if (!isOneOf(r, IF) || isWord(r, W.you, 1)) return false;
  const start = r.at;
  let stitches = 0;
  let end = start + 1;
  for (; r.kind[end] !== T.end && r.kind[end] !== T.stop && r.kind[end] !== T.close; end++)
    if (r.kind[end] === T.word && mayBeStitch(r.word[end]!) && r.word[end] !== W.st) stitches++;
  if (stitches < 2) return false;
  r.at = end;
  const span = { from: fromOf(r, start), to: toOf(r) };
  run.out.push({
    kind: 'not-worked',
    what: 'stitches that hang on those beneath',
    work: null,
    ...span,
  });
  return true;
}
