/**
 * A round told in several paragraphs, with photographs between them: "Rnd 2: Join blue in any st. Ch 3, dc
 * in same st.", and below a blank line "*Skip a st, 2 dc in next st. Repeat from * around." All between the
 * labels of two rows that follow on each other is the first one's, if that is not over before.
 */
import { opensPlainLabel, startsWithLabel } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Block } from './block.ts';
import { endsWithCount, isLetterCode } from './line-shapes.ts';
import { oneOf } from './one-of.ts';

/** The text with blanks for the captions between paragraphs of one row, and the blocks with these as one. */
export interface Paragraphs {
  readonly text: string;
  readonly blocks: readonly Block[];
}

export function withParagraphs(text: string, blocks: readonly Block[]): Paragraphs {
  let plain = text;
  const out: Block[] = [];
  for (let i = 0; i < blocks.length; i++) {
    const row = blocks[i]!;
    const last = row.kind === 'instruction' ? lastParagraph(text, blocks, i) : i;
    if (last === i) {
      out.push(row);
      continue;
    }
    for (let k = i + 1; k <= last; k++) {
      const block = blocks[k]!;
      plain = blanked(plain, blocks[k - 1]!.to, block.kind === 'prose' ? block.to : block.from);
    }
    out.push({ kind: 'instruction', from: row.from, to: blocks[last]!.to });
    i = last;
  }
  return { text: plain, blocks: out };
}

/** What stands there gives way to blanks; lines stay as they are. */
const blanked = (text: string, from: number, to: number): string =>
  text.slice(0, from) + text.slice(from, to).replace(/[^\r\n]/g, ' ') + text.slice(to);

/** Index of the last paragraph of the row at `i`; `i` where it has but one. */
function lastParagraph(text: string, blocks: readonly Block[], i: number): number {
  const number = numberOf(text, blocks[i]!);
  if (number === null) return i;
  let end = i + 1;
  let works = 0;
  for (; end < blocks.length; end++) {
    const block = blocks[end]!;
    if (block.kind === 'instruction') {
      if (isLabelled(text, block)) break;
      works++;
    } else if (block.kind !== 'prose' || !isCaption(text, block)) break;
  }
  if (works === 0) return i;
  const next = blocks[end];
  const follows = next?.kind === 'instruction' && numberOf(text, next) === number + 1;
  const last = goesOnTo(text, blocks, i, end);
  if (last === i) return i;
  if (!follows) return isOver(text, { from: blocks[i]!.from, to: blocks[last]!.to }) ? last : i;
  // Another piece may be told between two rows: then nothing is said of what belongs to which.
  return blocks.slice(last + 1, end).some(({ kind }) => kind === 'instruction') ? i : last;
}

/** How far paragraphs go on, each below one that is not over. */
function goesOnTo(text: string, blocks: readonly Block[], i: number, end: number): number {
  let last = i;
  for (let k = i + 1; k < end; k++) {
    const block = blocks[k]!;
    if (block.kind !== 'instruction') continue;
    const before = { from: blocks[i]!.from, to: blocks[last]!.to };
    const apart = /\n\s*\n/.test(text.slice(before.to, block.from));
    if (!apart || isOver(text, before) || BEGINS.test(text.slice(block.from, block.from + 24)))
      break;
    last = k;
  }
  return last;
}

const isLabelled = (text: string, { from, to }: Span): boolean =>
  PLAIN_LABEL.test(text.slice(from, Math.min(to, from + 16))) ||
  opensPlainLabel(text, from, to) ||
  startsWithLabel(text, from, Math.min(to, from + 120));

/** What most rows begin with: the label's own reader need not be asked. */
const PLAIN_LABEL = /^(?:r(?:nd|ound|ow)?s?) ?\d{1,3}(?: ?- ?\d{1,3})?[.:] /i;

/** The number of a row's own label, "Rnd 3:" or "3rd row", and of no range. */
function numberOf(text: string, { from, to }: Span): number | null {
  const code = text.charCodeAt(from);
  if (isLetterCode(code) && (code | 32) !== SMALL_R) return null;
  const found = LABEL.exec(text.slice(from, Math.min(to, from + 24)));
  return found ? Number(found[1] ?? found[2]) : null;
}

const SMALL_R = 114;

const LABEL =
  /^\W{0,2}(?:r(?:nd|ound|ow|d)?\.? ?#?(\d{1,3})(?!\d| ?[-–&]\s?\d| (?:to|and) )|(\d{1,3})(?:st|nd|rd|th) r(?:nd|ound|ow)\b)/i;

/** A short line without a word of the craft: what a picture shows. */
const isCaption = (text: string, { from, to }: Span): boolean =>
  to - from < 160 && !CRAFT.test(text.slice(from, to));

const CRAFT = new RegExp(
  String.raw`\b${oneOf(`
    \\d?(?:ch|sc|hdc|dc|htr|d?tr) | sts? | sp | stitch(?:es)? | chains? | crochets? | trebles? | repeat | count(?:s|ed)?
    | skip | turn | join | loops?
  `)}\b`,
  'i',
);

/** A start of something else: a chain with which rows begin, yarn that is joined, another piece. */
const BEGINS =
  /^\W{0,2}(?:ch\b|chain\b|make\b|begin\b|start\b|with\b|using\b|(?:re)?join\b|attach\b|fasten\b|finish\b|for\b|turn\b|now\b|row\b|edging\b|border\b)/i;

/** Whether a row comes to its end with these words. */
function isOver(text: string, { from, to }: Span): boolean {
  if (endsWithCount(text, from, to)) return true;
  const words = text.slice(Math.max(from, to - 160), to);
  const sentence = words.slice(Math.max(0, words.slice(0, -1).lastIndexOf('. ') + 1));
  // "Rnd 2: Join blue in any st.": where it begins.
  if (sentence.length >= to - from - 12 && /\bjoin\b/i.test(sentence)) return false;
  return OVER.test(sentence);
}

const OVER = new RegExp(
  String.raw`\b${oneOf(`
    join(?:ed|ing)? | turn | (?:fasten|finish|cut) (?:off|(?:your |the )?yarn) | around | across
    | to (?:the )?end | end of (?:the |your )?(?:row|round|rnd) | (?:close|complete|finish) (?:the )?(?:round|rnd|row|ring|circle)
    | (?:sl ?st|ss|slip ?stitch)\b[^.]{0,40}\b(?:top|first|1st|beg(?:inning)?|start(?:ing)?|initial)
  `)}\b[^.]{0,60}[.!)]*\s*$`,
  'i',
);
