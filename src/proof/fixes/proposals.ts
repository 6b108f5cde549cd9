/**
 * Changes that may help, kept beside a finding and not in it: only what was re-checked may stand
 * among its fixes. Keyed by the finding itself, so they go when it goes.
 */
import type { Finding, Fix } from '../../finding/index.ts';

const proposals = new WeakMap<Finding, readonly Fix[]>();

export function propose(finding: Finding, fixes: readonly Fix[]): Finding {
  if (fixes.length > 0) proposals.set(finding, [...(proposals.get(finding) ?? []), ...fixes]);
  return finding;
}

export const proposedFor = (finding: Finding): readonly Fix[] => proposals.get(finding) ?? [];

/** A fix that puts `insert` in place of the words there. */
export function replacement(text: string, at: { from: number; to: number }, insert: string): Fix {
  const was = text.slice(at.from, at.to).replace(/\s+/g, ' ');
  return {
    title: `change "${was}" to "${insert}"`,
    edits: [{ from: at.from, to: at.to, insert }],
  };
}
