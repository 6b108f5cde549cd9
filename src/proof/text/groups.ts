/**
 * Shells, V-stitches, picots and their like that the pattern does not explain. A manuscript with
 * front matter is whole and has to explain them all; of a pasted piece only what its sums hang on,
 * and only where these do not come out.
 */
import { type Finding, specialUndefined } from '../../finding/index.ts';
import { nameSpan, type WorkStep } from '../../notation/index.ts';
import { isExplainedInPassing } from '../explained.ts';
import { type Scene, wordsAt } from '../scene.ts';
import { absolute, append, instructionsOf, nameOf, type Placed, rowIds, stepsIn } from './rows.ts';

const SHAPES: ReadonlySet<string> = new Set([
  'shell',
  'v',
  'cluster',
  'bobble',
  'puff',
  'popcorn',
  'picot',
]);
/** How many stitches they make hangs on their definition. */
const OPEN: ReadonlySet<string> = new Set(['shell', 'v']);

interface Use {
  readonly row: Placed;
  readonly step: WorkStep;
}

export function unexplained(scene: Scene): Finding[] {
  const byShape = new Map<string, Use[]>();
  for (const row of instructionsOf(scene)) {
    for (const step of stepsIn(row.placed.instruction.steps)) {
      if (step.kind !== 'work' || !isOpenShape(step) || !matters(scene, { row, step })) continue;
      append(byShape, step.stitch.shape, { row, step });
    }
  }
  return [...byShape.values()].flatMap((uses) => {
    const [{ row, step }] = uses as [Use, ...Use[]];
    const at = absolute(row.placed, nameSpan(step));
    const stitch = wordsAt(scene, at)
      .replace(/^\d+\s+|["“”]/g, '')
      .toLowerCase();
    if (isExplained(scene, stitch)) return [];
    const rows = [...new Set(uses.flatMap((use) => rowIds(scene, use.row)))];
    return [specialUndefined(at, { row: nameOf(scene, row.placed), stitch }, { rows })];
  });
}

/** "3-dc cluster", "ch-3 picot" say what they are; a bare name does not. */
const isOpenShape = ({ stitch }: WorkStep): boolean =>
  SHAPES.has(stitch.shape) &&
  stitch.special === null &&
  stitch.stem === null &&
  stitch.legs === null;

function matters({ fabric, manuscript }: Scene, { row, step }: Use): boolean {
  if (manuscript.head.span) return true;
  if (!OPEN.has(step.stitch.shape)) return false;
  return fabric.cloths.some(({ rows }) =>
    rows.some(
      (one) =>
        one.partIndex === row.partIndex &&
        one.instruction === row.index &&
        one.verdict !== 'proven',
    ),
  );
}

/** Explained somewhere in words that are not a definition of their own: "picot (ch 3, sl st …)". */
function isExplained({ manuscript }: Scene, stitch: string): boolean {
  const name = stitch.replace(/(?:e?s)?$/, '').replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const spellings = manuscript.specials.flatMap(({ key, aliases }) => [key, ...aliases]);
  if (spellings.includes(stitch)) return true;
  // "Large shell" and "small shell" of the list do not say which of them "shell" is.
  if (spellings.some((one) => one.endsWith(` ${stitch}`))) return false;
  return (
    isExplainedInPassing(manuscript.text, stitch) ||
    new RegExp(`${name}\\w*(?:\\s+st(?:itch)?)?\\s*(?:[:=(]|is\\b|means\\b)`, 'i').test(
      manuscript.text,
    ) ||
    isNamedWhereMade(manuscript.text, name)
  );
}

/** "… 1 dc in same st (V-st created)": the name is given where it is made. */
const isNamedWhereMade = (text: string, name: string): boolean =>
  new RegExp(
    `\\(["“”]?${name.replace(/[\s-]+st(?:itch)?$/, '')}["“”]?[\\s-]*(?:st|stitch)? (?:is )?(?:created|made|formed|completed?)\\b`,
    'i',
  ).test(text);
