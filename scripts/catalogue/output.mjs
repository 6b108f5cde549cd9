// What is made from the catalogue: two TypeScript files, laid out as the formatter would, and pages.

const made =
  '// Made by `npm run catalogue` from src/finding/catalogue/. Change the entries there.\n';

/** src/finding/entries.ts: code, severity and title of every message, as data. */
export function entriesFile(entries) {
  const items = entries.map(
    ({ code, severity, title, advice }) =>
      `  {\n    code: '${code}',\n    severity: '${severity}',\n${line('title', title)}${line('advice', plainly(advice))}  },\n`,
  );
  return `${made}import type { Severity } from './finding.ts';

/** An entry of the catalogue, less its explanation, which \`docs/findings/\` holds. */
export interface Entry {
  readonly code: string;
  readonly severity: Severity;
  /** In the forms of \`wording.ts\`. */
  readonly title: string;
  /** What to do about it, in a sentence or two. */
  readonly advice: string;
}

/** All messages, sorted by code. */
export const entries: readonly Entry[] = [
${items.join('')}];
`;
}

/** The formatter keeps a line of up to 100 columns whole and else breaks behind the colon. */
function line(key, words) {
  // Whichever quotation marks need fewer strokes before them, as the formatter has it.
  const isDouble = words.split("'").length > words.split('"').length;
  const quoted = isDouble ? JSON.stringify(words) : `'${words.replaceAll("'", "\\'")}'`;
  const whole = `    ${key}: ${quoted},`;
  return whole.length > 100 ? `    ${key}:\n      ${quoted},\n` : `${whole}\n`;
}

/** A paragraph on one line, without the marks of Markdown. */
const plainly = (paragraph) => paragraph.replaceAll(/\s*\n/g, ' ').replaceAll('`', '').trim();

/** src/finding/messages.ts: one typed function a code. */
export function messagesFile(entries) {
  const usesPlain = entries.some(({ words }) => words.length === 0);
  const usesNoun = entries.some(({ words }) => words.some(({ type }) => type === 'Noun'));
  const names = [
    'type Message',
    'message',
    ...(usesPlain ? ['type PlainMessage', 'plainMessage'] : []),
  ];
  const imports = [
    `import { ${names.join(', ')} } from './message.ts';\n`,
    ...(usesNoun ? ["import type { Noun } from './wording.ts';\n"] : []),
  ];
  return `${made}${imports.join('')}\n${entries.map(messageFunction).join('\n')}`;
}

/** The room's door with the list of messages brought up to date; the rest is written by hand. */
export function door(text, entries) {
  // Sorted as the formatter sorts what a door names: without regard to capitals.
  const names = entries
    .map(({ code }) => functionName(code))
    .toSorted((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1))
    .map((name) => `  ${name},\n`);
  return text.replace(/export \{[^}]*\} from '\.\/messages\.ts';/, () => {
    return `export {\n${names.join('')}} from './messages.ts';`;
  });
}

function functionName(code) {
  return code.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());
}

function messageFunction({ code, severity, title, words }) {
  const name = functionName(code);
  const head = docComment(`${severity}: ${title}`);
  if (words.length === 0) {
    return `${head}export const ${name}: PlainMessage = plainMessage('${code}');\n`;
  }
  const fields = words.map(
    (word) => `  ${word.name}${word.optional ? '?: ' : ': '}${word.type};\n`,
  );
  return `${head}export const ${name}: Message<{\n${fields.join('')}}> = message('${code}');\n`;
}

/** A doc comment of one line, or wrapped at 100 columns. */
function docComment(text) {
  if (text.length + 7 <= 100) return `/** ${text} */\n`;
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (` * ${last} ${word}`.length > 100) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return `/**\n${lines.map((line) => ` * ${line}\n`).join('')} */\n`;
}

/** docs/findings/CODE.md */
export function page({ code, severity, title, explanation, wrong, right, advice }) {
  return `# ${code}

*${severity}* · ${plainTitle(title)}

${explanation}

## It is said of this

${fenced(wrong)}

## Not of this

${fenced(right)}

## What to do

${advice}

[All findings](README.md)
`;
}

/** docs/findings/README.md */
export function indexPage(entries) {
  const meaning = {
    error:
      'It cannot be worked as written, was not understood, or a stated count is not what is made.',
    warning: 'It can be worked, but has two readings or is likely not meant.',
    note: 'A habit, or something to know.',
  };
  const sections = Object.entries(meaning).map(([severity, means]) => {
    const rows = entries
      .filter((entry) => entry.severity === severity)
      .map(
        ({ code, title }) =>
          `| [${code}](${code}.md) | ${plainTitle(title).replaceAll('|', '\\|')} |`,
      );
    const name = `${severity[0].toUpperCase()}${severity.slice(1)}s`;
    return `## ${name}\n\n${means}\n\n| code | what it says |\n| --- | --- |\n${rows.join('\n')}\n`;
  });
  return `# Findings

What \`loopwright check\` can say, one page a code, with an example of what it is said of and one of what
it is not said of. Codes stay the same from version to version.

${sections.join('\n')}`;
}

/** The title for readers: places to fill in become words in angle signs' stead, slanted. */
function plainTitle(title) {
  return title
    .replace(/\{(\w+)\|[^|}]*\|([^}]*)\}/g, '$2')
    .replace(/\{(\w+): \[(\w+)\]\}/g, '*$1* *$2*')
    .replace(/\{(\w+): ([a-z]+)\}/g, '*$1* $2')
    .replace(
      /\{(\w+)(?: #)?\}/g,
      (_, name) => `*${name.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`)}*`,
    );
}

/** The fence is longer than any inside, since an example may hold a chart block. */
function fenced(text) {
  return `\`\`\`\`text\n${text}\n\`\`\`\``;
}
