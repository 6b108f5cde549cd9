/** What a pattern's words say of the use of its pieces, as far as a shape hangs on it. */
import type { Manuscript } from '../../manuscript/index.ts';

export interface PieceWords {
  readonly title: string | null;
  readonly saysStuffing: boolean;
  /** Drawn as on a head. */
  readonly isHat: boolean;
  /** Worked from the top down: the first round ends up on top (a hat). */
  readonly hangs: boolean;
}

const STUFFING = /\b(?:stuff(?:ed|ing)?|fill(?:ed|ing)?|fibre-?fill|fiberfill|toy fill)\b/i;
const HAT = /\b(?:hats?|beanies?|bonnets?|caps?|toques?)\b/i;
const HANGS =
  /\b(?:hats?|beanies?|bonnets?|caps?|toques?|berets?|tams?|lamp ?shades?|bells?|poncho|yoke|skirt|crown)\b/i;

export function pieceWords(manuscript: Manuscript): PieceWords {
  const { text, head, parts } = manuscript;
  const names = [head.title ?? '', ...parts.map(({ name }) => name)].join('\n');
  return {
    title: head.title,
    saysStuffing: STUFFING.test(text),
    isHat: HAT.test(names),
    hangs: HANGS.test(names),
  };
}
