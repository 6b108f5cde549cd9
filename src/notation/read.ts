/** From the text of one instruction to its tree. Never throws; every word ends up in a step. */

import type { Span } from '../source/index.ts';
import { chainsTold } from './chains-told.ts';
import { mayBeStitch } from './dictionary.ts';
import { hintOf, isHinted } from './hints.ts';
import { settleJoins } from './join.ts';
import { alongChain, lastCount, mayNamePiece, nameJoinedPieces } from './joined.ts';
import { readLabel } from './label.ts';
import { likePart, starOfRounds } from './like-part.ts';
import { settleListTimes, settleNames } from './list-times.ts';
import { settleListedGroups } from './listed-groups.ts';
import { settleLoopsOfRow } from './loops-of-row.ts';
import { PLAIN_NOUN } from './noun.ts';
import { settleOpening } from './opening-chain.ts';
import { openReader, type Reader } from './reader.ts';
import { rowsOfPart } from './rows-again.ts';
import { W } from './senses.ts';
import { countsOfChain, countsOfSide, makes, settleCounts } from './settle-counts.ts';
import { mendsOf, slipsOf } from './slips.ts';
import { readRun } from './steps.ts';
import { T } from './tokens.ts';
import { settleToldBehind } from './told-behind.ts';
import type {
  ChainStep,
  Instruction,
  RowLabel,
  Slip,
  StandingOrder,
  StatedCount,
  Step,
  WorkStep,
} from './tree.ts';
import { NO_VOCABULARY, type Vocabulary } from './vocabulary.ts';

/**
 * Reads `text` from `from` to `to` as one instruction. Spans in the result count from `from`.
 * Linear in the length of the text.
 */
export function readInstruction(
  text: string,
  from: number,
  to: number,
  known: Vocabulary = NO_VOCABULARY,
): Instruction {
  const r = openReader(text, { from, to }, known, readRun);
  const { strange } = r;
  const read = readOpened(r);
  return (strange === 0 && !isHinted(r, MAY_SLIP)) || lostIn(read.steps) === 0
    ? read
    : readMended(read, { text, from, to, known });
}

/** Words that are none of English, but may stand for another of the trade's: "sp" for "sk". */
const MAY_SLIP = hintOf([W.sp]);

interface Written extends Span {
  readonly text: string;
  readonly known: Vocabulary;
}

/** The reading with strange words taken for what they may have been, where it leaves fewer over. */
function readMended(read: Instruction, { text, from, to, known }: Written): Instruction {
  const r = openReader(text, { from, to }, known, readRun);
  const mends = mendsOf(r, { isRow: read.label !== null });
  if (mends === null) return read;
  const mended = readOpened(openReader(text, { from, to, mends }, known, readRun));
  if (lostIn(mended.steps) >= lostIn(read.steps)) return read;
  return { ...mended, slips: [...mended.slips, ...slipsOf(mends)] };
}

/** How many signs of it were not understood, or were taken for talk. */
function lostIn(steps: readonly Step[]): number {
  let lost = 0;
  for (const step of steps) {
    if (step.kind === 'unread' || step.kind === 'remark') lost += step.to - step.from;
    else if (step.kind === 'repeat' || step.kind === 'group') lost += lostIn(step.steps);
  }
  return lost;
}

function readOpened(r: Reader): Instruction {
  const label = readLabel(r);
  const steps = r.run(r, 'text');
  if (label === null) settleUnlabelled(steps, r);
  else settleLabelled(steps, label, r);
  const all = countsOfSide(countsOfChain(settleCounts(r.counts, steps), steps), steps);
  const counts = label !== null && hasGaps(label) ? countsOfLast(all, r) : all;
  if (label !== null) {
    rowsAlone(steps, label, counts);
    countAlone(steps, label, counts);
  } else starOfRounds(steps, counts);
  settleToldBehind(steps, r);
  settleOpening(steps);
  chainsTold(steps, r);
  const settled = settleJoins(
    settleListTimes(
      settleNames(settleLoopsOfRow(settleListedGroups(steps), label), counts),
      counts,
    ),
  );
  const orders = r.orders.length === 0 ? NO_ORDERS : r.orders;
  const slips = r.slips.length === 0 ? NO_SLIPS : r.slips;
  if (!mayNamePiece(r)) return { label, steps: settled, counts, orders, slips };
  const words = r.text.slice(r.base, r.base + (r.from[r.count - 1] ?? 0));
  const joined = alongChain(nameJoinedPieces(settled, words), words);
  return { label, steps: joined, counts: lastCount(counts, joined), orders, slips };
}

/** "Rows 6, 8 & 10": rows of others stand between them. */
const hasGaps = ({ numbers: [first = 0, second = 0, third] }: RowLabel): boolean =>
  third !== undefined && second > first + 1;

/**
 * "Rows 6, 8 & 10: Sc in each sc across. (34 sc at end of row 10)": the rows between are told elsewhere, and the
 * count is of the last alone, with what those have made.
 */
function countsOfLast(counts: readonly StatedCount[], r: Reader): readonly StatedCount[] {
  return counts.map((count) => {
    const words = r.text.slice(r.base + count.from, r.base + count.to);
    return AT_END.test(words) ? { ...count, partial: true } : count;
  });
}

const AT_END = /\b(?:at|by) (?:the )?end of (?:row|rnd|round)\b/i;

/** What the work begins with, or that there is none, is told by the first step: these are asked by its kind. */
function settleLabelled(steps: Step[], label: RowLabel, r: Reader): void {
  ringFirst(steps, label, r);
  if (isHinted(r, RING)) ringBehind(steps);
  const first = steps[0]?.kind;
  if (first === 'rows-again' && !toldInFull(steps, r)) changedBehind(steps, label, r);
  if (first !== 'remark') return;
  if (steps[1]?.kind === 'rows-again') toldInFull(steps, r);
  likeOther(steps, label, r);
  talkOfWork(steps, label, r);
}

function settleUnlabelled(steps: Step[], r: Reader): void {
  if (isHinted(r, RING)) ringBehind(steps);
  noteAlone(steps, r);
  nameAlone(steps, r);
  if (!OPENS_WORK.has(steps[0]?.kind)) likePart(steps, wordsOf(r));
}

/** Names of the ring that a round begins with. */
const RING = hintOf([W.ring, W.mr, W.mc, W.ml, W.magic, W.loop, W.slip_knot, W.knot]);

/** The words of the instruction, where they are few. */
const wordsOf = (r: Reader): string =>
  r.text.slice(r.base, r.base + Math.min(r.from[r.count - 1] ?? 0, MOST_WORDS));

const MOST_WORDS = 100;
const OPENS_WORK: ReadonlySet<Step['kind'] | undefined> = new Set([
  'work',
  'chain',
  'repeat',
  'group',
]);

// Most instructions have none of these: the lists of all of them may be one.
const NO_ORDERS: readonly StandingOrder[] = [];
const NO_SLIPS: readonly Slip[] = [];

/** "Rnds 9-11. 3 rnds (28)": nothing but how many there are, and what each ends with. */
function rowsAlone(steps: Step[], label: RowLabel, counts: readonly StatedCount[]): void {
  const [rows] = counts;
  if (label.numbers.length < 2 || rows?.unit !== 'row') return;
  if (rows.n.values[0] !== label.numbers.length || steps.some((s) => s.kind !== 'remark')) return;
  const { from, to } = rows;
  steps.unshift({ kind: 'even', stitch: null, rows: null, measure: null, until: null, from, to });
}

/** "Rows 16-22: (49)": worked even, as the count says. */
function countAlone(steps: Step[], label: RowLabel, { length }: readonly StatedCount[]): void {
  if (steps.length > 0 || length !== 1 || (label.numbers[0] ?? 0) < 2) return;
  steps.push({
    kind: 'even',
    stitch: null,
    until: null,
    rows: null,
    measure: null,
    from: label.to,
    to: label.to,
  });
}

/** "Rnd 1: MC, ch 3": no yarn of that name is told of, so that the circle is meant. */
function ringFirst(steps: Step[], label: RowLabel, r: Reader): void {
  const first = steps[0];
  const next = steps[1];
  if (label.numbers[0] !== 1) return;
  if (first?.kind === 'work') return intoKnot(steps, first, r);
  if (first?.kind !== 'remark' || r.known.yarns.has('MC')) return;
  if (next?.kind !== 'chain' && next?.kind !== 'work') return;
  if (r.text.slice(r.base + first.from, r.base + first.to).toUpperCase() !== 'MC') return;
  steps[0] = { kind: 'ring', from: first.from, to: first.to };
}

/** "6 sc using the magic ring technique", "8 hdc, magic ring": it is made before what goes into it. */
function ringBehind(steps: Step[]): void {
  const at = steps.findIndex(({ kind }) => kind === 'work');
  const [work, ring] = [steps[at], steps[at + 1]];
  if (work?.kind !== 'work' || ring?.kind !== 'ring') return;
  if (work.place || work.until || (work.n?.values[0] ?? 1) < FEWEST_IN_RING) return;
  steps[at] = ring;
  steps[at + 1] = work;
}

/** "6 sc in the slip knot", "in slip loop", and "in the slip stitch" of a translator: the ring. */
function intoKnot(steps: Step[], first: WorkStep, r: Reader): void {
  const { place, n } = first;
  if (place?.pick !== 'this' || place.of || place.nouns[0]?.kind !== 'join') return;
  if ((n?.values[0] ?? 1) < FEWEST_IN_RING) return;
  steps[0] = { ...first, place: { ...place, nouns: [{ ...PLAIN_NOUN, kind: 'ring' }] } };
  const next = steps[1];
  const words = next?.kind === 'remark' ? r.text.slice(r.base + next.from, r.base + next.to) : '';
  if (/^(?:knot|loop)$/i.test(words)) steps.splice(1, 1);
}

const FEWEST_IN_RING = 3;

/** "3dc-grp = this is a grouping of 3 double crochet stitches": what a short form means, and no row. */
function nameAlone(steps: Step[], r: Reader): void {
  if (steps.length === 0) return;
  const words = r.text.slice(r.base, r.base + Math.min(24, r.from[r.count - 1] ?? 0));
  if (!/^\s*\d?[a-z]{2,6}-[a-z]{2,8}\.? = /i.test(words)) return;
  const [first, last] = [steps[0], steps.at(-1)];
  if (first && last)
    steps.splice(0, steps.length, { kind: 'remark', from: first.from, to: last.to });
}

/** "US terms. Ch 3 counts as dc throughout.": a sentence about chains makes none. */
function noteAlone(steps: Step[], r: Reader): void {
  if (!steps.every((step) => step.kind === 'remark' || isTold(step))) return;
  // "Ch 3 (counts as dc)" and "ch 140, + 3 to count as dc" are worked.
  for (let i = 0; i < r.count; i++) if (r.kind[i] === T.open || r.kind[i] === T.plus) return;
  steps.forEach((step, i) => {
    if (!isTold(step)) return;
    const { n, countsAs, from, to } = step;
    steps[i] = { kind: 'remark', from, to };
    if (countsAs && !countsAs.throughout)
      r.orders.push({ kind: 'start-chain', n: n?.values[0] ?? null, countsAs, from, to });
  });
}

/** "Rows 2-4: As first side.", "as for the left front": the rows of these numbers there. */
function likeOther(steps: Step[], label: RowLabel, r: Reader): void {
  const [only] = steps;
  if (label.numbers.length === 0 || only?.kind !== 'remark' || steps.some(makes)) return;
  const words = r.text.slice(r.base + only.from, r.base + only.to);
  const part = /^(?:work |same )?(?:as|like) (?:for )?(?:the )?([a-z' -]+\w)\.?$/i.exec(words)?.[1];
  if (!part || /\b(?:set|before|established|follows|usual)\b/i.test(part)) return;
  steps[0] = rowsOfPart(label.numbers, part, only);
}

/**
 * A numbered row that was taken for nothing but talk, though stitches and their places are named in it:
 * it was not understood, and would else be lost in silence.
 */
function talkOfWork(steps: Step[], label: RowLabel, r: Reader): void {
  if (label.numbers.length === 0) return;
  if (!steps.every(({ kind }) => kind === 'remark')) return;
  for (let i = r.count - 1; i >= 0; i--) {
    if (!mayBeStitch(r.word[i] ?? 0) || r.word[i + 1] !== W.in) continue;
    steps.forEach(({ from, to }, at) => {
      steps[at] = { kind: 'unread', says: 'work', from, to };
    });
    return;
  }
}

/** "adding one more sc between the increases": what is put in, or left out, beside the row named. */
const CHANGES =
  /^(?:but |and |only )*(?:add(?:ing)?|plac(?:e|ing)|put(?:ting)?|work(?:ing)?|mak(?:e|ing)|having|leav(?:e|ing)|with)\b.*\b(?:\d|one|an?|two|three|more|extra|additional)\b/i;

/** "Row 3: Same as row 1. Ch 1, turn, sc in each st across.": like which row it is, and then the row itself. */
function toldInFull(steps: Step[], r: Reader): boolean {
  const at = steps.findIndex(({ kind }) => kind !== 'remark');
  const again = steps[at];
  const next = steps[at + 1];
  if (again?.kind !== 'rows-again' || again.rows.length !== 1 || !next) return false;
  const wordsFrom = (from: number, to: number): string => r.text.slice(r.base + from, r.base + to);
  if (!LIKENESS.test(wordsFrom(again.from, again.to))) return false;
  if (!/^\s*\.\s*$/.test(wordsFrom(again.to, next.from))) return false;
  const isRow = steps.slice(at + 1).some((step) => step.kind === 'repeat' || step.kind === 'work');
  if (isRow) steps[at] = { kind: 'remark', from: again.from, to: again.to };
  return isRow;
}

const LIKENESS = /^(?:(?:the )?same as|repeat of|like|as) (?:row|rnd|round) ?\d{1,3}$/i;

/** "Row 3: Rep row 2, then sc2tog over last 2 sts": how the two go together is not said. */
function changedBehind(steps: Step[], label: RowLabel, r: Reader): void {
  if (label.numbers.length !== 1) return;
  const changes = (step: Step): boolean =>
    step.kind === 'remark' &&
    CHANGES.test(
      r.text.slice(r.base + step.from, Math.min(r.base + step.to, r.base + step.from + 80)),
    );
  // "Row 4: Same as row 2. Rep rows 1-4 for pattern": an order behind the row.
  const order = steps.findIndex(
    ({ kind, from }, i) =>
      i > 0 && kind === 'rows-again' && /[.\n]\s*$/.test(r.text.slice(r.base, r.base + from)),
  );
  const end = order < 0 ? steps.length : order;
  steps.forEach((step, i) => {
    if (i > 0 && i < end && (makes(step) || changes(step)))
      steps[i] = { kind: 'unread', says: 'work', from: step.from, to: step.to };
  });
}

const isTold = (step: Step): step is ChainStep => step.kind === 'chain' && step.countsAs !== null;
