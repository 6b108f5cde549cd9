/** The file as a value: front matter, parts, charts, special stitches, orders, terms. */
import {
  chartDoubled,
  type Finding,
  noInstructions,
  type Outcome,
  termsInferred,
} from '../finding/index.ts';
import type { Terms } from '../notation/index.ts';
import { lineStarts, type Span } from '../source/index.ts';
import type { Block, ChartBlock } from './block.ts';
import { scanBlocks } from './blocks.ts';
import { readChart } from './chart.ts';
import { readFrontMatter } from './front-matter.ts';
import { readHead, withStated } from './head.ts';
import { layoutOf } from './layout.ts';
import { fileRefusal, lineRefusals } from './limits.ts';
import { madeInRows } from './made-in-rows.ts';
import type { Chart, Head, Manuscript } from './manuscript.ts';
import { withParagraphs } from './paragraphs-of-row.ts';
import { partsOf } from './parts.ts';
import { plainOf } from './plain.ts';
import { specialsOf, withSpecials } from './specials.ts';
import { addCues, type Cues, noCues, tellingCue, termsOf } from './terms.ts';
import { treeReader, vocabularyOf } from './trees.ts';
import { trigramsOf } from './trigrams.ts';

export interface ReadOptions {
  /** Overrides what the pattern states; default 'auto'. */
  readonly terms?: Terms | 'auto';
  /** The last reading of this file: trees of rows that did not change are taken from it. */
  readonly former?: Manuscript;
}

/**
 * Reads a pattern, authored with front matter and headings or pasted as it is. Never throws; what
 * cannot be read is a finding, and the rest is read all the same. With `former` the outcome equals
 * that of reading from nothing.
 */
export function readManuscript(text: string, options: ReadOptions = {}): Outcome<Manuscript> {
  const refusal = fileRefusal(text);
  if (refusal) return { value: emptyManuscript(text), findings: [refusal] };
  const lines = lineStarts(text);
  const refusals = lineRefusals(text, lines);
  const front = readFrontMatter(text);
  const { plain: written, marks: found } = plainOf(text);
  const { layout, titles, width } = layoutOf(written, lines, front);
  const lineByLine = scanBlocks(written, {
    layout,
    titles,
    width,
    marks: found,
    // Tags may have become line ends.
    lines: written === text ? lines : lineStarts(written),
    from: front.bodyFrom,
    refused: refusals.refused,
  });
  const pasted = layout === 'pasted';
  const { text: plain, blocks } = pasted
    ? withParagraphs(written, lineByLine)
    : { text: written, blocks: lineByLine };
  const marks = plain === written ? found : trigramsOf(plain);
  const head = readHead(front, { text: plain, marks }, blocks);
  const charts = chartsOf(text, blocks);
  const known = vocabularyOf(head.value, [], charts.value);
  const named = specialsOf(plain, front, blocks, known);
  const specials = [
    ...named,
    ...madeInRows({ text: plain, marks }, blocks, withSpecials(known, named)),
  ];
  const words = withSpecials(known, specials);
  const read = treeReader(plain, words, options.former ?? null);
  const cues = noCues();
  const { parts, orders } = partsOf(plain, blocks, {
    read,
    leave: (block) => addCues(cues, plain, block),
    yarns: words.yarns,
    sizes: head.value.sizes,
  });
  const stated = withStated(head.value, cues.stated);
  const terms = termsOf(plain, cues, stated.terms, options.terms ?? 'auto');
  const value = {
    text,
    lines,
    head: stated,
    parts,
    charts: charts.value,
    specials,
    orders,
    terms,
  };
  const findings = [
    ...refusals.findings,
    ...front.findings,
    ...head.findings,
    ...charts.findings,
    ...wholeFindings(plain, value, cues),
  ];
  return { value, findings };
}

function emptyManuscript(text: string): Manuscript {
  const head: Head = {
    title: null,
    version: null,
    date: null,
    terms: null,
    termsSpan: null,
    language: null,
    sizes: [''],
    yarns: [],
    data: {},
    span: null,
  };
  const terms = { terms: 'US', because: 'custom', against: [] } as const;
  return { text, lines: [0], head, parts: [], charts: [], specials: [], orders: [], terms };
}

/** Of two charts with one name the first is worked. */
function chartsOf(text: string, blocks: readonly Block[]): Outcome<readonly Chart[]> {
  const charts: Chart[] = [];
  const findings: Finding[] = [];
  const names = new Map<string, Span>();
  for (const block of blocks) {
    if (block.kind !== 'chart') continue;
    const outcome = readChart(text, block);
    charts.push(outcome.value);
    findings.push(...outcome.findings);
    const first = names.get(block.name);
    if (first) findings.push(doubled(text, block, first));
    else names.set(block.name, openingOf(text, block));
  }
  return { value: charts, findings };
}

function doubled(text: string, block: ChartBlock, first: Span): Finding {
  const name = block.name === '' ? '""' : block.name;
  const labels = [{ ...first, text: 'the first of them' }];
  return chartDoubled(openingOf(text, block), { name }, { labels });
}

const openingOf = (text: string, { from, innerFrom }: ChartBlock): Span => ({
  from,
  to: from + text.slice(from, innerFrom).trimEnd().length,
});

/** What can be said only of the whole: that nothing was found, and which terms were taken. */
function wholeFindings(text: string, manuscript: Manuscript, cues: Cues): readonly Finding[] {
  const { parts, terms } = manuscript;
  const first = parts[0]?.instructions[0];
  if (!first) return [noInstructions({ from: 0, to: Math.min(text.length, 1) })];
  if (terms.because !== 'words' && terms.because !== 'custom') return [];
  const cue = tellingCue(cues, terms.terms);
  const because = cue
    ? `since "${text.slice(cue.from, cue.to)}" is a word of ${terms.terms} terms`
    : 'as most patterns are that do not say';
  return [
    termsInferred(cue ?? { from: first.from, to: first.to }, { terms: terms.terms, because }),
  ];
}
