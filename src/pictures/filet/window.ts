/** Which part of a chart is drawn, and where its boxes lie on paper. */
import type { Sheet } from './sheet.ts';

/** Columns from 0 at the left, rows from 0 at the bottom; up to, not including, the second number. */
export interface Window {
  readonly columns: readonly [from: number, to: number];
  readonly rows: readonly [from: number, to: number];
}

export const wholeOf = (sheet: Pick<Sheet, 'columns' | 'rows'>): Window => ({
  columns: [0, sheet.columns],
  rows: [0, sheet.rows.length],
});

/** Size of a box on paper in mm. */
export interface Scale {
  readonly boxWidthMm: number;
  readonly boxHeightMm: number;
}

/** A box whose shorter side is so many mm, in the fabric's proportion. */
export function scaleOf(sheet: Pick<Sheet, 'box'>, shorterSideMm: number): Scale {
  const { widthMm, heightMm } = sheet.box;
  const factor = shorterSideMm / Math.min(widthMm, heightMm);
  return { boxWidthMm: widthMm * factor, boxHeightMm: heightMm * factor };
}

/** Places in the window's own mm: its top left corner is the origin. */
export interface Frame extends Scale {
  readonly window: Window;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Left edge of a column; the right edge is that of the next. */
  readonly x: (column: number) => number;
  /** Upper edge of a row; its lower edge is that of the row below. */
  readonly top: (row: number) => number;
}

export function frameOf(window: Window, scale: Scale): Frame {
  const [left, right] = window.columns;
  const [low, high] = window.rows;
  return {
    ...scale,
    window,
    widthMm: (right - left) * scale.boxWidthMm,
    heightMm: (high - low) * scale.boxHeightMm,
    x: (column) => (column - left) * scale.boxWidthMm,
    top: (row) => (high - 1 - row) * scale.boxHeightMm,
  };
}
