/** How wide and high a row is, from its counts and the gauge of its fabric. */
import type { KindTable, RowRecord } from '../fabric/index.ts';
import {
  type BoxSize,
  boxSize,
  fabricGauge,
  type Gauge,
  type Gauges,
  type Had,
} from '../gauge/index.ts';
import { heightOf, type StemId, wordFor } from '../notation/index.ts';
import { type Figure, figureOf } from './figure.ts';

export interface RowSize {
  /** Along the row: once across, or once around. */
  readonly width: Figure;
  readonly height: Figure;
  /** Stitches and chains side by side along the row. */
  readonly places: number;
  /** Chains in long spaces that open the fabric, handles and straps; 0 for none. */
  readonly strapChains: number;
  readonly straps: number;
  readonly stem: StemId;
  readonly isMesh: boolean;
  /** Lace: stitches of several heights, or chain loops, follow no one gauge. */
  readonly isLoose: boolean;
  /** Chain loops hang from it: laid straight they would be longer than the edge. */
  readonly isLoops: boolean;
}

/** A chain space this long is a strap or an opening, no fabric (ours). */
const STRAP = 10;
/** Rows of mixed heights or lacy rows follow no one gauge: judgement. */
const MIXED_SPREAD = 0.15;
const LOOP_SPREAD = 0.25;

/** Gauges asked for once a stitch and not once a row. */
export interface SizeTable {
  readonly gauges: Gauges;
  readonly kinds: KindTable;
  readonly stitches: Map<StemId, Gauge>;
  readonly boxes: Map<string, BoxSize>;
  /** A gauge is given "in pattern", which holds for rows of mixed stitches too. */
  readonly isInPattern: boolean;
}

export const newSizeTable = (gauges: Gauges, kinds: KindTable): SizeTable => ({
  gauges,
  kinds,
  stitches: new Map(),
  boxes: new Map(),
  isInPattern: gauges.records.some(({ patternHeight }) => patternHeight !== null),
});

/** Size of one stitch of this kind, from the table. */
export function stitchSize(table: SizeTable, stem: StemId): Gauge {
  const known = table.stitches.get(stem);
  if (known) return known;
  const gauge = fabricGauge(table.gauges, stem);
  table.stitches.set(stem, gauge);
  return gauge;
}

function boxOf(table: SizeTable, post: StemId, gap: number): BoxSize {
  const key = `${post} ${gap}`;
  const known = table.boxes.get(key);
  if (known) return known;
  const box = boxSize(table.gauges, { post: wordFor(post, table.gauges.terms), gap });
  table.boxes.set(key, box);
  return box;
}

export function rowSize(row: RowRecord, table: SizeTable): RowSize {
  const { stitches, spaces } = row.tally;
  const { stem, share } = mainStem(row, table.kinds);
  const short = spaces.filter(({ chains }) => chains < STRAP);
  const long = spaces.filter(({ chains }) => chains >= STRAP);
  const shortChains = short.reduce((sum, { chains, n }) => sum + chains * n, 0);
  const strapChains = long.reduce((sum, { chains, n }) => sum + chains * n, 0);
  const gap = mainGap(short);
  const isMesh = isMeshRow(row, stem, short);
  const places = boxPlaces(row, gap) ?? stitches + shortChains + strapChains;
  const rest = {
    places,
    strapChains,
    straps: long.reduce((sum, { n }) => sum + n, 0),
    stem,
    isMesh,
  };
  if (isMesh) {
    const box = boxOf(table, stem, gap);
    const width = (places * box.widthMm) / (gap + 1);
    return {
      ...rest,
      isLoose: false,
      isLoops: false,
      width: figureOf(width, box),
      height: figureOf(box.heightMm, box),
    };
  }
  const gauge = stitchSize(table, stem);
  // Counted in pattern, the mix of stitches is in the count.
  const isCounted = table.isInPattern && gauge.how === 'swatch';
  const isLoose = !isCounted && (share < 0.7 || shortChains > stitches / 2);
  const isLoops = heightOf(stem) <= 1 && gap >= 3 && shortChains > stitches;
  const loose = (had: Had): Had => {
    if (isLoops) return { ...looser(had, LOOP_SPREAD), because: `${had.because} ${LOOPS_SAID}` };
    return isLoose ? looser(had, MIXED_SPREAD) : had;
  };
  // A loop hangs about half its chains high.
  const loopMm = isLoops ? (gap / 2) * gauge.stitchWidthMm : 0;
  return {
    ...rest,
    isLoose,
    isLoops,
    width: { ...figureOf(places * gauge.stitchWidthMm, loose(gauge.width)), count: places },
    height: figureOf(gauge.rowHeightMm + loopMm, loose(gauge.height)),
  };
}

/** No swatch of plain stitches measures loops. */
const looser = (had: Had, spread: number): Had => ({
  ...had,
  how: had.how === 'swatch' && spread === LOOP_SPREAD ? 'estimate' : had.how,
  spread: Math.max(had.spread, spread),
});

const LOOPS_SAID = 'Chain loops are taken to hang half as high as they are long.';

/** Lacets and bars have more chains than they are wide: there the boxes are counted. */
function boxPlaces({ tally, ring }: RowRecord, gap: number): number | null {
  if (tally.boxes === 0) return null;
  const places = tally.boxes * (gap + 1) + (ring ? 0 : 1);
  const made = tally.stitches + tally.spaces.reduce((sum, { chains, n }) => sum + chains * n, 0);
  return Math.abs(made / places - 1) <= MIXED_SPREAD ? places : null;
}

type Spaces = RowRecord['tally']['spaces'];

/** The stitch that a row has most of, the taller of two alike, and its share. */
function mainStem(row: RowRecord, kinds: KindTable): { stem: StemId; share: number } {
  const tally = new Map<StemId, number>();
  let all = 0;
  for (const [name, n] of row.tally.byKind) {
    const stem = kinds.kinds[kinds.byName.get(name) ?? -1]?.stem;
    if (!stem || stem === 'slip') continue;
    tally.set(stem, (tally.get(stem) ?? 0) + n);
    all += n;
  }
  let best: StemId = 'w0';
  let most = 0;
  for (const [stem, n] of tally) {
    if (n > most || (n === most && heightOf(stem) > heightOf(best))) [best, most] = [stem, n];
  }
  return { stem: best, share: all === 0 ? 1 : most / all };
}

/** The commonest length of the short spaces. */
const mainGap = (spaces: Spaces): number => [...spaces].sort((a, b) => b.n - a.n)[0]?.chains ?? 1;

/** Boxes are counted, or tall stitches and short spaces stand in turn. */
function isMeshRow(row: RowRecord, stem: StemId, short: Spaces): boolean {
  if (row.tally.boxes > 0) return true;
  const spaces = short.reduce((sum, { chains, n }) => sum + (chains <= 4 ? n : 0), 0);
  return heightOf(stem) >= 2 && spaces >= 4 && spaces >= 0.8 * row.tally.stitches;
}
