/**
 * The whole chain on one screen:
 *
 *     text -> manuscript -> fabric -> findings
 *
 * Nothing here reads files or clocks; the same text gives the same outcome.
 */
import { type Fabric, work } from './fabric/index.ts';
import type { Finding } from './finding/index.ts';
import { type Manuscript, type ReadOptions, readManuscript } from './manuscript/index.ts';
import { prove } from './proof/index.ts';

export type CompileOptions = Omit<ReadOptions, 'former'> & {
  /** An earlier outcome, of whatever text: what is unchanged is used again, the outcome is equal. */
  readonly former?: Compiled;
};

export interface Compiled {
  readonly manuscript: Manuscript;
  readonly fabric: Fabric;
}

/** Reads, works and proves a pattern. Faulty input gives findings, never an exception. */
export function compile(
  text: string,
  options: CompileOptions = {},
): { readonly value: Compiled; readonly findings: readonly Finding[] } {
  const { former, ...reading } = options;
  const read = readManuscript(text, { ...reading, ...(former && { former: former.manuscript }) });
  const fabric = work(read.value);
  const findings = [...read.findings, ...prove(read.value, fabric)];
  findings.sort((a, b) => a.from - b.from || a.to - b.to || (a.code < b.code ? -1 : 1));
  return { value: { manuscript: read.value, fabric }, findings };
}
