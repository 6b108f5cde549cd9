/**
 * Flat, cupping or ruffling, by arithmetic: what a round is round, against what it would have to be to
 * lie flat. Each round adds its height to the radius, so a flat circle grows by 2 pi h, a flat figure
 * with c corners by 2 c tan(pi / c) h, and straight sides (an oval round a chain) stay as they are.
 */
import { PI, tan } from '../../units/index.ts';
import { handlesIn, longSpacesIn } from './long-spaces.ts';
import { firstAnchorOf, type GraphRow, rowLengthMm, type StitchGraph } from './stitch-graph.ts';
import { type UsualGrowth, usualGrowth } from './usual.ts';

export interface RoundGirth {
  readonly row: GraphRow;
  /** Length round, mm. */
  readonly girthMm: number;
  /** From the round beneath, mm; the mean height of its stitches. */
  readonly heightMm: number;
  /** Corners that this round makes; 0 in a circle. */
  readonly corners: number;
  /** Chains stand in it: it gives, and its girth says little. */
  readonly hasSpaces: boolean;
  /** Long chains over the round beneath: a few are handles, many are lace. */
  readonly arches: number;
  /** What the girth grows by against what lies flat: 1 flat, 0 straight up, negative closing. */
  readonly growth: number;
  /** What published rounds of its stitch grow by; `null` where that is not known. */
  readonly usual: UsualGrowth | null;
  /** How long the round would be if the fabric had lain flat since it last stood up, mm. */
  readonly flatGirthMm: number;
  readonly lies: Lies;
}

/** flat: within what gauge and blocking hide. rises: a wall, a cone or a cup. closes: flat inwards. */
export type Lies = 'flat' | 'rises' | 'closes' | 'ruffles';

/**
 * What gauge and blocking hide: a girth up to 12 % off lies flat all the same (judgement). Lace and
 * corners give more.
 */
export const HIDDEN = 0.12;
const HIDDEN_IN_LACE = 0.5;

/** Length of the straight sides of all rounds, mm: the chain of an oval. */
export function straightMm(graph: StitchGraph): number {
  const [foundation] = graph.rows;
  if (!foundation || foundation.record || foundation.isRing || !graph.rows[1]?.isRing) return 0;
  return rowLengthMm(graph, foundation);
}

/** Does any round bear handles? */
export const bearsHandles = (graph: StitchGraph): boolean =>
  graph.rows.some((row) => row.record && row.isRing && hasHandles(traitsOf(graph, row)));

/** Rounds from the start on, as long as each goes round on the one beneath. */
export function roundGirths(graph: StitchGraph): readonly RoundGirth[] {
  const girths: Measured[] = [];
  let before = startGirthMm(graph);
  let corners = 0;
  for (const row of graph.rows) {
    if (!row.record) continue;
    if (!row.isRing) break;
    const traits = traitsOf(graph, row);
    // Above the first handles a round no longer goes round one outline.
    if (hasHandles(traits)) break;
    corners = traits.corners || (corners && traits.grows ? corners : 0);
    const girthMm = rowLengthMm(graph, row);
    const flat = flatGrowthMm(traits.heightMm, corners);
    const growth = flat > 0 ? (girthMm - before) / flat : 0;
    const usual = usualGrowth(row.stem, girthMm / Math.max(1, row.to - row.from));
    girths.push({ row, girthMm, ...traits, corners, growth, usual });
    before = girthMm;
  }
  return judged(withEarlyCorners(girths), startGirthMm(graph));
}

/** A square begins with a round that shows no corners yet: its first rounds are taken as the later ones. */
function withEarlyCorners(girths: readonly Measured[]): readonly Measured[] {
  const first = girths.findIndex(({ corners }) => corners > 0);
  const corners = girths[first]?.corners ?? 0;
  if (first < 1 || first > 3) return girths;
  const by = flatGrowthMm(1, 0) / flatGrowthMm(1, corners);
  return girths.map((girth, i) =>
    i < first ? { ...girth, corners, growth: girth.growth * by } : girth,
  );
}

const hasHandles = ({ arches }: Pick<RoundGirth, 'arches'>): boolean => arches > 0 && arches < LACE;

type Measured = Omit<RoundGirth, 'flatGirthMm' | 'lies'>;

/**
 * Rounds are judged by what has gathered, not one by one: an even round between increases lies flat with
 * them, and an oval whose ends grow a little fast is still flat for a while.
 */
function judged(girths: readonly Measured[], startMm: number): readonly RoundGirth[] {
  let isRuffled = false;
  let flat: Gathered = { flatMm: startMm, leastMm: startMm, mostMm: startMm };
  return girths.map((girth, i) => {
    const next = gathered(flat, girth);
    const slack = i < 2 ? FIRST_STITCHES * girthOfStitchMm(girth) : 0;
    const givenMm = Math.min(girth.girthMm, Math.max(next.flatMm, girth.girthMm - slack));
    const lies = liesOf(girths, i, { ...next, givenMm, isRuffled });
    isRuffled = lies === 'ruffles';
    const goesOn = lies === 'flat' || lies === 'ruffles';
    const { girthMm } = girth;
    flat = goesOn ? next : { flatMm: girthMm, leastMm: girthMm, mostMm: girthMm };
    return { ...girth, flatGirthMm: next.flatMm, lies };
  });
}

/** How long a round is that lies flat, and between which lengths usual rounds would leave it, mm. */
interface Gathered {
  readonly flatMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
}

function gathered({ flatMm, leastMm, mostMm }: Gathered, girth: Measured): Gathered {
  // A round that stands on nothing that is known is as long as it is.
  if (girth.heightMm <= 0) {
    return { flatMm: girth.girthMm, leastMm: girth.girthMm, mostMm: girth.girthMm };
  }
  const grows = flatGrowthMm(girth.heightMm, girth.corners);
  return {
    flatMm: flatMm + grows,
    leastMm: leastMm + Math.min(grows, girth.usual?.leastMm ?? grows),
    mostMm: mostMm + Math.max(grows, girth.usual?.mostMm ?? grows),
  };
}

/** The first rounds may hold a few stitches more or less: the middle of a piece gives or closes up. */
const FIRST_STITCHES = 6;

const girthOfStitchMm = ({ girthMm, row }: Measured): number => girthMm / (row.to - row.from);

interface Given extends Gathered {
  /** How long the round is, but for what the first rounds may have too much. */
  readonly givenMm: number;
  /** The round beneath ruffles. */
  readonly isRuffled: boolean;
}

function liesOf(
  girths: readonly Measured[],
  i: number,
  { flatMm, leastMm, mostMm, givenMm, isRuffled }: Given,
): Lies {
  const girth = girths[i]!;
  const { growth } = girth;
  const gives = girth.hasSpaces || girths[i - 1]?.hasSpaces || girth.corners > 0;
  const hidden = gives ? HIDDEN_IN_LACE : HIDDEN;
  if (growth <= HIDDEN - 1) return 'closes';
  const isLong = givenMm > Math.max(flatMm * (1 + hidden), mostMm / ROUNDING);
  if (isLong && (growth > 1 || isRuffled)) return 'ruffles';
  if (isEdging(girths, i)) return 'flat';
  const isShort = givenMm < Math.min(flatMm * (1 - hidden), leastMm * ROUNDING);
  return isShort || (growth < flatFrom(girth) && !goesOn(girths, i)) ? 'rises' : 'flat';
}

/** Sums of sizes are a hair off. */
const ROUNDING = 1 - 1e-6;

/** Share of flat growth from which a round goes on growing flat: gauge hides some, custom more. */
function flatFrom({ usual, heightMm, corners }: Measured): number {
  const usualShare = usual ? usual.leastMm / flatGrowthMm(heightMm, corners) : 1;
  return Math.min(1 - HIDDEN, usualShare * (1 - HIDDEN));
}

/** Does the piece go on growing flat about here, taken over three rounds? */
function goesOn(girths: readonly Measured[], i: number): boolean {
  const near = girths.slice(Math.max(0, i - 1), i + 2);
  const later = girths.slice(i + 1, i + 3);
  const mean = near.reduce((sum, { growth }) => sum + growth, 0) / Math.max(1, near.length);
  const from = flatFrom(girths[i]!);
  return later.some((girth) => girth.growth >= from) && mean >= from / 2;
}

/** One last round without increases finishes a flat piece: it stretches to fit. */
const isEdging = (girths: readonly Measured[], i: number): boolean =>
  i >= 4 &&
  i === girths.length - 1 &&
  girths[i]!.growth < flatFrom(girths[i]!) &&
  girths[i - 1]!.growth >= flatFrom(girths[i - 1]!);

/** What lies beneath the first round: nothing, a ring of chains, or both sides of a chain. */
function startGirthMm(graph: StitchGraph): number {
  const [first] = graph.rows;
  if (!first || first.record) return 0;
  return first.isRing ? rowLengthMm(graph, first) : 2 * straightMm(graph);
}

/** What a flat round grows by, mm. */
const flatGrowthMm = (heightMm: number, corners: number): number =>
  corners >= 3 ? 2 * corners * tan(PI / corners) * heightMm : 2 * PI * heightMm;

interface Traits {
  readonly heightMm: number;
  readonly corners: number;
  readonly hasSpaces: boolean;
  readonly arches: number;
  readonly grows: boolean;
}

function traitsOf(graph: StitchGraph, row: GraphRow): Traits {
  let height = 0;
  let standing = 0;
  let chains = 0;
  for (let i = row.from; i < row.to; i++) {
    chains += graph.isChain[i]!;
    if (firstAnchorOf(graph, i) < 0) continue;
    height += graph.heightMm[i]!;
    standing++;
  }
  const long = longSpacesIn(graph, row);
  return {
    heightMm: standing > 0 ? height / standing : 0,
    corners: cornersOf(graph, row),
    hasSpaces: chains > 0,
    arches: long >= LACE ? long : handlesIn(graph, row),
    grows: standing > 0 && row.to - row.from > 0,
  };
}

/** As many long chains as this in a round are lace, not handles. */
const LACE = 5;

/** Where every place holds as much as this, each is a corner: the second round of a square. */
const WHOLE_CORNER = 5;

/** A corner is a place that holds at least two more than the others, its chains among them. */
function cornersOf(graph: StitchGraph, row: GraphRow): number {
  const sizes: number[] = [];
  for (let i = row.from; i < row.to; ) {
    const place = graph.place[i]!;
    let end = i + 1;
    let last = i + 1;
    while (end < row.to && (graph.isChain[end] || graph.place[end] === place)) {
      end++;
      if (graph.place[end - 1] === place) last = end;
    }
    if (place >= 0 && !graph.isChain[i]) sizes.push(last - i);
    i = Math.max(last, i + 1);
  }
  if (sizes.length < 3) return 0;
  const usual = [...sizes].sort((a, b) => a - b)[sizes.length >> 1]!;
  const isAll = sizes.length <= 8 && sizes.every((size) => size >= WHOLE_CORNER);
  const corners = isAll
    ? sizes.length
    : sizes.filter((size) => size >= Math.max(3, usual + 2)).length;
  return corners >= 3 && corners <= 8 ? corners : 0;
}
