/**
 * A gauge as people write it: "16 sts x 18 rnds = 10 cm", "16 sts and 18 rows = 4 in in sc",
 * "12 hdc = 4", 8 rows = 3½ in", "Rnds 1-3 = 8 cm across". Counted over any length.
 */
import type { Terms } from '../notation/index.ts';
import { length, NUMBER_SOURCE, numberOf } from '../units/index.ts';
import { fabricNamed, stitchNamesSource } from './fabric-name.ts';
import type { Blocking, GaugeCount, GaugeUnit } from './gauge.ts';

/** No gauge line is longer; the rest of a page pasted in one line is not looked at. */
const LONGEST = 400;

type Token =
  | { readonly kind: 'across'; readonly n: number; readonly unit: GaugeUnit }
  | {
      readonly kind: 'up';
      readonly n: number;
      readonly worked: 'rounds' | 'rows';
      readonly isWhole: boolean;
    }
  | { readonly kind: 'length'; readonly widthMm: number; readonly heightMm: number | null };

const UNIT = `(mm|cms?|centimet(?:re|er)s?|inch(?:es)?|ins?\\b|"|″|”|'')`;
const N = `(${NUMBER_SOURCE})`;
const RANGE = `${N}(?:\\s{0,2}(?:[–-]|to)\\s{0,2}${N})?`;
const BOXES =
  '(?:(?:open|filled|mesh|solid)\\s)?(?:box(?:es)?|squares?|mesh(?:es)?|blocks?|sps?\\b|spaces?)';
const REPEATS = '(?:(?:pattern|pat|stitch)\\s)?(?:rep(?:eat)?s?|ripples?|shells?|clusters?|waves?)';

const scanners: Readonly<Record<Terms, RegExp>> = { US: scannerOf('US'), UK: scannerOf('UK') };

function scannerOf(terms: Terms): RegExp {
  const stitches = `(?:(?:${stitchNamesSource(terms)})\\s?)?(?:sts?\\b|stitch(?:es)?)|(?:${stitchNamesSource(terms)})s?\\b`;
  const forms = [
    `(?<rows>rows?|rnds?|rounds?)\\s{0,2}${N}\\s{0,2}(?:[–-]|to)\\s{0,2}${N}`,
    `${RANGE}\\s{0,2}(?<box>${BOXES})`,
    `${RANGE}\\s{0,2}(?<repeat>${REPEATS})`,
    `${RANGE}\\s{0,2}(?<up>rows?|rnds?|rounds?)`,
    `${RANGE}\\s{0,2}(?<stitch>${stitches})`,
    `${N}\\s{0,2}-?\\s?(?<wide>${UNIT})?\\s{0,2}(?:x|×|by)\\s{0,2}${N}\\s{0,2}-?\\s?(?<high>${UNIT})`,
    `${N}\\s{0,2}-?\\s?(?<alone>${UNIT})`,
  ];
  return new RegExp(forms.map((form) => `(?<![\\w.,/])${form}`).join('|'), 'giu');
}

/** Reads a gauge; `null` where the words hold no count over a length. Never throws. */
export function gaugeFromWords(text: string, terms: Terms = 'US'): GaugeCount | null {
  const words = text.slice(0, LONGEST);
  const said = words.replace(SWATCH_SIZE, (all) => ' '.repeat(all.length));
  const tokens = [...said.matchAll(scanners[terms])].flatMap((found) => tokenOf(found, said));
  const sides = sidesOf(tokens, /\b(?:across|diameter|diam)\b/i.test(said));
  if (!sides) return null;
  return {
    ...sides,
    fabric: fabricIn(said, terms),
    blocking: blockingIn(said),
    swatch: swatchIn(words),
    words: words.replace(LEAD, '').trim(),
  };
}

/** "**Gauge:** " before a count says nothing more. */
const LEAD = /^[\s>*•#_-]{0,8}(?:gauge|tension)[\s:*_–-]{1,6}/i;

function tokenOf(found: RegExpMatchArray, text: string): Token[] {
  const groups = found.groups ?? {};
  const numbers = found
    .slice(1)
    .flatMap((part) => (part && NUMBER.test(part) ? [numberOf(part) ?? 0] : []));
  const [first = 0, second] = numbers;
  if (groups.rows) {
    const worked = workedAs(groups.rows);
    return [{ kind: 'up', n: (second ?? first) - first + 1, worked, isWhole: true }];
  }
  if (groups.high) {
    const [wide, high] = [groups.wide ?? groups.high, groups.high];
    return [{ kind: 'length', widthMm: mm(first, wide), heightMm: mm(second ?? first, high) }];
  }
  if (groups.alone) {
    const widthMm = mm(first, groups.alone);
    return isHook(text, found, widthMm) ? [] : [{ kind: 'length', widthMm, heightMm: null }];
  }
  const n = second === undefined ? first : (first + second) / 2;
  if (groups.up) return [{ kind: 'up', n, worked: workedAs(groups.up), isWhole: false }];
  return [{ kind: 'across', n, unit: groups.box ? 'box' : groups.repeat ? 'repeat' : 'stitch' }];
}

const NUMBER = new RegExp(`^(?:${NUMBER_SOURCE})$`);
const workedAs = (word: string): 'rounds' | 'rows' => (/^row/i.test(word) ? 'rows' : 'rounds');

function mm(n: number, unit: string): number {
  const lower = unit.toLowerCase();
  if (lower === 'mm') return n;
  return length(n, lower.startsWith('c') ? 'cm' : 'in');
}

/** "with a 4 mm hook" is no length of fabric. */
function isHook(text: string, found: RegExpMatchArray, widthMm: number): boolean {
  const end = (found.index ?? 0) + found[0].length;
  return widthMm <= 20 && /^[\s)\]]{0,3}(?:\w+\s)?hook/i.test(text.slice(end, end + 20));
}

type Sides = Pick<GaugeCount, 'across' | 'up'>;

/** Gives each count the length that follows it, or the one that leads. */
function sidesOf(tokens: readonly Token[], isMotif: boolean): Sides | null {
  const lengths = tokens.filter((token) => token.kind === 'length');
  if (lengths.length === 0) return null;
  const lengthFor = (at: number) => {
    const after = tokens.slice(at).find((token) => token.kind === 'length');
    return after ?? lengths.at(-1);
  };
  let across: GaugeCount['across'] = null;
  let up: GaugeCount['up'] = null;
  tokens.forEach((token, at) => {
    const over = lengthFor(at);
    if (!over || token.kind === 'length' || token.n <= 0 || over.widthMm <= 0) return;
    if (token.kind === 'across') across ??= { n: token.n, unit: token.unit, mm: over.widthMm };
    else {
      const high = over.heightMm ?? over.widthMm;
      // Rounds of a motif make its radius, not its whole width.
      up ??= {
        n: token.n,
        worked: token.worked,
        mm: isMotif ? high / 2 : high,
        ...(token.isWhole && { isWhole: true }),
      };
    }
  });
  return across || up ? { across, up } : null;
}

/** "in sc", "over hdc ripple", "16 dc": the words that name the fabric. */
function fabricIn(words: string, terms: Terms): string | null {
  const after = /\b(?:in|of|over|using|working)\s+((?:[a-z]+[ -]?){1,6})/gi;
  for (const [, name = ''] of words.matchAll(after)) {
    const { stem, isMesh } = fabricNamed(name, terms);
    if (stem || isMesh)
      return name
        .replace(/^(?:in|of|over|the)\s/i, '')
        .replace(/\b(?:with|on|using|hook|and|is)\b.*$/i, '')
        .trim();
  }
  if (IN_PATTERN.test(words)) return 'pattern';
  const counted = new RegExp(`\\d\\s?(${stitchNamesSource(terms)})s?\\b`, 'i').exec(words)?.[1];
  if (counted) return counted.toLowerCase();
  return /\d\s?(?:open |filled )?(?:box(?:es)?|mesh(?:es)?)\b/i.test(words) ? 'mesh' : null;
}

const IN_PATTERN = /\b(?:in|over) (?:the )?(?:stitch )?pat(?:t(?:ern)?)?(?: st(?:itch)?)?\b/i;

function blockingIn(words: string): Blocking {
  if (/\b(?:un-?blocked|(?:before|not|without) (?:blocking|blocked|washing))\b/i.test(words)) {
    return 'before';
  }
  return /\b(?:blocked|washed|after (?:blocking|washing)|steamed)\b/i.test(words)
    ? 'after'
    : 'unsaid';
}

const SWATCH_SIZE = new RegExp(
  `swatch(?:\\s(?:of|is|at least|about|:)){0,2}\\s{0,2}${N}\\s{0,2}${UNIT}?(?:\\s{0,2}(?:x|×|by)\\s{0,2}${N}\\s{0,2}${UNIT})?`,
  'iu',
);

/** "swatch 12 x 12 cm": how large the counted piece is. */
function swatchIn(words: string): GaugeCount['swatch'] {
  const found = SWATCH_SIZE.exec(words);
  const unit = found?.[4] ?? found?.[2];
  if (!found || !unit) return null;
  const widthMm = mm(numberOf(found[1] ?? '') ?? 0, found[2] ?? unit);
  const heightMm = found[3] ? mm(numberOf(found[3]) ?? 0, unit) : widthMm;
  return widthMm > 0 && heightMm > 0 ? { widthMm, heightMm } : null;
}
