/** The pattern's own rhythm as a witness: "Rounds 2 to 4 each added 6, and 24 + 6 is 30 too." */
import type { RowRecord } from '../fabric/index.ts';
import { rowName } from './names.ts';
import type { Scene, Sighting } from './scene.ts';

/** At least so many rows have to agree. */
const FEWEST = 2;

export function growth(scene: Scene, { row, cloth, fact }: Sighting<'count'>): string {
  const end = cloth.rows.indexOf(row);
  const earlier: RowRecord[] = [];
  for (let i = end - 1; i >= 0 && earlier.length < 5; i--) {
    const one = cloth.rows[i];
    if (!one || one.partIndex !== row.partIndex || one.instance !== row.instance) break;
    if (one.verdict !== 'proven') break;
    earlier.unshift(one);
  }
  const last = earlier.at(-1)?.tally.stitches ?? 0;
  const steps = earlier
    .slice(1)
    .map((one, i) => one.tally.stitches - (earlier[i]?.tally.stitches ?? 0));
  const by = steps.at(-1) ?? 0;
  let agree = 0;
  while (agree < steps.length && steps[steps.length - 1 - agree] === by) agree++;
  const next = last + by;
  if (agree < FEWEST || by === 0 || (next !== fact.computed && next !== fact.value)) return '';
  const from = rowName(scene, earlier[earlier.length - agree] as RowRecord);
  const to = rowName(scene, earlier.at(-1) as RowRecord);
  const span = from.replace(/^(row|round) /, '$1s ');
  const change =
    by > 0 ? `added ${by}, and ${last} + ${by}` : `took away ${-by}, and ${last} - ${-by}`;
  const verdict = next === fact.computed ? 'too' : 'as stated';
  return `${capital(span)} to ${/\d+$/.exec(to)?.[0] ?? to} each ${change} is ${next} ${verdict}.`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
