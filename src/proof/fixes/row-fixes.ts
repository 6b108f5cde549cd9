/** Changes that may make a row come out: its count, its repeats, a number inside a repeat. */
import { amountOf, numberIn, passesOf, sumOf } from '../../fabric/index.ts';
import type { Fix } from '../../finding/index.ts';
import type { PlacedInstruction } from '../../manuscript/index.ts';
import type { Numbers, RepeatStep, Step, WorkStep } from '../../notation/index.ts';
import { askedBy, type Scene, type Sighting, workedFrom } from '../scene.ts';
import { figureSpan, numberFix, together } from './numbers.ts';
import { replacement } from './proposals.ts';

const given = (fixes: readonly (Fix | null)[]): Fix[] => fixes.filter((fix) => fix !== null);

/** The stated number put right, or the repeats changed so that it is met. */
export function countFixes(scene: Scene, sighting: Sighting<'count'>): Fix[] {
  const { fact, row } = sighting;
  const placed = askedBy(scene, row);
  if (!placed) return [];
  const size = row.sizeIndex;
  // Where several counts of a row are off, its words are the likelier slip.
  const isLone = row.facts.filter(({ kind }) => kind === 'count').length < 2;
  const stated = isLone
    ? numberFix(scene, fact.stated.n, { placed, size, to: fact.computed })
    : null;
  const more = fact.value - fact.computed;
  return given([
    stated,
    ...passFixes(scene, sighting, { made: more }),
    isLone ? foundationFix(scene, sighting, more) : null,
  ]);
}

/** A first row along its chain: a chain that is so many longer. */
function foundationFix(scene: Scene, { row, before }: Sighting, more: number): Fix | null {
  if (before) return null;
  const part = scene.manuscript.parts[row.partIndex];
  const placed = part?.instructions[row.instruction - 1];
  const [chain, ...others] = placed?.instruction.steps ?? [];
  if (!placed || chain?.kind !== 'chain' || !chain.n || others.length > 0) return null;
  const was = numberIn(chain.n, row.sizeIndex);
  if (was === null) return null;
  const to = was + more;
  const fix = numberFix(scene, chain.n, { placed, size: row.sizeIndex, to });
  return fix && { ...fix, title: `make the foundation chain ${to} long` };
}

/** "Sc in next st. (18)": once around, or across, instead. */
export function aroundFix(scene: Scene, { row, cloth }: Sighting): Fix | null {
  const placed = workedFrom(scene, row, cloth);
  const works = placed?.instruction.steps.filter(({ kind }) => WORKED.has(kind)) ?? [];
  const [step] = works;
  if (!placed || works.length !== 1 || step?.kind !== 'work' || !step.place) return null;
  const { pick, n, from, to } = step.place;
  const at = { from: placed.from + from, to: placed.from + to };
  const words = /^(?:in |into )(?:the )?next (\w+)$/i.exec(
    scene.manuscript.text.slice(at.from, at.to),
  );
  if (pick !== 'next' || n || !words) return null;
  const insert = `in each ${words[1]} ${row.ring ? 'around' : 'across'}`;
  return replacement(scene.manuscript.text, at, insert);
}

const WORKED: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'work',
  'repeat',
  'group',
  'boxes',
  'chart',
  'skip',
]);

/** "Dec" for "inc", or the reverse: the word that is typed most easily for the other. */
export function swapFixes(scene: Scene, { row, cloth }: Sighting): Fix[] {
  const placed = workedFrom(scene, row, cloth);
  const { text } = scene.manuscript;
  const swap = (step: Step): (Fix | null)[] => {
    if (step.kind === 'repeat' || step.kind === 'group') return step.steps.flatMap(swap);
    if (!placed || step.kind !== 'work') return [];
    const at = { from: placed.from + step.nameFrom, to: placed.from + step.nameTo };
    const other = SWAPPED.get(text.slice(at.from, at.to));
    return other ? [replacement(text, at, other)] : [];
  };
  return given((placed?.instruction.steps ?? []).flatMap(swap));
}

const SWAPPED: ReadonlyMap<string, string> = new Map([
  ['dec', 'inc'],
  ['inc', 'dec'],
  ['Dec', 'Inc'],
  ['Inc', 'Dec'],
]);

/** Another number of stitches inside a repeat, so that all its passes use as many places as there are. */
export function innerFixes(scene: Scene, { row, cloth }: Sighting, more: number): Fix[] {
  const placed = workedFrom(scene, row, cloth);
  const size = row.sizeIndex;
  if (!placed) return [];
  return placed.instruction.steps.flatMap((step) => {
    if (step.kind !== 'repeat' || step.times.kind !== 'times') return [];
    const passes = passesOf(step, size);
    if (!passes || more % passes !== 0) return [];
    return given(
      step.steps.map((inner) => {
        const n = plainNumber(inner);
        const was = n && numberIn(n, size);
        if (!n || !was) return null;
        const to = was + more / passes;
        return to === 1 ? singularFix(scene, placed, n) : numberFix(scene, n, { placed, size, to });
      }),
    );
  });
}

/** "Next 2 sts" becomes "next st", not "next 1 sts". */
function singularFix(
  { manuscript: { text } }: Scene,
  placed: PlacedInstruction,
  n: Numbers,
): Fix | null {
  if (n.values.length !== 1) return null;
  const from = placed.from + n.from;
  const found = /^\d+ (sts|stitches|chs?|[a-z]{2,4})\b/.exec(text.slice(from, from + 16));
  const one = found?.[1]?.replace(/(?<=st|ch)s$|es$/, '');
  return found && one ? replacement(text, { from, to: from + found[0].length }, one) : null;
}

/** Repeats with a number: so many more or fewer that places or stitches come out. */
export function passFixes(
  scene: Scene,
  { row, cloth }: Sighting,
  by: { used: number } | { made: number },
): (Fix | null)[] {
  const placed = workedFrom(scene, row, cloth);
  if (!placed) return [];
  const size = row.sizeIndex;
  return placed.instruction.steps.map((step) => {
    if (step.kind !== 'repeat' || step.times.kind !== 'times') return null;
    const each = sumOf(step.steps, size);
    const [per, change] = 'used' in by ? [each.used, by.used] : [each.made, by.made];
    const passes = numberIn(step.times.n, size);
    if (per === null || per === 0 || passes === null || change % per !== 0) return null;
    return numberFix(scene, step.times.n, { placed, size, to: passes + change / per });
  });
}

/** Another number inside the repeat, so that it divides what is there. */
export function dividingFixes(
  scene: Scene,
  placed: PlacedInstruction | null,
  of: { repeat: RepeatStep; per: number; have: number; size: number },
): Fix[] {
  if (!placed) return [];
  const { repeat, per, have, size } = of;
  const near = [Math.ceil(have / per), Math.floor(have / per)];
  const pers = near.filter((passes) => passes > 0 && have % passes === 0).map((p) => have / p);
  return pers.flatMap((wanted) =>
    given(
      repeat.steps.map((step) => {
        const n = plainNumber(step);
        const was = n && numberIn(n, size);
        return n && was ? numberFix(scene, n, { placed, size, to: was + wanted - per }) : null;
      }),
    ),
  );
}

/** "Sc in next 3 sts": the number of places, each with one stitch. */
const plainNumber = (step: Step) =>
  step.kind === 'work' && step.stitch.shape === 'one' && !step.n ? (step.place?.n ?? null) : null;

/** So many boxes more or fewer, in any of the runs of boxes. */
export function boxFixes(scene: Scene, { row, cloth }: Sighting, more: number): Fix[] {
  const placed = workedFrom(scene, row, cloth);
  const size = row.sizeIndex;
  if (!placed || !Number.isInteger(more)) return [];
  return given(
    placed.instruction.steps.map((step) => {
      const isBoxes =
        step.kind === 'boxes' || (step.kind === 'work' && step.stitch.special !== null);
      const was = isBoxes && step.n ? numberIn(step.n, size) : null;
      if (!isBoxes || !step.n || was === null) return null;
      return numberFix(scene, step.n, { placed, size, to: was + more });
    }),
  );
}

/** The last stitches have no place: leave them out, and count what is left. */
export function dropFix(scene: Scene, sighting: Sighting<'overrun'>): Fix | null {
  const { fact, row, cloth } = sighting;
  const placed = workedFrom(scene, row, cloth);
  if (!placed || placed !== askedBy(scene, row)) return null;
  const { steps, counts } = placed.instruction;
  const at = steps.findLastIndex((step) => step.kind === 'work' || step.kind === 'repeat');
  const last = steps[at];
  const before = steps[at - 1];
  if (last?.kind !== 'work' || !before || !isAllLacking(last, fact, row.sizeIndex)) return null;
  const drop = { from: placed.from + before.to, to: placed.from + last.to, insert: '' };
  const title = `drop ", ${scene.manuscript.text.slice(placed.from + last.from, drop.to)}"`;
  const [stated] = counts;
  const made = amountOf(last, row.sizeIndex).made ?? 0;
  const span = stated && figureSpan(scene, stated.n, { base: placed.from, size: row.sizeIndex });
  // Where no count bears it out, the chain may as well be one too short: "rep to end, sc in last st".
  if (!span) return null;
  const right = String(row.tally.stitches - made);
  const isRight = scene.manuscript.text.slice(span.from, span.to) === right;
  if (isRight) return together(title, [drop]);
  return together(`${title} and change the count to ${right}`, [
    drop,
    { from: span.from, to: span.to, insert: right },
  ]);
}

const isAllLacking = (
  step: WorkStep,
  { needed, have }: { needed: number; have: number },
  size: number,
): boolean => amountOf(step, size).used === needed - have;
