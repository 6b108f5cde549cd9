/**
 * Rows that are written out beside a chart, laid on its lines. Which row belongs to which line
 * of the chart is told by the row numbers: by the rows that do work the chart ("Rows 1-3" written,
 * "Rows 4-20: work chart"), by the numbers of those rows where the whole is written again,
 * else by the place at which most boxes agree. Where the text does not say that they follow the
 * chart, rows must agree with it for the most part: they may be rows of something else.
 */
import { type Cloth, meshRow, type RowRecord, usesOf } from '../../fabric/index.ts';
import { asPictured, extentOf, isBroken, meshOfGrid } from '../../filet/index.ts';
import type { Cell, Chart } from '../../manuscript/index.ts';
import type { Span } from '../../source/index.ts';
import type { Scene } from '../scene.ts';

/** Of all boxes, and of those that are not open in the one or the other (ours, tried on charts of 5 to 35 boxes). */
const AGREE = 0.8;
const AGREE_DRAWN = 0.6;
const AGREE_WITHIN = 0.9;
/** Where the text says that the rows follow the chart, it takes no more than a likeness. */
const AGREE_SAID = 0.5;
const AGREE_DRAWN_SAID = 0.3;

const SAID =
  /\b(?:rows?|rounds?|rnds?|words?|instructions)\b[^.]{0,60}\b(?:and|as|follows?|following|match(?:es)?|from)\b[^.]{0,30}\bcharts?\b|\bcharts?\b[^.]{0,60}\b(?:and|as|follows?|match(?:es)?|shows?)\b[^.]{0,30}\b(?:written|same|rows? above|rows? below)\b/i;

/** What came of laying rows on charts. */
export interface Ties {
  readonly tied: readonly Tie[];
  /** Charts that were sought in too many places to try them all. */
  readonly givenUp: readonly Chart[];
}

export function tiesIn(scene: Scene): Ties {
  const cloth = scene.fabric.cloths[0];
  const charts = scene.manuscript.charts.filter(
    ({ mesh, rows }) => mesh && rows.length > 0 && !rows.some(isBroken),
  );
  if (!cloth || charts.length === 0) return { tied: [], givenUp: [] };
  const taken = new Set<RowRecord>();
  const uses = new Map(
    charts.map((chart) => [chart, usesOf(chart, scene.fabric, cloth).map(useOf)] as const),
  );
  for (const some of uses.values()) for (const { record } of some) taken.add(record);
  const all = charts.map((chart) => ({
    chart,
    ...tieOf({ scene, cloth, chart, taken }, uses.get(chart) ?? []),
  }));
  const ties = all.flatMap(({ tie }) => tie ?? []);
  return {
    tied: ties.filter((tie) => ties.every((other) => other === tie || !isBetter(other, tie))),
    givenUp: all.flatMap(({ chart, tie, givenUp }) => (!tie && givenUp ? [chart] : [])),
  };
}

/** A row of the fabric that works a row of a chart by its name. */
interface Use {
  readonly record: RowRecord;
  /** Row of the chart, from 0 at the bottom. */
  readonly row: number;
}

const useOf = ({ record, row }: Use): Use => ({ record, row });

export interface Pair {
  readonly row: RowRecord;
  readonly made: readonly Cell[];
  /** The words that made each box. */
  readonly spans: readonly (Span | null)[];
  /** Boxes of the row before these, in the order of work. */
  readonly first: number;
  readonly drawn: readonly Cell[];
  /** Line of the chart, from 0 at the top. */
  readonly line: number;
}

export interface Tie {
  readonly chart: Chart;
  readonly pairs: readonly Pair[];
  readonly score: Score;
}

/** The same boxes fit another chart better: they are that one's. Letters side by side share rows only. */
const isBetter = (other: Tie, than: Tie): boolean =>
  other.score.drawn > than.score.drawn &&
  than.pairs.some((one) => other.pairs.some((pair) => overlaps(one, pair)));

const overlaps = (a: Pair, b: Pair): boolean =>
  a.row === b.row && a.first < b.first + b.made.length && b.first < a.first + a.made.length;

interface Look {
  readonly scene: Scene;
  readonly cloth: Cloth;
  readonly chart: Chart;
  /** Rows that are worked from a chart. */
  readonly taken: ReadonlySet<RowRecord>;
}

function tieOf(look: Look, uses: readonly Use[]): { tie: Tie | null; givenUp: boolean } {
  const { chart, scene } = look;
  const all = writtenRows(look);
  const rows = all.filter(({ made }) => isShaped(chart) || made.length === widthOf(chart));
  const said = SAID.test(scene.manuscript.text);
  const own = candidates(chart, rows, uses).flatMap((pairs): Tie[] => {
    const score = scoreOf(pairs);
    const whole = uses.length === 0 && rows.length === chart.rows.length;
    return pairs.length > 0 && isTied(score, { said, whole }) ? [{ chart, pairs, score }] : [];
  });
  const within = own.length > 0 || isShaped(chart) ? null : withinRows(chart, all, uses);
  const ties = within?.ties ?? own;
  const tie = ties.reduce<Tie | null>(
    (best, one) => (best && !isFuller(one, best) ? best : one),
    null,
  );
  return { tie, givenUp: within?.givenUp ?? false };
}

/**
 * Rows whose numbers belong to lines of a tied chart, and that could not be laid on them: they have
 * another number of boxes, or are not boxes all along.
 */
export function rowsLeftOf({ chart, pairs }: Tie, { fabric }: Scene): readonly RowRecord[] {
  const offsets = new Set(pairs.map(({ row, line }) => (row.number ?? 0) + line));
  const [top] = offsets;
  // Laid in order whatever the numbers, nothing tells where another row belongs.
  if (top === undefined || offsets.size > 1) return [];
  const [part, cloth] = [pairs[0]?.row.partIndex, fabric.cloths[0]];
  const works = new Set(cloth ? usesOf(chart, fabric, cloth).map(({ record }) => record) : []);
  const laidOn = new Set(pairs.map(({ row }) => row.number));
  return (cloth?.rows ?? []).filter(
    (row) =>
      row.partIndex === part &&
      row.instance === 1 &&
      row.number !== null &&
      !laidOn.has(row.number) &&
      row.number <= top &&
      row.number > top - chart.rows.length &&
      !works.has(row),
  );
}

const widthOf = (chart: Chart): number => chart.rows[0]?.length ?? 0;

/** Boxes added or dropped: its rows are of several widths, so a row fits only lines as wide as it is. */
const isShaped = (chart: Chart): boolean => chart.rows.flat().includes('none');

const isFuller = (tie: Tie, than: Tie): boolean =>
  tie.score.same * tie.pairs.length > than.score.same * than.pairs.length;

type Written = Omit<Pair, 'drawn' | 'line'>;

/** Boxes compared at most where a chart is sought within wider rows: some 20 ms (ours). */
const MOST_COMPARED = 2_000_000;

/**
 * A chart that shows only the word of rounds that are written out whole: in all its rows it stands over
 * the same boxes, and nine boxes in ten agree.
 */
function withinRows(
  chart: Chart,
  rows: readonly Written[],
  uses: readonly Use[],
): { ties: Tie[]; givenUp: boolean } {
  const width = widthOf(chart);
  const sizes = new Set(rows.map(({ made }) => made.length).filter((n) => n > width));
  const groups = [...sizes].map((n) => rows.filter(({ made }) => made.length === n));
  // Fewer rows than the chart has cannot hold it whole; rows of open boxes alone show nothing.
  const worth = groups.filter(
    (wide) =>
      wide.length >= chart.rows.length &&
      wide.some(({ made }) => made.some((cell) => cell !== 'open')),
  );
  const small = worth.filter((wide) => comparedIn(chart, wide) <= MOST_COMPARED);
  return {
    ties: small.flatMap((wide) => withinAlike(chart, wide, uses)),
    givenUp: small.length < worth.length,
  };
}

const placesIn = (chart: Chart, wide: readonly Written[]): number =>
  (wide[0]?.made.length ?? 0) - widthOf(chart) + 1;

const comparedIn = (chart: Chart, wide: readonly Written[]): number =>
  placesIn(chart, wide) * wide.length * chart.rows.length * widthOf(chart);

/** Rows that are all of one width. */
function withinAlike(chart: Chart, wide: readonly Written[], uses: readonly Use[]): Tie[] {
  return Array.from({ length: placesIn(chart, wide) }, (_, column) => column).flatMap((column) => {
    const cut = wide.map((row) => cutRow(row, column, widthOf(chart)));
    return candidates(chart, cut, uses).flatMap((pairs): Tie[] => {
      const score = scoreOf(pairs);
      const isSure = score.same >= AGREE_WITHIN && score.drawn >= AGREE;
      return isSure && pairs.length === chart.rows.length ? [{ chart, pairs, score }] : [];
    });
  });
}

/** Wrong-side rows meet the same boxes from the other end. */
function cutRow(written: Written, column: number, width: number): Written {
  const { made, spans, row } = written;
  const first = row.side === 'RS' ? column : made.length - width - column;
  const [cells, words] = [made.slice(first, first + width), spans.slice(first, first + width)];
  return { ...written, made: cells, spans: words, first };
}

/** Rows of boxes that no chart makes, in the order of work; beside a chart of one width only those as wide. */
function writtenRows({ scene, cloth, chart, taken }: Look): Written[] {
  const { fabric, manuscript } = scene;
  const mesh = meshOfGrid(chart, manuscript.terms.terms);
  const least = isShaped(chart) ? 1 : widthOf(chart);
  return cloth.rows.flatMap((row): Written[] => {
    if (row.instance !== 1 || row.number === null || taken.has(row)) return [];
    const found = meshRow(fabric, cloth, row, mesh);
    if (!found || found.cells.length < least) return [];
    const spans = found.cells.map((_, box) => {
      const column = found.at.findLastIndex((at) => at <= box);
      const node = found.posts[column + (row.closes ? 0 : 1)] ?? -1;
      return fabric.origins[cloth.nodes.origin[node] ?? -1] ?? null;
    });
    return [{ row, made: found.cells, spans, first: 0 }];
  });
}

/** Ways of laying rows on lines of the chart; each part of the manuscript by itself. */
function candidates(
  chart: Chart,
  rows: readonly Written[],
  uses: readonly Use[],
): (readonly Pair[])[] {
  const parts = [...new Set(rows.map(({ row }) => row.partIndex))];
  return parts.flatMap((part) => {
    const own = rows.filter(({ row }) => row.partIndex === part);
    // The chart's rows are numbered where it is worked; rows written out keep these numbers.
    const known = uses.map(({ record, row }) => (record.number ?? 0) - row);
    const offsets = known.length > 0 ? known : own.map(({ row }) => row.number ?? 0);
    const all = [...new Set(offsets)].map((offset) => laid(chart, own, offset));
    const whole = rows.length === chart.rows.length ? [inOrder(chart, rows)] : [];
    return uses.length > 0 ? all : [...all, ...whole];
  });
}

/** Row number `offset` lies on the lowest line. */
const laid = (chart: Chart, rows: readonly Written[], offset: number): readonly Pair[] =>
  rows.flatMap((one) => pairOf(chart, one, (one.row.number ?? 0) - offset) ?? []);

/** As many rows as the chart has, one after the other, whatever their numbers. */
const inOrder = (chart: Chart, rows: readonly Written[]): readonly Pair[] =>
  rows.flatMap((one, nth) => pairOf(chart, one, nth) ?? []);

function pairOf(chart: Chart, written: Written, nth: number): Pair | null {
  const line = chart.rows.length - 1 - nth;
  const cells = chart.rows[line];
  if (!cells || nth < 0) return null;
  const { from, to } = extentOf(cells);
  if (to - from !== written.made.length) return null;
  const reads = written.row.side === 'RS' ? 'right-to-left' : 'left-to-right';
  return { ...written, drawn: asPictured(cells.slice(from, to), reads), line };
}

/** Shares from 0 to 1. */
interface Score {
  readonly same: number;
  /** Of boxes that are not open in the row or in the chart. */
  readonly drawn: number;
}

function scoreOf(pairs: readonly Pair[]): Score {
  let [all, same, either, both] = [0, 0, 0, 0];
  for (const { made, drawn } of pairs) {
    made.forEach((cell, i) => {
      all++;
      if (cell === drawn[i]) same++;
      if (cell === 'open' && drawn[i] === 'open') return;
      either++;
      if (cell === drawn[i]) both++;
    });
  }
  return { same: all === 0 ? 0 : same / all, drawn: either === 0 ? 0 : both / either };
}

/** Rows that are just as many as the chart has are tied by less: one box forgotten may be half of all. */
function isTied({ same, drawn }: Score, at: { said: boolean; whole: boolean }): boolean {
  const [all, some] = at.said ? [AGREE_SAID, AGREE_DRAWN_SAID] : [AGREE, AGREE_DRAWN];
  return same >= all && (at.whole || drawn >= some);
}
