/**
 * The stitches themselves, named by construction and so belonging to no terminology, and the words
 * that US and UK lists give them. Columns from the pairs table of the trade's standards: see
 * docs/sources.md (US/UK pairs, heights in chains); extended and `htr`-in-US rows from memory.
 */
import type { StemWord, Terms } from './tree.ts';

/**
 * `w` and the wraps before inserting the hook (0 to 6); `h` when all loops are drawn through at
 * once ("half"); `x` when extended by one chain after the pull-up. `slip` is the slip stitch.
 */
export type StemId =
  | 'slip'
  | 'w0'
  | 'w0x'
  | 'w1h'
  | 'w1hx'
  | 'w1'
  | 'w1x'
  | 'w2h'
  | 'w2'
  | 'w2x'
  | 'w3'
  | 'w4'
  | 'w5'
  | 'w6';

export interface Stem {
  readonly id: StemId;
  /** Nominal height in chains; a convention, not a measurement. */
  readonly height: number;
  readonly us: StemWord;
  readonly uk: StemWord;
  readonly usName: string;
  readonly ukName: string;
}

export const STEMS: readonly Stem[] = [
  { id: 'slip', height: 0, us: 'ss', uk: 'ss', usName: 'slip stitch', ukName: 'slip stitch' },
  { id: 'w0', height: 1, us: 'sc', uk: 'dc', usName: 'single crochet', ukName: 'double crochet' },
  {
    id: 'w0x',
    height: 2,
    us: 'esc',
    uk: 'edc',
    usName: 'extended single crochet',
    ukName: 'extended double crochet',
  },
  {
    id: 'w1h',
    height: 2,
    us: 'hdc',
    uk: 'htr',
    usName: 'half double crochet',
    ukName: 'half treble crochet',
  },
  {
    id: 'w1hx',
    height: 2.5,
    us: 'ehdc',
    uk: 'ehtr',
    usName: 'extended half double crochet',
    ukName: 'extended half treble crochet',
  },
  { id: 'w1', height: 3, us: 'dc', uk: 'tr', usName: 'double crochet', ukName: 'treble crochet' },
  {
    id: 'w1x',
    height: 3.5,
    us: 'edc',
    uk: 'etr',
    usName: 'extended double crochet',
    ukName: 'extended treble crochet',
  },
  {
    id: 'w2h',
    height: 3.5,
    us: 'htr',
    uk: 'hdtr',
    usName: 'half treble crochet',
    ukName: 'half double treble crochet',
  },
  {
    id: 'w2',
    height: 4,
    us: 'tr',
    uk: 'dtr',
    usName: 'treble crochet',
    ukName: 'double treble crochet',
  },
  {
    id: 'w2x',
    height: 4.5,
    us: 'etr',
    uk: 'edtr',
    usName: 'extended treble crochet',
    ukName: 'extended double treble crochet',
  },
  {
    id: 'w3',
    height: 5,
    us: 'dtr',
    uk: 'trtr',
    usName: 'double treble crochet',
    ukName: 'triple treble crochet',
  },
  {
    id: 'w4',
    height: 6,
    us: 'trtr',
    uk: 'qtr',
    usName: 'triple treble crochet',
    ukName: 'quadruple treble crochet',
  },
  {
    id: 'w5',
    height: 7,
    us: 'qtr',
    uk: 'quintr',
    usName: 'quadruple treble crochet',
    ukName: 'quintuple treble crochet',
  },
  {
    id: 'w6',
    height: 8,
    us: 'quintr',
    uk: 'sextr',
    usName: 'quintuple treble crochet',
    ukName: 'sextuple treble crochet',
  },
];

const BY_ID = new Map(STEMS.map((stem) => [stem.id, stem]));
/** Words of nineteenth-century books, the same on both sides of the ocean; from memory. */
const OLD = [
  ['plain', 'w0'],
  ['long', 'w1'],
] as const;
const BY_US = new Map<StemWord, StemId>([
  ...STEMS.map((stem) => [stem.us, stem.id] as const),
  ...OLD,
]);
/** "ttr" is the other common UK short form of the triple treble. */
const BY_UK = new Map<StemWord, StemId>([
  ...STEMS.map((stem) => [stem.uk, stem.id] as const),
  ['ttr', 'w3'] as const,
  ...OLD,
]);

/** The stitch that a word means in these terms; `null` where the terms have no such word. */
export const stemOf = (word: StemWord, terms: Terms): StemId | null =>
  (terms === 'US' ? BY_US : BY_UK).get(word) ?? null;

/** The short word for a stitch in these terms. */
export function wordFor(id: StemId, terms: Terms): StemWord {
  const stem = BY_ID.get(id);
  if (!stem) throw new RangeError(`no such stitch: ${id}`);
  return terms === 'US' ? stem.us : stem.uk;
}

/** Nominal height in chains. */
export const heightOf = (id: StemId): number => BY_ID.get(id)?.height ?? 1;
