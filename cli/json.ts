/**
 * The report for programs, version 1, as docs/check-json.md describes it: an array with one object
 * a file. Inner values are turned into this shape here and nowhere else.
 */
import {
  type ConventionAccount,
  type Finding,
  type LineStarts,
  placeAt,
  type RowAccount,
  type Span,
} from '../src/index.ts';
import type { CheckedFile } from './checked.ts';

/** Rises when a reader of the former shape would be misled; new keys alone do not count. */
const version = 1;

/** The object for one file, with a line for each row and finding so that two reports compare well. */
export function jsonOf(checked: CheckedFile): string {
  const { file, terms, sizes, lines, totals, notChecked } = checked;
  const report = {
    version,
    file,
    terms,
    sizes,
    conventions: checked.conventions.map((convention) => conventionOf(convention, lines)),
    rows: checked.rows.map((row) => rowOf(row, lines)),
    findings: checked.findings.map((finding) => findingOf(finding, lines)),
    totals: totals.map(
      ({ size, rows, proven, unstated, inPart, mismatched, unread, unchecked, stitches }) => ({
        size,
        rows,
        proven,
        unstated,
        inPart,
        mismatched,
        unread,
        unchecked,
        stitches,
      }),
    ),
    notChecked,
  };
  const entries = Object.entries(report).map(([key, value]) => `  "${key}": ${laidOut(value)}`);
  return `{\n${entries.join(',\n')}\n}`;
}

/** A list of objects with one a line; anything else on one. */
function laidOut(value: unknown): string {
  if (!Array.isArray(value) || typeof value[0] !== 'object') return JSON.stringify(value);
  return `[\n${value.map((item) => `    ${JSON.stringify(item)}`).join(',\n')}\n  ]`;
}

function conventionOf(convention: ConventionAccount, lines: LineStarts) {
  const { what, part, reading, alternatives, because, from } = convention;
  return { what, part, reading, alternatives, because, ...placeAt(lines, from) };
}

function rowOf(row: RowAccount, lines: LineStarts) {
  return {
    id: row.id,
    part: row.part,
    instance: row.instance,
    label: row.label,
    range: row.range,
    line: placeAt(lines, row.from).line,
    size: row.size,
    used: row.used,
    made: row.made,
    chains: row.chains,
    spaces: row.spaces.map(({ chains, n }) => ({ chains, n })),
    boxes: row.boxes,
    byKind: row.byKind,
    stated: row.stated.map(({ n, unit, compared }) => ({ n, unit, compared })),
    verdict: row.verdict,
  };
}

function findingOf(finding: Finding, lines: LineStarts) {
  const { code, severity, message, sum, rows, sizes } = finding;
  return {
    code,
    severity,
    ...rangeOf(finding, lines),
    message,
    sum,
    rows,
    sizes,
    labels: finding.labels.map((label) => ({ ...rangeOf(label, lines), text: label.text })),
    fixes: finding.fixes.map(({ title, edits }) => ({
      title,
      edits: edits.map((edit) => ({ ...rangeOf(edit, lines), insert: edit.insert })),
    })),
  };
}

/** Counted from 1, in UTF-16 units; the end is the first place behind the words. */
export function rangeOf({ from, to }: Span, lines: LineStarts) {
  const end = placeAt(lines, to);
  return { ...placeAt(lines, from), endLine: end.line, endColumn: end.column };
}
