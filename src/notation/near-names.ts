/**
 * Names that the rows give a stitch of the list though the list spells them otherwise: "V-stitch" is worked
 * as "V-st", "Bean stitch" as "bean", "3-dc cluster" as "cluster" or "3-dc cl". A name that two stitches
 * might bear is nobody's.
 */
import { isKnownWord } from './dictionary.ts';

/** Shapes, and how they are shortened; common practice. */
const SHORT: Readonly<Record<string, readonly string[]>> = {
  shell: ['sh'],
  cluster: ['cl'],
  popcorn: ['pc', 'pop'],
  bobble: ['bo'],
  puff: [],
  fan: [],
  picot: [],
  v: [],
};

const LONG: ReadonlyMap<string, string> = new Map(
  Object.entries(SHORT).flatMap(([long, short]) => short.map((one) => [one, long] as const)),
);

/** Lower-case spellings to the key of their stitch, with the near ones that are not taken. */
export function withNearNames(spellings: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const found = new Map<string, string | null>();
  for (const [spelling, key] of spellings) {
    for (const near of nearNames(spelling)) {
      if (spellings.has(near)) continue;
      const other = found.get(near);
      found.set(near, other === undefined || other === key ? key : null);
    }
  }
  const all = new Map(spellings);
  for (const [near, key] of found) if (key !== null) all.set(near, key);
  return all;
}

const STITCH: ReadonlySet<string> = new Set(['stitch', 'st']);

function nearNames(spelling: string): string[] {
  // "Vst" is a V-stitch.
  const parts = spelling.replace(/^([vxy])(st|stitch)$/, '$1 $2').split(/[\s-]+/);
  const isStitch = parts.length > 1 && STITCH.has(parts.at(-1) ?? '');
  const words = isStitch ? parts.slice(0, -1) : parts;
  const tail = words.at(-1) ?? '';
  const shape = LONG.get(tail) ?? tail;
  const leads = words.slice(0, -1);
  const isShape = shape in SHORT;
  const tails = isShape ? [shape, ...(SHORT[shape] ?? [])] : [tail];
  // "3-dc cluster", "granny cluster": there is but one, unless another says so; but "beginning cluster" is another.
  const isPlain = leads.every((word) => isMeasure(word) || !isKnownWord(word));
  const names = tails.flatMap((last) => {
    const own = [...leads, last].join(' ');
    return isPlain && isShape && leads.length > 0 ? [own, last] : [own];
  });
  const bare =
    isShape || (words.length === 1 && tail.length > 2 && !isKnownWord(tail)) || !isStitch;
  const ended = names.filter(takesStitch).flatMap((name) => [`${name} stitch`, `${name} st`]);
  const glued = /^[vxy]$/.test(tail) && leads.length === 0 ? [`${tail}st`, `${tail}stitch`] : [];
  return [...(bare ? names : []), ...ended, ...glued];
}

/** "3", "dc", "ch": what it is made of. */
const isMeasure = (word: string): boolean => /^\d*(?:ch|sc|hdc|htr|dc|tr|dtr)?$/.test(word);

const takesStitch = (name: string): boolean => !/\d$|stitch$|\bsts?$/.test(name);
