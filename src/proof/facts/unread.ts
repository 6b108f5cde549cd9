/** Words that were not understood, and words that are understood but not followed by the hook. */
import { type Finding, notWorked, unread } from '../../finding/index.ts';
import { type Scene, type Sightings, wordsAt } from '../scene.ts';

export function notUnderstood(scene: Scene, { at, rows, sizes }: Sightings<'unread'>): Finding {
  return unread(at, { words: wordsAt(scene, at) }, { rows, sizes });
}

export function notFollowed(scene: Scene, { at, rows, sizes }: Sightings<'not-worked'>): Finding {
  return notWorked(at, { words: wordsAt(scene, at) }, { rows, sizes });
}
