/** `loopwright chart`: the charts of one pattern as SVG, PNG and words in a folder. */
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import {
  type Compiled,
  compile,
  type Drawing,
  type DrawnChart,
  drawCharts,
  formatFinding,
  type Paper,
  toSvg,
} from '../src/index.ts';
import { readText, whyOf } from './files.ts';
import { wantsColour, widthOfOutput, write } from './output.ts';
import { toPng } from './raster.ts';
import { saveWhole } from './save.ts';

/** As the command line has them. */
export interface ChartAsked {
  readonly output: string;
  readonly only?: string;
  readonly hand: 'right' | 'left';
  readonly square?: true;
  readonly page?: Paper;
  readonly box?: number;
  readonly preview?: true;
  readonly scale: number;
  readonly terms: 'us' | 'uk' | 'auto';
  readonly color: boolean;
}

/** Exit status: 0 drawn, 1 drawn though the pattern has an error, 2 it could not be run. */
export async function runChart(file: string, asked: ChartAsked): Promise<0 | 1 | 2> {
  let compiled: Compiled;
  try {
    compiled = compile(await readText(file), { terms: termsOf(asked.terms), fixes: false });
  } catch (error) {
    return complain(file, whyOf(error));
  }
  const charts = drawCharts(compiled, {
    hand: asked.hand,
    boxes: asked.square ? 'square' : 'true',
    ...(asked.only !== undefined && { only: asked.only }),
    ...(asked.page && { paper: asked.page }),
    ...(asked.box !== undefined && { boxMm: asked.box }),
  });
  if (charts.length === 0) return complain(file, whyNone(compiled, asked.only));
  try {
    await mkdir(asked.output, { recursive: true });
    for (const chart of charts) await writeChart(chart, asked);
  } catch (error) {
    const why =
      error instanceof RangeError ? `${error.message}: ask for less with --scale` : whyOf(error);
    return complain(asked.output, why);
  }
  return tellFindings(compiled, file, asked);
}

const termsOf = (asked: ChartAsked['terms']): 'US' | 'UK' | 'auto' =>
  asked === 'auto' ? 'auto' : asked === 'us' ? 'US' : 'UK';

function complain(what: string, why: string): 2 {
  process.stderr.write(`loopwright: ${what}: ${why}\n`);
  return 2;
}

function whyNone({ manuscript }: Compiled, only: string | undefined): string {
  const names = manuscript.charts.map(({ name }) => name || 'Chart');
  if (names.length === 0) return 'the pattern has no chart block';
  if (only === undefined) return 'the charts have no boxes';
  return `there is no chart "${only}"; there is ${names.join(', ')}`;
}

async function writeChart(chart: DrawnChart, asked: ChartAsked): Promise<void> {
  const pages = chart.drawings.length;
  for (const [i, drawing] of chart.drawings.entries()) {
    const page = pages > 1 ? `-page-${String(i + 1).padStart(String(pages).length, '0')}` : '';
    await writeDrawing(drawing, `${chart.slug}${page}`, asked);
  }
  await writeFileNamed(`${chart.slug}.txt`, `${chart.words}\n`, asked);
  if (!asked.preview) return;
  if (chart.preview) await writeDrawing(chart.preview, `${chart.slug}-preview`, asked);
  else {
    const why = 'the pattern gives neither gauge nor yarn enough to tell how it will look';
    process.stderr.write(`loopwright: no preview of ${chart.name}: ${why}\n`);
  }
}

async function writeDrawing(drawing: Drawing, name: string, asked: ChartAsked): Promise<void> {
  const svg = toSvg(drawing);
  const png = toPng(svg, asked.scale);
  const size = `${Math.round(drawing.widthMm)} x ${Math.round(drawing.heightMm)} mm`;
  await writeFileNamed(`${name}.svg`, svg, asked, size);
  await writeFileNamed(`${name}.png`, png, asked, size);
}

/** Writes a file whole or not at all, and says so. */
async function writeFileNamed(
  name: string,
  content: string | Uint8Array,
  { output }: ChartAsked,
  size = 'words',
): Promise<void> {
  const path = join(output, name);
  await saveWhole(path, content);
  await write(`${path}  ${size}\n`);
}

/** How plainly designs will be seen is told in full; of other errors, that there are some. */
function tellFindings(compiled: Compiled, file: string, asked: ChartAsked): 0 | 1 {
  const { findings, text, lines } = compiled;
  const color = wantsColour(asked.color, process.stderr);
  const layout = { color, width: widthOfOutput() };
  for (const finding of findings.filter(({ code }) => code === 'design-faint')) {
    process.stderr.write(`\n${formatFinding(finding, { text, lines, file }, layout)}\n`);
  }
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  if (errors === 0) return 0;
  const many = errors === 1 ? 'an error' : `${errors} errors`;
  process.stderr.write(
    `The pattern has ${many}, and charts may be drawn wrong: loopwright check ${file}\n`,
  );
  return 1;
}
