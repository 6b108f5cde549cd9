/** A right pattern gives no complaint: random pieces whose counts are our own arithmetic. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/index.ts';
import { flatRows, meshes, ovals, type Piece, rounds, shells, written } from './pieces.ts';
import { SEED } from './seed.ts';

describe('right pieces are proven without a complaint', () => {
  it.each([
    ['flat rows', flatRows()],
    ['joined rounds and spirals', rounds()],
    ['ovals', ovals()],
    ['mesh', meshes()],
    ['shells', shells()],
  ])('%s', (_, arbitrary: fc.Arbitrary<Piece>) => {
    fc.assert(
      fc.property(arbitrary, (piece) => {
        const text = written(piece);
        const { rows, findings } = compile(text, { fixes: false });
        expect(
          findings.filter(({ severity }) => severity !== 'note'),
          text,
        ).toEqual([]);
        expect(
          rows.filter(({ verdict }) => verdict !== 'proven'),
          text,
        ).toEqual([]);
        expect(
          rows.map(({ made }) => made),
          text,
        ).toEqual(piece.made);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('hats in several sizes', () => {
    const petals = fc.uniqueArray(fc.integer({ min: 4, max: 12 }), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(petals, fc.integer({ min: 1, max: 5 }), (each, grown) => {
        const sizes = each.map((_, i) => `size ${i + 1}`);
        const { text, made } = hat(each, grown, sizes);
        const { rows, findings } = compile(text, { fixes: false });
        expect(
          findings.filter(({ severity }) => severity !== 'note'),
          text,
        ).toEqual([]);
        expect(
          rows.filter(({ verdict }) => verdict !== 'proven'),
          text,
        ).toEqual([]);
        sizes.forEach((size, i) => {
          const counts = rows.filter((row) => row.size === size).map((row) => row.made);
          expect(counts, text).toEqual(made[i]);
        });
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});

/** A crown of so many petals in each size, and an even round. */
function hat(petals: readonly number[], grown: number, sizes: readonly string[]) {
  const list = (of: (k: number) => number): string => {
    const [first, ...others] = petals.map(of);
    return `${first} (${others.join(', ')})`;
  };
  const grow = Array.from({ length: grown }, (_, i) => {
    const plain = i > 0 ? `sc in next ${i} st${i > 1 ? 's' : ''}, ` : '';
    const count = list((k) => (i + 2) * k);
    return `Rnd ${i + 2}: (${plain}2 sc in next st) ${list((k) => k)} times. [${count} sc]`;
  });
  const widest = (k: number): number => (grown + 1) * k;
  const text = [
    `---\ntitle: Trial hat\nterms: US\nsizes: [${sizes.join(', ')}]\n---\n\n## Crown`,
    `Rnd 1: ${list((k) => k)} sc in magic ring. [${list((k) => k)} sc]`,
    ...grow,
    `Rnd ${grown + 2}: Sc in each of next ${list(widest)} sts. [${list(widest)} sc]\n`,
  ].join('\n\n');
  const made = petals.map((k) => [
    ...Array.from({ length: grown + 1 }, (_, i) => (i + 1) * k),
    widest(k),
  ]);
  return { text, made };
}
