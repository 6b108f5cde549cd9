/** Boxes of mesh and charts: "52 open boxes", "5 sps, 2 bls", "work chart Tide over next 21 boxes". */

import { readNumbers } from './numbers.ts';
import { readPlace } from './place.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';
import type { BoxStep, ChartStep, Numbers } from './tree.ts';
import { readUntil } from './until.ts';

/** A run of boxes, or `null`, which leaves the reader where it was. */
export function readBoxes(r: Reader): BoxStep | null {
  const start = r.at;
  const edge = eatWord(r, W.add) ? 'added' : null;
  while (eatWord(r, W.work) || eatWord(r, W.a));
  const n = readNumbers(r);
  const box = boxKind(r, n);
  if (box === null) {
    r.at = start;
    return null;
  }
  const until = readUntil(r, readPlace);
  // "sp over sp", "bl over bl"
  if (isWord(r, W.over)) overSame(r);
  if (isWord(r, W.in) || (n === null && !until && !clauseEnds(r) && kindAt(r) !== T.open)) {
    r.at = start;
    return null;
  }
  return { kind: 'boxes', n, box, edge, until, from: fromOf(r, start), to: toOf(r) };
}

/** "Sl st over first 2 boxes", "sl st across 1 bl": boxes dropped at the row's start. */
export function readSlippedBoxes(r: Reader): BoxStep | null {
  const start = r.at++;
  // "sl st" is one word or two.
  if (kindAt(r) === T.word && /^st(?:itch)?$/.test(spelled(r, r.at))) r.at++;
  if (eatWord(r, W.over) || eatWord(r, W.across)) {
    eatThe(r);
    eatWord(r, W.next);
    const n = readNumbers(r);
    if (n && isBox(r)) {
      r.at++;
      const span = { from: fromOf(r, start), to: toOf(r) };
      return { kind: 'boxes', n, box: 'open', edge: 'slipped', until: null, ...span };
    }
  }
  r.at = start;
  return null;
}

function overSame(r: Reader): void {
  const start = r.at++;
  if (isWord(r, W.open) || isWord(r, W.filled)) r.at++;
  if (isBox(r)) r.at++;
  else r.at = start;
}

const isBox = (r: Reader): boolean =>
  isWord(r, W.box) ||
  isWord(r, W.mesh) ||
  isWord(r, W.block) ||
  isWord(r, W.square) ||
  isWord(r, W.sp) ||
  (isWord(r, W.letter_m) && r.at > FIRST);

function boxKind(r: Reader, n: Numbers | null): BoxStep['box'] | null {
  const sense = wordAt(r);
  if (sense === W.open || sense === W.filled) {
    r.at++;
    // "2 open, 1 filled": the noun may be left out of a run.
    const bare = n !== null && (clauseEnds(r) || kindAt(r) === T.star || isWord(r, W.repeat));
    if (!isBox(r) && !bare) return null;
    if (!bare) r.at++;
    return sense === W.open ? 'open' : 'filled';
  }
  const bare = n !== null || isWord(r, W.over, 1);
  if (!bare) return null;
  let box: BoxStep['box'] | null = null;
  if (sense === W.om || sense === W.sp || sense === W.letter_m || sense === W.mesh) box = 'open';
  else if (sense === W.sm || sense === W.block || sense === W.letter_b) box = 'filled';
  else if (sense === W.lacet) box = 'lacet';
  else if (sense === W.bar) box = 'bar';
  else if (sense === W.box) box = 'open';
  if (box === null) return null;
  if (sense === W.letter_m && !/^m$/.test(spelled(r, r.at))) return null;
  r.at++;
  return box;
}

/** "work chart Tide over next 21 boxes", "follow chart row 3", "work row 1 of chart". */
export function readChart(r: Reader): ChartStep | null {
  const start = r.at;
  let row: number | null = null;
  for (let guard = 0; guard < 12 && !isWord(r, W.chart); guard++) {
    const rowHere = (isWord(r, W.row) || isWord(r, W.round)) && kindAt(r, 1) === T.number;
    if (rowHere) row = valueAt(r, 1);
    if (kindAt(r) !== T.word && !(kindAt(r) === T.number && r.value[r.at - 1] === W.row)) break;
    if (STOPS.has(wordAt(r))) break;
    r.at++;
  }
  if (!isWord(r, W.chart)) {
    r.at = start;
    return null;
  }
  r.at++;
  const name = chartName(r);
  if (isWord(r, W.row) && kindAt(r, 1) === T.number) {
    row = valueAt(r, 1);
    r.at += 2;
  }
  const { n, fromBox, toBox } = span(r);
  return { kind: 'chart', name, n, fromBox, toBox, row, from: fromOf(r, start), to: toOf(r) };
}

const STOPS = new Set([W.ch, W.turn, W.join, W.skip]);

/** A known name, or a capitalised word or letter behind "chart". */
function chartName(r: Reader): string {
  if (kindAt(r) !== T.word && kindAt(r) !== T.number) return '';
  const word = r.text.slice(r.base + fromOf(r, r.at), r.base + (r.to[r.at] ?? 0));
  for (const name of r.known.charts) {
    if (name.toLowerCase() === word.toLowerCase()) return eatName(r, name, 1);
    const words = name.split(/\s+/).length;
    const end = r.to[r.at + words - 1] ?? 0;
    const here = r.text.slice(r.base + fromOf(r, r.at), r.base + end).replace(/\s+/g, ' ');
    if (words > 1 && here.toLowerCase() === name.toLowerCase()) return eatName(r, name, words);
  }
  return /^[A-Z]/.test(word) && wordAt(r) !== W.row ? eatName(r, word, 1) : '';
}

function eatName(r: Reader, name: string, words: number): string {
  r.at += words;
  return name;
}

/** "over next 21 boxes", "over boxes 3-23". */
function span(r: Reader): { n: Numbers | null; fromBox: number | null; toBox: number | null } {
  const none = { n: null, fromBox: null, toBox: null };
  if (!isWord(r, W.over) && !isWord(r, W.across) && !isWord(r, W.for)) return none;
  const start = r.at++;
  eatThe(r);
  eatWord(r, W.next);
  eatWord(r, W.centre);
  const n = readNumbers(r);
  if (n) {
    if (isBox(r) || isWord(r, W.st)) r.at++;
    return { n, fromBox: null, toBox: null };
  }
  if (isBox(r) && kindAt(r, 1) === T.number && kindAt(r, 3) === T.number) {
    const fromBox = valueAt(r, 1);
    const toBox = valueAt(r, 3);
    r.at += 4;
    return { n: null, fromBox, toBox };
  }
  r.at = start;
  return none;
}
