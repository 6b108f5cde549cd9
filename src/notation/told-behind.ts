/**
 * What stands behind other work and changes it: "Hdc around, 2 hdc in each corner", "sc around, inc 8
 * evenly", "2 dc in each sp across, ending with sc in last sp". A first step that a bracket holds, and a
 * repeat whose first pass is written out before it, are settled with them.
 */
import { settleBackAlongChain } from './back-along-chain.ts';
import { settleSides } from './each-side.ts';
import { hintOf, isHinted } from './hints.ts';
import { settleMore } from './more-of-same.ts';
import { PLAIN_NOUN } from './noun.ts';
import { loneValue } from './numbers.ts';
import { placeWith } from './place-draft.ts';
import { isWorked } from './plain-count.ts';
import type { Reader } from './reader.ts';
import { W } from './senses.ts';
import { termOf, termWith } from './stitch-term.ts';
import type { RepeatStep, Step, Until, WorkStep } from './tree.ts';
import { plainWork } from './work-draft.ts';

/** Settles the steps of one instruction in place, each rule on what those before it left. */
export function settleToldBehind(steps: Step[], r: Reader): void {
  spreadIncreases(steps);
  if (isHinted(r, AFTER)) chainsAfterEach(steps, r);
  if (isHinted(r, EVENLY)) evenlyToldBehind(steps, r);
  if (isHinted(r, SIDE)) rowsToldBehind(steps, r);
  if (isHinted(r, SIDE)) settleSides(steps, r);
  if (isHinted(r, SKIP)) skipsBehind(steps);
  startsInBracket(steps);
  if (isHinted(r, MORE)) settleMore(steps);
  settleBackAlongChain(steps, r);
  spacesToldBehind(steps);
  if (isHinted(r, CORNER)) cornersToldBehind(steps);
  if (isHinted(r, END)) endsInLast(steps, r);
  if (isHinted(r, ONE_MORE)) moreInLast(steps, r);
  onAlongSide(steps);
  if (isHinted(r, PREVIOUS)) postsBeneath(steps);
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i]!;
    if (step.kind === 'repeat') steps[i] = skipsAndWorks(step);
  }
}

const AFTER = hintOf([W.after]);
const EVENLY = hintOf([W.evenly]);
const SIDE = hintOf([W.side, W.end]);
const SKIP = hintOf([W.skip]);
const MORE = hintOf([W.more]);
const CORNER = hintOf([W.corner]);
const END = hintOf([W.end, W.ending]);
const ONE_MORE = hintOf([], 'another more additional extra');
const PREVIOUS = hintOf([W.previous]);

/** "In each of the next 3 corners work 3 dc, ch 2, 3 dc. Ch 1 after each corner": the chain is each group's last. */
function chainsAfterEach(steps: Step[], r: Reader): void {
  for (let i = 1; i + 1 < steps.length; i++) {
    const [group, chain, told] = [steps[i - 1]!, steps[i]!, steps[i + 1]!];
    if (group.kind !== 'group' || chain.kind !== 'chain' || told.kind !== 'remark') continue;
    const words = r.text.slice(r.base + told.from, r.base + told.to);
    if (!group.place.each || !AFTER_EACH.test(words)) continue;
    steps.splice(i - 1, 3, { ...group, steps: [...group.steps, chain], to: told.to });
  }
}

const AFTER_EACH =
  /^after (?:each|every) (?:one|corner|group|shell|cluster|set|fan|petal|repeat|of (?:them|these))\W*$/i;

/** "*ch 1 sk 1 sc* to end": a pass of a chain over what is skipped makes no stitch; it is skipped, and then an sc. */
function skipsAndWorks(step: RepeatStep): RepeatStep {
  const skip = step.steps.at(-1);
  const isGap = step.steps.length === 2 && step.steps[0]?.kind === 'chain';
  if (!isGap || skip?.kind !== 'skip' || step.ending || step.times.kind !== 'until') return step;
  const { place } = skip;
  const [noun] = place.nouns;
  if (place.n?.values[0] !== 1 || place.nouns.length !== 1 || noun?.kind !== 'stem' || !noun.stem)
    return step;
  const passed = { ...skip, place: { ...place, nouns: [PLAIN_NOUN] } };
  const work = plainWork(termOf({ stem: noun.stem }), { from: skip.from, to: skip.to });
  return { ...step, steps: [...step.steps.slice(0, -1), passed, work] };
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

/** "Sc evenly down the side, placing 1 sc in each row": how it is spread, and no second side. */
function rowsToldBehind(steps: Step[], r: Reader): void {
  for (let i = 1; i < steps.length; i++) {
    const [side, told] = [steps[i - 1], steps[i]];
    if (side?.kind !== 'work' || told?.kind !== 'work' || !side.evenly || side.n || side.place)
      continue;
    if (told.place?.nouns[0]?.kind !== 'row-end' || told.place.pick !== 'each') continue;
    if (side.until?.kind === 'end' && AROUND.test(side.until.word)) continue;
    if (PLACING.test(r.text.slice(r.base + side.to, r.base + told.nameFrom)))
      steps.splice(i - 1, 1);
  }
}

const PLACING = /^[,;\s(-]*(?:and )?(?:placing|working|putting|making)\b/i;
const AROUND = /^(?:all )?a?round/i;

/** "40 sc around the top of the cuff as evenly as possible", "…, spacing them evenly": how they are spread. */
function evenlyToldBehind(steps: Step[], r: Reader): void {
  for (let i = 1; i < steps.length; i++) {
    const [work, told] = [steps[i - 1], steps[i]];
    if (work?.kind !== 'work' || told?.kind !== 'remark' || work.evenly || work.place) continue;
    if (work.until?.kind !== 'end' || (work.n?.values[0] ?? 0) < FEWEST_SPREAD) continue;
    if (!SPREAD.test(r.text.slice(r.base + work.to, r.base + told.to))) continue;
    steps[i - 1] = { ...work, evenly: true, until: null };
  }
}

/**
 * "Work even in pattern, sk first sc of each row", "sc across, skipping the first st": the row is worked behind it.
 * A row that is told by another one would begin otherwise than that: the two are not put together here.
 */
function skipsBehind(steps: Step[]): void {
  const at = steps.findIndex((step) => step.kind === 'skip' && step.place.pick === 'first');
  const skip = steps[at];
  const made = steps.findIndex(fillsRow);
  if (!skip || made < 0 || made > at) return;
  if (steps[made]?.kind === 'rows-again')
    steps[at] = { kind: 'unread', says: 'work', from: skip.from, to: skip.to };
  else steps.splice(made, 0, ...steps.splice(at, 1));
}

/** What leaves nothing of the row beneath. */
const fillsRow = (step: Step): boolean =>
  step.kind === 'even' ||
  step.kind === 'rows-again' ||
  (step.kind === 'work' && (step.place?.until ?? step.until)?.kind === 'end');

const FEWEST_SPREAD = 4;
/** In the same sentence. */
const SPREAD = /^[^.;]*\bevenly\b/i;

/** "1 sc in each sc, inc 3 sc evenly": into each means to the end. */
const toEnd = ({ to }: WorkStep): Until => ({ kind: 'end', word: 'across', from: to, to });

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
    const through = each?.kind === 'repeat' && isThrough(each);
    if (!through && (each?.kind !== 'work' || !goesToEnd(each))) continue;
    const words = r.text.slice(r.base + each.to, r.base + last.nameTo);
    if (!/\b(?:another|more|additional|extra)\b/i.test(words)) continue;
    steps[i] = { ...last, place: { ...last.place, pick: 'same' } };
  }
}

/** "[ch 1, skip 1, dc in next st] to end", with no words for how it ends. */
const isThrough = ({ times, ending }: RepeatStep): boolean =>
  times.kind === 'until' && times.until.kind === 'end' && ending === null;

const goesToEnd = ({ place, until }: WorkStep): boolean =>
  (place?.until ?? until)?.kind === 'end' || (place?.pick === 'each' && place.n === null);

/** "Sc in each ch. Continue down the opposite side.": with the same stitch, in each chain of it. */
function onAlongSide(steps: Step[]): void {
  let side = steps.length - 1;
  while (side > 0 && steps[side]!.kind !== 'other-side') side--;
  if (side < 1 || steps.slice(side).some(isWorked)) return;
  const along = steps.slice(0, side).findLast(isWorked);
  const last = along?.kind === 'work' ? (along.alsoIn.at(-1) ?? along.place) : null;
  if (along?.kind !== 'work' || (last?.pick !== 'each' && along.until?.kind !== 'end')) return;
  const to = steps[side]?.to ?? 0;
  const span = { from: to, to };
  const until: Until = { kind: 'end', word: '', ...span };
  steps.splice(side + 1, 0, { ...along, place: null, alsoIn: [], until, countsAs: null, ...span });
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
