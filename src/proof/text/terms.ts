/** Words of the other terms: foreign where the pattern sets its terms, a mixture where it does not. */
import { type Finding, foreignTerm, termsMixed } from '../../finding/index.ts';
import { stemOf, type Terms, termCues, wordFor } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { termsLabel } from '../facts/stitch-names.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { holds, type Scene, wordsAt } from '../scene.ts';
import { append, instructionsOf, type Placed, rowIds } from './rows.ts';

/** Over so many rows with the same word, one finding speaks for all. */
const MOST_ROWS = 8;
const MOST_LABELS = 5;

interface Use {
  readonly row: Placed;
  readonly span: Span;
  readonly word: string;
}

export function foreignTerms(scene: Scene): Finding[] {
  const { because, terms, against } = scene.manuscript.terms;
  if (against.length === 0) return [];
  const uses = usesOf(scene, against);
  if (uses.length === 0) return [];
  if (because !== 'stated' && because !== 'option') return [mixed(scene, uses)];
  const byRow = new Map<string, Use[]>();
  for (const use of uses) {
    // "Dc in 2nd ch" speaks for UK terms, but dc is a stitch of US terms too.
    if (IN_BOTH.has(use.word)) continue;
    const key = `${use.word} ${use.row.placed.from}`;
    append(byRow, key, use);
  }
  const byWord = new Map<string, Use[][]>();
  for (const some of byRow.values()) append(byWord, some[0]?.word ?? '', some);
  return [...byWord.values()].flatMap((alike) =>
    alike.length <= MOST_ROWS
      ? alike.map((some) => foreign(scene, terms, some))
      : [foreign(scene, terms, alike.flat())],
  );
}

/** Everyday stitches of both terms: never foreign by themselves. */
const IN_BOTH: ReadonlySet<string> = new Set([
  'dc',
  'tr',
  'dtr',
  'double crochet',
  'treble crochet',
]);

/** Against words that stand in the work, by their row. */
function usesOf(scene: Scene, against: readonly Span[]): Use[] {
  const spans = [...against].sort((a, b) => a.from - b.from);
  const uses: Use[] = [];
  let next = 0;
  for (const row of instructionsOf(scene)) {
    while (next < spans.length && (spans[next]?.from ?? 0) < row.placed.from) next++;
    for (; next < spans.length; next++) {
      const span = spans[next] as Span;
      if (!holds(row.placed, span)) break;
      uses.push({ row, span, word: wordsAt(scene, span).toLowerCase() });
    }
  }
  return uses;
}

function foreign(scene: Scene, terms: Terms, uses: readonly Use[]): Finding {
  const [first, ...more] = uses as [Use, ...Use[]];
  const other = terms === 'US' ? 'UK' : 'US';
  const stem = stemOf(first.word, other);
  const right = stem ? wordFor(stem, terms) : null;
  const sum = right ? `The ${other} ${first.word} is the ${terms} ${right}.` : '';
  const again = more.slice(0, MOST_LABELS).map(({ span }) => ({ ...span, text: 'and here' }));
  const finding = foreignTerm(
    first.span,
    { stitch: wordsAt(scene, first.span), terms },
    {
      sum,
      labels: [...termsLabel(scene), ...again],
      rows: [...new Set(uses.flatMap(({ row }) => rowIds(scene, row)))],
    },
  );
  if (right === null) return finding;
  const fix = replacement(scene.manuscript.text, first.span, right);
  const edits = uses.map(({ span }) => ({ from: span.from, to: span.to, insert: right }));
  return propose(finding, [{ ...fix, edits }]);
}

/** Nothing sets the terms, and words of both stand in the rows. */
function mixed(scene: Scene, uses: readonly Use[]): Finding {
  const { terms } = scene.manuscript.terms;
  const against = uses.length;
  let speakFor = 0;
  for (const { placed } of instructionsOf(scene)) {
    const cues = termCues(scene.manuscript.text, placed.from, placed.to);
    speakFor += (terms === 'US' ? cues.us : cues.uk).length;
  }
  const [first, ...more] = uses as [Use, ...Use[]];
  const words = terms === 'US' ? { us: speakFor, uk: against } : { us: against, uk: speakFor };
  const labels = more.slice(0, MOST_LABELS).map(({ span }) => ({ ...span, text: 'and here' }));
  const rows = [...new Set(uses.flatMap(({ row }) => rowIds(scene, row)))];
  return termsMixed(first.span, words, { labels, rows });
}
