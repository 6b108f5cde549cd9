/** "of first leg", "join to second leg": the work goes on on another piece. */
import type { PieceStep } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { fact, type Hands, spanAt } from '../hands.ts';
import { type Known, pieceMeant, wordsOf } from '../parked.ts';
import { arrived, piecesOf, standOnAll, switchTo } from '../pieces.ts';

export function doPiece(hands: Hands, step: PieceStep, row: RowContext): void {
  if (step.which === 'both') return allPieces(hands, step, row);
  const key = pieceMeant(step, knownTo(hands));
  if (key === null) return notFollowed(hands, step);
  const before = piecesOf(hands);
  const bound = new Map(before.bound).set(wordsOf(step), key);
  if (key === before.at) {
    hands.pieces = { ...before, bound };
    return;
  }
  const fresh = key === 'twin' ? hands.rowEdge : hands.parked.find((p) => p.key === key)?.edge;
  if (!fresh && !before.stands.has(key)) return notFollowed(hands, step);
  switchTo(hands, key, fresh ?? hands.rowEdge);
  row.round = true;
  hands.pieces = { ...piecesOf(hands), bound };
  arrived(hands, 'joining');
}

/** A piece is named that was not worked, or is part of the work by now. */
function notFollowed(hands: Hands, step: PieceStep): void {
  if (hands.joined.length > 0) return;
  notWorked(hands, step);
}

function notWorked(hands: Hands, step: PieceStep): void {
  hands.loose = true;
  hands.partly = true;
  fact(hands, { kind: 'not-worked', what: 'joining pieces', ...spanAt(hands, step) });
}

const knownTo = (hands: Hands): Known => ({
  parked: hands.parked,
  own: hands.ownPiece,
  ownName: hands.partName,
  bound: piecesOf(hands).bound,
  joined: hands.joined,
  bridged: (hands.pieces?.bridges.length ?? 0) > 0,
  begun: hands.used > 0,
});

function allPieces(hands: Hands, step: PieceStep, row: RowContext): void {
  // "Around both head and belly": where on each of them is not said.
  if (ONE_OF_A_KIND.has(step.word)) return notWorked(hands, step);
  const known = knownTo(hands);
  const others = hands.parked.filter(({ key }) => key !== known.own && !known.joined.includes(key));
  const own = { key: known.own, name: '', edge: hands.edge };
  const both = hands.edge.kind === 'none' ? others.slice(-2) : [own, ...others.slice(-1)];
  if (both.length < 2) return notFollowed(hands, step);
  standOnAll(hands, both);
  row.round = true;
}

const ONE_OF_A_KIND: ReadonlySet<string> = new Set(['head', 'body', 'belly', 'torso']);

/** Is the step right behind the naming of a piece, so that "around" is round that piece? */
export function onOnePiece(here: Here): boolean {
  const before = here.steps[here.i - 1];
  return before?.kind === 'piece' && before.which !== 'both';
}

/** A chain that leads to another piece: that is named next. */
export function leadsToPiece(hands: Hands, here: Here): boolean {
  const next = here.steps.slice(here.i + 1).find((step) => step.kind !== 'remark');
  if (next?.kind !== 'piece') return false;
  const bridged = hands.nodes.n === hands.rowFrom;
  const key = next.which === 'both' ? null : pieceMeant(next, { ...knownTo(hands), bridged });
  return key !== null && key !== piecesOf(hands).at;
}
