/** What a count counts: "12 sts", "6 shells", "24 boxes", "8 groups of 3 dc". */

import { formOf, PROSE } from './dictionary.ts';
import { readNoun, singular } from './noun.ts';
import { readNumbers } from './numbers.ts';
import {
  clauseEnds,
  endsInS,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { CountUnit, Noun, StatedCount } from './tree.ts';

export type Draft = { -readonly [K in keyof StatedCount]: StatedCount[K] };

export function readUnit(r: Reader, draft: Draft): void {
  // "(24)": nothing but the number, as in most counts.
  if (kindAt(r) === T.close) return;
  if (groupsBehindComma(r, draft) || listedGroup(r, draft)) return;
  if (isLetterOfStitches(r)) {
    r.at++;
    return;
  }
  passCommaBefore(r);
  // "(1 decrease)": how the row shapes, not how many stitches it has.
  if (kindAt(r) === T.word && kindAt(r, 1) === T.close && SHAPING.test(spelled(r, r.at))) {
    draft.unit = 'decrease';
    r.at++;
    return;
  }
  if (passShapingBeside(r)) {
    draft.unit = 'decrease';
    return;
  }
  if (isWord(r, W.total)) r.at++;
  // "(1xSC, 1x2SC)" tells the words before again, and counts nothing.
  if (isWord(r, W.x) || kindAt(r) === T.times) passTimes(r);
  if (kindAt(r) === T.dash && isWord(r, W.st, 1)) r.at++;
  if (isWord(r, W.more) || isWord(r, W.remaining)) {
    draft.unit = isWord(r, W.more) ? 'decrease' : null;
    r.at++;
  }
  // "(88 treble rows)": rows, by the stitch that they are of.
  if (formOf(wordAt(r))?.shape === 'one' && kindAt(r, 2) === T.close && endsInS(r, r.at + 1)) {
    if (isWord(r, W.row, 1) || isWord(r, W.round, 1)) r.at++;
  }
  if (isWord(r, W.row) || isWord(r, W.round)) {
    draft.unit = 'row';
    r.at++;
    return;
  }
  // "6 crossed dc" are pairs, or so many stitches: what is counted is not told.
  const crossed = isOneOf(r, CROSSED) && formOf(wordAt(r, 1)) !== null;
  if (crossed) {
    draft.unit = 'group';
    draft.word = `${spelled(r, r.at)} ${spelled(r, r.at + 1)}`;
    r.at += 2;
    return;
  }
  const adjective = isWord(r, W.open) || isWord(r, W.filled);
  if (adjective && !isWord(r, W.skipped)) {
    draft.word = spelled(r, r.at);
    r.at++;
  }
  if (namedByChains(r, draft)) return;
  const isLoop = isWord(r, W.loop);
  const noun = readNoun(r);
  if (noun) {
    applyNoun(draft, noun);
    if (isLoop) draft.word ||= 'loop';
    if (isWord(r, W.group) && endsInS(r, r.at)) {
      // "20 cluster groups"
      r.at++;
      Object.assign(draft, { unit: 'group', word: 'group', stem: null, chains: null });
      return;
    }
    groupOf(r);
    holdingEach(r, draft);
  } else if (isNamedStitch(r)) {
    draft.unit = 'group';
    draft.word = singular(spelled(r, r.at));
    r.at += 2;
  } else if (formOf(wordAt(r)) === null && (isPlainGroup(r) || isGroupOf(r))) {
    draft.unit = 'group';
    draft.word = singular(spelled(r, r.at));
    r.at++;
    groupOf(r);
  }
}

/** "(18p)": a letter glued to the number, from another language's word for stitches. */
const isLetterOfStitches = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  kindAt(r, 1) === T.close &&
  fromOf(r, r.at) === r.to[r.at - 1] &&
  spelled(r, r.at) === 'p';

/** "(4 x corner)", "(8 x 1 ch sps)"; but "(1 x 2 sc)" tells the words before again. */
function passTimes(r: Reader): void {
  const start = r.at++;
  if (kindAt(r) !== T.number) return;
  const noun = readNoun(r);
  r.at = noun?.kind === 'space' && noun.word !== 'ch' ? start + 1 : start;
}

/** "6 loops with 5 hdc each": the stitches in all. */
function holdingEach(r: Reader, draft: Draft): void {
  if (!isWord(r, W.with) || kindAt(r, 1) !== T.number) return;
  const start = r.at++;
  const many = valueAt(r);
  r.at++;
  const noun = readNoun(r);
  const around = isWord(r, W.around, 1) ? 2 : 1;
  if (noun && isWord(r, W.each) && kindAt(r, around) === T.close) {
    r.at += around;
    draft.n = { ...draft.n, values: draft.n.values.map((n) => (n === null ? n : n * many)) };
    draft.chains = null;
    draft.word = '';
    applyNoun(draft, noun);
  } else r.at = start;
}

/** "20 sets of three dc" */
function groupOf(r: Reader): void {
  // "3 groups of X st"
  if (isWord(r, W.of) && r.specials?.has(r.hash[r.at + 1] ?? 0)) {
    r.at += isWord(r, W.st, 2) ? 3 : 2;
    return;
  }
  if (!isWord(r, W.of)) return;
  if (kindAt(r, 1) !== T.number) {
    // "6 pairs of dc"
    if (formOf(wordAt(r, 1)) !== null) r.at += 2;
    return;
  }
  r.at += 2;
  if (kindAt(r) === T.dash) r.at++;
  readNoun(r);
  // "6 groups of 2-dc and ch-1 sp"
  if (!isWord(r, W.and)) return;
  const and = r.at++;
  if (!readNoun(r)) r.at = and;
}

/** "5 ch-2 points": a space of so many chains, by a name that only this piece has. */
function namedByChains(r: Reader, draft: Draft): boolean {
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  if (!isWord(r, W.ch) || kindAt(r, k) !== T.number) return false;
  const sense = r.value[r.at + k + 1];
  const name = (sense === 0 || sense === W.point) && endsInS(r, r.at + k + 1);
  const ends = clauseEnds(r, k + 2) || isWord(r, W.and, k + 2);
  if (!name || !ends) return false;
  r.at += k;
  draft.chains = readNumbers(r);
  draft.unit = 'space';
  draft.word = singular(spelled(r, r.at));
  r.at++;
  return true;
}

/** "6 scallops", "5 motifs": a made-up thing that is counted, one plural word before a close. */
const isPlainGroup = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  // "(10 sc, 2 handles)": an everyday word is counted too, behind a count.
  (r.value[r.at] === 0 ||
    (kindAt(r, -2) === T.comma && (wordAt(r) === PROSE || isWord(r, W.post)))) &&
  (kindAt(r, 1) === T.close ||
    isWord(r, W.between, 1) ||
    (isWord(r, W.around, 1) && wordAt(r, 2) === W.the) ||
    spelled(r, r.at + 1) === 'when' ||
    isCloseOfRow(r) ||
    (r.value[r.at] === 0 && kindAt(r, 1) === T.comma && kindAt(r, 2) === T.number)) &&
  /s$/i.test(spelled(r, r.at));

/** "6 pairs of dc", "4 blocks of 3 dc": a plural word, and what each is made of. */
const isGroupOf = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  isWord(r, W.of, 1) &&
  (kindAt(r, 2) === T.number ? formOf(wordAt(r, 3)) !== null : formOf(wordAt(r, 2)) !== null) &&
  /s$/i.test(spelled(r, r.at));

/** "- 13 ripples.": the last word of the row. */
const isCloseOfRow = (r: Reader): boolean =>
  (kindAt(r, -2) === T.dash || kindAt(r, -2) === T.equals) &&
  (kindAt(r, 1) === T.end || (kindAt(r, 1) === T.stop && kindAt(r, 2) === T.end));

/** "21 linen stitches": a stitch by a name of its own, which is no name of the trade. */
const isNamedStitch = (r: Reader): boolean =>
  kindAt(r) === T.word &&
  r.value[r.at] === 0 &&
  isWord(r, W.st, 1) &&
  endsInS(r, r.at + 1) &&
  kindAt(r, 2) !== T.word;

const UNITS: Readonly<Record<string, CountUnit>> = {
  stitch: 'stitch',
  stem: 'stem',
  chain: 'chain',
  space: 'space',
  gap: 'space',
  corner: 'group',
  group: 'group',
  picot: 'group',
  box: 'box',
  ring: 'group',
  'start-chain': 'chain',
  'row-end': 'row',
  marker: 'group',
  join: 'stem',
  center: 'group',
};

export function applyNoun(draft: Draft, noun: Noun): void {
  const unit = UNITS[noun.kind] ?? 'group';
  const bareChain = noun.kind === 'space' && noun.word === 'ch';
  draft.unit = draft.unit === 'decrease' ? 'decrease' : bareChain ? 'space' : unit;
  draft.stem = noun.stem;
  draft.chains = noun.chains;
  // "6 FPdc": not any dc.
  if (unit === 'stem' && noun.post) draft.word = noun.post === 'front' ? 'FP' : 'BP';
  if (noun.word !== '' && noun.word !== 'ch' && noun.kind !== 'ring') draft.word = noun.word;
  else if (noun.kind === 'corner' || noun.kind === 'picot') draft.word = noun.kind;
}

const SHAPING = /^(?:inc|dec)reases?$/i;

/** "(14 hdc, 1 hdc2tog)", "(2 inc, 10 sc)": told beside a count, it says how the row shapes. */
function passShapingBeside(r: Reader): boolean {
  const start = r.at;
  const behind = kindAt(r, -2) === T.comma || isWord(r, W.and, -2);
  const shape = readStitch(r)?.shape;
  const isShaping = shape === 'together' || shape === 'increase';
  if (isShaping && kindAt(r) === (behind ? T.close : T.comma)) return true;
  r.at = start;
  return false;
}

/** "(2, 5dc groups)": two groups, with a comma between. */
function groupsBehindComma(r: Reader, draft: Draft): boolean {
  if (kindAt(r) !== T.comma || kindAt(r, 1) !== T.number) return false;
  const k = kindAt(r, 2) === T.dash ? 3 : 2;
  const named =
    formOf(wordAt(r, k)) !== null && isWord(r, W.group, k + 1) && endsInS(r, r.at + k + 1);
  const closed = kindAt(r, k + 2) === T.close || kindAt(r, k + 2) === T.comma;
  if (!named || !closed) return false;
  r.at += k + 2;
  draft.unit = 'group';
  draft.word = 'group';
  return true;
}

/** "(6, ch-2 spaces)": the comma parts the number from what it counts. */
function passCommaBefore(r: Reader): void {
  if (kindAt(r) !== T.comma || !isWord(r, W.ch, 1)) return;
  const k = kindAt(r, 2) === T.dash ? 3 : 2;
  const spaces = isWord(r, W.sp, k + 1) || isWord(r, W.loop, k + 1);
  // "(63, ch-2 spaces.)"
  const stop = kindAt(r, k + 2) === T.stop ? 1 : 0;
  if (kindAt(r, k) === T.number && spaces && kindAt(r, k + 2 + stop) === T.close) r.at++;
}

/** "13 sc-hdc groups", "8 dc/ch/dc groups": each group told by what it is made of. */
function listedGroup(r: Reader, draft: Draft): boolean {
  let k = 0;
  let listed = 0;
  while (formOf(wordAt(r, k)) !== null || isWord(r, W.ch, k)) {
    listed++;
    k++;
    if (kindAt(r, k) === T.dash && kindAt(r, k + 1) === T.number) k += 2;
    if ((kindAt(r, k) !== T.dash && kindAt(r, k) !== T.slash) || kindAt(r, k + 1) !== T.word) break;
    k++;
  }
  if (listed < 2 || !isWord(r, W.group, k) || !endsInS(r, r.at + k)) return false;
  r.at += k + 1;
  draft.unit = 'group';
  draft.word = 'group';
  return true;
}

const CROSSED = wordsOf('crossed cross');
