/** Yarn for sewing pieces together, where the pattern sews. */
import { CORNERS, type MotifForm } from './motif.ts';
import type { PieceSize } from './part-size.ts';

const SEWS = /\b(?:sew(?:n|s|ing)?|whip[- ]?stitch(?:ed)?|mattress stitch|seams?)\b/i;

/** A seam takes two and a half to three times its length: common practice. */
const SEAM_BY_LENGTH = 3;

/**
 * Metres of yarn for seams; 0 where the text sews nothing. Every piece after the first is joined once:
 * a piece in rounds along its last edge, a flat one along half its outline. A rough figure.
 */
export function seamMetres(text: string, pieces: readonly PieceSize[]): number {
  if (!SEWS.test(text)) return 0;
  let mm = 0;
  pieces.forEach((piece, at) => {
    const joined = at === 0 ? piece.copies - 1 : piece.copies;
    mm += joined * seamOf(piece);
  });
  return (SEAM_BY_LENGTH * mm) / 1000;
}

function seamOf({ parts }: PieceSize): number {
  const last = parts.at(-1);
  if (!last || last.form === 'edging') return 0;
  const { wide, long, around, across, side } = last.measures;
  const end = last.measures['last edge'];
  if (['flat piece', 'shaped piece', 'corner to corner'].includes(last.form)) {
    return (wide?.mm ?? 0) + (long?.mm ?? 0);
  }
  if (last.form === 'square') return 2 * (across?.mm ?? 0);
  if (side) return (CORNERS[last.form as MotifForm] * side.mm) / 2;
  if (last.form === 'ball') return (around?.mm ?? 0) / 2;
  return end?.mm ?? around?.mm ?? 0;
}
