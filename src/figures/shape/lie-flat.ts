/**
 * Pieces whose words promise that they lie flat, and whose rounds will not: `will-cup`, `will-ruffle`.
 * Silent over all that is normal practice; a false alarm costs more than a missed one.
 */
import type { Fabric } from '../../fabric/index.ts';
import { type Finding, willCup, willRuffle } from '../../finding/index.ts';
import { readGauges } from '../../gauge/index.ts';
import type { Manuscript } from '../../manuscript/index.ts';
import type { Span } from '../../source/index.ts';
import { PI } from '../../units/index.ts';
import { HIDDEN, type RoundGirth, roundGirths, straightMm } from './flatness.ts';
import { pieceGraphs } from './piece-graph.ts';
import type { StitchGraph } from './stitch-graph.ts';
import { stitchSizes } from './stitch-sizes.ts';
import { usualGrowth } from './usual.ts';

const FLAT_THING =
  /\b(?:coasters?|(?:place|bath|table|door|pet)? ?mats?|doil(?:y|ies)|rugs?|trivets?|hot ?pads?|pot ?holders?|flat circles?|flat ovals?|discs?|disks?|mandalas?)\b/i;
/** A base lies flat as far as it is worked under that heading. */
const FLAT_PART = /^(?:the )?(?:flat |oval |round )?(?:base|bottom)\b/i;
const SAYS_FLAT = /\blies? flat\b|\bflat (?:base|bottom|circle|oval|disc|disk)\b/i;

/** Words that tell that another shape is meant, wherever they stand. */
const NOT_FLAT =
  /\b(?:cup(?:s|ped|ping)?|bowls?|domed?|cones?|conical|turns? up|curls?|curv(?:es?|ed)|ruffl\w*|frill\w*|wav(?:es?|y)|scallop\w*|hyperbolic|flar(?:es?|ed)|flut(?:es?|ed)|hats?|balls?|spheres?|egg|nest)\b/i;

/** Findings about rounds that cannot lie as flat as the words say. */
export function lieFlatFindings(manuscript: Manuscript, fabric: Fabric): readonly Finding[] {
  const { text, head, parts } = manuscript;
  // Most patterns promise nothing of the kind, and no graph is built for them.
  const isFlatThing = FLAT_THING.test(head.title ?? '');
  const flatParts = parts.filter(({ name }) => FLAT_PART.test(name) || FLAT_THING.test(name));
  const promises = isFlatThing || flatParts.length > 0 || SAYS_FLAT.test(text);
  if (!promises || NOT_FLAT.test(text)) return [];
  const names = head.sizes.length > 1 ? head.sizes : [];
  const gauges = readGauges(manuscript);
  const found = new Map<string, { finding: Finding; sizes: string[] }>();
  for (const cloth of fabric.cloths) {
    const sizes = stitchSizes(gauges, fabric.kinds);
    for (const graph of pieceGraphs(cloth, fabric.kinds, sizes.sizesFor)) {
      const base = flatParts.find(({ name }) => graph.parts[0] === name)?.name ?? null;
      if (base === null && !isFlatThing && !SAYS_FLAT.test(text)) continue;
      const finding = judge(graph, { fabric, text, base });
      if (!finding) continue;
      const known = found.get(`${finding.code} ${finding.from}`) ?? { finding, sizes: [] };
      known.sizes.push(names[cloth.sizeIndex] ?? '');
      found.set(`${finding.code} ${finding.from}`, known);
    }
  }
  return [...found.values()].map(({ finding, sizes }) =>
    sizes.length === fabric.cloths.length ? finding : { ...finding, sizes },
  );
}

/** Rounds of one piece are judged from this many on (judgement). */
const FEWEST_ROUNDS = 4;

interface Scene {
  readonly fabric: Fabric;
  readonly text: string;
  /** Heading under which the flat rounds stand; null: the whole piece is flat. */
  readonly base: string | null;
}

function judge(graph: StitchGraph, scene: Scene): Finding | null {
  const rounds = flatRounds(graph, scene.base);
  const last = rounds.at(-1);
  if (!last || rounds.length < FEWEST_ROUNDS) return null;
  if (rounds.some(({ hasSpaces, corners }) => hasSpaces || corners > 0)) return null;
  if (
    rounds.some(({ row }) => row.record?.verdict !== 'proven' && row.record?.verdict !== 'unstated')
  ) {
    return null;
  }
  const straight = 2 * straightMm(graph);
  const radius = rounds.reduce((sum, { heightMm }) => sum + heightMm, 0);
  const flat = straight + 2 * PI * radius;
  const usual = usualGirths(rounds);
  if (!usual) return null;
  const low = Math.min(flat * (1 - HIDDEN), straight + usual.low);
  const high = Math.max(flat * (1 + HIDDEN), straight + usual.high);
  if (last.girthMm >= low && last.girthMm <= high) return null;
  return finding(last, { straight, radius, flat, rounds: rounds.length, scene });
}

/** From the start to the last round that grows: what comes after is a wall or an edging. */
function flatRounds(graph: StitchGraph, base: string | null): readonly RoundGirth[] {
  const girths = roundGirths(graph);
  const own = base === null ? girths : girths.filter(({ row }) => row.record?.part === base);
  const end = own.findLastIndex(({ growth }) => growth > GROWS);
  const rounds = own.slice(0, end + 1);
  // A piece that goes on beyond an edging, or draws in, has a shape of its own.
  const isWhole = base !== null || (girths.length - end <= 3 && hasAllRounds(graph, girths));
  return isWhole && rounds.every(({ growth }) => growth > -GROWS) ? rounds : [];
}

/** A tenth of flat growth: even rounds and gauges that differ a little between stitches. */
const GROWS = 0.1;

const hasAllRounds = (graph: StitchGraph, girths: readonly RoundGirth[]): boolean =>
  girths.length === graph.rows.filter(({ record }) => record).length;

/** Between which lengths rounds of custom leave a circle, whatever the gauge. */
function usualGirths(
  rounds: readonly RoundGirth[],
): { readonly low: number; readonly high: number } | null {
  const last = rounds.at(-1)!;
  let [low, high] = [0, 0];
  for (const { row } of rounds) {
    const usual = usualGrowth(row.stem, last.girthMm / stitchesIn(last));
    if (!usual) return null;
    low += usual.leastMm;
    high += usual.mostMm;
  }
  // Sums of sizes are a hair off.
  return { low: low * (1 - 1e-6), high: high * (1 + 1e-6) };
}

const stitchesIn = ({ row }: RoundGirth): number => row.to - row.from;

interface Judged {
  readonly straight: number;
  readonly radius: number;
  readonly flat: number;
  readonly rounds: number;
  readonly scene: Scene;
}

function finding(
  last: RoundGirth,
  { straight, radius, flat, rounds, scene }: Judged,
): Finding | null {
  const { record } = last.row;
  if (!record) return null;
  const made = stitchesIn(last);
  const widthMm = last.girthMm / made;
  const words = {
    part: record.part || 'The piece',
    row: record.label || 'the last round',
    made,
    flat: Math.round(flat / widthMm),
  };
  const each = Math.round((flat - straight) / widthMm / rounds);
  const sides = straight > 0 ? ` and ${cm(straight)} of straight sides` : '';
  const sum =
    `${rounds} rounds make a radius of ${cm(radius)}, so 2 x 3.14 x ${cm(radius)}${sides} is ` +
    `${cm(flat)} round; ${made} stitches of ${(widthMm / 10).toFixed(2)} cm are ${cm(last.girthMm)}. ` +
    `About ${each} increases a round lie flat.`;
  const at = labelAt(scene.text, record);
  const more = { sum, rows: [record.id] };
  return last.girthMm < flat ? willCup(at, words, more) : willRuffle(at, words, more);
}

const cm = (mm: number): string => `${(mm / 10).toFixed(1)} cm`;

/** The label of the row: what follows is right in itself. */
function labelAt(text: string, { from, to }: Span): Span {
  const label = /^[^:\n]{1,40}(?=:)/.exec(text.slice(from, to))?.[0];
  return { from, to: label ? from + label.length : to };
}
