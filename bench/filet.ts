/**
 * A chart of 200 x 200 boxes, written as rows in each style, worked, and read back from the fabric.
 * Times are the least of three runs.
 */
import { meshRows } from '../src/fabric/index.ts';
import { type Cell, type Grid, PLAIN_WORKING, writeRows } from '../src/filet/index.ts';
import { compile } from '../src/index.ts';

const SIDE = 200;

/** Rings and bars of filled boxes: long runs, short ones and repeats. */
const cell = (row: number, column: number): Cell =>
  (Math.floor(Math.hypot(row - 100, column - 100) / 3) + (column >> 4)) % 3 === 0
    ? 'filled'
    : 'open';

const grid: Grid = {
  name: 'Rings',
  mesh: { post: 'dc', gap: 2 },
  rows: Array.from({ length: SIDE }, (_, row) =>
    Array.from({ length: SIDE }, (_, column) => cell(row, column)),
  ),
};

function least(work: () => void): string {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 3; run++) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return `${best.toFixed(0).padStart(6)} ms`;
}

for (const style of ['runs', 'house', 'stitches'] as const) {
  const written = () => writeRows(grid, PLAIN_WORKING, { style, terms: 'US' });
  const { definitions, foundation, rows } = written();
  const text = `---\nterms: US\n---\n\n${[...definitions, foundation, ...rows.map((row) => row.text)].join('\n\n')}\n`;
  const { fabric } = compile(text, { fixes: false });
  const cloth = fabric.cloths[0];
  if (!cloth) throw new Error('nothing was worked');
  const by = { mesh: { post: 'w1', gap: 2 }, name: 'Rings', terms: 'US' } as const;
  const back = () => meshRows(fabric, cloth, cloth.rows, by)?.grid;
  const same = JSON.stringify(back()) === JSON.stringify(grid);
  console.log(`${style}, ${text.length} characters, read back ${same ? 'the same' : 'DIFFERENT'}`);
  console.log(`  write     ${least(written)}`);
  console.log(`  work      ${least(() => compile(text, { fixes: false }))}`);
  console.log(`  read back ${least(back)}`);
}
