/** What `letter` and `trace` have in common: mesh and box size from words, findings and chart out. */
import {
  type BoxMeasure,
  boxFromGauge,
  type Finding,
  formatFinding,
  lineStarts,
  type PrintedChart,
  readManuscript,
} from '../src/index.ts';
import { whyOf } from './files.ts';
import { wantsColour, write } from './output.ts';
import { saveWhole } from './save.ts';

/** Said by an option that cannot be read; the command ends with status 2. */
export class Unusable extends Error {}

/** Said where the shape of the boxes matters and no gauge tells it. */
export const SQUARE = 'Boxes were taken as square; --gauge gives them their true shape.';

export type MeshWords = { readonly post: string; readonly gap: number } | null;

/** "dc, ch 1" as a chart block names its mesh; the reader of such blocks reads it. */
export function meshFrom(words: string | undefined): MeshWords {
  if (words === undefined) return null;
  const line = words.split('\n')[0] ?? '';
  const text = `\`\`\`chart\nmesh: ${line}\n. open box\n\n.\n\`\`\`\n`;
  const mesh = readManuscript(text).value.charts[0]?.mesh ?? null;
  if (mesh === null) throw new Unusable(`--mesh "${line}": write it as "dc, ch 1" or "tr, ch 2"`);
  return mesh;
}

/** The size of a box by the gauge in words; `null` where none is given. */
export function boxFrom(words: string | undefined, mesh: MeshWords): BoxMeasure | null {
  if (words === undefined) return null;
  const box = boxFromGauge(words, mesh?.gap ?? null);
  if (box !== null) return box;
  throw new Unusable(
    `--gauge "${words}": write it as "8 boxes x 7.5 rnds = 10 cm"; stitches will do if --mesh is given`,
  );
}

/** Findings on standard error, as `check` shows them; each with the text that it points into. */
export function tell(findings: readonly Finding[], text: string, wish: { color: boolean }): void {
  const color = wantsColour(wish.color, process.stderr);
  const source = { text, lines: lineStarts(text) };
  for (const finding of findings) {
    const width = process.stderr.columns ?? 100;
    process.stderr.write(`${formatFinding(finding, source, { color, width })}\n\n`);
  }
}

/** "21 boxes x 7 rows, about 26 x 9.5 cm; 43 stitches flat, 42 in the round". */
export function sizeInWords(chart: PrintedChart, mesh: MeshWords, box: BoxMeasure | null): string {
  const [across, up] = [chart.rows[0]?.length ?? 0, chart.rows.length];
  const cm = (mm: number): string => String(Math.round(mm / 5) / 2);
  const size = box ? `, about ${cm(across * box.widthMm)} x ${cm(up * box.heightMm)} cm` : '';
  const round = across * ((mesh?.gap ?? 0) + 1);
  const stitches = mesh ? `; ${round + 1} stitches flat, ${round} in the round` : '';
  return `${across} boxes x ${up} rows${size}${stitches}`;
}

/** To the file named, whole or not at all, or to standard output. */
export async function deliver(text: string, output: string | undefined): Promise<void> {
  if (output === undefined) return write(`${text}\n`);
  try {
    await saveWhole(output, `${text}\n`);
  } catch (error) {
    throw new Unusable(`${output}: ${whyOf(error)}`);
  }
}

/** 1 if there is an error among the findings. */
export const statusFor = (findings: readonly Finding[]): 0 | 1 =>
  findings.some(({ severity }) => severity === 'error') ? 1 : 0;
