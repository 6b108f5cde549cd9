/** Stuffed pieces: which they are, and the closed surface on which their filling presses. */

import { PI } from '../../units/index.ts';
import type { Stuffing } from './energy.ts';
import type { RoundGirth } from './flatness.ts';
import type { PieceWords } from './piece-words.ts';
import { firstAnchorOf, lastAnchorOf, type StitchGraph } from './stitch-graph.ts';

/** A piece closes when its last round is at most this share of its widest (a toy's neck stays open). */
const CLOSES = 0.6;
/** A piece as closed as this is a ball, whether its words speak of filling or not. */
const BALL = 0.36;

/** Has the piece something in it that rounds it out: stuffing, or a head under a hat? */
export function fillsOut(
  graph: StitchGraph,
  girths: readonly RoundGirth[],
  words: PieceWords,
): boolean {
  const worked = graph.rows.filter(({ record }) => record).length;
  const first = girths[0]?.girthMm ?? 0;
  const last = girths.at(-1)?.girthMm ?? 0;
  const widest = Math.max(0, ...girths.map(({ girthMm }) => girthMm));
  const startsClosed = graph.ring >= 0 || first < BALL * widest;
  const isAllRounds = girths.length >= worked && girths.every(({ arches }) => arches === 0);
  if (girths.length < 5 || !isAllRounds || !startsClosed) return false;
  if (words.isHat && girths.some(({ lies }) => lies === 'rises')) return true;
  return last <= (words.saysStuffing ? CLOSES : BALL) * widest;
}

/** Filling stretches the fabric by about this share at the widest round (judgement). */
const STRETCH = 0.02;

/**
 * The pull round a ball is half its radius times the pressure, round an open tube all of it (Barlow's formula,
 * from memory); a stitch bears that of its height, and gives by it over its width.
 */
export function stuffingOf(graph: StitchGraph, girths: readonly RoundGirth[]): Stuffing {
  const widest = girths.reduce((a, b) => (b.girthMm > a.girthMm ? b : a));
  const { row, girthMm, heightMm } = widest;
  const stitchMm = girthMm / (row.to - row.from);
  const isOpen = girths.at(-1)!.girthMm > CLOSES * girthMm;
  const bears = isOpen ? 1 : 1 / 2;
  return {
    triangles: trianglesOf(graph),
    pressure: (STRETCH * stitchMm) / (heightMm * bears * (girthMm / (2 * PI))),
  };
}

function trianglesOf(graph: StitchGraph): Int32Array {
  const triangles: number[] = [];
  for (const row of graph.rows) {
    if (!row.record) continue;
    const add = (a: number, b: number, c: number): void => {
      if (a !== b && b !== c && a !== c) triangles.push(...(row.isTurned ? [a, c, b] : [a, b, c]));
    };
    for (let i = row.from; i < row.to; i++) {
      const next = graph.after[i]!;
      const [left, right] = [lastAnchorOf(graph, i), firstAnchorOf(graph, next)];
      for (let k = graph.anchorFrom[i]!; k + 1 < graph.anchorFrom[i + 1]!; k++) {
        add(i, graph.anchors[k + 1]!, graph.anchors[k]!);
      }
      if (left < 0 || right < 0) continue;
      add(i, next, left);
      add(next, right, left);
    }
  }
  closeTop(graph, triangles);
  return Int32Array.from(triangles);
}

/** The open end is taken as closed by a lid, so that the filling has nowhere to go. */
function closeTop(graph: StitchGraph, triangles: number[]): void {
  const top = graph.rows.at(-1);
  if (!top) return;
  for (let i = top.from + 1; i + 1 < top.to; i++) triangles.push(top.from, i + 1, i);
}
