/**
 * Steps one after the other, with what stands between them: commas inside a bracket; in the row
 * itself a semicolon before what closes it ("; join", "; turn") or moves the work round, and a new
 * sentence for "Fasten off".
 */
import type { Step } from '../tree.ts';
import { writeStep } from './step.ts';
import { isVerbatim } from './verbatim.ts';
import type { Voice, WriteOptions } from './voice.ts';

/** The list inside a bracket, a group or an ending. */
const writeList = (steps: readonly Step[], voice: Voice): string =>
  joined(steps, voice, (before, step) => {
    if (isVerbatim(step)) return asQuoted(before, step, voice);
    return hasEnding(before) ? '; ' : ', ';
  });

/** The list of a whole instruction, without its capital and its last full stop. */
export const writeRow = (steps: readonly Step[], voice: Voice): string =>
  joined(steps, voice, (before, step) => separator(before, step, voice));

type Separator = (before: Step, step: Step) => string;

function joined(steps: readonly Step[], voice: Voice, between: Separator): string {
  let out = '';
  let before: Step | null = null;
  for (const [at, step] of steps.entries()) {
    const supplies = voice.supplies && !runsInto(step, steps[at + 1], voice);
    const words = inContext(writeStep(step, { ...voice, supplies }), before, step);
    if (words === '') continue;
    const gap = before === null ? '' : step.kind === 'mark' ? ' ' : between(before, step);
    out += gap + (gap.endsWith('. ') ? capitalised(words) : words);
    before = step;
  }
  return out;
}

/**
 * "Work 5 open boxes, 2 filled boxes": the verb is said once. A spiral is ordered where it begins,
 * and told at the end of a round by what is left out.
 */
function inContext(words: string, before: Step | null, step: Step): string {
  if (step.kind === 'spiral' && before === null) return 'work in continuous rnds';
  const isGoingOn = before?.kind === 'boxes' && step.kind === 'boxes';
  return isGoingOn ? words.replace(/^work (?=\d+ [a-z])/, '') : words;
}

/** "sc in each flumble": what was not read may be the noun, so none is put in its place. */
const runsInto = (step: Step, next: Step | undefined, voice: Voice): boolean =>
  next?.kind === 'unread' && /^\s*$/.test(voice.quote({ from: step.to, to: next.from }));

function separator(before: Step, step: Step, voice: Voice): string {
  if (isVerbatim(step) || isVerbatim(before)) return asQuoted(before, step, voice);
  if (isFastening(step) || isFastening(before)) return '. ';
  if (ordersRows(step) || ordersRows(before)) return '. ';
  if (isSentence(step) && !opensRow(before)) return '. ';
  return hasEnding(before) || closes(before, step) ? '; ' : ', ';
}

/** "ending with sc in last st" takes in all that follows it, up to a semicolon. */
const hasEnding = (step: Step): boolean => step.kind === 'repeat' && step.ending !== null;

const isFastening = (step: Step): boolean => step.kind === 'fasten-off';

/** "Dec 1 st at each end of next row. Work even for 3 rows." */
const ordersRows = (step: Step): boolean =>
  step.kind === 'even' && (step.shaping !== undefined || step.rows !== null);

/** "Sc in next 8 sts, inc; rep around": the order speaks of its sentence, which begins here. */
const isSentence = (step: Step): boolean =>
  step.kind === 'repeat' && step.mark === '' && step.steps.length > 1 && !step.again;

/** What opens a row is never part of a sentence that repeats. */
const opensRow = (step: Step): boolean =>
  step.kind === 'chain' || step.kind === 'turn' || step.kind === 'join' || step.kind === 'yarn';

function closes(before: Step, step: Step): boolean {
  switch (step.kind) {
    case 'join':
      return step.yarn === null;
    case 'turn':
      return before.kind !== 'chain' && before.kind !== 'join';
    case 'spiral':
    case 'other-side':
      return true;
    default:
      return false;
  }
}

/**
 * Beside words that were not read, the designer's own stops and links are kept: a comma put in their place
 * could make the next reading take them apart at another spot.
 */
function asQuoted(before: Step, step: Step, voice: Voice): string {
  if (before.to > step.from) return ', ';
  const stops = voice.quote({ from: before.to, to: step.from }).replace(/\s+/g, ' ');
  if (!/^[ ,;.:/–-]+(?:(?:and|or|then) )?$/i.test(stops)) return ', ';
  return stops.includes('.') ? '. ' : `${stops.trimEnd()} `;
}

/** A capital at the start of a sentence, behind an opening star or bracket too. */
const capitalised = (words: string): string =>
  words.replace(/^[*†‡°([]*[a-z]/, (start) => start.toUpperCase());

/** The same with its capital and one full stop. */
export const sentence = (words: string): string =>
  words === '' ? '' : `${capitalised(words)}${/[.!?]$/.test(words) ? '' : '.'}`;

/** The voice for these options; `course` as the label says. */
export const voiceOf = (options: WriteOptions & Pick<Voice, 'course'>): Voice => ({
  ...options,
  quote: options.quote ?? (() => ''),
  supplies: true,
  list: writeList,
});
