/** Rows as worked, short enough for a case of one line. */
import { compile } from '../../../src/index.ts';

/** "Rnd 7 28 proven" of the rows whose label starts so, in the first size; of the last copy. */
export function worked(text: string, ...labels: readonly string[]): string[] {
  const { rows } = compile(text, { fixes: false });
  return labels.map((label) => {
    const row = rows.findLast((r) => r.label === label);
    return row ? `${row.label} ${row.made} ${row.verdict}` : `${label} none`;
  });
}

/** Codes of warnings and errors, with the line of each: "7 count-mismatch". */
export function complaints(text: string): string[] {
  return compile(text, { fixes: false })
    .findings.filter(({ severity }) => severity !== 'note')
    .map(({ code, from }) => `${text.slice(0, from).split('\n').length} ${code}`);
}

/** What was taken for granted, and why: "start-chain 3: counts (custom)". */
export function conventions(text: string): string[] {
  return compile(text, { fixes: false }).conventions.map(
    ({ what, reading, because }) => `${what}: ${reading} (${because})`,
  );
}

/** What each row makes, in order, in the first size. */
export const made = (text: string): number[] =>
  compile(text, { fixes: false }).rows.map((row) => row.made);
