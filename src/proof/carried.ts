/**
 * What a fault leaves to the rows behind it. A row that is told may have its gaps elsewhere than its
 * words would put them, and a count that is told goes on as stated though more or fewer stitches were
 * made. What rows behind show of that, and no more, is no fault of their own: one cause is told once.
 */
import { type Fact, isFixed, MISFITS, type RowRecord } from '../fabric/index.ts';
import type { Numbers, Step } from '../notation/index.ts';

/** A number that was made where another was stated. */
interface Pair {
  readonly made: number;
  readonly stated: number;
}

export interface Carried {
  /** The row beneath does not come out, or only by another reading, and that was told. */
  readonly isFaulty: boolean;
  /** A fault was told of the row beneath. */
  readonly isTold: boolean;
  /** A fault was told, and rows behind it that came out, though none that is proven. */
  readonly isSince: boolean;
  /** Where the gaps of the row beneath lie is not sure. */
  readonly gaps: boolean;
  /** By how much the rows beneath are off is not known: one is read otherwise, or a stitch slipped. */
  readonly isLoose: boolean;
  /** What the last row that does not come out made of what it states. */
  readonly pairs: readonly Pair[];
  /** Stitches that the last count told has more than was made; negative: fewer. */
  readonly stitches: number;
  /** Places that the last walk told is off; 0: none. */
  readonly off: number;
  /** Lengths of spaces by which they are called, though none was made so. */
  readonly lengths: ReadonlySet<number>;
}

export const NOTHING_CARRIED: Carried = {
  isFaulty: false,
  isTold: false,
  isSince: false,
  gaps: false,
  isLoose: false,
  pairs: [],
  stitches: 0,
  off: 0,
  lengths: new Set(),
};

/** The words of a row: those that it works, and those of its own instruction. */
export interface Words {
  readonly worked: readonly Step[];
  readonly asked: readonly Step[];
  /** Something was told of them in an earlier row. */
  readonly isTold: boolean;
}

interface Beneath {
  readonly carried: Carried;
  readonly before: RowRecord | null;
}

/** What is carried on behind a row of which these facts are told. */
export function carriedOn(
  { carried, before }: Beneath,
  row: RowRecord,
  { told, isTold }: { readonly told: readonly Fact[]; readonly isTold: boolean },
): Carried {
  const isFaulty = told.some(({ kind }) => MISFITS.has(kind) || DOUBTFUL.has(kind));
  const isMisfit = row.facts.some(({ kind }) => MISFITS.has(kind));
  const count = told.find((fact) => fact.kind === 'count' && STITCHES.has(fact.unit));
  // On the edge as it was made, whose gaps are where this row's words look for them.
  const stands = before !== null && row.available === before.tally.stitches;
  const settles = row.verdict === 'proven' && stands;
  const walk = told.find(({ kind }) => kind === 'left' || kind === 'overrun');
  const lengths = new Set([...carried.lengths, ...told.flatMap(lengthsOf)]);
  const isDoubtful = isFaulty || (isMisfit && carried.isFaulty) || (isTold && !settles);
  const pairs = row.facts.flatMap(pairsOf);
  return {
    isFaulty: isDoubtful,
    isTold: isFaulty,
    isSince:
      row.verdict !== 'proven' &&
      (isMisfit ? carried.isSince && !isFaulty : carried.isTold || carried.isSince),
    gaps: isDoubtful || (carried.gaps && !settles && row.tally.spaces.length > 0),
    // A proven row of plain stitches has as many as it says, however they were read.
    isLoose:
      (row.verdict !== 'proven' && carried.isLoose) ||
      (!isPlainlyProven(row) && told.some(({ kind }) => LOOSE.has(kind))),
    pairs: pairs.length > 0 ? pairs : carried.pairs,
    stitches: count?.kind === 'count' ? count.value - count.computed : carried.stitches,
    off:
      walk?.kind === 'left'
        ? walk.left
        : walk?.kind === 'overrun'
          ? walk.needed - walk.have
          : carried.off,
    lengths: lengths.size > carried.lengths.size ? lengths : carried.lengths,
  };
}

const isPlainlyProven = ({ verdict, tally }: RowRecord): boolean =>
  verdict === 'proven' && tally.spaces.length === 0;

const LOOSE: ReadonlySet<string> = new Set(['reading', 'stems']);
const DOUBTFUL: ReadonlySet<string> = new Set([...LOOSE, 'space-size']);
const STITCHES: ReadonlySet<string> = new Set(['stitch', 'stem']);

function lengthsOf(fact: Fact): readonly number[] {
  if (fact.kind === 'space-size') return [fact.named];
  if (fact.kind !== 'count' || fact.stated.unit !== 'space') return [];
  return (fact.stated.chains?.values ?? []).filter((n) => n !== null);
}

function pairsOf(fact: Fact): readonly Pair[] {
  switch (fact.kind) {
    case 'count':
      return fact.computed > 0 && fact.value > 0
        ? [{ made: fact.computed, stated: fact.value }]
        : [];
    case 'left':
      return [{ made: fact.have - fact.left, stated: fact.have }];
    case 'overrun':
      return [{ made: fact.needed, stated: fact.have }];
    default:
      return [];
  }
}

/** The facts of a row without those that only carry a fault of an earlier one, or of the row itself. */
export function ownFacts(row: RowRecord, beneath: Beneath, words: Words): readonly Fact[] {
  const { facts } = row;
  if (facts.length === 0) return facts;
  const { carried, before } = beneath;
  const sizes = facts.filter(({ kind }) => kind === 'space-size');
  const isOwnSize = sizes.some((fact) => isOwnLength(fact, carried));
  const isOfStems = facts.some(({ kind }) => kind === 'stems');
  return facts.filter((fact) => {
    if (fact.kind === 'space-size') return isOwnLength(fact, carried) && !isSecond(fact, sizes);
    if (fact.kind === 'reading') return !words.isTold;
    if (fact.kind === 'undefined') return facts.find((other) => isSameWord(other, fact)) === fact;
    if (!MISFITS.has(fact.kind)) return true;
    // A stitch word that slipped tells more than what comes of it.
    if (isOfStems && fact.kind === 'count') return false;
    if (isOfWords(fact, row, words)) return true;
    // Nothing tells on how many stitches this row stands: the fault told may be all there is.
    if (carried.isSince && fact.kind !== 'remainder' && !meetsAnother(row)) return false;
    // A space that is not the one named: what the row makes in it follows.
    if (isOwnSize) return false;
    if (fact.kind === 'no-place' && before?.facts.some(({ kind }) => kind === 'stems'))
      return false;
    if (carried.isLoose) return false;
    // It looks for spaces of a length that the row beneath says it has, and has not.
    if (carried.isFaulty && lengthsNamed(words.worked).some((n) => carried.lengths.has(n)))
      return false;
    // Stitches were put in or left out beneath, nobody knows on which side of the gap.
    const isOfStitches = fact.kind !== 'count' || STITCHES.has(fact.unit);
    if (carried.gaps && !carried.isFaulty && isOfStitches && namesGap(words.worked)) return false;
    if (fact.kind === 'count') return !followsCount(fact, row, beneath);
    if (carried.gaps && (namesGap(words.worked) || spaced(before))) return false;
    // What an earlier row left is longer or shorter by what that row was off.
    if (fact.kind === 'left' && fact.have !== row.available && carried.off === fact.left)
      return false;
    return !isDifference(fact, Math.abs(carried.stitches));
  });
}

/** Of several counts that a row states one at least is met: it stands where it should. */
const meetsAnother = ({ stated, facts }: RowRecord): boolean =>
  stated.filter(({ compared }) => compared).length >
  Math.max(1, facts.filter(({ kind }) => kind === 'count').length);

const spaced = (row: RowRecord | null): boolean => (row?.tally.spaces.length ?? 0) > 0;

const isOwnLength = (fact: Fact, { lengths }: Carried): boolean =>
  fact.kind === 'space-size' && !lengths.has(fact.named);

/** A count that the row's words alone contradict, whatever lies beneath. */
function isOfWords(fact: Fact, { tally, sizeIndex }: RowRecord, { asked }: Words): boolean {
  if (fact.kind !== 'count') return false;
  // As many stitches as stated, of another name.
  if (fact.unit === 'stem' && fact.value === tally.stitches) return true;
  return fact.computed === tally.stitches && isFixed(asked, tally.stitches, sizeIndex);
}

/**
 * The count is off as that of the row beneath is: by as many stitches, or in the same proportion. Only
 * where the row stands on what was made; the stated count, where it may, has been tried as well.
 */
function followsCount(
  { computed, value }: Fact & { kind: 'count' },
  { available }: RowRecord,
  { carried, before }: Beneath,
): boolean {
  if (!carried.isFaulty || !before) return false;
  if (!spaced(before) && available !== before.tally.stitches) return false;
  if (carried.pairs.length === 0) return carried.gaps && spaced(before);
  return carried.pairs.some(({ made, stated }) => {
    if (computed * stated === value * made) return true;
    const times = (computed - value) / (made - stated);
    return !spaced(before) && Number.isInteger(times) && times > 0;
  });
}

/** The same length named again in a row, for spaces of the same other length. */
function isSecond(fact: Fact & { kind: 'space-size' }, all: readonly Fact[]): boolean {
  const first = all.find(
    (other) =>
      other.kind === 'space-size' && other.named === fact.named && other.found === fact.found,
  );
  return first !== fact;
}

const isSameWord = (a: Fact, b: Fact & { kind: 'undefined' }): boolean =>
  a.kind === 'undefined' && a.word === b.word;

/** Is it just the stitches by which the count told is off? */
function isDifference(fact: Fact, by: number): boolean {
  if (by === 0) return false;
  if (fact.kind === 'overrun') return fact.needed - fact.have === by;
  if (fact.kind === 'left') return fact.left === by;
  if (fact.kind !== 'remainder') return false;
  return (fact.left - by) % fact.per === 0 || (fact.left + by) % fact.per === 0;
}

/** Lengths by which spaces are named in the words, at any depth. */
function lengthsNamed(value: unknown): number[] {
  if (Array.isArray(value)) return value.flatMap(lengthsNamed);
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(lengthsNamed);
  if (!('kind' in value) || value.kind !== 'space' || !('chains' in value)) return inner;
  return [...((value.chains as Numbers | null)?.values ?? []), ...inner].filter((n) => n !== null);
}

const GAPS: ReadonlySet<string> = new Set(['space', 'corner', 'group', 'chain', 'box', 'gap']);

/** Do the words name a gap, a group or a corner, at any depth? */
function namesGap(value: unknown): boolean {
  if (Array.isArray(value)) return value.some(namesGap);
  if (typeof value !== 'object' || value === null) return false;
  if ('nouns' in value && Array.isArray(value.nouns)) {
    if (value.nouns.some((noun: { kind?: string }) => GAPS.has(noun.kind ?? ''))) return true;
  }
  return Object.values(value).some(namesGap);
}
