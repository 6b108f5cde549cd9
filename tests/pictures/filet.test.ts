// Filet charts as drawings: laws of both hands, directions from the fabric, true proportion, words.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  compile,
  type DrawChartsOptions,
  type Drawing,
  drawCharts,
  toSvg,
} from '../../src/index.ts';
import type { Mark } from '../../src/pictures/index.ts';
import { SMALLEST_TYPE_MM } from '../../src/pictures/index.ts';

const bag = readFileSync(
  new URL('../../examples/low-tide-errand-bag.pattern.md', import.meta.url),
  'utf8',
);

const drawn = (text: string, options: DrawChartsOptions = {}) => drawCharts(compile(text), options);

const one = (text: string, options: DrawChartsOptions = {}): Drawing => {
  const drawing = drawn(text, options)[0]?.drawings[0];
  if (!drawing) throw new Error('no drawing');
  return drawing;
};

type At = readonly [x: number, y: number];

/** Every mark that is no group, with the sum of the moves of the groups around it. */
function* leaves(marks: readonly Mark[], at: At = [0, 0]): Generator<{ mark: Mark; at: At }> {
  for (const mark of marks) {
    if (mark.kind !== 'group') yield { mark, at };
    else {
      const [dx, dy] = mark.at ?? [0, 0];
      yield* leaves(mark.marks, [at[0] + dx, at[1] + dy]);
    }
  }
}

const texts = (drawing: Drawing) =>
  [...leaves(drawing.marks)].flatMap(({ mark, at }) =>
    mark.kind === 'text' ? [{ text: mark.text, x: mark.at[0] + at[0], y: mark.at[1] + at[1] }] : [],
  );

/** How far to the right the first text of this wording stands, in mm. */
const placeOf = (text: string, wanted: string): number =>
  texts(one(text)).find((each) => each.text === wanted)?.x ?? Number.NaN;

/** The marks of the chart's own boxes: "r1-b3" and where their first point lies. */
const boxes = (drawing: Drawing) =>
  [...leaves(drawing.marks)].flatMap(({ mark, at }) => {
    if (mark.kind !== 'path' || !/^r\d+-b\d+$/.test(mark.id ?? '')) return [];
    return [{ id: mark.id, at, steps: mark.steps, origin: mark.origin }];
  });

const flat = (more = '') => `---
title: Strip
terms: US
${more}---
## Strip

Ch 29.

Row 1 (RS): Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across; turn. (8 boxes)

Rows 2-4: Work chart Steps over 8 boxes; turn. (8 boxes)

\`\`\`chart Steps
mesh: dc, ch 2
. open box
# filled box

.....##.
...##...
.##.....
\`\`\`
`;

describe('the two hands', () => {
  const right = one(bag);
  const left = one(bag, { hand: 'left' });

  it('have the same boxes at the same places', () => {
    expect(boxes(left)).toEqual(boxes(right));
    expect(boxes(right)).toHaveLength(21 * 7);
  });

  it('have row numbers at opposite ends, where each row begins', () => {
    const xOf = (drawing: Drawing, text: string) =>
      texts(drawing).find((each) => each.text === text)?.x ?? Number.NaN;
    const middle = right.widthMm / 2;
    for (const number of ['12', '13', '14', '16', '17', '18']) {
      expect(xOf(right, number)).toBeGreaterThan(middle);
      expect(xOf(left, number)).toBeLessThan(middle);
      // Text that starts at x at one end ends at x at the other: the ends mirror each other.
      expect(xOf(right, number) + xOf(left, number)).toBeCloseTo(right.widthMm, 6);
    }
  });

  it('count boxes from opposite ends', () => {
    const numbers = (drawing: Drawing) => {
      const low = texts(drawing).filter(({ text }) => ['1', '5', '10', '21'].includes(text));
      return low.sort((a, b) => a.x - b.x).map(({ text }) => text);
    };
    expect(numbers(right)).toEqual(['21', '10', '5', '1']);
    expect(numbers(left)).toEqual(['1', '5', '10', '21']);
  });

  it('exchange what continues', () => {
    expect(texts(right).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['← 29 open boxes more', 'first 2 open boxes →']),
    );
    expect(texts(left).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['← first 2 open boxes', '29 open boxes more →']),
    );
  });

  it('read the same row in opposite directions', () => {
    const row = (hand: 'right' | 'left') =>
      drawn(bag, { hand })[0]
        ?.words.split('\n')
        .find((line) => line.startsWith('Rnd 18')) ?? '';
    expect(row('right')).toContain('from right to left): 5 filled, 2 open, 4 filled');
    expect(row('left')).toContain('from left to right): 5 filled, 2 open, 1 filled');
  });
});

describe('what the fabric tells', () => {
  it('turned rows begin now here, now there', () => {
    const drawing = one(flat());
    const x = (text: string) => texts(drawing).find((each) => each.text === text)?.x ?? Number.NaN;
    expect(x('2 WS')).toBeLessThan(drawing.widthMm / 2);
    expect(x('3 RS')).toBeGreaterThan(drawing.widthMm / 2);
    expect(x('4')).toBeLessThan(drawing.widthMm / 2);
  });

  it('a wrong-side row is told as the maker meets it', () => {
    const words = drawn(flat())[0]?.words ?? '';
    expect(words).toContain('Row 2 (wrong side, from left to right): 1 open, 2 filled, 5 open.');
    expect(words).toContain('Row 3 (right side, from right to left): 3 open, 2 filled, 3 open.');
  });

  it('a chart that no row works says so', () => {
    const words = drawn(flat().replace(/^Rows 2-4.*$/m, ''))[0]?.words ?? '';
    expect(words).toContain('No row of the pattern names this chart');
  });

  it('rows that are written out and make the chart box for box give it their numbers', () => {
    const written = `Row 2: Turn, ch 5 (counts as dc and ch 2), sk next ch-2 sp, dc in next dc, 2 dc in next ch-2 sp, dc in next dc, 2 dc in next ch-2 sp, dc in next dc, *ch 2, sk next ch-2 sp, dc in next dc; rep from * 3 more times, ch 2, dc in 5th ch of turning ch.`;
    const chart = (row: string) =>
      flat()
        .replace('across; turn.', 'across.')
        .replace(/^Rows 2-4.*$/m, written)
        .replace(/^\.{5}##\.\n[^`]+/m, `${row}\n`);
    expect(drawn(chart('.##.....'))[0]?.words).toContain('Row 2 (wrong side, from left to right)');
    expect(drawn(chart('.##...#.'))[0]?.words).toContain('nor do written rows make it');
  });

  it('passes side by side are bracketed', () => {
    const text = flat().replace(
      'Work chart Steps over 8 boxes',
      'Work chart Half, work chart Half',
    );
    const half = text.replace('chart Steps', 'chart Half').replace(/^([.#]{4})[.#]{4}$/gm, '$1');
    expect(texts(one(half)).map((each) => each.text)).toContain('worked 2 times');
  });

  const again = (rows: string): string => flat().replace(/(Rows 2-4: .*\n)/, `$1\n${rows}\n`);
  const times = (text: string, hand: 'left' | 'right' = 'right') =>
    texts(one(text, { hand })).filter((each) => /^\d.* times$/.test(each.text));

  it('rows that are worked again are bracketed beyond the numbers, in both hands alike', () => {
    const thrice = again('Rows 5-7: Rep Rows 2-4. (8 boxes)\n\nRows 8-10: Rep Rows 2-4. (8 boxes)');
    const [right] = times(thrice);
    const [left] = times(thrice, 'left');
    expect(right?.text).toBe('3 times');
    // Row 2 is a wrong-side row: it begins at the left, and the bracket stands at the right.
    expect(right?.x).toBeGreaterThan(Math.max(...['3 RS', '8'].map((t) => placeOf(thrice, t))));
    expect((right?.x ?? 0) + (left?.x ?? 0)).toBeCloseTo(one(thrice).widthMm, 6);
    expect(drawn(thrice)[0]?.words).toContain('Row 2 to Row 4 are worked 3 times one after');
  });

  it('rows repeated by number work the chart rows that these worked', () => {
    // Rows 3-4 work the upper two of three rows: 1 2 3, then 2 3 2 3.
    const upper = again('Rows 5-8: Rep Rows 3-4. (8 boxes)');
    expect(times(upper).map((each) => each.text)).toEqual(['3 times']);
    expect(drawn(upper)[0]?.words).toContain('Row 3 to Row 4 are worked 3 times');
    const unnumbered = again('Rep Rows 2-4 twice more.');
    expect(drawn(unnumbered)[0]?.words).toContain('The chart is worked again in 6 more rows.');
  });

  it('a last pass that ends early is told, and is no whole time', () => {
    const text = again(
      'Rows 5-7: Rep Rows 2-4. (8 boxes)\n\nRow 8: Work row 1 of chart Steps; turn. (8 boxes)',
    );
    expect(times(text).map((each) => each.text)).toEqual(['2 times']);
    expect(drawn(text)[0]?.words).toContain('as the bracket shows, and then Row 2 once more.');
  });

  it('rows worked up and down again, or with others between, have no bracket', () => {
    const mirrored = again(
      'Row 5: Work row 2 of chart Steps; turn. (8 boxes)\n\nRow 6: Work row 1 of chart Steps; turn. (8 boxes)',
    );
    const between = again(
      'Row 5: Work 8 open boxes; turn. (8 boxes)\n\nRows 6-8: Work chart Steps; turn. (8 boxes)',
    );
    for (const text of [mirrored, between]) {
      expect(times(text)).toEqual([]);
      expect(drawn(text)[0]?.words).toContain('The chart is worked again in');
    }
  });

  it('every box leads back to its sign in the manuscript', () => {
    for (const { id, origin } of boxes(one(bag))) {
      const [, row, box] = /^r(\d+)-b(\d+)$/.exec(id ?? '')?.map(Number) ?? [];
      const lines = bag.split('```chart Tide')[1]?.split('```')[0]?.trim().split('\n') ?? [];
      expect(bag.slice(origin?.from, origin?.to)).toBe(lines.at(-(row ?? 0))?.[(box ?? 0) - 1]);
    }
  });
});

describe('proportion', () => {
  const sides = (drawing: Drawing) => {
    const [first] = boxes(drawing);
    const xs = boxes(drawing).map(({ steps }) => steps[0]?.[1] as number);
    const ys = boxes(drawing).map(({ steps }) => steps[0]?.[2] as number);
    return {
      first,
      width: Math.max(...xs) - Math.min(...xs),
      height: Math.max(...ys) - Math.min(...ys),
    };
  };

  it('is that of the gauge: 8 boxes by 7.5 rounds, a box 16 to 15', () => {
    const drawing = one(bag);
    const at = (id: string) => boxes(drawing).find((box) => box.id === id)?.steps[0];
    const [, x1 = 0, y1 = 0] = (at('r2-b1') ?? []) as unknown as [string, number, number];
    const [, x2 = 0] = (at('r2-b2') ?? []) as unknown as [string, number, number];
    const [, , y2 = 0] = (at('r3-b1') ?? []) as unknown as [string, number, number];
    expect((y1 - y2) / (x2 - x1)).toBeCloseTo(8 / 7.5, 9);
  });

  it('is square only if asked, and says so', () => {
    const drawing = one(bag, { boxes: 'square' });
    expect(drawing.description).toContain('drawn square, as asked');
    expect(sides(drawing).width).toBeGreaterThan(0);
  });

  it('is called usual where no gauge is given', () => {
    expect(one(flat()).description).toContain('No gauge is given');
    const gauge = 'gauge: { mesh: 9 boxes x 12 rows = 10 cm }\n';
    expect(one(flat(gauge)).description).toContain('the proportions of the gauge');
  });
});

describe('hygiene', () => {
  it('has no type under 7 pt, on pages, in previews', () => {
    for (const chart of [...drawn(bag), ...drawn(flat(), { paper: 'a4' })]) {
      for (const drawing of [...chart.drawings, ...(chart.preview ? [chart.preview] : [])]) {
        for (const { mark } of leaves(drawing.marks)) {
          if (mark.kind === 'text') expect(mark.sizeMm).toBeGreaterThanOrEqual(SMALLEST_TYPE_MM);
        }
      }
    }
  });

  it('has ids once only, and gives the same bytes twice', () => {
    const svg = toSvg(one(bag));
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(toSvg(one(bag))).toBe(svg);
  });

  it('draws nothing where the piece has no box', () => {
    const shaped = flat()
      .replace('.##.....', '_##....._')
      .replace('# filled', '_ no box\n# filled');
    expect(boxes(one(shaped)).some(({ id }) => id === 'r1-b1')).toBe(false);
  });
});

describe('pages', () => {
  const wide = (columns: number, rows: number) => {
    const line = '.#..'.repeat(Math.ceil(columns / 4)).slice(0, columns);
    return `---\ntitle: Wide\nterms: US\n---\n## Panel\n\n\`\`\`chart Wide\nmesh: dc, ch 2\n. open box\n# filled box\n\n${`${line}\n`.repeat(rows)}\`\`\`\n`;
  };

  it('show every box on one page or, in the overlap, on two or four', () => {
    const pages = drawn(wide(120, 90), { paper: 'a4' })[0]?.drawings ?? [];
    const times = new Map<string, number>();
    for (const page of pages) {
      for (const { id = '' } of boxes(page)) times.set(id, (times.get(id) ?? 0) + 1);
    }
    expect(times.size).toBe(120 * 90);
    expect([...new Set(times.values())].sort()).toEqual([1, 2, 4]);
    expect(pages[0]?.title).toContain(`page 1 of ${pages.length}`);
  });

  it.each(['a4', 'letter'] as const)('hold everything within the paper: %s', (paper) => {
    for (const page of drawn(wide(200, 200), { paper })[0]?.drawings ?? []) {
      for (const { mark, at } of leaves(page.marks)) {
        if (mark.kind !== 'text') continue;
        expect(mark.at[0] + at[0]).toBeGreaterThan(5);
        expect(mark.at[0] + at[0]).toBeLessThan(page.widthMm - 5);
        expect(mark.at[1] + at[1]).toBeLessThan(page.heightMm - 5);
      }
    }
  });

  it('stay one where the chart fits', () => {
    expect(drawn(bag, { paper: 'letter' })[0]?.drawings).toHaveLength(1);
  });
});
