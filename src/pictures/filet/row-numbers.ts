/**
 * What stands beside the rows: an arrow in the direction of work and the row's number, at the end
 * where the row begins. Left-handed, the same picture has them at the other end.
 */
import { startsAt } from '../../filet/index.ts';
import type { Mark, PathStep } from '../drawing.ts';
import { measureText } from '../text.ts';
import type { Sheet, SheetRow } from './sheet.ts';
import { TYPE } from './type.ts';
import type { Frame } from './window.ts';

const ARROW_MM = 4;
/** Between mesh, arrow and number. */
const AIR_MM = 1.6;

/** Room in mm that the numbers take at either side; the same on both, so that hands agree. */
export function numbersWidth(sheet: Sheet): number {
  const widest = sheet.rows.map((row, r) => measureText(numberOf(sheet, row, r), TYPE.numberMm));
  return AIR_MM * 3 + ARROW_MM + Math.max(measureText('Rnd', TYPE.smallMm), ...widest);
}

/** Numbers and arrows of the frame's rows; `asideMm` is where they begin beyond the mesh. */
export function rowNumbers(sheet: Sheet, frame: Frame, asideMm: number): readonly Mark[] {
  const [from, to] = frame.window.rows;
  const every = everyNth(frame.boxHeightMm);
  const marks: Mark[] = [];
  for (let r = from; r < to; r++) {
    const row = sheet.rows[r];
    if (!row || (r % every !== 0 && r !== to - 1)) continue;
    marks.push(...besideRow({ sheet, frame, row, r, asideMm }));
  }
  return [...heads(sheet, frame, asideMm), ...marks];
}

/** Where rows are too low for type, only every second, fifth or tenth has its number. */
const everyNth = (heightMm: number): number =>
  [1, 2, 5, 10].find((n) => n * heightMm >= TYPE.numberMm * 0.95) ?? 20;

/** "12", and on the two lowest rows of turned work its side, "1 RS". */
function numberOf(sheet: Sheet, row: SheetRow, r: number): string {
  if (row.label === '') return '–';
  const side = sheet.form !== 'round' && r < 2 ? (row.side === 'right' ? ' RS' : ' WS') : '';
  return `${row.number}${side}`;
}

interface Beside {
  readonly sheet: Sheet;
  readonly frame: Frame;
  readonly row: SheetRow;
  readonly r: number;
  readonly asideMm: number;
}

function besideRow({ sheet, frame, row, r, asideMm }: Beside): readonly Mark[] {
  const out = startsAt(row) === 'right' ? 1 : -1;
  const edge = out > 0 ? frame.widthMm : 0;
  const middle = frame.top(r) + frame.boxHeightMm / 2;
  const near = edge + out * (asideMm + AIR_MM);
  return [
    ...leader({ sheet, frame, row, r, asideMm }, { edge, out, middle }),
    arrow([near + out * ARROW_MM, near], middle),
    {
      kind: 'text',
      at: [near + out * (ARROW_MM + AIR_MM), middle + TYPE.numberMm * 0.34],
      text: numberOf(sheet, row, r),
      sizeMm: TYPE.numberMm,
      align: out > 0 ? 'start' : 'end',
    },
  ];
}

/** A dotted line to where a shaped row begins, if that is far from its number. */
function leader(
  { frame, row, asideMm }: Beside,
  { edge, out, middle }: { edge: number; out: number; middle: number },
): readonly Mark[] {
  const [from, to] = frame.window.columns;
  const cells = row.cells.slice(from, to);
  const ordered = out > 0 ? cells.toReversed() : cells;
  const empty = ordered.findIndex((cell) => cell !== 'none');
  if (empty <= 0) return [];
  const end = edge - out * (empty * frame.boxWidthMm - 1);
  const stroke = { ink: 'soft', widthMm: 0.2, dashMm: [0.2, 0.9], ends: 'round' } as const;
  return [{ kind: 'line', from: [edge + out * asideMm, middle], to: [end, middle], stroke }];
}

/** From its tail to its point, at this height. */
function arrow([tail, point]: readonly [number, number], y: number): Mark {
  const back = Math.sign(tail - point);
  const steps: PathStep[] = [
    ['M', tail, y],
    ['L', point, y],
    ['M', point + back * 1.2, y - 0.8],
    ['L', point, y],
    ['L', point + back * 1.2, y + 0.8],
  ];
  return { kind: 'path', steps, fill: 'none', stroke: { ink: 'ink', widthMm: 0.3, ends: 'round' } };
}

/** "Rnd" or "Row" over the numbers of each side that has some. */
function heads(sheet: Sheet, frame: Frame, asideMm: number): readonly Mark[] {
  const [from, to] = frame.window.rows;
  const rows = sheet.rows.slice(from, to);
  const word = wordOf(rows);
  const y = -TYPE.smallMm * 0.55;
  return (['left', 'right'] as const)
    .filter((end) => rows.some((row) => startsAt(row) === end))
    .map((end) => {
      const out = end === 'right' ? 1 : -1;
      const x = (out > 0 ? frame.widthMm : 0) + out * (asideMm + ARROW_MM + 2 * AIR_MM);
      const align = out > 0 ? ('start' as const) : ('end' as const);
      return { kind: 'text', at: [x, y], text: word, sizeMm: TYPE.smallMm, align, ink: 'soft' };
    });
}

/** The word of the pattern's labels: "Rnd", "Row". */
const wordOf = (rows: readonly SheetRow[]): string =>
  /^\p{L}+/u.exec(rows.find(({ label }) => label !== '')?.label ?? 'Row')?.[0] ?? 'Row';
