/**
 * Stitches that join a motif to one made before: "ch 2, sl st in corresponding loop on first motif, ch 2, 5 sc
 * back in same loop on second motif". They stand on the other piece: named, and not worked; the row goes on.
 */
import type { Span } from '../source/index.ts';
import type { Step } from './tree.ts';

/** What pieces that are joined as they are made are called (common practice). */
export const MOTIFS =
  'motifs?|medallions?|squares?|stars?|blocks?|wheels?|rosettes?|hexagons?|flowers?';

/** "on first motif", "of the previous motif", "on Second Star"; "as for first motif" is none. */
const MENTION = new RegExp(
  String.raw`\b(?:on|of)(?: (?:the|any))? (1st|first|2nd|second|3rd|third|4th|fourth|previous|preceding|last|other|another|adjacent|adjoining) (?:${MOTIFS})\b`,
  'gi',
);

const ORDINALS: Readonly<Record<string, number>> = {
  '1st': 1,
  first: 1,
  '2nd': 2,
  second: 2,
  '3rd': 3,
  third: 3,
  '4th': 4,
  fourth: 4,
};

interface Mention extends Span {
  /** Of the piece that is made; else of one made before. */
  readonly isOwn: boolean;
}

/** The motifs that the words of an instruction name: of several, the later one is being made. */
export function motifsNamed(text: string): readonly Mention[] {
  const found = [...text.matchAll(MENTION)];
  const numbers = found.map(([, word = '']) => ORDINALS[word.toLowerCase()] ?? 0);
  const several = new Set(numbers).size > 1;
  const own = several ? Math.max(...numbers) : -1;
  return found.map(({ index, 0: words }, i) => ({
    from: index,
    to: index + words.length,
    isOwn: numbers[i] === own || /\bsame(?: [\w-]+){1,3} $/i.test(text.slice(0, index)),
  }));
}

/** The steps with the joining stitches named; those of the motif's own loops stay. */
export function joinMotifs(
  steps: readonly Step[],
  text: string,
  motifs: readonly Mention[],
): readonly Step[] {
  if (motifs.length === 0) return steps;
  const out: Step[] = [];
  for (const step of steps) {
    const told = motifs.find(({ from, to }) => from < step.to && to > step.from);
    const isWords = step.kind === 'unread' || step.kind === 'remark';
    if (told && isWords && out.length > 0 && !text.slice(step.from, told.from).includes(',')) {
      const before = out.at(-1);
      if (before?.kind === 'work' || before?.kind === 'join')
        out[out.length - 1] = told.isOwn ? { ...before, to: step.to } : joining(before, step.to);
    } else if (told && !told.isOwn && step.kind === 'work') {
      out.push(joining(step, Math.max(step.to, told.to)));
    } else if (step.kind === 'repeat') {
      out.push({ ...step, steps: joinMotifs(step.steps, text, motifs) });
    } else if (isWords && COMPLETES.test(text.slice(step.from, step.to))) {
      out.push({
        kind: 'not-worked',
        what: 'the rest as on another motif',
        work: null,
        ...spanOf(step),
      });
    } else out.push(step);
  }
  return out;
}

/** "Complete rnd as for First Motif" */
const COMPLETES =
  /^(?:and )?complete (?:the )?(?:rnd|round|row|motif|star|square)s? (?:same )?as (?:for |in |on )?/i;

const spanOf = ({ from, to }: Step): Span => ({ from, to });

const joining = ({ from }: Step, to: number): Step => ({
  kind: 'not-worked',
  what: 'joining motifs',
  work: null,
  from,
  to,
});
