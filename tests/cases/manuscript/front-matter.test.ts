import { describe, expect, test } from 'vitest';
import { readFrontMatter } from '../../../src/manuscript/index.ts';
import { processorMs } from '../../processor-time.ts';
import { codesOf, instructions, markedBy, read } from './read.ts';

const ROW = 'Rnd 1: 6 sc in magic ring. (6)';

describe('front matter', () => {
  test('is read into the head', () => {
    const text = [
      '---',
      'title: Little disc',
      'version: 1.0',
      'date: 2026-11-25',
      'terms: UK',
      'language: en',
      'yarn: { A: { ball: 50 g / 110 m }, B: { ball: 25 g / 60 m } }',
      'sizes: [S, M, L]',
      '---',
      ROW,
    ].join('\n');
    const { head, terms } = read(text);
    expect(head).toMatchObject({
      title: 'Little disc',
      version: '1.0',
      date: '2026-11-25',
      terms: 'UK',
      language: 'en',
      yarns: ['A', 'B'],
      sizes: ['S', 'M', 'L'],
    });
    expect(text.slice(head.termsSpan?.from, head.termsSpan?.to)).toBe('UK');
    expect(terms).toMatchObject({ terms: 'UK', because: 'stated' });
    expect(head.data).toMatchObject({ yarn: { A: { ball: '50 g / 110 m' } } });
  });

  test('keeps the place of each key and value', () => {
    const text = '---\ntitle: Disc\nhook: 4 mm\n---\n';
    const hook = readFrontMatter(text).entries.get('hook');
    expect(text.slice(hook?.keySpan.from, hook?.keySpan.to)).toBe('hook');
    expect(text.slice(hook?.valueSpan.from, hook?.valueSpan.to)).toBe('4 mm');
  });

  test('may be absent, or follow a byte order mark, or end lines as Windows does', () => {
    expect(read(ROW).head.span).toBeNull();
    expect(read(`\uFEFF---\ntitle: Disc\nterms: US\n---\n${ROW}`).head.title).toBe('Disc');
    expect(read(`---\r\ntitle: Disc\r\nterms: US\r\n---\r\n${ROW}`).head.title).toBe('Disc');
  });

  test('broken in one entry leaves the others and the pattern', () => {
    const text = `---\ntitle: "Disc\nterms: UK\nhook: 4 mm\n---\n${ROW}`;
    expect(codesOf(text)).toEqual(['front-matter-broken']);
    expect(read(text).head).toMatchObject({ title: null, terms: 'UK' });
    expect(instructions(text)).toEqual([ROW]);
  });

  test('a colon in a value is a fault of that entry alone', () => {
    const text = `---\ntitle: Disc: the sequel\nterms: US\n---\n${ROW}`;
    expect(codesOf(text)).toEqual(['front-matter-broken']);
    expect(read(text).head.terms).toBe('US');
  });

  test('unclosed ends where its keys end', () => {
    const text = `---\ntitle: Disc\nterms: US\n\n${ROW}\n`;
    expect(codesOf(text)).toEqual(['front-matter-unclosed']);
    expect(read(text).head.title).toBe('Disc');
    expect(instructions(text)).toEqual([ROW]);
  });

  test('a rule above pasted text is none', () => {
    const text = `---\nMy little disc\n---\n\nUS terms\n\n${ROW}`;
    expect(codesOf(text)).toEqual([]);
    expect(instructions(text)).toEqual([ROW]);
  });

  test('a mistyped key is named with the one that is meant; an own key is let be', () => {
    const text = `---\ntitel: Disc\nterms: US\nmood: sunny\n---\n${ROW}`;
    expect(codesOf(text)).toEqual(['unknown-front-matter-key']);
    expect(markedBy(text, 'unknown-front-matter-key')).toEqual(['titel']);
  });

  test('terms that are none are said to be none', () => {
    expect(codesOf(`---\nterms: French\n---\n${ROW}`)).toContain('front-matter-value');
  });

  test('of two keys alike the first is used, and the second marked', () => {
    const text = `---\nterms: UK\nTerms: US\n---\n${ROW}`;
    expect(codesOf(text)).toEqual(['front-matter-broken']);
    expect(markedBy(text, 'front-matter-broken')).toEqual(['Terms']);
    expect(read(text).head.terms).toBe('UK');
  });

  test('a definition may stand there', () => {
    const text = `---\nterms: US\nstitches:\n  Shell: 5 dc in same st\n---\n${ROW}`;
    expect(read(text).specials.map((special) => special.key)).toEqual(['shell']);
  });

  // The yaml package needs minutes for some of these: they are refused before it sees them.
  test.each([
    '? '.repeat(20_000),
    '['.repeat(30_000),
    '- '.repeat(20_000),
    `k: ${'{a: '.repeat(10_000)}`,
    `a: &x [1]\n${'b: *x\n'.repeat(30)}`,
    `a: &x [1]\n${Array.from({ length: 3000 }, (_, i) => `k${i}: *x\n`).join('')}`,
    'a: *nobody',
    Array.from({ length: 6000 }, (_, i) => `k${i}: 1`).join('\n'),
    'a: 1\n'.repeat(30_000),
  ])('hostile YAML costs little and loses no row (%#)', (yaml) => {
    const text = `---\nx: 1\n${yaml}\n---\n${ROW}`;
    const ms = processorMs(() => expect(instructions(text)).toEqual([ROW]));
    expect(ms).toBeLessThan(6000);
  });

  test('a key of an object prototype is data like any other', () => {
    const { head } = read(`---\n__proto__: { terms: UK }\nterms: US\n---\n${ROW}`);
    expect(head.terms).toBe('US');
    expect(Object.getPrototypeOf(head.data)).toBe(Object.prototype);
  });
});
