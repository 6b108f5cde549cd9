/**
 * Labels in the middle of a line: a whole pattern pasted as one paragraph ("Rnd 1: … Rnd 2: …"),
 * and numbers that a list dropped behind the count ("(35) 6-9. 35 sc").
 */
import { startsInstruction } from '../notation/index.ts';

export interface Cut {
  readonly at: number;
  /** The number of a bare label, to be held against the row before; `null`: the label has its word. */
  readonly bare: number | null;
}

const CANDIDATE = new RegExp(
  [
    String.raw`\b(?:\d{1,3}(?:st|nd|rd|d|th)(?:\s?(?:,|and|to|&|-|–)\s?|\s))+(?:rnds?|rounds?|rows?|rds?)\b`,
    String.raw`\b(?:rnds?|rounds?|rows?|rds?|r)\.?\s?#?\d{1,3}(?!\d)`,
    String.raw`(?<=[)\]]\s{1,3})\d{1,3}(?:\s?[-–]\s?\d{1,3})?[.):]\s+(?=[A-Za-z0-9([*])`,
  ].join('|'),
  'gi',
);

/** All cuts of a text in order, found in one pass. A label at the start of its line is none. */
export function labelCuts(text: string, from: number): Cut[] {
  const cuts: Cut[] = [];
  CANDIDATE.lastIndex = from;
  for (let found = CANDIDATE.exec(text); found; found = CANDIDATE.exec(text)) {
    const at = found.index;
    const before = lastInk(text, at, from);
    if (before < 0) continue;
    const first = text.charCodeAt(at);
    const isBare = first >= 48 && first <= 57 && !/[a-z]/i.test(found[0]);
    if (isBare) cuts.push({ at, bare: Number.parseInt(found[0], 10) });
    else if (isCut(text, at, at + found[0].length, before)) cuts.push({ at, bare: null });
  }
  return cuts;
}

/** Offset of the last sign before `at` in the same line, or −1. */
function lastInk(text: string, at: number, from: number): number {
  for (let i = at - 1; i >= from; i--) {
    const code = text.charCodeAt(i);
    if (code === 10 || code === 13) return -1;
    if (code > 32 && code !== 0xa0) return i;
  }
  return -1;
}

/** What may stand between the first number of a label and its end. */
const LABEL_END =
  /^(?:[\s,&–—-]*(?:\d{1,3}(?:st|nd|rd|th)?|to|and|rnds?|rounds?|rows?|rds?|rs|ws)\b)*\s*(?:[([][^)\]]{0,30}[)\]]\s*)?([:.)=|–—])/i;
const REFERS =
  /\b(?:rep|repeat|rpt|as|of|work|like|from|to|in|and|or|last|next|per|until|end|with|see|for|on|after|before|through|follow|between|at)\.?$/i;

/** "(28) Rnd 4:" is a label; "rep Rnd 4:" refers to one, and so does "(Rnd 4)". */
function isCut(text: string, at: number, labelTo: number, before: number): boolean {
  const tail = LABEL_END.exec(text.slice(labelTo, labelTo + 60));
  if (!tail) return false;
  const sign = text[before] ?? '';
  if ('(,-–&/"“\''.includes(sign)) return false;
  if (REFERS.test(text.slice(Math.max(0, before - 10), before + 1))) return false;
  if (!'.)]}!;:*'.includes(sign) && tail[1] !== ':') return false;
  return startsInstruction(text, at, lineEndFrom(text, at)) === 'label';
}

/** End of the line, looked for no farther than a label can reach. */
function lineEndFrom(text: string, from: number): number {
  const far = Math.min(text.length, from + 200);
  for (let at = from; at < far; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || code === 13) return at;
  }
  return far;
}
