/** The keys of the front matter that some room reads, and the nearest of them to a mistyped one. */

/** Lower-case; the reader of front matter takes them in any case. */
const KNOWN_KEYS: readonly string[] = [
  'title',
  'version',
  'date',
  'terms',
  'language',
  'yarn',
  'yarns',
  'materials',
  'hook',
  'hooks',
  'gauge',
  'tension',
  'finished',
  'swatches',
  'testers',
  'pace',
  'lean',
  'size',
  'sizes',
  'stitches',
  'specials',
  'special stitches',
  'licence',
  'license',
  'purpose',
  'designer',
  'author',
];

/** No slip of the finger makes a key longer than this; longer ones are the designer's own. */
const LONGEST = 16;

/**
 * The known key that an unknown one is a slip of: one letter off in a short key, two in a longer
 * one; swapped neighbours count as one. `null`: known itself, or none is near.
 */
export function nearMiss(key: string): string | null {
  const lower = key.toLowerCase();
  if (lower.length > LONGEST || KNOWN_KEYS.includes(lower)) return null;
  let best: string | null = null;
  let least = lower.length <= 5 ? 1 : 2;
  for (const known of KNOWN_KEYS) {
    const steps = distance(lower, known);
    if (steps < least || (steps === least && best === null)) [best, least] = [known, steps];
  }
  return best;
}

/** Letters added, dropped, changed or swapped with a neighbour between two short words. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    [before, last] = [last, row];
  }
  return last[b.length]!;
}
