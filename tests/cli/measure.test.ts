/** `measure` and `space` as they are called, by their functions: what is printed and the exit status. */
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { runMeasure } from '../../cli/measure.ts';
import { listened } from './listened.ts';

const asked = {
  gauge: [],
  yarn: [],
  units: 'metric',
  format: 'text',
  terms: 'auto',
  color: false,
} as const;
const bag = 'examples/low-tide-errand-bag.pattern.md';

afterEach(() => vi.restoreAllMocks());

describe('measure', () => {
  test('prints the bag with its bounds and how each figure was had', async () => {
    const { out } = listened();
    expect(await runMeasure(bag, asked)).toBe(0);
    const text = out.join('');
    expect(text).toContain('around 65 cm (63-67) [1]');
    expect(text).toContain('high above the base 23.5 cm');
    expect(text).toContain('[1] Gauge in sc: 16 sts x 18 rnds = 10 cm.');
  });

  test('prints JSON of version 1', async () => {
    const { out } = listened();
    await runMeasure(bag, { ...asked, format: 'json' });
    const sheet = JSON.parse(out.join(''));
    expect(sheet.version).toBe(1);
    expect(sheet.sizes[0].pieces[0].parts[1].measures.around.cm).toEqual({
      value: 65,
      from: 63,
      to: 67,
    });
    expect(sheet.yarns[0].tex).toBeCloseTo(454.545, 3);
  });

  test('puts sizes side by side', async () => {
    const { out } = listened();
    await runMeasure('examples/weather-watch-hat.pattern.md', asked);
    expect(out.join('')).toContain('toddler (child, adult S, adult L)');
    expect(out.join('')).toContain('Sides, tube: around 43 (47, 51.5, 56) cm');
  });

  test('draws one schematic a size', async () => {
    listened();
    const folder = mkdtempSync(join(tmpdir(), 'loopwright-'));
    const schematic = join(folder, 'hat.svg');
    await runMeasure('examples/weather-watch-hat.pattern.md', { ...asked, schematic });
    expect(readdirSync(folder).sort()).toEqual([
      'hat-adult-l.svg',
      'hat-adult-s.svg',
      'hat-child.svg',
      'hat-toddler.svg',
    ]);
    expect(readFileSync(join(folder, 'hat-child.svg'), 'utf8')).toContain('<svg');
  });

  test.each([
    [{ gauge: ['nonsense'] }, 'hold no count over a length'],
    [{ yarn: ['nonsense'] }, 'holds no put-up'],
    [{ yarn: ['C: 50 g / 110 m'] }, 'no yarn "C": it has A'],
    [{ schematic: '/nowhere/at/all.svg' }, 'no such file or folder'],
  ])('says what is wrong with %j', async (option, said) => {
    const { err } = listened();
    expect(await runMeasure(bag, { ...asked, ...option })).toBe(2);
    expect(err.join('')).toContain(said);
  });

  test('says when there is no such file', async () => {
    const { err } = listened();
    expect(await runMeasure('no/such.md', asked)).toBe(2);
    expect(err.join('')).toContain('no/such.md');
  });

  test('asks which fabric is meant where a gauge names none and the pattern counts several', async () => {
    const { err } = listened();
    const folder = mkdtempSync(join(tmpdir(), 'loopwright-'));
    const file = join(folder, 'two.pattern.md');
    writeFileSync(
      file,
      '---\nterms: US\ngauge:\n  sc: 16 sts x 18 rows = 10 cm\n  dc: 15 sts x 8 rows = 10 cm\n---\nCh 11.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\n',
    );
    expect(await runMeasure(file, { ...asked, gauge: ['14 sts x 16 rows = 10 cm'] })).toBe(2);
    expect(err.join('')).toContain('names no stitch, and the pattern counts sc, dc');
  });
});
