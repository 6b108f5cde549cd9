import { describe, expect, test } from 'vitest';
import { sectionNamed } from '../../../src/manuscript/sections.ts';

describe('names of sections', () => {
  test.each([
    ['Notes', 'notes'],
    ['PATTERN NOTES:', 'notes'],
    ['About this pattern', 'notes'],
    ['Special Stitches', 'specials'],
    ['Stitches used', 'specials'],
    ['Abbreviations (US terms)', 'abbreviations'],
    ['UK Abbreviations', 'abbreviations'],
    ['Materials', 'materials'],
    ['You will need:', 'materials'],
    ["What you'll need", 'materials'],
    ['Finished measurements', 'materials'],
    ['Yarn and hook', 'materials'],
    ['3 thoughts on “Little disc”', 'comments'],
    ['Leave a reply', 'comments'],
    ['Related posts', 'comments'],
    ['Body', null],
    ['Ears (make 2)', null],
    ['Hook case', null],
    ['Note holder', null],
    ['Finishing', null],
  ])('%s', (words, section) => {
    expect(sectionNamed(words)).toBe(section);
  });
});
