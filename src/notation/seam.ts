/**
 * Rows and edges of a piece joined to each other: "sl st row 1 and row 22 together", "sl st through foundation
 * chain and row 40 to join", "sc the short ends together". It closes the piece, which is not followed.
 */
import { fromOf, type Reader, toOf, wordAt } from './reader.ts';
import type { Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';

/** Whether a seam was told here; the reader then stands behind it. */
export function seams(r: Reader, run: Run): boolean {
  if (!OPENS.has(wordAt(r, 1)) && !OPENS.has(wordAt(r, 2))) return false;
  const from = fromOf(r, r.at);
  const to = Math.min(from + LONGEST, fromOf(r, r.count - 1));
  const told = SEAM.exec(r.text.slice(r.base + from, r.base + to));
  if (!told) return false;
  while (r.from[r.at]! < from + told[0].length && r.at < r.count - 1) r.at++;
  run.out.push({ kind: 'not-worked', what: 'through layers', work: null, from, to: toOf(r) });
  return true;
}

/** Whether a line begins with a seam: the rows above it are over. */
export const opensSeam = (text: string, from: number, to: number): boolean =>
  (text.charCodeAt(from) | 32) === S && SEAM.test(text.slice(from, Math.min(to, from + LONGEST)));

const S = 115;
const LONGEST = 120;

/** What stands behind the stitch of a seam. */
const OPENS: SenseSet = new SenseSet([
  W.the,
  W.both,
  W.row,
  W.round,
  W.through,
  W.beginning,
  W.foundation,
  W.last,
  W.final,
]);

const ROW =
  '(?:the )?(?:(?:first|1st|last|final|beginning|starting|foundation|base) (?:ch(?:ain)?|row|rnd|round|edge)|(?:row|rnd|round) ?\\d{1,3})';
const EDGES =
  '(?:both|the)(?: (?:two|short|shorter|long|longer|side|opposite|row|cuff|outer|open))* (?:ends|edges|sides)(?: of (?:the |your )?[a-z]+(?: [a-z]+)?)?';

const SEAM = new RegExp(
  `^(?:sl(?:ip)?[ .-]?st(?:itch)?|ss|sc|single crochet)(?: through)? (?:${ROW} (?:and|to|with) ${ROW}(?: together)?(?: to (?:join|close))?|${EDGES} together)(?=[ \\t]*(?:[.,;:(\\n]|$))`,
  'i',
);
