/**
 * "40 sc on each long side", "20 sc along each short edge", "12 sc across both ends": worked so often as there
 * are such sides, two of each length. "Each side" is all four where each corner is spoken of too; else how many
 * there are is not told.
 */
import { loneValue } from './numbers.ts';
import type { Reader } from './reader.ts';
import { repeatOf } from './repeat-step.ts';
import type { Step, Times } from './tree.ts';

const SIDES =
  /\b(?:(both) |each (?:of (?:the|its) )?(?:(two|2|three|3|four|4) )?(?:(short|long)(?:er)? )?)(?:short |long )?(?:sides?|edges?|ends?)\b/i;

const NUMBERS: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4 };

/** "…, and 3 sc in each corner": the sides are those of a piece with four corners. */
const ALL = 4;

const isEachCorner = (step: Step): boolean =>
  (step.kind === 'work' || step.kind === 'group') &&
  step.place?.pick === 'each' &&
  step.place.nouns[0]?.kind === 'corner';

/** Settles them in place: the work on one side, and how often it is worked. */
export function settleSides(steps: Step[], r: Reader): void {
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i];
    if (step?.kind !== 'work' || !step.evenly || step.n === null) continue;
    const { from, to } = step;
    const words = r.text.slice(r.base + step.nameTo, r.base + to);
    const [all, both, number = '', length] = SIDES.exec(words) ?? [];
    const n = both || length ? 2 : (NUMBERS[number.toLowerCase()] ?? Number(number));
    const isEach = all !== undefined && !both && number === '' && !length;
    const sides = isEach && steps.slice(i + 1).some(isEachCorner) ? ALL : n;
    if (all === undefined || (sides < 2 && !isEach)) continue;
    const at = { from: to, to };
    // Of how many sides there are nothing is told: as often as the count asks for.
    const times: Times =
      isEach && sides !== ALL
        ? { kind: 'missing' }
        : { kind: 'times', n: { values: loneValue(sides), ...at }, more: false, ...at };
    steps[i] = repeatOf('', [step], { times, ending: null, order: at }, { from, to });
  }
}
