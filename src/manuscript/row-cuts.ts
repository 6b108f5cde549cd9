/**
 * Rows of a paragraph that has no labels: "1 dc in 8th ch from hook, … ch 5 and turn. 1 dc in next dc, …"
 * A sentence that ends with a turn ends its row, if it worked one; the next sentence begins another.
 */
import { opensPlainLabel, startsWithLabel } from '../notation/index.ts';
import { oneOf } from './one-of.ts';
import { type Needs, needs } from './trigrams.ts';

const TURNED = /\bturn(?: (?:work|the work))?\.\s+(?=(?:\d{1,3} ?)?[A-Za-z])/gi;

const WORKS = new RegExp(
  String.raw`\b${oneOf('sc | dc | hdc | tr | htr | dtr | (?:single|double|treble) crochets?')}\b[^.]*\b(?:in|into|each|across|end)\b`,
  'i',
);
/** What may open the next row: a stitch, a chain to begin with, or a repeat. */
const OPENS = new RegExp(
  String.raw`^(?:(?:work|do) )?(?:\d{1,3} ?)?${oneOf('sc | dc | hdc | tr | htr | dtr | ch(?:ain)? | single | double | rows? of')}\b`,
  'i',
);

/** "Repeat this row 2 more times. Chain 1 …": the order is done, and another row begins. */
const AGAIN =
  /\b(?:rep|repeat)\b[^.]{0,40}\b(?:rows?|rnds?|rounds?)\b[^.]{0,30}\b(?:times|once|twice)\.\s+(?=[A-Z])/gi;

/** What stands in a text that has such rows. */
export const OF_ROWS_BEHIND: Needs = needs('urn.', 'times.', 'once.', 'twice.');

const NONE: readonly number[] = [];

/** Where the rows behind the first one begin; none in a row that has a label. */
export function rowsBehind(text: string, from: number, to: number): readonly number[] {
  // Most rows have labels, and most of these are known by their first word.
  if (opensPlainLabel(text, from, to)) return NONE;
  const words = text.slice(from, to);
  if (!words.includes('urn.') && !/times\.|once\.|twice\./i.test(words)) return NONE;
  const ends = [...words.matchAll(TURNED), ...words.matchAll(AGAIN)];
  const starts: number[] = [];
  let last = 0;
  for (const { index, 0: found } of ends.sort((a, b) => a.index - b.index)) {
    const at = index + found.length;
    if (!WORKS.test(words.slice(last, index)) || !OPENS.test(words.slice(at, at + 24))) continue;
    starts.push(from + at);
    last = at;
  }
  return starts.length > 0 && startsWithLabel(text, from, to) ? [] : starts;
}
