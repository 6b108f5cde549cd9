/**
 * Rows that do not come out and of which no finding speaks, nor of any row before them: they stand behind a gap
 * in the numbers, or on what was not understood, and are no fault of anybody's. They were not checked.
 */
import type { Cloth, Fabric, RowRecord } from '../fabric/index.ts';
import type { Finding } from '../finding/index.ts';

/** The fabric with such rows told as `unchecked`; the same fabric where there are none. */
export function unaccused(fabric: Fabric, findings: readonly Finding[]): Fabric {
  const accusing = findings.filter(
    ({ severity, code }) => severity !== 'note' && !OF_NUMBERS.has(code),
  );
  const cloths = fabric.cloths.map((cloth) => clothWith(cloth, accusing));
  return cloths.some((cloth, i) => cloth !== fabric.cloths[i]) ? { ...fabric, cloths } : fabric;
}

/** What is said of the numbers of rows says nothing of their work. */
const OF_NUMBERS: ReadonlySet<string> = new Set(['row-missing', 'row-doubled', 'row-order']);

function clothWith(cloth: Cloth, accusing: readonly Finding[]): Cloth {
  // From the first row that is accused on, those behind it may lean on it.
  const first = cloth.rows.findIndex((row) => accusing.some((finding) => speaksOf(finding, row)));
  const end = first < 0 ? cloth.rows.length : first;
  const isOpen = (row: RowRecord, i: number): boolean => i < end && row.verdict === 'mismatch';
  if (!cloth.rows.some(isOpen)) return cloth;
  const rows = cloth.rows.map((row, i) =>
    isOpen(row, i) ? { ...row, verdict: 'unchecked' as const } : row,
  );
  return { ...cloth, rows };
}

const speaksOf = ({ rows, from }: Finding, row: RowRecord): boolean =>
  rows.includes(row.id) || (row.from <= from && from < row.to);
