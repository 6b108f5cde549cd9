/** glTF files against the validator of the Khronos Group, who made the format. */
import { readFileSync } from 'node:fs';
import { validateBytes } from 'gltf-validator';
import { describe, expect, it } from 'vitest';
import { compile, type ShapeOptions, shapeOf, toGlb } from '../../src/index.ts';

function glbOf(text: string, options: ShapeOptions = {}): Uint8Array {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const limits = { steps: 40, restMm: 0.002 };
  const run = shapeOf(manuscript, fabric, { limits, ...options });
  let step = run.next();
  while (!step.done) step = run.next();
  return toGlb(step.value, fabric, { generator: 'loopwright trial' });
}

const example = (name: string): string =>
  readFileSync(new URL(`../../examples/${name}.pattern.md`, import.meta.url), 'utf8');

/** The extension is known to engines that show tiles and buildings; the validator only names it. */
const KNOWN = ['UNSUPPORTED_EXTENSION'];

describe('the validator finds no fault', () => {
  it.each(['low-tide-errand-bag', 'estuary-otter', 'hoarfrost-doily', 'weather-watch-hat'])(
    'with %s',
    async (name) => {
      const { issues, info } = await validateBytes(glbOf(example(name)));
      expect(issues.messages.filter(({ code }) => !KNOWN.includes(code))).toEqual([]);
      expect(info.totalTriangleCount).toBeGreaterThan(500);
    },
  );

  it('with a part that there is not', async () => {
    const { issues } = await validateBytes(glbOf(example('estuary-otter'), { part: 'wing' }));
    expect(issues.numErrors).toBe(0);
  });
});

it('each stitch leads back to its row and its words', () => {
  const text = '## Disc\n\nRnd 1: 6 sc in magic ring. (6 sc)\n\nRnd 2: 2 sc in each st. (12 sc)\n';
  const glb = glbOf(text);
  const view = new DataView(glb.buffer);
  const json = JSON.parse(
    new TextDecoder().decode(glb.subarray(20, 20 + view.getUint32(12, true))),
  );
  const { rows, stitches } = json.meshes[0].extras;
  expect(
    rows.map(({ label, from, to }: { label: string; from: number; to: number }) => [
      label,
      to - from,
    ]),
  ).toEqual([
    ['start', 1],
    ['Rnd 1', 6],
    ['Rnd 2', 12],
  ]);
  const words = text.slice(stitches.from[18], stitches.to[18]);
  expect(words).toContain('2 sc in each st');
  // 18 stitches of four corners each; the magic ring has no face.
  expect(json.accessors[0].count).toBe(72);
});
