/**
 * "*skip 2, 5 dc, skip 2, sc; rep from *", "{skip 3 sts, 2 dc, ch 2, 2 dc} around": no place is told, and the
 * words say one stitch in each; but a shell is often written so, all of it in the one stitch behind the
 * skip. The sums show it.
 */
import { placeWith, type RepeatStep, type Step, type WorkStep } from '../../notation/index.ts';
import { type Hands, numberFor, spanAt } from '../hands.ts';
import { ask } from '../readings.ts';

/** The repeat, with what stands bare behind its skips made groups where that reading was chosen. */
export function bareBehindSkip(hands: Hands, step: RepeatStep): RepeatStep {
  const first = step.steps.findIndex((_, i) => bareFrom(hands, step.steps, i) > i);
  if (first < 0) return step;
  const reading = ask(hands.readings, {
    doubt: 'bare behind a skip',
    custom: 'one after the other',
    alternatives: ['in one place'],
    local: true,
    ...spanAt(hands, step.steps[first] ?? step),
  });
  return reading === 'in one place' ? { ...step, steps: grouped(hands, step.steps) } : step;
}

function grouped(hands: Hands, steps: readonly Step[]): Step[] {
  const out: Step[] = [];
  for (let i = 0; i < steps.length; i++) {
    const to = bareFrom(hands, steps, i);
    const inner = steps.slice(i, to);
    const [first] = inner;
    const last = inner.at(-1);
    if (first && last) {
      const span = { from: first.from, to: last.to };
      const place = placeWith(span, { pick: 'next' });
      out.push({ kind: 'group', steps: inner, place, loose: false, ...span });
      i = to - 1;
    } else if (steps[i]) out.push(steps[i] as Step);
  }
  return out;
}

/** Where the shell that begins with step `i` ends; `i` where none does. */
function bareFrom(hands: Hands, steps: readonly Step[], i: number): number {
  const first = steps[i];
  // "Ch 2, skip 2, 3 sc" is a mesh: its chain spans what is skipped.
  const isMesh = steps[i - 2]?.kind === 'chain';
  if (steps[i - 1]?.kind !== 'skip' || isMesh || !isBare(first)) return i;
  const n = numberFor(hands, first.n) ?? 1;
  let to = i + 1;
  for (; ; to += 2) {
    const mirror = steps[to + 1];
    const isOn = steps[to]?.kind === 'chain' && isBare(mirror);
    if (!isOn || mirror.stitch.stem !== first.stitch.stem) break;
  }
  // One stitch and a chain, "skip 1, dc, ch 1", is a mesh.
  return n > 2 || (n === 2 && to > i + 1) ? to : i;
}

const isBare = (step: Step | undefined): step is WorkStep =>
  step?.kind === 'work' &&
  step.place === null &&
  step.until === null &&
  step.alsoIn.length === 0 &&
  !step.evenly &&
  !step.numberAfter &&
  step.stitch.shape === 'one' &&
  step.stitch.stem !== 'ss';
