/** Is a planted change found at its row, or at the next one with that row labelled? */
import type { Compiled } from '../../src/index.ts';
import type { Plant } from './plants.ts';

interface Span {
  readonly from: number;
  readonly to: number;
}

/** The piece with the change. */
export const planted = (text: string, { from, to, words }: Plant): string =>
  text.slice(0, from) + words + text.slice(to);

/**
 * Found is a finding of warning or error grade that points into the row, or into a row worked right
 * after it and names this one by a label. Rows that work its words again count as the row itself.
 */
export function isFound(piece: Compiled, { placed, from, to, words }: Plant): boolean {
  const longer = words.length - (to - from);
  const own: Span = { from: placed.from, to: placed.to + longer };
  const next = placed.next.map((row) => ({ from: moved(row.from), to: moved(row.to) }));
  function moved(offset: number): number {
    return offset >= to ? offset + longer : offset;
  }
  return piece.findings.some(
    ({ severity, from: at, labels }) =>
      severity !== 'note' &&
      (holds(own, at) ||
        (next.some((row) => holds(row, at)) && labels.some((label) => holds(own, label.from)))),
  );
}

const holds = ({ from, to }: Span, at: number): boolean => from <= at && at < to;
