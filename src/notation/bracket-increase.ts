/** Brackets around a number and a stitch that stand in a list: several stitches in one place. */
import { type Bracket, leave } from './bracket-span.ts';
import { formOf } from './dictionary.ts';
import { fromOf, isGlued, type Reader, toOf } from './reader.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import { plainWork } from './work-draft.ts';

/** "1 sc, (2sc) repeat 6 times [18]": of a list, several in one place; the count stands behind. */
export function increaseBracket(r: Reader, run: Run, b: Bracket): boolean {
  if (!b.closed || b.close - b.start !== 3 || !isGlued(r, 1)) return false;
  const n = r.kind[b.start + 1] === T.number ? (r.value[b.start + 1] ?? 0) : 0;
  const stem = formOf(r.word[b.start + 2] ?? 0);
  if (n < 2 || n > MOST_IN_ONE || stem?.shape !== 'one' || stem.stem === null) return false;
  const listed =
    run.out.length === 0 || r.kind[b.start - 1] === T.comma || r.kind[b.start - 1] === T.star;
  const after = r.kind[b.close + 1];
  const more = after === T.comma && r.kind[b.close + 2] === T.number;
  const again = r.word[b.close + 1] === W.repeat || r.word[b.close + 1] === W.x || after === T.star;
  const counted = after === T.open && r.kind[b.close + 2] === T.number;
  if (!listed || !(more || again || counted)) return false;
  r.at = b.start + 2;
  const stitch = readStitch(r);
  if (!stitch || r.at !== b.close) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  const span = { from: fromOf(r, b.start), to: toOf(r) };
  const legs = n === 2 ? null : n;
  run.out.push({ ...plainWork(termWith(stitch, { shape: 'increase', legs }), span), ...span });
  return true;
}

/** More than that in one place is a shell, which is named so. */
const MOST_IN_ONE = 4;
