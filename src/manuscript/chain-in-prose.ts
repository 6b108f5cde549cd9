/** A foundation chain that only a paragraph of talk tells of: "Use a 5 mm hook... Ch 66, or any multiple of 11." */
import type { Span } from '../source/index.ts';

const CHAIN =
  /\b(?:(?:a|your|the) )?(?:(?:foundation|starting|base|beginning) )?ch(?:ain(?:ing)?)?(?: of)?[ -]?(\d{2,3})\b(?!\s*(?:sp|loop|mm|cm|in\b|inch|["”″+x×-]))/gi;

/** "Leave a tail of 10 cm, make a slip knot, ch 2", straight before the row that works into it. */
const SHORT_CHAIN = /\bch(?:ain)? ?[2-9][.,;]?\s*$/i;

/** "To make it wider, ch 90": another piece than that of the rows. */
const OTHER_WIDTH = /\b(?:if|wider|larger|bigger|longer|smaller|narrower|swatch|gauge)\b[^.]*$/i;

/** The first row goes into a chain that was made before it. */
const INTO_CHAIN =
  /\b(?:\d{1,2}(?:st|nd|rd|th)|second|third|fourth|fifth|sixth|seventh|eighth)\s+(?:ch|chain|st|stitch)\w*\s+from\b|\bin (?:each|every) (?:remaining |rem |following )?(?:ch|chain)\b|\bskip (?:the )?(?:1st|first|first \d|\d) ch|\binto next ch\b|\bin (?:each of )?(?:the )?next \d{1,3} ch/i;

/** "Row 1: dc", "Row 1: sc in each st across": along a chain, for a ring is named. */
const ALONG_CHAIN =
  /^\W*row (?:1|one)\b\W{1,4}(?:[sdh]{1,2}c|tr|single|double|half)\b(?![^\n]*\b(?:rings?|loop|circle|mr|ch(?:ain)? ?\d{2})\b)/i;

/** Whether the row at `from`, whose label may have a line of its own, works into a foundation chain. */
export const worksIntoChain = (text: string, from: number): boolean =>
  !OWN_CHAIN.test(text.slice(from, from + 80)) &&
  (ALONG_CHAIN.test(text.slice(from, from + 160)) ||
    INTO_CHAIN.test(text.slice(from, from + 160).replace(/\n\s*\n[\s\S]*/, '')));

/** "Row 1: Ch 136, dc in 4th ch from hook": the row makes the chain itself. */
const OWN_CHAIN =
  /^[^:.\n]{0,24}[:.–-]\s*(?:(?:with|using) [^,.:\n]{1,24},? )?(?:make a )?(?:ch|chain)(?: of)? \d{2,3}\b/i;

/**
 * Where the paragraph names the chain, to the end of that sentence; `null` where it names none, or
 * chains of several lengths, of which none is sure to be the row's.
 */
export function chainInProse(text: string, { from, to }: Span): Span | null {
  const short = SHORT_CHAIN.exec(text.slice(Math.max(from, to - 16), to));
  if (short) return { from: to - short[0].length, to };
  const found = [...text.slice(from, to).matchAll(CHAIN)];
  const [first] = found;
  if (!first) return multipleInProse(text, { from, to });
  if (OTHER_WIDTH.test(text.slice(Math.max(from, from + first.index - 60), from + first.index)))
    return null;
  if (new Set(found.map(([, n]) => n)).size > 1) return null;
  const at = from + first.index;
  const end = text.slice(at, to).search(/[.!?](?:\s|$)|\n/);
  return { from: at, to: end < 0 ? to : at + end + 1 };
}

/** "Multiple of 6 + 3", "Stitch multiple: 6 plus 3 (add 2 for base chain)", "an odd number of stitches". */
const MULTIPLE =
  /\bmultiples?\s*(?:of\s*|:\s*)?\d{1,3}\b(?!\s*(?:rows?|rounds?|rnds?|colou?rs|inches|cm)\b)|\b(?:an )?(?:even|odd|uneven) number of (?:ch|st)/gi;

/** "I used 22 for this cloth." behind the multiple: how many somebody made. */
const MADE_BY_ME =
  /^\s*I (?:used|made|chained|did|started with)(?: a| ch(?:ain)?)? \d{1,3}\b[^.\n]*/i;

/** Where the paragraph tells what the foundation is a multiple of; `null` where it tells several. */
export function multipleInProse(text: string, { from, to }: Span): Span | null {
  const found = [...text.slice(from, to).matchAll(MULTIPLE)];
  const [first] = found;
  if (!first) return null;
  const said = new Set(found.map(([words]) => words.replace(/\D+/g, '')));
  if (said.size > 1) return null;
  const at = from + first.index;
  const end = text.slice(at, to).search(/[.!?;](?:\s|$)|\n(?!\s*(?:of|plus|and|\+|\(?add)\b)/i);
  if (end < 0) return { from: at, to };
  const sample = MADE_BY_ME.exec(text.slice(at + end + 1, Math.min(to, at + end + 80)));
  return { from: at, to: at + end + 1 + (sample?.[0].length ?? 0) };
}
