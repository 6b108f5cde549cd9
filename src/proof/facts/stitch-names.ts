/** Stitch names that neither the terms nor the pattern's own list explain. */
import {
  type Finding,
  type Fix,
  foreignTerm,
  type Label,
  specialUndefined,
  undefinedStitch,
} from '../../finding/index.ts';
import { STEMS, stemOf, type Terms, wordFor } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { isExplainedInPassing } from '../explained.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { rowName } from '../names.ts';
import { nearest } from '../nearest.ts';
import { type Scene, type Sightings, wordsAt } from '../scene.ts';

/** Groups that makers know by name, yet make in many ways. */
const GROUPS =
  /^(?:(?:beg|beginning|first|last|small|large|double|single|half|corner)\s)*(?:shell|fan|v|cluster|cl|bobble|bo|puff|popcorn|pc|pop|picot|box|flower|pineapple|star|scallop|block|bean|wedge|pearl|berry|crown|petal)(?:\s?-?(?:st|stitch|cl))?$/;

const other = (terms: Terms): Terms => (terms === 'US' ? 'UK' : 'US');

export function undefinedName(scene: Scene, found: Sightings<'undefined'>): Finding | null {
  const { terms, because } = scene.manuscript.terms;
  const { first, at, rows, sizes } = found;
  const stitch = first.fact.word;
  const foreign = stemOf(stitch, other(terms));
  if (foreign) {
    // Where no terms are set, two kinds of terms are a mixture, which another rule tells.
    if (because === 'words' || because === 'custom') return null;
    // The words of the other terms are told by a rule of their own, nouns and counts included.
    if (scene.manuscript.terms.against.some((span) => meets(span, at))) return null;
    const sum = `The ${other(terms)} ${stitch} is the ${terms} ${wordFor(foreign, terms)}.`;
    // "Single crochet" is called as it is written, not by its letters.
    const said = wordsAt(scene, at).replace(/^\d+ ?/, '');
    const name = /^[a-z]+(?: [a-z]+){1,2}$/i.test(said) ? said : stitch;
    const more = { sum, labels: termsLabel(scene), rows, sizes };
    const finding = foreignTerm(at, { stitch: name, terms }, more);
    const right = STEMS.find(({ id }) => id === foreign);
    if (name === stitch || !right) return finding;
    return propose(finding, [
      renamed(scene, first.row, { from: name, to: terms === 'US' ? right.usName : right.ukName }),
    ]);
  }
  if (GROUPS.test(stitch)) {
    if (isExplainedInPassing(scene.manuscript.text, stitch)) return null;
    return specialUndefined(at, { row: rowName(scene, first.row), stitch }, { rows, sizes });
  }
  const near = nearest(scene, stitch);
  const words = { stitch, terms, ...(near !== null && { nearest: near }) };
  const finding = undefinedStitch(at, words, { rows, sizes });
  if (near === null || !isName(scene, at, stitch)) return finding;
  return propose(finding, [replacement(scene.manuscript.text, at, near)]);
}

/** A stitch written in full, in every place of the row. */
function renamed(
  { manuscript: { text } }: Scene,
  row: Span,
  name: { from: string; to: string },
): Fix {
  const edits = [
    ...text.slice(row.from, row.to).matchAll(new RegExp(`\\b${name.from}\\b`, 'gi')),
  ].map((found) => {
    const from = row.from + found.index;
    return { from, to: from + name.from.length, insert: name.to };
  });
  return { title: `change "${name.from}" to "${name.to}"`, edits };
}

/** Points at the words that set the terms. */
export function termsLabel({ manuscript }: Scene): Label[] {
  const { termsSpan } = manuscript.head;
  return termsSpan && manuscript.terms.because === 'stated'
    ? [{ ...termsSpan, text: 'set here' }]
    : [];
}

const isName = (scene: Scene, at: Span, stitch: string): boolean =>
  wordsAt(scene, at).toLowerCase() === stitch;

const meets = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;
