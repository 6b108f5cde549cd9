/** `loopwright trace`: a picture to a chart block on standard output, remarks on standard error. */
import {
  type Border,
  type Coverage,
  type Ground,
  legibility,
  printableText,
  printedChart,
  type Tracing,
  trace as traced,
} from '../src/index.ts';
import { boxFrom, deliver, meshFrom, SQUARE, sizeInWords, statusFor, tell } from './design.ts';
import { readPicture } from './picture-file.ts';
import { preview } from './preview.ts';

export interface TraceAsked {
  readonly width: number;
  readonly mesh?: string;
  readonly gauge?: string;
  readonly threshold?: number;
  readonly invert?: true;
  readonly mirror?: true;
  readonly clean?: number | true;
  readonly ground: Ground;
  readonly margin?: number;
  readonly border?: Border;
  readonly name?: string;
  readonly preview?: true;
  readonly output?: string;
  readonly color: boolean;
}

export async function trace(file: string, asked: TraceAsked): Promise<0 | 1> {
  const mesh = meshFrom(asked.mesh);
  const box = boxFrom(asked.gauge, mesh);
  const { picture, remarks } = await readPicture(file);
  const { value, findings } = traced(picture, {
    width: asked.width,
    boxAspect: box ? box.widthMm / box.heightMm : 1,
    threshold: asked.threshold ?? 'auto',
    fill: asked.invert ? 'light' : 'dark',
    facing: asked.mirror ? 'mirrored' : 'as-is',
    clean: asked.clean === true ? 1 : (asked.clean ?? 0),
    ground: asked.ground,
    mesh,
    name: asked.name ?? nameFrom(file),
    ...(asked.margin === undefined ? {} : { margin: asked.margin }),
    ...(asked.border === undefined ? {} : { border: asked.border }),
  });
  tell(findings, printableText(file), asked);
  if (value === null) return 1;
  const chart = printedChart(value.grid);
  tell(legibility(chart, framedCoverage(value)), chart.text, asked);
  if (asked.preview) process.stderr.write(`${preview(value, process.stderr.columns ?? 100)}\n`);
  const told = [...remarks, ...whatWasDone(value, asked), sizeInWords(chart, mesh, box)];
  process.stderr.write(`${told.join('\n')}\n`);
  await deliver(chart.text, asked.output);
  return statusFor(findings);
}

function whatWasDone({ threshold, cleaned }: Tracing, asked: TraceAsked): string[] {
  const { opened, filled } = cleaned;
  const share = Math.round(threshold.share * 100) / 100;
  return [
    `Threshold ${share}, ${threshold.how === 'auto' ? "by the picture's tones" : 'as given'}.`,
    ...(asked.clean ? [`Cleaned: ${opened} filled boxes opened, ${filled} open ones filled.`] : []),
    ...(asked.mirror ? ['Turned left to right: letters in the picture now read backwards.'] : []),
    ...(asked.gauge === undefined ? [SQUARE] : []),
  ];
}

/** The coverage with the frame's boxes around it, which are in no doubt. */
function framedCoverage({ grid, coverage }: Tracing): Coverage {
  const { width, height, shares, threshold } = coverage;
  const wide = ((grid.rows[0]?.length ?? width) - width) / 2;
  const all = { width: width + 2 * wide, height: height + 2 * wide, threshold };
  const certain = new Float64Array(all.width * all.height).fill(threshold > 0.5 ? 0 : 1);
  for (let y = 0; y < height; y++) {
    const row = shares.subarray(y * width, (y + 1) * width);
    certain.set(row, (y + wide) * all.width + wide);
  }
  return { ...all, shares: certain };
}

function nameFrom(file: string): string {
  const last = file.split(/[\\/]/).at(-1) ?? '';
  return last
    .replace(/\.\w+$/, '')
    .replace(/[`\s]+/g, ' ')
    .trim()
    .slice(0, 40)
    .trim();
}
