/**
 * A finding for people, as text: title, the words concerned with marks under them, the sum, what
 * would put it right. The command line and the studio show the same.
 *
 *     error[round-overrun]  Round 4 needs 19 stitches to work into; round 3 has 18.
 *       6 | Rnd 3: *sc in next st, inc; rep from * 5 more times. (18)
 *         |                                                      ---- made here
 *       7 | Rnd 4: *sc in next 2 sts, inc; rep from * 5 more times, sc in next st. (25)
 *         |                                                         ^^^^^^^^^^^^^
 *       Sum: 6 repeats of 3 use 18, and 1 after the last repeat makes 19.
 */
import { type LineStarts, placeAt, type Span } from '../source/index.ts';
import { printableText } from './cells.ts';
import { type Excerpt, excerpts, type Mark } from './excerpt.ts';
import type { Finding } from './finding.ts';
import { coloured, type Ink, type Paint, plain } from './paint.ts';
import { wrap } from './wrap.ts';

/** The text that the finding's spans belong to. */
export interface FindingSource {
  readonly text: string;
  readonly lines: LineStarts;
  /** Shown with line and column under the title, as editors open it; left out if not given. */
  readonly file?: string;
}

export interface FindingLayout {
  /** ANSI colours; default none. */
  readonly color?: boolean;
  /** Width in cells, kept between 40 and 120; default 100. */
  readonly width?: number;
}

/** The finding as lines of text, without a line break at the end. */
export function formatFinding(
  finding: Finding,
  source: FindingSource,
  layout: FindingLayout = {},
): string {
  const width = Math.min(120, Math.max(40, layout.width ?? 100));
  const paint = layout.color === true ? coloured : plain;
  return [
    ...title(finding, width, paint),
    ...where(finding, source, paint),
    ...lines(finding, source, { width, paint }),
    ...wrapped('  Sum: ', finding.sum, width),
    ...wrapped(finding.sizes.length === 1 ? '  Size: ' : '  Sizes: ', sizes(finding), width),
    ...finding.fixes.flatMap((fix, at) =>
      wrapped(at === 0 ? '  Fix: ' : '   or: ', fix.title, width),
    ),
  ].join('\n');
}

function title(finding: Finding, width: number, paint: Paint): readonly string[] {
  const head = `${finding.severity}[${finding.code}]`;
  const wrapped = wrap(`${head}  `, finding.message, width, '  ');
  // Painted only now, since colour takes no room.
  return wrapped.map((line, at) =>
    at === 0
      ? paint(finding.severity, head) + paint('strong', line.slice(head.length))
      : paint('strong', line),
  );
}

function where(finding: Finding, source: FindingSource, paint: Paint): readonly string[] {
  if (source.file === undefined) return [];
  const { line, column } = placeAt(source.lines, finding.from);
  return [`  ${paint('faint', `${printableText(source.file)}:${line}:${column}`)}`];
}

function sizes(finding: Finding): string {
  return finding.sizes.join(', ');
}

function wrapped(first: string, text: string, width: number): readonly string[] {
  return text === '' ? [] : wrap(first, text, width);
}

/** At most so many places beside the main one are drawn; a note says how many there are in all. */
const mostLabels = 6;
/** A mark over more lines than this is drawn on its first two and its last. */
const mostLines = 4;

interface Drawing {
  readonly width: number;
  readonly paint: Paint;
}

function lines(finding: Finding, source: FindingSource, drawing: Drawing): readonly string[] {
  const byLine = new Map<number, Mark[]>();
  const labels = finding.labels.slice(0, mostLabels);
  for (const [line, mark] of marksOf(finding, '^', '', source)) add(byLine, line, mark);
  for (const label of labels) {
    for (const [line, mark] of marksOf(label, '-', printableText(label.text), source)) {
      add(byLine, line, mark);
    }
  }
  const numbers = [...byLine.keys()].sort((a, b) => a - b);
  const gutter = Math.max(3, String(numbers.at(-1) ?? 1).length + 2);
  const room = drawing.width - gutter - 3;
  const drawn = numbers.flatMap((line) =>
    excerpts(lineText(source, line), byLine.get(line) ?? [], room).flatMap((shown) =>
      drawLine(line, shown, gutter, { ink: finding.severity, paint: drawing.paint }),
    ),
  );
  const more = finding.labels.length - labels.length;
  return more > 0 ? [...drawn, `  ... and ${more} more places`] : drawn;
}

function add(byLine: Map<number, Mark[]>, line: number, mark: Mark): void {
  const marks = byLine.get(line);
  if (marks === undefined) byLine.set(line, [mark]);
  else marks.push(mark);
}

/** The parts of a span, line by line (counted from 1); its text stands at the last of them. */
function marksOf(
  span: Span,
  sign: Mark['sign'],
  text: string,
  source: FindingSource,
): readonly (readonly [number, Mark])[] {
  const first = placeAt(source.lines, span.from).line;
  const last = placeAt(source.lines, Math.max(span.from, span.to - 1)).line;
  const marks = linesToDraw(first, last).flatMap((line): (readonly [number, Mark])[] => {
    const start = source.lines[line - 1] ?? 0;
    const content = lineText(source, line);
    const indent = content.length - content.trimStart().length;
    const from = line === first ? Math.min(span.from - start, content.length) : indent;
    const to = line === last ? Math.min(span.to - start, content.length) : content.trimEnd().length;
    return to > from || first === last ? [[line, { from, to, sign, text: '' }]] : [];
  });
  const end = marks.at(-1);
  return end === undefined ? [] : [...marks.slice(0, -1), [end[0], { ...end[1], text }]];
}

function linesToDraw(first: number, last: number): readonly number[] {
  const count = last - first + 1;
  if (count <= mostLines) return Array.from({ length: count }, (_, at) => first + at);
  return [first, first + 1, last];
}

function lineText({ text, lines }: FindingSource, line: number): string {
  return text
    .slice(lines[line - 1] ?? text.length, lines[line] ?? text.length)
    .replace(/[\r\n]+$/, '');
}

function drawLine(
  line: number,
  { line: text, rows }: Excerpt,
  gutter: number,
  { ink, paint }: { readonly ink: Ink; readonly paint: Paint },
): readonly string[] {
  const bar = (number: string) => paint('faint', `${number.padStart(gutter)} |`);
  const marks = rows.map((row) => {
    const painted = row.map(({ sign, text: piece }) =>
      sign === null ? piece : paint(sign === '^' ? ink : 'label', piece),
    );
    return `${bar('')} ${painted.join('')}`;
  });
  return [`${bar(String(line))} ${text}`.trimEnd(), ...marks];
}
