/**
 * Cells into words and words into cells. A random piece is written in each style and told by its
 * chart; all of them must be proven, make the same fabric, and read back to the same cells.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meshRows } from '../../src/fabric/index.ts';
import {
  meshOfGrid,
  type WriteRowsOptions,
  workedRows,
  writeGrid,
  writeRows,
} from '../../src/filet/index.ts';
import { type Compiled, compile } from '../../src/index.ts';
import { SEED } from '../laws/seed.ts';
import { type Piece, pieces } from './shapes.ts';

const STYLES = ['runs', 'house', 'stitches'] as const;

const head = (terms: string): string => `---\ntitle: Sprig panel\nterms: ${terms}\n---`;

function written(piece: Piece, style: WriteRowsOptions['style']): string {
  const { grid, working, terms, way } = piece;
  const { definitions, foundation, rows } = writeRows(grid, working, { style, terms, way });
  const paragraphs = [...definitions, foundation ?? '', ...rows.map(({ text }) => text)];
  return `${[head(terms), ...paragraphs].join('\n\n')}\n`;
}

/** The same piece, each row told by the chart. */
function charted(piece: Piece): string {
  const { grid, working, terms, way } = piece;
  const { foundation } = writeRows(grid, working, { style: 'runs', terms, way });
  const round = working.form !== 'flat';
  const rows = workedRows(grid, working).map(({ number, side, cells }, nth) => {
    const said = nth === 0 && side === 'wrong' ? ' (WS)' : '';
    const turn = working.form === 'turned' && nth > 0 ? 'Turn, work' : 'Work';
    const boxes = cells.filter((cell) => cell !== 'none').length;
    const end = round ? '; join' : '';
    return `${round ? 'Rnd' : 'Row'} ${number}${said}: ${turn} chart Sprig${end}. (${boxes} boxes)`;
  });
  return `${[head(terms), foundation ?? '', ...rows, writeGrid(grid)].join('\n\n')}\n`;
}

/** Every node with what it is worked into: "w1 >3,4 sp". */
function fabricOf({ fabric }: Compiled): string[] {
  const cloth = fabric.cloths[0];
  if (!cloth) return [];
  const { nodes } = cloth;
  return Array.from({ length: nodes.n }, (_, id) => {
    const anchors = nodes.anchors.slice(nodes.anchorFrom[id], nodes.anchorFrom[id + 1]);
    const kind = fabric.kinds.kinds[nodes.kind[id] ?? 0]?.name;
    return `${kind} >${[...anchors].join()}${nodes.flags[id] ? ' sp' : ''}`;
  });
}

function faults(piece: Compiled): string[] {
  const graver = piece.findings.filter(({ severity }) => severity !== 'note');
  const open = piece.rows.filter(({ verdict }) => verdict !== 'proven');
  return [...graver.map(({ message }) => message), ...open.map(({ label }) => `${label} open`)];
}

function cellsOf(made: Compiled, piece: Piece): unknown {
  const cloth = made.fabric.cloths[0];
  if (!cloth) return null;
  const mesh = meshOfGrid(piece.grid, piece.terms);
  const rows = cloth.rows.filter(({ number }) => number !== null);
  const { terms, working, grid } = piece;
  const by = { mesh, name: grid.name, terms, hand: working.hand };
  return meshRows(made.fabric, cloth, rows, by)?.grid;
}

function check(piece: Piece): void {
  // Charts are worked by right hands; the rows that left hands read are the same mirrored.
  const isRight = piece.working.hand === 'right';
  const texts = [
    ...STYLES.map((style) => written(piece, style)),
    ...(isRight ? [charted(piece)] : []),
  ];
  const made = texts.map((text) => compile(text, { fixes: false }));
  made.forEach((one, i) => {
    expect(faults(one), texts[i]).toEqual([]);
  });
  const wanted = fabricOf(made[0] as Compiled);
  made.forEach((one, i) => {
    expect(fabricOf(one), `${texts[0]}\n\n${texts[i]}`).toEqual(wanted);
    expect(cellsOf(one, piece), texts[i]).toEqual(piece.grid);
  });
}

describe('cells and words', () => {
  test('agree whatever the style, the form and the shape', () => {
    fc.assert(fc.property(pieces, check), { seed: SEED, numRuns: 150 });
  }, 120_000);
});
