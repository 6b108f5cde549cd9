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
    why: 'a group behind "(counts as dc)" is taken for what the chain stands for',
    shape: /\(counts as [^)]*\), [([]/,
    shows: 'Rnd 2: Ch 3 (counts as dc), (2 dc, ch 3) in same sp.',
    sizes: 1,
    isMended: ({ steps }) => steps[1]?.kind === 'group',
  },
  {
    why: 'a count behind a chain and a full stop is taken for what the chain stands for',
    shape: /ch \d+(?: \([\d, ]+\))?\. \(/,
    shows: 'Row 2: Sc in each st across, ch 2. (25 sc)',
    sizes: 1,
    isMended: ({ counts }) => counts.length === 1,
  },
  {
    why: 'a bracket of nothing but numbered stitches is a count even where "around" follows',
    shape:
      /[([]\d+ (?:\([\d, ]+\) )?\w+, \d+ (?:\([\d, ]+\) )?\w+(?:, \d+ \w+)*[)\]] (?:around|\d+ \()/,
    shows: 'Rnd 2: (2 sc, 3 dc) around.',
    sizes: 1,
    isMended: ({ steps, counts }) => steps.length === 1 && counts.length === 0,
  },
  {
    why: 'a group "between" stitches is taken for a count or for what a chain stands for',
    shape: /[)\]] between /,
    shows: 'Rnd 2: Ch 1, (dc, ch 1) between next 2 sts.',
    sizes: 1,
    isMended: ({ steps }) => steps[1]?.kind === 'group',
  },
  {
    why: 'a row end is a place only as "end of row"',
    shape: /row ends?\b/,
    shows: 'Row 1: Sc in each row end across.',
    sizes: 1,
    isMended: ({ steps }) => steps.length === 1,
  },
  {
    why: 'boxes with sizes are read only behind "work"',
    shape: /(?<!work )\b\d+ \([\d, ]+\) (?:open|filled) /i,
    shows: 'Row 5: 20 (22, 24) open boxes.',
    sizes: 3,
    isMended: ({ steps }) => steps.length === 1 && steps[0]?.kind === 'boxes',
  },
  {
    why: 'a closing star before a number with sizes is taken for a sign of multiplication',
    shape: /\* \d+ \([\d, ]+\) times/,
    shows: 'Rnd 2: *Sc in next st, inc in next sp* 6 (7, 8) times.',
    sizes: 3,
    isMended: ({ steps }) => steps.length === 1 && steps[0]?.kind === 'repeat',
  },
  {
    why: 'a label that counts its rows by size is not read',
    shape: /^Next \d+ \(/,
    shows: 'Next 20 (20, 22) rows: Sc in each st across.',
    sizes: 3,
    isMended: ({ label }) => label?.next?.values.length === 3,
  },
];
