/** The report for people: what was found, the table of rounds, what was taken for granted. */
import {
  catalogue,
  formatFinding,
  type Paint,
  printableText,
  type Severity,
  type TotalsAccount,
  wrap,
} from '../../src/index.ts';
import type { CheckedFile } from '../checked.ts';
import { followers } from './followers.ts';
import {
  addTotals,
  assumptions,
  findingsSummary,
  rowsInShort,
  rowsSummary,
  statusOf,
} from './summary.ts';
import { table } from './table.ts';

export interface ReportLayout {
  readonly width: number;
  readonly paint: Paint;
  readonly color: boolean;
  readonly table: 'shown' | 'left-out';
}

/** The report on a file that was checked by itself. */
export function report(checked: CheckedFile, layout: ReportLayout): string {
  const { paint } = layout;
  const sections = [
    [head(checked, paint)],
    ...findings(checked, layout),
    rounds(checked, layout),
    assumed(checked, layout),
    notChecked(checked, layout),
    [...rowsSummary(checked).slice(0, -1), verdict(checked, rowsSummary(checked).at(-1), paint)],
  ];
  return `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

/** The report on one of many files. `line` says all where there is nothing to tell beyond it. */
export interface ShortReport {
  readonly line: string;
  readonly rest: string;
}

export function shortReport(checked: CheckedFile, layout: ReportLayout): ShortReport {
  const { paint } = layout;
  const line = `${paint('strong', printableText(checked.file))}  ${verdict(checked, rowsInShort(checked), paint)}`;
  const told = [...findings(checked, layout), rounds(checked, layout), notChecked(checked, layout)];
  const rest = told.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return { line, rest: rest.join('\n\n') };
}

/** What is kept of a file once its report is written. */
export interface Outcome {
  readonly status: 0 | 1;
  readonly findings: readonly { readonly severity: Severity }[];
  readonly totals: readonly TotalsAccount[];
}

/** The last lines of a report on many files; `faults`: files of which there is no outcome. */
export function closing(outcomes: readonly Outcome[], faults: number, paint: Paint): string {
  const bad = outcomes.filter(({ status }) => status !== 0).length;
  const good = outcomes.length - bad;
  const files = [
    ...(good > 0
      ? [bad + faults === 0 ? 'all come out' : `${good} ${good === 1 ? 'comes' : 'come'} out`]
      : []),
    ...(bad > 0
      ? [good === 0 && faults === 0 ? 'none comes out' : `${bad} ${notComing(bad, good)}`]
      : []),
    ...(faults > 0 ? [`${faults} could not be checked`] : []),
  ];
  const totals = [addTotals(outcomes.flatMap((outcome) => outcome.totals))];
  const found = findingsSummary(outcomes.flatMap((outcome) => outcome.findings));
  const first = `${outcomes.length + faults} files: ${files.join(', ')}.`;
  const ink = bad + faults === 0 ? 'strong' : 'error';
  return `${paint(ink, first)} ${rowsSummary({ totals }).join(' ')} ${sentence(found)}\n`;
}

/** "does not", behind "3 come out"; alone the verb is told. */
function notComing(bad: number, good: number): string {
  return `${bad === 1 ? 'does' : 'do'} not${good === 0 ? ' come out' : ''}`;
}

function head({ file, terms, sizes }: CheckedFile, paint: Paint): string {
  const named = sizes.filter((size) => size !== '');
  const about = [`${terms} terms`, ...(named.length > 1 ? [`sizes ${named.join(', ')}`] : [])];
  return `${paint('strong', printableText(file))}  ${printableText(about.join(', '))}`;
}

function findings(checked: CheckedFile, { width, color }: ReportLayout): readonly string[][] {
  const advised = new Set<string>();
  return checked.findings.map((finding) => {
    const lines = [formatFinding(finding, checked, { width, color })];
    const advice = catalogue.find(({ code }) => code === finding.code)?.advice;
    // Where a change was tried and holds, or the same was said above, nothing more is needed.
    if (advice === undefined || finding.fixes.length > 0 || advised.has(finding.code)) return lines;
    advised.add(finding.code);
    return [...lines, ...wrap('  To do: ', advice, width)];
  });
}

function rounds(checked: CheckedFile, layout: ReportLayout): readonly string[] {
  if (layout.table === 'left-out') return [];
  const { width, paint } = layout;
  const { rows, sizes, text } = checked;
  const led = followers(checked, width);
  return [...table(rows, sizes, { width, paint, text }), ...(led.length > 0 ? ['', ...led] : [])];
}

function assumed(checked: CheckedFile, { width, paint }: ReportLayout): readonly string[] {
  const lines = assumptions(checked);
  if (lines.length === 0) return [];
  const title = 'Taken for granted. A sentence among the notes would state it:';
  return [paint('strong', title), ...lines.flatMap((line) => wrap('  - ', line, width))];
}

function notChecked(checked: CheckedFile, { width, paint }: ReportLayout): readonly string[] {
  if (checked.notChecked.length === 0) return [];
  const lines = checked.notChecked.flatMap((line) => wrap('  - ', line, width));
  return [paint('strong', 'Not checked:'), ...lines];
}

/** Rows first, for they are what is proven; then what was found. */
function verdict(checked: CheckedFile, rows: string | undefined, paint: Paint): string {
  const found = findingsSummary(checked.findings);
  return paint(statusOf(checked) === 0 ? 'strong' : 'error', `${rows ?? ''} ${sentence(found)}`);
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
