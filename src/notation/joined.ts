/**
 * Rows that bring another piece in: "sc in next 11 sts of first leg", "ch 3, join to second leg".
 * Each naming of a piece becomes a step of its own, before the step that it belongs to.
 */
import { hintOf, isHinted } from './hints.ts';
import { joinMotifs, MOTIFS, motifsNamed } from './motif-joins.ts';
import { PLAIN_NOUN } from './noun.ts';
import { placeWith } from './place-draft.ts';
import type { Reader } from './reader.ts';
import { termWith } from './stitch-term.ts';
import type { Noun, PieceStep, StatedCount, Step, WorkStep } from './tree.ts';

const ORDINALS: Readonly<Record<string, PieceStep['which']>> = {
  first: 1,
  '1st': 1,
  one: 1,
  second: 2,
  '2nd': 2,
  two: 2,
  third: 3,
  '3rd': 3,
  fourth: 4,
  '4th': 4,
  other: 'other',
  left: 'left',
  right: 'right',
  both: 'both',
};

const PREPOSITION = String.raw`(?:(in|into|of|on|onto|to|from|with|through|across|along|around|round|over|by)\s+)?(?:(?:the|your)\s+)?`;
const PIECES =
  'legs?|arms?|ears?|foot|feet|paws?|wings?|toes?|horns?|fingers?|pieces?|panels?|straps?|sleeves?|motifs?|squares?|hexagons?';
const ORDINAL = '(?:first|second|third|fourth|other|left|right|1st|2nd|3rd|4th|both|two)';

const TOY = 'head|body|belly|torso';

/** A piece by its number; "first half double crochet" is none. */
const NUMBERED = new RegExp(
  String.raw`\b${PREPOSITION}(${ORDINAL})\s+(${PIECES}|half(?!\s+(?:double|treble)))\b|` +
    String.raw`\b${PREPOSITION}(legs?|arms?)\s+#?(one|two|1|2)\b(?!\s*(?:sts?|sc|dc|rows?|rnds?))|` +
    // "5 sc on the arm": behind a counted stitch.
    String.raw`(?<=\d\s?(?:sc|dc|hdc|tr|sts|stitches)\s)(on|along)\s+(?:the\s+)(?:)(legs?|arms?|wings?)\b(?!-|\s*hole)|` +
    // "5 sc tog with leg": stitches of both pieces at once.
    String.raw`(?<=\d\s?(?:sc|dc|hdc)\s(?:tog|together)\s)(with)\s+(?:the\s+)?(?:)(legs?|arms?|wings?|tail|ears?)\b|` +
    // "Ch 3 and join it with the first one": whose name stands elsewhere.
    String.raw`(?<=\bjoin(?:\sit)?\s)(to|with)\s+(?:the\s+)?(first|second|other)\s+one\b|` +
    // "30 sc around both head and body": all the way round two pieces that are held together.
    String.raw`\b(around|round|along|across|through)\s+(both)\s+(?:the\s+)?(${TOY})\s+and\s+(?:the\s+)?[a-z]+\b|` +
    // Sides have other meanings too: "the second side of the chain", "right side facing".
    String.raw`\b(of)\s+(?:the\s+)?(first|second|1st|2nd)\s+(sides?)\b(?!\s+of\b)`,
  'gi',
);
/** The body by its name, beside a piece that has a number. */
const NAMED = new RegExp(String.raw`\b${PREPOSITION}(body|head|yoke|torso)\b()`, 'gi');

const WORKS: ReadonlySet<Step['kind']> = new Set(['work', 'group', 'repeat', 'skip', 'join']);

/** The words of `PIECES` and `TOY`, "half" and "side". */
const PIECE = hintOf(
  [],
  `${PIECES}|${MOTIFS}|${TOY}|half|sides?`
    .split('|')
    .flatMap((piece) => [piece.replace('s?', ''), piece.replace('s?', 's')])
    .join(' '),
);

/** Whether any word may name a piece: most rows have none, and need no look for numbered ones. */
export const mayNamePiece = (r: Reader): boolean => isHinted(r, PIECE);

/** The steps with the pieces that they bring in; `text` is the instruction's. */
export function nameJoinedPieces(steps: readonly Step[], text: string): readonly Step[] {
  const motifs = motifsNamed(text);
  if (motifs.length > 0) return joinMotifs(steps, text, motifs);
  if (text.search(NUMBERED) < 0) return steps;
  const found = [...text.matchAll(NUMBERED)].map(pieceOf);
  const word = found.find((piece) => piece.word !== '')?.word;
  const named = found.flatMap((piece) =>
    piece.word !== '' ? [piece] : word === undefined ? [] : [{ ...piece, word }],
  );
  const all = [...named, ...[...text.matchAll(NAMED)].map(pieceOf)].filter(
    (piece) =>
      isSaid(piece) &&
      !GOES_ON.test(text.slice(Math.max(0, piece.from - 60), piece.from)) &&
      !(piece.how === 'from' && CHAINS.test(text.slice(0, piece.from))) &&
      !TOLD_LATER.test(text.slice(Math.max(0, piece.from - 60), piece.from)),
  );
  const told = (step: Step): boolean => named.some((n) => n.from < step.to && n.to > step.from);
  const read = steps.map(
    (step): Step =>
      step.kind === 'unread' && told(step)
        ? { kind: 'remark', from: step.from, to: step.to }
        : step,
  );
  // "Fasten off the first leg" speaks of it only; "sc in first leg" works into it.
  if (!read.some((step) => WORKS.has(step.kind) || step.kind === 'chain')) return read;
  for (const piece of all) place(read, piece, text);
  return read;
}

/**
 * "Do not cut, continue to the first leg": what comes next, and no piece that is worked into; in the
 * midst of a row, "(continue by second leg)" leads on to it.
 */
const GOES_ON =
  /(?<!\()\b(?:continue|go on|move on|proceed)\s*$|\bcontinue\b[^.;:]*\b(?:starting|beginning)\s*$/i;

/** "Ch 3 from the second leg and join it": where the hook is. */
const CHAINS = /\b(?:ch(?:ains?)?\s?\d+|\d+\s?ch(?:ains?)?)\s*$/i;

/** "They will be joined directly to the body later": what becomes of the piece. */
const TOLD_LATER =
  /\b(?:will|to|should|can) be (?:\w+ )?(?:joined|sewn|attached|crocheted|connected|worked)\b[^.;]*$/i;

/** Only a piece with a word before it is worked into: "of first leg", "to the other arm". */
const isSaid = (piece: PieceStep & { readonly said: boolean }): boolean => piece.said;

function pieceOf(found: RegExpExecArray): PieceStep & { readonly said: boolean } {
  const groups = found.slice(1).filter((group) => group !== undefined);
  const words = groups.map((group) => group.toLowerCase());
  const preposition =
    /^(?:in|into|of|on|onto|to|from|with|through|across|along|around|round|over|by)$/;
  // "Ch 6 and join leg 2"
  const joined = /\bjoin\s$/i.test(found.input.slice(Math.max(0, found.index - 6), found.index));
  const before = words.find((word) => preposition.test(word)) ?? (joined ? 'to' : '');
  const which = words.map((word) => ORDINALS[word] ?? (Number(word) || null)).find(Boolean) ?? null;
  const word = words.find((w) => w !== before && ORDINALS[w] === undefined && /^[a-z]/.test(w));
  return {
    kind: 'piece',
    word: singular(word ?? ''),
    which,
    how: before === 'from' ? 'from' : before === 'to' || before === 'with' ? 'join' : 'on',
    from: found.index,
    to: found.index + found[0].length,
    said: before !== '',
  };
}

const singular = (word: string): string =>
  word === 'feet' ? 'foot' : word.replace(/(?<=[a-z]{2})s$/, '');

/** Puts the piece before the step that its words stand in, or right behind. */
function place(steps: Step[], named: PieceStep & { readonly said: boolean }, text: string): void {
  const { said: _, ...piece } = named;
  const overlaps = (step: Step): boolean => step.from < piece.to && step.to > piece.from;
  let at = steps.findIndex((step) => step.kind !== 'remark' && overlaps(step));
  if (at < 0) {
    at = steps.findIndex((step) => step.from >= piece.from || overlaps(step));
    if (at < 0) at = steps.length;
    const before = steps[at - 1];
    const joined = before && /^\s*$/.test(text.slice(before.to, piece.from));
    if (joined && WORKS.has(before.kind) && piece.how !== 'from') at--;
  }
  const step = steps[at];
  if (step && overlaps(step)) steps[at] = withoutPiece(step, piece);
  else if (step) steps[at] = throughBoth(step, text.slice(0, piece.from));
  steps.splice(at, 0, piece);
  const covered = steps.findIndex(
    (other) => other.kind === 'remark' && other.from >= piece.from && other.to <= piece.to,
  );
  if (covered >= 0) steps.splice(covered, 1);
}

/** "5 sc tog with leg": five stitches, each through both pieces. */
function throughBoth(step: Step, before: string): Step {
  if (step.kind !== 'work' || step.stitch.legs === null || !/\btog(?:ether)?\s*$/i.test(before))
    return step;
  const { stitch, from, nameTo } = step;
  const n = { values: [stitch.legs], from, to: nameTo };
  return { ...step, n, stitch: termWith(stitch, { shape: 'one', legs: null }) };
}

/** "In each st of first [leg]": the ordinal was taken for a stitch's; it is the piece's. */
function withoutPiece(step: Step, piece: PieceStep): Step {
  if (step.kind === 'join') return { ...step, place: null };
  if (step.kind !== 'work' || !step.place) return step;
  const { place } = step;
  if (place.from >= piece.from - 1) return alongPiece(step, piece);
  if (!place.of || place.of.to <= piece.from) return step;
  return { ...step, place: { ...place, of: null } };
}

/** "Sc 12 around first leg" goes along it; "sc around first leg" goes all the way. */
function alongPiece(step: WorkStep, { from, to }: PieceStep): WorkStep {
  if (step.n || step.stitch.stem === 'ss') return { ...step, place: null };
  return { ...step, place: null, until: { kind: 'end', word: 'around', from, to } };
}

/** "Sc 3 along the chain": words that were not read behind work that has no place. */
const CHAIN =
  /^(?:along|on|over|across|down|in|into)\s+(?:(?:each|the|of|your)\s+)*(?:ch|chs|chains?)(?:\s+(?:st|sts|stitches))?(?:\s+space)?$/i;

/** Rows that bring pieces together work along the chain between them, in many words. */
export function alongChain(steps: readonly Step[], text: string): Step[] {
  if (!steps.some((step) => step.kind === 'piece')) return [...steps];
  const out: Step[] = [];
  for (const step of steps) {
    const work = out.at(-1);
    const words = text.slice(step.from, step.to).trim();
    const says = (step.kind === 'unread' || step.kind === 'remark') && CHAIN.test(words);
    if (says && work?.kind === 'work' && !work.place) out[out.length - 1] = inChain(work, step);
    else if (step.kind === 'work' && isToldAlong(step)) out.push(inChain(step, step));
    else out.push(step);
  }
  return out;
}

const isToldAlong = ({ place, until }: WorkStep): boolean =>
  place === null && until?.kind === 'end' && CHAIN.test(until.word);

function inChain(work: WorkStep, { from, to }: Step): WorkStep {
  const noun: Noun = { ...PLAIN_NOUN, kind: 'chain', plural: true };
  const place = placeWith(
    { from, to },
    { pick: work.n ? 'next' : 'each', n: work.n, each: !work.n, nouns: [noun] },
  );
  return { ...work, n: null, numberAfter: false, place, until: null, to };
}

/** "…in each ch (3). (30)": beside a piece's own number the row's is the last. */
export function lastCount(counts: readonly StatedCount[], steps: readonly Step[]): StatedCount[] {
  const last = counts.at(-1);
  const pieces = steps.some((step) => step.kind === 'piece');
  if (!pieces || last?.unit !== null) return [...counts];
  return counts.filter((count) => count === last || count.unit !== null);
}
