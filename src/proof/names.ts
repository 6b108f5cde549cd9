/** How rows and what lies beneath them are called in a sentence. */
import { firstAnchor, type RowRecord } from '../fabric/index.ts';
import { type Label, type Noun, noun } from '../finding/index.ts';
import type { RowLabel } from '../notation/index.ts';
import { askedBy, type Scene, type Sighting, wordsAt } from './scene.ts';

export const STITCHES: Noun = noun('stitches');
export const CHAINS: Noun = noun('chains');
export const SPACES: Noun = noun('spaces');

/** "round 4", "row 12"; the label as written where it has no number; else the row's first words. */
export function rowName(scene: Scene, row: RowRecord): string {
  const word = askedBy(scene, row)?.instruction.label?.word ?? '';
  if (row.number !== null) return numbered(word, row.number, row.ring);
  if (row.label !== '') return uncapped(row.label);
  return `"${firstWords(wordsAt(scene, row))}"`;
}

/** The same from a label alone. */
export function labelName(label: RowLabel, number: number | undefined): string {
  return number === undefined ? uncapped(label.text) : numbered(label.word, number, false);
}

function numbered(word: RowLabel['word'], number: number, isRing: boolean): string {
  if (word === '') return `${isRing ? 'round' : 'row'} ${number}`;
  return `${word} ${number}`;
}

const uncapped = (words: string): string =>
  /^[A-Z][a-z]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;

/** About five words: enough to find the place. */
export function firstWords(words: string): string {
  const some = words.split(' ').slice(0, 5).join(' ');
  return some.length < words.length ? `${some.replace(/[,;:]$/, '')} …` : some;
}

/** What the row is worked into, in words: "round 3", "the foundation chain". */
export function beneathName(scene: Scene, sighting: Sighting): string {
  const { row, before } = sighting;
  if (row.joins) return 'what it joins';
  const earlier = beneathEarlier(sighting);
  if (earlier) {
    const name = rowName(scene, earlier);
    const have = 'have' in sighting.fact ? sighting.fact.have : row.available;
    return have < earlier.tally.stitches ? `what is left of ${name}` : name;
  }
  if (before && before.number === null && before.label === row.label) return 'the row before';
  if (before) return rowName(scene, before);
  return row.available > 1 ? 'the foundation chain' : 'the start';
}

/**
 * The row worked into, where it is not the one worked just before: what a first side left, the edge
 * that yarn is joined to again. `null`: it is the one before, or none is known.
 */
function beneathEarlier({ before, row, cloth, fact }: Sighting): RowRecord | null {
  if (!before) return null;
  let earlier: RowRecord | null = null;
  for (let id = row.nodes.to - 1; id >= row.nodes.from; id--) {
    const into = firstAnchor(cloth.nodes, id);
    if (into < 0 || into >= row.nodes.from) continue;
    if (into >= before.nodes.from) return null;
    earlier ??= cloth.rows.find(({ nodes }) => nodes.from <= into && into < nodes.to) ?? null;
    // Over the row before and on into what an earlier one left: the end of the row is what is told.
    if ('have' in fact && fact.have !== row.available) return earlier;
  }
  return earlier;
}

/** Stitches, or chains where nothing but a chain lies beneath. */
export const beneathUnit = ({ before, row }: Sighting): Noun =>
  before || row.joins ? STITCHES : CHAINS;

/** Points at where the number beneath comes from. */
export function beneathLabels(scene: Scene, sighting: Sighting): Label[] {
  const { row } = sighting;
  const before = beneathEarlier(sighting) ?? sighting.before;
  if (row.joins) return [];
  if (!before) return foundationLabels(scene, row);
  if (before.from === row.from) return [];
  const stated = before.stated[0]?.span;
  return [
    stated ? { ...stated, text: 'made here' } : { ...endOf(scene, before), text: 'made here' },
  ];
}

/** A whole row would be underlined over several lines; its label is enough to find it. */
function endOf(scene: Scene, row: RowRecord): { from: number; to: number } {
  const label = askedBy(scene, row)?.instruction.label;
  if (label && label.to > label.from)
    return { from: row.from + label.from, to: row.from + label.to };
  return { from: row.from, to: row.to };
}

/** The chain that a first row is worked into, in this instruction or in one above it. */
export function foundationLabels(scene: Scene, row: RowRecord): Label[] {
  const part = scene.manuscript.parts[row.partIndex];
  for (let i = row.instruction; part && i >= 0; i--) {
    const placed = part.instructions[i];
    const chain = placed?.instruction.steps.find((step) => step.kind === 'chain');
    if (placed && chain && i < row.instruction) {
      return [{ from: placed.from + chain.from, to: placed.from + chain.to, text: 'made here' }];
    }
  }
  return [];
}

/** "rounds 4 to 6", "rows 2, 5 and 7": numbers in a row are drawn together. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** "round 4, round 5, round 6" becomes "rounds 4 to 6". */
export function drawn(names: readonly string[]): string[] {
  const out: { word: string; from: number; to: number; name: string }[] = [];
  for (const name of names) {
    const parts = /^(row|round) (\d+)$/.exec(name);
    const [word, number] = [parts?.[1] ?? '', Number(parts?.[2] ?? Number.NaN)];
    const last = out.at(-1);
    if (last && word !== '' && last.word === word && last.to + 1 === number) last.to = number;
    else out.push({ word, from: number, to: number, name });
  }
  return out.map(({ word, from, to, name }) =>
    from < to ? `${word}s ${from}${to === from + 1 ? ' and' : ' to'} ${to}` : name,
  );
}

/** "chart Tide"; "the chart" where it has no name. */
export const chartName = (name: string): string =>
  name === '' ? 'the chart' : /^chart\b/i.test(name) ? name : `chart ${name}`;
