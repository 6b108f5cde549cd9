// Reads one entry of the catalogue, and says what is wrong with it.

const shape =
  /^---\nseverity: (\w+)\ntitle: '((?:[^'\n]|'')+)'\n---\n\n([\s\S]+?)\n\n## Wrong\n\n````(pattern|command)\n([\s\S]+?)\n````\n\n## Right\n\n````\4\n([\s\S]+?)\n````\n\n## What to do\n\n([\s\S]+)\n$/;

/** The same forms as in src/finding/wording.ts, which fills them. */
const place =
  /\{(?<name>\w+)(?:(?<number> #)|: \[(?<given>\w+)\]|: (?<fixed>[a-z]+)|\|(?<one>[^|{}]*)\|(?<many>[^|{}]*))?\}/g;

/** Words of compilers, which mean nothing to a designer, and words that blame. */
const unwanted =
  /\b(invalid|illegal|unexpected|expected|parse[drs]?|token|syntax|semantic|node|compiler?|wrongly|mistake|you)\b|!/i;

/** The entry as a value; one that does not have the shape has `fault` and little else. */
export function readEntry(code, text) {
  const found = shape.exec(text);
  if (found === null)
    return { code, fault: 'does not have the parts that an entry needs, in order' };
  const [, severity, quoted, explanation, kind, wrong, right, advice] = found;
  const title = quoted.replaceAll("''", "'");
  return { code, severity, title, explanation, kind, wrong, right, advice, words: wordsOf(title) };
}

/** The words that a title asks for, each with its TypeScript type, sorted by name. */
function wordsOf(title) {
  const words = new Map();
  const leftOut = [...title.matchAll(/(?<!: )\[([^\]]*\{[^\]]*)\]/g)].map((found) => found[1]);
  for (const { groups } of title.matchAll(place)) {
    const { name, given } = groups;
    const isNumber = ['number', 'fixed', 'given', 'one'].some((form) => groups[form] !== undefined);
    const optional = leftOut.some((part) => part.includes(`{${name}`));
    const known = words.get(name);
    const type = isNumber ? 'number' : 'string';
    words.set(name, {
      name,
      type,
      optional: optional && (known?.optional ?? true),
      clash: known?.clash || (known !== undefined && known.type !== type),
    });
    if (given !== undefined) words.set(given, { name: given, type: 'Noun', optional: false });
  }
  return [...words.values()].toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

/** All that is wrong with the catalogue, each as "file what". */
export function entryFaults(entries) {
  const titles = new Map();
  return entries.flatMap((entry) => {
    const faults = entry.fault ? [entry.fault] : faultsOf(entry);
    const twin = titles.get(entry.title);
    if (twin !== undefined && entry.title) faults.push(`has the same title as ${twin}`);
    titles.set(entry.title, entry.code);
    return faults.map((fault) => `${entry.code}.md ${fault}`);
  });
}

function faultsOf({ code, severity, title, explanation, wrong, right, advice, words }) {
  const unfilled = title.replace(place, '').replace(/\[|\]/g, '');
  const rules = [
    [/^[a-z]+(-[a-z]+)*$/.test(code), 'is not named in kebab-case'],
    [['error', 'warning', 'note'].includes(severity), `has the severity "${severity}"`],
    [title.endsWith('.'), 'has a title that is no sentence'],
    [/^["{A-Z]/.test(title), 'has a title that begins in lower case'],
    [!/[{}]/.test(unfilled), 'has a placeholder of a form that wording.ts does not know'],
    [words.every(({ clash }) => !clash), 'uses one placeholder as a number and as words'],
    [!unwanted.test(unfilled), `has the word "${unwanted.exec(unfilled)?.[0]}" in its title`],
    [!/!/.test(`${explanation}${advice}`), 'has an exclamation mark'],
    [wrong !== right, 'has the same example for wrong and right'],
  ];
  const long = [explanation, advice]
    .flatMap((part) => part.split('\n'))
    .some((l) => l.length > 104);
  return [
    ...rules.filter(([holds]) => !holds).map(([, fault]) => fault),
    ...(long ? ['has a line of over 104 characters'] : []),
  ];
}
