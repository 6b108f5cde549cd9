/** What single lines look like, told by cheap anchored tests. Offsets are into the plain text. */

import type { Span } from '../source/index.ts';
import { oneOf } from './one-of.ts';

/** Signs that lists put before a line; a star may open a repeat, so it needs a label behind it. */
const BULLETS = '-•·▪◦‣►–—✓☐□▢>|➢❖✿❀♥';

/** Where the words of a line begin: behind list signs, quotation marks of mail and table bars. */
export function afterBullet(text: string, from: number, to: number): number {
  let at = from;
  while (at < to && (isBullet(text, at, to) || isPicture(text.charCodeAt(at)))) {
    at++;
    while (at < to && (text.charCodeAt(at) <= 32 || text.charCodeAt(at) === 0xa0)) at++;
  }
  const step = (text.charCodeAt(at) | 32) === 115 ? STEP.exec(text.slice(at, at + 12)) : null;
  return step && at + step[0].length < to ? at + step[0].length : at;
}

/** "Step 3: chain 12": the number of a step is none of a row. */
const STEP = /^step \d{1,2}\s?[:.)–—-]\s*/i;

/** Whether a numbered step begins here: whatever went before is over. */
export const opensStep = (text: string, from: number): boolean =>
  (text.charCodeAt(from) | 32) === 115 && STEP.test(text.slice(from, from + 12));

/** Dingbats, halves of emoji, and the sign that makes one of a letter. */
const isPicture = (code: number): boolean =>
  (code >= 0x2600 && code <= 0x27bf) || (code >= 0xd83c && code <= 0xdfff) || code === 0xfe0f;

/**
 * The code of the first sign behind the letters, blanks and apostrophes with which a line begins, as a name
 * does; 0 where the line has nothing else. Of other letters than those of ASCII the first is such a sign.
 */
export function signBehindName(text: string, from: number, to: number): number {
  for (let at = from; at < to; at++) {
    const code = text.charCodeAt(at);
    if (!isLetterCode(code) && code !== BLANK && code !== APOSTROPHE) return code;
  }
  return 0;
}

const BLANK = 32;
const APOSTROPHE = 39;

/** A typed bullet: "o Rnd 3: …". */
const O = 111;

function isBullet(text: string, at: number, to: number): boolean {
  const code = text.charCodeAt(at);
  if (isDigitCode(code) || (isLetterCode(code) && code !== O)) return false;
  const sign = text[at] ?? '';
  // "* Rnd 3: …" is a list; "* dc in next st; rep from *" is not.
  if (sign === '*' || sign === 'o') return LISTED_LABEL.test(text.slice(at, Math.min(to, at + 24)));
  if (!BULLETS.includes(sign)) return false;
  const next = text.charCodeAt(at + 1);
  if (next <= 32 || next === 0xa0 || (sign !== '-' && sign !== '–' && sign !== '—')) return true;
  // "-2sc in each sc": a dash typed close to the words, at the very start of the line.
  return isLineStart(text, at) && (isDigitCode(next) || isLetterCode(next) || next === STAR);
}

const STAR = 42;

const isLineStart = (text: string, at: number): boolean => at === 0 || text[at - 1] === '\n';

/** The list sign before the words that begin at `from`; '' where there is none. */
export function listSignBefore(text: string, from: number): string {
  let at = from - 1;
  while (at >= 0 && (text.charCodeAt(at) === 32 || text.charCodeAt(at) === 0xa0)) at--;
  const sign = text[at] ?? '';
  if (at < 0 || !BULLETS.includes(sign)) return '';
  let start = at;
  while (start > 0 && text[start - 1] === ' ') start--;
  return isLineStart(text, start) ? sign : '';
}

const LISTED_LABEL = /^[*o][ \t]{1,4}(?:rnds?|rounds?|rows?|rds?|r\s?\d|\d{1,3}(?:st|nd|rd|th)\b)/i;

export const isLetterCode = (code: number): boolean => {
  const small = code | 32;
  return small >= 97 && small <= 122;
};

export const isDigitCode = (code: number): boolean => code >= 48 && code <= 57;

/** Whether a capital stands here. */
export function opensSentence(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code < 128 ? code >= 65 && code <= 90 : /\p{Lu}/u.test(text[at] ?? '');
}

/** "(24 sts)", "[24]", "= 24 sc", "– 24 –": a stated count with a line of its own. */
const COUNT_LINE = new RegExp(
  `^${oneOf(String.raw`
    [([{][^()[\]{}]{0,6}\d[^()[\]{}]{0,60}[)\]}]
    | [=–—-]\s?\d[^.]{0,40}
    | \d{1,4}\s?[([][\d,;:/\s-]{2,40}(?:sts?|[a-z]{2,3})?[)\]](?:\s(?:sts?|[a-z]{2,3}))?
    | (?:you(?:'ll|’ll)?\s(?:should\s|will\s)?(?:now\s)?(?:have|end\sup\swith)\s(?:a\stotal\sof\s)?)?\d{1,4}\s(?:sts?|stitches|(?:single|double)\scrochets?|[sdh]{1,2}c|tr)\b(?:\s(?:in\s)?total|\snow)?\.?
    | (?:total|results?|stitch\scount|total\s(?:stitches|sts))\s?[:=–-]?\s?\d{1,4}(?:\s(?:sts?|stitches|[sdh]{1,2}c|tr))?\.?
    | (?:total|results?|you(?:'ll|’ll)?\s(?:should\s|will\s)?(?:now\s)?(?:have|end\sup\swith)|there\s(?:will|should)\sbe)\s?:?\s\d{1,3}\s[a-z0-9\s–-]{1,30}(?:(?:,|\sand|\swith)\s\d{1,3}\s[a-z0-9\s–-]{1,30}){0,3}\.?
  `)}[.\\s]*$`,
  'i',
);

/** "You", "total", "there", "stitch" and "result": other lines of letters are not held against the pattern. */
const OPENS_COUNT: ReadonlySet<string> = new Set(['yo', 'to', 'th', 'st', 're']);

export const isCountLine = (text: string, from: number, to: number): boolean =>
  to - from <= 80 &&
  (!isLetterCode(text.charCodeAt(from)) ||
    OPENS_COUNT.has(text.slice(from, from + 2).toLowerCase())) &&
  COUNT_LINE.test(text.slice(from, to));

/** "CH 1, turn.": with a line of its own it ends the row above, for no piece begins on so few. */
const TURN_LINE = /^ch(?:ain)?[ -]?[1-4](?: (?:and|then)|,)? turn(?: work)?[.;]?$/i;

export const isTurnLine = (text: string, from: number, to: number): boolean =>
  to - from <= 24 && TURN_LINE.test(text.slice(from, to));

/** A rule, or the underline of a heading: three or more of one sign. */
export function isRule(text: string, from: number, to: number): boolean {
  if (to - from < 3 || !'-_=*~+•.'.includes(text[from] ?? ' ')) return false;
  for (let at = from; at < to; at++) {
    if (text[at] !== text[from] && text.charCodeAt(at) > 32) return false;
  }
  return true;
}

/** "Page 3 of 9", "- 3 -": what a page leaves between two lines of a row. */
const PAGE_NUMBER = /^(?:page\s+\d{1,4}(?:\s*(?:of|\/)\s*\d{1,4})?|[-–—]\s*\d{1,4}\s*[-–—])$/i;

export const isPageNumber = (text: string, from: number, to: number): boolean =>
  to - from <= 20 && PAGE_NUMBER.test(text.slice(from, to));

/** "End of Round 10", "After Rnd 4", "Row 6 completed": what stands below a photograph. */
const CAPTION = new RegExp(
  [
    String.raw`^\W*(?:(?:(?:this is |here is |at )?(?:the )?(?:end|start|completion) of|after|before`,
    String.raw`|(?:completed?|finished)|(?:photo|picture|pic|image|view|figure|fig\.?)(?: of)?)`,
    String.raw` (?:the )?(?:rnds?|rounds?|rows?) ?#?\d{1,3}(?: ?(?:-|–|to|and|&) ?\d{1,3})?`,
    String.raw`|(?:rnds?|rounds?|rows?) ?#?\d{1,3}(?: ?(?:-|–|to|and|&) ?\d{1,3})?`,
    String.raw` (?:(?:is |are )?(?:completed?|finished|done)|photo|picture|image))\W*$`,
  ].join(''),
  'i',
);

/** Asked of short lines only, and of rows with their work behind a colon not at all. */
export const isCaption = (text: string, from: number, to: number): boolean =>
  to - from <= 48 &&
  to - from > 8 &&
  !isColonWithin(text, from, to) &&
  CAPTION.test(text.slice(from, to));

/** "Kelp hexagon after round 2", "granny square hexagon round 3": what a picture shows, by its last words. */
const NAMED_CAPTION =
  /^(?!.*\b(?:work|rep|repeat|same|as|continue|cont|follow|from|for|until|next|end|ch|chain|sc|dc|hdc|htr|tr|join|turn|begin|start|skip)\b)\p{L}[\p{L}'’ -]{3,44}[ ,:–-](?:rnd|round|row) ?#?\d{1,3}$/iu;

/** A line that ends with the number of a row and has no word of work. */
export const isNamedCaption = (text: string, from: number, to: number): boolean =>
  to - from <= 60 &&
  to - from > 12 &&
  isDigitCode(text.charCodeAt(to - 1)) &&
  isLetterCode(text.charCodeAt(from)) &&
  NAMED_CAPTION.test(text.slice(from, to));

/** Words of a label with nothing behind them: "Round 1:", "2nd row", "Rnds 4-6 (RS)". */
const LABEL_LINE = new RegExp(
  [
    String.raw`^\W{0,3}(?:(?:rnds?|rounds?|rows?|rds?|r)\.?\s?#?\d|\d{1,3}(?:st|nd|rd|d|th)\b)`,
    String.raw`[\d\s,&.–—-]*(?:(?:st|nd|rd|d|th|to|and|rnds?|rounds?|rows?|rds?|rs|ws|right|wrong`,
    String.raw`|side)\b[\d\s,&.–—-]*|\([^)]{0,30}\)\s*)*[:=–—.|-]?\s*$`,
  ].join(''),
  'i',
);

/** "Foundation Row:" */
const NAMED_LABEL_LINE = /^(?:foundation|set-?up|base|pattern) (?:row|round|rnd)\s*:\s*$/i;

export const isLabelAlone = (text: string, from: number, to: number): boolean => {
  if (to - from > 60 || isColonWithin(text, from, to)) return false;
  const line = text.slice(from, to);
  return LABEL_LINE.test(line) || NAMED_LABEL_LINE.test(line);
};

/** A colon with words behind it, and words but no bracket before it: so most rows begin. */
function isColonWithin(text: string, from: number, to: number): boolean {
  let at = from;
  while (at < to && !isWordCode(text.charCodeAt(at))) at++;
  while (at < to && text.charCodeAt(at) !== COLON) if (text.charCodeAt(at++) === OPEN) return false;
  while (at < to && !isWordCode(text.charCodeAt(at))) at++;
  return at < to;
}

const isWordCode = (code: number): boolean => isLetterCode(code) || isDigitCode(code);

const OPEN = 40;
const COLON = 58;

/** A row word and nothing else. */
export const isRowWord = (text: string, from: number, to: number): boolean =>
  to - from <= 6 && /^(?:rows?|rounds?|rnds?|rds?)$/i.test(text.slice(from, to));

/** "10th", with its "rnd:" on the line below. */
export const isOrdinalAlone = (text: string, from: number, to: number): boolean =>
  to - from <= 6 && /^\d{1,3}(?:st|nd|rd|th),?$/i.test(text.slice(from, to));

/** The row word, or the other ordinals and then the row word: "3RD, 4TH & 5TH ROWS". */
const OPENS_WITH_ROW =
  /^\s*(?:(?:&|and)?\s?\d{1,3}(?:st|nd|rd|th)(?:\s?(?:,|&|and)\s?|\s)){0,6}(?:rows?|rounds?|rnds?|rds?)\b/i;

/** "Round" with its number on the line below, as narrow columns break it. */
export function isSplitLabel(text: string, { from, to }: Span, next: number): boolean {
  if (isOrdinalAlone(text, from, to)) return OPENS_WITH_ROW.test(text.slice(next, next + 50));
  if (!isRowWord(text, from, to)) return false;
  return /^\s*\d{1,3}(?:\s*[:.)–—-]|\s+\S)/.test(text.slice(next, next + 16));
}

/** "(24 dc)", "= 24", "– 24 dc"; but "top of ch-3" ends with no count. */
const COUNT_IN_BRACKETS = /(?:(?:[([{=]|(?<![A-Za-z])[–—-])\s*\d[^()[\]{}]{0,40}[)\]}]?)[.;\s]*$/;
/** "… turn. 41 (45, 49) hdc.": the count is a sentence of its own. */
const COUNT_SENTENCE =
  /[.:]\s+\d{1,3}(?:\s?[([][\d,;:\s-]{1,24}[)\]])?\s?(?:sts?|stitches|[a-z]{0,2}[dst][cr])[.\s]*$/i;

/** "rep from * around (4x)" */
const TIMES = /[([{]\s*(?:\d{1,3}\s?(?:x|times)|x\s?\d{1,3})\s*[)\]}][.\s]*$/i;

/** "(1 sc dec each row)": how the rows are shaped, and no count of them. */
const SHAPING = /\b(?:inc|dec)[a-z]* (?:in |on |at )?(?:each|every)\b[^()[\]]*[)\]][.;\s]*$/i;

/** Behind the last line's end and its list sign: "- 2 sc in last st" is no count. */
function lastLine(words: string): string {
  const line = words.lastIndexOf('\n');
  return line < 0 ? words : words.slice(line + 1).replace(/^\s*[-–—]\s/, '');
}

/** The answer given last: of one row it is often asked several times. */
const last = { text: '', from: 0, to: -1, counted: false };

/** Whether the work so far ends with a stated count: what follows a count begins anew. */
export function endsWithCount(text: string, from: number, to: number): boolean {
  if (last.to !== to || last.from !== from || last.text !== text)
    Object.assign(last, { text, from, to, counted: isCounted(text, from, to) });
  return last.counted;
}

function isCounted(text: string, from: number, to: number): boolean {
  const end = lastLine(text.slice(Math.max(from, to - 50), to));
  const counted = COUNT_IN_BRACKETS.test(end) && !TIMES.test(end) && !SHAPING.test(end);
  return counted || COUNT_SENTENCE.test(end);
}

/** "… in the first stitch.*", "(see notes.)" */
function endsSentence(text: string, to: number): boolean {
  const last = text[to - 1] ?? '.';
  return '.!?'.includes('*)'.includes(last) ? (text[to - 2] ?? last) : last);
}

/**
 * Whether a line was broken because the next word, at `next`, no longer fitted. `width` is that of
 * the file's wrapped text; 0 for a file whose lines are whole paragraphs.
 */
export function isWrapped(text: string, line: Span, next: number, width: number): boolean {
  if (width === 0 || endsSentence(text, line.to)) return false;
  if (endsWithCount(text, line.from, line.to)) return false;
  let end = next;
  while (end < text.length && end < next + width && text.charCodeAt(end) > 32) end++;
  return line.to - line.from + 1 + end - next > width;
}
