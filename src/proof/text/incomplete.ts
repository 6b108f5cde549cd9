/**
 * What a published pattern tells at its head (Craft Yarn Council guidelines and common practice).
 * Asked only of a manuscript that bears a version: before that it is a draft.
 */
import { type Finding, patternIncomplete } from '../../finding/index.ts';
import { listed } from '../names.ts';
import type { Scene } from '../scene.ts';

interface Wanted {
  readonly name: string;
  readonly keys: readonly string[];
  /** The same in the words of the text. */
  readonly inWords: RegExp;
}

const WANTED: readonly Wanted[] = [
  {
    name: 'yarn',
    keys: ['yarn', 'yarns', 'materials'],
    inWords: /^\W*(?:yarn|thread|materials)\b.{0,20}[:\n]/im,
  },
  { name: 'hook', keys: ['hook', 'hooks'], inWords: /\bhook\b.{0,30}\d|\d\s*mm\b.{0,10}\bhook/i },
  {
    name: 'gauge or finished size',
    keys: ['gauge', 'gauges', 'tension', 'finished', 'measurements', 'size', 'sizes'],
    inWords: /\b(?:gauge|tension|finished (?:size|measurements?)|measures)\b.{0,40}\d/i,
  },
];

export function incomplete({ manuscript }: Scene): Finding[] {
  const { head, parts, text } = manuscript;
  if (!head.span || head.version === null) return [];
  const start = parts[0]?.instructions[0]?.from ?? text.length;
  const prose = text.slice(head.span.to, start);
  const given = new Set(Object.keys(head.data).map((key) => key.toLowerCase()));
  const missing = WANTED.filter(
    ({ keys, inWords }) => !keys.some((key) => given.has(key)) && !inWords.test(prose),
  );
  if (missing.length === 0) return [];
  const at = { from: head.span.from, to: Math.min(head.span.to, head.span.from + 3) };
  return [patternIncomplete(at, { missing: listed(missing.map(({ name }) => name)) })];
}
