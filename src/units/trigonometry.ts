/**
 * Roots and angles for shapes and drawings. The language leaves the last digits of sine and its kin to
 * the machine that runs it, so these are worked out here with plus, minus and times alone, whose
 * results IEEE 754 fixes. The square root is fixed by that standard too.
 */

export const PI: number = Math.PI;
const HALF_PI = PI / 2;

export const sqrt = (x: number): number => Math.sqrt(x);

/** Terms of the Taylor series up to x^21: beyond the last bit of a double within a quarter turn. */
const SINE_TERMS = 10;

/** Sine of an angle in radians; good to 1e-14 for a few thousand turns. */
export function sin(angle: number): number {
  const turns = Math.round(angle / PI);
  const x = angle - turns * PI;
  const xx = x * x;
  let term = x;
  let sum = x;
  for (let n = 1; n <= SINE_TERMS; n++) {
    term *= -xx / (2 * n * (2 * n + 1));
    sum += term;
  }
  return turns % 2 === 0 ? sum : -sum;
}

export const cos = (angle: number): number => sin(angle + HALF_PI);

export const tan = (angle: number): number => sin(angle) / cos(angle);
