// Blanks out of TypeScript text what is not code, so that a plain search finds code only.
// The house rules need keywords, brackets and lines, not a tree; TypeScript 7 brings no parser API.

/**
 * The same text with comments, regular expressions and the insides of strings and templates turned
 * to spaces. Length and line breaks stay, so an offset or a line means the same in both. The quotes
 * stay; code inside `${}` stays too.
 */
export function mask(text: string): string {
  const out = text.split('');
  // One entry for each open `${`: how many braces are open inside it.
  const templates: number[] = [];
  let at = 0;
  while (at < text.length) {
    const start = at;
    const char = text[at];
    const two = text.slice(at, at + 2);
    if (two === '//') at = blank(out, start, endOfLine(text, at));
    else if (two === '/*') at = blank(out, start, after(text, '*/', at + 2));
    else if (char === "'" || char === '"') at = blankInside(out, start, endOfString(text, at));
    else if (char === '/' && startsRegex(out, at)) at = blank(out, start, endOfRegex(text, at));
    else if (char === '`') at = template(text, out, at, templates);
    else if (char === '}' && templates.at(-1) === 0) {
      templates.pop();
      at = template(text, out, at, templates);
    } else {
      at += 1;
      const open = templates.length - 1;
      if (open >= 0 && char === '{') templates[open] = (templates[open] ?? 0) + 1;
      if (open >= 0 && char === '}') templates[open] = (templates[open] ?? 0) - 1;
    }
  }
  return out.join('');
}

/** Blanks from a quote, or the brace that ends a `${}`, to the closing quote or the next `${`. */
function template(text: string, out: string[], from: number, templates: number[]): number {
  let at = from + 1;
  while (at < text.length && text[at] !== '`') {
    if (text.startsWith('${', at)) {
      templates.push(0);
      blank(out, from + 1, at);
      return at + 2;
    }
    at += text[at] === '\\' ? 2 : 1;
  }
  return blankInside(out, from, Math.min(at + 1, text.length));
}

function blank(out: string[], from: number, to: number): number {
  for (let i = from; i < to; i += 1) if (out[i] !== '\n') out[i] = ' ';
  return to;
}

function blankInside(out: string[], from: number, to: number): number {
  blank(out, from + 1, to - 1);
  return to;
}

function after(text: string, mark: string, from: number): number {
  const found = text.indexOf(mark, from);
  return found < 0 ? text.length : found + mark.length;
}

function endOfLine(text: string, from: number): number {
  const found = text.indexOf('\n', from);
  return found < 0 ? text.length : found;
}

function endOfString(text: string, from: number): number {
  let at = from + 1;
  while (at < text.length && text[at] !== text[from] && text[at] !== '\n') {
    at += text[at] === '\\' ? 2 : 1;
  }
  return Math.min(at + 1, text.length);
}

/** A slash divides after a value and starts a regular expression after anything else. */
function startsRegex(out: readonly string[], at: number): boolean {
  let back = at - 1;
  while (back >= 0 && /\s/.test(out[back] ?? '')) back -= 1;
  const last = out[back] ?? '';
  if (!/[\w$)\]}'"`]/.test(last)) return true;
  const word = /[\w$]+$/.exec(out.slice(Math.max(0, back - 12), back + 1).join(''))?.[0];
  return word !== undefined && /^(return|typeof|case|in|of|await|void|yield)$/.test(word);
}

function endOfRegex(text: string, from: number): number {
  let at = from + 1;
  let inClass = false;
  while (at < text.length && text[at] !== '\n' && (inClass || text[at] !== '/')) {
    if (text[at] === '[') inClass = true;
    if (text[at] === ']') inClass = false;
    at += text[at] === '\\' ? 2 : 1;
  }
  return Math.min(at + 1, text.length);
}
