/** Lines told by their shape: counts, definitions, "make 2", names of parts and sections. */
import type { Span } from '../source/index.ts';
import { copiesLine } from './copies.ts';
import {
  afterFor,
  afterSpecialsLead,
  chainRemark,
  listedDefinitions,
  namesDefinitionBelow,
  nextDefinition,
  nextFor,
  opensDefinition,
} from './definitions.ts';
import { lineAt } from './fences.ts';
import { afterBullet, endsWithCount, isCountLine, isTurnLine } from './line-shapes.ts';
import {
  close,
  extend,
  goesOnAt,
  isBlankCode,
  openBlock,
  pushHeading,
  type Scan,
  type Starts,
  type Stretch,
} from './scan.ts';
import { type Section, sectionNamed } from './sections.ts';
import { isTitle, titleWords } from './titles.ts';
import { startOf } from './work-rules.ts';

/** A count on a line of its own belongs to the row above it, blank line or not. */
export function takeCount(scan: Scan, { from, to }: Stretch): boolean {
  const turns = isTurnLine(scan.text, from, to);
  if (!turns && !isCountLine(scan.text, from, to)) return false;
  if (turns && scan.options.layout === 'written') return false;
  if (scan.open) {
    if (scan.open.kind !== 'instruction') return !turns && countsAboveTalk(scan);
    extend(scan, { from, to });
    return true;
  }
  const last = scan.blocks.at(-1);
  if (last?.kind !== 'instruction') return false;
  if (!turns && endsWithCount(scan.text, last.from, last.to)) return false;
  scan.blocks[scan.blocks.length - 1] = { kind: 'instruction', from: last.from, to };
  return true;
}

/** "10 sc" below talk below its row: the count is passed over, for it is no row. */
const countsAboveTalk = ({ open, blocks, options }: Scan): boolean =>
  options.layout === 'pasted' && open?.kind === 'prose' && blocks.at(-1)?.kind === 'instruction';

/** Definitions, sections of one paragraph, "make 2", lone lines that name a part or a section. */
export function takeNamed(scan: Scan, at: Stretch, starts: Starts): boolean {
  if (takeDefinition(scan, at)) return true;
  const { from, to } = at;
  const lead = sectionLead(scan.text, from, to);
  if (lead !== null) {
    openLead(scan, at, lead);
    return true;
  }
  return to - from <= LONGEST_NAME && (takeCopies(scan, at) || takeTitle(scan, at, starts));
}

const LONGEST_NAME = 60;

function takeDefinition(scan: Scan, { from, to, next }: Stretch): boolean {
  const { text, open } = scan;
  // "Special stitches: Lhdc, Lsc" opens a list of one paragraph, whose lines may explain them.
  const isListed = open?.section === 'specials' && open.kind !== 'instruction' && !scan.afterBlank;
  const section = isListed ? open.section : scan.section;
  const lead = afterSpecialsLead(text, from, to);
  const named = section === 'comments' ? -1 : afterFor(text, lead, to);
  if (named > 0) {
    let start = named;
    for (let next = nextFor(text, start, to); next > 0; next = nextFor(text, start, to)) {
      openBlock(scan, 'definition', { from: start, to: next }, section);
      start = afterFor(text, next, to);
    }
    openDefinition(scan, { from: start, to }, section);
    return true;
  }
  if (namesDefinitionBelow(text, { from, to, next }, section)) {
    openBlock(scan, 'definition', { from, to }, 'specials');
    if (scan.open) scan.open.bare = true;
    return true;
  }
  let at = lead;
  if (!opensDefinition(text, at, to, at > from ? 'specials' : section)) return false;
  for (let next = nextDefinition(text, at, to); next > 0; next = nextDefinition(text, at, to)) {
    openBlock(scan, 'definition', { from: at, to: next }, section);
    at = next;
  }
  openDefinition(scan, { from: at, to }, section);
  return true;
}

/** What is said of the start chain behind a definition is a note on the rows. */
function openDefinition(scan: Scan, { from, to }: Span, section: Section): void {
  const { text } = scan;
  const remark = chainRemark(text, from, to);
  const end = remark < 0 ? to : remark;
  openBlock(scan, 'definition', { from, to: end }, section);
  if (remark > 0) openBlock(scan, 'prose', { from: remark, to }, 'specials');
}

/** A section of one paragraph; a list of abbreviations may hold stitches of the designer's own. */
function openLead(scan: Scan, { from, to }: Span, section: Section): void {
  let at = from;
  const own = section === 'abbreviations' ? listedDefinitions(scan.text, from, to) : [];
  for (const span of own) {
    if (span.from > at) openBlock(scan, 'prose', { from: at, to: span.from }, section);
    openBlock(scan, 'definition', span, section);
    at = span.to;
  }
  if (at < to) openBlock(scan, 'prose', { from: at, to }, section);
}

function takeCopies(scan: Scan, { from, to }: Stretch): boolean {
  const copies = scan.open?.kind === 'instruction' ? null : copiesLine(scan.text.slice(from, to));
  if (copies === null) return false;
  close(scan);
  scan.blocks.push({ kind: 'copies', copies, from, to });
  return true;
}

function takeTitle(scan: Scan, { from, to, next }: Stretch, starts: Starts): boolean {
  const { text, open, options } = scan;
  if (options.titles === 'headings' || starts !== null) return false;
  // A row that has its count is over, however wide its line is.
  const counted = open?.kind === 'instruction' && endsWithCount(text, open.from, open.to);
  if (open?.kind === 'instruction' && !counted && goesOnAt(scan, from)) return false;
  const line = text.slice(from, to);
  const beforeWork = (): boolean => isAboveWork(scan, next);
  const context = {
    afterBlank: () => scan.afterBlank || (counted && beforeWork()),
    beforeText: () => next < text.length && !/^[ \t]*[\r\n]/.test(text.slice(next, next + 4)),
    beforeWork,
    beforeCopies: () => isAboveCopies(scan, next),
  };
  if (!isTitle(line, context)) return false;
  const section = sectionNamed(line);
  pushHeading(scan, { from, to, level: 0, name: titleWords(line) }, section ?? 'work');
  return true;
}

/** "Materials: cotton, 4 mm hook": a section that is one paragraph long. */
function sectionLead(text: string, from: number, to: number): Section | null {
  const words = text.slice(from, Math.min(to, from + 44));
  const colon = words.indexOf(':');
  return colon > 2 && from + colon + 1 < to ? sectionNamed(words.slice(0, colon)) : null;
}

/** Whether the next line with words, at most two blank ones below, opens a piece of work. */
function isAboveWork(scan: Scan, next: number): boolean {
  const below = lineBelow(scan, next);
  if (!below) return false;
  const starts = startOf(scan, below.from, below.to);
  if (starts === 'label' || starts === 'command') return true;
  return isAboveCopies(scan, next);
}

function isAboveCopies(scan: Scan, next: number): boolean {
  const below = lineBelow(scan, next);
  return !!below && copiesLine(scan.text.slice(below.from, below.to)) !== null;
}

/** How the next line with words begins; `null` for prose and at the end. */
export function startsBelow(scan: Scan, next: number): Starts {
  const below = lineBelow(scan, next);
  return below ? startOf(scan, below.from, below.to) : null;
}

/** The next line with words, behind its list sign; at most two blank ones stand before it. */
function lineBelow(scan: Scan, next: number): Span | null {
  let at = next;
  for (let i = 0; i < 3 && at < scan.text.length; i++) {
    const line = lineAt(scan.text, at);
    let { from } = line;
    while (from < line.to && isBlankCode(scan.text.charCodeAt(from))) from++;
    if (from < line.to) {
      return { from: afterBullet(scan.text, from, line.to), to: line.to };
    }
    at = line.next;
  }
  return null;
}
