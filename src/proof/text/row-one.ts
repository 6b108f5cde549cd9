/**
 * A part that begins with its second row: the first was lost. Told only where nothing stands between the heading
 * and that row, which begins on nothing of its own, and where another part numbers its rows from 1.
 */
import { type Finding, rowOneMissing } from '../../finding/index.ts';
import type { Part } from '../../manuscript/index.ts';
import type { Place, Step } from '../../notation/index.ts';
import { labelName } from '../names.ts';
import type { Scene } from '../scene.ts';
import type { Numbered, Run } from './numbering-runs.ts';
import { absolute, isForSizes, rowIds, stepsIn } from './rows.ts';

export function rowOneOf(scene: Scene, runs: readonly Run[], nth: number): Finding | null {
  const row = runs[nth]?.rows[0];
  if (row?.first !== 2 || isForSizes(row) || row.label.every) return null;
  const part = scene.manuscript.parts[row.partIndex];
  const before = runs[nth - 1]?.rows.at(-1);
  if (!part || !isBare(scene, part, row) || before?.last === 1) return null;
  if (!runs.some(({ rows }) => rows[0]?.first === 1)) return null;
  if (startsOnItsOwn(row.placed.instruction.steps)) return null;
  const words = { row: labelName(row.label, row.first), part: part.name };
  return rowOneMissing(absolute(row.placed, row.label), words, { rows: rowIds(scene, row) });
}

/** The row stands straight below the heading of a part that does not go on with the one before. */
function isBare({ manuscript: { text } }: Scene, part: Part, { placed }: Numbered): boolean {
  if (part.heading === null || part.continues || part.instructions[0] !== placed) return false;
  return /^[^\p{L}\p{N}]*$/u.test(text.slice(part.heading.to, placed.from));
}

/** It makes a ring or a chain, joins yarn, or says from which loop it goes on. */
function startsOnItsOwn(steps: readonly Step[]): boolean {
  for (const step of stepsIn(steps)) {
    if (step.kind === 'ring' || step.kind === 'yarn' || step.kind === 'unread') return true;
    if (step.kind === 'join' && step.yarn !== null) return true;
    if (step.kind === 'chain' && (step.n?.values[0] ?? 0) > MOST_TO_TURN) return true;
    if (step.kind === 'rows-again' || step.kind === 'remark') return true;
    if ((step.kind === 'work' || step.kind === 'skip') && step.place && isElsewhere(step.place))
      return true;
    if (step.kind === 'work' && step.stitch.foundation) return true;
  }
  return false;
}

const MOST_TO_TURN = 4;

const isElsewhere = ({ fromHook, row, nouns }: Place): boolean =>
  fromHook || row !== null || nouns.some(({ kind }) => kind === 'ring' || kind === 'chain');
