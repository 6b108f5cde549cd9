import { describe, expect, test } from 'vitest';
import { instructions, parts, read } from './read.ts';

const disc = 'Rnd 1: 6 sc in magic ring. (6)\n\nRnd 2: 2 sc in each st around. (12)';

describe('parts under headings', () => {
  test('headings without rows are no parts', () => {
    expect(parts(`# Disc\n\n## Materials\n\nCotton.\n\n## Disc\n\n${disc}\n\n## Finishing\n\nPin out.`)).toEqual(['Disc']);
  });

  test.each([
    ['Ears (make 2)', 2],
    ['Ears x2', 2],
    ['Leg * 4', 4],
    ['Wings – make two', 2],
    ['Handles (work both alike)', 2],
    ['Squares (12 pieces)', 12],
    ['Leg (make 1000000000)', 1_000_000_000],
    ['Row of 5 shells', 1],
    ['Size 2', 1],
    ['Body', 1],
  ])('copies: %s', (heading, copies) => {
    expect(read(`## ${heading}\n\n${disc}`).parts[0]?.copies).toBe(copies);
  });

  test.each([
    ['Strip (in B)', 'B'],
    ['Strip (with colour B)', 'B'],
    ['Ears (make 2, in pink)', 'pink'],
    ['Leaves (make 4) – Yarn A', 'A'],
    ['Border in moss', 'Moss'],
    ['Square (A)', 'A'],
    ['Body', null],
    ['Motif B', null],
    ['Straps (in rows)', null],
    ['Front (RS)', null],
  ])('yarn: %s', (heading, yarn) => {
    const head = '---\nyarn: { A: {}, B: {}, Moss: {} }\n---\n';
    expect(read(`${head}## ${heading}\n\n${disc}`).parts[0]?.yarns).toEqual(yarn === null ? [] : [yarn]);
  });

  test.each([
    ['Squares (make 12 in A, 13 in B)', 25, 'A12 B13'],
    ['Squares (make 2 in A and 1 in colour B)', 3, 'A2 B1'],
    ['Ears (make 2 in moss)', 2, 'Moss2'],
    ['Squares (make 12 in square)', 1, ''],
    ['Strip (in B)', 1, 'B1'],
  ])('copies by yarn: %s', (heading, copies, yarns) => {
    const head = '---\nyarn: { A: {}, B: {}, Moss: {} }\n---\n';
    const [part] = read(`${head}## ${heading}\n\n${disc}`).parts;
    const counted = [...new Set(part!.yarns)].map((name) => `${name}${part!.yarns.filter((each) => each === name).length}`);
    expect(part!.copies).toBe(copies);
    expect(counted.join(' ')).toBe(yarns);
  });

  test.each([
    ['Leaf (make 2)', 'Make the first in A and the second in B.', ['A', 'B']],
    ['Leaf (make 3)', 'Make 2 in A and 1 in colour B.', ['A', 'A', 'B']],
    ['Leaf', 'Work in moss throughout.', ['Moss']],
    ['Leaf (make 2)', 'Make 5 in A and 1 in B.', []],
    ['Leaf', 'A leaf worked in B or in A.', []],
    ['Leaf', 'Work in rounds.', []],
  ])('yarns of copies: %s, %s', (heading, sentence, yarns) => {
    const head = '---\nyarn: { A: {}, B: {}, Moss: {} }\n---\n';
    expect(read(`${head}## ${heading}\n\n${sentence}\n\n${disc}`).parts[0]?.yarns).toEqual(yarns);
  });

  test('a line that says the terms is no list, no part, and swallows no foundation', () => {
    const text = 'US terms\nCh 20, sl st to form a ring.\nRound 1: ch 1, sc in each ch, join. (20)';
    expect(parts(text)).toEqual(['']);
    expect(instructions(text)).toHaveLength(2);
  });

  test.each(['FIRST SIDE', 'First side', 'Second strap'])('%s below a counted row', (heading) => {
    const tube = 'US terms\nCh 20, join to form a ring.\nRnd 1: Ch 1, sc in each ch, sl st to join. (20)';
    const text = `${tube}\n${heading}\nRow 1: Ch 1, sc in next 10 sts, turn. (10)`;
    expect(parts(text)).toEqual(['', expect.stringMatching(heading)]);
  });

  test('a heading where numbering goes on continues the piece', () => {
    const text = `## Base\n\n${disc}\n\n## Sides\n\nRnd 3: Sc in each st around. (12)`;
    expect(parts(text)).toEqual(['Base', 'Sides+']);
  });

  test('so does one where new yarn is only taken up', () => {
    const text = `## Base\n\n${disc}\n\n## Stripe\n\nRnd 3: With B, sc in each st around. (12)`;
    expect(parts(text)).toEqual(['Base', 'Stripe+']);
  });

  test.each([
    ['a ring', 'Rnd 1: 6 sc in magic ring. (6)'],
    ['a foundation chain', 'Ch 11.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)'],
    ['joined yarn', 'Rnd 1: Join B with sl st in any st, ch 1, sc in each st around. (12)'],
  ])('a part that begins with %s is a piece of its own', (_, work) => {
    expect(parts(`## Base\n\n${disc}\n\n## Top\n\n${work}`)).toEqual(['Base', 'Top']);
  });

  test('what is made twice is no continuation', () => {
    const text = `## Base\n\n${disc}\n\n## Openings (work both alike)\n\nRnd 3: Sc in each st around. (12)`;
    expect(parts(text)).toEqual(['Base', 'Openings (work both alike)*2']);
  });

  test('an edging that takes up the uncut work continues it, though its numbers begin again', () => {
    const edging = '## Edging\n\nRnd 1: Ch 1, sc in same st as join and in each st around; join.';
    expect(parts(`## Base\n\n${disc}\n\n${edging}`)).toEqual(['Base', 'Edging+']);
    expect(parts(`## Base\n\n${disc}\n\nFasten off.\n\n${edging}`)).toEqual(['Base', 'Edging']);
  });

  test.each([
    ['Rnd 1: Ch 2, *FPdc around next st, BPdc around next st; rep from * around; join.', '+'],
    ['Rnd 1: Work 30 sc evenly along the row ends.', '+'],
    ['Rnd 1: Ch 3, 11 dc in ring; join.', ''],
    ['Rnd 1: 6 sc. (6)', ''],
  ])('numbers that begin again with "%s"', (round, sign) => {
    expect(parts(`## Base\n\n${disc}\n\n## Brim\n\n${round}`)).toEqual(['Base', `Brim${sign}`]);
  });

  test('a second piece that is told from its middle is a piece of its own', () => {
    const left = '## Left\n\nWork as the right one to Rnd 1.\n\nRnd 2: Sc in each st. (6)';
    expect(parts(`## Right\n\n${disc} Fasten off.\n\n${left}`)).toEqual(['Right', 'Left']);
  });

  test('wrapped prose that breaks before the end of a sentence is no row', () => {
    const text = `## Base\n\n${disc}\n\nFold the piece along the line that was left open in\nRnd 10. Sew on the loop.`;
    expect(instructions(text)).toHaveLength(2);
  });

  test('wrapped prose that begins with a label word is no row', () => {
    const text = `## Base\n\n${disc}\n\nThe ring is closed now. Look at it closely, and then compare it with\nRnd 2 of the picture above before you go on.`;
    expect(instructions(text)).toHaveLength(2);
  });

  test('a row runs to the blank line, whatever its words', () => {
    const text = '## Base\n\nRnd 1: 6 sc in magic ring, drawing the\nring as tight as you are able. (6)';
    expect(instructions(text)).toEqual([text.slice(9)]);
  });
});

describe('orders', () => {
  const note = 'Do not turn at the end of a round.';

  test('of the notes at the head hold for all parts', () => {
    const { orders, parts: all } = read(`---\nterms: US\n---\n${note}\n\n## Base\n\n${disc}`);
    expect(orders.map((order) => order.kind)).toEqual(['turning']);
    expect(all[0]?.orders).toEqual([]);
    const below = read(`## Notes\n\n${note}\n\n## Base\n\n${disc}`);
    expect(below.orders.map((order) => order.kind)).toEqual(['turning']);
  });

  test('of the prose of a part hold for that part, with absolute spans', () => {
    const text = `## Base\n\n${note}\n\n${disc}\n\n## Top\n\n${disc}`;
    const { orders, parts: all } = read(text);
    expect(orders).toEqual([]);
    expect(all.map((part) => part.orders.length)).toEqual([1, 0]);
    const order = all[0]?.orders[0];
    expect(text.slice(order?.from, order?.to).toLowerCase()).toContain('do not turn');
  });
});

describe('parts named on the line of their work', () => {
  const square = 'Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11)\nRow 2: Ch 1, turn, sc across. (11)';
  test.each(['TRIM: Join B in 1st sc and work a row of sc all around; join.', 'STRAP: Ch 31. Sc in 2nd ch from hook and in each ch across. (30)', 'Collar: Join yarn at neck, sc across.'])(
    '%s',
    (line) => {
      expect(instructions(`${square}\n${line}`).at(-1)).toBe(line);
    },
  );
  test.each([
    ['Finished size about 22 x 31', ''],
    ['Bib 22" x 31"', ''],
    ['Tie x 2', '*2'],
    ['Tie (x 2)', '*2'],
  ])('copies of "%s"', (heading, copies) => {
    expect(parts(`${heading}\n${square}`)).toEqual([`${heading}${copies}`]);
  });
});
