// Holds the list of tasks: whoever looks at `npm run help` must find every one of them.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

test('help explains every task of package.json and no other', () => {
  const { scripts } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  const { status, stdout, stderr } = spawnSync(process.execPath, ['scripts/help.mjs'], {
    cwd: root,
    encoding: 'utf8',
  });
  const listed = stdout.matchAll(/^npm run (\S+)/gm);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect([...listed].map(([, name]) => name).sort()).toEqual(Object.keys(scripts).sort());
});
