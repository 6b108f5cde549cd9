/**
 * Reading speed: the whole reading of a file into a manuscript, and one instruction after the other
 * into trees with spans, beside two readers of a far simpler grammar on JSON of the same size: the
 * Lezer parser, and a hand-written reader that keeps ranges. Then texts as they are pasted, each read
 * by itself, and reading again after one character was changed, with the former manuscript at hand.
 * Numbers differ from copy to copy of the text, so that no row is met twice. Prints medians of one
 * run, and the best of it, in MB/s (a character is a byte here) of processor time on all threads,
 * which other work on the machine changes least, and ratios of medians. `npm run bench -- reading`
 */
import { readdirSync, readFileSync } from 'node:fs';
import { parser } from '@lezer/json';
import { readManuscript } from '../dist/src/manuscript/index.js';
import { NO_VOCABULARY, readInstruction } from '../dist/src/notation/index.js';
import { readJson } from './yardstick/json-by-hand.ts';

const SIZE = 500_000;
/** The file is a designer's own, as its parts are: without a head it would be read as a pasted page. */
const HEAD = '---\ntitle: All pieces\nterms: US\n---\n\n';
const RUNS = 15;
const WARM = 40;

const text = flat(`${HEAD}${varied(examples())}`);
const spans = readManuscript(text).value.parts.flatMap(({ instructions }) => instructions);
const inRows = spans.reduce((sum, { from, to }) => sum + to - from, 0);
const pasted = bareTexts();
const inPasted = pasted.reduce((sum, { length }) => sum + length, 0);
const json = document(SIZE);
const edited = changed(text);
const former = readManuscript(text).value;

interface Contest {
  readonly name: string;
  readonly size: number;
  readonly work: () => number;
}

const contests: readonly Contest[] = [
  {
    name: 'whole reading',
    size: text.length,
    work: () => readManuscript(text).value.parts.length,
  },
  { name: 'instructions alone', size: inRows, work: instructionsAlone },
  {
    name: 'pasted texts, one by one',
    size: inPasted,
    work: () => pasted.reduce((sum, bare) => sum + readManuscript(bare).value.parts.length, 0),
  },
  {
    name: 'again, one sign changed',
    size: edited.length,
    work: () => readManuscript(edited, { former }).value.parts.length,
  },
  { name: 'JSON, Lezer', size: json.length, work: () => parser.parse(json).length },
  { name: 'JSON, by hand', size: json.length, work: () => readJson(json).to },
];

const times = measured(contests);
const rates = contests.map(({ size }, i) => size / 1000 / median(times[i] ?? []));
console.log('                         median   best');
for (const [i, { name, size }] of contests.entries()) {
  const best = size / 1000 / Math.min(...(times[i] ?? []));
  const [middle = '', most = ''] = [rates[i] ?? 0, best].map((n) => n.toFixed(1).padStart(6));
  console.log(`${name.padEnd(24)} ${middle} ${most} MB/s`);
}
const [whole = 0, alone = 0, bare = 0, again = 0, lezer = 0, hand = 0] = rates;
console.log(`whole : Lezer            ${(whole / lezer).toFixed(2)}`);
console.log(`whole : by hand          ${(whole / hand).toFixed(2)}`);
console.log(`instructions : Lezer     ${(alone / lezer).toFixed(2)}`);
console.log(`instructions : by hand   ${(alone / hand).toFixed(2)}`);
console.log(`pasted : Lezer           ${(bare / lezer).toFixed(2)}`);
console.log(`again : whole            ${(again / whole).toFixed(2)}`);

/** Shown examples without their own front matter and charts, one after the other. */
function examples(): string {
  const folder = new URL('../examples/', import.meta.url);
  return readdirSync(folder)
    .filter((name) => name.endsWith('.pattern.md'))
    .map((name) => readFileSync(new URL(name, folder), 'utf8'))
    .map((all) => all.replace(/^---[\s\S]*?---\n/, '').replace(/```chart[\s\S]*?```/g, ''))
    .join('\n\n');
}

/** The texts of the tests that stand for pasted ones, with other numbers in each turn. */
function bareTexts(): readonly string[] {
  const folder = new URL('../tests/fixtures/bare/', import.meta.url);
  const texts = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8'));
  const all: string[] = [];
  for (let k = 0, length = 0; length < SIZE; k++) {
    for (const text of texts) length += all[all.push(flat(numbersMoved(text, k))) - 1]!.length;
  }
  return all;
}

/** Copies up to the size, each with other numbers. */
function varied(all: string): string {
  const copies: string[] = [];
  for (let k = 0, length = 0; length < SIZE; k++) {
    const copy = numbersMoved(all, k);
    copies.push(copy);
    length += copy.length;
  }
  return flat(copies.join(''));
}

function numbersMoved(text: string, by: number): string {
  return text.replace(/(?<![-\w])\d+(?![-\w])/g, (n) => String(Number(n) + by));
}

/** The first "sc" behind the middle becomes "dc". */
function changed(all: string): string {
  const at = all.indexOf(' sc ', all.length / 2) + 1;
  return flat(`${all.slice(0, at)}d${all.slice(at + 1)}`);
}

/** As text comes from a file: in one piece, rather than as a tree of its parts. */
function flat(all: string): string {
  return new TextDecoder().decode(new TextEncoder().encode(all));
}

function document(size: number): string {
  const rows: string[] = [];
  for (let n = 0, length = 0; length < size; n++) {
    const row = JSON.stringify({ row: n, text: 'sc in next 12 sts, 2 sc', used: [1, n, 3] });
    rows.push(row);
    length += row.length + 1;
  }
  return flat(`[${rows.join(',')}]`);
}

function instructionsAlone(): number {
  let steps = 0;
  for (const { from, to } of spans) {
    steps += readInstruction(text, from, to, NO_VOCABULARY).steps.length;
  }
  return steps;
}

/** In turns, so that what else the machine does falls on all alike; the first turns warm up. */
function measured(all: readonly Contest[]): readonly (readonly number[])[] {
  const found = all.map((): number[] => []);
  let sum = 0;
  for (let run = -WARM; run < RUNS; run++) {
    for (const [i, { work }] of all.entries()) {
      const start = processorTime();
      sum += work();
      if (run >= 0) found[i]?.push(processorTime() - start);
    }
  }
  if (sum === 0) throw new Error('nothing was read');
  return found;
}

/** In milliseconds. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
