// Reports made by hand, for tests of how they are shown.
import type { Checked } from '../../cli/checked.ts';
import { lineStarts, type RowAccount } from '../../src/index.ts';

export function row(label: string, more: Partial<RowAccount> = {}): RowAccount {
  const made = more.made ?? 6;
  return {
    id: `${more.part ?? ''}/${label}/${more.size ?? ''}`,
    part: '',
    instance: 1,
    label,
    range: null,
    from: 0,
    to: 0,
    size: '',
    used: 6,
    made,
    chains: 0,
    spaces: [],
    boxes: 0,
    byKind: { sc: made },
    stated: [{ n: made, unit: 'sc', compared: true }],
    verdict: 'proven',
    ...more,
  };
}

/** Rows of one label, "Rnds 4-9", each with its number in its own label. */
export function rowsOfRange(
  from: number,
  to: number,
  more: Partial<RowAccount> = {},
): readonly RowAccount[] {
  return Array.from({ length: to - from + 1 }, (_, at) =>
    row(`Rnd ${from + at}`, { from: 1000 + from, range: { from, to, nth: at + 1 }, ...more }),
  );
}

export function checked(more: Partial<Checked> = {}): Checked & { readonly file: string } {
  const text = more.text ?? 'Rnd 1: 6 sc in magic ring. (6 sc)\n';
  return {
    file: 'disc.pattern.md',
    text,
    lines: lineStarts(text),
    terms: 'US',
    sizes: [''],
    conventions: [],
    rows: [row('Rnd 1')],
    findings: [],
    totals: [total({ rows: 1, proven: 1, stitches: 6 })],
    notChecked: [],
    ...more,
  };
}

export function total(more: Partial<Checked['totals'][number]> = {}): Checked['totals'][number] {
  return {
    size: '',
    rows: 0,
    proven: 0,
    unstated: 0,
    inPart: 0,
    mismatched: 0,
    unread: 0,
    unchecked: 0,
    stitches: 0,
    ...more,
  };
}
