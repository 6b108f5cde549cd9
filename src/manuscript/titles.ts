/** Part names in pasted text: lone lines such as "HEAD", "Ears (make 2)", "For the strap". */
import { oneOf } from './one-of.ts';
import { sectionNamed } from './sections.ts';

export interface TitleContext {
  readonly afterBlank: boolean;
  /** A line with words follows at once. */
  readonly beforeText: boolean;
  /** The next line with words opens an instruction. */
  readonly beforeWork: boolean;
}

const COPIES = new RegExp(
  [
    String.raw`(?:\((?:make\s+)?(?:\d{1,2}|two|both)\)|\bmake\s+(?:\d{1,2}|two|three|four)`,
    String.raw`|[x×*]\s?\d{1,2})\W*$`,
  ].join(''),
  'i',
);
const FOR = /^(?:for\s+)?(?:the|each|both|your)\s+\S+(?:\s+\S+){0,3}\W*$/i;
const COUNT = /\d\s*(?:sts?|sc|dc|hdc|tr|rows?|rnds?|ch|mm|cm|in|g|oz)\b/i;
/** Orders and exclamations that stand alone between rows; they name no part. */
const ASIDE = new RegExp(
  `^${oneOf(`
    stuff | insert | sew | attach | place | add | close | weave | cut | block | repeat | continue
    | enjoy | happy | thanks? | so | now | then | here | this | that | it | you | your | i | we
    | and | but | or | if | done | end | photo | image | picture | advertisement | ad | print | save
    | share | pin | source | copyright | © | www | http
  `)}(?![a-z])|[!?]\\s*$|@|://`,
  'i',
);

/** Whether a line that opens no instruction names a part or a section. Judged by shape alone. */
export function isTitle(line: string, context: TitleContext): boolean {
  if (line.length > 60 || !/\p{L}{2}/u.test(line)) return false;
  if (sectionNamed(line) !== null) return true;
  if (line.split(/\s+/).length > 7 || ASIDE.test(line) || COUNT.test(line)) return false;
  if (COPIES.test(line)) return true;
  const capitals = /^[^\p{Ll}]+$/u.test(line);
  if (/[.,;]\s*$/.test(line) && !(capitals && line.endsWith('.'))) return false;
  if ((!context.afterBlank && !context.beforeWork) || !/^[\W_]*[\p{Lu}\d]|^for the\b/iu.test(line))
    return false;
  if (capitals) return true;
  if (/:\s*$/.test(line)) return line.split(/\s+/).length <= 5;
  if (context.beforeWork && FOR.test(line)) return true;
  if (!context.afterBlank || !/^\p{Lu}/u.test(line)) return false;
  // "Left mitt", and below it prose: "Work as the right one to Round 6."
  const most = context.beforeWork ? 5 : context.beforeText ? 3 : 0;
  return line.split(/\s+/).length <= most;
}

/** The name without its colon, stars and frame. */
export const titleWords = (line: string): string =>
  line
    .replace(/^[\s#*_~=•–—-]+/, '')
    .replace(/[\s:*_~=•–—-]+$/, '')
    .replace(/\s+/g, ' ');
