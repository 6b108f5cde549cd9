// npm run catalogue: makes src/finding/entries.ts, src/finding/messages.ts, the list of messages in
// that room's door and docs/findings/ from the catalogue of messages, one Markdown file a code in src/finding/catalogue/.
// `-- --check` writes nothing and fails when what is there is out of date. Node only, no packages.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { entryFaults, readEntry } from './catalogue/entry.mjs';
import { door, entriesFile, indexPage, messagesFile, page } from './catalogue/output.mjs';
import { root } from './tools.mjs';

const source = 'src/finding/catalogue';
const pages = 'docs/findings';
const checkOnly = process.argv.includes('--check');

const entries = readdirSync(join(root, source))
  .filter((name) => name.endsWith('.md'))
  .toSorted()
  .map((name) =>
    readEntry(name.replace(/\.md$/, ''), readFileSync(join(root, source, name), 'utf8')),
  );
const faults = entryFaults(entries);

if (faults.length > 0) {
  for (const fault of faults) console.error(`${source}/${fault}`);
  process.exitCode = 1;
} else {
  const wanted = new Map([
    ['src/finding/entries.ts', entriesFile(entries)],
    ['src/finding/messages.ts', messagesFile(entries)],
    ['src/finding/index.ts', door(textOf('src/finding/index.ts'), entries)],
    [`${pages}/README.md`, indexPage(entries)],
    ...entries.map((entry) => [`${pages}/${entry.code}.md`, page(entry)]),
  ]);
  const stale = [...wanted].filter(([path, text]) => textOf(path) !== text).map(([path]) => path);
  const needless = filesIn(pages).filter((path) => !wanted.has(path));
  if (checkOnly) report([...stale, ...needless]);
  else bringUpToDate(wanted, stale, needless);
}

function report(outOfDate) {
  for (const path of outOfDate) console.error(`${path} is out of date.`);
  if (outOfDate.length > 0) {
    console.error('Run: npm run catalogue');
    process.exitCode = 1;
  } else {
    console.log(`${entries.length} messages; what is made from them is up to date.`);
  }
}

function bringUpToDate(wanted, stale, needless) {
  for (const path of stale) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), wanted.get(path));
  }
  for (const path of needless) rmSync(join(root, path));
  console.log(
    `${entries.length} messages: wrote ${stale.length} files, removed ${needless.length}.`,
  );
}

function textOf(path) {
  const full = join(root, path);
  return existsSync(full) ? readFileSync(full, 'utf8') : undefined;
}

function filesIn(folder) {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder)).map((name) => `${folder}/${name}`);
}
