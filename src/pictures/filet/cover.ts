/**
 * How much of a box yarn covers, and so how plainly filled boxes stand out from open ones.
 *
 * As with the cover of a woven cloth (its two sets of threads cover a and b, together a + b - ab; in
 * handbooks after F. T. Peirce, 1937, from memory): the posts of a box cover a share of its width, the
 * chains or heads along its top a share of its height. How thick a worked stitch lies is ours, from
 * memory, and best checked on a swatch: a stem about two and a half strands side by side, since two
 * legs are wrapped by a third; a chain or a head two strands. Stems never take more than their room.
 */

export interface Mesh {
  readonly boxWidthMm: number;
  readonly boxHeightMm: number;
  /** Chains of an open box. */
  readonly gap: number;
  /** Yarn lying slack, wrap touching wrap. */
  readonly yarnMm: number;
}

const STEM_STRANDS = 2.5;
const CHAIN_STRANDS = 2;

/** Shares of a box's area from 0 to 1. */
export interface Cover {
  readonly open: number;
  readonly filled: number;
  /** filled - open. */
  readonly contrast: number;
}

/** Width of a stem and height of a chain as they lie in this mesh. */
export function thicknessOf({ boxWidthMm, boxHeightMm, gap, yarnMm }: Mesh): {
  readonly stemMm: number;
  readonly chainMm: number;
} {
  return {
    stemMm: Math.min(STEM_STRANDS * yarnMm, boxWidthMm / (gap + 1)),
    chainMm: Math.min(CHAIN_STRANDS * yarnMm, boxHeightMm),
  };
}

export function coverOf(mesh: Mesh): Cover {
  const { stemMm, chainMm } = thicknessOf(mesh);
  const along = chainMm / mesh.boxHeightMm;
  const share = (stems: number): number => {
    const across = (stems * stemMm) / mesh.boxWidthMm;
    return across + along - across * along;
  };
  const [open, filled] = [share(1), share(mesh.gap + 1)];
  return { open, filled, contrast: filled - open };
}

/**
 * Under this contrast a design is hardly seen from a few steps away (ours, judged by eye from
 * previews; to be checked on swatches).
 */
export const FAINT: number = 0.2;

/** From this contrast on a design is seen without fail (ours, as above). */
export const PLAIN: number = 0.25;

/** What would help a faint design, each with the contrast that it gives. */
export interface Help {
  readonly kind: 'finer-yarn' | 'thicker-yarn' | 'wider-gap';
  readonly mesh: Mesh;
  readonly contrast: number;
}

/** Changes that lift the contrast to `FAINT` at least; none is promised where none does. */
export function helpsFor(mesh: Mesh): readonly Help[] {
  const helps: Help[] = [];
  const yarn = nearestYarn(mesh);
  if (yarn) helps.push(yarn);
  const stitchMm = mesh.boxWidthMm / (mesh.gap + 1);
  const wider = { ...mesh, gap: mesh.gap + 1, boxWidthMm: stitchMm * (mesh.gap + 2) };
  const contrast = coverOf(wider).contrast;
  if (contrast > coverOf(mesh).contrast) helps.push({ kind: 'wider-gap', mesh: wider, contrast });
  return helps;
}

/** The yarn nearest in thickness that reads, worked to the same gauge; steps of 5 %, to half or double. */
function nearestYarn(mesh: Mesh): Help | null {
  for (let step = 1; step <= 10; step++) {
    for (const kind of ['finer-yarn', 'thicker-yarn'] as const) {
      const factor = kind === 'finer-yarn' ? 1 - 0.05 * step : 1 + 0.1 * step;
      const other = { ...mesh, yarnMm: mesh.yarnMm * factor };
      const { contrast } = coverOf(other);
      if (contrast >= FAINT) return { kind, mesh: other, contrast };
    }
  }
  return null;
}
