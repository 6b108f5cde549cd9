/** Where a stitch goes: "in next 5 sts", "around post of next dc", "in 3rd ch of beg ch-4". */
import type { Loop, Noun, Numbers, Place, Until } from '../tree.ts';
import { writeNoun } from './noun.ts';
import { isMany, isOne, numberBefore, writeNumbers, writeOrdinal } from './numbers.ts';
import type { Voice } from './voice.ts';

/** With the word before it: "in next st", "around front post of next dc", "between next 2 sts". */
export function writeIn(place: Place, voice: Voice): string {
  const all = place.all ? 'all ' : '';
  if (place.post !== null) return `${all}around ${place.post} post of ${writePlace(place, voice)}`;
  const isGap = place.nouns[0]?.kind === 'gap';
  return `${all}${isGap ? 'between' : 'in'} ${writePlace(place, voice)}`;
}

/** The place alone, as after "sk": "next 2 sts". */
export function writePlace(place: Place, voice: Voice): string {
  const many = manyAt(place);
  const words = [pickOf(place, voice), countOf(place, voice), nounsOf(place, many, voice)];
  const picked = words.filter((word) => word !== '').join(' ');
  const bounds = `${belongingOf(place, voice)}${belowOf(place, voice)}${endOf(place, voice)}`;
  return `${loopOf(place.loop, many)}${picked}${bounds}`;
}

/** "around", "across", "to last 3 sts", "to next ch-2 sp". */
export function writeUntil(until: Until, voice: Voice): string {
  switch (until.kind) {
    case 'end':
      return until.word;
    case 'length':
      return 'for desired length';
    case 'last': {
      const many = isMany(until.n);
      const noun = until.noun === null ? (many ? 'sts' : 'st') : writeNoun(until.noun, many, voice);
      const chain = until.chain ? ' and turning ch' : '';
      return `to last ${numberBefore(until.n, voice)}${noun}${chain}`;
    }
    case 'place':
      return `to ${soonerBy(until.before, voice)}${writePlace(until.place, voice)}`;
  }
}

/** "1 st before ", in front of a place that the work stops short of. */
const soonerBy = (before: Numbers | null, voice: Voice): string =>
  before === null ? '' : `${numberBefore(before, voice)}${isMany(before) ? 'sts' : 'st'} before `;

/** "each st" is one at a time, "each of next 5 sts" several; without a number the noun tells. */
function manyAt(place: Place): boolean {
  if (place.n !== null) return !isOne(place.n);
  if (place.pick === 'each') return !place.each;
  return place.nouns.some((noun) => noun.plural);
}

function pickOf(place: Place, voice: Voice): string {
  const each = place.each && place.pick !== 'each' ? 'each of ' : '';
  switch (place.pick) {
    case 'nth':
      return writeOrdinal(place.nth ?? 1);
    case 'each':
      // "in rem sts" takes what is left, as "each st" does, but names no single place.
      return place.n !== null ? 'all' : place.each ? 'each' : 'rem';
    case 'every-other':
      return place.nth === null ? 'every other' : `every ${writeOrdinal(place.nth)}`;
    case 'same':
      return isBase(place) ? 'base' : 'same';
    case 'top':
      return 'top';
    case 'this':
      return each.trim();
    case 'centre':
      return voice.to === 'US' ? 'center' : 'centre';
    default:
      return isBoth(place) ? 'both' : `${each}${place.pick}`;
  }
}

/** "both sts": several, one each, and no number. */
const isBoth = (place: Place): boolean =>
  place.pick === 'next' && place.each && place.n === null && manyAt(place);

/** "base of beg ch-3": the place out of which the chain grows. */
const isBase = (place: Place): boolean =>
  place.nouns.length === 0 && place.of?.nouns[0]?.kind === 'start-chain';

const countOf = (place: Place, voice: Voice): string =>
  place.pick === 'each' && place.n !== null
    ? writeNumbers(place.n, voice)
    : numberBefore(place.n, voice).trim();

function nounsOf(place: Place, many: boolean, voice: Voice): string {
  const [first] = place.nouns;
  if (first === undefined) return voice.supplies ? wordless(place, many) : '';
  if (first.kind === 'gap') return between(place, first, voice);
  const each = place.pick === 'each' && place.joinedBy === 'and' ? ' and each ' : ' and ';
  const link = place.joinedBy === 'or' ? ' or ' : each;
  return place.nouns.map((noun) => writeNoun(noun, many, voice)).join(link);
}

/** The stitches on both sides of a gap: "next 2 sts", "sts", "each dc". */
function between(place: Place, gap: Noun, voice: Voice): string {
  const isNamed = place.pick === 'next' || place.pick === 'first' || place.pick === 'last';
  const kind = gap.stem === null ? 'stitch' : 'stem';
  const noun = writeNoun({ ...gap, kind }, isNamed || place.pick === 'this', voice);
  return isNamed ? `2 ${noun}` : noun;
}

/** The house writes "st" where the designer wrote no noun; "same" alone may also be a space. */
function wordless(place: Place, many: boolean): string {
  if (place.pick === 'top' || place.pick === 'this' || place.pick === 'same') return '';
  // "3rd of 5 ch" means a chain.
  if (place.of?.nouns[0]?.kind === 'start-chain') return 'ch';
  return many ? 'sts' : 'st';
}

const LOOPS: Readonly<Record<Loop, string>> = {
  back: 'back loop',
  front: 'front loop',
  third: '3rd loop',
  both: 'both loop',
};

function loopOf(loop: Loop | null, many: boolean): string {
  if (loop === null) return '';
  return `${LOOPS[loop]}${many || loop === 'both' ? 's' : ''} of `;
}

/** "from hook", "of beg ch-4", "as join", "as first 2 sc". */
function belongingOf(place: Place, voice: Voice): string {
  if (place.fromHook) return ' from hook';
  if (place.of === null) return '';
  const owner = writePlace(place.of, voice);
  return place.pick === 'same' && !isBase(place) ? ` as ${owner}` : ` of ${owner}`;
}

function belowOf(place: Place, voice: Voice): string {
  const course = voice.course === 'rnd' ? 'Rnd' : 'Row';
  if (place.row !== null) return ` of ${course} ${place.row}`;
  if (place.rowsBelow === 0) return '';
  const word = voice.course;
  return place.rowsBelow === 1 ? ` 1 ${word} below` : ` ${place.rowsBelow} ${word}s below`;
}

const endOf = (place: Place, voice: Voice): string =>
  place.until === null ? '' : ` ${writeUntil(place.until, voice)}`;
