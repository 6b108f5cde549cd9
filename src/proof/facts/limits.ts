/** Numbers beyond anything that hands could make. */
import { MOST_STITCHES, numberIn } from '../../fabric/index.ts';
import { type Finding, repeatTooLarge, tooManyStitches } from '../../finding/index.ts';
import { firstWords, rowName } from '../names.ts';
import { askedBy, type Scene, type Sighting, type Sightings, wordsAt } from '../scene.ts';

/** Most rows that one order may ask for; see `fabric/part.ts`. */
const MOST_ROWS = 100_000;

export function tooLarge(scene: Scene, found: Sightings<'limit'>): Finding {
  const { first, at, rows, sizes } = found;
  const number = largestIn(scene.manuscript.text.slice(at.from, at.to));
  if (first.fact.what === 'stitches') {
    const row = first.row.id === 'limit' ? nameAt(scene, at.from) : rowName(scene, first.row);
    const stitches = Math.max(number, MOST_STITCHES + 1);
    return tooManyStitches(at, { row, stitches, limit: MOST_STITCHES }, { rows, sizes });
  }
  const limit = first.fact.what === 'rows' ? MOST_ROWS : MOST_STITCHES;
  // The number as written: what was read of it may have been cut down.
  const times = Math.max(timesOf(scene, first) ?? 0, number, limit + 1);
  return repeatTooLarge(at, { words: wordsAt(scene, at), times, limit }, { rows, sizes });
}

const largestIn = (words: string): number =>
  Math.max(0, ...(words.match(/\d+/g) ?? []).map(Number).filter(Number.isSafeInteger));

function timesOf(scene: Scene, { fact, row }: Sighting<'limit'>): number | null {
  const placed = askedBy(scene, row);
  const step = placed?.instruction.steps.find((one) => placed.from + one.from === fact.from);
  if (step?.kind !== 'repeat' || step.times.kind !== 'times') return null;
  return numberIn(step.times.n, row.sizeIndex);
}

/** The row whose words stand there. */
function nameAt(scene: Scene, offset: number): string {
  for (const part of scene.manuscript.parts) {
    for (const { instruction, from, to } of part.instructions) {
      if (offset < from || offset >= to) continue;
      return instruction.label?.text ?? `"${firstWords(wordsAt(scene, { from, to }))}"`;
    }
  }
  return 'the row';
}
