// `loopwright place` as people run it: built, in a process of its own.
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runner } from './run.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const place = (...args: string[]) => runner(root)('place', ...args);
const bag = ['--pattern', 'examples/low-tide-errand-bag.pattern.md', '--row', '11'];

test('takes boxes, mesh and gauge from the pattern', () => {
  const { status, stdout } = place('--width', '21', ...bag);
  expect(status).toBe(0);
  // 52 boxes of dc and ch 1 at 8 boxes to 10 cm; the check values of the bag: 4 before, 5 after.
  expect(stdout).toContain('52 boxes around, 52 x 2 = 104 stitches');
  expect(stdout).toContain('boxes 3-23: 4 stitches before, 5 after');
  expect(stdout).toContain('52 boxes: 104 stitches, about 65 cm around; the piece as it is fits');
  // 104 stitches in boxes of 3 are 34 and 2 over; 12.5 mm for 2 stitches are 18.75 for 3.
  expect(stdout).toContain('34 boxes, 2 stitches left over. A box would be about 19 mm wide');
});

test('does not take another mesh than the row has', () => {
  const { status, stderr } = place('TIDE', ...bag, '--mesh', 'dc, ch 2');
  expect(status).toBe(2);
  expect(stderr).toContain('the open boxes of row 11 have ch 1');
});

test('says when it does not fit, and how it would run across the join', () => {
  const { status, stdout } = place('--width', '30', '--around', '52', '--mesh', 'dc, ch 1');
  expect(status).toBe(1);
  // 30 boxes on a front of 26: 2 over at each side, so from box 51 across the join to box 28.
  expect(stdout).toContain('boxes 51-52 and 1-28');
});

test('lists the second face half a round on', () => {
  const { stdout } = place('--width', '21', '--around', '52', '--mesh', 'dc, ch 1', '--faces', '2');
  expect(stdout).toContain('boxes 3-23: 4 stitches before, 5 after; second face boxes 29-49');
});

test('gives the words of the row, across the join too', () => {
  const around = ['--around', '52', '--mesh', 'dc, ch 1'];
  expect(place('--width', '21', ...around).stdout).toContain(
    'Work 2 open boxes, work chart, work 29 open boxes.',
  );
  // From box 51: two boxes before the join, the other 28 behind it, where the round begins.
  expect(place('--width', '30', ...around).stdout).toContain(
    'Work boxes 3-30 of chart, work 22 open boxes, work boxes 1-2 of chart.',
  );
});

test('knows the front from the notes of the pattern, and from --start', () => {
  expect(place('--width', '21', ...bag).stdout).toContain(
    'The rounds are said to start at the side.',
  );
  const back = place('--width', '21', '--around', '52', '--mesh', 'dc, ch 1', '--start', 'back');
  // The front is stitches 26 to 78; box 16 begins at stitch 30: 4 before, 5 after.
  expect(back.stdout).toContain('boxes 16-36: 4 stitches before, 5 after');
});

test('by eye, left hands meet the word from its other end', () => {
  const around = ['L', '--across', '20', '--mesh', 'dc, ch 1'];
  const eye = (hand: string): string =>
    place(...around, '--hand', hand)
      .stdout.split('Centred by eye')[1]
      ?.split('\n')[1] ?? '';
  expect(eye('left')).not.toEqual(eye('right'));
});
