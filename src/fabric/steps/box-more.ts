/**
 * Boxes added at a row's start, told in stitches (filet rules, 7): "ch 10, turn, dc in 8th ch from
 * hook, ch 2, sk 2 ch, dc in first dc" for two open boxes, "ch 7, turn, dc in first dc" for one,
 * "ch 5, turn, dc in 4th and 5th ch from hook" for a filled one. The chain may stand at the end of
 * the row before.
 */
import { chainsForMore, chainsOfPost, type Mesh } from '../../filet/index.ts';
import { type ChainStep, type Place, stemOf } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { chainAt, edgeOfPlaces, SPACE } from '../edge.ts';
import { type Hands, numberFor, originFor, spanAt } from '../hands.ts';
import { ask } from '../readings.ts';
import { makeChains } from '../start-chain.ts';
import { alongBase } from './box-edge.ts';
import { meshFor } from './box-mesh.ts';
import { skipPlaces } from './box-places.ts';
import { type BoxWork, startPost } from './box-work.ts';

/** Begins the row with boxes more, if that is what its chain and first stitch tell. */
export function beginsWithMore(hands: Hands, step: ChainStep, row: RowContext): boolean {
  const place = row.shape.firstWork?.place ?? null;
  if (!place || row.round || hands.edge.kind !== 'row' || hands.edge.ring) return false;
  if (hands.edge.spaces === 0 || step.countsAs) return false;
  const n = numberFor(hands, step.n) ?? 0;
  const mesh = postOf(hands, row);
  const by: BoxWork = { mesh, round: false, origin: originFor(hands, step) };
  if (place.fromHook) return fromHook(hands, n, place, by);
  return inFirstPost(hands, { step, n, place, by });
}

function postOf(hands: Hands, row: RowContext): Mesh {
  const word = row.shape.firstWork?.stitch.stem ?? null;
  const stem = word ? stemOf(word, hands.bench.terms) : null;
  const mesh = meshFor(hands, row, null);
  return stem && stem !== 'slip' ? { ...mesh, post: stem } : mesh;
}

function fromHook(hands: Hands, n: number, place: Place, by: BoxWork): boolean {
  const gap = gapPassed((place.nth ?? 1) - 1, by.mesh);
  if (gap === null) return false;
  const base = n - chainsOfPost(by.mesh) - gap;
  if (base < 1) return false;
  alongBase(hands, base, by);
  beginOn(hands, gap, by);
  return true;
}

/** Chains of the first gap where so many are passed: post and gap, and the gap beneath; else none. */
function gapPassed(passed: number, mesh: Mesh): number | null {
  if (mesh.post === 'w0') return null;
  const height = chainsOfPost(mesh);
  if (passed === height + 2 * mesh.gap) return mesh.gap;
  return passed === height ? 0 : null;
}

function beginOn(hands: Hands, gap: number, by: BoxWork): void {
  startPost(hands, gap > 0 ? 'open' : 'filled', by);
  makeChains(hands, gap, by.origin);
  skipPlaces(hands, gap);
}

const ADDS = 'adds a box';

/** One open box: no stitch stands in its chain, and the next goes into the first post beneath. */
function inFirstPost(
  hands: Hands,
  row: { step: ChainStep; n: number; place: Place; by: BoxWork },
): boolean {
  const { step, n, place, by } = row;
  if (n !== chainsForMore(by.mesh, 1, 'open') || by.mesh.gap === 0) return false;
  if (place.pick !== 'first' && place.pick !== 'same') return false;
  const reading = ask(hands.readings, {
    doubt: `start-chain ${n} over mesh`,
    custom: ADDS,
    alternatives: ['counts'],
    local: false,
    ...spanAt(hands, step),
  });
  if (reading !== ADDS) return false;
  alongBase(hands, by.mesh.gap, by);
  startPost(hands, 'open', by);
  makeChains(hands, by.mesh.gap, by.origin);
  backToRow(hands);
  return true;
}

function backToRow(hands: Hands): void {
  if (!hands.aside) return;
  const { edge, pos, limit, back } = hands.aside;
  hands.edge = edge;
  hands.pos = pos;
  hands.limit = limit;
  hands.aside = back;
  // The hook stands at the row's first post: "first" and "same" mean that one.
  hands.last = null;
  hands.first = null;
}

/** The long chain at the end of the row before, along which this row begins. */
export function alongLastChain(hands: Hands, row: RowContext): void {
  const { edge, pos } = hands;
  const place = row.shape.firstWork?.place;
  const run = edge.run[0] ?? 0;
  const may = edge.kind === 'row' && !edge.ring && pos === 0 && edge.type[0] === SPACE;
  if (!may || !place?.fromHook || row.shape.chainsAtStart || !edge.reversed) return;
  const mesh = postOf(hands, row);
  const gap = gapPassed((place.nth ?? 1) - 1, mesh);
  const own = chainsOfPost(mesh) + (gap ?? 0);
  if (gap === null || run <= own) return;
  const base = Array.from({ length: run - own }, (_, k) => chainAt(edge, 0, own + k));
  hands.aside = { edge, pos: 1, limit: hands.limit, back: hands.aside };
  hands.edge = edgeOfPlaces(base, false, 'foundation');
  hands.limit = base.length;
  hands.last = { node: base[0] ?? -1, space: false, entry: -1 };
  const origin = hands.bench.origins.push(spanAt(hands, place)) - 1;
  beginOn(hands, gap, { mesh, round: false, origin });
}

/** The hands go along chains of boxes added: counting from the hook was done when they began. */
export const isOnBase = (hands: Hands): boolean =>
  hands.aside !== null && hands.edge.kind === 'foundation';
