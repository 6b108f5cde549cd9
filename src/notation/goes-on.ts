/**
 * "Keep repeating this until you get to the end of the row", "do this all the way around", "and so on to the
 * end", "alternate again across your row": words that name no repeat, for what stands before them.
 */
import type { Span } from '../source/index.ts';
import { fromOf, isOneOf, type Reader, toOf, wordsOf } from './reader.ts';
import type { RepeatOrder } from './repeat-step.ts';
import { T } from './tokens.ts';

const OPENS = wordsOf('keep continue carry go repeat do and then now alternate etc');

const THIS =
  '(?:with )?(?:this|that|these|like (?:this|that)|the same(?: thing)?|in (?:this|the same) (?:manner|way|pattern|fashion)|this (?:alternating )?(?:pattern|sequence|process|step)|(?:the )?pattern|the (?:sequence|process)|these (?:steps|stitches))';
const TO_THE_END =
  '(?:all the way |right )?(?:to (?:the )?(?:very )?end|(?:un)?till? (?:the end|you (?:reach|get to|come to|are at) the (?:very )?end)|around|across|along|down)(?: (?:of )?(?:the |your )?(?:row|round|rnd|chain|ch))?';
const GOES_ON = new RegExp(
  `^(?:(?:and|then|now),? )*(?:(?:keep|continue|carry on|go on) (?:(?:repeating|doing)(?: ${THIS})?|(?:working|going) ${THIS}|to repeat ${THIS})|(?:keep on|keep|continue|carry on|go on|repeat|do) ${THIS}|alternate again|and so on,?|etc\\.?,?) ${TO_THE_END}(?=[ ]?[.,;:(!\\[]| and (?:work|join|close|slip|turn)\\b|\\s*$)`,
  'i',
);

/** "Repeat this for all remaining corners": over how many sentences it goes back is not told. */
const FOR_OTHERS =
  /^(?:repeat|do) (?:this|that|the same|these steps|the process)? ?(?:for|in(?:to)?|on|around|at|along) (?:all |each |every )?(?:of )?(?:the )?(?:other|remaining|rest of the) \w+(?= ?[.,;:!]|\s*$)/i;

/** "Do the same on the other three sides", "repeat this for all four sides": how often, by what there is of it. */
const SO_MANY =
  /^(?:repeat|do|work) (?:this|that|the same|this process)(?: thing)? (?:for|in(?:to)?|on|around|at|along) (?:(?:all )?(?:of )?the (other|remaining|next)|all(?: of the)?|each of the) (two|three|four|five|six|seven|eight|\d{1,2})(?: other)? [a-z]+(?: [a-z]+)?(?= ?[.,;:!(]|\s*$)/i;

/** The order that such words give; `null`: none stand here. */
export function soManyOrder(r: Reader): Omit<RepeatOrder, 'ending'> | null {
  if (!isOneOf(r, OPENS_SAME) || !isApart(r)) return null;
  const from = fromOf(r, r.at);
  const said = SO_MANY.exec(r.text.slice(r.base + from, r.base + from + 120));
  if (!said) return null;
  let number = r.at;
  while (r.kind[r.at] !== T.end && fromOf(r, r.at) < from + said[0].length) {
    if (r.kind[r.at] === T.number) number = r.at;
    r.at++;
  }
  if (r.kind[number] !== T.number) return null;
  const n = { values: [r.value[number]!], from: fromOf(r, number), to: r.to[number]! };
  const span = { from, to: toOf(r) };
  return { times: { kind: 'times', n, more: said[1] !== undefined, ...span }, order: span };
}

const OPENS_SAME = wordsOf('repeat do work');

/** Such words; the reader then stands behind them. `null`: none stand here. */
export function forOthers(r: Reader): Span | null {
  if (!isOneOf(r, OPENS) || !isApart(r)) return null;
  const from = fromOf(r, r.at);
  const said = FOR_OTHERS.exec(r.text.slice(r.base + from, r.base + from + 120));
  if (!said) return null;
  while (r.kind[r.at] !== T.end && fromOf(r, r.at) < from + said[0].length) r.at++;
  return { from, to: toOf(r) };
}

/** Behind a sign, as a sentence or a clause begins. */
function isApart(r: Reader): boolean {
  const before = r.kind[r.at - 1];
  return before === T.stop || before === T.comma || before === T.semicolon || before === T.close;
}

/** The end of such words, counted from the start of the instruction; 0 where none stand. */
export function goesOnTo(r: Reader): number {
  if (!isOneOf(r, OPENS) || !isApart(r)) return 0;
  const from = fromOf(r, r.at);
  const said = GOES_ON.exec(r.text.slice(r.base + from, r.base + from + 120));
  return said ? from + said[0].length : 0;
}

/** The order that such words give, whose ending is left to be read; `null`: none stand here. */
export function goesOnOrder(r: Reader): Omit<RepeatOrder, 'ending'> | null {
  const end = goesOnTo(r);
  if (end === 0) return null;
  const from = fromOf(r, r.at);
  while (r.kind[r.at] !== T.end && fromOf(r, r.at) < end) r.at++;
  const span = { from, to: toOf(r) };
  const until = { kind: 'end', word: 'across', ...span } as const;
  return { times: { kind: 'until', until, ...span }, order: span };
}
