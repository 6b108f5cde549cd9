/**
 * The yarn that a heading or a row's label names: "Strip (in B)", "Ears (make 2, with colour A)",
 * "Border in white", "Row 3 (B)", "Rnd 4 - MC".
 */
import { isColour } from './yarn-name.ts';

const WITH = '(?:(?:work(?:ed)?|made|all|both|each)\\s)?(?:(?:in|with|using)\\s)';
const KIND = '(?:colou?r|yarn|shade|thread)';
const NAME = String.raw`\p{L}[\p{L}\d]*(?:[ -]\p{L}[\p{L}\d]*){0,2}`;
const CLAUSE = new RegExp(
  `^(?<with>${WITH})?(?:the\\s)?(?<kind>${KIND}\\s)?(?<name>${NAME}?)(?:\\s(?:${KIND}|throughout|only))*$`,
  'iu',
);
const AT_END = new RegExp(`\\s(${WITH}(?:the\\s)?(?:${KIND}\\s)?${NAME})\\W*$`, 'iu');

/**
 * Name of the yarn as the pattern's materials spell it, else as written; `null` where no yarn is named.
 * `words`: a heading, or a label without its colon.
 */
export function yarnSaid(words: string, known: ReadonlySet<string>): string | null {
  if (words.length > 120) return null;
  for (const clause of clausesOf(words)) {
    const groups = CLAUSE.exec(clause)?.groups;
    const yarn = groups?.name ? yarnNamed(groups.name, groups, known) : null;
    if (yarn !== null) return yarn;
  }
  return null;
}

const SIGNS = /[([–—:,]|\s-|\s(?:in|with|using)\s/i;

/** What stands in brackets or behind a dash, cut at commas; last, "in B" at the very end. */
function clausesOf(words: string): readonly string[] {
  // Each row's label is asked: a look for its signs tells that most have none.
  if (!SIGNS.test(words)) return [];
  const inside = /[([]/.test(words)
    ? [...words.matchAll(/[([]([^()[\]]*)[)\]]/g)].map((found) => found[1] ?? '')
    : [];
  const behind = /(?:\s[–—-]\s?|[–—]|:|,)\s*([^–—:]*)$/.exec(words)?.[1] ?? '';
  const end = AT_END.exec(words)?.[1] ?? '';
  return [...inside, behind, end].flatMap((each) =>
    each
      .split(/[,;/&+]|\band\b/i)
      .map((clause) => clause.trim().replace(/\s+/g, ' '))
      .filter((clause) => clause !== ''),
  );
}

function yarnNamed(
  name: string,
  { with: preposition, kind }: { readonly with?: string; readonly kind?: string },
  known: ReadonlySet<string>,
): string | null {
  if (known.has(name)) return name;
  const lower = name.toLowerCase();
  for (const each of known) {
    if (each.toLowerCase() === lower && (each.length > 1 || kind)) return each;
  }
  if (kind && /^[a-z]$/i.test(name)) return name.toUpperCase();
  if (/^(?:MC|CC\d?)$/.test(name)) return name;
  return preposition && isColour(lower) ? name : null;
}

/**
 * Yarns of a sentence that tells how a part is made, one for each copy: "Make the back in A and the front
 * in B", "Make 3 in A and 2 in B", "Work in colour B." Empty where none is named; one alone is for all.
 */
export function yarnsOfCopies(sentence: string, known: ReadonlySet<string>): readonly string[] {
  const isTold = /^\W*(?:make|work|crochet|use)\b/i.test(sentence);
  return sentence.length > 200 || !isTold ? [] : yarnsCounted(sentence, known);
}

/** "Squares (make 12 in A, 13 in B)": the yarn of each copy; empty where a heading does not count them so. */
export function yarnsOfHeading(heading: string, known: ReadonlySet<string>): readonly string[] {
  if (heading.length > 120 || !/\d\s(?:in|with)\b/i.test(heading)) return [];
  const found = yarnsCounted(heading, known);
  return found.length > 1 ? found : [];
}

function yarnsCounted(words: string, known: ReadonlySet<string>): readonly string[] {
  return [...words.matchAll(COPY)].flatMap(({ groups }) => {
    const yarn = groups?.name ? yarnNamed(groups.name, groups, known) : null;
    const n = Number(groups?.n ?? 1);
    return yarn === null || n > MOST_COPIES ? [] : Array.from({ length: n }, () => yarn);
  });
}

const MOST_COPIES = 200;
const COPY = new RegExp(
  `(?:\\b(?<n>\\d{1,3})\\s)?\\b(?<with>in|with|using)\\s(?:the\\s)?(?<kind>${KIND}\\s)?(?<name>\\p{L}[\\p{L}\\d]*)`,
  'giu',
);
