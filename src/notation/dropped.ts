/**
 * Popcorns told by their making: "5 dc in next lp, drop loop from hook, insert hook in first dc and draw
 * dropped loop through". The stitches before become one.
 */
import { type Reader, toOf } from './reader.ts';
import { lastWork, type Run } from './run.ts';
import { termWith } from './stitch-term.ts';
import { T } from './tokens.ts';

/** Whether such words stood here; the popcorn is put down then. */
export function readDropped(r: Reader, run: Run): boolean {
  const work = lastWork(run);
  const legs = work?.n?.values.length === 1 ? (work.n.values[0] ?? 0) : 0;
  if (!work || legs < 2 || work.stitch.shape !== 'one' || !work.place || work.until) return false;
  const from = r.base + (r.from[r.at] ?? 0);
  const words = DRAWN.exec(r.text.slice(from, from + LONGEST).replace(/\s/g, ' '))?.[0];
  if (!words) return false;
  while (r.kind[r.at] !== T.end && r.base + (r.to[r.at] ?? 0) <= from + words.length) r.at++;
  const stitch = termWith(work.stitch, { shape: 'popcorn', legs });
  run.out[run.out.length - 1] = { ...work, n: null, stitch, to: toOf(r) };
  return true;
}

/** Characters in which such words are told (the longest met had 110). */
const LONGEST = 160;

const DRAWN =
  /^drop (?:the )?(?:last )?(?:loop|lp|st(?:itch)?) (?:from|off) (?:the )?hook[,;]? (?:and )?insert (?:the )?hook (?:from front to back )?(?:in|into|through|under) [^,;.()]{2,40}?,? (?:and )?(?:pick up (?:the )?dropped (?:loop|lp|st) and )?(?:draw|pull) (?:it |(?:the )?(?:dropped )?(?:loop|lp|st(?:itch)?) )?through(?: (?:the )?(?:st(?:itch)?|loop|it))?(?:,? (?:and )?ch 1(?! ?sp)(?: to (?:close|fasten))?)?/i;
