/**
 * Chains told behind the stitches that they part: "2 tr separated by 3 ch in next sp", "2 dc in next
 * sp with a ch 3 between", "1 sc in each of next 14 tr with ch 3 between each".
 */
import { readChain, startsChain } from './chain.ts';
import { PLAIN_NOUN } from './noun.ts';
import { readPlaceAfterPreposition } from './place.ts';
import { placeWith } from './place-draft.ts';
import { clauseEnds, isWord, kindAt, type Reader, spelled, toOf } from './reader.ts';
import { repeatOf } from './repeat-step.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { ChainStep, Numbers, Place, RepeatStep, Step, Until, WorkStep } from './tree.ts';

/** More stitches than this stand in no place; the number is a slip or another thing. */
const MOST = 60;

/** Whether such words stand here; the stitches before them are put down anew then. */
export function readSeparated(r: Reader, run: Run): boolean {
  const work = run.out.at(-1);
  if (work?.kind !== 'work' || work.until || work.alsoIn.length > 0) return false;
  if (work.place?.pick === 'each') return partedAlong(r, run, work, work.place);
  const many = manyOf(work);
  if (many < 2 || many > MOST) return false;
  const start = r.at;
  const chain = chainBetween(r);
  if (!chain) {
    r.at = start;
    return false;
  }
  const place = work.place ?? readPlaceAfterPreposition(r);
  run.out.pop();
  run.out.push(...parted({ ...work, place }, many, chain, toOf(r)));
  const group = run.out.at(-1);
  if (group?.kind === 'group' && group.place.nouns[0]?.kind === 'ring' && !saysClosing(r))
    run.out[run.out.length - 1] = { ...group, steps: [...group.steps, chain] };
  return true;
}

/**
 * "Ch 6, 19 d tr in ring, with ch 1 between. Join": round a ring each stitch has another beside it, so that
 * there is a chain behind the last one too; some say so.
 */
const saysClosing = (r: Reader): boolean =>
  isWord(r, W.ch, 1) || isWord(r, W.ending, 1) || kindAt(r, 1) === T.number;

/**
 * "1 tr in each tr with ch 1 between": one after the other, up to the next space where no end is told. In a
 * round that goes round there is a chain behind the last one too.
 */
function partedAlong(r: Reader, run: Run, work: WorkStep, place: Place): boolean {
  const start = r.at;
  const many = only(work.n) ?? 1;
  const chain = many === 1 && !place.of && place.nouns.length < 2 ? chainBetween(r) : null;
  if (!chain) {
    r.at = start;
    return false;
  }
  const span = { from: chain.from, to: chain.to };
  const one = { ...work, n: null, place: { ...single(place), until: null } };
  const until = place.until ?? toNextSpace(span);
  const round = until.kind === 'end' && /round/.test(until.word);
  const ending = round ? null : ({ kind: 'omit', steps: [chain], ...span } as const);
  const order = { times: { kind: 'until', until, ...span } as const, ending, order: span };
  run.out[run.out.length - 1] = repeatOf('(', [one, chain], order, {
    from: work.from,
    to: toOf(r),
  });
  return true;
}

function toNextSpace(span: { from: number; to: number }): Until {
  const noun = { ...PLAIN_NOUN, kind: 'space' as const };
  const place = placeWith(span, { pick: 'next', nouns: [noun] });
  return { kind: 'place', place, before: null, ...span };
}

const only = (n: Numbers | null): number | null =>
  n?.values.length === 1 ? (n.values[0] ?? null) : null;

/** How many stitches the chains part: the number before the name, or that of the places. */
function manyOf(work: WorkStep): number {
  const n = only(work.n) ?? 1;
  const places = only(work.place?.n ?? null);
  return places === null ? n : n === 1 ? places : 0;
}

function chainBetween(r: Reader): ChainStep | null {
  if (isWord(r, W.each)) r.at++;
  const told = kindAt(r) === T.word && spelled(r, r.at) === 'separated';
  if (told ? !isWord(r, W.by, 1) : !isWord(r, W.with)) return null;
  r.at += told ? 2 : 1;
  const chain = startsChain(r) ? readChain(r) : null;
  if (!chain?.n || told) return chain?.n ? chain : null;
  if (!isWord(r, W.between)) return null;
  r.at++;
  while (!clauseEnds(r) && !isWord(r, W.in) && kindAt(r) === T.word) r.at++;
  return chain;
}

/** "2 tr, 3 ch apart": one after the other, in one place or each in its own. */
function parted(work: WorkStep, many: number, chain: ChainStep, to: number): Step[] {
  const { place } = work;
  const each = place !== null && only(place.n) === many;
  const one: WorkStep = { ...work, n: null, place: each ? single(place) : null };
  if (each) return [passes(one, chain, many - 1, to), one];
  const steps: Step[] = [one];
  for (let i = 1; i < many; i++) steps.push(chain, one);
  if (!place) return steps;
  return [{ kind: 'group', steps, place, loose: false, from: work.from, to }];
}

const single = (place: Place): Place => ({ ...place, n: null, each: false, pick: 'next' });

function passes(one: WorkStep, chain: ChainStep, n: number, to: number): RepeatStep {
  const span = { from: chain.from, to: chain.to };
  const times = { kind: 'times', n: { values: [n], ...span }, more: false, ...span } as const;
  return repeatOf('(', [one, chain], { times, ending: null, order: span }, { from: one.from, to });
}
