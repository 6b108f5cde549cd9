/**
 * "Round 2" above "1. Chain 2." and "2. Work 2 dc in each st.": the numbers of a photo tutorial's
 * steps, which count again in every round. They give way to blanks, so that the steps are the round's.
 */
/** A list that begins with 1: without one there are no steps. */
const LIST = /^[ \t]*(?:1[.)]|[Ss]tep 1 ?[:.)–-])[ \t]+\S/m;

/**
 * A row's label with a line of its own, or with what the row is of: "Round 1 of Double Crochets", "Round 2:
 * Opening the Corners".
 */
const ALONE =
  /^[ \t]*(?:[Rr]ounds?|ROUND|[Rr]nds?|RND|[Rr]ows?|ROW) ?\d{1,3}(?: ?[:.]?| (?:of|-|–|—) [^\d\n:]{2,44}?| ?: [A-Z][^\d\n:;,.*([]{4,60}?(?:\([^()\n]{1,24}\))?)[ \t]*\r?$/gm;

/** A name of a row holds no orders: "Round 2: Sc in each st around" works. */
const ORDERS = /\b(?:ch|chain|sc|dc|hdc|tr|htr|inc|dec|join|turn|repeat|rep|work|each|next)\b/i;

const BEHIND_NUMBER = /^\s*\S+ ?\d+ ?[:.]?/;

const LISTED = /^[ \t]*\d{1,2}[.)][ \t]+(?=\S)/gm;

export function withoutStepNumbers(text: string): string {
  if (!LIST.test(text)) return text;
  let plain = '';
  let done = 0;
  ALONE.lastIndex = 0;
  for (let found = ALONE.exec(text); found; found = ALONE.exec(text)) {
    const end = found.index + found[0].length;
    const numbers = stepNumbers(text, end);
    if (numbers.length === 0 || (found[0].includes(': ') && ORDERS.test(found[0]))) continue;
    const name = found.index + (BEHIND_NUMBER.exec(found[0])?.[0].length ?? 0);
    plain += text.slice(done, name) + ' '.repeat(end - name);
    done = end;
    for (const { from, to } of numbers) {
      plain += text.slice(done, from) + ' '.repeat(to - from);
      done = to;
    }
    ALONE.lastIndex = done;
  }
  if (done === 0) return text;
  // Where rounds have steps, other lists of the text have them too: "1. Make a magic ring."
  return (plain + text.slice(done)).replace(LISTED, (whole) => ' '.repeat(whole.length));
}

/** "2. Round 1: …", a step of a list with a label of its own. */
const LABELLED_STEP = /^[ \t]*\d{1,2}[.)][ \t]+(?:round|rnd|row)s? ?\d/im;
const STEP = /^[ \t]*(\d{1,2})[.)][ \t]+(?=\S)/;

/**
 * "1. Chain: …", "2. Round 1: …", "3. Turning the corner: …": where one step has a label of its own, the
 * numbers of its list are none of rows, and give way to blanks.
 */
export function withoutLabelledSteps(text: string): string {
  if (!LABELLED_STEP.test(text)) return text;
  const lines = text.split('\n');
  const goesOn = new Set<number>();
  for (let first = 0; first < lines.length; first++) {
    if (STEP.exec(lines[first]!)?.[1] !== '1') continue;
    const steps = [first];
    for (let i = first + 1; i < lines.length; i++) {
      const number = STEP.exec(lines[i]!)?.[1];
      if (number === undefined && lines[i]!.trim() !== '') break;
      if (number !== undefined && Number(number) !== steps.length + 1) break;
      if (number !== undefined) steps.push(i);
    }
    const label = steps.findIndex((i) => LABELLED_STEP.test(lines[i]!));
    if (label < 0) continue;
    for (const [k, i] of steps.entries()) {
      // Steps without a label go on with the row above them.
      if (k > label && !LABELLED_STEP.test(lines[i]!)) goesOn.add(i);
      lines[i] = lines[i]!.replace(STEP, (whole) => ' '.repeat(whole.length));
    }
  }
  return lines.map((line, i) => (i === 0 ? '' : goesOn.has(i) ? ' ' : '\n') + line).join('');
}

/** "First Corner: ch 3 …": what the step is called. */
const TITLE = /^(?!Row|Rnd|Round|Note)[A-Z][a-z]+(?: [A-Za-z]+){0,3}: +(?=\S)/;

/** Where "1.", "2." and so on stand, each at the start of its line, with the name of the step. */
function stepNumbers(text: string, from: number): { from: number; to: number }[] {
  const numbers: { from: number; to: number }[] = [];
  let at = text.indexOf('\n', from) + 1;
  let isTold = false;
  while (at > 0 && at < text.length) {
    const next = text.indexOf('\n', at);
    const to = next < 0 ? text.length : next;
    const line = text.slice(at, Math.min(to, at + 80));
    const step = /^[ \t]*(?:step )?(\d{1,2})(?:[.)]|(?<=step \d{1,2}) ?[:–-])[ \t]/i.exec(line);
    if (step && Number(step[1]) === numbers.length + 1) {
      const title = TITLE.exec(line.slice(step[0].length))?.[0].length ?? 0;
      numbers.push({ from: at, to: at + step[0].length + title });
    } else if (line.trim() !== '') {
      // "We work into the corners now." above the first step.
      if (numbers.length > 0 || isTold || !/^[ \t]*[A-Z][^\d]*\.\s*$/.test(line)) break;
      isTold = true;
    }
    at = next < 0 ? 0 : next + 1;
  }
  return numbers;
}

const STEP_LINE = /^[ \t]*step (\d{1,2})\s?[:.)–—-]/gim;
const REFERS = /[.!\s][ \t]repeat steps? (\d{1,2})(?: ?(?:&|and|-|–|to) ?(\d{1,2}))?(?=[\s,.])/gi;
/** What a row of a step works. */
const WORKS =
  /\b(?:sc|dc|hdc|htr|tr|crochet|treble|stitch(?:es)?)\b.*\b(?:each|every|across|around|end|all)\b/is;

/**
 * "Step 4: … Repeat steps 3 & 4 until …" where each of these steps is a row: the last two rows, in an
 * order of its own. Only the last steps can be told so, and all must be rows.
 */
export function withStepReferences(text: string): string {
  const steps = new Map<number, string>();
  const starts = [...text.matchAll(STEP_LINE)];
  for (const [i, found] of starts.entries())
    steps.set(Number(found[1]), text.slice(found.index, starts[i + 1]?.index ?? text.length));
  return text.replace(REFERS, (whole, from: string, to: string | undefined, at: number) => {
    const here = Number(starts.findLast((found) => found.index < at)?.[1] ?? 0);
    const first = Number(from);
    const last = Number(to ?? from);
    const own = steps
      .get(here)
      ?.slice(0, at - (starts.find((s) => Number(s[1]) === here)?.index ?? 0));
    const ends =
      last === here ? WORKS.test(own ?? '') : last === here - 1 && !WORKS.test(own ?? '');
    if (here === 0 || !ends || first > last) return whole;
    for (let n = first; n < last; n++) if (!WORKS.test(steps.get(n) ?? '')) return whole;
    const rows = last - first + 1;
    const order = `\n\nRep last ${rows > 1 ? `${rows} rows` : 'row'}`;
    return order.length > whole.length ? whole : order.padEnd(whole.length);
  });
}

const TITLED_ROUND =
  /^([ \t]*)((?:[Ss]tep|STEP) ?\d{1,2} ?[–—:-] ?)?((?:Round|Rnd|Row|ROUND|RND|ROW) ?\d{1,3})(?: ?[–—:-] ?([A-Z][a-z]+(?: [\w&'’()/-]+){0,6})| (\([A-Z][^()\n]{2,48}\)))[ \t]*\r?\n((?:[ \t]*[A-Z][^\n\d*]*\.[ \t]*\r?\n)?)((?:[ \t]*[-•*] [^\n]*(?:\n|$))+)/gm;

/**
 * "Round 2 — Form 6 base points" above "- Ch 3, …": what the round is about gives way to blanks, and its
 * steps stand in one line.
 */
export const withoutRoundTitles = (text: string): string =>
  text.replace(TITLED_ROUND, (whole, ...found: (string | undefined)[]) => {
    const [gap = '', step = '', label = '', title, bracket, , steps = ''] = found;
    if (title && ORDERS.test(title)) return whole;
    if (!title && !bracket) return whole;
    const head = `${gap}${' '.repeat(step.length)}${label}:`;
    const line = steps.replace(NEXT_STEP, sentences).replace(STEP_NAME, inkless);
    return head.padEnd(whole.length - steps.length) + line.replace(/(?<=[.:] *Work):(?= )/g, ' ');
  });

/** The list sign of a step, with the end of the line above it. */
const NEXT_STEP = /(?:^|([^\n])(\r?\n))([ \t]*)[-•*] /g;

/** "- Ch 1" and "- Work:" below each other: sentences, unless the one above leads to the next. */
function sentences(_: string, before = '', line: string | undefined, gap: string): string {
  if (line === undefined) return `${gap}  `;
  const ends = /[.:;,!?]/.test(before) ? ' ' : '.';
  return `${before}${ends}${' '.repeat(line.length + gap.length + 1)}`;
}

/** "Travel: sl st …", "First Corner: ch 3 …": what a step is called, before its words. */
const STEP_NAME =
  /(?<=(?:^|[.!] ) *)(?!Row|Rnd|Round|Note|In |Work|Between|End|Repeat(?!: (?:Repeat|Follow|Continue|Do)))[A-Z][a-z]+(?: [A-Za-z]+){0,3}: +(?=\S)/g;

const inkless = (whole: string): string => ' '.repeat(whole.length);
