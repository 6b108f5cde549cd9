/** `loopwright shape`: one file in; its shape said, and written as a drawing or a model. */
import { rename, rm, writeFile } from 'node:fs/promises';
import {
  type Compiled,
  compile,
  drawPieces,
  type Finding,
  formatFinding,
  gaugeFromWords,
  leftHanded,
  type Shape,
  type ShapeOptions,
  shapeOf,
  toGlb,
  toSvg,
  type Units,
} from '../src/index.ts';
import { Unusable } from './design.ts';
import { readText, whyOf } from './files.ts';
import { write } from './output.ts';
import { toPng } from './raster.ts';
import { shapeJson } from './shape-json.ts';
import { captionOf, shapeText } from './text/shape.ts';

export interface ShapeAsked {
  readonly output?: string;
  readonly size?: string;
  readonly part?: string;
  readonly gauge: readonly string[];
  readonly units: Units;
  readonly terms: 'US' | 'UK' | 'auto';
  readonly format: 'text' | 'json';
  readonly hand: 'right' | 'left';
  readonly version: string;
}

/** Exit status: 0 it is done, 1 an error in the pattern, 2 it could not be run. */
export async function runShape(file: string, asked: ShapeAsked): Promise<0 | 1 | 2> {
  try {
    const form = formOf(asked.output);
    const read = compile(await textOf(file), { terms: asked.terms, fixes: false });
    const compiled = asked.hand === 'left' ? { ...read, ...leftHanded(read) } : read;
    const options = optionsFor(compiled, asked);
    const shape = shaped(compiled, options);
    if (shape.pieces.length === 0) throw new Unusable(nothingFor(shape, asked));
    if (asked.output && form) await deliver(asked.output, written(form, shape, compiled, asked));
    await write(said(shape, compiled, file, asked));
    return compiled.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    process.stderr.write(`loopwright: ${error.message}\n`);
    return 2;
  }
}

function said(shape: Shape, compiled: Compiled, file: string, asked: ShapeAsked): string {
  const size = compiled.sizes[shape.sizeIndex] ?? '';
  if (asked.format === 'json') {
    const { title } = compiled.manuscript.head;
    return shapeJson(shape, { file: file === '-' ? 'stdin' : file, title, size });
  }
  const lines = [shapeText(shape, { ...asked, sizeName: size })];
  if (asked.output) lines.push(`Written: ${asked.output}\n`);
  return [...lines, ...findingsSaid(compiled, file)].join('\n');
}

async function textOf(file: string): Promise<string> {
  try {
    return await readText(file);
  } catch (error) {
    throw new Unusable(`${file}: ${whyOf(error)}`);
  }
}

type Form = 'svg' | 'png' | 'glb';

function formOf(output: string | undefined): Form | null {
  if (output === undefined) return null;
  const ending = /\.(svg|png|glb)$/i.exec(output)?.[1]?.toLowerCase();
  if (ending) return ending as Form;
  throw new Unusable(`${output}: the name has to end in .svg, .png or .glb`);
}

function optionsFor(compiled: Compiled, asked: ShapeAsked): ShapeOptions {
  const gauge = asked.gauge.map((words) => {
    const count = gaugeFromWords(words, compiled.terms);
    if (count) return count;
    const why = 'hold no count over a length, such as "16 sts x 18 rnds = 10 cm in sc"';
    throw new Unusable(`--gauge: the words "${words}" ${why}`);
  });
  return {
    hand: asked.hand,
    sizeIndex: sizeAsked(compiled.sizes, asked.size),
    ...(asked.part && { part: asked.part }),
    ...(gauge.length > 0 && { gauge }),
  };
}

/** By name, whatever the case, or by number from 1. */
function sizeAsked(sizes: readonly string[], size: string | undefined): number {
  if (size === undefined) return 0;
  const byName = sizes.findIndex((name) => name.toLowerCase() === size.toLowerCase());
  if (byName >= 0) return byName;
  const number = Number(size);
  if (Number.isInteger(number) && number >= 1 && number <= sizes.length) return number - 1;
  const names = sizes.filter((name) => name !== '').join(', ');
  throw new Unusable(
    `--size: there is no size "${size}"; ${names ? `the sizes are ${names}` : 'the pattern has one size'}`,
  );
}

function nothingFor(shape: Shape, { part }: ShapeAsked): string {
  if (part && shape.parts.length > 0) {
    return `--part: no piece has a part "${part}"; the parts are ${shape.parts.join(', ')}`;
  }
  return 'nothing was worked, so there is no shape';
}

/** Runs to the end with a line on the terminal; Ctrl-C stops it as any program. */
function shaped(compiled: Compiled, options: ShapeOptions): Shape {
  const isTerminal = process.stderr.isTTY === true;
  const run = shapeOf(compiled.manuscript, compiled.fabric, options);
  let last = 0;
  let step = run.next();
  for (; !step.done; step = run.next()) {
    const now = Date.now();
    if (!isTerminal || now - last < 100) continue;
    last = now;
    const { piece, nth, of, done } = step.value;
    process.stderr.write(`\r\u001b[K${nth} of ${of}: ${piece} ${Math.round(100 * done)} %`);
  }
  if (isTerminal) process.stderr.write('\r\u001b[K');
  return step.value;
}

/** 300 dots to an inch, as printers want it. */
const PIXELS_PER_MM = 300 / 25.4;

function written(
  form: Form,
  shape: Shape,
  compiled: Compiled,
  asked: ShapeAsked,
): string | Uint8Array {
  if (form === 'glb') {
    return toGlb(shape, compiled.fabric, { generator: `loopwright ${asked.version}` });
  }
  const drawing = drawPieces(shape, compiled.fabric, {
    title: compiled.manuscript.head.title ?? 'Shape of the pieces',
    captionFor: (piece) => captionOf(piece, shape, asked.units),
  });
  const svg = toSvg(drawing);
  return form === 'svg' ? svg : toPng(svg, PIXELS_PER_MM);
}

/** Whole or not at all: written beside the file and put in its place. */
async function deliver(output: string, content: string | Uint8Array): Promise<void> {
  const part = `${output}.${process.pid}.part`;
  try {
    await writeFile(part, content);
    await rename(part, output);
  } catch (error) {
    await rm(part, { force: true });
    throw new Unusable(`${output}: ${whyOf(error)}`);
  }
}

const SHAPE_CODES: ReadonlySet<string> = new Set(['will-cup', 'will-ruffle']);

function findingsSaid(compiled: Compiled, file: string): readonly string[] {
  const { findings, text, lines } = compiled;
  const name = file === '-' ? 'stdin' : file;
  const said = findings
    .filter(({ code }) => SHAPE_CODES.has(code))
    .map((finding: Finding) => `${formatFinding(finding, { text, lines, file: name })}\n`);
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  if (errors === 0) return said;
  const what = errors === 1 ? 'error' : 'errors';
  const tail = `The pattern has ${errors} ${what} that the shape leans on: loopwright check ${name}\n`;
  return [...said, tail];
}
