/** The errand bag by its gauge, against figures that anyone can work out on paper. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, measure, type PartSize, printFigure } from '../../../src/index.ts';

const text = readFileSync('examples/low-tide-errand-bag.pattern.md', 'utf8');
const compiled = compile(text, { fixes: false });
const sheet = measure(compiled.manuscript, compiled.fabric);
const [bag] = sheet.sizes;
const piece = bag!.pieces[0]!;
const part = (name: string): PartSize => piece.parts.find((each) => each.name === name)!;
const cm = (name: string, what: keyof PartSize['measures']): number =>
  part(name).measures[what]!.mm / 10;

describe('the errand bag', () => {
  test('is 104 stitches of 6.25 mm around: 65 cm, 32.5 cm as it lies', () => {
    expect(cm('Sides', 'around')).toBeCloseTo(65, 6);
    expect(cm('Sides', 'flat')).toBeCloseTo(32.5, 6);
    expect(printFigure(part('Sides').measures.around!, 'metric')).toBe('65 cm (63-67)');
  });

  test('has sides of 16 sc rounds and 11 of mesh: 23.5 cm to the rim', () => {
    expect(piece.whole.high!.mm).toBeCloseTo((16 * 100) / 18 + (11 * 100) / 7.5, 6);
    expect(printFigure(piece.whole.high!, 'metric')).toMatch(/^23\.5 cm/);
  });

  test('stands on an oval of 41 stitches and 3 rounds: about 29 x 3.3 cm', () => {
    expect(cm('Base', 'wide')).toBeCloseTo(3.333, 3);
    expect(cm('Base', 'long')).toBeCloseTo(41 * 0.625 + 3.333, 3);
  });

  test('has straps of 50 chains over openings of 18 stitches', () => {
    expect(cm('Handles and rim', 'strap')).toBeCloseTo(50 * 0.625, 6);
    expect(cm('Handles and rim', 'opening')).toBeCloseTo(18 * 0.625, 6);
  });

  test('is sure of what was counted, and calls yarn that was not weighed an estimate', () => {
    expect(part('Sides').measures.around!.how).toBe('swatch');
    expect(bag!.yarns[0]!.how).toBe('estimate');
    expect(bag!.yarns[0]!.balls!.atMost).toBeGreaterThanOrEqual(bag!.yarns[0]!.balls!.likely);
  });

  test('takes a tail at every start and end: bag and two openings', () => {
    expect(bag!.yarns[0]!.tails).toBeCloseTo(3 * 2 * 0.15, 9);
  });
});
