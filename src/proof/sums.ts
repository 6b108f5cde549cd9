/** The arithmetic of a row as a sentence: "6 repeats of 3 + 2 make 30." */
import { amountOf, type Cloth, passesOf, type RowRecord, sumOf } from '../fabric/index.ts';
import type { PlacedInstruction } from '../manuscript/index.ts';
import type { RepeatStep, StemId, Step } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { holds, type Scene, type Sighting, workedFrom } from './scene.ts';

/** A sum of more members than this is no help to anybody. */
const MOST_MEMBERS = 9;

/** How the words come to the stitches made; '' where they cannot be told apart. */
export function madeSum(scene: Scene, row: RowRecord, cloth: Cloth): string {
  const placed = workedFrom(scene, row, cloth);
  const total = row.tally.stitches;
  if (!placed || total === 0) return '';
  const made = madeByStep(scene, row, { cloth, placed });
  if (!made) return '';
  const members = placed.instruction.steps.flatMap((step) => {
    const n = countOf(made, step);
    return n > 0 ? [memberMade(step, n, made, row.sizeIndex)] : [];
  });
  return sentence(members, 'make', total);
}

/** How the words come to the stitches used; '' unless their sum is what the hands found. */
export function usedSum(
  scene: Scene,
  row: RowRecord,
  of: { cloth: Cloth; needed: number },
): string {
  const placed = workedFrom(scene, row, of.cloth);
  if (!placed) return '';
  const { steps } = placed.instruction;
  const size = row.sizeIndex;
  const { used } = sumOf(steps, size);
  const first = steps.find((step) => step.kind === 'work' || step.kind === 'group');
  // "In same st as join" stands on the first place, which is one of the row's.
  const standing = first?.place?.pick === 'same' ? 1 : 0;
  if (used === null || used + standing !== of.needed) return '';
  const members = steps.flatMap((step) => {
    const n = (amountOf(step, size).used ?? 0) + (step === first ? standing : 0);
    return n > 0 ? [memberUsed(step, n, size)] : [];
  });
  return sentence(members, 'use', of.needed);
}

/** The words that make stitches of a stem in a row, each once. */
export function madeBy(scene: Scene, { row, cloth }: Sighting, stem: StemId): Span[] {
  const { kinds } = scene.fabric.kinds;
  const found = new Map<number, Span>();
  for (let id = row.nodes.from; id < row.nodes.to; id++) {
    const kind = kinds[cloth.nodes.kind[id] ?? 0];
    const origin = cloth.nodes.origin[id] ?? 0;
    const span = scene.fabric.origins[origin];
    if (kind?.class !== 'stitch' || kind.stem !== stem || !span || found.has(origin)) continue;
    if (holds(row, span)) found.set(origin, span);
  }
  return [...found.values()];
}

/** What a step adds: alone it can be told in words, among others as a sum. */
interface Member {
  readonly passes: number;
  readonly each: readonly number[];
  readonly note: string;
}

function sentence(members: readonly Member[], verb: 'make' | 'use', total: number): string {
  const [first, ...more] = members;
  if (!first || members.length > MOST_MEMBERS) return '';
  if (more.length > 0) return `${members.map(inSum).join(' + ')} ${verb} ${total}.`;
  return first.passes > 1
    ? `${first.passes} repeats of ${first.each.join(' + ')} ${verb} ${total}.`
    : '';
}

function inSum({ passes, each, note }: Member): string {
  const inner = each.join(' + ');
  if (passes < 2) return `${inner}${note}`;
  return each.length > 1 ? `${passes} x (${inner})` : `${passes} x ${inner}`;
}

const once = (n: number, note = ''): Member => ({ passes: 1, each: [n], note });

function memberUsed(step: Step, n: number, size: number): Member {
  const passes = step.kind === 'repeat' ? passesOf(step, size) : null;
  return passes === null || passes < 2 ? once(n) : { passes, each: [n / passes], note: '' };
}

function memberMade(step: Step, n: number, made: ReadonlyMap<Step, number>, size: number): Member {
  if (step.kind === 'chain') return once(n, ' for the chain');
  const passes = step.kind === 'repeat' ? passesMade(step, made, size) : null;
  if (step.kind !== 'repeat' || passes === null || passes < 2) return once(n);
  const each = step.steps.map((one) => countOf(made, one) / passes).filter((one) => one > 0);
  const isWhole = each.every((one) => Number.isInteger(one)) && each.length <= 5;
  return isWhole ? { passes, each, note: '' } : once(n);
}

/** How often a repeat was worked, told from what its steps made. */
function passesMade(
  step: RepeatStep,
  made: ReadonlyMap<Step, number>,
  size: number,
): number | null {
  for (const one of step.steps) {
    const each = amountOf(one, size).made;
    const all = countOf(made, one);
    if (each !== null && each > 0 && all > 0 && all % each === 0) return all / each;
  }
  return passesOf(step, size);
}

const innerOf = (step: Step): readonly Step[] =>
  step.kind === 'repeat' || step.kind === 'group' ? step.steps : [];

function countOf(made: ReadonlyMap<Step, number>, step: Step): number {
  let n = made.get(step) ?? 0;
  for (const inner of innerOf(step)) n += countOf(made, inner);
  if (step.kind === 'repeat' && step.ending && 'steps' in step.ending) {
    for (const inner of step.ending.steps) n += countOf(made, inner);
  }
  return n;
}

/** Counted stitches by the step whose words made them; `null` if some were made by other words. */
function madeByStep(
  scene: Scene,
  row: RowRecord,
  { cloth, placed }: { cloth: Cloth; placed: PlacedInstruction },
): ReadonlyMap<Step, number> | null {
  const { kinds } = scene.fabric.kinds;
  const byOrigin = new Map<number, number>();
  for (let id = row.nodes.from; id < row.nodes.to; id++) {
    if (!kinds[cloth.nodes.kind[id] ?? 0]?.counted) continue;
    const origin = cloth.nodes.origin[id] ?? 0;
    byOrigin.set(origin, (byOrigin.get(origin) ?? 0) + 1);
  }
  const made = new Map<Step, number>();
  for (const [origin, n] of byOrigin) {
    const span = scene.fabric.origins[origin];
    const step = span && holds(placed, span) ? stepAt(placed, span.from - placed.from) : null;
    if (!step) return null;
    made.set(step, (made.get(step) ?? 0) + n);
  }
  return made;
}

/** The innermost step that begins at this offset. */
function stepAt(placed: PlacedInstruction, offset: number): Step | null {
  const search = (steps: readonly Step[]): Step | null => {
    for (const step of steps) {
      const endings =
        step.kind === 'repeat' && step.ending && 'steps' in step.ending ? step.ending.steps : [];
      const inner = search([...innerOf(step), ...endings]);
      if (inner) return inner;
      const leaf = step.kind !== 'repeat' && step.kind !== 'group';
      if (leaf && step.from <= offset && offset < Math.max(step.to, step.from + 1)) return step;
    }
    return null;
  };
  return search(placed.instruction.steps);
}
