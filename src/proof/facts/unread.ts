/** Words that were not understood, and words that are understood but not followed by the hook. */
import {
  type Finding,
  type Fix,
  notWorked,
  undefinedStitch,
  unread,
  wordsPassed,
} from '../../finding/index.ts';
import { isEnglish, NUMBER_WORDS, SPELLINGS } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { rowName } from '../names.ts';
import { nearest, nearestOf } from '../nearest.ts';
import { type Scene, type Sightings, wordsAt } from '../scene.ts';

/** One word where a stitch is due: "2 pearl st in each st", "rtrf in next st". */
const AS_STITCH =
  /^(?:\d+\s*)?([a-z][a-z0-9-]{1,14}(?:\s(?:st|stitch)(?:es|s)?)?)\s(?:in|into|around|across|over)\s(?:the\s)?(?:each|next|nx|same|first|last|ea|ring|ch|sp|all|every|any|st|sts|\d+)\b/i;
/** Everyday words that stand there too. */
const NO_STITCH =
  /ing$|ed$|^(?:work|make|then|and|to|of|or|as|for|with|now|also|again|place|put|insert|continue|start|begin|once|twice|half|front|back|more|turn|join|hook|yarn|the|one|two|three|four|five|six|all|only|up|down|in|on|do|go|from|stitch|stitches|st|sts)$/i;

export function notUnderstood(scene: Scene, { at, rows, sizes }: Sightings<'unread'>): Finding {
  const words = wordsAt(scene, at);
  const name = AS_STITCH.exec(words)?.[1];
  if (!name || NO_STITCH.test(name) || isNamedBefore(scene, at)) {
    return propose(unread(at, { words }, { rows, sizes }), misspelt(scene, at));
  }
  const { terms } = scene.manuscript.terms;
  const near = nearest(scene, name);
  // "Rep row 2, then sc in each st": the stitch is known, and how it goes with the rest is not.
  if (near?.toLowerCase() === name.toLowerCase())
    return propose(unread(at, { words }, { rows, sizes }), misspelt(scene, at));
  const span = nameIn(scene, at, name);
  const said = { stitch: name, terms, ...(near !== null && { nearest: near }) };
  const finding = undefinedStitch(span, said, { rows, sizes });
  return near === null
    ? finding
    : propose(finding, [replacement(scene.manuscript.text, span, near)]);
}

/** "Repeat the process in the next chain": the article makes a thing of it. */
const isNamedBefore = ({ manuscript: { text } }: Scene, { from }: Span): boolean =>
  /\b(?:the|this|that|your) $/i.test(text.slice(Math.max(0, from - 6), from));

/** Words a letter away from one of the trade's: "nxet", "skp", "arround". */
function misspelt({ manuscript: { text } }: Scene, at: Span): Fix[] {
  const words = text.slice(at.from, at.to).matchAll(/\b[a-z]{4,14}\b/gi);
  return [...words].flatMap((found) => {
    const word = found[0].toLowerCase();
    // "CAKE (base)" is a name.
    if (found[0] === found[0].toUpperCase()) return [];
    const near = isEnglish(word) || NO_SLIPS.has(word) ? null : nearestOf(word, WORDS, 1);
    // "Circles" is no slip for "circle".
    if (near === null || `${near}s` === word || near === `${word}s`) return [];
    const from = at.from + found.index;
    return [replacement(text, { from, to: from + word.length }, near)];
  });
}

/** A knitter's words are no slips for a crocheter's, and a number is none for another word. */
const NO_SLIPS: ReadonlySet<string> = new Set([
  ...['knit', 'knits', 'purl', 'purls'],
  ...NUMBER_WORDS,
]);

const WORDS: readonly string[] = Object.values(SPELLINGS)
  .flatMap((spelled) => spelled.split(' '))
  .filter((word) => word.length > 2);

function nameIn({ manuscript }: Scene, at: Span, name: string): Span {
  const from = at.from + manuscript.text.slice(at.from, at.to).indexOf(name);
  return from < at.from ? at : { from, to: from + name.length };
}

/** Words that were not understood, in a row that comes out without them. */
export function passed(
  scene: Scene,
  { at, first, rows, sizes }: Sightings<'words-passed'>,
): Finding {
  const row = rowName(scene, first.row);
  return wordsPassed(at, { words: wordsAt(scene, at), row }, { rows, sizes });
}

export function notFollowed(scene: Scene, { at, rows, sizes }: Sightings<'not-worked'>): Finding {
  return notWorked(at, { words: wordsAt(scene, at) }, { rows, sizes });
}
