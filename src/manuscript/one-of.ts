/**
 * The source of a regular expression that takes any of the given words: they stand between bars,
 * over as many lines as they need. A bar without blanks on both sides belongs to the word.
 */
export const oneOf = (words: string): string =>
  `(?:${words
    .trim()
    .split(/\s+\|\s+/)
    .join('|')})`;
