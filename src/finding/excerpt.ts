/**
 * A line of the manuscript with marks under its words:
 *
 *     Rnd 3: *sc in next st, inc; rep from * 5 more times. (18)
 *            ---------------------------------------------  ^^^^
 *
 * A line wider than the room is shown in part, around its marks, with … where it goes on.
 */
import { type Measured, measure, widthOf } from './cells.ts';

export interface Mark {
  /** Offsets in the line; an empty mark is shown as one sign. */
  readonly from: number;
  readonly to: number;
  readonly sign: '^' | '-';
  /** Stands beside the mark; '' for none. */
  readonly text: string;
}

/** One row of marks: the part with signs and texts, in pieces, so that each can be painted. */
export type MarkRow = readonly { readonly sign: Mark['sign'] | null; readonly text: string }[];

export interface Excerpt {
  readonly line: string;
  readonly rows: readonly MarkRow[];
}

/**
 * The line and its marks in at most `room` cells. Marks too far apart for one stretch of the line
 * get one each: a pattern pasted as a single paragraph has all its rows on one line.
 */
export function excerpts(line: string, marks: readonly Mark[], room: number): readonly Excerpt[] {
  return stretches(line, marks, room).map((near) => excerpt(line, near, room));
}

/** Marks in runs that fit the room together, in the order of the line. */
function stretches(line: string, marks: readonly Mark[], room: number): readonly Mark[][] {
  const runs: Mark[][] = [];
  let start = 0;
  for (const mark of [...marks].sort((a, b) => a.from - b.from)) {
    const run = runs.at(-1);
    if (run !== undefined && (line.length <= room || mark.to - start <= room - 2)) run.push(mark);
    else {
      runs.push([mark]);
      start = mark.from;
    }
  }
  return runs;
}

/** `marks` holds at least one; the first leads. */
function excerpt(line: string, marks: readonly Mark[], room: number): Excerpt {
  const { part, shifted } = near(line, marks);
  const measured = measure(part);
  const placed = shifted.map((mark) => place(mark, measured));
  const window = windowFor(measured, placed, room);
  const visible = placed
    .map((mark) => clip(mark, window))
    .filter((mark) => mark !== null)
    .sort((a, b) => b.start - a.start || a.end - b.end);
  return { line: show(measured, window), rows: layOut(visible, room) };
}

interface Placed {
  readonly start: number;
  readonly end: number;
  readonly sign: Mark['sign'];
  readonly text: string;
}

interface Window {
  readonly start: number;
  readonly end: number;
  readonly total: number;
}

/** Units kept on either side of the leading mark: no terminal shows more, and measuring costs time. */
const reach = 320;

/** Cuts a very long line down to the neighbourhood of its leading mark, whole signs only. */
function near(line: string, marks: readonly Mark[]): { part: string; shifted: readonly Mark[] } {
  const lead = marks[0]?.from ?? 0;
  const from = boundary(line, Math.max(0, lead - reach));
  const to = boundary(line, Math.min(line.length, lead + 2 * reach));
  const shifted = marks
    .map((mark) => ({
      ...mark,
      from: Math.max(mark.from - from, 0),
      to: Math.min(mark.to, to) - from,
    }))
    .filter((mark) => mark.to >= mark.from);
  return { part: line.slice(from, to), shifted };
}

function boundary(line: string, at: number): number {
  const code = line.charCodeAt(at);
  return code >= 0xdc00 && code <= 0xdfff ? at + 1 : at;
}

function place(mark: Mark, { cellAt }: Measured): Placed {
  const start = cellAt[mark.from] ?? cellAt.at(-1) ?? 0;
  const end = cellAt[mark.to] ?? cellAt.at(-1) ?? 0;
  return { start, end: Math.max(end, start + 1), sign: mark.sign, text: mark.text };
}

/** The cells shown: the line's beginning if the marks lie there, else the marks in the middle. */
function windowFor(measured: Measured, marks: readonly Placed[], room: number): Window {
  const total = measured.cellAt.at(-1) ?? 0;
  if (total <= room) return { start: 0, end: total, total };
  const lead = marks[0] ?? { start: 0, end: 1 };
  const first = Math.min(...marks.map(({ start }) => start));
  const last = Math.max(...marks.map(({ end }) => end));
  const fits = last - first <= room - 2;
  const [from, to] = fits ? [first, last] : [lead.start, Math.min(lead.end, lead.start + room - 2)];
  if (to < room) return { start: 0, end: room, total };
  const middle = from - Math.floor((room - (to - from)) / 2);
  const start = Math.max(0, Math.min(middle, total - room));
  return { start, end: start + room, total };
}

/** The visible part of a mark, counted from the window's edge; the edge signs … stay unmarked. */
function clip(mark: Placed, window: Window): Placed | null {
  const low = window.start > 0 ? window.start + 1 : 0;
  const high = window.end < window.total ? window.end - 1 : Math.max(window.total, mark.end);
  const start = Math.max(mark.start, low);
  const end = Math.min(mark.end, high);
  if (end <= start) return null;
  return { ...mark, start: start - window.start, end: end - window.start };
}

/** The window's text. A wide sign cut by an edge is shown as a blank, so that marks stay in step. */
function show({ signs }: Measured, { start, end, total }: Window): string {
  const low = start > 0 ? start + 1 : 0;
  const high = end < total ? end - 1 : total;
  const inside = signs.map(({ text, cell, width }) => {
    if (cell >= low && cell + width <= high) return text;
    return cell < high && cell + width > low ? ' ' : '';
  });
  return `${start > 0 ? '…' : ''}${inside.join('')}${end < total ? '…' : ''}`;
}

/**
 * Marks into rows. Taken from the right, so that the rightmost has room for its text; a mark whose
 * signs or text would touch what stands in a row goes to the next one. A text that would leave the
 * room stands before its mark instead, or, if it fits on neither side, alone in the row below.
 */
function layOut(marks: readonly Placed[], room: number): readonly MarkRow[] {
  const rows: {
    start: number;
    pieces: { at: number; sign: Mark['sign'] | null; text: string }[];
  }[] = [];
  for (const mark of marks) {
    const block = blockOf(mark, room);
    const row = rows.find(({ start }) => block.end < start);
    const pieces = block.pieces;
    if (row === undefined) rows.push({ start: block.start, pieces });
    else {
      row.pieces.unshift(...pieces);
      row.start = block.start;
    }
    if (block.below !== null) rows.push({ start: 0, pieces: [block.below] });
  }
  return rows.map(({ pieces }) => fillGaps(pieces));
}

interface Piece {
  readonly at: number;
  readonly sign: Mark['sign'] | null;
  readonly text: string;
}

function blockOf(
  { start, end, sign, text }: Placed,
  room: number,
): { start: number; end: number; pieces: Piece[]; below: Piece | null } {
  const signs = { at: start, sign, text: sign.repeat(end - start) };
  const width = widthOf(text);
  if (width === 0) return { start, end, pieces: [signs], below: null };
  if (end + 1 + width <= room) {
    const beside = { at: end + 1, sign: null, text };
    return { start, end: end + 1 + width, pieces: [signs, beside], below: null };
  }
  if (start - 1 - width >= 0) {
    const before = { at: start - 1 - width, sign: null, text };
    return { start: before.at, end, pieces: [before, signs], below: null };
  }
  const below = { at: Math.max(0, Math.min(start, room - width)), sign: null, text };
  return { start, end, pieces: [signs], below };
}

function fillGaps(pieces: readonly Piece[]): MarkRow {
  let cell = 0;
  return pieces.flatMap(({ at, sign, text }) => {
    const gap = { sign: null, text: ' '.repeat(Math.max(0, at - cell)) };
    cell = at + widthOf(text);
    return [gap, { sign, text }];
  });
}
