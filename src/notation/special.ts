/** Definitions of special stitches: "Shell: 5 dc in same st.", "V-st = (dc, ch 1, dc) in next st". */

import type { Span } from '../source/index.ts';
import { closedOver } from './closed-over.ts';
import { formOf, mayBeStitch } from './dictionary.ts';
import { settleJoins } from './join.ts';
import {
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  openReader,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readRun } from './steps.ts';
import { T } from './tokens.ts';
import type { SpecialStitch, Step } from './tree.ts';
import type { Vocabulary } from './vocabulary.ts';
import { plainWork } from './work-draft.ts';

/** One definition; spans count from `from`. `null`: the line defines nothing. */
export function readSpecial(
  text: string,
  from: number,
  to: number,
  known: Vocabulary,
): SpecialStitch | null {
  const r = openReader(text, { from, to }, known, readRun);
  skipMarks(r);
  const head = readHead(r);
  if (!head || opensRow(r)) return null;
  const long = longNameBehind(r);
  const moves = speaksOfMoves(r);
  const making = { from: fromOf(r, r.at), to: to - from };
  const isDecrease = moves && /dec|tog/.test(head.key);
  const closed = isDecrease ? closedOver(text.slice(from + making.from, to)) : null;
  const steps = unwrapped(withoutTalk(settleJoins(r.run(r, 'text')), r));
  const opaque = moves || steps.length === 0 || steps.some(isUnread) || !steps.some(isWork);
  if (!steps.some(isWork) && !moves) return null;
  if (closesAny(steps) || CLOSES_ANY.test(text.slice(from, to))) return null;
  const { key, name } = head;
  const aliases = long === '' || long === key ? head.aliases : [...head.aliases, long];
  const made = closed ? [plainWork(closed, making)] : moves ? [] : steps;
  return {
    key,
    name,
    aliases,
    steps: made,
    opaque: opaque && !closed,
    inline: false,
    from: 0,
    to: to - from,
  };
}

/**
 * The same definition, when the names of the others are known: one stitch may be made of another that
 * is defined below it. Where none of their names stands in it, nothing else can be read from it.
 */
export function readSpecialAgain(
  special: SpecialStitch,
  text: string,
  { from, to }: Span,
  known: Vocabulary,
): SpecialStitch | null {
  const r = openReader(text, { from, to }, known, readRun);
  skipMarks(r);
  return readHead(r) && !namesSpecial(r) ? special : readSpecial(text, from, to, known);
}

/**
 * "Cluster: keeping last loop of each st on hook work 1 dc in each st, …": how it is closed, over as many
 * stitches as its use names. The trade's own word says the same.
 */
const CLOSES_ANY =
  /\b(?:keep|hold|leav)ing (?:back )?(?:the )?last loop of each [^.,]{0,40}\bin each st(?:itch)?\b/i;

const closesAny = ([only, ...more]: readonly Step[]): boolean =>
  only?.kind === 'work' &&
  more.length === 0 &&
  only.stitch.shape === 'cluster' &&
  only.place?.pick === 'each' &&
  only.place.n === null;

/** "Edging 3 – Row 1: Ch 17, …": the first row of a piece, under its name. */
const opensRow = (r: Reader): boolean =>
  (isWord(r, W.row) || isWord(r, W.round)) && kindAt(r, 1) === T.number && kindAt(r, 2) === T.colon;

/** Signs of lists before a name. */
function skipMarks(r: Reader): void {
  while (kindAt(r) === T.dash || kindAt(r) === T.star || kindAt(r) === T.other) r.at++;
}

function namesSpecial(r: Reader): boolean {
  for (let i = r.at; i < r.count; i++) if (r.specials?.has(r.hash[i]!)) return true;
  return false;
}

/**
 * "BS = border stitch: sc through both loops", "TP = tall picot (ch 3, sl st in first ch, ch 4)": the name
 * in full, before the making; it is returned where rows may use it too.
 */
function longNameBehind(r: Reader): string {
  let k = 0;
  while (k < 4 && kindAt(r, k) === T.word) k++;
  if (k === 0) return '';
  if (kindAt(r, k) === T.colon || namedWithDash(r, k)) r.at += k + 1;
  const open = r.at + k;
  const close = r.kind[open] === T.open ? r.partner[open]! : -1;
  if (close < open + 6 || (r.kind[close + 1] !== T.end && r.kind[close + 1] !== T.stop)) return '';
  const name = keyOf(slice(r, fromOf(r, r.at), r.to[open - 1]!));
  r.at = open;
  return formOf(wordAt(r, -k)) === null || k > 1 ? name : '';
}

/** "bobble stitch- (yo, insert hook, …)": the dash parts the name from the making. */
const namedWithDash = (r: Reader, k: number): boolean =>
  kindAt(r, k) === T.dash && !isHyphen(r, k) && formOf(wordAt(r, k - 1)) === null;

/** "Shell = 5 dc in same st. Multiple of 6 + 2.": another sentence says nothing of the stitch. */
function withoutTalk(steps: readonly Step[], r: Reader): Step[] {
  let end = steps.length;
  const name = steps.findIndex((step, i) => i > 0 && tellsWhatFor(step, r));
  if (name > 0) end = name;
  while (end > 1 && isUnread(steps[end - 1]!) && standsApart(steps, end - 1, r)) end--;
  return steps.slice(0, end);
}

/** "X st = (skip 1 st, dc in next st, dc in skipped st)": the bracket only holds it together. */
function unwrapped(steps: Step[]): Step[] {
  const [only] = steps;
  const bare = steps.length === 1 && only?.kind === 'repeat' && only.times.kind === 'missing';
  return bare && only.order.from === only.order.to && only.mark === '(' ? [...only.steps] : steps;
}

/** "(3 dc, ch 1, 3 dc) in one sp makes a shell": what the work is called, and what it is for. */
const tellsWhatFor = ({ kind, from, to }: Step, r: Reader): boolean =>
  (kind === 'remark' || kind === 'unread') &&
  /^(?:makes?|forms?|gives?) (?:an?|one|1|your|the)\b/i.test(
    r.text.slice(r.base + from, r.base + to + 8),
  );

const standsApart = (steps: readonly Step[], i: number, r: Reader): boolean =>
  r.text.slice(r.base + (steps[i - 1]?.to ?? 0), r.base + (steps[i]?.from ?? 0)).includes('.');

interface Head {
  readonly key: string;
  readonly name: string;
  readonly aliases: readonly string[];
}

/** "Shell (sh):", "V-st =", "Beginning cluster (beg cl) -", "Open box:", "First open box of a rnd:". */
function readHead(r: Reader): Head | null {
  const start = r.at;
  const aliases: string[] = [];
  let k = 0;
  let end = 0;
  for (; k < 14; k++) {
    const kind = kindAt(r, k);
    // "Shell", "dcf.": the name has a line of its own, and the making stands below.
    if (k > 0 && (kind === T.stop || onNewLine(r, k)) && !signSoon(r, k)) {
      if (kind !== T.stop) k--;
      if (end === 0) end = r.to[r.at + (kind === T.stop ? k - 1 : k)] ?? 0;
      break;
    }
    if (
      kind === T.colon ||
      kind === T.equals ||
      (kind === T.dash && (!isHyphen(r, k) || kindAt(r, k + 1) === T.open || opensGlued(r, k)))
    )
      break;
    // "For V-stitch (vst), dc, ch 1, dc in same st": the block begins behind the "for".
    if (kind === T.comma && k > 0) break;
    if (kind === T.open) {
      const close = r.partner[r.at + k] ?? -1;
      if (close < 0) return null;
      // "V-stitch (work 2 dc into one stitch)": the making stands behind the name without a sign.
      if (k > 0 && isMaking(r, r.at + k, close)) {
        if (end === 0) end = r.to[r.at + k - 1] ?? 0;
        k--;
        break;
      }
      if (end === 0) end = Math.max(0, r.to[r.at + k - 1] ?? 0);
      aliases.push(slice(r, fromOf(r, r.at + k + 1), r.to[close - 1] ?? 0));
      k = close - r.at;
      if (opensMaking(r, k + 1)) break;
    } else if (
      kind !== T.word &&
      kind !== T.number &&
      kind !== T.dash &&
      kind !== T.ordinal &&
      kind !== T.slash
    )
      return null;
  }
  if ((k === 0 && end === 0) || k >= 14 || isWord(r, W.row) || isWord(r, W.round)) return null;
  const name = slice(r, fromOf(r, start), end || (r.to[r.at + k - 1] ?? 0));
  r.at += k + 1;
  if (!isName(name)) return null;
  // "StarSt": words of the trade are read apart, though no blank stands between them.
  if (/^\p{Lu}\p{Ll}+\p{Lu}\p{Ll}+$/u.test(name))
    aliases.push(name.replace(/(?<=\p{Ll})(?=\p{Lu})/u, ' '));
  const of = name.toLowerCase().indexOf(' of a ');
  const key = keyOf(of > 0 ? name.slice(0, of) : name);
  const spellings = [
    ...new Set(aliases.map((alias) => keyOf(alias.replace(ABBREVIATED, '')))),
  ].filter((alias) => alias !== key && alias !== '' && alias.length < 30);
  return { key, name, aliases: spellings };
}

/** "Shell-3 dc in same sp", "Beginning shell-ch 3, 2 dc": work behind a hyphen that is a sign. */
const opensGlued = (r: Reader, k: number): boolean =>
  k > 0 &&
  kindAt(r, k - 1) === T.word &&
  (kindAt(r, k + 1) === T.number
    ? mayBeStitch(wordAt(r, k + 2))
    : isWord(r, W.ch, k + 1) && kindAt(r, k + 2) === T.number);

/** "cross-dc (crossed double crochet) Skip next st, …": the making opens a sentence behind the bracket. */
function opensMaking(r: Reader, k: number): boolean {
  const from = r.base + (r.from[r.at + k] ?? 0);
  const opens = kindAt(r, k) === T.word && /\p{Lu}/u.test(r.text[from] ?? '');
  return opens && !signSoon(r, k) && (isOneOf(r, MAKES, k) || mayBeStitch(wordAt(r, k)));
}

const MAKES = wordsOf('skip sk miss work make insert yarn yo ch chain');

/** "(abbreviated Xdc)", "(abbr. as sh)" */
const ABBREVIATED = /^(?:abbreviated|abbrev\.?|abbr\.?|written|short)(?: (?:as|to|for))?:? /i;

/** Whether the line ends before the token so far ahead. */
const onNewLine = (r: Reader, k: number): boolean =>
  r.text.slice(r.base + (r.to[r.at + k - 1] ?? 0), r.base + (r.from[r.at + k] ?? 0)).includes('\n');

/** "Beginning" above "shell (bsh):": a name that is broken over two lines. */
function signSoon(r: Reader, ahead: number): boolean {
  for (let k = ahead; k < ahead + 6; k++)
    if (kindAt(r, k) === T.colon || kindAt(r, k) === T.equals) return true;
  return false;
}

/** Whether a bracket without a sign behind it holds work: a number, and several words. */
function isMaking(r: Reader, open: number, close: number): boolean {
  const behind = r.kind[close + 1];
  const placed = behind === T.word && r.value[close + 1] === W.in;
  if (behind === T.colon || behind === T.equals || behind === T.dash) return false;
  if (close - open < (placed ? 3 : 5)) return false;
  const leads = r.value[open + 1] === W.work && r.kind[open + 1] === T.word ? 2 : 1;
  if (r.kind[open + leads] === T.number) return r.kind[open + leads + 1] === T.word;
  // "V (dc, ch 1, dc)"
  return (
    r.kind[open + leads] === T.word && mayBeStitch(r.value[open + leads] ?? 0) && close - open > 4
  );
}

const isHyphen = (r: Reader, k: number): boolean =>
  r.to[r.at + k - 1] === r.from[r.at + k] && r.from[r.at + k + 1] === r.to[r.at + k];

const slice = (r: Reader, from: number, to: number): string =>
  r.text.slice(r.base + from, r.base + to).trim();

/** A plain stitch explained ("sc: insert hook …") is an abbreviation, not a special stitch. */
function isName(name: string): boolean {
  return (
    /\p{L}/u.test(name) &&
    !/^(note|notes|tip|materials|gauge|yarn|hook|size|sizes|finished size|abbreviations|next row|terms)$/i.test(
      name,
    )
  );
}

/** Lower-case, single spaces, singular, no hyphens' variants. */
function keyOf(name: string): string {
  const low = name
    .toLowerCase()
    .replace(/[‐-―]/g, '-')
    .replace(/["“”*]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  return low.replace(/\b(shell|cluster|puff|popcorn|picot|fan|stitch|bobble|box)(?:e?s)$/, '$1');
}

/** "yo, insert hook, draw up a loop": movements, whose numbers are not stitches. */
function speaksOfMoves(r: Reader): boolean {
  for (let i = r.at; i < r.count; i++) {
    if (r.kind[i] !== T.word) continue;
    const sense = r.value[i] ?? 0;
    if (sense === W.yo || sense === W.draw) return true;
    if (sense === W.hook && r.value[i - 1] !== W.from && r.value[i - 2] !== W.from) return true;
    if (/^(insert|wrap|yarn|thread)$/.test(spelled(r, i)) && r.value[i + 1] === W.over) return true;
  }
  return false;
}

const isUnread = (step: Step): boolean => step.kind === 'unread';
const isWork = (step: Step): boolean =>
  step.kind === 'work' ||
  step.kind === 'group' ||
  step.kind === 'chain' ||
  step.kind === 'repeat' ||
  step.kind === 'boxes';
