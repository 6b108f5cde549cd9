/**
 * Ways to live with a start of round that leans, each as words for the pattern, with what it leaves.
 * Which of them suits is for the designer to say: nothing is chosen here.
 */
import type { Lean, LeanRange } from './lean.ts';

export interface Remedy {
  readonly name: string;
  /** What is written into the pattern. */
  readonly words: string;
  /** What it does and what it costs. */
  readonly effect: string;
  /** How far off the place wanted it may still be, to either side, in stitches. */
  readonly leavesUpTo: number;
}

/** What stands in a place that the lean would move: a motif, handles, or nothing but the last round. */
export interface LeanPlace {
  readonly what: 'motif' | 'handles' | 'end';
  /** Label of its first round. */
  readonly at: string;
  /** Stitches of the round before it, which stay as they are. */
  readonly count: number;
  readonly rounds: number;
  readonly isSpiral: boolean;
  /** Stitches of a box where that round is a mesh: there only whole boxes can be moved; else 1. */
  readonly boxStitches: number;
}

/** Under a stitch nobody sees it. */
export const LEAST_LEAN = 1;

/** Empty where the start hardly leans. */
export function remediesFor(lean: Lean, place: LeanPlace): readonly Remedy[] {
  if (lean.isTurned || lean.stitches.to < LEAST_LEAN) return [];
  const everywhere = [turned, markerMoved(lean, place)];
  if (place.what === 'end') return everywhere;
  const moves = [
    startMoved(lean, place),
    ...(place.what === 'motif' ? [shifted(lean, place)] : []),
  ];
  return [...everywhere, ...moves];
}

const turned: Remedy = {
  name: 'Turn',
  words: 'Join with sl st in first st, turn. (at the end of every round)',
  effect:
    'The start stays in place. The fabric looks like that worked in rows, and charts are read both ways.',
  leavesUpTo: 0,
};

/** Rounds from one extra stitch to the next: those around one over the lean. */
function periodsOf({ from, to }: LeanRange): readonly number[] {
  const [short, long] = [Math.max(1, Math.floor(1 / to + 1e-9)), Math.ceil(1 / from - 1e-9)];
  return short === long ? [short] : [short, long];
}

/** The farthest that any lean in the range is from the nearest of these periods, a round. */
function missed({ from, to }: LeanRange, periods: readonly number[]): number {
  const off = (lean: number): number => Math.min(...periods.map((n) => Math.abs(lean - 1 / n)));
  return Math.max(off(from), off(to), off((from + to) / 2));
}

function markerMoved({ perRound }: Lean, { count, rounds, isSpiral }: LeanPlace): Remedy {
  const periods = periodsOf(perRound);
  const every = everySaid(periods);
  const words = isSpiral
    ? `${every} work 1 more st before you move the marker up; the count stays ${count}.`
    : `${every} sl st in next st after the join and begin there; the count stays ${count}.`;
  const which =
    periods.length > 1
      ? ` Every ${periods.map((n) => `${nth(n)} for ${said(1 / n)}`).join(', every ')} a round: try it on your swatch.`
      : '';
  return {
    name: isSpiral ? 'Move the marker on' : 'Move the join on',
    words,
    effect: `The start stays near its place all the way up.${which}`,
    leavesUpTo: Math.max(0.5, rounds * missed(perRound, periods)),
  };
}

/** "In every round", "In every or every 2nd round", "In every 2nd or 3rd round". */
function everySaid([first = 1, second]: readonly number[]): string {
  if (first === 1) return `In every${second ? ` or every ${nth(second)}` : ''} round`;
  return `In every ${nth(first)}${second ? ` or ${nth(second)}` : ''} round`;
}

const nth = (n: number): string => `${n}${['th', 'st', 'nd', 'rd'][n] ?? 'th'}`;

const said = (share: number): string =>
  share === 1
    ? 'a stitch'
    : share === 0.5
      ? 'half a stitch'
      : share > 0.3
        ? 'a third'
        : (SHARES[Math.round(1 / share)] ?? `1 stitch in ${Math.round(1 / share)} rounds,`);

const SHARES: Readonly<Record<number, string>> = { 4: 'a quarter', 5: 'a fifth' };

interface Move {
  readonly stitches: number;
  /** "4 sts", "2 boxes (4 sts)". */
  readonly words: string;
  readonly leavesUpTo: number;
}

/** The middle of the lean, in whole boxes where these are what can be moved. */
function moveOf({ stitches: { from, to } }: Lean, { boxStitches }: LeanPlace): Move {
  const middle = (from + to) / 2;
  const stitches = Math.max(1, Math.round(middle / boxStitches)) * boxStitches;
  const sts = `${stitches} ${stitches === 1 ? 'st' : 'sts'}`;
  const boxes = stitches / boxStitches;
  return {
    stitches,
    words: boxStitches === 1 ? sts : `${boxes} ${boxes === 1 ? 'box' : 'boxes'} (${sts})`,
    leavesUpTo: Math.max(to - stitches, stitches - from),
  };
}

function startMoved(lean: Lean, place: LeanPlace): Remedy {
  const { stitches, words, leavesUpTo } = moveOf(lean, place);
  const over =
    place.boxStitches === 1
      ? `sl st in next ${stitches === 1 ? 'st' : `${stitches} sts`}`
      : `sl st in each st and ch of the next ${words}`;
  return {
    name: 'Move the start once',
    words: `Before ${place.at}: ${over}; rounds begin here from now on.`,
    effect: `The start is where it should be at ${place.at}, and goes on leaning above it.`,
    leavesUpTo,
  };
}

function shifted(lean: Lean, place: LeanPlace): Remedy {
  const { words, leavesUpTo } = moveOf(lean, place);
  return {
    name: 'Shift the chart',
    words: `Work ${words} more before the chart and as many fewer after it. The chart stands further on to allow for the lean of the start of round.`,
    effect:
      'The motif is in the middle where it begins, and the start stays. Test it on a swatch: it goes on leaning inside the motif.',
    leavesUpTo,
  };
}
