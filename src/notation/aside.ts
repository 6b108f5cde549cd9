/** Brackets that only remark on the work: told by their first and last words. */
import { formOf, mayBeStitch } from './dictionary.ts';
import { isOneOf, type Reader, wordsOf } from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { isFootnote } from './star.ts';
import { T } from './tokens.ts';

/** A remark in brackets: nothing worked in it, or it says what something is. */
export function isAside(r: Reader, start: number, close: number): boolean {
  if (isFootnote(r, start + 1)) return true;
  // "(e.g., 120 ch for a pram)"
  if (
    /^e\.g\b/i.test(
      r.text.slice(r.base + (r.from[start + 1] ?? 0), r.base + (r.from[start + 1] ?? 0) + 4),
    )
  )
    return true;
  const first = r.kind[start + 1] === T.word ? (r.value[start + 1] ?? 0) : -1;
  if (first === W.multiple || first === W.about || ASIDES.has(first) || namesOnly(r, start, close))
    return true;
  // "= 76 stitches (plus the beginning chain 3)"
  if (first === W.plus && r.word[start + 2] === W.the) return true;
  if (first === W.centre && tellsMiddle(r, start, close)) return true;
  // "(turning ch is first dc of row)"
  const turning = first === W.tch || first === W.turning || first === W.beginning;
  if (turning && (r.word[start + 2] === W.is || r.word[start + 3] === W.is)) return true;
  // "(make 7 dc, decrease) around" is worked.
  const makes = r.kind[start + 2] === T.number && mayBeStitch(r.word[start + 3] ?? 0);
  if (!makes && r.kind[start + 1] === T.word && isOneOf(r, ASIDE_WORDS, start + 1 - r.at))
    return true;
  // "(Increase the width by adding chains in multiples of 3.)"
  if (first > 0 && r.word[start + 2] === W.the && formOf(first)?.stem === null) return true;
  const last = r.kind[close - 1] === T.word ? r.value[close - 1] : 0;
  // "1ch (turning chain)", "66ch (one of which is a turning chain)"
  if (last === W.ch && r.value[close - 2] === W.turning) return true;
  // "(d trc: 3 times over hook)", "([d trc] 3 times over hook)": how often the thread is wrapped.
  if (r.value[close - 2] === W.over && isOneOf(r, HOOK, close - 1 - r.at)) return true;
  if (last === W.made && namesWork(r, start, close)) return false;
  if (last === W.made || last === W.throughout || tellsMade(r, start, close)) return true;
  if ((last === W.row || last === W.round) && (close - start < 6 || isPlainTalk(r, start, close)))
    return true;
  if (tellsOfJoins(r, start, close)) return true;
  if (isShorthand(r, start, close) || isGauge(r, start, close)) return true;
  if (tellsMaking(r, start, close) || tellsLoop(r, start, close)) return true;
  let works = false;
  for (let i = start + 1; i < close && !works; i++) {
    const sense = r.kind[i] === T.word ? (r.value[i] ?? 0) : 0;
    const kind = r.kind[i];
    works =
      kind === T.star ||
      kind === T.open ||
      sense === W.ch ||
      sense === W.skip ||
      mayBeStitch(sense) ||
      sense === W.box ||
      sense === W.mesh ||
      sense === W.block ||
      sense === W.sp ||
      sense === W.turn ||
      sense === W.x ||
      sense === W.v ||
      sense === W.om ||
      sense === W.repeat;
  }
  return !works;
}

const HOOK = wordsOf('hook');

/** "(join in this manner throughout pattern)", "(all rounds are joined this way)": how each is joined. */
function tellsOfJoins(r: Reader, start: number, close: number): boolean {
  if (close - start > 14) return false;
  let joins = false;
  let always = false;
  for (let i = start + 1; i < close; i++) {
    if (r.kind[i] !== T.word) return false;
    joins ||= r.word[i] === W.join;
    always ||= r.word[i] === W.throughout || isOneOf(r, ALWAYS, i - r.at);
  }
  return joins && always;
}

const ALWAYS = wordsOf('manner way always');

/** "(middle st of 3 tr group from previous row)": which place the words before mean. */
function tellsMiddle(r: Reader, start: number, close: number): boolean {
  if (r.word[start + 2] !== W.of && r.word[start + 3] !== W.of) return false;
  for (let i = start + 1; i < close; i++)
    if (r.kind[i] !== T.word && r.kind[i] !== T.number) return false;
  return true;
}

/** "(increase happens on the odd rounds)": words alone, no number, sign or chain among them. */
function isPlainTalk(r: Reader, start: number, close: number): boolean {
  if (close - start > 12) return false;
  for (let i = start + 1; i < close; i++) {
    if (r.kind[i] !== T.word || r.word[i] === W.ch || r.word[i] === W.each) return false;
  }
  return true;
}

/** "(15 ch to 4 in)", "(12 sts = 10 cm)": so many to a length. */
const isGauge = (r: Reader, start: number, close: number): boolean =>
  close - start < 9 &&
  r.kind[start + 1] === T.number &&
  (r.kind[start + 3] === T.equals || r.word[start + 3] === W.to) &&
  r.kind[start + 4] === T.number;

/** "(3xSC, 1x2SC)": letters that say again what the words before have said. */
function isShorthand(r: Reader, start: number, close: number): boolean {
  for (let i = start + 1; i + 3 < close + 1; i++) {
    const times = r.kind[i + 1] === T.times || r.value[i + 1] === W.x;
    if (!times || r.kind[i] !== T.number || r.kind[i + 2] !== T.number) continue;
    // "(2x2dc-cl, ch 1) in next st" is worked there.
    const next = r.kind[close + 1] === T.word ? r.value[close + 1] : 0;
    return next !== W.in;
  }
  return false;
}

/** "(work in one loop of each chain to leave …)": where the hook goes, told before the work. */
function tellsLoop(r: Reader, start: number, close: number): boolean {
  const verb = r.word[start + 1];
  if ((verb !== W.work && verb !== W.working) || r.word[start + 2] !== W.in) return false;
  for (let i = start + 3; i < close; i++) {
    if (r.kind[i] === T.comma || mayBeStitch(r.word[i]!)) return false;
  }
  return r.word[start + 4] === W.loop || r.word[start + 5] === W.loop;
}

/** "(2-tr cluster: holding back last loop of each, …)": a name, and behind a colon how it is made. */
function tellsMaking(r: Reader, start: number, close: number): boolean {
  let i = start + 1;
  while (i < close && i - start < 7 && r.kind[i] !== T.colon && r.kind[i] !== T.equals) {
    if (r.kind[i] !== T.word && r.kind[i] !== T.number && r.kind[i] !== T.dash) return false;
    i++;
  }
  if (r.kind[i] !== T.colon && r.kind[i] !== T.equals) return false;
  // "(s d c: thread over hook, insert in st, draw loop through, …)": by its movements.
  if (isOneOf(r, MOVEMENTS, i + 1 - r.at) && isOneOf(r, MOVED, i + 2 - r.at)) return true;
  for (let k = start + 1; k < i; k++) {
    const shape = r.kind[k] === T.word ? formOf(r.value[k] ?? 0)?.shape : null;
    if (r.word[k] === W.v || (shape && MADE_OF_STITCHES.has(shape))) return true;
  }
  return false;
}

/** How a definition by movements begins: "thread over", "insert hook", "draw up a loop". */
const MOVEMENTS = wordsOf('thread yarn wool cotton yo yoh yrh insert draw pull wrap put pass');
const MOVED = wordsOf('over round around hook the up a in into through yarn thread twice once');

const MADE_OF_STITCHES: ReadonlySet<string> = new Set(
  'cluster bobble puff popcorn shell v picot special'.split(' '),
);

/** "(1 sp over sp made at beg of row)": what came of the work before, with no place of its own. */
function tellsMade(r: Reader, start: number, close: number): boolean {
  for (let i = start + 1; i < close; i++) {
    if (r.kind[i] === T.comma || r.kind[i] === T.semicolon) return false;
    if (r.kind[i] !== T.word) continue;
    const sense = r.value[i] ?? 0;
    if (sense === W.in || sense === W.on || sense === W.just || sense === W.next) return false;
    if (sense === W.made) return true;
  }
  return false;
}

/** "(first dc of shell)", "(dc group)", "(shell)", "(increase)" with nothing behind: a name. */
function namesOnly(r: Reader, start: number, close: number): boolean {
  const kind = r.kind[start + 1];
  const last = r.value[close - 1];
  if (kind === T.ordinal || r.value[start + 1] === W.last) {
    for (let i = start; i < close; i++)
      if (r.kind[i] === T.word && r.value[i] === W.in) return false;
    return true;
  }
  if (r.kind[close - 1] === T.word && last === W.group) return !hasPlace(r, start, close);
  if (close - start > 4 || kind !== T.word || leadsOn(r, close + 1)) return false;
  const form = formOf(r.value[start + 1] ?? 0);
  const shaped = form !== null && form.stem === null && form.shape !== 'one';
  return shaped && r.kind[start + 2] !== T.comma && r.kind[start + 2] !== T.number;
}

/** "[3 dc between next two 3-dc groups] twice" is worked. */
function hasPlace(r: Reader, start: number, close: number): boolean {
  for (let i = start + 1; i < close; i++) {
    if (r.kind[i] !== T.word) continue;
    if (r.value[i] === W.in || r.value[i] === W.between || r.value[i] === W.over) return true;
  }
  return false;
}

/** "(1 hdc. Ch 1. 1 hdc – V-st made)": the name stands behind the work. */
function namesWork(r: Reader, start: number, close: number): boolean {
  let dash = close - 1;
  while (dash > start && close - dash < 6 && r.kind[dash] !== T.dash) dash--;
  if (r.kind[dash - 1] === T.word && r.kind[dash] === T.dash && isGluedTo(r, dash)) dash--;
  while (dash > start && close - dash < 6 && r.kind[dash] !== T.dash) dash--;
  if (r.kind[dash] === T.dash && dash - start > 3 && r.kind[start + 1] === T.number) return true;
  // "(skip 1 st, dc in next st, dc in skipped st = X made)"
  const first = r.kind[start + 1] === T.word ? (r.word[start + 1] ?? 0) : 0;
  if (first !== W.skip && !mayBeStitch(first)) return false;
  for (let i = close - 1; i > start + 3 && close - i < 6; i--)
    if (r.kind[i] === T.equals) return true;
  return false;
}

/** Whether no blank stands on either side of a dash: "V-st". */
const isGluedTo = (r: Reader, dash: number): boolean =>
  r.to[dash - 1] === r.from[dash] && r.to[dash] === r.from[dash + 1];

/** Whether a number, a sign of multiplication, a place or the way round stands at a token. */
function leadsOn(r: Reader, token: number): boolean {
  const kind = r.kind[token];
  if (kind === T.number || kind === T.times || kind === T.star || kind === T.open) return true;
  if (kind !== T.word) return false;
  const sense = r.value[token] ?? 0;
  // "(inc) repeat 6 times" is worked; "(shell), repeat from *" names.
  if (sense === W.repeat) return r.kind[token + 1] === T.number;
  return sense !== W.and && sense !== W.afterwards;
}

const ASIDES: SenseSet = new SenseSet([
  W.note,
  W.rs,
  W.ws,
  W.right,
  W.wrong,
  W.you,
  W.there,
  W.dont,
  W.does,
  W.place,
  W.stuff,
  W.marker,
  W.here,
  W.the,
  W.these,
  W.so,
  W.for,
  W.leave,
  W.as,
  W.continue,
  W.color,
  W.like,
  W.not,
  W.or,
  W.first_word,
  W.made,
  W.count,
  W.a,
  W.total,
]);

const ASIDE_WORDS = wordsOf(
  'see if it be is are which including use using optional when where make sure this that mark note instead after ' +
    'us uk usa i my we your refer check ie eg remember keep keeping do don do_not also only always because thus thereby hence ' +
    'forms giving except excluding',
);
