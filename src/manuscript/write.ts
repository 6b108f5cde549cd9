/**
 * The manuscript written out again: every row and every definition in house form, in the same or
 * the other terms. All the rest of the text stays as it is, but for stitch words that the work
 * depends on: standing orders in notes, the mesh of a chart, gauges and stitches at the head.
 */
import { type Terms, writeInstruction, writeSpecial, writeWords } from '../notation/index.ts';
import { applyEdits, type Edit, type Span } from '../source/index.ts';
import { readFrontMatter } from './front-matter.ts';
import type { Head, Manuscript } from './manuscript.ts';
import { plainText } from './plain.ts';

export interface WritePatternOptions {
  /** Terms to write in; those that the pattern was read in unless given. */
  readonly terms?: Terms;
}

/**
 * The canonical text of a manuscript: reading and working it gives the same fabric. Rows come out
 * on one line each. Where the terms change, or were given from outside, the head states them.
 */
export function writePattern(manuscript: Manuscript, options: WritePatternOptions = {}): string {
  const from = manuscript.terms.terms;
  const to = options.terms ?? from;
  const rewritten = [...rowEdits(manuscript, from, to), ...specialEdits(manuscript, from, to)];
  const worded = from === to ? [] : wordEdits(manuscript, from, to);
  const edits = [...rewritten, ...worded.filter((edit) => !rewritten.some((e) => meet(e, edit)))];
  const stated = statement(manuscript, to);
  const others = stated.filter((edit) => !edits.some((e) => meet(e, edit)));
  return applyEdits(manuscript.text, [...edits, ...others]);
}

const meet = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/** `words` in place of the ink of a span: blanks and line ends around it belong to the page. */
function inPlaceOf({ from, to }: Span, text: string, words: string): Edit {
  const written = text.slice(from, to);
  const start = from + written.length - written.trimStart().length;
  return { from: start, to: Math.max(start, from + written.trimEnd().length), insert: words };
}

function rowEdits(manuscript: Manuscript, from: Terms, to: Terms): readonly Edit[] {
  const plain = plainText(manuscript.text);
  const sizes = manuscript.head.sizes.length;
  return manuscript.parts.flatMap(({ instructions }) =>
    instructions.map((placed) => {
      const quote = quoteFrom(plain, placed.from);
      const words = writeInstruction(placed.instruction, { from, to, sizes, quote });
      return inPlaceOf(placed, plain, words);
    }),
  );
}

/** Definitions at the head stand inside YAML, whose quotes and colons are its own. */
function specialEdits(manuscript: Manuscript, from: Terms, to: Terms): readonly Edit[] {
  const plain = plainText(manuscript.text);
  const bodyFrom = manuscript.head.span?.to ?? 0;
  const sizes = manuscript.head.sizes.length;
  return manuscript.specials.flatMap((special) => {
    if (special.inline || special.from < bodyFrom) return [];
    const quote = quoteFrom(plain, special.from);
    return [inPlaceOf(special, plain, writeSpecial(special, { from, to, sizes, quote }))];
  });
}

const quoteFrom =
  (text: string, from: number) =>
  (span: Span): string =>
    text.slice(from + span.from, from + span.to);

const HEAD_ENTRIES = ['gauge', 'tension', 'stitches', 'specials', 'special stitches'];

/** Stitch words outside rows and definitions that the work or the figures read. */
function wordEdits(manuscript: Manuscript, from: Terms, to: Terms): readonly Edit[] {
  const { text, charts, orders, parts } = manuscript;
  const { entries } = readFrontMatter(text);
  const ordered = [orders, ...parts.map((part) => part.orders)].flat();
  const spans: readonly Span[] = [
    ...HEAD_ENTRIES.flatMap((key) => entries.get(key)?.valueSpan ?? []),
    ...ordered.filter(({ kind }) => kind !== 'terms'),
    ...charts.flatMap((chart) => meshLines(text, chart)),
  ];
  return apart(spans).map((span) => ({
    ...span,
    insert: writeWords(text.slice(span.from, span.to), { from, to }),
  }));
}

const meshLines = (text: string, { from, to }: Span): readonly Span[] =>
  [...text.slice(from, to).matchAll(/^[ \t]*mesh[ \t]*:.*$/gim)].map((found) => ({
    from: from + found.index,
    to: from + found.index + found[0].length,
  }));

/** One sentence may give several orders: spans that overlap become one. */
function apart(spans: readonly Span[]): readonly Span[] {
  const merged: Span[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = merged.at(-1);
    if (last && span.from < last.to) {
      merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    } else merged.push(span);
  }
  return merged;
}

/** The edits after which the text says that it is in these terms. */
function statement({ text, head, orders, parts, terms }: Manuscript, to: Terms): readonly Edit[] {
  const isInferred = head.terms === null && terms.because !== 'option';
  if (head.terms === to || (isInferred && terms.terms === to)) return [];
  const inHead = head.span !== null && head.termsSpan !== null && head.termsSpan.to <= head.span.to;
  const inWords = [orders, ...parts.map((part) => part.orders)]
    .flat()
    .filter(({ kind }) => kind === 'terms');
  const said: readonly Span[] = [
    ...inWords,
    ...(head.termsSpan && !inHead ? [head.termsSpan] : []),
  ];
  const edits: Edit[] = apart(said).map((span) => ({
    ...span,
    insert: named(text.slice(span.from, span.to), to),
  }));
  if (inHead && head.termsSpan) edits.push({ ...head.termsSpan, insert: to });
  else if (head.terms === null) edits.push(newEntry(text, head, to));
  return edits;
}

/** "US terms", "British terminology": the country's name alone is exchanged. */
const named = (words: string, to: Terms): string =>
  words
    .replace(/\bU\.?[SK]\b\.?/g, to)
    .replace(/\b(?:American|British)\b/g, to === 'US' ? 'American' : 'British');

function newEntry(text: string, { span, title }: Head, to: Terms): Edit {
  if (span === null) return newSentence(text, title, to);
  const fence = /^---[ \t]*(\r\n|\r|\n)/.exec(text.slice(span.from)) ?? ['---\n', '\n'];
  const at = span.from + fence[0].length;
  return { from: at, to: at, insert: `terms: ${to}${fence[1]}` };
}

/** Not a new head: pasted text is cut into rows by other rules than a manuscript with one. */
function newSentence(text: string, title: string | null, to: Terms): Edit {
  const start = text.startsWith('\uFEFF') ? 1 : 0;
  const line = /^[^\r\n]*/.exec(text.slice(start))?.[0] ?? '';
  if (title === null || !line.includes(title)) {
    return { from: start, to: start, insert: `${to} terms.\n\n` };
  }
  const at = start + line.length;
  return { from: at, to: at, insert: `\n\n${to} terms.` };
}
