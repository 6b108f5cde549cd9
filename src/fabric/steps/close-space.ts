/** "ch 2, hdc in first sc" at a round's end closes the last space and makes no counted stitch. */
import { stemOf, type WorkStep } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { countedSince, type Hands, make, originFor } from '../hands.ts';
import { kindOf } from '../kinds.ts';
import { nounOf } from '../noun.ts';
import { firstStitchOf } from './stitch.ts';

/** "ch 2, hdc in first sc" at a round's end closes the last space and makes no counted stitch. */
export function closesSpace(hands: Hands, step: WorkStep, row: RowContext): boolean {
  const { place } = step;
  if (!place || !row.round || hands.into) return false;
  // "Ch 4 (counts as dc, ch 1), dc in first st": the round only begins.
  if (countedSince(hands, hands.rowFrom) < 2) return false;
  const noun = nounOf(place.of ?? place);
  const toStart =
    place.pick === 'first' ||
    noun.kind === 'start-chain' ||
    (place.pick === 'top' && noun.kind === 'chain');
  const before = hands.bench.kinds.kinds[hands.nodes.kind[hands.nodes.n - 1] ?? 0];
  return toStart && before?.class === 'chain' && hands.first !== null && noun.kind !== 'space';
}

export function closeSpace(hands: Hands, step: WorkStep): void {
  const stem = step.stitch.stem ? stemOf(step.stitch.stem, hands.bench.terms) : hands.stem;
  const kind = kindOf(hands.bench.kinds, stem === 'slip' ? 'slip' : 'closer', stem);
  make(hands, kind, originFor(hands, step), firstStitchOf(hands));
}
