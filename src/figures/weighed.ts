/**
 * What the designer has weighed or unravelled, from front matter:
 *
 *     swatches:
 *       - 400 sc weigh 19 g
 *       - 10 hdc = 82 cm                    (unravelled)
 *     testers:
 *       - size M used 412 g
 *       - { yarn: B, used: 35 g }
 */
import { fabricNamed, stitchNamesSource } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import type { Terms } from '../notation/index.ts';
import { findLength, findWeight } from '../units/index.ts';
import type { YarnKey } from './yarn-path.ts';

/** Counted stitches with what they took: grams, or metres where they were unravelled. */
export interface Weighed {
  readonly amounts: ReadonlyMap<YarnKey, number>;
  readonly grams: number | null;
  readonly metres: number | null;
}

/** What a tester's whole piece took of one yarn. */
export interface TesterUse {
  /** Name of the size; `null` in a pattern of one size, or where none is said. */
  readonly size: string | null;
  /** Name of the yarn; `null`: the only one. */
  readonly yarn: string | null;
  readonly grams: number;
}

export interface Weighings {
  readonly swatches: readonly Weighed[];
  readonly testers: readonly TesterUse[];
  /** Entries that hold no weight, or no count: said, and not used. */
  readonly unread: readonly string[];
}

/** More weighings than anybody makes. */
const MOST = 200;

export function readWeighings({ head, terms }: Pick<Manuscript, 'head' | 'terms'>): Weighings {
  const swatches: Weighed[] = [];
  const testers: TesterUse[] = [];
  const unread: string[] = [];
  for (const words of entriesOf(head.data.swatches)) {
    const weighed = weighedIn(words, terms.terms);
    if (weighed) swatches.push(weighed);
    else unread.push(words);
  }
  for (const words of entriesOf(head.data.testers)) {
    const use = testerIn(words, head);
    if (use) testers.push(use);
    else unread.push(words);
  }
  return { swatches, testers, unread };
}

/** Each entry of a list as words: "size: M, used: 412 g" for a mapping. */
function entriesOf(value: unknown): readonly string[] {
  if (value === undefined || value === null) return [];
  const list: readonly unknown[] = Array.isArray(value) ? value : [value];
  return list.slice(0, MOST).map(said);
}

function said(value: unknown): string {
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value)
      .map(([key, each]) =>
        /^\d/.test(said(each)) && STITCH_KEY.test(key)
          ? `${said(each)} ${key}`
          : `${key} ${said(each)}`,
      )
      .join(', ');
  }
  return String(value).slice(0, 300);
}

/** `{ sc: 400 }` is said "400 sc"; `{ weighs: 19 g }` stays as it is. */
const STITCH_KEY = /^(?:ch|chains?|[a-z]{0,3}(?:sc|dc|tr)|sl st|single|double|half|treble)/i;

function weighedIn(words: string, terms: Terms): Weighed | null {
  const grams = findWeight(words)?.grams ?? null;
  const found = grams === null ? findLength(words.replace(/^.*?(?:=|measures?|is|are)/, '')) : null;
  const metres = found ? found.mm / 1000 : null;
  const amounts = amountsIn(words, terms);
  if (amounts.size === 0 || (grams === null && metres === null)) return null;
  return { amounts, grams, metres };
}

function amountsIn(words: string, terms: Terms): Map<YarnKey, number> {
  const pattern = new RegExp(
    `(\\d{1,6})\\s{0,2}(ch(?:ains?)?s?\\b|sl\\s?sts?\\b|(?:${stitchNamesSource(terms)})s?\\b)`,
    'gi',
  );
  const amounts = new Map<YarnKey, number>();
  for (const [, n = '', word = ''] of words.matchAll(pattern)) {
    const key: YarnKey | null = /^ch/i.test(word)
      ? 'chain'
      : /^s[ls]/i.test(word) && !/^single/i.test(word)
        ? 'slip'
        : fabricNamed(word, terms).stem;
    if (key) amounts.set(key, (amounts.get(key) ?? 0) + Number(n));
  }
  return amounts;
}

function testerIn(words: string, { sizes, yarns }: Manuscript['head']): TesterUse | null {
  const grams = findWeight(words)?.grams;
  if (grams === undefined || grams <= 0) return null;
  const names = (list: readonly string[]): string | null =>
    list.find((name) => name !== '' && isNamed(words, name)) ?? null;
  return { size: names(sizes), yarn: names(yarns), grams };
}

const isNamed = (words: string, name: string): boolean =>
  ` ${words.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ')} `.includes(
    ` ${name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim()} `,
  );
