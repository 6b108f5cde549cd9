/**
 * The shape of a pattern's pieces in three dimensions: graph, layout, springs, rest. A generator, so that
 * a host can show how far it is and stop; the outcome of an unstopped run is always the same.
 */
import type { Fabric } from '../../fabric/index.ts';
import { type GaugeCount, gaugesWith, readGauges } from '../../gauge/index.ts';
import type { Manuscript } from '../../manuscript/index.ts';
import { type Lean, readLean } from '../lean.ts';
import {
  COUNTED_ACROSS,
  isWaved,
  type Stretch,
  springsAt,
  stretched,
  stretchFor,
} from './across.ts';
import { bendsOf, takeSet } from './bends.ts';
import { type Dimensions, dimensionsOf } from './dimensions.ts';
import { evened } from './evened.ts';
import { fillsOut, stuffingOf } from './filling.ts';
import { bearsHandles, type RoundGirth, roundGirths, straightMm } from './flatness.ts';
import { foldedShare } from './folds.ts';
import { layOut } from './layout.ts';
import { mirrored } from './mirrored.ts';
import { pieceGraphs } from './piece-graph.ts';
import { type PieceWords, pieceWords } from './piece-words.ts';
import { LIMITS, type Relaxed, type Relaxing, type RelaxLimits, relax } from './relax.ts';
import { springsOf } from './spring-model.ts';
import { type LeanScene, withLean } from './start-lean.ts';
import type { StitchGraph } from './stitch-graph.ts';
import { type SizesHad, stitchSizes } from './stitch-sizes.ts';
import { type Strain, strainOf } from './strain.ts';

export interface ShapeOptions {
  /** Index of the size; default 0. */
  readonly sizeIndex?: number;
  /** Only pieces with a part of which this is the name or its beginning, whatever the case. */
  readonly part?: string;
  /** Counts that stand in place of the pattern's own gauge of the same fabric. */
  readonly gauge?: readonly GaugeCount[];
  readonly limits?: RelaxLimits;
  /** Left: the pieces are mirrored; `leftHanded` makes the fabric that this is for. Default right. */
  readonly hand?: 'right' | 'left';
}

export interface ShapedPiece {
  readonly name: string;
  /** How many alike are made. */
  readonly copies: number;
  readonly graph: StitchGraph;
  /** x, y, z in mm by node of the graph. */
  readonly at: Float64Array;
  readonly relaxed: Omit<Relaxed, 'at'>;
  readonly strain: Strain;
  readonly dimensions: Dimensions;
  readonly girths: readonly RoundGirth[];
  readonly straightMm: number;
  readonly isFilled: boolean;
  /** How its start of round wanders, as the picture shows it; `null` for pieces without rounds. */
  readonly lean: Lean | null;
  readonly hasHandles: boolean;
  /** Share of a flat piece's stitches that lie face down: it is folded over itself. */
  readonly foldedShare: number;
}

export interface Shape {
  readonly hand: 'right' | 'left';
  readonly sizeIndex: number;
  readonly pieces: readonly ShapedPiece[];
  readonly sizes: SizesHad;
  /** All that there are, whichever were asked for. */
  readonly parts: readonly string[];
}

export interface ShapeProgress {
  readonly piece: string;
  readonly nth: number;
  readonly of: number;
  /** Of the steps that this piece may take, 0 to 1. */
  readonly done: number;
}

/** Shapes every piece of one size; copies that came out alike once. */
export function* shapeOf(
  manuscript: Manuscript,
  fabric: Fabric,
  options: ShapeOptions = {},
): Generator<ShapeProgress, Shape, undefined> {
  const written = readGauges(manuscript);
  const gauges = options.gauge ? gaugesWith(written, options.gauge) : written;
  const sizes = stitchSizes(gauges, fabric.kinds);
  const sizeIndex = options.sizeIndex ?? 0;
  const cloth = fabric.cloths[sizeIndex];
  const all = cloth ? pieceGraphs(cloth, fabric.kinds, sizes.sizesFor) : [];
  const kept = alike(all).filter(({ graph }) => isAsked(graph, options.part ?? ''));
  const isCountedAcross = gauges.records.some(({ fabric: name }) => isWaved(name));
  const { terms } = manuscript.terms;
  const own = readLean(manuscript.head.data.lean, terms);
  const leaning: LeanScene = { gauges, kinds: fabric.kinds, own, terms };
  const pieces: ShapedPiece[] = [];
  for (const [nth, { graph, copies }] of kept.entries()) {
    const name = nameOf(graph, all.length, manuscript.head.title);
    const words = pieceWords(manuscript, graph.parts, all.length === 1);
    const limits = options.limits ?? LIMITS;
    const run = shapePiece(graph, { ...words, isWaved: isCountedAcross, leaning }, limits);
    let step = run.next();
    for (; !step.done; step = run.next()) {
      yield { piece: name, nth: nth + 1, of: kept.length, done: step.value };
    }
    const piece: ShapedPiece = { name, copies, ...step.value };
    pieces.push(options.hand === 'left' ? mirrored(piece) : piece);
  }
  const had = sizes.had();
  const because = isCountedAcross ? [...had.because, COUNTED_ACROSS] : had.because;
  return {
    hand: options.hand ?? 'right',
    sizeIndex,
    pieces,
    sizes: { ...had, because },
    parts: partsOf(all),
  };
}

const isAsked = (graph: StitchGraph, part: string): boolean =>
  part === '' || graph.parts.some((name) => name.toLowerCase().startsWith(part.toLowerCase()));

const partsOf = (graphs: readonly StitchGraph[]): readonly string[] => [
  ...new Set(graphs.flatMap(({ parts }) => parts)),
];

/** A piece alone bears the pattern's title, one of several the name of its first part. */
const nameOf = (graph: StitchGraph, of: number, title: string | null): string =>
  (of === 1 ? title : null) ?? (graph.parts[0]?.replace(MAKE, '') || (title ?? 'The piece'));

/** "(make 2)" in a heading: the number of copies is told apart. */
const MAKE = /\s*[([]\s*(?:make|work|crochet)\b[^)\]]*[)\]]/i;

interface Alike {
  readonly graph: StitchGraph;
  readonly copies: number;
}

/** Copies of a part that came out the same are shaped once. */
function alike(graphs: readonly StitchGraph[]): readonly Alike[] {
  const groups: { graph: StitchGraph; copies: number }[] = [];
  for (const graph of graphs) {
    const same = groups.find(
      ({ graph: other }) =>
        other.partIndex === graph.partIndex &&
        other.n === graph.n &&
        other.rows.length === graph.rows.length &&
        other.instance !== graph.instance,
    );
    if (same) same.copies++;
    else groups.push({ graph, copies: 1 });
  }
  return groups;
}

type Outcome = Omit<ShapedPiece, 'name' | 'copies'>;

interface PieceTraits extends PieceWords {
  /** Its gauge was counted across waves. */
  readonly isWaved: boolean;
  readonly leaning: LeanScene;
}

/** One piece; yields the share of its steps that are done. */
function* shapePiece(
  upright: StitchGraph,
  traits: PieceTraits,
  limits: RelaxLimits,
): Generator<number, Outcome, undefined> {
  const { graph, lean } = withLean(upright, traits.leaning);
  const girths = roundGirths(graph);
  const isFilled = fillsOut(graph, girths, traits);
  const even = evened(graph, girths);
  const built = springsOf(even);
  const layout = layOut(even, built, { isFilled, girths });
  const asked: Relaxing = {
    springs: built.springs,
    bends: bendsOf(layout, isFilled),
    at: layout.at,
    thicknessMm: thicknessMm(graph),
    stuffing: isFilled ? stuffingOf(even, girths) : null,
    limits,
  };
  let resting = asked;
  let found = yield* shareOf(relax(resting));
  const stretch = traits.isWaved ? stretchFor(graph, found.at) : null;
  if (stretch) {
    resting = drawnOut(asked, found.at, stretch);
    found = yield* shareOf(relax(resting));
  }
  const { at, ...relaxed } = found;
  const hasHandles = bearsHandles(graph);
  const dimensions = dimensionsOf(graph, at, { isHung: traits.hangs, hasHandles, girths });
  return {
    graph,
    at,
    relaxed,
    strain: strainOf(graph, at, resting.springs),
    lean,
    dimensions,
    foldedShare: dimensions.pose === 'flat' && !hasWalls(girths) ? foldedShare(graph, at) : 0,
    girths,
    straightMm: straightMm(graph),
    isFilled,
    hasHandles,
  };
}

/** A small cup is as low as a flat piece, and its walls may well face down. */
const hasWalls = (girths: readonly RoundGirth[]): boolean =>
  girths.some(({ lies }) => lies === 'rises' || lies === 'closes');

function* shareOf(run: ReturnType<typeof relax>): Generator<number, Relaxed, undefined> {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    yield step.value.done;
  }
}

/** The same piece drawn out: its springs and bends are at rest as they were, in the new proportion. */
function drawnOut(asked: Relaxing, at: Float64Array, stretch: Stretch): Relaxing {
  const there = stretched(at, stretch);
  const bends = asked.bends ? { ...asked.bends, rest: asked.bends.rest.slice() } : null;
  takeSet(there, bends);
  const springs = springsAt(asked.springs, at, there);
  return { ...asked, springs, at: there, ...(bends && { bends }) };
}

/** A fabric is about half as thick as a stitch is wide (ours, by eye). */
function thicknessMm(graph: StitchGraph): number {
  let sum = 0;
  for (let i = 0; i < graph.n; i++) sum += graph.widthMm[i]!;
  return graph.n === 0 ? 0 : (0.5 * sum) / graph.n;
}
