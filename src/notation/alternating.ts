/** "Alternate fpdc and bpdc around", "alternating fp/bp dc": one of each, again and again. */
import { clauseEnds, fromOf, isWord, kindAt, type Reader, spelled, toOf } from './reader.ts';
import { repeatOf } from './repeat-step.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { termWith } from './stitch-term.ts';
import { toTheEnd } from './times.ts';
import { T } from './tokens.ts';
import type { WorkStep } from './tree.ts';
import { plainWork } from './work-draft.ts';

/** Whether such words stand here; the reader is left where it was if not. */
export function readAlternating(r: Reader, run: Run): boolean {
  const start = r.at++;
  const pair = readPair(r);
  if (pair && isWord(r, W.st)) r.at++;
  const round = isWord(r, W.around) || isWord(r, W.across);
  if (!pair || !(round ? clauseEnds(r, 1) || kindAt(r, 1) === T.open : clauseEnds(r))) {
    r.at = start;
    return false;
  }
  const span = { from: fromOf(r, start), to: toOf(r) };
  if (round) r.at++;
  const order = { times: toTheEnd(r), ending: null, order: span };
  run.out.push(repeatOf('', pair, order, { ...span, to: toOf(r) }));
  return true;
}

/** "fpdc and bpdc", "fp/bp dc" */
function readPair(r: Reader): WorkStep[] | null {
  if (kindAt(r) === T.word && /^[fb]p$/.test(spelled(r, r.at)) && kindAt(r, 1) === T.slash) {
    const start = r.at;
    const post = spelled(r, r.at) === 'fp' ? 'front' : 'back';
    r.at += 2;
    const second = readName(r);
    if (!second || second.stitch.post === null || second.stitch.post === post) return null;
    const span = { from: fromOf(r, start), to: second.to };
    return [plainWork(termWith(second.stitch, { post }), span), second];
  }
  const first = readName(r);
  if (!first || !(isWord(r, W.and) || kindAt(r) === T.slash)) return null;
  r.at++;
  const second = readName(r);
  return second ? [first, second] : null;
}

function readName(r: Reader): WorkStep | null {
  const from = fromOf(r, r.at);
  const stitch = readStitch(r);
  return stitch && plainWork(stitch, { from, to: toOf(r) });
}
