/**
 * The eight steps of the yarn council's system: single crochets to 4 in and hooks, as reprinted in
 * 2018, and metres to 100 g, the widest of three lists (two shops' and yards to the pound of a
 * hand-spinners' sheet). They are guides and overlap on purpose. Sources in docs/sources.md.
 */
import type { WeightClass } from './yarn.ts';

type Range = readonly [from: number, to: number];

export interface ClassRow {
  readonly name: string;
  /** US single crochets over 4 inches. */
  readonly scPer4In: Range;
  readonly hookMm: Range;
  readonly metresPer100g: Range;
  /** Other names of such yarns, lower case, for reading. */
  readonly names: readonly string[];
}

const WEIGHT_CLASSES: readonly ClassRow[] = [
  row('Lace', [32, 42], [1.4, 2.25], [484, 2000], 'lace, thread, cobweb, size 10, 1 ply, 2 ply'),
  row('Super Fine', [21, 32], [2.25, 3.5], [350, 600], 'super fine, sock, fingering, 3 ply'),
  row('Fine', [16, 20], [3.5, 4.5], [242, 400], 'sport, fine, 5 ply'),
  row(
    'Light',
    [12, 17],
    [4.5, 5.5],
    [182, 250],
    'dk, double knitting, light worsted, light, 8 ply',
  ),
  row('Medium', [11, 14], [5.5, 6.5], [120, 200], 'worsted, aran, afghan, medium, 10 ply'),
  row('Bulky', [8, 11], [6.5, 9], [81, 130], 'bulky, chunky, craft, rug, 12 ply'),
  row('Super Bulky', [6, 9], [9, 16], [40, 100], 'super bulky, super chunky, roving, 14 ply'),
  row('Jumbo', [3, 5], [16, 35], [10, 60], 'jumbo'),
];

function row(
  name: string,
  scPer4In: Range,
  hookMm: Range,
  ...[metresPer100g, names]: readonly [Range, string]
): ClassRow {
  return { name, scPer4In, hookMm, metresPer100g, names: names.split(', ') };
}

export const classRow = (weightClass: WeightClass): ClassRow => WEIGHT_CLASSES[weightClass]!;

const BY_NAME = WEIGHT_CLASSES.flatMap(({ names }, at) =>
  names.map((name) => [name, at as WeightClass] as const),
).sort((a, b) => b[0].length - a[0].length);

/** "3", "#4", "DK", "worsted weight (4)"; `null` where the words name no class. */
export function weightClassNamed(words: string): WeightClass | null {
  const lower = words.toLowerCase().replace(/-/g, ' ');
  const number =
    /^\s*(?:#|no\.?|size|weight)?\s*([0-7])\s*$/.exec(lower) ??
    /(?:\(|#|weight\s|category\s|cyc\s)\s*([0-7])\b(?!\s?(?:mm|g|ply|oz|m\b|cm|in))/.exec(lower);
  if (number) return Number(number[1]) as WeightClass;
  const named = BY_NAME.find(([name]) => new RegExp(`\\b${name}\\b`).test(lower));
  return named?.[1] ?? null;
}

/** The class whose range of running lengths holds this one best: nearest middle by ratio. */
export function classOfRunningLength(metresPer100g: number): WeightClass {
  const off = ({ metresPer100g: [from, to] }: ClassRow): number =>
    Math.abs(Math.log(metresPer100g / Math.sqrt(from * to)));
  let best = 0;
  WEIGHT_CLASSES.forEach((each, at) => {
    if (off(each) < off(WEIGHT_CLASSES[best]!)) best = at;
  });
  return best as WeightClass;
}
