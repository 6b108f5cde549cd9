// Findings as people see them. A case in tests/cases/finding/ holds the manuscript's text with the
// places of the finding marked in it, the finding, and what is shown. UPDATE=1 accepts what is shown.
//
//     <<words to change>>   {{words of a label|text of the label}}
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { type Finding, formatFinding, type Label } from '../../src/finding/index.ts';
import { lineStarts, type Span } from '../../src/source/index.ts';

const folder = fileURLToPath(new URL('../cases/finding/', import.meta.url));

interface Case {
  readonly text: string;
  readonly finding: Finding;
  readonly layout: { readonly width?: number; readonly file?: string };
  readonly shown: string;
  /** The case's file up to what is shown. */
  readonly head: string;
}

function readCase(name: string): Case {
  const content = readFileSync(folder + name, 'utf8');
  const [, marked = '', said = '', shown = ''] =
    /^== pattern\n([\s\S]*)\n== finding\n([\s\S]*)\n== shown\n([\s\S]*?)\n?$/.exec(content) ?? [];
  const { text, main, labels } = unmark(marked);
  const entries = said.split('\n').map((line) => line.split(/: (.*)/s, 2) as [string, string]);
  const one = (key: string) => entries.find(([found]) => found === key)?.[1] ?? '';
  const all = (key: string) => entries.filter(([found]) => found === key).map(([, value]) => value);
  const [severity, code] = one('kind').split(' ') as [Finding['severity'], string];
  return {
    text,
    finding: {
      severity,
      code,
      ...main,
      labels,
      message: one('message'),
      sum: one('sum'),
      sizes: all('size'),
      fixes: all('fix').map((title) => ({ title, edits: [] })),
      rows: [],
    },
    layout: {
      ...(one('width') === '' ? {} : { width: Number(one('width')) }),
      ...(one('file') === '' ? {} : { file: one('file') }),
    },
    shown,
    head: content.slice(0, content.indexOf('== shown\n') + '== shown\n'.length),
  };
}

/** Takes the marks out of a text. "\t" and "\e" stand for a tab and an escape sign. */
function unmark(marked: string): { text: string; main: Span; labels: readonly Label[] } {
  let text = '';
  let main: Span = { from: 0, to: 0 };
  const labels: Label[] = [];
  const real = marked.replaceAll('\\t', '\t').replaceAll('\\e', '\u001b');
  for (const [, before = '', words, labelled, label] of real.matchAll(
    /([\s\S]*?)(?:<<([\s\S]*?)>>|\{\{([\s\S]*?)\|(.*?)\}\}|$)/g,
  )) {
    text += before;
    const at = text.length;
    text += words ?? labelled ?? '';
    if (words !== undefined) main = { from: at, to: text.length };
    if (labelled !== undefined) labels.push({ from: at, to: text.length, text: label ?? '' });
  }
  return { text, main, labels };
}

describe('a finding as text', () => {
  test.each(readdirSync(folder).filter((name) => name.endsWith('.txt')))('%s', (name) => {
    const { text, finding, layout, shown, head } = readCase(name);
    const { file, ...rest } = layout;
    const source = { text, lines: lineStarts(text), ...(file === undefined ? {} : { file }) };
    const actual = formatFinding(finding, source, rest);
    const failed = `${folder}${name}.actual`;
    rmSync(failed, { force: true });
    if (process.env.UPDATE === '1') writeFileSync(folder + name, `${head}${actual}\n`);
    else if (actual !== shown) writeFileSync(failed, `${head}${actual}\n`);
    if (process.env.UPDATE !== '1') expect(actual).toBe(shown);
  });
});
