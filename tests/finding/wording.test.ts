import { describe, expect, test } from 'vitest';
import { counted, grouped, noun } from '../../src/finding/index.ts';
import { brief, piecesOf, say } from '../../src/finding/wording.ts';

describe('a title is filled', () => {
  const unit = noun('ch-2 sps');
  test.each([
    ['{row} has {n #}.', { row: 'round 4', n: 3 }, 'Round 4 has 3.'],
    ['{n: boxes} fit.', { n: 1 }, '1 box fit.'],
    ['{n: stitches} fit.', { n: 20 }, '20 stitches fit.'],
    ['It has {n: [unit]}.', { n: 1, unit }, 'It has 1 ch-2 sp.'],
    ['It has {n: [unit]}.', { n: 2, unit }, 'It has 2 ch-2 sps.'],
    ['{n #} {n|is|are} left.', { n: 1 }, '1 is left.'],
    ['{n #} {n|is|are} left.', { n: 0 }, '0 are left.'],
    ['No "{a}"[; "{b}" is].', { a: 'x' }, 'No "x".'],
    ['No "{a}"[; "{b}" is].', { a: 'x', b: '' }, 'No "x".'],
    ['No "{a}"[; "{b}" is].', { a: 'x', b: 'y' }, 'No "x"; "y" is.'],
  ])('%s', (title, words, filled) => {
    expect(say(piecesOf(title), words)).toBe(filled);
  });

  test('words of hers that look like places stay as they are', () => {
    expect(say(piecesOf('No "{a}".'), { a: '{b} [; {a}]', b: 'z' })).toBe('No "{b} [; {a}]".');
  });
});

test.each([
  ['stitches', 'stitch'],
  ['boxes', 'box'],
  ['chains', 'chain'],
  ['spaces', 'space'],
  ['sizes', 'size'],
  ['arches', 'arch'],
  ['meshes', 'mesh'],
  ['sts', 'st'],
  ['sc', 'sc'],
  ['ch-50 sps', 'ch-50 sp'],
])('one of %s is a %s', (many, one) => {
  expect(noun(many).one).toBe(one);
});

test('numbers get commas from five digits on', () => {
  expect([0, 1024, 10_000, 1_000_000].map(grouped)).toEqual(['0', '1024', '10,000', '1,000,000']);
  expect(counted(999_999_999, noun('stitches'))).toBe('999,999,999 stitches');
});

test('long words of hers are cut after a word, and never inside a sign', () => {
  expect(brief('sc in\n  next st')).toBe('sc in next st');
  const cut = brief('wander about the tower '.repeat(2000));
  expect(cut).toBe('wander about the tower wander about the tower wander about the tower …');
  expect(encodeURIComponent(brief('🧶'.repeat(100)))).toContain('%A7%B6');
});
