/** A chart in words, row by row in the order of work: for screen readers and for plain text. */
import { rowInWords } from '../../filet/index.ts';
import { aboutBeside, captionsOf, chartTitle, whatItShows } from './captions.ts';
import { boxInWords, kindsIn } from './key.ts';
import type { Sheet, SheetRow } from './sheet.ts';

/** "Rnd 12 (right side, from right to left): 5 filled, 2 open, ..." */
function rowWords(row: SheetRow, r: number): string {
  const back = row.reads === 'right-to-left';
  const cells = back ? row.cells.toReversed() : row.cells;
  const name = row.label === '' ? `Chart row ${r + 1}, never worked` : row.label;
  const way = back ? 'from right to left' : 'from left to right';
  return `${name} (${row.side} side, ${way}): ${rowInWords(cells)}.`;
}

/** All that the picture says, as lines of text; ends without a line break. */
export function chartInWords(sheet: Sheet): string {
  const key = kindsIn(sheet).map((cell) => boxInWords(sheet, cell));
  const head = [chartTitle(sheet), [sheet.pattern, sheet.edition].filter(Boolean).join(', ')];
  return [
    ...head.filter(Boolean),
    '',
    whatItShows(sheet),
    ...captionsOf(sheet),
    ...[aboutBeside(sheet)].filter(Boolean),
    `Boxes (${sheet.terms} terms), neighbours share a post: ${key.join('; ')}.`,
    '',
    ...sheet.rows.map(rowWords),
  ].join('\n');
}
