/** How a finding is made from its catalogue entry: the generated `messages.ts` is built on this. */
import type { Span } from '../source/index.ts';
import { type Entry, entries } from './entries.ts';
import type { Finding, Fix, Label } from './finding.ts';
import { piecesOf, say, type Words } from './wording.ts';

/** What may stand beside the title; all of it may be left out. */
export interface More {
  /** The arithmetic as a sentence, ending with a full stop. */
  readonly sum?: string;
  readonly labels?: readonly Label[];
  /** Ids of the rows concerned. */
  readonly rows?: readonly string[];
  /** Names of the sizes concerned; leave out when all are. */
  readonly sizes?: readonly string[];
  readonly fixes?: readonly Fix[];
}

/** Makes a finding at the words to change, its title filled with `words`. */
export type Message<W> = (at: Span, words: W, more?: More) => Finding;

/** The same for a title that has nothing to fill in. */
export type PlainMessage = (at: Span, more?: More) => Finding;

export function message<W extends Words>(code: string): Message<W> {
  const entry = entryOf(code);
  const title = piecesOf(entry.title);
  return (at, words, more) => finding(entry, at, say(title, words), more);
}

export function plainMessage(code: string): PlainMessage {
  const entry = entryOf(code);
  const title = say(piecesOf(entry.title), {});
  return (at, more) => finding(entry, at, title, more);
}

function entryOf(code: string): Entry {
  const entry = entries.find((candidate) => candidate.code === code);
  if (entry === undefined) throw new RangeError(`the catalogue has no entry "${code}"`);
  return entry;
}

function finding(entry: Entry, at: Span, message: string, more: More = {}): Finding {
  return {
    code: entry.code,
    severity: entry.severity,
    from: at.from,
    to: at.to,
    message,
    sum: more.sum ?? '',
    labels: more.labels ?? [],
    rows: more.rows ?? [],
    sizes: more.sizes ?? [],
    fixes: more.fixes ?? [],
  };
}
