// Lists whose number stands at their end, and words beside the work. Common practice of toy makers.
import { expect, test } from 'vitest';
import { complaints, worked } from './worked.ts';

test.each([
  ['Rnd 2: inc 2sc x5 (20)', 15, 20],
  ['Rnd 2: inc, sc x7 (21)', 14, 21],
  ['Rnd 2: 2sc dec x4 (12)', 16, 12],
  ['Rnd 2: 4sc Dec x3 (15)', 18, 15],
])('a number behind a list is of all of it where only so the count is met: %s', (row, n, made) => {
  const text = `Rnd 1: ${n} sc in MR (${n})\n${row}\n`;
  expect(worked(text, 'Rnd 2')).toEqual([`Rnd 2 ${made} proven`]);
  expect(complaints(text)).toEqual([]);
});

test('a count that neither reading of the list meets is told', () => {
  const text = 'Rnd 1: 15 sc in MR (15)\nRnd 2: inc 2sc x5 (21)\n';
  expect(complaints(text)).toEqual(['2 count-mismatch']);
});

test('a decrease over glued legs stays one where the count says so', () => {
  const text = 'Rnd 1: 12 sc in MR (12)\nRnd 2: 3sc Dec x4 (4)\n';
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 4 proven']);
});

test('a round around two pieces held together leaves nothing of the last one', () => {
  const ball = (name: string): string => `${name}\nR1: 7sc in MR (7)\nR2: inc x7 (14)\n\n`;
  const text = `${ball('Wing')}${ball('Belly')}Wool\nR1: 33sc around both head and belly (33)\nR2: 33sc (33)\n`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'R2')).toEqual(['R2 33 proven']);
});

test('words beside the work are no unknown words', () => {
  const text =
    'R1: Using grey yarn, make a magic adjustable ring, and sc 9 times into the loop.\n' +
    'R2: 2 sc in each sc around (18 sts) Change to collar color\nR3: sc around (18 sts)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'R2', 'R3')).toEqual(['R2 18 proven', 'R3 18 proven']);
});

test('a note on turning chains that begins with the chain is no row', () => {
  const text =
    'Notes:\n\n1ch turning chain does not count as a stitch, but 3ch t-ch counts as a treble throughout. ' +
    'Where t-ch counts as tr, do not work first stitch but work last stitch in t-ch of the row below.\n\n' +
    'BACK:\n\n18ch.\n\nRow 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. (17 dc)\n';
  expect(complaints(text)).toEqual([]);
});

test('a list of ones, how often behind a dash, and a dot behind a short word', () => {
  const text =
    'R1: 8 sc in MR (8)\nR2: 8 inc (16)\nR3: (1 sc, 1 inc) – 8 times (24)\nR4: (2 sc, 1 inc) - 8 times (32)\n' +
    'R5: *6 sc, inv. dec* (28)\nR6: *inv. dec* (14)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'R3', 'R4', 'R5', 'R6')).toEqual([
    'R3 24 proven',
    'R4 32 proven',
    'R5 28 proven',
    'R6 14 proven',
  ]);
});

test('a number before "first", "last" or "end" is of them, and a loop order may name its round', () => {
  const text =
    'UK terms\n1st round: 8 dc in ring. 8 dc.\n2nd round: 2 tr in each dc. 16 tr.\n' +
    '3rd round: *1 tr in each of 2 first tr, 2 tr in each of next 2 tr* repeat from * to *. 24 tr.\n' +
    '4th round: Working this round in back loops, 1 dc in each tr to last 2 sts, 2 dc in each of the 2 last sts. 26 dc.\n';
  expect(complaints(text)).toEqual([]);
  const flat = 'Row 1: Ch 11, sc in 2nd ch from hook and in each ch across, turn. (10 sc)\n';
  const row = 'Row 2: Ch 1, sc in each st to last 2, 2 sc in each of the two end stitches, turn. (12 sc)\n';
  expect(complaints(flat + row)).toEqual([]);
  expect(complaints(flat + row.replace('(12', '(13'))).toEqual(['2 count-mismatch']);
});
