/**
 * "Into ch-3 space *2 sc, ch 1, 2 sc*, repeat from * to * in every ch-3 space around": the place stands
 * first, and stars hold together what goes into it, as brackets do elsewhere.
 */
import { fromOf, kindAt, type Reader, toOf } from './reader.ts';
import { isRepeatOrder, readOrder } from './repeat-order.ts';
import { repeatOf } from './repeat-step.ts';
import { STAR, starRole } from './star.ts';
import { T } from './tokens.ts';
import type { Place, Step } from './tree.ts';

/** The group, or its repeat; `null`, with the reader where it was, where the stars hold no single group. */
export function starInPlace(r: Reader, place: Place, start: number): Step | null {
  if (place.nouns[0]?.kind !== 'space' || place.nouns.length > 1 || r.depth > 60) return null;
  const star = r.at;
  if (kindAt(r) !== T.star || starRole(r, star) !== STAR.open) return null;
  const mark = r.value[star] === 1 ? '*' : '**';
  r.at++;
  r.depth++;
  const steps = r.run(r, 'star');
  r.depth--;
  const closed = kindAt(r) === T.star && starRole(r, r.at) === STAR.close;
  if (closed) r.at++;
  if (steps.length === 0 || !steps.every(goesThere)) {
    r.at = star;
    return null;
  }
  const from = fromOf(r, start);
  const to = toOf(r);
  const group = { kind: 'group' as const, steps, place, loose: false, from, to };
  while (kindAt(r) === T.comma || kindAt(r) === T.semicolon || kindAt(r) === T.stop) {
    if (!isRepeatOrder(r, 1)) break;
    r.at++;
  }
  if (!isRepeatOrder(r)) return closed ? group : null;
  const order = readOrder(r);
  const one = { ...place, pick: 'next' as const, each: false, until: null };
  return repeatOf(mark, [{ ...group, place: one }], order, { from, to: toOf(r) });
}

/** Stitches and chains with no place of their own. */
const goesThere = (step: Step): boolean =>
  step.kind === 'chain' ||
  step.kind === 'remark' ||
  (step.kind === 'work' && !step.place && !step.until && step.alsoIn.length === 0);
