/**
 * Decreases of the designer's own that are told by movements: "dDec: (yo, draw up a loop in next st, yo and
 * draw through 2 loops) 3 times, yo and draw through all 4 loops". Over how many stitches they are closed is
 * said twice, by where loops are drawn up and by how many loops there are at the end; both must agree.
 */
import { termOf } from './stitch-term.ts';
import type { StitchTerm } from './tree.ts';

/** The stitch that such words make; `null` where they tell of another kind, or their numbers do not agree. */
export function closedOver(words: string): StitchTerm | null {
  if (!/\bthrough all\b/i.test(words) || /\bsame\b/i.test(words)) return null;
  const legs = drawnIn(words);
  const loops = count(LAST_LOOPS.exec(words)?.[1]);
  if (legs < 2 || legs > MOST || loops === null) return null;
  const yarnsOver = /^\W*(?:\[|\()?\s*(?:yo|yoh|yarn over)\b/i.test(words) ? 1 : 0;
  // A half double crochet leaves two loops, any other stitch one; the one that was on the hook is there too.
  if (loops === legs + 1) return termOf({ shape: 'together', stem: yarnsOver ? 'dc' : 'sc', legs });
  if (loops === 2 * legs + 1 && yarnsOver) return termOf({ shape: 'together', stem: 'hdc', legs });
  return null;
}

const MOST = 9;
const N = '(\\d|one|two|three|four|five|six|seven|eight|nine|ten)';
const LAST_LOOPS = new RegExp(
  `\\bthrough all (?:the )?${N} (?:remaining )?(?:loops?|lps?)\\b(?!.*through)`,
  'i',
);
const DRAW = '\\b(?:draw|pull) up an? (?:loop|lp) in ';
const EACH = new RegExp(
  `${DRAW}(?:each of )?(?:the )?next ${N} (?:sts?|stitches|ch|[a-z]{2,3})\\b`,
  'i',
);
const NEXT = /\bin(?:to)? (?:the )?next (?:st|stitch|ch|sc|dc|hdc|tr)\b/gi;
const FROM_STAR = new RegExp(
  `\\brep(?:eat)? from \\* (?:in (?:each of )?(?:the )?next ${N}? ?(?:sts?|stitch(?:es)?)|(once|twice|${N} (?:more )?times))`,
  'i',
);
const BRACKET = new RegExp(`[)\\]] ?(?:x ?)?(?:(once|twice|thrice)|${N} times|${N}x)`, 'i');

/** In how many stitches a loop is drawn up. */
function drawnIn(words: string): number {
  const each = count(EACH.exec(words)?.[1]);
  if (each !== null) return each;
  const named = [...words.matchAll(NEXT)].length;
  const star = FROM_STAR.exec(words);
  if (star) {
    const [, places, often = '', times] = star;
    if (often !== '')
      return 1 + (often === 'once' ? 1 : often === 'twice' ? 2 : (count(times) ?? 0));
    return 1 + (count(places) ?? 1);
  }
  const bracket = BRACKET.exec(words);
  if (!bracket || named !== 1) return named;
  const [, often, times, sign] = bracket;
  return often === 'twice' ? 2 : often === 'thrice' ? 3 : (count(times ?? sign) ?? 0);
}

function count(word: string | undefined): number | null {
  if (word === undefined) return null;
  const n = /^\d$/.test(word) ? Number(word) : NUMBERS.indexOf(word.toLowerCase());
  return n < 0 ? null : n;
}

const NUMBERS = 'zero one two three four five six seven eight nine ten'.split(' ');
