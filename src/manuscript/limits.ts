/** What is refused unread, so that no file can hang or choke the program. */
import { type Finding, fileTooLarge, grouped, lineTooLong } from '../finding/index.ts';
import { type LineStarts, placeAt } from '../source/index.ts';

/** Characters (UTF-16 units) of a file: 4 MB of plain text. */
const MOST_OF_FILE: number = 4 * 1024 * 1024;
/** Characters of a line, 256 kB. */
const MOST_OF_LINE: number = 256 * 1024;

export function fileRefusal(text: string): Finding | null {
  if (text.length <= MOST_OF_FILE) return null;
  const words = { size: sized(text.length), limit: sized(MOST_OF_FILE) };
  return fileTooLarge({ from: 0, to: 0 }, words);
}

const sized = (n: number): string => `${grouped(n)} characters`;

/** Offsets of the lines that are not read, with their findings. */
export function lineRefusals(
  text: string,
  lines: LineStarts,
): { refused: ReadonlySet<number>; findings: readonly Finding[] } {
  const refused = new Set<number>();
  const findings: Finding[] = [];
  for (let i = 0; i < lines.length; i++) {
    const from = lines[i] ?? 0;
    const to = lines[i + 1] ?? text.length;
    if (to - from <= MOST_OF_LINE) continue;
    refused.add(from);
    const words = {
      line: placeAt(lines, from).line,
      size: sized(to - from),
      limit: sized(MOST_OF_LINE),
    };
    findings.push(lineTooLong({ from, to: from + 80 }, words));
  }
  return { refused, findings };
}
