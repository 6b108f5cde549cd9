/** One stitch: its kind, and making it so many times in one place. */
import {
  type JoinStep,
  nameSpan,
  type StitchTerm,
  stemOf,
  type WorkStep,
} from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { fact, type Hands, make, numberFor, originFor, spanAt, type Target } from '../hands.ts';
import { internKind, type NodeClass } from '../kinds.ts';
import { ask } from '../readings.ts';

/** Number of the kind that a stitch makes. */
export function kindFor(hands: Hands, stitch: StitchTerm, at: WorkStep | JoinStep): number {
  const memo = hands.kindsOf.get(stitch);
  if (memo && memo.loop === hands.loop && (stitch.stem !== null || memo.stem === hands.stem)) {
    hands.stem = memo.stem;
    return memo.kind;
  }
  const kind = newKindFor(hands, stitch, at.kind === 'work' ? nameSpan(at) : at);
  hands.kindsOf.set(stitch, { kind, stem: hands.stem, loop: hands.loop });
  return kind;
}

function newKindFor(hands: Hands, stitch: StitchTerm, at: Span): number {
  const { bench } = hands;
  let stem = stitch.stem ? stemOf(stitch.stem, bench.terms) : hands.stem;
  if (stem === null) {
    const other = stemOf(stitch.stem ?? '', bench.terms === 'US' ? 'UK' : 'US');
    fact(hands, { kind: 'undefined', word: stitch.stem ?? '', ...spanAt(hands, at) });
    stem = other ?? hands.stem;
  }
  if (stitch.stem && stem !== 'slip') hands.stem = stem;
  const single = stitch.shape === 'increase' || stitch.shape === 'one';
  const counted = stem !== 'slip' || slipsCount(hands, at);
  const nodeClass: NodeClass = !counted ? 'slip' : stitch.shape === 'picot' ? 'picot' : 'stitch';
  return internKind(bench.kinds, {
    class: nodeClass,
    stem: nodeClass === 'picot' ? null : stem,
    shape: stitch.shape === 'increase' ? 'one' : stitch.shape,
    legs: single ? null : stitch.legs,
    post: stitch.post,
    loop: stitch.loop ?? hands.loop,
    foundation: stitch.foundation,
    special: stitch.special,
  });
}

/** Slip stitches along a row are no stitches by custom; some makers count them, or work into them (doubt). */
const slipsCount = (hands: Hands, at: Span): boolean =>
  ask(hands.readings, {
    doubt: 'slip stitches',
    custom: hands.slipsNamed ? 'counted' : 'not counted',
    alternatives: [hands.slipsNamed ? 'not counted' : 'counted'],
    local: false,
    ...spanAt(hands, at),
  }) === 'counted';

/** Stitches that stand in one place: 2 for an increase, the number of "3 dc in next st". */
export const perPlace = (hands: Hands, step: WorkStep): number =>
  step.stitch.shape === 'increase' ? (step.stitch.legs ?? 2) : (numberFor(hands, step.n) ?? 1);

/** In one place: "6 inc in ring" is no increase, and "5 sc in next st" is five. */
export const perPlaceIn = (hands: Hands, step: WorkStep): number => {
  const n = numberFor(hands, step.n);
  if (step.stitch.shape !== 'increase') return n ?? 1;
  return (step.stitch.legs ?? 2) * (n ?? 1);
};

/** Is the stitch at `entry` of this name? */
export function stemIs(hands: Hands, entry: number, word: string | null): boolean {
  const kind = hands.bench.kinds.kinds[hands.nodes.kind[hands.edge.node[entry] ?? 0] ?? 0];
  return word !== null && kind?.stem === stemOf(word, hands.bench.terms);
}

/** Makes `n` stitches in one place. */
export function stitches(hands: Hands, step: WorkStep, target: Target, n: number): void {
  const kind = kindFor(hands, step.stitch, step);
  const origin = originFor(hands, step);
  for (let i = 0; i < n; i++) make(hands, kind, origin, target);
}

/** The first counted stitch of the row at hand, as a place. */
export function firstStitchOf(hands: Hands): Target {
  for (let id = hands.rowFrom; id < hands.nodes.n; id++) {
    if (hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.counted) {
      return { node: id, space: false, entry: -1 };
    }
  }
  return { node: -1, space: false, entry: -1 };
}
