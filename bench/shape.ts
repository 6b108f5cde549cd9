/**
 * A tube of stitches out of place brought to rest, against two layout libraries and against the plain
 * constraint loop, on the same springs from the same start, until stitches are off by the same share of
 * their length in the mean. Processor time in ms, for the machine may be shared, and as ratios to ours, in
 * one run. Sorting the springs for the loop is left out of its time.
 * `npm run bench -- shape`
 */
import { forceLink, forceSimulation } from 'd3-force-3d';
import createLayout from 'ngraph.forcelayout';
import createGraph from 'ngraph.graph';
import { edgeErrorMm } from '../src/figures/shape/relax.ts';
import { settle, startSettling } from '../src/figures/shape/settle.ts';
import { shapeOf } from '../src/figures/shape/shape.ts';
import { SpringList, type Springs } from '../src/figures/shape/springs.ts';
import { compile } from '../src/index.ts';
import { byColour, sweep } from './constraint-loop.ts';
import { bagOf } from './patterns.ts';

/** Mean error of a stitch's length at which all stop: 1 % of 1 mm. */
const REST = 0.01;
/** Nobody is waited for longer. */
const PATIENCE_MS = 15_000;
const LOOK_EVERY = 5;

interface Tube {
  readonly springs: Springs;
  readonly at: Float64Array;
}

/** Rounds of 100 stitches of 1 mm, with springs across, drawn out, each node up to 0.2 mm out of place. */
function tubeOf(stitches: number): Tube {
  const around = 100;
  const rows = Math.round(stitches / around);
  const list = new SpringList();
  const at = new Float64Array(3 * around * rows);
  const node = (r: number, k: number): number => r * around + (k % around);
  const radius = around / (2 * Math.PI);
  let seed = 1;
  const noise = (): number => {
    seed = (seed * 48_271) % 2_147_483_647;
    return 0.4 * (seed / 2_147_483_647 - 0.5);
  };
  for (let r = 0; r < rows; r++) {
    for (let k = 0; k < around; k++) {
      const angle = (2 * Math.PI * k) / around;
      // Drawn out by a tenth: an error that is the same all over is what a sweep is slow at.
      const place = [radius * Math.cos(angle), radius * Math.sin(angle), 1.1 * r];
      at.set(
        place.map((v) => v + noise()),
        3 * node(r, k),
      );
      list.add(node(r, k), node(r, k + 1), 1, 1);
      if (r + 1 === rows) continue;
      list.add(node(r, k), node(r + 1, k), 1, 1);
      list.add(node(r, k), node(r + 1, k + 1), Math.SQRT2, 0.15);
      list.add(node(r, k + 1), node(r + 1, k), Math.SQRT2, 0.15);
    }
  }
  return { springs: list.finish(), at };
}

interface Run {
  readonly ms: number;
  readonly errorMm: number;
}

function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Steps until the stitches are at rest or patience ends. */
function until(step: () => void, error: () => number): Run {
  const start = cpuMs();
  for (let n = 1; ; n++) {
    step();
    if (n % LOOK_EVERY > 0) continue;
    const ms = cpuMs() - start;
    const errorMm = error();
    if (errorMm <= REST || ms > PATIENCE_MS) return { ms, errorMm };
  }
}

function ours({ springs, at }: Tube): Run {
  const load = { springs, bends: null, contacts: null, stuffing: null };
  const settling = startSettling(at.slice(), load);
  return until(
    () => settle(settling),
    () => edgeErrorMm(settling.at, springs),
  );
}

function plainLoop({ springs, at }: Tube): Run {
  const sorted = byColour(springs, at.length / 3);
  const own = at.slice();
  return until(
    () => sweep(own, sorted),
    () => edgeErrorMm(own, sorted),
  );
}

function d3({ springs, at }: Tube): Run {
  const nodes = Array.from({ length: at.length / 3 }, (_, i) => ({
    x: at[3 * i]!,
    y: at[3 * i + 1]!,
    z: at[3 * i + 2]!,
  }));
  const links = Array.from({ length: springs.n }, (_, i) => ({
    source: springs.a[i]!,
    target: springs.b[i]!,
    restMm: springs.restMm[i]!,
  }));
  const force = forceLink(links)
    .distance((link) => link.restMm)
    .iterations(1);
  const simulation = forceSimulation(nodes, 3).stop().force('link', force).alphaDecay(0);
  const read = (): Float64Array => Float64Array.from(nodes.flatMap(({ x, y, z }) => [x, y, z]));
  return until(
    () => simulation.tick(),
    () => edgeErrorMm(read(), springs),
  );
}

function ngraph({ springs, at }: Tube): Run {
  const graph = createGraph<null, number>();
  for (let i = 0; i < at.length / 3; i++) graph.addNode(i);
  for (let i = 0; i < springs.n; i++)
    graph.addLink(springs.a[i]!, springs.b[i]!, springs.restMm[i]!);
  const layout = createLayout(graph, {
    dimensions: 3,
    gravity: -1e-6,
    springTransform: (link: { data: number }, spring: { length: number }) => {
      spring.length = link.data;
    },
  } as never);
  for (let i = 0; i < at.length / 3; i++) {
    layout.setNodePosition(i, at[3 * i]!, at[3 * i + 1]!, at[3 * i + 2]!);
  }
  const read = (): Float64Array => {
    const out = new Float64Array(at.length);
    for (let i = 0; i < at.length / 3; i++) {
      const { x, y, z = 0 } = layout.getNodePosition(i);
      out.set([x, y, z], 3 * i);
    }
    return out;
  };
  return until(
    () => layout.step(),
    () => edgeErrorMm(read(), springs),
  );
}

const WAYS = { ours, 'plain loop': plainLoop, 'd3-force-3d': d3, 'ngraph.forcelayout': ngraph };

console.log('stitches  way                      time   ratio  mean error');
for (const stitches of [2_500, 10_000, 25_000]) {
  const tube = tubeOf(stitches);
  ours(tube);
  let base = 0;
  for (const [name, way] of Object.entries(WAYS)) {
    const { ms, errorMm } = way(tube);
    if (name === 'ours') base = ms;
    const gaveUp = errorMm > REST ? '  (stopped: not at rest)' : '';
    console.log(
      `${String(stitches).padStart(8)}  ${name.padEnd(19)} ${ms.toFixed(0).padStart(7)} ms ` +
        `${(ms / base).toFixed(1).padStart(6)}   ${errorMm.toFixed(4)} mm${gaveUp}`,
    );
  }
}

console.log('\na whole bag, from its pattern: graph, layout and rest');
for (const stitches of [2_500, 10_000, 25_000]) {
  const { manuscript, fabric } = compile(bagOf(Math.ceil(stitches / 240), 240), { fixes: false });
  const start = cpuMs();
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  const [piece] = step.value.pieces;
  const { steps, settled, unsettledMm } = piece!.relaxed;
  const ms = (cpuMs() - start).toFixed(0).padStart(6);
  const rest = settled ? 'at rest' : `pull left ${unsettledMm.toFixed(3)} mm`;
  console.log(`${String(piece!.graph.n).padStart(8)} nodes ${ms} ms, ${steps} steps, ${rest}`);
}
