/**
 * Rows that do not come out, and of which it is not known what they stand on: they are left open instead
 * of being judged. Asked when all readings have been tried, so that no reading is chosen by it.
 */
import type { RowRecord } from './fabric.ts';
import { MISFITS } from './facts.ts';

/** The rows of one size in order; those that cannot be judged are `unchecked`. */
export const leftOpen = (rows: readonly RowRecord[]): RowRecord[] =>
  rows.map((row, i) => {
    const before = rows[i - 1];
    const beneath = before?.partIndex === row.partIndex && before.instance === row.instance;
    if (row.verdict !== 'mismatch' || !before || !beneath) return row;
    if (!standsOnNothing(row, before) && !missesUnread(row, before)) return row;
    const facts = row.facts.filter(({ kind }) => !MISFITS.has(kind));
    return { ...row, facts, verdict: 'unchecked' };
  });

/**
 * Behind a row of slip stitches and chains, as legs and petals are made, a row that asks for stitches is
 * worked into an earlier one.
 */
const standsOnNothing = (row: RowRecord, { tally, nodes }: RowRecord): boolean =>
  row.available === 0 && row.used === 0 && tally.stitches === 0 && nodes.to > nodes.from;

/** What a row makes that was not understood is known by its count at most; a walk that misses it proves nothing. */
const missesUnread = ({ facts, used, available }: RowRecord, before: RowRecord): boolean =>
  before.verdict === 'unread' && (used !== available || facts.some(({ kind }) => WALKS.has(kind)));

const WALKS: ReadonlySet<string> = new Set(['overrun', 'left', 'remainder', 'no-place']);
