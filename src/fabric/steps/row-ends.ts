/**
 * Along the ends of rows: how many stitches they take is the maker's matter (common practice: one in
 * a row of single crochet, two in one of double), so a row that goes there is not checked.
 */
import type { WorkStep } from '../../notation/index.ts';
import { bareEdge } from '../edge.ts';
import { type Hands, numberFor } from '../hands.ts';
import { nounOf } from '../noun.ts';

/** From here on the hook goes along row ends, of which any number may be there. */
export function alongRowEnds(hands: Hands): void {
  hands.edge = bareEdge('into', hands.nodes.n - 1);
  hands.pos = 0;
  hands.limit = 0;
  hands.loose = true;
}

/** "20 sc along row ends": so many in all; "2 sc in ends of rows": in each of them. */
export const isSpreadOverRowEnds = (hands: Hands, { place, n }: WorkStep): boolean =>
  place !== null &&
  nounOf(place).kind === 'row-end' &&
  place.pick === 'each' &&
  !place.each &&
  (numberFor(hands, n) ?? 0) >= 4;

/** "Sc in each row end", "hdc in end of each row across", "2 dc in each of next 10 row ends". */
export const goesAlongRowEnds = (hands: Hands, { place }: WorkStep): boolean =>
  hands.edge.kind !== 'into' &&
  place !== null &&
  nounOf(place).kind === 'row-end' &&
  (place.pick === 'each' || place.n !== null);
