/** The sentence before, over and over, in words that name no repeat: see `goes-on.ts`. */
import { readEnding } from './ending.ts';
import { forOthers, goesOnOrder, soManyOrder } from './goes-on.ts';
import { isWorked } from './plain-count.ts';
import type { Reader } from './reader.ts';
import { type Run, sentenceOf } from './run.ts';
import { wrapSentence } from './sentence-repeat.ts';

/** Whether such words stood here; the sentence before is a repeat then. */
export function goesOnSo(r: Reader, run: Run): boolean {
  if (run.end !== 'text' || r.depth > 0) return false;
  const start = r.at;
  const many = run.out.some(isWorked) ? soManyOrder(r) : null;
  // Of several sentences it is not told over how many it goes back.
  if (many && run.out.slice(0, sentenceOf(run)).some(isWorked)) {
    run.out.push({ kind: 'unread', says: 'work', ...many.order });
    return true;
  }
  if (many) {
    wrapSentence(r, run, { ...many, ending: readEnding(r) }, '');
    return true;
  }
  r.at = start;
  const others = run.out.some(isWorked) ? forOthers(r) : null;
  if (others) {
    run.out.push({ kind: 'unread', says: 'work', ...others });
    return true;
  }
  const said = goesOnOrder(r);
  if (!said) return false;
  const last = run.out.at(-1);
  // "(Ch 3, dc, ch 2, 2 dc) in first sp": its chain stands for a stitch once, and not in each pass.
  const [head] = run.out.filter(isWorked);
  const once = !head || (head.kind === 'group' && head.steps[0]?.kind === 'chain');
  if (last?.kind === 'repeat' && last.times.kind === 'until')
    run.out.push({ kind: 'remark', ...said.order });
  else if (once) run.out.push({ kind: 'unread', says: 'work', ...said.order });
  else wrapSentence(r, run, { ...said, ending: readEnding(r) }, '');
  return true;
}
