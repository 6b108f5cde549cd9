/** Another put-up in place of a pattern's own: the same metres, in other balls. */
import { type PutUp, runningLength, type Yarn } from '../gauge/index.ts';

export interface Substitute {
  /** Letter of the yarn that it stands for; `null`: for every yarn. */
  readonly yarn: string | null;
  readonly ball: PutUp;
}

/** The yarn as it would be bought, and what that may change. */
export interface Bought {
  readonly yarn: Yarn | null;
  /** Sentences. */
  readonly cautions: readonly string[];
}

/** Yarns of one class differ by about a fifth in running length (council classes 2 to 5); over it: ours. */
const AS_THICK = 1.2;

export function bought(own: Yarn | null, name: string, substitutes: readonly Substitute[]): Bought {
  const named = substitutes.find(({ yarn }) => yarn === name);
  const found = named ?? substitutes.find(({ yarn }) => yarn === null);
  if (!found) return { yarn: own, cautions: [] };
  const yarn: Yarn = {
    name,
    weightClass: own?.weightClass ?? null,
    fibre: own?.fibre ?? null,
    wrapsPerInch: null,
    span: own?.span ?? { from: 0, to: 0 },
    ball: found.ball,
  };
  return { yarn, cautions: thicknessSaid(own, yarn) };
}

function thicknessSaid(own: Yarn | null, other: Yarn): readonly string[] {
  const [was, now] = [own && runningLength(own), runningLength(other)];
  if (!was || !now || was.how !== 'swatch') return [];
  const ratio = now.metresPer100g / was.metresPer100g;
  if (ratio < AS_THICK && ratio > 1 / AS_THICK) return [];
  const runs = `${Math.round(now.metresPer100g)} m to 100 g in place of ${Math.round(was.metresPer100g)}`;
  return [
    `This yarn is ${ratio > 1 ? 'thinner' : 'thicker'} (${runs}): the metres hold only at the gauge above, so swatch it first.`,
  ];
}
