/** Words with two readings. */
import {
  type Finding,
  readingDiffers,
  timesTwoReadings,
  twoReadings as twoWays,
} from '../../finding/index.ts';
import { doubtWords } from '../doubts.ts';
import { rowName } from '../names.ts';
import { type Scene, type Sightings, wordsAt } from '../scene.ts';

/** A row that comes out only in a reading that its sisters do not have. */
export function readsDifferently(scene: Scene, found: Sightings<'reading'>): Finding {
  const { first, at, rows, sizes } = found;
  const { doubt, here, usual } = first.fact;
  const words = {
    row: rowName(scene, first.row),
    reading: doubtWords(doubt, here),
    // The row was named already.
    usual: doubtWords(doubt, usual).replace(' at its start', ''),
  };
  return readingDiffers(at, words, { rows, sizes });
}

/** Nothing decides, and the readings make different counts. */
export function twoReadings(scene: Scene, found: Sightings<'two-readings'>): Finding {
  const { first, at, rows, sizes } = found;
  const { doubt, here, other, made, otherMade } = first.fact;
  const sum = `Read as the first, the row makes ${made}; as the second, ${otherMade}.`;
  const words = wordsAt(scene, at);
  if (doubt === 'rep from * n times') {
    const n = Number(/\d+/.exec(words)?.[0] ?? 1);
    return timesTwoReadings(at, { words, first: n, second: n + 1 }, { sum, rows, sizes });
  }
  const ways = { words, first: doubtWords(doubt, here), second: doubtWords(doubt, other) };
  return twoWays(at, ways, { sum, rows, sizes });
}
