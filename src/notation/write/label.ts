/** "Rnd 4:", "Rows 2-5 (WS):", "Next 6 rows:", "Size M only, Row 11:". */
import type { RowLabel } from '../tree.ts';
import { isMany, numberBefore, writeRows } from './numbers.ts';
import type { Voice } from './voice.ts';

/** The label with its colon. */
export function writeLabel(label: RowLabel, voice: Voice): string {
  const sizes = label.sizes === '' ? '' : `${label.sizes}: `;
  const side = label.side === null ? '' : ` (${label.side})`;
  const remark = label.numbers.length === 0 ? '' : remarkOf(label);
  return `${sizes}${named(label, voice)}${side}${remark}:`;
}

function named(label: RowLabel, voice: Voice): string {
  if (label.next !== null)
    return `Next ${numberBefore(label.next, voice)}${word(label, isMany(label.next)).toLowerCase()}`;
  if (label.numbers.length === 0) return wordsOf(label);
  return `${numbered(label)}${everyOther(label)}`;
}

function numbered(label: RowLabel): string {
  const many = label.numbers.length > 1 || label.openEnd || label.lastBySize !== null;
  const start = word(label, many);
  const numbers = label.openEnd ? `${label.numbers[0] ?? ''}+` : bySize(label);
  if (start !== '') return `${start} ${numbers}`;
  // "R4" may be a row or a round; the letter is kept, since a bare number looks like a list.
  return /^r/i.test(label.text) ? `R${numbers}` : numbers;
}

/** "4-9 (5-10, 6-11)", or "4-9 (10, 11)": the last number of each size stands where the range ends. */
function bySize(label: RowLabel): string {
  const [first, ...others] = label.lastBySize ?? [];
  const firsts = label.firstBySize;
  if (first !== undefined && firsts) {
    const ranges = others.map((last, at) => `${firsts[at + 1]}-${last}`);
    return `${firsts[0]}-${first} (${ranges.join(', ')})`;
  }
  if (first === undefined) return writeRows(label.numbers);
  return `${label.numbers[0] ?? first}-${first} (${others.join(', ')})`;
}

function everyOther(label: RowLabel): string {
  if (label.every === null) return '';
  return ` and all ${label.every} ${word(label, true).toLowerCase()}`;
}

function word(label: RowLabel, many: boolean): string {
  if (label.word === '') return '';
  return `${label.word === 'round' ? 'Rnd' : 'Row'}${many ? 's' : ''}`;
}

/** "(WS, colour B)": the side is printed by itself. */
const SIDE_FIRST = /([([])\s*(?:RS|WS|right side|wrong side)\s*,\s*/gi;
const SIDE = /\s*[([]\s*(?:RS|WS|right side|wrong side)\s*[)\]]/gi;

/** "Rnd 14 – Drawstring", "Row 6 (dec row)": what the label says beside number and side. */
function remarkOf(label: RowLabel): string {
  const words = label.text.replace(SIDE, '').replace(SIDE_FIRST, '$1');
  const said = /(?:\s[–—-]\s*|[([])([a-z][^()[\]]*?)[)\]]?\s*$/i.exec(words);
  return said === null ? '' : ` (${said[1]})`;
}

/** A label without a number ("Set-up row", "Start") is its own words, without the side mark. */
const wordsOf = (label: RowLabel): string =>
  label.text.replace(SIDE, '').replace(/\s+/g, ' ').trim();
