/**
 * The whole chain on one screen:
 *
 *     text -> manuscript -> fabric -> findings
 *
 * Nothing here reads files or clocks; the same text gives the same outcome.
 */
import { type Account, accountOf, type Fabric, work } from './fabric/index.ts';
import { figureFindings, lieFlatFindings } from './figures/index.ts';
import type { Finding } from './finding/index.ts';
import { type Manuscript, type ReadOptions, readManuscript } from './manuscript/index.ts';
import type { Terms } from './notation/index.ts';
import { faintDesigns } from './pictures/index.ts';
import { notChecked, prove, unaccused, withFixes } from './proof/index.ts';
import type { LineStarts } from './source/index.ts';

export interface CompileOptions {
  /** Terms to read by whatever the pattern states; 'auto' (the default) takes its own. */
  readonly terms?: ReadOptions['terms'];
  /** An earlier outcome, of whatever text: what is unchanged is used again, the outcome is equal. */
  readonly former?: Compiled;
  /** Offer changes, each tried and found good; default true. */
  readonly fixes?: boolean;
}

export interface Compiled extends Account {
  readonly text: string;
  readonly lines: LineStarts;
  readonly terms: Terms;
  readonly manuscript: Manuscript;
  readonly fabric: Fabric;
  /** By place, then code. */
  readonly findings: readonly Finding[];
  /** Sentences: what was not checked. */
  readonly notChecked: readonly string[];
}

/** Reads, works and proves a pattern. Faulty input gives findings, never an exception. */
export function compile(text: string, options: CompileOptions = {}): Compiled {
  const { former, terms = 'auto', fixes = true } = options;
  const read = readManuscript(text, { terms, ...(former && { former: former.manuscript }) });
  const manuscript = read.value;
  const worked = work(manuscript);
  const found = inOrder([
    ...read.findings,
    ...prove(manuscript, worked),
    ...lieFlatFindings(manuscript, worked),
    ...faintDesigns(manuscript, worked),
    ...figureFindings(manuscript, worked),
  ]);
  const fabric = unaccused(worked, found);
  const again = (edited: string): readonly Finding[] =>
    compile(edited, { terms, fixes: false, ...(former && { former }) }).findings;
  return {
    ...accountOf(manuscript, fabric),
    text,
    lines: manuscript.lines,
    terms: manuscript.terms.terms,
    manuscript,
    fabric,
    // A piece that reached a limit is not worked again and again to try changes on it.
    findings: fixes && !found.some(isLimit) ? withFixes(text, found, again) : found,
    notChecked: [...fabric.notChecked, ...notChecked(manuscript, fabric)],
  };
}

/**
 * The pattern as a left-handed maker works it: every stitch mirrored, but for charts, which she reads from the
 * other side so that words stay words. Spans are those of the same text. For `shapeOf` with the left hand.
 */
export function leftHanded({
  manuscript,
}: Pick<Compiled, 'manuscript'>): Pick<Compiled, 'manuscript' | 'fabric'> {
  if (manuscript.charts.length === 0) return { manuscript, fabric: work(manuscript) };
  const charts = manuscript.charts.map((chart) => ({
    ...chart,
    rows: chart.rows.map((row) => [...row].reverse()),
  }));
  const read = { ...manuscript, charts };
  return { manuscript: read, fabric: work(read) };
}

const isLimit = ({ code }: Finding): boolean =>
  code === 'too-many-stitches' || code === 'repeat-too-large';

const inOrder = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort(
    (a, b) =>
      a.from - b.from ||
      a.to - b.to ||
      order(a.code, b.code) ||
      order(a.sizes.join(), b.sizes.join()),
  );

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
