/**
 * Titles with places to fill in, such as `{row} makes {made: [unit]}; the pattern says {stated #}.`
 * `scripts/catalogue.mjs` reads the same forms when it makes the types of the words:
 *
 *     {row}            words as they are; at the start of the sentence with a capital
 *     {have #}         a number
 *     {takes: chains}  a number with its noun, which loses its plural at 1
 *     {made: [unit]}   the same, with the noun handed in as `unit`
 *     {left|is|are}    the first for `left` 1, else the second
 *     [; "{near}" is]  left out unless all of its words are given
 */

/** A noun of the trade as it stands beside 1 and beside other numbers. */
export interface Noun {
  readonly one: string;
  readonly many: string;
}

export type Words = Readonly<Record<string, string | number | Noun | undefined>>;

/** A noun from its plural: "stitches", "ch-2 sps", "boxes". Names of stitches ("sc") keep their form. */
export function noun(many: string): Noun {
  return { one: many.replace(/(?<=ch|x|sh)es$|(?<=[a-z])(?<!s)s$/, ''), many };
}

/** A number with its noun: "1 stitch", "18 stitches", "1,000,000 stitches". */
export function counted(n: number, of: Noun): string {
  return `${grouped(n)} ${n === 1 ? of.one : of.many}`;
}

/** A number as people read it: commas from five digits on, since counts of four are common ("1024"). */
export function grouped(n: number): string {
  const digits = String(n);
  return digits.length > 4 ? digits.replace(/\B(?=(\d{3})+$)/g, ',') : digits;
}

/**
 * Words on one line and short enough for a title: blanks and line breaks become single blanks, and
 * what goes over 72 characters (judgement: half a wide terminal) is cut after a whole word.
 */
export function brief(words: string): string {
  const line = words.slice(0, 400).replace(/\s+/g, ' ').trim();
  if (line.length <= longestWords && words.length <= 400) return line;
  const cut = line.slice(0, longestWords);
  const end = cut.lastIndexOf(' ');
  return `${end > longestWords / 2 ? cut.slice(0, end) : cut.replace(/[\ud800-\udbff]$/, '')} …`;
}

const longestWords = 72;

/** A title taken apart: words, places to fill in, and pieces that are left out unless all of them are given. */
type Piece = string | Place | readonly Piece[];
export type Pieces = readonly Piece[];

/** One place, its parts by name: exactly one of `number`, `fixed`, `given`, `one` or none of them. */
interface Place {
  readonly name: string;
  readonly number?: string;
  readonly fixed?: string;
  readonly given?: string;
  readonly one?: string;
  readonly many?: string;
}

const place =
  /\{(?<name>\w+)(?:(?<number> #)|: \[(?<given>\w+)\]|: (?<fixed>[^}]+)|\|(?<one>[^|}]*)\|(?<many>[^}]*))?\}/g;
/** A bracket right behind a colon is a noun, `{made: [unit]}`; any other holds words to leave out. */
const optional = /(?<!: )\[([^\]]*\{[^\]]*)\]/g;

/** A title taken apart once, for all the sentences that are made of it. */
export function piecesOf(title: string): Pieces {
  const pieces: Piece[] = [];
  let done = 0;
  for (const found of title.matchAll(optional)) {
    pieces.push(...placesIn(title.slice(done, found.index)), placesIn(found[1] ?? ''));
    done = found.index + found[0].length;
  }
  return [...pieces, ...placesIn(title.slice(done))];
}

function placesIn(part: string): Piece[] {
  const pieces: Piece[] = [];
  let done = 0;
  for (const found of part.matchAll(place)) {
    pieces.push(part.slice(done, found.index), found.groups as unknown as Place);
    done = found.index + found[0].length;
  }
  return [...pieces, part.slice(done)];
}

/** The sentence: a title with its places filled from `words`. */
export function say(pieces: Pieces, words: Words): string {
  const filled = saidOf(pieces, words);
  return filled.charAt(0).toUpperCase() + filled.slice(1);
}

function saidOf(pieces: Pieces, words: Words): string {
  let said = '';
  for (const piece of pieces) {
    if (typeof piece === 'string') said += piece;
    else if ('name' in piece) said += fill(piece, words);
    else if (piece.every((each) => isSaid(each, words))) said += saidOf(piece, words);
  }
  return said;
}

const isSaid = (piece: Piece, words: Words): boolean =>
  typeof piece === 'string' || !('name' in piece) || isGiven(words[piece.name]);

function fill(found: Place, words: Words): string {
  const value = words[found.name];
  if (typeof value === 'string') return brief(value);
  if (typeof value !== 'number') return '';
  if (found.one !== undefined) return (value === 1 ? found.one : found.many) ?? '';
  const given = found.given === undefined ? undefined : words[found.given];
  if (typeof given === 'object') return counted(value, given);
  return found.fixed === undefined ? grouped(value) : counted(value, noun(found.fixed));
}

function isGiven(value: Words[string]): boolean {
  return value !== undefined && value !== '';
}
