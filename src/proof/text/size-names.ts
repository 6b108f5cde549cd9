/** Rows for one size only, and no size of that name. */
import { type Finding, sizeUnknown } from '../../finding/index.ts';
import type { Scene } from '../scene.ts';
import { wordsAt } from '../scene.ts';
import { absolute, instructionsOf, rowIds } from './rows.ts';

export function sizeNames(scene: Scene): Finding[] {
  const { sizes } = scene.manuscript.head;
  // Sizes that were told from a list of numbers have no names to go by.
  if (sizes.length < 2 || sizes.every((size, i) => size === `size ${i + 1}`)) return [];
  return [...instructionsOf(scene)].flatMap((row) => {
    const { label } = row.placed.instruction;
    if (!label || label.sizes === '' || names(label.sizes, sizes)) return [];
    const words = { words: label.sizes, sizes: sizes.join(', ') };
    const at = absolute(row.placed, label);
    const shown = wordsAt(scene, at).indexOf(label.sizes);
    const span =
      shown < 0 ? at : { from: at.from + shown, to: at.from + shown + label.sizes.length };
    return [sizeUnknown(span, words, { rows: rowIds(scene, row) })];
  });
}

/** "Sizes L and XL", "all sizes", "2nd size", "largest size": a name, an order, or all. */
function names(words: string, sizes: readonly string[]): boolean {
  const said = ` ${words.toLowerCase().replace(/[^a-z0-9.]+/g, ' ')} `;
  if (
    / (?:all|both|every|each|other|\d+(?:st|nd|rd|th)|first|last|small(?:er|est)|large(?:r|st)|medium) /.test(
      said,
    )
  ) {
    return true;
  }
  return sizes.some((size, i) => {
    const name = size
      .toLowerCase()
      .replace(/[^a-z0-9.]+/g, ' ')
      .trim();
    const initial = name
      .split(' ')
      .map((word) => word.charAt(0))
      .join('');
    return [name, initial, String(i + 1)].some((one) => one !== '' && said.includes(` ${one} `));
  });
}
