/** Whether a line of pasted text begins an instruction, and how much of it is notation. */
import { mayBeStitch, PROSE } from './dictionary.ts';
import { readLabel } from './label.ts';
import { mayOpenLabel, opensPlainLabel } from './label-opens.ts';
import { isLikePart } from './like-part.ts';
import {
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  openReader,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { mendsOf } from './slips.ts';
import { readRun, readWhile } from './steps.ts';
import { FIRST, T } from './tokens.ts';
import type { RowLabel, Step } from './tree.ts';
import { NO_VOCABULARY } from './vocabulary.ts';

/**
 * `label`: a row or round label with work (or nothing) behind it; `command`: a stitch command
 * ("Ch 43.", "Fasten off."); `likely`: reads like stitch work; `null`: prose, a list of
 * abbreviations, a heading.
 */
export function startsInstruction(
  text: string,
  from: number,
  to: number,
): 'label' | 'command' | 'likely' | null {
  if (opensPlainLabel(text, from, to)) return 'label';
  const r = openReader(text, { from, to }, NO_VOCABULARY, readRun);
  if (isAbbreviation(r) || isExplained(r)) return null;
  const label = readLabel(r);
  if (label) return isRow(r, label) ? 'label' : opensWithChain(r, label) ? 'command' : null;
  r.at = FIRST;
  if (isOneOf(r, LIKE) && isLikePart(text.slice(from, Math.min(to, from + 100)))) return 'command';
  const starts = isSaying(r) ? null : unlabelled(r);
  return starts === null && r.word[FIRST] === 0 ? withSlip(r) : starts;
}

const LIKE = wordsOf('same as like work make crochet follow start the');

/** "Foundation: Chain 23; work in spiral.": the order to chain, by its name. */
const opensWithChain = (r: Reader, { numbers, word, text }: RowLabel): boolean =>
  numbers.length === 0 &&
  word === '' &&
  /^(?:foundation|base|start(?:ing)?|beginning)(?: chain| ch)?$/i.test(text) &&
  isWord(r, W.ch) &&
  kindAt(r, 1) === T.number;

/** "Chian 20.", "Fastne off.": a command whose first word is misspelt. */
function withSlip(r: Reader): 'command' | null {
  const mends = mendsOf(r, { end: FIRST + 1 });
  if (mends === null) return null;
  const to = r.base + (r.from[r.count - 1] ?? 0);
  const mended = openReader(r.text, { from: r.base, to, mends }, NO_VOCABULARY, readRun);
  return unlabelled(mended) === 'command' ? 'command' : null;
}

/** Whether `startsInstruction` says 'label', at a small part of its cost. */
export function startsWithLabel(text: string, from: number, to: number): boolean {
  if (opensPlainLabel(text, from, to)) return true;
  if (!mayOpenLabel(text, from, to)) return false;
  const r = openReader(text, { from, to }, NO_VOCABULARY, readRun);
  if (isAbbreviation(r)) return false;
  const label = readLabel(r);
  return label !== null && isRow(r, label);
}

/** Whether work, or nothing, stands behind the label. */
function isRow(r: Reader, label: RowLabel): boolean {
  if (label.word === '' && (tellsMovement(r) || tellsOfPiece(r))) return false;
  if (TOLD.test(label.text)) return !saysWhatIs(r) && tellsWork(r, share(r));
  // "R3: = R2" has both signs.
  const closed = kindAt(r, -1) === T.colon || kindAt(r, -1) === T.equals;
  const begins = (): boolean => /^(?:foundation|set-?up) (?:row|rnd|round)/i.test(label.text);
  const lettered = (): boolean => closed && /^r\d+(?:[-–—]r?\d+)?$/i.test(label.text);
  const sure = (label.word !== '' && (label.numbers.length > 0 || begins())) || lettered();
  if (sure && labelReads(r, label.text)) return true;
  const capital = label.numbers.length > 0 || label.next !== null || label.word !== '';
  if (!capital) return false;
  return tellsWork(r, share(r)) || (isWord(r, W.repeat) && tellsWork(r, share(r, sentenceEnd(r))));
}

/** "In round 2" is a label before work, and talk before a note: "For rows 2-9, ch 3 counts as dc". */
const TOLD = /^(?:in|for|on) /i;

function saysWhatIs(r: Reader): boolean {
  for (let k = 0; kindAt(r, k) !== T.end && kindAt(r, k) !== T.stop; k++)
    if (isWord(r, W.count, k) || isWord(r, W.is, k)) return true;
  return false;
}

/** "3) Yoh, draw yarn through 2 loops", "4) repeat (5 loops on hook)": how a stitch is made, step by step. */
function tellsMovement(r: Reader): boolean {
  if (isWord(r, W.yo) || isOneOf(r, MOVEMENTS)) return true;
  for (let i = r.at; i + 2 < r.count; i++) {
    const loops = r.word[i] === W.loop && r.word[i + 1] === W.on;
    if (loops && (r.word[i + 2] === W.hook || r.word[i + 3] === W.hook)) return true;
  }
  return false;
}

/** "2. The starting chain and first round will be the size of the mat": an item of a list of notes. */
function tellsOfPiece(r: Reader): boolean {
  if (!isWord(r, W.the) && !isWord(r, W.all) && !isWord(r, W.a)) return false;
  for (let k = 1; k < 20 && (kindAt(r, k) === T.word || kindAt(r, k) === T.ordinal); k++)
    if (isWord(r, W.is, k) || (isOneOf(r, MODALS, k) && spelled(r, r.at + k + 1) === 'be'))
      return true;
  return false;
}

const MODALS = wordsOf('will should can must may might would could');
const MOVEMENTS = wordsOf('insert draw yarn hook wrap yoh yrh yo');

const tellsWork = (r: Reader, { words, share: part, stitches }: Share): boolean =>
  words > 0 &&
  part >= 0.5 &&
  (stitches > 0 ||
    isEnding(r) ||
    isWord(r, W.repeat) ||
    isUnchanged(r) ||
    isRing(r) ||
    isRowsAlone(r));

/** "6-7. 2 rows" */
const isRowsAlone = (r: Reader): boolean =>
  kindAt(r) === T.number &&
  (isWord(r, W.row, 1) || isWord(r, W.round, 1)) &&
  (kindAt(r, 2) === T.end || kindAt(r, 2) === T.stop || kindAt(r, 2) === T.open);

/** "1. MC (4)" */
const isRing = (r: Reader): boolean => isWord(r, W.mr) || isWord(r, W.mc) || isWord(r, W.magic);

/** "16. Rep row 15. (This row may be …)": where the order ends. */
function sentenceEnd(r: Reader): number {
  let at = r.at;
  while (at < r.count && r.kind[at] !== T.stop && r.kind[at] !== T.open) at++;
  return at;
}

/** "13.-15. (3 rows) unchanged" */
function isUnchanged(r: Reader): boolean {
  for (let i = r.at; i < r.count; i++) if (r.word[i] === W.unchanged) return true;
  return false;
}

/** "Ch = chain", "sc - single crochet", "Dc: double crochet": a name and what it stands for. */
function isAbbreviation(r: Reader): boolean {
  if (isSaidTwice(r)) return true;
  let k = kindAt(r) === T.open ? 1 : 0;
  const from = k;
  while (k < 5 && (kindAt(r, k) === T.word || kindAt(r, k) === T.number)) k++;
  if (kindAt(r, k) === T.open) {
    if (isNameInBrackets(r, k)) return true;
    k = (r.partner[r.at + k] ?? k) + 1 - r.at;
  }
  const sign = kindAt(r, k);
  if (k === from || (sign !== T.equals && sign !== T.dash && sign !== T.colon)) return false;
  // "DOILY … Starting at center, ch 8": the piece begins behind its name.
  if (namesCentre(r) && isWord(r, W.beginning, k + 1)) return false;
  // "rnd(s) = round (s)"; "R3 = R2" has its number.
  const bare = sign === T.equals && kindAt(r, 1) !== T.number && kindAt(r, k + 2) !== T.number;
  if (bare && (isWord(r, W.row) || isWord(r, W.round)) && r.word[r.at + k + 1] === wordAt(r))
    return true;
  if (isWord(r, W.row) || isWord(r, W.round) || isWord(r, W.r) || isWord(r, W.next)) return false;
  if (isWord(r, W.row, k - 1) || isWord(r, W.round, k - 1)) return false;
  // "Dec row 1: Sc in first 9 sc, …"
  if (kindAt(r, k - 1) === T.number && (isWord(r, W.row, k - 2) || isWord(r, W.round, k - 2)))
    return false;
  // "S only: Rnd 6": the sizes of a row.
  if (isWord(r, W.only, k - 1) && (isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1)))
    return false;
  // "ch-2, turn" has its hyphen inside a chain.
  if (kindAt(r, k + 1) === T.number && sign === T.dash) return false;
  const named = mayBeStitch(wordAt(r)) || wordAt(r) > 0 || kindAt(r) === T.word;
  // "Shell: 5 dc in same st" defines a stitch; "Sc in next st: …" works one.
  if (sign === T.colon) return isName(r) && !workBehind(r, 0, k);
  // "sm = solid mesh (3 dc)": an equals sign right behind a name or its number explains it.
  if (sign === T.equals && k <= 3 && kindAt(r, k - 1) === T.word) return true;
  // "dc2tog" is three tokens, and one name.
  const short = k <= 2 || isGluedName(r, k);
  return named && (sign === T.equals || fullName(r, k + 1) || short) && !workBehind(r, k + 1);
}

function isGluedName(r: Reader, tokens: number): boolean {
  for (let k = 0; k < tokens - 1; k++) if (!isGlued(r, k)) return false;
  return true;
}

/** "SK skip", "Inc increase - 2 sc in same st": the short form and the word, with no sign between. */
const isSaidTwice = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  wordAt(r) > 0 &&
  wordAt(r) !== PROSE &&
  wordAt(r, 1) === wordAt(r) &&
  spelled(r, r.at) !== spelled(r, r.at + 1) &&
  (kindAt(r, 2) === T.end || kindAt(r, 2) === T.dash || kindAt(r, 2) === T.colon);

/** "Sc (single crochet) or UK (double crochet)", "Ch (chain)": a name, and the name in full. */
function isNameInBrackets(r: Reader, k: number): boolean {
  const close = r.partner[r.at + k] ?? -1;
  if (close < 0 || k > 2 || !isName(r)) return false;
  for (let i = r.at + k + 1; i < close; i++) if (r.kind[i] !== T.word) return false;
  const behind = r.kind[close + 1];
  return behind === T.end || (r.word[close + 1] === W.or && r.kind[close + 3] === T.open);
}

/** "fpdc. Work dc around the front post": a name, a stop, and how it is made. */
const isExplained = (r: Reader): boolean =>
  mayBeStitch(wordAt(r)) &&
  kindAt(r, 1) === T.stop &&
  /^(work|yarn|yo|insert|draw|pull|make)$/i.test(spelled(r, r.at + 2)) &&
  /[A-Z]/.test(r.text[r.base + (r.from[r.at + 2] ?? 0)] ?? '');

/** "Each space is dc, ch 2, dc": a sentence that says what something is. */
function isSaying(r: Reader): boolean {
  let k = 0;
  while (k < 6 && kindAt(r, k) === T.word && !isWord(r, W.is, k) && !isWord(r, W.ch, k)) k++;
  if (k > 0 && isWord(r, W.is, k) && !isWord(r, W.turn)) return true;
  // "(add 1 for base chain)"
  if (kindAt(r) === T.open && /^(add|plus|multiple)$/.test(spelled(r, r.at + 1))) return true;
  // "Worked in a spiral, so do not join …": how the piece is made.
  if (isWord(r, W.in, 1) && spelled(r, r.at) === 'worked') {
    for (k = 2; k < 5; k++)
      if (isWord(r, W.spiral, k) || isWord(r, W.round, k) || isWord(r, W.row, k)) return true;
  }
  for (k = 0; k < 30 && (kindAt(r, k) === T.word || kindAt(r, k) === T.number); k++)
    if (isOneOf(r, ALWAYS, k)) return true;
  if (saysWhatCounts(r)) return true;
  // "The chain 3 at the end of each row is also known as …"
  if (!isWord(r, W.the) || !isWord(r, W.ch, 1)) return false;
  for (k = 2; k < 16 && kindAt(r, k) !== T.stop && kindAt(r, k) !== T.comma; k++)
    if (isWord(r, W.is, k)) return true;
  return false;
}

const ALWAYS = wordsOf('always');

/** "1ch turning chain does not count as a stitch, but …", "Ch 3 turning chain counts as a dc": a note. */
function saysWhatCounts(r: Reader): boolean {
  const chain = isWord(r, W.ch) || (kindAt(r) === T.number && isWord(r, W.ch, 1));
  if (!chain) return false;
  let k = isWord(r, W.ch) && kindAt(r, 1) !== T.number ? 1 : 2;
  if (!isWord(r, W.turning, k) && !isWord(r, W.tch, k)) return false;
  for (const end = k + 6; k < end && kindAt(r, k) === T.word; k++)
    if (isWord(r, W.count, k)) return true;
  return false;
}

/** A stitch's full name, or words only, behind the sign. */
function fullName(r: Reader, from: number): boolean {
  let words = 0;
  for (let k = from; kindAt(r, k) !== T.end; k++) {
    if (kindAt(r, k) === T.number) return false;
    words++;
  }
  return words > 0 && words < 8;
}

const isName = (r: Reader): boolean =>
  mayBeStitch(wordAt(r)) || isWord(r, W.mr) || isWord(r, W.magic) || isWord(r, W.ch);

function workBehind(r: Reader, from: number, to = 200): boolean {
  for (let k = from; k < to && kindAt(r, k) !== T.end; k++) {
    const kind = kindAt(r, k);
    if (kind === T.number && (mayBeStitch(wordAt(r, k + 1)) || isWord(r, W.ch, k + 1))) return true;
    if (isWord(r, W.next, k) || isWord(r, W.each, k) || isWord(r, W.around, k)) return true;
  }
  return false;
}

/** A numbered label needs work, an order, or nothing behind it: "Row houses" has no number. */
function labelReads(r: Reader, text: string): boolean {
  if (!hasWords(r)) return true;
  if (text.length > 60) return false;
  // "Rounds 1 - 2 form the centre.", "Row 4 is the hardest."
  const verb = tellsOfRow(r) && !countsStitches(r);
  // "Round 2 — Form 6 points" is a title, and work stands below it.
  const titled = kindAt(r, -1) === T.dash || kindAt(r, -1) === T.colon;
  if (verb || (isWord(r, W.form) && !titled)) return false;
  return true;
}

/** "Rnd 7 may be repeated", "Rounds 1-5 start the toe": what is said of rows that stand elsewhere. */
const tellsOfRow = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  isOneOf(r, TELL) &&
  // "10th and 11th rows are the same as 6th row": what they are is an order.
  !(isWord(r, W.same, 1) || (isWord(r, W.the, 1) && isWord(r, W.same, 2))) &&
  // "Round 4: start with sc in next st"
  kindAt(r, -1) !== T.colon;

const TELL = wordsOf(`
  is are was were form forms should will may can could has have looks show shows start starts begin
  begins create creates makes complete completes
`);

/** "Rounds 6-9 form the toe. 30 sc around.": work stands in a sentence behind. */
function countsStitches(r: Reader): boolean {
  let stop = false;
  for (let i = r.at; i < r.count; i++) {
    if (r.kind[i] === T.stop) stop = true;
    if (stop && r.kind[i] === T.number && mayBeStitch(r.word[i + 1] ?? 0)) return true;
  }
  return false;
}

/** Whether any word that tells something, or a number, is left. */
function hasWords(r: Reader): boolean {
  for (let i = r.at; i < r.count; i++) {
    const kind = r.kind[i];
    if (kind === T.number || kind === T.ordinal) return true;
    if (kind === T.word && COMMON[r.word[i] ?? 0] === 0) return true;
  }
  return false;
}

/** "5. Fasten off.", "6) Finish off" */
const isEnding = (r: Reader): boolean =>
  isWord(r, W.fo) || (isWord(r, W.fasten) && isWord(r, W.off, 1));

interface Share {
  readonly words: number;
  readonly stitches: number;
  readonly share: number;
}

/** Counts words from here to a token: all, those that are notation, and those that name stitches. */
function share(r: Reader, to = r.count): Share {
  let words = 0;
  let notation = 0;
  let stitches = 0;
  for (let i = r.at; i < to; i++) {
    const kind = r.kind[i];
    if (kind === T.number || kind === T.ordinal) {
      words++;
      notation++;
    }
    if (kind !== T.word) continue;
    const sense = r.word[i] ?? 0;
    if (mayBeStitch(sense) || sense === W.ch || sense === W.skip) stitches++;
    if (COMMON[sense] === 1) continue;
    words++;
    if (sense > 0 && sense !== PROSE) notation++;
  }
  return { words, stitches, share: words === 0 ? 0 : notation / words };
}

/** Words that prose and notation share and that tell neither. */
const COMMON = new Uint8Array(1 << 12);
for (const sense of [
  W.the,
  W.a,
  W.of,
  W.and,
  W.in,
  W.to,
  W.with,
  W.for,
  W.on,
  W.from,
  W.at,
  W.or,
  W.as,
  W.you,
  W.have,
  W.afterwards,
  W.now,
  W.these,
  W.there,
  W.so,
  W.all,
  W.not,
])
  COMMON[sense] = 1;

/** Share (0 to 1) of a line's words that are notation. */
export function readsAsWork(text: string, from: number, to: number): number {
  const r = openReader(text, { from, to }, NO_VOCABULARY, readRun);
  return share(r).share;
}

/** Work without label: a stitch command in front, or mostly notation. */
function unlabelled(r: Reader): 'command' | 'likely' | null {
  const all = share(r);
  if (all.words === 0 || (LEADS.has(wordAt(r)) && namesHook(r))) return null;
  const mayBeLikely = all.stitches > 0 && all.share >= 0.6;
  // Prose is known by its first clause; the rest of it is not read. "With larger hook" leads on.
  const most = namesCentre(r) ? 4 : LEADS.has(wordAt(r)) ? 2 : 1;
  const steps = mayBeLikely
    ? r.run(r, 'text')
    : readWhile(r, (out) => out.length < most || mayCommand(leadOf(r, out, all)));
  r.at = FIRST;
  if (isCommand(r, steps, all)) return 'command';
  return mayBeLikely && isLikely(steps, all) ? 'likely' : null;
}

/** The step that tells; a remark in front of the others tells too if it is long. */
function leadOf(r: Reader, steps: readonly Step[], all: Share): Step | undefined {
  const lead = steps[0];
  if (lead?.kind === 'remark' && isFoundation(steps[1])) return steps[1];
  const first = steps.find(({ kind }) => kind !== 'remark' && kind !== 'unread');
  if (lead && first?.kind === 'chain' && atCentre(r, lead, first)) return first;
  const aside = lead?.kind === 'remark' && (lead.to > 40 || all.share < 0.7);
  return aside ? lead : steps.find((step) => step.kind !== 'remark');
}

function namesCentre(r: Reader): boolean {
  for (let k = 1; k < 9 && kindAt(r, k) !== T.end; k++) if (isWord(r, W.centre, k)) return true;
  return false;
}

/** "Using your 5 mm (H) crochet hook": what is worked with, and no work. */
function namesHook(r: Reader): boolean {
  let named = false;
  for (let k = 1; kindAt(r, k) !== T.end; k++) {
    named ||= k < 12 && isWord(r, W.hook, k);
    if (
      (named && mayBeStitch(wordAt(r, k))) ||
      isWord(r, W.ch, k) ||
      isWord(r, W.each, k) ||
      isWord(r, W.row, k)
    )
      return false;
  }
  return named;
}

/** "FIRST MOTIF: Starting at center, ch 2.": the piece begins, under its name. */
function atCentre(r: Reader, { from }: Step, chain: Step): boolean {
  const words = r.text.slice(r.base + from, r.base + chain.from);
  return /\b(?:start|begin)[a-z]* (?:at|in|from) (?:the )?cent(?:er|re)\b/i.test(words);
}

const LEADS: SenseSet = new SenseSet([W.using, W.with, W.beginning, W.for, W.to]);

/** More than any turning chain has. */
const isFoundation = (step: Step | undefined): boolean =>
  step?.kind === 'chain' && (step.n?.values[0] ?? 0) > 6;

/** Whether what is known so far leaves room for a command. */
function mayCommand(first: Step | undefined): boolean {
  if (!first) return true;
  const { kind } = first;
  return kind !== 'remark' && kind !== 'unread' && kind !== 'work';
}

/** Lines that open with a stitch command. */
function isCommand(r: Reader, steps: readonly Step[], all: Share): boolean {
  const first = leadOf(r, steps, all);
  if (!first) return false;
  let unread = 0;
  for (const step of steps) {
    if (step.kind !== 'unread') continue;
    if (step.to - step.from > 40) return false;
    unread++;
  }
  return unread <= steps.length / 2 && commands(r, first, steps, all);
}

function commands(r: Reader, first: Step, steps: readonly Step[], rest: Share): boolean {
  switch (first.kind) {
    case 'chain':
      return first.n !== null || first.open;
    case 'ring':
    case 'fasten-off':
      return true;
    case 'join':
      return first.yarn !== null || first.place !== null || first.ring || steps.length === 1;
    case 'yarn':
      return (
        steps.length > 1 &&
        steps.some(
          (step) => step.kind !== 'remark' && step.kind !== 'unread' && step.kind !== 'yarn',
        )
      );
    case 'rows-again':
      return true;
    // "Fsc 40.": the piece begins without a chain.
    case 'work':
      return first.stitch.foundation && first.n !== null;
    case 'even':
      return rest.share > 0.4;
    case 'not-worked':
      return true;
    default:
      return isWord(r, W.turn) && rest.words < 3;
  }
}

/** Work without label or command word: most words are notation and a stitch has its place. */
function isLikely(steps: readonly Step[], all: Share): boolean {
  const works = steps.some(
    (step) =>
      step.kind === 'repeat' ||
      step.kind === 'group' ||
      step.kind === 'skip' ||
      (step.kind === 'work' && (step.place !== null || step.n !== null || step.until !== null)),
  );
  const unread = steps.some((step) => step.kind === 'unread');
  return works && (!unread || all.share > 0.8);
}
