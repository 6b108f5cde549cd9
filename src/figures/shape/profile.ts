/**
 * Rounds as a solid of revolution: each round's girth gives its radius, and what is left of its height
 * over the change of radius carries it up. So bases come out flat, tubes straight and balls round.
 */

import { PI, sqrt } from '../../units/index.ts';
import type { RoundGirth } from './flatness.ts';

export interface ProfileRound {
  readonly radiusMm: number;
  readonly upMm: number;
  /** Slope of the fabric here: share outwards and share up of a unit step along it. */
  readonly out: number;
  readonly up: number;
  /** Height of the waves that take up a girth too long for its radius, mm; 0 for none. */
  readonly waveMm: number;
  /** How many of them go round. */
  readonly waves: number;
}

/** Waves of a ruffle round the edge at least. Any number does; the springs find their own. */
const WAVES = 6;
/** Waves stand no higher than this share of the rounds that ruffle: what they stand on lies flat (ours). */
const STEEP = 0.8;

export function profileOf(
  girths: readonly RoundGirth[],
  straightMm: number,
  isFilled: boolean,
): readonly ProfileRound[] {
  const slopes = girths.map((girth) => slopeOf(girth));
  const ups = isFilled ? smoothed(slopes, girths) : slopes.map(({ up }) => up);
  let upMm = 0;
  let ruffledMm = 0;
  return girths.map((girth, i) => {
    ruffledMm = girth.lies === 'ruffles' ? ruffledMm + girth.heightMm : 0;
    upMm += ups[i]! * girth.heightMm;
    const own = radiusOf(girth.girthMm, straightMm);
    const flat = girth.lies === 'flat' || girth.lies === 'ruffles';
    const radiusMm = flat ? radiusOf(girth.flatGirthMm, straightMm) : own;
    const wave = girth.lies === 'ruffles' ? waveOf(own, radiusMm, STEEP * ruffledMm) : NO_WAVE;
    return { radiusMm, upMm, out: slopes[i]!.out, up: ups[i]!, ...wave };
  });
}

const radiusOf = (girthMm: number, straightMm: number): number =>
  Math.max(0, (girthMm - 2 * straightMm) / (2 * PI));

function slopeOf({ growth, lies }: RoundGirth): { readonly out: number; readonly up: number } {
  if (lies === 'flat' || lies === 'ruffles') return { out: 1, up: 0 };
  if (lies === 'closes') return { out: -1, up: 0 };
  const out = Math.max(-1, Math.min(1, growth));
  return { out, up: sqrt(1 - out * out) };
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

const NO_WAVE = { waveMm: 0, waves: WAVES };

/**
 * A sine of m waves and height A round radius r is longer than the circle by (A m / r)^2 / 4 of it. Twice
 * as many waves are half as high, and go on from those beneath.
 */
function waveOf(
  wantedRadius: number,
  radius: number,
  mostMm: number,
): Pick<ProfileRound, 'waveMm' | 'waves'> {
  if (radius <= 0 || wantedRadius <= radius * 1.001) return NO_WAVE;
  const product = 2 * radius * sqrt(wantedRadius / radius - 1);
  let waves = WAVES;
  while (product / waves > mostMm && waves < MOST_WAVES) waves *= 2;
  return { waveMm: product / waves, waves };
}

const MOST_WAVES = 96;
