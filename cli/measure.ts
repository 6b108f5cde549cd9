/** `loopwright measure`: one file in, its sheet out. */
import {
  coloured,
  compile,
  drawSchematic,
  type Finding,
  type FindingSource,
  fabricMeant,
  formatFinding,
  gaugeFromWords,
  type MeasureOptions,
  measure,
  type PutUp,
  plain,
  putUpFromWords,
  readGauges,
  type Sheet,
  toSvg,
  type Units,
} from '../src/index.ts';
import { readText, whyOf } from './files.ts';
import { measureJson } from './measure-json.ts';
import { wantsColour, widthOfOutput, write } from './output.ts';
import { saveWhole } from './save.ts';
import { sheetText } from './text/sheet.ts';

export interface MeasureAsked {
  readonly gauge: readonly string[];
  /** Put-ups in place of the yarns' own, each for all or for one: "A: 100 g / 200 m". */
  readonly yarn: readonly string[];
  readonly units: Units;
  readonly format: 'text' | 'json';
  readonly terms: 'US' | 'UK' | 'auto';
  readonly color: boolean;
  /** Where to write the schematic, an SVG file. */
  readonly schematic?: string;
}

/** Exit status: 0 the sheet is whole, 1 an error in the pattern or nothing to measure, 2 not run. */
export async function runMeasure(file: string, asked: MeasureAsked): Promise<0 | 1 | 2> {
  let text: string;
  try {
    text = await readText(file);
  } catch (error) {
    return complain(file, whyOf(error));
  }
  const compiled = compile(text, { terms: asked.terms, fixes: false });
  const counts = asked.gauge.map((words) => ({
    words,
    count: gaugeFromWords(words, compiled.terms),
  }));
  const unread = counts.find(({ count }) => count === null);
  if (unread) {
    const why = 'hold no count over a length, such as "16 sts x 18 rnds = 10 cm in sc"';
    return complain('--gauge', `the words "${unread.words}" ${why}`);
  }
  const own = readGauges(compiled.manuscript);
  const vague = counts.find(({ count }) => count && !count.fabric && !fabricMeant(own, count));
  if (vague && own.records.length > 0) {
    const names = own.records.map(({ fabric }) => fabric || 'one without a name').join(', ');
    return complain(
      '--gauge',
      `"${vague.words}" names no stitch, and the pattern counts ${names}: add "in sc" or the like`,
    );
  }
  const substitutes = substitutesFrom(asked.yarn, compiled.fabric.yarns);
  if (typeof substitutes === 'string') return complain('--yarn', substitutes);
  const sheet = measure(compiled.manuscript, compiled.fabric, {
    ...(counts.length > 0 && { gauge: counts.flatMap(({ count }) => count ?? []) }),
    substitutes,
  });
  const name = file === '-' ? 'stdin' : file;
  if (asked.format === 'json') await write(measureJson(sheet, name));
  else
    await write(
      sheetText(sheet, layoutFor(asked)) +
        errorsSaid(compiled.findings, { text, lines: compiled.lines, file: name }),
    );
  if (asked.schematic !== undefined) {
    const fault = await saveSchematic(sheet, asked.schematic, asked.units);
    if (fault) return complain(asked.schematic, fault);
  }
  const isEmpty = sheet.sizes.every(({ stitches }) => stitches === 0);
  return isEmpty || compiled.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
}

/** The put-ups asked for, or what is wrong with the words. */
function substitutesFrom(
  asked: readonly string[],
  yarns: readonly string[],
): NonNullable<MeasureOptions['substitutes']> | string {
  const found: { yarn: string | null; ball: PutUp }[] = [];
  for (const words of asked) {
    const [, name = null, putUp = words] = /^\s*([^:]{1,40}?)\s*:(.*)$/.exec(words) ?? [];
    const ball = putUpFromWords(putUp);
    if (!ball) return `"${words}" holds no put-up, such as "50 g / 110 m"`;
    if (name !== null && !yarns.includes(name)) {
      const known = yarns.filter((yarn) => yarn !== '');
      const instead = known.length > 0 ? `it has ${known.join(', ')}` : 'it names no yarns';
      return `the pattern works with no yarn "${name}": ${instead}`;
    }
    found.push({ yarn: name, ball });
  }
  return found;
}

/** One file a size: "bag.svg", or "hat-child.svg" for a pattern in sizes. `null`: all is written. */
async function saveSchematic(sheet: Sheet, path: string, units: Units): Promise<string | null> {
  for (const size of sheet.sizes) {
    const title = sheet.title ?? 'Untitled';
    const drawing = drawSchematic(size, { title, units });
    if (!drawing) return 'nothing can be drawn: no part has an outline that is known';
    const part = size.size.toLowerCase().replace(/[^a-z0-9]+/g, '-');
    const to = sheet.sizes.length === 1 ? path : path.replace(/(\.svg)?$/i, `-${part}.svg`);
    try {
      await saveWhole(to, toSvg(drawing));
    } catch (error) {
      return whyOf(error);
    }
  }
  return null;
}

const layoutFor = ({ units, color }: MeasureAsked) => ({
  units,
  width: Math.min(widthOfOutput(), 100),
  paint: wantsColour(color) ? coloured : plain,
});

function complain(what: string, why: string): 2 {
  process.stderr.write(`loopwright: ${what}: ${why}\n`);
  return 2;
}

/** Findings about figures in full; of the others, that there are errors. */
function errorsSaid(findings: readonly Finding[], source: FindingSource): string {
  const name = source.file;
  const ours = findings.filter(({ code }) => FIGURE_CODES.has(code));
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  const said = ours.map((finding) => formatFinding(finding, source));
  if (errors > 0) {
    said.push(
      `The pattern has ${errors} ${errors === 1 ? 'error' : 'errors'} that the figures lean on: loopwright check ${name}`,
    );
  }
  return said.length === 0 ? '' : `\n${said.join('\n\n')}\n`;
}

const FIGURE_CODES: ReadonlySet<string> = new Set([
  'gauge-unlikely',
  'swatch-short',
  'swatch-small',
  'size-off-gauge',
]);
