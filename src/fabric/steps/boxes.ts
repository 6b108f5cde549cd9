/**
 * Filet: boxes of mesh, told in words or by a chart. A post stands on a post, and belongs to the
 * box that it closes; in a round the first post is also the last.
 */

import type { Chart } from '../../manuscript/index.ts';
import {
  type BoxStep,
  type ChartStep,
  heightOf,
  type StemId,
  type Step,
  stemOf,
} from '../../notation/index.ts';
import { chartNamed, chartRow } from '../charts.ts';
import type { Here, RowContext } from '../context.ts';
import { SPACE } from '../edge.ts';
import {
  atStart,
  fact,
  type Hands,
  make,
  numberFor,
  originFor,
  placeOfStep,
  spanAt,
  type Target,
} from '../hands.ts';
import { internKind, kindOf } from '../kinds.ts';
import { limitOf } from '../limit.ts';
import { makeChains } from '../start-chain.ts';
import { isSpace, seek, takeSpaceAt, takeStitch } from '../take.ts';

export interface Mesh {
  readonly post: StemId;
  /** Chains of an open box. */
  readonly gap: number;
}

type Box = BoxStep['box'];

export function doBoxes(hands: Hands, step: BoxStep, row: RowContext, here: Here): void {
  const mesh = meshFor(hands, row, null);
  checkMesh(hands, mesh, row, here);
  const origin = originFor(hands, step);
  const until = step.until;
  if (until || (step.n === null && here.i === here.steps.length - 1)) {
    const limit = limitOf(hands, until);
    while (placesLeft(hands, limit) >= mesh.gap + 1)
      workBox(hands, step.box, { mesh, row, origin });
    return;
  }
  const n = numberFor(hands, step.n) ?? 1;
  for (let i = 0; i < n; i++) workBox(hands, step.box, { mesh, row, origin });
}

export function doChart(hands: Hands, step: ChartStep, row: RowContext, here: Here): void {
  const chart = chartNamed(row.charts, step.name);
  if (!chart) {
    hands.loose = true;
    return fact(hands, { kind: 'chart-missing', name: step.name, ...spanAt(hands, step) });
  }
  const mesh = meshFor(hands, row, chart);
  const nth = step.row !== null ? step.row - 1 : (row.chartRows.get(chart.name) ?? 0);
  const cells = chartRow(chart, nth, row.reads);
  if (!cells) {
    hands.loose = true;
    const rows = chart.rows.length;
    return fact(hands, {
      kind: 'chart-row',
      name: chart.name,
      row: nth + 1,
      rows,
      ...spanAt(hands, step),
    });
  }
  const given = givenBoxes(hands, step);
  const width = cells.cells.length;
  if (given !== null && given !== width) {
    fact(hands, { kind: 'chart-width', name: chart.name, width, given, ...spanAt(hands, step) });
  }
  checkMesh(hands, mesh, row, here);
  const before = step.fromBox !== null ? step.fromBox - 1 - hands.boxes : 0;
  for (let i = 0; i < before; i++)
    workBox(hands, 'open', { mesh, row, origin: originFor(hands, step) });
  cells.cells.forEach((cell, i) => {
    if (cell === 'none') return;
    const at = cells.places[i] ?? step.from;
    const origin = hands.bench.origins.push({ from: at, to: at + 1 }) - 1;
    workBox(hands, cell, { mesh, row, origin });
  });
}

function givenBoxes(hands: Hands, step: ChartStep): number | null {
  if (step.fromBox !== null && step.toBox !== null) return step.toBox - step.fromBox + 1;
  return numberFor(hands, step.n);
}

/** Boxes that the row's words ask for; null where "to end" or words of another kind stand too. */
function boxesAsked(hands: Hands, steps: readonly Step[], row: RowContext): number | null {
  let n = 0;
  for (const step of steps) {
    if (step.kind === 'boxes') {
      if (step.until || step.n === null) return null;
      n += numberFor(hands, step.n) ?? 0;
    } else if (step.kind === 'work' && isBoxWord(step.stitch.special)) {
      if (step.place || step.until || step.n === null) return null;
      n += numberFor(hands, step.n) ?? 0;
    } else if (step.kind === 'chart') {
      const given = givenBoxes(hands, step);
      const width = chartNamed(row.charts, step.name)?.rows.at(-1)?.length;
      if (step.fromBox !== null || (given === null && width === undefined)) return null;
      n += given ?? width ?? 0;
    } else if (['work', 'group', 'repeat', 'chain', 'skip'].includes(step.kind)) return null;
  }
  return n;
}

/** n boxes with a gap of g take n(g + 1) places in the round, one more in rows. */
function checkMesh(hands: Hands, mesh: Mesh, row: RowContext, here: Here): void {
  if (hands.boxes > 0 || !here.top || !atStart(hands) || hands.edge.open) return;
  const boxes = boxesAsked(hands, here.steps, row);
  if (boxes === null || hands.edge.n === 0) return;
  const needed = boxes * (mesh.gap + 1) + (row.round ? 0 : 1);
  const have = placesLeft(hands, hands.edge.n);
  if (needed === have || startsOnFoundation(hands, mesh, have - needed)) return;
  fact(hands, {
    kind: 'mesh',
    boxes,
    needed,
    have,
    ...placeOfStep(hands),
  });
  hands.leave = true;
}

/**
 * Over a foundation chain the surplus is the turning chain: the post's height, with the base of the
 * first post among it or not, and the gap of a first open box. Both ways are in print.
 */
function startsOnFoundation(hands: Hands, mesh: Mesh, surplus: number): boolean {
  if (hands.edge.kind !== 'foundation' || hands.edge.ring || hands.pos > 0) return false;
  const height = Math.floor(heightOf(mesh.post));
  const turning = [height - 1, height, height + mesh.gap - 1, height + mesh.gap];
  if (!turning.includes(surplus)) return false;
  hands.pos = surplus;
  return true;
}

/** Stitches and chains from here to entry `limit`: each is a place for mesh. */
function placesLeft(hands: Hands, limit: number): number {
  let n = -hands.inner;
  for (let i = hands.pos; i < limit; i++) {
    const type = hands.edge.type[i];
    if (type === SPACE) n += hands.edge.run[i] ?? 0;
    else n += type ?? 0;
  }
  return n;
}

const BOX_WORD = /^(first |last )?(open|filled|solid|closed) (box|mesh|square|space|sp|block)$/;

export const isBoxWord = (special: string | null): boolean =>
  special !== null && BOX_WORD.test(special);

export const boxOf = (special: string): Box => (/open/.test(special) ? 'open' : 'filled');

/** The mesh of the chart, of the boxes beneath, or of the stitches that the manuscript defines. */
function meshFor(hands: Hands, row: RowContext, chart: Chart | null): Mesh {
  const { bench, edge } = hands;
  const named = chart?.mesh ?? row.charts.find((other) => other.mesh)?.mesh;
  const post = (named ? stemOf(named.post, bench.terms) : null) ?? definedPost(hands) ?? 'w1';
  if (chart?.mesh) return { post, gap: chart.mesh.gap };
  const entry = seek(hands, (i) => isSpace(hands, i));
  if (entry >= 0 && (edge.run[entry] ?? 0) <= 3) return { post, gap: edge.run[entry] ?? 2 };
  return { post, gap: named?.gap ?? definedGap(hands) ?? 2 };
}

function definedSteps(hands: Hands): readonly Step[] {
  for (const [key, special] of hands.bench.specials)
    if (/open box|open mesh/.test(key)) return special.steps;
  return [];
}

function definedGap(hands: Hands): number | null {
  const chain = definedSteps(hands).find((step) => step.kind === 'chain');
  return chain?.kind === 'chain' ? numberFor(hands, chain.n) : null;
}

function definedPost(hands: Hands): StemId | null {
  const work = definedSteps(hands).find((step) => step.kind === 'work');
  const word = work?.kind === 'work' ? work.stitch.stem : null;
  return word ? stemOf(word, hands.bench.terms) : null;
}

/** One box. The first of a row begins with a chain that stands for its post. */
function workBox(
  hands: Hands,
  box: Box,
  by: { mesh: Mesh; row: RowContext; origin: number },
): void {
  const { mesh, row, origin } = by;
  const first = atStart(hands) || hands.boxes === 0;
  const begun = first && hasPost(hands);
  if (atStart(hands)) startPost(hands, mesh, origin);
  else if (row.round && !begun) post(hands, mesh, origin);
  if (!(begun && endsWithChains(hands))) fill(hands, box, mesh, origin);
  else skipPlaces(hands, mesh.gap);
  if (!row.round) post(hands, mesh, origin);
  if (box === 'filled') hands.filled++;
  hands.boxes += box === 'lacet' || box === 'bar' ? 2 : 1;
}

const classAt = (hands: Hands, id: number): string | undefined =>
  hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.class;

const hasPost = (hands: Hands): boolean => classAt(hands, hands.rowFrom) === 'start';

const endsWithChains = (hands: Hands): boolean => classAt(hands, hands.nodes.n - 1) === 'chain';

function startPost(hands: Hands, mesh: Mesh, origin: number): void {
  const into = takeStitch(hands, 'passed');
  make(hands, kindOf(hands.bench.kinds, 'start', mesh.post), origin, into);
}

function stitch(hands: Hands, mesh: Mesh, origin: number, into: Target): void {
  const kind = internKind(hands.bench.kinds, {
    class: 'stitch',
    stem: mesh.post,
    shape: 'one',
    legs: null,
    post: null,
    loop: null,
    foundation: false,
    special: null,
  });
  make(hands, kind, origin, into);
}

const post = (hands: Hands, mesh: Mesh, origin: number): void =>
  stitch(hands, mesh, origin, takeStitch(hands, hands.inner > 0 ? 'chains' : 'passed'));

function skipPlaces(hands: Hands, n: number): void {
  const { last } = hands;
  for (let i = 0; i < n; i++) takeStitch(hands, 'chains');
  hands.last = last;
}

/** What stands between two posts. */
function fill(hands: Hands, box: Box, mesh: Mesh, origin: number): void {
  const { gap } = mesh;
  if (box === 'open') {
    makeChains(hands, gap, origin);
    skipPlaces(hands, gap);
  } else if (box === 'filled') {
    const whole =
      hands.inner === 0 && isSpace(hands, hands.pos) && hands.edge.run[hands.pos] === gap;
    const space = whole ? takeSpaceAt(hands, hands.pos) : null;
    for (let i = 0; i < gap; i++) stitch(hands, mesh, origin, space ?? takeStitch(hands, 'chains'));
  } else fillTwo(hands, box, mesh, origin);
}

/** Lacet and bar, two boxes wide. */
function fillTwo(hands: Hands, box: Box, mesh: Mesh, origin: number): void {
  if (box === 'bar') {
    makeChains(hands, 2 * mesh.gap + 1, origin);
    const next = seek(hands, (i) => isPost(hands, i, mesh));
    if (next >= 0) hands.pos = next;
    return;
  }
  makeChains(hands, 3, origin);
  skipPlaces(hands, mesh.gap);
  stitch(hands, { ...mesh, post: 'w0' }, origin, takeStitch(hands, 'chains'));
  makeChains(hands, 3, origin);
  skipPlaces(hands, mesh.gap);
}

const isPost = (hands: Hands, entry: number, mesh: Mesh): boolean =>
  hands.bench.kinds.kinds[hands.nodes.kind[hands.edge.node[entry] ?? 0] ?? 0]?.stem === mesh.post;
