/** The name that was likely meant, from those that this pattern could use. */
import { STEMS, wordFor } from '../notation/index.ts';
import type { Scene } from './scene.ts';

/** Nearest stitch of the pattern's terms or of its own list. */
export function nearest(scene: Scene, word: string): string | null {
  const { terms, specials } = scene.manuscript;
  const words = STEMS.map(({ id }) => wordFor(id, terms.terms));
  return nearestOf(word, [...words, ...specials.flatMap((one) => [one.key, ...one.aliases])]);
}

/** The name fewest letters away: at most one for names of up to four letters, `most` for longer ones. */
export function nearestOf(word: string, names: readonly string[], most = 2): string | null {
  const wanted = word.toLowerCase();
  if (wanted.length < 2) return null;
  let best: string | null = null;
  let least = wanted.length > 4 ? most + 1 : 2;
  for (const name of names) {
    const away = distance(wanted, name.toLowerCase(), least);
    if (away < least) [best, least] = [name, away];
  }
  return best;
}

/** Letters to add, drop, change or swap with a neighbour; `most` if that many or more. */
function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) >= most || a.length > 60) return most;
  let older: number[] = [];
  let old = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((old[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (old[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (older[j - 2] ?? 0) + 1);
      }
      row.push(cost);
    }
    older = old;
    old = row;
  }
  return Math.min(most, old[b.length] ?? most);
}
