import type { Span } from './span.ts';

/** A change to the text: `insert` takes the place of the span. */
export interface Edit extends Span {
  readonly insert: string;
}

/** The text after all edits; their spans belong to the text before. Overlapping edits throw. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const ordered = [...edits].sort((a, b) => a.from - b.from || a.to - b.to);
  let done = 0;
  let out = '';
  for (const edit of ordered) {
    if (edit.from < done) throw new RangeError('edits overlap');
    out += text.slice(done, edit.from) + edit.insert;
    done = edit.to;
  }
  return out + text.slice(done);
}
