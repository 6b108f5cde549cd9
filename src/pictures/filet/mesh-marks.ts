/**
 * The mesh itself: each row a group, each box a mark with an id and the place of its sign in the
 * manuscript. A box that does not exist is drawn as nothing.
 *
 *     +--~--+--~--+      chains sag between posts
 *     |     |HHHHH|      stitches fill a box from post to post
 */
import type { Cell } from '../../filet/index.ts';
import type { Group, Mark, PathStep, Stroke } from '../drawing.ts';
import type { Sheet, SheetRow } from './sheet.ts';
import { type Thread, threadOf } from './thread.ts';
import { type Frame, frameOf, type Scale, type Window } from './window.ts';

export type Meshed = Pick<Sheet, 'rows' | 'columns' | 'mesh'>;

/**
 * The boxes of a window of the chart; its top left corner is the origin. Ids begin with `prefix`, so
 * that samples in a key may stand beside the chart itself.
 */
export function meshMarks(
  sheet: Meshed,
  window: Window,
  scale: Scale,
  prefix = '',
): readonly Mark[] {
  const frame = frameOf(window, scale);
  const thread = threadOf(sheet, scale);
  const rows: Group[] = [];
  for (let r = window.rows[0]; r < window.rows[1]; r++) {
    const row = sheet.rows[r];
    if (!row) continue;
    const below = sheet.rows[r - 1] ?? null;
    rows.push(rowMarks({ sheet, frame, thread, row, r, below, prefix }));
  }
  return rows;
}

interface At {
  readonly sheet: Meshed;
  readonly frame: Frame;
  readonly thread: Thread;
  readonly row: SheetRow;
  /** From 0 at the bottom. */
  readonly r: number;
  readonly below: SheetRow | null;
  readonly prefix: string;
}

function rowMarks(at: At): Group {
  const { row, r, thread, prefix } = at;
  const posts = postsOf(at);
  const thin = posts.filter(({ solid }) => !solid).map(({ x }) => x);
  const solid = posts.filter((post) => post.solid).map(({ x }) => x);
  const boxes = boxesOf(at);
  const filled = boxes.filter(({ cell }) => cell === 'filled');
  const marks: Mark[] = [
    ...path(uprights(at, thin), thread.post),
    ...path(slashes(at, thin), thread.slash),
    ...path(baseOf(at), thread.chain),
    ...path(headsOf(at, solid), thread.chain),
    ...group(
      boxes.filter(({ cell }) => cell !== 'filled').map((box) => openMark(at, box)),
      thread.chain,
    ),
    ...path(stems(at, solid), thread.stitch),
    ...group(
      filled.map((box) => filledMark(at, box)),
      thread.stitch,
    ),
    ...path(slits(at, [...solid, ...filled.flatMap((box) => insideOf(at, box))]), thread.slit),
    ...tenths(at),
  ];
  const named = row.label === '' ? `Chart row ${r + 1}` : row.label;
  const origin = row.origin ? { origin: row.origin } : {};
  return {
    kind: 'group',
    id: `${prefix}row-${r + 1}`,
    title: named,
    ...origin,
    fill: 'none',
    marks,
  };
}

/** A box of the row that begins in this column; `column` is the left one of a lacet or bar. */
interface BoxAt {
  readonly cell: Exclude<Cell, 'none'>;
  readonly column: number;
  /** 2 for lacets and bars. */
  readonly width: number;
}

/** Boxes of the row inside the window. Two neighbouring cells make one lacet or one bar. */
function boxesOf({ row, frame }: At): readonly BoxAt[] {
  const [from, to] = frame.window.columns;
  const boxes: BoxAt[] = [];
  for (let column = 0; column < Math.min(to, row.cells.length); ) {
    const cell = row.cells[column] ?? 'none';
    const isPair = (cell === 'lacet' || cell === 'bar') && row.cells[column + 1] === cell;
    const width = isPair ? 2 : 1;
    if (cell !== 'none' && column + width > from) boxes.push({ cell, column, width });
    column += width;
  }
  return boxes;
}

interface Post {
  readonly column: number;
  readonly x: number;
  /** One of the stitches of a filled box. */
  readonly solid: boolean;
}

/** Posts at the edges of boxes; a lacet or a bar has none in its middle. */
function postsOf({ row, frame }: At): readonly Post[] {
  const [from, to] = frame.window.columns;
  const middles = new Set<number>();
  for (let i = 0; i < row.cells.length; i++) {
    const cell = row.cells[i];
    if ((cell === 'lacet' || cell === 'bar') && row.cells[i + 1] === cell) middles.add(++i);
  }
  const posts: Post[] = [];
  for (let column = from; column <= to; column++) {
    const left = row.cells[column - 1] ?? 'none';
    const right = row.cells[column] ?? 'none';
    if ((left === 'none' && right === 'none') || middles.has(column)) continue;
    posts.push({ column, x: frame.x(column), solid: left === 'filled' || right === 'filled' });
  }
  return posts;
}

const path = (steps: readonly PathStep[], stroke: Stroke): Mark[] =>
  steps.length === 0 ? [] : [{ kind: 'path', stroke, steps }];

const group = (marks: readonly Mark[], stroke: Stroke): Mark[] =>
  marks.length === 0 ? [] : [{ kind: 'group', stroke, marks }];

const line = (ax: number, ay: number, bx: number, by: number): PathStep[] => [
  ['M', ax, ay],
  ['L', bx, by],
];

function uprights({ frame, r }: At, xs: readonly number[]): PathStep[] {
  const top = frame.top(r);
  return xs.flatMap((x) => line(x, top, x, top + frame.boxHeightMm));
}

/** One slash a wrap across the middle of a post, spaced as in the trade's symbols, upper end right. */
function slashes({ frame, r, sheet, thread }: At, xs: readonly number[]): PathStep[] {
  const { wraps } = sheet.mesh;
  const half = Math.min(0.16 * frame.boxWidthMm, 0.35 * thread.pitchMm);
  const gap = 0.14 * frame.boxHeightMm;
  return xs.flatMap((x) =>
    Array.from({ length: wraps }, (_, i) => {
      const y = frame.top(r) + frame.boxHeightMm / 2 + (i - (wraps - 1) / 2) * gap;
      return line(x - half, y + half * 0.58, x + half, y - half * 0.58);
    }).flat(),
  );
}

/** Stems of filling stitches, short of the row's edges by their round ends and a hair of paper. */
function stems({ frame, r, thread }: At, xs: readonly number[]): PathStep[] {
  const inset = thread.stitch.widthMm / 2 + thread.chain.widthMm * 0.9;
  const top = frame.top(r) + inset;
  const bottom = frame.top(r) + frame.boxHeightMm - inset + thread.chain.widthMm * 0.6;
  return xs.flatMap((x) => line(x, top, x, Math.max(bottom, top + 0.01)));
}

function slits({ frame, r, thread }: At, xs: readonly number[]): PathStep[] {
  const half = thread.stitch.widthMm * 0.62;
  const y = frame.top(r) + frame.boxHeightMm * 0.5;
  return xs.flatMap((x) => line(x - half, y + half * 0.58, x + half, y - half * 0.58));
}

/** Middles of the stitches between the two posts of a filled box. */
function insideOf({ frame, sheet, thread }: At, { column }: BoxAt): number[] {
  return Array.from(
    { length: sheet.mesh.gap },
    (_, i) => frame.x(column) + (i + 1) * thread.pitchMm,
  );
}

const filledMark = (at: At, box: BoxAt): Mark => ({
  kind: 'path',
  ...identityOf(at, box),
  steps: stems(at, insideOf(at, box)),
});

function openMark(at: At, box: BoxAt): Mark {
  const { frame, r, thread } = at;
  const [left, right] = [frame.x(box.column), frame.x(box.column + box.width)];
  const top = frame.top(r);
  const middle = (left + right) / 2;
  const steps: PathStep[] =
    box.cell === 'lacet'
      ? lacetSteps({ left, right, top, height: frame.boxHeightMm })
      : [
          ['M', left, top],
          ['Q', middle, top + (box.cell === 'bar' ? 0 : thread.sagMm), right, top],
        ];
  return { kind: 'path', ...identityOf(at, box), steps };
}

/** Chains from the head of one post down to the middle of the row below and up to the next post. */
function lacetSteps(at: { left: number; right: number; top: number; height: number }): PathStep[] {
  const { left, right, top, height } = at;
  const middle = (left + right) / 2;
  const foot = top + height * 0.98;
  const bend = height * 0.72;
  return [
    ['M', left, top],
    [
      'C',
      left + (middle - left) * 0.25,
      top + bend,
      middle - (middle - left) * 0.2,
      foot,
      middle,
      foot,
    ],
    [
      'C',
      middle + (right - middle) * 0.2,
      foot,
      right - (right - middle) * 0.25,
      top + bend,
      right,
      top,
    ],
  ];
}

function identityOf({ row, r, prefix }: At, { column, width }: BoxAt) {
  const id = `${prefix}r${r + 1}-b${column + 1}`;
  const from = row.origins[column]?.from;
  const to = row.origins[column + width - 1]?.to;
  return from === undefined || to === undefined ? { id } : { id, origin: { from, to } };
}

/** Heads of the stitches along the top of filled boxes, as wide as the stitches. */
function headsOf(at: At, solid: readonly number[]): PathStep[] {
  const y = at.frame.top(at.r);
  const half = at.thread.stitch.widthMm / 2;
  const between = boxesOf(at)
    .filter(({ cell }) => cell === 'filled')
    .flatMap(({ column }) => line(at.frame.x(column), y, at.frame.x(column + 1), y));
  return [...between, ...solid.flatMap((x) => line(x - half, y, x + half, y))];
}

/** What a box stands on where no row lies under it: the foundation, or chains added at an edge. */
function baseOf({ row, below, frame, r }: At): PathStep[] {
  const [from, to] = frame.window.columns;
  const y = frame.top(r) + frame.boxHeightMm;
  const steps: PathStep[] = [];
  for (let column = from; column < to; column++) {
    const has = (row.cells[column] ?? 'none') !== 'none';
    if (!has || (below?.cells[column] ?? 'none') !== 'none') continue;
    steps.push(...line(frame.x(column), y, frame.x(column + 1), y));
  }
  return steps;
}

/**
 * Every tenth line heavier: posts counted from where the lowest row begins, rows from below. Where a
 * tenth post is one of the stitches of a filled box, a line of paper runs down its middle instead.
 */
function tenths(at: At): Mark[] {
  const { sheet, row, frame, r, thread } = at;
  const startsRight = sheet.rows[0]?.reads === 'right-to-left';
  const isTenth = (column: number): boolean => {
    const counted = startsRight ? sheet.columns - column : column;
    return counted > 0 && counted < sheet.columns && counted % 10 === 0;
  };
  const posts = postsOf(at).filter(({ column }) => isTenth(column));
  const upright = (solid: boolean): PathStep[] =>
    uprights(
      at,
      posts.filter((post) => post.solid === solid).map(({ x }) => x),
    );
  const isTenthRow = (r + 1) % 10 === 0 && r + 1 < sheet.rows.length;
  const [from, to] = frame.window.columns;
  const across = row.cells.flatMap((cell, column) =>
    isTenthRow && cell !== 'none' && column >= from && column < to
      ? line(frame.x(column), frame.top(r), frame.x(column + 1), frame.top(r))
      : [],
  );
  return [
    ...path([...upright(false), ...across], thread.tenth),
    ...path(upright(true), thread.casing),
  ];
}
