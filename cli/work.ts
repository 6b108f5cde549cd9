/** Checks one file. Runs in the main thread or in a worker thread; what it returns can be copied. */
import { compile } from '../src/index.ts';
import type { CheckedFile } from './checked.ts';
import { readText, standardInput, whyOf } from './files.ts';

export interface Task {
  readonly file: string;
  readonly terms: 'US' | 'UK' | 'auto';
  readonly found?: 'in-folder';
}

/** The report, or why there is none. */
export type Result = CheckedFile | { readonly file: string; readonly why: string };

/** Never rejects: one bad file must not stop the others. Worker threads call this by default. */
export default async function work({ file, terms, found }: Task): Promise<Result> {
  let text: string;
  try {
    text = await readText(file);
  } catch (error) {
    return { file, why: whyOf(error) };
  }
  try {
    const report = { ...onlyReport(compile(text, { terms })), file: nameOf(file) };
    return found ? { ...report, found } : report;
  } catch (error) {
    return { file: nameOf(file), why: faultOfOurs(error) };
  }
}

/** The engine never throws on what a designer wrote; if it does, that must not look like her fault. */
export function faultOfOurs(error: unknown): string {
  const what = error instanceof Error ? error.message : String(error);
  return `could not be checked. This is a fault of Loopwright, not of the pattern: ${what}`;
}

/** Standard input has no name of its own. */
function nameOf(file: string): string {
  return file === standardInput ? 'stdin' : file;
}

/** Leaves plan and fabric behind: copying them between threads would cost more than the check. */
function onlyReport(compiled: ReturnType<typeof compile>): Omit<CheckedFile, 'file'> {
  const { text, lines, terms, sizes, conventions, rows, findings, totals, notChecked } = compiled;
  return { text, lines, terms, sizes, conventions, rows, findings, totals, notChecked };
}
