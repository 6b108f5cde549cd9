/**
 * Labels in the middle of a line: a whole pattern pasted as one paragraph ("Rnd 1: … Rnd 2: …"),
 * and numbers that a list dropped behind the count ("(35) 6-9. 35 sc").
 */
import { startsWithLabel } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { isDigitCode, signBehindName } from './line-shapes.ts';
import { oneOf } from './one-of.ts';
import { mayHold, type Needs, needs, type Trigrams } from './trigrams.ts';

export interface Cut {
  readonly at: number;
  /** The number of a bare label, to be held against the row before; `null`: it has its word. */
  readonly bare: number | null;
  /** A sentence that opens the work, "… Hook No. 3. Ch 30.": it counts only behind prose. */
  readonly opens: boolean;
}

interface Options {
  readonly from: number;
  readonly layout: 'written' | 'pasted';
  /** What stands in the text. */
  readonly marks: Trigrams;
}

/** A row word with a number behind it, or with an ordinal before it: see `ordinalBefore`. */
const WORD = new RegExp(
  [
    String.raw`\b(?:[Rr](?:nds?|ounds?|ows?|ds?)?|R(?:NDS?|OUNDS?|OWS?|DS?))\b`,
    String.raw`(?:\.?\s?#?\d{1,3}(?!\d))?|\b(?:[Rr](?:nds?|ounds?|ows?|ds?)?|R(?:NDS?|OUNDS?|OWS?|DS?))\d{1,3}\b`,
  ].join(''),
  'g',
);
const BARE =
  /(?:[)\]]|(?<=\d (?:sc|hdc|dc|tr|sts?))(?=[^:\n]{2,14}:))\s{1,3}(\d{1,3})(?:\s?[-–]\s?\d{1,3})?[.):]\s+(?=[A-Za-z0-9([*])/g;

/** All cuts of a text in order, found in one pass. A label at the start of its line is none. */
export function labelCuts(text: string, { from, layout, marks }: Options): Cut[] {
  const cuts: Cut[] = [];
  WORD.lastIndex = from;
  for (let found = WORD.exec(text); found; found = WORD.exec(text)) {
    const labelTo = found.index + found[0].length;
    const isNumbered = isDigitCode(text.charCodeAt(labelTo - 1));
    const at = isNumbered ? found.index : ordinalBefore(text, found.index, from);
    const before = at === null ? -1 : lastInk(text, at, from);
    if (at !== null && before >= 0 && isCut(text, { from: at, to: labelTo }, before)) {
      cuts.push({ at: titleBefore(text, at, from), bare: null, opens: false });
    } else if (
      isNumbered &&
      before >= 0 &&
      opensUnmarked(text, { from: found.index, to: labelTo }, before)
    ) {
      cuts.push({ at: found.index, bare: Number(/\d+$/.exec(found[0])?.[0]), opens: false });
    }
  }
  if (layout === 'written') return cuts;
  if (mayHold(marks, OF_FOUNDATION)) foundations(text, from, cuts);
  for (const [need, shape] of SHAPES) {
    if (!mayHold(marks, need)) continue;
    shape.lastIndex = from;
    for (let found = shape.exec(text); found; found = shape.exec(text)) {
      const at = found.index + found[0].search(/\p{L}/u);
      const named = shape === NAMED || shape === NAMED_ROW;
      const listed = named && LIST_NAME.test(text.slice(Math.max(from, at - 60), at));
      if (!listed && lastInk(text, at, from) >= 0) cuts.push({ at, bare: null, opens: false });
    }
  }
  if (!mayHold(marks, OF_BARE)) return cuts.sort((a, b) => a.at - b.at);
  BARE.lastIndex = from;
  for (let found = BARE.exec(text); found; found = BARE.exec(text)) {
    const at = found.index + found[0].search(/\d/);
    // "Chain (ch) 3. 2 dc …": a bracket without a number is no count, and ends no row.
    const counted =
      text.charCodeAt(found.index) <= 32 ||
      /\d[^()[\]\n]*$/.test(text.slice(Math.max(from, found.index - 30), found.index));
    if (counted && lastInk(text, at, from) >= 0)
      cuts.push({ at, bare: Number(found[1]), opens: false });
  }
  return cuts.sort((a, b) => a.at - b.at);
}

/** A piece's name in front of its first row, run on behind other work: "… in top of ch 3. Upper Back Row 1: …". */
const TITLE =
  /[.)\]]\s{1,3}((?!(?:next|last|first|foundation|set|dec|inc|edging|border|pattern|stitch|special|repeat|rep|work|turn|join|with|then|for|note|right side|wrong side|rs|ws)\b)(?:\p{Lu}[\p{L}'-]{2,14} ){1,3})$/iu;

function titleBefore(text: string, at: number, from: number): number {
  if (!FIRST_ROW.test(text.slice(at, at + 9))) return at;
  const before = text.slice(Math.max(from, at - 60), at);
  const title = TITLE.exec(before)?.[1];
  const isName = title?.split(' ').every((word) => word === '' || /^\p{Lu}/u.test(word));
  return title && isName ? at - title.length : at;
}

const FIRST_ROW = /^(?:row|rnd|round) 1\b/i;

/** Where the first row's label begins behind its piece's name, in the middle of a line; `from` else. */
export function behindTitle(text: string, from: number): number {
  if (lastInk(text, from, Math.max(0, from - 8)) < 0) return from;
  const label = /\b(?:row|rnd|round) 1\b/i.exec(text.slice(from, from + 60));
  if (!label || label.index === 0) return from;
  const at = from + label.index;
  return titleBefore(text, at, Math.max(0, from - 8)) === from ? at : from;
}

/** "Ch 20. Foundation Row (RS): …", "(24 sts) Next Row: …", "… ending with row 2. Last row - ch 1" */
const NAMED_ROW =
  /[.)\]!]\s{1,3}(?:Foundation|Set-?[Uu]p|N(?:ext|EXT)|First|L(?:ast|AST)|Joining|(?:In|De)c(?:rease)?) (?:(?:\d{1,2} )?(?:[Rr](?:ow|nd|ound)s?|R(?:OW|ND|OUND)S?))(?: \([^)]{1,20}\))?(?::| [–-] )/g;

const FOUNDATION = new RegExp(
  [
    String.raw`[.!…](?:\s{1,3}|(?=C))(?:(?:[Mm]ake|[Ww]ork|[Bb]egin with|[Ss]tart with|[Cc]ommence with) `,
    String.raw`(?:an? )?)?[Cc](?:h|hain|H|HAIN)\b\.?(?: of)? \d{1,3}(?: (?:st(?:itche)?s|loosely))?\s*(?:\.|,? join|\()`,
    // "Begin at the tip. Work 5 ch and form a ring with 1 sl st in first ch."
    String.raw`|[.!]\s{1,3}(?:[Mm]ake|[Ww]ork) \d{1,2} ch\b[^.\n]{0,40}(?:\d\.\d[^.\n]{0,60})?\bring\b`,
  ].join(''),
  'g',
);

/** A section run on behind the work: "… fasten off. ABBREVIATIONS: ch = chain". */
const LISTS = /[.)]\s{1,3}(?:abbreviations?|materials|tension|gauge)(?: used)?:/gi;

/** Stitches told in a run-on pattern: "… stated. SPECIAL STITCH Shell: 5 dc in indicated st. BACK Row 1: …". */
const SPECIALS =
  /[.)]\s{1,3}SPECIAL STITCH(?:ES)?:?\s(?=\p{Lu}\p{L}+(?: \p{L}+){0,2}(?: \([^)]{1,16}\))?: )/gu;

/** A small piece run on behind the work: "(30). Stalk: ch 5, sc in 2nd ch …". */
const NAMED =
  /[.)]\s{1,3}(?!R(?:ow|nd|ound)s?:)\p{Lu}[\p{L}]{2,14}(?: \p{L}{2,14})?(?: \([Mm]ake (?:\d|two)\))?: (?=[Cc]h(?:ain)? \d)/gu;

/** "… 3rd ch from hook. BLANKET Ch 110. Row 1: …": the piece, named in capitals. */
const CAPITALS =
  /[.)]\s{1,3}(?!(?:BLO|FLO|RND|ROW|DNT)\b)\p{Lu}{3,}(?: \p{Lu}{2,}){0,2} (?=(?:With [\p{L}\d ]{3,20}, )?[Cc]h(?:ain)? \d)/gu;

/** The next part of a run-on pattern: "… Do not finish off. Handle: Sl st in next 5 sc". */
const PART = oneOf(`
  Handles? | Straps? | Body | Sides? | Brim | Crown | Cuff | Edging | Border | Trim | Flap | Lid
  | Base | Bottom | Top | Ties? | Ears? | Arms? | Legs? | Head | Tail | Sole | Heel | Toe | Thumb
  | Leaf | Leaves | Stem | Petals? | Button | (?:Hanging )?[Ll]oop | Finish(?:ing)? | Belt | Collar | Pockets? | Neckband
  | Sleeves? | Fringe | Ruffle | Hood
`);
/** Written with a capital, or all in capitals. */
const CAPITALS_OF_PART = PART.replace(/[a-z]+/g, (word) => word.toUpperCase());
const PART_NAME = `(?:${PART}|${CAPITALS_OF_PART})`;
const PARTS = new RegExp(String.raw`[.)!]\s{1,3}${PART_NAME}:\s(?=\S)`, 'g');
const PART_LEAD = new RegExp(
  String.raw`^(?:${PART_NAME}|Shape (?:the )?\p{L}+(?: \p{L}+){0,2}):\s`,
  'u',
);

/** Words behind the end of a sentence or a bracket, in one line with it. */
const behind = (signs: string, ...words: readonly string[]): Needs =>
  needs(...[...signs].flatMap((sign) => words.map((word) => `${sign} ${word}`)));

const OF_FOUNDATION: Needs = [
  ...behind('.!…', 'ch', 'make', 'work', 'begin', 'start', 'commence'),
  ...needs('.ch', '!ch', '…ch'),
];
const OF_BARE: Needs = [...behind(')]', '1'), ...needs('sc 1', 'dc 1', 'tr 1', 'st 1', 'sts 1')];

/** Each shape with what a text must have for it. */
const SHAPES: readonly (readonly [Needs, RegExp])[] = [
  [
    behind('.)]!', 'foundation', 'set', 'next', 'first', 'last', 'joining', 'inc', 'dec'),
    NAMED_ROW,
  ],
  [behind('.)', 'abbr', 'materials', 'tension', 'gauge'), LISTS],
  [behind('.)', 'special'), SPECIALS],
  [needs(': ch'), NAMED],
  [needs(' ch 1', ' chain 1'), CAPITALS],
  [needs(':'), PARTS],
];

/** Whether a part of a run-on pattern begins here, in the middle of its line. */
export const opensPart = (text: string, from: number): boolean =>
  lastInk(text, from, Math.max(0, from - 8)) >= 0 && namesPart(text, from);

/** Whether a line begins with a part's name and its sign: "Handle: Sl st in next 5 sc, …". */
export function namesPart(text: string, from: number): boolean {
  const sign = signBehindName(text, from, Math.min(text.length, from + 36));
  return (sign === COLON || sign > 127) && PART_LEAD.test(text.slice(from, from + 36));
}

const COLON = 58;

/** "2. Increase Round: ch 2 …", "3. (dc, sc) Round: ch 2 …": the list's number is the row's. */
const LIST_NAME = /(?:^|[\r\n])[ \t]*\d{1,3}[.)] +(?:\([^()\n]{1,50}\) )?$/;

/** "2. Ch 12, join": the number of the step belongs to the chain. */
const isBehindNumber = (text: string, at: number): boolean =>
  /(?:^|[\r\n])\s*\d{1,3}[.)]\s*$/.test(text.slice(Math.max(0, at - 12), at));

function foundations(text: string, from: number, cuts: Cut[]): void {
  FOUNDATION.lastIndex = from;
  for (let found = FOUNDATION.exec(text); found; found = FOUNDATION.exec(text)) {
    const at = found.index + found[0].search(/[a-z]/i);
    if (lastInk(text, at, from) >= 0 && !isBehindNumber(text, at))
      cuts.push({ at, bare: null, opens: true });
    FOUNDATION.lastIndex = found.index + 1;
  }
}

const ORDINALS = /(?:\b\d{1,3}(?:st|nd|rd|d|th)(?:\s?(?:,|and|to|&|-|–)\s?|\s{1,2}))+$/i;

/** Where "3rd and 4th" before "rnds" begins. */
function ordinalBefore(text: string, at: number, from: number): number | null {
  const code = text.charCodeAt(at - (text.charCodeAt(at - 2) === 32 ? 3 : 2));
  // Most words "row" have no ordinal before them: "3rd row" has its letter two signs back.
  if (at < 3 || !((code | 32) >= 97 && (code | 32) <= 122)) return null;
  const start = Math.max(from, at - 60);
  const found = ORDINALS.exec(text.slice(start, at));
  return found ? start + found.index : null;
}

/** Offset of the last sign before `at` in the same line, or −1. */
function lastInk(text: string, at: number, from: number): number {
  for (let i = at - 1; i >= from; i--) {
    const code = text.charCodeAt(i);
    if (code === 10 || code === 13) return -1;
    if (code > 32 && code !== 0xa0) return i;
  }
  return -1;
}

/** What may stand between the first number of a label and its end. */
const LABEL_END = new RegExp(
  [
    String.raw`^(?:[\s,&–—-]*(?:r?\d{1,3}(?:st|nd|rd|th)?|to|and|incl(?:usive)?|rnds?|rounds?|rows?|rds?|rs|ws)\b)*`,
    String.raw`\s*(?:[([][^)\]]{0,70}[)\]]\s*)?([:.)=|–—])`,
  ].join(''),
  'i',
);
/** "Row 2- 1 dc in next st", "Row 3 - Ch 3, …": a dash with its work behind. */
const DASHED =
  /^\s?(-)\s+(?:\d{1,3} ?(?:ch|sc|hdc|dc|tr|htr|dtr)\b|(?:ch|chain|sc|hdc|dc|tr|htr|sl st|skip|sk|work|rep|repeat|turn)\b|[*([])/i;
/** Only an abbreviation has a stop: "in next. 3rd row: …" begins a row. */
const REFERS = new RegExp(
  String.raw`\b(?:(?:rep|rpt|foll)\.|${oneOf(`
    rep | repeat | rpt | as | of | work | like | from | to | in | and | or | last | next | per
    | until | end | with | see | for | on | after | before | through | follow | between | at
  `)})(?: the)?$`,
  'i',
);

/** "(28) Rnd 4:" is a label; "rep Rnd 4:" refers to one, and so does "(Rnd 4)". */
function isCut(text: string, { from: at, to }: Span, before: number): boolean {
  const words = text.slice(to, to + 100);
  const tail = LABEL_END.exec(words) ?? DASHED.exec(words);
  // "Kelp hexagon, round 3" under its photograph, and below a blank line "Rnd 3:".
  if (!tail || (tail[0].includes('\n') && /\n\s*\n/.test(tail[0]))) return false;
  const sign = text[before] ?? '';
  if (/[ceg]/i.test(sign) && SHAPING.test(text.slice(Math.max(0, at - 14), at))) return false;
  if (sign === 'S' && SIDE.test(text.slice(Math.max(0, at - 8), at))) return false;
  // "(the loop left in rnd 5). Pull it …": the bracket ends there.
  if (tail[1] === ')' && isInBracket(text, at)) return false;
  if (/[:.]/.test(tail[1] ?? '') && DASHES.includes(sign) && isTitled(text, at)) {
    return startsWithLabel(text, at, lineEndFrom(text, at));
  }
  // "Ch 1, turn. - Row 2: …": the point of a list whose lines ran together.
  const listed =
    DASHES.includes(sign) && /[.)!]\s+[-–—]\s*$/.test(text.slice(Math.max(0, at - 8), at));
  if (listed && tail[1] === ':') return startsWithLabel(text, at, lineEndFrom(text, at));
  if (sign === ',' && tail[1] === ':' && IN_COLOUR.test(text.slice(Math.max(0, at - 40), at)))
    return startsWithLabel(text, at, lineEndFrom(text, at));
  if ('(,-–&/="“\''.includes(sign)) return false;
  if (REFERS.test(text.slice(Math.max(0, before - 14), before + 1))) return false;
  if (!'.)]}!;:*'.includes(sign) && tail[1] !== ':') return false;
  return startsWithLabel(text, at, lineEndFrom(text, at));
}

/** "Dec row 1:" at the start of its line: the label is of three words. */
const SHAPING = /(?:^|[\r\n])[ \t]*(?:in|de)c(?:reas(?:e|ing))?\.?[ \t]+$/i;

/** "RS Round 1:" at the start of its line: the side belongs to the label. */
const SIDE = /(?:^|[\r\n])[ \t]*[RW]S[ \t]+$/;

/** "(15) With brown, R4: sc in each st": the colour stands before the label. */
const IN_COLOUR = /[.)\]]\s{1,3}(?:with|in|using) [a-z ]{2,24},\s*$/i;

/** A bracket opened in the same line is not closed before `at`. */
function isInBracket(text: string, at: number): boolean {
  for (let i = at - 1; i >= Math.max(0, at - 120); i--) {
    const sign = text[i];
    if (sign === ')' || sign === '\n') return false;
    if (sign === '(') return true;
  }
  return false;
}

/** Work right behind the number and its side, "Row 2 (WS) ch2, 1htr in …", with no sign between. */
const UNMARKED = new RegExp(
  [
    String.raw`^(?:[-–](?:R|Rnd |Row )?\d{1,3})?(?: ?[-–—])? (?:[([](?:RS|WS)[)\]],? )?`,
    String.raw`(?:\d?ch ?\d|turn,|ch\d|\d+ ?(?:ch|sc|dc|tr|htr|hdc)\b`,
    String.raw`|(?:rep|repeat) (?:rnd|round|row)s? \d|make an? (?:magic|adjustable) (?:ring|loop|circle)\b|(?:sc|dc|hdc|htr|tr|sl st) (?:in|around|across)\b|(?:inc|dec) (?:x ?\d|around|in\b)`,
    String.raw`|[([*]\d+ ?(?:sc|dc|hdc|htr|tr), `,
    // "R3 (sc, inc) x 6", "R4-8 sc 18 (18)", "R2 inc x4"
    String.raw`|[([](?:sc|dc|hdc|htr|tr|inc|dec), ?[a-z0-9 ]{2,16}[)\]] ?[x*×]|(?:sc|dc|hdc|htr|tr) \d{1,3} [([]\d)`,
  ].join(''),
  'i',
);

function opensUnmarked(text: string, { from, to }: Span, before: number): boolean {
  const counted = text[before] === ',' && /[)\]]$/.test(text.slice(before - 1, before));
  if ((!counted && '(,-–&/"“\''.includes(text[before] ?? '')) || !/[A-Z]/.test(text[from] ?? ''))
    return false;
  if (REFERS.test(text.slice(Math.max(0, before - 14), before + 1))) return false;
  if (SHAPING.test(text.slice(Math.max(0, from - 14), from))) return false;
  return UNMARKED.test(text.slice(to, to + 32));
}

const DASHES = '-–—';

/** "Brim - rnd 6: …": the part's name before the label, with nothing else in its line. */
const isTitled = (text: string, at: number): boolean =>
  /(?:^|[\r\n])[ \t]*\p{Lu}[\p{L}' ]{2,24}(?: \([^()\n]{2,12}\))? [-–—]\s*$/u.test(
    text.slice(Math.max(0, at - 40), at),
  );

/** End of the line, looked for no farther than a label can reach. */
function lineEndFrom(text: string, from: number): number {
  const far = Math.min(text.length, from + 80);
  for (let at = from; at < far; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || code === 13) return at;
  }
  return far;
}
