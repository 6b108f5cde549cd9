import { COUNTED, type Edge, edgeOf, NAMED, queued, rotated } from './edge.ts';
import { type Hands, make } from './hands.ts';
import { kindOf } from './kinds.ts';
import type { Before, RowSetting } from './row-setting.ts';

/** The places that the row beneath offers. */
export function edgeFor(
  hands: Hands,
  before: Before,
  beneath: RowSetting['beneath'],
  { turned, throughPicots }: { readonly turned: boolean; readonly throughPicots: boolean },
): Edge {
  const { row } = before;
  if (!row) return hands.edge;
  const made = edgeOf(hands.nodes, hands.bench.kinds, {
    from: row.from,
    to: row.to,
    ring: row.ring,
    reversed: turned !== (row.mirrored ?? false),
    open: before.open,
    throughPicots,
  });
  const closed = row.joined && turned ? fromItsJoin(made) : made;
  const edge = before.rest ? queued(before.rest.edge, before.rest.from, closed) : closed;
  if (beneath === 'made' || before.statedInstead === null) return edge;
  return resized(hands, edge, before.statedInstead);
}

/** A round that is joined and turned begins on the stitch of its join, which it made first. */
function fromItsJoin(edge: Edge): Edge {
  const first = edge.type.lastIndexOf(COUNTED);
  return first < 0 ? edge : rotated(edge, first);
}

/** The edge with `n` counted places: unknown stitches are added, surplus ones only named. */
export function resized(hands: Hands, edge: Edge, n: number): Edge {
  const missing = n - edge.counted;
  if (missing === 0) return edge;
  const node = [...edge.node];
  const run = [...edge.run];
  const type = [...edge.type];
  const kind = kindOf(hands.bench.kinds, 'unknown');
  // Before the last place: that one is often the top of a turning chain, and has a name.
  const at = Math.max(0, type.lastIndexOf(COUNTED));
  const unknown = Array.from({ length: Math.max(0, missing) }, () => make(hands, kind, 0, null));
  node.splice(at, 0, ...unknown);
  run.splice(at, 0, ...unknown.map(() => 0));
  type.splice(at, 0, ...unknown.map(() => COUNTED));
  for (let i = at - 1, surplus = -missing; surplus > 0 && i >= 0; i--) {
    if (type[i] === COUNTED) {
      type[i] = NAMED;
      surplus--;
    }
  }
  return {
    ...edge,
    n: node.length,
    node: Int32Array.from(node),
    run: Int32Array.from(run),
    type: Uint8Array.from(type),
    counted: n,
    open: false,
  };
}
