/** Yarns and hooks from front matter, else from the words of the materials. */
import type { Manuscript } from '../manuscript/index.ts';
import type { Span } from '../source/index.ts';
import { findWeight, NUMBER_SOURCE, numberOf } from '../units/index.ts';
import { locate, memberOf, pairsOf, wordsOf } from './entries.ts';
import { type Hook, hookFromWords } from './hook.ts';
import { weightClassNamed } from './weight-classes.ts';
import type { PutUp, Yarn } from './yarn.ts';

type Written = Pick<Manuscript, 'head' | 'text'>;

export function readYarns(manuscript: Written): readonly Yarn[] {
  const { data } = manuscript.head;
  const given = data.yarn ?? data.yarns ?? memberOf(data.materials, 'yarn');
  if (given === undefined || given === null) return yarnsInWords(manuscript);
  return pairsOf(given).map(([name, value]) =>
    yarnOf(name, value, locate(manuscript, wordsOf(memberOf(value, 'ball') ?? value))),
  );
}

function yarnOf(name: string, value: unknown, span: Span): Yarn {
  const words = wordsOf(value);
  const part = (key: string): string | null => {
    const found = memberOf(value, key);
    return found === undefined || found === null ? null : wordsOf(found);
  };
  const wraps = Number.parseFloat(part('wpi') ?? '');
  return {
    name: part('name') ?? part('letter') ?? name,
    weightClass: weightClassNamed(part('weight') ?? (typeof value === 'string' ? words : '')),
    ball: putUpFromWords(part('ball') ?? part('put-up') ?? part('skein') ?? words),
    fibre: part('fibre') ?? part('fiber'),
    wrapsPerInch: wraps > 0 ? wraps : null,
    span,
  };
}

/** "50 g / 110 m", "1.75 oz (120 yds)", "109 yd/50 g"; `null` where one of the two is missing. */
export function putUpFromWords(words: string): PutUp | null {
  // A run far from the weight may be what the pattern takes in all.
  const spaced = words.slice(0, 400).replace(/(?<=[a-z])\//gi, ' / ');
  const [pair = ''] = TIGHT.exec(spaced) ?? LOOSE.exec(spaced) ?? [];
  return pair === '' ? null : putUpOf(pair);
}

function putUpOf(words: string): PutUp | null {
  const grams = findWeight(words)?.grams;
  const metres = runIn(words);
  return grams && metres && grams > 0 ? { grams, metres } : null;
}

const RUN_SOURCE = `(?<![\\d.,/])(${NUMBER_SOURCE})\\s{0,2}-?(m|met(?:re|er)s?|mtrs?|yds?|yards?)(?![a-z])`;
const WEIGHT_SOURCE = `(?:${NUMBER_SOURCE})\\s{0,2}-?(?:g|grams?|grammes?|gms?|gr|oz|ounces?)(?![a-z])`;

const besides = (between: string): RegExp =>
  new RegExp(
    `${WEIGHT_SOURCE}${between}${RUN_SOURCE}|${RUN_SOURCE}${between}${WEIGHT_SOURCE}`,
    'iu',
  );
/** "50 g / 110 m", "1.75 oz (120 yds)", "200 m to 100 g". */
const TIGHT = besides('\\s{0,2}(?:[/=(]|per|to)\\s{0,2}');
/** "50 g balls, 110 m each", "Weight: 50 g. Length: 110 m". */
const LOOSE = besides('[^\\d]{1,24}?');
const RUN = new RegExp(RUN_SOURCE, 'iu');

function runIn(words: string): number | null {
  const found = RUN.exec(words);
  const n = found ? numberOf(found[1] ?? '') : null;
  if (!found || n === null || n <= 0) return null;
  return /^y/i.test(found[2] ?? '') ? n * 0.9144 : n;
}

const YARN_LINE =
  /^[\s>*•#-]{0,8}(?:yarn|thread|materials?)\b[^\n]{0,300}|^[^\n]{0,200}\b(?:worsted|dk|aran|chunky|bulky|fingering|sport)[- ](?:weight|yarn)[^\n]{0,200}/gim;

/** A pasted pattern: the first line that names a class or a ball. */
function yarnsInWords({ text }: Written): readonly Yarn[] {
  const head = text.slice(0, 20_000);
  for (const found of head.matchAll(YARN_LINE)) {
    const [words] = found;
    const span = { from: found.index, to: found.index + words.length };
    const yarn = yarnOf('', words, span);
    if (yarn.weightClass !== null || yarn.ball) return [yarn];
  }
  return [];
}

export function readHooks({ head, text }: Written): readonly Hook[] {
  const { data } = head;
  const given = data.hook ?? data.hooks ?? memberOf(data.materials, 'hook');
  if (given !== undefined && given !== null) {
    return pairsOf(given).flatMap(([, value]) => hookFromWords(wordsOf(value)) ?? []);
  }
  for (const [line] of text.slice(0, 20_000).matchAll(HOOK_LINE)) {
    const hook = hookFromWords(line);
    if (hook) return [hook];
  }
  return [];
}

const HOOK_LINE = /^[^\n]{0,120}\bhook\b[^\n]{0,120}/gim;
