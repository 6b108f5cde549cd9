// The command as people and scripts run it: built, in a process of its own.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const bin = fileURLToPath(new URL('../../bin/loopwright.js', import.meta.url));
const head = '---\ntitle: Disc\nterms: US\n---\n';
const good = `${head}Rnd 1: 6 sc in magic ring. (6 sc)\n\nRnd 2: Inc in each st around. (12 sc)\n`;
const bad = good.replace('(12 sc)', '(10 sc)');

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-command-'));
  writeFileSync(join(folder, 'good.pattern.md'), good);
  writeFileSync(join(folder, 'bad.pattern.md'), bad);
  mkdirSync(join(folder, 'notes'));
  writeFileSync(join(folder, 'notes/notes.md'), 'A disc to set a cup on, for the spring.\n');
  mkdirSync(join(folder, 'many'));
  for (let at = 0; at < 1000; at++) {
    writeFileSync(
      join(folder, `many/${String(at).padStart(4, '0')}.md`),
      at % 10 === 3 ? bad : good,
    );
  }
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function loopwright(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...args], {
    cwd: folder,
    input,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    env: { ...process.env, NO_COLOR: '' },
  });
  return { status, stdout, stderr };
}

describe('the exit status', () => {
  test.each([
    ['a good pattern', ['check', 'good.pattern.md'], 0],
    ['a count that differs', ['check', 'bad.pattern.md'], 1],
    ['one bad pattern among good ones', ['check', 'good.pattern.md', 'bad.pattern.md'], 1],
    ['a file that is not there', ['check', 'gone.md'], 2],
    ['a file that is not there beside a good one', ['check', 'gone.md', 'good.pattern.md'], 2],
    ['a file that is not there beside a bad one', ['check', 'gone.md', 'bad.pattern.md'], 2],
    ['a text without rows', ['check', 'notes/notes.md'], 1],
    ['a folder of nothing but such texts', ['check', 'notes'], 1],
    ['such a text in a folder, beside a good pattern', ['check', 'notes', 'good.pattern.md'], 0],
    ['no file', ['check'], 2],
    ['no command', [], 2],
    ['a command that there is not', ['cheque', 'good.pattern.md'], 2],
    ['an option that there is not', ['check', '--fast', 'good.pattern.md'], 2],
    ['terms that there are not', ['check', '--terms', 'fr', 'good.pattern.md'], 2],
    ['a form that there is not', ['check', '--format', 'xml', 'good.pattern.md'], 2],
    ['help', ['check', '--help'], 0],
    ['the version', ['--version'], 0],
  ])('of %s', (_, args, status) => {
    expect(loopwright(args).status).toBe(status);
  });
});

describe('what cannot be run is told on standard error', () => {
  test.each([
    [['check', 'gone.md'], 'loopwright: gone.md: no such file or folder'],
    [['check', '--fast', 'good.pattern.md'], "unknown option '--fast'"],
    [['check', '--terms', 'fr', 'good.pattern.md'], 'us, uk, auto'],
    [['cheque', 'good.pattern.md'], 'check'],
    [['good.pattern.md'], 'To check that pattern: loopwright check good.pattern.md'],
  ])('%s', (args, told) => {
    const { stdout, stderr } = loopwright(args);
    expect(stderr).toContain(told);
    expect(stdout).toBe('');
  });

  test('and stops no other file', () => {
    const { stdout } = loopwright(['check', '--format', 'json', 'gone.md', 'good.pattern.md']);
    expect(JSON.parse(stdout).map(({ file }: { file: string }) => file)).toEqual([
      'good.pattern.md',
    ]);
  });
});

describe('the report', () => {
  test('on one file has the table, on several only if asked', () => {
    const table = /^> Rnd 2\s+6\s+12\s+10 sc\s+mismatch$/m;
    expect(loopwright(['check', 'bad.pattern.md']).stdout).toMatch(table);
    expect(loopwright(['check', 'bad.pattern.md', '--no-rounds']).stdout).not.toMatch(table);
    const both = ['check', 'bad.pattern.md', 'good.pattern.md'];
    expect(loopwright(both).stdout).not.toMatch(table);
    expect(loopwright([...both, '--rounds']).stdout).toMatch(table);
  });

  test('marks the words, on lines of at most 120 cells, without colour where no terminal is', () => {
    const { stdout } = loopwright(['check', 'bad.pattern.md']);
    expect(stdout).toContain('error[count-mismatch]');
    expect(stdout).toMatch(/^ {2}bad\.pattern\.md:7:3\d$/m);
    expect(stdout).not.toContain('\u001b');
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(120);
  });

  test('is made of standard input too', () => {
    const { stdout, status } = loopwright(['check', '-', '--format', 'json'], bad);
    expect(status).toBe(1);
    expect(JSON.parse(stdout)[0]).toMatchObject({ version: 1, file: 'stdin', terms: 'US' });
  });

  test('reads in the terms asked for', () => {
    const uk = '---\ntitle: Disc\n---\nRnd 1: 6 dc in magic ring. (6 dc)\n';
    const terms = (args: readonly string[]) =>
      JSON.parse(loopwright(['check', '-', '--format', 'json', ...args], uk).stdout)[0].terms;
    expect(terms(['--terms', 'uk'])).toBe('UK');
    expect(terms(['--terms', 'us'])).toBe('US');
  });

  test('as SARIF has a result with a place', () => {
    const log = JSON.parse(loopwright(['check', 'bad.pattern.md', '--format', 'sarif']).stdout);
    const [result] = log.runs[0].results;
    expect(result.ruleId).toBe('count-mismatch');
    expect(result.locations[0].physicalLocation.region.startLine).toBe(7);
  });
});

test('the example of docs/check-json.md is what is printed (UPDATE=1 writes it)', () => {
  const path = fileURLToPath(new URL('../../docs/check-json.md', import.meta.url));
  const page = readFileSync(path, 'utf8');
  const [, pattern = '', shown = ''] =
    /```text\n([\s\S]*?)```[\s\S]*```json\n([\s\S]*?)```/.exec(page) ?? [];
  const { stdout } = loopwright(['check', '-', '--format', 'json'], pattern);
  if (process.env.UPDATE === '1') {
    const at = page.indexOf('```json\n') + '```json\n'.length;
    writeFileSync(path, page.slice(0, at) + stdout + page.slice(at + shown.length));
  } else {
    expect(shown).toBe(stdout);
  }
});

describe('a thousand files', { timeout: 120_000 }, () => {
  test('are checked in order, and the report goes whole through a pipe', () => {
    const { stdout, status } = loopwright(['check', 'many', '--format', 'json']);
    const files = JSON.parse(stdout).map(({ file }: { file: string }) => file);
    expect(status).toBe(1);
    expect(files).toHaveLength(1000);
    expect(files).toEqual([...files].sort());
  });

  test('are summed up', () => {
    const lines = loopwright(['check', 'many']).stdout.trimEnd().split('\n');
    expect(lines.at(-1)).toMatch(
      /^1000 files: 900 come out, 100 do not\. 2000 rows: 1900 proven, 100 with a count that differs\./,
    );
    expect(lines.filter((line) => line.startsWith('error['))).toHaveLength(100);
  });

  test('may be left half read', async () => {
    const child = spawn(process.execPath, [bin, 'check', 'many', '--rounds'], { cwd: folder });
    let errors = '';
    child.stderr.on('data', (data) => {
      errors += data;
    });
    child.stdout.once('data', () => child.stdout.destroy());
    await new Promise((resolve) => child.on('close', resolve));
    expect(errors).toBe('');
  });
});
