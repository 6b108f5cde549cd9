/** How thick a yarn is, and how far it runs. */
import type { Had } from './gauge.ts';
import { classRow } from './weight-classes.ts';
import type { Yarn } from './yarn.ts';

export interface Diameter extends Had {
  readonly mm: number;
}

/**
 * Wraps to the inch are 0.84 times the root of the metres to 100 g: the middles of the bands of
 * Spin-Off's yarn sheet for classes 1 to 5 (17 wraps at 433 m, 14.5 at 312, 12.5 at 212, 10.5 at
 * 151, 8.5 at 101) give 0.82 to 0.86. The root follows from a round yarn of even density.
 */
const WRAPS_BY_ROOT = 0.84;
/** Bands of wraps are about 12 % wide to either side; cotton lies thinner than wool. */
const DIAMETER_SPREAD = 0.15;

/** Thickness of the yarn lying slack, wrap touching wrap; `null` where nothing tells. */
export function yarnDiameterMm(yarn: Yarn): Diameter | null {
  if (yarn.wrapsPerInch) {
    return {
      mm: 25.4 / yarn.wrapsPerInch,
      how: 'swatch',
      because: `${yarn.wrapsPerInch} wraps to the inch, as the pattern says.`,
      spread: 0.05,
    };
  }
  const run = runningLength(yarn);
  if (!run) return null;
  return {
    mm: 25.4 / (WRAPS_BY_ROOT * Math.sqrt(run.metresPer100g)),
    how: 'estimate',
    because: `${run.because} Thickness by wraps to the inch of yarn sheets.`,
    spread: run.how === 'swatch' ? DIAMETER_SPREAD : 0.25,
  };
}

export interface RunningLength extends Had {
  readonly metresPer100g: number;
}

/** Metres to 100 g, from the ball, else the middle of the weight class. */
export function runningLength({ ball, weightClass }: Yarn): RunningLength | null {
  if (ball) {
    return {
      metresPer100g: (100 * ball.metres) / ball.grams,
      how: 'swatch',
      because: `${ball.metres} m to ${ball.grams} g, as the ball says.`,
      spread: 0.05,
    };
  }
  if (weightClass === null) return null;
  const { name, metresPer100g } = classRow(weightClass);
  const [from, to] = metresPer100g;
  return {
    metresPer100g: Math.sqrt(from * to),
    how: 'estimate',
    because: `No ball is given: ${from} to ${to} m to 100 g are usual for weight ${weightClass}, ${name}.`,
    spread: Math.sqrt(to / from) - 1,
  };
}

/** Linear density in tex, grams to the kilometre (ISO 1144), from metres to 100 g. */
export const texOf = (metresPer100g: number): number => 100_000 / metresPer100g;
