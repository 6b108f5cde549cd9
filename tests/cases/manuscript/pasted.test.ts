import { describe, expect, test } from 'vitest';
import { codesOf, instructions, parts, read } from './read.ts';

// Shapes of pasted text: what people copy from pages, mails and PDF files. All invented.
describe('pasted text', () => {
  test('one row a line, with materials above and good wishes below', () => {
    const text = [
      'Tiny Apple',
      '',
      'Materials:',
      '- red cotton, 50 g',
      '- 2.5 mm hook',
      '- stitch marker',
      '',
      'Rnd 1: 6 sc in magic ring (6)',
      'Rnd 2: inc x 6 (12)',
      'Rnd 3: (sc, inc) x 6 (18)',
      '',
      'I hope that you like your apple! Show me a picture when it is done.',
    ].join('\n');
    expect(instructions(text)).toEqual([
      'Rnd 1: 6 sc in magic ring (6)',
      'Rnd 2: inc x 6 (12)',
      'Rnd 3: (sc, inc) x 6 (18)',
    ]);
    expect(read(text).head.title).toBe('Tiny Apple');
  });

  test('rows right below the list of materials, with a hyphen behind the number', () => {
    const text = [
      'Materials:',
      'a 5 mm hook',
      'Ch 12.',
      'Row 1- 1 dc in 4th ch from hook and in each ch across. Ch 3, turn.',
      'Row 2- 1 dc in each of next 9 dc.',
    ].join('\n');
    expect(instructions(text)).toEqual([
      'Ch 12.',
      'Row 1- 1 dc in 4th ch from hook and in each ch across. Ch 3, turn.',
      'Row 2- 1 dc in each of next 9 dc.',
    ]);
  });

  test('a sentence that ends in "next." is followed by a row of its own', () => {
    const text =
      '2nd row: Ch 4, (ch 1, dc in next tr) 9 times, ch 1, dc in next. 3rd row: Ch 1, sc in each dc.';
    expect(instructions(text)).toHaveLength(2);
    expect(instructions('Rnd 2: 8 sc. Rep. Rnd 2: twice.')).toHaveLength(1);
  });

  test('hard-wrapped rows are put together', () => {
    const text = [
      'Row 1: Sc in 2nd ch from hook, sc in next 4 ch, ch 3, sk next 3 ch, sc in',
      'next 5 ch, turn. (10 sc)',
      'Row 2: Ch 1, sc in next 5 sts, sc in each of next 3 ch, sc in next 5 sts,',
      'turn. (13 sc)',
    ].join('\n');
    expect(instructions(text)).toHaveLength(2);
    expect(instructions(text)[0]).toMatch(/turn\. \(10 sc\)$/);
  });

  test('one clause a line, and the label alone on its line', () => {
    const text = ['Round 2:', 'Ch 1', '2 sc in each st around', 'join', '(12 sc)'].join('\n');
    expect(instructions(text)).toEqual([text]);
    const spaced = ['Round 1:', '', '6 sc in magic ring', '', 'Round 2:', '', '2 sc in each st'];
    expect(instructions(spaced.join('\n'))).toEqual([
      'Round 1:\n\n6 sc in magic ring',
      'Round 2:\n\n2 sc in each st',
    ]);
  });

  test('a whole pattern in one paragraph is cut at its labels', () => {
    const text =
      'Rnd 1: 6 sc in magic ring. (6) Rnd 2: 2 sc in each st. (12) Rnd 3: Rep Rnd 2. (24) ' +
      'Rnds 4-6: sc in each st around. (24) Fasten off.';
    expect(instructions(text)).toEqual([
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st. (12)',
      'Rnd 3: Rep Rnd 2. (24)',
      'Rnds 4-6: sc in each st around. (24) Fasten off.',
    ]);
  });

  test('ordinals in one paragraph are cut too, and references are not', () => {
    const text =
      '1st rnd: Ch 3, 11 dc in ring. Join. 2nd rnd: Ch 3, dc in same st, 2 dc in each st, as in ' +
      '1st rnd. Join. 3rd and 4th rnds: Rep rnd 2.';
    expect(instructions(text).map((row) => row.slice(0, 3))).toEqual(['1st', '2nd', '3rd']);
  });

  test('a size before the label belongs to it', () => {
    const text = 'Rnd 7: sc around. (30)\nSize L only: Rnd 8: Rep Rnd 7.\nSmall: Rnd 9: sc around.';
    expect(instructions(text)).toEqual(text.split('\n'));
  });

  test('work without a number: start, foundation, a story that begins with a chain', () => {
    const text = 'Start: 7 sc in ring.\n\nFoundation: 6ch, ss to join.\n\nStarting at the centre, ch 8.';
    expect(instructions(text)).toHaveLength(3);
  });

  test('a number that a list dropped behind the count begins the next row', () => {
    const text = '5. (3 sc, inc) x 7 (35) 6-9. 35 sc (4 rows) (35)\n10. (3 sc, dec) x 7 (28)';
    expect(instructions(text)).toEqual([
      '5. (3 sc, inc) x 7 (35)',
      '6-9. 35 sc (4 rows) (35)',
      '10. (3 sc, dec) x 7 (28)',
    ]);
  });

  test('a number behind a count that does not follow stays where it is', () => {
    const text = 'Rnd 5: (3 sc, inc) x 7 (35) 28. sc around';
    expect(instructions(text)).toEqual([text]);
  });

  test('a count below its row belongs to it', () => {
    expect(instructions('Rnd 3: (sc, inc) x 6\n(18 sts)\nRnd 4: sc around\n\n(18 sts)')).toEqual([
      'Rnd 3: (sc, inc) x 6\n(18 sts)',
      'Rnd 4: sc around\n\n(18 sts)',
    ]);
  });

  test('list signs and bold labels are no part of the row', () => {
    const text = [
      '• Rnd 1: 6 sc in magic ring. (6)',
      '* Rnd 2: 2 sc in each st. (12)',
      '- **Rnd 3:** *sc in next st, 2 sc in next st; rep from * around. **(18)**',
      '__Rnd 4:__ sc in each st around. (18)',
    ].join('\n');
    const rows = read(text).parts[0]?.instructions ?? [];
    expect(rows.map(({ from }) => text.slice(from, from + 5))).toEqual([
      'Rnd 1',
      'Rnd 2',
      'Rnd 3',
      'Rnd 4',
    ]);
    expect(rows.map(({ instruction }) => instruction.label?.numbers)).toEqual([[1], [2], [3], [4]]);
    expect(rows[2]?.instruction.counts[0]?.n.values).toEqual([18]);
  });

  test('double stars of a repeat are not bold', () => {
    const text =
      'Row 2: Ch 1, *sc in next st, ch 2**, sk next st; rep from * across, ending last rep at **.';
    const [row] = read(text).parts[0]?.instructions ?? [];
    expect(JSON.stringify(row?.instruction.steps)).toContain('"mark":"**"');
  });

  test('entities and tags of web pages', () => {
    const text = '<p>Rnd 1: 6&nbsp;sc in magic ring. (6)</p><p>Rnd 2: (inc) &times; 6 (12)<br>Rnd 3: sc around (12)</p>';
    expect(instructions(text).map((row) => row.slice(0, 6))).toEqual(['Rnd 1:', 'Rnd 2:', 'Rnd 3:']);
  });

  test('page numbers and rules between rows', () => {
    const text = 'Rnd 1: 6 sc in magic ring. (6)\n\nPage 2 of 3\n\n-----\nRnd 2: inc x 6 (12)\n- 3 -';
    expect(instructions(text)).toEqual(['Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: inc x 6 (12)']);
  });

  test('prose between rows stays prose', () => {
    const text = [
      'Rnd 7: sc in each st around. (30)',
      'Now is a good time for tea before the hard part comes.',
      'Rnd 8: dec x 15. (15)',
    ].join('\n');
    expect(instructions(text)).toEqual(['Rnd 7: sc in each st around. (30)', 'Rnd 8: dec x 15. (15)']);
  });

  test("readers' comments are not worked", () => {
    const text = [
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: inc x 6 (12)',
      '',
      '2 Comments',
      '',
      'Olive: why does it say',
      'Rnd 2: inc x 5 (10)',
      'in the old version?',
    ].join('\n');
    expect(instructions(text)).toHaveLength(2);
  });

  test('a list of abbreviations is no work', () => {
    const text = [
      'Abbreviations',
      'ch – chain',
      'sc – single crochet',
      'sl st – slip stitch',
      'rep – repeat',
      '',
      'Rnd 1: 6 sc in magic ring. (6)',
    ].join('\n');
    expect(instructions(text)).toEqual(['Rnd 1: 6 sc in magic ring. (6)']);
    expect(read(text).specials).toEqual([]);
  });

  test('what an abbreviation means is no order', () => {
    const text = 'Abbreviations:\nBLO = back loops only\n\nRnd 1: 6 sc in magic ring. (6)';
    expect(read(text).orders).toEqual([]);
  });

  test('a text about something else has no instructions, and says so', () => {
    expect(codesOf('Dear Olive,\n\nthe weather is fine here. See you in May.\n')).toEqual([
      'no-instructions',
    ]);
  });
});

describe('parts of pasted text', () => {
  const head = 'Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\nFasten off.';

  test('lone lines name them', () => {
    const text = `HEAD\n${head}\n\nEars (make 2)\n${head}\n\nBody:\n${head}\n\nFor the strap\nCh 40.\nRow 1: Sc in 2nd ch from hook and in each ch across. (39)`;
    expect(parts(text)).toEqual(['HEAD', 'Ears (make 2)*2', 'Body', 'For the strap']);
  });

  test('"make 2" on its own line', () => {
    expect(parts(`Ear\nMake 2.\n${head}`)).toEqual(['Ear*2']);
    expect(parts(`Ear\n${head}\n\nMake another one the same way.`)).toEqual(['Ear*2']);
  });

  test('numbers that begin again start a part without a name, with its foundation', () => {
    const text = `${head}\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11)\nRow 2: Ch 1, turn, sc in each st. (11)`;
    expect(parts(text)).toEqual(['', '']);
    expect(read(text).parts[1]?.instructions).toHaveLength(3);
  });

  test('a lone name above prose does too', () => {
    const text = `Right mitt\n${head}\n\nLeft mitt\nWork as the right one.\nRnd 2: inc x 6 (12)`;
    expect(parts(text)).toEqual(['Right mitt', 'Left mitt']);
  });

  test('a lone exclamation names none', () => {
    const text = `Rnd 1: 6 sc in magic ring (6)\n\nSo cute!\n\nRnd 2: inc x 6 (12)`;
    expect(parts(text)).toEqual(['']);
  });
});

describe('narrow columns', () => {
  test('a label broken behind its word, and a clause before its end', () => {
    const text = 'Round\n1:\n6 sc in ring (6)\nRound\n2:\n2 sc in each st\naround (12)\nRnd 3: ch 3, join to\nstarting chain. (5)';
    expect(instructions(text)).toEqual([
      'Round\n1:\n6 sc in ring (6)',
      'Round\n2:\n2 sc in each st\naround (12)',
      'Rnd 3: ch 3, join to\nstarting chain. (5)',
    ]);
    expect(instructions('Rnd 1: 6 sc in ring (6)\n\nRound\n\nlike a ball')).toHaveLength(1);
  });

  test('rows with a hyphen below a list of abbreviations that nothing closes', () => {
    const text = [
      'Abbreviations',
      'sc - single crochet',
      'Bobble (bob) - 5 dc in same st',
      '',
      '1st Round - Ch 4, 12 dc in 4th ch from hook',
      '2nd Round - ch3, 2dc in each dc to end, sl st to top of ch3',
    ].join('\n');
    expect(instructions(text)).toHaveLength(2);
    expect(read(text).specials.map(({ name }) => name)).toEqual(['Bobble']);
  });

  test('a count that is a sentence of its own ends its row', () => {
    const text = 'Row 1: Hdc in each st, turn. 41 (45, 49) hdc.\nRep row 1 until piece measures 30 cm.';
    expect(instructions(text)).toHaveLength(2);
    expect(instructions('Row 1: 5 sc, inc, 5 sc\nTurn.')).toHaveLength(1);
  });
});

describe('steps and pictures', () => {
  test('a numbered step is no row, and pictures stand before lines', () => {
    const text = [
      'Step 1: Make a slip knot and chain 16.',
      '✨ STEP 2: Row 1',
      '- Start in 2nd chain from hook',
      '- 1 sc in each chain across',
      '- Turn',
      '✔ You should have 15 sts',
    ].join('\n');
    expect(instructions(text)).toHaveLength(2);
    expect(instructions(text)[1]).toMatch(/^Row 1[^]*15 sts$/);
  });

  test('a foundation behind three dots', () => {
    const text = 'FOOT—Toepiece … Ch 11 (to measure 3 cm). 1st row: Sc in 2nd ch from hook (10 sc).';
    expect(instructions(text)).toHaveLength(2);
    expect(instructions('Row after row … ch 11 of them, so they say')).toHaveLength(0);
  });
});

describe('lines that only look like labels', () => {
  test('the rest of a list of sizes, and the rows of an order to repeat', () => {
    const text = 'Row 1: Ch 4, dc in each ch, join—52 (68,\n84) sts.\nRow 2: sc across. Repeat\nrows 1 & 2 for a total of 16 rows';
    expect(instructions(text)).toHaveLength(2);
    expect(instructions('Row 1: sc across.\n84) sc across (20)')).toHaveLength(2);
  });

  test('a row below one that ends with "repeat" is a row of its own', () => {
    const text = 'Round 2: 2 sc in next st, sc in next st. Repeat\nRound 3: sc around\nRnds 4 to 6 - sc around';
    expect(instructions(text)).toHaveLength(3);
  });

  test('a step and its chain', () => {
    expect(instructions('1. Chain 6, join with sl st.\n2. Ch 12, join with sl st.')).toEqual([
      '1. Chain 6, join with sl st.',
      '2. Ch 12, join with sl st.',
    ]);
  });
});

describe('titles behind labels', () => {
  test('a title on the line of the label, its work below', () => {
    const text = 'Round 1 — Centre circle\n- Make a magic ring.\n- Work 12 dc into the ring.\nRound 2 — Form 6 points\n- Ch 3, 2 dc in each st';
    expect(instructions(text)).toHaveLength(2);
    expect(instructions('Rounds 1 - 2 form the centre.')).toHaveLength(0);
  });
});

describe('definitions in one line, and behind "for"', () => {
  test('each stitch has its own', () => {
    const text = [
      'For X stitch (xst), yo, insert hook in next st, draw up a loop.',
      'Shell = 5 dc in same st. Half shell = 3 dc in same st. Multiple of 6 + 2.',
      'Ch 20.',
    ].join('\n');
    expect(read(text).specials.map(({ name, opaque }) => `${name}${opaque ? ' opaque' : ''}`)).toEqual([
      'X stitch opaque',
      'Shell',
      'Half shell',
    ]);
    expect(read('For the shell stitch scarf (long), ch 20.').specials).toEqual([]);
  });
});

test('a range with "incl" in the middle of a line is a row of its own', () => {
  expect(instructions('1st row: Dc in each ch. Ch 3, turn. 2nd to 7th rows incl: Dc in each st.')).toHaveLength(2);
  expect(instructions('1st row: Dc in each ch. Rep 2nd to 7th rows incl: it is long.')).toHaveLength(1);
});
