/** Where a chart block ends, and whether a line fences one. */

const OPENING = /^(`{3,}|~{3,})[ \t]*([^`\r\n]*)$/;

export interface Fence {
  readonly mark: string;
  /** What stands behind the mark: "chart Tide". */
  readonly info: string;
}

export function fenceOf(line: string): Fence | null {
  const found = OPENING.exec(line.trim());
  return found ? { mark: found[1] ?? '', info: (found[2] ?? '').trim() } : null;
}

/** "chart Tide" gives "Tide", "chart" gives ''; `null`: another kind of fenced block. */
export function chartNameOf(info: string): string | null {
  const found = /^chart(?:\s+(.*))?$/i.exec(info);
  return found ? (found[1] ?? '').trim().replace(/^(["'])(.*)\1$/, '$2') : null;
}

export interface LineSpan {
  readonly from: number;
  readonly to: number;
  /** Where the next line begins. */
  readonly next: number;
}

/** The line that begins at `at`, without its line end. */
export function lineAt(text: string, at: number): LineSpan {
  let to = at;
  while (to < text.length && text.charCodeAt(to) !== 10 && text.charCodeAt(to) !== 13) to++;
  const crLf = text.charCodeAt(to) === 13 && text.charCodeAt(to + 1) === 10;
  return { from: at, to, next: Math.min(text.length, to + (crLf ? 2 : 1)) };
}

/** Lines of a chart are short; a longer one is something else, and ends an unclosed chart. */
const LONGEST_ROW = 4096;

/**
 * The inside of a chart block that opens before `from`. An unclosed one ends with its grid: at the
 * first line behind a row that is no row, so that the pattern below it stays readable.
 */
export function chartInside(text: string, from: number, mark: string): LineSpan {
  let at = from;
  let rows = 0;
  let afterGrid = -1;
  while (at < text.length) {
    const line = lineAt(text, at);
    const words = text.slice(line.from, Math.min(line.to, line.from + LONGEST_ROW)).trim();
    if (words.startsWith(mark) && /^[`~]+$/.test(words)) return { from, to: at, next: line.next };
    const isRow = words !== '' && !/\s/.test(words) && words.length < LONGEST_ROW;
    if (isRow) rows++;
    else if (rows > 0 && afterGrid < 0) afterGrid = at;
    // A closing fence may still come; these show that it was forgotten.
    if (words.startsWith(mark)) break;
    if (rows > 0 && /^(?:#{1,4} \S|(?:rnds?|rounds?|rows?)\s*\d)/i.test(words)) break;
    at = line.next;
  }
  const end = afterGrid >= 0 ? afterGrid : at;
  return { from, to: end, next: end };
}
