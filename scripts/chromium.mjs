// Finds the browser in which pictures are looked at, and installs it where that can be done: on Debian
// and its kin, as root, from the system's own packages. Says what it does. Node only, no packages.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The path of a Chromium: the variable CHROMIUM, else where systems put it; undefined for none. */
export function chromium() {
  return [process.env.CHROMIUM ?? '', ...places].find((path) => path !== '' && existsSync(path));
}

/** Installs Chromium if there is none. Where it cannot, it says how; browser tests are then skipped. */
export function installChromium() {
  if (chromium() !== undefined) return;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    console.log('Installing chromium with apt-get (browser tests need it, and there is none)...');
    for (const task of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
      if (!aptGet(task)) break;
    }
  }
  if (chromium() !== undefined) return;
  console.log(
    'No Chromium was found: browser tests are skipped. Install it, or name one in CHROMIUM.',
  );
}

/** Runs one task of apt-get, whose many lines are shown only if it fails. */
function aptGet(task) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const done = spawnSync('apt-get', task, { encoding: 'utf8', env, maxBuffer: 1 << 28 });
  if (done.status === 0) return true;
  console.log(`apt-get ${task.join(' ')} failed:\n${done.error?.message ?? done.stderr}`);
  return false;
}
