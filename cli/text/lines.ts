/**
 * Rows as lines of the table: the sizes of a row side by side, "20 (24, 28)" as the trade writes
 * them, and rows that stand under one label and are all alike in one line.
 */
import type { RowAccount, Verdict } from '../../src/index.ts';

export interface TableLine {
  readonly part: string;
  readonly instance: number;
  readonly label: string;
  readonly used: string;
  readonly made: string;
  /** Spaces, boxes or chains made beside the stitches. */
  readonly beside: string;
  readonly stated: string;
  readonly verdict: string;
  /** The gravest verdict over the sizes. */
  readonly worst: Verdict;
}

/** The lines of all rows, in the order in which they are worked. */
export function tableLines(
  rows: readonly RowAccount[],
  sizes: readonly string[],
  text: string,
): readonly TableLine[] {
  return foldRanges(
    besideEachOther(rows, sizes).map((row) => ({ row, line: lineOf(row, sizes, text) })),
  );
}

/** A row in each of the sizes; `null` where a size has no such row. */
interface SizedRow {
  readonly first: RowAccount;
  readonly bySize: (RowAccount | null)[];
}

/** A row in the order of the table, and the one behind it. */
interface Link {
  readonly row: SizedRow;
  next: Link | null;
}

/**
 * Brings the sizes together. Rows have the same part, copy, label and place among their likes in all
 * sizes; one that only a later size has comes behind the row that it follows there, and behind those of
 * other sizes that stand above it in the text. A row that is worked in some size needs no line for the others.
 */
function besideEachOther(rows: readonly RowAccount[], sizes: readonly string[]): SizedRow[] {
  const known = new Map<string, Link>();
  const worked = new Set(rows.filter(isWorked).map(({ from }) => from));
  let first: Link | null = null;
  for (const [at, size] of sizes.entries()) {
    const own = rows.filter(
      (row) => row.size === size && (row.verdict !== 'omitted' || !worked.has(row.from)),
    );
    let before: Link | null = null;
    for (const { row, key } of keyed(own)) {
      let link = known.get(key);
      if (!link) {
        before = behindOthers(before, first, { at, row });
        const behind: Link | null = before ? before.next : first;
        link = { row: { first: row, bySize: sizes.map(() => null) }, next: behind };
        if (before) before.next = link;
        else first = link;
        known.set(key, link);
      }
      link.row.bySize[at] = row;
      before = link;
    }
  }
  const ordered: SizedRow[] = [];
  for (let link: Link | null = first; link; link = link.next) ordered.push(link.row);
  return ordered;
}

function keyed(rows: readonly RowAccount[]): { readonly row: RowAccount; readonly key: string }[] {
  const met = new Map<string, number>();
  return rows.map((row) => {
    const likes = JSON.stringify([row.part, row.instance, row.label, row.from, row.range?.nth]);
    const nth = met.get(likes) ?? 0;
    met.set(likes, nth + 1);
    return { row, key: `${likes}${nth}` };
  });
}

/** Behind which row one of the size `at` is put, past those that this size has not and that stand above it. */
function behindOthers(
  before: Link | null,
  first: Link | null,
  { at, row }: { readonly at: number; readonly row: RowAccount },
): Link | null {
  let last = before;
  for (let next = last ? last.next : first; next; next = next.next) {
    if (next.row.bySize[at] !== null || !isAbove(next.row.first, row)) return last;
    last = next;
  }
  return last;
}

const isAbove = (a: RowAccount, b: RowAccount): boolean =>
  a.from < b.from || (a.from === b.from && (a.range?.nth ?? 0) < (b.range?.nth ?? 0));

function lineOf({ first, bySize }: SizedRow, sizes: readonly string[], text: string): TableLine {
  const worst = gravest(bySize.map((row) => row?.verdict ?? 'omitted'));
  const concerned = sizes.filter((_, at) => (bySize[at]?.verdict ?? 'omitted') === worst);
  const isForAll = concerned.length === sizes.length || worst === 'proven';
  return {
    part: first.part,
    instance: first.instance,
    label: first.label === '' ? opening(text.slice(first.from, first.to)) : first.label,
    used: sized(bySize.map((row) => (isWorked(row) ? row.used : null))),
    made: sized(bySize.map((row) => (isWorked(row) ? row.made : null))),
    beside: withUnits(bySize.map((row) => (row === null ? [] : besideStitches(row)))),
    stated: withUnits(bySize.map((row) => (row?.stated ?? []).map(inTradeWords))),
    verdict: isForAll ? said(worst, bySize) : `${said(worst, bySize)} (${concerned.join(', ')})`,
    worst,
  };
}

/** A row that states counts which were not all met as they stand is not one without a count. */
function said(worst: Verdict, bySize: SizedRow['bySize']): string {
  const stated = bySize.flatMap((row) => (row?.verdict === worst ? row.stated : []));
  if (worst !== 'unstated' || stated.length === 0) return worst;
  return stated.some(({ compared }) => compared) ? 'in part' : 'not compared';
}

/** Of a row without a label its first words, such as "Join A to first …". */
function opening(words: string): string {
  const all = words.trim().split(/\s+/);
  const some = all.slice(0, 4).join(' ');
  return all.length > 4 ? `${some.replace(/[,;:]$/, '')} …` : some;
}

function isWorked(row: RowAccount | null): row is RowAccount {
  return row !== null && row.verdict !== 'omitted';
}

const gravity: readonly Verdict[] = [
  'omitted',
  'proven',
  'unstated',
  'unchecked',
  'mismatch',
  'unread',
];

function gravest(verdicts: readonly Verdict[]): Verdict {
  return gravity[Math.max(...verdicts.map((verdict) => gravity.indexOf(verdict)))] ?? 'omitted';
}

/** Numbers of all sizes: one if they agree, else the first and the others in brackets. */
function sized(numbers: readonly (number | null)[]): string {
  const [first = '', ...others] = numbers.map((n) => (n === null ? '–' : String(n)));
  return others.every((other) => other === first) ? first : `${first} (${others.join(', ')})`;
}

interface Amount {
  readonly n: number;
  readonly unit: string | null;
}

/** Boxes stand for the spaces in them; chains are told only where nothing names them. */
function besideStitches(row: RowAccount): readonly Amount[] {
  if (row.boxes > 0) return [{ n: row.boxes, unit: row.boxes === 1 ? 'box' : 'boxes' }];
  return row.spaces.map(({ chains, n }) => ({ n, unit: `ch-${chains} ${n === 1 ? 'sp' : 'sps'}` }));
}

/** What is counted, as short as patterns write it; stitches and groups by name stay as they are. */
const tradeWords: Readonly<Record<string, readonly [one: string, many: string]>> = {
  stitch: ['st', 'sts'],
  space: ['sp', 'sps'],
  chain: ['ch', 'ch'],
  box: ['box', 'boxes'],
};

function inTradeWords({ n, unit }: Amount): Amount {
  const [one = unit, many = pluralOf(unit)] = tradeWords[unit ?? ''] ?? [];
  return { n, unit: n === 1 ? one : many };
}

/** "8 picots", "16 popcorns"; names of stitches, short or long, keep their form: "8 dc", "8 treble". */
function pluralOf(unit: string | null): string | null {
  if (unit === null || /(?:s|crochet|double|treble)$/.test(unit)) return unit;
  if (!/[a-z]{5,}$/.test(unit) && !SHORT_THINGS.test(unit)) return unit;
  return /(?:ch|sh|x)$/.test(unit) ? `${unit}es` : `${unit}s`;
}

/** Short words that are no stitch's name: "6 fans", "22 sets". */
const SHORT_THINGS = /\b(?:fan|set|bead|puff|bar|arch|pair|knot|loop)$/;

/** Amounts unit by unit, the sizes of each together: "20 (24, 28) sc, 4 ch-2 sps". */
function withUnits(bySize: readonly (readonly Amount[])[]): string {
  const units = [...new Set(bySize.flatMap((amounts) => amounts.map(({ unit }) => unit)))];
  return units
    .map((unit) => {
      const numbers = bySize.map((amounts) => amounts.find((one) => one.unit === unit)?.n ?? null);
      return unit === null ? sized(numbers) : `${sized(numbers)} ${unit}`;
    })
    .join(', ');
}

interface Unfolded {
  readonly row: SizedRow;
  readonly line: TableLine;
}

/**
 * "Rnd 4" to "Rnd 9", written as one instruction and alike in all figures, become "Rnds 4-9"; rows
 * without a number become one line with how many they are, "Repeat Rows 2-7 … (48 rows)".
 */
function foldRanges(lines: readonly Unfolded[]): TableLine[] {
  const runs: Unfolded[][] = [];
  for (const next of lines) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run !== undefined && last !== undefined && isNextOf(last, next)) run.push(next);
    else runs.push([next]);
  }
  return runs.flatMap((run) => {
    const [first, ...others] = run;
    const last = others.at(-1);
    if (first === undefined || last === undefined) return first === undefined ? [] : [first.line];
    const { label } = first.line;
    const isNumbered = first.row.first.label !== '';
    // "Next 5 Rows" has its number; "Repeat Rows 2-7 …" and "next: ch 2, …" have none.
    const counted = /^next \d/i.test(label) ? label : `${label} (${run.length} rows)`;
    const isRange = isNumbered && label !== last.line.label;
    const both = isRange ? rangeLabel(label, last.line.label, run.length) : counted;
    return [{ ...first.line, label: both }];
  });
}

function isNextOf(before: Unfolded, next: Unfolded): boolean {
  const [a, b] = [before.row.first, next.row.first];
  const isSameRange =
    a.from === b.from &&
    (a.range !== null && b.range !== null
      ? a.range.nth + 1 === b.range.nth
      : a.range === null && b.range === null && a.label === b.label);
  const alike: readonly (keyof TableLine)[] = ['part', 'instance', 'used', 'made', 'beside'];
  const told: readonly (keyof TableLine)[] = ['stated', 'verdict'];
  return isSameRange && [...alike, ...told].every((key) => before.line[key] === next.line[key]);
}

/**
 * "Rnd 4" to "Rnd 9", 6 of them: "Rnds 4-9"; "Row 5" to "Row 9", 3 of them: "Rows 5, …, 9". Labels without
 * a number at the end are set side by side.
 */
function rangeLabel(first: string, last: string, rows: number): string {
  const [, word = '', from] = /^(.*?)\s*(\d+)$/.exec(first) ?? [];
  const [, , to] = /^(.*?)\s*(\d+)$/.exec(last) ?? [];
  if (from === undefined || to === undefined) return `${first} – ${last}`;
  const isWhole = Number(to) - Number(from) + 1 === rows;
  const numbers = isWhole ? `${from}-${to}` : `${from}, …, ${to}`;
  // "R6-8" and "6-8" are written so; words take the plural.
  if (word === '' || word === 'R') return `${word}${numbers}`;
  return `${word}${word.endsWith('s') ? '' : 's'} ${numbers}`;
}
