/** Filled pieces: what grows from a ring and closes again. */
import { type Figure, sumOf, times } from './figure.ts';
import type { Phase } from './phases.ts';
import type { Piece } from './pieces.ts';

export interface BallMeasures {
  readonly around: Figure;
  readonly across: Figure;
  readonly high: Figure;
}

/** Closed to this share of its widest round: judgement. */
const CLOSED = 0.6;

/** A piece from a ring that closes again is filled, and is measured filled; `null` for any other. */
export function ballOf(piece: Piece, phases: readonly Phase[]): BallMeasures | null {
  const widest = phases.map((phase) => phase.widest).reduce((a, b) => (b.mm > a.mm ? b : a));
  const last = phases.at(-1)!;
  const isClosed = last.growth === 'closes' && last.end.mm < CLOSED * widest.mm;
  if (piece.start !== 'ring' || !isClosed) return null;
  const along = sumOf(phases.map((phase) => phase.along));
  return {
    around: widest,
    across: times(widest, 1 / Math.PI),
    high: filledHeight(along, widest),
  };
}

/**
 * A filled piece is as tall as a capsule of the same girth whose side is as long: two half-balls
 * and what is left of the side between them; a side too short for that makes a flattened ball.
 */
function filledHeight(along: Figure, widest: Figure): Figure {
  const across = widest.mm / Math.PI;
  const halfAround = widest.mm / 2;
  const mm = along.mm >= halfAround ? across + along.mm - halfAround : (2 * along.mm) / Math.PI;
  const spread = Math.max(along.spread, widest.spread, FILLED_SPREAD);
  return { ...sumOf([along, widest]), mm, spread };
}

/** Filling stretches a piece as much as its maker likes: judgement. */
const FILLED_SPREAD = 0.1;
