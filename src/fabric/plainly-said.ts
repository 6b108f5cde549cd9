/**
 * Whether a row is said in the plainest words of the trade, all of which were followed: what does not
 * come out in it is then a wrong number, however far it is off, and no misreading.
 */
import type { Place, Step, WorkStep } from '../notation/index.ts';
import { allSteps } from './shape.ts';

/** `isCount`: only the number of stitches is asked for, on which hangs nothing that lies beneath. */
export function isPlainlySaid(
  steps: readonly Step[],
  wordsOf: (step: Step) => string,
  isCount = false,
): boolean {
  const isPlainPlace = (place: Place): boolean => isCount || isAlongRow(place);
  const isHarmless = (words: string): boolean =>
    isBeside(words) || (isCount && !CHANGES.test(words));
  // What is told behind the work does not change it.
  const behind = steps.findLastIndex(({ kind }) => !CLOSES.has(kind)) + 1;
  for (const step of allSteps(steps.slice(0, behind))) {
    if (step.kind === 'work' ? !isPlainWork(step, isPlainPlace) : !PLAIN.has(step.kind))
      return false;
    if (step.kind === 'remark' && !isHarmless(wordsOf(step))) return false;
    if ((step.kind === 'group' || step.kind === 'skip') && !isPlainPlace(step.place)) return false;
  }
  return true;
}

const CLOSES: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'remark',
  'turn',
  'join',
  'fasten-off',
  'yarn',
  'spiral',
]);

const PLAIN: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'chain',
  'skip',
  'group',
  'repeat',
  'join',
  'turn',
  'yarn',
  'spiral',
  'fasten-off',
  'mark',
  'loop',
  'ring',
  'unworked',
  'other-side',
  'remark',
]);

/** What is done beside the row, told in few words without a number; or what the row is called. */
export const isBeside = (words: string): boolean =>
  HARMLESS.test(words) || isName(words) || MADE.test(words) || SIDE.test(words);

/** "-inc made", "(an increase made)", "- decrease": what the stitches just told are. */
const MADE = /^\W*(?:an? )?(?:inc|dec)(?:rease)?(?: (?:made|complete[d]?))?\W*$/i;

/** "Working down the side of the piece", "Corner -", "First long side": where the work goes, without a number of it. */
const SIDE =
  /^(?!.*\b(?:each|every|both|rep\w*|inc\w*|dec\w*|instead|only|except)\b)\W*(?:(?:[a-z]+ ){0,4}(?:along|down|up|across) [a-z ]{0,40})?(?:[a-z]+ ){0,2}(?:sides?|edges?|ends?|corners?)(?: \d)?(?: (?:of|on) [a-z ]{1,30})?\W*$/i;

const HARMLESS =
  /^\W*(?:(?:(?:with )?(?:rs|ws|right[ -]side|wrong[ -]side)|work(?:ing)? over (?:the )?(?:yarn )?(?:tail|end)|do not sk(?:ip)? any|place|move|put|pm|mark|stuff|fill|attach|insert|weave|cut|leave|drop|carry|sew|pull|tighten|close)\b[^\d]{0,60}|[^\d\s]{0,12})$/i;

/** Talk with such words in it may make more stitches of it, or fewer. */
const CHANGES =
  /\b(?:each|every|others?|skip\w*|sk|miss\w*|inc\w*|dec\w*|twice|thrice|times|rep\w*|instead|except|omit\w*|more|less|fewer|add\w*|extra|between|both|evenly|only)\b|\d(?!\d*(?:st|nd|rd|th)\b)/i;

/** "(eyelet row)", "(right side)". */
const isName = (words: string): boolean => /^\([a-z -]{1,24}\)$/i.test(words) && NAMES.test(words);

const NAMES = /\b(?:row|round|rnd|side)\)$/i;

/** "Inc 8 sts evenly", "36 sc evenly along side": how many is said, though not where. */
const isPlainWork = (
  { evenly, n, stitch, place, alsoIn }: WorkStep,
  isPlainPlace: (place: Place) => boolean,
): boolean =>
  (!evenly || (n !== null && SPREAD.has(stitch.shape))) &&
  [place, ...alsoIn].every((each) => each === null || isPlainPlace(each));

const SPREAD: ReadonlySet<string | null> = new Set(['one', 'increase', 'together']);

/** Work into a row named by its number leaves open what becomes of the edge. */
const isAlongRow = ({ row, until }: Place): boolean => row === null && until?.kind !== 'length';
