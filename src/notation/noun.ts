/** What a place is called: "ch-2 sp", "corner", "5 dc", "beg ch-3", "shell", "marked st". */
import { formOf, mayBeStitch, PROSE, type SenseId } from './dictionary.ts';
import { readNumbers, readOneNumber } from './numbers.ts';
import {
  eatWord,
  endsInS,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  spelled,
  wordAt,
} from './reader.ts';
import { rowEndWords } from './row-ends.ts';
import { W } from './senses.ts';
import { readSpecialName, readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { Noun, NounKind, Numbers, StitchTerm } from './tree.ts';

type Draft = { -readonly [K in keyof Noun]: Noun[K] };

/** Any stitch, as long as nothing is said of it. */
export const PLAIN_NOUN: Noun = {
  kind: 'stitch',
  stem: null,
  post: null,
  chains: null,
  word: '',
  plural: false,
  corner: false,
  skipped: false,
};

/** The noun at the reader's place, or `null`, which leaves the reader where it was. */
export function readNoun(r: Reader): Noun | null {
  const kind = kindAt(r);
  if (kind !== T.word && kind !== T.number && kind !== T.ordinal && kind !== T.open) return null;
  const start = r.at;
  const draft = cleared(shared);
  const adjective = readAdjectives(r, draft);
  const found = readSpecialNoun(r, draft) || readHead(r, draft, adjective);
  if (!found && (adjective === '' || !adjectiveAlone(draft, adjective))) {
    r.at = start;
    return null;
  }
  // "3 sc in corners"
  if (!found) draft.plural = draft.kind === 'corner' && endsInS(r, r.at - 1);
  readTail(r, draft);
  return kept(draft);
}

/** Used again by every noun that is read: a noun has no other within it, and most are `PLAIN`. */
const shared: Draft = { ...PLAIN_NOUN };

function cleared(draft: Draft): Draft {
  draft.kind = 'stitch';
  draft.stem = null;
  draft.post = null;
  draft.chains = null;
  draft.word = '';
  draft.plural = false;
  draft.corner = false;
  draft.skipped = false;
  return draft;
}

/** Nouns of which nothing is said but what they name: the singular and the plural, by stem or kind. */
const PLAIN = new Map<string, readonly [Noun, Noun]>();

function kept(draft: Draft): Noun {
  const { kind, stem, post, chains, word, plural, corner, skipped } = draft;
  const said = post !== null || chains !== null || word !== '' || corner || skipped;
  if (said || (stem !== null && kind !== 'stem'))
    return { kind, stem, post, chains, word, plural, corner, skipped };
  const name = stem ?? kind;
  let pair = PLAIN.get(name);
  if (!pair) {
    pair = [
      { kind, stem, post, chains, word, plural: false, corner, skipped },
      { kind, stem, post, chains, word, plural: true, corner, skipped },
    ];
    PLAIN.set(name, pair);
  }
  return pair[plural ? 1 : 0];
}

/** "invisible fasten-off stitch", "finish-off st": the first of the round, where the yarn was cut; how many tokens. */
function finishWords(r: Reader): number {
  let k = kindAt(r) === T.word && spelled(r, r.at) === 'invisible' ? 1 : 0;
  if (!isWord(r, W.fasten, k)) return 0;
  k++;
  if (kindAt(r, k) === T.dash) k++;
  return isWord(r, W.off, k) && isWord(r, W.st, k + 1) ? k + 1 : 0;
}

/** "corner", "skipped", "beg", "joining" before the noun; the last one counts. */
function readAdjectives(r: Reader, draft: Draft): string {
  let adjective = '';
  if (isWord(r, W.fasten) || isWord(r, W.off, 2) || isWord(r, W.off, 3)) r.at += finishWords(r);
  for (let guard = 0; guard < 4; guard++) {
    const sense = wordAt(r);
    if (sense === W.corner) {
      draft.corner = true;
      draft.plural = endsInS(r, r.at);
    } else if (sense === W.skipped || sense === W.unworked || sense === W.open || shortSkipped(r))
      draft.skipped = true;
    else if (sense === W.beginning || sense === W.turning) adjective = 'start';
    else if (sense === W.letter_t && shortTurning(r)) adjective = 'start';
    else if (sense === W.foundation) adjective = 'foundation';
    else if (sense === W.join) adjective = 'join';
    else if (sense === W.marked) adjective = 'marked';
    else if (sense === W.magic) adjective = 'magic';
    // "in a bone ring", "in brass ring"
    else if (sense === 0 && kindAt(r) === T.word && isWord(r, W.ring, 1))
      adjective = spelled(r, r.at) === 'adjustable' ? 'magic' : 'made';
    else if (saysWhere(r, sense)) adjective ||= 'where';
    else if (sense !== W.made && sense !== W.previous && sense !== W.indicated) break;
    else if (sense === W.made) adjective ||= 'made';
    if (sense === W.corner) adjective = 'corner';
    r.at++;
    if (kindAt(r) === T.dash && isGlued(r, -1)) r.at++;
  }
  return adjective;
}

/** "each underarm ch", "4 neck sts": where they are, before their name. */
const saysWhere = (r: Reader, sense: SenseId): boolean =>
  (sense === 0 || sense === PROSE || sense === W.side) &&
  kindAt(r) === T.word &&
  (isWord(r, W.ch, 1) || isWord(r, W.st, 1) || isSpaceWord(wordAt(r, 1)) || isWord(r, W.chsp, 1)) &&
  (isNamedPart(r) || WHERE.test(spelled(r, r.at)));

const WHERE =
  /^(eyelet|lace|under|arm|underarm|armhole|neck|sleeve|raglan|cuff|body|bridge|added|extra|edge|side)$/;

/** "each of the hood sts": a part of the piece by any name. */
const isNamedPart = (r: Reader): boolean =>
  isWord(r, W.the, -1) && isWord(r, W.of, -2) && isWord(r, W.st, 1) && endsInS(r, r.at + 1);

/** "around each of 2 sk sts", "in the sk st": behind what counts or names a place it orders no skip. */
const shortSkipped = (r: Reader): boolean =>
  isWord(r, W.skip) &&
  (isWord(r, W.st, 1) || formOf(wordAt(r, 1)) !== null) &&
  (isWord(r, W.the, -1) || (kindAt(r, -1) === T.number && isWord(r, W.of, -2)));

/** "t-ch", "t ch" */
const shortTurning = (r: Reader): boolean =>
  isWord(r, W.ch, 1) || (kindAt(r, 1) === T.dash && isWord(r, W.ch, 2));

/** "in next corner", "in the join", "marked": the adjective is the noun. */
function adjectiveAlone(draft: Draft, adjective: string): boolean {
  if (adjective === 'corner') draft.kind = 'corner';
  else if (adjective === 'join') draft.kind = 'join';
  else if (adjective === 'start') draft.kind = 'start-chain';
  else return false;
  return true;
}

function readSpecialNoun(r: Reader, draft: Draft): boolean {
  const special = readSpecialName(r);
  if (!special) return false;
  draft.kind = 'group';
  draft.word = special.special ?? '';
  draft.plural = endsInS(r, r.at - 1) && !/s$/.test(draft.word);
  return true;
}

function readHead(r: Reader, draft: Draft, adjective: string): boolean {
  if (kindAt(r) === T.open) return bracketedLength(r, draft);
  const sense = wordAt(r);
  if (sense === W.ch) return chainNoun(r, draft, null, adjective);
  if (kindAt(r) === T.number) return numberedNoun(r, draft, adjective);
  if (sense <= 0) return false;
  if (adjective === 'magic' && sense === W.loop) {
    draft.kind = 'ring';
    draft.word = 'magic';
    r.at++;
    return true;
  }
  const rowEnd = rowEndWords(r);
  if (rowEnd > 0) {
    draft.kind = 'row-end';
    r.at += rowEnd;
    draft.plural = endsInS(r, r.at - 1);
    return true;
  }
  const kind = simpleKind(sense);
  if (kind !== null) {
    draft.kind = draft.corner && (kind === 'space' || kind === 'stitch') ? 'corner' : kind;
    if (kind === 'space' || kind === 'corner') draft.word = sense === W.chsp ? '' : draft.word;
    draft.plural = endsInS(r, r.at);
    if (kind === 'group') draft.word = singular(spelled(r, r.at));
    if (kind === 'ring' && (sense !== W.ring || adjective === 'magic')) draft.word = 'magic';
    if (sense === W.om || sense === W.sm) draft.word = sense === W.om ? 'open' : 'filled';
    if (adjective === 'marked') draft.kind = 'marker';
    if (sense === W.end) return endOfRow(r, draft);
    r.at++;
    return true;
  }
  return stitchNoun(r, draft, adjective);
}

/** Old leaflets' "next (ch 7) loop". */
function bracketedLength(r: Reader, draft: Draft): boolean {
  const length = isWord(r, W.ch, 1) && kindAt(r, 2) === T.number && kindAt(r, 3) === T.close;
  if (!length || !isSpaceWord(wordAt(r, 4))) return false;
  r.at += 2;
  draft.chains = readOneNumber(r);
  draft.kind = 'space';
  r.at++;
  draft.plural = endsInS(r, r.at);
  r.at++;
  return true;
}

function simpleKind(sense: SenseId): NounKind | null {
  return SIMPLE_KINDS.get(sense) ?? null;
}

const SIMPLE_KINDS: ReadonlyMap<SenseId, NounKind> = new Map<SenseId, NounKind>([
  [W.st, 'stitch'],
  [W.place, 'stitch'],
  [W.sp, 'space'],
  [W.chsp, 'space'],
  [W.loop, 'space'],
  [W.arch, 'space'],
  [W.hole, 'space'],
  [W.gap, 'gap'],
  [W.mesh, 'box'],
  [W.om, 'box'],
  [W.sm, 'box'],
  [W.box, 'box'],
  [W.block, 'box'],
  [W.square, 'box'],
  [W.ring, 'ring'],
  [W.mr, 'ring'],
  [W.mc, 'ring'],
  [W.ml, 'ring'],
  [W.tch, 'start-chain'],
  [W.marker, 'marker'],
  [W.group, 'group'],
  [W.point, 'group'],
  [W.end, 'row-end'],
  [W.bar, 'box'],
  [W.lacet, 'box'],
  [W.corner, 'corner'],
]);

export const singular = (word: string): string =>
  word.replace(/(?:(leav)es|s)$/, (_, leav: string | undefined) => (leav ? 'leaf' : ''));

/** "end of row", "ends of rows". */
function endOfRow(r: Reader, draft: Draft): boolean {
  if (!isWord(r, W.of, 1)) return false;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  if (!isWord(r, W.row, k) && !isWord(r, W.round, k)) return false;
  draft.kind = 'row-end';
  draft.plural ||= endsInS(r, r.at + k);
  r.at += k + 1;
  return true;
}

/** "3 ch", "2-ch sp", "5ch loop", "3-dc group": the number belongs to the noun. */
function numberedNoun(r: Reader, draft: Draft, adjective: string): boolean {
  const start = r.at;
  const chains = readOneNumber(r);
  if (kindAt(r) === T.dash) r.at++;
  if (isWord(r, W.ch) || isWord(r, W.chsp)) return chainNoun(r, draft, chains, adjective);
  const stitch = readStitch(r);
  if (stitch && (isWord(r, W.group) || isGroup(stitch))) {
    draft.kind = 'group';
    draft.stem = stitch.stem;
    draft.word = isWord(r, W.group) ? 'group' : groupWord(stitch);
    draft.plural = endsInS(r, isWord(r, W.group) ? r.at : r.at - 1);
    eatWord(r, W.group);
    return true;
  }
  r.at = start;
  return false;
}

/** "ch", "ch sp", "ch-2 sp", "ch-3", with the reader on "ch". */
function chainNoun(r: Reader, draft: Draft, before: Numbers | null, adjective: string): boolean {
  const word = r.at;
  const fused = isWord(r, W.chsp);
  r.at++;
  let chains = before;
  if (!chains && !fused) chains = chainLength(r);
  draft.chains = chains;
  draft.plural = endsInS(r, word);
  if (fused) {
    draft.kind = 'space';
    return true;
  }
  if (kindAt(r) === T.dash && isSpaceWord(wordAt(r, 1))) r.at++;
  // "Ch-7 picot loop": the chains are those of its loop.
  if (isSpaceWord(wordAt(r, 1)) && formOf(wordAt(r))?.shape === 'picot') {
    draft.word = 'picot';
    r.at++;
  }
  if (isWord(r, W.corner)) {
    draft.corner = true;
    r.at++;
  }
  if (isSpaceWord(wordAt(r))) {
    draft.kind = draft.corner ? 'space' : 'space';
    draft.plural = endsInS(r, r.at);
    r.at++;
    return true;
  }
  if (adjective === 'start') draft.kind = 'start-chain';
  else if (draft.corner) draft.kind = 'corner';
  else if (chains !== null) {
    // "next ch-3" without "sp": the worker and `joinOf` treat it by what stands before.
    draft.kind = 'space';
    draft.word = 'ch';
  } else {
    // "8th chain st from hook"
    if (isWord(r, W.st)) r.at++;
    draft.kind = 'chain';
    if (adjective === 'foundation') draft.word = 'foundation';
  }
  return true;
}

const isSpaceWord = (sense: SenseId): boolean =>
  sense === W.sp || sense === W.loop || sense === W.arch || sense === W.hole || sense === W.gap;

/** "-2", "2" or " 2" behind "ch". */
function chainLength(r: Reader): Numbers | null {
  const start = r.at;
  // "sc in each ch - 18": a dash that stands free parts the count from the work.
  const free = kindAt(r) === T.dash && !isGlued(r, -1) && !isGlued(r);
  // "in next chain,2 space": a comma typed for the dash.
  const slipped = kindAt(r) === T.comma && kindAt(r, 1) === T.number && isSpaceWord(wordAt(r, 2));
  // "in next 3 ch–5 dc": so does a long one, with a stitch behind the number.
  const sign = kindAt(r) === T.dash ? r.text[r.base + (r.from[r.at] ?? 0)] : '';
  const long = sign === '–' || sign === '—';
  if (kindAt(r) === T.dash || slipped) r.at++;
  const n = sizedLength(r) ?? readOneNumber(r);
  // "join in top of ch—4 corners": the longest one stands in no name but that of a space.
  const parts = free || sign === '—';
  if ((parts && !isSpaceWord(wordAt(r))) || (long && n !== null && mayBeStitch(wordAt(r)))) {
    r.at = start;
    return null;
  }
  // "in next ch 2 sc": the number is the next stitch's.
  const taken = n !== null && kindAt(r) === T.word && isGlued(r, -1);
  // "1 tr in each ch. 3 ch, turn", "to last ch. 1 dc in last ch": another sentence.
  const sized = kindAt(r) === T.open && kindAt(r, 1) === T.number;
  const isNext = isWord(r, W.ch) || ((sized || mayBeStitch(wordAt(r))) && stopBefore(r, start));
  // "1 plain in the 3 chain 4 times"
  if (n && isNext) {
    r.at = start;
    return null;
  }
  if (!n || isWord(r, W.times) || (taken && !isSpaceWord(wordAt(r)))) {
    r.at = start;
    return null;
  }
  return n;
}

/** "ch 5 [6] loop": a length for each size. */
function sizedLength(r: Reader): Numbers | null {
  if (r.known.sizes < 2 || kindAt(r, 1) !== T.open) return null;
  const close = r.partner[r.at + 1] ?? -1;
  if (close < 0 || !isSpaceWord(r.word[close + 1] ?? 0)) return null;
  const start = r.at;
  const n = readNumbers(r);
  if (n?.values.length === r.known.sizes) return n;
  r.at = start;
  return null;
}

/** A full stop stands right before a token, which the scanner took for that of a short form. */
export const stopBefore = (r: Reader, token: number): boolean =>
  r.text.slice(r.base + (r.to[token - 1] ?? 0), r.base + (r.from[token] ?? 0)).includes('.');

function stitchNoun(r: Reader, draft: Draft, adjective: string): boolean {
  const start = r.at;
  // "In next V", "(8 V)": as a place and in a count the letter is the V-stitch.
  if (isWord(r, W.v) && kindAt(r, 1) !== T.dash && !isWord(r, W.st, 1)) {
    draft.kind = 'group';
    draft.word = 'v-st';
    draft.plural = endsInS(r, r.at);
    r.at++;
    return true;
  }
  if (formOf(wordAt(r)) === null && readStitchPeek(r) === null) return false;
  const stitch = readStitch(r);
  if (!stitch) return false;
  draft.stem = stitch.stem;
  draft.plural = endsInS(r, r.at - 1) && stitch.stem !== 'ss';
  if (stitch.shape === 'one') {
    draft.kind = adjective === 'join' && stitch.stem === 'ss' ? 'join' : 'stem';
    if (stitch.stem === 'ss') draft.kind = 'join';
    else if (adjective === 'join' && isAroundJoin(r, start)) {
      // "Sc around joining dc": into the space that the stitch closes.
      draft.kind = 'space';
      draft.stem = null;
      draft.plural = false;
      return true;
    } else draft.post = stitch.post;
    // "between dc-groups"
    if (kindAt(r) === T.dash && isGlued(r, -1) && isWord(r, W.group, 1)) r.at++;
    if (isWord(r, W.group)) {
      draft.kind = 'group';
      draft.word = 'group';
      draft.plural = endsInS(r, r.at);
      r.at++;
    }
  } else if (stitch.shape === 'together' || stitch.shape === 'increase') {
    draft.kind = 'stitch';
    draft.word = stitch.shape === 'together' ? 'dec' : 'inc';
  } else {
    draft.kind = stitch.shape === 'picot' ? 'picot' : 'group';
    draft.word = stitch.shape === 'special' ? (stitch.special ?? '') : groupWord(stitch);
  }
  if (r.at === start) return false;
  return true;
}

/** "around (the) joining": the words before the stitch. */
const isAroundJoin = (r: Reader, at: number): boolean =>
  r.word[at - 1] === W.join &&
  (r.word[at - 2] === W.around || (r.word[at - 2] === W.the && r.word[at - 3] === W.around));

function readStitchPeek(r: Reader): StitchTerm | null {
  const start = r.at;
  const stitch = readStitch(r);
  r.at = start;
  return stitch;
}

const isGroup = (stitch: StitchTerm): boolean =>
  stitch.shape !== 'one' && stitch.shape !== 'together' && stitch.shape !== 'increase';

const groupWord = (stitch: StitchTerm): string =>
  stitch.shape === 'v'
    ? 'v-st'
    : stitch.shape === 'special'
      ? (stitch.special ?? '')
      : stitch.shape;

/** "shell sp", "dc st", "corner ch-2 sp", "ch-2 sp corner" behind the head. */
function readTail(r: Reader, draft: Draft): void {
  // "4th chain (ch) from hook": the short form says it again.
  const again = kindAt(r) === T.open && kindAt(r, 2) === T.close && wordAt(r, 1) > 0;
  if (again && wordAt(r, 1) === wordAt(r, -1)) r.at += 3;
  // "Picot-loop"
  if (draft.kind === 'picot' && kindAt(r) === T.dash && isSpaceWord(wordAt(r, 1))) r.at++;
  const sense = wordAt(r);
  const ofGroup = draft.kind === 'group' || draft.kind === 'picot';
  if (ofGroup && (isSpaceWord(sense) || sense === W.chsp)) {
    draft.kind = 'space';
    draft.plural = endsInS(r, r.at);
    r.at++;
  } else if (draft.kind === 'group' && sense === W.ch && r.kind[r.at + 1] !== T.end) {
    groupChain(r, draft);
  } else if (draft.kind === 'stem' && sense === W.st) r.at++;
  else if ((draft.kind === 'space' || draft.kind === 'box') && sense === W.corner) {
    draft.corner = true;
    r.at++;
  } else if (draft.kind === 'corner' && (sense === W.st || isSpaceWord(sense))) r.at++;
  // "ch-3 turning ch"
  if (draft.chains && (sense === W.turning || sense === W.beginning) && isWord(r, W.ch, 1)) {
    draft.kind = 'start-chain';
    draft.word = '';
    r.at += 2;
  }
  // "skip ch 3 to turn with"
  if (draft.word === 'ch' && isWord(r, W.to) && isWord(r, W.turn, 1) && isWord(r, W.with, 2)) {
    draft.kind = 'start-chain';
    draft.word = '';
    r.at += 3;
  }
  if (isWord(r, W.made)) r.at++;
}

/** "V-st ch-1 sp", "shell ch sp". */
function groupChain(r: Reader, draft: Draft): void {
  const start = r.at;
  r.at++;
  const chains = chainLength(r);
  if (kindAt(r) === T.dash) r.at++;
  if (!isSpaceWord(wordAt(r))) {
    r.at = start;
    return;
  }
  r.at++;
  draft.kind = 'space';
  draft.chains = chains;
}
