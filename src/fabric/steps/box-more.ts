/**
 * Boxes added at a row's start, told in stitches (filet rules, 7): "ch 10, turn, dc in 8th ch from
 * hook, ch 2, sk 2 ch, dc in first dc" for two open boxes, "ch 7, turn, dc in first dc" for one,
 * "ch 5, turn, dc in 4th and 5th ch from hook" for a filled one. The chain may stand at the end of
 * the row before.
 */
import { chainsOfPost, type Mesh } from '../../filet/index.ts';
import { type ChainStep, type Place, type Step, stemOf } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { chainAt, edgeOfPlaces, SPACE } from '../edge.ts';
import { type Hands, numberFor, originFor, spanAt } from '../hands.ts';
import { nounOf } from '../noun.ts';
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
  if (step.countsAs) return false;
  const n = numberFor(hands, step.n) ?? 0;
  const start = { step, n, place, mesh: postOf(hands, row), row };
  if (place.fromHook) return fromHook(hands, start);
  // "Ch 12, turn. Hdc in each ch. Hdc in each st to the end": along its own chain, as always from the 2nd.
  if (place.pick === 'each' && nounOf(place).kind === 'chain' && n > 4 && hands.edge.spaces === 0)
    return widens(hands, { ...start, place: { ...place, pick: 'nth' } }, 1);
  return inFirstPost(hands, start);
}

interface Start {
  readonly step: ChainStep;
  /** Chains. */
  readonly n: number;
  readonly place: Place;
  readonly mesh: Mesh;
  readonly row: RowContext;
}

const ADDS = 'adds boxes';

/**
 * Is it meant so? Over mesh, or where the row has gaps of this kind, that is custom; over a solid
 * row the plain reading is tried first.
 */
function isMeant(hands: Hands, { step, n, place, row }: Start, gap: number): boolean {
  const ownGap = row.shape.chainLengths.has(gap) && gap > 0;
  // "Ch 22, turn, dc in 4th ch from hook and in next 18 ch": no turning chain is so long.
  const isLong = place.fromHook && n - (place.nth ?? 1) > 3;
  const isMesh = hands.edge.spaces > 0 || ownGap || isLong;
  const reading = ask(hands.readings, {
    doubt: `start-chain ${n} at the edge`,
    custom: isMesh ? ADDS : 'counts',
    alternatives: [isMesh ? 'counts' : ADDS],
    local: false,
    ...spanAt(hands, step),
  });
  return reading === ADDS;
}

function postOf(hands: Hands, row: RowContext): Mesh {
  const word = row.shape.firstWork?.stitch.stem ?? null;
  const stem = word ? stemOf(word, hands.bench.terms) : null;
  const mesh = meshFor(hands, row, null);
  return stem && stem !== 'slip' ? { ...mesh, post: stem } : mesh;
}

/** A gap of mesh (filet rules, mesh kinds), or none. */
const isGap = (gap: number): boolean => Number.isInteger(gap) && gap >= 0 && gap <= 3;

function fromHook(hands: Hands, start: Start): boolean {
  const passed = (start.place.nth ?? 1) - 1;
  if (hands.cornerBlocks && start.n > passed) return cornerBlock(hands, start, passed);
  const gap = gapPassed(passed, start.mesh);
  if (gap === null || (gap === 0 && start.mesh.post === 'w1h')) return widens(hands, start, passed);
  const base = start.n - chainsOfPost(start.mesh) - gap;
  if (base < 1 || !isMeant(hands, start, gap)) return false;
  const by = workOf(hands, start, gap);
  alongBase(hands, base, by);
  beginOn(hands, gap, by);
  return true;
}

/** "… ch 3, turn. Hdc in 2nd ch from hook and in next ch, hdc across": stitches more at the row's start. */
function widens(hands: Hands, { n, place, step, row }: Start, passed: number): boolean {
  const word = row.shape.firstWork?.stitch.stem ?? null;
  const stem = word ? stemOf(word, hands.bench.terms) : null;
  const isShort = stem === 'w0' || stem === 'w1h';
  if (!isShort || place.pick !== 'nth' || passed < 1 || passed > 2 || n <= passed) return false;
  const origin = originFor(hands, step);
  alongBase(hands, n - passed, { mesh: { post: stem, gap: 0 }, round: false, origin });
  if (hands.aside && goesOnceAcross(row.shape.steps)) {
    // "Ch 8, turn, sc in 2nd ch from hook, sc across": over the chain and on over the row, in one.
    hands.aside = { ...hands.aside, goesOn: true };
  }
  return true;
}

/** Only one of its steps goes on to an end, and no other work stands behind it: the row's own stitches are its. */
function goesOnceAcross(steps: readonly Step[]): boolean {
  const works = steps.filter(
    ({ kind }) => kind === 'work' || kind === 'repeat' || kind === 'group' || kind === 'even',
  );
  const [last] = works.slice(-1);
  const isOnce = last !== undefined && goesAcross(last) && works.filter(goesAcross).length === 1;
  // "… and in each ch across": along the chain alone.
  return isOnce && !isOfChain(last);
}

const isOfChain = (step: Step): boolean =>
  step.kind === 'work' &&
  [step.place, ...step.alsoIn].every((place) => place?.nouns.every(({ kind }) => kind === 'chain'));

const goesAcross = (step: Step): boolean =>
  step.kind === 'repeat'
    ? step.times.kind !== 'times'
    : step.kind === 'work' &&
      (step.until?.kind === 'end' ||
        [step.place, ...step.alsoIn].some(
          (place) => place?.until?.kind === 'end' || place?.pick === 'each',
        ));

/** From corner to corner: a chain for the block's base, and the chain that is its space. */
function cornerBlock(hands: Hands, start: Start, passed: number): boolean {
  const by = workOf(hands, start, 0);
  alongBase(hands, start.n - passed, by);
  makeChains(hands, passed, by.origin);
  return true;
}

const workOf = (hands: Hands, { mesh, step }: Start, gap: number): BoxWork => ({
  mesh: gap > 0 ? { ...mesh, gap } : mesh,
  round: false,
  origin: originFor(hands, step),
});

/** Chains of the first gap where so many are passed: post, gap, and the gap beneath. */
function gapPassed(passed: number, mesh: Mesh): number | null {
  const gap = (passed - chainsOfPost(mesh)) / 2;
  return mesh.post !== 'w0' && isGap(gap) ? gap : null;
}

function beginOn(hands: Hands, gap: number, by: BoxWork): void {
  startPost(hands, gap > 0 ? 'open' : 'filled', by);
  makeChains(hands, gap, by.origin);
  skipPlaces(hands, gap);
}

/** One open box: no stitch stands in its chain, and the next goes into the first post beneath. */
function inFirstPost(hands: Hands, start: Start): boolean {
  const { mesh, n, place } = start;
  const gap = (n - chainsOfPost(mesh)) / 2;
  if (place.pick !== 'first' && place.pick !== 'same') return false;
  // "3 dc in first ch-1 sp": a group in a gap, no post in a post.
  if (nounOf(place).kind === 'space') return false;
  if (mesh.post === 'w0' || !isGap(gap) || gap === 0) return false;
  // Over mesh only its own gap is meant: "ch 7" over gaps of 1 is no box more.
  if (hands.edge.spaces > 0 && gap !== mesh.gap) return false;
  if (!isMeant(hands, start, gap)) return false;
  const by = workOf(hands, start, gap);
  alongBase(hands, gap, by);
  startPost(hands, 'open', by);
  makeChains(hands, gap, by.origin);
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
