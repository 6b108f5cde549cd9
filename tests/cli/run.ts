/** Runs the built command in a process of its own. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const bin = fileURLToPath(new URL('../../bin/loopwright.js', import.meta.url));

/** A way to run it in a folder, without colours. */
export const runner =
  (cwd: string) =>
  (...args: readonly string[]) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...args], {
      cwd,
      encoding: 'utf8',
      maxBuffer: 1 << 28,
      env: { ...process.env, NO_COLOR: '1' },
    });
    return { status, stdout, stderr };
  };
