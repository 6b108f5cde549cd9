/** A label with nothing behind it. */
import { type Finding, rowEmpty } from '../../finding/index.ts';
import { labelName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, rowIds } from './rows.ts';

export function emptyRows(scene: Scene): Finding[] {
  return [...instructionsOf(scene)].flatMap((row) => {
    const { label, steps, counts } = row.placed.instruction;
    if (!label || steps.length > 0 || counts.length > 0 || label.every) return [];
    const { from, to } = row.placed;
    const rest = scene.manuscript.text.slice(from + label.to, to);
    if (/[\p{L}\p{N}]/u.test(rest)) return [];
    const words = { row: labelName(label, label.numbers[0]) };
    return [rowEmpty(absolute(row.placed, label), words, { rows: rowIds(scene, row) })];
  });
}
