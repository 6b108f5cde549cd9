/**
 * A grid as rows of a pattern, first row and all, in one of three styles:
 *
 *     runs       Row 2: *2 open, 1 filled; rep from * 4 more times. (15 boxes)
 *     house      Row 2: Work 2 open boxes, 1 filled box, 12 open boxes. (15 boxes)
 *     stitches   Row 2: Turn, ch 5 (counts as dc and ch 2), sk next ch-2 sp, dc in next dc, …
 */
import { stemOf, type Terms, wordFor } from '../notation/index.ts';
import type { Cell, Grid } from './grid.ts';
import { CLASSIC_MESH, type FoundationWay, foundationOf, type Mesh, stitchesOf } from './mesh.ts';
import { rowInWords } from './row-words.ts';
import { beneathOf, extentOf, type ShapedRow, shapedRow } from './shape.ts';
import { type Mesher, newMesher, stitchRow } from './stitch-row.ts';
import { type WorkedRow, type Working, workedRows } from './working.ts';

export interface WriteRowsOptions {
  readonly style: 'runs' | 'house' | 'stitches';
  readonly terms: Terms;
  /**
   * What the lowest row stands on: a foundation chain, which is written too, or boxes or stitches
   * that are there already. Default 'chain'.
   */
  readonly on?: 'chain' | 'boxes' | 'stitches';
  /** How the foundation chain of flat rows is counted; default 'shared'. */
  readonly way?: FoundationWay;
}

export interface WrittenRow {
  readonly number: number;
  readonly text: string;
}

export interface WrittenRows {
  /** What "open box" and "filled box" mean in this mesh; empty for stitches, which say it. */
  readonly definitions: readonly string[];
  /** "Ch 32."; `null` where the rows stand on something else. */
  readonly foundation: string | null;
  readonly rows: readonly WrittenRow[];
}

/** The mesh that a grid names, in these terms. */
export function meshOfGrid(grid: Pick<Grid, 'mesh'>, terms: Terms): Mesh {
  const post = grid.mesh ? stemOf(grid.mesh.post, terms) : null;
  return grid.mesh && post ? { post, gap: grid.mesh.gap } : CLASSIC_MESH;
}

/** Rows in the order of work. Rows that are broken by cells without a box are written as far as known. */
export function writeRows(grid: Grid, working: Working, options: WriteRowsOptions): WrittenRows {
  const rows = workedRows(grid, working);
  const mesh = meshOfGrid(grid, options.terms);
  const mesher = newMesher(mesh, working, options);
  const saysBoxes =
    options.style !== 'stitches' ||
    beginsWide(rows[0], 0, mesher) ||
    rows.some((row, nth) => addsWide(shapedRow(row, beneathOf(rows, nth))));
  return {
    definitions: saysBoxes ? definitionsOf(grid, mesh, options.terms) : [],
    foundation:
      options.on === undefined || options.on === 'chain'
        ? foundationWords(rows[0], mesh, { working, way: options.way ?? 'shared' })
        : null,
    rows: rows.map((row, nth) => {
      const shaped = shapedRow(row, beneathOf(rows, nth));
      return { number: row.number, text: rowText({ row, shaped, nth, working, mesher, options }) };
    }),
  };
}

function definitionsOf(grid: Grid, mesh: Mesh, terms: Terms): string[] {
  const post = wordFor(mesh.post, terms);
  const skip = terms === 'UK' ? 'miss' : 'sk';
  const [n, over] = mesh.gap === 1 ? ['', 'st or ch'] : [`${mesh.gap} `, 'sts or ch'];
  // Boxes without a gap are plain stitches, and none of them is open.
  if (mesh.gap === 0) return [`Filled box: ${post} in next st.`];
  const has = (cell: Cell): boolean => grid.rows.some((row) => row.includes(cell));
  return [
    // The open box tells the mesh, so it stands even where the grid has none.
    `Open box: ch ${mesh.gap}, ${skip} next ${n}${over}, ${post} in next ${post}.`,
    ...(has('filled') ? [`Filled box: ${post} in next ${n}${over}, ${post} in next ${post}.`] : []),
  ];
}

function foundationWords(
  row: WorkedRow | undefined,
  mesh: Mesh,
  { working, way }: { working: Working; way: FoundationWay },
): string {
  const { from, to } = extentOf(row?.cells ?? []);
  const boxes = to - from;
  if (working.form !== 'flat') {
    return `Ch ${stitchesOf(boxes, mesh.gap, 'round')}, join with sl st in first ch to form a ring.`;
  }
  const first = row?.cells[from] === 'filled' ? 'filled' : 'open';
  return `Ch ${foundationOf(mesh, { boxes, first, way }).chains}.`;
}

interface RowToWrite {
  readonly row: WorkedRow;
  readonly shaped: ShapedRow;
  readonly nth: number;
  readonly working: Working;
  readonly mesher: Mesher;
  readonly options: WriteRowsOptions;
}

function rowText(to: RowToWrite): string {
  const { row, nth, working, options } = to;
  const round = working.form !== 'flat';
  const side = nth === 0 || working.form === 'flat' ? sideWords(row, nth, working) : '';
  const label = `${round ? 'Rnd' : 'Row'} ${row.number}${side}: `;
  // Stitches say their own turn, which comes before or behind the first chain.
  const turn = working.form === 'turned' && nth > 0 && options.style !== 'stitches' ? 'turn, ' : '';
  const inStitches =
    options.style === 'stitches' ? stitchRow(to.mesher, row, to.shaped, nth) : null;
  const inBoxes = beginsWide(row, nth, to.mesher) || addsWide(to.shaped);
  const work = inStitches && !inBoxes ? inStitches.work : boxWords(to);
  const count = (inBoxes ? null : inStitches?.count) ?? countWords(row.cells);
  const end = round && options.style !== 'stitches' ? '; join' : '';
  return `${label}${capital(`${turn}${work}`)}${end}. (${count})`;
}

/**
 * A lacet or a bar in the first box on a foundation chain, or in boxes added at either end, has no
 * wording of its own in stitches.
 */
function beginsWide(row: WorkedRow | undefined, nth: number, mesher: Mesher): boolean {
  const first = row?.cells[extentOf(row.cells).from];
  const founds = nth === 0 && mesher.working.form === 'flat' && mesher.on === 'chain';
  return founds && isWide(first);
}

const isWide = (cell: Cell | undefined): boolean => cell === 'lacet' || cell === 'bar';

const addsWide = ({ addedFirst, addedLast }: ShapedRow): boolean =>
  [...addedFirst, ...addedLast].some(isWide);

const capital = (words: string): string =>
  words.replace(/^(\*?)([a-z])/, (_, star: string, letter: string) => star + letter.toUpperCase());

/** Only the first row says its side, and the second where that helps to keep count. */
const sideWords = (row: WorkedRow, nth: number, working: Working): string =>
  nth === 0 && (working.form === 'flat' || working.firstSide === 'wrong')
    ? ` (${row.side === 'right' ? 'RS' : 'WS'})`
    : '';

function countWords(cells: readonly Cell[]): string {
  const { from, to } = extentOf(cells);
  return to - from === 1 ? '1 box' : `${to - from} boxes`;
}

function boxWords({ shaped, options }: RowToWrite): string {
  const boxes = options.style !== 'runs';
  const { addedFirst, over, addedLast, slipped, left } = shaped;
  const sl = options.terms === 'UK' ? 'ss' : 'sl st';
  const some = (n: number): string => `${n} ${n === 1 ? 'box' : 'boxes'}`;
  const words = (cells: readonly Cell[]): string => rowInWords(cells, { boxes });
  const added = (cells: readonly Cell[]): string =>
    rowInWords(cells, { boxes, folded: false })
      .split(', ')
      .map((run) => `add ${run}`)
      .join(', ');
  const middle = words(over);
  return [
    ...(slipped > 0 ? [`${sl} over ${some(slipped)}`] : []),
    ...(addedFirst.length > 0 ? [added(addedFirst)] : []),
    ...(middle === '' ? [] : [boxes && !middle.startsWith('*') ? `work ${middle}` : middle]),
    ...(addedLast.length > 0 ? [added(addedLast)] : []),
    ...(left > 0 ? [`leave last ${some(left)} unworked`] : []),
  ].join(', ');
}
