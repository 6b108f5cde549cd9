/**
 * One box after the other. A post stands on a post and belongs to the box that it closes; in a
 * round the first post is also the last. A row's first post is a chain.
 */
import {
  chainsOfBar,
  chainsOfPost,
  LACET_CHAINS,
  type Mesh,
  startChains,
} from '../../filet/index.ts';
import type { BoxStep } from '../../notation/index.ts';
import { type Hands, make, type Target } from '../hands.ts';
import { internKind, kindOf } from '../kinds.ts';
import { makeChains } from '../start-chain.ts';
import { isSpace, takeSpaceAt, takeStitch } from '../take.ts';
import { isLacetSpace, skipGap, skipPlaces } from './box-places.ts';

export type Box = BoxStep['box'];

export interface BoxWork {
  readonly mesh: Mesh;
  readonly round: boolean;
  /** Index into the bench's origins. */
  readonly origin: number;
}

/** Columns of the grid, and boxes of the row, that one of the kind takes. */
export const boxesWide = (box: Box): number => (box === 'lacet' || box === 'bar' ? 2 : 1);

export function workBox(hands: Hands, box: Box, by: BoxWork): void {
  const begun = hands.boxes === 0 && classOf(hands, firstMade(hands)) === 'start';
  if (!begun && onlySlips(hands)) startPost(hands, box, by);
  else if (by.round && !begun) post(hands, by);
  // "Ch 4, …, work 3 open boxes": the words have made the first gap already.
  if (begun && classOf(hands, hands.nodes.n - 1) === 'chain') skipPlaces(hands, by.mesh.gap);
  else fill(hands, box, by);
  if (!by.round) post(hands, by);
  if (box === 'filled') hands.filled++;
  hands.boxes += boxesWide(box);
}

/** Nothing for a node not made yet: the columns keep what a trial left there. */
const classOf = (hands: Hands, id: number): string | undefined =>
  id < hands.nodes.n ? hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.class : undefined;

/** First node of the row that is neither a slip stitch nor the base of boxes added. */
function firstMade(hands: Hands): number {
  let id = hands.rowFrom;
  while (id < hands.nodes.n && ['slip', 'base'].includes(classOf(hands, id) ?? '')) id++;
  return id;
}

export const onlySlips = (hands: Hands): boolean => firstMade(hands) === hands.nodes.n;

/** The chain that stands for the first post: on the first place, or where slip stitches led. */
export function startPost(hands: Hands, box: Box, { mesh, origin }: BoxWork): void {
  const into = hands.last ?? takeStitch(hands, 'passed');
  const node = make(hands, kindOf(hands.bench.kinds, 'start', mesh.post), origin, into);
  hands.startChains.set(node, {
    n: startChains(mesh, box),
    height: chainsOfPost(mesh),
    isTold: false,
  });
}

export function stitchInto(
  hands: Hands,
  stem: Mesh['post'],
  origin: number,
  into: Target | null,
): number {
  const kind = internKind(hands.bench.kinds, {
    class: 'stitch',
    stem,
    shape: 'one',
    legs: null,
    post: null,
    loop: null,
    foundation: false,
    special: null,
  });
  return make(hands, kind, origin, into);
}

function post(hands: Hands, { mesh, origin }: BoxWork): void {
  const into = takeStitch(hands, hands.inner > 0 ? 'chains' : 'passed');
  stitchInto(hands, mesh.post, origin, into);
}

/** What stands between two posts. */
function fill(hands: Hands, box: Box, by: BoxWork): void {
  const { gap } = by.mesh;
  if (box === 'open') {
    makeChains(hands, gap, by.origin);
    skipGap(hands, gap);
  } else if (box === 'filled') fillSolid(hands, by);
  else if (box === 'bar') fillBar(hands, by);
  else fillLacet(hands, by);
}

/** In the space of an open box; one in each stitch or chain of anything else. */
function fillSolid(hands: Hands, { mesh, origin }: BoxWork): void {
  const { pos, edge } = hands;
  const whole =
    hands.inner === 0 &&
    isSpace(hands, pos) &&
    (edge.run[pos] === mesh.gap || isLacetSpace(hands, pos));
  const space = whole ? takeSpaceAt(hands, pos) : null;
  for (let i = 0; i < mesh.gap; i++) {
    stitchInto(hands, mesh.post, origin, space ?? takeStitch(hands, 'chains'));
  }
}

/** Over a bar into its space, over two boxes into the post between them. */
function fillLacet(hands: Hands, { mesh, origin }: BoxWork): void {
  makeChains(hands, LACET_CHAINS, origin);
  const bar = hands.inner === 0 && hands.edge.run[hands.pos] === chainsOfBar(mesh.gap);
  if (bar && isSpace(hands, hands.pos) && !isLacetSpace(hands, hands.pos)) {
    stitchInto(hands, 'w0', origin, takeSpaceAt(hands, hands.pos));
  } else {
    skipGap(hands, mesh.gap);
    stitchInto(hands, 'w0', origin, takeStitch(hands, 'chains'));
    skipGap(hands, mesh.gap);
  }
  makeChains(hands, LACET_CHAINS, origin);
}

function fillBar(hands: Hands, { mesh, origin }: BoxWork): void {
  makeChains(hands, chainsOfBar(mesh.gap), origin);
  skipGap(hands, mesh.gap);
  skipPlaces(hands, 1);
  skipGap(hands, mesh.gap);
}
