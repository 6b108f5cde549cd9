/** Steps of a word or two: turn, spiral, fasten off, yarn, ring, loops, the other side, boxes. */
import type {
  BoxStep,
  FastenOffStep,
  LoopStep,
  OtherSideStep,
  TurnStep,
  YarnStep,
} from '../tree.ts';
import { isMany, writeNumbers } from './numbers.ts';
import { writeUntil } from './place.ts';
import { plural } from './stitch.ts';
import type { Voice } from './voice.ts';

export const writeTurn = (step: TurnStep): string => (step.not ? 'do not turn' : 'turn');

/** The tree keeps no yarn here; the letter is taken over from the designer's words. */
export function writeFastenOff(step: FastenOffStep, voice: Voice): string {
  if (step.not) return 'do not fasten off';
  const yarn = / off (?:yarn )?([A-Z]|[MC]C\d?)$/.exec(voice.quote(step));
  return yarn === null ? 'fasten off' : `fasten off ${yarn[1]}`;
}

export function writeYarn(step: YarnStep, voice: Voice): string {
  if (step.yarn === '') return voice.to === 'US' ? 'change color' : 'change colour';
  const words = { with: 'with', change: 'change to', drop: 'drop', break: 'break off' } as const;
  return `${words[step.act]} ${step.yarn}`;
}

export function writeLoop(step: LoopStep): string {
  const words = {
    back: 'in back loops only',
    front: 'in front loops only',
    third: 'in 3rd loops only',
    both: 'through both loops',
  } as const;
  if (step.row === null) return `working ${words[step.loop]}`;
  const loops = words[step.loop].replace(/ only$/, '');
  return `working ${loops} of rnd ${step.row}`;
}

export function writeOtherSide(step: OtherSideStep, voice: Voice): string {
  if (step.rowEnds) return 'working along row ends';
  const chain = step.chains === null ? 'foundation ch' : `ch-${writeNumbers(step.chains, voice)}`;
  return `working along opposite side of ${chain}`;
}

/** "work 52 open boxes": without "work" the number and "open" could stand for stitches left open. */
export function writeBoxes(step: BoxStep, voice: Voice): string {
  const n = step.n === null ? '' : `${writeNumbers(step.n, voice)} `;
  const many = step.n === null ? step.until !== null : isMany(step.n);
  const until = step.until === null ? '' : ` ${writeUntil(step.until, voice)}`;
  if (step.edge === 'slipped') return `sl st over ${n}${plural('box', many)}`;
  if (step.edge === 'added') return `add ${n}${plural(BOXES[step.box], many)}${until}`;
  return `work ${n}${plural(BOXES[step.box], many)}${until}`;
}

const BOXES = { open: 'open box', filled: 'filled box', lacet: 'lacet', bar: 'bar' } as const;
