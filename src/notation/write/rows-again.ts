/** "rep rnd 4", "rep last 2 rows 3 more times", "as rows 4-7 of Front", "work even for 10 rows". */
import type {
  ChangedNumber,
  EndShaping,
  EvenStep,
  Measure,
  Numbers,
  RowsAgainStep,
  StitchTerm,
} from '../tree.ts';
import { isOne, writeMoreTimes, writeNumbers, writeRows } from './numbers.ts';
import { writeUntil } from './place.ts';
import { writeStitch } from './stitch.ts';
import { type Voice, writeStem } from './voice.ts';

export function writeRowsAgain(step: RowsAgainStep, voice: Voice): string {
  const verb = step.part === null ? 'rep' : 'as';
  const part = step.part === null ? '' : ` of ${step.part}`;
  return [`${verb} ${named(step, voice)}${part}`, ...limits(step, voice)].join('');
}

function named(step: RowsAgainStep, voice: Voice): string {
  if (step.named !== null) return `${step.named} ${voice.course}`;
  if (step.lastN === null) return `${step.onward ? 'from ' : ''}${rowsNamed(step.rows, voice)}`;
  return step.lastN === 1 ? `last ${voice.course}` : `last ${step.lastN} ${voice.course}s`;
}

function limits(step: RowsAgainStep, voice: Voice): string[] {
  const found: string[] = [];
  // "rnds 7 and 8, 5 more times": without the comma two numbers would meet.
  const comma = step.lastN === null ? ',' : '';
  if (step.times !== null) found.push(`${comma} ${writeMoreTimes(step.times, voice)}`);
  if (step.moreRows !== null) found.push(` for ${rowsOf(step.moreRows, 'more ', voice)}`);
  if (step.rowsInAll !== null) found.push(` until there are ${rowsOf(step.rowsInAll, '', voice)}`);
  if (step.stitchesAtEnd !== null) {
    found.push(` until there are ${writeNumbers(step.stitchesAtEnd, voice)} sts`);
  }
  if (step.measure !== null) found.push(` ${measured(step.measure)}`);
  if (step.endingWith !== null) {
    found.push(`, ending with ${rowsNamed([step.endingWith], voice)}`);
  }
  for (const change of step.changes) found.push(`, ${writeChange(change, voice)}`);
  if (step.every !== null) found.push(` for all ${step.every} ${voice.course}s`);
  if (step.then.length > 0) found.push(`, then rep ${rowsNamed(step.then, voice)}`);
  return found;
}

function writeChange(change: ChangedNumber, voice: Voice): string {
  const on = change.rows.length > 0 ? ` on ${rowsNamed(change.rows, voice)}` : '';
  return `${numberChanged(change, voice)}${on}`;
}

function numberChanged({ stem, was, now, atEnd }: ChangedNumber, voice: Voice): string {
  if (atEnd) return `but ch ${now} to turn`;
  const of = (n: number): string => (stem ? `${n} ${writeStem(stem, voice)}` : `ch ${n}`);
  if (was !== null) return `but ${of(now)} instead of ${of(was)}`;
  return stem ? `having ${of(now)} in each place` : `having ${of(now)} between sts`;
}

export function writeEven(step: EvenStep, voice: Voice): string {
  const stitch = step.stitch === null ? '' : ` in ${writeStitch(step.stitch, false, voice)}`;
  const rows = step.rows === null ? '' : ` for ${rowsOf(step.rows, '', voice)}`;
  const measure = step.measure === null ? '' : ` ${measured(step.measure)}`;
  if (step.shaping) return shaped(step.shaping, step.stitch, voice);
  if (step.until !== null) return `work in pattern${stitch} ${writeUntil(step.until, voice)}`;
  return `work even${stitch}${rows}${measure}`;
}

const PLACES = {
  both: ' at each end',
  start: ' at beg',
  end: ' at end',
  somewhere: ' at one edge',
} as const;

/** "dec 1 st at each end of next row and every 4th row 3 times" */
function shaped(
  { stitch, n, at, every, next, times }: EndShaping,
  middle: StitchTerm | null,
  voice: Voice,
): string {
  const before = middle ? `${writeStitch(middle, false, voice)} across, ` : '';
  const course = `${every === 1 ? '' : every === 2 ? 'other ' : `${every}${every === 3 ? 'rd' : 'th'} `}${voice.course}`;
  const often = times ? ` ${writeNumbers(times, voice)} times` : '';
  const rest = `every ${course}${often}`;
  const rows = next ? ` of next ${voice.course}${times ? ` and ${rest}` : ''}` : ` ${rest}`;
  const many = `${n} ${n === 1 ? 'st' : 'sts'}`;
  return `${before}${writeStitch(stitch, false, voice)} ${many}${PLACES[at]}${rows}`;
}

/** "Row 4", "Rnds 2-5": with a capital, as the labels that they point to. */
const rowsNamed = (rows: readonly number[], voice: Voice): string =>
  `${voice.course === 'rnd' ? 'Rnd' : 'Row'}${rows.length === 1 ? '' : 's'} ${writeRows(rows)}`;

const rowsOf = (n: Numbers, more: string, voice: Voice): string =>
  `${writeNumbers(n, voice)} ${more}${isOne(n) ? voice.course : `${voice.course}s`}`;

/** Lengths are held in mm and written in cm; inches come out as cm with two places (2.54 each). */
function measured({ mm, since }: Measure): string {
  if (mm === null) return 'until piece measures desired length';
  const length = `${Math.round(mm * 10) / 100} cm`;
  if (since === 'here') return `for ${length}`;
  return `until ${since === 'start' ? 'piece' : 'length'} measures ${length}`;
}
