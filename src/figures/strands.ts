/**
 * Strands held together: "with 2 strands held together", "A held double", "with A and B held together". A
 * stitch of such work takes each strand once. What the notes say holds for all parts that say nothing.
 */
import type { Manuscript } from '../manuscript/index.ts';

/** How a part is worked. */
export interface Strands {
  /** Yarns of which a stitch takes a strand each; empty: of its own yarn. */
  readonly yarns: readonly string[];
  /** Strands of each. */
  readonly each: number;
}

const NUMBERS: Readonly<Record<string, number>> = {
  one: 1,
  single: 1,
  two: 2,
  double: 2,
  doubled: 2,
  three: 3,
  triple: 3,
  four: 4,
};
const N = '(\\d|one|single|two|double|three|triple|four)';
/** "2 strands of A held together", "hold two strands together": the number, and what is said of them. */
const COUNTED = new RegExp(
  `\\b${N}\\s(?:strands?|threads?|ends?)\\b([^.;:\\n]{0,60}?)\\btogether\\b`,
  'i',
);
const DOUBLED =
  /\b(?:held|holding|hold|used?|worked|taken?)\s(?:the\s)?(?:yarns?\s)?(double|doubled|triple)\b(?!\scrochet)/i;
const DOUBLED_YARN =
  /\b(?:(double|triple)[- ]stranded|(doubled)\s(?:yarn|strand|thread)|yarn\s(?:is\s)?(doubled))\b/i;
const SINGLE = /\b(?:one|1|a single)\s(?:strand|thread)\b(?!\s(?:each|of each))/i;
const NAMED = /\b(?:with|using|holding|hold)\s([^.;:\n]{1,60}?)\s(?:held\s)?together\b/i;

/** For each part of the manuscript; `null`: one strand. */
export function strandsOf({ text, head, parts }: Manuscript): readonly (Strands | null)[] {
  const start = (at: number): number => {
    const part = parts[at];
    return part ? (part.heading?.from ?? part.instructions[0]?.from ?? text.length) : text.length;
  };
  const notes = strandsIn(text.slice(head.span?.to ?? 0, start(0)), head.yarns);
  return parts.map((_, at) => {
    const words = text.slice(start(at), start(at + 1));
    const own = strandsIn(words, head.yarns);
    return own ?? (SINGLE.test(words) ? null : notes);
  });
}

/** Longer prose than this is no pattern's. */
const LONGEST = 200_000;

function strandsIn(all: string, yarns: readonly string[]): Strands | null {
  const words = all.slice(0, LONGEST);
  const named = namesIn(NAMED.exec(words)?.[1] ?? '', yarns);
  if (named.length > 1) return { yarns: named, each: 1 };
  const counted = COUNTED.exec(words);
  if (counted) {
    const n = numberOf(counted[1]);
    const names = namesIn(counted[2] ?? '', yarns);
    if (names.length > 1) return { yarns: names, each: 1 };
    return n > 1 ? { yarns: [], each: n } : null;
  }
  const doubled = DOUBLED.exec(words) ?? DOUBLED_YARN.exec(words);
  const each = numberOf(doubled?.slice(1).find((word) => word !== undefined));
  return each > 1 ? { yarns: [], each } : null;
}

const numberOf = (word: string | undefined): number =>
  word === undefined ? 1 : (NUMBERS[word.toLowerCase()] ?? Number(word));

/** Yarns of the pattern that the words name, each once. */
const namesIn = (words: string, yarns: readonly string[]): readonly string[] => {
  const found = new Set(words.match(/[\p{L}\d]+/gu) ?? []);
  return yarns.filter((yarn) => found.has(yarn));
};

/** "2 strands of its yarn are held together in Band." */
export function strandsSaid(part: string, { yarns, each }: Strands): string {
  const where = part === '' ? '' : ` in ${part}`;
  return yarns.length > 1
    ? `A strand each of ${yarns.slice(0, -1).join(', ')} and ${yarns.at(-1)} held together${where}: every stitch is counted for each.`
    : `${each} strands held together${where}: every stitch is counted ${each === 2 ? 'twice' : `${each} times`}.`;
}
