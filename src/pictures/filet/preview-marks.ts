/**
 * The fabric with yarn as thick as it is: stems over each other, and along the top of each row a band of
 * chains or heads. Flat grey with thin outlines: a drawing, and plainly so.
 */
import type { Cell } from '../../filet/index.ts';
import type { Mark, PathStep, Stroke } from '../drawing.ts';
import { type Mesh, thicknessOf } from './cover.ts';

/** Rows from the bottom, cells as pictured. Lengths of the mesh are those on paper. */
export function previewMarks(rows: readonly (readonly Cell[])[], mesh: Mesh): readonly Mark[] {
  const scene = { rows, mesh, ...thicknessOf(mesh) };
  const stems = rows.flatMap((cells, r) => stemsOf(scene, cells, r));
  const bands = rows.flatMap((cells, r) => bandsOf(scene, cells, r));
  const lacets = rows.flatMap((cells, r) => lacetsOf(scene, cells, r));
  const outline: Stroke = { ink: 'ink', widthMm: Math.min(0.2, scene.chainMm / 8) };
  const strands = lacets.flatMap((steps): Mark[] => [
    {
      kind: 'path',
      fill: 'none',
      stroke: { ink: 'soft', widthMm: scene.chainMm, ends: 'round' },
      steps,
    },
  ]);
  return [
    ...strands,
    { kind: 'path', id: 'stems', fill: 'soft', stroke: 'none', steps: stems.flatMap(patch) },
    { kind: 'path', id: 'edges', fill: 'none', stroke: outline, steps: stems.flatMap(edges) },
    { kind: 'path', id: 'bands', fill: 'soft', stroke: 'none', steps: bands.flatMap(patch) },
    { kind: 'path', id: 'loops', fill: 'none', stroke: outline, steps: bands.flatMap(loops) },
  ];
}

interface Scene {
  readonly rows: readonly (readonly Cell[])[];
  readonly mesh: Mesh;
  readonly stemMm: number;
  readonly chainMm: number;
}

/** A piece of yarn seen from the front: its left upper corner, size, and loops along it. */
interface Patch {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly loops: number;
}

const has = (cell: Cell | undefined): boolean => cell !== undefined && cell !== 'none';

/** Upper edge of a row. */
const topOf = ({ rows, mesh }: Scene, r: number): number =>
  (rows.length - 1 - r) * mesh.boxHeightMm;

function stemsOf(scene: Scene, cells: readonly Cell[], r: number): Patch[] {
  const { mesh, stemMm } = scene;
  const y = topOf(scene, r);
  // At the rim a stem reaches to the far side of the bands, so that corners are closed.
  const stem = (x: number, rimMm = 0): Patch => ({
    x: x - stemMm / 2,
    y: y - rimMm,
    w: stemMm,
    h: mesh.boxHeightMm + 2 * rimMm,
    loops: 0,
  });
  const patches: Patch[] = [];
  const middles = middlesOf(cells);
  for (let column = 0; column <= cells.length; column++) {
    const x = column * mesh.boxWidthMm;
    const [left, right] = [has(cells[column - 1]), has(cells[column])];
    const rimMm = left && right ? 0 : scene.chainMm / 2;
    if ((left || right) && !middles.has(column)) patches.push(stem(x, rimMm));
    if (cells[column] !== 'filled') continue;
    const stitchMm = mesh.boxWidthMm / (mesh.gap + 1);
    for (let i = 1; i <= mesh.gap; i++) patches.push(stem(x + i * stitchMm));
  }
  return patches;
}

/** Columns in the middle of a lacet or a bar, where no post stands. */
function middlesOf(cells: readonly Cell[]): ReadonlySet<number> {
  const middles = new Set<number>();
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i];
    if ((cell === 'lacet' || cell === 'bar') && cells[i + 1] === cell) middles.add(++i);
  }
  return middles;
}

/** Bands along the tops of boxes, and under boxes that nothing lies below. */
function bandsOf(scene: Scene, cells: readonly Cell[], r: number): Patch[] {
  const { rows, mesh, chainMm } = scene;
  return cells.flatMap((cell, column): Patch[] => {
    if (!has(cell)) return [];
    const band = (y: number): Patch => ({
      x: column * mesh.boxWidthMm,
      y: y - chainMm / 2,
      w: mesh.boxWidthMm,
      h: chainMm,
      loops: mesh.gap + 1,
    });
    const top = topOf(scene, r);
    const lowest = has(rows[r - 1]?.[column]) ? [] : [band(top + mesh.boxHeightMm)];
    return cell === 'lacet' ? lowest : [band(top), ...lowest];
  });
}

function lacetsOf(scene: Scene, cells: readonly Cell[], r: number): PathStep[][] {
  const { mesh, chainMm } = scene;
  const [top, low] = [topOf(scene, r), topOf(scene, r) + mesh.boxHeightMm - chainMm / 2];
  return [...middlesOf(cells)]
    .filter((column) => cells[column] === 'lacet')
    .map((column) => {
      const x = column * mesh.boxWidthMm;
      return [
        ['M', x - mesh.boxWidthMm, top],
        ['Q', x - mesh.boxWidthMm * 0.5, low, x, low],
        ['Q', x + mesh.boxWidthMm * 0.5, low, x + mesh.boxWidthMm, top],
      ];
    });
}

const patch = ({ x, y, w, h }: Patch): PathStep[] => [
  ['M', x, y],
  ['L', x + w, y],
  ['L', x + w, y + h],
  ['L', x, y + h],
  ['Z'],
];

/** The long sides of a stem, so that stems side by side can be told apart. */
const edges = ({ x, y, w, h }: Patch): PathStep[] => [
  ['M', x, y],
  ['L', x, y + h],
  ['M', x + w, y],
  ['L', x + w, y + h],
];

/** The loops of chains and heads: a lens for each along a band. */
function loops({ x, y, w, h, loops: n }: Patch): PathStep[] {
  const length = w / n;
  return Array.from({ length: n }, (_, i): PathStep[] => {
    const [from, to, middle] = [x + i * length, x + (i + 1) * length, y + h / 2];
    return [
      ['M', from, middle],
      ['Q', (from + to) / 2, y - h * 0.25, to, middle],
      ['Q', (from + to) / 2, y + h * 1.25, from, middle],
    ];
  }).flat();
}
