/** Work that goes on with a yarn that was fastened off. */
import { colourNotJoined, type Finding } from '../../finding/index.ts';
import type { Instruction, Step } from '../../notation/index.ts';
import { labelName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, labelSpan, type Placed, rowIds, stepsIn } from './rows.ts';

interface Cut {
  readonly at: Placed;
  readonly step: Step;
}

export function notJoined(scene: Scene): Finding[] {
  const findings: Finding[] = [];
  let cut: Cut | null = null;
  let part = -1;
  let yarn: string | null = null;
  for (const row of instructionsOf(scene)) {
    const { instruction } = row.placed;
    if (row.partIndex !== part && !scene.manuscript.parts[row.partIndex]?.continues) cut = null;
    part = row.partIndex;
    if (cut && goesOn(instruction, cut) && !tellsYarn(scene, row)) {
      findings.push(told(scene, row, { cut, yarn }));
      cut = null;
    } else if (takesYarn(instruction) || instruction.steps.some(isWork)) cut = null;
    yarn = yarnAfter(instruction, yarn);
    const step = cutAtEnd(instruction);
    if (step && !goesOnAfter(scene, row, step)) cut = { at: row, step };
  }
  return findings;
}

const isWork = (step: Step): boolean =>
  ['work', 'group', 'repeat', 'boxes', 'chart', 'even'].includes(step.kind);

/** The yarn is cut and nothing is worked after it. */
function cutAtEnd({ steps }: Instruction): Step | null {
  const at = steps.findLastIndex((step) => step.kind === 'fasten-off' && !step.not);
  const behind = steps.slice(at + 1);
  // "Fasten off. Make a second leg and do not fasten off": the yarn of the second goes on.
  const goesOn = behind.some((step) => step.kind === 'fasten-off' || isWork(step));
  return at >= 0 && !goesOn ? (steps[at] ?? null) : null;
}

/** "Finish off the small ear here. Continue for the big ear.": the yarn of one copy is cut, that of another goes on. */
const goesOnAfter = ({ manuscript }: Scene, { placed }: Placed, step: Step): boolean =>
  /\b(?:continue|carry on|go on)\b/i.test(manuscript.text.slice(placed.from + step.to, placed.to));

/** "Count 5 sts from the start and insert new yarn": told among words that are no work. */
const tellsYarn = ({ manuscript }: Scene, { placed }: Placed): boolean =>
  /\b(?:insert|attach|add|tie|tie on|re-?join|join|start)(?:ing)? (?:in |on )?(?:the |a |your )?(?:new |another )?(?:yarn|thread|wool|colou?r)\b/i.test(
    manuscript.text.slice(placed.from, placed.to),
  );

/** Words that put a yarn on the hook, or that are not followed and might. */
function takesYarn({ steps }: Instruction): boolean {
  for (const step of stepsIn(steps)) {
    // "Sc in first leg": another piece, with a yarn of its own, is brought in.
    if (['join', 'yarn', 'ring', 'piece', 'unread', 'not-worked', 'rows-again'].includes(step.kind))
      return true;
    if (step.kind === 'work' && (step.stitch.foundation || isFromHook(step))) return true;
    // A chain longer than any turning chain starts a piece of its own.
    if (step.kind === 'chain' && ((step.n?.values[0] ?? 9) > 6 || step.open)) return true;
    if (step.kind === 'other-side') return true;
  }
  return false;
}

const isFromHook = (step: Step): boolean =>
  step.kind === 'work' && [step.place, ...step.alsoIn].some((place) => place?.fromHook);

/** A labelled row that numbers on from the cut one and starts to work at once. */
function goesOn(instruction: Instruction, { at }: Cut): boolean {
  const before = at.placed.instruction.label?.numbers.at(-1);
  const number = instruction.label?.numbers[0];
  if (before === undefined || number !== before + 1) return false;
  return instruction.steps.some(isWork) && !takesYarn(instruction);
}

function yarnAfter({ steps }: Instruction, before: string | null): string | null {
  let yarn = before;
  for (const step of stepsIn(steps)) {
    if (step.kind === 'yarn' && (step.act === 'with' || step.act === 'change')) yarn = step.yarn;
    if (step.kind === 'join' && step.yarn !== null) yarn = step.yarn;
  }
  return yarn;
}

function told(
  scene: Scene,
  row: Placed,
  { cut, yarn }: { cut: Cut; yarn: string | null },
): Finding {
  const { label } = row.placed.instruction;
  const words = {
    row: label ? labelName(label, label.numbers[0]) : 'this row',
    yarn: yarn === null ? 'the yarn' : `yarn ${yarn}`,
  };
  const labels = [{ ...absolute(cut.at.placed, cut.step), text: 'fastened off here' }];
  return colourNotJoined(labelSpan(row.placed), words, { labels, rows: rowIds(scene, row) });
}
