/** The state of the line scanner and the few ways in which it changes. */
import type { startsInstruction } from '../notation/index.ts';
import type { LineStarts, Span } from '../source/index.ts';
import type { Block } from './block.ts';
import type { Cut } from './label-cuts.ts';
import { isLabelAlone, isWrapped } from './line-shapes.ts';
import { OF_ROWS_BEHIND, rowsBehind } from './row-cuts.ts';
import type { Section } from './sections.ts';
import { mayHold, type Trigrams } from './trigrams.ts';

export interface BlockOptions {
  /** Line starts of the plain text. */
  readonly lines: LineStarts;
  readonly from: number;
  /** What stands in the plain text. */
  readonly marks: Trigrams;
  /** The file has front matter or headings: what follows a label is work up to the blank line. */
  readonly layout: 'written' | 'pasted';
  /** Lone lines name parts: the file has no headings for them. */
  readonly titles: 'headings' | 'lines';
  /** Where the text is wrapped, in characters; 0 if its lines are whole paragraphs. */
  readonly width: number;
  /** Lines that are too long to be read, by where they begin. */
  readonly refused: ReadonlySet<number>;
}

/** The block that the next line may still belong to. */
export interface Open {
  kind: 'instruction' | 'definition' | 'prose';
  section: Section;
  from: number;
  to: number;
  /** Where its last line begins. */
  lineFrom: number;
  /** A label with no work behind it yet. */
  bare: boolean;
  /** Its label has a line of its own, so that clauses below it may have paragraphs of their own. */
  alone: boolean;
}

export interface Scan {
  readonly text: string;
  readonly options: BlockOptions;
  readonly blocks: Block[];
  readonly cuts: readonly Cut[];
  cut: number;
  section: Section;
  sectionLevel: number;
  open: Open | null;
  afterBlank: boolean;
  sawWork: boolean;
  /** The stretch whose start was looked at last, and what it is. */
  readonly seen: { from: number; to: number; starts: Starts };
}

/** How a line begins: see `startsInstruction`. */
export type Starts = ReturnType<typeof startsInstruction>;

/** A line, or a stretch of one that begins with a label, trimmed and behind its list sign. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Where the line below begins. */
  readonly next: number;
}

export const isBlankCode = (code: number): boolean =>
  code <= 32 || code === 0xa0 || code === 0xfeff;

export function pushHeading(
  scan: Scan,
  heading: {
    readonly from: number;
    readonly to: number;
    readonly level: number;
    readonly name: string;
  },
  section: Section,
): void {
  close(scan);
  skipCuts(scan, heading.to);
  // A menu above the pattern may say "Comments" too.
  scan.section = section === 'comments' && !scan.sawWork ? 'notes' : section;
  scan.blocks.push({ kind: 'heading', ...heading, section: scan.section });
  scan.afterBlank = true;
}

export function skipCuts(scan: Scan, to: number): void {
  while ((scan.cuts[scan.cut]?.at ?? to) < to) scan.cut++;
}

export function openBlock(
  scan: Scan,
  kind: Open['kind'],
  { from, to }: Span,
  section: Section = scan.section,
): void {
  close(scan);
  scan.open = { kind, section, from, to, lineFrom: from, bare: false, alone: false };
}

/** Whether the open block's last line was broken only because `next` did not fit. */
export const goesOnAt = ({ text, open, options }: Scan, next: number): boolean =>
  open !== null && isWrapped(text, { from: open.lineFrom, to: open.to }, next, options.width);

export function extend(scan: Scan, { from, to }: Span): void {
  if (!scan.open) return;
  scan.open.to = to;
  scan.open.lineFrom = from;
  // "Round", and its number on the line below, may wait still.
  scan.open.bare &&= isLabelAlone(scan.text, scan.open.from, to);
}

export function addProse(scan: Scan, { from, to }: Span): void {
  // In a pasted list each line is for itself, but they lie in one paragraph.
  if (scan.open?.kind === 'prose' && !scan.afterBlank) extend(scan, { from, to });
  else openBlock(scan, 'prose', { from, to });
}

/** Behind the last sign before `to` that is no blank. */
function inkBefore(text: string, to: number): number {
  let at = to;
  while (isBlankCode(text.charCodeAt(at - 1))) at--;
  return at;
}

export function close(scan: Scan): void {
  const { open } = scan;
  if (!open) return;
  scan.open = null;
  const { kind, from, to, section } = open;
  if (kind !== 'instruction') {
    scan.blocks.push({ kind, from, to, section });
    return;
  }
  let start = from;
  const behind = mayHold(scan.options.marks, OF_ROWS_BEHIND) ? rowsBehind(scan.text, from, to) : [];
  for (const next of behind) {
    scan.blocks.push({ kind, from: start, to: inkBefore(scan.text, next) });
    start = next;
  }
  scan.blocks.push({ kind, from: start, to: inkBefore(scan.text, to) });
}
