/**
 * Rows that do not come out, and of which it is not known what they stand on: they are left open instead
 * of being judged. Asked when all readings have been tried, so that no reading is chosen by it.
 */
import type { Manuscript } from '../manuscript/index.ts';
import type { Step } from '../notation/index.ts';
import { isFixed } from './amounts.ts';
import type { RowRecord } from './fabric.ts';
import { type Fact, MISFITS } from './facts.ts';
import { isPlainlySaid } from './plainly-said.ts';

/** The rows of one size in order; those that cannot be judged are `unchecked`. */
export function leftOpen(rows: readonly RowRecord[], manuscript: Manuscript): RowRecord[] {
  const unwritten = unwrittenChains(manuscript);
  return rows.map((row, i) => {
    const before = rows[i - 1];
    const beneath = before?.partIndex === row.partIndex && before.instance === row.instance;
    if (row.verdict !== 'mismatch' || !before || !beneath) return row;
    if (leadsToPlace(row, rows[i + 1], manuscript)) return withoutFault(row, 'proven');
    const unknown = standsOnNothing(row, before) || missesUnread(row, before);
    const unsaid = unwritten.has(row.partIndex) && missesOne(row) && opensInSame(row, manuscript);
    if (!unknown && !unsaid) return row;
    // What it makes its words alone fix: a count that differs is wrong, whatever lies beneath.
    const counts = unsaid ? [] : row.facts.filter((fact) => isOfAll(fact, row));
    const open = withoutFault(row, 'unchecked');
    return counts.length > 0 && isFixedIn(row, manuscript)
      ? { ...row, facts: [...open.facts, ...counts] }
      : open;
  });
}

const withoutFault = (row: RowRecord, verdict: RowRecord['verdict']): RowRecord => ({
  ...row,
  facts: row.facts.filter(({ kind }) => !MISFITS.has(kind)),
  verdict,
});

const isOfAll = (fact: Fact, { tally }: RowRecord): boolean =>
  fact.kind === 'count' && fact.computed === tally.stitches;

function isFixedIn(row: RowRecord, { parts, text }: Manuscript): boolean {
  const placed = parts[row.partIndex]?.instructions[row.instruction];
  if (!placed) return false;
  const { from, instruction } = placed;
  const wordsOf = (step: Step): string => text.slice(from + step.from, from + step.to);
  return (
    isFixed(instruction.steps, row.tally.stitches, row.sizeIndex) &&
    isPlainlySaid(instruction.steps, wordsOf, true)
  );
}

/**
 * "Rnd 24: 5 sc (5)" as the last of a leg of 20: it only leads the yarn to where the next part begins. Told by
 * plain stitches and nothing else, no more than half of the round, and by its own count.
 */
function leadsToPlace(row: RowRecord, next: RowRecord | undefined, { parts }: Manuscript): boolean {
  const isLast = next?.partIndex !== row.partIndex || next.instance !== row.instance;
  const faults = row.facts.filter(({ kind }) => MISFITS.has(kind));
  const [left] = faults;
  if (!isLast || !row.ring || faults.length !== 1 || left?.kind !== 'left') return false;
  const { stitches } = row.tally;
  const met =
    row.stated.length > 0 && row.stated.every(({ n, compared }) => compared && n === stitches);
  if (!met || stitches * 2 > row.available) return false;
  const steps = parts[row.partIndex]?.instructions[row.instruction]?.instruction.steps ?? [];
  return steps.every(
    (step) =>
      step.kind === 'remark' ||
      step.kind === 'fasten-off' ||
      (step.kind === 'work' &&
        step.stitch.shape === 'one' &&
        step.n !== null &&
        step.place === null &&
        step.until === null),
  );
}

/**
 * Parts whose notes count a beginning chain ("count beg ch-3 as 1 dc") that no row of theirs writes: it
 * is made all the same, and its rows are one stitch short as written.
 */
function unwrittenChains({ parts, orders }: Manuscript): ReadonlySet<number> {
  const unwritten = new Set<number>();
  parts.forEach((part, index) => {
    const counts = [...orders, ...part.orders].some(
      (order) => order.kind === 'start-chain' && order.countsAs.counts,
    );
    const written = part.instructions.some(({ instruction: { label, steps } }) => {
      const first = steps.find(({ kind }) => kind !== 'remark' && kind !== 'join');
      return label !== null && first?.kind === 'chain' && (first.n?.values[0] ?? 1) > 1;
    });
    if (counts && !written) unwritten.add(index);
  });
  return unwritten;
}

/** "Dc in same st as joining, …": the first stitch stands beside a chain that was made there. */
function opensInSame(row: RowRecord, { parts }: Manuscript): boolean {
  const steps = parts[row.partIndex]?.instructions[row.instruction]?.instruction.steps ?? [];
  const first = steps.find(({ kind }) => kind === 'work' || kind === 'group' || kind === 'repeat');
  return first?.kind === 'work' && first.place?.pick === 'same';
}

/** By one stitch, the row's count is too high or its walk too short. */
const missesOne = ({ facts }: RowRecord): boolean =>
  facts.every((fact) => {
    if (fact.kind === 'count') return fact.value - fact.computed === 1;
    if (fact.kind === 'left' || fact.kind === 'remainder') return fact.left === 1;
    return !MISFITS.has(fact.kind);
  });

/**
 * Behind a row of slip stitches and chains, as legs and petals are made, a row that asks for stitches is
 * worked into an earlier one.
 */
const standsOnNothing = (row: RowRecord, { tally, nodes }: RowRecord): boolean =>
  row.available === 0 && row.used === 0 && tally.stitches === 0 && nodes.to > nodes.from;

/** What a row makes that was not understood is known by its count at most; a walk that misses it proves nothing. */
const missesUnread = ({ facts, used, available }: RowRecord, before: RowRecord): boolean =>
  before.verdict === 'unread' && (used !== available || facts.some(({ kind }) => WALKS.has(kind)));

const WALKS: ReadonlySet<string> = new Set([
  'overrun',
  'left',
  'spaces-left',
  'remainder',
  'no-place',
]);
