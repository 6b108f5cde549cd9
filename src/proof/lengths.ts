/** Lengths that were worked by the gauge: an assumption, told with its figures. */
import type { RowRecord, ToLength } from '../fabric/index.ts';
import { counted, noun } from '../finding/index.ts';
import type { Span } from '../source/index.ts';
import { length, printLength } from '../units/index.ts';
import { listed, rowName } from './names.ts';
import { type Scene, wordsAt } from './scene.ts';

type Fact = ToLength & Span;

/** A sentence for each order to a length; where sizes come to other numbers, one for each number. */
export function lengthsByGauge(scene: Scene): string[] {
  const sizes = new Map<string, Set<string>>();
  const { cloths } = scene.fabric;
  for (const { rows, sizeIndex } of cloths) {
    for (const row of rows) {
      for (const fact of row.facts) {
        if (fact.kind !== 'to-length') continue;
        const words = sentence(scene, row, fact);
        const named = sizes.get(words) ?? new Set();
        sizes.set(words, named.add(scene.manuscript.head.sizes[sizeIndex] ?? ''));
      }
    }
  }
  return [...sizes].map(([words, named]) =>
    named.size === cloths.length ? words : `Size ${listed([...named])}: ${words}`,
  );
}

function sentence(scene: Scene, row: RowRecord, fact: Fact): string {
  const { passes, rows, reachedMm, since, how, because } = fact;
  const unit = /\d\s*-?(?:["”″]|''|ins?\b|inch)/i.test(wordsAt(scene, fact)) ? 'in' : 'cm';
  const times = passes === 1 ? 'once' : `${passes} times`;
  const made = counted(rows, noun(row.ring ? 'rounds' : 'rows'));
  const comes = since === 'start' ? 'the piece comes' : 'they come';
  const reach = printLength(length(reachedMm, 'mm'), unit);
  const estimate = how === 'estimate' ? ' That height is partly an estimate.' : '';
  return (
    `Worked ${times}, ${made}: ${rowName(scene, row)}. By the gauge ${comes} to about ${reach}; ` +
    `work to the length. ${because.join(' ')}${estimate}`
  );
}
