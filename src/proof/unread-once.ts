/**
 * Several stretches of one row that were not understood have one cause as a rule, a way of writing: they
 * are told together, at the first. Those for which a change is proposed stand alone.
 */
import type { Finding, Label } from '../finding/index.ts';
import { proposedFor } from './fixes/proposals.ts';

/** Stretches that are pointed at beside the first. */
const MOST_LABELS = 4;

export function unreadOnce(findings: readonly Finding[]): Finding[] {
  const ofRow = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = keyOf(finding);
    if (key !== null) ofRow.set(key, [...(ofRow.get(key) ?? []), finding]);
  }
  return findings.flatMap((finding) => {
    const all = ofRow.get(keyOf(finding) ?? '') ?? [finding];
    if (all.length < 2) return [finding];
    return all[0] === finding ? [together(all)] : [];
  });
}

/** The rows that it is of; `null`: it stands alone. */
const keyOf = (finding: Finding): string | null =>
  finding.code === 'unread' && finding.rows.length > 0 && proposedFor(finding).length === 0
    ? `${finding.rows.join()} ${finding.sizes.join()}`
    : null;

function together(all: readonly Finding[]): Finding {
  const [first, ...more] = all as [Finding, ...Finding[]];
  const shown = more.slice(0, MOST_LABELS);
  const labels = shown.map(({ from, to }): Label => ({ from, to, text: 'nor this' }));
  const rest = more.length - shown.length;
  const unshown =
    rest > 0 ? `Nor ${rest === 1 ? 'was one more stretch' : `were ${rest} more`} of this row.` : '';
  const sum = [first.sum, unshown].filter((words) => words !== '').join(' ');
  return { ...first, sum, labels: [...first.labels, ...labels] };
}
