/**
 * "From 186 to 178 evenly": one written row that uses and makes exactly that. The row is put in house
 * form, read back, worked on as many stitches as it asks for, and handed out only if it comes out.
 */
import { work } from '../fabric/index.ts';
import { readManuscript } from '../manuscript/index.ts';
import { STEMS, type StemId, stemOf, type Terms, wordFor } from '../notation/index.ts';
import { cutGaps, type Shift } from './even-gaps.ts';

export interface SpacingAsked {
  /** Stitches there are and stitches wanted, a number for each size. */
  readonly from: readonly number[];
  readonly to: readonly number[];
  /** A word of the terms; default sc (US) or dc (UK). */
  readonly stitch?: string;
  readonly terms?: Terms;
  readonly worked?: 'rounds' | 'rows';
  /** Rounds in a row that shape alike, each set between the places of the one before; default 1. */
  readonly times?: number;
}

export interface SpacedRow {
  /** In house form, without label: "sc in next 11 sts, sc2tog, …". */
  readonly words: string;
  readonly from: readonly number[];
  readonly to: readonly number[];
  /** Each size's plain stitches before, between and after the shaping. */
  readonly gaps: readonly (readonly number[])[];
  /** Shaping stands right at the join or edge, since there are no plain stitches to spare. */
  readonly isAtJoin: boolean;
}

/** The rows, or why there are none, as a sentence. */
export type Spacing = { readonly rows: readonly SpacedRow[] } | { readonly why: string };

const CHANGES_DIFFER =
  'The sizes change by different numbers, and no one row serves them all: ask for each by itself.';

/** More than any row has; keeps the proof short. */
const MOST = 20_000;

export function spaceEvenly(asked: SpacingAsked): Spacing {
  const terms = asked.terms ?? 'US';
  const stem = asked.stitch ? stemOf(asked.stitch, terms) : 'w0';
  if (!stem || stem === 'slip') return { why: `"${asked.stitch}" is no stitch in ${terms} terms.` };
  const rows: SpacedRow[] = [];
  let { from, to } = asked;
  for (let nth = 0; nth < Math.max(1, Math.min(asked.times ?? 1, 100)); nth++) {
    const why = faultOf(from, to);
    if (why) return { why };
    // Two rounds apart by half a gap never meet the join: a quarter in, then three quarters.
    const shift: Shift = (asked.times ?? 1) === 1 ? 'middle' : nth % 2 === 0 ? 'early' : 'late';
    const row = spacedRow({ from, to }, { stem, terms, shift });
    if (!row) return { why: CHANGES_DIFFER };
    if (!isProven(row, { stem, terms, worked: asked.worked ?? 'rounds' })) {
      return {
        why: `No row was found that is proven from ${from.join(', ')} to ${to.join(', ')}.`,
      };
    }
    rows.push(row);
    const next = to.map((n, at) => n + (n - from[at]!));
    [from, to] = [to, next];
  }
  return { rows };
}

/** What keeps a row from being written, as a sentence; `null` if nothing does. */
function faultOf(from: readonly number[], to: readonly number[]): string | null {
  if (from.length === 0 || from.length !== to.length) {
    return `There are ${from.length} numbers to start from and ${to.length} to come to: give one of each for every size.`;
  }
  for (const [at, n] of from.entries()) {
    const wanted = to[at]!;
    const isCount = (one: number): boolean => Number.isInteger(one) && one >= 1 && one <= MOST;
    if (!isCount(n) || !isCount(wanted)) return `Stitches are whole numbers from 1 to ${MOST}.`;
    if (wanted > 2 * n) {
      return `From ${n} to ${wanted} more than doubles: it takes more than one increase in a stitch, so spread it over several rounds.`;
    }
    if (2 * wanted < n) {
      return `From ${n} to ${wanted} takes more than every pair of stitches together: spread it over several rounds.`;
    }
  }
  return null;
}

interface Manner {
  readonly stem: StemId;
  readonly terms: Terms;
  readonly shift: Shift;
}

function spacedRow(
  { from, to }: Pick<SpacedRow, 'from' | 'to'>,
  { stem, terms, shift }: Manner,
): SpacedRow | null {
  const changes = from.map((n, at) => to[at]! - n);
  const grows = changes.some((change) => change > 0);
  if (grows && changes.some((change) => change < 0)) return null;
  const gaps = from.map((have, at) => {
    const n = Math.abs(changes[at]!);
    return n === 0 ? [have] : cutGaps(grows ? have - n : have - 2 * n, n, shift);
  });
  const word = wordFor(stem, terms);
  const shaping = grows ? `2 ${word} in next st` : `${word}2tog`;
  const isAtJoin = gaps.some((each) => each.length > 1 && (each[0] === 0 || each.at(-1) === 0));
  const isAlike = changes.every((change) => change === changes[0]);
  const words = isAlike
    ? wordsOf(gaps, word, shaping)
    : inOne(gaps.map((size) => wordsOf([size], word, shaping)));
  return words === null ? null : { words, from, to, gaps, isAtJoin };
}

/**
 * Rows of several sizes that differ in numbers only, as one row with lists of sizes; `null` where their
 * words differ too.
 */
function inOne(rows: readonly string[]): string | null {
  const plural = rows.map((words) =>
    words
      .replace(/(?<!\b2 \w+ )in next st\b(?!s)/g, 'in next 1 sts')
      .replace(/\btwice\b/g, '2 times'),
  );
  const frames = new Set(plural.map((words) => words.replace(/\d+/g, '#')));
  if (frames.size > 1) return null;
  const numbers = plural.map((words) => words.match(/\d+/g) ?? []);
  let at = 0;
  return plural[0]!
    .replace(/\d+/g, () => {
      const [first, ...others] = numbers.map((each) => each[at]);
      at++;
      return others.every((n) => n === first) ? first! : `${first} (${others.join(', ')})`;
    })
    .replace(/in next 1 sts\b/g, 'in next st')
    .replace(/\) 2 times\b/g, ') twice');
}

/** Places of shaping that are written once with "n times". */
interface Unit {
  readonly words: string;
  readonly times: number;
}

function wordsOf(gaps: readonly (readonly number[])[], word: string, shaping: string): string {
  const columns = gaps[0]!.map((_, at) => gaps.map((size) => size[at]!));
  const last = plainWords(columns.at(-1)!, word);
  const plain = columns.slice(0, -1).map((column) => plainWords(column, word));
  const units = plain.flatMap((words, at) => {
    if (words === '') return [shaping];
    // Before bare shaping its own is one of them: "sc in next st, (2 sc in next st) 6 times".
    return plain[at + 1] === '' ? [words, shaping] : [`${words}, ${shaping}`];
  });
  const folded = folds(units).map(({ words, times }) =>
    times === 1 ? words : `(${words}) ${times === 2 ? 'twice' : `${times} times`}`,
  );
  return [...folded, last].filter(Boolean).join(', ');
}

/** "sc in next 11 (12, 13) sts"; one stitch is "sc in next st"; none is nothing. */
function plainWords(column: readonly number[], word: string): string {
  if (column.every((n) => n === 0)) return '';
  const [first, ...others] = column;
  if (others.every((n) => n === first)) {
    return first === 1 ? `${word} in next st` : `${word} in next ${first} sts`;
  }
  return `${word} in next ${first} (${others.join(', ')}) sts`;
}

/** Longest repeat that is still read at a glance: three places of shaping in the brackets. */
const LONGEST_FOLD = 3;

/** Equal neighbours, and short patterns that come again, are written once. */
function folds(units: readonly string[]): readonly Unit[] {
  const out: Unit[] = [];
  let at = 0;
  while (at < units.length) {
    const best = bestFold(units, at);
    out.push({ words: units.slice(at, at + best.length).join(', '), times: best.times });
    at += best.length * best.times;
  }
  return out;
}

function bestFold(units: readonly string[], at: number): { length: number; times: number } {
  let best = { length: 1, times: 1 };
  for (let length = 1; length <= LONGEST_FOLD; length++) {
    let times = 1;
    while (isAgain(units, { at, length, times })) times++;
    const isLonger = length * times > best.length * best.times;
    if (times > 1 && isLonger) best = { length, times };
  }
  return best;
}

function isAgain(
  units: readonly string[],
  { at, length, times }: { at: number; length: number; times: number },
): boolean {
  const next = at + length * times;
  if (next + length > units.length) return false;
  for (let j = 0; j < length; j++) if (units[at + j] !== units[next + j]) return false;
  return true;
}

interface ProofOf {
  readonly stem: StemId;
  readonly terms: Terms;
  readonly worked: 'rounds' | 'rows';
}

/** Works the row in a pattern of its own, in all sizes, and looks at what it used and made. */
function isProven(row: SpacedRow, proof: ProofOf): boolean {
  const manuscript = readManuscript(patternFor(row, proof)).value;
  const fabric = work(manuscript);
  return fabric.cloths.every(({ rows }, size) => {
    const record = rows.at(-1);
    return (
      record?.verdict === 'proven' &&
      record.used === row.from[size] &&
      record.tally.stitches === row.to[size]
    );
  });
}

function patternFor(row: SpacedRow, { stem, terms, worked }: ProofOf): string {
  const word = wordFor(stem, terms);
  const list = (numbers: readonly number[]): string =>
    numbers.length === 1 ? `${numbers[0]}` : `${numbers[0]} (${numbers.slice(1).join(', ')})`;
  const height = STEMS.find(({ id }) => id === stem)?.height ?? 1;
  const up = `Ch ${Math.ceil(height)} (does not count as a stitch)`;
  const sizes = row.from.map((_, at) => `s${at + 1}`).join(', ');
  const head = [
    '---',
    `terms: ${terms}`,
    ...(row.from.length > 1 ? [`sizes: [${sizes}]`] : []),
    '---',
  ];
  const [start, label, end] =
    worked === 'rounds'
      ? [`Ch ${list(row.from)}; join with sl st in first ch to form a ring.`, 'Rnd', '; join']
      : [`Ch ${list(row.from.map((n) => n + 1))}.`, 'Row', ', turn'];
  const first =
    worked === 'rounds'
      ? `Rnd 1: ${up}, ${word} in same ch as join and in each ch around; join. (${list(row.from)} ${word})`
      : `Row 1: ${word} in 2nd ch from hook and in each ch across, turn. (${list(row.from)} ${word})`;
  const shaped = `${label} 2: ${up}, ${row.words}${end}. (${list(row.to)} ${word})`;
  return [...head, start, '', first, '', shaped, ''].join('\n');
}
