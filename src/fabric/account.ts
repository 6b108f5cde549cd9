/** The account of the work that people and programs read: rows, totals, conventions. */
import type { Manuscript } from '../manuscript/index.ts';
import { type Terms, wordFor } from '../notation/index.ts';
import type { Convention, Fabric, RowRecord, Verdict } from './fabric.ts';
import type { Kind } from './kinds.ts';

/** One worked row in one size. Offsets are of the instruction that asks for it. */
export interface RowAccount {
  readonly id: string;
  readonly part: string;
  readonly instance: number;
  readonly label: string;
  readonly range: { readonly from: number; readonly to: number; readonly nth: number } | null;
  readonly from: number;
  readonly to: number;
  readonly size: string;
  /** Counted places of the row beneath that are taken or expressly skipped. */
  readonly used: number;
  /** Counted stitches; a starting chain that counts as one of them. */
  readonly made: number;
  readonly chains: number;
  readonly spaces: readonly { readonly chains: number; readonly n: number }[];
  readonly boxes: number;
  /** Stitches by their short word in the pattern's terms: `{ dc: 63, sc2tog: 4 }`. */
  readonly byKind: Readonly<Record<string, number>>;
  /** `compared`: false where it is not known what a count counts. */
  readonly stated: readonly {
    readonly n: number;
    readonly unit: string | null;
    readonly compared: boolean;
  }[];
  readonly verdict: Verdict;
}

export interface ConventionAccount {
  /** "start-chain 2", "rep from * n times" … */
  readonly what: string;
  readonly part: string;
  readonly reading: string;
  readonly alternatives: readonly string[];
  readonly because: Convention['because'];
  readonly from: number;
}

export interface TotalsAccount {
  readonly size: string;
  readonly rows: number;
  readonly proven: number;
  readonly unstated: number;
  /** Those of the unstated rows that state counts which could not be compared, or not all. */
  readonly inPart: number;
  readonly mismatched: number;
  readonly unread: number;
  readonly unchecked: number;
  readonly stitches: number;
}

export interface Account {
  readonly sizes: readonly string[];
  readonly rows: readonly RowAccount[];
  readonly conventions: readonly ConventionAccount[];
  readonly totals: readonly TotalsAccount[];
}

/** The short word for a kind of stitch: "dc", "sc2tog", "FPdc", "dc cluster". */
function shortWord(kind: Kind, terms: Terms): string {
  const stem = kind.stem ? wordFor(kind.stem, terms) : '';
  const legs = /\d+/.exec(kind.name.replace(/^(start )?w\d/, ''))?.[0] ?? '2';
  if (kind.class === 'unknown') return '?';
  if (kind.special) return kind.special;
  if (kind.name.includes('front-post')) return `FP${stem}`;
  if (kind.name.includes('back-post')) return `BP${stem}`;
  if (kind.shape === 'together') return `${stem}${legs}tog`;
  if (kind.shape === null || kind.shape === 'one') return stem;
  return `${stem} ${kind.shape}`.trim();
}

/** Rows, totals and conventions of a fabric. */
export function accountOf(manuscript: Manuscript, fabric: Fabric): Account {
  const sizes = manuscript.head.sizes.length > 0 ? manuscript.head.sizes : [''];
  const { terms } = manuscript.terms;
  const words = new Map<string, string>(
    fabric.kinds.kinds.map((kind) => [kind.name, shortWord(kind, terms)]),
  );
  const rows = fabric.cloths.flatMap((cloth) =>
    cloth.rows.map((row) => rowAccount(row, sizes[cloth.sizeIndex] ?? '', words)),
  );
  const conventions = fabric.conventions.map((convention) => ({
    what: convention.doubt,
    part: manuscript.parts[convention.partIndex]?.name ?? '',
    reading: convention.reading,
    alternatives: convention.alternatives,
    because: convention.because,
    from: convention.from,
  }));
  const totals = sizes.map((size) =>
    totalsOf(
      size,
      rows.filter((row) => row.size === size),
    ),
  );
  return { sizes, rows, conventions, totals };
}

function rowAccount(row: RowRecord, size: string, words: ReadonlyMap<string, string>): RowAccount {
  const byKind: Record<string, number> = {};
  for (const [name, n] of row.tally.byKind) {
    const word = words.get(name) ?? name;
    byKind[word] = (byKind[word] ?? 0) + n;
  }
  const { id, part, instance, label, range, from, to, used, tally, verdict } = row;
  return {
    id,
    part,
    instance,
    label,
    range,
    from,
    to,
    size,
    used,
    made: tally.stitches,
    chains: tally.chains,
    spaces: tally.spaces,
    boxes: tally.boxes,
    byKind,
    stated: row.stated.map(({ n, unit, word, compared }) => ({
      n,
      unit: namedByWord(unit) ? word : unit,
      compared,
    })),
    verdict,
  };
}

/** "6 dc", "8 picots": the word of the pattern says what was counted. */
const namedByWord = (unit: string | null): boolean => unit === 'stem' || unit === 'group';

function totalsOf(size: string, rows: readonly RowAccount[]): TotalsAccount {
  const count = (verdict: Verdict): number => rows.filter((row) => row.verdict === verdict).length;
  return {
    size,
    rows: rows.length - count('omitted'),
    proven: count('proven'),
    unstated: count('unstated'),
    inPart: rows.filter((row) => row.verdict === 'unstated' && row.stated.length > 0).length,
    mismatched: count('mismatch'),
    unread: count('unread'),
    unchecked: count('unchecked'),
    stitches: rows.reduce((sum, row) => sum + row.made, 0),
  };
}
