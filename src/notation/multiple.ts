/** "a multiple of 6 + 3", "multiples of 8 plus 4 (add 2 for base chain)", "an even number of chains". */
import {
  clauseEnds,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Multiple, Numbers } from './tree.ts';

/** Words before the multiple that say nothing of its numbers. */
const BEFORE = wordsOf(
  'a an any in the that is with of some number as to by for you want which are long',
);
const PARITY = wordsOf('even odd uneven');
const DIVISIBLE = wordsOf('divisible dividable');
const ADDING = wordsOf('add adding and then an extra additional');

/** "Multiple of 6 + 3", "an even number of chains": a foundation told by its repeat alone. */
export function startsMultiple(r: Reader): boolean {
  let k = 0;
  while (k < 3 && (isWord(r, W.work, k) || isWord(r, W.a, k))) k++;
  if (isWord(r, W.even, k) || isWord(r, W.odd, k)) return spelled(r, r.at + k + 1) === 'number';
  return (
    isWord(r, W.multiple, k) && (kindAt(r, k + 1) === T.number || kindAt(r, k + 2) === T.number)
  );
}

/** "(ch 28 shown)", "; the sample has 27", "e.g. 33": how many chains of the multiple somebody made. */
export function readSample(r: Reader, { of, plus }: Multiple): Numbers | null {
  const start = r.at;
  const kind = kindAt(r);
  // "… an even number of stitches. I used 22 for this cloth."
  const told = kind === T.stop && spelled(r, r.at + 1) === 'i' && kindAt(r, 3) === T.number;
  if (kind !== T.open && kind !== T.semicolon && kind !== T.comma && !told) return null;
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  for (let k = 1; k < 9 && kindAt(r, k) !== T.end && r.at + k !== close; k++) {
    const n = valueAt(r, k);
    if (kindAt(r, k) !== T.number || n < 2 * of + plus || (n - plus) % of !== 0 || of < 2) continue;
    const from = fromOf(r, r.at + k);
    r.at += k + 1;
    const numbers = { values: [n], from, to: toOf(r) };
    while (told ? !clauseEnds(r) : kindAt(r) === T.word) r.at++;
    if (close >= 0) r.at = close + 1;
    return numbers;
  }
  r.at = start;
  return null;
}

/** The multiple that stands at the reader, which is behind it afterwards; `null` and unmoved if none does. */
export function readMultiple(r: Reader): Multiple | null {
  const start = r.at;
  for (let k = 0; k < 6 && isOneOf(r, BEFORE); k++) r.at++;
  const found = divided(r) ?? parity(r);
  if (!found) {
    r.at = start;
    return null;
  }
  let { plus } = found;
  let { told } = found;
  for (let more = added(r); more; more = added(r)) {
    plus += more.n;
    if (more.told) told = true;
  }
  return { of: found.of, plus, told };
}

function divided(r: Reader): Multiple | null {
  const start = r.at;
  const named = eatWord(r, W.multiple);
  if (!named) {
    // "any number of chains divisible by 4"
    passThings(r);
    if (!isOneOf(r, DIVISIBLE)) {
      r.at = start;
      return null;
    }
    r.at++;
  }
  if (isWord(r, W.of) || spelled(r, r.at) === 'by' || kindAt(r) === T.colon) r.at++;
  if (kindAt(r) !== T.number || valueAt(r) < 1 || valueAt(r) > MOST) {
    r.at = start;
    return null;
  }
  const of = valueAt(r);
  r.at++;
  return { of, plus: 0, told: passThings(r) };
}

/** A repeat is hardly ever wider, in stitches. */
const MOST = 200;

/** "an even number of chains", "any odd number" */
function parity(r: Reader): Multiple | null {
  if (!isOneOf(r, PARITY)) return null;
  const start = r.at;
  const plus = isWord(r, W.even) ? 0 : 1;
  r.at++;
  if (spelled(r, r.at) !== 'number') {
    r.at = start;
    return null;
  }
  r.at++;
  if (isWord(r, W.of)) r.at++;
  return { of: 2, plus, told: passThings(r) };
}

/** "sts", "chains": whether they are chains. */
function passThings(r: Reader): boolean {
  let chains = false;
  for (let k = 0; k < 3; k++) {
    if (isWord(r, W.ch) && kindAt(r, 1) !== T.number) chains = true;
    else if (!isWord(r, W.st) && !isWord(r, W.foundation)) break;
    r.at++;
  }
  return chains;
}

/** "+ 3", "plus 4 more sts", ", and add 2 for base chain", "(plus 1 for turning)". */
function added(r: Reader): { readonly n: number; readonly told: boolean } | null {
  const start = r.at;
  if (kindAt(r) === T.comma) r.at++;
  const open = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (open >= 0) r.at++;
  let adds = 0;
  for (let k = 0; k < 4; k++) {
    if (kindAt(r) === T.plus || isWord(r, W.plus)) adds += 2;
    else if (isOneOf(r, ADDING)) adds += spelled(r, r.at) === 'add' || k > 0 ? 2 : 1;
    else break;
    r.at++;
  }
  if (adds < 2 || kindAt(r) !== T.number || valueAt(r) > 40) {
    r.at = start;
    return null;
  }
  const n = valueAt(r);
  r.at++;
  if (isWord(r, W.more) || isOneOf(r, ADDING)) r.at++;
  let told = passThings(r);
  // "for the turning chain", "for base ch"
  if (isWord(r, W.for) || isWord(r, W.to)) {
    while (kindAt(r) === T.word && !isWord(r, W.plus)) r.at++;
    told = true;
  }
  if (open >= 0) r.at = open + 1;
  return { n, told };
}
