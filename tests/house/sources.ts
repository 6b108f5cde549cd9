// Reads the repository's own source files for the tests that hold the house rules.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Path from the repository's root, with "/" on every system, to the file's text. */
export type Sources = ReadonlyMap<string, string>;

/** All TypeScript of the given top folders but the tests beside it; a folder not there adds none. */
export function readSources(folders: readonly string[]): Sources {
  const paths = folders
    .map((folder) => join(root, folder))
    .filter((folder) => existsSync(folder))
    .flatMap((folder) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.ts$/.test(entry.name))
        .filter((entry) => !/\.test\.ts$/.test(entry.name))
        .map((entry) => join(entry.parentPath, entry.name)),
    )
    .sort();
  return new Map(
    paths.map((path) => [relative(root, path).split(sep).join('/'), readFileSync(path, 'utf8')]),
  );
}

/** The names of the packages that package.json needs at run time. */
export function runTimePackages(): readonly string[] {
  const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return Object.keys(dependencies ?? {});
}
