/**
 * "Ch 3 (counts as dc), 2 dc in each st around (24)" on twelve stitches: a chain that stands for the
 * first stitch leaves 23. Makers who count 24 mean it for the first of the two in its own place.
 */
import type { WorkStep } from '../../notation/index.ts';
import { type Hands, spanAt } from '../hands.ts';
import { firstAnchor } from '../nodes.ts';
import { ask } from '../readings.ts';
import { stitches } from './stitch.ts';

/** The rest of the first place, before `step` goes on into each other: `inEach` stitches a place. */
export function besideStartChain(hands: Hands, step: WorkStep, inEach: number): void {
  if (inEach < 2 || step.place?.pick !== 'each' || hands.statedStitches < 0) return;
  const { edge, nodes, bench, rowFrom } = hands;
  const kind = bench.kinds.kinds[nodes.kind[rowFrom] ?? 0];
  const alone = nodes.n === rowFrom + 1 && kind?.class === 'start' && hands.pos === 1;
  if (!alone || edge.kind !== 'row') return;
  const reading = ask(hands.readings, {
    doubt: 'start-chain before several',
    custom: 'a place of its own',
    alternatives: ['one of them'],
    local: true,
    ...spanAt(hands, step),
  });
  if (reading === 'a place of its own') return;
  const node = firstAnchor(nodes, rowFrom);
  stitches(hands, step, { node, space: false, entry: 0 }, inEach - 1);
}
