import { describe, expect, test } from 'vitest';
import { codesOf, instructions, markedBy, read } from './read.ts';

const chart = (...lines: readonly string[]): string =>
  ['US terms', '', 'Rnd 1: 6 sc in magic ring. (6)', '', '```chart Dot', ...lines, '```', '', 'Rnd 2: sc in each st. (6)'].join('\n');
const legend = ['mesh: dc, ch 2', '. open box', '# filled box', ''];

describe('chart blocks', () => {
  test('cells, mesh, spans of rows', () => {
    const text = chart(...legend, '#.#', '.#.');
    const [dot] = read(text).charts;
    expect(dot).toMatchObject({
      name: 'Dot',
      mesh: { post: 'dc', gap: 2 },
      rows: [
        ['filled', 'open', 'filled'],
        ['open', 'filled', 'open'],
      ],
    });
    expect(dot?.rowSpans.map(({ from, to }) => text.slice(from, to))).toEqual(['#.#', '.#.']);
    expect(codesOf(text)).toEqual([]);
    expect(instructions(text)).toHaveLength(2);
  });

  test('lacets, bars and boxes that are not there', () => {
    const text = chart('. open box', 'V lacet', '= bar', '_ none', 'V=_.');
    expect(read(text).charts[0]?.rows).toEqual([['lacet', 'bar', 'none', 'open']]);
  });

  test('rows of different lengths: one finding, at the first that differs from most', () => {
    const text = chart(...legend, '#.#', '.#', '...', '....');
    expect(codesOf(text)).toEqual(['chart-rows-differ']);
    expect(markedBy(text, 'chart-rows-differ')).toEqual(['.#']);
  });

  test('a sign without legend, once', () => {
    const text = chart(...legend, '#x#', 'x.#');
    expect(codesOf(text)).toEqual(['chart-sign-unknown']);
    expect(markedBy(text, 'chart-sign-unknown')).toEqual(['x']);
  });

  test('no rows', () => {
    expect(codesOf(chart(...legend))).toEqual(['chart-empty']);
  });

  test('two of one name', () => {
    const text = chart(...legend, '#.#', '```', '', '```chart Dot', ...legend, '.');
    expect(codesOf(text)).toEqual(['chart-doubled']);
  });

  test('an unclosed block ends with its grid', () => {
    const text = chart(...legend, '#.#', '.#.').replace('\n```\n', '\n');
    expect(read(text).charts[0]?.rows).toHaveLength(2);
    expect(instructions(text)).toHaveLength(2);
  });

  test('another fenced block is read as text', () => {
    expect(instructions('```\nRnd 1: 6 sc in magic ring. (6)\n```')).toHaveLength(1);
  });
});
