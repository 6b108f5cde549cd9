/**
 * Runs an example or a case that is a command, `loopwright letter "TIDE" --height 7`, through the
 * engine, with fonts and pictures that are made here and named in the command.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  type Finding,
  legibility,
  letterWords,
  openFont,
  type Picture,
  printedChart,
  readManuscript,
  trace,
} from '../../src/index.ts';

export const isCommand = (text: string): boolean => text.startsWith('loopwright ');

/** A finding with the text that it points into. */
export interface Told {
  readonly finding: Finding;
  readonly text: string;
}

export function runCommand(line: string): Told[] {
  const [, name = '', ...rest] = (line.trim().match(/"[^"]*"|\S+/g) ?? []).map((word) =>
    word.replaceAll('"', ''),
  );
  const options = new Map<string, string>();
  const words: string[] = [];
  for (let at = 0; at < rest.length; at++) {
    if (rest[at]?.startsWith('--')) options.set(rest[at++] ?? '', rest[at] ?? '');
    else words.push(rest[at] ?? '');
  }
  return name === 'letter' ? lettered(words.join('\n'), options) : traced(words[0] ?? '', options);
}

const numbered = (options: ReadonlyMap<string, string>, key: string): number | undefined =>
  options.has(key) ? Number(options.get(key)) : undefined;

function lettered(words: string, options: ReadonlyMap<string, string>): Told[] {
  const file = options.get('--font');
  const opened = file ? openFont(fontBytes(file)) : { value: null, findings: [] };
  if (opened.findings.length > 0) return told(opened.findings, file ?? '');
  const { value, findings } = letterWords(words, {
    height: numbered(options, '--height') ?? 7,
    mesh: meshOf(options.get('--mesh')),
    ...(opened.value ? { font: opened.value } : {}),
  });
  if (value === null) return told(findings, words);
  const chart = printedChart(value.grid);
  return [...told(findings, words), ...told(legibility(chart, value.coverage), chart.text)];
}

function traced(name: string, options: ReadonlyMap<string, string>): Told[] {
  const picture = pictures[name];
  if (!picture) throw new RangeError(`no picture ${name}`);
  const { findings } = trace(picture, {
    width: Number(options.get('--width')),
    threshold: numbered(options, '--threshold') ?? 'auto',
    clean: numbered(options, '--clean') ?? 0,
  });
  return told(findings, name);
}

const told = (findings: readonly Finding[], text: string): Told[] =>
  findings.map((finding) => ({ finding, text }));

function meshOf(words: string | undefined) {
  if (words === undefined) return null;
  const text = `\`\`\`chart\nmesh: ${words}\n. open box\n\n.\n\`\`\`\n`;
  return readManuscript(text).value.charts[0]?.mesh ?? null;
}

const { resolve } = createRequire(import.meta.url);

const faces: Readonly<Record<string, string>> = {
  'sans.ttf': '400Regular/SourceSans3_400Regular',
  'sans-bold.ttf': '700Bold/SourceSans3_700Bold',
  'sans-light.ttf': '300Light/SourceSans3_300Light',
  'broken.ttf': '400Regular/SourceSans3_400Regular',
};

/** Source Sans 3, SIL Open Font License; "broken" is its beginning alone. */
export function fontBytes(name: string): Uint8Array {
  const path = resolve(`@expo-google-fonts/source-sans-3/${faces[name]}.ttf`);
  const bytes = new Uint8Array(readFileSync(path));
  return name === 'broken.ttf' ? bytes.slice(0, 3000) : bytes;
}

/** A picture from the darkness of each pixel, 0 to 1. */
export function pictureOf(
  width: number,
  height: number,
  darkness: (x: number, y: number) => number,
): Picture {
  const rgba = new Uint8Array(width * height * 4);
  for (let at = 0; at < width * height; at++) {
    const tone = Math.round(255 * (1 - darkness(at % width, Math.floor(at / width))));
    rgba.set([tone, tone, tone, 255], at * 4);
  }
  return { width, height, rgba };
}

/** A hull with a sail, 48 x 48. */
const boat = (x: number, y: number): number =>
  (y >= 36 && y < 44 && x >= 4 + (y - 36) && x < 44 - (y - 36)) ||
  (y >= 4 && y < 32 && x >= 24 && x < 24 + (y - 4) / 2)
    ? 1
    : 0;

const speck = (x: number, y: number): number =>
  boat(x, y) || (x >= 4 && x < 8 && y >= 4 && y < 8 ? 1 : 0);

const pictures: Readonly<Record<string, Picture>> = {
  'boat.png': pictureOf(48, 48, boat),
  'speck.png': pictureOf(48, 48, speck),
  'dawn.png': pictureOf(48, 48, (_, y) => y / 47),
};
