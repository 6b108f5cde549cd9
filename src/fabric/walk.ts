/** Works a list of steps in order; each construct has its file in `steps/`. */
import { PLAIN_TERM, type Step } from '../notation/index.ts';
import type { Here, RowContext } from './context.ts';
import { toRow } from './earlier-row.ts';
import {
  fact,
  guessNumber,
  type Hands,
  numberFor,
  spanAt,
  TOO_MANY,
  takeYarnNamed,
} from './hands.ts';
import { alongEachSide, borderAround, explainsSide, toSide } from './steps/border.ts';
import { doBoxes, doChart } from './steps/boxes.ts';
import { doChain } from './steps/chain.ts';
import { closeFlat } from './steps/close-flat.ts';
import { doGroup } from './steps/group.ts';
import { isOpenPattern } from './steps/in-pattern.ts';
import { beforeTogether, doTogether, togetherFrom } from './steps/interleave.ts';
import { doJoin } from './steps/join.ts';
import { stopsBefore } from './steps/leave-last.ts';
import { listAround } from './steps/list-around.ts';
import { doOtherSide } from './steps/other-side.ts';
import { doPiece } from './steps/piece.ts';
import { doRepeat } from './steps/repeat.ts';
import { doRing } from './steps/ring.ts';
import { sentenceAround } from './steps/sentence-around.ts';
import { doSkip } from './steps/skip.ts';
import { doSpecial } from './steps/special.ts';
import { doTurn } from './steps/turn.ts';
import { doWork } from './steps/work.ts';

/** Works the list from step `from` on. */
export function walk(
  hands: Hands,
  steps: readonly Step[],
  row: RowContext,
  at: { from: number; top: boolean } = { from: 0, top: false },
): void {
  for (let i = at.from; i < steps.length; i++) {
    const written = steps[i];
    if (!written) continue;
    const step = stopsBefore(written, steps[i + 1]) ?? written;
    const here: Here = { steps, i, top: at.top };
    const around =
      borderAround(hands, steps, here) ??
      sentenceAround(hands, steps, here) ??
      listAround(hands, steps, here);
    if (around) return walk(hands, around, row, { from: i, top: at.top });
    if (--hands.bench.limit.moves < 0) throw TOO_MANY;
    hands.at = step;
    hands.atBase = hands.base;
    const together = hands.into ? null : togetherFrom(steps, i);
    if (together) {
      const before = beforeTogether(step);
      if (before) doWork(hands, before, row, here);
      doTogether(hands, together.members, row, here);
      i = together.next - 1;
      continue;
    }
    if (step.kind === 'repeat') {
      if (explainsSide(steps[i - 1], step) || alongEachSide(hands, step)) continue;
      toSide(hands, step.steps[0]);
      // A repeat to the row's end tries how many passes leave room for what follows, and so
      // works what follows itself.
      if (doRepeat(hands, step, row, here)) return;
    } else doStep(hands, step, row, here);
  }
}

function doStep(hands: Hands, step: Step, row: RowContext, here: Here): void {
  switch (step.kind) {
    case 'work':
      return step.stitch.special === null
        ? doWork(hands, step, row, here)
        : doSpecial(hands, step, row, here);
    case 'chain':
      return doChain(hands, step, row, here);
    case 'group':
      return doGroup(hands, step, row, here);
    case 'skip':
      return doSkip(hands, step, row, here);
    case 'join':
      return doJoin(hands, step, row, here);
    case 'turn':
      return doTurn(hands, step, here);
    case 'ring':
      return doRing(hands);
    case 'other-side':
      return doOtherSide(hands, step, row);
    case 'boxes':
      return doBoxes(hands, step, row, here);
    case 'chart':
      return doChart(hands, step, row, here);
    case 'even':
      if (isOpenPattern(hands, step, here)) guessNumber(hands);
      return doWork(hands, evenStep(step), row, here);
    case 'loop':
      hands.loop = step.loop === 'both' ? null : step.loop;
      if (step.row !== null && !toRow(hands, step.row)) hands.loose = true;
      return;
    case 'unworked':
      hands.leave = true;
      // In rows of boxes the number is one of boxes, and the row's own count tells what is left.
      hands.leaveSaid = hands.boxes > 0 ? null : numberFor(hands, step.n);
      return;
    case 'yarn':
      return takeYarn(hands, step);
    case 'fasten-off':
      hands.fastened = !step.not;
      return;
    case 'unread':
      hands.unread = true;
      return fact(hands, { kind: 'unread', ...spanAt(hands, step) });
    case 'piece':
      return doPiece(hands, step, row);
    case 'not-worked':
      if (step.work && closeFlat(hands, step.work)) return;
      hands.loose = true;
      hands.partly = true;
      return fact(hands, { kind: 'not-worked', what: step.what, ...spanAt(hands, step) });
    default:
      return;
  }
}

const evenStep = (step: Step & { kind: 'even' }): Step & { kind: 'work' } => ({
  kind: 'work',
  nameFrom: step.from,
  nameTo: step.to,
  from: step.from,
  to: step.to,
  n: null,
  numberAfter: false,
  stitch: step.stitch ?? PLAIN_TERM,
  place: null,
  alsoIn: [],
  until: step.until ?? { kind: 'end', word: 'around', from: step.from, to: step.to },
  countsAs: null,
  evenly: false,
});

function takeYarn(hands: Hands, step: Step & { kind: 'yarn' }): void {
  if (step.act === 'drop' || step.act === 'break') return;
  takeYarnNamed(hands, step.yarn);
  hands.fastened = false;
}
