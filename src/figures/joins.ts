/** Rounds that a slip stitch closes: the fabric keeps no node for it, the words tell. */
import type { RowRecord } from '../fabric/index.ts';
import type { Manuscript } from '../manuscript/index.ts';

/** Does the row close with a join? A row that repeats another one has the words "rep rnd 4" alone. */
export function isJoined(
  { partIndex, instruction, ring }: RowRecord,
  { parts }: Manuscript,
): boolean {
  const steps = parts[partIndex]?.instructions[instruction]?.instruction.steps ?? [];
  return ring && steps.some(({ kind }) => kind === 'join');
}
