/**
 * A drawing as SVG 1.1 text. The same drawing gives the same bytes: numbers are rounded to a
 * thousandth of a millimetre, attributes stand in one order, and nothing is looked up outside.
 *
 * Ids are those of the drawing with its own id before them. An origin becomes `data-from` and
 * `data-to`: offsets in the manuscript, so that a box that is clicked leads back to its words.
 */
import type { Drawing, Group, Identity, Ink, Look, Mark, PathStep, Stroke } from './drawing.ts';
import { isMeasured, measureText } from './text.ts';

/** Greys, so that a print without colour loses nothing. On white: 17, 7, 2.4 and 1.2 to 1. */
const GREYS: Readonly<Record<Ink, string>> = {
  ink: '#1a1a1a',
  soft: '#595959',
  faint: '#a6a6a6',
  wash: '#e6e6e6',
  paper: '#ffffff',
};

/** The named family, then what machines without it have; layout leaves room for the widest. */
const FAMILY = "'Source Sans 3', 'Source Sans Pro', Arial, Helvetica, sans-serif";

/** SVG text, its size in millimetres, with title and description for screen readers. */
export function toSvg(drawing: Drawing): string {
  const { id, widthMm, heightMm, language } = drawing;
  const [width, height] = [short(widthMm), short(heightMm)];
  const clips = new Clips(id);
  const body = drawing.marks.map((mark) => written(mark, { id, clips })).join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" id="${escaped(id)}" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${escaped(id)}-title ${escaped(id)}-desc" xml:lang="${escaped(language)}" font-family="${FAMILY}">
<title id="${escaped(id)}-title">${escaped(drawing.title)}</title>
<desc id="${escaped(id)}-desc">${escaped(drawing.description)}</desc>
${clips.written()}<rect width="${width}" height="${height}" fill="${GREYS.paper}"/>
${body}
</svg>
`;
}

/** A length to the thousandth of a mm, without needless noughts; never "-0". */
function short(n: number): string {
  const rounded = Math.round(n * 1000) / 1000;
  return rounded === 0 ? '0' : String(rounded);
}

/** Text for XML: signs that XML 1.0 has no place for become a replacement sign. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '\ufffd')
    .replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

interface Scene {
  readonly id: string;
  readonly clips: Clips;
}

/** Clipping rectangles get numbers in the order met and are written before all else. */
class Clips {
  readonly #id: string;
  readonly #rects: string[] = [];

  constructor(id: string) {
    this.#id = id;
  }

  /** The reference to a new rectangle. */
  refer({ at: [x, y], widthMm, heightMm }: NonNullable<Group['clip']>): string {
    const id = `${escaped(this.#id)}-clip-${this.#rects.length + 1}`;
    const size = `width="${short(widthMm)}" height="${short(heightMm)}"`;
    this.#rects.push(
      `<clipPath id="${id}"><rect x="${short(x)}" y="${short(y)}" ${size}/></clipPath>`,
    );
    return `url(#${id})`;
  }

  written(): string {
    return this.#rects.length === 0 ? '' : `<defs>\n${this.#rects.join('\n')}\n</defs>\n`;
  }
}

function written(mark: Mark, scene: Scene): string {
  const who = identity(mark, scene);
  switch (mark.kind) {
    case 'group':
      return group(mark, scene);
    case 'path':
      return element('path', `${who} d="${pathData(mark.steps)}"${look(mark)}`, mark);
    case 'line': {
      const [[ax, ay], [bx, by]] = [mark.from, mark.to];
      const ends = `x1="${short(ax)}" y1="${short(ay)}" x2="${short(bx)}" y2="${short(by)}"`;
      return element('line', `${who} ${ends}${look(mark)}`, mark);
    }
    case 'circle': {
      const [x, y] = mark.centre;
      const size = `cx="${short(x)}" cy="${short(y)}" r="${short(mark.radiusMm)}"`;
      return element('circle', `${who} ${size}${look(mark)}`, mark);
    }
    case 'rect': {
      const [x, y] = mark.at;
      const size = `width="${short(mark.widthMm)}" height="${short(mark.heightMm)}"`;
      const corner = mark.cornerMm ? ` rx="${short(mark.cornerMm)}"` : '';
      const place = `x="${short(x)}" y="${short(y)}" ${size}${corner}`;
      return element('rect', `${who} ${place}${look(mark)}`, mark);
    }
    case 'text':
      return text(mark, who);
  }
}

function group(mark: Group, scene: Scene): string {
  const move = mark.at ? ` transform="translate(${short(mark.at[0])} ${short(mark.at[1])})"` : '';
  const clip = mark.clip ? ` clip-path="${scene.clips.refer(mark.clip)}"` : '';
  const inner = mark.marks.map((one) => written(one, scene)).join('\n');
  return `<g${identity(mark, scene)}${move}${clip}${look(mark)}>${titleOf(mark)}\n${inner}\n</g>`;
}

function text(mark: Extract<Mark, { kind: 'text' }>, who: string): string {
  const [x, y] = mark.at.map(short) as [string, string];
  const align = mark.align && mark.align !== 'start' ? ` text-anchor="${mark.align}"` : '';
  const weight = mark.weight === 'bold' ? ' font-weight="700"' : '';
  const turn = mark.turned ? ` transform="rotate(${short(mark.turned)} ${x} ${y})"` : '';
  const style = `font-size="${short(mark.sizeMm)}" fill="${GREYS[mark.ink ?? 'ink']}" stroke="none"`;
  return `<text${who} x="${x}" y="${y}" ${style}${align}${weight}${fitted(mark)}${turn}>${titleOf(mark)}${escaped(mark.text)}</text>`;
}

/** Few machines have the face that the layout was made for; another one is drawn in to its width. */
function fitted({ text, sizeMm, weight }: Extract<Mark, { kind: 'text' }>): string {
  if (text.length < LEAST_FITTED || !isMeasured(text)) return '';
  return ` textLength="${short(measureText(text, sizeMm, weight))}" lengthAdjust="spacingAndGlyphs"`;
}

/** Shorter words run over by less than the air around them. */
const LEAST_FITTED = 10;

const element = (name: string, attributes: string, mark: Identity): string =>
  mark.title ? `<${name}${attributes}>${titleOf(mark)}</${name}>` : `<${name}${attributes}/>`;

const titleOf = ({ title }: Identity): string => (title ? `<title>${escaped(title)}</title>` : '');

function identity({ id, origin }: Identity, scene: Scene): string {
  const named = id === undefined ? '' : ` id="${escaped(`${scene.id}-${id}`)}"`;
  return origin ? `${named} data-from="${origin.from}" data-to="${origin.to}"` : named;
}

function look({ stroke, fill }: Look): string {
  const filled = fill === undefined ? '' : ` fill="${fill === 'none' ? 'none' : GREYS[fill]}"`;
  if (stroke === undefined) return filled;
  return stroke === 'none' ? `${filled} stroke="none"` : `${filled}${strokeOf(stroke)}`;
}

function strokeOf({ ink, widthMm, dashMm, ends = 'flat' }: Stroke): string {
  const dash = dashMm ? ` stroke-dasharray="${dashMm.map(short).join(' ')}"` : '';
  const [cap, join] = ends === 'round' ? ['round', 'round'] : ['butt', 'miter'];
  return ` stroke="${GREYS[ink]}" stroke-width="${short(widthMm)}" stroke-linecap="${cap}" stroke-linejoin="${join}"${dash}`;
}

/** "M1 2L3 4Z". */
const pathData = (steps: readonly PathStep[]): string =>
  steps.map(([letter, ...numbers]) => letter + numbers.map(short).join(' ')).join('');
