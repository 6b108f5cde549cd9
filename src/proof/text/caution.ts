/**
 * Patterns for toys, babies, hot pads, cords and straps usually carry a line on safe use (common
 * practice; the points are those of the published toy, cord and heat rules, see docs/sources.md).
 * Only whole manuscripts with front matter are judged: a pasted piece has its notes elsewhere.
 */
import { cautionMissing, type Finding } from '../../finding/index.ts';
import type { Scene } from '../scene.ts';

interface Hazard {
  readonly sign: RegExp;
  readonly what: string;
  readonly hazard: string;
  /** Words that show that the hazard is spoken of, beside the usual words of caution. */
  readonly given: RegExp;
}

const HAZARDS: readonly Hazard[] = [
  {
    sign: /\b(?:toys?|amigurumi|plush(?:ie)?|softie|doll|teddy|rattle|stuffed animal)\b/i,
    what: 'a toy',
    hazard: 'small parts',
    given: /small parts|swallow|chok|under (?:three|3|36)|loose parts|embroider(?:ed)? eyes/i,
  },
  {
    sign: /\b(?:bab(?:y|ies)|newborn|infant|pram|cot|crib)\b/i,
    what: 'a baby',
    hazard: 'holes, loose ends and sleep',
    given: /sleep|gaps?|holes?|fingers|breath|smother/i,
  },
  {
    sign: /\b(?:hot ?pads?|pot ?holders?|trivets?|oven (?:cloth|mitt|glove)s?)\b/i,
    what: 'a hot pad',
    hazard: 'heat and fibres that melt',
    given: /\bheat\b|melt|burn|scorch|open flame/i,
  },
  {
    sign: /\b(?:draw ?strings?|neck cords?|tie cords?)\b/i,
    what: 'a piece with cords',
    hazard: 'cords about the neck',
    given: /strang|about the neck|around the neck|children/i,
  },
  {
    sign: /\b(?:straps?|slings?|handles?)\b/i,
    what: 'a piece with straps',
    hazard: 'load and stretch',
    given: /stretch|\bload\b|weight|strang/i,
  },
];

const CAUTION =
  /\bcaution|\bwarning|\bsafe(?:ly|ty)?\b|hazard|danger|keep (?:\w+ ){0,8}(?:away|out of)|not (?:a toy|for|suitable|meant|intended)\b|supervis|at your own risk/i;

export function cautions({ manuscript }: Scene): Finding[] {
  const { head, parts, text } = manuscript;
  if (!head.span || CAUTION.test(text)) return [];
  const purpose = [head.data.purpose, head.data.for].filter((words) => typeof words === 'string');
  const about = [head.title ?? '', ...purpose, ...parts.map(({ name }) => name)].join('\n');
  const hazard = HAZARDS.find(({ sign }) => sign.test(about));
  if (!hazard || hazard.given.test(text)) return [];
  const { what, hazard: risk } = hazard;
  return [cautionMissing(titleSpan(text, head.title, head.span), { what, hazard: risk })];
}

/** The title's own words, else the front matter. */
function titleSpan(text: string, title: string | null, span: { from: number; to: number }) {
  const at = title ? text.indexOf(title) : -1;
  return at >= 0 && title ? { from: at, to: at + title.length } : span;
}
