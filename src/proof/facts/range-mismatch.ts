/** "Rnds 4-9 (5 rounds)": by number there are six. */
import { type Finding, noun, rangeMismatch } from '../../finding/index.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { askedBy, type Scene, type Sightings } from '../scene.ts';

export function rangeOfOtherLength(scene: Scene, found: Sightings<'row-total'>): Finding {
  const { first, at, rows, sizes } = found;
  const { stated, range } = first.fact;
  const label = askedBy(scene, first.row)?.instruction.label;
  const ends = first.row.range;
  const words = {
    label: label?.text ?? first.row.label,
    count: range,
    unit: noun(label?.word === 'round' ? 'rounds' : 'rows'),
    said: stated,
  };
  const sum = ends ? `${ends.to} - ${ends.from} + 1 is ${range}, since both ends count.` : '';
  const { text } = scene.manuscript;
  const said = text.slice(at.from, at.to);
  const finding = rangeMismatch(at, words, { sum, rows, sizes });
  return propose(finding, [replacement(text, at, said.replace(/\d+/, String(range)))]);
}
