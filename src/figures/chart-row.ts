/** Rows that work a chart: where a motif stands and how wide it is. */
import type { RowRecord } from '../fabric/index.ts';
import type { Manuscript } from '../manuscript/index.ts';

/** Boxes of the chart that a row works; `null` where it works none. */
export function chartOver(
  { partIndex, instruction }: RowRecord,
  manuscript: Manuscript,
): number | null {
  const steps = manuscript.parts[partIndex]?.instructions[instruction]?.instruction.steps ?? [];
  const step = steps.find(({ kind }) => kind === 'chart');
  if (step?.kind !== 'chart') return null;
  const chart = manuscript.charts.find(
    ({ name }) => step.name === '' || name.toLowerCase() === step.name.toLowerCase(),
  );
  return chart?.rows[0]?.length ?? null;
}
