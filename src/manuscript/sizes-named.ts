/** Which of a piece's sizes some words name: "Size L only", "Sizes M and L", "Size Small". */

const plain = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

/** One truth value a size; the words "x large" name no "large". */
export function sizesNamed(words: string, sizes: readonly string[]): readonly boolean[] {
  let said = ` ${plain(words)} `;
  const named = sizes.map(() => false);
  const longestFirst = sizes
    .map((size, i) => ({ name: plain(size), i }))
    .filter(({ name }) => name !== '')
    .sort((a, b) => b.name.length - a.name.length);
  for (const { name, i } of longestFirst) {
    if (!said.includes(` ${name} `)) continue;
    named[i] = true;
    said = said.replaceAll(` ${name} `, '  ');
  }
  return named;
}

/**
 * The words of a heading such as "Size Small" above rows of that size alone, '' for "All sizes", which ends
 * them, and `null` where a heading says nothing of the kind.
 */
export function sizesOfHeading(heading: string, sizes: readonly string[]): string | null {
  const said = HEADING.exec(heading.trim())?.[1];
  if (said === undefined || sizes.length < 2) return null;
  if (/^(?:all|both|every|each)\b/i.test(said)) return '';
  return sizesNamed(said, sizes).includes(true) ? said : null;
}

const HEADING = /^(?:for )?(?:the )?((?:all |both )?sizes?\b.{0,30}?)(?: only)?:?$/i;

/** What a heading calls its size: "Size Small", "Size 6-12 months"; `null`: it names none. */
export const sizeOfHeading = (heading: string): string | null =>
  /^(?:for )?size:? ([^:,;]{1,24}?)(?: only)?:?$/i.exec(heading.trim())?.[1] ?? null;
