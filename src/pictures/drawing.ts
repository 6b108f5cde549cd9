/**
 * A drawing as read-only data, in millimetres on paper: x to the right, y down, the origin at the
 * top left. Writers (`svg.ts`, later a page) turn it into bytes; nothing here knows a file format.
 *
 * Colour never carries meaning: there are five greys, and shapes tell things apart.
 */
import type { Span } from '../source/index.ts';

/** A place in mm. */
export type Point = readonly [x: number, y: number];

/** From darkest to lightest. `svg.ts` has their values; `paper` covers what lies beneath. */
export type Ink = 'ink' | 'soft' | 'faint' | 'wash' | 'paper';

export interface Stroke {
  readonly ink: Ink;
  readonly widthMm: number;
  /** Lengths of dash and gap in mm, in turn; absent: drawn through. */
  readonly dashMm?: readonly number[];
  /** How a line ends and bends; default 'flat'. */
  readonly ends?: 'round' | 'flat';
}

/** What a mark looks like. A mark that is silent takes the look of the group it stands in. */
export interface Look {
  readonly stroke?: Stroke | 'none';
  readonly fill?: Ink | 'none';
}

/** What a mark is, for those who point at it. */
export interface Identity {
  /** Unique in the drawing: letters, digits, hyphens. */
  readonly id?: string;
  /** The words of the manuscript that made it. */
  readonly origin?: Span;
  /** A name for it, shown on pointing and read aloud. */
  readonly title?: string;
}

export type PathStep =
  | readonly ['M' | 'L', x: number, y: number]
  /** Quadratic curve: control point, end. */
  | readonly ['Q', cx: number, cy: number, x: number, y: number]
  /** Cubic curve: two control points, end. */
  | readonly ['C', ax: number, ay: number, bx: number, by: number, x: number, y: number]
  | readonly ['Z'];

export interface Group extends Identity, Look {
  readonly kind: 'group';
  /** Moves all marks inside by so many mm; default [0, 0]. */
  readonly at?: Point;
  /** Only what lies inside this rectangle (in the group's own mm) is shown. */
  readonly clip?: Box;
  readonly marks: readonly Mark[];
}

export interface Path extends Identity, Look {
  readonly kind: 'path';
  readonly steps: readonly PathStep[];
}

export interface Line extends Identity, Look {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

export interface Circle extends Identity, Look {
  readonly kind: 'circle';
  readonly centre: Point;
  readonly radiusMm: number;
}

/** A rectangle: its top left corner and its size in mm. */
export interface Box {
  readonly at: Point;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface Rect extends Identity, Look, Box {
  readonly kind: 'rect';
  /** Of rounded corners; default 0. */
  readonly cornerMm?: number;
}

export interface Text extends Identity {
  readonly kind: 'text';
  /** On the baseline: where the text starts, has its middle, or ends. */
  readonly at: Point;
  readonly text: string;
  /** Size of type in mm: 7 pt is 2.47 mm (`points` in `text.ts`). */
  readonly sizeMm: number;
  /** Default 'start'. */
  readonly align?: 'start' | 'middle' | 'end';
  /** Default 'regular'. */
  readonly weight?: 'regular' | 'bold';
  /** Default 'ink'. */
  readonly ink?: Ink;
  /** Turned about `at`, in degrees clockwise; default 0. */
  readonly turned?: number;
}

export type Mark = Group | Path | Line | Circle | Rect | Text;

export interface Drawing {
  /** Stands before every id, so that drawings may share a web page: letters, digits, hyphens. */
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** What it is, in a line. */
  readonly title: string;
  /** What it shows, for those who cannot see it; may have many lines. */
  readonly description: string;
  /** Of its words: a BCP 47 tag such as "en". */
  readonly language: string;
  readonly marks: readonly Mark[];
}
