/** The smallest phrases of a row in stitches, put together: equal neighbours are said once. */
import { fold, moreTimes } from './runs.ts';

export type Atom =
  /** "dc in next 3 dc", "sk next 2 ch". */
  | { readonly kind: 'each' | 'skip'; readonly n: number; readonly noun: string }
  | { readonly kind: 'words'; readonly words: string };

/** The words for stitching and skipping in the terms at hand: "dc", "sk". */
export interface AtomWords {
  readonly post: string;
  readonly skip: string;
}

/** One list for each box; boxes that repeat are folded. */
export function atomsInWords(boxes: readonly (readonly Atom[])[], words: AtomWords): string {
  const merged = mergedBoxes(boxes.map(joined));
  return fold(merged, (atoms) => JSON.stringify(atoms))
    .map(({ items, times }) => {
      const phrase = joined(items.flat())
        .map((atom) => say(atom, words))
        .join(', ');
      return times === 1 ? phrase : `*${phrase}; rep from * ${moreTimes(times)}`;
    })
    .filter((phrase) => phrase !== '')
    .join(', ');
}

function say(atom: Atom, { post, skip }: AtomWords): string {
  if (atom.kind === 'words') return atom.words;
  const { n, noun } = atom;
  const many = n === 1 ? noun : `${n} ${noun === 'st' ? 'sts' : noun}`;
  return atom.kind === 'each' ? `${post} in next ${many}` : `${skip} next ${many}`;
}

/** Neighbours of one kind over one noun become one: "dc in next 2 dc, dc in next dc" is 3. */
function joined(atoms: readonly Atom[]): Atom[] {
  const out: Atom[] = [];
  for (const atom of atoms) {
    const last = out.at(-1);
    const alike = last && last.kind === atom.kind && 'noun' in last && 'noun' in atom;
    if (alike && last.noun === atom.noun) out[out.length - 1] = { ...last, n: last.n + atom.n };
    else out.push(atom);
  }
  return out;
}

/** Filled boxes over filled ones are one run, not a repeat of threes. */
function mergedBoxes(boxes: readonly Atom[][]): Atom[][] {
  const out: Atom[][] = [];
  for (const atoms of boxes) {
    const last = out.at(-1);
    const [one, other] = [last?.[0], atoms[0]];
    const plain = last?.length === 1 && atoms.length === 1 && one?.kind === 'each';
    if (plain && other?.kind === 'each' && one.noun === other.noun) {
      out[out.length - 1] = [{ ...one, n: one.n + other.n }];
    } else out.push(atoms);
  }
  return out;
}
