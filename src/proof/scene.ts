/** What every rule may look at, and how the facts of the rows come to it. */
import type { Cloth, Fabric, Fact, FactKind, RowRecord } from '../fabric/index.ts';
import type { Manuscript, Part, PlacedInstruction } from '../manuscript/index.ts';
import type { Span } from '../source/index.ts';

export interface Scene {
  readonly manuscript: Manuscript;
  readonly fabric: Fabric;
  /** Ids of the rows that each instruction was worked as: by part, then by instruction. */
  readonly ids: ReadonlyMap<number, ReadonlyMap<number, ReadonlySet<string>>>;
}

export function newScene(manuscript: Manuscript, fabric: Fabric): Scene {
  const ids = new Map<number, Map<number, Set<string>>>();
  for (const { rows } of fabric.cloths) {
    for (const { partIndex, instruction, id } of rows) {
      const part = ids.get(partIndex) ?? new Map<number, Set<string>>();
      ids.set(partIndex, part);
      const row = part.get(instruction) ?? new Set();
      part.set(instruction, row.add(id));
    }
  }
  return { manuscript, fabric, ids };
}

/** A fact, with the row that showed it and the row beneath that one. */
export type Sighting<K extends FactKind = FactKind> = Seen<Extract<Fact, { kind: K }>>;

interface Seen<F extends Fact> {
  readonly fact: F;
  readonly row: RowRecord;
  /** The row worked just before, of the same piece; `null`: a foundation or a ring. */
  readonly before: RowRecord | null;
  readonly cloth: Cloth;
}

/** The same fact wherever it was seen: in several sizes, copies of a part, rows of a range. */
export type Sightings<K extends FactKind = FactKind> = AllSeen<Extract<Fact, { kind: K }>>;

interface AllSeen<F extends Fact> {
  readonly first: Seen<F>;
  /** Where to point: the fact's words, or the row that works them again. */
  readonly at: Span;
  /** Ids of the rows, each once. */
  readonly rows: readonly string[];
  /** Rows of other instructions that work the same words again, and show the same. */
  readonly again: readonly RowRecord[];
  /** Names of the sizes; empty where all are concerned. */
  readonly sizes: readonly string[];
}

/** The words of the manuscript under a span, on one line. */
export const wordsAt = ({ manuscript }: Scene, { from, to }: Span): string =>
  manuscript.text.slice(from, to).replace(/\s+/g, ' ').trim();

const partOf = ({ manuscript }: Scene, row: RowRecord): Part | null =>
  manuscript.parts[row.partIndex] ?? null;

/** The instruction that asks for a row. */
export const askedBy = (scene: Scene, row: RowRecord): PlacedInstruction | null =>
  partOf(scene, row)?.instructions[row.instruction] ?? null;

/** The instruction whose words are worked in a row: that of row 4 for "Rep row 4". */
export function workedFrom(scene: Scene, row: RowRecord, cloth: Cloth): PlacedInstruction | null {
  const asked = askedBy(scene, row);
  const { from, to } = row.nodes;
  for (let id = from; id < to; id++) {
    const kind = scene.fabric.kinds.kinds[cloth.nodes.kind[id] ?? 0]?.class;
    // "Ch 3, turn" at the end of the row before is this row's start, and not in its words.
    if (id + 1 < to && (kind === 'start' || kind === 'low')) continue;
    const origin = scene.fabric.origins[cloth.nodes.origin[id] ?? 0];
    if (!origin || origin.to === origin.from) continue;
    if (asked && holds(asked, origin)) return asked;
    for (const part of scene.manuscript.parts) {
      const found = part.instructions.find((placed) => holds(placed, origin));
      if (found) return found;
    }
  }
  return asked;
}

export const holds = (outer: Span, inner: Span): boolean =>
  outer.from <= inner.from && inner.to <= outer.to;
