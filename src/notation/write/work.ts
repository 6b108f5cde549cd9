/** One kind of stitch along the row or in one place: "2 sc in next st", "sc in each st around". */
import type { Place, WorkStep } from '../tree.ts';
import { countsAsRemark, skippedRemark } from './counts-as.ts';
import { isMany, numberBefore, writeNumbers, writeTimes } from './numbers.ts';
import { writeIn, writePlace, writeUntil } from './place.ts';
import { writeStitch } from './stitch.ts';
import type { Voice } from './voice.ts';

export function writeWork(step: WorkStep, voice: Voice): string {
  const evenly = step.evenly ? ' evenly' : '';
  const until = step.until === null ? '' : ` ${writeUntil(step.until, voice)}`;
  const say = step.place?.fromHook ? skippedRemark : countsAsRemark;
  const remark = say(step.countsAs, voice);
  return `${named(step, voice)}${evenly}${placesOf(step, voice)}${until}${remark}`;
}

function named(step: WorkStep, voice: Voice): string {
  const name = writeStitch(step.stitch, isMany(step.n), voice);
  if (step.n === null || !step.numberAfter) return `${numberBefore(step.n, voice)}${name}`;
  if (!isMany(step.n)) return name;
  // "sc2tog twice": a number behind the name's own would not be told from it.
  const isTog = step.stitch.shape === 'together' && step.stitch.stem !== null;
  return `${name} ${isTog ? writeTimes(step.n, voice) : writeNumbers(step.n, voice)}`;
}

function placesOf(step: WorkStep, voice: Voice): string {
  if (step.place === null) return '';
  const first = firstPlace(step, step.place, voice);
  return [first, ...step.alsoIn.map((place) => writeIn(place, voice))]
    .map((p) => ` ${p}`)
    .join(' and');
}

/** Stitches made into one are worked "over" several places; a post stitch goes around its place. */
function firstPlace(step: WorkStep, place: Place, voice: Voice): string {
  if (step.stitch.shape === 'together' && isMany(place.n))
    return `over ${writePlace(place, voice)}`;
  if (step.stitch.post !== null) return `around ${writePlace(place, voice)}`;
  return writeIn(place, voice);
}
