/**
 * The YAML block at the head of the file. What cannot be read is reported and left out, one entry
 * at a time; the rest of the file is read all the same.
 */
import type { Finding } from '../finding/index.ts';
import { frontMatterBroken, frontMatterUnclosed, unknownFrontMatterKey } from '../finding/index.ts';
import type { Span } from '../source/index.ts';
import { nearMiss } from './keys.ts';
import { type Entry, readYaml } from './yaml-entries.ts';

export interface FrontMatter {
  /** From the opening `---` to the end of the closing one; `null`: the file has none. */
  readonly span: Span | null;
  /** Where the pattern itself begins. */
  readonly bodyFrom: number;
  /** Entries by their key in lower case. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** The same as plain data. */
  readonly data: Readonly<Record<string, unknown>>;
  readonly findings: readonly Finding[];
}

/** A key at the margin, or a comment: what the first line of front matter looks like. */
const KEY_LINE = /^(?:#.*|["']?[\w][\w .-]{0,40}["']?[ \t]*:(?:[ \t].*)?)$/;

export function readFrontMatter(text: string): FrontMatter {
  const fences = findFences(text);
  if (!fences) return noFrontMatter();
  const { entries, faults } = readYaml(text.slice(fences.innerFrom, fences.innerTo));
  const from = fences.innerFrom;
  const findings: Finding[] = faults.map(({ at, reason }) =>
    frontMatterBroken({ from: from + at.from, to: from + at.to }, { reason }),
  );
  if (!fences.closed)
    findings.push(frontMatterUnclosed({ from: fences.from, to: fences.from + 3 }));
  const byKey = new Map<string, Entry>();
  const data: Record<string, unknown> = {};
  for (const read of entries) {
    const entry = moved(read, from);
    const key = entry.key.toLowerCase();
    const nearest = nearMiss(key);
    if (byKey.has(key)) {
      const reason = `"${entry.key}" stands there twice, and the first is used`;
      findings.push(frontMatterBroken(entry.keySpan, { reason }));
      continue;
    }
    byKey.set(key, entry);
    // A key such as "__proto__" is data like any other.
    Object.defineProperty(data, entry.key, { value: entry.value, enumerable: true });
    if (nearest) findings.push(unknownFrontMatterKey(entry.keySpan, { entry: entry.key, nearest }));
  }
  return {
    span: { from: fences.from, to: fences.to },
    bodyFrom: fences.to,
    entries: byKey,
    data,
    findings,
  };
}

const noFrontMatter = (): FrontMatter => ({
  span: null,
  bodyFrom: 0,
  entries: new Map(),
  data: {},
  findings: [],
});

const moved = (entry: Entry, by: number): Entry => ({
  ...entry,
  keySpan: { from: entry.keySpan.from + by, to: entry.keySpan.to + by },
  valueSpan: { from: entry.valueSpan.from + by, to: entry.valueSpan.to + by },
  members: entry.members.map(({ from, to }) => ({ from: from + by, to: to + by })),
});

interface Fences extends Span {
  readonly innerFrom: number;
  readonly innerTo: number;
  readonly closed: boolean;
}

/**
 * Pasted text may begin with a rule of dashes: it is front matter only if a key follows. Without a
 * closing fence it ends where lines stop looking like YAML, so that the pattern stays a pattern.
 */
function findFences(text: string): Fences | null {
  const from = text.startsWith('\uFEFF') ? 1 : 0;
  const opening = /^---[ \t]*(?:\r\n|\r|\n)/.exec(text.slice(from, from + 200));
  if (!opening) return null;
  const innerFrom = from + opening[0].length;
  let at = innerFrom;
  let looksLikeYaml = innerFrom;
  let first = true;
  let stopped = false;
  while (at < text.length) {
    const end = lineEnd(text, at);
    const line = text.slice(at, Math.min(end, at + 400));
    if (/^(?:---|\.\.\.)[ \t]*$/.test(line)) {
      return { from, to: end, innerFrom, innerTo: at, closed: true };
    }
    if (first && line.trim() !== '') {
      if (!KEY_LINE.test(line)) return null;
      first = false;
    }
    if (!stopped) {
      stopped = !first && !/^[ \t]+\S|^[-\]}]/.test(line) && !KEY_LINE.test(line);
      if (!stopped) looksLikeYaml = nextLine(text, end);
    }
    at = nextLine(text, end);
  }
  if (first) return null;
  return { from, to: looksLikeYaml, innerFrom, innerTo: looksLikeYaml, closed: false };
}

function lineEnd(text: string, from: number): number {
  let at = from;
  while (at < text.length && text.charCodeAt(at) !== 10 && text.charCodeAt(at) !== 13) at++;
  return at;
}

const nextLine = (text: string, end: number): number =>
  text.charCodeAt(end) === 13 && text.charCodeAt(end + 1) === 10
    ? end + 2
    : Math.min(end + 1, text.length);
