/** What a row made, and whether the counts stated agree. */
import {
  type SpecialStitch,
  type StatedCount,
  type StemId,
  type StitchShape,
  stemOf,
} from '../notation/index.ts';
import { blocksMade } from './corner-blocks.ts';
import { closerChains } from './edge.ts';
import type { Tally } from './fabric.ts';
import { groupsInPlaces, groupsNamed, standingAlone } from './groups-made.ts';
import { fact, type Hands, numberFor, spanAt } from './hands.ts';
import { firstAnchor, NOWHERE } from './nodes.ts';
import type { RowShape } from './shape.ts';

export interface RowTally extends Tally {
  /** Counted stitches by stem, of whatever shape. */
  readonly byStem: ReadonlyMap<StemId, number>;
  readonly picots: number;
  /** Picots, or several side by side, with chains before and behind: they part a loop, and do not end it. */
  readonly midLoop: number;
  /** Chains that the row ends with: the gap before a join, or the start of boxes to be added. */
  readonly lastChains: number;
}

/** Counts the nodes from `from` on. */
export function tallyOf(hands: Hands, from: number): RowTally {
  const { nodes, bench } = hands;
  const byIndex = new Uint32Array(bench.kinds.kinds.length);
  const runs = new Map<number, number>();
  let run = 0;
  const endRun = (): void => {
    if (run > 0) runs.set(run, (runs.get(run) ?? 0) + 1);
    run = 0;
  };
  const chain = bench.kinds.byName.get('chain') ?? -1;
  let midLoop = 0;
  let onLoop = false;
  for (let id = from; id < nodes.n; id++) {
    const index = nodes.kind[id] ?? 0;
    byIndex[index] = (byIndex[index] ?? 0) + 1;
    if (index === chain) {
      if (onLoop) midLoop++;
      onLoop = false;
      run++;
      continue;
    }
    const kind = bench.kinds.kinds[index];
    onLoop = kind?.class === 'picot' && (onLoop || run > 0);
    if (kind?.class === 'closer') run += closerChains(kind.stem);
    if (run > 0) endRun();
  }
  const lastChains = run;
  endRun();
  return {
    ...sums(hands, byIndex),
    spaces: spacesOf(runs),
    boxes: hands.boxes,
    groups: hands.groups,
    lastChains,
    midLoop,
  };
}

const spacesOf = (runs: Map<number, number>): { chains: number; n: number }[] =>
  [...runs].map(([chains, n]) => ({ chains, n })).sort((a, b) => a.chains - b.chains);

type Counts = Omit<RowTally, 'spaces' | 'boxes' | 'groups' | 'lastChains' | 'midLoop'>;

function sums(hands: Hands, byIndex: Uint32Array): Counts {
  const byKind = new Map<string, number>();
  const byStem = new Map<StemId, number>();
  const classes = { stitches: 0, chains: 0, slips: 0, picots: 0 };
  byIndex.forEach((n, index) => {
    const kind = hands.bench.kinds.kinds[index];
    if (n === 0 || !kind) return;
    if (kind.counted) {
      classes.stitches += n;
      byKind.set(kind.name, n);
      if (kind.stem) byStem.set(kind.stem, (byStem.get(kind.stem) ?? 0) + n);
    } else if (kind.class === 'chain') classes.chains += n;
    else if (kind.class === 'slip') classes.slips += n;
    else if (kind.class === 'picot') classes.picots += n;
  });
  return { ...classes, byKind, byStem };
}

const spaceCount = (tally: RowTally): number => tally.spaces.reduce((sum, s) => sum + s.n, 0);

/** "28 sts": stitches, and the gaps that stand for stitches; the one wide space of a corner is none. */
function withoutCorner(tally: RowTally): number[] {
  const [gaps, corner] = tally.spaces;
  const lone = tally.spaces.length === 2 && gaps && corner?.n === 1 && gaps.n > 1;
  return lone ? [tally.stitches + gaps.n] : [];
}

/** The counts of a row and its shape. */
interface Stated {
  readonly counts: readonly StatedCount[];
  readonly shape: RowShape;
  /** How many rows its label names. */
  readonly rows: number;
}

/** What a stated count may mean, most likely first. Empty: it cannot be compared. */
function meanings(hands: Hands, tally: RowTally, stated: StatedCount, row: Stated): number[] {
  const { shape } = row;
  const { stitches, chains, slips } = tally;
  const spaces = spaceCount(tally);
  const uses = [...tally.groups.values()].reduce((sum, n) => sum + n, 0);
  // Special stitches may be counted as one each, alone or with the stitches beside them.
  const groups = uses > 0 ? [uses, stitches - hands.inGroups + uses] : [];
  const alike = withoutCorner(tally);
  const slipped = shape.onlySlips ? [slips] : [];
  switch (stated.unit) {
    case null:
      return [
        ...slipped,
        stitches,
        stitches + spaces,
        stitches + chains,
        ...alike,
        ...(tally.boxes ? [tally.boxes] : []),
        ...(stitches === 0 ? [chains, spaces] : []),
        ...groups,
      ];
    case 'stitch':
      return [
        ...slipped,
        stitches,
        stitches + spaces,
        stitches + chains,
        ...alike,
        ...(stitches === 0 ? [chains] : []),
      ];
    case 'stem':
      return stemMeanings(hands, tally, stated, row.counts);
    case 'space': {
      const size = numberFor(hands, stated.chains);
      const exact = tally.spaces.find((space) => space.chains === size)?.n ?? 0;
      if (size !== null) return [exact];
      return [...loopsWithPicots(tally), spaces, ...(spaces === 0 ? groups : [])];
    }
    case 'chain':
      // "Ch 82 (82)": a foundation is no row; its chains are counted by themselves.
      if (shape.idle && hands.foundation) return [hands.foundation.to - hands.foundation.from];
      return stated.chains ? [spaces] : [chains, spaces, ...chainAtEnd(hands)];
    case 'box':
      return boxMeanings(hands, tally, stated);
    case 'group':
      return groupMeanings(hands, tally, stated, row);
    default:
      return [];
  }
}

/** "(15 picot loops)": a loop is one, however many picots stand on it. */
const loopsWithPicots = (tally: RowTally): number[] =>
  tally.midLoop > 0 ? [spaceCount(tally) - tally.midLoop] : [];

/** "(45 sts + 3 chs)": the chain at the row's end, though it is the next row's. */
function chainAtEnd(hands: Hands): number[] {
  const n = hands.pending ? numberFor(hands, hands.pending.n) : null;
  return n === null ? [] : [n];
}

/** One stem, or each of several by itself. */
const namesStems = (counts: readonly StatedCount[]): 'one' | 'several' =>
  new Set(counts.flatMap(({ unit, stem }) => (unit === 'stem' ? [stem] : []))).size > 1
    ? 'several'
    : 'one';

function stemMeanings(
  hands: Hands,
  tally: RowTally,
  stated: StatedCount,
  counts: readonly StatedCount[],
): number[] {
  const stem = stated.stem ? stemOf(stated.stem, hands.bench.terms) : null;
  if (stem === 'slip') return [tally.slips];
  const exact = stem ? (tally.byStem.get(stem) ?? 0) : 0;
  // "(24 dc)" of a row that mixes stitches is often said of them all; "(9 V-sts, 2 dc)" of those
  // beside the V-sts.
  const beside = besideGroups(hands, tally, { stated, exact, counts });
  const plain = [...tally.byKind].find(([kind]) => kind === stem || kind === `start ${stem}`)?.[1];
  if (exact === 0) return isOfOtherStems(tally, stem) ? [0] : [tally.stitches, 0];
  // "(1 dc, 22 closed blocks, 30 open blocks)": the dc beside the blocks, whose own are not told.
  const boxes = counts.some(({ unit, word }) => unit === 'box' || /^(?:open|closed)$/.test(word));
  if (boxes && numberFor(hands, stated.n) !== exact) return [];
  const all = namesStems(counts) === 'one' ? [tally.stitches] : [];
  // Alone, "14 dc" of 13 dc and a dc2tog leaves a stitch out of account; beside others it may not.
  const bare = counts.length > 1 ? plainOf(tally, stem, plain) : [];
  const bridged = all.length > 0 ? overOpening(hands, tally) : [];
  return [
    ...new Set([
      ...ofSeveral(hands, stated, { exact, counts }),
      exact,
      ...beside,
      ...all,
      ...bare,
      ...bridged,
    ]),
  ];
}

/** "5 sc, ch 7, skip 7 sc, 20 sc (32 sc)": a chain as long as the opening beneath it stands for its stitches. */
function overOpening(hands: Hands, { stitches, chains, spaces }: RowTally): number[] {
  const isOpening = spaces.every((space) => space.chains > 3 && hands.skips.has(space.chains));
  return spaces.length > 0 && isOpening ? [stitches + chains] : [];
}

/** "8 sc, 4 fpsc": stitches of one name told in several counts, which are all of them together. */
function ofSeveral(
  hands: Hands,
  stated: StatedCount,
  row: { readonly exact: number; readonly counts: readonly StatedCount[] },
): number[] {
  const others = row.counts.filter(
    (count) => count !== stated && count.unit === 'stem' && count.stem === stated.stem,
  );
  const rest = others.reduce((sum, { n }) => sum + (numberFor(hands, n) ?? 0), 0);
  return others.length > 0 && row.exact > rest ? [row.exact - rest] : [];
}

/** "(9 V-sts, 2 dc)": those beside the V-sts, be these worked by their name or written out. */
function besideGroups(
  hands: Hands,
  tally: RowTally,
  row: { stated: StatedCount; exact: number; counts: readonly StatedCount[] },
): number[] {
  if (row.stated.n.values.length === 0) return [];
  if (hands.inGroups > 0) return [row.exact - hands.inGroups];
  const written = row.counts.some(({ unit }) => unit === 'group') && row.exact === tally.stitches;
  if (!written) return [];
  const alone = standingAlone(hands);
  // "(5 3-dc groups, 1 dc + ch 3)": the start chain is told by itself.
  const told = row.counts.some(({ unit, chains }) => unit === 'chain' && chains === null);
  return told ? [alone, alone - 1] : [alone];
}

/** "(24 dc)" of a row that makes nothing but sc: every stitch has a name, and none has that one. */
function isOfOtherStems({ byStem, stitches }: RowTally, stem: StemId | null): boolean {
  if (stem === null || stitches === 0) return false;
  return [...byStem.values()].reduce((sum, n) => sum + n, 0) === stitches;
}

/** "20 dc, 2 pc": stitches of that name that are nothing but that stitch. */
function plainOf(tally: RowTally, stem: StemId | null, plain: number | undefined): number[] {
  if (stem === null || plain === undefined) return [];
  const start = tally.byKind.get(`start ${stem}`) ?? 0;
  return [(tally.byKind.get(stem) ?? 0) + start];
}

/** "2 sps, 8 bls": blocks are the filled boxes only, and are counted only where worked as boxes. */
function boxMeanings(hands: Hands, tally: RowTally, stated: StatedCount): number[] {
  const filled = /^(bl|block|solid|filled|closed)/.test(stated.word.toLowerCase());
  if (filled) return tally.boxes > 0 ? [hands.filled, tally.boxes] : [];
  if (tally.boxes > 0) {
    return [tally.boxes, tally.boxes - hands.filled, ...meshBoxes(tally)];
  }
  const blocks = blocksMade(hands);
  // Posts with no gap between them: what is called a box here, the hands do not know.
  if (blocks === 0 && tally.spaces.length === 0 && tally.stitches > 0) return [];
  return [spaceCount(tally), ...meshBoxes(tally), ...(blocks > 0 ? [blocks] : [])];
}

/**
 * Mesh told in stitches: n boxes with a gap of g take n(g + 1) places in rounds, one more in rows. A
 * longer chain at the end, for boxes that the next row adds, is none of this row's.
 */
function meshBoxes(tally: RowTally): number[] {
  const [space, wider, ...more] = tally.spaces;
  const isLast = wider?.n === 1 && wider.chains === tally.lastChains;
  const gap = more.length === 0 && (!wider || isLast) ? (space?.chains ?? 0) : 0;
  const places = tally.stitches + tally.chains - (isLast ? tally.lastChains : 0);
  return gap === 0 ? [] : [places, places - 1].map((n) => n / (gap + 1)).filter(Number.isInteger);
}

/** Blocks of mesh told in stitches: the boxes that are no spaces; or runs of stitches between spaces. */
function blockMeanings(hands: Hands, tally: RowTally): number[] {
  const boxes = meshBoxes(tally).map((n) => n - spaceCount(tally));
  return boxes.length > 0 ? [...boxes, ...runsOfStitches(hands)] : [];
}

/** How many runs of stitches the row at hand has, parted by chains. */
function runsOfStitches({ nodes, rowFrom, bench }: Hands): number[] {
  let runs = 0;
  let isIn = false;
  for (let id = rowFrom; id < nodes.n; id++) {
    const kind = bench.kinds.kinds[nodes.kind[id] ?? 0];
    if (kind?.counted && !isIn) runs++;
    isIn = kind?.counted ?? false;
  }
  return [runs];
}

function groupMeanings(hands: Hands, tally: RowTally, stated: StatedCount, row: Stated): number[] {
  const word = stated.word.toLowerCase();
  // "(1 beg PC, 7 PC)" tells them apart.
  const all = begunAs(hands, word);
  const begun = row.counts.some((other) => all.has(other.word.toLowerCase())) ? NONE : all;
  const named = tally.groups.get(word) ?? tally.groups.get(otherName(hands, word));
  if (named !== undefined) {
    const all = named + sumOf(tally.groups, (name) => begun.has(name));
    return [beginsWith(hands, word) || firstIsLegs(hands, row) ? all + 1 : all];
  }
  // A "dc3tog" in one place is a cluster by another name.
  const drawn = word === 'cluster' ? 'together' : word;
  const byName = sumOf(tally.byKind, (kind) => kind.includes(word));
  const n = word ? byName || sumOf(tally.byKind, (kind) => kind.includes(drawn)) : 0;
  // "Beginning 3-dc cluster" has the name of the others in its own, and is among them.
  const isAmong = (kind: string): boolean =>
    word !== '' && kind.includes(byName > 0 ? word : drawn);
  const first = sumOf(
    tally.byKind,
    (kind) => !isAmong(kind) && begun.has(kind.slice(kind.indexOf('"') + 1, -1)),
  );
  if (n + first === 0) {
    if (/^groups?$/.test(word)) return [...groupsInPlaces(hands)];
    const named = { word, stated: numberFor(hands, stated.n), steps: row.shape.steps };
    return [...groupsNamed(hands, named)];
  }
  const made = n + first;
  // "Ch 3, dc in same st, *dc2tog in next st": the chain and its dc are the first cluster.
  const isBegun =
    firstIsLegs(hands, row) || row.shape.besideChain || (byName > 0 && beginsWithCluster(hands));
  return word === 'cluster' && isBegun ? [made, made + 1] : [made];
}

/** "(5 V-sts)" of the stitch defined as "V-stitch (VS)": its key. */
function otherName({ bench }: Hands, word: string): string {
  const same = short(word);
  for (const [key, { aliases }] of bench.specials)
    if (short(key) === same || aliases.some((alias) => short(alias) === same)) return key;
  return word;
}

const short = (name: string): string => name.toLowerCase().replace(/[ -]*stitch(?:es)?$/, '-st');

/** "Ch 3, 2 dc in first st", where a half shell is 3 dc: the start chain and they make the first one. */
function beginsWith({ nodes, rowFrom, bench }: Hands, word: string): boolean {
  const special = bench.specials.get(word);
  if (!special || bench.kinds.kinds[nodes.kind[rowFrom] ?? 0]?.class !== 'start') return false;
  const foot = firstAnchor(nodes, rowFrom);
  let n = 0;
  for (let id = rowFrom; id < nodes.n && firstAnchor(nodes, id) === foot; id++) n++;
  return foot !== NOWHERE && n > 1 && n === stitchesIn(special);
}

/** Stitches of a definition that is plain stitches in one place; 0 for any other. */
const stitchesIn = ({ steps }: SpecialStitch): number =>
  steps.every((step) => step.kind === 'work' && step.stitch.shape === 'one')
    ? steps.reduce((sum, step) => sum + (step.kind === 'work' ? (step.n?.values[0] ?? 1) : 0), 0)
    : 0;

/** "Ch 3, dc2tog, ch 2, *cluster, ch 2": the chain and what is drawn together are the first cluster. */
function beginsWithCluster({ nodes, rowFrom, bench }: Hands): boolean {
  const first = bench.kinds.kinds[nodes.kind[rowFrom] ?? 0];
  const second = bench.kinds.kinds[nodes.kind[rowFrom + 1] ?? 0];
  return (first?.class === 'start' || first?.class === 'low') && second?.shape === 'together';
}

/** "Ch 3, dc in same st (counts as cl)": the first cluster, which no name tells. */
const firstIsLegs = ({ nodes, rowFrom, bench }: Hands, { shape }: Stated): boolean =>
  shape.chainIsLeg && bench.kinds.kinds[nodes.kind[rowFrom + 1] ?? 0]?.shape === 'one';

const NONE: ReadonlySet<string> = new Set();

/** "Beg PC", where PC is short for popcorn: the popcorn that the start chain begins is one too. */
function begunAs({ bench }: Hands, word: string): ReadonlySet<string> {
  const names = new Set([word, ...(bench.specials.get(word)?.aliases ?? [])]);
  const begun = [...bench.specials.keys()].filter((key) => {
    const rest = /^(?:beg|beginning|start|starting|initial|first) (.+)$/.exec(key)?.[1];
    return rest !== undefined && names.has(rest);
  });
  return new Set(begun);
}

const sumOf = (counts: ReadonlyMap<string, number>, counted: (name: string) => boolean): number =>
  [...counts].reduce((sum, [name, n]) => sum + (counted(name) ? n : 0), 0);

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
      unitWord: stated.word || stated.stem || '',
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

/**
 * "(27, not counting the ch)": the words themselves explain one stitch of difference, where the chain
 * is read otherwise.
 */
function excused(
  { byKind }: RowTally,
  { startChainIncluded }: StatedCount,
  { value, computed }: { readonly value: number; readonly computed: number },
): boolean {
  if (startChainIncluded === null) return false;
  const isCounted = [...byKind.keys()].some((kind) => kind.startsWith('start '));
  if (startChainIncluded === isCounted) return false;
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
