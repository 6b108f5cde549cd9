// `loopwright trace` as people run it: built, in a process of its own, on pictures made here.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compile } from '../../src/index.ts';
import { runner } from './run.ts';

let folder = '';
const trace = (...args: string[]) => runner(folder)('trace', ...args);

/** The chart's rows as printed. */
const rowsIn = (block: string): string[] =>
  block
    .split('\n\n')[1]
    ?.split('\n')
    .filter((line) => /^[.#]+$/.test(line)) ?? [];

/** A dark L, 80 wide and 120 high: what stands up and what is turned can be told from it. */
const ell = `<svg xmlns="http://www.w3.org/2000/svg" width="80" height="120"><rect width="80" height="120" fill="#fff"/><path d="M20 20h20v60h20v20h-40z" fill="#123"/></svg>`;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-trace-'));
  const at = (name: string) => join(folder, name);
  const drawn = () => sharp(Buffer.from(ell));
  await drawn().png().toFile(at('ell.png'));
  await drawn().jpeg({ quality: 95 }).toFile(at('ell.jpg'));
  // Lying on its side in the file, with the note that cameras leave (EXIF orientation 6: turn right).
  const lying = await drawn().rotate(270).jpeg({ quality: 95 }).toBuffer();
  await sharp(lying).withMetadata({ orientation: 6 }).toFile(at('lying.jpg'));
  await drawn().toColourspace('cmyk').jpeg({ quality: 95 }).toFile(at('inks.jpg'));
  await drawn().toColourspace('b-w').png().toFile(at('grey.png'));
  await drawn().toColourspace('rgb16').png().toFile(at('deep.png'));
  await sharp(Buffer.from(ell.replace(/<rect[^>]*>/, '')))
    .png()
    .toFile(at('clear.png'));
  const frames = await Promise.all([
    drawn().png().toBuffer(),
    drawn().negate({ alpha: false }).png().toBuffer(),
  ]);
  await sharp(frames, { join: { animated: true } })
    .gif()
    .toFile(at('two.gif'));
  const bytes = readFileSync(at('ell.jpg'));
  writeFileSync(at('cut.jpg'), bytes.subarray(0, bytes.length / 2));
  writeFileSync(at('text.png'), 'Rnd 1: 6 sc in magic ring. (6)');
  writeFileSync(at('huge.png'), hugePng());
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The head of a PNG that says it is 100,000 pixels wide and high. */
function hugePng(): Uint8Array {
  const png = readFileSync(join(folder, 'ell.png'));
  const view = new DataView(png.buffer, png.byteOffset);
  view.setUint32(16, 100_000);
  view.setUint32(20, 100_000);
  // The checksum of the head (CRC-32 of its name and data, PNG specification).
  let crc = 0xffffffff;
  for (const byte of png.subarray(12, 29)) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  view.setUint32(29, ~crc >>> 0);
  return png;
}

const ELL = ['....', '.#..', '.#..', '.#..', '.##.', '....'];

describe('one picture in many kinds of file gives one chart', () => {
  test.each([
    'ell.png',
    'ell.jpg',
    'lying.jpg',
    'inks.jpg',
    'grey.png',
    'deep.png',
    'clear.png',
    'two.gif',
  ])('%s', (name) => {
    const { status, stdout } = trace(name, '--width', '4');
    expect(rowsIn(stdout)).toEqual(ELL);
    expect(status).toBe(0);
  });
});

test('prints a chart block that a pattern can hold, named by the file', () => {
  const { stdout } = trace('ell.png', '--width', '4', '--mesh', 'dc, ch 2');
  const chart = compile(`Rnd 1: 6 sc in magic ring. (6)\n\n${stdout}`).manuscript.charts[0];
  expect([chart?.name, chart?.mesh?.gap, chart?.rows.length]).toEqual(['ell', 2, 6]);
});

test('rows follow from the shape of the boxes', () => {
  const { stdout, stderr } = trace(
    'ell.png',
    '--width',
    '4',
    '--gauge',
    '10 boxes x 5 rows = 10 cm',
  );
  // Boxes 1 cm wide and 2 cm high: half as many rows.
  expect(rowsIn(stdout)).toHaveLength(3);
  expect(stderr).toContain('about 4 x 6 cm');
});

test('options turn, clean and frame', () => {
  expect(rowsIn(trace('ell.png', '--width', '4', '--invert').stdout)[1]).toBe('#.##');
  const mirrored = trace('ell.png', '--width', '4', '--mirror');
  expect(rowsIn(mirrored.stdout)[1]).toBe('..#.');
  expect(mirrored.stderr).toContain('letters in the picture now read backwards');
  const framed = trace('ell.png', '--width', '4', '--border', 'line', '--margin', '0').stdout;
  expect(rowsIn(framed)[0]).toBe('######');
});

test('the preview shows three thresholds, on standard error', () => {
  const { stderr, stdout } = trace('ell.png', '--width', '4', '--preview', '--threshold', '0.5');
  for (const threshold of ['0.35', '0.50', '0.65']) expect(stderr).toContain(threshold.slice(0, 1));
  expect(stderr).toContain('██');
  expect(stdout).not.toContain('█');
});

test('the first of several pictures is taken, and that is said', () => {
  expect(trace('two.gif', '--width', '4').stderr).toContain(
    'Of its 2 pictures the first is taken.',
  );
});

describe('what cannot be traced is told in plain words', () => {
  test.each([
    ['a cut file', ['cut.jpg', '--width', '4'], 2, 'cut.jpg: the picture is damaged or cut off'],
    ['a text', ['text.png', '--width', '4'], 2, 'text.png: this is no picture'],
    ['a huge picture', ['huge.png', '--width', '4'], 2, 'more than 67,108,864 pixels'],
    ['no file', ['gone.png', '--width', '4'], 2, 'gone.png: no such file'],
    ['a folder', ['.', '--width', '4'], 2, '.: '],
    ['no width', ['ell.png'], 2, '--width'],
    ['half a width', ['ell.png', '--width', '4.5'], 2, 'whole number'],
    ['a threshold of words', ['ell.png', '--width', '4', '--threshold', 'dark'], 2, '0 to 1'],
    ['too wide a chart', ['ell.png', '--width', '2000'], 1, 'error[picture-size]'],
  ])('%s', (_, args, status, told) => {
    const run = trace(...args);
    expect(run.stderr).toContain(told);
    expect(run.stdout).toBe('');
    expect(run.status).toBe(status);
  });
});
