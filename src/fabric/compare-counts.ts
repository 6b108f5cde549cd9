/** Whether the counts stated agree with what a row made. */
import {
  type Instruction,
  type StatedCount,
  type StemId,
  type StitchShape,
  stemOf,
} from '../notation/index.ts';
import {
  blockMeanings,
  meanings,
  namesStems,
  type Stated,
  spaceCount,
  withoutCorner,
} from './count-meanings.ts';
import { fact, type Hands, numberFor, spanAt } from './hands.ts';
import { shapeOf } from './shape.ts';
import type { RowTally } from './tally.ts';

const worksUndefined = ({ facts }: Hands): boolean =>
  facts.some(({ kind }) => kind === 'undefined');

const TOTALS: ReadonlySet<StatedCount['unit']> = new Set([
  null,
  'stitch',
  'stem',
  'space',
  'chain',
  'box',
  'group',
]);

export interface Compared {
  /** Counts stated that could be compared. */
  readonly compared: number;
  readonly differs: boolean;
  /** Totals stated that could not: what they count is not known here. */
  readonly left: readonly StatedCount[];
  /** A stitch is named and all stitches of the row are as many, but some are of another name. */
  readonly mixed: boolean;
}

/** Compares every stated count; differences are noted as facts. */
export function compare(hands: Hands, tally: RowTally, row: Stated): Compared {
  let compared = 0;
  let differs = false;
  let mixed = false;
  const left: StatedCount[] = [];
  const apart = chainToldApart(hands, row);
  const ofOthers = ofOtherSizes(row.counts);
  for (const stated of row.counts) {
    if (stated === apart) continue;
    if (ofOthers.includes(stated)) {
      left.push(stated);
      continue;
    }
    const value = numberFor(hands, stated.n);
    const shapes = stated.unit === 'decrease' && row.counts.length > 1 && !stated.partial;
    if (value !== null && shapes && !isShapedBy(hands, tally, value)) left.push(stated);
    if (value === null || stated.partial || !TOTALS.has(stated.unit)) continue;
    // "(2 sps, 8 blocks)": beside spaces, boxes are the filled ones.
    const blocks = stated.unit === 'box' && row.counts.some((other) => other.unit === 'space');
    const may =
      blocks && tally.boxes === 0
        ? blockMeanings(hands, tally)
        : meanings(hands, tally, stated, row);
    if (may.length === 0) {
      left.push(stated);
      continue;
    }
    // "6 dc, 6 V-sts", where nothing says what a V-st is: of how many stitches is not known.
    if (worksUndefined(hands) && !may.includes(value)) {
      left.push(stated);
      continue;
    }
    compared++;
    if (apart && stated.unit === 'stem' && may[0] !== undefined) may.push(may[0] - 1);
    const isSame =
      may.includes(value) && !namesSizeTwice(hands, tally, { stated, counts: row.counts });
    if (isSame) {
      mixed = noteOtherStems(hands, tally, { stated, counts: row.counts }) || mixed;
      mixed = noteGapsCounted(hands, tally, stated) || mixed;
    }
    // "Rows 2-5: … 4 rows, a total of 96 sc": of all its rows together.
    const isSum = row.rows > 1 && value === tally.stitches * row.rows && spaceCount(tally) === 0;
    if (isSame || isSum || excused(tally, stated, { value, computed: may[0] ?? 0 })) continue;
    differs = true;
    fact(hands, {
      kind: 'count',
      stated,
      value,
      computed: may[0] ?? 0,
      unit: stated.unit ?? 'stitch',
      unitWord:
        stated.unit === 'stem'
          ? `${stated.word}${stated.stem ?? ''}`
          : stated.word || stated.stem || '',
      ...spanAt(hands, stated),
    });
  }
  return { compared, differs, left, mixed };
}

/** "(10 sc, 2 sc2tog)", "(18 sts, 6 increased)": so many stitches drawn together, or so many more or fewer. */
function isShapedBy({ bench, edge, used }: Hands, tally: RowTally, value: number): boolean {
  let drawn = 0;
  for (const [name, n] of tally.byKind) {
    const kind = bench.kinds.kinds[bench.kinds.byName.get(name) ?? -1];
    if (kind?.shape === 'together') drawn += n;
  }
  const { stitches } = tally;
  return [drawn, Math.abs(stitches - edge.counted), Math.abs(stitches - used)].includes(value);
}

/**
 * "(66, 72 sc)": no row has two numbers of stitches, each bare but the last and larger than the one before. They
 * are of several sizes, though the piece names none; the first is this one's.
 */
function ofOtherSizes(counts: readonly StatedCount[]): readonly StatedCount[] {
  const numberOf = ({ n }: StatedCount): number => (n.values.length === 1 ? (n.values[0] ?? 0) : 0);
  const isList = counts.every((count, i) => {
    const before = counts[i - 1];
    const isLast = i === counts.length - 1;
    const isBare = count.unit === null && count.word === '';
    const grows = !before || (numberOf(count) > numberOf(before) && numberOf(before) > 0);
    const unit = isLast ? count.unit === 'stem' || count.unit === 'stitch' : isBare;
    return unit && grows && !count.partial;
  });
  return counts.length > 1 && isList ? counts.slice(1) : [];
}

/**
 * "(24 dc)" of 23 dc and 1 sc: all of them are 24, but not of that name. Said of rows of plain stitches
 * only: a bobble or a puff among 24 sc is often counted as one of them. A start chain stands for any.
 */
function noteOtherStems(
  hands: Hands,
  tally: RowTally,
  { stated, counts }: { stated: StatedCount; counts: readonly StatedCount[] },
): boolean {
  const stem =
    stated.stem && stated.unit === 'stem' ? stemOf(stated.stem, hands.bench.terms) : null;
  if (stem === null || namesStems(counts) === 'several') return false;
  const byStem = new Map<StemId, number>();
  for (const [name, n] of tally.byKind) {
    const kind = hands.bench.kinds.kinds[hands.bench.kinds.byName.get(name) ?? -1];
    if (!kind?.stem || kind.special || !PLAIN.has(kind.shape)) return false;
    const as = kind.class === 'start' ? stem : kind.stem;
    byStem.set(as, (byStem.get(as) ?? 0) + n);
  }
  const made = byStem.get(stem) ?? 0;
  if (made === 0 || numberFor(hands, stated.n) !== tally.stitches || byStem.size < 2) return false;
  const others = [...byStem]
    .filter(([other]) => other !== stem)
    .map(([other, n]) => ({ stem: other, n }));
  fact(hands, {
    kind: 'stems',
    stated,
    value: tally.stitches,
    made,
    others,
    ...spanAt(hands, stated),
  });
  return true;
}

/**
 * "(9 sts)" of 8 stitches and a gap. Each chain may count, as in mesh whose gaps stand over as many
 * stitches: that is custom, and is noted as what the counts ask for. That a gap of several chains is one
 * stitch is nobody's custom, and is told.
 */
function noteGapsCounted(hands: Hands, tally: RowTally, stated: StatedCount): boolean {
  const n = numberFor(hands, stated.n);
  const { stitches, chains, spaces } = tally;
  const isOfStitches = stated.unit === null || stated.unit === 'stitch';
  if (!isOfStitches || n === null || stitches === 0 || n === stitches) return false;
  // "12 sts, including the ch 2": not the space that the chain leaves, but the chain.
  if (excused(tally, stated, { value: n, computed: stitches })) return false;
  const isByChains = n === stitches + chains;
  const isByGaps = n === stitches + spaceCount(tally) || withoutCorner(tally).includes(n);
  if (!isByChains && !isByGaps) return false;
  if (isByChains || (spaces[0]?.chains === 1 && withoutCorner(tally).includes(n))) {
    hands.settled.set(GAPS_COUNTED, {
      reading: 'each chain counts',
      alternatives: ['no chain counts'],
      because: 'count',
      ...spanAt(hands, stated),
    });
    return false;
  }
  fact(hands, { kind: 'gaps-counted', value: n, made: stitches, spaces, ...spanAt(hands, stated) });
  return true;
}

const GAPS_COUNTED = 'chains in counts';

const PLAIN: ReadonlySet<StitchShape | null> = new Set([null, 'one', 'increase', 'together']);

/** "(60 tr + 3 ch)": the start chain told beside the stitches, one of which it is. */
function chainToldApart(hands: Hands, row: Stated): StatedCount | null {
  const starts = row.shape.chainsAtStart || row.shape.firstWork?.place?.fromHook;
  if (row.counts.length < 2 || !starts) return null;
  // "Ch 6, join. Ch 3, 12 dc in ring": the chain of the row is the one next to its stitches.
  const works = row.shape.steps.findIndex((step) => step.kind === 'work' || step.kind === 'repeat');
  const before = works < 0 ? row.shape.steps : row.shape.steps.slice(0, works);
  const first = before.findLast((step) => step.kind === 'chain');
  const work = row.shape.firstWork?.place;
  // "41 ch, 1 tr into 4th ch from hook … (38 tr + 3 ch)": the chains passed.
  const passed = work?.fromHook ? (work.nth ?? 1) - 1 : null;
  const length = passed ?? (first?.n ? numberFor(hands, first.n) : null);
  const chains = row.counts.find((count) => count.unit === 'chain' && !count.chains);
  return chains && length !== null && numberFor(hands, chains.n) === length ? chains : null;
}

/** Whether the counts of an instruction tell its start chain beside the stitches. */
export const isChainToldApart = (hands: Hands, asks: Instruction): boolean =>
  chainToldApart(hands, { counts: asks.counts, shape: shapeOf(asks), rows: 1 }) !== null;

/** "(12 ch-1 sps, 12 ch-1 sps)" of a row that has spaces of another length, which nothing names. */
function namesSizeTwice(
  hands: Hands,
  tally: RowTally,
  { stated, counts }: { stated: StatedCount; counts: readonly StatedCount[] },
): boolean {
  if (stated.unit !== 'space') return false;
  const sizeOf = (count: StatedCount): number | null => numberFor(hands, count.chains);
  const named = counts.filter((count) => count.unit === 'space').map(sizeOf);
  const twice = named.filter((size) => size !== null && size === sizeOf(stated)).length > 1;
  return twice && tally.spaces.some(({ chains }) => !named.includes(chains));
}

/** A chain at the row's start is one of its stitches. */
export const startsCounted = ({ byKind }: RowTally): boolean =>
  [...byKind.keys()].some((kind) => kind.startsWith('start '));

/**
 * "(27, not counting the ch)": the words themselves explain one stitch of difference, where the chain
 * is read otherwise.
 */
function excused(
  tally: RowTally,
  { startChainIncluded }: StatedCount,
  { value, computed }: { readonly value: number; readonly computed: number },
): boolean {
  if (startChainIncluded === null) return false;
  if (startChainIncluded === startsCounted(tally)) return false;
  return value === computed + (startChainIncluded ? 1 : -1);
}

/**
 * The stated number of stitches in this size; -1 where none is. "(18 sc, 6 dc)" is 24 together;
 * beside shells or clusters nothing is known of the whole.
 */
export function statedStitches(hands: Hands, counts: readonly StatedCount[]): number {
  let sum = -1;
  const groups = counts.some(({ unit }) => unit === 'group');
  for (const stated of counts) {
    if (stated.partial) continue;
    const n = numberFor(hands, stated.n);
    if (stated.unit === null || stated.unit === 'stitch') return n ?? -1;
    if (groups) continue;
    if (stated.unit === 'stem' && n !== null) sum = Math.max(0, sum) + n;
  }
  return sum;
}
