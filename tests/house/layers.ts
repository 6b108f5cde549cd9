// The layer rule: which file may import which, and that no files load each other in a ring.
import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { type Import, importsOf } from './imports.ts';
import type { Sources } from './sources.ts';

/** The rooms of the engine in the order in which a pattern flows: each may import those before it. */
const rooms = [
  'source',
  'units',
  'finding',
  'notation',
  'manuscript',
  'gauge',
  'filet',
  'lettering',
  'tracing',
  'fabric',
  'proof',
  'figures',
  'pictures',
  'editions',
] as const;

/** The engine's files that stand in no room, after the rooms; the command line comes last of all. */
const tops = ['src/compile.ts', 'src/index.ts'];
const layers: readonly string[] = [...rooms, ...tops, 'cli'];

/** The engine's packages, each with the reason why it has it. */
const enginePackages: Readonly<Record<string, string>> = {
  yaml: 'front matter is YAML, with positions and comments kept',
  'opentype.js': 'outlines of letters, for lettering in charts',
};

/** Everything that breaks the rule, each as one line "file:line what". Empty if all is well. */
export function layerFaults(sources: Sources, cliPackages: readonly string[]): readonly string[] {
  const faults: string[] = [];
  for (const [path, text] of sources) {
    if (!layers.includes(layerOf(path))) {
      faults.push(`${path}: in no room that tests/house/layers.ts knows`);
      continue;
    }
    for (const found of importsOf(text)) {
      const fault = importFault(path, found, sources, cliPackages);
      if (fault !== undefined) faults.push(`${path}:${found.line} ${fault}`);
    }
  }
  return [...faults, ...runTimeRings(sources)];
}

/** Rings of files that load each other at run time, each as "a -> b -> a". Type imports do not count. */
export function runTimeRings(sources: Sources): readonly string[] {
  const rings: string[] = [];
  const state = new Map<string, 'open' | 'done'>();
  const trail: string[] = [];
  function visit(path: string): void {
    const seen = state.get(path);
    if (seen === 'open') rings.push([...trail.slice(trail.indexOf(path)), path].join(' -> '));
    if (seen !== undefined) return;
    state.set(path, 'open');
    trail.push(path);
    for (const next of loads(path, sources)) visit(next);
    trail.pop();
    state.set(path, 'done');
  }
  for (const path of sources.keys()) visit(path);
  return rings;
}

function loads(path: string, sources: Sources): readonly string[] {
  return importsOf(sources.get(path) ?? '')
    .filter(({ kind, target }) => kind !== 'type' && target.startsWith('.'))
    .map(({ target }) => resolve(path, target))
    .filter((target) => sources.has(target));
}

function importFault(
  path: string,
  found: Import,
  sources: Sources,
  cliPackages: readonly string[],
): string | undefined {
  const { target, kind } = found;
  const inEngine = path.startsWith('src/');
  if (inEngine && kind === 'load') return `loads "${target}" at run time: the engine has no I/O`;
  if (inEngine && kind === 'effect') return `imports "${target}" for its effect only`;
  if (found.isStar && path.endsWith('index.ts')) return `a door names what it lets through, not *`;
  if (target.startsWith('.')) return fileFault(path, resolve(path, target), sources);
  return inEngine ? enginePackageFault(target) : cliPackageFault(target, cliPackages);
}

function fileFault(path: string, target: string, sources: Sources): string | undefined {
  if (!sources.has(target)) return `imports ${target}, which is not there`;
  const [from, to] = [layerOf(path), layerOf(target)];
  if (from === to) return undefined;
  if (layers.indexOf(to) > layers.indexOf(from)) return `imports ${to}, which comes after ${from}`;
  if (from === 'cli') {
    return target === 'src/index.ts' ? undefined : `imports ${target}, not the engine's front door`;
  }
  const isDoor = tops.includes(target) || target === `src/${to}/index.ts`;
  return isDoor ? undefined : `imports ${target}, not through src/${to}/index.ts`;
}

function enginePackageFault(target: string): string | undefined {
  if (isBuiltin(target)) return `imports ${target}: the engine also runs in the browser`;
  return packageName(target) in enginePackages ? undefined : `imports the package ${target}`;
}

function cliPackageFault(target: string, packages: readonly string[]): string | undefined {
  if (target.startsWith('node:') && isBuiltin(target)) return undefined;
  if (isBuiltin(target)) return `imports ${target}, which is written node:${target}`;
  return packages.includes(packageName(target))
    ? undefined
    : `imports the package ${target}, which is not among the dependencies`;
}

/** The room of an engine file, the file itself if it stands in none, or the top folder outside it. */
function layerOf(path: string): string {
  const [top = '', room = '', ...rest] = path.split('/');
  if (top !== 'src') return top;
  return rest.length > 0 ? room : path;
}

function resolve(path: string, target: string): string {
  return posix.join(posix.dirname(path), target);
}

function isBuiltin(target: string): boolean {
  return target.startsWith('node:') || builtinModules.includes(target);
}

function packageName(target: string): string {
  const [first = '', second = ''] = target.split('/');
  return first.startsWith('@') ? `${first}/${second}` : first;
}
