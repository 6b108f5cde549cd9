/** Stitch words of a sentence that is otherwise left as it is: notes, gauges, the mesh of a chart. */
import { STEMS, wordFor } from '../stems.ts';
import type { Terms } from '../tree.ts';

/**
 * The words in the terms `to`, their stitch words meant in the terms `from`: short forms
 * ("1tr", "sc2tog", "FPdc") and full names ("half double crochet"). Nothing else is touched.
 */
export function writeWords(words: string, { from, to }: { from: Terms; to: Terms }): string {
  if (from === to) return words;
  const there = TABLES[from];
  return words.replace(WORDS[from], (found: string) => {
    const word = there.get(found.toLowerCase().replace(/\s+/g, ' ')) ?? found;
    return /^[A-Z]/.test(found) ? word.charAt(0).toUpperCase() + word.slice(1) : word;
  });
}

/** From short forms and names of these terms to those of the other ones. */
const TABLES: Readonly<Record<Terms, ReadonlyMap<string, string>>> = {
  US: new Map(STEMS.flatMap((s) => [[s.us, wordFor(s.id, 'UK')] as const, [s.usName, s.ukName]])),
  UK: new Map(STEMS.flatMap((s) => [[s.uk, wordFor(s.id, 'US')] as const, [s.ukName, s.usName]])),
};

const WORDS: Readonly<Record<Terms, RegExp>> = { US: anyOf('US'), UK: anyOf('UK') };

/** Longest first: "half double crochet" holds "double crochet". Posts are glued to a short form. */
function anyOf(terms: Terms): RegExp {
  const words = [...TABLES[terms].keys()].sort((a, b) => b.length - a.length);
  const spaced = words.map((word) => word.replaceAll(' ', String.raw`\s+`)).join('|');
  return new RegExp(`(?:(?<![a-z])|(?<=(?<![a-z])[fb]p))(?:${spaced})(?![a-z])`, 'gi');
}
