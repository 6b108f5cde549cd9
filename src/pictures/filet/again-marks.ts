/**
 * A bracket beside rows that are worked several times, with the number of times: at the end where the
 * lowest row does not begin, beyond what else stands there. Shape and word carry it, no colour.
 */
import { startsAt } from '../../filet/index.ts';
import type { Mark, PathStep } from '../drawing.ts';
import { measureText } from '../text.ts';
import type { Again } from './again.ts';
import { numbersWidth } from './row-numbers.ts';
import type { Sheet } from './sheet.ts';
import { TYPE } from './type.ts';
import type { Frame } from './window.ts';

/** From the rows to the bracket's back, and from there to its words. */
const DEEP_MM = 1.8;
const AIR_MM = 1.2;

/** "3 times", "3 (4, 5) times". */
export function timesWords({ times }: Again): string {
  const [first = 1, ...others] = times;
  return others.length > 0 ? `${first} (${others.join(', ')}) times` : `${first} times`;
}

/** Room in mm at either side; the same on both, so that hands agree. */
export function againWidth(sheet: Sheet): number {
  if (sheet.again.length === 0) return 0;
  const widest = sheet.again.map((one) => measureText(timesWords(one), TYPE.numberMm));
  return DEEP_MM + 2 * AIR_MM + Math.max(...widest);
}

/** Brackets of the frame's rows; `asideMm` is where numbers begin beyond the mesh. */
export function againMarks(sheet: Sheet, frame: Frame, asideMm: number): readonly Mark[] {
  const [lowest] = sheet.rows;
  if (!lowest) return [];
  const end = startsAt(lowest) === 'right' ? 'left' : 'right';
  const isNumbered = sheet.rows.some((row) => startsAt(row) === end);
  const near = asideMm + (isNumbered ? numbersWidth(sheet) : AIR_MM);
  const out = end === 'right' ? 1 : -1;
  const inner = (out > 0 ? frame.widthMm : 0) + out * near;
  return sheet.again.flatMap((one) => bracket(frame, one, { inner, out }));
}

/** On a page that shows a part of the rows it is left open where they go on. */
function bracket(
  { window, top, boxHeightMm }: Frame,
  again: Again,
  { inner, out }: { readonly inner: number; readonly out: number },
): readonly Mark[] {
  const [low, high] = window.rows;
  const [from, to] = [Math.max(again.from, low), Math.min(again.to, high - 1)];
  if (from > to) return [];
  // Short of the rows' edges, so that neighbours stand apart.
  const [upper, lower] = [top(to) + 0.5, top(from) + boxHeightMm - 0.5];
  const back = inner + out * DEEP_MM;
  const steps: PathStep[] = [
    ...(to === again.to
      ? ([
          ['M', inner, upper],
          ['L', back, upper],
        ] as const)
      : ([['M', back, upper]] as const)),
    ['L', back, lower],
    ...(from === again.from ? ([['L', inner, lower]] as const) : []),
  ];
  return [
    { kind: 'path', steps, fill: 'none', stroke: { ink: 'ink', widthMm: 0.3, ends: 'round' } },
    {
      kind: 'text',
      at: [back + out * AIR_MM, (upper + lower) / 2 + TYPE.numberMm * 0.34],
      text: timesWords(again),
      sizeMm: TYPE.numberMm,
      align: out > 0 ? 'start' : 'end',
    },
  ];
}
