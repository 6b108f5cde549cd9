/** Puts a step that was read on its run, with what only its neighbours tell. */

import { looseGroup } from './groups.ts';
import { joinBehind, settleTarget } from './join.ts';
import { layersAhead, readLayers } from './layers.ts';
import { isMaking } from './plain-count.ts';
import { clauseEnds, isWord, kindAt, type Reader, toOf } from './reader.ts';
import { leftOver } from './remark.ts';
import { sentenceTimes } from './repeat.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { STAR, starRole } from './star.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';
import { readYarnName } from './yarn-name.ts';

export function putStep(r: Reader, run: Run, step: Step | null): void {
  if (step) {
    run.out.push(step);
    if (isMaking(step)) run.aside = false;
  } else leftOver(r, run);
}

/** "3 sc A, 2 sc B": the letter says with which yarn these are worked. */
function yarnBehind(r: Reader, run: Run): void {
  const start = r.at;
  if (kindAt(r) !== T.word || (r.to[start] ?? 0) - (r.from[start] ?? 0) !== 1) return;
  if (!clauseEnds(r, 1) && kindAt(r, 1) !== T.open) return;
  const yarn = readYarnName(r);
  if (yarn === null) return;
  const work = run.out.pop();
  run.out.push({ kind: 'yarn', yarn, act: 'with', from: r.from[start] ?? 0, to: toOf(r) });
  if (work) run.out.push(work);
}

export function workStep(r: Reader, run: Run, work: Step & { kind: 'work' }): void {
  const join =
    work.stitch.stem === 'ss' && work.stitch.shape === 'one' ? joinBehind(r, work) : null;
  run.aside = false;
  if (layersAhead(r)) {
    const step = readLayers(r, r.at);
    run.out.push({ ...step, from: work.from });
  } else if (join) run.out.push(settleTarget(join));
  else {
    run.out.push(work);
    looseGroup(run);
    yarnBehind(r, run);
    if (kindAt(r) === T.star && starRole(r, r.at) === STAR.times) return;
    const k = kindAt(r);
    if (
      k === T.number ||
      k === T.times ||
      isWord(r, W.x) ||
      isWord(r, W.once) ||
      isWord(r, W.twice) ||
      isWord(r, W.thrice)
    ) {
      sentenceTimes(r, run, r.at);
    }
  }
}
