/** Plan and fabric in, findings out: every rule in turn, none of which changes anything. */
import type { Fabric } from '../fabric/index.ts';
import type { Finding } from '../finding/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { findingFor } from './facts/index.ts';
import { newScene } from './scene.ts';
import { sightingsOf } from './sightings.ts';
import { textFindings } from './text/index.ts';

export function prove(manuscript: Manuscript, fabric: Fabric): Finding[] {
  const scene = newScene(manuscript, fabric);
  const findings = textFindings(scene);
  const unfollowed = new Set(
    findings.flatMap(({ code, rows }) => (code === 'nesting-too-deep' ? rows : [])),
  );
  for (const found of sightingsOf(scene)) {
    if (found.rows.every((row) => unfollowed.has(row))) continue;
    const finding = findingFor(scene, found);
    if (finding) findings.push(finding);
  }
  return findings;
}
