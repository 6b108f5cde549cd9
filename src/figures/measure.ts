/**
 * The sheet of a pattern: what it measures, takes and lasts, in every size, by its own gauge or by
 * another maker's. Sizes come from counts and gauge; yarn and hours from every stitch made.
 */
import type { Fabric, Fact } from '../fabric/index.ts';
import {
  type GaugeCount,
  type Gauges,
  gaugesWith,
  plainGauge,
  readGauges,
  runningLength,
  type Yarn,
} from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { fabricAt } from './at-gauge.ts';
import { type Observation, type YarnPerStitch, yarnPerStitch } from './calibrate.ts';
import { coloursSaid } from './colours.ts';
import type { Figure } from './figure.ts';
import { type Hours, hoursFor } from './hours.ts';
import { leansOf, type PieceLean } from './leans.ts';
import { type PieceSize, pieceSizes } from './part-size.ts';
import { type Refit, refit } from './refit.ts';
import { seamMetres } from './seams.ts';
import { type YarnTally, yarnTallies } from './stitch-tally.ts';
import { strandsOf } from './strands.ts';
import { bought, type Substitute } from './substitute.ts';
import { readWeighings, type Weighings } from './weighed.ts';
import { type YarnNeed, yarnNeed } from './yarn-need.ts';
import { metresPerSc } from './yarn-path.ts';

export interface MeasureOptions {
  /** Counts that stand in place of the pattern's own gauge of the same fabric. */
  readonly gauge?: readonly GaugeCount[];
  /** Other put-ups in place of the yarns' own. */
  readonly substitutes?: readonly Substitute[];
}

export interface SizeSheet {
  /** Name of the size; '' in a pattern of one size. */
  readonly size: string;
  readonly stitches: number;
  readonly pieces: readonly PieceSize[];
  readonly yarns: readonly YarnNeed[];
  readonly hours: Hours;
  /** Of each piece worked in rounds that wanders by a stitch or more. */
  readonly leans: readonly PieceLean[];
  /** Counts for the size of the pattern's own gauge; empty unless another gauge is asked for. */
  readonly refits: readonly Refit[];
}

export interface Sheet {
  readonly title: string | null;
  readonly sizes: readonly SizeSheet[];
  readonly gauges: Gauges;
  /** Sentences: what could not be known. */
  readonly notKnown: readonly string[];
  /** Rows worked until a length, as many as the gauge says. */
  readonly lengths: readonly WorkedLength[];
}

export interface WorkedLength {
  readonly size: string;
  /** Heading of its part. */
  readonly part: string;
  readonly rows: number;
  readonly wanted: Figure;
  readonly reached: Figure;
}

export function measure(
  manuscript: Manuscript,
  worked: Fabric,
  options: MeasureOptions = {},
): Sheet {
  const own = readGauges(manuscript);
  const gauges = options.gauge ? gaugesWith(own, options.gauge) : own;
  const fabric = options.gauge ? fabricAt(manuscript, worked, gauges) : worked;
  const weighings = readWeighings(manuscript);
  const names = manuscript.head.sizes.length > 0 ? manuscript.head.sizes : [''];
  const strands = strandsOf(manuscript);
  const tallies = fabric.cloths.map((cloth) => yarnTallies(cloth, fabric, strands));
  const scene: Scene = {
    manuscript,
    gauges,
    names,
    substitutes: options.substitutes ?? [],
    perStitch: perStitchOf({ weighings, tallies, gauges, own, names }),
  };
  const sizes = fabric.cloths.map((cloth, at) =>
    sheetOf(scene, names[at] ?? '', {
      pieces: pieceSizes(cloth, fabric, gauges),
      tallies: tallies[at]!,
      leans: leansOf(cloth, { manuscript, fabric, gauges }),
      refits: options.gauge
        ? refit(worked.cloths[at]!, { manuscript, fabric: worked, own, other: gauges })
        : [],
    }),
  );
  return {
    title: manuscript.head.title,
    sizes,
    gauges,
    notKnown: [
      ...notKnown(gauges, weighings, fabric),
      ...fabric.notChecked,
      ...pointsUnknown(sizes[0]?.pieces ?? []),
      ...joinsUnknown(sizes[0]?.pieces ?? []),
    ],
    lengths: lengthsOf(fabric, names),
  };
}

interface Scene {
  readonly manuscript: Manuscript;
  readonly gauges: Gauges;
  readonly names: readonly string[];
  readonly substitutes: readonly Substitute[];
  readonly perStitch: YarnPerStitch;
}

interface Made {
  readonly pieces: readonly PieceSize[];
  readonly tallies: readonly YarnTally[];
  readonly leans: readonly PieceLean[];
  readonly refits: readonly Refit[];
}

function sheetOf(scene: Scene, size: string, made: Made): SizeSheet {
  const { pieces, tallies, leans, refits } = made;
  const { manuscript, gauges, perStitch, substitutes } = scene;
  const seams = seamMetres(manuscript.text, pieces);
  const gauge = plainGauge(gauges, 'w0');
  const yarns = tallies.map((tally) => {
    const named = yarnNamed(gauges.yarns, tally.name);
    const { yarn, cautions } = bought(named, tally.name, substitutes);
    // The yarn worked with most sews the pieces together, as makers do.
    const sews = tallies.every(({ stitches }) => stitches <= tally.stitches);
    return yarnNeed(tally, { perStitch, yarn, cautions, seams: sews ? seams : 0, gauge });
  });
  return {
    size,
    stitches: tallies.reduce((sum, tally) => sum + tally.stitches, 0),
    pieces,
    yarns,
    hours: hoursFor(tallies, manuscript.head.data.pace, manuscript.terms.terms),
    leans,
    refits,
  };
}

/** A lone yarn is meant by every name; of several, one that no name fits is not known. */
const yarnNamed = (yarns: readonly Yarn[], name: string): Yarn | null =>
  yarns.find((yarn) => yarn.name.toLowerCase() === name.toLowerCase()) ??
  (yarns.length === 1 || name === '' ? (yarns[0] ?? null) : null);

interface Calibration {
  readonly weighings: Weighings;
  readonly tallies: readonly (readonly YarnTally[])[];
  readonly gauges: Gauges;
  /** The pattern's own gauge, at which its swatches were weighed. */
  readonly own: Gauges;
  readonly names: readonly string[];
}

/** The model, drawn to what was weighed at the pattern's gauge, then scaled to the gauge asked for. */
function perStitchOf(calibration: Calibration): YarnPerStitch {
  const { gauges, own } = calibration;
  const scMetres = metresPerSc(plainGauge(own, 'w0'));
  const atOwn = yarnPerStitch(scMetres, observationsOf(calibration), own.terms);
  const scale = metresPerSc(plainGauge(gauges, 'w0')) / scMetres;
  return { ...atOwn, metresOf: (key) => scale * atOwn.metresOf(key) };
}

function observationsOf({ weighings, tallies, own, names }: Calibration): Observation[] {
  const run = (name: string | null): number | null => {
    const yarn = yarnNamed(own.yarns, name ?? '');
    return (yarn && runningLength(yarn)?.metresPer100g) ?? null;
  };
  const swatches = weighings.swatches.flatMap(({ amounts, grams, metres }): Observation[] => {
    const perGram = run(null);
    const length = metres ?? (grams !== null && perGram ? (grams * perGram) / 100 : null);
    return length === null || length <= 0 ? [] : [{ amounts, metres: length }];
  });
  const testers = weighings.testers.flatMap(({ size, yarn, grams }): Observation[] => {
    const at = size === null ? 0 : names.indexOf(size);
    const made = tallies[at] ?? [];
    const tally = made.find(({ name }) => name === yarn) ?? (made.length === 1 ? made[0] : null);
    const perGram = run(yarn);
    if (!tally || !perGram || (size === null && names.length > 1)) return [];
    return [{ amounts: tally.amounts, metres: (grams * perGram) / 100 }];
  });
  return [...swatches, ...testers];
}

function lengthsOf({ cloths }: Fabric, names: readonly string[]): WorkedLength[] {
  return cloths.flatMap(({ rows, sizeIndex }) =>
    rows.flatMap(({ facts, part, instance }) =>
      facts.flatMap((fact): WorkedLength[] => {
        if (fact.kind !== 'to-length' || instance > 1) return [];
        const figure = (mm: number): Figure => ({
          mm,
          spread: LENGTH_SPREAD,
          how: fact.how,
          because: fact.because,
        });
        const [wanted, reached] = [figure(fact.wantedMm), figure(fact.reachedMm)];
        return [{ size: names[sizeIndex] ?? '', part, rows: fact.rows, wanted, reached }];
      }),
    ),
  );
}

/** A length that is worked to is measured on the piece. */
const LENGTH_SPREAD = 0;

/** What rows that go on to a length mean for the figures. */
function lengthsSaid(facts: readonly Fact[]): string[] {
  const isShort = facts.some((fact) => fact.kind === 'open-length' && fact.why !== 'said');
  return [
    ...(isShort
      ? [
          'A length that is worked "until it measures" was worked once: sizes and yarn are short of it.',
        ]
      : []),
  ];
}

/** Rows that turn a corner reach farther there than they are high: how far, only the shape tells. */
const pointsUnknown = (pieces: readonly PieceSize[]): string[] =>
  pieces.flatMap(({ name, parts }) =>
    parts.some(({ form, points }) => form === 'centre-out piece' && (points ?? 0) > 0)
      ? [
          `${name || 'The piece'} reaches farther at its points than along its rows; how deep it is there, only its shape in three dimensions tells.`,
        ]
      : [],
  );

/** Several pieces are told each by itself. */
function joinsUnknown(pieces: readonly PieceSize[]): string[] {
  const made = pieces
    .filter(({ parts }) => parts[0]?.form !== 'edging')
    .reduce((sum, { copies }) => sum + copies, 0);
  return made > 1
    ? ['Sizes are those of each piece: what they make when they are joined is not figured.']
    : [];
}

function notKnown(gauges: Gauges, weighings: Weighings, fabric: Fabric): string[] {
  if (fabric.cloths.every(({ nodes }) => nodes.n === 0))
    return ['Nothing to measure: no row could be worked.'];
  const said: string[] = [];
  const gauge = plainGauge(gauges, 'w0');
  if (gauge.how === 'assumed') {
    said.push('No size: the pattern gives neither a gauge nor a yarn.');
  }
  if (gauges.yarns.length === 0) said.push('No balls: the pattern gives no yarn with its put-up.');
  for (const words of weighings.unread) {
    said.push(`Not used, for no count or no weight was found in it: "${words}".`);
  }
  const rows = fabric.cloths.flatMap((cloth) => cloth.rows);
  const unsure = rows.filter(
    ({ verdict }) => verdict === 'unread' || verdict === 'unchecked',
  ).length;
  if (unsure > 0) {
    said.push(
      `${unsure} of ${rows.length} rows ${unsure === 1 ? 'is' : 'are'} unread or unchecked: all figures lean on what could be worked.`,
    );
  }
  said.push(...coloursSaid(fabric));
  said.push(...lengthsSaid(rows.flatMap(({ facts }) => facts)));
  said.push('Blocking, stretch in use and the filling are not in the figures.');
  return said;
}
