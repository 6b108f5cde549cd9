/** What the head of the pattern says: front matter first, else the words of the pasted text. */
import { type Finding, frontMatterValue } from '../finding/index.ts';
import { isColour, isKnownWord, type Terms } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Block } from './block.ts';
import { lineAt } from './fences.ts';
import type { FrontMatter } from './front-matter.ts';
import type { Head } from './manuscript.ts';
import { sizesOf, statedSizes } from './sizes.ts';
import { titleWords } from './titles.ts';
import type { Marked } from './trigrams.ts';
import type { Entry } from './yaml-entries.ts';

/** Terms that the pattern's words state, "UK terms used throughout", with their place. */
export type StatedTerms = { readonly terms: Terms; readonly span: Span } | null;

/** The head with the terms that the words state, unless front matter states them. */
export const withStated = (head: Head, inWords: StatedTerms): Head =>
  head.terms || !inWords ? head : { ...head, terms: inWords.terms, termsSpan: inWords.span };

export function readHead(
  front: FrontMatter,
  { text, marks }: Marked,
  blocks: readonly Block[],
): { value: Head; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const entry = front.entries.get('terms');
  const terms = entry ? termsOf(entry) : null;
  if (entry && !terms && entry.value !== null) {
    const words = { entry: entry.key, value: said(entry, text), what: 'US or UK' };
    findings.push(frontMatterValue(entry.valueSpan, words));
  }
  const sizes = front.entries.get('sizes');
  if (sizes && sizes.value !== null && !statedSizes(sizes.value)) {
    const words = { entry: sizes.key, value: said(sizes, text), what: 'a list of sizes' };
    findings.push(frontMatterValue(sizes.valueSpan, words));
  }
  return {
    value: {
      title: writtenOf(front, 'title') ?? titleOf(text, blocks),
      version: writtenOf(front, 'version'),
      date: writtenOf(front, 'date'),
      terms,
      termsSpan: terms && entry ? entry.valueSpan : null,
      language: writtenOf(front, 'language'),
      sizes: sizesOf(front, { text, marks }, blocks),
      yarns: yarnsOf(front, text, blocks),
      data: front.data,
      span: front.span,
    },
    findings,
  };
}

/** A value in a finding: as written, cut to what a line holds. */
function said(entry: Entry, text: string): string {
  const words = text.slice(entry.valueSpan.from, entry.valueSpan.to).trim();
  return `"${words.length > 40 ? `${words.slice(0, 40)}…` : words}"`;
}

function writtenOf(front: FrontMatter, key: string): string | null {
  const written = front.entries.get(key)?.written?.trim();
  return written ? written : null;
}

function termsOf({ written }: Entry): Terms | null {
  const found = /^(us|uk)(?: +(?:terms|terminology))?$/i.exec(written?.trim() ?? '');
  return found ? (found[1]?.toUpperCase() as Terms) : null;
}

/** "# Title", or the short line above everything. */
function titleOf(text: string, blocks: readonly Block[]): string | null {
  const [first] = blocks;
  if (first?.kind === 'prose' && first.section === 'work') {
    const line = text.slice(first.from, Math.min(first.to, lineAt(text, first.from).to)).trim();
    return line.length <= 60 && !/[.,;:]$/.test(line) ? titleWords(line) : null;
  }
  if (first?.kind !== 'heading' || first.section !== 'work' || first.level > 1) return null;
  return first.name;
}

/** Keys of `yarn`, or letters that the list of materials names. */
function yarnsOf(front: FrontMatter, text: string, blocks: readonly Block[]): readonly string[] {
  const materials = front.entries.get('materials')?.value;
  const value =
    front.entries.get('yarn')?.value ??
    front.entries.get('yarns')?.value ??
    memberOf(materials, 'yarn');
  if (Array.isArray(value)) return value.flatMap(nameOfYarn);
  if (typeof value === 'object' && value !== null) return Object.keys(value);
  const names = new Set<string>();
  for (const block of blocks) {
    if (block.kind === 'prose' && block.section === 'materials') {
      for (const name of lettersIn(text.slice(block.from, Math.min(block.to, block.from + 4000)))) {
        names.add(name);
      }
    }
  }
  return [...names];
}

function memberOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null
    ? (Object.getOwnPropertyDescriptor(value, key)?.value as unknown)
    : undefined;
}

function nameOfYarn(item: unknown): string[] {
  if (typeof item === 'string') return [item];
  const name = memberOf(item, 'name') ?? memberOf(item, 'letter');
  return typeof name === 'string' ? [name] : [];
}

const LETTER = String.raw`([A-Z]|MC|CC\d?)`;
const LETTERS = new RegExp(
  [
    String.raw`\b(?:[Yy]arn|[Cc]olou?r|[Ss]hade|[Tt]hread)\s+${LETTER}\b`,
    String.raw`[([]${LETTER}[)\]]`,
    String.raw`^\W*${LETTER}\s*[:=–-]\s`,
  ].join('|'),
  'gm',
);

/** "Yarn A: …", "Colour B", "(MC)", "A – 50 g of cotton", "Light Pink (LP)". */
const lettersIn = (words: string): string[] => [
  ...[...words.matchAll(LETTERS)].map((found) => found[1] ?? found[2] ?? found[3] ?? ''),
  ...[...words.matchAll(CODES)].flatMap(([, colour = '', code = '']) =>
    isColour(colour.toLowerCase()) && !isKnownWord(code.toLowerCase()) ? [code] : [],
  ),
];

/** "Light Pink (LP)", "white [Wh]": a short form of a colour. */
const CODES = /\b([A-Za-z]{3,10}) ?[([]([A-Z][A-Za-z]{1,2})[)\]]/g;
