import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findFiles, readText } from '../../cli/files.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-files-'));
  for (const name of ['b.pattern.md', 'a.txt', 'B.md', 'c.pdf', 'sub/d.md', '.git/e.md']) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), name);
  }
  mkdirSync(join(folder, 'node_modules/x'), { recursive: true });
  writeFileSync(join(folder, 'node_modules/x/README.md'), '');
  mkdirSync(join(folder, 'empty'));
  symlinkSync('..', join(folder, 'sub/ring'));
  symlinkSync('d.md', join(folder, 'sub/twin.md'));
  symlinkSync('nowhere.md', join(folder, 'sub/broken.md'));
  symlinkSync('self.md', join(folder, 'self.md'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function found(...names: readonly string[]) {
  const { files, faults } = await findFiles(names.map((name) => join(folder, name)));
  const faultLines = faults.map(({ file, why }) => `${relative(folder, file)}: ${why}`);
  return { files: files.map((file) => relative(folder, file)), faults: faultLines };
}

describe('files to check', () => {
  test('are those in folders below too, by path, each once; a ring of links is no trap', async () => {
    expect(await found('.')).toEqual({
      files: ['B.md', 'a.txt', 'b.pattern.md', 'sub/d.md'],
      faults: ['self.md: links lead round in a ring', 'sub/broken.md: no such file or folder'],
    });
  });

  test('are any that are named, whatever they are called, once', async () => {
    expect(await found('c.pdf', 'sub/d.md', 'c.pdf', 'sub')).toEqual({
      files: ['c.pdf', 'sub/d.md'],
      faults: ['sub/broken.md: no such file or folder'],
    });
  });

  test('are missed where they are not', async () => {
    const { faults } = await found('gone.md', 'empty');
    expect(faults).toEqual([
      'gone.md: no such file or folder',
      'empty: no pattern in this folder (*.pattern.md, *.md, *.txt)',
    ]);
  });

  test('standard input may stand among them', async () => {
    expect((await findFiles(['-', '-'])).files).toEqual(['-']);
  });
});

describe('the text of a file', () => {
  const read = (bytes: Buffer) => {
    writeFileSync(join(folder, 'bytes.bin'), bytes);
    return readText(join(folder, 'bytes.bin'));
  };
  const utf16 = Buffer.from('\ufeffRnd 1 × 6', 'utf16le');

  test.each([
    ['UTF-8', Buffer.from('Rnd 1 × 6'), 'Rnd 1 × 6'],
    ['UTF-8 with a mark', Buffer.from('\ufeffRnd 1 × 6'), 'Rnd 1 × 6'],
    ['UTF-16', utf16, 'Rnd 1 × 6'],
    ['UTF-16, big end first', Buffer.from(utf16).swap16(), 'Rnd 1 × 6'],
    ['the code page of older editors', Buffer.from([0x36, 0xd7, 0x93, 0xe9]), '6×“é'],
    ['nothing', Buffer.alloc(0), ''],
  ])('is read from %s', async (_, bytes, text) => {
    expect(await read(bytes)).toBe(text);
  });

  // The first bytes of the formats: ISO 32000 (PDF), PKWARE's .ZIP note, the rich-text specification.
  test.each([
    ['a PDF', '%PDF-1.7\n'],
    ['a packed document', 'PK\u0003\u0004'],
    ['a rich-text document', '{\\rtf1'],
  ])('that is %s is told to be none', async (what, begins) => {
    const file = join(folder, 'document');
    writeFileSync(file, begins, 'latin1');
    await expect(readText(file)).rejects.toThrow(`this is ${what}`);
    await expect(readText(file)).rejects.toThrow('plain text');
  });

  test('is cut far behind the limit, and not inside a sign', async () => {
    const text = await read(Buffer.from('×'.repeat(9_000_000)));
    expect(text).toBe('×'.repeat(8 * 1024 * 1024));
    const shifted = await read(Buffer.from(`a${'×'.repeat(9_000_000)}`));
    expect(shifted).toBe(`a${'×'.repeat(8 * 1024 * 1024 - 1)}`);
  });
});
