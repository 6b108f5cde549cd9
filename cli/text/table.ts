/**
 * The table of rounds:
 *
 *                   used   made  also             stated             verdict
 *     Sides
 *       Rnds 4-9     104    104                   104 sc             proven
 *       Rnd 10       104     52  52 boxes         52 boxes           proven
 *     > Rnd 11       104     51  51 boxes         52 boxes           mismatch
 */

import type { RowAccount, Verdict } from '../../src/index.ts';
import { type Paint, printableText, widthOf } from '../../src/index.ts';
import { type TableLine, tableLines } from './lines.ts';

export interface TableLayout {
  readonly width: number;
  readonly paint: Paint;
  /** The pattern, for the first words of rows without a label. */
  readonly text: string;
}

export function table(
  rows: readonly RowAccount[],
  sizes: readonly string[],
  layout: TableLayout,
): readonly string[] {
  const lines = tableLines(rows, sizes, layout.text);
  if (lines.length === 0) return [];
  const columns = columnsFor(lines, layout.width);
  const head = columns.map(({ title }) => title);
  const sections = alikeTogether(sectionsOf(lines));
  const isOneUnnamed = sections.length === 1 && sections[0]?.part === '';
  return [
    layout.paint('faint', `  ${join(head, columns)}`.trimEnd()),
    ...sections.flatMap((section) => [
      ...(isOneUnnamed ? [] : [layout.paint('strong', titleOf(section))]),
      ...section.lines.map((line) => drawn(line, columns, layout.paint)),
    ]),
  ];
}

interface Column {
  readonly title: string;
  readonly of: (line: TableLine) => string;
  readonly isNumber: boolean;
  readonly width: number;
}

/** Nothing made beside the stitches, nothing stated: such columns are left out. */
function columnsFor(lines: readonly TableLine[], width: number): readonly Column[] {
  const all: readonly Omit<Column, 'width'>[] = [
    { title: '', of: (line) => printableText(line.label), isNumber: false },
    { title: 'used', of: (line) => line.used, isNumber: true },
    { title: 'made', of: (line) => line.made, isNumber: true },
    { title: 'also', of: (line) => line.beside, isNumber: false },
    { title: 'stated', of: (line) => printableText(line.stated), isNumber: false },
    { title: 'verdict', of: (line) => line.verdict, isNumber: false },
  ];
  const columns = all
    .filter(({ title, of }) => title === '' || lines.some((line) => of(line) !== ''))
    .map((column) => ({
      ...column,
      width: Math.max(...lines.map((line) => widthOf(column.of(line))), column.title.length),
    }));
  return narrowed(columns, width - 2);
}

/** Takes what the terminal lacks from the columns with free text, from the widest of them first. */
function narrowed(columns: readonly Column[], room: number): readonly Column[] {
  const widths = columns.map(({ width }) => width);
  const isFree = columns.map(({ isNumber, title }) => !isNumber && title !== 'verdict');
  let over = widths.reduce((sum, width) => sum + width + gap.length, -gap.length) - room;
  for (; over > 0; over--) {
    const widest = Math.max(...widths.filter((_, at) => isFree[at]));
    if (widest <= narrowest) break;
    widths[widths.findIndex((width, at) => isFree[at] && width === widest)] = widest - 1;
  }
  return columns.map((column, at) => ({ ...column, width: widths[at] ?? column.width }));
}

/** Room for a plain label such as "Rnds 104-109". */
const narrowest = 12;

const gap = '  ';

interface Section {
  readonly part: string;
  readonly instance: number;
  /** How many copies in a row are alike in all figures. */
  readonly copies: number;
  readonly lines: readonly TableLine[];
}

function sectionsOf(lines: readonly TableLine[]): readonly Section[] {
  const sections: { part: string; instance: number; copies: number; lines: TableLine[] }[] = [];
  for (const line of lines) {
    const last = sections.at(-1);
    if (last !== undefined && last.part === line.part && last.instance === line.instance) {
      last.lines.push(line);
    } else {
      sections.push({ part: line.part, instance: line.instance, copies: 1, lines: [line] });
    }
  }
  return sections;
}

/** A second ear that is worked like the first needs no table of its own. */
function alikeTogether(sections: readonly Section[]): readonly Section[] {
  const together: Section[] = [];
  for (const section of sections) {
    const last = together.at(-1);
    if (
      last !== undefined &&
      last.part === section.part &&
      figuresOf(last) === figuresOf(section)
    ) {
      together[together.length - 1] = { ...last, copies: last.copies + 1 };
    } else {
      together.push(section);
    }
  }
  return together;
}

function figuresOf({ lines }: Section): string {
  return JSON.stringify(lines.map((line) => ({ ...line, instance: 0 })));
}

function titleOf({ part, instance, copies }: Section): string {
  const name = part === '' ? '(no heading)' : printableText(part);
  if (copies > 1) return `${name}, ${copies === 2 ? 'both' : `all ${copies}`} alike`;
  return instance > 1 ? `${name}, number ${instance}` : name;
}

const inks: Partial<Record<Verdict, 'error' | 'warning' | 'faint'>> = {
  mismatch: 'error',
  unread: 'error',
  unchecked: 'warning',
  omitted: 'faint',
};

function drawn(line: TableLine, columns: readonly Column[], paint: Paint): string {
  const ink = inks[line.worst];
  const cells = columns.map(({ of }) => of(line));
  const before = join(cells.slice(0, -1), columns);
  const verdict = cells.at(-1) ?? '';
  const mark = ink === 'error' ? paint('error', '>') : ' ';
  return `${mark} ${before}${gap}${ink === undefined ? verdict : paint(ink, verdict)}`;
}

function join(cells: readonly string[], columns: readonly Column[]): string {
  return cells
    .map((cell, at) => {
      const { width = 0, isNumber = false } = columns[at] ?? {};
      const cut = shortened(cell, width);
      const blanks = ' '.repeat(Math.max(0, width - widthOf(cut)));
      return isNumber ? blanks + cut : cut + blanks;
    })
    .join(gap);
}

function shortened(cell: string, width: number): string {
  if (widthOf(cell) <= width) return cell;
  let cut = '';
  for (const sign of cell) {
    if (widthOf(cut + sign) > width - 1) break;
    cut += sign;
  }
  return `${cut}…`;
}
