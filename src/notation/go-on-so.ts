/**
 * "Keep repeating this until you get to the end of the row", "do this all the way around", "and so on to the
 * end": the sentence before, over and over, in words that name no repeat.
 */
import { readEnding } from './ending.ts';
import { isWorked } from './plain-count.ts';
import { fromOf, isOneOf, type Reader, toOf, wordsOf } from './reader.ts';
import type { Run } from './run.ts';
import { wrapSentence } from './sentence-repeat.ts';
import { T } from './tokens.ts';

const OPENS = wordsOf('keep continue carry go repeat do and then now etc');

const THIS =
  '(?:with )?(?:this|that|these|like (?:this|that)|the same(?: thing)?|in (?:this|the same) (?:manner|way|pattern|fashion)|this (?:pattern|sequence|process|step)|the (?:pattern|sequence|process)|these (?:steps|stitches))';
const TO_THE_END =
  '(?:all the way |right )?(?:to (?:the )?(?:very )?end|(?:un)?till? (?:the end|you (?:reach|get to|come to|are at) the (?:very )?end)|around|across|along|down)(?: (?:of )?(?:the |your )?(?:row|round|rnd|chain|ch))?';
const GOES_ON = new RegExp(
  `^(?:(?:and|then|now),? )*(?:(?:keep|continue|carry on|go on) (?:(?:repeating|doing)(?: ${THIS})?|(?:working|going) ${THIS})|(?:keep on|keep|continue|carry on|go on|repeat|do) ${THIS}|and so on,?|etc\\.?,?) ${TO_THE_END}(?=[ ]?[.,;:(!\\[]|\\s*$)`,
  'i',
);

/** Whether such words stood here; the sentence before is a repeat then. */
export function goesOnSo(r: Reader, run: Run): boolean {
  if (!isOneOf(r, OPENS) || run.end !== 'text' || r.depth > 0 || !run.out.some(isWorked))
    return false;
  const before = r.kind[r.at - 1];
  if (before !== T.stop && before !== T.comma && before !== T.semicolon && before !== T.close)
    return false;
  const from = fromOf(r, r.at);
  const said = GOES_ON.exec(r.text.slice(r.base + from, r.base + from + 120));
  if (!said) return false;
  while (r.kind[r.at] !== T.end && fromOf(r, r.at) < from + said[0].length) r.at++;
  const span = { from, to: toOf(r) };
  const last = run.out.at(-1);
  if (last?.kind === 'repeat' && last.times.kind === 'until') {
    run.out.push({ kind: 'remark', ...span });
    return true;
  }
  // "(Ch 3, dc, ch 2, 2 dc) in first sp": its chain stands for a stitch once, and not in each pass.
  const [head] = run.out.filter(isWorked);
  if (head?.kind === 'group' && head.steps[0]?.kind === 'chain') {
    run.out.push({ kind: 'unread', says: 'work', ...span });
    return true;
  }
  const until = { kind: 'end', word: 'across', ...span } as const;
  wrapSentence(
    r,
    run,
    { times: { kind: 'until', until, ...span }, ending: readEnding(r), order: span },
    '',
  );
  return true;
}
