/** How a repeat ends: "ending with sc in last st", "ending last rep at **", "omitting last ch 2". */

import { readPlaceAfterPreposition } from './place.ts';
import {
  clauseEnds,
  eatThe,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { markOf } from './star.ts';
import { readSpecialName } from './stitch.ts';
import { T } from './tokens.ts';
import type { Ending, Step } from './tree.ts';

/** The ending behind a repeat's order, or `null`, which leaves the reader where it was. */
export function readEnding(r: Reader): Ending | null {
  const start = r.at;
  while (kindAt(r) === T.comma || kindAt(r) === T.semicolon || isWord(r, W.and)) r.at++;
  // "…, repeat ** 4 times. Omit last sc. Join": the order goes on in a sentence of its own.
  if (kindAt(r) === T.stop && isWord(r, W.omit, 1) && isWord(r, W.last, 2)) r.at++;
  // "… around - end to corr"
  if (kindAt(r) === T.dash && (isWord(r, W.end, 1) || isWord(r, W.ending, 1))) r.at++;
  const ending = endingHere(r);
  if (!ending) r.at = start;
  return ending;
}

function endingHere(r: Reader): Ending | null {
  const start = r.at;
  // "Ending dc" that the pattern defines is a stitch.
  if (r.specials?.has(r.hash[start] ?? 0) && readSpecialName(r)) return null;
  r.at = start;
  if (isWord(r, W.omit)) return omission(r, start);
  const finish = isWord(r, W.fasten) && isWord(r, W.with, 1);
  if (!isWord(r, W.ending) && !isWord(r, W.end) && !finish) return null;
  r.at++;
  eatThe(r);
  // "ending row with sc in last st"
  if ((isWord(r, W.row) || isWord(r, W.round)) && isWord(r, W.with, 1)) r.at++;
  let last = false;
  if ((isWord(r, W.last) || isWord(r, W.final)) && isWord(r, W.repeat, 1)) {
    last = true;
    r.at += 2;
  } else if (isWord(r, W.last) && isWord(r, W.round, 1)) r.at += 2;
  if (isWord(r, W.at) && kindAt(r, 1) === T.star) {
    const mark = markOf(valueAt(r, 1));
    r.at += 2;
    if (isWord(r, W.on) || isWord(r, W.in)) eatLastRepeat(r);
    return { kind: 'at', mark, from: fromOf(r, start), to: toOf(r) };
  }
  if (isWord(r, W.to) && /^corr/.test(spelled(r, r.at + 1))) {
    const from = fromOf(r, r.at);
    r.at += 2;
    const words = { kind: 'remark', from, to: toOf(r) } as const;
    // "…, ending to correspond, ch 6, join": the last pass ends in that chain.
    const behind = r.at;
    if (kindAt(r) === T.comma && isWord(r, W.ch, 1)) {
      r.at++;
      const steps = r.run(r, 'ending');
      if (steps.length === 1 && steps[0]?.kind === 'chain')
        return { kind: 'with', steps, last, from: fromOf(r, start), to: toOf(r) };
    }
    r.at = behind;
    return { kind: 'with', steps: [words], last, from: fromOf(r, start), to: toOf(r) };
  }
  if (last && isWord(r, W.in)) {
    const behind = r.at;
    const place = readPlaceAfterPreposition(r);
    if (place && clauseEnds(r)) return { kind: 'in', place, from: fromOf(r, start), to: toOf(r) };
    r.at = behind;
  }
  if (isWord(r, W.with) || isWord(r, W.by) || isWord(r, W.in)) {
    if (!isWord(r, W.in)) r.at++;
  }
  const steps = r.run(r, 'ending');
  if (steps.length === 0 || (!last && isJoin(steps))) return null;
  return { kind: 'with', steps, last, from: fromOf(r, start), to: toOf(r) };
}

/** "…, ending with sl st in turning chain": the round's join, and no part of the last pass. */
function isJoin([step, more]: readonly Step[]): boolean {
  if (more || step?.kind !== 'work' || step.stitch.stem !== 'ss' || !step.place) return false;
  const { nouns, of } = step.place;
  return nouns[0]?.kind === 'start-chain' || of?.nouns[0]?.kind === 'start-chain';
}

function omission(r: Reader, start: number): Ending | null {
  r.at++;
  eatThe(r);
  if (isWord(r, W.last) || isWord(r, W.final)) r.at++;
  const steps = r.run(r, 'ending');
  if (steps.length === 0) return null;
  eatLastRepeat(r);
  return { kind: 'omit', steps, from: fromOf(r, start), to: toOf(r) };
}

/** "on last rep", "at end of last rep". */
function eatLastRepeat(r: Reader): void {
  const start = r.at;
  let k = 0;
  while (k < 6 && isLink(r, k)) k++;
  if (k > 0 && isWord(r, W.repeat, k)) r.at = start + k + 1;
}

const LINKS: SenseSet = new SenseSet([W.on, W.in, W.at, W.of, W.the, W.end, W.last, W.final]);

const isLink = (r: Reader, ahead: number): boolean => LINKS.has(wordAt(r, ahead));
