/** Every gauge, yarn and hook of a pattern, from its front matter, else from its words. */
import type { Manuscript } from '../manuscript/index.ts';
import type { StemId, Terms } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { locate, memberOf, pairsOf, wordsOf } from './entries.ts';
import { fabricNamed, stitchNamesSource } from './fabric-name.ts';
import type { BeforeBlocking, GaugeCount, GaugeRecord, Gauges } from './gauge.ts';
import { gaugeFromWords } from './gauge-words.ts';
import { proportionOf } from './proportions.ts';
import { readHooks, readYarns } from './read-yarns.ts';
import { meanSize } from './swatches.ts';

type Written = Pick<Manuscript, 'head' | 'text' | 'terms' | 'charts'>;

export function readGauges(manuscript: Written): Gauges {
  const { terms } = manuscript.terms;
  const given = manuscript.head.data.gauge ?? manuscript.head.data.tension;
  const stated =
    given === undefined || given === null ? inText(manuscript) : inHead(manuscript, given);
  return {
    records: recordsOf(stated, manuscript, terms),
    yarns: readYarns(manuscript),
    hooks: readHooks(manuscript),
    meshGap: meshGapOf(manuscript),
    terms,
  };
}

/**
 * Gauges as an option or another room gives them, in place of the pattern's own. A count that names no
 * fabric stands for the only one that the pattern counts (see `fabricMeant`).
 */
export function gaugesWith(gauges: Gauges, counts: readonly GaugeCount[]): Gauges {
  const stated = counts.map((count) => ({
    fabric: count.fabric ?? fabricMeant(gauges, count) ?? '',
    count,
    span: { from: 0, to: 0 },
  }));
  const named = grouped(stated).map((group) => recordOf(group, gauges.terms, null));
  const kept = gauges.records.filter(
    (old) => !named.some((each) => each.stem === old.stem && each.isMesh === old.isMesh),
  );
  return { ...gauges, records: [...named, ...kept] };
}

/** Fabric of a count that names none: the pattern's, where it counts but one of that kind; else `null`. */
export function fabricMeant({ records }: Gauges, count: GaugeCount): string | null {
  const isBox = count.across?.unit === 'box';
  const alike = records.filter(({ isMesh }) => isMesh === isBox);
  return alike.length === 1 ? alike[0]!.fabric : null;
}

interface Stated {
  readonly fabric: string;
  readonly count: GaugeCount;
  readonly span: Span;
}

function inHead(manuscript: Written, given: unknown): readonly Stated[] {
  const { terms } = manuscript.terms;
  return pairsOf(given).flatMap(([fabric, value]) =>
    sentencesOf(value).flatMap((words) => {
      const count = gaugeFromWords(words, terms);
      const span = locate(manuscript, words.replace(/, (?:before|after) blocking$/, ''));
      return count ? [{ fabric: fabric || (count.fabric ?? ''), count, span }] : [];
    }),
  );
}

/** A gauge may be one line, a list of swatches, or a mapping (before, after, swatches). */
function sentencesOf(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(sentencesOf);
  if (typeof value !== 'object' || value === null) return [wordsOf(value)];
  return Object.entries(value).flatMap(([key, each]) =>
    sentencesOf(each).map((words) => (STATE_KEY.test(key) ? `${words}, ${stateSaid(key)}` : words)),
  );
}

const stateSaid = (key: string): string =>
  /^(?:un|before)/i.test(key) ? 'before blocking' : 'after blocking';

const STATE_KEY = /^(?:un)?blocked$|^(?:before|after)(?: blocking)?$|washed/i;

const GAUGE_LINE = /^[\s>*•#_-]{0,8}(?:gauge|tension)\b[^\n]{0,400}(?:\n[^\n]{1,300}){0,3}/gim;

function inText({ text, terms }: Written): readonly Stated[] {
  for (const found of text.slice(0, 40_000).matchAll(GAUGE_LINE)) {
    const lines = found[0].split('\n');
    let from = found.index;
    const stated: Stated[] = [];
    for (const line of lines) {
      const count = gaugeFromWords(line, terms.terms);
      const span = { from, to: from + line.length };
      if (count) stated.push({ fabric: count.fabric ?? '', count, span });
      from += line.length + 1;
    }
    if (stated.length > 0) return stated;
  }
  return [];
}

function grouped(stated: readonly Stated[]): readonly (readonly Stated[])[] {
  const groups = new Map<string, Stated[]>();
  for (const each of stated) {
    const key = each.fabric.toLowerCase();
    const group = groups.get(key);
    if (group) group.push(each);
    else groups.set(key, [each]);
  }
  return [...groups.values()];
}

function recordsOf(
  stated: readonly Stated[],
  { text }: Written,
  terms: Terms,
): readonly GaugeRecord[] {
  return grouped(stated).map((group) => recordOf(group, terms, namedStitches(text, terms)));
}

/**
 * Counts of one fabric as one record: after blocking if both states are given. `named`: the stitches that
 * are meant where the fabric's name holds none ("square", "pattern").
 */
function recordOf(
  group: readonly Stated[],
  terms: Terms,
  named: NamedStitches | null,
): GaugeRecord {
  const [first] = group;
  const name = fabricNamed(first!.fabric, terms);
  const all = group.map(({ count }) => count);
  const isAfter = all.some(({ blocking }) => blocking === 'after');
  const isOther = ({ blocking }: GaugeCount): boolean => isAfter && blocking === 'before';
  const counts = all.filter((count) => !isOther(count));
  const width = meanSize(counts, 'across');
  const height = meanSize(counts, 'up');
  const unit = counts.flatMap(({ across }) => across?.unit ?? [])[0] ?? 'stitch';
  const isInPattern =
    first!.fabric !== '' &&
    name.stem === null &&
    !name.isMesh &&
    unit === 'stitch' &&
    width !== null;
  return {
    fabric: first!.fabric,
    stem: name.stem ?? (name.isMesh ? null : (named?.commonest ?? null)),
    isPlain: name.isPlain,
    isMesh: name.isMesh || unit === 'box',
    patternHeight: isInPattern ? (named?.meanHeight ?? null) : null,
    worked: name.worked ?? counts.flatMap(({ up }) => up?.worked ?? [])[0] ?? null,
    unitWidthMm: width?.mm ?? null,
    unit,
    rowHeightMm: height?.mm ?? null,
    widthSpread: width?.spread ?? 0,
    heightSpread: height?.spread ?? 0,
    blocking: counts[0]?.blocking ?? 'unsaid',
    counts,
    before: beforeOf(all.filter(isOther)),
    span: first!.span,
  };
}

const beforeOf = (counts: readonly GaugeCount[]): BeforeBlocking | null =>
  counts.length === 0
    ? null
    : {
        unitWidthMm: meanSize(counts, 'across')?.mm ?? null,
        rowHeightMm: meanSize(counts, 'up')?.mm ?? null,
      };

interface NamedStitches {
  /** What a gauge that names no stitch is taken to mean. */
  readonly commonest: StemId;
  /** Against an sc, by how often each is named. */
  readonly meanHeight: number;
}

/** The stitches that the pattern names; `null` where it names none. */
function namedStitches(text: string, terms: Terms): NamedStitches | null {
  const names = new RegExp(`\\b(?:${stitchNamesSource(terms)})\\b`, 'gi');
  const tally = new Map<StemId, number>();
  for (const [word] of text.slice(0, 100_000).matchAll(names)) {
    const { stem } = fabricNamed(word, terms);
    if (stem && stem !== 'slip') tally.set(stem, (tally.get(stem) ?? 0) + 1);
  }
  let best: StemId | null = null;
  let all = 0;
  let heights = 0;
  for (const [stem, n] of tally) {
    if (n > (best ? (tally.get(best) ?? 0) : 0)) best = stem;
    all += n;
    heights += n * proportionOf(stem).height;
  }
  return best && { commonest: best, meanHeight: heights / all };
}

/** From a chart, from front matter (`mesh: 2`), or from the words for an open box. */
function meshGapOf({ charts, text, head }: Written): number | null {
  const charted = charts.find(({ mesh }) => mesh)?.mesh?.gap;
  if (charted !== undefined) return charted;
  const told = memberOf(head.data, 'mesh');
  if (typeof told === 'number' && told > 0 && told < 10) return told;
  const defined = /\b(?:open (?:box|mesh|square)|mesh|sp(?:ace)?)\b[^\n]{0,60}?\bch[ -]?([1-5])\b/i;
  const found = defined.exec(text.slice(0, 100_000));
  return found ? Number(found[1]) : null;
}
