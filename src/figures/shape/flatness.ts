/**
 * Flat, cupping or ruffling, by arithmetic: what a round is round, against what it would have to be to
 * lie flat. Each round adds its height to the radius, so a flat circle grows by 2 pi h, a flat figure
 * with c corners by 2 c tan(pi / c) h, and straight sides (an oval round a chain) stay as they are.
 */
import { PI, tan } from '../../units/index.ts';
import { firstAnchorOf, type GraphRow, rowLengthMm, type StitchGraph } from './stitch-graph.ts';

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
    girths.push({ row, girthMm, ...traits, corners, growth });
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

/** As many long chains as this in a round are lace, not handles. */
const LACE = 5;

const hasHandles = ({ arches }: Pick<RoundGirth, 'arches'>): boolean => arches > 0 && arches < LACE;

type Measured = Omit<RoundGirth, 'flatGirthMm' | 'lies'>;

/**
 * Rounds are judged by what has gathered, not one by one: an even round between increases lies flat with
 * them, and an oval whose ends grow a little fast is still flat for a while.
 */
function judged(girths: readonly Measured[], startMm: number): readonly RoundGirth[] {
  let flat = startMm;
  return girths.map((girth, i) => {
    // A round that stands on nothing that is known is as long as it is.
    const stands = girth.heightMm > 0;
    const next = stands ? flat + flatGrowthMm(girth.heightMm, girth.corners) : girth.girthMm;
    const slack = i < 2 ? FIRST_STITCHES * girthOfStitchMm(girth) : 0;
    const lies = liesOf(
      girths,
      i,
      Math.min(girth.girthMm, Math.max(next, girth.girthMm - slack)) / next,
    );
    flat = lies === 'flat' || lies === 'ruffles' ? next : girth.girthMm;
    return { ...girth, flatGirthMm: next, lies };
  });
}

/** The first rounds may hold a few stitches more or less: the middle of a piece gives or closes up. */
const FIRST_STITCHES = 6;

const girthOfStitchMm = ({ girthMm, row }: Measured): number => girthMm / (row.to - row.from);

function liesOf(girths: readonly Measured[], i: number, ratio: number): Lies {
  const girth = girths[i]!;
  const { growth } = girth;
  const gives = girth.hasSpaces || girths[i - 1]?.hasSpaces || girth.corners > 0;
  const hidden = gives ? HIDDEN_IN_LACE : HIDDEN;
  if (growth <= HIDDEN - 1) return 'closes';
  if (isEdging(girths, i)) return 'flat';
  if (ratio < 1 - hidden || (growth < 1 - HIDDEN && !goesOn(girths, i))) return 'rises';
  return ratio > 1 + hidden && growth > 1 ? 'ruffles' : 'flat';
}

/** Does the piece go on growing flat about here, taken over three rounds? */
function goesOn(girths: readonly Measured[], i: number): boolean {
  const near = girths.slice(Math.max(0, i - 1), i + 2);
  const later = girths.slice(i + 1, i + 3);
  const mean = near.reduce((sum, { growth }) => sum + growth, 0) / Math.max(1, near.length);
  return later.some((girth) => girth.growth >= 1 - HIDDEN) && mean >= (1 - HIDDEN) / 2;
}

/** One last round without increases finishes a flat piece: it stretches to fit. */
const isEdging = (girths: readonly Measured[], i: number): boolean =>
  i >= 4 &&
  i === girths.length - 1 &&
  girths[i]!.growth < 1 - HIDDEN &&
  girths[i - 1]!.growth >= 1 - HIDDEN;

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
  let arches = 0;
  for (let i = row.from, run = 0; i < row.to; i++) {
    run = graph.isChain[i] ? run + 1 : 0;
    if (run === LONGEST_SPACE + 1) arches++;
    chains += graph.isChain[i]!;
    if (firstAnchorOf(graph, i) < 0) continue;
    height += graph.heightMm[i]!;
    standing++;
  }
  return {
    heightMm: standing > 0 ? height / standing : 0,
    corners: cornersOf(graph, row),
    hasSpaces: chains > 0,
    arches,
    grows: standing > 0 && row.to - row.from > 0,
  };
}

/** A chain longer than this stands up from the round beneath instead of lying along it. */
const LONGEST_SPACE = 2;

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
