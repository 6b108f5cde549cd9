/**
 * Rows marked as faulty of which no error speaks. One cause is told once: a wrong count upsets the rows
 * above it, and a maker who looks for what is wrong with these must know that nothing may be.
 */
import type { RowAccount } from '../../src/index.ts';
import { printableText, wrap } from '../../src/index.ts';
import type { Checked } from '../checked.ts';
import { tableLines } from './lines.ts';

type Told = Pick<Checked, 'rows' | 'sizes' | 'findings' | 'text'>;

/** The sentence under the table, wrapped; none where each faulty row has an error of its own. */
export function followers(checked: Told, width: number): readonly string[] {
  const rows = checked.rows.filter((row) => isFaulty(row) && !isTold(row, checked));
  const names = [
    ...new Set(tableLines(rows, checked.sizes, checked.text).map(({ label }) => label)),
  ];
  const [only] = names;
  if (only === undefined) return [];
  const are =
    names.length === 1
      ? 'is marked and has no error of its own. It may be right: it leans'
      : 'are marked and have no error of their own. They may be right: they lean';
  const sentence = `${few(names)} ${are} on a row that has one. Mend that first, then check again.`;
  return wrap('', printableText(sentence), width);
}

const isFaulty = ({ verdict }: RowAccount): boolean =>
  verdict === 'mismatch' || verdict === 'unread';

/** A finding that names the row, or stands at its words. */
function isTold(row: RowAccount, { findings }: Told): boolean {
  return findings.some(
    ({ rows, from }) => rows.includes(row.id) || (row.from <= from && from < row.to),
  );
}

/** The first of many. */
function few(names: readonly string[]): string {
  const some = names.slice(0, 4);
  const more = names.length - some.length;
  if (more > 0) return `${some.join(', ')} and ${more} more`;
  return some.length < 2 ? some.join('') : `${some.slice(0, -1).join(', ')} and ${some.at(-1)}`;
}
