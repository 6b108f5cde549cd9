/** Whether a line may be work by its label, its chain or its ring: most talk is refused before it is read. */
import { hintOf, isHinted } from './hints.ts';
import { readLabel } from './label.ts';
import { openReader } from './reader.ts';
import { W } from './senses.ts';
import { mendsOf } from './slips.ts';
import { readRun } from './steps.ts';
import { NO_VOCABULARY } from './vocabulary.ts';

/** No chain and no ring is read without one of these. */
const BEGINNINGS = hintOf([
  ...[W.ch, W.multiple, W.even, W.odd],
  ...[W.ring, W.mr, W.mc, W.ml, W.magic, W.loop, W.slip_knot, W.knot],
]);

/** False only where `readInstruction` finds no label, and no chain or ring among the steps. */
export function mayLeadWork(text: string, from: number, to: number): boolean {
  const r = openReader(text, { from, to }, NO_VOCABULARY, readRun);
  if (isHinted(r, BEGINNINGS)) return true;
  // A word with a slip in it may be one of them.
  return readLabel(r) !== null || r.slips.length > 0 || (r.strange > 0 && mendsOf(r, {}) !== null);
}
