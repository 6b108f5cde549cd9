/** Charts: "work chart Tide over next 21 boxes", "follow rows 4-20 of chart", "boxes 11-46 of chart Tide". */

import { isBox } from './boxes.ts';
import { readNumbers } from './numbers.ts';
import {
  eatThe,
  eatWord,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { ChartStep, Numbers } from './tree.ts';

/** What is said of a chart before or behind its name. */
type Part = Pick<ChartStep, 'row' | 'onwards' | 'part'>;

/** Words that may stand before "chart". */
const MOST_BEFORE = 12;
const STOPS: SenseSet = new SenseSet([W.ch, W.turn, W.join, W.skip]);

export function readChart(r: Reader): ChartStep | null {
  const start = r.at;
  let told: Part = { row: null, onwards: false, part: null };
  for (let guard = 0; guard < MOST_BEFORE && !isWord(r, W.chart); guard++) {
    const here = partAt(r);
    if (here) told = { ...told, ...here };
    else if (passes(r)) r.at++;
    else break;
  }
  if (!isWord(r, W.chart)) {
    r.at = start;
    return null;
  }
  r.at++;
  const name = chartName(r);
  told = { ...told, ...rowBehind(r) };
  const { n, fromBox, toBox } = span(r);
  const place = { from: fromOf(r, start), to: toOf(r) };
  return { kind: 'chart', name, n, fromBox, toBox, ...told, ...place };
}

/** "Continue in filet, following chart": words, and the comma before "following". */
const passes = (r: Reader): boolean =>
  kindAt(r) === T.word ? !STOPS.has(wordAt(r)) : kindAt(r) === T.comma && isWord(r, W.next, 1);

const isRow = (r: Reader, ahead = 0): boolean =>
  isWord(r, W.row, ahead) || isWord(r, W.round, ahead);

/** "row 3", "rows 4-20", "rows 3 and 4", "boxes 11-46", behind which the chart is named. */
function partAt(r: Reader): Partial<Part> | null {
  const isRows = isRow(r);
  if (!(isRows || isBox(r)) || kindAt(r, 1) !== T.number) return null;
  const [from, to] = [valueAt(r, 1), lastOfRange(r)];
  if (!isRows && to === null) return null;
  r.at += to === null ? 2 : 4;
  return isRows ? { row: from, onwards: to !== null } : { part: { from, to: to ?? from } };
}

/** The second number of "3-4", "3 and 4", "3 to 4", two words on. */
function lastOfRange(r: Reader): number | null {
  const links = kindAt(r, 2) === T.dash || isWord(r, W.and, 2) || isWord(r, W.to, 2);
  return links && kindAt(r, 3) === T.number ? valueAt(r, 3) : null;
}

/** "chart Tide row 3"; "chart Tide, from row 3", "chart, beginning with row 3": onwards. */
function rowBehind(r: Reader): Partial<Part> {
  if (isWord(r, W.row) && kindAt(r, 1) === T.number) {
    const row = valueAt(r, 1);
    r.at += 2;
    return { row };
  }
  const start = r.at;
  if (kindAt(r) === T.comma) r.at++;
  const begins = isWord(r, W.from) || isWord(r, W.beginning);
  if (begins) r.at++;
  while (begins && (isWord(r, W.with) || isWord(r, W.at) || isWord(r, W.from))) r.at++;
  if (begins && isRow(r) && kindAt(r, 1) === T.number) {
    const row = valueAt(r, 1);
    r.at += 2;
    return { row, onwards: true };
  }
  r.at = start;
  return {};
}

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
