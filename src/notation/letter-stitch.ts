/** Stitches by letters: "6x, v" of charts in letters, "245C" of a scan, "1 p" of old leaflets. */
import {
  clauseEnds,
  fromOf,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { termOf } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { Numbers, StitchTerm } from './tree.ts';

/** "245C": twenty-four sc, as a scanner sees them; the reader then stands on the letter. */
export function scannedSc(r: Reader): Numbers | null {
  if (kindAt(r) !== T.number || !isWord(r, W.letter_c, 1) || !isGlued(r)) return null;
  const seen = valueAt(r);
  if (seen < 15 || seen % 10 !== 5 || !clauseEnds(r, 2)) {
    if (kindAt(r, 2) !== T.open) return null;
  }
  r.at++;
  return { from: fromOf(r, r.at - 1), to: toOf(r), values: [Math.floor(seen / 10)] };
}

/** Charts in letters: x or X is sc, v increase, a decrease, each as a clause of its own. */
export function letterStitch(r: Reader, n: Numbers | null): StitchTerm | null {
  const sense = wordAt(r);
  if (sense === W.letter_p) return letterPicot(r);
  const single = sense === W.x || sense === W.v || sense === W.a;
  if (!single) return null;
  const kind = kindAt(r, 1);
  const closes =
    kind === T.comma ||
    kind === T.close ||
    kind === T.end ||
    kind === T.semicolon ||
    // "6V = 12"
    (kind === T.equals && kindAt(r, 2) === T.number && n !== null) ||
    // "12 x 2ch-sps" counts spaces.
    (kind === T.number && sense !== W.a && !isGlued(r) && !isWord(r, W.ch, 2)) ||
    isLetter(r, 1);
  const placed = n !== null && sense === W.x && isWord(r, W.in, 1);
  const counted = placed || kind === T.stop || (kind === T.open && r.partner[r.at + 1] !== -1);
  if (!closes && !counted) return null;
  // A lone "x" without number is a sign of multiplication left over; "a" needs a capital or number.
  const inList = kindAt(r, -1) === T.comma && kind === T.close;
  if (n === null && sense !== W.v && !isCapital(r) && !inList) return null;
  r.at++;
  return sense === W.x ? SC : sense === W.v ? INCREASE : TOGETHER;
}

/** The letter behind a scanned number: sc. */
export function letterSc(r: Reader): StitchTerm {
  r.at++;
  return SC;
}

/** Old leaflets' "1 p, 1 s c in next", "make p and s c". */
function letterPicot(r: Reader): StitchTerm | null {
  if (!clauseEnds(r, 1) && !isWord(r, W.and, 1)) return null;
  r.at++;
  return PICOT;
}

const SC = termOf({ stem: 'sc' });
const INCREASE = termOf({ shape: 'increase' });
const TOGETHER = termOf({ shape: 'together' });
const PICOT = termOf({ shape: 'picot' });

/** Whether a letter that is a stitch stands alone. */
export const isLetter = (r: Reader, ahead: number): boolean =>
  (isWord(r, W.v, ahead) || isWord(r, W.a, ahead) || isWord(r, W.x, ahead)) &&
  (clauseEnds(r, ahead + 1) || kindAt(r, ahead + 1) === T.open);

/** "24x (24)": the bracket is a count, so the x before it is a stitch. */
export const isBareCount = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead + 1) === T.number && kindAt(r, ahead + 2) === T.close;

const isCapital = (r: Reader): boolean => {
  const code = r.text.charCodeAt(r.base + fromOf(r, r.at));
  return code >= 65 && code <= 90;
};
