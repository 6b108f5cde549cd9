/**
 * Rows shaped at their ends, as garments tell them: "dec 1 st at each end of next row", "inc 1 st at beg
 * of next 4 rows", "dec 1 st at neck edge every other row 3 times", "… until 12 sts remain".
 */
import { formOf } from './dictionary.ts';
import { PLAIN_NOUN } from './noun.ts';
import { readNumbers } from './numbers.ts';
import { clauseEnds, fromOf, isWord, kindAt, type Reader, toOf, wordAt } from './reader.ts';
import { plainRowsAgain } from './rows-again.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { EndShaping, EvenStep, Numbers, RowsAgainStep, StitchTerm, WorkStep } from './tree.ts';
import { readWork } from './work.ts';
import { plainWork } from './work-draft.ts';

const NUMBERS = String.raw`\d+(?:\s?[([][\d,; –-]+[)\]])?|twice|once`;
const NTH = String.raw`other|alternate|alt\.?|second|third|fourth|\d+(?:st|nd|rd|th)?`;
const EVERY = String.raw`(?:every|each)(?: following| foll\.?)?`;

/** How much, where, and in which rows; all in small letters. */
const SHAPES = new RegExp(
  [
    String.raw`^(?:(?<tog>[hsd]{1,2}c2tog|h?tr2tog)|(?:dec|inc)(?:reas(?:e|ing))?\.?)(?: (?<n>\d+|one|a)\b(?: (?:st|stitch|[hsd]{1,2}c|h?tr|mesh)(?:es|s)?\b\.?)?)?`,
    String.raw`(?: ?,? ?(?:(?:at|on|in) )?(?:the )?(?:(?<both>(?:each|both|either) (?:ends?|sides?|edges?)|beg(?:inning)?\.? and (?:at )?(?:the )?end)`,
    String.raw`|(?<start>beg(?:inning)?\b\.?|start\b)|(?<end>end\b)|(?<edge>(?:neck|armholes?|arm|front|side|cent(?:er|re) front|outside|outer|inner|inside|raglan|sleeve)(?: edges?)?|(?:one|same|this|that) (?:end|edge|side))\b))?`,
    `(?: ?,? ?(?:(?:of|on|in|at) )?(?:the )?(?:`,
    String.raw`(?<next>(?:this and )?next(?: (?:row|rnd)\b|(?= and )))(?:,? and (?:(?:on|in|of|at) )?(?:the )?(?:${EVERY}|following|foll\.?) (?:(?<follow>${NTH}) )?(?:row|rnd)s?(?: (?<more>${NUMBERS})(?: (?:more )?times)?)?)?`,
    `|next (?<rows>${NUMBERS}) (?:row|rnd)s`,
    `|(?<before>${NUMBERS}) times,? ${EVERY} (?:(?<nthBefore>${NTH}) )?(?:row|rnd)s?`,
    String.raw`|(?:${EVERY}|following|foll\.?) (?:(?<nth>${NTH}) )?(?:row|rnd)s?(?:,? (?:for )?(?<times>${NUMBERS})(?: (?:more )?times)?)?`,
    `|(?<this>(?:this )?(?:row|rnd))))?`,
    String.raw`(?:,? until (?<left>\d+(?:\s?[([][\d,; –-]+[)\]])?) (?:sts?|stitch(?:es)?|[hsd]{1,2}c|h?tr)\b\.?(?: (?:remain|rem\.?|are left|left)\b)?)?`,
  ].join(''),
);

/** Whether such an order stands here, with the reader on its verb; its steps are put down then. */
export function shapesEnds(r: Reader, run: Run): boolean {
  if (run.end !== 'text' || !mayTell(r)) return false;
  const start = r.at;
  const from = r.base + fromOf(r, start);
  const words = r.text
    .slice(from, from + 200)
    .toLowerCase()
    .replace(/\s/g, ' ');
  const found = SHAPES.exec(words);
  if (!found?.groups || !tells(found.groups)) return false;
  const said = found.groups;
  let end = start;
  while (r.kind[end] !== T.end && r.from[end]! < fromOf(r, start) + found[0].length) end++;
  if (said.tog !== undefined && !said.both) return atOneEnd(r, run, { end, said });
  if (!endsOrder(r, end - start, said)) return aroundWork(r, run, { end, said });
  const middle = workBefore(run);
  if (middle === undefined) return endsWork(r, run, { end, said });
  const numbersAt = (name: string): Numbers | null => {
    const text = said[name];
    if (text === undefined) return null;
    const at = fromOf(r, start) + found[0].lastIndexOf(text);
    const n = NUMBER_WORDS.get(text);
    if (n !== undefined) return { values: [n], from: at, to: at + text.length };
    r.at = start;
    while (r.from[r.at]! < at) r.at++;
    return readNumbers(r);
  };
  const times = numbersAt('more') ?? numbersAt('rows') ?? numbersAt('before') ?? numbersAt('times');
  const left = numbersAt('left');
  r.at = start;
  const term = readStitch(r);
  r.at = end;
  if (!term) return false;
  const span = { from: middle?.from ?? fromOf(r, start), to: toOf(r) };
  const shaping: EndShaping = {
    stitch: term,
    n: /^\d/.test(said.n ?? '') ? Number(said.n) : 1,
    at: said.both ? 'both' : said.start ? 'start' : said.end ? 'end' : 'somewhere',
    every: nthOf(said.follow ?? said.nthBefore ?? said.nth),
    next: said.next !== undefined,
    times,
  };
  if (middle) run.out.pop();
  run.out.push(...ordered(shaping, { left, stitch: middle?.stitch ?? null, ...span }));
  return true;
}

/** "(1 sc dec each row)", "(2 sts increased every row)": how the rows are shaped, and no count of theirs. */
export function shapingOfRows(r: Reader, run: Run): boolean {
  if (kindAt(r, 1) !== T.number || kindAt(r, 2) !== T.word || kindAt(r, 3) !== T.word) return false;
  const close = r.partner[r.at] ?? -1;
  if (close !== r.at + 6 || !(isWord(r, W.each, 4) || isWord(r, W.every, 4))) return false;
  if (!isWord(r, W.row, 5) && !isWord(r, W.round, 5)) return false;
  const shape = formOf(wordAt(r, 3))?.shape;
  const shaped = isWord(r, W.increased, 3) || isWord(r, W.decreased, 3);
  if (!shaped && shape !== 'together' && shape !== 'increase') return false;
  const start = r.at;
  r.at = close + 1;
  putWords(r, run, start, 'remark');
  return true;
}

/** "dec 1 st …", "decrease each side …": most increases stand in the list of a row, and are told by one look. */
const mayTell = (r: Reader): boolean =>
  kindAt(r, 1) === T.number || isWord(r, W.a, 1)
    ? kindAt(r, 2) === T.word
    : isWord(r, W.each, 1) || isWord(r, W.both, 1) || isWord(r, W.at, 1);

type Said = Readonly<Record<string, string | undefined>>;

/** Where in the row or in which rows, and of what: one of them alone is no such order. */
function tells(said: Said): boolean {
  const rows = said.next ?? said.rows ?? said.before ?? said.nth ?? said.times ?? said.left;
  const where = said.both ?? said.start ?? said.end ?? said.edge;
  // "Hdc2tog at beg and end of row", "sc2tog at beg"
  if (said.tog !== undefined)
    return said.n === undefined && (said.both ?? said.start ?? said.end) !== undefined && !rows;
  if (said.n === undefined && !(said.both && rows) && !(said.end && said.this)) return false;
  return where !== undefined || rows !== undefined;
}

/** Nothing of the clause may be left; where no rows are named, nothing of the row. */
function endsOrder(r: Reader, k: number, said: Said): boolean {
  const sign = kindAt(r, k);
  const rows = said.next ?? said.rows ?? said.before ?? said.times ?? said.left;
  const ends =
    clauseEnds(r, k) ||
    sign === T.open ||
    sign === T.dash ||
    sign === T.equals ||
    (isWord(r, W.and, k) && rows !== undefined);
  if (!ends) return false;
  if (rows !== undefined || sign !== T.comma) return true;
  return isWord(r, W.turn, k + 1) || kindAt(r, k + 1) === T.number;
}

/** "Sc across, decreasing 1 st at each end": the row's own stitch; `undefined`: other work stands before. */
function workBefore(run: Run): { stitch: StitchTerm | null; from: number } | null | undefined {
  const last = run.out.at(-1);
  if (!last || run.out.length === run.sentence || last.kind === 'turn') return null;
  if (last.kind === 'even' && !last.rows && !last.measure && !last.shaping)
    return { stitch: last.stitch, from: last.from };
  if (last.kind !== 'work') return run.out.slice(run.sentence).some(isOther) ? undefined : null;
  const all = plainToEnd(last);
  return all && run.out.length - 1 === run.sentence
    ? { stitch: all.stitch, from: all.from }
    : undefined;
}

const isOther = ({ kind }: { kind: string }): boolean =>
  kind === 'work' || kind === 'group' || kind === 'repeat';

interface Found {
  readonly end: number;
  readonly said: Said;
}

/** "Sc2tog at beg, sc to last 2 sts, sc2tog at end": where the walk is in any case. */
function atOneEnd(r: Reader, run: Run, found: Found): boolean {
  const { end, said } = found;
  const last = run.out.at(-1);
  const isFirst = !run.out.some(isOther);
  if (said.start ? !isFirst : isFirst) return false;
  if (said.end && last?.kind === 'work' && plainToEnd(last) !== null)
    return endsWork(r, run, found);
  const start = r.at;
  const term = readStitch(r);
  if (!term) return false;
  r.at = end;
  run.out.push(plainWork(term, { from: fromOf(r, start), to: toOf(r) }));
  return true;
}

/** "Dec 1 st at each end, sc across": the work that is shaped stands behind. */
function aroundWork(r: Reader, run: Run, { end, said }: Found): boolean {
  if (!said.both || r.kind[end] !== T.comma || run.out.some(isOther)) return false;
  const start = r.at;
  const term = readStitch(r);
  r.at = end + 1;
  const work = readWork(r);
  if (!term || !work || plainToEnd(work) === null || !clauseEnds(r)) {
    r.at = end;
    putWords(r, run, start, 'unread');
    return true;
  }
  const n = /^\d/.test(said.n ?? '') ? Number(said.n) : 1;
  const shaping = { stitch: term, n, at: 'both', every: 1, next: false, times: null } as const;
  const span = { from: fromOf(r, start), to: toOf(r) };
  run.out.push(...ordered(shaping, { left: null, stitch: work.stitch, ...span }));
  return true;
}

/** "Inc in first st, sc across, inc at end of row": the last of them is in the last place. */
function endsWork(r: Reader, run: Run, { end, said }: Found): boolean {
  const last = run.out.at(-1);
  if (!said.end || last?.kind !== 'work' || plainToEnd(last) === null) return false;
  const start = r.at;
  const term = readStitch(r);
  if (!term) return false;
  r.at = end;
  const many = /^\d/.test(said.n ?? '') ? Number(said.n) : 1;
  const used = term.shape === 'together' ? (term.legs ?? 2) * many : many;
  const span = { from: fromOf(r, start), to: toOf(r) };
  const noun = { ...PLAIN_NOUN, plural: true };
  const n = { values: [used], ...span };
  const until = { kind: 'last', n, noun, chain: false, ...span } as const;
  const place = last.place ? { ...last.place, until } : null;
  run.out[run.out.length - 1] = { ...last, place, until: place ? null : until };
  run.out.push({ ...plainWork(term, span), n: many > 1 ? { values: [many], ...span } : null });
  return true;
}

/** The work, where it is one stitch in each place up to the end. */
function plainToEnd(work: WorkStep): WorkStep | null {
  const { place, until, stitch, n, alsoIn } = work;
  const all = place ? place.pick === 'each' && !place.n && !place.of : until?.kind === 'end';
  const stop = place ? place.until : until;
  const isPlain = stitch.shape === 'one' && n === null && alsoIn.length === 0;
  return all && isPlain && (stop === null || stop.kind === 'end') ? work : null;
}

interface Order {
  readonly left: Numbers | null;
  readonly stitch: StitchTerm | null;
  readonly from: number;
  readonly to: number;
}

/** "… every other row until 12 sts remain": one such row and those between, until there are so many. */
function ordered(
  shaping: EndShaping,
  { left, stitch, ...span }: Order,
): (EvenStep | RowsAgainStep)[] {
  const even: EvenStep = { kind: 'even', stitch, until: null, rows: null, measure: null, ...span };
  if (!left) return [{ ...even, shaping }];
  const once = { ...even, shaping: { ...shaping, every: 1, next: true, times: null } };
  const gap = shaping.every - 1;
  const between = { ...even, rows: { values: [gap], from: span.to, to: span.to } };
  return [
    once,
    ...(gap > 0 ? [between] : []),
    { ...plainRowsAgain(span.from), lastN: gap + 1, stitchesAtEnd: left, ...span },
  ];
}

const NUMBER_WORDS: ReadonlyMap<string, number> = new Map([
  ['once', 1],
  ['twice', 2],
]);

/** "other", "3rd": from one of the rows to the next. */
function nthOf(word: string | undefined): number {
  if (word === undefined) return 1;
  if (/^\d/.test(word)) return Math.max(1, Number.parseInt(word, 10));
  return word === 'third' ? 3 : word === 'fourth' ? 4 : 2;
}
