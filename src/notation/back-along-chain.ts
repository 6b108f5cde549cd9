/** "Ch 7, sc, hdc, 2 dc, 2 tr across ch sp": stitches back along the chain just made, one in each but the last made. */
import { hintOf, isHinted } from './hints.ts';
import { PLAIN_NOUN } from './noun.ts';
import { loneValue } from './numbers.ts';
import { placeWith } from './place-draft.ts';
import type { Reader } from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { FIRST } from './tokens.ts';
import type { ChainStep, Step, WorkStep } from './tree.ts';

/** Settles them in place: the first stands in the 2nd chain from the hook, and the others follow it. */
export function settleBackAlongChain(steps: Step[], r: Reader): void {
  if (isHinted(r, WAY) && isHinted(r, CHAIN) && leadsAlongChain(r)) settleIn(steps, r);
}

/** Whether "across ch", "down the ch" stands anywhere: most instructions have none. */
function leadsAlongChain({ word, count }: Reader): boolean {
  for (let i = FIRST; i < count; i++)
    if (
      WAYS.has(word[i]!) &&
      (word[i + 1] === W.ch || word[i + 2] === W.ch || word[i + 1] === W.chsp)
    )
      return true;
  return false;
}

const WAYS: SenseSet = new SenseSet([W.across, W.along, W.over]);
const WAY = hintOf([W.across, W.along, W.over]);
const CHAIN = hintOf([W.ch, W.chsp]);

function settleIn(steps: Step[], r: Reader): void {
  for (let i = 0; i + 1 < steps.length; i++) {
    const chain = steps[i];
    if (chain?.kind === 'repeat') steps[i] = { ...chain, steps: settled(chain.steps, r) };
    if (chain?.kind !== 'chain' || steps[i + 1]?.kind !== 'work') continue;
    const end = lastOfList(steps, i + 1);
    const list = steps.slice(i + 1, end + 1) as WorkStep[];
    const told = wholeChain(list, chain);
    if (!isAlong(told, chain, r)) continue;
    steps.splice(i + 1, list.length, ...fromSecondChain(told));
  }
  const last = steps.at(-1);
  if (last?.kind === 'repeat') steps[steps.length - 1] = { ...last, steps: settled(last.steps, r) };
}

function settled(steps: readonly Step[], r: Reader): readonly Step[] {
  const copy = [...steps];
  settleIn(copy, r);
  return copy;
}

/** Where a list of stitches without places ends: with the first that has one. */
function lastOfList(steps: readonly Step[], from: number): number {
  let end = from;
  while (isPlain(steps[end]) && steps[end + 1]?.kind === 'work') end++;
  return end;
}

const isPlain = (step: Step | undefined): boolean =>
  step?.kind === 'work' && step.place === null && step.until === null;

const SHORTEST = 2;
const ALONG = /\b(?:across|along|down|over) (?:the )?ch(?:ain)?(?:[ -](?:sp|space))?$/i;

/** "Ch 10, sc back along chain": one in each of its chains, though no number says so. */
function wholeChain(list: readonly WorkStep[], chain: ChainStep): readonly WorkStep[] {
  const [only] = list;
  const chains = chain.n?.values[0] ?? 0;
  if (!only || list.length > 1 || only.n !== null || only.until?.kind !== 'end') return list;
  if (!/^back /i.test(only.until.word)) return list;
  const { from, to } = only;
  return [{ ...only, n: { from, to, values: loneValue(chains - 1) } }];
}

/** As many as there are chains but one, all of one leg, and the words lead along the chain. */
function isAlong(list: readonly WorkStep[], { n }: ChainStep, r: Reader): boolean {
  const last = list.at(-1);
  const chains = n?.values.length === 1 ? (n.values[0] ?? 0) : 0;
  if (!last || chains <= SHORTEST || !list.every(({ stitch }) => stitch.shape === 'one'))
    return false;
  const made = list.reduce((sum, step) => sum + (step.n?.values[0] ?? 1), 0);
  return made === chains - 1 && ALONG.test(r.text.slice(r.base + last.nameTo, r.base + last.to));
}

function fromSecondChain(list: readonly WorkStep[]): WorkStep[] {
  const plain = list.map((step) => ({ ...step, place: null, until: null }));
  const [first, ...others] = plain;
  if (!first) return plain;
  const { from, to } = first;
  const noun = { ...PLAIN_NOUN, kind: 'chain' as const };
  const place = placeWith({ from, to }, { pick: 'nth', nth: 2, fromHook: true, nouns: [noun] });
  const n = first.n?.values[0] ?? 1;
  const more = n > 1 ? [{ ...first, n: { from, to, values: loneValue(n - 1) } }] : [];
  return [{ ...first, n: null, place }, ...more, ...others];
}
