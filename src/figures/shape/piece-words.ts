/** What a pattern's words say of the use of its pieces, as far as a shape hangs on it. */
import type { Manuscript } from '../../manuscript/index.ts';

export interface PieceWords {
  readonly saysStuffing: boolean;
  /** Drawn as on a head. */
  readonly isHat: boolean;
  /** Worked from the top down: the first round ends up on top (a hat, a toy's head). */
  readonly hangs: boolean;
}

const STUFFING = /\b(?:stuff(?:ed|ing)?|fill(?:ed|ing)?|fibre-?fill|fiberfill|toy fill)\b/i;
const HAT = /\b(?:hats?|beanies?|bonnets?|caps?|toques?)\b/i;
const HANGS =
  /\b(?:hats?|beanies?|bonnets?|caps?|toques?|berets?|tams?|lamp ?shades?|bells?|poncho|yoke|skirt|crown)\b/i;
/** A toy begins at the top of its head, and the neck is its last round or goes on to the body. */
const HEAD = /^(?:the )?head\b/i;

/** `parts`: headings of the piece; the title speaks of it too where it is the only one. */
export function pieceWords(
  { text, head }: Pick<Manuscript, 'text' | 'head'>,
  parts: readonly string[],
  isOnly: boolean,
): PieceWords {
  const names = [...(isOnly ? [head.title ?? ''] : []), ...parts].join('\n');
  return {
    saysStuffing: STUFFING.test(text),
    isHat: HAT.test(names),
    hangs: HANGS.test(names) || HEAD.test(parts[0] ?? ''),
  };
}
