/**
 * What the count of a piece must keep when it changes: each demand that its own count meets, as a step
 * by which the count may move and a sentence that says why.
 */

import { sumOf } from '../fabric/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import type { Step } from '../notation/index.ts';
import { chartOver } from './chart-row.ts';
import type { SizedRow } from './phases.ts';
import type { Piece } from './pieces.ts';

/** One thing that the count must keep, as a step and a sentence. */
export interface Demand {
  readonly step: number;
  readonly because: string;
}

/** `count`: places of the row that the tape is laid to. */
export function demandsOf(
  piece: Piece,
  rows: readonly SizedRow[],
  { manuscript, count }: { readonly manuscript: Manuscript; readonly count: number },
): readonly Demand[] {
  const demands: Demand[] = [];
  const isRing = rows[0]!.row.ring;
  const perBox = boxStitches(rows);
  if (perBox > 1)
    demands.push({ step: perBox, because: `a box of the mesh is ${perBox} stitches` });
  const hasChart = rows.some(({ row }) => chartOver(row, manuscript) !== null);
  const straps = rows.find(({ size }) => size.straps > 0);
  if (isRing && (hasChart || straps)) {
    demands.push({ step: 2 * perBox, because: 'front and back are alike' });
  }
  if (hasChart) {
    const faces = isRing ? 2 : 1;
    demands.push({
      step: 2 * faces * perBox,
      because: 'the motif stays as near the middle as it is',
    });
  }
  if (straps) {
    demands.push({ step: 2 * straps.size.straps, because: 'both ends of each handle stand alike' });
  }
  const growth = growthOf(piece, rows);
  if (growth > 1) demands.push({ step: growth, because: `the base grows by ${growth} a round` });
  if (piece.start === 'oval')
    demands.push({ step: 2, because: 'both sides of the chain are alike' });
  const repeat = repeatSaid(manuscript.text);
  if (repeat > 1)
    demands.push({ step: repeat, because: `the pattern repeats over ${repeat} stitches` });
  for (const { used, label } of repeatsIn(rows, manuscript, count)) {
    const because = `${label} repeats over ${used} stitches`;
    if (used !== repeat) demands.push({ step: used, because });
  }
  return demands;
}

/** Rows on that many stitches that repeat to their end; each length of repeat once. */
function repeatsIn(
  rows: readonly SizedRow[],
  { parts }: Manuscript,
  count: number,
): readonly { readonly used: number; readonly label: string }[] {
  const found = new Map<number, string>();
  for (const { row, size } of rows) {
    // A row that shapes repeats over the stitches of the one beneath.
    if (size.places !== count || size.isMesh || row.tally.stitches !== row.used) continue;
    const steps = parts[row.partIndex]?.instructions[row.instruction]?.instruction.steps ?? [];
    const used = repeatOf(steps, row.sizeIndex);
    if (used === null || used < 2 || found.has(used)) continue;
    found.set(used, row.part === '' ? row.label : `${row.part}, ${row.label}`);
  }
  return [...found].map(([used, label]) => ({ used, label }));
}

/** Stitches that one pass takes of a repeat to the row's end; `null` where the words leave it open. */
function repeatOf(steps: readonly Step[], size: number): number | null {
  for (const step of steps) {
    if (step.kind !== 'repeat' || step.times.kind === 'times' || step.ending) continue;
    return sumOf(step.steps, size).used;
  }
  return null;
}

/** Stitches that the boxes of a mesh take; 1 without a mesh. */
function boxStitches(rows: readonly SizedRow[]): number {
  const mesh = rows.filter(({ size }) => size.isMesh);
  const gaps = mesh.flatMap(({ row }) => row.tally.spaces.map(({ chains }) => chains + 1));
  return gaps.length === 0 ? 1 : Math.min(...gaps);
}

/** A face must hold the motif, and a box on either side where the pattern has these. */
export function leastFor(rows: readonly SizedRow[], manuscript: Manuscript): number {
  let widest = 0;
  for (const { row } of rows) widest = Math.max(widest, chartOver(row, manuscript) ?? 0);
  if (widest === 0) return 0;
  const least = (rows[0]!.row.ring ? 2 : 1) * (widest + 2) * boxStitches(rows);
  return Math.min(least, ...rows.filter(({ size }) => size.isMesh).map(({ size }) => size.places));
}

/** A round base that grows by the same number a round: a round more or less is such a step. */
function growthOf(piece: Piece, rows: readonly SizedRow[]): number {
  if (piece.start !== 'ring') return 1;
  const growths: number[] = [];
  for (let at = 1; at < rows.length; at++) {
    const by = rows[at]!.size.places - rows[at - 1]!.size.places;
    if (by <= 0) break;
    growths.push(by);
  }
  const [first = 1] = growths;
  return growths.every((by) => by === first) ? first : 1;
}

/** "Multiple of 14 plus 2" in the notes. */
function repeatSaid(text: string): number {
  const found = /\bmultiples? of (\d{1,3})\b/i.exec(text.slice(0, 100_000));
  return found ? Number(found[1]) : 1;
}
