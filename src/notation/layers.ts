/**
 * "sc through both layers", "working through all thicknesses": two pieces are joined, which is named
 * and not worked. The whole clause goes with it.
 */
import { mayBeStitch } from './dictionary.ts';
import {
  clauseEnds,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { NotWorkedStep, WorkStep } from './tree.ts';

/** Whether such words stand `ahead` tokens on. */
export function layersAhead(r: Reader, ahead = 0): boolean {
  if (!isWord(r, W.through, ahead)) return false;
  for (let k = ahead + 1; k < ahead + 5; k++) {
    if (kindAt(r, k) !== T.word && kindAt(r, k) !== T.number) return false;
    if (LAYERS.has(spelled(r, r.at + k))) return true;
    const sense = wordAt(r, k);
    if (kindAt(r, k) === T.word && !COUNTS.has(sense)) return false;
  }
  return false;
}

const LAYERS = new Set(['layer', 'layers', 'thickness', 'thicknesses', 'sides', 'pieces', 'ears']);
const COUNTS: SenseSet = new SenseSet([W.both, W.all, W.the, W.of, W.these]);

/** Takes the clause that tells of layers; `start`: the token with which it began, `work`: what goes through them. */
export function readLayers(r: Reader, start: number, work: WorkStep | null): NotWorkedStep {
  while (!clauseEnds(r)) {
    const partner = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
    if (partner > r.at && r.kind[r.at + 1] === T.number) break;
    r.at = Math.max(r.at, partner) + 1;
  }
  const span = { from: fromOf(r, start), to: toOf(r) };
  return { kind: 'not-worked', what: 'through layers', work, ...span };
}

/** "Fold flat and sc 6 through both layers": whether behind the "and" here stitches go through layers. */
export function layersBehindAnd(r: Reader): boolean {
  if (!isWord(r, W.and)) return false;
  const k = kindAt(r, 1) === T.number ? 2 : 1;
  if (!mayBeStitch(wordAt(r, k))) return false;
  for (let at = k + 1; at < k + 14 && !clauseEnds(r, at); at++) if (layersAhead(r, at)) return true;
  return false;
}
