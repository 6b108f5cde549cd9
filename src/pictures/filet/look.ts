/** What is known of how a chart will look: its yarn, its cover, and what is not known. */
import { type Fabric, firstUseOf, NO_YARN } from '../../fabric/index.ts';
import { boxSize, type Gauges, yarnDiameterMm } from '../../gauge/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import { type Cover, coverOf, type Mesh } from './cover.ts';

export interface ChartLook {
  readonly mesh: Mesh;
  readonly cover: Cover;
  /** Contrast with yarn as thick and as thin as it may be. */
  readonly contrastRange: readonly [least: number, most: number];
  /** "yarn A", "the yarn". */
  readonly yarn: string;
  /** Why the yarn is taken to be so thick: a sentence. */
  readonly because: string;
  /** As the ball says; `null` where it does not. */
  readonly metresPer100g: number | null;
  /** Whether the size of a box was counted in mesh. */
  readonly isMeasured: boolean;
}

/** `null` where no yarn tells how thick it is, or nothing the size of a stitch. */
export function lookOf(
  chart: Chart,
  { fabric, gauges, mesh }: { fabric: Fabric; gauges: Gauges; mesh: { post: string; gap: number } },
): ChartLook | null {
  const [cloth] = fabric.cloths;
  const use = cloth ? firstUseOf(chart, fabric, cloth) : null;
  const letter = fabric.yarns[use?.yarn ?? NO_YARN];
  const yarn = gauges.yarns.find(({ name }) => name === letter) ?? gauges.yarns[0];
  const diameter = yarn ? yarnDiameterMm(yarn) : null;
  const size = boxSize(gauges, mesh);
  if (!yarn || !diameter || size.how === 'assumed') return null;
  const at = (yarnMm: number): Mesh => ({
    boxWidthMm: size.widthMm,
    boxHeightMm: size.heightMm,
    gap: mesh.gap,
    yarnMm,
  });
  const contrasts = [1 - diameter.spread, 1, 1 + diameter.spread].map(
    (factor) => coverOf(at(diameter.mm * factor)).contrast,
  );
  return {
    mesh: at(diameter.mm),
    cover: coverOf(at(diameter.mm)),
    contrastRange: [Math.min(...contrasts), Math.max(...contrasts)],
    yarn: yarn.name === '' ? 'the yarn' : `yarn ${yarn.name}`,
    because: diameter.because,
    metresPer100g: yarn.ball ? (100 * yarn.ball.metres) / yarn.ball.grams : null,
    isMeasured: size.how === 'swatch',
  };
}
