/** Part names in pasted text: lone lines such as "HEAD", "Ears (make 2)", "For the strap". */
import { oneOf } from './one-of.ts';
import { sectionNamed } from './sections.ts';

/** What stands around a line: asked only of lines whose own words leave it open. */
export interface TitleContext {
  readonly afterBlank: () => boolean;
  /** Whether a line with words follows at once. */
  readonly beforeText: () => boolean;
  /** Whether the next line with words opens an instruction. */
  readonly beforeWork: () => boolean;
  /** Whether the next line says only how many are made: "Make 4." */
  readonly beforeCopies: () => boolean;
}

const COPIES = new RegExp(
  [
    String.raw`(?:\((?:(?:make\s+)?(?:\d{1,2}|two|both)|\d{1,2}\s?[x×]|make\s+(?:\d{1,2}|two|both)\s+in\s[^()]{2,30})\)`,
    String.raw`|\bmake\s+(?:\d{1,2}|two|three|four)`,
    String.raw`|[x×*]\s?\d{1,2})\W*$`,
  ].join(''),
  'i',
);
/** "Written pattern" closes the list above it, blank line or not. */
const INSTRUCTIONS =
  /^(?:(?:the|written|full|crochet) )?(?:pattern(?: instructions)?|instructions|directions|method|execution):?$/i;
const FOR = /^(?:for\s+)?(?:the|each|both|your)\s+\S+(?:\s+\S+){0,3}\W*$/i;
const COUNT = /\d\s*(?:sts?|sc|dc|hdc|tr|rows?|rnds?|ch|mm|cm|in|g|oz)\b/i;
/** Orders and exclamations that stand alone between rows; they name no part. */
const ASIDE = new RegExp(
  `^${oneOf(`
    stuff | insert | sew | attach | place | add | close | weave | cut | block | repeat | continue | continuing
    | enjoy | happy | thanks? | so | now | then | here | this | that | it | you | your | i | we
    | and | but | or | if | before | after | done | end | photo | image | picture | advertisement | ad | print | save
    | share | pin | source | copyright | © | www | http
  `)}(?![a-z])|[!?]\\s*$|@|://`,
  'i',
);

/** "With white yarn:" right below a row or a name: the part goes on. */
const YARN_ONLY =
  /^(?:(?:start|begin|starting|beginning)\s+)?(?:with|using)\s+(?:the\s+)?(?:[a-z]+\s+){0,3}(?:yarn|thread|cotton|wool)\W*$/i;

/** Whether a line that opens no instruction names a part or a section. Judged by shape alone. */
export function isTitle(line: string, context: TitleContext): boolean {
  if (line.length > 60 || !/\p{L}{2}/u.test(line)) return false;
  if (sectionNamed(line) !== null || INSTRUCTIONS.test(line)) return true;
  if (line.split(/\s+/).length > 7 || ASIDE.test(line)) return false;
  // "(make 2 in pink)": no inches.
  if (COUNT.test(line.replace(/\bmake \d in \b/i, ''))) return false;
  if (COPIES.test(line)) return true;
  if (YARN_ONLY.test(line) && !context.afterBlank()) return false;
  const capitals = /^[^\p{Ll}]+$/u.test(line);
  if (/[.,;]\s*$/.test(line) && !(capitals && line.endsWith('.'))) return false;
  if (!/^[\W_]*[\p{Lu}\d]|^for the\b/iu.test(line)) return false;
  if (/^\p{Lu}[\p{L} ]{1,20}$/u.test(line) && context.beforeCopies()) return true;
  if (!context.afterBlank() && !context.beforeWork()) return false;
  if (capitals) return true;
  if (/:\s*$/.test(line)) return line.split(/\s+/).length <= 5;
  if (FOR.test(line) && context.beforeWork()) return true;
  if (!/^\p{Lu}/u.test(line) || !context.afterBlank()) return false;
  const words = line.split(/\s+/).length;
  // "Left mitt", and below it prose: "Work as the right one to Round 6."
  if (words <= 3 && context.beforeText()) return true;
  return words <= 5 && context.beforeWork();
}

/** The name without its colon, stars and frame. */
export const titleWords = (line: string): string =>
  line
    .replace(/^[\s#*_~=•–—-]+/, '')
    .replace(/[\s:*_~=•–—-]+$/, '')
    .replace(/\s+/g, ' ');
