/** `loopwright letter`: words to a chart block on standard output, remarks on standard error. */
import { readFile, stat } from 'node:fs/promises';
import {
  type Align,
  type Border,
  type BoxMeasure,
  type Finding,
  legibility,
  letterWords,
  type OutlineFont,
  openFont,
  printedChart,
} from '../src/index.ts';
import {
  boxFrom,
  deliver,
  meshFrom,
  SQUARE,
  sizeInWords,
  statusFor,
  tell,
  Unusable,
} from './design.ts';
import { whyOf } from './files.ts';

/** As the command line has them; numbers are read, words are not. */
export interface LetterAsked {
  readonly height: number;
  readonly font?: string;
  readonly mesh?: string;
  readonly gauge?: string;
  readonly threshold?: number;
  readonly spacing?: number;
  readonly wordSpace?: number;
  readonly lineSpace?: number;
  readonly align?: Align;
  readonly margin?: number;
  readonly border?: Border;
  readonly name?: string;
  readonly output?: string;
  readonly color: boolean;
}

/** Bytes of a font file at most; the largest of plain letters have a few (ours). */
const MOST_FONT_BYTES = 32 * 1024 * 1024;

export async function letter(lines: readonly string[], asked: LetterAsked): Promise<0 | 1> {
  keepConsoleQuiet();
  const words = lines.join('\n').replaceAll('\\n', '\n');
  const mesh = meshFrom(asked.mesh);
  const box = boxFrom(asked.gauge, mesh);
  const font = asked.font === undefined ? null : await fontFrom(asked.font);
  if (font?.findings.length) {
    tell(font.findings, asked.font ?? '', asked);
    return 1;
  }
  const { value, findings } = letterWords(words, {
    ...optionsFrom(asked),
    ...(font?.value ? { font: font.value } : {}),
    ...(box ? { boxAspect: box.widthMm / box.heightMm } : {}),
    mesh,
    name: asked.name ?? nameFrom(words),
  });
  tell(findings, words, asked);
  if (value === null) return 1;
  const chart = printedChart(value.grid);
  tell(legibility(chart, value.coverage), chart.text, asked);
  const remark = font ? (box ? '' : SQUARE) : stretchInWords(box);
  if (remark !== '') process.stderr.write(`${remark}\n`);
  process.stderr.write(`${sizeInWords(chart, mesh, box)}\n`);
  await deliver(chart.text, asked.output);
  return statusFor(findings);
}

/** The font package tells of odd letters on the console; standard output is the chart's alone. */
function keepConsoleQuiet(): void {
  for (const way of ['log', 'warn', 'error'] as const) console[way] = () => undefined;
}

/** Our letters are drawn on squares; said where the boxes are a quarter from square or more (ours). */
function stretchInWords(box: BoxMeasure | null): string {
  const wide = box ? box.widthMm / box.heightMm : 1;
  if (wide > 0.8 && wide < 1.25) return '';
  const [times, as] = wide >= 1 ? [wide, 'wider than'] : [1 / wide, 'narrower than'];
  return `Letters come out ${times.toFixed(1)} times ${as} drawn, as the boxes are; --font keeps its shape.`;
}

async function fontFrom(
  file: string,
): Promise<{ readonly value: OutlineFont | null; readonly findings: readonly Finding[] }> {
  try {
    const { size } = await stat(file);
    if (size > MOST_FONT_BYTES) throw new Unusable(`${file}: larger than any font of letters`);
    return openFont(await readFile(file));
  } catch (error) {
    if (error instanceof Unusable) throw error;
    throw new Unusable(`${file}: ${whyOf(error)}`);
  }
}

function optionsFrom(asked: LetterAsked) {
  const { height, threshold, wordSpace, lineSpace, align, margin, border } = asked;
  const given = {
    threshold,
    letterSpace: asked.spacing,
    wordSpace,
    lineSpace,
    align,
    margin,
    border,
  };
  return {
    height,
    ...Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)),
  };
}

/** The words on one line, as a chart is called: what comes after a fence's word. */
function nameFrom(words: string): string {
  return words
    .replace(/[`\s]+/g, ' ')
    .trim()
    .slice(0, 40)
    .trim();
}
