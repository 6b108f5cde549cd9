/** Plan and fabric in, findings out: every rule in turn, none of which changes anything. */
import { type Fabric, type Fact, MISFITS } from '../fabric/index.ts';
import type { Finding } from '../finding/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { findingFor } from './facts/index.ts';
import { newScene } from './scene.ts';
import { sightingsOf } from './sightings.ts';
import { textFindings } from './text/index.ts';

export function prove(manuscript: Manuscript, fabric: Fabric): Finding[] {
  const scene = newScene(manuscript, fabric);
  const findings = textFindings(scene);
  const explained = explainedBy(findings);
  for (const found of sightingsOf(scene)) {
    if (found.rows.every((row) => explained(row, found.first.fact))) continue;
    const finding = findingFor(scene, found);
    if (finding) findings.push(finding);
  }
  return findings;
}

/** What the words alone have told already, the sums of the same row need not tell again. */
function explainedBy(findings: readonly Finding[]): (row: string, fact: Fact) => boolean {
  const rowsOf = (code: string): ReadonlySet<string> =>
    new Set(findings.flatMap((one) => (one.code === code ? one.rows : [])));
  const unfollowed = rowsOf('nesting-too-deep');
  const behindGap = rowsOf('row-missing');
  const unequal = rowsOf('handles-unequal');
  return (row, fact) =>
    unfollowed.has(row) ||
    // Worked into the row before the gap, it cannot come out.
    (behindGap.has(row) && MISFITS.has(fact.kind)) ||
    (unequal.has(row) && fact.kind === 'count' && fact.unit === 'space');
}
