/**
 * What every writer of a construct is handed: the terms, the sizes, the designer's own words for
 * what is carried verbatim, and the way back to the list writer (a bracket holds steps again).
 */
import type { Span } from '../../source/index.ts';
import { stemOf, wordFor } from '../stems.ts';
import type { StemWord, Step, Terms } from '../tree.ts';

export interface WriteOptions {
  /** Terms in which the tree's stitch words are meant. */
  readonly from: Terms;
  /** Terms in which to write. */
  readonly to: Terms;
  /** How many sizes the pattern has, 1 if it has but one. */
  readonly sizes: number;
  /**
   * The designer's words for a span of the tree. Remarks, unread words and steps that are named but
   * not worked are carried over with it; without it they are left out.
   */
  readonly quote?: (span: Span) => string;
}

export interface Voice {
  readonly from: Terms;
  readonly to: Terms;
  readonly sizes: number;
  readonly quote: (span: Span) => string;
  /** How this instruction's label names a course of the work; 'row' where it has no label. */
  readonly course: 'row' | 'rnd';
  /** Whether "st" is put where the designer wrote no noun. */
  readonly supplies: boolean;
  /**
   * The writer of a list of steps. Handed down instead of imported: brackets, endings and groups
   * hold lists, and the list writer imports them, so an import would close a ring.
   */
  readonly list: (steps: readonly Step[], voice: Voice) => string;
}

/** The stitch word in the terms to write; a word that the terms do not know stays as it is. */
export function writeStem(word: StemWord, voice: Voice): string {
  const id = stemOf(word, voice.from);
  if (id === 'slip') return slipWord(voice);
  return id === null ? word : wordFor(id, voice.to);
}

/** US lists print "sl st", UK lists "ss" (common practice). */
export const slipWord = (voice: Voice): string => (voice.to === 'US' ? 'sl st' : 'ss');

/** "sk" and "miss": the word for passing a place belongs to the terms too. */
export const skipWord = (voice: Voice): string => (voice.to === 'US' ? 'sk' : 'miss');

/**
 * A name of the designer's own ("3-dc cl", "beg shell"), with the stitch words in it put into the
 * other terms: left alone it would name another stitch than the one it is made of.
 */
export function writeName(name: string, voice: Voice): string {
  if (voice.from === voice.to) return name;
  return name.replace(/[a-z]+/gi, (word) => {
    const id = stemOf(word.toLowerCase(), voice.from);
    return id === null || id === 'slip' ? word : wordFor(id, voice.to);
  });
}
