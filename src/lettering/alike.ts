/** Two signs of the words whose boxes come out the same: 0 and O, I and l. */
import { type Finding, lettersAlike } from '../finding/index.ts';
import { rowsOf } from './boxes.ts';
import type { Glyph } from './glyph.ts';
import type { Block } from './line.ts';

/** At the later letter, with the earlier one beside it; once for each pair of signs. */
export function alikeFindings({ placed }: Block): Finding[] {
  const first = new Map<string, Block['placed'][number]>();
  const told = new Set<string>();
  const findings: Finding[] = [];
  for (const piece of placed) {
    const look = lookOf(piece.glyph);
    const known = first.get(look);
    if (known === undefined) first.set(look, piece);
    else if (known.glyph.sign !== piece.glyph.sign) {
      const pair = `${known.glyph.sign} ${piece.glyph.sign}`;
      if (told.has(pair)) continue;
      told.add(pair);
      const words = { sign: piece.glyph.sign, other: known.glyph.sign };
      const label = { from: known.from, to: known.to, text: 'the same boxes' };
      findings.push(lettersAlike({ from: piece.from, to: piece.to }, words, { labels: [label] }));
    }
  }
  return findings;
}

/** The filled boxes and where they stand on the line, whatever open rows lie around them. */
function lookOf({ boxes, above }: Glyph): string {
  const rows = rowsOf(boxes).map((row, y) => ({ row: row.replace(/\.+$/, ''), line: y - above }));
  const inked = rows.filter(({ row }) => row !== '');
  const indent = Math.min(...inked.map(({ row }) => row.indexOf('#')));
  return inked.map(({ row, line }) => `${line} ${row.slice(indent)}`).join('\n');
}
