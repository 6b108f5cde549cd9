/** The sizes of a piece: from its head, a line that lists them, or the first list of numbers. */
import type { Block } from './block.ts';
import type { FrontMatter } from './front-matter.ts';
import { oneOf } from './one-of.ts';
import { sizeOfHeading } from './sizes-named.ts';
import { type Marked, mayHold, needs } from './trigrams.ts';

/** No garment comes in more; a longer list is something else. */
const MOST = 16;

/** Names in order; `['']` for a piece of one size. */
export function sizesOf(
  head: FrontMatter,
  { text, marks }: Marked,
  blocks: readonly Block[],
): readonly string[] {
  const stated = statedSizes(head.entries.get('sizes')?.value);
  if (stated) return stated;
  // One "size" is the measure of the finished piece.
  const either = statedSizes(head.entries.get('size')?.value);
  if (either && either.length > 1) return either;
  for (const block of blocks) {
    if ((block.kind !== 'prose' && block.kind !== 'heading') || block.section === 'comments')
      continue;
    const listed = listedSizes(text.slice(block.from, Math.min(block.to, block.from + 2000)));
    if (listed) return asInNumbers(listed, text, blocks);
  }
  const headed = sizesInHeadings(blocks);
  if (headed.length > 1) return headed;
  const bracketed =
    mayHold(marks, OF_BRACKETS) &&
    blocks.some(
      (block) =>
        block.kind === 'prose' &&
        block.section !== 'comments' &&
        IN_BRACKETS.test(text.slice(block.from, Math.min(block.to, block.from + 2000))),
    );
  const paired = bracketed || hasPairs(text, blocks);
  for (const block of blocks) {
    if (block.kind !== 'instruction') continue;
    const pair = paired && CHAIN_PAIR.test(text.slice(block.from, block.to));
    if (pair) return ['size 1', 'size 2'];
    const n = sizesInNumbers(text.slice(block.from, Math.min(block.to, block.from + 2000)));
    if (n > 1) return Array.from({ length: n }, (_, i) => `size ${i + 1}`);
  }
  if (!mayHold(marks, OF_LISTS)) return [''];
  const n = sizesInNested(text, blocks) || sizesInCounts(text, blocks);
  return n > 1 ? Array.from({ length: n }, (_, i) => `size ${i + 1}`) : [''];
}

/** "52 (58) sts" in a row: two sizes, for no count has two numbers. */
function hasPairs(text: string, blocks: readonly Block[]): boolean {
  if (!CHAIN_PAIRS.test(text)) return false;
  return blocks.some(
    ({ kind, from, to }) =>
      kind === 'instruction' && PAIR_COUNTED.test(text.slice(from, Math.min(to, from + 2000))),
  );
}

const CHAIN_PAIRS = /\bch(?:ain)? ?\d{1,3} ?[([]\d{1,3}[)\]]/i;
const PAIR_COUNTED =
  /(?<![x×*\d] ?)\b\d{1,3} ?[([]\d{1,3}[)\]] ?(?:sts?|stitches|sc|hdc|dc|htr|tr)\b/i;

/** "Size Small", "Size Medium", each above rows of its own: in the order in which they first stand. */
function sizesInHeadings(blocks: readonly Block[]): readonly string[] {
  const named = new Set<string>();
  for (const block of blocks) {
    const size = block.kind === 'heading' ? sizeOfHeading(block.name) : null;
    if (size !== null && WHOLE.test(size)) named.add(size);
  }
  return [...named];
}

/** Fewest lists of numbers that prove how many sizes there are, where a line of names seems to say otherwise. */
const ENOUGH_LISTS = 3;

/**
 * The sizes as named, unless every list of numbers in the rows has another length: then the line that
 * seemed to name them named something else, and the numbers tell how many there are.
 */
function asInNumbers(
  listed: readonly string[],
  text: string,
  blocks: readonly Block[],
): readonly string[] {
  const apart = listed.flatMap((name) => name.split(/\s?[-–]\s?/));
  if (apart.length > listed.length && isNamedApart(apart, text, blocks)) return apart;
  let n = 0;
  let lists = 0;
  for (const block of blocks) {
    if (block.kind !== 'instruction') continue;
    const found = sizesInNumbers(text.slice(block.from, Math.min(block.to, block.from + 2000)));
    if (found < 2) continue;
    if (found === listed.length || (n > 0 && found !== n)) return listed;
    n = found;
    lists++;
  }
  if (lists < ENOUGH_LISTS) return listed;
  return Array.from({ length: n }, (_, i) => `size ${i + 1}`);
}

/** "2 (4-6)" are three sizes, where a row is for "size 4 only", and two where one of them is "4-6". */
const isNamedApart = (apart: readonly string[], text: string, blocks: readonly Block[]): boolean =>
  blocks.some(({ kind, from }) => {
    const only = kind === 'instruction' ? FOR_SIZE.exec(text.slice(from, from + 40))?.[1] : null;
    return only ? apart.includes(only) : false;
  });

const FOR_SIZE = /^\W*sizes? (\d+)(?: only)?[:,]? /i;

/**
 * How many sizes the counts of a piece have where every list stands in brackets whole: "(30, 36, 42)
 * fsc" and "hdc around. (30, 36, 42)". Told by rows enough whose counts grow from size to size, and by
 * none that is otherwise; 1: nothing tells.
 */
function sizesInCounts(text: string, blocks: readonly Block[]): number {
  let n = 1;
  let lists = 0;
  for (const block of blocks) {
    if (block.kind !== 'instruction') continue;
    const words = text.slice(block.from, Math.min(block.to, block.from + 2000));
    if (!/\d\s?[,/;]\s?\d/.test(words)) continue;
    for (const [, found = ''] of words.matchAll(BRACKET_LIST)) {
      const numbers = found.split(/[,/;]/).map(Number);
      const grows = numbers.every((value, i) => i === 0 || value >= (numbers[i - 1] ?? 0));
      if (!grows || (n > 1 && numbers.length !== n)) return 1;
      n = numbers.length;
      lists++;
    }
  }
  return lists >= ENOUGH_LISTS ? n : 1;
}

/** "(28 [30] sc)", in rows enough: a bracket within that of the count holds the other sizes; 0: none does. */
function sizesInNested(text: string, blocks: readonly Block[]): number {
  let n = 0;
  let lists = 0;
  for (const block of blocks) {
    if (block.kind !== 'instruction') continue;
    const words = text.slice(block.from, Math.min(block.to, block.from + 2000));
    const found = words.includes('[') ? NESTED_LIST.exec(words)?.[1] : undefined;
    if (found === undefined) continue;
    const numbers = 1 + (found.match(/\d+/g)?.length ?? 0);
    if (n > 0 && numbers !== n) return 0;
    n = numbers;
    lists++;
  }
  return lists >= ENOUGH_LISTS ? n : 0;
}

const NESTED_LIST =
  /\(\s?\d{1,4}\s?\[\s?(\d{1,4}(?:\s?[,;/:-]\s?\d{1,4})*)\s?\]\s?(?:[a-z]+\.?\s?)?\)/i;

/** Numbers beside each other as they stand in such lists, or a bracket for those nested. */
const GAPS = ['', ' ', '\n'];
const OF_LISTS = needs(
  ...[',', '/', ';'].flatMap((sign) =>
    GAPS.flatMap((before) => GAPS.map((behind) => `1${before}${sign}${behind}1`)),
  ),
  '[',
);

/** Three numbers or more in a bracket at the end of a line, and what they count. */
const BRACKET_LIST =
  /[([]\s?(\d{1,4}(?:\s?[,/;]\s?\d{1,4}){2,15})(?: ?(?:sts?|[sdh]{1,2}c|tr))?\s?[)\]][ .]*$/gm;

/** A list, a mapping by name, or words such as "S (M, L)"; `null`: nothing that names sizes. */
export function statedSizes(value: unknown): readonly string[] | null {
  if (Array.isArray(value)) return named(value.map((item) => String(item)));
  if (typeof value === 'string') return namesIn(value) ?? named([value]);
  if (typeof value === 'object' && value !== null) return named(Object.keys(value));
  return null;
}

function named(names: readonly string[]): readonly string[] | null {
  const clean = names.map((name) => name.trim()).filter((name) => name !== '');
  return clean.length > 0 && clean.length <= MOST ? clean : null;
}

const SIZE =
  oneOf(String.raw`
    [2-9]?X{0,3}[SL] | [1-9]X | XX?[SML] | [SML] | newborn | preemie | baby | toddler | child(?:ren)? | teen
    | youth | adult | small | medium | large | (?:extra|x)[- ](?:small|large) | one size
    | \d{1,3}(?:\.\d)?(?:\s?[-–/]\s?\d{1,3})?(?:\s?(?:months?|mos?|years?|yrs?|cm|in|"))?
  `) + String.raw`(?:\s(?:small|medium|large|adult|child))?`;
const WHOLE = new RegExp(`^${SIZE}$`, 'i');
const PAIR = `${SIZE}(?:/${SIZE})?`;
const IS_PAIR = new RegExp(`^\\s*${PAIR}[.\\s]*$`, 'i');
const LIST_SHAPE = String.raw`(${PAIR}),?\s*[([]\s*(${PAIR}(?:\s*[,;:/–-]\s*${PAIR}){0,${MOST - 2}})\s*[)\]]`;
const LIST = new RegExp(LIST_SHAPE, 'i');
const WORD_LIST = /^\W*(?:finished\s+)?siz(?:es?|ing)\b[^:\d]{0,20}[:=–-]\s*(.{1,160})/im;
/** "… in sizes child (adult)", "Sizes S (M, L)", and a line that is nothing but the list. */
const IN_LINE = new RegExp(
  String.raw`\bsizes\b(?:\s+(?:are|for|in|written|given|listed|as))*\s*[:=–-]?\s*(${LIST_SHAPE})|^\W*(?:size\s+)?(${LIST_SHAPE})\W*$`,
  'im',
);
/** "Follow sizing by order in parentheses – (small, medium, large)" */
const IN_ORDER = new RegExp(
  String.raw`\b(?:siz\w*|order|parenthes[ei]s|brackets?)\b[^()\n]{0,40}\((${PAIR}(?:\s*,\s*${PAIR}){1,${MOST - 1}})\)`,
  'i',
);
/** A line with a bracket that is short enough to be nothing but names. */
const HAS_LINE = /^[^()[\]\n]{1,60}[([][^()[\]\n]{1,300}[)\]][^\w\n]{0,40}$/m;
/** "first size; changes for larger sizes in brackets": the numbers tell how many. */
const IN_BRACKETS = new RegExp(
  String.raw`\b(?:(?:larger|other|bigger|next|second)\s+sizes?|changes)\b[^.\n]{0,60}\b(?:brackets?|parenthes[ei]s|\(\s*\))|` +
    String.raw`\b(?:counts?|numbers?|figures?)\s+(?:given\s+)?in\s+(?:the\s+)?(?:brackets|parenthes[ei]s)`,
  'i',
);

/** What every such line has in it. */
const OF_BRACKETS = needs('bracket', 'parenthes', ['size', '('], ['changes', '(']);

/** "Sizes: S (M, L, XL)", "Sizes: S, M and L", "Small (Medium, Large)". */
function listedSizes(prose: string): readonly string[] | null {
  if (!/siz|[([]/i.test(prose)) return null;
  const alternating = prose.includes('(') ? LINES_ALTERNATING.exec(prose)?.[1] : undefined;
  if (alternating) return namesIn(alternating);
  const line = /siz/i.test(prose) ? WORD_LIST.exec(prose)?.[1] : undefined;
  const named = line ? namesIn(line) : null;
  if (named) return named;
  // A list that is no line of its own stands behind the word "sizes".
  const inLine = HAS_LINE.test(prose) || /sizes/i.test(prose) ? IN_LINE.exec(prose) : null;
  if (inLine) return namesIn(inLine[1] ?? inLine[4] ?? '');
  const ordered = /siz|parenthes/i.test(prose) ? IN_ORDER.exec(prose)?.[1] : undefined;
  if (ordered) return namesIn(ordered);
  if (line) return null;
  const words = /\b(?:small|xs|newborn|preemie|baby)\s*[([][^)\]]{2,80}[)\]]/i.exec(prose)?.[0];
  return words ? namesIn(words) : null;
}

/** "XS (S) M (L) XL": every second name in a bracket of its own. */
const ALTERNATING = new RegExp(
  String.raw`^\W*(${SIZE})(?:\s*\((${SIZE})\)\s*(?:${SIZE})){1,7}(?:\s*\(${SIZE}\))?\W*$`,
  'i',
);

const LINES_ALTERNATING = new RegExp(
  String.raw`^\W*(?:sizes?\b\W*)?(${SIZE}\s*\(${SIZE}\)\s*${SIZE}(?:[ \t]*\(?${SIZE}\)?){0,12})\W*$`,
  'im',
);

function namesIn(words: string): readonly string[] | null {
  if (words.includes('(') && ALTERNATING.test(words)) return named(words.split(/[()]/));
  const list = LIST.exec(words);
  if (list && isConverted(list[1] ?? '', list[2] ?? '')) return null;
  if (list) return named([list[1] ?? '', ...others(list[2] ?? '', list[1] ?? '')]);
  // "S/M, L/XL" are two sizes of two names each, and "baby, child, adult/teen" three.
  const inPairs = words.includes(',') && words.split(',').every((name) => IS_PAIR.test(name));
  const plain = words
    .split(inPairs ? /\s*,\s*/ : /\s*(?:[,;/]|\band\b|&)\s*/)
    .map((word) => word.replace(/[.\s]+$/, ''));
  if (inPairs) return named(plain);
  return plain.length > 1 && plain.every((word) => WHOLE.test(word)) ? named(plain) : null;
}

/** "9-10 in (23-25 cm)": one measure in two units, and no two sizes. */
const isConverted = (a: string, b: string): boolean =>
  (/(?:in|")$/i.test(a) && /cm$/i.test(b)) || (/cm$/i.test(a) && /(?:in|")$/i.test(b));

/** "S/M (L/XL)" are two sizes of two names each; "S (M/L/XL)" are four. */
function others(words: string, first: string): string[] {
  if (/[,;]/.test(words)) return words.split(/\s*[,;]\s*/);
  // "6 (12-18-24) months": a dash between all of them.
  if (/^\d+(?:\s*[-–]\s*\d+){2,}$/.test(words.trim())) return words.split(/\s*[-–]\s*/);
  return first.includes('/') ? [words] : words.split(/\s*[:/]\s*/);
}

const SIZES_LINE = new RegExp(
  String.raw`^\W*(?:sizes?\b[a-z ]{0,20}\W+)?${LIST_SHAPE}(?:\s?(?:months?|mos?|years?|yrs?))?\W*$`,
  'i',
);

/** A line that is nothing but names of sizes: "XS (S, M, L)". */
export const isSizesLine = (text: string, from: number, to: number): boolean =>
  to - from <= 120 && namesSizes(text.slice(from, to));

const namesSizes = (line: string): boolean =>
  /[([]/.test(line) &&
  (SIZES_LINE.test(line) || ALTERNATING.test(line.replace(/^\W*sizes?\b\W*/i, '')));

/** "Ch 41 (45).": two sizes, where brackets are said to hold the other one. */
const CHAIN_PAIR =
  /^\W*(?:(?:row|rnd|round)\s?\d\s?[:.-]\s?)?(?:(?:with|using) [^,.]{1,24}, ?)?(?:ch|chain)\s?\d{1,3}\s?[([]\d{1,3}[)\]]/i;

/** A quick look before the careful one: few rows have lists of numbers. */
const HAS_LIST = /[([]\s?\d{1,4}\s?[,;:]\s?\d|\d-\d{1,3}-\d/;

/**
 * How many sizes the first list of numbers in an instruction has: "Ch 40 (44, 48)" 3, "20-24-24" 3.
 * A single number in brackets is a count ("inc x 6 (12)"), and so is a list behind "x 6".
 */
function sizesInNumbers(words: string): number {
  if (!HAS_LIST.test(words)) return 1;
  const found = FIRST_LIST.exec(words)?.[0] ?? CHAIN_LIST.exec(words)?.[0];
  return found ? (found.match(/\d+/g)?.length ?? 1) : 1;
}

/** "Ch (62, 66, 70).": all of them in the bracket. */
const CHAIN_LIST =
  /^\W*(?:(?:with|using) [^,.]{1,24}, ?)?(?:make (?:a )?slip ?knot,? (?:and |then )?)?(?:ch|chain|make)(?: of)?\s?[([]\s?\d{1,4}(?:\s?[,;]\s?\d{1,4}){1,15}\s?[)\]]/i;

const FIRST_LIST = new RegExp(
  [
    String.raw`(?<!(?:[x×*]|times)\s?\d{0,3})\b\d{1,4}\s?[([]\s?\d{1,4}`,
    String.raw`(?:(?:\s?[,;:]\s?\d{1,4}){1,15}|(?:-\d{1,4}){2,15})\s?[)\]]|\b\d{1,3}(?:-\d{1,3}){2,7}\b(?!\s?[)\]])`,
  ].join(''),
  'i',
);
