/** "Sc in each st across, leaving last 2 sts unworked": the words that leave them tell how far it goes. */
import type { Numbers, Step, Until } from '../../notation/index.ts';

/** The step as it is meant, where the next one leaves stitches that it would have taken; else `null`. */
export function stopsBefore(step: Step, next: Step | undefined): Step | null {
  if (next?.kind !== 'unworked' || next.n === null) return null;
  const until = last(next.n, next);
  if (step.kind === 'repeat') {
    const { times } = step;
    const toEnd = times.kind === 'until' && times.until.kind === 'end';
    return toEnd ? { ...step, times: { ...times, until } } : null;
  }
  if (step.kind !== 'work' || step.alsoIn.length > 0 || step.evenly) return null;
  const { place } = step;
  if (!place) return step.until?.kind === 'end' ? { ...step, until } : null;
  const each = place.pick === 'each' && !place.n && !place.of;
  const end = (place.until ?? step.until)?.kind;
  if (!each || (end !== undefined && end !== 'end')) return null;
  return { ...step, until: null, place: { ...place, until } };
}

const last = (n: Numbers, { from, to }: Step): Until => ({
  kind: 'last',
  n,
  noun: null,
  chain: false,
  from,
  to,
});
