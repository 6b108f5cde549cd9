/**
 * The arithmetic of mesh: how many stitches boxes take, how many chains a first row stands on, and
 * which chains begin a row. A post belongs to two boxes; flat, one post more closes the row.
 */
import { heightOf, STEMS, type StemId } from '../notation/index.ts';

export interface Mesh {
  readonly post: StemId;
  /** Chains of an open box, and stitches that fill a filled one; 0 or more. */
  readonly gap: number;
}

/** Classic mesh of double crochet (US terms) with 2 chains, where nothing names another. */
export const CLASSIC_MESH: Mesh = { post: 'w1', gap: 2 };

/** In rows, with a last post of its own; round, where the first post is also the last. */
export type Closing = 'flat' | 'round';

/** Stitches of one box with one of its posts. */
export const pitchOf = (gap: number): number => gap + 1;

/** n boxes take n(g + 1) stitches in the round and one more flat (filet rules, counts). */
export const stitchesOf = (boxes: number, gap: number, closing: Closing): number =>
  boxes * pitchOf(gap) + (closing === 'flat' ? 1 : 0);

/** Whole boxes that so many stitches carry, and the stitches left over (negative: wanting). */
export function boxesOver(
  stitches: number,
  gap: number,
  closing: Closing,
): { readonly boxes: number; readonly left: number } {
  const own = stitches - (closing === 'flat' ? 1 : 0);
  const boxes = Math.max(0, Math.floor(own / pitchOf(gap)));
  return { boxes, left: own - boxes * pitchOf(gap) };
}

/** Height of the post in chains, as turning chains have it (3 for dc, US terms). */
export const chainsOfPost = (mesh: Mesh): number => Math.max(1, Math.floor(heightOf(mesh.post)));

/** Chains of each half of a lacet, whatever the gap (filet rules, lacets and bars). */
export const LACET_CHAINS = 3;

/** Chains of the bar that closes a lacet: over two gaps and the post between (filet rules, 6). */
export const chainsOfBar = (gap: number): number => 2 * gap + 1;

/** A box by what it holds. */
export type Filling = 'open' | 'filled' | 'lacet' | 'bar';

/** Chains that stand behind the first post of a row that begins so. */
export function chainsAfterPost(mesh: Mesh, first: Filling): number {
  if (first === 'filled') return 0;
  if (first === 'lacet') return LACET_CHAINS;
  return first === 'bar' ? chainsOfBar(mesh.gap) : mesh.gap;
}

/** Chains that begin a row: the post alone, or with what follows it in one go. */
export const startChains = (mesh: Mesh, first: Filling): number =>
  chainsOfPost(mesh) + chainsAfterPost(mesh, first);

/**
 * The long stitch of an open box added at a row's end reaches a pitch aside and a post up:
 * sqrt(p^2 + h^2) chains, rounded up. With dc posts and 2 chains that is the dtr (US terms).
 */
export function longStitch(mesh: Mesh): StemId {
  const reach = Math.sqrt(pitchOf(mesh.gap) ** 2 + chainsOfPost(mesh) ** 2);
  const tall = STEMS.filter(({ id }) => /^w\d$/.test(id) && heightOf(id) >= reach);
  return tall[0]?.id ?? 'w6';
}

/**
 * Two ways in print of counting the base of the first post. own: it is a chain of its own, below
 * the turning chain (booklets that give multiples "plus 1"). shared: it is the lowest chain of the
 * turning chain. They differ by one chain.
 */
export type FoundationWay = 'own' | 'shared';

export interface Foundation {
  /** Chains to make. */
  readonly chains: number;
  /** The first stitch behind the turning chain goes into this chain, counted from the hook. */
  readonly firstIn: number;
}

/**
 * Foundation chain of a flat first row of `boxes`. With pitch p, post height h and gap g: way own
 * W p + 1 + h (+ g open), first stitch in chain h + 2 (h + 2g + 2 open); way shared one less each.
 */
export function foundationOf(
  mesh: Mesh,
  row: { readonly boxes: number; readonly first: 'open' | 'filled'; readonly way: FoundationWay },
): Foundation {
  const height = chainsOfPost(mesh);
  const own = row.way === 'own' ? 1 : 0;
  const open = row.first === 'open' ? mesh.gap : 0;
  return {
    chains: row.boxes * pitchOf(mesh.gap) + height + own + open,
    firstIn: height + 1 + own + 2 * open,
  };
}

/** Chains added at the end of a row so that the next begins with `boxes` more (filet rules, 7). */
export const chainsForMore = (mesh: Mesh, boxes: number, first: 'open' | 'filled'): number =>
  boxes * pitchOf(mesh.gap) - 1 + startChains(mesh, first);
