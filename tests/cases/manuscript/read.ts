// Short ways to say what a manuscript's reading holds, for the cases beside this file.
import { type Manuscript, readManuscript } from '../../../src/manuscript/index.ts';

export const read = (text: string): Manuscript => readManuscript(text).value;

export const codesOf = (text: string): readonly string[] =>
  readManuscript(text).findings.map((finding) => finding.code);

/** The words that each finding marks. */
export const markedBy = (text: string, code: string): readonly string[] =>
  readManuscript(text)
    .findings.filter((finding) => finding.code === code)
    .map(({ from, to }) => text.slice(from, to));

/** Words of all instructions, parts one after the other. */
export const instructions = (text: string): readonly string[] =>
  read(text).parts.flatMap((part) =>
    part.instructions.map(({ from, to }) => text.slice(from, to)),
  );

/** "name*copies+" for each part: + if it continues the part before. */
export const parts = (text: string): readonly string[] =>
  read(text).parts.map(
    ({ name, copies, continues }) =>
      `${name}${copies > 1 ? `*${copies}` : ''}${continues ? '+' : ''}`,
  );
