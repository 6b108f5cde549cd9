/** Offsets into lines and columns, which people and editors count from 1. */

export interface TextPlace {
  /** Counted from 1. */
  readonly line: number;
  /** Counted from 1, in UTF-16 units, as editors and SARIF count. */
  readonly column: number;
}

/** Starts of all lines of a text; `\n`, `\r\n` and a lone `\r` end a line. */
export type LineStarts = readonly number[];

export function lineStarts(text: string): LineStarts {
  const starts = [0];
  if (!text.includes('\r')) {
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
    return starts;
  }
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 10) starts.push(i + 1);
    else if (code === 13 && text.charCodeAt(i + 1) !== 10) starts.push(i + 1);
  }
  return starts;
}

/** Line and column of an offset, by binary search: O(log lines). */
export function placeAt(starts: LineStarts, offset: number): TextPlace {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 };
}
