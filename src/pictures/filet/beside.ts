/**
 * What continues left and right of the chart in the same round: the nearest boxes in pale thread, with
 * their outer end left open, and how many there are in words.
 */
import { startsAt } from '../../filet/index.ts';
import type { Mark, PathStep } from '../drawing.ts';
import { measureText, wrapText } from '../text.ts';
import type { Beside, Sheet, SheetRow } from './sheet.ts';
import { threadOf } from './thread.ts';
import { TYPE } from './type.ts';
import type { Frame } from './window.ts';

/** Boxes drawn of those that continue. */
const SHOWN = 2;

type End = 'left' | 'right';

/** The boxes at one end of a row: those before the chart stand where the row begins. */
const at = (row: SheetRow, end: End): Beside | null =>
  startsAt(row) === end ? row.before : row.after;

const most = (beside: Beside | null): number => Math.max(0, ...(beside?.boxes ?? [0]));

/** Width in mm to leave at either side; nought where nothing continues. */
export const besideWidth = (sheet: Sheet, boxWidthMm: number): number =>
  sheet.rows.some((row) => most(row.before) + most(row.after) > 0) ? SHOWN * boxWidthMm : 0;

/** Pale boxes beyond the ends of the frame that are ends of the chart. */
export function besideMarks(sheet: Sheet, frame: Frame): readonly Mark[] {
  const thread = threadOf(sheet, frame);
  const posts: PathStep[] = [];
  const chains: PathStep[] = [];
  const [low, high] = frame.window.rows;
  for (const end of endsIn(sheet, frame)) {
    const out = end === 'right' ? 1 : -1;
    const edge = out > 0 ? frame.widthMm : 0;
    for (let r = low; r < high; r++) {
      const beside = sheet.rows[r] ? at(sheet.rows[r] as SheetRow, end) : null;
      if (beside?.kind !== 'open') continue;
      const n = Math.min(SHOWN, most(beside));
      for (let i = 0; i < n; i++) {
        const [near, far] = [
          edge + out * i * frame.boxWidthMm,
          edge + out * (i + 1) * frame.boxWidthMm,
        ];
        const top = frame.top(r);
        const below = sheet.rows[r - 1] && r > 0;
        chains.push(['M', near, top], ['Q', (near + far) / 2, top + thread.sagMm, far, top]);
        if (!below)
          chains.push(['M', near, top + frame.boxHeightMm], ['L', far, top + frame.boxHeightMm]);
        // The last post is left out: the mesh goes on.
        if (i < n - 1 || most(beside) <= SHOWN)
          posts.push(['M', far, top], ['L', far, top + frame.boxHeightMm]);
      }
    }
  }
  const pale = (steps: readonly PathStep[], widthMm: number): Mark[] =>
    steps.length === 0
      ? []
      : [{ kind: 'path', steps, fill: 'none', stroke: { ink: 'faint', widthMm, ends: 'round' } }];
  return [...pale(chains, thread.chain.widthMm), ...pale(posts, thread.post.widthMm)];
}

function endsIn(sheet: Sheet, { window }: Pick<Frame, 'window'>): readonly End[] {
  const [from, to] = window.columns;
  return [
    ...(from === 0 ? ['left' as const] : []),
    ...(to === sheet.columns ? ['right' as const] : []),
  ];
}

export interface BesideWords {
  readonly left: string;
  readonly right: string;
}

/** "29 open boxes more", "first 2 open boxes"; '' where nothing continues. */
export function besideWords(sheet: Sheet): BesideWords {
  const say = (end: End): string => {
    const all = sheet.rows.map((row) => ({ row, beside: at(row, end) }));
    const [first] = all;
    if (!first?.beside || all.every(({ beside }) => most(beside) === 0)) return '';
    const isSame = all.every(({ beside }) => inWords(beside) === inWords(first.beside));
    // Turned work begins now here, now there: "first" would be wrong in every second row.
    const isTurned = new Set(sheet.rows.map(startsAt)).size > 1;
    if (!isSame) return 'more boxes, see the pattern';
    const words = inWords(first.beside);
    if (isTurned) return `${words} here`;
    return startsAt(first.row) === end ? `first ${words}` : `${words} more`;
  };
  return { left: say('left'), right: say('right') };
}

/** "29 (33, 37) open boxes". */
function inWords(beside: Beside | null): string {
  if (!beside) return '';
  const [first = 0, ...others] = beside.boxes;
  const numbers = others.length > 0 ? `${first} (${others.join(', ')})` : String(first);
  const kind = beside.kind === 'mixed' ? '' : `${beside.kind} `;
  return `${numbers} ${kind}box${first === 1 && others.length === 0 ? '' : 'es'}`;
}

/** The words under the two ends, one over the other where they do not fit side by side. */
export function besideCaption(
  sheet: Sheet,
  frame: Frame,
  area: { readonly y: number; readonly left: number; readonly right: number },
): { readonly marks: readonly Mark[]; readonly heightMm: number } {
  const { left, right } = besideWords(sheet);
  const ends = endsIn(sheet, frame);
  const said = [
    ...(ends.includes('left') && left
      ? [{ text: `← ${left}`, align: 'start' as const, x: area.left }]
      : []),
    ...(ends.includes('right') && right
      ? [{ text: `${right} →`, align: 'end' as const, x: area.right }]
      : []),
  ];
  const widths = said.reduce((sum, { text }) => sum + measureText(text, TYPE.numberMm), 0);
  const isTight = widths + 4 > area.right - area.left;
  const lineMm = TYPE.numberMm * TYPE.leading;
  let line = 0;
  const marks = said.flatMap(({ text, align, x }, i): Mark[] => {
    if (i > 0 && !isTight) line = 0;
    return wrapText(text, area.right - area.left, { sizeMm: TYPE.numberMm }).map((words): Mark => {
      line += 1;
      return {
        kind: 'text',
        at: [x, area.y + line * lineMm],
        text: words,
        sizeMm: TYPE.numberMm,
        align,
      };
    });
  });
  return { marks, heightMm: said.length === 0 ? 0 : line * lineMm + 1 };
}
