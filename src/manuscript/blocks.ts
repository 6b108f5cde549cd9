/**
 * Cuts the text into headings, instructions, definitions, prose and charts: one pass over its
 * lines, each looked at once. An instruction begins with a label or a stitch command and runs to
 * the blank line or the next label; pasted text breaks this in the ways that are told below.
 */
import { readsAsWork, startsInstruction } from '../notation/index.ts';
import type { Block } from './block.ts';
import { copiesLine } from './copies.ts';
import { afterSpecialsLead, opensDefinition } from './definitions.ts';
import { chartInside, chartNameOf, fenceOf, lineAt } from './fences.ts';
import { type Cut, labelCuts } from './label-cuts.ts';
import {
  afterBullet,
  endsWithCount,
  isCountLine,
  isLabelAlone,
  isPageNumber,
  isRule,
  isWrapped,
} from './line-shapes.ts';
import { type Section, sectionNamed } from './sections.ts';
import { isTitle, titleWords } from './titles.ts';

export interface BlockOptions {
  readonly from: number;
  /** The file has front matter or headings: what follows a label is work up to the blank line. */
  readonly layout: 'written' | 'pasted';
  /** Lone lines name parts: the file has no headings for them. */
  readonly titles: 'headings' | 'lines';
  /** Lines that are too long to be read, by where they begin. */
  readonly refused: ReadonlySet<number>;
}

/** The block that the next line may still belong to. */
interface Open {
  kind: 'instruction' | 'definition' | 'prose';
  section: Section;
  from: number;
  to: number;
  /** Where its last line begins. */
  lineFrom: number;
  /** A label with no work behind it yet. */
  bare: boolean;
}

interface Scan {
  readonly text: string;
  readonly options: BlockOptions;
  readonly blocks: Block[];
  readonly cuts: readonly Cut[];
  cut: number;
  section: Section;
  sectionLevel: number;
  open: Open | null;
  afterBlank: boolean;
  /** Last row number met, which a bare number must follow. */
  lastNumber: number;
  sawWork: boolean;
}

/** `text` is the plain text; blocks come in order and do not overlap. */
export function scanBlocks(text: string, options: BlockOptions): Block[] {
  const scan: Scan = {
    text,
    options,
    blocks: [],
    cuts: labelCuts(text, options.from),
    cut: 0,
    section: 'work',
    sectionLevel: 0,
    open: null,
    afterBlank: true,
    lastNumber: 0,
    sawWork: false,
  };
  let at = options.from;
  while (at < text.length) at = takeLine(scan, at);
  close(scan);
  return scan.blocks;
}

/** Takes the line at `at`, or the chart that begins there; returns where the next one begins. */
function takeLine(scan: Scan, at: number): number {
  const { text } = scan;
  const line = lineAt(text, at);
  let { from, to } = line;
  while (from < to && isBlankCode(text.charCodeAt(from))) from++;
  while (to > from && isBlankCode(text.charCodeAt(to - 1))) to--;
  if (from === to || scan.options.refused.has(at)) {
    takeBlank(scan);
    return line.next;
  }
  const sign = text[from];
  if (sign === '`' || sign === '~') {
    const fence = fenceOf(text.slice(from, Math.min(to, from + 200)));
    if (fence) return takeFence(scan, fence.mark, chartNameOf(fence.info), { ...line, from });
  }
  if (sign === '#' && takeHeading(scan, from, to)) return line.next;
  if (isRule(text, from, to)) {
    takeBlank(scan);
    return line.next;
  }
  if (isPageNumber(text, from, to)) return line.next;
  takeParts(scan, from, to, line.next);
  return line.next;
}

const isBlankCode = (code: number): boolean => code <= 32 || code === 0xa0 || code === 0xfeff;

function takeBlank(scan: Scan): void {
  // "Round 1:" above a blank line still waits for its work.
  if (!(scan.open?.kind === 'instruction' && scan.open.bare)) close(scan);
  scan.afterBlank = true;
}

function takeFence(
  scan: Scan,
  mark: string,
  name: string | null,
  line: { readonly from: number; readonly next: number },
): number {
  close(scan);
  scan.afterBlank = true;
  // The marks of other fenced blocks are passed over, and what they hold is read as text.
  if (name === null) return line.next;
  const inside = chartInside(scan.text, line.next, mark);
  scan.blocks.push({
    kind: 'chart',
    name,
    from: line.from,
    to: inside.next,
    innerFrom: inside.from,
    innerTo: inside.to,
  });
  skipCuts(scan, inside.next);
  return inside.next;
}

function skipCuts(scan: Scan, to: number): void {
  while ((scan.cuts[scan.cut]?.at ?? to) < to) scan.cut++;
}

function takeHeading(scan: Scan, from: number, to: number): boolean {
  const found = /^(#{1,6})\s+(\S.*?)\s*#*$/.exec(scan.text.slice(from, Math.min(to, from + 300)));
  if (!found) return false;
  const level = found[1]?.length ?? 1;
  const name = titleWords(found[2] ?? '');
  const named = sectionNamed(name);
  // "### Shell" below "## Special stitches" stays among the special stitches.
  const inherits = named === null && scan.section !== 'work' && level > scan.sectionLevel;
  pushHeading(scan, { from, to, level, name }, named ?? (inherits ? scan.section : 'work'));
  if (!inherits) scan.sectionLevel = level;
  return true;
}

function pushHeading(
  scan: Scan,
  heading: { readonly from: number; readonly to: number; readonly level: number; readonly name: string },
  section: Section,
): void {
  close(scan);
  skipCuts(scan, heading.to);
  // A menu above the pattern may say "Comments" too.
  scan.section = section === 'comments' && !scan.sawWork ? 'notes' : section;
  scan.blocks.push({ kind: 'heading', ...heading, section: scan.section });
  scan.afterBlank = true;
}

/** A line, cut where labels stand in the middle of it. */
function takeParts(scan: Scan, from: number, to: number, next: number): void {
  let at = from;
  for (;;) {
    const cut = nextCut(scan, at, to);
    take(scan, at, cut ?? to, cut === null ? next : to);
    scan.afterBlank = false;
    if (cut === null) return;
    at = cut;
  }
}

function nextCut(scan: Scan, from: number, to: number): number | null {
  for (;;) {
    const cut = scan.cuts[scan.cut];
    if (!cut || cut.at >= to) return null;
    scan.cut++;
    if (cut.at <= from || scan.section === 'comments') continue;
    if (cut.bare === null) return cut.at;
    const last = Math.max(scan.lastNumber, lastNumberIn(scan.text, from, cut.at));
    if (scan.options.layout === 'pasted' && cut.bare === last + 1) return cut.at;
  }
}

/** The highest row number that the label at `from` names; 0 where none stands. */
function lastNumberIn(text: string, from: number, to: number): number {
  const label =
    /^\D{0,10}(\d{1,3})(?:st|nd|rd|d|th)?(?:\s*(?:-|–|—|to|and|&|,)\s*(\d{1,3}))?/i.exec(
      text.slice(from, Math.min(to, from + 40)),
    );
  return label ? Number(label[2] ?? label[1]) : 0;
}

/** One line, or one stretch of a line that begins with a label. */
function take(scan: Scan, lineFrom: number, lineTo: number, next: number): void {
  const { text } = scan;
  let to = lineTo;
  while (to > lineFrom && isBlankCode(text.charCodeAt(to - 1))) to--;
  const from = afterBullet(text, lineFrom, to);
  if (from >= to) return;
  if (scan.section === 'comments') return addProse(scan, from, to);
  if (takeCount(scan, from, to)) return;
  const starts = startsInstruction(text, from, to);
  if (starts === 'label' && mayHoldRow(scan, from, to)) return openInstruction(scan, from, to, starts);
  if (scan.open?.kind === 'instruction' && scan.open.bare) return extend(scan, from, to);
  if (takeNamed(scan, from, to, next, starts)) return;
  if (continues(scan, from, to, starts)) return extend(scan, from, to);
  if (starts !== 'label' && mayBeWork(scan, from, to, starts)) {
    return openInstruction(scan, from, to, starts);
  }
  addProse(scan, from, to);
}

type Starts = ReturnType<typeof startsInstruction>;

/** A count on a line of its own belongs to the row above it, blank line or not. */
function takeCount(scan: Scan, from: number, to: number): boolean {
  if (!isCountLine(scan.text, from, to)) return false;
  if (scan.open) {
    if (scan.open.kind !== 'instruction') return false;
    extend(scan, from, to);
    return true;
  }
  const last = scan.blocks.at(-1);
  if (last?.kind !== 'instruction' || endsWithCount(scan.text, last.from, last.to)) return false;
  scan.blocks[scan.blocks.length - 1] = { kind: 'instruction', from: last.from, to };
  return true;
}

/** Among notes a label needs its colon: "Rnd 4 is worked in back loops" is a remark. */
const hasLabelEnd = (text: string, from: number, to: number): boolean =>
  /^[^,;]{1,40}?[:.)|=–—]/.test(text.slice(from, Math.min(to, from + 44)));

function mayHoldRow(scan: Scan, from: number, to: number): boolean {
  const { open, options } = scan;
  if (scan.section !== 'work' && options.titles === 'headings') {
    return scan.section !== 'notes' && hasLabelEnd(scan.text, from, to);
  }
  if (scan.section !== 'work') return hasLabelEnd(scan.text, from, to);
  return open?.kind !== 'prose' || options.layout === 'pasted' || hasLabelEnd(scan.text, from, to);
}

/** Definitions, "make 2", and lone lines that name a part or a section. */
function takeNamed(scan: Scan, from: number, to: number, next: number, starts: Starts): boolean {
  const { text, open, section, options } = scan;
  const at = afterSpecialsLead(text, from, to);
  if (opensDefinition(text, at, to, at > from ? 'specials' : section)) {
    openBlock(scan, { kind: 'definition', from: at, to, section });
    return true;
  }
  if (to - from > 60) return false;
  const line = text.slice(from, to);
  const copies = open?.kind === 'instruction' ? null : copiesLine(line);
  if (copies !== null) {
    close(scan);
    scan.blocks.push({ kind: 'copies', copies, from, to });
    return true;
  }
  if (options.titles === 'headings' || starts === 'label' || starts === 'command') return false;
  if (open?.kind === 'instruction' && isWrapped(text, open.lineFrom, open.to)) return false;
  if (!isTitle(line, { afterBlank: scan.afterBlank, ...lookAhead(scan, next) })) return false;
  if (sectionNamed(line) === null && readsAsWork(text, from, to) >= LIKELY) return false;
  pushHeading(scan, { from, to, level: 0, name: titleWords(line) }, sectionNamed(line) ?? 'work');
  return true;
}

/** What stands below: a blank line, and an instruction within the next three lines? */
function lookAhead(scan: Scan, next: number): { beforeBlank: boolean; beforeWork: boolean } {
  let at = next;
  let beforeBlank = false;
  for (let i = 0; i < 3 && at < scan.text.length; i++) {
    const line = lineAt(scan.text, at);
    let { from } = line;
    while (from < line.to && isBlankCode(scan.text.charCodeAt(from))) from++;
    if (from < line.to) {
      const start = afterBullet(scan.text, from, line.to);
      const starts = startsInstruction(scan.text, start, line.to);
      return { beforeBlank, beforeWork: starts === 'label' || starts === 'command' };
    }
    beforeBlank = true;
    at = line.next;
  }
  return { beforeBlank: true, beforeWork: false };
}

/** Shares of words that are notation (`readsAsWork`), tried on invented text of both kinds. */
const LIKELY = 0.6;
const SURE = 0.75;
const SOME = 0.34;

/** Whether a line goes on with the instruction or definition above it. */
function continues(scan: Scan, from: number, to: number, starts: Starts): boolean {
  const { text, open, options } = scan;
  if (!open || scan.afterBlank) return false;
  if (open.kind === 'prose') return false;
  if (open.kind === 'definition') return starts !== 'command' || !endsSentence(text, open.to);
  const counted = endsWithCount(text, open.from, open.to);
  if (starts === 'command' && counted && /\p{Lu}/u.test(text[from] ?? '')) return false;
  if (options.layout === 'written' || starts !== null) return true;
  if (isWrapped(text, open.lineFrom, open.to)) return true;
  return readsAsWork(text, from, to) >= SOME;
}

const endsSentence = (text: string, to: number): boolean => /[.!?)]/.test(text[to - 1] ?? '.');

/** Whether a line without label opens an instruction. */
function mayBeWork(scan: Scan, from: number, to: number, starts: Starts): boolean {
  const { text, open, section, options } = scan;
  if (starts === null) return false;
  // In wrapped prose a line may begin with any word.
  const inProse = open?.kind === 'prose' && (options.layout === 'written' || isWrapped(text, open.lineFrom, open.to));
  if (inProse) return false;
  if (section === 'work') {
    if (starts === 'command') return true;
    return readsAsWork(text, from, to) >= (options.layout === 'pasted' ? LIKELY : SURE);
  }
  const leaves = options.titles === 'lines' && section !== 'specials' && scan.afterBlank;
  return leaves && starts === 'command' && readsAsWork(text, from, to) >= SURE;
}

function openInstruction(scan: Scan, from: number, to: number, starts: Starts): void {
  openBlock(scan, { kind: 'instruction', from, to, section: scan.section });
  scan.sawWork = true;
  if (starts === 'label') {
    scan.lastNumber = lastNumberIn(scan.text, from, to);
    if (scan.open) scan.open.bare = isLabelAlone(scan.text, from, to);
  }
  // Materials and notes without a heading behind them end where the work begins.
  if (scan.options.titles === 'lines') scan.section = 'work';
}

function openBlock(scan: Scan, block: Omit<Open, 'bare' | 'lineFrom'>): void {
  close(scan);
  scan.open = { ...block, lineFrom: block.from, bare: false };
}

function extend(scan: Scan, from: number, to: number): void {
  if (!scan.open) return;
  scan.open.to = to;
  scan.open.lineFrom = from;
  scan.open.bare = false;
}

function addProse(scan: Scan, from: number, to: number): void {
  if (scan.open?.kind === 'prose' && !scan.afterBlank) return extend(scan, from, to);
  openBlock(scan, { kind: 'prose', from, to, section: scan.section });
}

function close(scan: Scan): void {
  const { open } = scan;
  if (!open) return;
  scan.open = null;
  const { kind, from, to, section } = open;
  if (kind === 'instruction') scan.blocks.push({ kind, from, to });
  else scan.blocks.push({ kind, from, to, section });
}
