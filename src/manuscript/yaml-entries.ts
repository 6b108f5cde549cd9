/**
 * The top entries of a YAML mapping with their places. One broken entry does not take the others
 * with it: where the whole has a fault, each entry is read by itself.
 */
import { isMap, isScalar, isSeq, type ParsedNode, parseDocument } from 'yaml';
import type { Span } from '../source/index.ts';

export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: unknown;
  readonly valueSpan: Span;
  /** A plain value as written, so that version 1.0 does not become 1; `null` for lists and maps. */
  readonly written: string | null;
  /** For a list or a mapping: the span of each of its entries, key and value. */
  readonly members: readonly Span[];
}

interface YamlFault {
  readonly at: Span;
  readonly reason: string;
}

interface Reading {
  readonly entries: readonly Entry[];
  readonly faults: readonly YamlFault[];
}

/** Characters; the yaml package takes quadratic time on some inputs, and no real head is longer. */
const LONGEST = 32_768;
const DEEPEST = 64;
/** References (*name): the package looks each up by a walk over the whole. */
const MOST_REFERENCES = 64;

/** Spans are counted from the start of `source`. Never throws. */
export function readYaml(source: string): Reading {
  if (source.length > LONGEST) return refused(source, `it is longer than ${LONGEST} characters`);
  if (isTooDeep(source)) return refused(source, 'it is nested too deep');
  const whole = readPiece(source, 0);
  if (whole.faults.length === 0) return whole;
  const pieces = topPieces(source);
  const readings = pieces.map(({ from, to }) => readPiece(source.slice(from, to), from));
  const faults = readings.flatMap((reading) => reading.faults);
  return {
    entries: readings.flatMap((reading) => (reading.faults.length > 0 ? [] : reading.entries)),
    // A fault may show only in the whole, as two keys alike do not.
    faults: faults.length > 0 ? faults : whole.faults,
  };
}

const refused = (source: string, reason: string): Reading => ({
  entries: [],
  faults: [{ at: { from: 0, to: firstLineEnd(source) }, reason }],
});

function firstLineEnd(source: string): number {
  const end = source.search(/[\r\n]/);
  return end < 0 ? source.length : end;
}

/** The package recurses, and slows down without measure on runs of "? ? ?". */
function isTooDeep(source: string): boolean {
  if (/(?:[?-][ \t]+){17}/.test(source) || /^[ \t]{400}/m.test(source)) return true;
  if ((source.match(/(?:^|[\s,[{])\*[^\s*]/g)?.length ?? 0) > MOST_REFERENCES) return true;
  let depth = 0;
  let questions = 0;
  for (let i = 0; i < source.length; i++) {
    const sign = source[i];
    if (sign === '[' || sign === '{') depth++;
    else if (sign === ']' || sign === '}') depth = Math.max(0, depth - 1);
    else if (sign === '?' && /\s/.test(source[i + 1] ?? ' ')) questions++;
    if (depth > DEEPEST || questions > DEEPEST) return true;
  }
  return false;
}

/** Each entry with its indented lines: from a line at the margin to the next. */
function topPieces(source: string): Span[] {
  const starts: number[] = [];
  for (const found of source.matchAll(/^[^\s#\-\]}]/gm)) starts.push(found.index);
  return starts.map((from, i) => ({ from, to: starts[i + 1] ?? source.length }));
}

function readPiece(source: string, offset: number): Reading {
  // `uniqueKeys` compares every pair of keys; the last of two alike wins, as in the map above us.
  const document = parseDocument(source, {
    prettyErrors: false,
    logLevel: 'silent',
    uniqueKeys: false,
    resolveKnownTags: false,
  });
  const error = document.errors[0];
  if (error) return fault(error.pos[0] + offset, error.pos[1] + offset, sentence(error.message));
  const { contents } = document;
  if (contents === null) return { entries: [], faults: [] };
  if (!isMap(contents)) return fault(offset, offset + firstLineEnd(source), 'it has no keys');
  const entries: Entry[] = [];
  for (const { key, value } of contents.items) {
    const at = spanOf(key, offset);
    // The package throws on a reference (*name) that nothing defines or that grows without end.
    try {
      const plain = value === null ? null : value.toJS(document, { maxAliasCount: 20 });
      const name = isScalar(key) ? String(key.source ?? key.value) : String(key);
      entries.push({
        key: name,
        keySpan: at,
        value: plain,
        valueSpan: value === null ? { from: at.to, to: at.to } : spanOf(value, offset),
        written: isScalar(value) ? String(value.source ?? value.value ?? '') : null,
        members: membersOf(value, offset),
      });
    } catch {
      return fault(at.from, at.to, 'it refers to a name that is not defined');
    }
  }
  return { entries, faults: [] };
}

const fault = (from: number, to: number, reason: string): Reading => ({
  entries: [],
  faults: [{ at: { from, to: Math.max(to, from + 1) }, reason }],
});

function spanOf(node: ParsedNode, offset: number): Span {
  const [from, to] = node.range;
  return { from: from + offset, to: to + offset };
}

function membersOf(value: ParsedNode | null, offset: number): Span[] {
  if (isSeq(value)) return value.items.map((item) => spanOf(item, offset));
  if (!isMap(value)) return [];
  return value.items.flatMap(({ key, value: inner }) =>
    inner ? [{ from: spanOf(key, offset).from, to: spanOf(inner, offset).to }] : [],
  );
}

/** The package's message as the middle of a sentence. */
const sentence = (message: string): string =>
  message.charAt(0).toLowerCase() + message.slice(1).replace(/\.$/, '');
