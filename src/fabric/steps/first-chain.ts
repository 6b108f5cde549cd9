/**
 * "Ch 21. Sc across. (20)": the words name no chain from the hook. Whether the chain next to the hook
 * is worked, or passed to turn, is settled by the count or by the rows that follow.
 */
import { heightOf, type Place, stemOf, type WorkStep } from '../../notation/index.ts';
import { atStart, type Hands, spanAt } from '../hands.ts';
import { nounOf } from '../noun.ts';
import { ask } from '../readings.ts';
import { standFor } from './from-hook.ts';

const WORKED = 'worked from the first';
const PASSED = 'passed to turn';
const COUNTED = 'passed, and a stitch';

/** Passes the chains of a first row that its reading passes; none by custom. */
export function passFirstChains(hands: Hands, step: WorkStep, place: Place | null): void {
  if (!opensChain(hands, place)) return;
  const reading = ask(hands.readings, {
    doubt: 'first chains',
    custom: WORKED,
    alternatives: [PASSED, COUNTED],
    local: true,
    ...spanAt(hands, step),
  });
  if (reading === WORKED) return;
  const { stem } = step.stitch;
  const id = (stem ? stemOf(stem, hands.bench.terms) : null) ?? hands.stem;
  const passed = Math.max(1, Math.floor(heightOf(id)));
  if (reading === COUNTED) standFor(hands, step, { stem: id, chain: passed - 1 });
  hands.pos = Math.min(hands.edge.n, passed);
}

/** Nothing is worked into the chain yet, and the words only go on to the next place. */
function opensChain(hands: Hands, place: Place | null): boolean {
  const { edge } = hands;
  if (edge.kind !== 'foundation' || edge.ring || edge.open || edge.n < 4) return false;
  if (hands.pos > 0 || hands.first !== null || hands.into || !atStart(hands)) return false;
  if (!place) return true;
  const { kind } = nounOf(place);
  const plain = place.pick === 'next' || place.pick === 'each' || place.pick === 'first';
  return plain && !place.fromHook && (kind === 'stitch' || kind === 'chain' || kind === 'stem');
}
