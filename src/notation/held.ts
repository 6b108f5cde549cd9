/**
 * Clusters told by their making: "holding back on hook the last loop of each tr make 3 tr in next
 * sp, thread over and draw through all loops on hook", and the same words behind the stitches.
 */

import { formOf, mayBeStitch } from './dictionary.ts';
import { eatWord, fromOf, isWord, kindAt, type Reader, spelled, toOf, wordAt } from './reader.ts';
import { lastWork, type Run } from './run.ts';
import { W } from './senses.ts';
import { termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { Numbers, Place, Step, WorkStep } from './tree.ts';
import { readWork } from './work.ts';

/** Whether such words stood here; the cluster is put down then. */
export function readHeld(r: Reader, run: Run): boolean {
  if (kindAt(r) !== T.word || !/^(hold|keep|leav|retain)(ing|e)?$/.test(spelled(r, r.at)))
    return false;
  const start = r.at;
  if (!lastLoop(r)) {
    r.at = start;
    return false;
  }
  const before =
    r.kind[start - 1] === T.word || r.kind[start - 1] === T.comma ? lastWork(run) : null;
  const works: WorkStep[] = [];
  for (let guard = 0; guard < 8; guard++) {
    const work = readWork(r);
    if (!work) break;
    works.push(work);
    const comma = kindAt(r) === T.comma && isWord(r, W.and, 1);
    if (comma) r.at++;
    if (isWord(r, W.and) && mayWork(r)) r.at++;
  }
  drawThrough(r);
  completes(r);
  if (works.length > 0) {
    run.out.push(clustered(works, fromOf(r, start), toOf(r)));
    return true;
  }
  if (!before) {
    r.at = start;
    return false;
  }
  run.out[run.out.length - 1] = clustered([before], before.from, toOf(r));
  return true;
}

const mayWork = (r: Reader): boolean => kindAt(r, 1) === T.number || mayBeStitch(wordAt(r, 1));

/** "(on hook) the last loop of each tr (on hook)", up to the verb or the stitch. */
function lastLoop(r: Reader): boolean {
  let said = false;
  for (let guard = 0; guard < 16; guard++) {
    r.at++;
    if (isWord(r, W.loop)) said = true;
    if (isWord(r, W.each)) {
      r.at++;
      if (isWord(r, W.of)) r.at++;
      const stitch = readWork(r);
      if (!stitch && kindAt(r) !== T.word) r.at--;
      else if (stitch) r.at--;
      continue;
    }
    if (!said && kindAt(r) !== T.word) return false;
    if (said && !isHookWord(r)) break;
  }
  if (kindAt(r) === T.comma && said && kindAt(r, 1) !== T.end) r.at++;
  if (eatWord(r, W.work)) return said;
  return said;
}

const isHookWord = (r: Reader): boolean =>
  isWord(r, W.loop) ||
  isWord(r, W.of) ||
  isWord(r, W.on) ||
  isWord(r, W.hook) ||
  isWord(r, W.the) ||
  isWord(r, W.last) ||
  isWord(r, W.each) ||
  isWord(r, W.st) ||
  isWord(r, W.back);

/** "thread over and draw through all loops on hook", "yo and pull through all 4 loops at one time". */
function drawThrough(r: Reader): void {
  const start = r.at;
  let drawn = false;
  for (let guard = 0; guard < 24; guard++) {
    const kind = kindAt(r);
    if (kind === T.comma || kind === T.number) r.at++;
    else if (kind !== T.word) break;
    else if (drawn && isWord(r, W.loop)) {
      r.at++;
      loopsBehind(r);
      return;
    } else {
      drawn ||= isWord(r, W.draw) || isWord(r, W.off) || isWord(r, W.through);
      r.at++;
    }
  }
  r.at = start;
}

/** "; complete cluster as before", "and complete a cluster": the drawing through, told before. */
function completes(r: Reader): void {
  let k = kindAt(r) === T.semicolon || kindAt(r) === T.comma ? 1 : 0;
  if (isWord(r, W.and, k)) k++;
  if (kindAt(r, k) !== T.word || spelled(r, r.at + k) !== 'complete') return;
  k++;
  if (isWord(r, W.a, k) || isWord(r, W.the, k)) k++;
  if (kindAt(r, k) !== T.word || !/^clusters?$/.test(spelled(r, r.at + k))) return;
  k++;
  r.at += isWord(r, W.as, k) && isWord(r, W.before, k + 1) ? k + 2 : k;
}

/** "on hook", "at one time", "together". */
function loopsBehind(r: Reader): void {
  if (isWord(r, W.on)) r.at++;
  if (isWord(r, W.the)) r.at++;
  if (isWord(r, W.hook)) r.at++;
  if (isWord(r, W.at) && kindAt(r, 1) === T.number) r.at += 3;
  else if (kindAt(r) === T.word && /^(together|once)$/.test(spelled(r, r.at))) r.at++;
}

/** "(dc in next 3 dc) made into a cluster", "… a Cluster-dec": what the bracket holds is one stitch. */
export function madeIntoCluster(r: Reader, steps: readonly Step[], from: number): WorkStep | null {
  const works = steps.filter((step) => step.kind === 'work');
  if (!isWord(r, W.made) || !isWord(r, W.in, 1) || works.length < steps.length) return null;
  const k = isWord(r, W.a, 2) ? 3 : 2;
  if (formOf(wordAt(r, k))?.shape !== 'cluster') return null;
  r.at += k + 1;
  const dec = kindAt(r) === T.dash && formOf(wordAt(r, 1))?.shape === 'together';
  if (dec) r.at += 2;
  return works.length > 0 ? clustered(works, from, toOf(r)) : null;
}

function clustered(works: readonly WorkStep[], from: number, to: number): WorkStep {
  const [first] = works as [WorkStep];
  const legs = works.reduce((sum, work) => sum + legsOf(work), 0);
  const places = works.map((work) => work.place).filter((place): place is Place => place !== null);
  return {
    ...first,
    n: null,
    stitch: termWith(first.stitch, { shape: 'cluster', legs }),
    place:
      first.place?.n && places.length === 1 ? { ...first.place, each: false } : (places[0] ?? null),
    alsoIn: places.slice(1),
    from,
    to,
  };
}

/** "2 tr in next sp" has two legs, "tr in next 5 tr" five. */
function legsOf(work: WorkStep): number {
  // "Holding back the last loop of each, make a 3-tr cluster": told twice.
  if (work.stitch.legs !== null && work.stitch.shape !== 'one') return work.stitch.legs;
  const n = one(work.n);
  const places = one(work.place?.n ?? null);
  return n === places ? n : n * places;
}

const one = (n: Numbers | null): number => n?.values[0] ?? 1;
