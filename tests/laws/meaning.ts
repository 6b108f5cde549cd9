// What two trees must share to mean the same. Left out: spans, the label's own words, which pair of
// brackets was used, plurals, and the words that the house form supplies or saves: "st" where no
// noun was written, the number one ("in next st"), the two of "sc2tog".
import { stemOf, type Terms } from '../../src/notation/index.ts';
import { noun } from './build.ts';

/** Plain data to compare with `toEqual`; stitch words become neutral ids of the terms. */
export const meaning = (tree: unknown, terms: Terms): unknown => stripped(tree, '', terms);

const WORDING = new Set(['from', 'to', 'order', 'text', 'plural', 'nameFrom', 'nameTo', 'named']);

function stripped(value: unknown, key: string, terms: Terms): unknown {
  if (typeof value === 'string') return word(value, key, terms);
  if (Array.isArray(value)) return value.map((each) => stripped(each, '', terms));
  if (value === null || typeof value !== 'object') return value;
  const node = supplied({ ...value });
  if (key === 'n' && isOne(node)) return null;
  const entries = Object.entries(node).filter(([name]) => !WORDING.has(name));
  return Object.fromEntries(entries.map(([name, each]) => [name, stripped(each, name, terms)]));
}

function word(value: string, key: string, terms: Terms): string {
  if (key === 'stem') return stemOf(value, terms) ?? value;
  if (key === 'mark') return /^[([{|]$/.test(value) ? '(' : value;
  if (key === 'special' || key === 'word') {
    return value.replace(/[a-z]+/g, (each) => stemOf(each, terms) ?? each);
  }
  return value;
}

type Node = Record<string, unknown>;

const isOne = (node: Node): boolean =>
  Array.isArray(node.values) && node.values.every((each) => each === 1);

/** The node with what goes without saying put in. */
function supplied(node: Node): Node {
  const isPlace = 'pick' in node && Array.isArray(node.nouns) && node.nouns.length === 0;
  if (isPlace && !['top', 'this', 'same'].includes(String(node.pick))) {
    return { ...node, nouns: [isOfChain(node.of) ? noun({ kind: 'chain' }) : noun({})] };
  }
  if (node.kind === 'last' && node.noun === null) return { ...node, noun: noun({}) };
  const isTog = node.shape === 'together' && node.stem !== null && node.legs === null;
  return isTog ? { ...node, legs: 2 } : node;
}

/** "3rd of 5 ch" is a chain. */
const isOfChain = (of: unknown): boolean => JSON.stringify(of ?? null).includes('start-chain');
