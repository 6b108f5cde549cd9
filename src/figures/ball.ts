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
    high: filledHeight(along, widest, last.end),
  };
}

/**
 * A filled piece is as tall as a capsule of the same girth whose side is as long: two half-balls
 * and what is left of the side between them; a side too short for that makes a flattened ball. Where it
 * stays open, as at a toy's neck, the cap of the ball that is not there is counted in and taken off again.
 */
function filledHeight(along: Figure, widest: Figure, end: Figure): Figure {
  const across = widest.mm / Math.PI;
  const halfAround = widest.mm / 2;
  const cap = capOf(across / 2, end.mm / (2 * Math.PI));
  const side = along.mm + cap.arcMm;
  const closed = side >= halfAround ? across + side - halfAround : (2 * side) / Math.PI;
  const spread = Math.max(along.spread, widest.spread, FILLED_SPREAD);
  return { ...sumOf([along, widest]), mm: closed - cap.highMm, spread };
}

/** Of a ball's cap of this radius at its rim: from the rim to the pole along the ball, and straight up. */
function capOf(ballMm: number, rimMm: number): { readonly arcMm: number; readonly highMm: number } {
  const x = rimMm / ballMm;
  // The arc sine by its series, right to 0.2 % up to the share at which a piece counts as closed.
  const arc = x + x ** 3 / 6 + (3 * x ** 5) / 40;
  return { arcMm: ballMm * arc, highMm: ballMm * (1 - Math.sqrt(1 - x * x)) };
}

/** Filling stretches a piece as much as its maker likes: judgement. */
const FILLED_SPREAD = 0.1;
