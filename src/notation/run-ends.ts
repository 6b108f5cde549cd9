/** Where a run of steps ends: by the sign that opened it. */

import { formOf, phrasesOf } from './dictionary.ts';
import { goesOnTo } from './goes-on.ts';
import { isWord, kindAt, type Reader, spelled, wordAt } from './reader.ts';
import { isRepeatOrder } from './repeat-order.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { STAR, starRole } from './star.ts';
import { goesOnInBracket } from './timed-list.ts';
import { T } from './tokens.ts';

export function runEnds(r: Reader, run: Run): boolean {
  const kind = kindAt(r);
  switch (run.end) {
    case 'text':
      return false;
    case 'bracket':
      return kind === T.close;
    case 'star':
      if (kind === T.close) return true;
      if (kind === T.star) return starRole(r, r.at) === STAR.close;
      if (kind === T.number) return timesAlone(r, run);
      if (kind !== T.word || run.out.length === 0) return false;
      return isRepeatOrder(r) || goesOnTo(r) > 0;
    case 'list':
      return (
        kind === T.close ||
        kind === T.semicolon ||
        kind === T.star ||
        (kind === T.stop && (run.out.length === 0 || !goesOnInBracket(r))) ||
        (run.out.length > 0 &&
          ((kind === T.open && !goesOnInBracket(r)) || (kind === T.word && isRepeatOrder(r))))
      );
    case 'ending':
      return endingEnds(r, run);
  }
}

/** "*3 tr in next sp, no gaps skipped. 11 times.": a number with a sentence of its own is the star's. */
const timesAlone = (r: Reader, run: Run): boolean =>
  isWord(r, W.times, 1) &&
  r.kind[r.at - 1] === T.stop &&
  run.out.length > 0 &&
  run.out.slice(run.sentence).every(({ kind }) => kind === 'remark');

/** The ending of a repeat goes to the full stop, to the join, or to the next order. */
function endingEnds(r: Reader, run: Run): boolean {
  const kind = kindAt(r);
  if (kind === T.stop || kind === T.close || kind === T.semicolon || kind === T.star) return true;
  if (kind === T.dash || kind === T.equals || kind === T.colon) return true;
  if (kind === T.open) {
    // "d trc (3 times over hook) in dc": how it is made stands between the stitch and its place.
    const close = r.partner[r.at] ?? -1;
    const counts = r.kind[r.at + 1] === T.number || isWord(r, W.total, 1);
    const tells = close > 0 && r.value[close - 2] === W.over && spelled(r, close - 1) === 'hook';
    return run.out.length > 0 && counts && !tells;
  }
  const k = kind === T.comma || isWord(r, W.and) ? 1 : 0;
  const sense = wordAt(r, k);
  if (run.out.length === 0) return false;
  if (sense === W.ch && isWord(r, W.turn, k + 2)) return true;
  if (kindAt(r, k) === T.number && isWord(r, W.ch, k + 1) && isWord(r, W.turn, k + 2)) return true;
  if (sense === W.join || sense === W.turn || sense === W.fasten || sense === W.repeat) return true;
  if (sense === W.on || sense === W.at || sense === W.of || sense === W.from) return true;
  return (
    formOf(sense)?.stem === 'ss' ||
    phrasesOf(sense)?.some((p) => formOf(p.sense)?.stem === 'ss') === true
  );
}
