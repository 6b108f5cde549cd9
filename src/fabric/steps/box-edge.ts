/**
 * Boxes added and dropped at the ends of a row (filet rules, 7 and 8).
 *
 *     start, more:   a chain for their base, and the first post on its end
 *     start, fewer:  slip stitches, the first over the second place, up to the new first post
 *     end, more:     open: a gap, and a long stitch with its foot where the last post has its own;
 *                    filled: stitches that make their own base;
 *                    lacet, bar: over a separate chain joined there
 *     end, fewer:    the rest is left unworked
 */
import { chainsOfBar, LACET_CHAINS, longStitch, pitchOf } from '../../filet/index.ts';
import type { StemId } from '../../notation/index.ts';
import { foundationEdge } from '../edge.ts';
import { type Hands, make, type Target } from '../hands.ts';
import { internKind, kindOf } from '../kinds.ts';
import { makeChains } from '../start-chain.ts';
import { takeStitch } from '../take.ts';
import { isLacetSpace } from './box-places.ts';
import { type Box, type BoxWork, startPost, stitchInto } from './box-work.ts';

/** Makes the base chain of `boxes` more and the first post; the row then goes on along the chain. */
export function addAtStart(hands: Hands, boxes: number, first: Box, by: BoxWork): void {
  alongBase(hands, boxes * pitchOf(by.mesh.gap) - 1, by);
  startPost(hands, first, by);
}

/** `n` chains that stitches of this same row are worked into, the one made last first. */
export function alongBase(hands: Hands, n: number, by: BoxWork): void {
  const from = hands.nodes.n;
  const kind = kindOf(hands.bench.kinds, 'base');
  for (let i = 0; i < n; i++) make(hands, kind, by.origin, null);
  const { edge, pos, limit } = hands;
  hands.aside = { edge, pos, limit, back: hands.aside };
  hands.edge = foundationEdge(from, from + n, { ring: false, reversed: true, open: false });
  hands.pos = 0;
  hands.limit = n;
  // The first post stands on the lowest of its own chains, behind the last of the base.
  hands.last = n > 0 ? { node: from + n - 1, space: false, entry: -1 } : null;
}

/** Slip stitches over so many boxes; the next chain stands on the post that they end on. */
export function slipOver(hands: Hands, boxes: number, { mesh, origin }: BoxWork): void {
  takeStitch(hands, 'passed');
  const kind = kindOf(hands.bench.kinds, 'slip', 'slip');
  for (let box = 0; box < boxes; box++) {
    const lacet = hands.inner === 0 && isLacetSpace(hands, hands.pos);
    const over = (lacet ? LACET_CHAINS : mesh.gap) + 1;
    for (let i = 0; i < over; i++) {
      takeStitch(hands, 'chains');
      make(hands, kind, origin, null);
    }
  }
}

/** One box more at the row's end; an open one behind an open one has its foot in the long stitch. */
export function addAtEnd(hands: Hands, box: Box, by: BoxWork): void {
  const { mesh, origin } = by;
  if (box === 'lacet' || box === 'bar') return pairAtEnd(hands, box, by);
  if (box === 'filled') {
    const kind = foundationStitch(hands, mesh.post);
    for (let i = 0; i < pitchOf(mesh.gap); i++)
      hands.last = target(make(hands, kind, origin, hands.last));
  } else {
    const long = longStitch(mesh);
    const before = hands.nodes.n - 1;
    const foot = stemOfNode(hands, before) === long ? target(before) : hands.last;
    makeChains(hands, mesh.gap, origin);
    stitchInto(hands, long, origin, foot);
  }
  hands.boxes++;
  if (box === 'filled') hands.filled++;
}

/** Two boxes wide: over a chain of its own, joined where the last post has its foot. */
function pairAtEnd(hands: Hands, box: 'lacet' | 'bar', { mesh, origin }: BoxWork): void {
  const base = hands.nodes.n;
  const kind = kindOf(hands.bench.kinds, 'base');
  for (let i = 0; i < 2 * pitchOf(mesh.gap); i++) make(hands, kind, origin, null);
  const into = (place: number, stem: StemId): void =>
    void stitchInto(hands, stem, origin, target(base + place));
  if (box === 'lacet') {
    makeChains(hands, LACET_CHAINS, origin);
    into(mesh.gap, 'w0');
    makeChains(hands, LACET_CHAINS, origin);
  } else makeChains(hands, chainsOfBar(mesh.gap), origin);
  into(2 * mesh.gap + 1, mesh.post);
  hands.boxes += 2;
}

const target = (node: number): Target => ({ node, space: false, entry: -1 });

const stemOfNode = (hands: Hands, node: number): StemId | null =>
  hands.bench.kinds.kinds[hands.nodes.kind[node] ?? 0]?.stem ?? null;

const foundationStitch = (hands: Hands, stem: StemId): number =>
  internKind(hands.bench.kinds, {
    class: 'stitch',
    stem,
    shape: 'one',
    legs: null,
    post: null,
    loop: null,
    foundation: true,
    special: null,
  });
