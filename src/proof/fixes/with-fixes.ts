/** Fixes are offered only if the text with them in place was read, worked and proven again. */
import type { Finding, Fix } from '../../finding/index.ts';
import { applyEdits } from '../../source/index.ts';
import { proposedFor } from './proposals.ts';

/** Most fixes that a finding shows, and most findings of a file for which fixes are tried. */
const MOST_FIXES = 3;
const MOST_FINDINGS = 50;

/**
 * The findings, with the fixes that hold: after the change the finding is gone and nothing new of
 * error or warning grade has come up. `recompile` gives the findings of another text. Several fixes
 * may hold; none is chosen.
 */
export function withFixes(
  text: string,
  findings: readonly Finding[],
  recompile: (text: string) => readonly Finding[],
): Finding[] {
  const before = tally(findings);
  let tried = 0;
  return findings.map((finding) => {
    const proposed = proposedFor(finding);
    if (proposed.length === 0 || tried >= MOST_FINDINGS) return finding;
    tried++;
    const fixes = proposed
      .slice(0, MOST_FIXES)
      .filter((fix) => holdsGood(finding, before, recompile(applyEdits(text, fix.edits))));
    return fixes.length > 0 ? { ...finding, fixes: [...finding.fixes, ...unlike(fixes)] } : finding;
  });
}

/** How many findings of each code there are; notes aside, which are habits, but for rows not followed. */
function tally(findings: readonly Finding[]): ReadonlyMap<string, number> {
  const n = new Map<string, number>();
  for (const { code, severity, rows } of findings) {
    const more = code === 'not-followed' ? rows.length : severity === 'note' ? 0 : 1;
    if (more > 0) n.set(code, (n.get(code) ?? 0) + more);
  }
  return n;
}

const total = (n: ReadonlyMap<string, number>): number =>
  [...n.values()].reduce((sum, one) => sum + one, 0);

function holdsGood(
  finding: Finding,
  before: ReadonlyMap<string, number>,
  findings: readonly Finding[],
): boolean {
  const after = tally(findings);
  if (finding.severity !== 'note') {
    // A row that was muted may speak up under another name: it is the sum that has to shrink.
    const isGone = (after.get(finding.code) ?? 0) < (before.get(finding.code) ?? 0);
    return isGone && total(after) < total(before);
  }
  if (total(after) > total(before)) return false;
  return !findings.some(
    ({ code, message }) => code === finding.code && message === finding.message,
  );
}

/** Each change once. */
function unlike(fixes: readonly Fix[]): Fix[] {
  const seen = new Set<string>();
  return fixes.filter(({ edits }) => {
    const key = edits.map(({ from, to, insert }) => `${from} ${to} ${insert}`).join('|');
    return seen.size < seen.add(key).size;
  });
}
