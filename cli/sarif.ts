/**
 * The report in SARIF 2.1.0 (OASIS standard "Static Analysis Results Interchange Format"), which code
 * hosts and editors show beside the lines. Columns count UTF-16 units, which SARIF lets one say.
 */
import { pathToFileURL } from 'node:url';
import { catalogue, type Finding, type LineStarts, type Span } from '../src/index.ts';
import type { CheckedFile } from './checked.ts';
import { rangeOf } from './json.ts';

/** The findings of one file, as SARIF results. */
export function sarifResults(checked: CheckedFile): readonly object[] {
  const uri = uriOf(checked.file);
  return checked.findings.map((finding) => resultOf(finding, uri, checked.lines));
}

/** The whole log around the results of all files. */
export function sarifLog(results: readonly object[], toolVersion: string): string {
  const driver = {
    name: 'Loopwright',
    semanticVersion: toolVersion,
    rules: catalogue.map(({ code, severity, title }) => ({
      id: code,
      shortDescription: { text: plain(title) },
      defaultConfiguration: { level: severity },
    })),
  };
  const log = {
    $schema:
      'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [{ tool: { driver }, columnKind: 'utf16CodeUnits', results }],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function resultOf(finding: Finding, uri: string, lines: LineStarts) {
  const location = (span: Span) => ({
    physicalLocation: { artifactLocation: { uri }, region: regionOf(span, lines) },
  });
  return {
    ruleId: finding.code,
    ruleIndex: catalogue.findIndex(({ code }) => code === finding.code),
    level: finding.severity,
    message: { text: [finding.message, finding.sum].filter((part) => part !== '').join(' ') },
    locations: [location(finding)],
    ...(finding.labels.length === 0
      ? {}
      : {
          relatedLocations: finding.labels.map((label, id) => ({
            id,
            ...location(label),
            ...(label.text === '' ? {} : { message: { text: label.text } }),
          })),
        }),
    ...(finding.fixes.length === 0 ? {} : { fixes: fixesOf(finding, uri, lines) }),
  };
}

function fixesOf(finding: Finding, uri: string, lines: LineStarts) {
  return finding.fixes.map(({ title, edits }) => ({
    description: { text: title },
    artifactChanges: [
      {
        artifactLocation: { uri },
        replacements: edits.map((edit) => ({
          deletedRegion: regionOf(edit, lines),
          insertedContent: { text: edit.insert },
        })),
      },
    ],
  }));
}

function regionOf(span: Span, lines: LineStarts) {
  const { line, column, endLine, endColumn } = rangeOf(span, lines);
  return { startLine: line, startColumn: column, endLine, endColumn };
}

/** A path as a URI reference: absolute ones as file URLs, others relative with each name encoded. */
function uriOf(file: string): string {
  if (file === '-') return 'stdin';
  const path = file.replaceAll('\\', '/');
  if (/^([a-z]:)?\//i.test(path)) return pathToFileURL(file).href;
  return path.split('/').map(encodeURIComponent).join('/');
}

/** A title of the catalogue with the names of its places in angle brackets. */
function plain(title: string): string {
  return title
    .replace(/\{\w+\|[^|}]*\|([^}]*)\}/g, '$1')
    .replace(/\{(\w+): \[(\w+)\]\}/g, '<$1> <$2>')
    .replace(/\{(\w+): ([a-z]+)\}/g, '<$1> $2')
    .replace(/\{(\w+)(?: #)?\}/g, '<$1>');
}
