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
import { absolute, instructionsOf, type Placed, rowIds } from './rows.ts';

interface Numbered extends Placed {
  readonly label: RowLabel;
  readonly first: number;
  /** Last numbers, one a size where sizes differ. */
  readonly lasts: readonly number[];
  /** What stands between this label and the one before it. */
  readonly gap: 'none' | 'rows' | 'start';
}

export function numbering(scene: Scene): Finding[] {
  const findings: Finding[] = [];
  for (const run of runsOf(scene)) {
    run.forEach((_, i) => {
      const finding = i === 0 ? null : check(scene, run, i);
      if (finding) findings.push(finding);
    });
  }
  return findings;
}

/** Labelled rows that share one numbering. */
function runsOf(scene: Scene): Numbered[][] {
  const runs: Numbered[][] = [];
  let run: Numbered[] = [];
  let part = -1;
  let gap: Numbered['gap'] = 'none';
  const close = (): void => {
    if (run.length > 1) runs.push(run);
    run = [];
  };
  for (const placed of instructionsOf(scene)) {
    const isNewPart = placed.partIndex !== part;
    part = placed.partIndex;
    if (isNewPart && !scene.manuscript.parts[part]?.continues) close();
    const { label, steps } = placed.placed.instruction;
    const first = label?.numbers[0];
    if (!label || first === undefined) {
      if (steps.some((step) => ['ring', 'join', 'fasten-off'].includes(step.kind))) gap = 'start';
      else if (gap === 'none' && !isMoveless(placed)) gap = 'rows';
      continue;
    }
    const top = run.at(-1);
    const isBack = top !== undefined && first <= Math.max(...top.lasts) && label.sizes === '';
    if (isBack && (isNewPart || gap === 'start' || endsHere(top))) close();
    run.push({ ...placed, label, first, lasts: lastsOf(label), gap });
    gap = 'none';
  }
  close();
  return runs;
}

const lastsOf = (label: RowLabel): readonly number[] =>
  label.lastBySize ?? [label.numbers.at(-1) ?? 0];

/** A foundation, a remark: no row that could have a number. */
const isMoveless = ({ placed }: Placed): boolean =>
  placed.instruction.steps.every((step) =>
    ['chain', 'remark', 'yarn', 'turn', 'loop', 'mark'].includes(step.kind),
  );

const endsHere = ({ placed }: Placed): boolean =>
  placed.instruction.steps.some((step) => step.kind === 'fasten-off' && !step.not);

/** After these the next number may be any later one. */
function leavesOpen({ placed, label }: Numbered): boolean {
  const { steps } = placed.instruction;
  return (
    label.openEnd ||
    label.next !== null ||
    label.sizes !== '' ||
    (label.numbers.length === 1 && steps.some(isSeveral))
  );
}

/** An order that may ask for more than one row. */
const isSeveral = (step: Step): boolean => {
  if (step.kind === 'even') return step.rows !== null || step.measure !== null;
  if (step.kind !== 'rows-again') return false;
  const isOne = step.rows.length <= 1 && (step.lastN ?? 1) === 1;
  return !isOne || step.times !== null || step.moreRows !== null || step.measure !== null;
};

function check(scene: Scene, run: readonly Numbered[], i: number): Finding | null {
  const row = run[i] as Numbered;
  const before = run[i - 1] as Numbered;
  if (row.label.sizes !== '' || row.gap !== 'none' || leavesOpen(before)) return null;
  if (before.lasts.some((last) => last + 1 === row.first)) return null;
  // Rows among rounds: a flap, a loop, with numbers of its own, or the rounds that go on after it.
  if (isOtherWord(row, before)) return null;
  const earlier = run.slice(0, i);
  const highest = Math.max(...earlier.flatMap(({ lasts }) => lasts));
  if (row.first > highest) return missing(scene, run, { i, row, before });
  // Back in line after a number that was out of it, and told so.
  if (row.first === highest) return isToldGap(run, i) ? null : twice(scene, run, i);
  if (earlier.some((one) => one.first <= row.first && row.first <= Math.max(...one.lasts))) {
    return isSecondRun(run, i) ? null : twice(scene, run, i);
  }
  return isFirstBack(run, i) ? order(scene, row, before) : null;
}

/** The number before is one too high, and was told as a gap: 5, 7, 7. */
function isToldGap(run: readonly Numbered[], i: number): boolean {
  const before = run[i - 1];
  const beforeThat = run[i - 2];
  return (
    before !== undefined &&
    beforeThat !== undefined &&
    before.first === run[i]?.first &&
    before.first > Math.max(...beforeThat.lasts) + 1
  );
}

/** "Rows 1-8, 5-8": a second leg from the same row on is told at its first row only. */
function isSecondRun(run: readonly Numbered[], i: number): boolean {
  const before = run[i - 1];
  return before !== undefined && run.slice(0, i - 1).some((one) => one.first === before.first);
}

const isOtherWord = ({ label }: Numbered, before: Numbered): boolean =>
  label.word !== '' && before.label.word !== '' && label.word !== before.label.word;

const isFirstBack = (run: readonly Numbered[], i: number): boolean =>
  (run[i - 1]?.first ?? 0) > (run[i]?.first ?? 0);

function twice(scene: Scene, run: readonly Numbered[], i: number): Finding | null {
  const row = run[i] as Numbered;
  const first = run
    .slice(0, i)
    .find((one) => one.first <= row.first && row.first <= Math.max(...one.lasts));
  if (!first || remarkOf(first.label) !== remarkOf(row.label)) return null;
  const labels = [{ ...absolute(first.placed, first.label), text: 'the first of them' }];
  const words = { row: labelName(row.label, row.first) };
  const at = absolute(row.placed, row.label);
  const finding = rowDoubled(at, words, { labels, rows: rowIds(scene, row) });
  return propose(finding, renumbered(scene, row, row.first + 1));
}

/** "Row 5 (left front)" and "Row 5 (right front)" are two rows; sides and punctuation say nothing. */
const remarkOf = ({ text }: RowLabel): string =>
  text
    .toLowerCase()
    .replace(/\b(?:rows?|rnds?|rounds?|rds?|r|rs|ws|right side|wrong side|st|nd|rd|th)\b/g, ' ')
    .replace(/(\d)(?:st|nd|rd|th)\b/g, '$1')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

function order(scene: Scene, row: Numbered, before: Numbered): Finding {
  const words = {
    row: labelName(row.label, row.first),
    before: labelName(before.label, before.lasts.at(-1)),
  };
  return rowOrder(absolute(row.placed, row.label), words, { rows: rowIds(scene, row) });
}

function missing(
  scene: Scene,
  run: readonly Numbered[],
  { i, row, before }: { i: number; row: Numbered; before: Numbered },
): Finding | null {
  const earlier = run.slice(0, i);
  const highest = Math.max(...earlier.flatMap(({ lasts }) => lasts));
  const every = new Set(earlier.map(({ label }) => label.every));
  const later = run.slice(i + 1);
  const gone: number[] = [];
  for (let n = highest + 1; n < row.first && gone.length < 500; n++) {
    if (every.has(n % 2 === 0 ? 'even' : 'odd')) continue;
    if (later.some((one) => one.first <= n && n <= Math.max(...one.lasts))) continue;
    gone.push(n);
  }
  if (gone.length === 0 || isRenumbered(run, i)) return null;
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

/** The label with another number. */
function renumbered(scene: Scene, row: Numbered, number: number): Fix[] {
  const { text } = scene.manuscript;
  const { from, to } = absolute(row.placed, row.label);
  const at = /\d+/.exec(text.slice(from, to));
  if (!at || row.label.numbers.length !== 1) return [];
  const span = { from: from + at.index, to: from + at.index + at[0].length };
  return [{ ...replacement(text, span, String(number)), title: `number it ${number}` }];
}

/** 9, 9, 11: the second 9 was told as doubled; numbered 10, nothing is missing. */
function isRenumbered(run: readonly Numbered[], i: number): boolean {
  const before = run[i - 1];
  const beforeThat = run[i - 2];
  if (!before || !beforeThat || before.first > Math.max(...beforeThat.lasts)) return false;
  return (run[i]?.first ?? 0) === Math.max(...beforeThat.lasts) + 2;
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
