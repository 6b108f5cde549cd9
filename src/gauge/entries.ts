/** Plain data of the front matter, looked at without trust: any shape may stand there. */
import type { Manuscript } from '../manuscript/index.ts';
import type { Span } from '../source/index.ts';

export function memberOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null
    ? (Object.getOwnPropertyDescriptor(value, key)?.value as unknown)
    : undefined;
}

/** A value as words: plain ones as they are, lists and mappings joined by commas. */
export function wordsOf(value: unknown): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (Array.isArray(value)) return value.map(wordsOf).join(', ');
  if (typeof value === 'object' && value !== null) {
    return Object.values(value).map(wordsOf).join(', ');
  }
  return '';
}

/** A mapping's pairs; a list's entries and a lone value have '' for a name. */
export function pairsOf(value: unknown): readonly (readonly [string, unknown])[] {
  if (Array.isArray(value)) return value.map((each: unknown) => ['', each] as const);
  if (typeof value === 'object' && value !== null) return Object.entries(value);
  return value === undefined || value === null ? [] : [['', value]];
}

/**
 * Where words of the front matter stand in the text; its first line where they are not found as
 * they are (folded lines, quotes).
 */
export function locate({ head, text }: Pick<Manuscript, 'head' | 'text'>, words: string): Span {
  const { span } = head;
  if (!span) return { from: 0, to: 0 };
  const wanted = words.trim();
  const at = wanted === '' ? -1 : text.slice(span.from, span.to).indexOf(wanted);
  if (at < 0) return { from: span.from, to: Math.min(span.to, span.from + 3) };
  return { from: span.from + at, to: span.from + at + wanted.length };
}
