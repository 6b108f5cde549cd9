/**
 * Metres of yarn for each kind of stitch: the model's, or the model drawn to what was weighed. One
 * weighed swatch moves all kinds alike; several, of different stitches, move each by itself. The sum
 * is least squares without negative unknowns, in which the model counts as one observation a kind.
 */
import type { Had } from '../gauge/index.ts';
import { type Terms, wordFor } from '../notation/index.ts';
import { type Matrix, nonNegativeLeastSquares } from './nnls.ts';
import { PATH_FACTOR, PATH_SPREAD, ratioOf, type YarnKey } from './yarn-path.ts';

/** Stitches and the metres that they took. */
export interface Observation {
  readonly amounts: ReadonlyMap<YarnKey, number>;
  readonly metres: number;
}

export interface YarnPerStitch extends Had {
  /** Metres in one plain stitch of this key. */
  readonly metresOf: (key: YarnKey) => number;
  /** Pieces that were weighed. */
  readonly weighed: number;
}

/** Scales weigh to a tenth of a gram, and swatches are small: 2 % (ours). */
const WEIGHING = 0.02;
/** How far a kind's ratio to sc may lie from the table's: 15 % (judgement; sources differ by 10). */
const RATIO = 0.15;
/** One stitch differs from the next by 15 %: ten unravelled say less than four hundred weighed (judgement). */
const STITCH = 0.15;
/** A hand draws its loops by 4 % longer or shorter from piece to piece (judgement). */
const HAND = 0.04;

export function yarnPerStitch(
  scMetres: number,
  observations: readonly Observation[],
  terms: Terms = 'US',
): YarnPerStitch {
  const modelled = (key: YarnKey): number => scMetres * ratioOf(key);
  if (observations.length === 0) {
    return {
      metresOf: modelled,
      weighed: 0,
      how: 'estimate',
      because: `Nothing is weighed: by our model of its path the yarn of one ${wordFor('w0', terms)} is ${PATH_FACTOR} times as long as the stitch is wide and high together, and that of other stitches in proportion.`,
      spread: PATH_SPREAD,
    };
  }
  const scale = scaleOf(observations, modelled);
  const factors = factorsOf(observations, modelled, scale);
  const metresOf = (key: YarnKey): number => modelled(key) * (factors.get(key) ?? scale);
  const off = restOf(observations, metresOf);
  return {
    metresOf,
    weighed: observations.length,
    how: 'swatch',
    because: weighedSaid(observations.length, off),
    spread: Math.hypot(HAND, WEIGHING / Math.sqrt(observations.length), off),
  };
}

/** Pieces that agree less well than this are told to: 5 % (ours). */
const AGREE = 0.05;

function weighedSaid(n: number, off: number): string {
  if (n === 1) return 'Weighed: 1 piece.';
  const apart = off > AGREE ? `, which agree within about ${Math.round(100 * off)} % only` : '';
  return `Weighed: ${n} pieces${apart}.`;
}

/** How far a weighing may be off, as a fraction. */
function doubtOf({ amounts }: Observation): number {
  const stitches = [...amounts.values()].reduce((sum, n) => sum + n, 0);
  return Math.hypot(WEIGHING, STITCH / Math.sqrt(Math.max(1, stitches)));
}

const predicted = ({ amounts }: Observation, metresOf: (key: YarnKey) => number): number =>
  [...amounts].reduce((sum, [key, n]) => sum + n * metresOf(key), 0);

/** The one factor on the model that fits all observations best. */
function scaleOf(observations: readonly Observation[], modelled: (key: YarnKey) => number): number {
  let top = 0;
  let bottom = 0;
  for (const each of observations) {
    // In shares of what was weighed, so that a large piece does not drown the swatches.
    const share = predicted(each, modelled) / each.metres;
    const weight = doubtOf(each) ** -2;
    top += weight * share;
    bottom += weight * share * share;
  }
  return bottom === 0 ? 1 : top / bottom;
}

function factorsOf(
  observations: readonly Observation[],
  modelled: (key: YarnKey) => number,
  scale: number,
): ReadonlyMap<YarnKey, number> {
  const keys = [...new Set(observations.flatMap(({ amounts }) => [...amounts.keys()]))];
  const doubts = observations.map(doubtOf);
  const seen = observations.map(({ amounts, metres }, at) =>
    keys.map((key) => ((amounts.get(key) ?? 0) * modelled(key)) / (metres * doubts[at]!)),
  );
  const model = keys.map((_, at) => keys.map((__, j) => (j === at ? 1 / (scale * RATIO) : 0)));
  const a: Matrix = [...seen, ...model];
  const b = [...doubts.map((doubt) => 1 / doubt), ...keys.map(() => 1 / RATIO)];
  const solved = nonNegativeLeastSquares(a, b);
  return new Map(keys.map((key, at) => [key, solved[at]!]));
}

/** Root mean square of what the fit leaves unexplained, as a fraction. */
function restOf(observations: readonly Observation[], metresOf: (key: YarnKey) => number): number {
  const squares = observations.map((each) => (predicted(each, metresOf) / each.metres - 1) ** 2);
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}
