/**
 * Rounds as a solid of revolution: each round's girth gives its radius, and what is left of its height
 * over the change of radius carries it up. So bases come out flat, tubes straight and balls round.
 */
import type { RoundGirth } from './flatness.ts';
import { PI, sqrt } from './numeric.ts';

export interface ProfileRound {
  readonly radiusMm: number;
  readonly upMm: number;
  /** Slope of the fabric here: share outwards and share up of a unit step along it. */
  readonly out: number;
  readonly up: number;
  /** Height of the waves that take up a girth too long for its radius, mm; 0 for none. */
  readonly waveMm: number;
}

/**
 * A growth within 12 % of flat is laid flat: gauge and blocking hide that much (judgement; published
 * circles run from 6 to 8 sc a round, which is far wider).
 */
export const HIDDEN = 0.12;

/** Waves of a ruffle round the edge. Any number does; the springs find their own. */
export const WAVES = 6;

export function profileOf(
  girths: readonly RoundGirth[],
  straightMm: number,
  isStuffed: boolean,
): readonly ProfileRound[] {
  const slopes = girths.map((girth) => slopeOf(girth));
  const ups = isStuffed ? smoothed(slopes, girths) : slopes.map(({ up }) => up);
  const rounds: ProfileRound[] = [];
  let upMm = 0;
  let flatRadius = 0;
  for (const [i, girth] of girths.entries()) {
    const radius = Math.max(0, (girth.girthMm - 2 * straightMm) / (2 * PI));
    const { out } = slopes[i]!;
    const up = ups[i]!;
    upMm += up * girth.heightMm;
    const ruffles = girth.growth > 1 + hiddenIn(girth);
    flatRadius = ruffles || flatRadius > 0 ? (rounds.at(-1)?.radiusMm ?? 0) + out * girth.heightMm : 0;
    const radiusMm = flatRadius > 0 ? Math.max(0, Math.min(radius, flatRadius)) : radius;
    rounds.push({ radiusMm, upMm, out, up, waveMm: waveMm(radius, radiusMm) });
  }
  return rounds;
}

/** Lace and corners give more than plain fabric. */
const hiddenIn = (girth: RoundGirth): number =>
  girth.hasSpaces || girth.corners > 0 ? 0.5 : HIDDEN;

function slopeOf(girth: RoundGirth): { readonly out: number; readonly up: number } {
  const { growth } = girth;
  if (growth >= 1 - HIDDEN) return { out: 1, up: 0 };
  if (growth <= HIDDEN - 1) return { out: -1, up: 0 };
  return { out: growth, up: sqrt(1 - growth * growth) };
}

/**
 * Filling rounds a shape out: the turns of a plain ball (flat, straight up, flat again) are spread over a
 * third of it, as the fabric does by stretching a little.
 */
function smoothed(
  slopes: readonly { readonly up: number }[],
  girths: readonly RoundGirth[],
): readonly number[] {
  const reach = Math.max(1, Math.round(slopes.length / 6));
  return slopes.map((_, i) => {
    let sum = 0;
    let weight = 0;
    for (let k = Math.max(0, i - reach); k <= Math.min(slopes.length - 1, i + reach); k++) {
      sum += slopes[k]!.up * girths[k]!.heightMm;
      weight += girths[k]!.heightMm;
    }
    return weight > 0 ? sum / weight : 0;
  });
}

/** A sine of m waves and height A round radius r is longer than the circle by (A m / r)^2 / 4 of it. */
function waveMm(wantedRadius: number, radius: number): number {
  if (radius <= 0 || wantedRadius <= radius * 1.001) return 0;
  return (2 * radius * sqrt(wantedRadius / radius - 1)) / WAVES;
}
