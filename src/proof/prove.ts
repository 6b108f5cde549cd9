/** Plan and fabric in, findings out: every rule in turn, none of which changes anything. */
import type { Fabric, Fact } from '../fabric/index.ts';
import type { Finding } from '../finding/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { findingFor } from './facts/index.ts';
import { habitsOnce } from './habits.ts';
import { newScene, type Scene } from './scene.ts';
import { sightingsOf } from './sightings.ts';
import { textFindings } from './text/index.ts';

export function prove(manuscript: Manuscript, fabric: Fabric): Finding[] {
  const scene = newScene(manuscript, fabric);
  const findings = textFindings(scene);
  const behindGap = rowsOf(findings, 'row-missing');
  const explained = explainedBy(scene, findings);
  for (const found of sightingsOf(scene, behindGap)) {
    if (found.rows.every((row) => explained(row, found.first.fact))) continue;
    const finding = findingFor(scene, found);
    if (finding) findings.push(finding);
  }
  return habitsOnce(findings);
}

/** What the words alone have told already, the sums of the same row need not tell again. */
function explainedBy(
  scene: Scene,
  findings: readonly Finding[],
): (row: string, fact: Fact) => boolean {
  const unfollowed = rowsOf(findings, 'nesting-too-deep');
  const unequal = rowsOf(findings, 'handles-unequal');
  const behindSkipped = rowsBehind(scene, rowsOf(findings, 'reading-differs'));
  return (row, fact) =>
    // It works into the top of skipped chains that the row before could not count.
    (behindSkipped.has(row) && fact.kind === 'overrun' && fact.needed - fact.have === 1) ||
    unfollowed.has(row) ||
    (unequal.has(row) && fact.kind === 'count' && fact.unit === 'space');
}

/** Ids of the rows worked right behind these. */
function rowsBehind({ fabric }: Scene, ids: ReadonlySet<string>): ReadonlySet<string> {
  const behind = new Set<string>();
  for (const { rows } of fabric.cloths) {
    rows.forEach((row, i) => {
      if (ids.has(rows[i - 1]?.id ?? '')) behind.add(row.id);
    });
  }
  return behind;
}

const rowsOf = (findings: readonly Finding[], code: string): ReadonlySet<string> =>
  new Set(findings.flatMap((one) => (one.code === code ? one.rows : [])));
