/** Which terms the pattern is read in, and the words that speak for the other ones. */
import { type Terms, termCues } from '../notation/index.ts';
import { type Span, shift } from '../source/index.ts';
import type { Block } from './block.ts';
import type { StatedTerms } from './head.ts';
import type { Manuscript } from './manuscript.ts';

export interface Cues {
  readonly us: readonly Span[];
  readonly uk: readonly Span[];
  readonly stated: StatedTerms;
}

/** Cues while they are being gathered, block by block, in the order of the text. */
export interface CueDraft {
  readonly us: Span[];
  readonly uk: Span[];
  stated: StatedTerms;
}

export const noCues = (): CueDraft => ({ us: [], uk: [], stated: null });

/**
 * Adds the cues of a block, absolute; what readers comment is left out. Cheapest right after the
 * block was read, while its tokens are at hand.
 */
export function addCues(all: CueDraft, text: string, block: Block): void {
  if (block.kind === 'chart' || block.kind === 'copies') return;
  if (block.kind !== 'instruction' && block.section === 'comments') return;
  const cues = termCues(text, block.from, block.to);
  if (cues.stated && !all.stated) {
    all.stated = { terms: cues.stated.terms, span: shift(cues.stated.span, block.from) };
  }
  // A list of abbreviations may give both names of a stitch; it is no use of either.
  if (block.kind !== 'instruction' && block.section === 'abbreviations') return;
  for (const span of cues.us) all.us.push(shift(span, block.from));
  for (const span of cues.uk) all.uk.push(shift(span, block.from));
}

/** "Miss" and "tension" speak weakly, "sc" and "htr" strongly (common practice). */
const WEAK = /(?:miss|tension|y\.?r\.?h|y\.?o\.?h|skip|gauge)/iy;
const STRONG_WEIGHT = 3;

export function termsOf(
  text: string,
  cues: Cues,
  stated: Terms | null,
  option: Terms | 'auto',
): Manuscript['terms'] {
  if (option !== 'auto') return decided(text, cues, option, 'option');
  if (stated) return decided(text, cues, stated, 'stated');
  const us = weightOf(text, cues.us);
  const uk = weightOf(text, cues.uk);
  if (us === 0 && uk === 0) return decided(text, cues, 'US', 'custom');
  return decided(text, cues, uk > us ? 'UK' : 'US', 'words');
}

const decided = (
  text: string,
  cues: Cues,
  terms: Terms,
  because: Manuscript['terms']['because'],
): Manuscript['terms'] => ({
  terms,
  because,
  against: (terms === 'US' ? cues.uk : cues.us).filter(
    (span) => isStrong(text, span) && !isTranslation(text, span),
  ),
});

/** The word that tells most: the first strong one, or else the first of all. */
export const tellingCue = (text: string, cues: Cues, terms: Terms): Span | null => {
  const spans = terms === 'US' ? cues.us : cues.uk;
  return spans.find((span) => isStrong(text, span)) ?? spans[0] ?? null;
};

/** A pattern has a cue in every second clause: they are looked at where they stand, uncut. */
function isStrong(text: string, { from }: Span): boolean {
  WEAK.lastIndex = from;
  return !WEAK.test(text);
}

const weightOf = (text: string, spans: readonly Span[]): number =>
  spans.reduce((sum, span) => sum + (isStrong(text, span) ? STRONG_WEIGHT : 1), 0);

/** "1 dc (US sc)", "2tr/dc": the other name is given beside the first, and mixes nothing. */
function isTranslation(text: string, { from, to }: Span): boolean {
  const before = text.slice(Math.max(0, from - 12), from);
  if (/[a-z]\/\s?$/i.test(before) || /^\s?\/[a-z]/i.test(text.slice(to, to + 3))) return true;
  return /[([]\s*(?:(?:us|uk|american|british)\W{1,2})?(?:terms\W{1,2})?(?:\d{1,3}\s?)?$/i.test(
    before,
  )
    ? /^(?:\s+in\s+(?:us|uk))?\s*[)\]]/i.test(text.slice(to, to + 12))
    : false;
}
