/**
 * Box numbers along the lower edge, counted in working order from where the lowest row begins; and
 * ticks at every tenth line, which reach beyond the mesh.
 */
import { startsAt } from '../../filet/index.ts';
import type { Mark } from '../drawing.ts';
import type { Sheet } from './sheet.ts';
import { TYPE } from './type.ts';
import type { Frame } from './window.ts';

const TICK_MM = 1.3;

/** Height in mm that ticks and numbers take below the mesh. */
export const boxNumbersHeight: number = TICK_MM + TYPE.smallMm * 1.3;

/** The first and the last box, and every fifth where the last is not too near. */
export function boxNumbers(sheet: Sheet, frame: Frame): readonly Mark[] {
  const [from, to] = frame.window.columns;
  const marks: Mark[] = [...ticks(sheet, frame)];
  for (let column = from; column < to; column++) {
    const n = numberOf(sheet, column);
    const isLast = n === sheet.columns;
    const isShown = n === 1 || isLast || (n % 5 === 0 && sheet.columns - n >= 2);
    if (!isShown) continue;
    marks.push({
      kind: 'text',
      at: [frame.x(column) + frame.boxWidthMm / 2, frame.heightMm + boxNumbersHeight],
      text: String(n),
      sizeMm: TYPE.smallMm,
      align: 'middle',
      ink: 'soft',
    });
  }
  return marks;
}

function numberOf(sheet: Sheet, column: number): number {
  const [first] = sheet.rows;
  return first && startsAt(first) === 'right' ? sheet.columns - column : column + 1;
}

function ticks(sheet: Sheet, frame: Frame): readonly Mark[] {
  const [from, to] = frame.window.columns;
  const [low, high] = frame.window.rows;
  const stroke = { ink: 'ink', widthMm: 0.3 } as const;
  const marks: Mark[] = [];
  for (let column = Math.max(1, from); column <= Math.min(to, sheet.columns - 1); column++) {
    // The line between two boxes lies behind the lower number of the two.
    if (Math.min(numberOf(sheet, column), numberOf(sheet, column - 1)) % 10 !== 0) continue;
    const x = frame.x(column);
    marks.push({
      kind: 'line',
      from: [x, frame.heightMm + 0.4],
      to: [x, frame.heightMm + TICK_MM + 0.4],
      stroke,
    });
    marks.push({ kind: 'line', from: [x, -0.4], to: [x, -TICK_MM - 0.4], stroke });
  }
  for (let r = Math.max(1, low); r <= Math.min(high, sheet.rows.length - 1); r++) {
    if (r % 10 !== 0) continue;
    const y = frame.top(r - 1);
    marks.push({ kind: 'line', from: [-0.4, y], to: [-TICK_MM - 0.4, y], stroke });
    marks.push({
      kind: 'line',
      from: [frame.widthMm + 0.4, y],
      to: [frame.widthMm + TICK_MM + 0.4, y],
      stroke,
    });
  }
  return marks;
}
