// What the other scripts share: where things are, and how a tool is started.
// Node only, no packages: this file must work before anything is installed.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's folder, absolute, whatever folder the script was started from. */
export const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Runs a command in the repository and shows its output as it comes. Returns its exit status;
 * one that could not be started, or that a signal ended, counts as 1 and says so.
 */
export function run(command, args, options = {}) {
  const { error, status, signal } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    ...options,
  });
  if (error) console.error(`Could not start ${command}: ${error.message}`);
  if (signal) console.error(`${command} was ended by ${signal}.`);
  return status ?? 1;
}

/** Runs Node itself, the same one that runs this script. */
export function runNode(args) {
  return run(process.execPath, args);
}

/** Runs the command of an installed package through Node: needs no shell, so it is the same on every system. */
export function runTool(packageName, command, args) {
  const folder = join(root, 'node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return runNode([join(folder, typeof bin === 'string' ? bin : bin[command]), ...args]);
}

/** Runs npm; the one that started this script if there is one. */
export function runNpm(args) {
  const npm = process.env.npm_execpath;
  if (npm?.endsWith('.js')) return runNode([npm, ...args]);
  return run('npm', args, { shell: process.platform === 'win32' });
}
