/** What a check came to, in a sentence or two. */
import type { Finding, RowAccount, TotalsAccount } from '../../src/index.ts';
import type { Checked, CheckedFile } from '../checked.ts';
import { sentenceFor, tellsCustom } from './sentences.ts';

/** "31 rows, all proven." or what became of them; a line a size where the sizes differ. */
export function rowsSummary({ totals }: Pick<Checked, 'totals'>): readonly string[] {
  const [first] = totals;
  if (first === undefined) return ['No row was worked.'];
  const told = (total: TotalsAccount, between = '') =>
    `${rows(total.rows)}${between}${outcome(total)}.`;
  if (totals.every((total) => told(total) === told(first))) {
    return [told(first, totals.length > 1 ? ` in each of ${totals.length} sizes` : '')];
  }
  return totals.map((total) => `Size ${total.size}, ${told(total)}`);
}

/** The same in one line, however many sizes differ. */
export function rowsInShort(checked: Pick<Checked, 'totals'>): string {
  const lines = rowsSummary(checked);
  const [line = ''] = lines;
  return lines.length === 1 ? line : rowsSummary({ totals: [addTotals(checked.totals)] }).join('');
}

/** The same over many files and sizes. */
export function addTotals(all: readonly TotalsAccount[]): TotalsAccount {
  const sum = (of: (totals: TotalsAccount) => number) =>
    all.reduce((so, totals) => so + of(totals), 0);
  return {
    size: '',
    rows: sum((totals) => totals.rows),
    proven: sum((totals) => totals.proven),
    unstated: sum((totals) => totals.unstated),
    inPart: sum((totals) => totals.inPart),
    mismatched: sum((totals) => totals.mismatched),
    unread: sum((totals) => totals.unread),
    unchecked: sum((totals) => totals.unchecked),
    stitches: sum((totals) => totals.stitches),
  };
}

/** "1 error, 2 warnings" or "nothing found". */
export function findingsSummary(findings: readonly Pick<Finding, 'severity'>[]): string {
  const counts = (['error', 'warning', 'note'] as const)
    .map((severity) => ({
      severity,
      n: findings.filter((one) => one.severity === severity).length,
    }))
    .filter(({ n }) => n > 0)
    .map(({ severity, n }) => `${n} ${severity}${n === 1 ? '' : 's'}`);
  return counts.length === 0 ? 'nothing found' : counts.join(', ');
}

/** Readings that no words of the pattern state, each once with the parts that it holds for. */
export function assumptions({
  conventions,
  rows: worked,
}: Pick<Checked, 'conventions' | 'rows'>): readonly string[] {
  const parts = new Map<string, Set<string>>();
  for (const { what, reading, part, because } of conventions) {
    const isTold = because === 'count' || (because === 'custom' && tellsCustom(what));
    if (!isTold) continue;
    const why = because === 'custom' ? 'by custom' : 'the counts ask for it';
    const key = `${sentenceFor(what, reading, coursesOf(part, worked))} (${why}`;
    parts.set(key, (parts.get(key) ?? new Set()).add(part));
  }
  return [...parts].map(([key, names]) => {
    const named = [...names].filter((name) => name !== '');
    return `${key}${named.length > 0 ? `; ${named.join(', ')}` : ''})`;
  });
}

/** "round" for a part whose rows are all labelled so, else "row". */
function coursesOf(part: string, worked: readonly RowAccount[]): 'row' | 'round' {
  const labels = worked.filter((row) => row.part === part && row.label !== '');
  return labels.length > 0 && labels.every(({ label }) => /^(?:rnd|round)/i.test(label))
    ? 'round'
    : 'row';
}

/** Not a row was found: nothing was read, and so nothing can be sound. */
export const isWithoutRows = ({ findings }: Pick<CheckedFile, 'findings'>): boolean =>
  findings.some(({ code }) => code === 'no-instructions');

/**
 * Exit status for a file: 0 if every row was read and worked and there is no error. Counts that are
 * not stated, and rows that could not be checked for want of a number, are no failure. A text without
 * rows is one, but for notes that lie in a folder beside the patterns.
 */
export function statusOf({ file, found, findings, rows: worked }: CheckedFile): 0 | 1 {
  const isNotes = found === 'in-folder' && !file.endsWith('.pattern.md');
  const fails =
    (isWithoutRows({ findings }) && !isNotes) ||
    findings.some(({ severity, code }) => severity === 'error' || code === 'not-worked') ||
    worked.some(({ verdict }) => verdict === 'mismatch' || verdict === 'unread');
  return fails ? 1 : 0;
}

function rows(n: number): string {
  return `${n} ${n === 1 ? 'row' : 'rows'}`;
}

function outcome(totals: TotalsAccount): string {
  const { rows: all, proven, unstated, inPart, mismatched, unread, unchecked } = totals;
  const omitted = all - proven - unstated - mismatched - unread - unchecked;
  const parts = [
    [proven, 'proven'],
    [unstated - inPart, 'without a stated count'],
    [inPart, 'proven in part'],
    [mismatched, 'with a count that differs'],
    [unread, 'not understood'],
    [unchecked, 'not checked'],
    [omitted, 'not in this size'],
  ] as const;
  const told = parts.filter(([n]) => n > 0);
  const [only] = told;
  if (only === undefined) return '';
  if (told.length === 1 && only[0] === all) return all === 1 ? `, ${only[1]}` : `, all ${only[1]}`;
  return `: ${told.map(([n, what]) => `${n} ${what}`).join(', ')}`;
}
