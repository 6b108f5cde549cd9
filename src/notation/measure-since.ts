/** What a length in an order is measured from. Where the words leave doubt, nothing is assumed. */

import { fromOf, type Reader, toOf } from './reader.ts';
import type { Measure } from './tree.ts';

const ABOUT = String.raw`(?:(?:about|approx(?:imately)?\.?|approximately|around|at least|another|a(?:n additional)?|the next) )*`;

/** "for 4 in", "for another 10 cm": from here on. */
const FROM_HERE = new RegExp(`^(?:for|over) ${ABOUT}[\\d.½¼¾⅓⅔⅛/]`, 'i');

/** Words for the whole of what is worked; an armhole, a square or a circle is measured otherwise. */
const WHOLE =
  'piece|work|it|fabric|panel|strip|band|strap|belt|tie|runner|scarf|blanket|afghan|throw|rug|swatch';

const FROM_START = new RegExp(
  `^(?:until|till|to|til) (?:the |your |this )?(?:whole |entire )?(?:${WHOLE}) ` +
    `(?:measures?|is|reaches) ${ABOUT}[\\d.½¼¾⅓⅔⅛/]`,
  'i',
);

/** Another way to lay the tape, or a length less or more than the one named. */
const ELSEWHERE =
  /\b(?:from|past|above|below|after|beyond|less|more|short|than|before|across|wide|width|diameter|around|diagonal\w*|square|stretch\w*|hang\w*|block\w*|fold\w*)\b/i;

const BEGINNING =
  /\bfrom (?:the |its )?(?:very )?(?:beg(?:inning)?|start|foundation|base|bottom|lower edge|cast)\b[^,;]*/i;

/** "(22, 24) cm", "[16:18:20]", "/ 22 / 24": a length for each size; "(10 sc)" is a count. */
const MORE_LENGTHS = /^\s*[([:/,]\s*[\d.½¼¾⅓⅔⅛]+\s*(?:[-,:/;\])½¼¾⅓⅔⅛]|"|''|in\b|cm\b|mm\b)/i;

/** Words this far behind a length no longer speak of it; long texts stay linear. */
const MOST_BEHIND = 200;

/** The reader stands behind a length that was read from token `start` on. */
export function sinceOf(r: Reader, start: number): Measure['since'] {
  const at = r.base + toOf(r);
  const end = Math.min(r.base + (r.to[r.count - 1] ?? 0), at + MOST_BEHIND);
  const head = flat(r.text.slice(r.base + fromOf(r, start), at));
  const tail = flat(r.text.slice(at, end).split(/\.\s|;/, 1)[0] ?? '');
  if (MORE_LENGTHS.test(tail)) return null;
  const rest = tail.replace(BEGINNING, '');
  if (FROM_HERE.test(head)) return ELSEWHERE.test(tail) ? null : 'here';
  return FROM_START.test(head) && !ELSEWHERE.test(rest) && !endsByAnother(rest) ? 'start' : null;
}

/** "Ending with row 3" is read by itself; a side or a colour to end with is not. */
const endsByAnother = (words: string): boolean =>
  /\bend(?:ing|s)?\b/i.test(words) &&
  !/\bend(?:ing|s)? (?:\w+ ){0,2}r(?:ow|nd|ound)\b/i.test(words);

const flat = (words: string): string => words.replace(/\s+/g, ' ');
