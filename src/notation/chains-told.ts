/**
 * "Ch 90, join. For a looser fit, ch 100.", "Ch 90 (ch 100 for a larger size)": one foundation is made, and what
 * others may make is told of. Without a stitch between them nobody makes two.
 */
import type { Reader } from './reader.ts';
import type { RemarkStep, Step } from './tree.ts';

/** Fewer chains, behind a foundation, may turn the work or begin a round. */
const FEWEST = 20;
/** What is as long as a foundation, compared with the first of them; ours. */
const LIKE = 3;

const PASSING: ReadonlySet<Step['kind']> = new Set(['join', 'remark', 'yarn', 'turn', 'mark']);

/** What is said of the others: whose they are, or how the piece then fits. */
const OF_OTHERS =
  /\b(?:i|mine|my|if|fit|fits|larger|smaller|bigger|longer|shorter|looser|tighter|wider|narrower|snug|snugger|want|prefer)\b/i;

/** Makes remarks of the chains beside such talk that come behind the foundation chain, in place. */
export function chainsTold(steps: Step[], r: Reader): void {
  const begins = steps.findIndex(({ kind }) => kind !== 'yarn' && kind !== 'remark');
  const first = lengthOf(steps[begins]);
  if (first < FEWEST || steps.length < begins + 2) return;
  for (let i = begins + 1; i < steps.length; i++) {
    const step = steps[i]!;
    const told = lengthOf(inBrackets(step));
    if (told >= FEWEST && told < first * LIKE && told * LIKE > first && isBesideTalk(steps, i, r)) {
      steps[i] = remarkOf(step);
    } else if (!PASSING.has(step.kind) && step.kind !== 'chain') return;
  }
}

/** The one chain of a bracket that talks for the rest; else the step itself. */
function inBrackets(step: Step): Step {
  if (step.kind !== 'repeat' || step.times.kind !== 'missing') return step;
  const chains = step.steps.filter(({ kind }) => kind === 'chain');
  const [only] = chains;
  const talks = step.steps.length > chains.length && step.steps.every(isTalkOrChain);
  return only && chains.length === 1 && talks ? only : step;
}

const isTalkOrChain = ({ kind }: Step): boolean => kind === 'chain' || kind === 'remark';

const lengthOf = (step: Step | undefined): number =>
  step?.kind === 'chain' && step.n?.values.length === 1 ? (step.n.values[0] ?? 0) : 0;

const isBesideTalk = (steps: readonly Step[], i: number, r: Reader): boolean =>
  steps[i]?.kind === 'repeat'
    ? OF_OTHERS.test(wordsOf(steps[i], r))
    : [steps[i - 1], steps[i + 1]].some(
        (step) => step?.kind === 'remark' && OF_OTHERS.test(wordsOf(step, r)),
      );

const wordsOf = (step: Step | undefined, r: Reader): string =>
  step ? r.text.slice(r.base + step.from, r.base + step.to) : '';

const remarkOf = ({ from, to }: Step): RemarkStep => ({ kind: 'remark', from, to });
