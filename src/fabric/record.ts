/** The record of a row: what others see of it. */
import type { PlacedInstruction } from '../manuscript/index.ts';
import type { Attempted } from './attempt.ts';
import { labelText } from './expand.ts';
import { NOTHING_MADE, type RowRecord } from './fabric.ts';
import type { Fact } from './facts.ts';
import type { Hands } from './hands.ts';
import type { PartSetting } from './part.ts';
import { statedOf } from './row.ts';
import { shapeOf } from './shape.ts';
import type { Task } from './task.ts';

interface Scene {
  readonly hands: Hands;
  readonly setting: PartSetting;
  readonly seen: Map<string, number>;
}

type What =
  | {
      readonly task: Task;
      readonly attempted: Attempted;
      readonly closes: boolean;
      readonly facts: readonly Fact[];
    }
  /** An order that names no row that could be worked. */
  | {
      readonly placed: PlacedInstruction;
      readonly index: number;
      readonly facts: readonly Fact[];
      readonly verdict: 'omitted' | 'unread' | 'unchecked';
    };

/** An id is made of part, copy, label and occurrence, size: other rows keep theirs. */
function idFor(scene: Scene, label: string): string {
  const { setting, seen, hands } = scene;
  const name =
    label === ''
      ? 'work'
      : label
          .toLowerCase()
          .replace(/[^a-z0-9]+/g, '-')
          .replace(/^-|-$/g, '');
  const nth = (seen.get(name) ?? 0) + 1;
  seen.set(name, nth);
  const occurrence = nth > 1 ? `.${nth}` : '';
  return `p${setting.partIndex + 1}.${setting.instance}/${name}${occurrence}/s${hands.sizeIndex + 1}`;
}

export function recordOf(scene: Scene, what: What): RowRecord {
  const { hands, setting } = scene;
  if ('placed' in what) {
    const { placed, index, facts, verdict } = what;
    const { label } = placed.instruction;
    const name = labelText(label, label?.numbers[0] ?? null);
    return {
      part: setting.part.name,
      partIndex: setting.partIndex,
      instance: setting.instance,
      sizeIndex: hands.sizeIndex,
      id: idFor(scene, name),
      from: placed.from,
      to: placed.to,
      label: name,
      number: label?.numbers[0] ?? null,
      range: null,
      instruction: index,
      side: 'RS',
      used: 0,
      available: 0,
      tally: NOTHING_MADE,
      stated:
        verdict === 'omitted'
          ? []
          : statedOf(
              withBase(hands, placed.from),
              placed.instruction.counts,
              placed.instruction.counts,
            ),
      verdict,
      facts,
      nodes: { from: hands.nodes.n, to: hands.nodes.n },
      ring: false,
      closes: false,
      joined: false,
      joins: false,
      isBorder: false,
    };
  }
  const { task, attempted, facts } = what;
  const { result } = attempted;
  // Written out: spreading into a large literal costs more than a round of stitches.
  return {
    part: setting.part.name,
    partIndex: setting.partIndex,
    instance: setting.instance,
    sizeIndex: hands.sizeIndex,
    id: idFor(scene, task.label),
    from: task.at.from,
    to: task.at.to,
    label: task.label,
    number: task.number,
    range: task.range,
    instruction: task.index,
    side: result.side,
    used: result.used,
    available: result.available,
    tally: result.tally,
    stated: statedOf(withBase(hands, task.asksBase), task.asks.counts, result.uncompared),
    verdict: result.verdict,
    facts: factsOf(facts, attempted),
    nodes: { from: result.from, to: result.to },
    ring: result.edge.ring,
    closes: what.closes,
    joined: result.edge.ring && shapeOf(task.instruction).join !== null,
    joins: result.joins,
    isBorder: result.isBorder,
  };
}

function withBase(hands: Hands, base: number): Hands {
  hands.base = base;
  return hands;
}

function factsOf(facts: readonly Fact[], attempted: Attempted): readonly Fact[] {
  if (facts.length === 0 && attempted.exceptions.length === 0) return attempted.result.facts;
  return [...facts, ...attempted.result.facts, ...exceptionFacts(attempted)];
}

/** Rows that read otherwise than their sisters are told, unless the doubt hangs on their wording. */
const exceptionFacts = (attempted: Attempted): Fact[] =>
  attempted.exceptions
    .filter(({ asked }) => !asked.local)
    .map(({ asked, reading }) => ({
      kind: 'reading',
      doubt: asked.doubt,
      here: reading,
      usual: asked.reading,
      from: asked.from,
      to: asked.to,
    }));
