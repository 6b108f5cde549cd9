// A foundation behind the materials, a list behind the work: all on one line, as scans leave it. Invented.
import { describe, expect, test } from 'vitest';
import { instructions, read } from './read.ts';

describe('run-on lines', () => {
  test('the chain behind the materials opens the work', () => {
    const text = 'Kettle mat. One ball of string, hook No. 4. Ch 12. Row 1: sc in 2nd ch from hook. Row 2: sc.';
    expect(instructions(text)).toEqual(['Ch 12.', 'Row 1: sc in 2nd ch from hook.', 'Row 2: sc.']);
  });
  test('a list of abbreviations ends the work', () => {
    const text = 'Ch 9.\nRow 1: sc in 2nd ch from hook. Row 2: sc, fasten off. ABBREVIATIONS: ch = chain sc = single crochet';
    expect(instructions(text).at(-1)).toBe('Row 2: sc, fasten off.');
  });
  test('a statement of terms is no work', () => {
    const text = 'Robin, UK terms, 3 mm hook. 2dc in next = increase.\n\nRnd 1: 6dc in magic loop.';
    expect(instructions(text)).toEqual(['Rnd 1: 6dc in magic loop.']);
    expect(read(text).terms.terms).toBe('UK');
  });
  test('a translating bracket with its number is no foreign word', () => {
    const text = 'Written in UK terms.\n\nRnd 1: 6dc [6sc] in ring.\nRnd 2: 2tr [2dc] in each st.';
    expect(read(text).terms.against).toEqual([]);
  });
  test('rounds in one line with no stop before them', () => {
    const text =
      'Warm socks. Directions: ch 4, join to form a ring Round 1 - ch 2, work 9 hdc in ring (10) join ' +
      'Round 2- ch 2, hdc in same st, 2 hdc in each st around (20) join Round 3-5 ch 2, hdc in each st (20)';
    expect(instructions(text).map((words) => words.slice(0, 12))).toEqual([
      'Directions: ',
      'Round 1 - ch',
      'Round 2- ch ',
      'Round 3-5 ch',
    ]);
  });
  test('a row that is referred to begins none', () => {
    const text = 'Row 4: sc in each st, then work as Row 2 - ch 2 between (20)';
    expect(instructions(text)).toHaveLength(1);
  });
});

describe('photo tutorials', () => {
  const steps = (label: string) =>
    `${label}\n\nIMG_2041.jpeg\n  1. Chain two.\n  2. Work in 12 double crochets.\n\nRound 2\n1. Chain 2.\n2. Work 2 dc in each st.\n`;
  test.each(['Round 1', 'Round 1 of Double Crochets', 'Rnd 1:'])('the steps of "%s" are its work', (label) => {
    const { parts } = read(steps(label));
    const rows = parts.flatMap((part) => part.instructions.map((one) => one.instruction));
    expect(rows.map((row) => row.label?.numbers)).toEqual([[1], [2]]);
    expect(rows.map((row) => row.steps.map((step) => step.kind))).toEqual([
      ['chain', 'work'],
      ['chain', 'work'],
    ]);
  });
  test('numbered rows below a title stay rows', () => {
    const text = 'Ball\n\n1. 6 sc in magic ring (6)\n2. inc in each (12)\n3. (1 sc, inc) x 6 (18)\n';
    const numbers = read(text).parts.flatMap((part) => part.instructions.map((one) => one.instruction.label?.numbers));
    expect(numbers).toEqual([[1], [2], [3]]);
  });
});

describe('lists', () => {
  test('the foundation and a row that turns first are instructions of their own', () => {
    const text = 'Steps:\n- Ch 15.\n- Sc in 2nd ch from hook and in each ch.\n- Ch 1, turn. Sc in each st.\n- Finish off.';
    expect(instructions(text).map((words) => words.split('\n')[0])).toEqual([
      'Ch 15.',
      'Sc in 2nd ch from hook and in each ch.',
      'Ch 1, turn. Sc in each st.',
    ]);
  });
  test('a chain for each size is a list, and no work', () => {
    const text = 'Adult large size – chain 72\nAdult small size – chain 66\n\nChain 66.\nRow 1: sc in each ch.';
    expect(instructions(text)).toEqual(['Chain 66.', 'Row 1: sc in each ch.']);
  });
  test('"Pattern instructions" stands above the rows', () => {
    const text = 'Pattern Instructions:\nChain 14 (or any even number).\nRow 1: hdc in 2nd ch from hook.';
    expect(instructions(text)).toHaveLength(2);
  });
  test('words in a bracket behind a label with a line of its own name the row', () => {
    const rows = read('Row 2 (One Row Repeat)\n- Hdc in each st.').parts.flatMap((part) => part.instructions);
    expect(rows.map(({ instruction }) => instruction.steps.map((step) => step.kind))).toEqual([['work']]);
  });
  test('a blank in an ordinal, and rows that are the same as others', () => {
    const text = 'Ch 9.\n4th Row. sc in each st.\n5 th Row. dc in each st.\n6th and 7th Rows are the same as the 4th and 5th rows.';
    const rows = read(text).parts.flatMap((part) => part.instructions.map((one) => one.instruction));
    expect(rows.map((row) => row.label?.numbers ?? [])).toEqual([[], [4], [5], [6, 7]]);
    expect(rows.at(-1)?.steps).toMatchObject([{ kind: 'rows-again', rows: [4, 5] }]);
  });
  test('an item behind a join is another round', () => {
    const text = '- Chain 4.\n- Chain 2, 11 dc in ring.\n- Slip stitch into the chain 2 to join the round.\n- Chain 2, 2 dc in each st.';
    expect(instructions(text).at(-1)).toBe('Chain 2, 2 dc in each st.');
  });
  test('a magic circle with its number alone is a row, and no title', () => {
    const numbers = read('1. | MC (4) |\n2. | *INC* x4 (8) |').parts.flatMap((part) =>
      part.instructions.map((one) => one.instruction.label?.numbers),
    );
    expect(numbers).toEqual([[1], [2]]);
  });
  test('two blanks in a label, and a scanned slip stitch', () => {
    const text = 'Ch 9. 1st  row: sc in 2nd ch from hook. 2nd row: S1 st in 1st sc, sc in next sc.';
    const rows = read(text).parts.flatMap((part) => part.instructions.map((one) => one.instruction));
    expect(rows.map((row) => row.label?.numbers ?? [])).toEqual([[], [1], [2]]);
    expect(rows.at(-1)?.steps.map((step) => step.kind)).toEqual(['work', 'work']);
  });
});

describe('clauses with paragraphs of their own', () => {
  const text =
    'Row 2:\nChain 3\n(this will be a double crochet)\n\nDC twice in circle.\n\n*Chain 2, DC three times in circle*\n\n' +
    'Repeat from * to * twice\n\nChain 2\n\nSlip stitch to the top of the chain 3\n';
  test('below a label with a line of its own they are its row', () => {
    expect(instructions(text)).toHaveLength(1);
    expect(read(text).parts[0]?.instructions[0]?.instruction.steps.at(-1)?.kind).toBe('join');
  });
  test('a foundation, and what follows a count, are not', () => {
    expect(instructions(`${text}\nChain 24`)).toHaveLength(2);
    expect(instructions('Row 2:\nSc in each st. (12)\n\nChain 2, dc in each st.')).toHaveLength(2);
  });
});

describe('signs that scanners leave', () => {
  const steps = (text: string) =>
    read(text).parts.flatMap((part) => part.instructions.flatMap((one) => one.instruction.steps));
  test('quotation marks for stars', () => {
    const text = (star: string) =>
      `Row 1: 1 sc in next st, ${star}skip 3 ch, 9 dc in next ch; rep from ${star} to end.`;
    expect(steps(text('"'))).toEqual(steps(text('*')));
    expect(steps('Row 1: sc until it measures 3", ch 2, turn.').at(-1)?.kind).toBe('turn');
  });
  test('the stitch on which the start chain stands', () => {
    expect(steps('Row 2: 4ch, 1tr into tr on which 4ch stands, 1tr in next tr.')[1]).toMatchObject({
      place: { pick: 'same' },
    });
  });
  test('rounds without labels, each a line that is closed', () => {
    const text = 'Ch 2, 2 hdc in each st around, slip stitch to close\nCh 1, sc in each st around, slip stitch to close\n';
    expect(instructions(text)).toHaveLength(2);
  });
});

test('labels and chains that a narrow column breaks', () => {
  const text = 'Ch\n33, turn.\n1ST\nROW: 32 Sc, ch 1, turn.\n2ND,\n3RD, 4TH & 5TH ROWS: Sc.\n6TH\n& 7TH ROWS: dc in each sc.';
  const rows = read(text).parts.flatMap((part) => part.instructions.map((one) => one.instruction));
  expect(rows.map((row) => row.label?.numbers ?? [])).toEqual([[], [1], [2, 3, 4, 5], [6, 7]]);
  expect(rows[0]?.steps[0]).toMatchObject({ kind: 'chain', n: { values: [33] } });
});

test('a paragraph of prose that goes over into rounds with no sign behind their numbers', () => {
  const text =
    'The pot is worked in one. Keep the tension even. Round 1 make a magic ring, ch1, 8htr in ring, join with ss [8 sts] ' +
    'Round 2 ch1, 2htr in each st around, join with ss [16 sts] Rounds 3-5 repeat Round 2, at the end of Round 5 fasten off.';
  const rows = read(text).parts.flatMap((part) => part.instructions.map((one) => one.instruction));
  expect(rows.map((row) => row.label?.numbers ?? [])).toEqual([[1], [2], [3, 4, 5]]);
});
