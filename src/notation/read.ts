/** From the text of one instruction to its tree. Never throws; every word ends up in a step. */
import type { Span } from '../source/index.ts';
import { mayBeStitch } from './dictionary.ts';
import { settleJoins } from './join.ts';
import { alongChain, lastCount, mayNamePiece, nameJoinedPieces } from './joined.ts';
import { readLabel } from './label.ts';
import { settleListTimes, settleNames } from './list-times.ts';
import { settleListedGroups } from './listed-groups.ts';
import { settleLoopsOfRow } from './loops-of-row.ts';
import { settleMore } from './more-of-same.ts';
import { PLAIN_NOUN } from './noun.ts';
import { loneValue } from './numbers.ts';
import { placeWith } from './place-draft.ts';
import { isWorked } from './plain-count.ts';
import { openReader, type Reader } from './reader.ts';
import { rowsOfPart } from './rows-again.ts';
import { W } from './senses.ts';
import { makes, settleCounts } from './settle-counts.ts';
import { mendsOf, slipsOf } from './slips.ts';
import { readRun } from './steps.ts';
import { termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type {
  ChainStep,
  Instruction,
  RowLabel,
  Slip,
  StandingOrder,
  StatedCount,
  Step,
  Until,
  WorkStep,
} from './tree.ts';
import { NO_VOCABULARY, type Vocabulary } from './vocabulary.ts';

/**
 * Reads `text` from `from` to `to` as one instruction. Spans in the result count from `from`.
 * Linear in the length of the text.
 */
export function readInstruction(
  text: string,
  from: number,
  to: number,
  known: Vocabulary = NO_VOCABULARY,
): Instruction {
  const r = openReader(text, { from, to }, known, readRun);
  const { strange } = r;
  const read = readOpened(r);
  return strange === 0 || lostIn(read.steps) === 0
    ? read
    : readMended(read, { text, from, to, known });
}

interface Written extends Span {
  readonly text: string;
  readonly known: Vocabulary;
}

/** The reading with strange words taken for what they may have been, where it leaves fewer over. */
function readMended(read: Instruction, { text, from, to, known }: Written): Instruction {
  const r = openReader(text, { from, to }, known, readRun);
  const mends = mendsOf(r, { isRow: read.label !== null });
  if (mends === null) return read;
  const mended = readOpened(openReader(text, { from, to, mends }, known, readRun));
  if (lostIn(mended.steps) >= lostIn(read.steps)) return read;
  return { ...mended, slips: [...mended.slips, ...slipsOf(mends)] };
}

/** How many signs of it were not understood, or were taken for talk. */
function lostIn(steps: readonly Step[]): number {
  let lost = 0;
  for (const step of steps) {
    if (step.kind === 'unread' || step.kind === 'remark') lost += step.to - step.from;
    else if (step.kind === 'repeat' || step.kind === 'group') lost += lostIn(step.steps);
  }
  return lost;
}

function readOpened(r: Reader): Instruction {
  const label = readLabel(r);
  const steps = r.run(r, 'text');
  ringFirst(steps, label, r);
  noteAlone(steps, label, r);
  likeOther(steps, label, r);
  talkOfWork(steps, label, r);
  changedBehind(steps, label, r);
  const counts = countsOfSide(countsOfChain(settleCounts(r.counts, steps), steps), steps);
  rowsAlone(steps, label, counts);
  countAlone(steps, label, counts);
  spreadIncreases(steps);
  startsInBracket(steps);
  settleMore(steps);
  spacesToldBehind(steps);
  cornersToldBehind(steps);
  endsInLast(steps, r);
  moreInLast(steps, r);
  onAlongSide(steps);
  postsBeneath(steps);
  const settled = settleJoins(
    settleListTimes(
      settleNames(settleLoopsOfRow(settleListedGroups(steps), label), counts),
      counts,
    ),
  );
  const orders = r.orders.length === 0 ? NO_ORDERS : r.orders;
  const slips = r.slips.length === 0 ? NO_SLIPS : r.slips;
  if (!mayNamePiece(r)) return { label, steps: settled, counts, orders, slips };
  const words = r.text.slice(r.base, r.base + (r.from[r.count - 1] ?? 0));
  const joined = alongChain(nameJoinedPieces(settled, words), words);
  return { label, steps: joined, counts: lastCount(counts, joined), orders, slips };
}

// Most instructions have none of these: the lists of all of them may be one.
const NO_ORDERS: readonly StandingOrder[] = [];
const NO_SLIPS: readonly Slip[] = [];

/** "Rnds 9-11. 3 rnds (28)": nothing but how many there are, and what each ends with. */
function rowsAlone(steps: Step[], label: RowLabel | null, counts: readonly StatedCount[]): void {
  const [rows] = counts;
  if (!label || label.numbers.length < 2 || rows?.unit !== 'row') return;
  if (rows.n.values[0] !== label.numbers.length || steps.some((s) => s.kind !== 'remark')) return;
  const { from, to } = rows;
  steps.unshift({ kind: 'even', stitch: null, rows: null, measure: null, until: null, from, to });
}

/** "Ch 82 (82)": where nothing but chain is made, a bare number counts chains. */
function countsOfChain(
  counts: readonly StatedCount[],
  steps: readonly Step[],
): readonly StatedCount[] {
  if (counts.length === 0 || !steps.some((step) => step.kind === 'chain')) return counts;
  const chainOnly = steps.every(
    ({ kind }) =>
      kind === 'chain' ||
      kind === 'turn' ||
      kind === 'yarn' ||
      kind === 'join' ||
      kind === 'remark',
  );
  if (!chainOnly) return counts;
  // "Ch 30 + 1 to turn. (30 + 1)"
  const [count, more] = counts;
  const chain = steps.find((step) => step.kind === 'chain')?.n?.values[0] ?? 0;
  const both = (count?.n.values[0] ?? 0) + (more?.n.values[0] ?? 0);
  if (count && more && counts.length === 2 && both === chain)
    return [{ ...count, n: { ...count.n, values: [both] }, unit: 'chain', to: more.to }];
  return counts.map((count) => (count.unit === null ? { ...count, unit: 'chain' } : count));
}

/** "5 sc, FPdc into the previous dc": where the row itself has no dc before, that of the row beneath. */
function postsBeneath(steps: Step[]): void {
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i];
    if (step?.kind !== 'work' || step.place?.pick !== 'previous' || !step.stitch.post) continue;
    const [noun] = step.place.nouns;
    const former = steps.slice(0, i).findLast(isWorked);
    if (noun?.kind !== 'stem' || former?.kind !== 'work') continue;
    if (former.stitch.shape !== 'one' || former.stitch.stem === noun.stem) continue;
    steps[i] = { ...step, place: { ...step.place, pick: 'next' } };
  }
}

/** "3 sc in 2nd ch, sc in next 8, 3 sc in last, on other side sc in each st (8 sc)": of that side only. */
function countsOfSide(counts: readonly StatedCount[], steps: Step[]): readonly StatedCount[] {
  if (counts.length !== 1) return counts;
  const [count] = counts;
  const side = steps.findLastIndex(({ kind }) => kind === 'other-side');
  if (!count || side < 1) return counts;
  const [each, another] = steps.slice(side).filter(isWorked);
  if (another || each?.kind !== 'work' || each.place?.pick !== 'each') return counts;
  const n = count.n.values[0];
  const former = steps
    .slice(0, side)
    .some((step) => step.kind === 'work' && step.place?.n?.values[0] === n);
  if (!former || count.from < each.to) return counts;
  const { from, to } = count;
  const behind = steps.findIndex((step) => step.from >= to);
  steps.splice(behind < 0 ? steps.length : behind, 0, { kind: 'remark', from, to });
  return [];
}

/** "Sc in each ch. Continue down the opposite side.": with the same stitch, in each chain of it. */
function onAlongSide(steps: Step[]): void {
  const side = steps.findLastIndex(({ kind }) => kind === 'other-side');
  if (side < 1 || steps.slice(side).some(isWorked)) return;
  const along = steps.slice(0, side).findLast(isWorked);
  const last = along?.kind === 'work' ? (along.alsoIn.at(-1) ?? along.place) : null;
  if (along?.kind !== 'work' || (last?.pick !== 'each' && along.until?.kind !== 'end')) return;
  const to = steps[side]?.to ?? 0;
  const span = { from: to, to };
  const until: Until = { kind: 'end', word: '', ...span };
  steps.splice(side + 1, 0, { ...along, place: null, alsoIn: [], until, countsAs: null, ...span });
}

/** "sc in each st around, inc 8 sts evenly spaced": one round, with eight increases in it. */
function spreadIncreases(steps: Step[]): void {
  for (let i = 1; i < steps.length; i++) {
    const all = steps[i - 1];
    const inc = steps[i];
    if (inc?.kind !== 'work' || !inc.evenly || inc.n === null) continue;
    if (all?.kind === 'even' && all.rows === null && all.measure === null) {
      steps.splice(i - 1, 2, { ...inc, from: all.from });
      continue;
    }
    if (all?.kind !== 'work') continue;
    const each = all.place?.pick === 'each' && !all.place.of;
    const until = each ? (all.place.until ?? (all.place.n ? null : toEnd(all))) : all.until;
    const one = all.n === null || (each && all.n.values.every((n) => n === 1));
    const plain = all.stitch.shape === 'one' && one && all.alsoIn.length === 0;
    const shapes = inc.stitch.shape === 'increase' || inc.stitch.shape === 'together';
    if (!plain || !shapes || until?.kind !== 'end' || inc.place) continue;
    // "…, decreasing 2 sts evenly around"
    if (inc.until && inc.until.kind !== 'end') continue;
    const stitch = termWith(inc.stitch, { stem: inc.stitch.stem ?? all.stitch.stem });
    steps.splice(i - 1, 2, { ...inc, stitch, until, from: all.from });
  }
}

/** "(Ch 3, dc), 2 dc in each st around": what the bracket holds together is in one place, the first. */
function startsInBracket(steps: Step[]): void {
  const [start, next] = steps;
  if (start?.kind !== 'repeat' || start.times.kind !== 'missing' || start.ending) return;
  if (start.order.to > start.order.from || next?.kind !== 'work') return;
  const [chain, ...works] = start.steps;
  const n = chain?.kind === 'chain' ? (chain.n?.values[0] ?? 0) : 0;
  if (n < 2 || n > 4 || works.length === 0) return;
  if (!works.every((step) => step.kind === 'work' && !step.place && !step.until)) return;
  const at = { from: start.to, to: start.to };
  const place = placeWith(at, { pick: 'first', nouns: [{ ...PLAIN_NOUN, ...at }] });
  const { from, to } = start;
  steps[0] = { kind: 'group', steps: start.steps, place, loose: false, from, to };
}

/** "1 sc in each sc, inc 3 sc evenly": into each means to the end. */
const toEnd = ({ to }: WorkStep): Until => ({ kind: 'end', word: 'across', from: to, to });

/** "2 dc in each sp across, ending with sc in last sp": the last one is left for that. */
function endsInLast(steps: Step[], r: Reader): void {
  for (let i = 1; i < steps.length; i++) {
    const each = steps[i - 1];
    const last = steps[i];
    if (last?.kind !== 'work' || last.place?.pick !== 'last' || last.place.n) continue;
    if (each?.kind !== 'group' && each?.kind !== 'work') continue;
    const { place } = each;
    const noun = last.place.nouns[0];
    if (place?.pick !== 'each' || place.until?.kind !== 'end' || noun?.kind !== 'space') continue;
    if (place.nouns[0]?.kind !== 'space') continue;
    if (!/\bend(?:ing)? with\b/i.test(r.text.slice(r.base + each.to, r.base + last.from + 1)))
      continue;
    const { from, to } = place.until;
    const n = { values: loneValue(1), from: to, to };
    const until = { kind: 'last' as const, n, noun, chain: false, from, to };
    steps[i - 1] = { ...each, place: { ...place, until } };
  }
}

/** "dc in each dc across, another dc in last st": the last one has a stitch, and takes one more. */
function moreInLast(steps: Step[], r: Reader): void {
  for (let i = 1; i < steps.length; i++) {
    const each = steps[i - 1];
    const last = steps[i];
    if (last?.kind !== 'work' || last.place?.pick !== 'last' || last.place.n) continue;
    if (each?.kind !== 'work' || (each.place?.until ?? each.until)?.kind !== 'end') continue;
    const words = r.text.slice(r.base + each.to, r.base + last.nameTo);
    if (!/\b(?:another|more)\b/i.test(words)) continue;
    steps[i] = { ...last, place: { ...last.place, pick: 'same' } };
  }
}

/** "Hdc around, 2 hdc in each corner": the stitches between the corners have places too. */
function cornersToldBehind(steps: Step[]): void {
  for (let i = 1; i < steps.length; i++) {
    const corner = steps[i];
    const row = steps[i - 1];
    if (corner?.kind !== 'work' && corner?.kind !== 'group') continue;
    const { place } = corner;
    const noun = place?.pick === 'each' ? place.nouns[0] : undefined;
    if (!place || !noun || (noun.kind !== 'corner' && !noun.corner)) continue;
    if (row?.kind !== 'work' || row.until?.kind !== 'end' || row.place || row.n) continue;
    const nouns = [
      { ...noun, kind: 'stitch' as const, stem: null, chains: null, word: '', corner: false },
    ];
    const each = { ...place, n: null, of: null, nouns, until: row.until };
    steps[i - 1] = { ...row, until: null, place: each };
  }
}

/** "hdc across, ch 2, turn (put 2 hdc in each ch-sp)": what the spaces take instead of one. */
function spacesToldBehind(steps: Step[]): void {
  const at = steps.length - 1;
  const told = steps[at];
  const inner = told?.kind === 'repeat' && told.times.kind === 'missing' ? told.steps : [];
  const [work] = inner;
  if (inner.length !== 1 || work?.kind !== 'work' || work.place?.pick !== 'each') return;
  if (work.place.nouns[0]?.kind !== 'space' || work.until || steps[at - 1]?.kind !== 'turn') return;
  const all = steps.findIndex((step) => step.kind === 'work');
  const row = steps[all];
  if (row?.kind !== 'work' || row.until?.kind !== 'end' || row.place || row.n) return;
  if (row.stitch.stem !== work.stitch.stem || steps.slice(all + 1, at).some(isWorked)) return;
  const nouns = [{ ...work.place.nouns[0], kind: 'stitch' as const, chains: null }];
  const place = { ...work.place, nouns };
  steps.splice(at, 1);
  steps.splice(all, 1, { ...row, until: null, place }, { ...work, until: row.until });
}

/** "Rows 16-22: (49)": worked even, as the count says. */
function countAlone(
  steps: Step[],
  label: RowLabel | null,
  { length }: readonly StatedCount[],
): void {
  if (!label || steps.length > 0 || length !== 1 || (label.numbers[0] ?? 0) < 2) return;
  steps.push({
    kind: 'even',
    stitch: null,
    until: null,
    rows: null,
    measure: null,
    from: label.to,
    to: label.to,
  });
}

/** "Rnd 1: MC, ch 3": no yarn of that name is told of, so that the circle is meant. */
function ringFirst(steps: Step[], label: RowLabel | null, r: Reader): void {
  const first = steps[0];
  const next = steps[1];
  if (label?.numbers[0] !== 1) return;
  if (first?.kind === 'work') return intoKnot(steps, first, r);
  if (first?.kind !== 'remark' || r.known.yarns.has('MC')) return;
  if (next?.kind !== 'chain' && next?.kind !== 'work') return;
  if (r.text.slice(r.base + first.from, r.base + first.to).toUpperCase() !== 'MC') return;
  steps[0] = { kind: 'ring', from: first.from, to: first.to };
}

/** "6 sc in the slip knot", "in slip loop", and "in the slip stitch" of a translator: the ring. */
function intoKnot(steps: Step[], first: WorkStep, r: Reader): void {
  const { place, n } = first;
  if (place?.pick !== 'this' || place.of || place.nouns[0]?.kind !== 'join') return;
  if ((n?.values[0] ?? 1) < FEWEST_IN_RING) return;
  steps[0] = { ...first, place: { ...place, nouns: [{ ...PLAIN_NOUN, kind: 'ring' }] } };
  const next = steps[1];
  const words = next?.kind === 'remark' ? r.text.slice(r.base + next.from, r.base + next.to) : '';
  if (/^(?:knot|loop)$/i.test(words)) steps.splice(1, 1);
}

const FEWEST_IN_RING = 3;

/** "US terms. Ch 3 counts as dc throughout.": a sentence about chains makes none. */
function noteAlone(steps: Step[], label: RowLabel | null, r: Reader): void {
  if (label || !steps.every((step) => step.kind === 'remark' || isTold(step))) return;
  // "Ch 3 (counts as dc)" and "ch 140, + 3 to count as dc" are worked.
  for (let i = 0; i < r.count; i++) if (r.kind[i] === T.open || r.kind[i] === T.plus) return;
  steps.forEach((step, i) => {
    if (!isTold(step)) return;
    const { n, countsAs, from, to } = step;
    steps[i] = { kind: 'remark', from, to };
    if (countsAs && !countsAs.throughout)
      r.orders.push({ kind: 'start-chain', n: n?.values[0] ?? null, countsAs, from, to });
  });
}

/** "Rows 2-4: As first side.", "as for the left front": the rows of these numbers there. */
function likeOther(steps: Step[], label: RowLabel | null, r: Reader): void {
  const [only] = steps;
  if (!label || label.numbers.length === 0 || only?.kind !== 'remark' || steps.some(makes)) return;
  const words = r.text.slice(r.base + only.from, r.base + only.to);
  const part = /^(?:work |same )?(?:as|like) (?:for )?(?:the )?([a-z' -]+\w)\.?$/i.exec(words)?.[1];
  if (!part || /\b(?:set|before|established|follows|usual)\b/i.test(part)) return;
  steps[0] = rowsOfPart(label.numbers, part, only);
}

/**
 * A numbered row that was taken for nothing but talk, though stitches and their places are named in it:
 * it was not understood, and would else be lost in silence.
 */
function talkOfWork(steps: Step[], label: RowLabel | null, r: Reader): void {
  if (!label || label.numbers.length === 0 || steps.length === 0) return;
  if (!steps.every(({ kind }) => kind === 'remark')) return;
  for (let i = r.count - 1; i >= 0; i--) {
    if (!mayBeStitch(r.word[i] ?? 0) || r.word[i + 1] !== W.in) continue;
    steps.forEach(({ from, to }, at) => {
      steps[at] = { kind: 'unread', from, to };
    });
    return;
  }
}

/** "adding one more sc between the increases": what is put in, or left out, beside the row named. */
const CHANGES =
  /^(?:but |and |only )*(?:add(?:ing)?|plac(?:e|ing)|put(?:ting)?|work(?:ing)?|mak(?:e|ing)|having|leav(?:e|ing)|with)\b.*\b(?:\d|one|an?|two|three|more|extra|additional)\b/i;

/** "Row 3: Rep row 2, then sc2tog over last 2 sts": how the two go together is not said. */
function changedBehind(steps: Step[], label: RowLabel | null, r: Reader): void {
  if (label?.numbers.length !== 1 || steps[0]?.kind !== 'rows-again') return;
  const changes = (step: Step): boolean =>
    step.kind === 'remark' &&
    CHANGES.test(
      r.text.slice(r.base + step.from, Math.min(r.base + step.to, r.base + step.from + 80)),
    );
  steps.forEach((step, i) => {
    if (i > 0 && (makes(step) || changes(step)))
      steps[i] = { kind: 'unread', from: step.from, to: step.to };
  });
}

const isTold = (step: Step): step is ChainStep => step.kind === 'chain' && step.countsAs !== null;
