/** "Work even", "no change", "continue in pattern", "straight", with or without "for 10 rows". */

import { namesAcross } from './across-stitches.ts';
import { oneRowAlong } from './along-side.ts';
import { readMeasure } from './measure.ts';
import { readNumbers } from './numbers.ts';
import { readPlace } from './place.ts';
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
  type Words,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { EvenStep, RemarkStep, Step, StitchTerm } from './tree.ts';
import { readUntil } from './until.ts';

/** An order to go on without shaping, or `null`, which leaves the reader where it was. */
export function readEven(r: Reader): EvenStep | RemarkStep | null {
  const start = r.at;
  if (goesOnToRow(r)) return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
  const stitch = opening(r);
  if (stitch === undefined) {
    r.at = start;
    return null;
  }
  const manner = isWord(r, W.row, -1) || isWord(r, W.round, -1);
  let rows: EvenStep['rows'] = null;
  let measure: EvenStep['measure'] = null;
  let until: EvenStep['until'] = null;
  let term: StitchTerm | null = stitch;
  // "work even in pattern"
  if (isWord(r, W.even, -1) && isWord(r, W.pattern, 1)) inPattern(r);
  else if (term === null && isWord(r, W.even, -1)) term = evenOf(r);
  for (let guard = 0; guard < 6; guard++) {
    const before = r.at;
    measure ??= readMeasure(r);
    rows ??= rowsHere(r);
    if (rows && (isWord(r, W.even) || isWord(r, W.straight))) r.at++;
    else if (rows && unshaped(r)) r.at += 2;
    term ??= inStitch(r);
    onStitches(r);
    until ??= rows || measure ? null : readUntil(r, readPlace);
    if (r.at === before) break;
  }
  // "Now work in rows to make the openings" tells how the work goes on, and makes no row.
  if (manner && term === null && rows === null && measure === null) {
    if (!numberInSentence(r)) return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
    r.at = start;
    return null;
  }
  return { kind: 'even', stitch: term, until, rows, measure, from: fromOf(r, start), to: toOf(r) };
}

/** "work even 36 sc for 4 rounds": how many there are, and of what. */
function evenOf(r: Reader): StitchTerm | null {
  const start = r.at;
  const n = readNumbers(r);
  const stitch = n ? readStitch(r) : null;
  if (stitch && rowsAhead(r)) return stitch;
  r.at = start;
  return null;
}

/** "(6 sts) Cont to R2": the next row comes next, as rows do. */
function goesOnToRow(r: Reader): boolean {
  if (!isWord(r, W.continue) || !isWord(r, W.to, 1)) return false;
  const k = isWord(r, W.the, 2) || isWord(r, W.next, 2) ? 3 : 2;
  if (!isWord(r, W.row, k) && !isWord(r, W.round, k) && !isWord(r, W.r, k)) return false;
  const numbered = kindAt(r, k + 1) === T.number ? 1 : 0;
  if (!clauseEnds(r, k + 1 + numbered)) return false;
  r.at += k + 1 + numbered;
  return true;
}

/** "… of sc for 5 rounds": so much is no talk. */
/** "24 sc, no change", "18 sc unchanged": the number tells how many already, and the words say no more. */
export function unchangedBehind(r: Reader, out: readonly Step[]): RemarkStep | null {
  const k = isWord(r, W.unchanged) ? 1 : isWord(r, W.no) && isWord(r, W.change, 1) ? 2 : 0;
  const only = out.length === 1 ? out[0] : undefined;
  if (k === 0 || only?.kind !== 'work' || !only.n || only.place || only.until) return null;
  if (only.stitch.shape !== 'one' || !(clauseEnds(r, k) || kindAt(r, k) === T.open)) return null;
  const start = r.at;
  r.at += k;
  return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
}

function numberInSentence(r: Reader): boolean {
  for (let k = 0; kindAt(r, k) !== T.end && kindAt(r, k) !== T.stop; k++)
    if (kindAt(r, k) === T.number) return true;
  return false;
}

/** "32 rows of sc", "7 more rnds of 30 sc": so many rows of one stitch; `null`: none of the kind. */
export function readRowsOf(r: Reader): EvenStep | null {
  const start = r.at;
  // "Work 1 round of sc around the edge": along the sides of the piece, and no row of it.
  if (eatWord(r, W.work) && oneRowAlong(r) > 0) {
    r.at = start;
    return null;
  }
  const n = readNumbers(r);
  eatWord(r, W.more);
  const rows = n !== null && (eatWord(r, W.row) || eatWord(r, W.round));
  // "8 rows even"
  if (rows && (eatWord(r, W.even) || eatWord(r, W.straight)))
    return { ...rowsOf(null, n), from: fromOf(r, start), to: toOf(r) };
  if (rows && (eatWord(r, W.of) || eatWord(r, W.on) || eatWord(r, W.over))) {
    eatWord(r, W.these);
    eatThe(r);
    readNumbers(r);
    // "4 more rows on these 25 sts"
    if (isWord(r, W.st)) {
      onStitches(r);
      r.at++;
      return {
        kind: 'even',
        stitch: null,
        until: null,
        rows: n,
        measure: null,
        from: fromOf(r, start),
        to: toOf(r),
      };
    }
    const stitch = readStitch(r);
    if (stitch) {
      onStitches(r);
      return { ...rowsOf(stitch, n), from: fromOf(r, start), to: toOf(r) };
    }
  }
  r.at = start;
  return null;
}

const rowsOf = (stitch: StitchTerm | null, rows: EvenStep['rows']) =>
  ({ kind: 'even', stitch, until: null, rows, measure: null }) as const;

/** `undefined`: nothing of the kind here. */
function opening(r: Reader): StitchTerm | null | undefined {
  let verbs = 0;
  while (
    isWord(r, W.work) ||
    isWord(r, W.continue) ||
    isWord(r, W.working) ||
    (verbs === 0 && isOneOf(r, KNIT))
  ) {
    r.at++;
    verbs++;
  }
  if (isWord(r, W.to) && isWord(r, W.work, 1)) r.at += 2;
  if (verbs > 0 && (kindAt(r) === T.number || isWord(r, W.a))) return numberedRows(r);
  const stitch = readStitch(r);
  if (isWord(r, W.even) || isWord(r, W.straight) || isWord(r, W.unchanged)) {
    r.at++;
    return stitch;
  }
  if (stitch) return verbs > 0 && isWord(r, W.for) && rowsAhead(r) ? stitch : undefined;
  if (isWord(r, W.no) && (isWord(r, W.change, 1) || isWord(r, W.increased, 1))) {
    r.at += 2;
    return null;
  }
  if (isWord(r, W.without)) {
    r.at++;
    while (kindAt(r) === T.word && !isWord(r, W.for) && !isWord(r, W.to)) r.at++;
    return null;
  }
  if (verbs === 0) return undefined;
  if (isWord(r, W.to)) return isShaping(r, 1) ? undefined : null;
  if (acrossAlone(r)) return null;
  const shaped = inShapedStitch(r);
  if (shaped) return shaped;
  return inPattern(r) && !namesAcross(r) ? null : undefined;
}

/** "Cont in hdc, dec 1 st at armhole edge every row 3 times": the stitch of the rows that are shaped so. */
function inShapedStitch(r: Reader): StitchTerm | null {
  if (!isWord(r, W.in) || !isWord(r, W.continue, -1)) return null;
  const start = r.at++;
  const stitch = readStitch(r);
  if (stitch && kindAt(r) === T.comma && isShaping(r, 1)) {
    r.at++;
    return stitch;
  }
  r.at = start;
  return null;
}

/** "Ch 3, work across.": all the stitches, in the stitch of the row beneath. */
function acrossAlone(r: Reader): boolean {
  if (!isWord(r, W.across)) return false;
  // "work across to last 2 sts"
  if (isWord(r, W.to, 1)) {
    r.at++;
    return true;
  }
  const k = isWord(r, W.the, 1) ? 2 : 1;
  return clauseEnds(r, isWord(r, W.row, k) ? k + 1 : 1);
}

/** "increase", "decreasing", "inc": whatever stands `ahead` tells of shaping. */
export const isShaping = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead) === T.word &&
  /^(inc|dec|increas(e|ing)|decreas(e|ing))$/.test(spelled(r, r.at + ahead));

/** "work 1 rnd even": the rows are read again behind. */
function numberedRows(r: Reader): null | undefined {
  const start = r.at;
  const even = rowsHere(r) && (isWord(r, W.even) || isWord(r, W.straight) || unshaped(r));
  if (!even) return undefined;
  r.at = start;
  return null;
}

/** "work 12 rows without increasing", "knit a row without changes" */
const unshaped = (r: Reader): boolean =>
  isWord(r, W.without) && (isShaping(r, 1) || isWord(r, W.change, 1) || isOneOf(r, CHANGES, 1));

const CHANGES = wordsOf('changes changing');

/** A translator's word for working. */
export const KNIT: Words = wordsOf('knit');

const THIS = wordsOf('this the');

/** "in pattern", "as established", "in this manner", "in the same way", "in sc". */
function inPattern(r: Reader): boolean {
  const start = r.at;
  // "continue this pattern until …", "continue with the pattern for 10 rows"
  const k = isWord(r, W.with) ? 1 : 0;
  if (isOneOf(r, THIS, k) && isWord(r, W.pattern, k + 1)) {
    r.at += k + 2;
    return true;
  }
  if (!eatWord(r, W.in) && !eatWord(r, W.as)) return false;
  eatThe(r);
  for (let k = 0; k < 4; k++) {
    if (
      isWord(r, W.pattern, k) ||
      isWord(r, W.round, k) ||
      isWord(r, W.row, k) ||
      /^(way|manner|established|before)$/i.test(wordText(r, k))
    ) {
      r.at += k + 1;
      // "in est st pattern", "in pattern as established"
      if (isWord(r, W.st) && (isWord(r, W.pattern, 1) || isWord(r, W.to, 1) || clauseEnds(r, 1)))
        r.at++;
      if (isWord(r, W.as) && isWord(r, W.pattern, 1)) r.at++;
      if (isWord(r, W.pattern)) r.at++;
      return true;
    }
  }
  r.at = start;
  return false;
}

const wordText = (r: Reader, k: number): string =>
  kindAt(r, k) === T.word
    ? r.text.slice(r.base + (r.from[r.at + k] ?? 0), r.base + (r.to[r.at + k] ?? 0))
    : '';

const rowsAhead = (r: Reader): boolean => {
  const start = r.at;
  const rows = rowsHere(r);
  r.at = start;
  return rows !== null;
};

/** "for 10 rows", "10 more rnds", "(4 rows)". */
function rowsHere(r: Reader): EvenStep['rows'] {
  const start = r.at;
  if (isWord(r, W.for)) r.at++;
  eatThe(r);
  const one = isWord(r, W.a) && (isWord(r, W.row, 1) || isWord(r, W.round, 1));
  if (one) {
    r.at += 2;
    return { from: fromOf(r, r.at - 2), to: toOf(r), values: [1] };
  }
  if (isWord(r, W.next) || isWord(r, W.another) || isWord(r, W.a)) r.at++;
  if (isWord(r, W.total) && isWord(r, W.of, 1)) r.at += 2;
  const n = readNumbers(r);
  eatWord(r, W.more);
  if (!n || (!isWord(r, W.row) && !isWord(r, W.round))) {
    r.at = start;
    return null;
  }
  r.at++;
  eatWord(r, W.more);
  return n;
}

function inStitch(r: Reader): StitchTerm | null {
  if (!isWord(r, W.in) && !isWord(r, W.with)) return null;
  const start = r.at++;
  const stitch = readStitch(r);
  if (!stitch) r.at = start;
  return stitch;
}

/** "on 28 sc", "over these 30 sts". */
function onStitches(r: Reader): void {
  if (!isWord(r, W.on) && !isWord(r, W.over)) return;
  const start = r.at++;
  eatThe(r);
  eatWord(r, W.these);
  const n = readNumbers(r);
  if (isWord(r, W.st)) r.at++;
  else if (!readStitch(r) && !n) r.at = start;
}
