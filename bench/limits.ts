/**
 * Texts beyond each limit, every one in a process of its own: time of the first (cold) run in it and
 * the most memory that the process ever held, Node and the program's own code included. The promise
 * is a second and 512 MB. `node --import tsx bench/limits.ts`
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { compile } from '../src/index.ts';
import { LIMITS } from '../tests/laws/limits.ts';

const chosen = process.argv[2];
if (chosen === undefined) everyLimit();
else measure(Number(chosen));

function everyLimit(): void {
  const self = fileURLToPath(import.meta.url);
  for (const i of LIMITS.keys()) {
    const args = ['--import', 'tsx', self, String(i)];
    const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
    if (status !== 0) process.exitCode = 1;
  }
}

function measure(i: number): void {
  const limit = LIMITS[i];
  if (!limit) throw new RangeError(`no limit ${i}`);
  const text = limit.text();
  const start = performance.now();
  const { findings } = compile(text);
  const ms = performance.now() - start;
  // maxRSS is in kilobytes.
  const mb = process.resourceUsage().maxRSS / 1024;
  const named = findings.some(({ code }) => code === limit.code) ? limit.code : 'NOT NAMED';
  console.log(
    `${limit.name.padEnd(46)} ${ms.toFixed(0).padStart(6)} ms ${mb.toFixed(0).padStart(5)} MB  ${named}`,
  );
}
