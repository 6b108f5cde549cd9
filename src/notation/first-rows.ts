/**
 * Motifs that begin as another does: "Work 1st 3 rnds as for First Motif.", "Work as for 1st motif until 3rd
 * rnd is complete.": the rows of these numbers there.
 */
import { NUMBER_WORDS } from './number-words.ts';
import { kindAt, type Reader } from './reader.ts';
import { T } from './tokens.ts';

/** The rows and the part that a sentence beginning with "work" names so, behind it; `null`: none. */
export function readFirstRows(r: Reader): { rows: readonly number[]; part: string } | null {
  const start = r.at;
  let end = start;
  while (kindAt(r, end - start) !== T.end && kindAt(r, end - start) !== T.stop) end++;
  const last = r.to[end - 1] ?? 0;
  const words = r.text.slice(r.base + (r.from[start] ?? 0), r.base + last);
  const { part, n } = (FIRST_ROWS_AS.exec(words) ?? UNTIL_ROW.exec(words))?.groups ?? {};
  const many = n ? Number(n) || Math.max(0, CARDINALS.indexOf(n.toLowerCase())) : 0;
  if (!part || many === 0 || many > MOST_ROWS) return null;
  r.at = end;
  const rows = Array.from({ length: many }, (_, k) => k + 1);
  return { rows, part: part.replace(/^1st\b/i, 'first') };
}

const CARDINALS = NUMBER_WORDS.slice(0, 21);

const FIRST_ROWS_AS =
  /^work (?:the )?(?:1st|first) (?<n>\d{1,2}|\p{L}+) (?:rnds?|rounds?|rows) (?:the )?(?:same )?(?:as|like) (?:for |in |on )?(?:the )?(?<part>[\p{L}\d' -]+\w)\.?$/iu;
const UNTIL_ROW =
  /^work (?:the )?(?:same )?(?:as|like) (?:for |in |on )?(?:the )?(?<part>[\p{L}\d' -]+\w),? (?:until|through|to (?:the )?end of) (?:the )?(?:(?:rnd|round|row) )?(?<n>\d{1,2})(?:st|nd|rd|th)?(?: (?:rnd|round|row)s?)?(?: (?:is|are|has been|have been) (?:complete|completed|made|finished|worked))?\.?$/iu;

/** A motif has no more rounds that are told of another (a guess; the most met were twelve). */
const MOST_ROWS = 30;
