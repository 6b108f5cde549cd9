/**
 * The inside of a chart block: the mesh, the legend, the grid.
 *
 *     mesh: dc, ch 1
 *     . open box
 *     # filled box
 *
 *     #..#
 *     ####
 */
import {
  chartEmpty,
  chartPair,
  chartRowsDiffer,
  chartSignUnknown,
  type Finding,
  type Outcome,
} from '../finding/index.ts';
import type { Span } from '../source/index.ts';
import type { ChartBlock } from './block.ts';
import { lineAt } from './fences.ts';
import type { Cell, Chart } from './manuscript.ts';

/** Rows of one width for every chart in the trade; the cap keeps faulty files from flooding. */
const MOST_LABELS = 8;

export function readChart(text: string, block: ChartBlock): Outcome<Chart> {
  const lines = innerLines(text, block);
  const legend = new Map<string, Cell>();
  let mesh: Chart['mesh'] = null;
  const rowSpans: Span[] = [];
  for (const line of lines) {
    const words = text.slice(line.from, line.to);
    const entry = legendEntry(words);
    if (entry) legend.set(entry.sign, entry.cell);
    else if (/^mesh\s*:/i.test(words)) mesh = meshOf(words) ?? mesh;
    else rowSpans.push(line);
  }
  const rows = rowSpans.map(({ from, to }) =>
    [...text.slice(from, to)].map((sign): Cell => legend.get(sign) ?? 'none'),
  );
  const name = block.name;
  const span = { from: block.from, to: block.to };
  const findings = [
    ...(rows.length === 0 ? [chartEmpty(openingLine(text, block), { chart: said(name) })] : []),
    ...rowFaults(name, rows, rowSpans),
    ...signFaults(text, name, legend, rowSpans),
    ...pairFaults(name, rows, rowSpans),
  ];
  const signsKnown = rowSpans.every(({ from, to }) =>
    [...text.slice(from, to)].every((sign) => legend.has(sign)),
  );
  return { value: { name, ...span, mesh, rows, rowSpans, signsKnown }, findings };
}

/** Lacets and bars that do not come in pairs: once, at the lowest such row. */
function pairFaults(
  name: string,
  rows: readonly (readonly Cell[])[],
  spans: readonly Span[],
): Finding[] {
  const odd = rows.findLastIndex((row) => oddRun(row) !== null);
  const run = odd < 0 ? null : oddRun(rows[odd] ?? []);
  if (!run) return [];
  return [
    chartPair(spans[odd] as Span, { chart: said(name), chartRow: rows.length - odd, ...run }),
  ];
}

/** The first run of lacets or bars that does not come in pairs. */
function oddRun(row: readonly Cell[]): { kind: string; has: number } | null {
  for (let from = 0; from < row.length; ) {
    const kind = row[from] ?? 'none';
    let to = from;
    while (row[to] === kind) to++;
    if ((kind === 'lacet' || kind === 'bar') && (to - from) % 2 === 1)
      return { kind, has: to - from };
    from = Math.max(to, from + 1);
  }
  return null;
}

/** How a chart is spoken of. */
const said = (name: string): string => (name === '' ? 'the chart' : `chart ${name}`);

function openingLine(text: string, block: ChartBlock): Span {
  return { from: block.from, to: lineAt(text, block.from).to };
}

/** Lines with ink, trimmed: an indented block means the same. */
function innerLines(text: string, { innerFrom, innerTo }: ChartBlock): Span[] {
  const lines: Span[] = [];
  let at = innerFrom;
  while (at < innerTo) {
    const line = lineAt(text, at);
    let { from } = line;
    let to = Math.min(line.to, innerTo);
    while (from < to && text.charCodeAt(from) <= 32) from++;
    while (to > from && text.charCodeAt(to - 1) <= 32) to--;
    if (from < to) lines.push({ from, to });
    at = line.next;
  }
  return lines;
}

const BOXES: readonly (readonly [Cell, RegExp])[] = [
  ['open', /^(?:open|empty|sp(?:ace)?s?)\b/i],
  ['filled', /^(?:filled|solid|closed|bl(?:oc)?ks?)\b/i],
  ['lacet', /^lacets?\b/i],
  ['bar', /^bars?\b/i],
  ['none', /^(?:no|none|not worked|outside)\b/i],
];

/** ". open box", "# = filled". */
function legendEntry(line: string): { sign: string; cell: Cell } | null {
  const found = /^(\S)\s*(?:[=:]\s*|\s)([a-z].{0,60})$/iu.exec(line);
  if (!found) return null;
  const words = found[2] ?? '';
  const box = BOXES.find(([, pattern]) => pattern.test(words));
  return box ? { sign: found[1] ?? '', cell: box[0] } : null;
}

/** "mesh: dc, ch 1" or "mesh: tr, 2 ch". */
function meshOf(line: string): Chart['mesh'] {
  const found =
    /^mesh\s*:\s*(\p{L}[\p{L} ]{0,30}?)\s*[,+&]\s*(?:ch\s*-?\s*(\d)|(\d)\s*-?\s*ch)\s*$/iu.exec(
      line,
    );
  if (!found) return null;
  return { post: (found[1] ?? '').toLowerCase(), gap: Number(found[2] ?? found[3]) };
}

/** One finding for the chart: at the first row that differs, with the others beside it. */
function rowFaults(
  name: string,
  rows: readonly (readonly Cell[])[],
  spans: readonly Span[],
): Finding[] {
  const width = usualWidth(rows);
  const odd = rows.flatMap((row, i) => (row.length === width ? [] : [i]));
  const [first, ...more] = odd;
  if (first === undefined) return [];
  const labels = more.slice(0, MOST_LABELS).map((i) => ({
    ...(spans[i] as Span),
    text: `${rows[i]?.length ?? 0} boxes here`,
  }));
  const at = spans[first] as Span;
  // Rows are counted as they are worked: from the last line up.
  const words = {
    chart: said(name),
    chartRow: rows.length - first,
    has: rows[first]?.length ?? 0,
    others: width,
  };
  return [chartRowsDiffer(at, words, { labels })];
}

/** The width of most rows; of two that tie, the one met first. */
function usualWidth(rows: readonly (readonly Cell[])[]): number {
  const times = new Map<number, number>();
  for (const row of rows) times.set(row.length, (times.get(row.length) ?? 0) + 1);
  let width = 0;
  let most = 0;
  for (const [length, n] of times) if (n > most) [width, most] = [length, n];
  return width;
}

/** Once a sign, at the first place where it stands. */
function signFaults(
  text: string,
  name: string,
  legend: ReadonlyMap<string, Cell>,
  spans: readonly Span[],
): Finding[] {
  const seen = new Set<string>();
  const findings: Finding[] = [];
  for (const { from, to } of spans) {
    let at = from;
    for (const sign of text.slice(from, to)) {
      if (!legend.has(sign) && !seen.has(sign)) {
        seen.add(sign);
        const span = { from: at, to: at + sign.length };
        findings.push(chartSignUnknown(span, { chart: said(name), sign }));
        if (findings.length >= MOST_LABELS) return findings;
      }
      at += sign.length;
    }
  }
  return findings;
}
