/** Which terms the pattern is read in, and the words that speak for the other ones. */
import {
  type CueWords,
  gatherCues,
  noCueWords,
  statedTerms,
  type Terms,
} from '../notation/index.ts';
import { type Span, shift } from '../source/index.ts';
import type { Block } from './block.ts';
import type { StatedTerms } from './head.ts';
import type { Manuscript } from './manuscript.ts';

/** Cues while they are being gathered, block by block, in the order of the text. */
export interface Cues extends CueWords {
  stated: StatedTerms;
}

export const noCues = (): Cues => {
  const { us, uk, weakUk } = noCueWords();
  return { us, uk, weakUk, stated: null };
};

/**
 * Adds the cues of a block, absolute; what readers comment is left out. Cheapest right after the
 * block was read, while its tokens are at hand.
 */
export function addCues(all: Cues, text: string, block: Block): void {
  if (block.kind === 'chart' || block.kind === 'copies') return;
  if (block.kind !== 'instruction' && block.section === 'comments') return;
  if (!all.stated) {
    const stated = statedTerms(text, block.from, block.to);
    if (stated) all.stated = { terms: stated.terms, span: shift(stated.span, block.from) };
  }
  // A list of abbreviations may give both names of a stitch; it is no use of either.
  if (block.kind !== 'instruction' && block.section === 'abbreviations') return;
  gatherCues(text, block, all);
}

/** "Sc" and "htr" against "miss" and "tension" (common practice). */
const STRONG_WEIGHT = 3;

export function termsOf(
  text: string,
  cues: Cues,
  stated: Terms | null,
  option: Terms | 'auto',
): Manuscript['terms'] {
  if (option !== 'auto') return decided(text, cues, option, 'option');
  if (stated) return decided(text, cues, stated, 'stated');
  const us = STRONG_WEIGHT * cues.us.length;
  const uk = STRONG_WEIGHT * cues.uk.length + cues.weakUk.length;
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
  against: untranslated(text, terms === 'US' ? cues.uk : cues.us),
});

/** Pairs of offsets as spans, without the words that stand beside their other name. */
function untranslated(text: string, offsets: readonly number[]): Span[] {
  const spans: Span[] = [];
  for (let i = 0; i < offsets.length; i += 2) {
    const from = offsets[i]!;
    const to = offsets[i + 1]!;
    if (!isTranslation(text, from, to)) spans.push({ from, to });
  }
  return spans;
}

/** The word that tells most: the first strong one, or else the first of all. */
export const tellingCue = (cues: Cues, terms: Terms): Span | null => {
  const [from, to] = terms === 'US' ? cues.us : cues.uk.length > 0 ? cues.uk : cues.weakUk;
  return from === undefined || to === undefined ? null : { from, to };
};

/** "1 dc (US sc)", "2tr/dc": the other name is given beside the first, and mixes nothing. */
function isTranslation(text: string, from: number, to: number): boolean {
  const before = text.slice(Math.max(0, from - 12), from);
  if (!/[/([]/.test(before) && text[to] !== '/' && text[to + 1] !== '/') return false;
  if (/[a-z]\/\s?$/i.test(before) || /^\s?\/[a-z]/i.test(text.slice(to, to + 3))) return true;
  return /[([]\s*(?:(?:us|uk|american|british)\W{1,2})?(?:terms\W{1,2})?(?:\d{1,3}\s?)?$/i.test(
    before,
  )
    ? /^(?:\s+in\s+(?:us|uk))?\s*[)\]]/i.test(text.slice(to, to + 12))
    : false;
}
