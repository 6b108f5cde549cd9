/** What stands on the sheet, as a designer reads it. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetText } from '../../cli/text/sheet.ts';
import {
  compile,
  gaugeFromWords,
  type MeasureOptions,
  measure,
  plain,
  type Units,
} from '../../src/index.ts';

function said(text: string, units: Units = 'metric', options: MeasureOptions = {}): string {
  const { manuscript, fabric } = compile(text, { fixes: false });
  return sheetText(measure(manuscript, fabric, options), { units, width: 200, paint: plain });
}

const example = (name: string): string => readFileSync(`examples/${name}.pattern.md`, 'utf8');

const band = (gauge: string): string =>
  `---\nterms: US\nyarn: { A: { ball: 50 g / 110 m } }\ngauge: { sc: ${gauge} }\n---\nCh 41.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)\n\nRows 2-20: Ch 1, sc in each st across, turn. (40 sc)\n`;

describe('the gauge', () => {
  test('is told over 10 cm and 4 in, whatever it was counted over', () => {
    const sheet = said(band('12 sts x 13 rows = 7.5 cm'), 'both');
    expect(sheet).toContain(
      'sc: 16 sts x 17.5 rows to 10 cm or 4 in, give or take 3 %; one swatch.',
    );
  });

  test('is the mean of several swatches', () => {
    const sheet = said(
      band('[16 sts x 18 rows = 10 cm, 17 sts x 18 rows = 10 cm, 16 sts x 19 rows = 10 cm]'),
    );
    expect(sheet).toContain('sc: 16 sts x 18 rows to 10 cm');
    expect(sheet).toContain('the mean of 3 swatches');
  });

  test('tells what blocking makes of a length', () => {
    const sheet = said(
      band('{ before: 18 sts x 20 rows = 10 cm, after: 16 sts x 18 rows = 10 cm }'),
    );
    // 18 / 16 and 20 / 18 of ten.
    expect(sheet).toContain(
      'after blocking. What measures 10 on the hook becomes 11.3 across and 11.1 up.',
    );
    expect(sheet).toContain('wide 25 cm');
  });

  test('says so where blocking is not known', () => {
    expect(said(band('16 sts x 18 rows = 10 cm before blocking'))).toContain(
      'before blocking: what blocking does is not known',
    );
  });
});

describe('sizes side by side', () => {
  const sheet = said(example('weather-watch-hat'));

  test("keep a crown's even rounds, with a dash where a size has none", () => {
    expect(sheet).toContain('Crown, tube: high 2.7 (1.3, 1.3, -) cm');
  });

  test('measure a hat from the middle of its crown, as the pattern states it', () => {
    expect(example('weather-watch-hat')).toContain('18.5 (20, 21.5, 22.5) cm');
    expect(sheet).toContain(
      'from the middle of the base to the last round 18.5 (20, 21.5, 22.5) cm',
    );
  });

  test('have their yarn and balls', () => {
    expect(sheet).toMatch(/Yarn A: 80 \(95, 110, 125\) m; balls with margin 1 \(1, 1, 1\)/);
  });
});

describe('yarn', () => {
  test('of a small colour is never nought', () => {
    const sheet = said(example('tidepool-square'), 'both');
    expect(sheet).not.toMatch(/\b0 (?:m|yd|oz|g)\b/);
    expect(sheet).toContain('under ¼ oz');
  });

  test('has its margin on a line of its own, and what is not stitches', () => {
    const sheet = said(example('low-tide-errand-bag'));
    expect(sheet).toContain('of it foundation 1 m; joins of rounds 1 m; tails 1 m\n');
    expect(sheet).toMatch(/\n {6}margin 10 % \(usual\): 19 m more\n/);
  });
});

describe('the lean', () => {
  const sheet = said(example('low-tide-errand-bag'));

  test('is told at the motif and at the handles, remedies of the whole piece once', () => {
    expect(sheet).toContain(
      'Where the motif begins (Rnd 12): 3 to 5 stitches (1.9 cm to 2.8 cm) to the right',
    );
    expect(sheet).toContain('Where the handles begin (Rnd 25): 4 to 7 stitches');
    expect(sheet.match(/Turn, leaves hardly anything/g)).toHaveLength(1);
    expect(sheet.match(/Move the start once/g)).toHaveLength(2);
  });

  test('of a toy is one sentence', () => {
    expect(said(example('estuary-otter'))).toContain(
      'Where no motif or handle shows it: Head 6 to 9 stitches',
    );
  });
});

describe('counts at another gauge', () => {
  test('keep mesh, faces, word and handles, and say so', () => {
    const gauge = ['15 sts x 17 rnds = 10 cm in sc', '7.5 boxes x 7 rnds = 10 cm'].map(
      (words) => gaugeFromWords(words)!,
    );
    const sheet = said(example('low-tide-errand-bag'), 'metric', { gauge });
    expect(sheet).toContain("Base: 104 stitches, 65 cm at the pattern's gauge, come to 69 cm.");
    expect(sheet).toContain('Kept: a box of the mesh is 2 stitches; front and back are alike;');
    expect(sheet).toContain('96 stitches: 64 cm; begin with ch 39');
    expect(sheet).toContain('104 stitches as written: 69 cm\n');
    expect(sheet).toContain('come to 21.5 cm; 2 rounds of sc fewer make 20.5 cm.');
  });

  test('say when there are none, and why', () => {
    const gauge = [gaugeFromWords('6 boxes x 6 rows = 10 cm')!];
    const sheet = said(example('harbour-name-banner'), 'metric', { gauge });
    expect(sheet).toContain(
      'No count within a tenth of the size keeps all of that. The motif needs 88.',
    );
  });
});

describe('what is not known', () => {
  test('of the lean of dc rounds is said where handles stand on them', () => {
    const bag = `---\nterms: US\ngauge: { dc: 15 sts x 8 rnds = 10 cm }\n---\nCh 14.\n\nRnd 1: 2 dc in 4th ch from hook, dc in next 9 ch, 3 dc in last ch; working along opposite side of foundation ch, dc in next 9 ch; join. (24 dc)\n\nRnds 2-8: Ch 2, dc in each st around; join. (24 dc)\n\nRnd 9: Ch 1, sc in next 6 sts, ch 20, sk next 6 sts, sc in next 6 sts, ch 20, sk last 6 sts; join. (12 sc, 2 ch-20 sps)\n`;
    expect(said(bag)).toContain(
      'Where the handles begin (Rnd 9): not known. The 8 rounds beneath lean as your own swatch does',
    );
  });

  test('a piece without gauge and yarn is a guess, and has no sizes', () => {
    const sheet = said('Rnd 1: 6 sc in magic ring. (6)\n');
    expect(sheet).not.toContain('Size by gauge');
    expect(sheet).toContain('a guess');
    expect(sheet).toContain('Neither gauge nor yarn is given: a medium yarn is assumed.');
  });

  test('balls are in the units asked for', () => {
    expect(said(example('low-tide-errand-bag'), 'us')).toContain('balls of 1¾ oz / 120 yd');
  });
});

describe('what is little', () => {
  const dot =
    '---\nterms: US\nyarn: { A: { ball: 50 g / 120 m }, B: { ball: 50 g / 120 m } }\ngauge: { sc: 20 sts x 22 rnds = 10 cm }\n---\nWith A, make a magic ring.\n\nRnd 1: 6 sc in ring. (6 sc)\n\nRnd 2: With B, 2 sc in each st around. (12 sc)\n';

  test.each(['metric', 'us', 'both'] as const)('is not nothing: %s', (units) => {
    const sheet = said(dot, units);
    expect(sheet).not.toMatch(/(?:^|[ (])0 (?:m|yd|g|oz|cm|in|hours?)\b/m);
    expect(sheet).toMatch(/A: 1 (?:m|yd)/);
    expect(sheet).toContain('margin 10 % (usual): under 1');
    expect(sheet).toContain('about a quarter of an hour');
  });

  test('nor in ounces, which are told in quarters', () => {
    expect(said(dot, 'us')).toContain('A: 1 yd; under ¼ oz');
    expect(said(example('weather-watch-hat'), 'us')).toContain('1½ oz (1-2)');
  });
});

describe('rows until it measures', () => {
  const scarf =
    '---\nterms: US\nyarn: { A: { ball: 50 g / 110 m } }\ngauge: { sc: 20 sts x 22 rows = 10 cm }\n---\n## Scarf\n\nCh 41.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)\n\nRow 2: Ch 1, sc in each st across, turn. (40 sc)\n\nRep Row 2 until piece measures 50 cm from beginning.\n';

  test('are as many as the gauge says: 110 at 22 to 10 cm', () => {
    const sheet = said(scarf);
    expect(sheet).toContain('Scarf, Row 1 on, 110 rows in all (flat piece)');
    expect(sheet).toContain(
      'Scarf: 108 rows by the gauge, which come to 50 cm for the 50 cm wanted: work to the length',
    );
  });

  test('are others at another gauge, for the same length: 80 at 16 to 10 cm', () => {
    // The gauge names no stitch, and the pattern counts but one fabric.
    const sheet = said(scarf, 'metric', { gauge: [gaugeFromWords('14 sts x 16 rows = 10 cm')!] });
    expect(sheet).toContain('Scarf, Row 1 on, 80 rows in all (flat piece)');
    expect(sheet).toContain('long 50 cm');
    expect(sheet).toContain('28 stitches: 20 cm');
    expect(sheet).not.toContain('rows of sc');
  });
});
