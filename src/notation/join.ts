/** Joins: "join", "join with sl st in first sc", "sl st to first sc to join", "join B with sl st". */
import type { Span } from '../source/index.ts';
import { TOGETHER } from './dictionary.ts';
import { readNoun } from './noun.ts';
import { readPlace, readPlaceAfterPreposition } from './place.ts';
import { copyOfPlace, startChainNoun } from './place-draft.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { JoinStep, Noun, Place, RepeatStep, Step, WorkStep } from './tree.ts';
import { isColour, readYarnName } from './yarn-name.ts';

export type JoinDraft = { -readonly [K in keyof JoinStep]: JoinStep[K] };

/** "join …", with the reader on the verb (or on "invisible join"). */
export function readJoin(r: Reader): JoinDraft | null {
  const start = r.at;
  // "close ring" pulls the tail of a magic ring.
  if (isWord(r, W.close) && (!isJoinWord(r, 1) || (isWord(r, W.ring, 1) && !isWord(r, W.with, 2))))
    return null;
  r.at++;
  joinedThing(r);
  const draft: JoinDraft = {
    kind: 'join',
    place: null,
    with: null,
    ring: false,
    yarn: null,
    from: fromOf(r, start),
    to: 0,
  };
  lastOfRound(r);
  const every = everyRow(r);
  eatThe(r);
  endOfRound(r);
  while (isWord(r, W.round) || isWord(r, W.row) || isWord(r, W.ring) || isWord(r, TOGETHER)) r.at++;
  if (isWord(r, W.a) && isOneOf(r, NEW, 1)) r.at++;
  draft.yarn = yarnBehind(r);
  // "join yarn, with sc in unworked st"
  if (draft.yarn !== null && kindAt(r) === T.comma && isWord(r, W.with, 1)) {
    const comma = r.at++;
    readWith(r, draft);
    if (draft.with === null) r.at = comma;
  }
  readWith(r, draft);
  if (!readRing(r, draft)) readTarget(r, draft);
  if (draft.with === null) readWith(r, draft);
  if (!draft.ring) readRing(r, draft);
  // "join into a ring with sl st in first ch"
  else if (draft.with !== null && draft.place === null) readTarget(r, draft);
  if (isWord(r, W.as) && /^(before|usual|established)$/.test(spelled(r, r.at + 1))) r.at += 2;
  draft.to = toOf(r);
  if (every) r.orders.push({ kind: 'joining', join: true, place: draft.place, ...spanOf(draft) });
  return draft;
}

const spanOf = ({ from, to }: JoinDraft): Span => ({ from, to });

/** "Join every round with a sl st": an order that holds from here on. */
function everyRow(r: Reader): boolean {
  const each = isWord(r, W.each) || isWord(r, W.every) || isWord(r, W.all);
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (!each || !(isWord(r, W.round, k) || isWord(r, W.row, k))) return false;
  r.at += k + 1;
  return true;
}

/** "joining last ch-7 with sl st …": what is joined is what was made last. */
function joinedThing(r: Reader): void {
  const start = r.at;
  eatThe(r);
  const made = eatWord(r, W.last) && readNoun(r);
  if (!made || (!isWord(r, W.with) && !isWord(r, W.to))) r.at = start;
}

/** "Join the last stitch of the round with a sl st" */
function lastOfRound(r: Reader): void {
  const k = isWord(r, W.the) ? 1 : 0;
  if (!isWord(r, W.last, k) || !isWord(r, W.st, k + 1)) return;
  if (!isWord(r, W.of, k + 2) && !isWord(r, W.on, k + 2) && !isWord(r, W.in, k + 2)) return;
  const round = isWord(r, W.the, k + 3) ? k + 4 : k + 3;
  if (isWord(r, W.round, round) || isWord(r, W.row, round)) r.at += round + 1;
}

const isJoinWord = (r: Reader, ahead: number): boolean => {
  const sense = wordAt(r, ahead);
  return sense === W.with || sense === W.round || sense === W.ring || sense === W.row;
};

const NEW = wordsOf('new');

/** "join B …", "join new yarn with …". */
function yarnBehind(r: Reader): string | null {
  const start = r.at;
  if (isOneOf(r, NEW) && isWord(r, W.color, 1) && isOneOf(r, ABOVE, 2)) {
    r.at += 2;
    return 'yarn';
  }
  if (isOneOf(r, NEW)) r.at++;
  const name = readYarnName(r);
  if (name !== null && !(wordAt(r) === 0 || isWord(r, W.or))) return name;
  r.at = start;
  // "attach linen into any ch-2 sp": a colour by a name of its own, told by the place behind it.
  const k = nameOfYarn(r);
  if (k === 0 || !(isWord(r, W.to, k) || isWord(r, W.in, k))) return null;
  if (!namesPlace(r, isWord(r, W.the, k + 1) ? k + 2 : k + 1)) return null;
  const from = r.base + fromOf(r, start);
  r.at += k;
  return r.text.slice(from, r.base + toOf(r)).toLowerCase();
}

/** "to any ch-2 sp", "to first st", "in last ch", "to top of ch 3": where the yarn is taken up. */
const namesPlace = (r: Reader, k: number): boolean =>
  isWord(r, W.any, k) ||
  isWord(r, W.first_word, k) ||
  isWord(r, W.same, k) ||
  isWord(r, W.last, k) ||
  (isWord(r, W.top, k) && isWord(r, W.of, k + 1)) ||
  kindAt(r, k) === T.ordinal;

const SHADES = wordsOf('lt dk med');

/** "Pale Shell or Linen": how many words that are no others of the trade, a colour's among them. */
function nameOfYarn(r: Reader): number {
  let k = isWord(r, W.a) ? 1 : 0;
  while (
    k < 6 &&
    kindAt(r, k) === T.word &&
    (wordAt(r, k) === 0 || isWord(r, W.color, k) || isColour(spelled(r, r.at + k)))
  ) {
    // "Lt. Blue", "Dk. Grey"
    const short = isOneOf(r, SHADES, k) && kindAt(r, k + 1) === T.stop;
    k += short ? 2 : 1;
    if (isWord(r, W.or, k) && kindAt(r, k + 1) === T.word) k++;
  }
  return k;
}

function readWith(r: Reader, draft: JoinDraft): void {
  if (!isWord(r, W.with) && !isWord(r, W.by)) return;
  const start = r.at++;
  // "w/ sl st"
  if (kindAt(r) === T.slash) r.at++;
  if (isWord(r, W.a)) r.at++;
  if (kindAt(r) === T.number && r.value[r.at] === 1) r.at++;
  draft.with = readStitch(r);
  if (!draft.with) {
    const name = draft.yarn === null ? readYarnName(r) : null;
    if (name === null) r.at = start;
    else draft.yarn = name;
  }
}

/** "to form a ring", "into a ring", "to make a circle", "to work in the round". */
function readRing(r: Reader, draft: JoinDraft): boolean {
  const start = r.at;
  if (isWord(r, W.to) || isWord(r, W.in)) r.at++;
  if (isWord(r, W.form) || isWord(r, W.work)) r.at++;
  if (isWord(r, W.in)) r.at++;
  const article = isWord(r, W.a) || isWord(r, W.the);
  while (isWord(r, W.a) || isWord(r, W.the)) r.at++;
  const formed = isWord(r, W.form, -1) || (article && clauseEnds(r, 1));
  if (r.at > start && (isWord(r, W.ring) || (isWord(r, W.round) && formed))) {
    r.at++;
    draft.ring = true;
    return true;
  }
  r.at = start;
  return false;
}

/** "(ch 4) and form 1 ring with 1 sl st in first ch": the chain is joined. */
export function ringBySlip(r: Reader): JoinStep | null {
  const start = r.at;
  const one = isWord(r, W.a, 1) || kindAt(r, 1) === T.number;
  if (!one || !isWord(r, W.ring, 2) || !(isWord(r, W.with, 3) || isWord(r, W.by, 3))) return null;
  r.at += 3;
  const none = { place: null, with: null, ring: true, yarn: null };
  const draft: JoinDraft = { kind: 'join', ...none, from: fromOf(r, start), to: 0 };
  readWith(r, draft);
  if (draft.with?.stem !== 'ss') {
    r.at = start;
    return null;
  }
  readTarget(r, draft);
  draft.to = toOf(r);
  return draft;
}

function readTarget(r: Reader, draft: JoinDraft): void {
  const start = r.at;
  if (eatWord(r, W.to)) {
    const place = isWord(r, W.join) ? null : readPlace(r);
    if (place) {
      place.from = fromOf(r, start);
      draft.place = place;
    } else r.at = start;
    return;
  }
  // "directly above a tr of Rnd 2": somewhere on the round, for its start.
  if (isOneOf(r, ABOVE)) {
    while (!clauseEnds(r)) r.at++;
    return;
  }
  draft.place = readPlaceAfterPreposition(r);
  if (!draft.place && (isWord(r, W.same) || isWord(r, W.top))) draft.place = readPlace(r);
}

const ABOVE = wordsOf('directly above');

/** "join the end of the round with a sl st" */
function endOfRound(r: Reader): void {
  if (!isWord(r, W.end) || !isWord(r, W.of, 1)) return;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  if (isWord(r, W.round, k) || isWord(r, W.row, k)) r.at += k;
}

/** "to join", "to close", "to form ring" behind a slip stitch: it is the join of the round. */
export function joinBehind(r: Reader, work: WorkStep): JoinDraft | null {
  const start = r.at;
  const draft: JoinDraft = {
    kind: 'join',
    place: work.place,
    with: work.stitch,
    ring: false,
    yarn: null,
    from: work.from,
    to: 0,
  };
  if (kindAt(r) === T.comma && isWord(r, W.to, 1)) r.at++;
  // "ch 6, sl st join"
  if (isWord(r, W.join) && clauseEnds(r, 1)) {
    r.at++;
    return { ...draft, to: toOf(r) };
  }
  const to = isWord(r, W.to) || isWord(r, W.and);
  if (
    to &&
    (isWord(r, W.join, 1) || isWord(r, W.close, 1) || isWord(r, W.fasten, 1)) &&
    !isWord(r, W.off, 2)
  ) {
    r.at += 2;
    eatThe(r);
    if (everyRow(r)) r.at--;
    while (isWord(r, W.round) || isWord(r, W.row) || isWord(r, W.ring)) {
      draft.ring ||= isWord(r, W.ring);
      r.at++;
    }
    if (!work.place) readTarget(r, draft);
  } else if (!readRing(r, draft)) {
    r.at = start;
    return null;
  }
  draft.to = toOf(r);
  return draft;
}

/**
 * Slip stitches that close a round without saying so: the last work of the instruction, into the
 * first stitch, a chain of the start, or nowhere named. Anything that moves on stays work. Changes
 * the list in place and returns it.
 */
export function settleJoins(out: Step[]): Step[] {
  for (let i = out.length - 1; i >= 0; i--) {
    const step = out[i];
    if (!step || step.kind === 'unread') break;
    if (step.kind === 'work') {
      const ring = i > 0 && onlyChains(out, i);
      const join = asJoin(step, ring);
      if (join && !out.some(worksInSlips)) out[i] = join;
      break;
    }
    if (step.kind === 'repeat') joinOfEnding(out, i, step);
    if (!LATER.has(step.kind)) break;
  }
  return out;
}

/** "*sl st in next hdc, hdc in next sl st* across, sl st on top of tch": slip stitches are stitches there. */
const worksInSlips = (step: Step): boolean =>
  (step.kind === 'repeat' && step.steps.some(worksInSlips)) ||
  (step.kind === 'work' &&
    step.stitch.stem !== 'ss' &&
    step.place?.pick === 'next' &&
    step.place.nouns.some(({ stem }) => stem === 'ss'));

/** "…; rep from * around, end with a sl st in 4th ch of first ch 7": the join stands behind the repeat. */
function joinOfEnding(out: Step[], at: number, repeat: RepeatStep): void {
  const { ending } = repeat;
  const last = ending?.kind === 'with' ? ending.steps.at(-1) : undefined;
  const join = last?.kind === 'work' && last.place?.of ? asJoin(last, false) : null;
  if (ending?.kind !== 'with' || !join) return;
  const steps = ending.steps.slice(0, -1);
  const to = steps.at(-1)?.to ?? ending.from;
  const without = { ...repeat, to, ending: steps.length > 0 ? { ...ending, steps, to } : null };
  out.splice(at, 1, without, join);
}

/** Steps that may stand behind the join. */
const LATER: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'turn',
  'fasten-off',
  'yarn',
  'chain',
  'remark',
  'spiral',
  'not-worked',
]);

function onlyChains(steps: readonly Step[], before: number): boolean {
  return (
    steps
      .slice(0, before)
      .every((step) => step.kind === 'chain' || step.kind === 'yarn' || step.kind === 'remark') &&
    steps.slice(0, before).some((step) => step.kind === 'chain')
  );
}

function asJoin(step: WorkStep, ring: boolean): JoinStep | null {
  const { stitch, n, place, until, from, to } = step;
  if (stitch.stem !== 'ss' || stitch.shape !== 'one' || until || step.alsoIn.length > 0)
    return null;
  if (n && (n.values.length > 1 || n.values[0] !== 1)) return null;
  const inRing = ring && place?.nouns[0]?.kind === 'ring';
  if (place && !inRing && !isJoinPlace(place)) return null;
  const target = place && !inRing ? startChainPlace(place) : null;
  return { kind: 'join', place: target, with: stitch, ring, yarn: null, from, to };
}

function isJoinPlace(place: Place): boolean {
  if (place.n || place.fromHook || place.each) return false;
  if (place.pick === 'top' || place.pick === 'first') return true;
  const [noun] = place.nouns;
  if (place.pick === 'nth')
    return !noun || noun.kind === 'chain' || noun.kind === 'start-chain' || place.of !== null;
  if (place.pick !== 'this') return false;
  return noun?.kind === 'start-chain' || noun?.kind === 'join' || noun?.word === 'ch';
}

/** "join to ch-3": the chain of the start, not a space. */
function startChainPlace(place: Place): Place {
  if (!place.nouns.some(isBareChain)) return place;
  const chain = copyOfPlace(place);
  chain.nouns = place.nouns.map(asStartChain);
  return chain;
}

const isBareChain = (noun: Noun): boolean => noun.kind === 'space' && noun.word === 'ch';

const asStartChain = (noun: Noun): Noun => (isBareChain(noun) ? startChainNoun(noun) : noun);

/** The same for a join's own target. */
export function settleTarget(join: JoinDraft): JoinStep {
  if (join.place) join.place = startChainPlace(join.place);
  return join;
}
