/** A reader of JSON written by hand, as a yardstick: nodes with ranges, no checks, no values. */

export interface JsonNode {
  readonly kind: string;
  readonly from: number;
  readonly to: number;
  readonly children: readonly JsonNode[];
}

export function readJson(all: string): JsonNode {
  let at = 0;
  return value();

  function value(): JsonNode {
    const from = at;
    const sign = all[at];
    if (sign === '{' || sign === '[') return list(sign === '{' ? 'object' : 'array', from);
    if (sign === '"') {
      for (at++; all[at] !== '"'; at++) if (all[at] === '\\') at++;
      at++;
      return { kind: 'string', from, to: at, children: [] };
    }
    while (at < all.length && all[at] !== ',' && all[at] !== ']' && all[at] !== '}') at++;
    return { kind: 'number', from, to: at, children: [] };
  }

  function list(kind: string, from: number): JsonNode {
    const children: JsonNode[] = [];
    at++;
    while (all[at] !== '}' && all[at] !== ']') {
      children.push(value());
      while (all[at] === ',' || all[at] === ':') at++;
    }
    at++;
    return { kind, from, to: at, children };
  }
}
