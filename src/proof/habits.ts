/**
 * What a pattern does throughout is its maker's way of writing: it is told once, as a note. What it
 * does once or twice is more likely a slip.
 */
import type { Finding, Label } from '../finding/index.ts';

/** Codes of which more than two say that it is a habit. */
const HABITS: ReadonlySet<string> = new Set(['stitch-differs', 'gaps-counted', 'reading-differs']);
/** At the third row nobody has slipped each time (judgement). */
const MOST_SLIPS = 2;
/** Places that are pointed at beside the first. */
const MOST_LABELS = 4;

export function habitsOnce(findings: readonly Finding[]): Finding[] {
  const byCode = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (!HABITS.has(finding.code)) continue;
    byCode.set(finding.code, [...(byCode.get(finding.code) ?? []), finding]);
  }
  const kept = findings.filter(({ code }) => (byCode.get(code)?.length ?? 0) <= MOST_SLIPS);
  for (const all of byCode.values()) if (all.length > MOST_SLIPS) kept.push(asNote(all));
  return namesOnce(kept);
}

/** A name that is used over and over, and defined nowhere, is no slip: told once, and nothing proposed. */
function namesOnce(findings: readonly Finding[]): Finding[] {
  const byName = new Map<string, Finding[]>();
  const nameOf = ({ code, message }: Finding): string | null =>
    code === 'undefined-stitch' ? message.toLowerCase() : null;
  for (const finding of findings) {
    const name = nameOf(finding);
    if (name !== null) byName.set(name, [...(byName.get(name) ?? []), finding]);
  }
  return findings.flatMap((finding) => {
    const all = byName.get(nameOf(finding) ?? '') ?? [];
    if (all.length <= MOST_SLIPS) return [finding];
    if (all[0] !== finding) return [];
    const labels = all
      .slice(1, MOST_LABELS + 1)
      .map(({ from, to }): Label => ({ from, to, text: 'used here too' }));
    return [{ ...finding, labels, fixes: [], rows: all.flatMap(({ rows }) => rows) }];
  });
}

function asNote(all: readonly Finding[]): Finding {
  const [first, ...more] = all as [Finding, ...Finding[]];
  const way = first.code === 'reading-differs' ? 'read' : 'counted';
  const labels = more
    .slice(0, MOST_LABELS)
    .map(({ from, to }): Label => ({ from, to, text: `${way} in the same way` }));
  return {
    ...first,
    severity: 'note',
    sum: `${all.length} rows are ${way} in this way; it is taken for the way of this pattern.`,
    labels,
    rows: all.flatMap(({ rows }) => rows),
  };
}
