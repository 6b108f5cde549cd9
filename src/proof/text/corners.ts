/** Filled boxes of a chart that meet only at a corner: a note, since it is normal practice. */
import type { Finding } from '../../finding/index.ts';
import { cornerFindings } from '../../lettering/index.ts';
import type { Scene } from '../scene.ts';

export const corners = ({ manuscript }: Scene): Finding[] =>
  manuscript.charts.flatMap(cornerFindings);
