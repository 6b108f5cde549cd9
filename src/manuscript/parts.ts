/** Headings, instructions and prose to parts: what is worked as one piece, and how often. */
import {
  type Instruction,
  type StandingOrder,
  yarnSaid,
  yarnsOfCopies,
  yarnsOfHeading,
} from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Block, HeadingBlock, ProseBlock } from './block.ts';
import { chainsOfSizes } from './chains-of-sizes.ts';
import { copiesIn } from './copies.ts';
import type { Part, PlacedInstruction } from './manuscript.ts';
import { ordersOf } from './notes.ts';
import {
  endsWork,
  isFoundation,
  isTurningChain,
  joinsOntoWork,
  numbersOf,
  startsWork,
  takesUpWork,
} from './pieces.ts';
import { asOrder, tailOf } from './row-tails.ts';
import { saysTerms } from './sections.ts';
import { sizesOfHeading } from './sizes-named.ts';

export interface Parts {
  readonly parts: readonly Part[];
  /** Orders of the notes at the head. */
  readonly orders: readonly StandingOrder[];
}

interface Draft {
  readonly name: string;
  readonly heading: Span | null;
  readonly level: number;
  copies: number;
  instructions: PlacedInstruction[];
  orders: StandingOrder[];
  /** Prose below its heading. */
  prose: string[];
  /** Highest row number so far. */
  last: number;
}

interface Gathering {
  readonly text: string;
  readonly drafts: Draft[];
  readonly orders: StandingOrder[];
  /** Letters and names of the yarns. */
  readonly yarns: ReadonlySet<string>;
  /** The heading that prose stands under, which need not name a part. */
  heading: HeadingBlock | null;
  readonly sizes: readonly string[];
  /** Sizes of which a heading says that the rows below are theirs alone; '' for all. */
  forSizes: string;
  sawWork: boolean;
}

export interface BlockReader {
  /** The tree of an instruction. */
  readonly read: (span: Span) => Instruction;
  /** Told of each block when it was read. */
  readonly leave: (block: Block) => void;
  /** Letters and names of the yarns. */
  readonly yarns: ReadonlySet<string>;
  /** Names of the sizes. */
  readonly sizes: readonly string[];
}

/** Parts without instructions are left out. */
export function partsOf(
  text: string,
  blocks: readonly Block[],
  { read, leave, yarns, sizes }: BlockReader,
): Parts {
  const all: Gathering = {
    text,
    drafts: [draft('', null, 0)],
    orders: [],
    yarns,
    heading: null,
    sizes,
    forSizes: '',
    sawWork: false,
  };
  for (const block of blocks) {
    if (block.kind === 'heading') takeHeading(all, block);
    else if (block.kind === 'instruction') takeRow(all, block, read);
    else if (block.kind === 'prose') takeProse(all, block);
    else if (block.kind === 'copies') {
      const part = lastOf(all);
      part.copies = Math.max(part.copies, block.copies);
    }
    leave(block);
  }
  const parts: Part[] = [];
  for (const part of all.drafts) {
    if (part.instructions.length > 0) parts.push(finished(part, parts.at(-1) ?? null, yarns));
  }
  return { parts, orders: all.orders };
}

const draft = (name: string, heading: Span | null, level: number): Draft => ({
  name,
  heading,
  level,
  copies: copiesIn(name),
  instructions: [],
  orders: [],
  prose: [],
  last: 0,
});

const lastOf = (all: Gathering): Draft => all.drafts[all.drafts.length - 1]!;

/** "Notes" and "Materials" name no part: rows below them belong to the part above. */
function takeHeading(all: Gathering, block: HeadingBlock): void {
  all.heading = block;
  if (block.section !== 'work' || saysTerms(block.name)) return;
  const forSizes = sizesOfHeading(block.name, all.sizes);
  if (forSizes !== null) {
    all.forSizes = forSizes;
    return;
  }
  const part = draft(block.name, { from: block.from, to: block.to }, block.level);
  part.copies = Math.max(part.copies, yarnsOfHeading(block.name, all.yarns).length);
  all.drafts.push(part);
}

/** A row, and an order behind it that is not its own. */
function takeRow(all: Gathering, { from, to }: Span, read: BlockReader['read']): void {
  const whole = chainsOfSizes(all.text, from, read({ from, to }), all.sizes);
  const tail = tailOf(all.text, { from, to }, whole, read);
  if (tail === null) return takeInstruction(all, { from, to }, whole);
  const end = from + all.text.slice(from, tail).trimEnd().length;
  takeInstruction(all, { from, to: end }, read({ from, to: end }));
  takeInstruction(all, { from: tail, to }, asOrder(all.text, tail, read({ from: tail, to })), true);
}

function takeInstruction(
  all: Gathering,
  { from, to }: Span,
  instruction: Instruction,
  behind = false,
): void {
  all.sawWork = true;
  const placed = { from, to, instruction, sizes: all.forSizes, behind };
  const numbers = numbersOf(instruction.label);
  const part = lastOf(all);
  const isForAll = all.forSizes === '' && instruction.label?.sizes === '';
  if (numbers?.first === 1 && part.last > 1 && isForAll) {
    restart(all, part);
  }
  const current = lastOf(all);
  current.instructions.push(placed);
  if (numbers) current.last = Math.max(current.last, numbers.last);
}

/** Numbers begin again without a heading: a new part, and the foundation above it is its own. */
function restart(all: Gathering, part: Draft): void {
  const next = draft('', null, part.level);
  const isLabelled = ({ label }: Instruction): boolean => label !== null && !isFoundation(label);
  const rest = part.instructions.findLastIndex(({ instruction }) => isLabelled(instruction)) + 1;
  const start = part.instructions.findIndex(
    ({ instruction }, i) => i >= rest && startsWork(instruction),
  );
  if (start > 0) next.instructions = part.instructions.splice(start);
  all.drafts.push(next);
}

function takeProse(all: Gathering, block: ProseBlock): void {
  if (block.section === 'work') lastOf(all).prose.push(all.text.slice(block.from, block.to));
  const orders = ordersOf(all.text, block);
  if (orders.length === 0) return;
  const target = isForAll(all, block) ? all.orders : lastOf(all).orders;
  for (const order of orders) target.push(order);
}

/** Prose above all parts and notes beside them hold for the whole; other prose for its part. */
function isForAll(all: Gathering, block: ProseBlock): boolean {
  const { heading } = all;
  if (!heading) return !all.sawWork;
  const part = lastOf(all);
  if (heading.section !== 'work' || block.section !== 'work') {
    const isBelow = part.heading !== null && heading.level > part.level && part.level > 1;
    return !isBelow && (!all.sawWork || heading.level > 0);
  }
  // Below the title of the piece, be it "# Title" or the lone first line.
  return !all.sawWork && heading.level <= 1 && all.drafts.length <= 2;
}

function finished(part: Draft, before: Part | null, yarns: ReadonlySet<string>): Part {
  return {
    name: part.name,
    heading: part.heading,
    copies: part.copies,
    yarns: yarnsOf(part, yarns),
    continues: before !== null && continuesWork(part, before),
    instructions: part.instructions,
    orders: part.orders,
  };
}

/** The heading's yarn, else those of a sentence beneath it that tells of one, or of one for each copy. */
function yarnsOf({ name, prose, copies }: Draft, known: ReadonlySet<string>): readonly string[] {
  const counted = yarnsOfHeading(name, known);
  if (counted.length > 0) return counted;
  const inHeading = yarnSaid(name, known);
  if (inHeading !== null) return [inHeading];
  for (const words of prose) {
    for (const sentence of words.slice(0, 2000).split(/[.!\n]\s/)) {
      const found = yarnsOfCopies(sentence.trim(), known);
      if (found.length === 1 || (found.length > 1 && found.length === copies)) return found;
    }
  }
  return [];
}

/**
 * A heading inside one piece: numbering goes on, or work goes on without a start of its own. What
 * is made several times is a piece by itself, and so is what numbers its rows from 1, unless its
 * first round plainly takes up the work before, yarn uncut.
 */
function continuesWork(part: Draft, before: Part): boolean {
  if (part.copies > 1) return false;
  const labelled = part.instructions.findIndex(
    ({ instruction }) => numbersOf(instruction.label) !== null,
  );
  const first = part.instructions[labelled];
  const above = labelled < 0 ? part.instructions : part.instructions.slice(0, labelled);
  const opening = first ? [...above, first] : above;
  if (opening.some(({ instruction }) => joinsOntoWork(instruction))) return true;
  if (above.some(({ instruction }) => startsWork(instruction))) return false;
  if (!first) return true;
  const number = numbersOf(first.instruction.label)?.first ?? 1;
  if (number !== 1) {
    // "Work as the right one to Round 6" comes before a Round 7 that does not go on from here.
    const goesBack = number <= lastNumberOf(before) && endsWork(before.instructions);
    return !goesBack && !first.instruction.steps.some(isRing);
  }
  if (startsWork(first.instruction)) return false;
  if (endsWork(before.instructions)) return false;
  return (
    takesUpWork(first.instruction) || above.some(({ instruction }) => isTurningChain(instruction))
  );
}

const lastNumberOf = (part: Part): number =>
  part.instructions.reduce(
    (last, { instruction }) => Math.max(last, numbersOf(instruction.label)?.last ?? 0),
    0,
  );

const isRing = (step: { readonly kind: string }): boolean => step.kind === 'ring';
