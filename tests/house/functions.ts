// Finds the functions of a source file and how long they are.
import { mask } from './mask.ts';

/** A function with a body in brackets; an arrow with a bare expression is left out as it is short. */
export interface FunctionSize {
  /** The name, or "arrow" if it stands in an expression. */
  readonly name: string;
  /** Where it starts, counted from 1. */
  readonly line: number;
  /** From the line with its name or arrow to the closing bracket, both counted. */
  readonly lines: number;
}

const closers: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };
const notCalled = new Set(['if', 'for', 'while', 'switch', 'catch', 'with', 'return', 'await']);

/** All functions of a file: declarations, methods and arrows, those inside others too. */
export function functionsOf(text: string): readonly FunctionSize[] {
  const code = mask(text);
  const lineAt = lineCounter(code);
  const sizes: FunctionSize[] = [];
  function add(name: string, start: number, body: number): void {
    const line = lineAt(start);
    sizes.push({ name, line, lines: lineAt(closing(code, body)) - line + 1 });
  }
  for (const { index } of code.matchAll(/\(|=>/g)) {
    if (code[index] === '=') {
      const body = skipSpace(code, index + 2);
      if ((code[body] ?? '') in closers) add('arrow', index, body);
    } else {
      const name = nameBefore(code, index);
      const body = name === undefined ? undefined : bodyAfter(code, closing(code, index) + 1);
      if (name !== undefined && body !== undefined) add(name, index, body);
    }
  }
  return sizes;
}

/** The name before a bracket with parameters, type parameters passed over; none if it is a keyword. */
function nameBefore(code: string, open: number): string | undefined {
  const before = code.slice(Math.max(0, open - 400), open);
  const match = /([\w$]+)\s*(?:<[^()]*>)?\s*$/.exec(before);
  const name = match?.[1];
  return name === undefined || notCalled.has(name) ? undefined : name;
}

/**
 * Where the body opens after the parameters, or nothing if this was a call or a mere declaration.
 * A result type is passed over part by part: a brace where a type is due belongs to the type
 * (`f(): { a: number } {`), the next one opens the body.
 */
function bodyAfter(code: string, from: number): number | undefined {
  let at = skipSpace(code, from);
  if (code[at] === '{') return at;
  if (code[at] !== ':') return undefined;
  let typeIsDue = true;
  at = skipSpace(code, at + 1);
  while (at < code.length) {
    const char = code[at] ?? '';
    const word = /^[\w$.'"]+/.exec(code.slice(at, at + 80))?.[0];
    if (char === '{' && !typeIsDue) return at;
    if (word !== undefined) {
      typeIsDue = /^(is|extends|keyof|typeof|readonly|asserts|infer|unique)$/.test(word);
      at += word.length;
    } else if (char in closers) {
      typeIsDue = false;
      at = closing(code, at) + 1;
    } else if (char === '<') {
      at = closingAngle(code, at) + 1;
    } else if (/[|&?]/.test(char) || code.startsWith('=>', at)) {
      typeIsDue = true;
      at += char === '=' ? 2 : 1;
    } else {
      return undefined;
    }
    at = skipSpace(code, at);
  }
  return undefined;
}

/** The bracket that closes the one at `open`; the end of the text if none does. */
function closing(code: string, open: number): number {
  let depth = 0;
  for (let at = open; at < code.length; at += 1) {
    if (/[([{]/.test(code[at] ?? '')) depth += 1;
    if (/[)\]}]/.test(code[at] ?? '')) depth -= 1;
    if (depth === 0) return at;
  }
  return code.length;
}

function closingAngle(code: string, open: number): number {
  let depth = 0;
  for (let at = open; at < code.length; at += 1) {
    if (code[at] === '<') depth += 1;
    // The head of an arrow is no closing angle.
    if (code[at] === '>' && code[at - 1] !== '=') depth -= 1;
    if (depth === 0) return at;
  }
  return code.length;
}

function skipSpace(code: string, from: number): number {
  let at = from;
  while (/\s/.test(code[at] ?? '')) at += 1;
  return at;
}

function lineCounter(code: string): (offset: number) => number {
  const breaks = [...code.matchAll(/\n/g)].map(({ index }) => index);
  return (offset) => {
    let [low, high] = [0, breaks.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((breaks[middle] ?? 0) < offset) low = middle + 1;
      else high = middle;
    }
    return low + 1;
  };
}
