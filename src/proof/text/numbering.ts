/**
 * The numbers of the rows in a part: missing, given twice, out of order. Numbers may start again
 * with each part, sizes may have rows of their own, "and all even rows" stands for rows that are not
 * written out, and after "rep rows 2 and 3 until …" any later number may follow.
 */
import { type Finding, type Fix, rowDoubled, rowMissing, rowOrder } from '../../finding/index.ts';
import type { RowLabel, Step } from '../../notation/index.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { labelName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { type Numbered, type Run, runsOf } from './numbering-runs.ts';
import { rowOneOf } from './row-one.ts';
import { absolute, isForSizes, rowIds, stepsIn } from './rows.ts';

export function numbering(scene: Scene): Finding[] {
  const runs = runsOf(scene);
  return runs.flatMap((run, nth) =>
    run.rows.flatMap((_, i) => (i === 0 ? rowOneOf(scene, runs, nth) : check(scene, run, i)) ?? []),
  );
}

/** After these the next number may be any later one. */
function leavesOpen(row: Numbered): boolean {
  const { placed, label } = row;
  const { steps } = placed.instruction;
  return (
    label.openEnd ||
    label.next !== null ||
    isForSizes(row) ||
    (label.numbers.length === 1 && (steps.some(isSeveral) || repeatsUnread(steps)))
  );
}

/** "Rep last row …" with words that were not understood: they may tell how often. */
const repeatsUnread = (steps: readonly Step[]): boolean =>
  steps.some(({ kind }) => kind === 'rows-again') && steps.some(({ kind }) => kind === 'unread');

/** A list of missing numbers longer than this says no more. */
const MOST_MISSING = 500;

/** An order that may ask for more than one row. */
const isSeveral = (step: Step): boolean => {
  if (step.kind === 'even') return step.rows !== null || step.measure !== null;
  if (step.kind !== 'rows-again') return false;
  const isOne = step.rows.length <= 1 && !step.onward && (step.lastN ?? 1) === 1;
  return (
    !isOne ||
    step.times !== null ||
    step.moreRows !== null ||
    step.rowsInAll !== null ||
    step.stitchesAtEnd !== null ||
    step.measure !== null
  );
};

function check(scene: Scene, run: Run, i: number): Finding | null {
  const row = run.rows[i] as Numbered;
  const before = run.rows[i - 1] as Numbered;
  if (isForSizes(row) || row.gap === 'rows' || row.repeats) return null;
  if (leavesOpen(before)) return null;
  if (before.lasts.some((last) => last + 1 === row.first)) return null;
  // Rows among rounds: a flap, a loop, with numbers of its own, or the rounds that go on after it.
  if (isOtherWord(row, before)) return null;
  if (row.first > row.highest) return missing(scene, run, i);
  // A number that was told as a gap comes again, in its right place: 5, 7, 7.
  if (row.first === row.highest) return isToldGap(run, i) ? null : twice(scene, run, i);
  if ((run.firstAt.get(row.first) ?? i) < i)
    return isSecondRun(run, i) ? null : twice(scene, run, i);
  return before.first > row.first ? order(scene, row, before) : null;
}

/** The number before is one too high, and was told as a gap: 5, 7, 7. */
function isToldGap({ rows }: Run, i: number): boolean {
  const [beforeThat, before] = [rows[i - 2], rows[i - 1]];
  if (!before || !beforeThat) return false;
  return before.first === rows[i]?.first && before.first > beforeThat.last + 1;
}

/** "Rows 1-8, 5-8": a second leg from the same row on is told at its first row only. */
function isSecondRun({ rows, firstAt }: Run, i: number): boolean {
  const before = rows[i - 1];
  return before !== undefined && (firstAt.get(before.first) ?? i) < i - 1;
}

const isOtherWord = ({ label }: Numbered, before: Numbered): boolean =>
  label.word !== '' && before.label.word !== '' && label.word !== before.label.word;

function twice(scene: Scene, run: Run, i: number): Finding | null {
  const row = run.rows[i] as Numbered;
  const first = run.rows[run.firstAt.get(row.first) ?? i];
  if (!first || first === row || remarkOf(first.label) !== remarkOf(row.label)) return null;
  if (isHeadingOf(run, i) || isEither(scene, first) || isEither(scene, row)) return null;
  const labels = [{ ...absolute(first.placed, first.label), text: 'the first of them' }];
  const words = { row: labelName(row.label, row.first) };
  const at = absolute(row.placed, row.label);
  const finding = rowDoubled(at, words, { labels, rows: rowIds(scene, row) });
  return propose(finding, renumbered(scene, row, row.first + 1));
}

/** "Optional Row 1: Ch 26, …" beside the row in other words. */
const isEither = ({ manuscript: { text } }: Scene, { placed, label }: Numbered): boolean => {
  const at = placed.from + label.from;
  return /\b(?:optional|alternat(?:e|ive)|or)\W*$/i.test(text.slice(Math.max(0, at - 16), at));
};

/** "Round 2" and "With B, join in any dc" above "Rnd 2: …": the lines name the round that follows. */
function isHeadingOf({ rows }: Run, i: number): boolean {
  const before = rows[i - 1];
  if (!before || before.first !== rows[i]?.first || before.last !== before.first) return false;
  return [...stepsIn(before.placed.instruction.steps)].every(({ kind }) => !WORKS.has(kind));
}

const WORKS: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'work',
  'group',
  'repeat',
  'chain',
  'boxes',
  'chart',
  'even',
  'rows-again',
  'unread',
]);

/**
 * "Row 5 (left front)" and "Row 5 (right front)" are two rows; sides, punctuation and the other numbers
 * of a range say nothing.
 */
const remarkOf = ({ text }: RowLabel): string =>
  text
    .toLowerCase()
    .replace(/\b(?:rows?|rnds?|rounds?|rds?|r|rs|ws|right side|wrong side|st|nd|rd|th)\b/g, ' ')
    .replace(/(\d)(?:st|nd|rd|th)\b/g, '$1')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .replace(/^(?:(?:\d+|to|and|through|thru)(?: |$))+/, '');

function order(scene: Scene, row: Numbered, before: Numbered): Finding {
  const words = {
    row: labelName(row.label, row.first),
    before: labelName(before.label, before.lasts.at(-1)),
  };
  return rowOrder(absolute(row.placed, row.label), words, { rows: rowIds(scene, row) });
}

function missing(scene: Scene, run: Run, i: number): Finding | null {
  const row = run.rows[i] as Numbered;
  const before = run.rows[i - 1] as Numbered;
  const { highest } = row;
  const gone: number[] = [];
  for (let n = highest + 1; n < row.first && gone.length < MOST_MISSING; n++) {
    if (!isSpokenFor(run, n) && (run.lastAt.get(n) ?? -1) < i) gone.push(n);
  }
  if (gone.length === 0 || isRenumbered(run, i)) return null;
  if (gone.some((n) => isSpokenOf(scene, n, before, row))) return null;
  const words = {
    before: labelName(before.label, before.lasts.at(-1)),
    after: labelName(row.label, row.first),
    missing: numbersSaid(row.label, gone),
    count: gone.length,
  };
  const labels = [{ ...absolute(before.placed, before.label), text: 'the row before' }];
  const at = absolute(row.placed, row.label);
  const finding = rowMissing(at, words, { labels, rows: rowIds(scene, row) });
  return propose(finding, renumbered(scene, row, highest + 1));
}

/**
 * "… join. Row 2 Work one st …": the number stands in the words between, where it was not taken for a
 * label. That those were not understood is told by itself.
 */
function isSpokenOf(
  { manuscript: { text } }: Scene,
  n: number,
  before: Numbered,
  row: Numbered,
): boolean {
  const words = text.slice(before.placed.from + before.label.to, row.placed.from);
  // "Work 1 round even." that was not understood is the row.
  if (/\bwork (?:\d{1,2}|one|two|three) (?:more )?(?:rows?|rnds?|rounds?)\b/i.test(words))
    return true;
  return new RegExp(
    `\\b(?:rows?|rnds?|rounds?|r)\\s?${n}\\b|\\b${n}(?:st|nd|rd|th) (?:row|rnd|round)|(?:^|[\\n.)|])\\s*${n}\\s?[.:)]|\\n[ \\t]*${n}[ \\t]`,
    'i',
  ).test(words);
}

/** The label with another number. */
function renumbered(scene: Scene, row: Numbered, number: number): Fix[] {
  const { text } = scene.manuscript;
  const { from, to } = absolute(row.placed, row.label);
  const at = /\d+/.exec(text.slice(from, to));
  if (!at || row.label.numbers.length !== 1) return [];
  const span = { from: from + at.index, to: from + at.index + at[0].length };
  return [{ ...replacement(text, span, String(number)), title: `number it ${number}` }];
}

/** "Row 2 and all even rows" is label enough for row 4. */
const isSpokenFor = ({ every }: Run, n: number): boolean =>
  (every.get(n % 2 === 0 ? 'even' : 'odd') ?? n) < n;

/** 9, 9, 11: the second 9 was told as doubled; numbered 10, nothing is missing. */
function isRenumbered({ rows }: Run, i: number): boolean {
  const [beforeThat, before] = [rows[i - 2], rows[i - 1]];
  if (!before || !beforeThat || before.first > beforeThat.last) return false;
  return rows[i]?.first === beforeThat.last + 2;
}

function numbersSaid(label: RowLabel, numbers: readonly number[]): string {
  const word = label.word === '' ? 'row' : label.word;
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (numbers.length === 1) return `${word} ${first}`;
  if (numbers.length === 2) return `${word}s ${first} and ${last}`;
  return numbers.length === (last ?? 0) - (first ?? 0) + 1
    ? `${word}s ${first} to ${last}`
    : `${word}s ${numbers.slice(0, 5).join(', ')}${numbers.length > 5 ? ' …' : ''}`;
}
