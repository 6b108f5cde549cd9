/** Words that were read as others than are written: told once for each, at the first place. */
import { type Finding, readAs } from '../../finding/index.ts';
import type { Span } from '../../source/index.ts';
import { propose } from '../fixes/proposals.ts';
import type { Scene } from '../scene.ts';
import { absolute, append, instructionsOf, rowIds } from './rows.ts';

interface Place {
  readonly at: Span;
  readonly rows: readonly string[];
}

export function slips(scene: Scene): Finding[] {
  const places = new Map<string, Place[]>();
  for (const row of instructionsOf(scene)) {
    for (const slip of row.placed.instruction.slips) {
      const at = absolute(row.placed, slip);
      const words = scene.manuscript.text.slice(at.from, at.to);
      append(places, `${words}\n${slip.reading}`, { at, rows: rowIds(scene, row) });
    }
  }
  return [...places].map(([key, all]) => told(key, all));
}

function told(key: string, all: readonly Place[]): Finding {
  const [words = '', reading = ''] = key.split('\n');
  const { at } = all[0]!;
  const more = all.length - 1;
  const sum =
    more === 0 ? '' : `So it was in ${more === 1 ? 'one more place' : `${more} more places`}.`;
  const rows = [...new Set(all.flatMap((place) => place.rows))];
  const finding = readAs(at, { words, reading }, { sum, rows });
  const edits = all.map(({ at: { from, to } }) => ({ from, to, insert: reading }));
  return propose(finding, [{ title: `change "${words}" to "${reading}"`, edits }]);
}
