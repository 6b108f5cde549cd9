/** Puts a step that was read on its run, with what only its neighbours tell. */
import { W } from './dictionary.ts';
import { looseGroup } from './groups.ts';
import { joinBehind, settleTarget } from './join.ts';
import { isMaking } from './plain-count.ts';
import { isWord, kindAt, type Reader } from './reader.ts';
import { leftOver } from './remark.ts';
import { sentenceTimes } from './repeat.ts';
import type { Run } from './run.ts';
import { STAR, starRole } from './star.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';

export function putStep(r: Reader, run: Run, step: Step | null): void {
  if (step) {
    run.out.push(step);
    if (isMaking(step)) run.aside = false;
  } else leftOver(r, run);
}

export function workStep(r: Reader, run: Run, work: Step & { kind: 'work' }): void {
  const join =
    work.stitch.stem === 'ss' && work.stitch.shape === 'one' ? joinBehind(r, work) : null;
  run.aside = false;
  if (join) run.out.push(settleTarget(join));
  else {
    run.out.push(work);
    looseGroup(run);
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
