/** What a piece takes of each yarn: metres, grams, whole balls, the margin on its own line. */
import { type Had, type How, type PutUp, runningLength, type Yarn } from '../gauge/index.ts';
import type { YarnPerStitch } from './calibrate.ts';
import { weaker } from './figure.ts';
import type { YarnTally } from './stitch-tally.ts';

/** A quantity with a spread: metres or grams. */
export interface Amount {
  readonly value: number;
  readonly spread: number;
}

export interface YarnNeed {
  readonly name: string;
  readonly stitches: Amount;
  /** Metres of `stitches` in the foundation and in slip stitches that close rounds. */
  readonly foundation: number;
  readonly joins: number;
  /** Metres that are no stitches: tails at every start and end, seams. */
  readonly tails: number;
  readonly seams: number;
  /** All of it, in metres, without the margin. */
  readonly metres: Amount;
  /** `null` where neither ball nor weight class is given. */
  readonly grams: Amount | null;
  readonly margin: { readonly share: number; readonly metres: number; readonly because: string };
  /** Whole balls with the margin: at the mean, and at the far end of the spread. */
  readonly balls: { readonly ball: PutUp; readonly likely: number; readonly atMost: number } | null;
  readonly how: How;
  readonly because: readonly string[];
  /** Sentences: what a substitute may change. */
  readonly cautions: readonly string[];
}

/** 15 cm at each start and each end: common practice. */
const TAIL_M = 0.15;
/** Joining a new ball takes about 10 cm: common practice. */
const BALL_JOIN_M = 0.1;
/** A rest of a last ball smaller than this is too little to count on: common practice. */
const LEAST_REST = 0.05;
/** Texture takes yarn unevenly: from a fifth of the stitches on (ours). */
const TEXTURED = 0.2;

/** Weighed pieces that differ by more than this do not make a margin smaller: ours. */
const AGREEING = 0.1;

/** Margins of published patterns: common practice, 15 to 20 % for texture. */
function marginFor(
  tally: YarnTally,
  { weighed, spread }: YarnPerStitch,
): { share: number; because: string } {
  if (tally.textured >= TEXTURED) return { share: 0.15, because: 'textured stitches' };
  if (weighed > 1 && spread <= AGREEING)
    return { share: 0.05, because: 'weighed on several pieces' };
  return { share: 0.1, because: 'usual' };
}

export interface NeedOptions {
  readonly perStitch: YarnPerStitch;
  readonly yarn: Yarn | null;
  readonly cautions: readonly string[];
  /** Metres sewn with this yarn. */
  readonly seams: number;
  /** Spread of the gauge that the model of the yarn's path rests on. */
  readonly gauge: Had;
}

export function yarnNeed(tally: YarnTally, options: NeedOptions): YarnNeed {
  const { perStitch, yarn, cautions, seams, gauge } = options;
  const inStitches = [...tally.amounts].reduce(
    (sum, [key, n]) => sum + n * perStitch.metresOf(key),
    0,
  );
  const tails = 2 * TAIL_M * tally.stretches;
  const spread =
    perStitch.weighed > 0 ? perStitch.spread : Math.hypot(perStitch.spread, gauge.spread);
  const total = inStitches + tails + seams;
  const metres = { value: total, spread: (inStitches * spread + seams * 0.3) / total };
  const { share, because } = marginFor(tally, perStitch);
  const run = yarn ? runningLength(yarn) : null;
  const margin = { share, because, metres: total * share };
  return {
    name: tally.name,
    stitches: { value: inStitches, spread },
    foundation: tally.foundation * perStitch.metresOf('chain'),
    joins: tally.joins * perStitch.metresOf('slip'),
    tails,
    seams,
    metres,
    grams: run && {
      value: (100 * total) / run.metresPer100g,
      spread: Math.hypot(metres.spread, run.how === 'swatch' ? 0 : run.spread),
    },
    margin,
    balls: yarn?.ball ? ballsFor(yarn.ball, metres, share) : null,
    how: perStitch.weighed > 0 ? 'swatch' : weaker('estimate', gauge.how),
    because: [
      ...tally.strands,
      perStitch.because,
      // The model rests on the stitch's size, so what that rests on is said too.
      ...(perStitch.weighed > 0 || gauge.how === 'swatch' ? [] : [gauge.because]),
      ...(run && run.how !== 'swatch' ? [run.because] : []),
    ],
    cautions,
  };
}

function ballsFor(ball: PutUp, metres: Amount, share: number): NonNullable<YarnNeed['balls']> {
  const far = metres.value * (1 + metres.spread);
  return {
    ball,
    likely: wholeBalls(metres.value * (1 + share), ball.metres),
    atMost: wholeBalls(far * (1 + share), ball.metres),
  };
}

/** Balls to buy for a length: whole ones, one more where less than a twentieth would be left. */
export function wholeBalls(metres: number, metresPerBall: number): number {
  let balls = 1;
  const needed = (n: number): number => metres + (n - 1) * BALL_JOIN_M;
  balls = Math.max(1, Math.ceil(metres / metresPerBall));
  while (balls * metresPerBall - needed(balls) < LEAST_REST * metresPerBall) balls++;
  return balls;
}
