/** A label with nothing behind it. */
import { type Finding, rowEmpty } from '../../finding/index.ts';
import type { Instruction, RowLabel } from '../../notation/index.ts';
import { labelName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, rowIds } from './rows.ts';

/** "Round 5" below Round 5: what stands under a picture. */
const isCaption = (label: RowLabel, above: RowLabel | null | undefined): boolean =>
  above != null && label.numbers.length === 1 && label.numbers[0] === above.numbers.at(-1);

/** "Round 3", and below it in sentences how it is worked: they were taken for prose. */
const isTold = (between: string): boolean => STITCHES.test(between.split(/\n\s*#/)[0] ?? '');

const STITCHES =
  /\b(?:ch|chains?|sc|hdc|dc|tr|sl st|stitch|stitches|sts?|spaces?|corners?|rows?|rounds?)\b/i;

/** "Foundation row:" above "Rnd 1: Ch 10, …", which begins with a chain or a ring of its own. */
function isHeading(label: RowLabel, next: Instruction | undefined): boolean {
  const opens = next?.steps.find(({ kind }) => kind !== 'yarn' && kind !== 'remark');
  const begins = opens?.kind === 'chain' || opens?.kind === 'ring';
  return label.numbers.length === 0 && next?.label?.numbers[0] === 1 && begins;
}

export function emptyRows(scene: Scene): Finding[] {
  const rows = [...instructionsOf(scene)];
  return rows.flatMap((row, i) => {
    const { label, steps, counts } = row.placed.instruction;
    if (label && isCaption(label, rows[i - 1]?.placed.instruction.label)) return [];
    if (!label || steps.length > 0 || counts.length > 0 || label.every) return [];
    const { from, to } = row.placed;
    const rest = scene.manuscript.text.slice(from + label.to, to);
    if (/[\p{L}\p{N}]/u.test(rest)) return [];
    const next = rows[i + 1]?.placed.from ?? scene.manuscript.text.length;
    if (isTold(scene.manuscript.text.slice(to, next))) return [];
    if (isHeading(label, rows[i + 1]?.placed.instruction)) return [];
    const words = { row: labelName(label, label.numbers[0]) };
    return [rowEmpty(absolute(row.placed, label), words, { rows: rowIds(scene, row) })];
  });
}
