/**
 * A piece cut into what its maker would call base, side, crown: rows under one heading that grow,
 * stay or close alike. Each is measured as a surface of revolution, flat cloth or an oval.
 */
import type { RowRecord } from '../fabric/index.ts';
import { type Figure, NO_LENGTH, sumOf, surer, times } from './figure.ts';
import type { Piece } from './pieces.ts';
import type { RowSize } from './row-size.ts';

export type Growth = 'grows' | 'even' | 'closes' | 'straps';

export interface SizedRow {
  readonly row: RowRecord;
  readonly size: RowSize;
}

/** A run of rows with its measures. */
export interface Phase {
  readonly name: string;
  readonly growth: Growth;
  readonly rows: readonly SizedRow[];
  /** Along the work, row upon row. */
  readonly along: Figure;
  /** Around (or across) at the end of the phase, and where it begins. */
  readonly end: Figure;
  readonly begin: Figure;
  readonly widest: Figure;
}

/** Even rows shorter than this run stay part of a growing or closing one: they only slow it. */
const EVEN_RUN = 3;

export function phasesOf(piece: Piece, sizes: readonly RowSize[]): readonly Phase[] {
  const hung = withLoopsHung(sizes);
  const rows = piece.rows.map((row, at) => ({ row, size: hung[at]! }));
  const growths = isLace(piece, sizes) ? rows.map((): Growth => 'grows') : growthsOf(rows, piece);
  const phases: Phase[] = [];
  let from = 0;
  for (let at = 1; at <= rows.length; at++) {
    const isEnd =
      at === rows.length ||
      rows[at]!.row.part !== rows[from]!.row.part ||
      growths[at] !== growths[from];
    if (!isEnd) continue;
    const before = phases.at(-1)?.end;
    phases.push(phaseOf(rows.slice(from, at), growths[from]!, before));
    from = at;
  }
  return phases;
}

/** Loops hang from the row beneath: they neither widen a piece nor narrow it. */
function withLoopsHung(sizes: readonly RowSize[]): readonly RowSize[] {
  const hung: RowSize[] = [];
  for (const size of sizes) {
    const below = hung.at(-1);
    if (!below || !size.isLoops) hung.push(size);
    else {
      const spread = Math.max(below.width.spread, size.width.spread);
      hung.push({ ...size, places: below.places, width: { ...below.width, spread } });
    }
  }
  return hung;
}

/**
 * Rounds of lace from a ring: their counts tell no circumference, so they are one flat growth. A net of
 * loops that stay as many does not grow.
 */
function isLace({ start }: Piece, sizes: readonly RowSize[]): boolean {
  const loose = sizes.filter(({ isLoose }) => isLoose);
  const places = loose.map((size) => size.places);
  const grows = Math.max(...places) >= LACE_GROWS * Math.min(...places);
  return start === 'ring' && 2 * loose.length >= sizes.length && (grows || sizes[0]!.isLoose);
}

/** Ours: lace in rounds doubles its count many times over. */
const LACE_GROWS = 1.5;

function growthsOf(rows: readonly SizedRow[], { start, foundation }: Piece): Growth[] {
  let isStrapped = false;
  const raw = rows.map(({ size, row }, at): Growth => {
    // Under the next heading the strap is behind: a sock's leg after the opening of its heel.
    const isSamePart = at > 0 && rows[at - 1]!.row.part === row.part;
    isStrapped = (isStrapped && isSamePart) || size.strapChains > 0;
    if (isStrapped) return 'straps';
    // A chain joined to a ring is as long as the tube on it, both its sides are the fold of a pouch; a
    // ring grows out of nothing.
    const isFromNothing = row.ring && start === 'ring';
    const below = at > 0 ? rows[at - 1]!.size.places : isFromNothing ? 0 : foundation;
    if (below === 0) return row.ring ? 'grows' : 'even';
    // A foundation row may lose or gain a stitch at its end without being shaped.
    const isFold = at === 0 && start === 'oval';
    const free = at === 0 && !isFold ? 2 : 0;
    const by = size.places - (isFold ? 2 * below : below);
    return Math.abs(by) <= free ? 'even' : by > 0 ? 'grows' : 'closes';
  });
  // A plain first round belongs to the oval that grows on it.
  if (start === 'oval' && raw[0] === 'even' && raw[1] === 'grows') raw[0] = 'grows';
  return withoutShortEven(raw);
}

/** Even rows between growing ones belong to the growth, unless they are a run of their own. */
function withoutShortEven(raw: readonly Growth[]): Growth[] {
  const out = [...raw];
  let from = 0;
  while (from < out.length) {
    let to = from;
    while (to < out.length && raw[to] === raw[from]) to++;
    const before = from > 0 ? out[from - 1] : undefined;
    const after = raw[to];
    const isShort = raw[from] === 'even' && to - from < EVEN_RUN;
    if (isShort && before !== undefined && before !== 'straps' && before === after) {
      out.fill(before, from, to);
    }
    from = to;
  }
  return out;
}

function phaseOf(rows: readonly SizedRow[], growth: Growth, before: Figure | undefined): Phase {
  const [first] = rows;
  const widths = rows.map(({ size }) => size.width);
  const widest = widths.reduce((most, width) => (width.mm > most.mm ? width : most), NO_LENGTH);
  return {
    name: first!.row.part,
    growth,
    rows,
    along: sumOf(rows.map(({ size }) => size.height)),
    begin: before ?? (growth === 'grows' ? NO_LENGTH : first!.size.width),
    end: rows.at(-1)!.size.width,
    widest,
  };
}

/**
 * How far the phase rises out of the flat: a cone whose side is `along` and whose radius changes
 * from `begin` to `end` (right-angled triangle). Fabric gives, so up to 12 % of missing growth
 * blocks flat (judgement; the same allowance as for bases that cup).
 */
export function riseOf({ along, begin, end, growth }: Phase): Figure {
  if (growth === 'straps') return along;
  const slope = Math.abs(end.mm - begin.mm) / (2 * Math.PI) / along.mm;
  if (slope > 1 - FLAT_ALLOWANCE) return times(along, 0);
  return times(along, Math.sqrt(1 - slope * slope));
}

export const FLAT_ALLOWANCE = 0.12;

/** Does a growing phase of rounds lie flat? */
export const liesFlat = (phase: Phase): boolean => riseOf(phase).mm === 0;

/** Across a round base: twice its rounds, and its rim over pi; the two seldom agree to the mm. */
export function acrossRound({ along, end, rows }: Phase): Figure {
  const byRounds = times(along, 2);
  if (!rows.some(({ size }) => size.isLoose)) return surer(byRounds, times(end, 1 / Math.PI));
  return { ...byRounds, spread: Math.max(byRounds.spread, LACE_SPREAD) };
}

/** Lace opens in blocking as far as it is pulled: judgement. */
const LACE_SPREAD = 0.2;
