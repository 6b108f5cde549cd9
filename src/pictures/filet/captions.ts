/** The sentences on a chart: what it shows, how to read it, how true its boxes are. */
import { startsAt } from '../../filet/index.ts';
import { length, printLength } from '../../units/index.ts';
import { timesWords } from './again-marks.ts';
import { besideWords } from './beside.ts';
import type { Sheet } from './sheet.ts';

/** "Tide", or "Chart" for the only one of its pattern. */
export const chartTitle = ({ name }: Pick<Sheet, 'name'>): string => (name === '' ? 'Chart' : name);

/** "Rnds 12-18"; '' where no row works the chart. */
function rowsInWords(sheet: Sheet): string {
  const named = sheet.rows.filter(({ label }) => label !== '');
  const [first] = named;
  const last = named.at(-1);
  if (!first || !last) return '';
  if (first === last) return first.label;
  const word = /^\p{L}+/u.exec(first.label)?.[0] ?? 'Row';
  return `${word}s ${first.number}–${last.number}`;
}

/** "Filet chart, 21 boxes wide and 7 rounds high (Rnds 12-18), for right-handed makers." */
export function whatItShows(sheet: Sheet): string {
  const { columns, rows, form, hand } = sheet;
  const high = counted(rows.length, form === 'flat' ? 'row' : 'round');
  return `Filet chart, ${counted(columns, 'box', 'boxes')} wide and ${high} high (${rowsInWords(sheet)}), for ${hand}-handed makers.`;
}

const counted = (n: number, one: string, many = `${one}s`): string =>
  `${n} ${n === 1 ? one : many}`;

/** Where to begin and in which direction to read. */
function howToRead(sheet: Sheet): string {
  const [first, second] = sheet.rows;
  if (!first) return '';
  const name = first.label === '' ? 'the lowest' : first.label;
  const begin = `The right side is shown. Begin with the bottom row (${name}).`;
  const way = directionOf(first);
  if (!second || sheet.rows.every((row) => row.reads === first.reads)) {
    const what = sheet.form === 'flat' ? 'row' : 'round';
    return `${begin} Read every ${what} from ${way}, as the arrows show.`;
  }
  const [right, wrong] = first.side === 'right' ? [first, second] : [second, first];
  return `${begin} Read right-side rows from ${directionOf(right)} and wrong-side rows from ${directionOf(wrong)}, as the arrows show.`;
}

const directionOf = (row: Sheet['rows'][number]): string =>
  startsAt(row) === 'right' ? 'right to left' : 'left to right';

/** For left-handed makers: why the picture is not turned round. */
const aboutHand = (sheet: Sheet): string =>
  sheet.hand === 'left'
    ? 'The picture is that of the right-handed edition, so that words read: only the direction, the arrows and the numbers have changed over.'
    : '';

/** The proportion of the boxes and where it comes from. */
function aboutBoxes({ box, columns, rows }: Sheet): string {
  if (box.from === 'square') return box.because;
  if (box.from === 'usual') {
    return `${box.because} Yours may come out wider or higher.`;
  }
  const cm = (mm: number): string => printLength(length(mm, 'mm'), 'cm').replace(' ', NO_BREAK);
  const boxes = `about ${round(box.widthMm)}${NO_BREAK}mm wide and ${round(box.heightMm)}${NO_BREAK}mm high`;
  const whole = `the chart about ${cm(columns * box.widthMm)} wide and ${cm(rows.length * box.heightMm)} high`;
  return `Boxes have the proportions of the gauge: in the fabric a box is ${boxes}, ${whole}.`;
}

/** Between a number and its unit, so that no line ends there. */
const NO_BREAK = '\u00a0';

/** Half millimetres: a gauge tells no more (judgement). */
const round = (mm: number): number => Math.round(mm * 2) / 2;

const aboutTimes = ({ times, columns }: Sheet): string =>
  times > 1
    ? `The chart is worked ${times} times side by side: ${times} × ${columns} = ${times * columns} boxes.`
    : '';

/** Rows with a bracket, for those who cannot see it and to tell where a last pass ends. */
const aboutAgain = ({ again, rows }: Sheet): string =>
  again
    .map((one) => {
      const [low, high] = [rows[one.from]?.label, rows[one.to]?.label];
      const which = low === high ? `${low} is` : `${low} to ${high} are`;
      const last = one.endsAt === null ? '' : rows[one.endsAt]?.label;
      const part = last === low ? low : `${low} to ${last}`;
      const more = one.endsAt === null ? '' : `, and then ${part} once more`;
      return `${which} worked ${timesWords(one)} one after the other, as the bracket shows${more}.`;
    })
    .join(' ');

/** What stands left and right of the chart, for those who cannot see it. */
export function aboutBeside(sheet: Sheet): string {
  const { left, right } = besideWords(sheet);
  if (left === '' && right === '') return '';
  const said = [left && `left of it ${left}`, right && `right of it ${right}`].filter(Boolean);
  return `The same ${sheet.form === 'flat' ? 'row' : 'round'} goes on beyond the chart: ${said.join(', ')}.`;
}

/** Every sentence below the chart, in order. */
export const captionsOf = (sheet: Sheet): readonly string[] =>
  [
    howToRead(sheet),
    aboutHand(sheet),
    aboutTimes(sheet),
    aboutAgain(sheet),
    aboutBoxes(sheet),
    ...sheet.notes,
  ].filter((sentence) => sentence !== '');
