// What two trees must share to mean the same: all but spans, the label's own words, the shape of
// brackets and the number one that the house form leaves out ("in next st" for "in next 1 st").
import type { Instruction, Numbers, Terms } from '../../src/notation/index.ts';
import { stemOf } from '../../src/notation/index.ts';

/** Plain data to compare with `toEqual`; stitch words become neutral ids of the terms. */
export const meaningOf = (tree: unknown, terms: Terms): unknown => stripped(tree, '', terms);

/** Meaning of an instruction's steps, counts, orders and label. */
export const meaning = (instruction: Instruction, terms: Terms): unknown =>
  meaningOf(instruction, terms);

const WORDING = new Set(['from', 'to', 'order', 'text']);

function stripped(value: unknown, key: string, terms: Terms): unknown {
  if (key === 'stem' && typeof value === 'string') return stemOf(value, terms) ?? value;
  if (key === 'mark' && typeof value === 'string') return /^[([{|]$/.test(value) ? '(' : value;
  if (key === 'n' && isNumbers(value) && value.values.every((each) => each === 1)) return null;
  if (Array.isArray(value)) return value.map((each) => stripped(each, '', terms));
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value).filter(([name]) => !WORDING.has(name));
  return Object.fromEntries(entries.map(([name, each]) => [name, stripped(each, name, terms)]));
}

const isNumbers = (value: unknown): value is Numbers =>
  typeof value === 'object' && value !== null && 'values' in value;
