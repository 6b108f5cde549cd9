import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../../src/manuscript/index.ts';
import { codesOf, instructions, markedBy, read } from './read.ts';

const keys = (text: string) => read(text).specials.map(({ key, aliases }) => [key, ...aliases]);
const row = 'Row 1: Shell in next st. (1 shell)';

describe('special stitches', () => {
  test.each([
    [`## Special stitches\n\nShell: 5 dc in same st.\n\n## Edging\n\n${row}`],
    [`Special Stitches\nShell: 5 dc in same st\n\n${row}`],
    [`Shell = 5 dc in same st\n\n${row}`],
    [`Special stitch: Shell: 5 dc in same st\n\n${row}`],
    [`${row}\nShell: 5 dc in same st.`],
  ])('are found where they stand (%#)', (text) => {
    expect(keys(text)).toEqual([['shell']]);
    const [shell] = read(text).specials;
    expect(text.slice(shell?.from, shell?.to)).toMatch(/^Shell.*same st/);
    expect(instructions(text)).toEqual([row]);
  });

  test('with a short form, in a list of abbreviations', () => {
    const text = `Abbreviations\nsc = single crochet\nShell (sh): 5 dc in same st\n\n${row}`;
    expect(keys(text)).toEqual([['shell', 'sh']]);
  });

  test('a name may begin with a number', () => {
    expect(keys(`Special Stitches\n2-tr cluster (2trcl): tr2tog in same st\n\n${row}`)).toEqual([
      ['2-tr cluster', '2trcl'],
    ]);
  });

  test('one may be made of another', () => {
    const text = `## Special stitches\n\nFan: (shell, ch 2, shell) in same st.\n\nShell: 5 dc in same st.\n\n## Edging\n\n${row}`;
    expect(JSON.stringify(read(text).specials[0]?.steps)).toContain('"special":"shell"');
  });

  test('a note, a part and a row are none', () => {
    const text = 'Note: ch 3 counts as dc.\n\nShell row: Ch 3, 4 dc in same st.\n\nGauge: 4 shells = 10 cm';
    expect(keys(text)).toEqual([]);
  });
});

describe('sizes', () => {
  const body = 'Ch 21 (25, 29).\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (20, 24, 28)';

  test.each([
    [`---\nsizes: [S, M, L]\n---\n${body}`, ['S', 'M', 'L']],
    [`---\nsizes: S (M, L)\n---\n${body}`, ['S', 'M', 'L']],
    [`Sizes: S (M, L)\n\n${body}`, ['S', 'M', 'L']],
    [`Instructions are written for Small (Medium, Large).\n\n${body}`, ['Small', 'Medium', 'Large']],
    [`Sizes: 2, 4 and 6 years\n\n${body}`, ['2', '4', '6 years']],
    [body, ['size 1', 'size 2', 'size 3']],
    ['Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)', ['']],
    ['Rnd 1: 16 dc in ring. (16 dc, 8 ch-1 sps)', ['']],
  ])('%#', (text, sizes) => {
    expect(read(text).head.sizes).toEqual(sizes);
  });

  test('"size" for the finished piece is no list', () => {
    expect(read(`---\nsize: 30 x 40 cm\n---\n\nRnd 1: 6 sc in magic ring (6)`).head.sizes).toEqual(['']);
  });
});

describe('terms', () => {
  const us = 'Rnd 1: 6 sc in magic ring. (6)';
  const uk = 'Rnd 1: 6 htr in magic ring. (6)';

  test.each([
    [`---\nterms: UK\n---\n${us}`, 'UK', 'stated'],
    [`UK terms used throughout\n\n${us}`, 'UK', 'stated'],
    [`UK Instructions\n\n${us}`, 'UK', 'stated'],
    [`English version\n\n${us}`, 'US', 'words'],
    [us, 'US', 'words'],
    [uk, 'UK', 'words'],
    ['Rnd 1: inc x 6', 'US', 'custom'],
  ])('%#', (text, terms, because) => {
    expect(read(text).terms).toMatchObject({ terms, because });
  });

  test('an option overrides all', () => {
    const { value, findings } = readManuscript(`US terms\n\n${us}`, { terms: 'UK' });
    expect(value.terms).toMatchObject({ terms: 'UK', because: 'option' });
    expect(findings).toEqual([]);
  });

  test('what is inferred is said, at the word that told', () => {
    expect(markedBy(us, 'terms-inferred')).toEqual(['sc']);
    expect(codesOf(`US terms\n\n${us}`)).toEqual([]);
  });

  test('words that speak for the other terms are listed; translations and habits are not', () => {
    const text = `UK terms\n\nRnd 1: 6 dc (sc) in ring.\n\nRnd 2: Skip next st, sc in next st.`;
    const { against } = read(text).terms;
    expect(against.map(({ from, to }) => text.slice(from, to))).toEqual(['sc']);
    expect(against[0]?.from).toBe(text.lastIndexOf('sc'));
  });
});
