// A whole pattern written out and read again gives the same fabric: the same kinds, anchors, yarns,
// sides and order of stitches in every size. So it does in the other terms, and back again.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Compiled, compile, writePattern } from '../../src/index.ts';
import { stemOf, type Terms } from '../../src/notation/index.ts';

const FOLDER = new URL('../../examples/', import.meta.url);
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.pattern.md'));
const work = (text: string): Compiled => compile(text, { fixes: false });
const other = (terms: Terms): Terms => (terms === 'US' ? 'UK' : 'US');

describe.each(names)('%s', (name) => {
  const piece = work(readFileSync(new URL(name, FOLDER), 'utf8'));

  test('written in house form it is the same fabric, and is written the same again', () => {
    const written = writePattern(piece.manuscript);
    const again = work(written);
    expect(rowsOf(again)).toEqual(rowsOf(piece));
    expect(clothsOf(again)).toEqual(clothsOf(piece));
    expect(again.findings).toEqual([]);
    expect(writePattern(again.manuscript)).toBe(written);
  });

  test('in the other terms it is the same fabric, and back again', () => {
    const abroad = work(writePattern(piece.manuscript, { terms: other(piece.terms) }));
    expect(abroad.terms).toBe(other(piece.terms));
    expect(rowsOf(abroad)).toEqual(rowsOf(piece));
    expect(clothsOf(abroad)).toEqual(clothsOf(piece));
    const home = work(writePattern(abroad.manuscript, { terms: piece.terms }));
    expect(home.terms).toBe(piece.terms);
    expect(clothsOf(home)).toEqual(clothsOf(piece));
    expect(writePattern(home.manuscript)).toBe(writePattern(piece.manuscript));
  });
});

describe('what is not a row', () => {
  const SMALL = '## Coaster\n\nMake it on a wet day.\n\nRnd 1: 6 sc in magic ring. (6 sc)\n';

  test('prose and headings stay; a text without a head states its new terms', () => {
    const written = writePattern(work(SMALL).manuscript, { terms: 'UK' });
    expect(written).toBe(`UK terms.\n\n${SMALL.replaceAll('sc', 'dc')}`);
    const titled = work(`Rain coaster\n\n${SMALL}`);
    const abroad = work(writePattern(titled.manuscript, { terms: 'UK' }));
    expect(abroad.text).toContain('Rain coaster\n\nUK terms.\n\n');
    expect(abroad.manuscript.head.title).toBe(titled.manuscript.head.title);
  });

  test('an entry of the head is exchanged, and one is put in where there is none', () => {
    const stated = work(`---\nterms: US\nhook: 4 mm\n---\n${SMALL}`);
    expect(writePattern(stated.manuscript, { terms: 'UK' })).toContain('---\nterms: UK\nhook');
    const silent = work(`---\nhook: 4 mm\n---\n${SMALL}`);
    expect(writePattern(silent.manuscript, { terms: 'UK' })).toContain('---\nterms: UK\nhook');
  });

  test('terms given from outside are stated', () => {
    const text = '## Coaster\n\nRnd 1: 6 dc in magic ring. (6 dc)\n';
    const given = compile(text, { terms: 'UK' });
    expect(work(writePattern(given.manuscript)).terms).toBe('UK');
  });

  test('terms stated in words are stated anew', () => {
    const piece = work(`This is written in US terms.\n\n${SMALL}`);
    const written = writePattern(piece.manuscript, { terms: 'UK' });
    expect(written).toContain('This is written in UK terms.');
    expect(work(written).terms).toBe('UK');
  });

  test('an order in a note means the same stitch', () => {
    const notes =
      '## Notes\n\nThe beginning ch 3 counts as dc here and throughout; it is loose.\n\n';
    const written = writePattern(work(`---\nterms: US\n---\n${notes}${SMALL}`).manuscript, {
      terms: 'UK',
    });
    expect(written).toContain('The beginning ch 3 counts as tr here and throughout; it is loose.');
  });

  test('the mesh of a chart and the gauge name their stitch in the new terms', () => {
    const head = '---\nterms: US\ngauge: { dc: 16 sts x 8 rows = 10 cm }\n---\n';
    const chart = '```chart Gate\nmesh: dc, ch 1\n. open box\n# filled box\n\n#.#\n###\n```\n';
    const written = writePattern(work(head + SMALL + chart).manuscript, { terms: 'UK' });
    expect(written).toContain('mesh: tr, ch 1');
    expect(written).toContain('gauge: { tr: 16 sts');
  });
});

/** Rows by what they are, not by where their words stand. */
const rowsOf = ({ fabric }: Compiled): unknown =>
  fabric.cloths.map(({ rows }) =>
    rows.map(({ part, instance, number, side, used, nodes, verdict, tally }) => {
      const { stitches, chains, slips, spaces, boxes } = tally;
      const made = { stitches, chains, slips, spaces, boxes };
      return { part, instance, number, side, used, nodes, verdict, made };
    }),
  );

/** Every node of every size as one line of text: kind, yarn, flags, what it is worked into. */
const clothsOf = ({ fabric, terms }: Compiled): readonly (readonly string[])[] =>
  fabric.cloths.map(({ nodes }) =>
    Array.from({ length: nodes.n }, (_, id) => {
      const kind = fabric.kinds.kinds[nodes.kind[id] ?? -1];
      const yarn = fabric.yarns[nodes.yarn[id] ?? -1] ?? 'none';
      const anchors = nodes.anchors.slice(nodes.anchorFrom[id], nodes.anchorFrom[id + 1]);
      return [neutral(kind?.name ?? '', terms), yarn, nodes.flags[id], anchors.join(' ')].join('|');
    }),
  );

/** A special stitch's name may hold stitch words: "3-dc cl" and "3-tr cl" are one. */
const neutral = (name: string, terms: Terms): string =>
  name.replace(/[a-z]+/g, (word) => stemOf(word, terms) ?? word);
