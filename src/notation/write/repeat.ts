/** "(…) 6 times", "*…; rep from * 5 more times", "*…* 6 times", "…; rep around". */
import type { RepeatStep, Times } from '../tree.ts';
import { writeEnding } from './ending.ts';
import { bracketed } from './group.ts';
import { writeMoreTimes, writeNumbers, writeTimes } from './numbers.ts';
import { writeUntil } from './place.ts';
import type { Voice } from './voice.ts';

export function writeRepeat(step: RepeatStep, voice: Voice): string {
  return `${repeated(step, voice)}${writeEnding(step.ending, voice)}`;
}

function repeated(step: RepeatStep, voice: Voice): string {
  if (step.again) return again(step, voice);
  const steps = voice.list(step.steps, voice);
  if (step.mark === '') return unmarked(step, steps, voice);
  if (!isStar(step.mark)) return `${bracketed(steps)}${after(step.times, voice)}`;
  return starred(step, steps, voice);
}

function again({ mark, times }: RepeatStep, voice: Voice): string {
  // Of a bracket, too, makers say "from *": there is no other word for going back to it.
  const what = isStar(mark) ? `between ${mark} and ${mark}` : 'from *';
  return `rep ${what}${after(times, voice)}`;
}

/**
 * The sentence itself repeats. A total stands behind it ("sc in next 8 sts, inc, 9 times"), behind
 * one step without the comma ("sc in next st twice"), which would call up the whole sentence.
 */
function unmarked({ times, steps }: RepeatStep, words: string, voice: Voice): string {
  const isTotal = times.kind === 'times' && times.more === false;
  if (!isTotal) return `${words}; rep${after(times, voice)}`;
  return `${words}${steps.length > 1 ? ',' : ''}${after(times, voice)}`;
}

/**
 * "rep from * 5 times" says more or in all, so it is kept for what is said that way. A number that
 * is a total is written behind a closed pair of stars, where no maker adds one to it; but a star
 * between a bracket and a number multiplies the bracket ("(sc, inc)*6"), so there it is spelt out.
 */
function starred(step: RepeatStep, steps: string, voice: Voice): string {
  const { mark, times } = step;
  const isTotal = times.kind === 'times' && times.more === false;
  const [first] = step.steps;
  if (first?.kind === 'repeat' && first.mark === '*' && !first.again && times.kind !== 'missing') {
    // The star of the repeat within serves both.
    const from = mark === '**' ? 'first *' : '*';
    const n = isTotal
      ? ` for a total of ${writeNumbers(times.n, voice)} times`
      : after(times, voice);
    return `${steps}; rep from ${from}${n}`;
  }
  if (times.kind !== 'missing' && !isTotal) {
    // A repeat that opens this one has a star of its own, which must not run into this.
    const apart = steps.startsWith(mark) ? ' ' : '';
    return `${mark}${apart}${steps}; rep from ${mark}${after(times, voice)}`;
  }
  if (isTotal && steps.endsWith(')')) {
    return `${mark}${steps}; rep from ${mark} for a total of ${writeNumbers(times.n, voice)} times`;
  }
  return `${mark}${steps}${mark}${after(times, voice)}`;
}

/** Signs that are written alike at both ends; the others are brackets. */
const isStar = (mark: string): boolean => /^[*†‡°]+$/.test(mark);

function after(times: Times, voice: Voice): string {
  switch (times.kind) {
    case 'missing':
      return '';
    case 'until': {
      const until = writeUntil(times.until, voice);
      return until === '' ? '' : ` ${until}`;
    }
    case 'times':
      return ` ${times.more ? writeMoreTimes(times.n, voice) : writeTimes(times.n, voice)}`;
  }
}
