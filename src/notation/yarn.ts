/** Yarn: "With A", "change to CC", "drop A", "break off B", "fasten off". */

import { readPlaceAfterPreposition } from './place.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { FastenOffStep, Step, YarnStep } from './tree.ts';
import { isColour, readYarnName } from './yarn-name.ts';

/** "with A", "using MC", "in white": a yarn is taken up. Stands on the preposition. */
export function readWithYarn(r: Reader): YarnStep | null {
  const start = r.at;
  r.at++;
  if (kindAt(r) === T.slash) r.at++;
  // "With H hook and raspberry yarn, ch 26"
  const hook = isWord(r, W.hook, 1);
  let yarn = hook ? null : readYarnName(r);
  if (!hook && (yarn === null || kindAt(r) === T.word)) {
    const named = isWord(r, W.in, start - r.at) ? null : unlistedName(r, start + 1);
    yarn = named ?? yarn;
  }
  if (yarn === null) {
    r.at = start;
    return null;
  }
  heldTogether(r);
  andHook(r);
  if (!isLetterName(yarn)) longName(r);
  return { kind: 'yarn', yarn, act: 'with', from: fromOf(r, start), to: toOf(r) };
}

/**
 * "Rep row 2 with sea foam", "With oatmeal, ch 21": up to three words to the clause's end that mean
 * nothing else here. Nothing but a yarn is taken up so.
 */
function unlistedName(r: Reader, from: number): string | null {
  let end = from;
  while (end < from + 3 && r.kind[end] === T.word && isPlainName(r, end)) end++;
  if (end === from || end <= r.at - 1 || !clauseEnds(r, end - r.at)) return null;
  r.at = end;
  return r.text.slice(r.base + fromOf(r, from), r.base + toOf(r));
}

const isPlainName = (r: Reader, token: number): boolean => {
  const sense = wordAt(r, token - r.at);
  return (sense <= 0 || isColour(spelled(r, token))) && !r.specials?.has(r.hash[token] ?? 0);
};

/** "With A held double", "with A and B held together": strands change no stitch. */
function heldTogether(r: Reader): void {
  const end = r.at + 8;
  for (let at = r.at; at < end; at++) {
    const kind = r.kind[at];
    const isHeld = kind === T.word && /^held$/.test(spelled(r, at));
    if (isHeld && /^(?:double|doubled|triple|together)$/.test(spelled(r, at + 1))) {
      r.at = at + 2;
      return;
    }
    // Before it other yarns may be named: "and B", ", B and C".
    const isShort = kind === T.word && (r.to[at] ?? 0) - (r.from[at] ?? 0) <= 3;
    if (kind !== T.comma && !isShort) return;
  }
}

const isLetterName = (yarn: string): boolean => yarn.length < 3;

/** "Using Red Berry yarn and 6 mm hook, ch 8": the rest of a maker's name, up to the hook. */
function longName(r: Reader): void {
  for (let k = 0; k < 12 && kindAt(r, k) !== T.comma && kindAt(r, k) !== T.end; k++) {
    if (kindAt(r, k) === T.open || kindAt(r, k) === T.star) return;
    if (!isWord(r, W.hook, k)) continue;
    let end = k + 1;
    while (isWord(r, W.size, end) || kindAt(r, end) === T.number || isWord(r, W.mm, end)) end++;
    if (clauseEnds(r, end)) r.at += end;
    return;
  }
}

/** "with A and 4.5 mm hook", "to color B and a 5.0 mm crochet hook": the hook changes no stitch. */
function andHook(r: Reader): void {
  const k = kindAt(r) === T.comma || isWord(r, W.and) ? 1 : 0;
  if (k > 0) r.at += hookEnd(r, k);
}

/** How far "a 5.0 mm crochet hook" reaches that begins `ahead` of the reader; 0: none does. */
function hookEnd(r: Reader, ahead: number): number {
  let k = ahead;
  if (isWord(r, W.a, k)) k++;
  if (isWord(r, W.size, k)) k++;
  // "E hook", "size H hook"
  if (kindAt(r, k) === T.word && isWord(r, W.hook, k + 1)) return isOneLetter(r, k) ? k + 2 : 0;
  if (kindAt(r, k) !== T.number) return 0;
  k++;
  while (kindAt(r, k) === T.stop || kindAt(r, k) === T.number) k++;
  if (isWord(r, W.mm, k)) k++;
  if (isWord(r, W.work, k)) k++;
  return isWord(r, W.hook, k) ? k + 1 : 0;
}

const isOneLetter = (r: Reader, ahead: number): boolean =>
  (r.to[r.at + ahead] ?? 0) - (r.from[r.at + ahead] ?? 0) === 1;

/** "change to B", "change color", "switch to MC in last st". */
export function readChange(r: Reader): Step | null {
  const start = r.at;
  r.at++;
  const said = isWord(r, W.color) || (isWord(r, W.the) && isWord(r, W.color, 1));
  if (said) r.at += isWord(r, W.the) ? 2 : 1;
  if (eatWord(r, W.to) || eatWord(r, W.back)) eatWord(r, W.to);
  const hook = hookEnd(r, 0);
  if (hook > 0) {
    r.at += hook;
    return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
  }
  let yarn = readYarnName(r);
  // "change the color to milk": a colour of no list.
  if (yarn === null && said && isWord(r, W.to, -1) && kindAt(r) === T.word && clauseEnds(r, 1)) {
    yarn = spelled(r, r.at);
    r.at++;
  }
  // "Change to shirt colour": called after what it is for.
  if (yarn === null && isWord(r, W.to, -1) && isWord(r, W.color, 1) && clauseEnds(r, 2)) {
    yarn = spelled(r, r.at);
    r.at += 2;
  }
  if (yarn === null && !said) {
    r.at = start;
    return null;
  }
  andHook(r);
  atRow(r);
  // "in last st": where the colour changes makes no difference to the work.
  if (isWord(r, W.in) || isWord(r, W.at) || isWord(r, W.on)) readPlaceAfterPreposition(r);
  // "at end of row 12"
  const numbered = isWord(r, W.row, -1) || isWord(r, W.round, -1);
  if (numbered && kindAt(r) === T.number) r.at++;
  if (isWord(r, W.after) && (isWord(r, W.row, 1) || isWord(r, W.round, 1))) r.at += 3;
  return { kind: 'yarn', yarn: yarn ?? '', act: 'change', from: fromOf(r, start), to: toOf(r) };
}

/** "(pink) at R13", "from row 6 on": where the colour changes. */
function atRow(r: Reader): void {
  const close = kindAt(r) === T.open && kindAt(r, 1) === T.word && kindAt(r, 2) === T.close ? 3 : 0;
  if (!isWord(r, W.at, close) && !isWord(r, W.on, close) && !isWord(r, W.from, close)) return;
  const k = close + 1;
  const row = isWord(r, W.row, k) || isWord(r, W.round, k) || isWord(r, W.r, k);
  if (row && kindAt(r, k + 1) === T.number) r.at += k + 2;
}

/** "drop A", "pick up B", "carry A". */
export function readDrop(r: Reader): YarnStep | null {
  const start = r.at;
  const pick = isWord(r, W.pick);
  r.at++;
  if (isWord(r, W.up)) r.at++;
  const yarn = readYarnName(r);
  if (yarn === null) {
    r.at = start;
    return null;
  }
  const act = pick ? 'with' : 'drop';
  return { kind: 'yarn', yarn, act, from: fromOf(r, start), to: toOf(r) };
}

/** "fasten off", "F.O.", "cut yarn", "break off A", "finish off": the yarn's end. */
export function readFastenOff(r: Reader, not: boolean, start: number): Step | null {
  if (isWord(r, W.fo)) {
    r.at++;
    return fastened(r, start, not);
  }
  const verb = spelled(r, r.at);
  if (isWord(r, W.letter_f)) {
    const parted = kindAt(r, 1) === T.stop || kindAt(r, 1) === T.slash;
    if (!/^o$/.test(spelled(r, r.at + (parted ? 2 : 1)))) return null;
    r.at += parted ? 3 : 2;
    return fastened(r, start, not);
  }
  r.at++;
  // "Cut off remaining chain": what the row did not need of it.
  if (isWord(r, W.off) && isOneOf(r, EXCESS, 1)) {
    r.at = start;
    return null;
  }
  if (isWord(r, W.off)) {
    r.at++;
    // "Fasten off round and weave in ends."
    if ((isWord(r, W.round) || isWord(r, W.row)) && (clauseEnds(r, 1) || isWord(r, W.and, 1)))
      r.at++;
    const yarn = readYarnName(r);
    return yarn !== null && yarn !== '' && verb === 'break'
      ? broken(r, start, yarn)
      : fastened(r, start, not);
  }
  // A translator's word: "finish knitting, cut the thread".
  if (verb === 'finish' && /^(knitting|crocheting|working)$/.test(spelled(r, r.at))) {
    r.at++;
    return fastened(r, start, not);
  }
  // "Fasten, cut the yarn."
  const ends =
    clauseEnds(r) ||
    (isWord(r, W.and) && /^(?:weave|sew|hide|cut|trim)$/.test(spelled(r, r.at + 1)));
  if ((verb === 'fasten' || (verb === 'finish' && isClosed(r))) && ends)
    return fastened(r, start, not);
  if (verb !== 'cut' && verb !== 'break' && verb !== 'tie') {
    r.at = start;
    return null;
  }
  eatThe(r);
  const yarn = readYarnName(r);
  if (isWord(r, W.off)) r.at++;
  if (yarn === null) {
    r.at = start;
    return null;
  }
  return /^(yarn|thread|cotton|the yarn|the thread)$/i.test(yarn)
    ? fastened(r, start, not)
    : broken(r, start, yarn);
}

const EXCESS = wordsOf('remaining extra excess remainder leftover any');

/** "Finish, weave in ends." */
const isClosed = (r: Reader): boolean =>
  kindAt(r) === T.comma || kindAt(r) === T.stop || kindAt(r) === T.end;

function fastened(r: Reader, start: number, not: boolean): FastenOffStep {
  if (isWord(r, W.color)) r.at++;
  else readYarnName(r);
  // "cut your yarn about 4 inches long"
  const k = isWord(r, W.about) ? 1 : 0;
  const length = isWord(r, W.inch, k + 1) || isWord(r, W.cm, k + 1);
  if (kindAt(r, k) === T.number && length) r.at += isWord(r, W.long, k + 2) ? k + 3 : k + 2;
  return { kind: 'fasten-off', not, from: fromOf(r, start), to: toOf(r) };
}

const broken = (r: Reader, start: number, yarn: string): YarnStep => ({
  kind: 'yarn',
  yarn,
  act: 'break',
  from: fromOf(r, start),
  to: toOf(r),
});

/** "end off" is the trade's; "end" alone is not. */
export const startsFastenOff = (r: Reader): boolean =>
  isWord(r, W.fasten) ||
  isWord(r, W.fo) ||
  (isWord(r, W.end) && isWord(r, W.off, 1)) ||
  (isWord(r, W.letter_f) && wordAt(r, 1) !== W.letter_d);
