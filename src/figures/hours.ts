/** How long the work takes, as a range. */
import { type StemId, type Terms, wordFor } from '../notation/index.ts';
import { findPace } from './pace.ts';
import type { YarnTally } from './stitch-tally.ts';
import type { YarnKey } from './yarn-path.ts';

export interface Hours {
  readonly from: number;
  readonly to: number;
  readonly isOwnPace: boolean;
  readonly because: string;
}

/** Stitches a minute, the slower and the quicker end: planning figures, common practice. */
const PACE: Readonly<Partial<Record<YarnKey, readonly [number, number]>>> = {
  w0: [12, 15],
  w1h: [10, 12],
  w1: [8, 10],
  w2: [6, 8],
};
/** Chains and slip stitches go twice as fast as sc: ours. */
const QUICK: readonly [number, number] = [24, 30];
/** Taller ones, by the wraps: ours. */
const SLOW: readonly [number, number] = [4, 6];

/** Counting, reading, joins and charts on top: 40 %, common practice. */
const ON_TOP = 1.4;

const paceOf = (key: YarnKey): readonly [number, number] => {
  if (key === 'chain' || key === 'slip') return QUICK;
  return PACE[key] ?? PACE[nearest(key)] ?? SLOW;
};

const nearest = (key: StemId): StemId =>
  key.startsWith('w0') ? 'w0' : key.startsWith('w1h') ? 'w1h' : key.startsWith('w1') ? 'w1' : 'w2';

/** From the stitches of all yarns, and the designer's own pace where front matter gives it. */
export function hoursFor(tallies: readonly YarnTally[], pace: unknown, terms: Terms): Hours {
  const own = findPace(pace, terms);
  let slow = 0;
  let quick = 0;
  for (const { worked } of tallies) {
    for (const [key, n] of worked) {
      const [from, to] = own ? ownRange(key, own) : paceOf(key);
      slow += n / from;
      quick += n / to;
    }
  }
  const hours = (minutes: number): number => (minutes * ON_TOP) / 60;
  return {
    from: hours(quick),
    to: hours(slow),
    isOwnPace: own !== null,
    because: own
      ? `Your pace: ${own.perMinute} ${wordFor(own.stem, terms)} a minute; 40 % on top for counting and joins.`
      : `Usual paces: 12 to 15 ${wordFor('w0', terms)}, 8 to 10 ${wordFor('w1', terms)} a minute; 40 % on top for counting and joins. Makers differ, from about 5 to 20 a minute all told: give yours (pace: 14 ${wordFor('w0', terms)} a minute).`,
  };
}

/** Her pace in one stitch, scaled to the others by the usual ones, a tenth either way. */
function ownRange(
  key: YarnKey,
  own: { stem: StemId; perMinute: number },
): readonly [number, number] {
  const middle = ([from, to]: readonly [number, number]): number => (from + to) / 2;
  const pace = (own.perMinute * middle(paceOf(key))) / middle(paceOf(own.stem));
  return [0.9 * pace, 1.1 * pace];
}
