/** When a line is work: whether it opens an instruction, or goes on with the one above. */
import { readsAsWork } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { endsWithCount } from './line-shapes.ts';
import { goesOnAt, type Open, type Scan, type Starts } from './scan.ts';

/** Among notes a label needs its colon: "Rnd 4 is worked in back loops" is a remark. */
const hasLabelEnd = (text: string, from: number, to: number): boolean =>
  /^[^,;]{1,40}?[:.)|=–—]/.test(text.slice(from, Math.min(to, from + 44)));

export function mayHoldRow(scan: Scan, { from, to }: Span): boolean {
  const { open, options } = scan;
  if (scan.section !== 'work' && options.titles === 'headings') {
    return scan.section !== 'notes' && hasLabelEnd(scan.text, from, to);
  }
  if (scan.section !== 'work') return hasLabelEnd(scan.text, from, to);
  return open?.kind !== 'prose' || options.layout === 'pasted' || hasLabelEnd(scan.text, from, to);
}

/** Shares of words that are notation (`readsAsWork`), tried on invented text of both kinds. */
export const LIKELY = 0.6;
const SURE = 0.75;
const SOME = 0.34;

/** Whether a line goes on with the instruction or definition above it. */
export function continues(scan: Scan, { from, to }: Span, starts: Starts): boolean {
  const { text, open, options } = scan;
  if (!open || scan.afterBlank) return false;
  if (open.kind === 'prose') return false;
  if (open.kind === 'definition') return definitionGoesOn(scan, open, from, starts);
  const counted = endsWithCount(text, open.from, open.to);
  if (starts === 'command' && counted && /\p{Lu}/u.test(text[from] ?? '')) return false;
  if (options.layout === 'written' || starts !== null) return true;
  if (goesOnAt(scan, from)) return true;
  return readsAsWork(text, from, to) >= SOME;
}

/** Pasted lists give each stitch its line; only a wrapped or unfinished line goes on in the next. */
function definitionGoesOn(scan: Scan, open: Open, from: number, starts: Starts): boolean {
  const { text, options } = scan;
  const last = text[open.to - 1] ?? '.';
  if (options.layout === 'written') return starts !== 'command' || !'.!?)'.includes(last);
  return goesOnAt(scan, from) || ',;'.includes(last) || /\p{Ll}/u.test(text[from] ?? '');
}

/** Whether a line without label opens an instruction. */
export function mayBeWork(scan: Scan, { from, to }: Span, starts: Starts): boolean {
  const { text, open, section, options } = scan;
  if (starts === null) return false;
  // In wrapped prose a line may begin with any word.
  const inProse = open?.kind === 'prose' && (options.layout === 'written' || goesOnAt(scan, from));
  if (inProse) return false;
  if (section === 'work') {
    if (starts === 'command') return true;
    return readsAsWork(text, from, to) >= (options.layout === 'pasted' ? LIKELY : SURE);
  }
  const leaves = options.titles === 'lines' && section !== 'specials' && scan.afterBlank;
  return leaves && starts === 'command' && readsAsWork(text, from, to) >= SURE;
}
