/** Plan and fabric in, findings out: every rule in turn, none of which changes anything. */
import type { Fabric, Fact } from '../fabric/index.ts';
import type { Finding } from '../finding/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { findingFor } from './facts/index.ts';
import { habitsOnce } from './habits.ts';
import { newScene } from './scene.ts';
import { sightingsOf } from './sightings.ts';
import { textFindings } from './text/index.ts';

export function prove(manuscript: Manuscript, fabric: Fabric): Finding[] {
  const scene = newScene(manuscript, fabric);
  const findings = textFindings(scene);
  const behindGap = rowsOf(findings, 'row-missing');
  const explained = explainedBy(findings);
  for (const found of sightingsOf(scene, behindGap)) {
    if (found.rows.every((row) => explained(row, found.first.fact))) continue;
    const finding = findingFor(scene, found);
    if (finding) findings.push(finding);
  }
  return habitsOnce(findings);
}

/** What the words alone have told already, the sums of the same row need not tell again. */
function explainedBy(findings: readonly Finding[]): (row: string, fact: Fact) => boolean {
  const unfollowed = rowsOf(findings, 'nesting-too-deep');
  const unequal = rowsOf(findings, 'handles-unequal');
  return (row, fact) =>
    unfollowed.has(row) || (unequal.has(row) && fact.kind === 'count' && fact.unit === 'space');
}

const rowsOf = (findings: readonly Finding[], code: string): ReadonlySet<string> =>
  new Set(findings.flatMap((one) => (one.code === code ? one.rows : [])));
