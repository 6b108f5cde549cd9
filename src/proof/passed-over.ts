/**
 * Lines of a pasted text that stand among its rows, were taken for talk, and name stitches with their
 * places: a tutorial's "and then you are going to work 1 dc into each stitch". They are told, so that
 * nobody takes the rows for all that there is to work.
 */
import type { Manuscript } from '../manuscript/index.ts';
import type { Span } from '../source/index.ts';

const STITCH = '(?:sc|hdc|dc|htr|tr|dtr|(?:single|double|half[- ]double|treble) crochet(?:s|ing)?)';
const TELLS = new RegExp(
  String.raw`\b${STITCH}\b[^.?]{0,30}\b(?:in|into|across|around|to)\b[^.?]{0,20}\b(?:each|every|next|same|first|last|end|\d+)\b|\b(?:ch|chain) ?\d+\b[^.?]{0,24}\b(?:turn|join|skip|${STITCH})\b`,
  'i',
);
/** "Work Pattern Stitch Row 1 (see there). (58 sts)", "Next row: Work in pattern across": a row, of whatever stitch. */
const ORDERS_ROW = new RegExp(
  String.raw`[([] ?\d+(?: \([^)]*\))? ?(?:sts?|stitches|${STITCH})\b[^)\]]*[)\]]\W*$|^\s*next (?:row|rnd|round)\b|\bwork(?:ing)? (?:even|(?:in )?pattern)\b`,
  'i',
);
/** Where what others say of the piece begins, or the next page. */
const ENDS =
  /^\s*(?:\d+ |no )?(?:comments?|responses?|replies|thoughts on)\b|^\s*(?:leave a (?:reply|comment)|posted by|about the author)/i;
/** Told of a stitch or of herself, and no order. */
const TALKS =
  /=|\?|\b(?:I|we|you can|you could|if you|don't know|notes?|tips?|means?|counts?|stands?|abbreviations?|tension|gauge|terms|hook)\b/i;
/** Behind the last row a finishing may follow, and much that is none: characters. */
const BEHIND_LAST = 600;
const BEFORE_FIRST = 600;
const MOST_QUOTED = 3;

/** One sentence that quotes them, or none. A text with a head of its own is written for us, and tells its notes apart. */
export function passedOver({ text, head, parts, specials, charts }: Manuscript): string[] {
  const rows = parts.flatMap(({ instructions }) => instructions);
  const [first] = rows;
  if (head.span || !first) return [];
  const taken: Span[] = [...rows, ...specials, ...charts].sort((a, b) => a.from - b.from);
  const end = Math.min(
    text.length,
    rows.reduce((to, row) => Math.max(to, row.to), 0) + BEHIND_LAST,
  );
  const lines: string[] = [];
  let k = 0;
  for (let at = lineFrom(text, Math.max(0, first.from - BEFORE_FIRST)); at < end; ) {
    const next = text.indexOf('\n', at);
    const to = next < 0 ? end : next;
    while ((taken[k]?.to ?? end) <= at) k++;
    const span = taken[k];
    const line = text.slice(at, to);
    if (ENDS.test(line) && !span) break;
    if ((!span || span.from >= to) && line.length < 400 && namesWork(line)) lines.push(line.trim());
    at = to + 1;
  }
  if (lines.length === 0) return [];
  const said = lines.slice(0, MOST_QUOTED).map(quoted).join(', ');
  const more = lines.length - MOST_QUOTED;
  return [
    `Taken for talk, though stitches and their places are named there: ${said}${more > 0 ? ` and ${more} more` : ''}.`,
  ];
}

const namesWork = (line: string): boolean =>
  (TELLS.test(line) && !TALKS.test(line)) || ORDERS_ROW.test(line);

const lineFrom = (text: string, at: number): number => text.lastIndexOf('\n', at) + 1;

const LONGEST = 44;

const quoted = (line: string): string =>
  `"${line.length > LONGEST ? `${line.slice(0, line.lastIndexOf(' ', LONGEST))} …` : line}"`;
