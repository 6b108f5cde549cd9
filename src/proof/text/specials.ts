/** The pattern's own stitches: defined and not used, or defined twice. */
import { type Finding, specialDoubled, specialUnused } from '../../finding/index.ts';
import { spellingsOf } from '../../manuscript/index.ts';
import type { SpecialStitch } from '../../notation/index.ts';
import { type Scene, wordsAt } from '../scene.ts';
import { instructionsOf, stepsIn } from './rows.ts';

export function specialStitches(scene: Scene): Finding[] {
  return [...unused(scene), ...doubled(scene)];
}

/** "Single crochet = sc": an abbreviation, with its sides changed. */
const ABBREVIATED = /^[a-z ]{5,30}? ?[=:–-] ?[a-z]{1,6}(?: st)?\.?$/;

function unused(scene: Scene): Finding[] {
  const { specials } = scene.manuscript;
  if (specials.length === 0) return [];
  const words = workWords(scene);
  const boxes = worksBoxes(scene);
  const defined = specials.map((one) => wordsAt(scene, one).toLowerCase());
  const othersOf = (i: number): string[] => [
    defined.slice(0, i).join('\n'),
    defined.slice(i + 1).join('\n'),
  ];
  const spellings = [...spellingsOf(specials)];
  const namesOf = (special: SpecialStitch): string[] => [
    special.name.toLowerCase(),
    ...spellings.flatMap(([spelling, key]) => (key === special.key ? [spelling] : [])),
  ];
  return specials
    .filter((_, i) => !ABBREVIATED.test(defined[i] ?? ''))
    .filter((one) => {
      const others = othersOf(specials.indexOf(one));
      return !isUsed(namesOf(one), words, others) && !(boxes && isBox(one));
    })
    .map((special) => specialUnused(nameSpan(scene, special), { stitch: special.name }));
}

/** All words of the work, for names that stand in it however they are used. */
const workWords = (scene: Scene): string =>
  [...instructionsOf(scene)].map(({ placed }) => wordsAt(scene, placed).toLowerCase()).join('\n');

const isUsed = (names: readonly string[], work: string, others: readonly string[]): boolean =>
  names.some((name) => [work, ...others].some((words) => standsIn(name, words)));

/** As a word, in the plural, glued to a number, with a hyphen for a blank. */
function standsIn(name: string, words: string): boolean {
  const pattern = name
    .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
    .replace(/[\s-]+/g, '[\\s-]*')
    .replace(/x$/, 'x(?:e)?');
  return new RegExp(`(?<![a-z])${pattern}(?:e?s)?(?![a-z])`).test(words);
}

/** Boxes are worked by charts, whose signs name them. */
function worksBoxes(scene: Scene): boolean {
  for (const { placed } of instructionsOf(scene)) {
    for (const step of stepsIn(placed.instruction.steps)) {
      if (step.kind === 'boxes' || step.kind === 'chart') return true;
    }
  }
  return false;
}

const isBox = ({ key }: SpecialStitch): boolean =>
  /\b(?:box|mesh|block|square|space|sp|bl|lacet|bar)(?:e?s)?\b/.test(key);

const nameSpan = ({ manuscript }: Scene, { from, to, name }: SpecialStitch) => {
  const at = manuscript.text.slice(from, to).toLowerCase().indexOf(name.toLowerCase());
  return at < 0 ? { from, to } : { from: from + at, to: from + at + name.length };
};

function doubled(scene: Scene): Finding[] {
  const first = new Map<string, SpecialStitch>();
  return scene.manuscript.specials.flatMap((special) => {
    const other = first.get(special.key);
    if (!other) {
      first.set(special.key, special);
      return [];
    }
    if (definition(scene, other) === definition(scene, special)) return [];
    const labels = [{ ...nameSpan(scene, other), text: 'the first of them' }];
    return [specialDoubled(nameSpan(scene, special), { stitch: special.name }, { labels })];
  });
}

const definition = (scene: Scene, special: SpecialStitch): string =>
  wordsAt(scene, special)
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
