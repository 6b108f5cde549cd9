/** Whatever the pattern, faulty ones too: a sheet, a schematic, and numbers that are numbers. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sheetText } from '../../cli/text/sheet.ts';
import { compile, drawSchematic, gaugeFromWords, measure, plain, toSvg } from '../../src/index.ts';

const files = ['tests/fixtures/bare', 'tests/fixtures/faulty', 'examples'].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => /\.(?:txt|md)$/.test(name) && name !== 'README.md')
    .map((name) => `${folder}/${name}`),
);
const OTHER = ['10 sts x 8 rows = 10 cm in dc', '13 sts x 14 rows = 10 cm in sc'].map(
  (words) => gaugeFromWords(words)!,
);
/** No number, a length of nothing, a count below nought. */
const BROKEN =
  /NaN|undefined|Infinity|null|(?:^|[ (])0 (?:cm|in|m|yd|g|oz)\b|(?:ch|sts?|stitches|rows?) -\d/;

test.each(files)('%s', (file) => {
  const { manuscript, fabric } = compile(readFileSync(file, 'utf8'), { fixes: false });
  for (const gauge of [undefined, OTHER]) {
    const sheet = measure(manuscript, fabric, gauge ? { gauge } : {});
    const words = sheetText(sheet, { units: 'both', width: 100, paint: plain });
    expect(BROKEN.exec(words)?.[0] ?? '').toBe('');
    for (const size of sheet.sizes) {
      const drawing = drawSchematic(size, { title: 'x', units: 'both' });
      if (drawing) expect(toSvg(drawing)).not.toMatch(/NaN|undefined|Infinity/);
    }
  }
});
