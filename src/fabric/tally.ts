/** What a row made. */
import type { StemId } from '../notation/index.ts';
import { closerChains } from './edge.ts';
import type { Tally } from './fabric.ts';
import type { Hands } from './hands.ts';

export interface RowTally extends Tally {
  /** Counted stitches by stem, of whatever shape. */
  readonly byStem: ReadonlyMap<StemId, number>;
  readonly picots: number;
  /** Picots, or several side by side, with chains before and behind: they part a loop, and do not end it. */
  readonly midLoop: number;
  /** Chains that the row ends with: the gap before a join, or the start of boxes to be added. */
  readonly lastChains: number;
}

/** Counts the nodes from `from` on. */
export function tallyOf(hands: Hands, from: number): RowTally {
  const { nodes, bench } = hands;
  const byIndex = new Uint32Array(bench.kinds.kinds.length);
  const runs = new Map<number, number>();
  let run = 0;
  const endRun = (): void => {
    if (run > 0) runs.set(run, (runs.get(run) ?? 0) + 1);
    run = 0;
  };
  const chain = bench.kinds.byName.get('chain') ?? -1;
  let midLoop = 0;
  let onLoop = false;
  for (let id = from; id < nodes.n; id++) {
    const index = nodes.kind[id] ?? 0;
    byIndex[index] = (byIndex[index] ?? 0) + 1;
    if (index === chain) {
      if (onLoop) midLoop++;
      onLoop = false;
      run++;
      continue;
    }
    const kind = bench.kinds.kinds[index];
    onLoop = kind?.class === 'picot' && (onLoop || run > 0);
    if (kind?.class === 'closer') run += closerChains(kind.stem);
    if (run > 0) endRun();
  }
  const lastChains = run;
  endRun();
  return {
    ...sums(hands, byIndex),
    spaces: spacesOf(runs),
    boxes: hands.boxes,
    groups: hands.groups,
    lastChains,
    midLoop,
  };
}

const spacesOf = (runs: Map<number, number>): { chains: number; n: number }[] =>
  [...runs].map(([chains, n]) => ({ chains, n })).sort((a, b) => a.chains - b.chains);

type Counts = Omit<RowTally, 'spaces' | 'boxes' | 'groups' | 'lastChains' | 'midLoop'>;

function sums(hands: Hands, byIndex: Uint32Array): Counts {
  const byKind = new Map<string, number>();
  const byStem = new Map<StemId, number>();
  const classes = { stitches: 0, chains: 0, slips: 0, picots: 0 };
  byIndex.forEach((n, index) => {
    const kind = hands.bench.kinds.kinds[index];
    if (n === 0 || !kind) return;
    if (kind.counted) {
      classes.stitches += n;
      byKind.set(kind.name, n);
      if (kind.stem) byStem.set(kind.stem, (byStem.get(kind.stem) ?? 0) + n);
    } else if (kind.class === 'chain') classes.chains += n;
    else if (kind.class === 'slip') classes.slips += n;
    else if (kind.class === 'picot') classes.picots += n;
  });
  return { ...classes, byKind, byStem };
}
