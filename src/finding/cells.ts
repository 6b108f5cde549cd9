/**
 * How wide text is on a terminal, in cells: Chinese, Japanese, Korean and emoji take two, combining
 * marks none (Unicode Standard Annex 11, East Asian Width, and Technical Standard 51, emoji).
 * Rendering stays in step with what editors show only for fonts that keep to this.
 */

/** A sign as shown, and the cells that it takes. */
export interface Sign {
  readonly text: string;
  readonly cell: number;
  readonly width: number;
}

/** A line made fit to print: tabs as blanks, control signs replaced, and the cell of each offset. */
export interface Measured {
  readonly signs: readonly Sign[];
  /** Cell at which the UTF-16 unit of the line as given starts; one more entry for its end. */
  readonly cellAt: readonly number[];
}

export function measure(line: string): Measured {
  const cellAt: number[] = [];
  const signs: Sign[] = [];
  let cell = 0;
  let before = '';
  for (const sign of line) {
    for (let unit = 0; unit < sign.length; unit++) cellAt.push(cell);
    const width = sign === '\t' ? tab - (cell % tab) : cellsOf(printable(sign), before);
    signs.push({ text: sign === '\t' ? ' '.repeat(width) : printable(sign), cell, width });
    cell += width;
    before = sign;
  }
  cellAt.push(cell);
  return { signs, cellAt };
}

/** Cells that a text takes; for text without tabs. */
export function widthOf(text: string): number {
  return measure(text).cellAt.at(-1) ?? 0;
}

/**
 * Text that cannot steer the terminal: control signs, and those that turn the direction of writing,
 * are shown as a replacement sign. Line breaks become blanks.
 */
export function printableText(text: string): string {
  return Array.from(text.replace(/[\r\n\t]+/g, ' '), printable).join('');
}

/** A tab runs to the next multiple of four: common in editors, and narrower than a terminal's 8. */
const tab = 4;

const steering = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]|\p{Cs}/u;

const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u;

const none = /^[\p{Mn}\p{Me}\p{Cf}]$/u;

function printable(sign: string): string {
  return steering.test(sign) ? '\ufffd' : sign;
}

/** Joined emoji (zero-width joiner, skin tone) show as one; a flag is two letters of one cell each. */
function cellsOf(sign: string, before: string): number {
  if (sign <= '~') return 1;
  if (sign === '\ufe0f') return /\p{Emoji}/u.test(before) && !wide.test(before) ? 1 : 0;
  if (sign === '\u00ad') return 1;
  if (none.test(sign) || before === '\u200d' || /\p{Emoji_Modifier}/u.test(sign)) return 0;
  if (/\p{Regional_Indicator}/u.test(sign)) return 1;
  return wide.test(sign) ? 2 : 1;
}
