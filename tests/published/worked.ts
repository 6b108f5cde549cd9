/** A pattern worked by the program, as the checks of this folder look at it. */
import { expect } from 'vitest';
import { compile, type RowAccount } from '../../src/index.ts';

const HEAD = '---\ntitle: Trial piece\nterms: US\n---\n\n## Piece\n\n';

/** The rows of a piece written as paragraphs, with its faults as "code label". */
export function worked(...paragraphs: string[]): { rows: readonly RowAccount[]; faults: string[] } {
  const { rows, findings } = compile(`${HEAD}${paragraphs.join('\n\n')}\n`, { fixes: false });
  const faults = findings
    .filter(({ severity }) => severity !== 'note')
    .map(({ code, from }) => `${code} ${labelAt(rows, from)}`);
  return { rows, faults };
}

const labelAt = (rows: readonly RowAccount[], at: number): string =>
  rows.find(({ from, to }) => from <= at && at < to)?.label ?? '';

/** Every row proven and nothing found; gives the rows. */
export function proven(...paragraphs: string[]): readonly RowAccount[] {
  const { rows, faults } = worked(...paragraphs);
  expect(faults, paragraphs.join('\n')).toEqual([]);
  const open = rows.filter(({ verdict }) => verdict !== 'proven').map(({ label }) => label);
  expect(open, paragraphs.join('\n')).toEqual([]);
  return rows;
}

export const made = (rows: readonly RowAccount[]): number[] => rows.map((row) => row.made);
