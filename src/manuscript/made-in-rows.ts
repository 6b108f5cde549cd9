/**
 * Stitches that old leaflets define where they are first worked: "in next sp make 2 dc, ch 2 and 2 dc
 * (shell made)". What stands in front of the bracket is a shell from then on.
 */
import {
  type Instruction,
  readInstruction,
  readSpecial,
  type SpecialStitch,
  type Step,
  type Vocabulary,
} from '../notation/index.ts';
import type { Block } from './block.ts';
import { oneOf } from './one-of.ts';
import { type Marked, mayHold, needs } from './trigrams.ts';

const NAMES = oneOf(
  'shell | fan | cluster | popcorn | pc | puff | bobble | v[ -]?st | scallop | leaf | bead',
);

const MADE = new RegExp(
  '(?:[([]|\\s[-–—]{1,2} ?)(?:an? |another |one |first |1st )?(beg(?:inning)? |starting |start )?' +
    String.raw`(${NAMES})(?: st(?:itch)?)? (?:is )?(?:now )?(?:made|completed|formed)(?:[)\]]|(?=[.,;]))`,
  'gi',
);

/** "(3 dc, ch 2, 3 dc) for a shell in next sp", "5 dc in next sp for shell": what stands before it is one. */
const FOR_ONE = new RegExp(
  String.raw`(?<=[\w)\]]),? (?:as|for|to (?:form|make)) (?:an? |the |first |1st |one )?()(${NAMES})(?: st(?:itch)?)?\b`,
  'gi',
);

/** "3 dc in next sp (this is a shell)", "(called a fan)": so it is. */
const THIS_IS = new RegExp(
  String.raw`[([](?:this (?:is|makes|forms)|called|makes|forms|=) (?:an? |one |your |the )?()(${NAMES})(?: st(?:itch)?)?[)\]]`,
  'gi',
);

/** "2 dc, ch 2, 2 dc (shell) in next dc": so is what stands before the name. */
const SO_CALLED = new RegExp(
  String.raw`(?<=[a-z)\]]) [([]()(${NAMES})(?: st(?:itch)?)?[)\]](?= in )`,
  'gi',
);

/** "ch 3, in same sp make dc, ch 2 and 2 dc (a starting shell).": so is the group in one place before it. */
const BARE = new RegExp(
  String.raw`(?<=[a-z)\]]) [([](?:an? )?(beg(?:inning)? |starting |start )?(${NAMES})(?: st(?:itch)?)?[)\]](?! in )`,
  'gi',
);

/** "shell in next loop (shell: 2 dc, ch 2, 2 dc)": what stands behind the name in the bracket. */
const TOLD = new RegExp(
  String.raw`[([](?:an? |the )?((?:beg |\d[ -]?(?:dc|tr)[ -])?(?:${NAMES})(?: st(?:itch)?)?) ?[:=] ?([^()[\]]+)[)\]]`,
  'gi',
);

/** Whatever is made has one of these names, the shortest of them behind a sign. */
const OF_NAMES = needs(
  ...['shell', 'fan', 'cluster', 'popcorn', 'puff', 'bobble', 'scallop', 'leaf', 'bead'],
  ...['vst', 'v-st', 'v st', ' pc', '\npc', '-pc', '(pc', '[pc'],
);

/** Most rows name none of them, and are passed by one look. */
const HAS_NAME = new RegExp(NAMES, 'i');

/** What the words in brackets end in, or hold: a text without it has none of them. */
const ENDS_MADE =
  /(?:made|completed|formed)[)\].,;]| (?:as|for|to (?:form|make)) (?:an? |the |first |1st |one )?[a-z]|[([](?:this|called|makes|forms|=) |[([][^()[\]:=]{2,24}[:=]|[)\]] in | [([](?:an? )?[a-z ]{3,24}[)\]]/i;

/** Each once, at its first making; those that the manuscript defines by name are left alone. */
export function madeInRows(
  { text, marks }: Marked,
  blocks: readonly Block[],
  known: Vocabulary,
): readonly SpecialStitch[] {
  if (!mayHold(marks, OF_NAMES) || !ENDS_MADE.test(text)) return [];
  const found = new Map<string, SpecialStitch>();
  for (const block of blocks) {
    if (block.kind !== 'instruction') continue;
    const words = text.slice(block.from, block.to);
    if (!HAS_NAME.test(words)) continue;
    let tree: Instruction | null = null;
    const all = [MADE, FOR_ONE, THIS_IS, SO_CALLED, BARE].flatMap((shape) =>
      Array.from(words.matchAll(shape), (made) => ({ made, isBare: shape === BARE })),
    );
    for (const { made, isBare } of all) {
      const { index, 0: all, 1: begins = '', 2: noun = '' } = made;
      const name = `${begins ? 'beg ' : ''}${noun.toLowerCase().replace(/^v[ -]?st$/, 'v st')}`;
      // A popcorn has that name already; only the one that begins a round is made otherwise.
      // "(another shell made)" is whole, where the first one was begun with a chain.
      const isWhole = isBegun(found.get(name)) && /^.{0,4}another /i.test(all);
      if (name === 'pc' || (found.has(name) && !isWhole) || known.specials.has(name)) continue;
      tree ??= readInstruction(text, block.from, block.to, known);
      const steps = making(tree.steps, index, { begins: begins !== '', isBare });
      if (steps) found.set(name, special(name, steps, { at: block.from, to: index + all.length }));
    }
    for (const { index, 0: all } of words.matchAll(TOLD)) {
      const [from, to] = [block.from + index + 1, block.from + index + all.length - 1];
      const told = readSpecial(text, from, to, known);
      if (!told || found.has(told.key) || known.specials.has(told.key)) continue;
      found.set(told.key, { ...told, inline: true, from, to });
    }
  }
  return [...found.values()];
}

/** A lone stitch, or groups of which the first is the smaller: what a chain had begun. */
function isBegun(one: SpecialStitch | undefined): boolean {
  const works = (one?.steps ?? []).filter((step) => step.kind === 'work');
  const [first, ...more] = works.map(({ n }) => n?.values[0] ?? 1);
  return first !== undefined && more.every((n) => n > first);
}

function special(
  key: string,
  steps: readonly Step[],
  { at, to }: { readonly at: number; readonly to: number },
): SpecialStitch {
  const noun = key.replace(/^beg /, '');
  const begins = ['beginning', 'starting', 'start'].flatMap((word) => [
    `${word} ${noun}`,
    `${word} ${noun} st`,
  ]);
  return {
    key,
    name: key,
    aliases: key === noun ? (noun === 'v st' ? ['v-st'] : []) : begins,
    steps,
    opaque: steps.some(({ kind }) => kind === 'unread'),
    inline: true,
    from: at,
    to: at + to,
  };
}

/** What was worked right in front of `at`, with no place of its own; null where nothing tells. */
function making(
  steps: readonly Step[],
  at: number,
  name: { readonly begins: boolean; readonly isBare: boolean },
): readonly Step[] | null {
  const within = steps.find((step) => step.from <= at && at < step.to);
  if (within?.kind === 'group' && within.steps.every(({ to }) => to <= at)) return within.steps;
  if (within && 'steps' in within) return making(within.steps, at, name);
  const before = steps.filter((step) => step.to <= at && step.kind !== 'remark');
  const last = before.at(-1);
  const here = last && (!name.isBare || last.kind === 'group') ? inOnePlace(last) : null;
  const chain = before.at(-2);
  if (!here || chain?.kind !== 'chain') return here;
  if (name.begins) return [chain, ...here];
  return last && opensRow(before.slice(0, -2), last) ? withFirst(here) : here;
}

/** Nothing but slip stitches leads to what is made in "the same" place. */
const opensRow = (before: readonly Step[], last: Step): boolean =>
  (last.kind === 'group' || last.kind === 'work') &&
  last.place?.pick === 'same' &&
  before.every((step) => step.kind === 'work' && step.stitch.stem === 'ss');

/**
 * "Ch 3, in same sp make dc, ch 2 and 2 dc (shell made)": the chain stands for the first dc of it, which the
 * others have; not where both halves are alike already.
 */
function withFirst(steps: readonly Step[]): readonly Step[] {
  const [first, ...rest] = steps;
  const last = rest.at(-1);
  if (first?.kind !== 'work' || first.stitch.shape !== 'one') return steps;
  const n = first.n?.values[0] ?? 1;
  const isEven = last?.kind === 'work' && (last.n?.values[0] ?? 1) === n;
  if (isEven) return steps;
  return [{ ...first, n: { from: first.from, to: first.to, values: [n + 1] } }, ...rest];
}

/** Stitches in one place, whatever the place: they can be worked in another. */
function inOnePlace(step: Step): readonly Step[] | null {
  if (step.kind === 'group') return step.steps;
  if (step.kind !== 'work' || step.until !== null || step.alsoIn.length > 0) return null;
  const isOne = step.place === null || (step.place.pick !== 'each' && step.place.n === null);
  return isOne ? [{ ...step, place: null }] : null;
}
