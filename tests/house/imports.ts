// Finds what a source file imports.
import { mask } from './mask.ts';

/** One import or re-export. */
export interface Import {
  /** What is written between the quotes. */
  readonly target: string;
  /**
   * `type` is gone at run time. `{ type A }` is a value import all the same: under
   * verbatimModuleSyntax the file is still loaded. `effect` has no names, `load` is `import()`.
   */
  readonly kind: 'value' | 'type' | 'effect' | 'load';
  /** True for `export * from`, which hides what a door lets through. */
  readonly isStar: boolean;
  /** Counted from 1. */
  readonly line: number;
}

const statements = [
  /\bimport\s+(?<type>type\s+)?(?:[\w$]+\s*,?\s*)?(?:\*\s*as\s+[\w$]+\s*|\{[^}]*\}\s*)?from\s*['"]/g,
  /\bexport\s+(?<type>type\s+)?(?:(?<star>\*)(?:\s*as\s+[\w$]+)?|\{[^}]*\})\s*from\s*['"]/g,
  /\bimport\s*(?<effect>['"])/g,
  /\bimport\s*(?<load>\()\s*['"`]?/g,
];

/** All imports of a file, in the order of their place. */
export function importsOf(text: string): readonly Import[] {
  const code = mask(text);
  const found = statements.flatMap((statement) => [...code.matchAll(statement)]);
  return found
    .sort((a, b) => a.index - b.index)
    .map((match) => {
      const open = match.index + match[0].length;
      const { type, star, effect, load } = match.groups ?? {};
      return {
        target: text.slice(open, open + lengthToQuote(text, open)),
        kind: load ? 'load' : effect ? 'effect' : type ? 'type' : 'value',
        isStar: star !== undefined,
        line: text.slice(0, match.index).split('\n').length,
      };
    });
}

function lengthToQuote(text: string, from: number): number {
  const found = text.slice(from).search(/['"`)\n]/);
  return found < 0 ? text.length - from : found;
}
