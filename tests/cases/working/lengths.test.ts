// "Until it measures" by gauge: the fewest whole passes that reach the length. The sums beside the
// cases are worked by hand; 14 rows to 10 cm is 7.142857 mm a row, and 20 cm are 28 such rows.
import { expect, test } from 'vitest';
import { compile, measure } from '../../../src/index.ts';

const GAUGE = 'gauge:\n  sc: 20 sts x 14 rows = 10 cm\n';
const TWO_ROWS = `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)
Row 2: Ch 1, sc in each st across, turn. (10 sc)
`;
const THREE_ROWS = `${TWO_ROWS}Row 3: Ch 1, sc in each st across, turn. (10 sc)\n`;
const TUBE = `Ch 20, join with sl st to form a ring.
Rnd 1: Ch 1, sc in each ch around; join. (20 sc)
Rnd 2: Ch 1, sc in each st around; join. (20 sc)
`;

const pattern = (body: string, head = GAUGE): string =>
  `---\ntitle: Bookmark\nterms: US\n${head}---\n${body}\n`;

/** Rows in all, the counts that hold, and why a length was left open. */
function worked(text: string) {
  const { fabric, notChecked } = compile(text);
  const rows = fabric.cloths[0]?.rows ?? [];
  const open = rows.flatMap(({ facts }) =>
    facts.flatMap((fact) => (fact.kind === 'open-length' ? [fact.why] : [])),
  );
  return { rows, open, said: notChecked.join('\n') };
}

test.each([
  // 28 rows, of which 2 are there: 26 more.
  [`${TWO_ROWS}Rep row 2 until piece measures 20 cm.`, 28],
  // 28 rows, of which 3 are there: 25 more are 12.5 passes of two, so 13 passes and 29 rows.
  [`${THREE_ROWS}Rep rows 2 and 3 until piece measures 20 cm.`, 29],
  [`${THREE_ROWS}Rep rows 2 and 3 until piece measures 20 cm, ending with row 3.`, 29],
  // The row behind comes after the length: 29 and one.
  [`${THREE_ROWS}Rep rows 2 and 3 until piece measures 20 cm, then rep row 2.`, 30],
  // Counted from here: 14 rows and the 2 that are there.
  [`${TWO_ROWS}Rep row 2 for 10 cm.`, 16],
  // 8 in are 203.2 mm: 28.448 rows, so 29.
  [`${TWO_ROWS}Rep row 2 until piece measures 8" from beg.`, 29],
  [`${TWO_ROWS}Work even until piece measures 20 cm.`, 28],
  // The row's own work again and again: 2 rows and 26 times row 3.
  [`${TWO_ROWS}Row 3: Ch 1, sc in each st across, turn, until piece measures 20 cm.`, 28],
  // Row 3 is worked, then passes of rows 2 and 3: 3 + 13 x 2.
  [`${TWO_ROWS}Row 3: Ch 1, sc in each st across, turn. Rep last 2 rows until piece measures 20 cm.`, 29],
  // A tube grows along its rounds: 10 cm are 14.
  [`${TUBE}Rep rnd 2 until piece measures 10 cm.`, 14],
])('%s', (body, rows) => {
  const found = worked(pattern(body));
  expect(found.open).toEqual([]);
  expect(found.rows).toHaveLength(rows);
  expect(found.said).toContain('By the gauge');
  expect(found.said).not.toContain('worked once here');
});

test('the assumption is told with its sum', () => {
  const { said } = worked(pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 cm.`));
  expect(said).toContain(
    'Worked 26 times, 26 rows: "Rep row 2 until piece …". By the gauge the piece comes to about ' +
      '20 cm; work to the length. Gauge in sc: 20 sts x 14 rows = 10 cm.',
  );
});

test('a height that is estimated is said to be', () => {
  // hdc is 1.5 times as high as sc (src/gauge/proportions.ts): 10.714 mm. Rows 1 to 3 are 25 mm,
  // 178.2 mm are missing to 8 in, a pass is 17.857 mm: 9.98 passes, so 10, and 23 rows.
  const hdc = 'Row 3: Ch 1, hdc in each st across, turn. (10 hdc)\n';
  const found = worked(pattern(`${TWO_ROWS}${hdc}Rep rows 2 and 3 until piece measures 8 in.`));
  expect(found.rows).toHaveLength(23);
  expect(found.said).toContain('No gauge in hdc is given');
  expect(found.said).toContain('about 8 in');
  expect(found.said).toContain('That height is partly an estimate.');
});

test('counts that are stated behind a length are proven, and slips in them found', () => {
  const body = `${TWO_ROWS}Rep row 2 until piece measures 20 cm.\nNext row: Ch 1, 2 sc in each st across.`;
  const verdict = (count: number) => worked(pattern(`${body} (${count} sc)`)).rows.at(-1)?.verdict;
  expect([verdict(20), verdict(21)]).toEqual(['proven', 'mismatch']);
});

test('each size comes to its own number', () => {
  // A yoke of 2 rows in S and 4 in M: 26 and 24 more to 20 cm.
  const body = `Ch 11 (13).

Row 1: Sc in 2nd ch from hook and in each ch across, turn. 10 (12) sc.

Rows 2-2 (4): Ch 1, sc in each st across, turn. 10 (12) sc.

Rep row 2 until piece measures 20 cm.
`;
  const { fabric, notChecked } = compile(pattern(body, `sizes: [S, M]\n${GAUGE}`));
  expect(fabric.cloths.map(({ rows }) => rows.length)).toEqual([28, 28]);
  expect(notChecked.join('\n')).toMatch(/Size S: Worked 26 times/);
  expect(notChecked.join('\n')).toMatch(/Size M: Worked 24 times/);
});

test.each([
  ['gauge', pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 cm.`, '')],
  ['gauge', pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 cm.`, 'yarn: { A: { weight: 4 } }\n')],
  ['words', pattern(`${TWO_ROWS}Rep row 2 to desired length.`)],
  ['words', pattern(`${TWO_ROWS}Rep row 2 until armhole measures 20 cm.`)],
  ['words', pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 cm from marker.`)],
  ['words', pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 cm, ending with a WS row.`)],
  ['words', pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 (22, 24) cm.`)],
  ['words', pattern(`${TWO_ROWS}Rep row 2 until piece measures 5 cm less than wanted.`)],
  ['words', pattern(`${THREE_ROWS}Rep rows 2 and 3 until piece measures 20 cm, ending with row 2.`)],
  ['reached', pattern(`${TWO_ROWS}Rep row 2 until piece measures 1 cm.`)],
  ['many', pattern(`${TWO_ROWS}Rep row 2 until piece measures 100000 cm.`)],
  ['shape', pattern(`${TWO_ROWS}Row 3: Ch 1, 2 sc in first st, sc in each st across, turn. (11 sc)\nRep row 3 until piece measures 20 cm.`)],
  ['shape', pattern('Rnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc in each st around. (12)\nRnd 3: Sc in each st around. (12)\nRep rnd 3 until piece measures 9 cm.')],
  // Chains between low stitches lie lower than the gauge of the stitch; a row not understood has no height.
  ['rows', pattern('Ch 12.\nRow 1: Sc in 2nd ch from hook, *ch 1, sk next ch, sc in next ch; rep from * across, turn. (6 sc, 5 ch-1 sps)\nRow 2: Ch 1, sc in first st, *ch 1, sk next ch-1 sp, sc in next st; rep from * across, turn. (6 sc, 5 ch-1 sps)\nRep row 2 until piece measures 20 cm.')],
  ['rows', pattern(`${TWO_ROWS}Row 3: Wander twice about the blue tower. (10 sc)\nRep row 2 until piece measures 20 cm.`)],
])('left open, worked once: %s', (why, text) => {
  const found = worked(text);
  expect(found.open).toEqual([why]);
  expect(found.said).toContain('They are worked once here.');
  expect(found.said).not.toContain('By the gauge');
});

test('a number of rows beside the length is taken', () => {
  const { rows, open, said } = worked(
    pattern(`${TWO_ROWS}Rows 3-9: Rep row 2 until piece measures 20 cm. (10 sc)`),
  );
  expect(open).toEqual(['said']);
  expect(rows).toHaveLength(9);
  expect(said).not.toContain('worked once');
});

test('each of many lengths is counted from where it stands', () => {
  // 2 cm are 2.8 rows, so 3 for each order.
  const orders = 'Rep row 2 for 2 cm.\n\n'.repeat(40);
  expect(worked(pattern(`${TWO_ROWS}\n${orders}`)).rows).toHaveLength(2 + 3 * 40);
});

test('the sheet tells the rows that were worked to a length', () => {
  const { manuscript, fabric } = compile(pattern(`${TWO_ROWS}Rep row 2 until piece measures 20 cm.`));
  const { lengths, notKnown } = measure(manuscript, fabric);
  expect(lengths).toHaveLength(1);
  expect(lengths[0]!.reached.mm).toBeGreaterThanOrEqual(lengths[0]!.wanted.mm - 1e-6);
  expect(notKnown.join('\n')).not.toContain('was worked once');
});
