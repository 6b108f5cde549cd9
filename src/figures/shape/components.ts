/** Which nodes hang together: a piece is what stays in the hand when one stitch is lifted. */
import { anchorsOfNode, type Draft } from './draft.ts';

/** For every kept cloth node the lowest node of its piece; -1 for the others. */
export function componentsOf(draft: Draft): Int32Array {
  const { n } = draft.cloth.nodes;
  const parent = Int32Array.from({ length: n }, (_, i) => i);
  const find = (node: number): number => {
    let root = node;
    while (parent[root] !== root) root = parent[root]!;
    for (let at = node; parent[at] !== root; ) {
      const next = parent[at]!;
      parent[at] = root;
      at = next;
    }
    return root;
  };
  const join = (a: number, b: number): void => {
    const [p, q] = [find(a), find(b)];
    parent[Math.max(p, q)] = Math.min(p, q);
  };
  for (const { nodes } of draft.runs) {
    for (const node of nodes) {
      join(nodes[0]!, node);
      for (const place of anchorsOfNode(draft.cloth, node)) {
        const stands = place >= 0 ? draft.standsFor[place]! : -1;
        if (stands >= 0) join(node, stands);
      }
    }
  }
  return Int32Array.from({ length: n }, (_, i) => (draft.run[i]! >= 0 ? find(i) : -1));
}
