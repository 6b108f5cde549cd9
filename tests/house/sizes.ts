// The size rules: short files and functions, so that one screen shows one idea.
import { functionsOf } from './functions.ts';
import type { Sources } from './sources.ts';

/** Lines of a file and of a function (judgement, from the sizes of well-kept projects). */
const limits = {
  file: { median: 150, most: 450, all: 800 },
  function: { median: 10, most: 40, all: 100 },
  /** The share that must keep to `most`. */
  mostShare: 0.95,
} as const;

/** A file that may be longer than all others may, with the reason. */
export interface Exception {
  readonly path: string;
  readonly reason: string;
}

/** Everything that is too long, each as one line. Empty if all is well. */
export function sizeFaults(sources: Sources, exceptions: readonly Exception[]): readonly string[] {
  const excepted = new Set(exceptions.map(({ path }) => path));
  const files = [...sources].map(([path, text]) => ({ where: path, lines: linesOf(text) }));
  const functions = [...sources].flatMap(([path, text]) =>
    functionsOf(text).map(({ name, line, lines }) => ({ where: `${path}:${line} ${name}`, lines })),
  );
  const needless = exceptions.filter(({ path }) => {
    const file = files.find(({ where }) => where === path);
    return file === undefined || file.lines <= limits.file.most;
  });
  return [
    ...faultsOf(
      'file',
      files.filter(({ where }) => !excepted.has(where)),
    ),
    ...faultsOf('function', functions),
    ...needless.map(({ path }) => `${path}: listed as an exception, and needs none`),
  ];
}

interface Sized {
  readonly where: string;
  readonly lines: number;
}

function faultsOf(what: 'file' | 'function', all: readonly Sized[]): readonly string[] {
  const { median, most, all: longest } = limits[what];
  const sorted = all.toSorted((a, b) => a.lines - b.lines);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)]?.lines ?? 0;
  const over = sorted.filter(({ lines }) => lines > most);
  const faults = sorted
    .filter(({ lines }) => lines > longest)
    .map(({ where, lines }) => `${where}: ${lines} lines, over ${longest}`);
  if (middle > median) faults.push(`median ${what}: ${middle} lines, over ${median}`);
  // One long one among few is no trend; the hard limit above holds for it all the same.
  if (over.length > Math.max(1, all.length * (1 - limits.mostShare))) {
    const names = over.map(({ where, lines }) => `${where} (${lines})`).join(', ');
    faults.push(`${over.length} of ${all.length} ${what}s have over ${most} lines: ${names}`);
  }
  return faults;
}

/** Lines as an editor counts them; a line break at the end starts none. */
function linesOf(text: string): number {
  return text === '' ? 0 : text.replace(/\n$/, '').split('\n').length;
}
