/** One rule for each kind of fact. */
import type { FactKind } from '../../fabric/index.ts';
import type { Finding } from '../../finding/index.ts';
import type { Scene, Sightings } from '../scene.ts';
import { missingChart, missingChartRow, otherWidth } from './charts.ts';
import { count } from './count-mismatch.ts';
import { gapsCounted } from './gaps-counted.ts';
import { tooLarge } from './limits.ts';
import { mesh } from './mesh-count.ts';
import { misread } from './not-followed.ts';
import { lengthLeftOpen, numberChosen, numberLeftOpen } from './open.ts';
import { noPlace } from './place-missing.ts';
import { rangeOfOtherLength } from './range-mismatch.ts';
import { readsDifferently, twoReadings } from './readings.ts';
import { remainder } from './repeat-remainder.ts';
import { overrun } from './round-overrun.ts';
import { rowLoop, rowMissing } from './row-references.ts';
import { spaceOfOtherSize } from './space-size.ts';
import { otherStems } from './stitch-differs.ts';
import { undefinedName } from './stitch-names.ts';
import { left } from './stitches-left.ts';
import { notFollowed, notUnderstood, passed } from './unread.ts';
import { nounDiffers } from './wrong-noun.ts';

type Rules = {
  readonly [K in FactKind]: (scene: Scene, found: Sightings<K>) => Finding | null;
};

const rules: Rules = {
  overrun,
  left,
  remainder,
  count,
  stems: otherStems,
  'gaps-counted': gapsCounted,
  'no-place': noPlace,
  // Never a fault: told where the row was not followed.
  'spaces-left': () => null,
  'space-size': spaceOfOtherSize,
  noun: nounDiffers,
  undefined: undefinedName,
  unread: notUnderstood,
  'words-passed': passed,
  'not-worked': notFollowed,
  'not-followed': misread,
  'row-missing': rowMissing,
  'row-loop': rowLoop,
  mesh,
  'chart-missing': missingChart,
  'chart-width': otherWidth,
  'chart-row': missingChartRow,
  'open-length': lengthLeftOpen,
  // An assumption, which is listed among what was not checked.
  'to-length': () => null,
  'open-count': numberLeftOpen,
  'chosen-count': numberChosen,
  reading: readsDifferently,
  'two-readings': twoReadings,
  'row-total': rangeOfOtherLength,
  limit: tooLarge,
};

export function findingFor(scene: Scene, found: Sightings): Finding | null {
  // Each rule has the facts of its own kind; the table cannot say so of a kind not yet known.
  const rule = rules[found.first.fact.kind] as (s: Scene, f: Sightings) => Finding | null;
  return rule(scene, found);
}
