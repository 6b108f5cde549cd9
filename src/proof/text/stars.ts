/** Stars from which nothing repeats, and orders to repeat from a star that is not there. */
import { type Finding, starMissing, starUnpaired } from '../../finding/index.ts';
import type { Span } from '../../source/index.ts';
import type { Scene } from '../scene.ts';
import { instructionsOf, nameOf, type Placed, rowIds } from './rows.ts';

const MARKS = /\*+|†+|‡+/g;
/** "Rep from *", "repeat between * and *", "ending last rep at **", "from * to **". */
const ORDER =
  /\b(?:rep|rpt|repeat|repeats|repeating|work)\w*\.?\s+(?:\w+\s+){0,3}?(?:from|between|btw|at|instructions)\s+(?:the\s+)?(?:first\s+|last\s+|beg(?:inning)?\s+)?/i;
const REFERENCE =
  /\b(?:from|between|btw|at|to|and|after|before|until|above)\s+(?:the\s+)?(?:first\s+|last\s+|second\s+)?["'(]*$/i;

interface Mark extends Span {
  readonly mark: string;
  readonly isReference: boolean;
}

export function stars(scene: Scene): Finding[] {
  return [...instructionsOf(scene)].flatMap((row) => {
    const marks = marksIn(scene, row);
    return marks.length === 0 ? [] : [...lonely(scene, row, marks), ...lost(scene, row, marks)];
  });
}

function marksIn({ manuscript }: Scene, { placed }: Placed): Mark[] {
  const label = placed.instruction.label?.to ?? 0;
  const words = manuscript.text.slice(placed.from, placed.to);
  return [...words.matchAll(MARKS)].flatMap((hit) => {
    if (hit.index < label || isOther(words, hit.index, label)) return [];
    const before = words.slice(Math.max(0, hit.index - 40), hit.index).replace(/\s+/g, ' ');
    const isReference = REFERENCE.test(before);
    const from = placed.from + hit.index;
    return [{ mark: hit[0], from, to: from + hit[0].length, isReference }];
  });
}

/** A sign for "times" ("3 * 4", "(sc, inc) *6"), or what is left of an emphasised label. */
function isOther(words: string, at: number, label: number): boolean {
  const before = words.slice(Math.max(0, at - 2), at);
  const after = words.slice(at + 1, at + 3);
  // "(…) *1dc, ch 1; rep from *": a number that a stitch follows is no number of times.
  if (/[)\]]\s?$/.test(before) && /^\s?\d+(?!\d)(?!\s?[a-wyz])/i.test(words.slice(at + 1, at + 12)))
    return true;
  if (/[)\]]\s?$/.test(before) && /^\s?\d+\s?times\b/i.test(words.slice(at + 1, at + 12)))
    return true;
  // "inc * 6 (12)"
  if (/[a-z]\s?$/i.test(before) && /^\s?\d+\s*(?:[([{,;.=–-]|$)/.test(words.slice(at + 1, at + 8)))
    return true;
  // "Ch 2. *Ch 2 does not count as a st. 10 dc in ring."
  if (/^ch(?:ain)?[-. ]{0,2}\d (?:does|do|will|counts?)\b/i.test(words.slice(at + 1, at + 20)))
    return true;
  // "Foundation ring*: ch 3": a footnote.
  if (/[a-z]\*?$/i.test(before) && /^\*?:/.test(after)) return true;
  if (/\d$/.test(before) && /^\d/.test(after)) return true;
  if (/\d\s$/.test(before) && /^\s\d/.test(after)) return true;
  return (
    /^[\s:.)]*$/.test(words.slice(label, at)) &&
    words[at + 1] === '*' &&
    !/(?:from|to|at) \*\*/.test(words)
  );
}

function lonely(scene: Scene, row: Placed, marks: readonly Mark[]): Finding[] {
  const openers = marks.filter(({ isReference }) => !isReference);
  const single = openers.filter(({ mark }) => mark.length === 1);
  const isRepeated = marks.some(({ isReference }) => isReference) || saysRepeat(scene, row);
  // "*…* 6 times": the second star closes.
  if (isRepeated || single.length !== 1 || openers.length !== 1) return [];
  const [first] = single as [Mark];
  if (isFootnote(row, first)) return [];
  const words = { mark: first.mark, row: nameOf(scene, row.placed) };
  return [starUnpaired(first, words, { rows: rowIds(scene, row) })];
}

/** "*do not tie off - continue to the first leg": behind the star nothing is worked. */
const isFootnote = ({ placed }: Placed, star: Mark): boolean =>
  placed.instruction.steps.every(
    ({ kind, to }) => placed.from + to <= star.from || QUIET.has(kind),
  );

const QUIET: ReadonlySet<string> = new Set(['remark', 'fasten-off', 'spiral', 'turn', 'yarn']);

/** In words, or in words that were read as an order: "continue the pattern to the end". */
const saysRepeat = ({ manuscript }: Scene, { placed }: Placed): boolean =>
  placed.instruction.steps.some(
    (step) => step.kind === 'repeat' && step.mark === '*' && step.order.to > step.order.from,
  ) ||
  /\b(?:rep|rpt|repeat|repeats|repeating|times|twice|around|across|to end)\b/i.test(
    manuscript.text.slice(placed.from, placed.to).replace(/[\s\S]*?[*†‡]/, ''),
  );

function lost(scene: Scene, row: Placed, marks: readonly Mark[]): Finding[] {
  const reference = marks.find(({ isReference }) => isReference);
  if (!reference || marks.some(({ isReference }) => !isReference)) return [];
  const { text } = scene.manuscript;
  // "Rep from * of row 2" speaks of another row.
  if (
    /^\s*(?:of|in|on)\s+(?:the\s+)?(?:\w+\s+)?(?:row|rnd|round)/i.test(
      text.slice(reference.to, reference.to + 40),
    )
  ) {
    return [];
  }
  const before = text.slice(row.placed.from, reference.from);
  const order = ORDER.exec(before);
  const from = order ? row.placed.from + order.index : reference.from;
  const at = { from, to: reference.to };
  const words = {
    words: text.slice(at.from, at.to).replace(/\s+/g, ' '),
    mark: reference.mark,
    row: nameOf(scene, row.placed),
  };
  return [starMissing(at, words, { rows: rowIds(scene, row) })];
}
