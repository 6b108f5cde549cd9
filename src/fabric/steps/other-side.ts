/** The other side of a chain: of the foundation, of a chain over a gap; or along row ends. */
import { type OtherSideStep, PLAIN_NOUN, type WorkStep } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { edgeOfPlaces } from '../edge.ts';
import { fact, type Hands, spanAt } from '../hands.ts';
import { firstAnchor } from '../nodes.ts';
import { toBridge } from '../pieces.ts';
import { ask } from '../readings.ts';
import { chainOverSkipped, lastChainRun, undersideOver } from '../skipped.ts';
import { alongBottom, alongRowEnds } from './border.ts';

export function doOtherSide(hands: Hands, step: OtherSideStep, row: RowContext): void {
  row.round = true;
  if (hands.pieces && toBridge(hands)) return;
  if (step.rowEnds) return alongRowEnds(hands);
  if (hands.border && alongBottom(hands)) return;
  const places = onFoundation(hands, step, row) ?? underGap(hands) ?? beneathRows(hands);
  if (!places) {
    // Of a chain that was not understood nothing is known, and nothing is missing; a row that goes
    // along row ends comes to other sides that have no chain.
    // Where pieces are joined, the chain between them may have been made before they were.
    const joins = row.shape.steps.some(({ kind }) => kind === 'piece');
    const unknown = hands.loose || hands.spread || joins || hands.rowEdge.kind === 'none';
    hands.partly ||= joins;
    hands.loose = true;
    if (unknown) return;
    return fact(hands, { kind: 'no-place', what: 'other side of a chain', ...spanAt(hands, step) });
  }
  hands.edge = edgeOfPlaces(places, true, 'foundation');
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = hands.edge.n;
}

/**
 * "1 sc in each of next 5 unused loops", where the chain is worked to its end: the loops are those of
 * its other side, to which nothing else has led. The step, in the stitches of that side.
 */
export function alongUnusedLoops(hands: Hands, step: WorkStep, row: RowContext): WorkStep {
  const { place, from, to } = step;
  const { edge, foundation } = hands;
  if (!place?.nouns[0]?.skipped || place.row !== null) return step;
  if (edge.kind !== 'foundation' || !foundation || foundation.joined) return step;
  // Only a chain that was gone round is a ring here.
  if (!edge.ring) {
    if (!hands.first || hands.pos < edge.n) return step;
    doOtherSide(hands, { kind: 'other-side', chains: null, rowEnds: false, from, to }, row);
  }
  // "In free loops of next 11 chs": the number is told of the chains.
  const along = place.n === null && place.of?.n ? place.of : place;
  return { ...step, place: { ...along, nouns: [PLAIN_NOUN], of: null } };
}

/**
 * "Sc in 5 skipped sts, sc in 5 ch": round an opening, behind its last stitch, the chain that was made over
 * it is worked from beneath.
 */
export function alongChainOver(hands: Hands, { place, from, to }: WorkStep, row: RowContext): void {
  const { edge } = hands;
  if (place?.nouns[0]?.kind !== 'chain' || place.fromHook || place.row !== null) return;
  if (edge !== hands.skippedEdge || !edge.ring || hands.pos < edge.n || edge.n === 0) return;
  if (undersideOver(hands, [...edge.node.subarray(0, edge.n)]))
    doOtherSide(hands, { kind: 'other-side', chains: null, rowEnds: false, from, to }, row);
}

/**
 * "Sc in each of 5 ch, sc in 5 skipped sts": a thumb that begins along the chain over its opening, in a part
 * that has no edge yet.
 */
export function beginsOnChainOver(hands: Hands, { place }: WorkStep, row: RowContext): void {
  const { edge } = hands;
  const chain = place?.pick === 'next' && place.n !== null && place.nouns[0]?.kind === 'chain';
  const none = edge.kind === 'none' || (edge.open && edge.n === 0);
  if (!chain || place.fromHook || !none || hands.first !== null) return;
  const goesOn = row.shape.steps.some(
    (step) => step.kind === 'work' && step.place?.nouns[0]?.skipped === true,
  );
  const chains = goesOn ? chainOverSkipped(hands) : null;
  if (!chains) return;
  row.round = true;
  hands.edge = edgeOfPlaces(chains, true, 'foundation');
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = hands.edge.n;
}

const BOTH_ENDS = 'with the chains at both ends';

/**
 * Chains from the one after the far end back to the one worked first. That last one has the first
 * stitches of the round in it already; whether "to end" takes it again is a doubt, and so is whether
 * the chain at the far end is, where it has one stitch, or one and "one additional", and no more.
 */
function onFoundation(hands: Hands, step: OtherSideStep, row: RowContext): number[] | null {
  const { foundation, first } = hands;
  if (!foundation || hands.edge.kind !== 'foundation' || !first || first.node < 0) return null;
  const reading = ask(hands.readings, {
    doubt: 'far end of the chain',
    custom: 'with the chain first worked',
    alternatives: [
      'without the chain first worked',
      ...(isHardlyWorked(hands, foundation.from, hasOneMore(step, row)) ? [BOTH_ENDS] : []),
    ],
    local: true,
    ...spanAt(hands, step),
  });
  const from = reading === BOTH_ENDS ? foundation.from : foundation.from + 1;
  const to = reading === 'without the chain first worked' ? first.node - 1 : first.node;
  const places: number[] = [];
  for (let id = from; id <= to; id++) places.push(id);
  hands.optionalLast = places.length > 0 && to === first.node;
  return places;
}

/** "Rejoin yarn to cast-on edge" behind the last row: the chains that the first row was worked into. */
function beneathRows({ foundation, nodes, edge, first, rowFrom }: Hands): number[] | null {
  if (!foundation || edge.kind !== 'row' || first) return null;
  const worked = new Set<number>();
  for (let id = foundation.to; id < rowFrom; id++) {
    const chain = firstAnchor(nodes, id);
    if (chain >= foundation.from && chain < foundation.to) worked.add(chain);
  }
  return worked.size > 0 ? [...worked].sort((a, b) => a - b) : null;
}

/** Does one stitch stand in a chain, made last, or one and another that is told apart? */
const isHardlyWorked = ({ nodes }: Hands, chain: number, more: boolean): boolean =>
  firstAnchor(nodes, nodes.n - 1) === chain &&
  firstAnchor(nodes, nodes.n - (more ? 3 : 2)) !== chain;

/** "Sc in each ch to end, one additional sc in the last ch. Along the other side …" */
function hasOneMore(step: OtherSideStep, { shape: { steps } }: RowContext): boolean {
  const before = steps.slice(0, steps.indexOf(step)).findLast(({ kind }) => kind === 'work');
  return (
    before?.kind === 'work' && before.place?.pick === 'same' && (before.n?.values[0] ?? 1) === 1
  );
}

function underGap(hands: Hands): number[] | null {
  const run: number[] = [];
  for (let i = 0; i < hands.edge.n; i++) run.push(hands.edge.node[i] ?? -1);
  const under = undersideOver(hands, run);
  if (under) return under;
  const longest = lastChainRun(hands.edge);
  if (!longest) return null;
  return Array.from({ length: longest.n }, (_, i) => longest.from + longest.n - 1 - i);
}
