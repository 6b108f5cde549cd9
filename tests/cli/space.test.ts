/** `space` as it is called, by its function: what is printed and the exit status. */
import { afterEach, describe, expect, test, vi } from 'vitest';
import { runSpace } from '../../cli/space-command.ts';
import { listened } from './listened.ts';

const asked = { times: '1', terms: 'us' } as const;

afterEach(() => vi.restoreAllMocks());

describe('space', () => {
  test('writes one round from 186 to 178, proven', async () => {
    const { said } = listened();
    expect(await runSpace('186', '178', asked)).toBe(0);
    expect(said()).toBe(
      'Sc in next 11 sts, sc2tog, (sc in next 21 sts, sc2tog) 3 times, sc in next 22 sts, sc2tog, (sc in next 21 sts, sc2tog) 3 times, sc in next 11 sts. (178 sts)\n' +
        '  proven: uses 186 sts, makes 178\n',
    );
  });

  test('writes one row for sizes that change alike', async () => {
    const { said } = listened();
    await runSpace('72,80,88', '64, 72, 80', asked);
    expect(said()).toContain('(64 (72, 80) sts)');
    expect(said().match(/proven/g)).toHaveLength(1);
  });

  test('writes one row for sizes that differ in numbers only, by how many they change too', async () => {
    const { said } = listened();
    expect(await runSpace('72,90', '64,80', asked)).toBe(0);
    expect(said()).toContain('(sc in next 7 sts, sc2tog) 7 (9) times');
    expect(said()).toContain('proven: uses 72 (90) sts, makes 64 (80)');
  });

  test('writes a row each for sizes whose words differ', async () => {
    const { said } = listened();
    expect(await runSpace('48,66', '54,78', asked)).toBe(0);
    expect(said()).toMatch(/^Size 1: .*\(54 sts\)\n.*\n\nSize 2: .*\(78 sts\)\n/);
  });

  test('writes several rounds, each set between the last', async () => {
    const { said } = listened();
    await runSpace('80', '72', { ...asked, times: '2' });
    expect(said().split('\n\n')).toHaveLength(2);
    expect(said()).toContain('uses 72 sts, makes 64');
  });

  test('writes UK terms and tall stitches, in rows', async () => {
    const { said } = listened();
    await runSpace('41', '45', { ...asked, terms: 'uk', stitch: 'tr', rows: true });
    expect(said()).toContain('2 tr in next st');
  });

  test('says when shaping stands at the join', async () => {
    const { said } = listened();
    await runSpace('16', '8', asked);
    expect(said()).toContain('shaping stands at the join');
  });

  test.each([
    ['10', '30', 'more than doubles'],
    ['10', '4', 'more than every pair'],
    ['10,12', '8', 'give one of each for every size'],
    ['ten', '8', 'whole numbers'],
    ['', '8', 'whole numbers'],
  ])('says why there is none from %s to %s', async (from, to, why) => {
    const { complained, said } = listened();
    expect(await runSpace(from, to, asked)).toBe(2);
    expect(complained()).toContain(why);
    expect(said()).toBe('');
  });

  test('says what is no number of rounds', async () => {
    const { complained } = listened();
    expect(await runSpace('10', '8', { ...asked, times: 'many' })).toBe(2);
    expect(complained()).toContain('"many" is no number from 1 to 100');
  });
});
