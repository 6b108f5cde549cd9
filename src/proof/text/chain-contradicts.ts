/** "Ch 3 (counts as dc)" in a row, where a note says that the ch 3 does not count; or the reverse. */
import { chainContradicts, type Finding } from '../../finding/index.ts';
import type { ChainStep, StandingOrder } from '../../notation/index.ts';
import type { Scene } from '../scene.ts';
import { instructionsOf, nameOf, type Placed, rowIds } from './rows.ts';

type Note = Extract<StandingOrder, { kind: 'start-chain' }>;

/** Notes that leave room for rows of another kind, or speak of some rows only. */
const LEAVES_ROOM =
  /\b(?:unless|except|otherwise|from (?:here|now|this)|(?:rows?|rnds?|rounds?) \d|where|when|if)\b/i;

export function chainsContradict(scene: Scene): Finding[] {
  const { manuscript } = scene;
  const found = new Map<Note, Contradiction[]>();
  const said = new Map<number, Note[]>();
  for (const row of instructionsOf(scene)) {
    const { partIndex, placed } = row;
    const { orders, steps } = placed.instruction;
    const own = said.get(partIndex) ?? [];
    const notes = [...manuscript.orders, ...(manuscript.parts[partIndex]?.orders ?? []), ...own];
    const chain = steps.find((step) => step.kind === 'chain');
    const note = chain ? noteAgainst(scene, chain, notes) : null;
    if (chain && note) found.set(note, [...(found.get(note) ?? []), { row, chain }]);
    const more = orders.flatMap((order) =>
      order.kind === 'start-chain'
        ? [{ ...order, from: order.from + placed.from, to: order.to + placed.from }]
        : [],
    );
    said.set(partIndex, [...own, ...more]);
  }
  return [...found].map(([note, rows]) => told(scene, note, rows));
}

interface Contradiction {
  readonly row: Placed;
  readonly chain: ChainStep;
}

/** The last note on a chain of this length, where it says the opposite of the row's own words. */
function noteAgainst(
  scene: Scene,
  { n, countsAs }: ChainStep,
  notes: readonly StandingOrder[],
): Note | null {
  const length = n?.values[0] ?? null;
  // "Ch 4 (counts as dc and ch 1)" is told by itself whatever plain turning chains do.
  if (!countsAs || length === null || countsAs.throughout || countsAs.chains > 0) return null;
  const note = notes.findLast(
    (order): order is Note =>
      order.kind === 'start-chain' && (order.n === null ? length <= 3 : order.n === length),
  );
  if (!note || note.countsAs.counts === countsAs.counts) return null;
  return LEAVES_ROOM.test(lineAt(scene, note)) ? null : note;
}

function lineAt({ manuscript: { text } }: Scene, { from, to }: Note): string {
  const end = text.indexOf('\n', to);
  return text.slice(text.lastIndexOf('\n', from) + 1, end < 0 ? text.length : end);
}

function told(scene: Scene, note: Note, all: readonly Contradiction[]): Finding {
  const [{ row, chain }, ...more] = all as [Contradiction, ...Contradiction[]];
  const at = (one: Contradiction) => {
    const { from, to } = one.chain.countsAs ?? one.chain;
    const base = one.row.placed.from;
    return { from: base + Math.min(one.chain.from, from), to: base + to };
  };
  const words = {
    row: nameOf(scene, row.placed),
    n: chain.n?.values[0] ?? 0,
    here: verb(chain.countsAs?.counts === true),
    there: note.countsAs.counts ? 'does' : 'does not',
  };
  const labels = [
    { from: note.from, to: note.to, text: 'said here' },
    ...more.slice(0, 3).map((one) => ({ ...at(one), text: 'and here' })),
  ];
  const rows = all.flatMap((one) => rowIds(scene, one.row));
  return chainContradicts(at({ row, chain }), words, { labels, rows });
}

const verb = (counts: boolean): string => `${counts ? 'counts' : 'does not count'} as a stitch`;
