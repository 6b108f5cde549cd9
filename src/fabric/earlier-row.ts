/**
 * Places of rows further down to which a row goes back: "tr in next skipped st of rnd 2", "2 dc over next dc
 * of rnd 3", "in front loops of rnd 4", and the stitches between petals, behind which a round is worked.
 */
import { type Place, stemOf } from '../notation/index.ts';
import { COUNTED, type Edge, edgeOf, edgeOfPlaces, groupEnd, SPACE } from './edge.ts';
import { type Hands, numberFor, spanAt, type Target, type Worked } from './hands.ts';
import { type AnyNoun, nounOf } from './noun.ts';
import { ask } from './readings.ts';
import { lack, takeOff } from './take.ts';

/** The row that a place names, where others lie above it; else `null`. */
export function earlierRow({ history }: Hands, place: Place): Worked | null {
  const number = place.row ?? place.of?.row ?? null;
  if (number === null || history.at(-1)?.number === number) return null;
  return history.findLast((worked) => worked.number === number) ?? null;
}

/**
 * The next such place of the row. Where words pick none that can be told, the row is left open; where the
 * row has no more of them, one is lacking.
 */
export function takeEarlier(hands: Hands, place: Place, row: Worked): Target {
  const noun = nounOf(place);
  if (place.pick === 'same' && hands.last) return takeOff(hands, hands.last);
  const places = PICKS.has(place.pick) ? placesOf(hands, noun, row) : null;
  if (!places) {
    hands.loose = true;
    return takeOff(hands, { node: -1, space: noun.kind === 'space', entry: -1 });
  }
  hands.overlaid = true;
  const key = keyOf(hands, noun, row);
  const next = hands.earlier.get(key) ?? 0;
  const at = place.pick === 'last' ? places.length - 1 : next;
  const node = places[at];
  if (node === undefined) return lack(hands);
  hands.earlier = new Map(hands.earlier).set(key, at + 1);
  return takeOff(hands, { node, space: noun.kind === 'space', entry: -1 });
}

const PICKS: ReadonlySet<Place['pick']> = new Set<Place['pick']>([
  'next',
  'this',
  'any',
  'first',
  'last',
]);

const keyOf = (hands: Hands, { kind, stem, chains, skipped }: AnyNoun, row: Worked): string =>
  `${row.from} ${kind} ${stem} ${numberFor(hands, chains)} ${skipped}`;

/** The places of the row that the noun names, in the order of work; `null` for nouns that pick no single one. */
function placesOf(hands: Hands, noun: AnyNoun, row: Worked): readonly number[] | null {
  const key = keyOf(hands, noun, row);
  const known = hands.earlierPlaces.get(key);
  if (known) return known;
  if (noun.kind !== 'space' && noun.kind !== 'stem' && noun.kind !== 'stitch') return null;
  const { nodes, bench } = hands;
  const edge = edgeOf(nodes, bench.kinds, {
    from: row.from,
    to: row.to,
    ring: row.ring,
    reversed: false,
    open: false,
  });
  const chains = numberFor(hands, noun.chains);
  const stem = noun.stem ? stemOf(noun.stem, bench.terms) : null;
  const taken = noun.skipped ? takenBetween(hands, row) : null;
  const places: number[] = [];
  for (let i = 0; i < edge.n; i++) {
    const node = edge.node[i] ?? -1;
    const wanted =
      noun.kind === 'space'
        ? edge.type[i] === SPACE && (chains === null || edge.run[i] === chains)
        : edge.type[i] === COUNTED &&
          (stem === null || bench.kinds.kinds[nodes.kind[node] ?? 0]?.stem === stem);
    if (wanted && !taken?.has(node)) places.push(node);
  }
  hands.earlierPlaces.set(key, places);
  return places;
}

/** Nodes into which the rows between that row and the one at hand were worked. */
function takenBetween({ nodes, rowFrom }: Hands, row: Worked): ReadonlySet<number> {
  const from = nodes.anchorFrom[row.to] ?? 0;
  const to = rowFrom < nodes.n ? (nodes.anchorFrom[rowFrom] ?? 0) : nodes.anchorsN;
  return new Set(nodes.anchors.subarray(from, to));
}

/**
 * Are the stitches that were left of that row scattered over it, one here and one there? Then a round
 * dips into them on its way, and does not go along them.
 */
export function leftHereAndThere(hands: Hands, place: Place, row: Worked): boolean {
  const noun = nounOf(place);
  const places = noun.skipped ? (placesOf(hands, noun, row) ?? []) : [];
  let runs = 0;
  for (let i = 0; i < places.length; i++) if (i === 0 || places[i] !== places[i - 1]! + 1) runs++;
  return runs >= SCATTERED;
}

/** Openings for legs and arms leave one run or two (common practice). */
const SCATTERED = 3;

/** "Working in front loops of rnd 2": the hands go to the start of that row. False: it was not worked. */
export function toRow(hands: Hands, number: number): boolean {
  const row = hands.history.findLast((worked) => worked.number === number);
  if (!row || row === hands.history.at(-1)) return row !== undefined;
  const range = { from: row.from, to: row.to, ring: row.ring, reversed: false, open: false };
  hands.edge = edgeOf(hands.nodes, hands.bench.kinds, range);
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = hands.edge.n;
  return true;
}

/**
 * "Working behind petals, *sc around post, ch 4; rep from * around": one place for each petal of the round
 * beneath, the gap behind it. `null` where that round has no petals.
 */
export function behindPetals(hands: Hands, at: { from: number; to: number }): Edge | null {
  const { edge, nodes } = hands;
  if (edge.kind !== 'row' || edge.open) return null;
  const gaps: number[] = [];
  for (let i = 0; i < edge.n; ) {
    const end = edge.type[i] === COUNTED ? groupEnd(edge, nodes, i) : i + 1;
    let stitches = 0;
    for (let k = i; k < end; k++) if (edge.type[k] === COUNTED) stitches++;
    if (stitches >= SMALLEST_PETAL) gaps.push(edge.node[end - 1] ?? -1);
    i = Math.max(end, i + 1);
  }
  if (gaps.length < FEWEST_PETALS) return null;
  ask(hands.readings, {
    doubt: 'behind petals',
    custom: 'one place for each petal',
    alternatives: [],
    local: true,
    ...spanAt(hands, at),
  });
  hands.overlaid = true;
  return edgeOfPlaces(gaps, true);
}

/** Stitches in one place that make a petal, and petals that make a flower (common practice). */
const SMALLEST_PETAL = 3;
const FEWEST_PETALS = 3;
