/**
 * The fabric at another gauge. It is the same but where rows go on to a length: there another gauge makes
 * another number of rows, so the pattern is worked again with that gauge at its head.
 */
import { type Fabric, work } from '../fabric/index.ts';
import type { Gauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';

export function fabricAt(manuscript: Manuscript, fabric: Fabric, gauges: Gauges): Fabric {
  const isToLength = fabric.cloths.some(({ rows }) =>
    rows.some(({ facts }) => facts.some(({ kind }) => kind === 'to-length')),
  );
  if (!isToLength) return fabric;
  const gauge = Object.fromEntries(
    gauges.records.map(({ fabric: name, counts }) => [name, counts.map(({ words }) => words)]),
  );
  const { head } = manuscript;
  return work({ ...manuscript, head: { ...head, data: { ...head.data, gauge } } });
}
