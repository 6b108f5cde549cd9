/**
 * "2 dc, (ch 2, 2 dc) twice": a bracket that begins with a chain, and is worked so often, goes on with the
 * list before it; all of it goes into one place.
 */
import { isWord, kindAt, type Reader } from './reader.ts';
import type { Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { GroupStep, Step, WorkStep } from './tree.ts';

const PLACES: SenseSet = new SenseSet([
  W.in,
  W.around,
  W.over,
  W.under,
  W.between,
  W.next,
  W.each,
  W.skip,
]);

/**
 * Does the bracket at the reader, or behind the full stop of "d.tr.", go on with the list that was read: no
 * place in it, and none behind?
 */
export function goesOnInBracket(r: Reader): boolean {
  const k = kindAt(r) === T.stop ? 1 : 0;
  const open = r.at + k;
  if (kindAt(r, k) !== T.open) return false;
  const close = r.partner[open] ?? -1;
  const chain = isWord(r, W.ch, k + 1) || (kindAt(r, k + 1) === T.number && isWord(r, W.ch, k + 2));
  if (!chain || close < 0) return false;
  for (let i = open + 1; i < close; i++)
    if (r.kind[i] === T.word && PLACES.has(r.value[i] ?? 0)) return false;
  const behind = close + 1 - r.at;
  const number = kindAt(r, behind) === T.number && isWord(r, W.times, behind + 1);
  if (!number && !isWord(r, W.twice, behind)) return false;
  const next = behind + (number ? 2 : 1);
  return kindAt(r, next) !== T.word || !(isWord(r, W.in, next) || isWord(r, W.all, next));
}

/** "Dtr, (ch 3, 2 dtr) twice in same sp": what stands before the bracket goes there too. */
export function withItsList({ out, sentence }: Run, group: GroupStep): GroupStep {
  const [timed] = group.steps;
  if (timed?.kind !== 'repeat' || timed.steps[0]?.kind !== 'chain') return group;
  let first = out.length;
  for (let at = out.length - 1; at >= sentence && isBare(out[at]); at--) {
    first = at;
    if (out[at - 1]?.kind === 'chain' && isBare(out[at - 2])) at--;
    else break;
  }
  const before = out.slice(first);
  const [begins] = before;
  if (!begins) return group;
  out.length = first;
  return { ...group, steps: [...before, ...group.steps], from: begins.from };
}

const isBare = (step: Step | undefined): step is WorkStep =>
  step?.kind === 'work' &&
  !step.place &&
  !step.until &&
  !step.evenly &&
  step.stitch.shape === 'one' &&
  step.stitch.stem !== 'ss';
