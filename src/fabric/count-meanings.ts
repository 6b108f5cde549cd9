/** What a stated count may mean of a row: "(5 V-sts)", "(45 sts + 3 chs)", "2 sps, 8 bls". */
import { type StatedCount, type StemId, stemOf } from '../notation/index.ts';
import { blocksMade } from './corner-blocks.ts';
import { groupsInPlaces, groupsNamed, standingAlone } from './groups-made.ts';
import { type Hands, numberFor } from './hands.ts';
import { firstAnchor, NOWHERE } from './nodes.ts';
import type { RowShape } from './shape.ts';
import { put, runsOf } from './special-runs.ts';
import type { RowTally } from './tally.ts';

export const spaceCount = (tally: RowTally): number =>
  tally.spaces.reduce((sum, s) => sum + s.n, 0);

/** "28 sts": stitches, and the gaps that stand for stitches; the one wide space of a corner is none. */
export function withoutCorner(tally: RowTally): number[] {
  const [gaps, corner] = tally.spaces;
  const lone = tally.spaces.length === 2 && gaps && corner?.n === 1 && gaps.n > 1;
  return lone ? [tally.stitches + gaps.n] : [];
}

/** The counts of a row and its shape. */
export interface Stated {
  readonly counts: readonly StatedCount[];
  readonly shape: RowShape;
  /** How many rows its label names. */
  readonly rows: number;
}

/** What a stated count may mean, most likely first. Empty: it cannot be compared. */
export function meanings(
  hands: Hands,
  tally: RowTally,
  stated: StatedCount,
  row: Stated,
): number[] {
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
      // "(18 loops)" of a round without a chain: its stitches, as other languages say it.
      const stitchesSo = spaces === 0 && stated.word === 'loop' ? [stitches] : [];
      return [
        ...loopsWithPicots(tally),
        spaces,
        ...besideCorners(hands, tally, row),
        ...(spaces === 0 ? groups : []),
        ...stitchesSo,
      ];
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

/** "(12 dc and 4 corner spaces)": as many as there are spaces of the most chains; what else a corner is, is not known. */
function cornersMade(hands: Hands, { spaces }: RowTally, { n }: StatedCount): readonly number[] {
  const value = numberFor(hands, n);
  const most = Math.max(...spaces.map(({ chains }) => chains));
  const longest = spaces.find(({ chains }) => chains === most)?.n;
  return value !== null && value > 2 && value === longest ? [value] : NO_NUMBERS;
}

const NO_NUMBERS: readonly number[] = [];

/** "(24 dc, 4 corners and 4 side spaces)": the spaces beside those of the corners, which have chains of their own. */
function besideCorners(hands: Hands, { spaces }: RowTally, { counts }: Stated): number[] {
  const corners = counts.find(({ word }) => /^corner/.test(word));
  const n = corners ? numberFor(hands, corners.n) : null;
  const [longest, ...others] = spaces.toSorted((a, b) => b.chains - a.chains);
  if (n === null || longest?.n !== n || others.length === 0) return [];
  return [others.reduce((sum, space) => sum + space.n, 0)];
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
export const namesStems = (counts: readonly StatedCount[]): 'one' | 'several' =>
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
  const posts = stem ? postsOf(tally, stem, stated.word) : 0;
  if (posts > 0) return counts.length > 1 ? [posts] : [posts, exact, tally.stitches];
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

/** "6 FPdc": how many of them were worked round a post from that side. */
function postsOf({ byKind }: RowTally, stem: StemId, word: string): number {
  if (word === '') return 0;
  const name = word === 'FP' ? 'front-post' : 'back-post';
  return sumOf(byKind, (kind) => kind.startsWith(`${stem} `) && kind.includes(name));
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
export function blockMeanings(hands: Hands, tally: RowTally): number[] {
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
    const first = sumOf(tally.groups, (name) => begun.has(name));
    const isBegun = first === 0 && (beginsWith(hands, word) || firstIsLegs(hands, row));
    return [named + first + (isBegun ? 1 : 0)];
  }
  const corners = /^corner/.test(word) ? cornersMade(hands, tally, stated) : NO_NUMBERS;
  if (corners.length > 0) return [...corners];
  // A "dc3tog" in one place is a cluster by another name.
  const plain = word.replace(/ st(?:itch)?$/, '');
  const drawn = plain === 'cluster' ? 'together' : plain;
  const byName = sumOf(tally.byKind, (kind) => kind.includes(plain));
  const n = word ? byName || sumOf(tally.byKind, (kind) => kind.includes(drawn)) : 0;
  // "Beginning 3-dc cluster" has the name of the others in its own, and is among them.
  const isAmong = (kind: string): boolean =>
    word !== '' && kind.includes(byName > 0 ? plain : drawn);
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
  return plain === 'cluster' && isBegun ? [made, made + 1] : [made];
}

/** "(5 V-sts)" of the stitch defined as "V-stitch (VS)": its key. */
function otherName({ bench }: Hands, word: string): string {
  const same = short(word);
  for (const [key, { aliases }] of bench.specials)
    if (short(key) === same || aliases.some((alias) => short(alias) === same)) return key;
  return word;
}

const short = (name: string): string => name.toLowerCase().replace(/[ -]*stitch(?:es)?$/, '-st');

/**
 * "Ch 3, 2 dc in first st", where a half shell is 3 dc, or "ch 5, dc in same sp", where a V-st is dc, ch 2, dc:
 * the start chain and what stands beside it in one place make the first one.
 */
function beginsWith({ nodes, rowFrom, bench }: Hands, word: string): boolean {
  const special = bench.specials.get(word);
  const classAt = (id: number) => bench.kinds.kinds[nodes.kind[id] ?? 0]?.class;
  let first = rowFrom;
  while (classAt(first) === 'slip' && first < nodes.n) first++;
  if (!special || classAt(first) !== 'start') return false;
  const foot = firstAnchor(nodes, first);
  if (foot === NOWHERE) return false;
  const made: number[] = [1];
  for (let id = first + 1; id < nodes.n; id++) {
    const isChain = classAt(id) === 'chain';
    if (!isChain && firstAnchor(nodes, id) !== foot) break;
    put(made, isChain ? -1 : 1);
  }
  if ((made.at(-1) ?? 0) < 0) made.pop();
  return made.join() === runsOf(special).join() && made.join() !== '1';
}

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
