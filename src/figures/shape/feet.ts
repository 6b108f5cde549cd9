/**
 * Where the feet of stitches stand. A stitch worked into a space stands on one of its chains: several
 * spread along the space in the order worked, as they do in the hand. A stitch in a stitch stands on it.
 */
import { anchorsOfNode, type Draft, isChainNode } from './draft.ts';

export interface Feet {
  /** Kept cloth nodes stood on, by cloth node. */
  readonly on: readonly (readonly number[])[];
  /** The place that the words name; -1 for none. */
  readonly place: Int32Array;
}

export function feetOf(draft: Draft): Feet {
  const { cloth } = draft;
  const { n, flags } = cloth.nodes;
  const place = new Int32Array(n).fill(-1);
  const inSpace = new Map<string, number[]>();
  const on: number[][] = Array.from({ length: n }, () => []);
  for (const [index, { nodes }] of draft.runs.entries()) {
    for (const node of nodes) {
      const anchors = anchorsOfNode(cloth, node);
      const first = anchors[0] ?? -1;
      place[node] = first;
      if (first >= 0 && flags[node] && isChainNode(draft, first)) {
        const key = `${index} ${first}`;
        const others = inSpace.get(key);
        if (others) others.push(node);
        else inSpace.set(key, [node]);
      } else {
        if (!isChainNode(draft, node)) on[node] = standing(draft, anchors);
      }
    }
  }
  for (const nodes of inSpace.values()) spread(draft, nodes, place[nodes[0]!]!, on);
  return { on, place };
}

function standing(draft: Draft, anchors: Int32Array): number[] {
  const feet: number[] = [];
  for (const place of anchors) {
    const foot = place >= 0 ? draft.standsFor[place]! : -1;
    if (foot >= 0 && !feet.includes(foot)) feet.push(foot);
  }
  return feet;
}

/** Chains of the space whose lowest chain is `first`, from there on in the order made. */
function chainsOfSpace(draft: Draft, first: number): readonly number[] {
  const run = draft.runs[draft.run[first]!];
  if (!run) return [draft.standsFor[first]!].filter((node) => node >= 0);
  const chains: number[] = [];
  for (let i = first; draft.run[i] === draft.run[first] && isChainNode(draft, i); i++)
    chains.push(i);
  return chains;
}

/** More stitches than this on each chain of a space: the place is a whole edge, and not known here. */
const MOST_A_CHAIN = 8;

function spread(draft: Draft, nodes: readonly number[], first: number, on: number[][]): void {
  const chains = chainsOfSpace(draft, first);
  if (chains.length === 0 || nodes.length > MOST_A_CHAIN * chains.length) return;
  const backwards = meetsBackwards(draft, nodes, first);
  nodes.forEach((node, j) => {
    const k = Math.min(chains.length - 1, Math.floor(((j + 0.5) * chains.length) / nodes.length));
    on[node] = [chains[backwards ? chains.length - 1 - k : k]!];
  });
}

/**
 * A row that was turned meets a space from its other end. What its neighbours are worked into tells:
 * places made later before it, or places made earlier behind it.
 */
function meetsBackwards(draft: Draft, nodes: readonly number[], first: number): boolean {
  const above = draft.runs[draft.run[nodes[0]!]!]!;
  const below = draft.run[first]!;
  let votes = 0;
  const vote = (node: number | undefined, sign: number): void => {
    const place = node === undefined ? -1 : (anchorsOfNode(draft.cloth, node)[0] ?? -1);
    if (place < 0 || place === first || draft.run[place] !== below) return;
    // At a round's join the next place lies a round's length away: that neighbour says nothing.
    const isFar = Math.abs(place - first) * 2 > draft.runs[below]!.nodes.length;
    if (!isFar || !draft.runs[below]!.isRing) votes += place > first ? sign : -sign;
  };
  for (let n = 1; n <= NEIGHBOURS; n++) {
    vote(above.nodes[above.nodes.indexOf(nodes[0]!) - n], 1);
    vote(above.nodes[above.nodes.indexOf(nodes.at(-1)!) + n], -1);
  }
  return votes > 0;
}

const NEIGHBOURS = 4;
