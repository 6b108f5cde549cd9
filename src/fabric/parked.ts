/**
 * Pieces that were worked before and wait to be joined: every copy of a part keeps its last edge.
 * From the words for a piece ("second leg") to the piece that is meant.
 */
import type { PieceStep } from '../notation/index.ts';
import type { Edge } from './edge.ts';

export interface Parked {
  /** "2.1": part and copy, counted from 0 and 1. */
  readonly key: string;
  /** The part's heading, lower-case. */
  readonly name: string;
  readonly edge: Edge;
}

export const keyOf = (partIndex: number, instance: number): string => `${partIndex}.${instance}`;

/** Does the heading name such a piece? "Legs (make 2)" holds "leg"; "Body" does not. */
function namesPiece(heading: string, word: string): boolean {
  const words = heading.toLowerCase().split(/[^a-z]+/);
  return words.some(
    (w) => w === word || w === `${word}s` || (word === 'foot' && w === 'feet') || w === `${word}es`,
  );
}

/** What a row knows of the pieces that it brings together. */
export interface Known {
  readonly parked: readonly Parked[];
  /** The piece on the hook, and whether its part has that name. */
  readonly own: string;
  readonly ownName: string;
  /** Words that were bound to a piece before in this row: "leg 1" to its key. */
  readonly bound: ReadonlyMap<string, string>;
  /** Pieces that rows before joined to this one. */
  readonly joined: readonly string[];
  /** A chain was made before the row's first stitch: it leads to the piece that is named first. */
  readonly bridged: boolean;
  /** Stitches of this row lie on the piece on the hook already: a piece that is named now is another. */
  readonly begun: boolean;
}

const MAKES_SECOND =
  /\b(?:make|work|crochet)(?: (?:the|your|a))? (?:second|2nd|other|another) (leg|arm|foot|paw|ear|wing)\b/i;

/** "Make the second leg": the word for the piece on the hook, of which there are two; '' if none is told. */
export const madeTwice = (words: string): string =>
  (MAKES_SECOND.exec(words)?.[1] ?? '').toLowerCase();

export const wordsOf = (step: PieceStep): string => `${step.word} ${step.which ?? ''}`;

/**
 * Key of the piece that is meant: parked, or on the hook; `twin`: a copy of the one on the hook that
 * the pattern does not work by itself; `null`: there is none.
 */
export function pieceMeant(step: PieceStep, known: Known): string | null {
  const again = known.bound.get(wordsOf(step));
  if (again !== undefined) return again;
  const fits = known.parked.filter(({ name }) => namesPiece(name, step.word));
  const isOwn = namesPiece(known.ownName, step.word);
  if (step.how === 'from' && (isOwn || fits.some(({ key }) => key === known.own))) return known.own;
  const bound = new Set(known.bound.values());
  const free = fits.filter(({ key }) => !bound.has(key) && !known.joined.includes(key));
  const others = free.filter(({ key }) => key !== known.own);
  if (step.how === 'join' || step.which === 'other') return others[0]?.key ?? twin(isOwn, bound);
  const exact = exactly(step, fits, free);
  const isAnother = known.begun && bound.size === 0 && exact === known.own;
  if (isAnother && others[0]) return others[0].key;
  if (exact && !bound.has(exact)) return exact;
  if (free[0] && step.which !== null) return free[0].key;
  // "Ch 3, 14 sc around first leg": the chain leads to the one that waits.
  if (isOwn && known.bridged && bound.size === 0 && step.which === 1) return 'twin';
  if (isOwn) return bound.has(known.own) && step.which !== null ? twin(isOwn, bound) : known.own;
  return free[0]?.key ?? null;
}

const twin = (isOwn: boolean, bound: ReadonlySet<string>): string | null =>
  isOwn && !bound.has('twin') ? 'twin' : null;

/** By number among the pieces of that name, or by a heading that says left or right. */
function exactly(
  step: PieceStep,
  fits: readonly Parked[],
  free: readonly Parked[],
): string | undefined {
  const { which } = step;
  if (typeof which === 'number') return fits[which - 1]?.key;
  if (which === 'left' || which === 'right') {
    return free.find(({ name }) => name.includes(which))?.key;
  }
  return fits.length === 1 ? fits[0]?.key : undefined;
}
