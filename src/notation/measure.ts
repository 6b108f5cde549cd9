/** Lengths in orders: "until piece measures 30 cm", "for 4 in", "12\"", "to desired length". */

import { mayBeStitch } from './dictionary.ts';
import { sinceOf } from './measure-since.ts';
import { isFraction, sizeList } from './numbers.ts';
import {
  clauseEnds,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Measure } from './tree.ts';

/** Millimetres of a length here ("30 cm", "4½ in"), or `null`; the reader moves behind it. */
function readLength(r: Reader): number | null {
  if (kindAt(r) !== T.number) return null;
  const start = r.at;
  let value = valueAt(r);
  r.at++;
  if (kindAt(r) === T.slash && kindAt(r, 1) === T.number) {
    value /= Math.max(1, valueAt(r, 1));
    r.at += 2;
  } else if (kindAt(r) === T.number && kindAt(r, 1) === T.slash && kindAt(r, 2) === T.number) {
    value += valueAt(r) / Math.max(1, valueAt(r, 2));
    r.at += 3;
  }
  if (kindAt(r) === T.dash) r.at++;
  const factor = unitFactor(r);
  if (factor === 0) {
    r.at = start;
    return null;
  }
  r.at++;
  return Math.round(value * factor * 100) / 100;
}

/** 25.4 mm to the inch is exact by international agreement. */
function unitFactor(r: Reader): number {
  const sense = wordAt(r);
  if (sense === W.cm) return 10;
  if (sense === W.mm) return 1;
  if (sense === W.inch || sense === W.in) return 25.4;
  return sense === W.metre ? 1000 : 0;
}

/**
 * "until piece measures 30 cm / 12 in from beg", "to desired length", "until long enough". The
 * reader stands on "until", "to" or "for". `null`: no measure here.
 */
export function readMeasure(r: Reader): Measure | null {
  const start = r.at;
  if (!isWord(r, W.to) && !isWord(r, W.for) && !isWord(r, W.over)) return null;
  let open = false;
  for (let guard = 0; guard < 16; guard++) {
    r.at++;
    // "for desired length ending with row 3"
    if (open && (isWord(r, W.ending) || isWord(r, W.end))) return { mm: null, since: null };
    const kind = kindAt(r);
    if (kind === T.open && passAside(r)) continue;
    if (kind === T.number && lengthsBySize(r, open, start)) return { mm: null, since: null };
    if (kind === T.number || kind === T.dash) {
      const mm = kind === T.number ? readLength(r) : null;
      if (mm !== null) {
        secondUnit(r);
        if (offFromAnother(r)) return { mm: null, since: null };
        acrossIt(r);
        const since = sinceOf(r, start);
        passOtherLength(r);
        return { mm, since };
      }
      if (kind === T.number && !open) break;
    } else if (kind !== T.word && kind !== T.open) break;
    const sense = wordAt(r);
    open ||= sense === W.measures || sense === W.long || sense === W.desired || tellsSize(r);
    // "until work measures" speaks of the piece; "to work 5 sc" of work to do.
    const piece = isWord(r, W.measures, 1) || isWord(r, W.from, 1);
    if ((sense === W.work && !piece) || sense === W.turn) break;
  }
  if (open) {
    ofPiece(r);
    return { mm: null, since: null };
  }
  r.at = start;
  return null;
}

/** "the desired length of fabric for your scarf": of what, and what for. */
function ofPiece(r: Reader): void {
  if (isWord(r, W.desired, -1) && isOneOf(r, LENGTH)) r.at++;
  if (isWord(r, W.of) && isOneOf(r, PIECE, 1)) r.at += 2;
  if (!isWord(r, W.for) || !isOneOf(r, WHOSE, 1) || kindAt(r, 2) !== T.word) return;
  const k = kindAt(r, 3) === T.word ? 4 : 3;
  if (clauseEnds(r, k)) r.at += k;
}

const LENGTH = wordsOf('length size height width');
const PIECE = wordsOf('fabric scarf blanket work material band');
const WHOSE = wordsOf('your the a my his her');

/** "½ in less than desired length", "2 cm short of the size you want": the length itself is not said. */
function offFromAnother(r: Reader): boolean {
  if (!isOneOf(r, OFF) && !isWord(r, W.more)) return false;
  if (!isOneOf(r, THAN, 1) && !isWord(r, W.of, 1)) return false;
  let k = 2;
  while (k < 9 && kindAt(r, k) === T.word && !isWord(r, W.end, k) && !isWord(r, W.ending, k)) {
    if (
      isWord(r, W.desired, k) ||
      /^(size|width|length|height|want|needed)$/.test(spelled(r, r.at + k))
    ) {
      while (k < 9 && kindAt(r, k) === T.word && !isWord(r, W.ending, k)) k++;
      r.at += k;
      return true;
    }
    k++;
  }
  return false;
}

const OFF = wordsOf('less shorter short longer');
const THAN = wordsOf('than');

/** "4 in in diameter", "20 cm across": what of it is measured. */
function acrossIt(r: Reader): void {
  if (isWord(r, W.in) && isOneOf(r, DIAMETER, 1)) r.at += 2;
  else if (isOneOf(r, DIAMETER)) r.at++;
}

/** "…, or 1 cm less than the foot", "or you have the length you desire": another way to tell how long. */
function passOtherLength(r: Reader): void {
  // "8 cm from the tip of the toe, or …"
  let sign = 0;
  if (isWord(r, W.from)) while (sign < 9 && kindAt(r, sign) === T.word) sign++;
  if (kindAt(r, sign) === T.comma || kindAt(r, sign) === T.dash) sign++;
  if (!isWord(r, W.or, sign)) return;
  let told = false;
  let k = sign + 1;
  for (; k < 20 && !clauseEnds(r, k) && kindAt(r, k) !== T.open; k++) {
    // "Long" alone opens stitches too: "long dc".
    const works = mayBeStitch(wordAt(r, k)) && !isWord(r, W.long, k);
    if (works || isWord(r, W.work, k)) return;
    told ||= isWord(r, W.long, k) || isWord(r, W.desired, k) || isOneOf(r, LENGTHS, k);
  }
  if (told) r.at += k;
}

const LENGTHS = wordsOf('length size longer shorter less want wish like need fits fit');

const DIAMETER = wordsOf(
  'diameter square across wide long tall high deep length height width circumference',
);

const SIZE_WORDS = wordsOf('size width height depth enough');

/** "until you reach the size you want", "until it is wide enough", "as tall as you like" */
const tellsSize = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  (isOneOf(r, SIZE_WORDS) ||
    (isWord(r, W.as, -1) && /^(tall|big|large|deep|high|wide)$/.test(spelled(r, r.at))));

/** "until ribbing (slightly stretched) measures": the reader stops on the closing bracket. */
function passAside(r: Reader): boolean {
  const close = r.partner[r.at] ?? -1;
  if (close < 0 || close - r.at > 10) return false;
  for (let i = r.at + 1; i < close; i++) if (r.kind[i] === T.number) return false;
  r.at = close;
  return true;
}

/**
 * "13 (14-15-16)" [33 (35.5-38-40.5) cm]": a length for each size, in one unit or two. An inch mark
 * behind a bracket is no token; `isMeasured`: the words before tell that lengths follow. Else the list
 * stands right behind the word at token `from`, and has a unit.
 */
function lengthsBySize(r: Reader, isMeasured: boolean, from: number): boolean {
  const start = r.at;
  r.at += isFraction(r) ? 4 : 1;
  const found: (number | null)[] = [];
  const listed = kindAt(r) === T.open && sizeList(r, found) && !countsBehind(r);
  if (listed && (isMeasured || (start === from + 1 && (unitFactor(r) > 0 || fromBeg(r))))) {
    if (unitFactor(r) > 0) r.at++;
    const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
    if (close > 0 && kindAt(r, 1) === T.number) r.at = close + 1;
    return true;
  }
  r.at = start;
  return false;
}

/** "until 8 (10, 12)\" from beg": the inch mark is no token there. */
const fromBeg = (r: Reader): boolean => isWord(r, W.from) && isWord(r, W.beginning, 1);

/** "until 24 (30, 36) rows": a number of rows or stitches is no length. */
const countsBehind = (r: Reader): boolean =>
  isWord(r, W.row) || isWord(r, W.round) || isWord(r, W.st);

/** "/ 12 in", "(12 in)", "[12 in]", "or 12 in" behind the first; "from beg" and so on stay. */
function secondUnit(r: Reader): void {
  const start = r.at;
  const bracket = kindAt(r) === T.open;
  // "10 in or 25 cm", and up to what it may be: "10"-12"", "10 to 12 in"
  const links = isWord(r, W.or) || isWord(r, W.to) || kindAt(r) === T.dash;
  if (bracket || kindAt(r) === T.slash || links) r.at++;
  else return;
  if (readLength(r) === null) r.at = start;
  else if (bracket && kindAt(r) === T.close) r.at++;
}
