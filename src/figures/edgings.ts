/** The whole of a flat piece with the edging that goes all round it. */
import { type Figure, sumOf, times } from './figure.ts';
import type { Measures, PieceSize } from './part-size.ts';
import type { Piece } from './pieces.ts';

/** An edging this much longer or shorter than the outline goes round something else: ours. */
const ALIKE = 0.35;

/** Sizes of the pieces, in the same order; an edging tells the whole that it makes. */
export function withEdgings(
  pieces: readonly Piece[],
  sizes: readonly PieceSize[],
): readonly PieceSize[] {
  const done: PieceSize[] = [];
  sizes.forEach((size, at) => {
    const within = done[withinOf(pieces, at)];
    const whole = within ? wholeOf(pieces[at]!, size, within) : null;
    done.push(whole ? { ...size, whole } : size);
  });
  return done;
}

/** Which piece it is worked along: the one that it stands on, else the one made before it. */
function withinOf(pieces: readonly Piece[], at: number): number {
  const { beneath } = pieces[at]!;
  const found = beneath ? pieces.findIndex(({ rows }) => rows.includes(beneath)) : -1;
  return found >= 0 && found < at ? found : at - 1;
}

function wholeOf(piece: Piece, { parts, copies }: PieceSize, within: PieceSize): Measures | null {
  const [edging] = parts;
  // A border round a flat piece stands on no round itself; its length tells whether it goes all round.
  const [first] = piece.rows;
  const goesRound = first!.ring || first!.isBorder;
  if (edging?.form !== 'edging' || !goesRound || copies * within.copies !== 1) return null;
  const { long: around, wide } = edging.measures;
  const flat = flatOf(within);
  if (!flat || !around || !wide) return null;
  if (Math.abs(around.mm / flat.outline - 1) > ALIKE) return null;
  const grown = (figure: Figure): Figure => sumOf([figure, times(wide, 2)]);
  return Object.fromEntries(
    Object.entries(flat.measures).map(([name, figure]) => [name, grown(figure)]),
  );
}

/** Length and width, or the way across, with the outline in mm; `null` for what does not lie flat. */
function flatOf({
  parts,
  whole,
}: PieceSize): { readonly measures: Measures; readonly outline: number } | null {
  const [part] = parts;
  if (!part || parts.length > 1) return null;
  const measures = part.form === 'edging' ? whole : part.measures;
  const { wide, long, across } = measures;
  if (part.form === 'flat piece' || part.form === 'corner to corner' || part.form === 'edging') {
    if (wide && long) return { measures: { wide, long }, outline: 2 * (wide.mm + long.mm) };
  }
  const isSquare = part.form === 'square' || part.form === 'edging';
  const around = isSquare ? 4 : part.form === 'round base' ? Math.PI : null;
  return around && across ? { measures: { across }, outline: around * across.mm } : null;
}
