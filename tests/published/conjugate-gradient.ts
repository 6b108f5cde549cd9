/**
 * The minimiser of fmin 0.0.4. Its package names itself a module but ships a bundle that fills
 * `exports`, which Node cannot import; so the bundle is run by hand.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { runInThisContext } from 'node:vm';

interface Minimum {
  readonly x: number[];
  readonly fx: number;
}

/** `f` writes its gradient into its second argument and returns its value. */
type ConjugateGradient = (
  f: (x: number[], gradient: number[]) => number,
  initial: readonly number[],
  params: { readonly maxIterations: number },
) => Minimum;

const path = createRequire(import.meta.url).resolve('fmin');
const bundle: { conjugateGradient?: ConjugateGradient } = {};
runInThisContext(`(function (exports, module) {${readFileSync(path, 'utf8')}\n})`)(bundle, {});
if (!bundle.conjugateGradient) throw new Error('fmin has no conjugateGradient');

export const conjugateGradient: ConjugateGradient = bundle.conjugateGradient;
