/** The sheet of `loopwright measure` as text: what a designer pins above her desk. */
import {
  type Amount,
  type Figure,
  type MeasureName,
  type Paint,
  type PartSize,
  printFigure,
  type Sheet,
  type SizeSheet,
  type Units,
  usHookLabel,
  wrap,
  type YarnNeed,
} from '../../src/index.ts';
import { leanLines } from './lean.ts';
import { refitLines } from './refit.ts';
import { sizesTable } from './sizes-table.ts';

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
    ...titled('Sizes', sizesTable(sheet, layout.units, WORDS), layout.paint),
    ...blocks,
    '',
    layout.paint('strong', 'How it was had'),
    ...notes.flatMap((note, at) => hanging(`[${at + 1}] ${note}`, layout.width)),
    '',
    layout.paint('strong', 'Not known'),
    ...sheet.notKnown.flatMap((sentence) => hanging(`- ${sentence}`, layout.width)),
  ];
  return `${lines.join('\n')}\n`;
}

const titled = (title: string, lines: readonly string[], paint: Paint): readonly string[] =>
  lines.length === 0 ? [] : ['', paint('strong', title), ...lines];

interface Context extends SheetLayout {
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
  return [
    '',
    paint('strong', `Size by gauge${name}`),
    ...size.pieces.flatMap(({ parts, whole, copies }) => [
      ...parts.flatMap((part) => partLines(part, copies, context)),
      ...measureLines('In all, above the base', whole, context),
    ]),
    '',
    paint('strong', `Yarn${name}`),
    ...size.yarns.flatMap((yarn) => yarnLines(yarn, context)),
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
  const said = (n: number): string =>
    n < 3 ? String(Math.round(n * 2) / 2) : String(Math.round(n));
  const [low, high] = [said(Math.max(from, 0.5)), said(Math.max(to, 0.5))];
  const unit = Number(high) <= 1 ? 'hour' : 'hours';
  return low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`;
}

const WORDS: Readonly<Record<MeasureName, string>> = {
  around: 'around',
  flat: 'across when laid flat',
  high: 'high',
  across: 'across',
  long: 'long',
  wide: 'wide',
  'first edge': 'at the first edge',
  'last edge': 'at the last edge',
  strap: 'each strap',
  opening: 'each opening',
};

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
      const said = `${WORDS[what]} ${printFigure(figure, context.units)}${sure}`;
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
  return numbers.length > 0 ? `[${numbers.join(', ')}]` : '';
}

/** Two figures at most, since no yardage is known better. */
function amountSaid({ value, spread }: Amount, unit: string): string {
  const from = roundedTo(value * (1 - spread), value);
  const to = roundedTo(value * (1 + spread), value);
  const range = from === to ? '' : ` (${from}-${to})`;
  return `${roundedTo(value, value)} ${unit}${range}`;
}

function roundedTo(value: number, size: number): number {
  const step = size < 20 ? 1 : size < 200 ? 5 : size < 1000 ? 10 : 50;
  return Math.round(value / step) * step;
}

const YARD_M = 0.9144;
const OUNCE_G = 28.349523125;

function lengths(amount: Amount, units: Units): string {
  const metric = amountSaid(amount, 'm');
  const us = amountSaid({ ...amount, value: amount.value / YARD_M }, 'yd');
  return units === 'metric' ? metric : units === 'us' ? us : `${metric}, ${us}`;
}

function weights(amount: Amount, units: Units): string {
  const metric = amountSaid(amount, 'g');
  const ounces = Math.round((amount.value / OUNCE_G) * 4) / 4;
  return units === 'metric' ? metric : units === 'us' ? `${ounces} oz` : `${metric}, ${ounces} oz`;
}

function yarnLines(need: YarnNeed, context: Context): string[] {
  const { units } = context;
  const name = need.name === '' ? 'Yarn' : need.name;
  const sure = need.how === 'swatch' ? '' : ' estimate';
  const grams = need.grams ? `; ${weights(need.grams, units)}` : '';
  const parts = [
    `${name}: ${lengths(need.metres, units)}${grams}${sure} ${refs(need.because, context)}`,
    `      of it ${extras(need, units)}`,
    `      margin ${Math.round(need.margin.share * 100)} % (${need.margin.because}): ${lengths({ value: need.margin.metres, spread: 0 }, units)} more`,
  ];
  return [...hanging(parts[0]!, context.width), ...parts.slice(1), ballsSaid(need)];
}

function extras({ tails, seams }: YarnNeed, units: Units): string {
  const tail = `tails ${lengths({ value: Math.max(1, tails), spread: 0 }, units)}`;
  return seams > 0 ? `${tail}, seams about ${lengths({ value: seams, spread: 0 }, units)}` : tail;
}

function ballsSaid({ balls }: YarnNeed): string {
  if (!balls) return '      balls: not known without a put-up such as 50 g / 110 m';
  const { ball, likely, atMost } = balls;
  const each = `${ball.grams} g / ${Math.round(ball.metres)} m`;
  const more = atMost > likely ? `, up to ${atMost} if the estimate is short` : '';
  return `      with it ${likely} ${likely === 1 ? 'ball' : 'balls'} of ${each}${more}`;
}
