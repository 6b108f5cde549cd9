/** "Ears (make 2)", "Leg x2", "work both alike": how many pieces are made. Common practice. */

const WORDS: Readonly<Record<string, number>> = {
  both: 2,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
};

const N = String.raw`(\d{1,12}|both|two|three|four|five|six|seven|eight|nine|ten|twelve)`;

const HEADING: readonly RegExp[] = [
  new RegExp(
    String.raw`\b(?:make|work|crochet|knit|do|need|cut)\s+(?:of\s+)?${N}\b` +
      String.raw`(?!\s*(?:sts?|rows?|rnds?|rounds?|cm|in)\b)`,
    'i',
  ),
  // "Finished size 29 x 40" tells of no copies.
  new RegExp(String.raw`(?:(?<!\d\W{0,2})[x×✕*]\s?|\(\s*)${N}\s*(?:\)|$|[:.–—-]|\s-)`, 'i'),
  new RegExp(
    String.raw`\b${N}\s*(?:[x×✕](?=\W|$)(?!\W{0,2}\d)|(?:pieces?|parts?|pcs|times|alike|identical)\b)`,
    'i',
  ),
];

/** From the words of a heading; 1 where they say nothing. */
export function copiesIn(heading: string): number {
  for (const pattern of HEADING) {
    const n = numberOf(pattern.exec(heading)?.[1]);
    if (n !== null) return n;
  }
  return 1;
}

const LINE = new RegExp(
  [
    String.raw`^\W{0,2}(?:please\s+)?(?:make|work|crochet|you(?:'ll)? need(?: to make)?)\s+`,
    String.raw`(?:((?:another|a second)(?: one| piece)?)|${N}(\s+more)?)`,
    String.raw`(?:\s+(?:of (?:these|them|each)|the same(?: way)?|alike|identical|pieces?|parts?`,
    String.raw`|in (?:the )?same way))*\W{0,2}$`,
  ].join(''),
  'i',
);

/** From a line that says only this: "Make 2.", "Make 1 more the same." `null`: no such line. */
export function copiesLine(line: string): number | null {
  if (line.length > 60) return null;
  const found = LINE.exec(line);
  if (!found) return null;
  if (found[1]) return 2;
  const n = numberOf(found[2]);
  return n === null ? null : n + (found[3] ? 1 : 0);
}

function numberOf(word: string | undefined): number | null {
  if (word === undefined) return null;
  const n = WORDS[word.toLowerCase()] ?? Number(word);
  return n >= 1 ? n : null;
}
