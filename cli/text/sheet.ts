/** The sheet of `loopwright measure` as text: what a designer pins above her desk. */
import {
  type Figure,
  type MeasureName,
  type Paint,
  type PartSize,
  printFigure,
  type Sheet,
  type SizeSheet,
  shortFigure,
  type Units,
  usHookLabel,
  wrap,
} from '../../src/index.ts';
import { gaugeLines } from './gauge.ts';
import { leanLines } from './lean.ts';
import { refitLines } from './refit.ts';
import { sizesTable } from './sizes-table.ts';
import { yarnLines } from './yarn.ts';

export interface SheetLayout {
  readonly units: Units;
  readonly width: number;
  readonly paint: Paint;
}

export function sheetText(sheet: Sheet, layout: SheetLayout): string {
  const notes: string[] = [];
  const blocks = sheet.sizes.flatMap((size) => sizeBlocks(size, { ...layout, notes }));
  const lines = [
    layout.paint('strong', sheet.title ?? 'Untitled'),
    ...materials(sheet),
    ...titled('Gauge', gaugeLines(sheet, layout.units, layout.width), layout.paint),
    ...titled(
      'Sizes',
      sizesTable(sheet, layout.units, { part: WORDS, whole: wholeWords }),
      layout.paint,
    ),
    ...blocks,
    ...titled('Worked to a length', lengthLines(sheet, layout), layout.paint),
    ...titled(
      'How it was had',
      notes.flatMap((note, at) => hanging(`[${at + 1}] ${note}`, layout.width)),
      layout.paint,
    ),
    '',
    layout.paint('strong', 'Not known'),
    ...sheet.notKnown.flatMap((sentence) => hanging(`- ${sentence}`, layout.width)),
  ];
  return `${lines.join('\n')}\n`;
}

const titled = (title: string, lines: readonly string[], paint: Paint): readonly string[] =>
  lines.length === 0 ? [] : ['', paint('strong', title), ...lines];

function lengthLines({ lengths }: Sheet, { units, width }: SheetLayout): string[] {
  return lengths.flatMap(({ size, part, rows, wanted, reached }) => {
    const name = [size, part].filter((each) => each !== '').join(', ');
    const [to, from] = [wanted, reached].map((figure) => shortFigure(figure, units));
    return hanging(
      `${name === '' ? '' : `${name}: `}${rows} rows by the gauge, which come to ${from} for the ${to} wanted: work to the length`,
      width,
    );
  });
}

interface Context extends SheetLayout {
  /** Words for the measures; default those of a part. */
  readonly words?: Readonly<Record<MeasureName, string>>;
  /** Reasons, each once, in the order of their numbers. */
  readonly notes: string[];
}

const hanging = (text: string, width: number): readonly string[] =>
  wrap('  ', text, Math.max(40, width), '      ');

function materials({ gauges }: Sheet): string[] {
  const hooks = gauges.hooks.map(({ mm }) => {
    const label = usHookLabel(mm);
    return label ? `${mm} mm (US ${label})` : `${mm} mm`;
  });
  return hooks.length > 0 ? [`Hook ${hooks.join(', ')}`] : [];
}

function sizeBlocks(size: SizeSheet, context: Context): string[] {
  if (size.stitches === 0) return [];
  const { paint } = context;
  const name = size.size === '' ? '' : `, ${size.size}`;
  const pieces = size.pieces.flatMap(({ parts, whole, copies }) => [
    ...parts.flatMap((part) => partLines(part, copies, context)),
    ...measureLines('In all', whole, { ...context, words: wholeWords(parts) }),
  ]);
  return [
    ...titled(`Size by gauge${name}`, pieces, paint),
    '',
    paint('strong', `Yarn${name}`),
    ...size.yarns.flatMap((yarn) =>
      yarnLines(yarn, { ...context, refs: (because) => refs(because, context) }),
    ),
    '',
    paint('strong', `Time${name}`),
    ...hanging(
      `about ${hoursSaid(size)} of crochet for ${size.stitches} stitches and chains; finishing apart ${refs([size.hours.because], context)}`,
      context.width,
    ),
    ...leanLines(size, context),
    ...refitLines(size, context),
  ];
}

function hoursSaid({ hours: { from, to } }: SizeSheet): string {
  const halves = (n: number): number => (n < 3 ? Math.round(n * 2) / 2 : Math.round(n));
  const said = (n: number): string => (n % 1 === 0 ? String(n) : `${n < 1 ? '' : Math.floor(n)}½`);
  const [low, high] = [halves(from), halves(to)];
  if (high === 0) return 'a quarter of an hour';
  if (high === 0.5) return 'half an hour';
  const unit = high === 1 ? 'hour' : 'hours';
  return low === high || low === 0
    ? `${said(high)} ${unit}`
    : `${said(low)} to ${said(high)} ${unit}`;
}

const WORDS: Readonly<Record<MeasureName, string>> = {
  around: 'around',
  flat: 'across when laid flat',
  high: 'high',
  across: 'across',
  long: 'long',
  wide: 'wide',
  deep: 'deep, along the work',
  side: 'each side',
  'first edge': 'at the first edge',
  'last edge': 'at the last edge',
  strap: 'each strap',
  opening: 'each opening',
  'middle to edge': 'from the middle of the base to the last round',
};

/** What stands on a base is measured from there. */
const wholeWords = (parts: readonly PartSize[]): typeof WORDS =>
  BASES.has(parts[0]?.form) ? { ...WORDS, high: 'high above the base' } : WORDS;

const BASES: ReadonlySet<PartSize['form'] | undefined> = new Set<PartSize['form'] | undefined>([
  'round base',
  'oval base',
  'square',
  'triangle',
  'pentagon',
  'hexagon',
]);

function partLines(part: PartSize, copies: number, context: Context): string[] {
  const copied = copies > 1 ? `, ${copies} alike` : '';
  const name = part.name === '' ? '' : `${part.name}, `;
  return measureLines(`${name}${part.labels} (${part.form}${copied})`, part.measures, context);
}

function measureLines(name: string, measures: PartSize['measures'], context: Context): string[] {
  const entries = Object.entries(measures) as [MeasureName, Figure][];
  const known = entries.filter(([, { how }]) => how !== 'assumed');
  if (known.length === 0) return [];
  return [
    ...hanging(name, context.width),
    ...known.map(([what, figure]) => {
      const sure = figure.how === 'swatch' ? '' : ' estimate';
      const said = `${(context.words ?? WORDS)[what]} ${printFigure(figure, context.units)}${sure}`;
      return `      ${said} ${refs(figure.because, context)}`;
    }),
  ];
}

/** "[1, 3]": numbers of the reasons, new ones added at the end. */
function refs(because: readonly string[], { notes }: Context): string {
  const numbers = because.map((note) => {
    if (!notes.includes(note)) notes.push(note);
    return notes.indexOf(note) + 1;
  });
  numbers.sort((a, b) => a - b);
  return numbers.length > 0 ? `[${numbers.join(', ')}]` : '';
}
