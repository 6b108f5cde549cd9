/** Stitch names: "half double crochet", "FPdc", "sc2tog", "5-dc cluster", "inv dec", "sc tbl". */
import {
  formOf,
  mannerOf,
  mayBeStitch,
  phrasesOf,
  postOf,
  type SenseId,
  senseOfWord,
  TOGETHER,
} from './dictionary.ts';
import { passGloss } from './gloss.ts';
import { clauseEnds, isGlued, kindAt, type Reader, spelled, valueAt, wordAt } from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import type { SpecialName } from './special-names.ts';
import { PLAIN_TERM, termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { Loop, Post, StitchTerm } from './tree.ts';

/** The stitch name at the reader's place, or `null`, which leaves the reader where it was. */
export function readStitch(r: Reader): StitchTerm | null {
  const special = readSpecialName(r);
  if (special) return special;
  // Asked at nearly every word: where no name can begin, no more is looked at.
  const first = wordAt(r);
  if (!mayBeStitch(first) && !LEADS_TO_NAME.has(first)) return null;
  const start = r.at;
  const before = isPlainName(first) ? PLAIN_TERM : readPrefixes(r);
  const form = readForm(r);
  if (!form) {
    r.at = start;
    return null;
  }
  if (kindAt(r) === T.open) {
    skipShortForm(r, form);
    passGloss(r, form);
  }
  const named = before === PLAIN_TERM ? form : merged(before, form);
  const term = clauseEnds(r) ? named : withSuffixes(r, ofLegs(r, named));
  if (term.shape === 'together') passGloss(r, term);
  if (kindAt(r) === T.slash) skipOtherName(r, term);
  // "five single crochet stitches"
  if (form.shape === 'one' && term.shape === 'one' && wordAt(r) === W.st) r.at++;
  return term;
}

/** "cluster of 3dc": how many legs of which stitch are closed in it. */
function ofLegs(r: Reader, term: StitchTerm): StitchTerm {
  if (term.shape !== 'cluster' || term.stem !== null || wordAt(r) !== W.of) return term;
  const leg = kindAt(r, 1) === T.number ? formOf(wordAt(r, 2)) : null;
  if (leg?.shape !== 'one' || leg.stem === null) return term;
  const legs = valueAt(r, 1);
  r.at += 3;
  return termWith(term, { stem: leg.stem, legs });
}

/** Words before a name that are none themselves: "back loop", "front post", and the old "long". */
const LEADS_TO_NAME: SenseSet = new SenseSet([W.blo, W.flo, W.front, W.back, W.foundation, W.long]);

/** Most names are one word that is nothing else; they need no look at prefixes. */
const isPlainName = (sense: SenseId): boolean =>
  sense > 0 && formOf(sense) !== null && phrasesOf(sense) === null && mannerOf(sense) === null;

/** "single crochet (s c)": the short form in brackets says the same again. */
function skipShortForm(r: Reader, form: StitchTerm): void {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || close - r.at > 5) return;
  const start = r.at++;
  // "csc (center single crochet)"
  if (kindAt(r) === T.word && /^cent(?:er|re)$/.test(spelled(r, r.at))) r.at++;
  const again = readForm(r);
  const same = again !== null && again.stem === form.stem && again.shape === form.shape;
  r.at = same && r.at === close ? close + 1 : start;
}

/** "sc2tog/dec": two names of one stitch. */
function skipOtherName(r: Reader, { shape, stem }: StitchTerm): void {
  if (shape !== 'together' && shape !== 'increase') return;
  const other = formOf(wordAt(r, 1));
  if (other?.shape === shape && (other.stem === null || other.stem === stem)) r.at += 2;
}

/** What stands before the name together with what the name itself says. */
const merged = (before: StitchTerm, form: StitchTerm): StitchTerm =>
  withManner(
    termWith(form, {
      loop: before.loop ?? form.loop,
      post: before.post ?? form.post,
      foundation: before.foundation || form.foundation,
      manner: before.manner,
    }),
    form.manner,
  );

const withManner = (term: StitchTerm, manner: readonly string[]): StitchTerm =>
  manner.length === 0 ? term : termWith(term, { manner: [...term.manner, ...manner] });

/** Name of a special stitch of this manuscript; the longest fitting one. */
export function readSpecialName(r: Reader): StitchTerm | null {
  const name = specialHere(r);
  if (!name) return null;
  r.at += matchesName(r, name);
  return name.term;
}

/** The special stitch whose name stands here; "2V-st" may be one, "2 V-st" is two V-stitches. */
export function specialHere(r: Reader): SpecialName | null {
  if (!r.specials) return null;
  const kind = kindAt(r);
  const isNumber = kind === T.number && isGlued(r);
  if (!isNumber && kind !== T.word && kind !== T.ordinal) return null;
  const names = r.specials.get(isNumber ? 0 : (r.hash[r.at] ?? 0));
  return names?.find((name) => matchesName(r, name) > 0) ?? null;
}

/** Tokens taken by the name, 0 where it does not stand here; hyphens between words are free. */
function matchesName(r: Reader, name: SpecialName): number {
  let k = 0;
  for (let i = 0; i < name.hashes.length; i++) {
    if (i > 0 && kindAt(r, k) === T.dash) k++;
    if (name.hashes[i] === 0) {
      if (kindAt(r, k) !== T.number || valueAt(r, k) !== name.numbers[i]) return 0;
    } else if (r.hash[r.at + k] !== name.hashes[i]) return 0;
    k++;
  }
  return k;
}

/** "front post", "reverse", "foundation", "blo", before the name itself. */
function readPrefixes(r: Reader): StitchTerm {
  let term = PLAIN_TERM;
  for (let guard = 0; guard < 4; guard++) {
    const sense = wordAt(r);
    if (sense <= 0) return term;
    const looped = loopPrefix(r, sense, term) ?? postPrefix(r, sense, term);
    if (looped) {
      term = looped;
      continue;
    }
    if (sense === W.foundation) term = termWith(term, { foundation: true });
    else if (isManner(r, sense)) term = withManner(term, [mannerOf(sense) ?? '']);
    else return term;
    r.at++;
    if (kindAt(r) === T.dash) r.at++;
  }
  return term;
}

/** A word like "long" or "double" names a manner only before a stitch that stands by itself. */
const isManner = (r: Reader, sense: SenseId): boolean =>
  mannerOf(sense) !== null && phraseHere(r) === null && stitchFollows(r, 1);

function stitchFollows(r: Reader, ahead: number): boolean {
  const k = kindAt(r, ahead) === T.dash ? ahead + 1 : ahead;
  const sense = wordAt(r, k);
  return (
    sense > 0 && (formOf(sense) !== null || phrasesOf(sense) !== null || postOf(sense) !== null)
  );
}

function loopPrefix(r: Reader, sense: SenseId, term: StitchTerm): StitchTerm | null {
  const loop: Loop | null = sense === W.blo ? 'back' : sense === W.flo ? 'front' : null;
  if (loop === null || !stitchFollows(r, 1)) return null;
  r.at++;
  return termWith(term, { loop });
}

function postPrefix(r: Reader, sense: SenseId, term: StitchTerm): StitchTerm | null {
  let post: Post | null = postOf(sense);
  let length = 1;
  if (post === null && (sense === W.front || sense === W.back)) {
    const k = kindAt(r, 1) === T.dash ? 2 : 1;
    if (wordAt(r, k) !== W.post) return null;
    post = sense === W.front ? 'front' : 'back';
    length = k + 1;
  }
  if (post === null) return null;
  const k = kindAt(r, length) === T.dash ? length + 1 : length;
  if (!stitchFollows(r, k) && wordAt(r, k) !== W.foundation) return null;
  r.at += k;
  return termWith(term, { post });
}

/** The longest name of several words that stands here, with its length in tokens. */
function phraseHere(r: Reader): { form: StitchTerm; length: number } | null {
  const list = phrasesOf(wordAt(r));
  if (!list) return null;
  for (const phrase of list) {
    const form = formOf(phrase.sense);
    let k = 1;
    let i = 1;
    for (; i < phrase.words.length; i++) {
      if (kindAt(r, k) === T.dash) k++;
      else if (kindAt(r, k) === T.stop && valueAt(r, k) === 0) k++;
      if (wordAt(r, k) !== phrase.words[i]) break;
      k++;
    }
    if (i === phrase.words.length && form) return { form, length: k };
  }
  return null;
}

function readForm(r: Reader): StitchTerm | null {
  const sense = wordAt(r);
  if (sense <= 0) return null;
  const phrase = phraseHere(r);
  if (phrase) {
    r.at += phrase.length;
    return phrase.form;
  }
  const form = sense === W.long ? oldLong(r) : formOf(sense);
  if (form) r.at++;
  return form;
}

/** Old books' "1 long on the next", "in each long": a stitch by itself, behind a number or "each". */
function oldLong(r: Reader): StitchTerm | null {
  const before = wordAt(r, -1);
  const counted = kindAt(r, -1) === T.number && wordAt(r, -2) !== W.ch;
  const named = before === W.each || before === W.next || before === W.last || before === W.same;
  const goesOn = wordAt(r, 1) === W.in || wordAt(r, 1) === W.on || wordAt(r, 1) === W.and;
  return (counted || named) && (clauseEnds(r, 1) || goesOn) ? formOf(LONGS) : null;
}
const LONGS: SenseId = senseOfWord('longs');

/** "2tog", "together", "inc", "dec", "cluster", "tbl", "fp" behind a name. */
function withSuffixes(r: Reader, term: StitchTerm): StitchTerm {
  const dash = kindAt(r) === T.dash ? 1 : 0;
  // "dec. 2 sc tog": the decrease, and how it is made.
  const told = term.shape === 'together' && term.stem === null && kindAt(r) === T.number;
  if (told && wordAt(r, 2) === TOGETHER && valueAt(r) < 4) {
    const stem = formOf(wordAt(r, 1))?.stem ?? null;
    if (stem !== null || wordAt(r, 1) === W.st) {
      const legs = valueAt(r);
      r.at += 3;
      return termWith(term, { legs, stem });
    }
  }
  if (kindAt(r, dash) === T.number && wordAt(r, dash + 1) === TOGETHER) {
    const legs = valueAt(r, dash);
    r.at += dash + 2;
    return withLoop(r, termWith(term, { shape: 'together', legs }));
  }
  if (wordAt(r, dash) === TOGETHER) {
    r.at += dash + 1;
    return withLoop(r, termWith(term, { shape: 'together' }));
  }
  if (incOf(r, term)) {
    const stem = formOf(wordAt(r))?.stem ?? null;
    r.at++;
    return withLoop(r, termWith(term, { stem }));
  }
  return withLoop(r, term.stem !== null && term.shape === 'one' ? withShape(r, term, dash) : term);
}

/** "1 inc hdc, 14 hdc", "4 hdc, inc hdc": a clause of its own, so that the stitch is the increase's. */
function incOf(r: Reader, term: StitchTerm): boolean {
  if (term.stem !== null || term.legs !== null) return false;
  if (term.shape !== 'increase' && term.shape !== 'together') return false;
  const counted = kindAt(r, -2) === T.number;
  const before = kindAt(r, counted ? -3 : -2);
  // "(inc sc) x 6" may be two, with a comma left out.
  const opens = before === T.comma || (r.depth === 0 && (before === T.colon || before === T.stop));
  const form = formOf(wordAt(r));
  if (!opens || form?.shape !== 'one' || form.stem === null) return false;
  const behind = kindAt(r, 1);
  if (counted && r.depth === 0) return behind === T.comma;
  return behind === T.comma || behind === T.close || behind === T.end || opensCount(r, 1);
}

/** "(8)", the count of the row. */
const opensCount = (r: Reader, k: number): boolean =>
  kindAt(r, k) === T.open && kindAt(r, k + 1) === T.number;

function withShape(r: Reader, term: StitchTerm, dash: number): StitchTerm {
  const sense = wordAt(r, dash);
  const form = sense > 0 ? formOf(sense) : null;
  if (!form || form.stem !== null || form.shape === 'one' || form.shape === 'picot')
    return withPost(r, term, dash);
  // "sc 2tog" and "sc dec" are one name; "sc, dec" has its comma, "sc inc" means two in one.
  r.at += dash;
  const after = readForm(r);
  if (!after) return term;
  return withManner(termWith(term, { shape: after.shape, legs: after.legs }), after.manner);
}

function withPost(r: Reader, term: StitchTerm, dash: number): StitchTerm {
  const post = postOf(wordAt(r, dash));
  if (post === null || term.post !== null) return term;
  r.at += dash + 1;
  return termWith(term, { post });
}

function withLoop(r: Reader, term: StitchTerm): StitchTerm {
  // "hdc-blo to last st"
  const dash = kindAt(r) === T.dash && isGlued(r) && isGlued(r, -1) ? 1 : 0;
  const sense = wordAt(r, dash);
  const loop: Loop | null = sense === W.blo ? 'back' : sense === W.flo ? 'front' : null;
  if (loop === null) return term;
  r.at += dash + 1;
  return termWith(term, { loop });
}

/** "3-dc cluster", "2 sc tog": the number belongs to the name. Reader stands on the number. */
export function readNumberedStitch(r: Reader): StitchTerm | null {
  if (kindAt(r) !== T.number) return null;
  const special = readSpecialName(r);
  if (special || isPlainWork(r)) return special;
  const start = r.at;
  const legs = valueAt(r);
  r.at++;
  const dashed = kindAt(r) === T.dash && isGlued(r) && isGlued(r, -1);
  if (kindAt(r) === T.dash) r.at++;
  // "3-st dec", "2-stitch cluster"
  if (wordAt(r) === W.st && dashed) r.at++;
  const stitch = readStitch(r);
  const takes = stitch !== null && stitch.shape !== 'one' && stitch.shape !== 'special';
  const named = takes && (stitch.stem !== null || dashed) && stitch.legs === null;
  if (!stitch || !named || stitch.shape === 'increase') {
    r.at = start;
    return null;
  }
  if (stitch.shape === 'together' && !isTogether(r) && !dashed) {
    r.at = start;
    return null;
  }
  return termWith(stitch, { legs });
}

/** "5 sc in", "2 dc,": by far the most; a name that nothing goes on with keeps no number. */
function isPlainWork(r: Reader): boolean {
  const form = formOf(wordAt(r, 1));
  if (form?.shape !== 'one' || r.specials || phrasesOf(wordAt(r, 1))) return false;
  const next = wordAt(r, 2);
  if (next === W.in || next === W.to || next === W.st || next === W.around) return true;
  const kind = kindAt(r, 2);
  return kind === T.comma || kind === T.semicolon || kind === T.close || kind === T.end;
}

/** Whether the stitch just read was named with "tog": "2 dc tog" but not "3 sc dec". */
function isTogether(r: Reader): boolean {
  const last = r.at - 1;
  if (r.kind[last] === T.word && r.value[last] === TOGETHER) return true;
  return /tog$/i.test(spelled(r, last));
}
