// Makes a fresh copy of the repository ready to run: installs the packages and builds dist/, each
// only if needed, and says what it does. Node only, no packages.
import { existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root, runNpm, runTool } from './tools.mjs';

const oldestNode = [20, 19];

/** Installs and builds what is missing or stale. Ends the process, with the reason, if that fails. */
export function setUp() {
  requireNode();
  install();
  build();
}

/** Installs the packages if node_modules is missing or is not what the lock file names. */
export function install() {
  const reason = whyInstall();
  if (reason === undefined) return;
  say(`Installing packages with npm ci (${reason})...`);
  // The log level is given, since a silent outer npm would hide why an install failed.
  if (runNpm(['ci', '--loglevel=error', '--no-fund', '--no-audit']) !== 0) {
    stop('The packages could not be installed; the lines above say why.');
  }
}

/** Builds the engine and the command line into dist/ if a source is newer, or dist/ is missing. */
export function build() {
  const reason = whyBuild();
  if (reason === undefined) return;
  say(`Building dist/ (${reason})...`);
  const infos = ['src', 'cli'].map((project) => join(root, 'dist', `${project}.tsbuildinfo`));
  // Without its build info tsc cannot take a half-deleted dist/ for an up-to-date one.
  if (reason === 'it is missing') for (const info of infos) rmSync(info, { force: true });
  if (runTool('typescript', 'tsc', ['-b', 'src', 'cli']) !== 0) {
    // tsc writes output in spite of type errors; the next run must not take that for a good build.
    for (const info of infos) rmSync(info, { force: true });
    stop('The build failed; the lines above say where.');
  }
}

function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [needMajor, needMinor] = oldestNode;
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return;
  stop(`Loopwright needs Node ${oldestNode.join('.')} or newer; this is ${process.versions.node}.`);
}

/**
 * Compares what npm noted as installed with the lock file, package by package. Not by file times:
 * npm writes the two within the same moment, in either order, and a checkout touches only one.
 */
function whyInstall() {
  const noted = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(noted)) return 'there are none yet';
  const wanted = packagesOf(join(root, 'package-lock.json'));
  const present = packagesOf(noted);
  for (const [path, { version, optional }] of Object.entries(wanted)) {
    if (path === '') continue;
    const found = present[path];
    // Optional packages are those for other systems; npm leaves them out here.
    if (found === undefined ? !optional : found.version !== version) {
      return `${path.replace(/^node_modules\//, '')} is not the version in package-lock.json`;
    }
  }
  return undefined;
}

function packagesOf(lockFile) {
  return JSON.parse(readFileSync(lockFile, 'utf8')).packages ?? {};
}

function whyBuild() {
  const made = [
    'dist/src/index.js',
    'dist/cli/main.js',
    'dist/src.tsbuildinfo',
    'dist/cli.tsbuildinfo',
  ];
  if (!made.every((path) => existsSync(join(root, path)))) return 'it is missing';
  const builtAt = Math.min(
    ...['src', 'cli'].map((project) => timeOf(join(root, 'dist', `${project}.tsbuildinfo`))),
  );
  const sources = ['src', 'cli'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(ts|json)$/.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  const newer = [...sources, join(root, 'tsconfig.base.json')].find(
    (path) => timeOf(path) > builtAt,
  );
  return newer === undefined ? undefined : `${newer.slice(root.length)} is newer`;
}

function timeOf(path) {
  return statSync(path).mtimeMs;
}

function say(line) {
  console.log(line);
}

function stop(line) {
  console.error(line);
  process.exit(2);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  setUp();
  say('Ready: packages are installed and dist/ is built.');
}
