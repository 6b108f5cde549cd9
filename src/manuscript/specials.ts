/** The stitches that the manuscript defines, and the spellings under which rows may use them. */
import {
  readSpecial,
  readSpecialAgain,
  type SpecialStitch,
  type Vocabulary,
  withNearNames,
} from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Block } from './block.ts';
import type { FrontMatter } from './front-matter.ts';

/**
 * In the order of the file. Each is read twice, the second time knowing the names of the others:
 * one stitch may be made of another that is defined below it.
 */
export function specialsOf(
  text: string,
  front: FrontMatter,
  blocks: readonly Block[],
  known: Vocabulary,
): readonly SpecialStitch[] {
  const places: { readonly span: Span; readonly isListed: boolean }[] = [
    ...frontMatterPlaces(front).map((span) => ({ span, isListed: false })),
    ...blocks.flatMap((block) =>
      block.kind === 'definition'
        ? [{ span: block, isListed: block.section === 'abbreviations' }]
        : [],
    ),
  ];
  const first = places.flatMap(({ span, isListed }) => {
    if (isListed && !isGroup(text, span)) return [];
    const special = readSpecial(text, span.from, span.to, known);
    return special ? [{ span, special }] : [];
  });
  if (first.length < 2) return first.map(({ span, special }) => placed(special, span));
  const words = withSpecials(
    known,
    first.map(({ special }) => special),
  );
  return first.map(({ span, special }) => {
    const again = readSpecialAgain(special, text, span, words);
    const use =
      again && again !== special && again.key === special.key && !names(again.steps, special.key);
    return placed(use ? again : special, span);
  });
}

/** Whether a stitch of this key stands in a value: a "3-dc cluster" is not made of itself. */
function names(value: unknown, key: string): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if (Array.isArray(value)) return value.some((item) => names(item, key));
  return Object.entries(value).some(([name, item]) =>
    name === 'special' || name === 'word' ? item === key : names(item, key),
  );
}

/** The same vocabulary with these special stitches. */
export const withSpecials = (
  { sizes, charts, yarns }: Vocabulary,
  specials: readonly SpecialStitch[],
): Vocabulary => ({ specials: spellingsOf(specials), sizes, charts, yarns });

/** Lower-case spellings to keys. Of two stitches that share a spelling, the later one has it. */
export function spellingsOf(specials: readonly SpecialStitch[]): ReadonlyMap<string, string> {
  const spellings = new Map<string, string>();
  for (const { key, aliases } of specials) {
    spellings.set(key, key);
    for (const alias of aliases) spellings.set(alias.toLowerCase(), key);
  }
  return withNearNames(spellings);
}

// Written out: a copy by "..." whose members are set anew is many times as slow.
const placed = (special: SpecialStitch, { from: at }: Span): SpecialStitch => {
  const { key, name, aliases, steps, opaque, inline, from, to } = special;
  return { key, name, aliases, steps, opaque, inline, from: from + at, to: to + at };
};

/** `stitches: { Shell: 5 dc in same st }`: an entry reads as a definition line does. */
function frontMatterPlaces(front: FrontMatter): readonly Span[] {
  const keys = ['stitches', 'specials', 'special stitches'];
  return keys.flatMap((key) => front.entries.get(key)?.members ?? []);
}

/** A list of abbreviations explains words; only "Shell (sh): 5 dc in same st" makes a stitch. */
function isGroup(text: string, { from, to }: Span): boolean {
  const words = text.slice(from, Math.min(to, from + 300));
  const behind = words.slice(words.search(/[:=–—]|\s-\s/) + 1);
  return (
    /^\s*[hdst]{1,2}[cr] ?[2-9] ?tog\b/i.test(behind) ||
    (/\d|\b(?:in|into)\s+(?:the\s+)?(?:same|next|one)\b|\bthrough both\b/i.test(behind) &&
      /\S\s+\S+\s+\S/.test(behind))
  );
}
