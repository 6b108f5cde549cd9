/** A grid as a chart block of the manuscript; reading it again gives the same grid. */
import type { Cell, Grid } from './grid.ts';

/** The signs of our own blocks. None may be a blank: lines are trimmed when they are read. */
const SIGNS: Readonly<Record<Cell, readonly [sign: string, words: string]>> = {
  open: ['.', 'open box'],
  filled: ['#', 'filled box'],
  lacet: ['v', 'lacet, two boxes wide'],
  bar: ['-', 'bar, two boxes wide'],
  none: ['_', 'no box'],
};

const ALWAYS: readonly Cell[] = ['open', 'filled'];
const ORDER: readonly Cell[] = ['open', 'filled', 'lacet', 'bar', 'none'];

/** The block with its fences, ending without a line break. */
export function writeGrid(grid: Grid): string {
  const used = new Set(grid.rows.flat());
  const name = grid.name.replace(/[`\s]+/g, ' ').trim();
  const legend = ORDER.filter((cell) => used.has(cell) || ALWAYS.includes(cell));
  return [
    `\`\`\`chart ${name}`.trimEnd(),
    ...(grid.mesh ? [`mesh: ${grid.mesh.post}, ch ${grid.mesh.gap}`] : []),
    ...legend.map((cell) => SIGNS[cell].join(' ')),
    '',
    ...grid.rows.map((row) => row.map((cell) => SIGNS[cell][0]).join('')),
    '```',
  ].join('\n');
}
