/** What would make a faint design plainer, each with the contrast that it gives. */
import { helpsFor } from './cover.ts';
import type { ChartLook } from './look.ts';

/** "a finer yarn of 4.0 mm, some 60 m to 100 g, would give 22", "2 ch to an open box would give 9". */
export function helpsInWords({ mesh, metresPer100g }: ChartLook): readonly string[] {
  const helps = helpsFor(mesh).map((help) => {
    const gives = `would give ${Math.round(help.contrast * 100)}`;
    if (help.kind === 'wider-gap') return `${help.mesh.gap} ch to an open box ${gives}`;
    const kind = help.kind === 'finer-yarn' ? 'finer' : 'thicker';
    const run = metresPer100g && metresPer100g * (mesh.yarnMm / help.mesh.yarnMm) ** 2;
    const about = run ? `, some ${Math.round(run / 10) * 10} m to 100 g,` : '';
    return `a ${kind} yarn of ${help.mesh.yarnMm.toFixed(1)} mm${about} ${gives}`;
  });
  const [twice, once] = [2 * mesh.boxWidthMm, mesh.boxWidthMm].map(Math.round);
  return [
    ...helps,
    `letters of twice the size have strokes ${twice} mm wide in place of ${once} mm`,
  ];
}
