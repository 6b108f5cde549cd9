/** The row stops before the end of the row beneath, and does not say that it means to. */
import { type Finding, stitchesLeft } from '../../finding/index.ts';
import { propose } from '../fixes/proposals.ts';
import { aroundFix, innerFixes, passFixes, swapFixes } from '../fixes/row-fixes.ts';
import { beneathLabels, beneathName, beneathUnit, CHAINS, rowName } from '../names.ts';
import { askedTimes } from '../order.ts';
import type { Scene, Sightings } from '../scene.ts';
import { usedSum } from '../sums.ts';

export function left(scene: Scene, found: Sightings<'left'>): Finding {
  const { first, at, rows, sizes } = found;
  const { fact, row, cloth } = first;
  const { have } = fact;
  const used = have - fact.left;
  const words = {
    row: rowName(scene, row),
    before: fact.ofOwnChain ? 'the chain at its start' : beneathName(scene, first),
    unit: fact.ofOwnChain ? CHAINS : beneathUnit(first),
    have,
    used,
    left: fact.left,
  };
  const reckoned = fact.ofOwnChain ? '' : usedSum(scene, row, { cloth, needed: used });
  const sum = `${reckoned ? `${reckoned} ` : ''}${have} - ${used} leaves ${fact.left}.`;
  const labels = fact.ofOwnChain ? [] : beneathLabels(scene, first);
  const more = { sum, labels, rows, sizes };
  return propose(
    stitchesLeft(askedTimes(scene, first, at), words, more),
    [
      aroundFix(scene, first),
      ...passFixes(scene, first, { used: fact.left }),
      ...innerFixes(scene, first, fact.left),
      ...swapFixes(scene, first),
    ].filter((fix) => fix !== null),
  );
}
