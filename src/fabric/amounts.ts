/**
 * What the words of a step take up and make, where the words alone fix it: "sc in next 3 sts" takes
 * three, "inc" one, "sc2tog" two. `null` where the row beneath decides ("each st around").
 */
import type { Numbers, Place, RepeatStep, Step, WorkStep } from '../notation/index.ts';

export interface Amount {
  readonly used: number | null;
  readonly made: number | null;
}

const NOTHING: Amount = { used: 0, made: 0 };
const OPEN: Amount = { used: null, made: null };

export const numberIn = (numbers: Numbers | null, size: number): number | null => {
  if (!numbers) return null;
  const { values } = numbers;
  return (values.length === 1 ? values[0] : values[size]) ?? null;
};

export function amountOf(step: Step, size: number): Amount {
  switch (step.kind) {
    case 'work':
      return ofWork(step, size);
    case 'skip':
      return { used: placesIn(step.place, size), made: 0 };
    case 'group': {
      const inner = sumOf(step.steps, size);
      return { used: isSpace(step.place) ? 0 : placesIn(step.place, size), made: inner.made };
    }
    case 'repeat':
      return ofRepeat(step, size);
    case 'boxes':
    case 'chart':
    case 'even':
    case 'rows-again':
    case 'unread':
    case 'not-worked':
      return OPEN;
    case 'other-side':
      return { used: null, made: 0 };
    default:
      return NOTHING;
  }
}

export function sumOf(steps: readonly Step[], size: number): Amount {
  let used: number | null = 0;
  let made: number | null = 0;
  for (const step of steps) {
    const amount = amountOf(step, size);
    used = used === null || amount.used === null ? null : used + amount.used;
    made = made === null || amount.made === null ? null : made + amount.made;
  }
  return { used, made };
}

/**
 * Whether the words alone fix how many stitches a row makes, whatever lies beneath: just those that it
 * made. A start chain that counts is one more than the words tell.
 */
export function isFixed(steps: readonly Step[], stitches: number, size: number): boolean {
  const { made } = sumOf(steps, size);
  return made !== null && made > 0 && (made === stitches || made + 1 === stitches);
}

/** Passes of a repeat in all, where a number is written; "n times" after a star is n more by custom. */
export function passesOf(step: RepeatStep, size: number): number | null {
  if (step.times.kind !== 'times') return null;
  const n = numberIn(step.times.n, size);
  if (n === null || step.again) return n;
  return step.times.more === false ? n : n + 1;
}

function ofRepeat(step: RepeatStep, size: number): Amount {
  const passes = passesOf(step, size);
  if (passes === null || step.ending) return OPEN;
  const { used, made } = sumOf(step.steps, size);
  return {
    used: used === null ? null : used * passes,
    made: made === null ? null : made * passes,
  };
}

const isSpace = (place: Place | null): boolean =>
  ['space', 'gap', 'ring', 'corner', 'row-end'].includes(place?.nouns[0]?.kind ?? 'stitch');

/** Stitches of the row beneath that a place takes. */
function placesIn(place: Place | null, size: number): number | null {
  if (!place) return 1;
  if (place.until || place.pick === 'every-other') return null;
  if (isSpace(place)) return 0;
  const n = numberIn(place.n, size);
  if (place.pick === 'each' && n === null) return null;
  if (place.pick === 'same') return 0;
  return n ?? 1;
}

function ofWork(step: WorkStep, size: number): Amount {
  const { stitch, place } = step;
  if (step.evenly && stitch.shape === 'one' && !stitch.special)
    return { used: null, made: step.place ? null : numberIn(step.n, size) };
  if (stitch.special || step.evenly || step.until) return OPEN;
  if (step.alsoIn.length > 0) return ofPlaces(step, size);
  if (stitch.foundation) return OPEN;
  const n = numberIn(step.n, size);
  const legs = stitch.legs ?? 2;
  const made = stitch.stem === 'ss' ? 0 : 1;
  if (stitch.shape === 'together') return together(place, { n, legs, size });
  const each = stitch.shape === 'increase' ? legs : 1;
  if (place === null) return { used: n ?? 1, made: made * each * (n ?? 1) };
  const places = placesIn(place, size);
  if (places === null) return OPEN;
  const many = numberIn(place.n, size) ?? 1;
  const inEach = many > 1 && !place.each && n === many ? 1 : (n ?? 1);
  return { used: places, made: made * each * inEach * many };
}

/** "Sc in 2nd ch from hook and in each of next 5 ch": the same in each place. */
function ofPlaces(step: WorkStep, size: number): Amount {
  let used: number | null = 0;
  let made: number | null = 0;
  for (const place of [step.place, ...step.alsoIn]) {
    const one = ofWork({ ...step, place, alsoIn: [] }, size);
    used = used === null || one.used === null ? null : used + one.used;
    made = made === null || one.made === null ? null : made + one.made;
  }
  return { used, made };
}

function together(
  place: Place | null,
  { n, legs, size }: { n: number | null; legs: number; size: number },
): Amount {
  const over = numberIn(place?.n ?? null, size);
  if (place?.until || (place?.pick === 'each' && over === null)) return OPEN;
  if (isSpace(place)) return OPEN;
  const times = n ?? (over !== null && over > legs && over % legs === 0 ? over / legs : 1);
  return { used: times * legs, made: times };
}
