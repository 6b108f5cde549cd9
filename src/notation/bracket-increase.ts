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
  if (!b.closed) return false;
  if (b.close - b.start === 2) return shapingAlone(r, run, b);
  if (b.close - b.start !== 3 || !isGlued(r, 1)) return false;
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

/** "5 sc, (inc), 6 sc": one of the list; but "2 sc in next st, (inc), 6 sc" only says what the two are. */
function shapingAlone(r: Reader, run: Run, b: Bracket): boolean {
  const form = formOf(r.word[b.start + 1] ?? 0);
  const isShaping = form?.shape === 'increase' || form?.shape === 'together';
  if (!isShaping || form.stem !== null || r.kind[b.start - 1] !== T.comma) return false;
  const last = run.out.at(-1);
  if (last?.kind !== 'work' || last.place !== null || r.kind[b.close + 1] !== T.comma) return false;
  if (last.stitch.shape !== 'one' || (last.n?.values[0] ?? 1) === 2) return false;
  leave(r, b);
  const span = { from: fromOf(r, b.start), to: toOf(r) };
  run.out.push({ ...plainWork(form, span), ...span });
  return true;
}

/** More than that in one place is a shell, which is named so. */
const MOST_IN_ONE = 4;
