/** Letters set on lines, and lines under one another. */
import { type Boxes, openBoxes, stamp } from './boxes.ts';
import type { Glyph } from './glyph.ts';

/** A letter of the words with its glyph; the span is counted in the words. */
interface Piece {
  readonly glyph: Glyph;
  readonly from: number;
  readonly to: number;
}

/** A letter at its place: column of its left side, counted from the start of its line. */
export interface SetPiece extends Piece {
  readonly column: number;
}

export interface Line {
  readonly pieces: readonly SetPiece[];
  readonly width: number;
}

export type Align = 'left' | 'centre' | 'right';

export interface Block {
  readonly boxes: Boxes;
  /** With columns and rows counted from the corner of the block. */
  readonly placed: readonly (SetPiece & { readonly row: number })[];
}

/** Rows that each line keeps above and below its line of writing, so that lines stand evenly. */
interface Room {
  readonly above: number;
  readonly below: number;
}

export interface BlockLayout {
  readonly align: Align;
  /** Open rows between the lowest box of one line and the highest of the next. */
  readonly lineSpace: number;
}

/** Lines one below the other. */
export function blockOf(lines: readonly Line[], { align, lineSpace }: BlockLayout): Block {
  const width = Math.max(0, ...lines.map((line) => line.width));
  const rooms = lines.map(roomOf);
  const placed: Block['placed'][number][] = [];
  let top = 0;
  for (const [at, line] of lines.entries()) {
    const { above, below } = rooms[at]!;
    const indent = indentOf(width - line.width, align);
    for (const piece of line.pieces) {
      const row = top + above - piece.glyph.above;
      placed.push({ ...piece, column: piece.column + indent, row });
    }
    top += above + below + (at < lines.length - 1 ? lineSpace : 0);
  }
  const boxes = openBoxes(width, top);
  for (const { glyph, column, row } of placed) stamp(boxes, glyph.boxes, column, row);
  return { boxes, placed };
}

function roomOf({ pieces }: Line): Room {
  return {
    above: Math.max(0, ...pieces.map(({ glyph }) => glyph.above)),
    below: Math.max(0, ...pieces.map(({ glyph }) => glyph.boxes.height - glyph.above)),
  };
}

/** In the middle, an odd box goes to the right. */
function indentOf(spare: number, align: Align): number {
  if (align === 'left') return 0;
  return align === 'right' ? spare : Math.floor(spare / 2);
}
