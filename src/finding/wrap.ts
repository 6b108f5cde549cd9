/** Breaks running text into lines for a terminal. */
import { printableText, widthOf } from './cells.ts';

/**
 * The text in lines of at most `width` cells, broken at blanks; a word that is wider is cut. `first`
 * stands before the first line, `rest` before the others: as many blanks, unless given.
 */
export function wrap(
  first: string,
  text: string,
  width: number,
  rest: string = ' '.repeat(widthOf(first)),
): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let isEmpty = true;
  const widest = Math.max(8, width - Math.max(widthOf(first), widthOf(rest)));
  for (const word of printableText(text)
    .split(/ +/)
    .flatMap((part) => pieces(part, widest))) {
    if (!isEmpty && widthOf(`${line} ${word}`) > width) {
      lines.push(line);
      line = rest + word;
    } else {
      line = isEmpty ? line + word : `${line} ${word}`;
      isEmpty = false;
    }
  }
  return [...lines, line];
}

function pieces(word: string, room: number): readonly string[] {
  if (widthOf(word) <= room) return [word];
  const parts: string[] = [];
  let part = '';
  for (const sign of word) {
    if (widthOf(part + sign) > room) {
      parts.push(part);
      part = '';
    }
    part += sign;
  }
  return [...parts, part];
}
