/** What stands around a row that is weighed: the rows beneath and behind it, and how well they are known. */
import type { Part } from '../manuscript/index.ts';
import type { Span } from '../source/index.ts';
import type { RowRecord } from './fabric.ts';
import { MISFITS } from './facts.ts';
import { isPlainlySaid } from './plainly-said.ts';
import type { Asked } from './readings.ts';
import type { Task } from './task.ts';
import type { Around } from './weigh.ts';

/** The part as far as it is worked. */
interface Worked {
  readonly rows: readonly RowRecord[];
  readonly part: Part;
  /** Parts worked before, in order, by their names in small letters. */
  readonly otherParts: ReadonlyMap<string, unknown>;
  readonly text: string;
}

/** The same part worked before in the same readings. */
interface Former {
  readonly rows: readonly RowRecord[];
  readonly asked: ReadonlyMap<string, Asked>;
  readonly carried: Around['carried'];
}

/** Rows of two runs in the same readings stand at the same places of their lists. */
export function around(run: Worked, former: Former, task: Task): Around {
  const { rows, part, otherParts, text } = run;
  const beneath = rows.findLast(isOfThisSize) ?? null;
  const isAsked = [...former.asked.values()].some(
    ({ from }) => beneath !== null && beneath.from <= from && from < beneath.to,
  );
  return {
    beneath,
    isSure: beneath?.verdict === 'proven' && !isAsked,
    isKnown: isKnown(run),
    behind: former.rows.slice(rows.length + 1).find(isOfThisSize) ?? null,
    carried: former.carried,
    goesBack: beneath !== null && (goesBack(beneath, task, part) || goesAlong(beneath, task, part)),
    hasLabels: part.instructions.some(({ instruction }) => instruction.label !== null),
    pieceBefore: [...otherParts.keys()].at(-1) ?? '',
    text,
  };
}

/** "For short legs, work rounds 10 to 12 so: Round 10: …" behind round 13: on round 9. */
function goesBack(beneath: RowRecord, task: Task, part: Part): boolean {
  const own = part.instructions[task.index]?.instruction;
  const former = part.instructions[beneath.instruction]?.instruction.label;
  const first = task.number;
  const last = beneath.range ? beneath.range.to : beneath.number;
  // "Rep rows 2-4" goes back in another way.
  const isNew = task.asks.steps === task.instruction.steps && beneath.instruction < task.index;
  if (!isNew || first === null || last === null || first < 2 || !own) return false;
  // "Row 31 (second side): Skip next 16 unworked sts of Row 30": it says on what it stands.
  if (own.steps.some((step) => step.kind === 'skip' && step.place.row !== null)) return false;
  // "Round (left hand) 15" behind "Round (right hand) 15".
  return first < last || (first === last && own.label?.text !== former?.text);
}

/** "Round 1: sc around the edge (84)" above flat rows that were fastened off: along their sides, not their top. */
function goesAlong(beneath: RowRecord, task: Task, part: Part): boolean {
  const { instructions } = part;
  if (instructions[task.index]?.instruction.label?.word !== 'round') return false;
  let isCut = false;
  for (let i = task.index - 1; i >= 0; i--) {
    const { label, steps } = instructions[i]?.instruction ?? { label: null, steps: [] };
    isCut ||= i >= beneath.instruction && steps.some((s) => s.kind === 'fasten-off' && !s.not);
    if (label !== null) return isCut && label.word === 'row';
  }
  return false;
}

const isOfThisSize = ({ verdict }: RowRecord): boolean => verdict !== 'omitted';

/**
 * Whether the stitches that are at hand are known: since the last proven row, or the part's beginning,
 * rows were said plainly and came out, though they state no count (counts may stand only where they
 * change, common practice).
 */
function isKnown({ rows, part, text }: Worked): boolean {
  for (let i = rows.length - 1; i >= 0 && rows[i]?.verdict !== 'proven'; i--) {
    const row = rows[i];
    if (row?.verdict === 'omitted') continue;
    const placed = part.instructions[row?.instruction ?? -1];
    if (!row || !placed) return false;
    const isCounted = row.verdict === 'unchecked' && isAsStated(row);
    if (row.verdict !== 'unstated' && !isCounted) return false;
    const { from, instruction } = placed;
    const wordsOf = (step: Span): string => text.slice(from + step.from, from + step.to);
    // "Rep row 2" and "work even for 4 rows" are worked in words that were plain before.
    const own = instruction.steps.filter(({ kind }) => kind !== 'rows-again' && kind !== 'even');
    if (!isPlainlySaid(own, wordsOf)) return false;
    if (isCounted) return true;
  }
  return true;
}

/** Not checked, since what lies beneath is not known; but it made what it states, and nothing else. */
const isAsStated = ({ stated, tally, facts }: RowRecord): boolean =>
  stated.length === 1 &&
  stated[0]?.n === tally.stitches &&
  tally.chains === 0 &&
  !facts.some(({ kind }) => kind === 'not-followed' || MISFITS.has(kind));
