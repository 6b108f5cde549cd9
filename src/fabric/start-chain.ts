/** The chain at a row's start: does it count, and as what? (Survey section 9 is the order of trial.) */
import {
  type ChainStep,
  type CountsAs,
  heightOf,
  type StandingOrder,
  type StemId,
  stemOf,
} from '../notation/index.ts';
import { rotated } from './edge.ts';
import { fact, type Hands, make, numberFor, originFor, spanAt, type Target } from './hands.ts';
import { kindOf } from './kinds.ts';
import { ask } from './readings.ts';
import { allSteps, firstStemOf, orderFor, type RowShape } from './shape.ts';
import { takeStitch } from './take.ts';

/** Why a chain is read as it is, for the list of conventions. */
export type Because = 'note' | 'join' | 'words' | 'custom';

export interface StartReading {
  readonly counts: boolean;
  readonly stem: StemId;
  /** Chains left over beside the stitch: a first space. */
  readonly gap: number;
  readonly because: Because;
  /** The place on which it stands is worked last, by a stitch of the round. */
  readonly footLast?: boolean;
  /** It is a space of its own, as the others of its row: the next row works into it. */
  readonly isSpace?: boolean;
  /** One chain of it is as high as the stitch; the rest, `gap`, is a space as the others of its row. */
  readonly isMesh?: boolean;
  /** It is no stitch of its own, and yet stands in the first place: a leg of what is drawn together there. */
  readonly isLeg?: boolean;
}

/** Which counted stitch a starting chain of `n` stands for when nothing is said (common practice). */
const CUSTOM_COUNTS = (n: number, stem: StemId): boolean =>
  stem !== 'w0' && n >= 3 && n >= Math.floor(heightOf(stem));

/** The stitch whose height the chain has, if the row's own stitch is not known. */
const stemOfHeight = (n: number): StemId =>
  n <= 1 ? 'w0' : n === 2 ? 'w1h' : n === 3 ? 'w1' : n === 4 ? 'w2' : n === 5 ? 'w3' : 'w4';

function joinEvidence(shape: RowShape): boolean | null {
  const place = shape.join?.place;
  if (!place) return null;
  const noun = (place.of ?? place).nouns[0];
  if (noun?.kind === 'start-chain') return true;
  if (place.pick === 'nth' && noun?.kind === 'chain') return true;
  // "In first dc", "to top of 1st dc": not to the chain.
  if ((place.of ?? place).pick === 'first' && noun?.kind === 'stem') return false;
  return null;
}

/** The reading of a starting chain: its own words, the notes, the join, else doubt and custom. */
export function readStartChain(
  hands: Hands,
  step: ChainStep,
  row: { shape: RowShape; orders: readonly StandingOrder[] },
): StartReading {
  const reading = settle(hands, step, row);
  const n = numberFor(hands, step.n) ?? 1;
  if (reading.because !== 'custom') {
    const alternatives = [reading.counts ? 'does not count' : 'counts'];
    hands.settled.set(`start-chain ${n}`, {
      ...spanAt(hands, step),
      reading: reading.counts ? 'counts' : 'does not count',
      alternatives,
      because: reading.because,
    });
  }
  return reading;
}

function settle(
  hands: Hands,
  step: ChainStep,
  row: { shape: RowShape; orders: readonly StandingOrder[] },
): StartReading {
  const n = numberFor(hands, step.n) ?? 1;
  const rowStem = stemOfRow(hands, row.shape, n);
  const said = (counts: CountsAs, because: Because): StartReading => {
    const stem = (counts.stem ? stemOf(counts.stem, hands.bench.terms) : null) ?? rowStem;
    return { counts: counts.counts, stem, gap: gapSaid(counts, n, stem), because };
  };
  if (step.countsAs) {
    const told = said(step.countsAs, 'words');
    if (told.counts && step.countsAs.chains > 0) hands.bench.toldGaps.set(n, told.gap);
    return told;
  }
  // As a leg of a cluster it is no stitch of its own, whatever the notes say of it elsewhere.
  if (row.shape.chainIsLeg && n > 1)
    return { counts: false, stem: rowStem, gap: 0, because: 'custom', isLeg: goesOn(row.shape) };
  const order = orderFor(row.orders, n);
  if (order && (order.n === n || n <= 4)) {
    // "Beginning chain counts as a stitch", of pieces whose ch 1 before sc does not: their counts tell.
    const loose = order.n === null && n === 1 && order.countsAs.counts && rowStem === 'w0';
    return loose && !isCounted(hands, step)
      ? { counts: false, stem: rowStem, gap: 0, because: 'custom' }
      : said(order.countsAs, 'note');
  }
  // "Ch 6 (counts as dc and ch 2)" said once holds for the ch 6 of later rows whose spaces are as wide.
  const toldGap = hands.bench.toldGaps.get(n) ?? 0;
  const tall = Math.max(0, n - Math.floor(heightOf(rowStem)));
  const gap = row.shape.chainLengths.has(toldGap)
    ? toldGap
    : gapBeside(hands, step, row.shape, tall);
  const joined = joinEvidence(row.shape);
  if (joined !== null && n > 1) {
    // "Join in 2nd ch of beg ch-3": the join tells which chain is the stitch's top.
    const top = row.shape.join?.place?.nth ?? null;
    // "Ch 5, tr in same st … join to top of ch-5": a tall chain, with no space of one chain beside it.
    const tall = gap === 1 && namesTop(row.shape) && row.shape.firstWork?.place?.pick === 'same';
    const rest = top !== null && top <= n ? n - top : tall ? 0 : gap;
    const counts = joined && (n > 3 || top !== null || joinedOnly(hands, step, n));
    const because = counts === joined ? 'join' : 'custom';
    return { counts, stem: rowStem, gap: rest, because };
  }
  if (n === 1) return { counts: false, stem: rowStem, gap: 0, because: 'custom' };
  if (row.shape.opensAsGroup === n)
    return { counts: false, stem: rowStem, gap: 0, because: 'words', isSpace: true };
  if (opensMesh(n, rowStem, row.shape)) return inMesh(hands, step, { n, stem: rowStem });
  const custom = customFor(n, rowStem, row.shape);
  // Beside rows that open in the first stitch, those that skip it have a chain that stands for it.
  const name = `start-chain ${n}`;
  const reading = ask(hands.readings, {
    doubt: row.shape.skipsFirst ? `${name} for the first` : name,
    custom,
    alternatives: [custom === 'counts' ? 'does not count' : 'counts'],
    local: false,
    ...spanAt(hands, step),
  });
  const counts = reading === 'counts';
  const footLast = counts && mayFillFoot(row.shape) && worksFootLast(hands, step, n);
  return { counts, stem: rowStem, gap, because: 'custom', footLast };
}

/** The other legs of the first cluster stand in the next places. */
const goesOn = ({ firstWork }: RowShape): boolean =>
  firstWork?.place?.pick === 'next' && firstWork.place.n !== null;

/**
 * "Ch 4, dc in same sp, *ch 7, 2 dc in next sp": the first two of a round whose stitches have no single chain
 * between them anywhere. The chain is but one too tall, and no space for the next round.
 */
function gapBeside(hands: Hands, step: ChainStep, shape: RowShape, gap: number): number {
  // "Ch 2, turn, sc in same st, ch 1, sk 1": two stitches in the first place, with no space between them.
  if (gap === 1 && numberFor(hands, step.n) === 2 && shape.firstWork?.place?.pick === 'same')
    return 0;
  if (gap !== 1 || !shape.besideChain || shape.chainLengths.has(gap)) return gap;
  const reading = ask(hands.readings, {
    doubt: `gap of the start-chain ${numberFor(hands, step.n) ?? 1}`,
    custom: 'none',
    alternatives: ['a space'],
    local: false,
    ...spanAt(hands, step),
  });
  return reading === 'none' ? 0 : gap;
}

/** The round is joined, its first stitch is not beside the chain, and none of its words say "each st around". */
const mayFillFoot = ({ join, firstWork, steps }: RowShape): boolean =>
  join !== null &&
  firstWork?.place?.pick !== 'same' &&
  ![...allSteps(steps)].some(
    (step) =>
      step.kind === 'work' &&
      (step.until !== null || (step.place?.pick === 'each' && step.place.n === null)),
  );

/**
 * "Ch 3, 2 dc in next 7 dc, dc in last st, join" on 8: some makers work the last stitch of each round into the
 * place on which its chain stands, though the chain counts; the counts of all the part show it.
 */
const worksFootLast = (hands: Hands, step: ChainStep, n: number): boolean =>
  hands.edge.ring &&
  hands.into === null &&
  hands.last === null &&
  ask(hands.readings, {
    doubt: `foot of the start-chain ${n}`,
    custom: 'taken by the chain',
    alternatives: ['worked last'],
    local: false,
    whole: true,
    ...spanAt(hands, step),
  }) === 'worked last';

/** "Ch 2, turn, *sc in next ch-1 sp, ch 1*": a chain to turn with, and one that is a space as the others are. */
const opensMesh = (
  n: number,
  stem: StemId,
  { firstWork, join, goesRound, chainLengths }: RowShape,
): boolean =>
  n === 2 &&
  stem === 'w0' &&
  !join &&
  !goesRound &&
  chainLengths.has(1) &&
  firstWork?.place?.nouns[0]?.kind === 'space';

function inMesh(
  hands: Hands,
  step: ChainStep,
  { n, stem }: { n: number; stem: StemId },
): StartReading {
  const reading = ask(hands.readings, {
    doubt: `start-chain ${n} of a mesh`,
    custom: 'a space',
    alternatives: ['does not count', 'counts'],
    local: false,
    ...spanAt(hands, step),
  });
  const isSpace = reading === 'a space';
  return { counts: reading === 'counts', stem, gap: 1, because: 'custom', isMesh: isSpace };
}

const isCounted = (hands: Hands, step: ChainStep): boolean =>
  ask(hands.readings, {
    doubt: 'start-chain 1',
    custom: 'counts',
    alternatives: ['does not count'],
    local: false,
    ...spanAt(hands, step),
  }) === 'counts';

const namesTop = ({ join }: RowShape): boolean =>
  join?.place?.pick === 'top' && join.place.of?.nouns[0]?.kind === 'start-chain';

/**
 * "Join in top of ch 2" has the chain count; some makers close each round there though theirs never
 * does, which the counts of all the part then show.
 */
const joinedOnly = (hands: Hands, step: ChainStep, n: number): boolean =>
  ask(hands.readings, {
    doubt: `start-chain ${n} joined to`,
    custom: 'counts',
    alternatives: ['does not count'],
    local: false,
    whole: true,
    ...spanAt(hands, step),
  }) === 'counts';

function gapSaid(counts: CountsAs, n: number, stem: StemId): number {
  // Only as many chains as the chain has: words that run on ("… as dc and the beg ch 4 as …") say more.
  if (counts.chains > 0 && counts.chains < n) return counts.chains;
  // "Ch 2 (counts as a st)" before single crochet is no more than that.
  if (n === 2) return 0;
  // "Ch 5 (counts as dc and a space)" names no number; a plain "counts as dc" has no gap at all.
  return counts.stem === null ? Math.max(0, n - Math.max(1, Math.floor(heightOf(stem)))) : 0;
}

function stemOfRow(hands: Hands, shape: RowShape, n: number): StemId {
  const stitch = shape.firstWork?.stitch;
  const word = stitch?.stem ?? firstStemOf(hands.bench.specials.get(stitch?.special ?? ''));
  const stem = word ? stemOf(word, hands.bench.terms) : null;
  if (stem && stem !== 'slip') return stem;
  return shape.firstWork ? hands.stem : stemOfHeight(n);
}

function customFor(n: number, stem: StemId, shape: RowShape): string {
  const pick = shape.firstWork?.place?.pick;
  // "Ch 2, dc in same st": the chain leaves the first place to the stitch.
  if (pick === 'same' && shape.firstWork?.n === null && n < 3) return 'does not count';
  if (shape.opensWithOwn) return 'does not count';
  // "Ch 2, turn, skip first st": the chain stands for the stitch that is skipped.
  if (n >= 2 && stem !== 'w0' && shape.skipsFirst) return 'counts';
  return CUSTOM_COUNTS(n, stem) ? 'counts' : 'does not count';
}

/** Makes the starting chain as read. A counted one takes the first place, unless it stands in one. */
export function makeStartChain(hands: Hands, step: ChainStep, reading: StartReading): void {
  const n = numberFor(hands, step.n) ?? 1;
  const origin = originFor(hands, step);
  if (!reading.counts) {
    // A long uncounted chain before single crochet is a loop of lace: the next row may work in it.
    if (reading.isSpace || (n >= 3 && reading.stem === 'w0')) return makeChains(hands, n, origin);
    const into =
      hands.into ??
      hands.last ??
      (reading.isLeg ? (standing(hands) ?? takeStitch(hands, 'passed')) : null);
    const low = make(hands, kindOf(hands.bench.kinds, 'low'), origin, into);
    hands.startChains.set(low, { n, height: n, isTold: false });
    if (reading.isMesh) makeChains(hands, reading.gap, origin);
    return;
  }
  const into = hands.into ?? standing(hands) ?? takeStitch(hands, 'passed');
  if (reading.footLast) footToEnd(hands);
  hands.standing = false;
  const node = make(hands, kindOf(hands.bench.kinds, 'start', reading.stem), origin, into);
  const isTold = reading.because === 'words' && reading.gap > 0;
  hands.startChains.set(node, { n, height: n - reading.gap, isTold });
  makeChains(hands, reading.gap, origin);
}

/** The place just taken comes again, behind all others of the ring. */
function footToEnd(hands: Hands): void {
  hands.edge = rotated(hands.edge, hands.pos);
  hands.pos = 0;
  hands.used--;
}

/** Words that name a chain of a starting chain: is it the one that ends the stitch? */
export function checkNamedChain(
  hands: Hands,
  node: number,
  said: { readonly nth: number | null; readonly of: number | null },
  at: { from: number; to: number },
): void {
  // Numbers of nodes that were taken back are given again: only a starting chain is looked up.
  const chain = hands.startChains.get(node);
  const kind = hands.bench.kinds.kinds[hands.nodes.kind[node] ?? 0];
  if (!chain || node >= hands.nodes.n || (kind?.class !== 'start' && kind?.class !== 'low')) return;
  const { n, height, isTold } = chain;
  // "Top of ch 3" of a ch 4 that is a dc and a ch 1: the chain of the stitch alone.
  if (said.of !== null && said.of !== n && !(isTold && said.of === height)) {
    const ofStart = node < hands.rowFrom ? 'beneath' : 'here';
    fact(hands, { kind: 'space-size', named: said.of, found: n, ofStart, ...at });
  } else if (said.nth !== null && said.nth !== height && kind.class === 'start') {
    const what = `chain ${said.nth} of the starting ch ${n}, whose stitch ends in chain ${height}`;
    fact(hands, { kind: 'no-place', what, ...at });
  }
}

/** Where the hook stands already: in a ring, in a space, or on a stitch that a slip stitch took. */
function standing(hands: Hands): Target | null {
  if (hands.last) return hands.last;
  if (hands.edge.kind === 'into') {
    const target = { node: hands.edge.node[0] ?? -1, space: true, entry: -1 };
    hands.first ??= target;
    hands.last = target;
    return target;
  }
  return null;
}

export function makeChains(hands: Hands, n: number, origin: number): void {
  const kind = kindOf(hands.bench.kinds, 'chain');
  if (n > hands.bench.limit.stitches)
    fact(hands, { kind: 'limit', what: 'stitches', from: hands.base, to: hands.base });
  for (let i = 0; i < n; i++) make(hands, kind, origin, null);
}
