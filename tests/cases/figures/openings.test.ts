/**
 * A chain over skipped stitches is a strap to the rows above it under the same heading; under the next
 * heading the piece goes on as a tube, such as a sock's leg above the opening for its heel.
 */
import { describe, expect, test } from 'vitest';
import { compile, measure } from '../../../src/index.ts';

const sock = `---
terms: US
gauge:
  sc: 20 sts x 20 rnds = 10 cm
---
## Foot

R1: 6 sc in magic ring. (6)

R2: 2 sc in each st around. (12)

R3: *Sc in next st, 2 sc in next st; rep from * around. (18)

R4: *Sc in next 2 sts, 2 sc in next st; rep from * around. (24)

R5-14: Sc in each st around. (24)

## Heel opening

R15: Ch 12, sk next 12 sts, sc in next 12 sts. (12 sc, 12 ch)

## Leg

R16: Sc in each ch and each st around. (24)

R17-25: Sc in each st around. (24)
`;

describe('a sock with an opening for its heel', () => {
  const { manuscript, fabric, findings } = compile(sock, { fixes: false });
  const [size] = measure(manuscript, fabric).sizes;
  const parts = size!.pieces.flatMap((piece) => piece.parts);

  test('has a leg of 24 stitches of 5 mm, 12 cm around, and 10 rounds of 5 mm, 5 cm high', () => {
    expect(findings).toEqual([]);
    const leg = parts.find(({ name }) => name === 'Leg')!;
    expect(leg.form).toBe('tube');
    expect(leg.measures.around!.mm).toBeCloseTo(120, 6);
    expect(leg.measures.high!.mm).toBeCloseTo(50, 6);
  });

  test('names its rounds as they are written', () => {
    expect(parts.map(({ labels }) => labels)).toEqual(['R1-4', 'R5-14', 'R15', 'R16-25']);
  });
});
