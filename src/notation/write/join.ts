/** "join", "join with sl st in first sc", "join with sl st to form a ring", "join A with sl st in …". */
import type { JoinStep } from '../tree.ts';
import { writeIn } from './place.ts';
import { writeStitch } from './stitch.ts';
import type { Voice } from './voice.ts';

export function writeJoin(step: JoinStep, voice: Voice): string {
  const yarn = step.yarn === null ? '' : ` ${step.yarn}`;
  const stitch = step.with === null ? '' : ` with ${writeStitch(step.with, false, voice)}`;
  const place = step.place === null ? '' : ` ${writeIn(step.place, voice)}`;
  return `join${yarn}${stitch}${place}${step.ring ? ' to form a ring' : ''}`;
}
