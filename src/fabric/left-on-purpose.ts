/**
 * Stitches that a row leaves without a word, and that the row behind it shows to be left on purpose: a
 * neckline, an armhole, the first of two fronts (common practice).
 */
import type { RowRecord } from './fabric.ts';
import { MISFITS } from './facts.ts';

/** Fewer stitches left over are more likely a slip. */
const FEWEST = 3;

/**
 * The row before the last one without its fault, if it states no count, leaves several stitches, and
 * the last row works over all that it made and states just that many; else `null`. A row that states
 * its count is so too if it is the first of several that turn, in the same words. `turns`: the last row
 * does.
 */
export function leftOnPurpose(rows: readonly RowRecord[], turns: boolean): RowRecord | null {
  const row = rows.at(-2);
  const next = rows.at(-1);
  if (row?.verdict !== 'mismatch') return null;
  const opened = opensRound(rows, turns);
  if (opened) return opened;
  if (next?.verdict !== 'proven' || next.partIndex !== row.partIndex) return null;
  const narrows = turns && narrowsForSeveral(row, next);
  if (!narrows && (row.stated.length > 0 || row.ring)) return null;
  const faults = row.facts.filter(({ kind }) => MISFITS.has(kind));
  const [left] = faults;
  if (faults.length !== 1 || left?.kind !== 'left' || left.left < FEWEST) return null;
  const { stitches } = row.tally;
  const shown =
    next.used === stitches &&
    next.tally.stitches === stitches &&
    next.stated.some(({ n, compared }) => compared && n === stitches);
  if (!shown) return null;
  return {
    ...row,
    verdict: narrows ? 'proven' : 'unstated',
    facts: row.facts.filter((fact) => fact !== left),
  };
}

/**
 * "Row 1: turn, sc in 40 sts" on a round of 42, and "Row 2: ch 1, turn, sc in each st": the rows of a cosy,
 * open at the handle.
 */
function opensRound(rows: readonly RowRecord[], turns: boolean): RowRecord | null {
  const row = rows.at(-2);
  const next = rows.at(-1);
  if (!row?.ring || row.stated.length > 0 || next?.partIndex !== row.partIndex) return null;
  // The rounds before, where they are of the same part, went on in one direction; from here each row turns.
  if (!turns || row.side === next.side) return null;
  const [earlier, round] = rows.length < 4 ? [] : rows.slice(-4);
  if (round && (round.side === row.side || round.side !== earlier?.side)) return null;
  if (!round && rows.length > 2) return null;
  if (next.verdict !== 'proven' && next.verdict !== 'unstated') return null;
  const faults = row.facts.filter(({ kind }) => MISFITS.has(kind));
  const [left] = faults;
  if (faults.length !== 1 || left?.kind !== 'left' || next.used !== row.tally.stitches) return null;
  return { ...row, verdict: 'unstated', facts: row.facts.filter((fact) => fact !== left) };
}

/** "Rows 11-15: Turn, ch 2, dc in first 25 sts (25 sts)": the same count for all, behind a turn. */
const narrowsForSeveral = (row: RowRecord, next: RowRecord): boolean =>
  row.range?.nth === 1 &&
  next.instruction === row.instruction &&
  next.instance === row.instance &&
  row.stated.length > 0 &&
  row.stated.every(({ n, compared }) => compared && n === row.tally.stitches);
