// A hint spares a rule that has nothing to do, and so do the first letter of an opening and the trigrams that
// a text has not: readings are the same with every rule asked everywhere. Texts are those of the fixtures, and lines put together
// from two of them with words of the lexicon thrown in, so that words stand where nobody put them.
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { readManuscript } from '../../src/manuscript/index.ts';
import { mayLeadWork, readInstruction } from '../../src/notation/index.ts';
import { SPELLINGS } from '../../src/notation/lexicon.ts';
import { SEED } from './seed.ts';

let readAsking: typeof readManuscript;

beforeAll(async () => {
  vi.resetModules();
  vi.doMock(import('../../src/notation/hints.ts'), async (original) => ({
    ...(await original()),
    isHinted: () => true,
  }));
  vi.doMock(import('../../src/manuscript/opening.ts'), async (original) => ({
    ...(await original()),
    opensAs: ({ shape, most }, text, from, to) =>
      shape.test(text.slice(from, Math.min(to, from + most))),
  }));
  vi.doMock(import('../../src/manuscript/trigrams.ts'), async (original) => ({
    ...(await original()),
    mayHold: () => true,
  }));
  ({ readManuscript: readAsking } = await import('../../src/manuscript/index.ts'));
});

afterAll(() => {
  vi.doUnmock('../../src/notation/hints.ts');
  vi.doUnmock('../../src/manuscript/opening.ts');
  vi.doUnmock('../../src/manuscript/trigrams.ts');
});

const FOLDERS = ['bare', 'faulty', 'normal-practice'];
const texts = FOLDERS.flatMap((folder) => {
  const at = new URL(`../fixtures/${folder}/`, import.meta.url);
  return readdirSync(at)
    .filter((name) => /\.(?:txt|md)$/.test(name))
    .map((name) => readFileSync(new URL(name, at), 'utf8'));
});
const lines = texts.flatMap((text) => text.split('\n')).filter((line) => line.trim() !== '');
const words = Object.values(SPELLINGS).flatMap((spellings) => spellings.split(' '));

const spliced = fc
  .record({
    head: fc.constantFrom(...lines),
    tail: fc.constantFrom(...lines),
    cut: fc.double({ min: 0, max: 1, noNaN: true }),
    thrown: fc.array(fc.constantFrom(...words, ',', '.', '(', ')', '*', ':', '2', '3rd'), {
      maxLength: 3,
    }),
  })
  .map(({ head, tail, cut, thrown }) =>
    [
      head.slice(0, Math.round(head.length * cut)),
      ...thrown,
      tail.slice(Math.round(tail.length * (1 - cut))),
    ].join(' '),
  );

describe('with every rule asked everywhere', () => {
  test('the fixtures read the same', () => {
    expect(readAsking).not.toBe(readManuscript);
    for (const text of texts) expect(readAsking(text)).toEqual(readManuscript(text));
  });

  test('lines put together from two read the same', () => {
    fc.assert(
      fc.property(spliced, (line) => {
        expect(readAsking(line)).toEqual(readManuscript(line));
      }),
      { seed: SEED, numRuns: 1500 },
    );
  });
});

describe('talk that is refused before it is read as work', () => {
  const leads = (line: string): boolean => {
    const { label, steps } = readInstruction(line, 0, line.length);
    const begins = steps.some(
      (step) => step.kind === 'ring' || (step.kind === 'chain' && step.n !== null),
    );
    return label !== null || begins;
  };
  const mayLead = (line: string): boolean => mayLeadWork(line, 0, line.length);

  test('has no label, chain or ring in the fixtures', () => {
    expect(lines.filter((line) => leads(line) && !mayLead(line))).toEqual([]);
    expect(lines.some((line) => !mayLead(line))).toBe(true);
  });

  test('has none in lines put together from two', () => {
    fc.assert(
      fc.property(spliced, (line) => !leads(line) || mayLead(line)),
      { seed: SEED, numRuns: 1500 },
    );
  });
});
