/** The patterns in docs/writing.md are proven, so that the page never shows what is not read. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile } from '../src/index.ts';

const page = readFileSync(new URL('../docs/writing.md', import.meta.url), 'utf8');
const example = /<!-- check: (US|UK)(?:, (\d) sizes)? -->\n\n((?: {4}.*\n|\n)+)/g;
const examples = [...page.matchAll(example)].map(([, terms, sizes = '1', indented = '']) => ({
  terms,
  sizes: Number(sizes),
  text: indented.replace(/^ {4}/gm, ''),
}));

describe('each pattern of docs/writing.md comes out', () => {
  test('and there are some', () => {
    expect(examples).toHaveLength(2);
  });

  test.each(examples)('$terms, $sizes', ({ text, terms, sizes }) => {
    const compiled = compile(text);
    expect(compiled.findings).toEqual([]);
    expect(compiled.terms).toBe(terms);
    expect(compiled.sizes).toHaveLength(sizes);
    expect(new Set(compiled.rows.map(({ verdict }) => verdict))).toEqual(new Set(['proven']));
  });
});

/** A key that the page names and the reader calls unknown would be a trap, and so would one left out. */
test('the head of docs/writing.md names keys that are known', () => {
  const [, table = ''] = /## The head\n([\s\S]*?)\n## /.exec(page) ?? [];
  const keys = [...table.matchAll(/^\| (`.*?`) \|/gm)].flatMap(([, cell = '']) =>
    [...cell.matchAll(/`(\w+)`/g)].map(([, key = '']) => key),
  );
  expect(keys).toContain('gauge');
  for (const key of keys) {
    const text = `---\nterms: US\n${key}x: a\n---\nRnd 1: 6 sc in magic ring. (6 sc)\n`;
    const told = compile(text).findings.map(({ message }) => message);
    expect(told.join('\n'), key).toContain(`"${key}"`);
  }
});
