/** Rows without labels, told by the list or the counted lines that they stand in. */
import type { Span } from '../source/index.ts';
import { endsWithCount, isCountLine, isDigitCode, listSignBefore } from './line-shapes.ts';
import { DIGITS, type Opening, opening, opensAs } from './opening.ts';
import type { Scan, Stretch } from './scan.ts';
import { isLabelled } from './work-rules.ts';

/** "- 2 sc in each st (12)" below "- 6 sc in ring (6)": items of one list are rows of their own. */
export function opensItem({ text, open }: Scan, { from, to }: Stretch): boolean {
  if (open?.kind !== 'instruction') return false;
  const sign = listSignBefore(text, from);
  if (sign === '' || sign !== listSignBefore(text, open.from)) return false;
  const above = text.slice(open.from, open.to);
  // Below "Round 2:" all are its steps, and its count has an item of its own.
  if (open.alone)
    return (
      !isCountLine(text, from, to) && HAS_COUNT.test(above) && HAS_COUNT.test(text.slice(from, to))
    );
  if (FOUNDATION_ALONE.test(above) || JOINED.test(above.slice(-60))) return true;
  if (TURNS_FIRST.test(text.slice(from, Math.min(to, from + 60)))) return true;
  if (STARTS_ROUND.test(text.slice(from, Math.min(to, from + 80))) && HAS_WORK.test(above))
    return true;
  // Steps of one row are listed so too: they have no counts.
  return HAS_COUNT.test(text.slice(open.from, open.to)) || HAS_COUNT.test(text.slice(from, to));
}

/** "• ch 1, sc around" below "• ch 2, dc 21": a start chain and what goes round. */
const STARTS_ROUND =
  /^(?:ch|chain) ?[1-4](?: \([^)]*\))?,?(?: and)? (?:\d{0,2} ?)?(?:sc|hdc|dc|htr|tr)\b[^•]*\b(?:around|across|each)\b/i;
const HAS_WORK = /\b(?:sc|hdc|dc|htr|tr|join|ring)\b/i;

/** "- Ch 24." above the first row of a list, and "- Ch 2, turn. Dc in each st" at a row's start. */
const FOUNDATION_ALONE = /^(?:ch|chain) ?\d{2,3}\b[^.,;]{0,24}[.;]?$/i;
/** "- Slip stitch into the top of the chain 2 to join the round.": the next item is another round. */
const JOINED =
  /\b(?:to join(?: the (?:round|rnd|ring|circle))?|to form a (?:ring|loop|circle)|, join)\.?$/i;
const TURNS_FIRST =
  /^(?:(?:ch|chain) ?\d,?(?: and| then)? )?turn(?: (?:your )?work)?[.,;:] *[(*\w]/i;

const HAS_COUNT = /[([]\d{1,4}(?: ?\p{L}[^()[\]]{0,16})?[)\]]/u;

/** Rows without labels, each a line with its count at its end: "6 sc in ring (6)", "inc around (12)". */
export function followsCounted({ text, open, options }: Scan, { from, to }: Stretch): boolean {
  if (open?.kind !== 'instruction' || options.layout === 'written') return false;
  // "Ch 3, … join (24 dc), my count has the ch 3." above "Ch 3, …(36 dc)"
  const begins =
    (text.charCodeAt(from) | 32) === SMALL_C
      ? /^ch(?:ain)? ?\d/i.exec(text.slice(from, from + 8))?.[0]
      : undefined;
  if (
    begins &&
    text.startsWith(begins, open.from) &&
    HAS_COUNT.test(text.slice(open.lineFrom, open.to)) &&
    COUNTED.test(text.slice(Math.max(from, to - 24), to))
  )
    return true;
  return (
    endsWithCount(text, open.from, open.to) &&
    COUNTED.test(text.slice(Math.max(from, to - 24), to)) &&
    !isLabelled(text, open.from, open.to)
  );
}

const SMALL_C = 99;

/** "Ch 1, sc in each st for the next 9 rounds." below a row that is told to its end: rows of their own. */
export function tellsRows({ text, open, options }: Scan, { from, to }: Stretch): boolean {
  if (open?.kind !== 'instruction' || options.layout === 'written' || open.bare) return false;
  if (!'.)]'.includes(text[open.to - 1] ?? ' ') || !opensAs(MAY_TELL_ROWS, text, from, text.length))
    return false;
  const words = text.slice(from, Math.min(to, from + 200));
  return FOR_ROWS.test(words) || SHAPED_TO_COUNT.test(words) || ACROSS_STITCHES.test(words);
}

/** "Work in patt across 20 (22, 24) sts, turn." */
const ACROSS_STITCHES =
  /^work (?:in (?:est(?:ablished)? )?patt?(?:ern)? )?(?:across|over) (?:(?:first|next) )?\d[^.;]*\bturn\b/i;

const MAY_TELL_ROWS: Opening = opening(
  `${DIGITS}csdhkw`,
  12,
  /^(?:ch(?:ain)? ?\d|s\.?c\b|dc\b|hdc\b|\d|cont|keep |work )/i,
);
const FOR_ROWS =
  /^(?:ch|sc|dc|hdc|\d)[^.]*\bfor (?:the )?next \d{1,3} (?:rows|rounds|rnds)\b[^.,;]{0,20}[.)]?$/i;
const SHAPED_TO_COUNT =
  /^(?:continue|cont|keep)\b[^.;:]*\b(?:increas|decreas|inc\b|dec\b)[^.;:]*\buntil (?:you have|there are) \d/i;

/**
 * "2. 6 ving (12)" below "1. 6 sc in ring (6)": the next number of the list and a count are a row,
 * whatever its words are; taken for prose or a title, it would be lost in silence.
 */
export function isNextInList({ text, open, section }: Scan, { from, to }: Span): boolean {
  if (section !== 'work' || to - from > 200 || !isDigitCode(text.charCodeAt(from))) return false;
  if (!COUNTED.test(text.slice(Math.max(from, to - 24), to))) return false;
  const here = LISTED.exec(text.slice(from, from + 24));
  if (
    here?.[1] === '1' &&
    (STARTS.test(text.slice(from, to)) || SECOND.test(text.slice(to, to + 90)))
  )
    return true;
  if (open?.kind !== 'instruction') return false;
  const above = LISTED.exec(text.slice(open.from, open.from + 24));
  return here !== null && above !== null && Number(here[1]) === Number(above[2] ?? above[1]) + 1;
}

const LISTED = /^(\d{1,3})[.):]?(?:\s?[-–—]\s?(\d{1,3}))?[.):]\s/;
const STARTS = /\b(?:ring|circle|loop|mr|mc(?= \d))\b/i;
/** The next line of the list, with its count. */
const SECOND = /^\s*2[.)]\s[^\n]*[([{]\s?\d{1,4}[)\]}][.;\s]*(?:\n|$)/;
/** A count at a line's end. */
export const COUNTED: RegExp = /[([{]\s?\d{1,4}[^()]{0,16}[)\]}][.;\s]*$/;
