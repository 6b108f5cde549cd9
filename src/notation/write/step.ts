/** One step, without what stands between it and its neighbours. */
import type { Step } from '../tree.ts';
import { writeChain } from './chain.ts';
import { writeChart } from './chart.ts';
import { writeGroup } from './group.ts';
import { writeJoin } from './join.ts';
import { writeRepeat } from './repeat.ts';
import { writeEven, writeRowsAgain } from './rows-again.ts';
import { writeSkip, writeUnworked } from './skip.ts';
import {
  writeBoxes,
  writeFastenOff,
  writeLoop,
  writeOtherSide,
  writeTurn,
  writeYarn,
} from './small.ts';
import { writeVerbatim } from './verbatim.ts';
import type { Voice } from './voice.ts';
import { writeWork } from './work.ts';

export function writeStep(step: Step, voice: Voice): string {
  switch (step.kind) {
    case 'work':
      return writeWork(step, voice);
    case 'chain':
      return writeChain(step, voice);
    case 'skip':
      return writeSkip(step, voice);
    case 'group':
      return writeGroup(step, voice);
    case 'repeat':
      return writeRepeat(step, voice);
    case 'mark':
      return step.mark;
    case 'join':
      return writeJoin(step, voice);
    case 'turn':
      return writeTurn(step);
    case 'spiral':
      return 'do not join';
    case 'fasten-off':
      return writeFastenOff(step, voice);
    case 'yarn':
      return writeYarn(step, voice);
    case 'ring':
      return 'make a magic ring';
    case 'other-side':
      return writeOtherSide(step, voice);
    case 'unworked':
      return writeUnworked(step, voice);
    case 'loop':
      return writeLoop(step);
    case 'boxes':
      return writeBoxes(step, voice);
    case 'chart':
      return writeChart(step, voice);
    case 'rows-again':
      return writeRowsAgain(step, voice);
    case 'even':
      return writeEven(step, voice);
    case 'remark':
    case 'piece':
    case 'unread':
    case 'not-worked':
      return writeVerbatim(step, voice);
  }
}
