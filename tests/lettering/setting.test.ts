/** Words set in our own alphabets: spacing, accents, lines, borders. The pictures were looked at. */
import { describe, expect, test } from 'vitest';
import { type LetteringOptions, letterWords, printedChart } from '../../src/index.ts';

function picture(words: string, options: LetteringOptions = {}): string[] {
  const { value } = letterWords(words, options);
  return (value?.grid.rows ?? []).map((row) =>
    row.map((cell) => (cell === 'filled' ? '#' : '.')).join(''),
  );
}

/** The smallest number of open boxes in a row between the first letter and the second. */
function gapOf(pair: string, options: LetteringOptions = {}): number {
  const { value } = letterWords(pair, options);
  const [first, second] = value!.letters;
  return second!.column - first!.column - first!.width;
}

describe('spacing', () => {
  test('upright neighbours stand as far apart as asked', () => {
    expect(gapOf('HH')).toBe(2);
    expect(gapOf('HH', { letterSpace: 1 })).toBe(1);
    expect(gapOf('HH', { letterSpace: 4 })).toBe(4);
  });

  test.each(['LT', 'TA', 'AT', 'LV', 'To', 'LY'])('%s is drawn together', (pair) => {
    expect(gapOf(pair)).toBeLessThan(gapOf('HH'));
  });

  test.each(['HI', 'OO', 'nn', 'EB', 'Il'])('%s is not', (pair) => {
    expect(gapOf(pair)).toBe(2);
  });

  test.each([1, 2])('at %i no two letters touch, not even at a corner', (letterSpace) => {
    const signs = [..."ABDGJKLPQRTVWXYZabcfgijklprtvxyzÄÉŻłßæ&7/'"];
    for (const a of signs) {
      for (const b of signs) {
        const apart = picture(`${a}${b}`, { letterSpace });
        const pieces = (words: string) => letterWords(words).value!;
        expect(countPieces(apart), a + b).toBe(countPieces(picture(a)) + countPieces(picture(b)));
        expect(pieces(a + b).letters).toHaveLength(2);
      }
    }
  });

  test('words stand apart by the word space', () => {
    expect(picture('I I', { wordSpace: 5, height: 5 })[0]).toBe('#.....#');
  });
});

/** Pieces that hang together by edges or corners. */
function countPieces(rows: readonly string[]): number {
  const left = new Set(
    rows.flatMap((row, y) => [...row].flatMap((sign, x) => (sign === '#' ? [`${x} ${y}`] : []))),
  );
  let n = 0;
  for (const start of left) {
    n++;
    const waiting = [start];
    left.delete(start);
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      const [x = 0, y = 0] = at.split(' ').map(Number);
      for (let i = 0; i < 9; i++) {
        const near = `${x - 1 + (i % 3)} ${y - 1 + Math.floor(i / 3)}`;
        if (left.delete(near)) waiting.push(near);
      }
    }
  }
  return n;
}

describe('lines', () => {
  test('stand one below the other, the shorter where it is asked', () => {
    const at = (align: 'left' | 'centre' | 'right') =>
      picture('H\nII', { height: 5, align, letterSpace: 4, lineSpace: 1 });
    expect(at('left')).toHaveLength(11);
    expect(at('left')[0]).toBe('#..#..');
    expect(at('centre')[0]).toBe('.#..#.');
    expect(at('right')[0]).toBe('..#..#');
    expect(at('left')[5]).toBe('......');
  });

  test('keep the open rows asked for between the lowest and the highest box', () => {
    const rows = picture('g\nÅ', { lineSpace: 1 });
    expect(rows.filter((row) => !row.includes('#'))).toHaveLength(2);
  });
});

describe('accents', () => {
  test('stand over the letter, an i without its dot', () => {
    expect(picture('í')).toEqual(['.##', '##.', '...', '.#.', '.#.', '.#.', '.#.', '.#.']);
  });

  test('may be typed as one sign or two', () => {
    expect(picture('e\u0301')).toEqual(picture('é'));
  });

  test('sharp s among capitals is two letters, each with the span of the sign', () => {
    const { value } = letterWords('ß', { height: 5 });
    expect(value?.letters.map(({ sign, from, to }) => [sign, from, to])).toEqual([
      ['S', 0, 1],
      ['S', 0, 1],
    ]);
  });
});

describe('borders', () => {
  const framed = (border: LetteringOptions['border'] & string, words = 'I') =>
    picture(words, { height: 5, border });

  test.each(['line', 'double', 'dashes', 'dots', 'steps', 'points'] as const)(
    '%s closes and is symmetrical about both middles',
    (border) => {
      for (const words of ['I', 'H']) {
        const rows = framed(border, words);
        const flipped = rows.map((row) => [...row].reverse().join(''));
        expect(flipped).toEqual(rows);
        expect(rows.toReversed()[0]).toBe(rows[0]);
        expect(rows[0]?.[0]).toBe('#');
      }
    },
  );

  test('a line with its open boxes inside', () => {
    expect(framed('line').slice(0, 4)).toEqual(['#####', '#...#', '#.#.#', '#.#.#']);
  });

  test('a margin stands inside the border, and without one around the words', () => {
    expect(picture('I', { height: 5, margin: 2 })[2]).toBe('..#..');
  });
});

test('the printed chart knows where its rows stand', () => {
  const { value } = letterWords('Tø', { name: 'Tide', mesh: { post: 'dc', gap: 1 } });
  const chart = printedChart(value!.grid);
  const rows = chart.rowSpans.map(({ from, to }) => chart.text.slice(from, to));
  expect(rows).toEqual(picture('Tø'));
});

test('nothing is made of letters that are missing, or of words too wide for a chart', () => {
  expect(letterWords('Ω').value).toBeNull();
  const { value, findings } = letterWords('W'.repeat(300));
  expect(value).toBeNull();
  expect(findings.map(({ code }) => code)).toEqual(['picture-size']);
});

test('any words and options give an outcome', () => {
  for (const words of ['', '\n\n', '\u0301', '👩‍👧', '\ud800', 'a'.repeat(5000), 'A\n\nB', '\t']) {
    for (const height of [0, -7, 7, 5.5, Number.NaN, 1e9]) {
      const { value, findings } = letterWords(words, { height });
      expect(value !== null || findings.length > 0).toBe(true);
    }
  }
});
