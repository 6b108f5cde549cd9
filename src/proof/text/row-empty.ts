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

/** The only number of stitches that is stated. */
function countOf(instruction: Instruction | undefined): number | null {
  const [count, ...more] = instruction?.counts ?? [];
  return count && more.length === 0 ? (count.n.values[0] ?? null) : null;
}

/** "8 times (16)", "() x 6 (12)": how often, and how many, but not what; "around (18)" below "(18)" may be plain work. */
const isStripped = (rest: string, isSame: boolean): boolean =>
  rest.length < 48 && (HOW_OFTEN.test(rest) || (!isSame && ALL_ROUND.test(rest)));

const COUNTED = String.raw`[\s,;]*[([{]\s*\d{1,4}(?: ?(?:sts?|sc|hdc|dc|stitches))?\s*[)\]}][\s.]*$`;
const HOW_OFTEN = new RegExp(
  String.raw`^[\s:.–-]*(?:\*\s*\*|[([{]\s*[)\]}]\s*[x×*]?\s*\d{1,2}(?: times)?|[x×]\s?\d{1,2}|\d{1,2}\s?(?:times|[x×]))${COUNTED}`,
  'i',
);
const ALL_ROUND = new RegExp(String.raw`^[\s:.–-]*around${COUNTED}`, 'i');

export function emptyRows(scene: Scene): Finding[] {
  const rows = [...instructionsOf(scene)];
  return rows.flatMap((row, i) => {
    const { label, steps, counts } = row.placed.instruction;
    if (label && isCaption(label, rows[i - 1]?.placed.instruction.label)) return [];
    if (!label || label.every || steps.some(({ kind }) => kind === 'unread')) return [];
    const { from, to } = row.placed;
    const rest = scene.manuscript.text.slice(from + label.to, to);
    if (counts.length > 0) {
      const above = countOf(rows[i - 1]?.placed.instruction);
      if (!isStripped(rest, above === null || above === countOf(row.placed.instruction))) return [];
    } else if (steps.length > 0 || /[\p{L}\p{N}]/u.test(rest)) return [];
    const next = rows[i + 1]?.placed.from ?? scene.manuscript.text.length;
    if (isTold(scene.manuscript.text.slice(to, next))) return [];
    if (isHeading(label, rows[i + 1]?.placed.instruction)) return [];
    const words = { row: labelName(label, label.numbers[0]) };
    return [rowEmpty(absolute(row.placed, label), words, { rows: rowIds(scene, row) })];
  });
}
