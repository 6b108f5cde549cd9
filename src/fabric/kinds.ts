/** What a node of the fabric can be, and a table that gives each kind a small number. */
import type { Loop, Post, StemId, StitchShape } from '../notation/index.ts';

/**
 * stitch: counted; start: a chain that stands for a counted stitch; chain: one chain, part of a
 * space or a foundation; base: a chain that stitches of its own row are worked into; low: a starting chain that does not count; closer: a stitch that closes a
 * space at a round's end; unknown: a place whose stitch was not understood. Only stitch, start and
 * unknown are counted.
 */
export type NodeClass =
  | 'stitch'
  | 'start'
  | 'unknown'
  | 'chain'
  | 'base'
  | 'slip'
  | 'low'
  | 'closer'
  | 'picot'
  | 'ring';

export interface Kind {
  /** Unique name: "w0", "w1 together 2", "w1 one front-post", "chain". */
  readonly name: string;
  readonly class: NodeClass;
  readonly stem: StemId | null;
  readonly shape: StitchShape | null;
  readonly counted: boolean;
  /** Key of the special stitch, where it was worked as one. */
  readonly special: string | null;
}

export interface StitchTraits {
  readonly class: NodeClass;
  readonly stem: StemId | null;
  readonly shape: StitchShape | null;
  readonly legs: number | null;
  readonly post: Post | null;
  readonly loop: Loop | null;
  readonly foundation: boolean;
  readonly special: string | null;
}

export interface KindTable {
  readonly kinds: Kind[];
  readonly byName: Map<string, number>;
}

export const newKindTable = (): KindTable => ({ kinds: [], byName: new Map() });

const COUNTED: ReadonlySet<NodeClass> = new Set(['stitch', 'start', 'unknown']);

const plain: Omit<StitchTraits, 'class'> = {
  stem: null,
  shape: null,
  legs: null,
  post: null,
  loop: null,
  foundation: false,
  special: null,
};

/** Number of a kind that is not a stitch with traits of its own. */
export function kindOf(table: KindTable, nodeClass: NodeClass, stem: StemId | null = null): number {
  // The name as `internKind` makes it: a look-up for every chain must not put a name together.
  const known = table.byName.get(stem === null ? nodeClass : `${nodeClass} ${stem}`);
  return known ?? internKind(table, { ...plain, class: nodeClass, stem });
}

/** Number of the kind with these traits; the same traits always give the same number. */
export function internKind(table: KindTable, traits: StitchTraits): number {
  const parts: string[] = [];
  if (traits.class !== 'stitch') parts.push(traits.class);
  if (traits.stem) parts.push(traits.stem);
  if (traits.shape && traits.shape !== 'one') parts.push(traits.shape);
  if (traits.legs !== null) parts.push(String(traits.legs));
  if (traits.post) parts.push(`${traits.post}-post`);
  if (traits.loop && traits.loop !== 'both') parts.push(`${traits.loop}-loop`);
  if (traits.foundation) parts.push('foundation');
  if (traits.special) parts.push(`"${traits.special}"`);
  const name = parts.join(' ');
  const known = table.byName.get(name);
  if (known !== undefined) return known;
  const index = table.kinds.length;
  table.kinds.push({
    name,
    class: traits.class,
    stem: traits.stem,
    shape: traits.shape,
    counted: COUNTED.has(traits.class),
    special: traits.special,
  });
  table.byName.set(name, index);
  return index;
}
