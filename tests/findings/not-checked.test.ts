/** What was not checked is said, and what was is not claimed to be unchecked. */
import { expect, test } from 'vitest';
import { compile } from '../../src/index.ts';

const said = (text: string): string => compile(text).notChecked.join('\n');
const sound = 'Terms: US\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc in each st around. (12)\n';

test('gauge, size and yarn are never checked yet', () => {
  expect(said(sound)).toContain('how much yarn it takes is not checked');
});

test('a sound piece leaves no row out', () => {
  expect(said(sound)).not.toMatch(/row|round/i);
});

test('rows that were not understood are named', () => {
  const text = `${sound}Rnd 3: Wander twice about the blue tower.\nRnd 4: Sc in each st around.\n`;
  expect(said(text)).toContain('Not understood, and so not checked: round 3.');
});

test('rows without a count are counted', () => {
  expect(said(`${sound}Rnd 3: Sc in each st around.\n`)).toContain('1 row states no count');
});

test('a row whose count is of something that the hands do not count is named, and not called silent', () => {
  const text = `${sound}Rnd 3: Ch 3 (counts as dc), dc in next 2 sts, *ch 2, dc in next 3 sts; rep from * 2 more times, ch 2; join. (4 groups)\n`;
  const row = compile(text).rows.at(-1);
  expect([row?.verdict, row?.stated.length]).toEqual(['unstated', 1]);
  expect(said(text)).toContain('The count of groups in round 3: what is counted is not known here');
  expect(said(text)).not.toContain('states no count');
});

test('of several counts the one that was not compared is named, and the row is not called proven', () => {
  const text = `${sound}Rnd 3: Sc in each st around. (12 sc, 3 flowers)\n`;
  const row = compile(text).rows.at(-1);
  expect(row?.verdict).toBe('unstated');
  expect(row?.stated.map(({ compared }) => compared)).toEqual([true, false]);
  expect(said(text)).toContain('The count of flowers in round 3');
  expect(compile(text).totals[0]?.inPart).toBe(1);
  expect(compile(text).findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('rows to a length are named', () => {
  const text =
    'Terms: US\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)\n' +
    'Row 2: Ch 1, sc in each st across, turn. (10 sc)\nRep row 2 until piece measures 20 cm.\n';
  expect(said(text)).toContain('How many rows are worked to a length');
});

test('an empty text has nothing to say', () => {
  expect(compile('').notChecked).toEqual([]);
});

const bag = (note: string, before: number): string =>
  `---\nterms: US\n---\n${note}\n\nRnd 1: 24 sc in magic ring; join. (24 sc)\n\nRnd 2: Ch 4 (counts as dc and ch 1), ` +
  'sk next st, *dc in next st, ch 1, sk next st; rep from * around; join with sl st in 3rd ch of beg ch-4. (12 boxes)\n\n' +
  `Rnd 3: Work ${before} open boxes, work chart Dot over next 2 boxes, work ${10 - before} open boxes; join. (12 boxes)\n\n` +
  '```chart Dot\nmesh: dc, ch 1\n. open box\n# filled box\n\n##\n```\n';

test('a chart in a round is named where nothing tells the front', () => {
  expect(said(bag('A bag for pegs.', 2))).toContain('Whether chart Dot stands in the middle of');
  expect(said(bag('Rounds start at the side.', 2))).not.toContain('chart Dot');
});

test('a chart that reaches round the side is named', () => {
  const text = bag('Rounds start at the side.', 5);
  expect(said(text)).toContain('Whether chart Dot is meant to reach round the side.');
});

/** A net that grows by a box at each side; its second row as told. */
const net = (row2: string): string =>
  '---\nterms: US\n---\nCh 14.\n\nRow 1 (RS): Work 3 open boxes. (3 boxes)\n\n' +
  `Row 2: Add 1 open box, work ${row2}. (5 boxes)\n\nRow 3: Work 5 open boxes. (5 boxes)\n\n` +
  '```chart Net\nmesh: dc, ch 2\n. open box\n# filled box\n_ no box\n\n.....\n..#..\n_..._\n```\n';

test('a written row that is wider or narrower than its line of the chart is named', () => {
  const right = net('1 open box, 1 filled box, 1 open box, add 1 open box');
  expect(said(right)).not.toContain('chart Net');
  const narrow = net('1 open box, 1 filled box, 1 open box').replace(/5 boxes/g, '4 boxes');
  expect(said(narrow.replace('Work 5', 'Work 4'))).toContain(
    'Whether row 2 and row 3 say what chart Net shows',
  );
});

const letters = (between: string): string =>
  `${bag('Rounds start at the side.', 2).replace(
    /Rnd 3: [^;]+/,
    `Rnd 3: Work 2 open boxes, work chart Dot over next 2 boxes, ${between}`,
  )}\n\`\`\`chart Dash\nmesh: dc, ch 1\n. open box\n# filled box\n\n#.#\n\`\`\`\n`;

test('charts side by side in one row are named: none of them is placed by itself', () => {
  const two = 'work 1 open box, work chart Dash over next 3 boxes, work 4 open boxes';
  expect(said(letters(two))).toContain(
    'Whether chart Dot and chart Dash, worked in one row, stand in its middle together.',
  );
  expect(said(letters('work 8 open boxes'))).not.toContain('in its middle together');
});

test('a shaped chart within a row is named', () => {
  const shaped = bag('Rounds start at the side.', 2).replace('\n##\n', '\n#_\n##\n');
  expect(said(shaped)).toContain('Whether chart Dot stands in the middle: its rows are of');
});

/** Rows of 120 boxes with one filled box, and a chart as high, none of whose rows is like them. */
const tall = (rows: number, filled: number): string =>
  `---\nterms: US\n---\nCh ${120 * 3 + 5}.\n\n` +
  Array.from(
    { length: rows },
    (_, i) =>
      `Row ${i + 1}: Work ${filled} open boxes, 1 filled box, ${119 - filled} open boxes.\n\n`,
  ).join('') +
  `\`\`\`chart Sail\nmesh: dc, ch 2\n. open box\n# filled box\n\n${'#.##.#.##.'.repeat(3)}\n`.repeat(
    1,
  ) +
  `${`${'#.##.#.##.'.repeat(3)}\n`.repeat(rows - 1)}\`\`\`\n`;

test('a search given up is told, and a smaller one is not', () => {
  expect(said(tall(30, 60))).toContain('there are too many places in these rows to try them all');
  expect(said(tall(20, 60))).not.toContain('too many places');
});

test('lines of a blog that name stitches and places, and were taken for talk, are quoted', () => {
  const text =
    'And then you are going to work 1 double crochet into each stitch until you reach the bottom.\n\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)\nRow 2: Ch 1, turn, sc in each st. (10)\n';
  expect(said(text)).toContain(
    'Taken for talk, though stitches and their places are named there: "And then you are going to work 1 double …".',
  );
  expect(said(`${sound}I love to sc in each stitch while it rains.\n`)).not.toContain(
    'Taken for talk',
  );
  expect(
    said(`---\nterms: US\n---\nWork 1 sc into each stitch as you like.\n\n${sound}`),
  ).not.toContain('Taken for talk');
});
