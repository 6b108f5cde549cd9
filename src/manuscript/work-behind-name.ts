/** Names of parts with their work in the same line: "Back - With colour 1 make 41 ch", "BLANKET Ch 110." */
import { isKnownWord } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { isGroupName } from './definitions.ts';
import { behindTitle } from './label-cuts.ts';
import { opensSentence, signBehindName } from './line-shapes.ts';
import type { Scan } from './scan.ts';

/** "Back - With colour 1 make 41 ch": where the work begins that stands in the line of its part's name. */
export function workBehindName(
  { text, section, options, sawWork }: Scan,
  { from, to }: Span,
): number {
  if (section === 'comments' || options.titles === 'headings') return from;
  const row = behindTitle(text, from);
  if (row > from) return row;
  // A title stands above all work.
  const title = sawWork ? null : titleAndChain(text.slice(from, Math.min(to, from + 60)));
  if (title) return from + title[0].length;
  if (!mayNameWork(text, from, to)) return from;
  const line = text.slice(from, Math.min(to, from + 60));
  const found =
    NAME_AND_ROW.exec(line) ??
    // "in first sc – 6 ch-3 loops.": the end of a row, broken before its last words.
    (opensSentence(text, from) ? NAME_AND_WORK.exec(line) : null) ??
    CAPITALS_AND_CHAIN.exec(line) ??
    COPIES_AND_CHAIN.exec(line) ??
    CAPITALS_AND_DOTS.exec(line) ??
    CAPITALS_AND_YARN.exec(line) ??
    SPECIALS_AND_NAME.exec(line);
  // "Picot - ch 3, sl st in 3rd ch from hook": how a stitch is made.
  const isStitch = found !== null && isGroupName(found[0].replace(/[^\p{L}]+$/u, ''));
  return found && !isStitch ? from + found[0].length : from;
}

/** A name has a comma, a dash or a bracket behind it, or is in capitals. */
function mayNameWork(text: string, from: number, to: number): boolean {
  const sign = String.fromCharCode(signBehindName(text, from, to));
  if (',-–—('.includes(sign)) return true;
  for (let at = from; at < from + 3; at++) if (!isCapital(text.charCodeAt(at))) return false;
  return true;
}

/** Beyond ASCII every sign may be one. */
const isCapital = (code: number): boolean => code > 127 || (code >= 65 && code <= 90);

/** "Simple Scarf Chain 31": a title of words that the trade has not. */
function titleAndChain(line: string): RegExpExecArray | null {
  const found = TITLE_AND_CHAIN.exec(line);
  return found?.[0].toLowerCase().trim().split(' ').some(isKnownWord) ? null : found;
}

const TITLE_AND_CHAIN = /^\p{Lu}\p{Ll}+(?: \p{Lu}\p{Ll}+){1,3} (?=Ch(?:ain)? \d{2,3}\b)/u;

/** "Cuff, row 1: Ch 11, …", "BODY-Row 1 (Right Side): …" */
const NAME_AND_ROW =
  /^(?!(?:then|next|now|last|first|pattern|foundation|turn|join|work|repeat|rep|edging|border)\b)[A-Z][A-Za-z' ]{2,28}(?:, (?=r)|[-–—](?=R))(?=[Rr](?:ow|nd|ound)s? ?\d{1,3}(?: ?(?:-|–|to|and|&) ?\d{1,3})?\s?(?:\([^)]{2,14}\)\s?)?[:.])/;

/** "BLANKET Ch 110. Row 1: …", "CAP Ch 26.", "SLEEVE-Chain 84." */
const CAPITALS_AND_CHAIN =
  /^(?!(?:ROW|RND|THEN|NEXT) )\p{Lu}{3,}(?: \p{Lu}{2,}){0,2}(?: |[-–—] ?)(?=(?:With [\p{L}\d ]{3,20}, )?[Cc]h(?:ain)? \d)/u;

/** "BLANKET With larger hook and color A, ch 218." */
const CAPITALS_AND_YARN =
  /^\p{Lu}{4,}(?: \p{Lu}{3,}){0,2} (?=With [^.,;]{1,30}, ch(?:ain)? \d{2,})/u;

/** "SPECIAL STITCH Shell: 5 dc in indicated st.", run on behind other words. */
export const SPECIALS_AND_NAME: RegExp =
  /^SPECIAL STITCH(?:ES)?:? (?=\p{Lu}\p{L}+(?: \p{L}+){0,2}(?: \([^)]{1,16}\))?: )/u;

/** "FIRST MOTIF … Starting at center, ch 10.", "SECOND STAR... Work as for first star." */
const CAPITALS_AND_DOTS = /^\p{Lu}{3,}(?:[ -]\p{Lu}{2,}){0,3} ?(?:…|\.{3}) ?(?=\p{Lu})/u;

/** "Ties (make 2): Ch 68. …" */
const COPIES_AND_CHAIN =
  /^[A-Z][A-Za-z' ]{2,28}\((?:make )?(?:\d|two)\) ?[:–-] ?(?=ch(?:ain)? ?\d)/i;

const NAME_AND_WORK =
  /^(?!(?:next|last|first|pattern|foundation|\w+) (?:row|rnd|round)\b|(?:row|rnd|round|ch|chain|notes?|step)\b)[A-Z][A-Za-z' ]{2,28} [-–—] (?=(?:with (?:an? )?(?:colou?r|yarn|main|mc|[a-z]\b|\d+(?:\.\d+)? ?mm|(?:larger|smaller|size) )|using |make \d|\d{1,3} ?ch\b|ch ?\d))/i;
