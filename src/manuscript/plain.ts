/**
 * The text without the marks of web pages and Markdown: same length, so that every span holds for
 * both. Bold signs, tags and entities give way to blanks or to the sign that they stand for.
 */
import { isKnownWord } from '../notation/index.ts';
import { withoutLookalikes } from './lookalikes.ts';
import { LIST_OF_WORDS, withOwnWords } from './own-words.ts';
import {
  withoutLabelledSteps,
  withoutRoundTitles,
  withoutStepNumbers,
  withStepReferences,
} from './step-lists.ts';
import { withoutTables } from './tables.ts';
import {
  A_FOREIGN_LETTER,
  A_PICTURE,
  ANY_OTHER_SIGN,
  mayHold,
  type Needs,
  needs,
  type Trigrams,
  trigramsOf,
} from './trigrams.ts';

/** A change of the text, and what must stand in the text for it to be asked. */
type Mend = readonly [needs: Needs, mend: (text: string, marks: Trigrams) => string];

/** A mend of a text that has one of these very words, capitals told from small letters. */
const where = (words: readonly string[], mend: (text: string) => string): Mend => [
  needs(...words),
  (text) => (words.some((one) => text.includes(one)) ? mend(text) : text),
];

/** Lines that begin so, behind one of these signs. */
const lines = (starts: readonly string[], signs = ['', '- ', '* ', '• ']): Needs =>
  needs(...signs.flatMap((sign) => starts.map((start) => `\n${sign}${start}`)));

/** Lines that begin with a figure. */
const FIGURED: Needs = needs('\n1.', '\n1)', '\n1 ', '\n1-', '\n11');

/** A line that is a figure alone. */
const FIGURED_LINE: Needs = needs('\n1\n', '\n11\n');

/** In the order in which they are made: many need what those before them leave. */
const MENDS: readonly Mend[] = [
  [needs('|'), withoutTables],
  [needs(A_PICTURE), (text) => text.replace(PICTURE_SIGNS, blank)],
  where(['_x00'], (text) => text.replace(SHEET_BREAK, as('\n'))),
  [needs('&'), (text) => text.replace(ENTITY, signOf)],
  [needs('<'), (text) => text.replace(TAG, tagGap)],
  [needs(A_FOREIGN_LETTER), withoutLookalikes],
  [needs('lst', 'ist '), withFirst],
  [needs('ch\n', 'ch \n', 'ain\n', 'ain \n'), (text) => text.replace(BROKEN_CHAINS, onOneLine)],
  [needs('ing\n', 'ing \n'), (text) => text.replace(BROKEN_NAMES, onOneLine)],
  [needs('\ntotal'), (text) => text.replace(BROKEN_TOTALS, onOneLine)],
  where(['on which'], (text) => text.replace(ON_WHICH, as('in same st'))),
  [needs('\nrl:', '\nrl.', '\nri:', '\nri.'), (text) => text.replace(SCANNED_LABEL, '$11')],
  [needs('s1 st'), (text) => text.replace(SCANNED_SLIP, 'l ')],
  [needs('1 st r', '2 nd r', '3 rd r', '4 th r'), (text) => text.replace(SPACED_ORDINALS, '$1$2 ')],
  [needs('.h.', '. h.'), (text) => text.replace(YARN_OVERS, as('yoh'))],
  where([']('], (text) => text.replace(LINK, linkText)),
  [needs('\\'), (text) => text.replace(/\\([*_#()[\]~`.\-\\])/g, ' $1')],
  [needs(['"', 'from ']), (text) => text.replace(QUOTED_REPEATS, '*$1$2*')],
  [needs('\\'), (text) => text.replace(/\\'s\b/g, "'s ")],
  [needs('"'), (text) => text.replace(QUOTED, unquoted)],
  where(['(see ', '(See '], (text) => text.replace(REFERENCE, blank)),
  [needs(ANY_OTHER_SIGN), (text) => text.replace(/\u2044/g, '/')],
  where(['nt he '], (text) => text.replace(/\b(in|on)t he\b/gi, '$1 the')),
  where(['*:'], (text) => text.replace(/(?<=[a-z])\*{1,2}(?=: )/g, blank)),
  where(['Rs '], (text) => text.replace(PLURAL_LABEL, '$1R ')),
  where(['both in', 'very first', 'same next'], (text) => text.replace(SAME_NEXTS, padded)),
  where(['nsert '], (text) => text.replace(INSERT_YARN, as('join'))),
  [needs('u.k', 'u. k', 'u.s', 'u. s'), (text) => text.replace(COUNTRY, country)],
  [needs('cin ', 'trin '), (text) => text.replace(GLUED_IN, '$1 in')],
  where(['un-'], (text) => text.replace(/\b(un)-(worked)\b/gi, '$1$2 ')),
  [needs('1.1'), (text) => text.replace(GLUED_LABELS, '$1)').replace(GLUED_NUMBERS, unglued)],
  [lines(['photo', 'pic', 'image', 'fig'], ['', '[', '(']), (text) => text.replace(PICTURE, blank)],
  [[...FIGURED, ...LIST_OF_WORDS], withoutListNumbers],
  [lines(['for r', 'in r', 'optional r']), (text) => text.replace(LED_LABELS, blank)],
  [needs('-\n'), withWholeWords],
  [needs('-see ', '- see ', '-read ', '- read '), withoutDashes],
  [
    needs('.jp', '.png', '.gif', '.webp', '.heic', 'img', 'dsc', 'pxl'),
    (text) => text.replace(PICTURE_NAME, blank),
  ],
  [needs('\n- ', '\n* ', '\n• '), withoutRoundTitles],
  [needs('\n1. ', '\n1) ', 'step 1'), withoutStepNumbers],
  [needs(['step 1', 'repeat step']), withStepReferences],
  [needs('bo '), (text) => text.replace(BIND_OFF, 'FO')],
  where([' 1st'], (text) => text.replace(SKIPPED_ONE, '$1 1  ')),
  where([') space of'], (text) => text.replace(SPACE_OF_JOIN, as('same space'))),
  where(['in that s', 'to that s', 'in this s', 'to this s'], (text) =>
    text.replace(IN_THAT, inSame),
  ),
  where(['together to'], (text) => text.replace(JOINED_TOGETHER, '$1         ')),
  where(['turning chain'], (text) => text.replace(TURNING_CHAINS, turningChain)),
  [needs('multiple of:'), (text) => text.replace(MULTIPLE_BELOW, multipleBelow)],
  [needs('xample'), (text) => text.replace(EXAMPLES, inkless)],
  where(['a slip'], (text) => text.replace(SLIP_KNOTS, inkless)),
  [needs('tart in the '), (text) => text.replace(STARTS_IN, startingIn)],
  [needs('*ch'), (text) => text.replace(STARRED_NOTES, ' ')],
  [
    needs('page 1 of', 'page 1/', '\n©', '\n(c)', '\ncopyright'),
    (text) => text.replace(PAGE_FEET, blank),
  ],
  [FIGURED_LINE, withoutPageNumbers],
  where(['ork off '], (text) => text.replace(WORKED_OFF, workedOff)),
  [needs('\n* '), (text) => text.replace(STAR_LISTS, dashed)],
  where(['from +'], (text) => text.replace(PLUS_REPEAT, plusAsStar)),
  [needs('*', '_'), withoutEmphasis],
];

/** The pattern as read; the manuscript keeps and shows the text as written. */
export const plainText = (text: string): string => plainOf(text).plain;

/** The same with what stands in it; the marks are good until those of another text are made. */
export function plainOf(text: string): { readonly plain: string; readonly marks: Trigrams } {
  let plain = text;
  let marks = trigramsOf(plain);
  for (const [need, mend] of MENDS) {
    if (!mayHold(marks, need)) continue;
    const mended = mend(plain, marks);
    if (mended === plain) continue;
    plain = mended;
    marks = trigramsOf(plain);
  }
  return { plain, marks };
}

/** "(ch 4, skip 1st., sc in next st)": one stitch, whose stop belongs to "st." */
const SKIPPED_ONE = /\b(skip|sk|miss) 1st(?=[.,;)])/gi;

/** "Sc into that (ch 1 + dc) space of the previous round": the one that the join made, in which the hook stands. */
const SPACE_OF_JOIN =
  /\bthat \((?:1 ?)?ch ?\d? ?(?:\+|and|&) ?(?:1 ?)?[hdst]{1,2}[cr]\) space of (?:the )?(?:previous|last) (?:round|rnd)/gi;

/** "Sc in any stitch, 1 more sc in that stitch": the one just named. */
const IN_THAT =
  /\b(in(?:to)?) (?:(?:that|this) same (?=(?:st|stitch|sp|space)\b)|that (?=(?:st|stitch)\b(?! (?:of|where|you|we)\b))|(?<=all in(?:to)? )(?:that|this) (?=(?:sp|space)\b))/gi;
const inSame = (whole: string, into: string): string => `${into} same `.padEnd(whole.length);

/** "Ch 6 and sl st together to form a ring" */
const JOINED_TOGETHER =
  /\b(sl ?st|ss|slip stitch) together(?= to (?:form|make) an? (?:ring|circle|loop))/gi;

/** "Round 9 even, BO weave in end": bound off, and no bobble. */
const BIND_OFF = /\bBO(?= (?:and |then )?(?:weave|leav|cut|sew|hide|tie)[a-z]*\b)/g;

/** Small pictures before a line, "✨ Round 2:", "✔ Total: 12"; those that serve as list signs stay. */
const PICTURE_SIGNS =
  /(?:[\u2600-\u2664\u2666-\u2712\u2714-\u273e\u2741-\u2755\u2757-\u27bf]|[\ud83c-\ud83e][\udc00-\udfff])\ufe0f?/g;

/** "Work 3 turning chains, 1 dc in the first stitch": the chain at a round's start. */
const TURNING_CHAINS = /\b(?:work|make|do|crochet) ([1-5]) turning chains?(?= ?[,.;])/gi;

const turningChain = (whole: string, n: string): string => `ch ${n}`.padEnd(whole.length);

/** "- Chain a multiple of:" above "- 6 + 2": one sentence. */
const MULTIPLE_BELOW = /(?<=\bmultiple of):[ \t]*\r?\n[ \t]*(?:[-•*] )?(\d[^\r\n]*)/g;

const multipleBelow = (whole: string, n: string): string => ` ${n}`.padEnd(whole.length);

/** "Example:" above "- 26 chains": lengths that the multiple gives, of which none is the row's. */
const EXAMPLES =
  /^[ \t]*(?:For )?[Ee]xamples?:?(?:(?:[ \t]*\d{1,3},?)+ chains?[ \t]*$|[ \t]*\r?\n(?:[ \t]*[-•*] \d{1,3} ch(?:ain)?s?[ \t]*(?:\r?\n|$))+)/gm;

/** "Make a slip knot. Chain a multiple of 6": a loop on the hook, and no ring. */
const SLIP_KNOTS =
  /(?:make|tie) a slip ?knot(?: on (?:your|the) hook)?(?:\.|,| and|[ \t]*\r?\n[ \t]*[-•*])\s*(?:then )?(?=ch(?:ain)? (?:a |any |\d{2}))/gi;

/** "Start in the 4th chain from hook. Work 1 dc in each chain": where the stitches begin. */
const STARTS_IN = /\bStart in the (\d(?:st|nd|rd|th) ch(?:ain)? from (?:the |your )?hook)[.,] /g;

const startingIn = (whole: string, place: string): string =>
  `Starting in ${place}, `.padEnd(whole.length);

/** "Ch 2. *Ch 2 does not count as a st. 10 dc in ring.": the star of a footnote, to which nothing goes back. */
const STARRED_NOTES = /\*(?=ch(?:ain)?[-. ]{0,2}\d (?:does|do|will|counts?)\b)/gi;

/** "Page 3 of 5    (c) Somebody", "© 2019 Somebody": the foot of a page, which may stand within a row. */
const PAGE_FEET =
  /^[ \t]*(?:(?:[^\n\d]{0,60}[ \t|–-])?page \d{1,3} ?(?:of|\/) ?\d{1,3}(?:[ \t|–-][^\n]{0,80})?|(?:©|\(c\)|copyright\b)(?![^\n]*\d ?(?:sts?|sc|dc|hdc|tr)\b)[^\n]{3,80})[ \t]*$/gim;

const NUMBER_LINES = /^[ \t]*(\d{1,3})[ \t]*$/gm;
const FEWEST_PAGES = 3;
/** Between two such numbers; a list has its numbers nearer. */
const FEWEST_LINES = 3;

/**
 * Lines that are one figure, each one more than the one before: the numbers of the pages, which would be taken
 * for counts of the rows above them. Two may be counts.
 */
function withoutPageNumbers(text: string): string {
  const lines = [...text.matchAll(NUMBER_LINES)];
  const first = Number(lines[0]?.[1]);
  if (lines.length < FEWEST_PAGES || first > 2) return text;
  const isPage = (line: RegExpExecArray, i: number): boolean => {
    const above = text.slice(lines[i - 1]?.index ?? 0, line.index).split('\n').length - 1;
    return Number(line[1]) === first + i && (i === 0 || above > FEWEST_LINES);
  };
  if (!lines.every(isPage)) return text;
  return text.replace(NUMBER_LINES, blank);
}

/** "Work off the next 2 sc as 1 sc (a dec)", as old leaflets have it. */
const WORKED_OFF =
  /\b[Ww]ork off (?:the )?(?:next )?([23]) (sc|dc|tr) as (?:1|one) \2\b(?: ?\(?(?:an? )?(?:1 )?dec(?:rease)?(?: made)?\)?)?/g;
const workedOff = (whole: string, n: string, stitch: string): string =>
  `${stitch}${n}tog`.padEnd(whole.length);

/** "* Ch 1", "* 2 dc in each st" below each other: the signs of a list, for nothing goes back to them. */
const STAR_LISTS = /(?:^[ \t]*\* [^*\n]*(?:\n|$)){2,}/gm;
const dashed = (list: string): string => list.replace(/^([ \t]*)\* /gm, '$1- ');

/** "Rs 2-11: ch 1, turn": rows, by one letter. */
const PLURAL_LABEL = /^([ \t]*)Rs(?= \d{1,3} ?(?:[-–&]|to|and) ?\d{1,3}[:.])/gm;

/** "1 sc and 1 dc both in the same next stitch", "in the very first stitch": words that say no more. */
const SAME_NEXTS =
  /\b(?:both )?in(?:to)? (?:the )?same (next|very first) (?=st)|\bboth (in(?:to)? (?:the )?same) (?=st|place|sp)|\b(?:very )(first) (?=st)/gi;

const padded = (whole: string, next?: string, same?: string, first?: string): string =>
  (next ? `in ${next.split(' ').at(-1)} ` : `${same ?? first} `).padEnd(whole.length);

/** "Count 5 sts from the start and insert new yarn": it is joined; a hook is inserted else. */
const INSERT_YARN =
  /\binsert(?=(?: the| your| a)? (?:(?:new|next|other|contrasting|main) )?(?:yarn|colou?r)\b)/gi;

/** "2. Round 2: …", "6-9. Rounds 6-9: …": the number of a web page's list before a row's own label. */
const LISTED_LABEL =
  /^[ \t]*\d{1,3}(?: ?[-–] ?\d{1,3})?(?:[.)](?:[ \t]+|[ \t]*\r?\n[ \t]*)|[ \t]{2,})(?=(?:round|rnd|row)s? ?\d)/gim;

/** "1. The Foundation Chain" above "2. Row 1: …": an item of the same list that names what stands below it. */
const LISTED_TITLE =
  /^[ \t]*\d{1,2}[.)][ \t]+(?:The |Your )?(?:Foundation|Starting|Base)(?: Chain| Row)?[ \t]*$/gim;

/** What every such text has, found sooner than its lines. */
const NUMBERED_LABEL = /[.)]\s+r(?:ound|nd|ow)s? ?\d/i;

/**
 * The designer's own words read as the trade's; before that, where rows have labels, the numbers of their
 * list give way.
 */
function withoutListNumbers(text: string, marks: Trigrams): string {
  const ownWords = mayHold(marks, LIST_OF_WORDS) ? withOwnWords : (same: string) => same;
  if (!mayHold(marks, FIGURED) || !NUMBERED_LABEL.test(text)) return ownWords(text);
  return ownWords(withoutLabelledSteps(text))
    .replace(LISTED_LABEL, inkless)
    .replace(LISTED_TITLE, inkless);
}

/** "U.K. terms", "U.S.A. terminology" */
const COUNTRY = /\bU\. ?([KS])(?:\. ?A)?\b\.?(?= )/g;
const country = (whole: string, land: string): string => `U${land}`.padEnd(whole.length);

/** "2 scin next st" */
const GLUED_IN = / ((?:[sdh]|hd|ed|es)c|h?tr)in(?= (?:next|same|each|the|first|last)\b)/g;

/** "7.36sc": the number of the list's next row, with no blank behind its stop. */
const GLUED_LABELS = /^([ \t]*(?:[-•*] )?\d{1,2})\.(?=\d{1,3} ?(?:sc|hdc|dc|inc|dec)\b)/gm;

/** "9.7 sc, inc, …" in a list of rows: its number, and seven sc; told by the number of the row before. */
const GLUED_NUMBERS =
  /^[ \t]*\d{1,3}\.\d{1,3} ?(?:sc|hdc|dc|htr|tr|sl ?st|ch|inc|dec|blo|flo)\b/gim;

function unglued(whole: string, at: number, text: string): string {
  const before = text.slice(Math.max(0, at - 300), at).split('\n');
  const above = before.findLast((line) => /^[ \t]*\d/.test(line)) ?? '';
  const [, first, last] = /^[ \t]*(\d{1,3})(?: ?[-–] ?(\d{1,3}))?[.):]/.exec(above) ?? [];
  const number = Number.parseInt(whole, 10);
  return Number(last ?? first) === number - 1 ? whole.replace('.', ':') : whole;
}

/** "For Round 3: …", "In Rnd 2: …": the word before a row's label, told by the colon behind it. */
const LED_LABELS =
  /^[ \t]*(?:[-–•*][ \t]+)?(?:(?:for|in)[ \t]+(?=(?:round|rnd|row)s?[ \t]?\d[\d \t–-]{0,8}:)|optional[ \t]+(?=(?:round|rnd|row)s?[ \t]?\d{1,3}[ \t]*[:–-]))/gim;

/** "Beginning" above "cluster in ring": a narrow column breaks within the name of a stitch. */
const BROKEN_NAMES =
  /\b(?:beginning|starting)[ \t]*\r?\n[ \t]*(?=(?:cluster|popcorn|shell|puff|bobble|chain)\b)/gi;

/** "Total" above "12 sc, 4 hdc." */
const BROKEN_TOTALS = /^[ \t]*Total:?[ \t]*\r?\n[ \t]*(?=[([]?\d{1,4}\b[^\n]{0,60}$)/gm;

const onOneLine = (whole: string): string => whole.replace(/[\r\n]/g, ' ');

const blank = (whole: string): string => ' '.repeat(whole.length);

/** Other words in the room of what was found. */
const as =
  (words: string) =>
  (whole: string): string =>
    words.padEnd(whole.length);

/** The same with its line ends. */
const inkless = (whole: string): string => whole.replace(/[^\r\n]/g, ' ');

/** "join (see Pattern Notes) in 3rd ch", "beg cl (see Special Stitches) in same sp": where to look it up. */
const REFERENCE =
  /\(see (?:the )?(?:pattern |special |stitch )?(?:notes?|stitch(?:es)?|guide|illustrations?|photos?|pictures?|charts?|diagrams?|abbreviations?|page \d+)\)/gi;

/** "IMG_2041.jpeg", "DSC01234", "img_512Row 3: …": what a picture leaves behind when a page is copied. */
const PICTURE_NAME =
  /^[ \t]*(?:(?:[\w().%-]{1,60}\.(?:jpe?g|png|gif|webp|heic)|(?:IMG|DSC[NF]?|PXL)_?\d{3,}\w*)[ \t]*$|(?:IMG|DSC[NF]?|PXL)_?\d{3,}(?=R(?:ow|nd|ound)\b))/gim;

/** "+ hdc in next st, ch 1 + repeat from + to + around": a line in which plus signs do as stars. */
const PLUS_REPEAT = /^.*\b(?:rep|rpt|repeat) from \+.*$/gim;

const plusAsStar = (line: string): string => line.replace(/(?<=^|\s)\+(?=\s)/g, '*');

/** "\"skip 3 ch, 9 dc into next ch; rep from \" to end": a scanner's quotation marks for stars. */
const QUOTED_REPEATS = /["“”](\s?)(?=\w)([^"“”*\n]{3,200}?\brep(?:eat)?\.? from )["“”*]/gi;

/** 5 “petals”: quotation marks around one word; those of inches stand behind a figure. */
const QUOTED = /["“”]([A-Za-z][A-Za-z-]{0,24})["“”]/g;

/** What stands before is looked at last: quotation marks are few, and found at once. */
const unquoted = (whole: string, word: string, at: number, text: string): string =>
  at === 0 || /[\s(,]/.test(text[at - 1] ?? '') ? ` ${word} ` : whole;

/** "join-" above "ing": a narrow column breaks words of the trade. */
const BROKEN_HEAD = /\b[A-Za-z]{2,12}$/;
const BROKEN_TAIL = /^[a-z]{2,10}\b/;

/** Joined by signs that say nothing, where both halves make a word and one alone makes none. */
function withWholeWords(text: string): string {
  let plain = '';
  let done = 0;
  for (let at = text.indexOf('-\n'); at >= 0; at = text.indexOf('-\n', at + 2)) {
    const [head] = BROKEN_HEAD.exec(text.slice(Math.max(0, at - 13), at)) ?? [];
    const [tail] = BROKEN_TAIL.exec(text.slice(at + 2, at + 13)) ?? [];
    if (!head || !tail || !isKnownWord((head + tail).toLowerCase())) continue;
    if (isKnownWord(tail) && isKnownWord(head.toLowerCase())) continue;
    plain += `${text.slice(done, at)}\u00AD\u00AD`;
    done = at + 2;
  }
  return done === 0 ? text : plain + text.slice(done);
}

/** "1 relief dc – see above – around next dc": dashes that part a reference from the work. */
const BETWEEN_DASHES =
  /(?<=\s)[-–—](?= ?(?:see|read|refer|remember)\b)([^-–—.;,()\n]{3,50})(?<=\s)[-–—](?=\s(?:in|into|around|over|on|to|from|next)\b)/gi;

function withoutDashes(text: string): string {
  return /[-–—] ?(?:see|read) /i.test(text) ? text.replace(BETWEEN_DASHES, '($1)') : text;
}

/** A spreadsheet's escape for a line end or another sign that is not printed. */
const SHEET_BREAK = /_x00[01][\dA-F]_/gi;

/** "Photo 3", "Picture 2: increases", "[image]" on a line of its own: no work, though a row stands around it. */
const PICTURE =
  /^[ \t]*[[(]?(?:photo|picture|pic|image|figure|fig)s?\b\.?(?: ?#?\d{1,3})?(?:\s?[:.–—-][^\d\n]{0,60})?[\])]?[ \t]*\r?$/gim;

const ENTITY = /&(?:#(\d{1,6})|#x([\da-f]{1,5})|([a-z]{2,8}\d{0,2}));/gi;

const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  times: '×',
  ndash: '–',
  mdash: '—',
  hellip: '…',
  lsquo: '‘',
  rsquo: '’',
  ldquo: '“',
  rdquo: '”',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  bull: '•',
  middot: '·',
  deg: '°',
  dagger: '†',
  minus: '−',
  shy: '\u00AD',
};

function signOf(whole: string, decimal?: string, hex?: string, name?: string): string {
  const code = decimal ? Number(decimal) : hex ? Number.parseInt(hex, 16) : 0;
  const sign = name
    ? NAMED[name.toLowerCase()]
    : code > 0 && code < 0xd800
      ? String.fromCharCode(code)
      : '';
  return sign ? sign.padEnd(whole.length) : whole;
}

const TAG = /<\/?(br|p|b|strong|em|i|u|li|ul|ol|div|span|h[1-6]|tr|td|table|hr)\b[^<>\n]{0,120}>/gi;
const BREAKS = /^(?:br|p|li|ul|ol|div|h[1-6]|tr|hr)$/i;

const tagGap = (whole: string, name: string): string =>
  (BREAKS.test(name) ? '\n' : ' ').padEnd(whole.length);

/** "lst Row", "2lst rnd", "in lst dc", "Ist leg": a scanner's l or I for a 1. */
const SCANNED_FIRST =
  /\b(\d?)[lI]st(?= (?:rows?|rnds?|rounds?|s ?c|d ?c|h ?d ?c|tr|ch|st|sp|loop|lp|petal|leg|arm|corner|and)\b)/gi;

/** The words are all in small letters or have one capital: "LIST ROW" has none of them. */
function withFirst(text: string): string {
  const isScanned = /\dlst|\blst/.test(text) || text.includes('Ist ');
  return isScanned ? text.replace(SCANNED_FIRST, '$11st') : text;
}

/** "Chain" with its number on the line below, as narrow columns break it. */
const BROKEN_CHAINS = /^[ \t]*(?:ch|chain)[ \t]*\r?\n[ \t]*\d{1,3}(?![\d.):])/gim;

/** "1tr into tr on which 4ch stands": the stitch beneath the start chain. */
const ON_WHICH =
  /(?:\b(?:into|in) (?:the )?(?:tr|dc|d\.c\.|htr|hdc|st|stitch) ?\r?\n? ?)?\bon which (?:the )?\d+ ?ch\.? stands?\b/gi;

/** "Rl:" above "R2:": a scanner's l for a 1. */
const SCANNED_LABEL = /^([ \t]*R)[lI](?=[:.] [^\n]*\s+R2\b)/gm;

/** "S1 st in next ch": a scanner's 1 for an l. */
const SCANNED_SLIP = /(?<=\b[Ss])1 (?=sts?\b)/g;

/** "5 th Row": the blank behind the figure is moved. */
const SPACED_ORDINALS = /\b(\d{1,3}) (st|nd|rd|th)(?= (?:rows?|rnds?|rounds?)\b)/gi;

/** "W.o.h.", "y.r.h.", "t. o. h.": wool, yarn or thread over (round) hook. */
const YARN_OVERS = /\b[wyt]\. ?[or]\. ?h\./gi;

const LINK = /(!?)\[([^\]\n]{0,120})\]\((?:https?:|mailto:|\/|#|\.)[^)\s]{0,400}\)/g;

const linkText = (whole: string, image: string, words: string): string =>
  (image ? '' : ` ${words}`).padEnd(whole.length);

const EMPHASIS = /(\*{1,3}|_{1,3})(?=[^\s*_])([^*_\n]{1,160})\1/y;

/** Stars are repeats as well: only words that cannot be one are taken for bold. */
function withoutEmphasis(text: string): string {
  let plain = '';
  let done = 0;
  let star = text.indexOf('*');
  let line = text.indexOf('_');
  // From mark to mark: the pattern is not held against all that lies between.
  while (star >= 0 || line >= 0) {
    const at = line < 0 || (star >= 0 && star < line) ? star : line;
    EMPHASIS.lastIndex = at;
    const [whole, mark = '', words = ''] = EMPHASIS.exec(text) ?? [];
    const next = at + (whole?.length ?? 1);
    if (whole !== undefined && isEmphasis(mark, words, standsAlone(text, at, next))) {
      const gap = ' '.repeat(mark.length);
      plain += text.slice(done, at) + gap + words + gap;
      done = next;
    }
    if (star >= 0 && star < next) star = text.indexOf('*', next);
    if (line >= 0 && line < next) line = text.indexOf('_', next);
  }
  return done === 0 ? text : plain + text.slice(done);
}

/** "Rnd 4:", "Rows 3-5 (RS):", "2nd round." */
const LABEL_ALONE =
  /^\W{0,2}(?:(?:next|rnds?|rounds?|rows?|rds?|r)\b|\d{1,3}(?:st|nd|rd|th)\b)[^,;*]{0,40}$/i;
const COUNT_ALONE = /^[([{=–-]?\s*\d[^*]{0,40}$/;

function isEmphasis(mark: string, words: string, alone: string): boolean {
  if (/\s$/.test(words)) return LABEL_ALONE.test(words) && /[:.]\s*$/.test(words);
  if (LABEL_ALONE.test(words)) return true;
  if (mark === '*') return alone === 'line' && !/[,;]/.test(words);
  if (mark === '_') return alone !== 'word';
  if (words.endsWith(':') || alone === 'line') return true;
  if (COUNT_ALONE.test(words) && /[)\]}]$/.test(words)) return true;
  return !/[,;]/.test(words) && words.split(/\s+/).length <= 3;
}

/** Whether the marks hold a whole line, stand against letters ("snake_case"), or neither. */
function standsAlone(text: string, from: number, to: number): 'line' | 'word' | 'free' {
  if (/\w/.test(text[from - 1] ?? '') || /\w/.test(text[to] ?? '')) return 'word';
  const before = /[\r\n]\s*$|^\s*$/.test(text.slice(Math.max(0, from - 4), from));
  return before && /^[ \t]*[\r\n]|^[ \t]*$/.test(text.slice(to, to + 4)) ? 'line' : 'free';
}
