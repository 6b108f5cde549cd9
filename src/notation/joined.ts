/**
 * Rows that bring another piece in: "sc in next 11 sts of first leg". The other piece's edge is not
 * followed, so the row is read, named, and said not to be worked; its count is carried on.
 */
import type { Step } from './tree.ts';

/** A piece by name; "first half double crochet" is none. */
const PIECE =
  /\b(?:(in|into|of|on|to|from|with|through|across|around)\s+(?:the\s+)?)?(?:first|second|third|other|left|right|1st|2nd|both|two)\s+(?:leg|arm|ear|foot|paw|wing|toe|horn|piece|half(?!\s+(?:double|treble))|panel|strap|sleeve|motif|square|hexagon)s?\b/gi;

const WORKS: ReadonlySet<Step['kind']> = new Set(['work', 'group', 'repeat']);

/** The steps with a `not-worked` one where they bring in another piece; `text` is the instruction's. */
export function nameJoinedPieces(steps: readonly Step[], text: string): Step[] {
  const named = [...text.matchAll(PIECE)].map((found) => ({
    from: found.index,
    to: found.index + found[0].length,
    worked: found[1] !== undefined,
  }));
  if (named.length === 0) return [...steps];
  const told = (step: Step): boolean => named.some((n) => n.from < step.to && n.to > step.from);
  const read = steps.map(
    (step): Step =>
      step.kind === 'unread' && told(step)
        ? { kind: 'remark', from: step.from, to: step.to }
        : step,
  );
  // "Fasten off the first leg" speaks of it only; "sc in first leg" works into it.
  const into = named.find((piece) => piece.worked);
  if (!into || !read.some((step) => WORKS.has(step.kind))) return read;
  return [...read, { kind: 'not-worked', what: 'joining pieces', from: into.from, to: into.to }];
}
