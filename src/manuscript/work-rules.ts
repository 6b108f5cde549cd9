/** When a line is work: whether it opens an instruction, or goes on with the one above. */

import {
  mayLeadWork,
  NO_VOCABULARY,
  opensSeam,
  readInstruction,
  readsAsWork,
  startsInstruction,
  startsWithLabel,
} from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { endsWithCount, isDigitCode, opensSentence } from './line-shapes.ts';
import { DIGITS, LETTERS, type Opening, opening, opensAs } from './opening.ts';
import { goesOnAt, type Open, type Scan, type Starts } from './scan.ts';
import { isSizesLine } from './sizes.ts';
import { mayHold, needs } from './trigrams.ts';

/** Among notes a label needs its colon: "Rnd 4 is worked in back loops" is a remark. */
const hasLabelEnd = (text: string, from: number, to: number): boolean =>
  /^(?:[^,;]{1,40}?[:.)|=–—]|(?:(?:row|rnd|round|rd) ?\d{1,3}|\d{1,3}(?:st|nd|rd|d|th) (?:row|rnd|round|rd)s?) ?- ?[\da-z(*]|\d{1,3} - (?:ch|sc|hdc|dc|tr|htr|sl st|sk|skip|work|working|\*))/i.test(
    text.slice(from, Math.min(to, from + 44)),
  );

export function mayHoldRow(scan: Scan, { from, to }: Span): boolean {
  const { options } = scan;
  if (scan.section !== 'work' && options.titles === 'headings') {
    return scan.section !== 'notes' && hasLabelEnd(scan.text, from, to);
  }
  if (scan.section === 'notes' && isNumberedNote(scan.text, from, to)) return false;
  if (scan.section !== 'work') return hasLabelEnd(scan.text, from, to);
  return !isInProse(scan, from) || hasColon(scan.text, from, to);
}

/** "2. When joining rounds, skip the beginning ch-1.": a note of a list, for it has no count as rows of lists have. */
const isNumberedNote = (text: string, from: number, to: number): boolean =>
  /^\d{1,2}[.)]\s/.test(text.slice(from, from + 5)) && !endsWithCount(text, from, to);

/** Wrapped prose may break before "Rnd 10. Sew on the loop."; a colon is seldom behind it. */
const hasColon = (text: string, from: number, to: number): boolean =>
  /^[^,;.]{1,40}?:/.test(text.slice(from, Math.min(to, from + 44)));

/** Shares of words that are notation (`readsAsWork`), tried on invented text of both kinds. */
const LIKELY = 0.6;
const SURE = 0.75;
const SOME = 0.34;

/** Whether a line goes on with the instruction or definition above it. */
/** "… 2dc" and below it "Into next st*, …": the sentence goes on. */
const CLAUSE: Opening = opening('ifa', 8, /^(?:into|from|around|across)\b/i);

const isBroken = (text: string, { from, to }: Span): boolean =>
  /[a-z0-9]\s*$/i.test(text.slice(Math.max(from, to - 8), to));

export function continues(scan: Scan, { from, to }: Span, starts: Starts): boolean {
  const { text, open, options } = scan;
  if (!open || scan.afterBlank) return false;
  if (open.kind === 'prose') return false;
  if (open.kind === 'definition') return open.bare || definitionGoesOn(scan, open, from, starts);
  if (opensAs(ENDS_ROW, text, from, text.length)) return true;
  if (opensAs(CLAUSE, text, from, text.length) && isBroken(text, open)) return true;
  if (isNoteBelow(text, from, to) || isOther(text, from, to)) return false;
  if (opensSeam(text, from, to)) return false;
  if (opensAs(MADE_TWICE, text, from, text.length)) return false;
  if (TELLS_NEXT.test(text.slice(from, from + 60)) && endsWithCount(text, open.from, open.to))
    return false;
  if (opensSentence(text, from) && endsWithCount(text, open.from, open.to)) {
    if (starts === 'command' || starts === 'likely' || NAMED_LINE.test(text.slice(from, from + 40)))
      return false;
  }
  // "Fasten off." above "For the strap, ch 20.": another piece.
  if (starts === 'command' && CHAINS.test(text.slice(from, from + 60)) && isFastened(text, open))
    return false;
  // "Fasten off." above "Skip center 7 sts, join yarn in next st, …": the other side.
  if (starts !== null && OTHER_SIDE.test(text.slice(from, from + 90)) && isFastened(text, open))
    return false;
  if (isRowOfList(scan, open, { from, to }, starts)) return false;
  if (isBehindOrder(text, open, { from, starts })) return false;
  if (starts === 'command' && isNextRound(text, open, from)) return false;
  if (starts === 'command' && turnsToNext(text, open, { from, to })) return false;
  if (options.layout === 'written' || starts !== null) return true;
  if (goesOnAt(scan, from)) return true;
  return readsOn(text, from, to);
}

/** "The next few rounds are worked in the third loop." below a counted row: talk of those that follow. */
const TELLS_NEXT =
  /^(?:the|these|in the|for the) (?:next|following|remaining) (?:\w+ )?(?:rounds?|rows?|rnds?) (?:are|is|will|should|you|we)\b/i;

/** "Ch 2, hdc across, turn" below "Repeat row 3 until you have 20 rows": a row of its own, without a label. */
function isBehindOrder(
  text: string,
  open: Open,
  { from, starts }: { readonly from: number; readonly starts: Starts },
): boolean {
  if (open.from !== open.lineFrom || !/[Rr]/.test(text[open.from] ?? '')) return false;
  if (!REPEATS_ROWS.test(text.slice(open.from, open.from + 24))) return false;
  const begins = text.slice(from, from + 24);
  return REPEATS_ROWS.test(begins) || (starts === 'command' && BEGINS_ROW.test(begins));
}

const REPEATS_ROWS =
  /^(?:rep|rpt|repeat)\.? (?:the )?(?:last |previous |these )?(?:\d{1,2} )?(?:rows?|rnds?|rounds?)\b/i;
const REPEATS_NAMED = /^(?:Rep|Rpt|Repeat)\.? (?:Rows?|Rnds?|Rounds?) \d/i;
const BEGINS_ROW = /^(?:ch|chain) ?\d\b[^.]/i;

/** "Ch 2, dc in each st" below "… sl st in 1st sc to close": another round without a label. */
const isNextRound = (text: string, open: Open, from: number): boolean =>
  opensAs(OPENS_ROUND, text, from, text.length) &&
  CLOSES_ROUND.test(text.slice(Math.max(open.lineFrom, open.to - 60), open.to)) &&
  !startsWithLabel(text, open.from, open.to);

/** "Chain 3 and turn. Make a dc in the first st …" below a sentence of work: the next row, without a label. */
function turnsToNext(text: string, open: Open, { from, to }: Span): boolean {
  if (!opensAs(OPENS_ROUND, text, from, text.length)) return false;
  const above = text.slice(Math.max(open.lineFrom, open.to - 20), open.to);
  // "Ch 2, hdc across, turn" below "Ch 2, hdc across, turn": each a row.
  const turned = ENDS_IN_TURN.test(above) && WORKS_ON.test(text.slice(from, to));
  const told = /[.)\]]$/.test(above) && opensAs(TURNS_AND_WORKS, text, from, text.length);
  return (turned || told) && !startsWithLabel(text, open.from, open.to);
}

const ENDS_IN_TURN = /[,;.] ?turn(?: work)?\.?$/i;
const WORKS_ON = /^(?:ch|chain) ?[1-4]\b.*\b(?:across|in each|to end|turn)\b/i;

const TURNS_AND_WORKS: Opening = opening(
  'c',
  120,
  /^(?:ch|chain) ?\d,?(?: and| then)? turn(?: (?:your |the )?work)?[.,;] .*\b(?:sc|dc|hdc|htr|tr|crochets?|trebles?)\b/i,
);

const OPENS_ROUND: Opening = opening('c', 12, /^(?:ch|chain) ?\d/i);
const CLOSES_ROUND =
  /\b(?:to (?:join|close)(?: (?:the )?(?:round|rnd))?|join with (?:an? )?(?:sl ?st|ss|slip stitch) to (?:the )?(?:first|1st) (?:sc|hdc|dc|st|stitch))\.?$/i;

/** "inc x 6 (12)" below "6 sc in magic ring (6)": rows without labels, a line and a count each. */
function isRowOfList(scan: Scan, open: Open, { from, to }: Span, starts: Starts): boolean {
  const { text, options } = scan;
  if (starts === null || options.layout === 'written') return false;
  if (
    opensAs(TWO_IN_EACH, text, from, text.length) &&
    FIRST_ROUND.test(text.slice(open.from, open.to))
  )
    return true;
  const around = AROUND.test(text.slice(Math.max(open.lineFrom, open.to - 20), open.to));
  if (around) {
    return (
      STITCHES.test(text.slice(from, from + 16)) &&
      !goesOnAt(scan, from) &&
      !startsWithLabel(text, open.from, open.to)
    );
  }
  // "… 5 sc in loop, pull tight" above "2 sc in each around."
  if (
    STITCHES.test(text.slice(from, from + 16)) &&
    /\baround\*?\.?$/.test(text.slice(Math.max(from, to - 10), to)) &&
    RING.test(text.slice(open.from, Math.min(open.to, open.from + 80))) &&
    !goesOnAt(scan, from) &&
    !startsWithLabel(text, open.from, open.to)
  )
    return true;
  if (!CLOSED.test(text.slice(Math.max(open.lineFrom, open.to - 70), open.to))) return false;
  // A list with signs goes on by them, and a row of it may have no count.
  const listed = isListed(text, from) && isListed(text, open.from) && open.from === open.lineFrom;
  if (!listed && goesOnAt(scan, from)) return false;
  if (!listed && !CLOSED.test(text.slice(Math.max(from, to - 70), to))) return false;
  return !startsWithLabel(text, open.from, open.to);
}

/** "Rnd 1: Ch 2. 6 sc in second ch from hook." above "2 sc in each st around": the next, without a label. */
const TWO_IN_EACH: Opening = opening('2', 14, /^2 ?(?:sc|hdc|dc) in ea/i);
const FIRST_ROUND =
  /^\W{0,2}(?:rnd|round|row|r) ?1\b[^\n]{0,20}\b\d{1,2} ?(?:sc|hdc|dc) in (?:the )?(?:(?:second|2nd|first|1st) ch\.? from (?:the )?hook|(?:magic )?(?:ring|loop|circle))\.?$/i;

/** "2 sc in each around." closes a round; "*2 sc, sc in next* around." is the next. */
const AROUND =
  /\b(?:around|for \d{1,2} (?:rounds|rnds|rows)|in (?:the )?(?:magic )?(?:ring|loop|circle|mr))\.?$/i;
const RING = /\b\d{1,2} ?(?:sc|hdc|dc) in (?:the )?(?:magic )?(?:ring|loop|circle)\b/i;
const STITCHES = /^[*([]?\s?(?:\d{1,2}\s?)?(?:sc|hdc|dc|tr|inc|dec)(?:\d?tog)?\b/i;

const isListed = (text: string, from: number): boolean =>
  /(?:^|\n)[ \t]*[-•·–*][ \t]+$/.test(text.slice(Math.max(0, from - 12), from));

/** A line that ends with its count, or has only the yarn's end behind it. */
const CLOSED =
  /[([]\s?\d{1,3}(?:\s?(?:sts?|stitches|[sdh]{1,2}c|tr))?\s?[)\]][.\s]*(?:,? (?:cut|fasten|change|switch|do not cut)\b[^.()]{0,40}\.?)?$/i;

const CHAINS = /^(?:[A-Z][^.]{0,40}[,:] ?)?(?:ch|chain|make|with) ?\S/i;

const OTHER_SIDE =
  /^(?:skip|sk|miss|leave)\b[^.]*\b(?:re-?)?(?:join|attach)|^(?:with [RW]S facing, )?(?:skip|sk|miss) (?:the )?(?:next |cent(?:er|re) )?\d|^(?:re-?join|attach)\b/i;

const isFastened = (text: string, open: Open): boolean =>
  /\b(?:fasten|finish|break) off\b[^.;]{0,30}[.;]?$/i.test(
    text.slice(Math.max(open.from, open.to - 60), open.to),
  );

/** Whether the last line of an instruction has a bracket open or a place without its stitch, and no end. */
export function breaksOff(text: string, open: Open): boolean {
  const { to } = open;
  const from = Math.max(open.lineFrom, to - 400);
  if (to <= from || !/[\w,;-]/.test(text.charAt(to - 1))) return false;
  if (WANTS_MORE.test(text.slice(Math.max(from, to - 16), to))) return true;
  let depth = 0;
  for (let at = from; at < to; at++) {
    const sign = text.charCodeAt(at);
    if (sign === OPEN || sign === OPEN_SQUARE) depth++;
    else if (sign === CLOSE || sign === CLOSE_SQUARE) depth = Math.max(0, depth - 1);
  }
  return depth > 0;
}

const OPEN = 40;
const CLOSE = 41;
const OPEN_SQUARE = 91;
const CLOSE_SQUARE = 93;

/** "sc in each of", "skip next", "2 dc in the": words that no clause ends with. */
const WANTS_MORE = /\b(?:in(?:to)?|each|of|(?:skip|sk|miss|of|in|the) next|the)$/i;

/** "3. Weave in ends.", "* The ch 1 does not count as a stitch": beside the rows, and none of them. */
const isNoteBelow = (text: string, from: number, to: number): boolean =>
  opensAs(FINISHES, text, from, text.length) ||
  (text[from] === '*' && (FOOTNOTE.test(text.slice(from, to)) || isStarredTalk(text, from, to)));

/** "*At this point, I like to fasten off.": a sentence in the first person, with no other star. */
const isStarredTalk = (text: string, from: number, to: number): boolean =>
  STARRED_TALK.test(text.slice(from, from + 80)) && !text.slice(from + 3, to).includes('*');

const STARRED_TALK =
  /^\*{1,3}\s?\p{Lu}\p{Ll}+(?: \p{Ll}+){0,3},? (?:I|you|we)(?:['’](?:ll|m|ve|re|d))? (?:like|prefer|can|may|could|will|might|should|want|used?|chose|did|made|am|have)\b/u;

const FINISHES: Opening = opening(
  DIGITS,
  40,
  /^\d{1,2}[.)]\s*(?:weave|sew|block|wash|tie|hide|secure|cut|trim|enjoy|fold|stuff|pin|steam|thread|use (?:your|the|a|an)|turn (?:your|the|it)|line up|lay)\b/i,
);
const FOOTNOTE =
  /^\*{1,3}\s?\p{Lu}[^*;]*\b(?:counts? as|so (?:always|never)|note|remember)\b[^;]*$/u;

/** "Top fold: sc in each st", "First arm - ch 10": a row by name instead of a number. */
const NAMED_LINE = /^\p{Lu}[\p{L}' -]{2,30}(?:\([^)]{1,20}\))?(?::| [–—-]) /u;

/** "Ties (make 2): ch 68 …": another piece. */
const MADE_TWICE: Opening = opening(
  LETTERS,
  40,
  /^\p{Lu}[\p{L}' -]{2,24}\((?:make )?(?:\d|two)\)\s?[:–—-]/iu,
);

/** The row above is not over before the yarn is cut. */
const ENDS_ROW: Opening = opening('f', 12, /^(?:fasten off|finish off|f\.?o\.?\b)/i);

/**
 * Whether a line that begins with no label belongs to the instruction above, however else it may
 * begin: `takeWords` and `continues` then ask for nothing more.
 */
export function goesOnSurely(scan: Scan, { from }: Span): boolean {
  const { text, open, options } = scan;
  if (open?.kind !== 'instruction') return false;
  if (open.bare) return true;
  if (scan.afterBlank) return false;
  if (opensSentence(text, from) && endsWithCount(text, open.from, open.to)) return false;
  if (isNextRound(text, open, from)) return false;
  if (options.layout === 'written' && options.titles === 'headings') return true;
  if (goesOnAt(scan, from) || dangles(text, open.to) || closesBracket(text, open.to, from))
    return true;
  if (placesStitch(text, from, open.to)) return true;
  return isTail(text, from) && !endsWithCount(text, open.from, open.to);
}

/**
 * "… 52 (68," above "84) sts", "Repeat" above "rows 1 & 2": what looks like a label closes the
 * clause of the line above.
 */
export function isHeldOpen({ text, open, afterBlank }: Scan, { from }: Span): boolean {
  if (open?.kind !== 'instruction' || afterBlank || open.bare) return false;
  const end = text.slice(Math.max(open.from, open.to - 8), open.to);
  if (REFERRING.test(end)) return !OPENS_ROW.test(text.slice(from, from + 30));
  return (
    isDigitCode(text.charCodeAt(from)) &&
    /^\d{1,4}[)\]]/.test(text.slice(from, from + 5)) &&
    /[([][^)\]]*[,;-]$/.test(text.slice(Math.max(open.from, open.to - 40), open.to))
  );
}

/** "Round 5: …" below "… in next st. Repeat": the row above ended with the word. */
const OPENS_ROW = /^[a-z]+\.?[\s\d,&–-]*(?:(?:to|and)\s*\d+\s*)?(?::|[–-]\s*[a-z])/i;

const REFERRING = /[\s.,](?:rep|repeat|rpt|as|like|of)$/i;

/** "… hdc in first ch, join to", "Slip" above "stitch", "(Beginning" above "cluster, ch 3": no row ends so. */
function dangles(text: string, to: number): boolean {
  const end = text.slice(Math.max(0, to - 30), to);
  return DANGLING.test(end) || BROKEN_NAME.test(end);
}

/** "(this keeps your sides" above "even)": the bracket ends on this line. */
function closesBracket(text: string, to: number, from: number): boolean {
  const close = text.slice(from, from + 60).search(/[()\n]/);
  if (close < 0 || text[from + close] !== ')') return false;
  return /\([^()]{0,80}$/.test(text.slice(Math.max(0, to - 80), to));
}

/** The first word of a stitch's name, or a bracket with no more than that in it. */
const BROKEN_NAME =
  /(?:^|[\s,;:([])(?:slip|half|half double|double|treble|triple|single)$|[([](?:beg(?:inning)?|work|\d{1,2})$/i;

const DANGLING = /(?:,|[\s,;](?:in|into|to|of|the|an?|and|from|with|over|next|each|from \*))$/i;

/** "around (12)" below "2 sc in each st": the end of a clause, in small letters. */
const isTail = (text: string, from: number): boolean =>
  isSmall(text.charCodeAt(from)) && TAIL.test(text.slice(from, from + 12));

/** "Into next st*, repeat from *" below "*ch 1, dc in next st, 2 dc": a stitch waits for its place. */
const placesStitch = (text: string, from: number, to: number): boolean =>
  /^In(?:to)? (?:the )?(?:next|each|same|first|last)\b/.test(text.slice(from, from + 20)) &&
  /[\s\d](?:sc|dc|hdc|htr|tr|dtr)$/i.test(text.slice(Math.max(0, to - 8), to));

const isSmall = (code: number): boolean => code >= 97 && code <= 122;

const TAIL =
  /^(?:around|across|sts?|stitch(?:es)?|sp|sps|from|to|times|more|next|in|into|each|of|rounds?|rows?|rnds?)\b/;

/**
 * Whether a line that begins with no label goes on with the paragraph above: where headings name the
 * parts and blank lines end the paragraphs, `takeWords` and `mayBeWork` ask for nothing more.
 */
export const isSurelyProse = ({ open, options }: Scan): boolean =>
  open?.kind === 'prose' && options.layout === 'written' && options.titles === 'headings';

/** Words that refer to the work above and say nothing alone. */
const REFERS = /^(?:rep|repeat|rpt|end|ending|then|skip|join|turn)\b/i;

/** Whether a line of pasted text that opens nothing is work all the same. */
function readsOn(text: string, from: number, to: number): boolean {
  const share = readsAsWork(text, from, to);
  if (share < SOME) return false;
  const isClause = !opensSentence(text, from);
  if (share >= LIKELY && (isClause || REFERS.test(text.slice(from, from + 8)))) return true;
  const work = workIn(text, { from, to });
  return work.steps > 0 && work.lost < 1 / 3;
}

/** The start of a row tells what it is; looking at all of it would read every row twice. */
const START = 120;

/** `startsInstruction` on the first words of a line; a title looks at the line below it first. */
export function startOf({ text, seen }: Scan, from: number, to: number): Starts {
  const end = startTo(text, from, to);
  if (seen.from === from && seen.to === end) return seen.starts;
  seen.from = from;
  seen.to = end;
  seen.starts = startsInstruction(text, from, end);
  return seen.starts;
}

/** Whether it begins with a label. */
export const isLabelled = (text: string, from: number, to: number): boolean =>
  startsWithLabel(text, from, startTo(text, from, to));

function startTo(text: string, from: number, to: number): number {
  if (to - from <= START) return to;
  const end = text.lastIndexOf(' ', from + START);
  return end > from + START / 2 ? end : from + START;
}

/** Another way to do what the row does: told, and not worked as well. */
const OTHER_WAY: Opening = opening(
  '([atf',
  24,
  /^[([]?(?:alternat\w* (?:way|method|start|option|beginning)|alternat(?:iv)?ely|(?:to make (?:it|this)|for a) (?:wider|longer|larger|bigger|smaller|narrower|shorter))\b/i,
);

/** "Continuing from the first panel:" above its rows. */
const GOES_ON_FROM = /^continu(?:e|ing) (?:on )?(?:from|with) [^\d,.;:]{3,40}:$/i;

const isOther = (text: string, from: number, to: number): boolean =>
  opensAs(OTHER_WAY, text, from, text.length) ||
  (text[to - 1] === ':' && to - from < 60 && GOES_ON_FROM.test(text.slice(from, to)));

/** "ch 3, does NOT count as a stitch", "Chain-3 at beginning of row counts as …": said of all rows, and no work. */
const CHAIN_NOTE: Opening = opening(
  'c',
  120,
  /^(?:ch|chain)[ -]?\d,? (?:(?:does|do|never|will never|always) (?:not )?counts?\b(?!.*\b(?:in|into) (?:next|each|the|ring|\d))|(?:at|in|of) (?:the )?(?:beg|start|each|every)[^.;]{0,40}\bcounts?\b|counts? as (?:the |an? |one |1 |first |1st )*(?:[hd]?dc|tr|htr|sc|st|stitch)\W*$)/i,
);

/** "Each round will end with a sl st to the first sc": a sentence about all of them. */
const ROUND_NOTE: Opening = opening(
  'ea',
  40,
  /^(?:each|every|all) (?:rounds?|rows?|rnds?) (?:will|ends?|begins?|starts?|is|are|should)\b/i,
);

/** How a line begins, with a second look at what has no row word: "Start: 7 sc in ring". */
export function startsOf(scan: Scan, { from, to }: Span): Starts {
  const { text } = scan;
  const { length } = text;
  if (isOther(text, from, to)) return null;
  if (isNoteBelow(text, from, to) || opensAs(LEGEND, text, from, length)) return null;
  if (opensAs(CHAIN_NOTE, text, from, to) || opensAs(ROUND_NOTE, text, from, length)) return null;
  const starts = startOf(scan, from, to);
  // "Repeat Row 3 until you have 43 (55) rows for the body": an order, whatever it says behind.
  if (starts === null && scan.sawWork && REPEATS_NAMED.test(scan.text.slice(from, from + 24)))
    return 'command';
  // "Wren, UK terms, 2.5 mm hook. 2dc in next = increase.": what is said of the whole pattern.
  if (starts === 'likely' && TELLS_TERMS.test(text.slice(from, from + 80))) return null;
  if (starts !== 'label' && isFact(scan, from, to)) return null;
  // "FO: pram cover" above the pattern: a finished object, for there is nothing to fasten off yet.
  if (starts === 'command' && !scan.sawWork && opensAs(ENDS_ROW, text, from, length)) return null;
  if (starts === null && opensAs(CLOSES_FLAT, text, from, to)) return 'command';
  if (starts !== 'command' && isItem(scan, { from, to })) return 'command';
  if (starts !== null || scan.section !== 'work' || isStory(text, from, to)) return starts;
  if (!/\d/.test(text.slice(from, to)) || isInProse(scan, from)) return null;
  if (!mayLeadWork(text, from, to)) return null;
  const work = workIn(text, { from, to });
  if (work.lost > 0.6 || (work.strange && !work.isLabelled)) return null;
  return work.steps > 0 && (work.isLabelled || work.starts) ? 'command' : null;
}

/** "- 1sc, join leg - by putting 1sc through … (44)": an item of a list of rows, however much it talks. */
const isItem = ({ text, sawWork, section }: Scan, { from, to }: Span): boolean =>
  sawWork &&
  section === 'work' &&
  isListed(text, from) &&
  ITEM.test(text.slice(from, from + 12)) &&
  endsWithCount(text, from, to);
const ITEM = /^\d{1,3} ?(?:sc|hdc|dc|htr|tr)\b/i;

/** "Rnd 0: *0 sc, 1 dec* = XX sc": how rows are written, with noughts for all numbers. */
const LEGEND: Opening = opening(
  'r',
  60,
  /^(?:r|rnd|rd|row|round)\.? ?0(?: (?:and|to) [^:–]{1,30}?)? ?[:–] ?(?:[*([]*0{1,2} [a-z]|.{0,30}\bXX\b)/i,
);

/** "Flatten the foot and 6 sc through both layers.": the last row of a toy's limb. */
const CLOSES_FLAT: Opening = opening(
  'fp',
  160,
  /^(?:fold|flatten|press|pinch)\b[^.:]{0,60}\b(?:sc|dc|single crochet)\b[^.:]{0,40}\bthrough (?:both|the two) (?:layers|sides|thicknesses)\b/i,
);

const TELLS_TERMS = /\b(?:UK|US|USA|British|American|Australian|English)(?: crochet)? term/i;
/** "Gauge: 12 hdc x 9 rows = 10 cm", "S (M, L)": about the piece, though it has stitch words. */
function isFact({ text, options }: Scan, from: number, to: number): boolean {
  const line = text.slice(from, Math.min(to, from + LONGEST_START));
  if (mayHold(options.marks, OF_GAUGE) && GAUGE.test(line)) return true;
  if (mayHold(options.marks, OF_SIZE) && SIZE_AND_CHAIN.test(line)) return true;
  return isSizesLine(text, from, to);
}

const OF_GAUGE = needs('gauge', 'tension', '=', ' x 1', ' × 1');
const OF_SIZE = needs(' size');

/** "Gauge: …", "= 10 cm", "4" x 4" = …", "12 sc x 9 rows". */
/** "Adult large size – chain 72": a list of sizes, of which one is worked. */
const SIZE_AND_CHAIN = /^[\w ,/()-]{2,40} size ?[-–—=:] ?(?:ch|chain) ?\d{1,3}\W{0,3}$/i;

const GAUGE =
  /\b(?:gauge|tension)\b\s*[:=–-]|["”″]\s?[x×]\s?\d[^=]{0,4}=|\d (?:sts?|sc|hdc|dc|tr) [x×] \d+ (?:rows|rounds|rnds)\b|=\s*\d+(?:[.,]\d+)?(?:\s*[½¼¾])?\s*(?:["”″]|in\b|inch|cm\b)/i;

/** A longer line without label is a story, unless it has a name and hardly a word that is no work. */
const LONGEST_START = 400;
const isStory = (text: string, from: number, to: number): boolean =>
  to - from > LONGEST_START &&
  !(
    to - from < 4 * LONGEST_START &&
    NAMED_LINE.test(text.slice(from, from + 40)) &&
    readsAsWork(text, from, to) >= SURE
  );

interface WorkFound {
  /** Steps that make or move something. */
  readonly steps: number;
  /** Share of the line that is a remark or was not understood. */
  readonly lost: number;
  readonly isLabelled: boolean;
  /** A chain of so many, or a ring. */
  readonly starts: boolean;
  /** The first words were not understood: a title or a remark with stitch words behind. */
  readonly strange: boolean;
}

function workIn(text: string, { from, to }: Span): WorkFound {
  const { label, steps } = readInstruction(text, from, to, NO_VOCABULARY);
  let made = 0;
  let lost = 0;
  let starts = false;
  for (const step of steps) {
    if (step.kind === 'unread' || step.kind === 'remark') lost += step.to - step.from;
    else made++;
    starts ||= step.kind === 'ring' || (step.kind === 'chain' && step.n !== null);
  }
  return {
    steps: made,
    lost: lost / (to - from),
    isLabelled: label !== null,
    starts,
    strange: steps[0]?.kind === 'unread',
  };
}

/** Pasted lists give each stitch its line; only a wrapped or unfinished one goes on below. */
function definitionGoesOn(scan: Scan, open: Open, from: number, starts: Starts): boolean {
  const { text, options } = scan;
  const last = text[open.to - 1] ?? '.';
  // "sc = sc in BLO" below another line of the key
  if (/^[\w-]{1,8} ?= /.test(text.slice(from, from + 12))) return false;
  if (options.layout === 'written') return starts !== 'command' || !'.!?)'.includes(last);
  return goesOnAt(scan, from) || ',;'.includes(last) || /\p{Ll}/u.test(text[from] ?? '');
}

/** In wrapped prose a line may begin with any word. */
const isInProse = (scan: Scan, from: number): boolean =>
  scan.open?.kind === 'prose' &&
  (scan.options.layout === 'written' || (goesOnAt(scan, from) && !isListed(scan.text, from)));

/** "Using MC, ch 5." above "Row 1 (RS): …": the piece begins, though its title was passed over. */
const isBeforeRowOne = (text: string, from: number, to: number): boolean =>
  to - from < 60 &&
  /^(?:(?:using|with) [^,.]{1,24}, ?)?(?:(?:to )?(?:begin|start)(?: with|[:,])? )?(?:a )?(?:(?:ch|chain)(?: \((?:ch|chain)\))?(?: of)? \d{1,3}|\d{1,3} ch)\b[^.]{0,24}\.?$/i.test(
    text.slice(from, to),
  ) &&
  /^\s*(?:(?:rows?|rnds?|rounds?|r) ?1\b|1st (?:row|rnd|round)|1[.)] )/i.test(
    text.slice(to, to + 40),
  );

/**
 * "Make a slip knot and chain 4 stitches.", "8 dc in mc" above "1. …": so begins a piece, and no
 * material, though its list runs on into the work without a heading.
 */
const OPENS_PIECE =
  /^(?:(?:(?:first|to start|to begin),? ?)?(?:make|tie|start with|begin with) (?:a|your) slip ?knot\b[^.\d]{0,40}\b(?:ch|chain)\b(?: of)? \d|(?:ch|chain) \d{2,3},? or (?:any|customi[sz]e|however|as|until)\b|\d{1,2} (?:sc|hdc|dc|tr) in(?:to)? (?:an? |the )?(?:mc|mr|magic|adjustable)\b)/i;

/** Whether a line without label opens an instruction. */
export function mayBeWork(scan: Scan, { from, to }: Span, starts: Starts): boolean {
  const { text, section, options } = scan;
  if (starts === null) return false;
  const before = starts === 'command' && isBeforeRowOne(text, from, to);
  // "Repeat Row 3 until you have 43 rows" below talk.
  const again =
    scan.sawWork && section === 'work' && REPEATS_NAMED.test(text.slice(from, from + 24));
  if (again && starts !== null) return true;
  if (isInProse(scan, from) && !before) return false;
  if (section === 'work') {
    if (starts === 'command') return true;
    return readsAsWork(text, from, to) >= (options.layout === 'pasted' ? LIKELY : SURE);
  }
  // A list of materials may run on without a blank line; a foundation chain is no material.
  const chain =
    before ||
    (section === 'materials'
      ? /^(?:ch|chain) \d{1,3}\b/i.test(text.slice(from, from + 12))
      : to - from < 24 &&
        /^(?:(?:to )?(?:begin|start)[:,]? )?(?:ch|chain) \d{2,3}(?: sts?| loosely)?[.,;]?$/i.test(
          text.slice(from, to),
        ));
  if (options.titles === 'lines' && OPENS_PIECE.test(text.slice(from, from + 90))) return true;
  const leaves = options.titles === 'lines' && (scan.afterBlank || chain);
  return leaves && starts === 'command' && readsAsWork(text, from, to) >= SURE;
}
