/** Groups of a row at hand: stitches side by side in one place, as petals, shells and V-stitches are. */
import type { Step } from '../notation/index.ts';
import type { Hands } from './hands.ts';
import { firstAnchor, NOWHERE } from './nodes.ts';
import { passesOf } from './passes.ts';

interface Group {
  readonly foot: number;
  /** Counted stitches in it. */
  size: number;
  /** Runs of chains between them. */
  gaps: number;
}

/** In the order made; one that the round's start divides is one. `split`: chains part groups. */
function groupsOf({ nodes, bench, rowFrom, edge }: Hands, split: boolean): readonly Group[] {
  const groups: Group[] = [];
  let at: Group | null = null;
  let chained = false;
  for (let id = rowFrom; id < nodes.n; id++) {
    const kind = bench.kinds.kinds[nodes.kind[id] ?? 0];
    if (kind?.class === 'chain') chained = true;
    if (!kind?.counted) continue;
    const foot = firstAnchor(nodes, id);
    if (at && foot !== NOWHERE && at.foot === foot && !(split && chained)) {
      at.size++;
      if (chained) at.gaps++;
    } else {
      at = { foot, size: 1, gaps: 0 };
      groups.push(at);
    }
    chained = false;
  }
  const first = groups[0];
  if (at && first && at !== first && first.foot === at.foot && edge.ring && !(split && chained)) {
    first.size += at.size;
    first.gaps += at.gaps + (chained ? 1 : 0);
    groups.pop();
  }
  return groups;
}

const isMany = ({ size }: Group): boolean => size >= 3;
const isTwo = ({ size }: Group): boolean => size === 2;
const isV = ({ size, gaps }: Group): boolean => size === 2 && gaps === 1;
const isGapped = ({ size, gaps }: Group): boolean => size >= 2 && gaps >= 1;

/** Words for several stitches in one place, with what is meant. */
const MEANT: ReadonlyMap<string, readonly ((group: Group) => boolean)[]> = new Map([
  ['v-st', [isV]],
  ['petal', [isMany]],
  ['shell', [isMany, isGapped]],
  ['fan', [isMany]],
  ['scallop', [isMany]],
  ['leaf', [isMany]],
  ['corner', [isGapped, isMany]],
  // Blocks of a granny square are called so, though nothing is drawn together in them.
  ['cluster', [isMany]],
  ['block', [isMany]],
  ['set', [isMany]],
  ['pair', [isTwo]],
]);

/** What a repeat makes in one pass, whatever that is: "5 petals" of "*…; rep from * 4 more times". */
const OF_A_PASS: ReadonlySet<string> = new Set(
  'petal leaf scallop point arch arm spoke ray motif section segment wedge wave ripple branch spike tip finger bump tooth'.split(
    ' ',
  ),
);

/**
 * "8 petals", "12 V-sts", "4 corners" of groups that bear no such name where they are worked. What such
 * a word means is not known, so that it is confirmed where as many are there, and else not compared; but
 * a row of V-stitches, or of shells all alike, with nothing but single stitches between has no others. Empty: not compared.
 */
export function groupsNamed(
  hands: Hands,
  {
    word,
    stated,
    steps,
  }: { readonly word: string; readonly stated: number | null; readonly steps: readonly Step[] },
): readonly number[] {
  if (stated !== null && OF_A_PASS.has(word) && passesOf(hands, steps).includes(stated))
    return [stated];
  const meant = MEANT.get(word);
  if (!meant) return [];
  const made = groupsOf(hands, false);
  const parted = groupsOf(hands, true);
  if (word === 'v-st') {
    const several = made.filter(({ size }) => size > 1);
    if (several.length > 1 && several.every(isV)) return [several.length];
  }
  if (word === 'shell') {
    const alike = [made, parted].flatMap(shellsAlike);
    if (alike.length > 0) return alike;
  }
  const fits = meant.some(
    (is) => made.filter(is).length === stated || parted.filter(is).length === stated,
  );
  return fits && stated !== null ? [stated] : [];
}

/** How many groups of three and more there are, where all are alike and nothing but single stitches stands between. */
function shellsAlike(groups: readonly Group[]): number[] {
  const several = groups.filter(({ size }) => size > 1);
  const [first] = several;
  const isAlike = several.length > 1 && several.every(({ size }) => size === first?.size);
  return isAlike && first && isMany(first) ? [several.length] : [];
}

/** Stitches that stand alone in their place: those beside the groups. */
export const standingAlone = (hands: Hands): number =>
  groupsOf(hands, false).reduce((sum, { size }) => sum + (size === 1 ? 1 : 0), 0);

/** "[4 groups]" of a granny square: by threes or by twos, with the chains of a corner between two or not. */
export function groupsInPlaces(hands: Hands): readonly number[] {
  const counts = [true, false].flatMap((split) => {
    const groups = groupsOf(hands, split);
    return [3, 2].map((least) => groups.filter(({ size }) => size >= least).length);
  });
  return [...new Set(counts)].filter((n) => n > 0);
}
