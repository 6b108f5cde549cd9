// Shapes that the reader takes for something else today. An entry falls due when the reader is
// mended: its own test fails then, and the entry is to be deleted.
import type { Instruction } from '../../src/notation/index.ts';

export interface KnownFault {
  readonly why: string;
  /** Random lines of this shape are passed over. */
  readonly shape: RegExp;
  readonly shows: string;
  readonly sizes: number;
  /** Whether the line that shows the fault is read right. */
  readonly isMended: (read: Instruction) => boolean;
}

export const KNOWN_FAULTS: readonly KnownFault[] = [
  {
    why: 'boxes with sizes are read only behind "work"',
    shape: /(?<!work )\b\d+ \([\d, ]+\) (?:open|filled) /i,
    shows: 'Row 5: 20 (22, 24) open boxes.',
    sizes: 3,
    isMended: ({ steps }) => steps.length === 1 && steps[0]?.kind === 'boxes',
  },
];
