/** Which stitch the name of a fabric means: "hdc ripple", "single crochet in rounds", "mesh". */
import { STEMS, type StemId, type Terms } from '../notation/index.ts';

export interface FabricName {
  readonly stem: StemId | null;
  readonly isPlain: boolean;
  readonly isMesh: boolean;
  readonly worked: 'rounds' | 'rows' | null;
}

const MESH = /\b(?:mesh|filet|net(?:ting)?|(?:open )?box(?:es)?)\b/i;
const ROUNDS = /\b(?:rounds?|rnds?|spiral)\b/i;
const ROWS = /\b(?:rows?|turned|flat)\b/i;
const PASSING =
  /\b(?:in|worked|the|rows?|rounds?|rnds?|spiral|turned|flat|joined|sts?|stitch(?:es)?|fabric|of|and|plain)\b/gi;

/** Spelling to stitch for each terms, longest first, so that "half double crochet" is found whole. */
const NAMES: Readonly<Record<Terms, readonly (readonly [string, StemId])[]>> = {
  US: namesOf('US'),
  UK: namesOf('UK'),
};

function namesOf(terms: Terms): readonly (readonly [string, StemId])[] {
  return STEMS.flatMap(({ id, us, uk, usName, ukName }) =>
    (terms === 'US' ? [us, usName] : [uk, ukName]).map((name) => [name, id] as const),
  ).sort((a, b) => b[0].length - a[0].length);
}

const PATTERNS: Readonly<Record<Terms, RegExp>> = {
  US: anyOf('US'),
  UK: anyOf('UK'),
};

function anyOf(terms: Terms): RegExp {
  return new RegExp(`\\b(${NAMES[terms].map(([name]) => name).join('|')})s?\\b`, 'i');
}

/** A regular expression's source that matches any stitch's short or long name in these terms. */
export const stitchNamesSource = (terms: Terms): string =>
  NAMES[terms].map(([name]) => name).join('|');

export function fabricNamed(words: string, terms: Terms): FabricName {
  const found = PATTERNS[terms].exec(words);
  const name = found?.[1]?.toLowerCase();
  const stem = NAMES[terms].find(([known]) => known === name)?.[1] ?? null;
  const isMesh = MESH.test(words);
  const rest = found ? words.replace(found[0], ' ') : words;
  return {
    stem,
    isMesh,
    isPlain: stem !== null && !isMesh && /^\W*$/.test(rest.replace(PASSING, ' ')),
    worked: ROUNDS.test(words) ? 'rounds' : ROWS.test(words) ? 'rows' : null,
  };
}
