/** Yarns that a row calls for and the materials do not name. */
import { colourNotNamed, type Finding } from '../../finding/index.ts';
import type { Step } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import type { Scene } from '../scene.ts';
import { absolute, append, instructionsOf, nameOf, type Placed, rowIds, stepsIn } from './rows.ts';

/** Main and contrast colour need no list; "new yarn" names none. */
const NO_NAME =
  /^(?:mc|cc\d?|main(?: colou?r)?|contrast.*|(?:new|next|same|other|both|any|working|second|first)\b.*|colou?r|yarn|thread|)$/i;

interface Use {
  readonly row: Placed;
  readonly step: Step;
  readonly yarn: string;
}

export function colours(scene: Scene): Finding[] {
  const { yarns } = scene.manuscript.head;
  if (yarns.length === 0) return [];
  const known = new Set(yarns.map((yarn) => yarn.toLowerCase()));
  const byYarn = new Map<string, Use[]>();
  for (const use of usesOf(scene)) {
    const key = use.yarn.toLowerCase();
    if (known.has(key) || NO_NAME.test(use.yarn) || isExplained(scene, use.yarn)) continue;
    append(byYarn, key, use);
  }
  return [...byYarn.values()].map((uses) => {
    const [{ row, step, yarn }] = uses as [Use, ...Use[]];
    const rows = [...new Set(uses.flatMap((use) => rowIds(scene, use.row)))];
    const words = { row: nameOf(scene, row.placed), yarn: isLetter(yarn) ? `yarn ${yarn}` : yarn };
    const sum = `The materials name ${yarns.join(', ')}.`;
    const at = nameIn(scene, absolute(row.placed, step), yarn);
    return colourNotNamed(at, words, { sum, rows });
  });
}

function* usesOf(scene: Scene): Generator<Use> {
  for (const row of instructionsOf(scene)) {
    for (const step of stepsIn(row.placed.instruction.steps)) {
      if (step.kind === 'yarn') yield { row, step, yarn: step.yarn };
      if (step.kind === 'join' && step.yarn !== null) yield { row, step, yarn: step.yarn };
    }
  }
}

/** The yarn's name among the words of the step. */
function nameIn({ manuscript }: Scene, at: Span, yarn: string): Span {
  const words = manuscript.text.slice(at.from, at.to);
  const name = yarn.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const hit = new RegExp(`(?<![A-Za-z])${name}(?![A-Za-z])`).exec(words);
  return hit ? { from: at.from + hit.index, to: at.from + hit.index + yarn.length } : at;
}

const isLetter = (yarn: string): boolean => /^[A-Z]\d?$/i.test(yarn);

/** A colour by name may stand anywhere above the work: "A: white", "2 balls in sand". */
function isExplained({ manuscript }: Scene, yarn: string): boolean {
  const { text, parts, head } = manuscript;
  if (isLetter(yarn)) return !head.yarns.some(isLetter);
  const start = parts[0]?.instructions[0]?.from ?? 0;
  return text.slice(0, start).toLowerCase().includes(yarn.toLowerCase());
}
