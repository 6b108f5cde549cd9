/** The designer's own pace: `pace: 14 sc a minute`, or stitches an hour. */
import { fabricNamed } from '../gauge/index.ts';
import type { StemId, Terms } from '../notation/index.ts';

export interface Pace {
  readonly stem: StemId;
  readonly perMinute: number;
}

/** `null` where nothing is given that can be read: a number, with or without a stitch. */
export function findPace(value: unknown, terms: Terms): Pace | null {
  if (typeof value === 'number') return paceOf(value, 'w0');
  if (typeof value === 'object' && value !== null) {
    const [first] = Object.entries(value);
    return first ? findPace(`${String(first[1])} ${first[0]}`, terms) : null;
  }
  if (typeof value !== 'string') return null;
  const words = value.slice(0, 200);
  const n = Number(/\d+(?:\.\d+)?/.exec(words)?.[0] ?? Number.NaN);
  const perMinute = /\b(?:hour|hr|h)\b/i.test(words) ? n / 60 : n;
  return paceOf(perMinute, fabricNamed(words, terms).stem ?? 'w0');
}

/** Nobody works more than 170 a minute (a record's), and under a stitch in five minutes is a slip. */
const paceOf = (perMinute: number, stem: StemId): Pace | null =>
  perMinute >= 0.2 && perMinute <= 170 ? { stem, perMinute } : null;
