/** Stitch names that neither the terms nor the pattern's own list explain. */
import {
  type Finding,
  foreignTerm,
  type Label,
  specialUndefined,
  undefinedStitch,
} from '../../finding/index.ts';
import { stemOf, type Terms, wordFor } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
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
    return foreignTerm(at, { stitch, terms }, { sum, labels: termsLabel(scene), rows, sizes });
  }
  if (GROUPS.test(stitch)) {
    return specialUndefined(at, { row: rowName(scene, first.row), stitch }, { rows, sizes });
  }
  const near = nearest(scene, stitch);
  const words = { stitch, terms, ...(near !== null && { nearest: near }) };
  const finding = undefinedStitch(at, words, { rows, sizes });
  if (near === null || !isName(scene, at, stitch)) return finding;
  return propose(finding, [replacement(scene.manuscript.text, at, near)]);
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
