/**
 * Every number that stands in a row, with the words around it: its path through the tree of the
 * instruction, from the outermost node to the one that holds it.
 */
import type { Compiled } from '../../src/index.ts';
import type { PlacedInstruction } from '../../src/manuscript/index.ts';
import type { Instruction, Step } from '../../src/notation/index.ts';

/** A row as worked. */
export type Row = Compiled['fabric']['cloths'][number]['rows'][number];

/** A node of the tree on the way to a number, and the name under which its parent has it. */
export interface Node {
  readonly key: string;
  readonly kind: string;
  readonly value: Readonly<Record<string, unknown>>;
}

export interface Placed {
  readonly part: number;
  readonly index: number;
  readonly instruction: Instruction;
  /** Offsets of the instruction in the text. */
  readonly from: number;
  readonly to: number;
  /** The rows that it was worked as, in every size and copy. */
  readonly rows: readonly Row[];
  /** The rows worked right after it. */
  readonly next: readonly Row[];
  /** Their words; those of all the part where rows are worked again. */
  readonly after: readonly Step[];
}

export interface WrittenNumber {
  readonly placed: Placed;
  readonly path: readonly Node[];
  /** "repeat>work>n": the kinds and keys of the path. */
  readonly role: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** The instructions of a piece with the rows that they became. */
export function placedRows({ fabric, manuscript }: Compiled): Placed[] {
  const own = new Map<number, Row[]>();
  const next = new Map<number, Row[]>();
  for (const { rows } of fabric.cloths) {
    for (const [i, row] of rows.entries()) {
      put(own, row.from, row);
      const before = rows[i - 1];
      if (before && before.from !== row.from) put(next, before.from, row);
    }
  }
  return manuscript.parts.flatMap(({ instructions }, part) =>
    instructions.map(({ instruction, from, to }, index): Placed => {
      const rows = own.get(from) ?? [];
      // A foundation is no row: what is worked upon it is the first row behind it.
      const behind = instructions.slice(index + 1).find((other) => own.has(other.from));
      const upon = rows.length > 0 ? next.get(from) : behind && own.get(behind.from);
      const after = wordsOf(instructions, upon ?? []);
      return { part, index, instruction, from, to, rows, next: upon ?? [], after };
    }),
  );
}

function wordsOf(all: readonly PlacedInstruction[], rows: readonly Row[]): Step[] {
  const own = all.filter(({ from }) => rows.some((row) => row.from === from));
  return own.flatMap((placed) => {
    const { steps } = placed.instruction;
    const again = steps.flatMap((step) => (step.kind === 'rows-again' ? [step] : []));
    const named = again.flatMap(({ rows: numbers, lastN }) => {
      const before = all.slice(0, all.indexOf(placed));
      if (numbers.length === 0) return before.slice(-(lastN ?? 1));
      return before.filter(({ instruction: { label } }) =>
        label?.numbers.some((n) => numbers.includes(n)),
      );
    });
    return [...steps, ...named.flatMap(({ instruction }) => instruction.steps)];
  });
}

function put<T>(map: Map<number, T[]>, at: number, one: T): void {
  const list = map.get(at);
  if (list) list.push(one);
  else map.set(at, [one]);
}

/** All numbers of an instruction but those of its label. */
export function numbersIn(text: string, placed: Placed): WrittenNumber[] {
  const { instruction, from, to } = placed;
  const words = text.slice(from, to);
  return [...words.matchAll(/\d+/g)].flatMap((found) => {
    const path = pathTo(instruction, found.index);
    if (path[0]?.key === 'label') return [];
    const role = path.map(({ key, kind }) => (STEP_KEYS.has(key) ? kind : key)).join('>');
    const at = from + found.index;
    return [{ placed, path, role, value: Number(found[0]), from: at, to: at + found[0].length }];
  });
}

const STEP_KEYS: ReadonlySet<string> = new Set(['steps', 'nouns', 'until', 'ending', 'counts']);

interface Spanned {
  readonly from: number;
  readonly to: number;
}

const hasSpan = (value: object): value is Spanned =>
  'from' in value && typeof value.from === 'number' && 'to' in value;

/** The nodes that hold the offset, outermost first. */
function pathTo(root: object, at: number): Node[] {
  for (const [key, value] of Object.entries(root)) {
    for (const one of Array.isArray(value) ? value : [value]) {
      if (typeof one !== 'object' || one === null || !hasSpan(one)) continue;
      if (one.from > at || at >= one.to) continue;
      const kind = String(('kind' in one && one.kind) || ('unit' in one && one.unit) || key);
      const node = { key, kind, value: one as unknown as Node['value'] };
      return [node, ...pathTo(one, at)];
    }
  }
  return [];
}
