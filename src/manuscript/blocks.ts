/**
 * Cuts the text into headings, instructions, definitions, prose and charts: one pass over its
 * lines, each looked at once. An instruction begins with a label or a stitch command and runs to
 * the blank line or the next label; pasted text breaks this in the ways that are told below.
 */
import { isColour, isKnownWord, startsInstruction } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Block } from './block.ts';
import { chainInProse, multipleInProse, worksIntoChain } from './chain-in-prose.ts';
import { chartInside, chartNameOf, fenceOf, type LineSpan } from './fences.ts';
import { labelCuts, namesPart, opensPart } from './label-cuts.ts';
import {
  afterBullet,
  endsWithCount,
  isCaption,
  isLabelAlone,
  isNamedCaption,
  isOrdinalAlone,
  isPageNumber,
  isRowWord,
  isRule,
  isSplitLabel,
  listSignBefore,
  opensStep,
} from './line-shapes.ts';
import { startsBelow, takeCount, takeNamed } from './named-lines.ts';
import {
  addProse,
  type BlockOptions,
  close,
  extend,
  isBlankCode,
  openBlock,
  pushHeading,
  type Scan,
  type Starts,
  type Stretch,
  skipCuts,
} from './scan.ts';
import { sectionNamed } from './sections.ts';
import { titleWords } from './titles.ts';
import { COUNTED, followsCounted, isNextInList, opensItem, tellsRows } from './unlabelled-rows.ts';
import { SPECIALS_AND_NAME, workBehindName } from './work-behind-name.ts';
import {
  breaksOff,
  continues,
  goesOnSurely,
  isHeldOpen,
  isLabelled,
  isSurelyProse,
  mayBeWork,
  mayHoldRow,
  startsOf,
} from './work-rules.ts';

/** `text` is the plain text; blocks come in order and do not overlap. */
export function scanBlocks(text: string, options: BlockOptions): Block[] {
  const scan: Scan = {
    text,
    options,
    blocks: [],
    cuts: labelCuts(text, options),
    cut: 0,
    section: 'work',
    sectionLevel: 0,
    open: null,
    afterBlank: true,
    sawWork: false,
    seen: { from: 0, to: -1, starts: null },
  };
  const starts = options.lines;
  let at = options.from;
  for (let i = 0; i < starts.length; i++) {
    const from = starts[i] ?? 0;
    // A chart takes several lines at once.
    if (from < at) continue;
    at = takeLine(scan, { from, to: starts[i + 1] ?? text.length });
  }
  close(scan);
  return scan.blocks;
}

/** Takes a line, or the chart that begins there; returns where the next line begins. */
function takeLine(scan: Scan, line: Span): number {
  const { text } = scan;
  const next = line.to;
  let { from, to } = line;
  while (from < to && isBlankCode(text.charCodeAt(from))) from++;
  while (to > from && isBlankCode(text.charCodeAt(to - 1))) to--;
  if (from === to || scan.options.refused.has(line.from)) {
    takeBlank(scan);
    return next;
  }
  const sign = text[from];
  if (sign === '`' || sign === '~') {
    const after = takeFence(scan, { from, to, next });
    if (after !== null) return after;
  }
  if (sign === '#' && takeHeading(scan, from, to)) return next;
  if (isRule(text, from, to)) takeBlank(scan);
  else if (!isPageNumber(text, from, to) && !isBesidePhoto(scan, { from, to, next }))
    takeStretches(scan, { from, to, next });
  return next;
}

/** A caption, or the number of a row worked already, with no work below: "Round 15" under its photograph. */
function isBesidePhoto(scan: Scan, { from, to, next }: Stretch): boolean {
  const { text, open, options } = scan;
  if (options.titles === 'headings' || options.layout === 'written') return false;
  if (isCaption(text, from, to) || isStripe(scan, from, to)) return true;
  const last = scan.blocks.at(-1);
  const row = open ?? last;
  if (isNamedCaption(text, from, to) && scan.sawWork && !open?.bare) {
    const below = startsBelow(scan, next);
    return below === null || below === 'label' || isPastRow(scan, row, from, to);
  }
  if (row?.kind !== 'instruction' || to - from > 12 || text[to - 1] === ':') return false;
  if (!isLabelAlone(text, from, to) || (open?.bare ?? false)) return false;
  // "Row 3: Repeat" above "row 2."
  if (isHeldOpen(scan, { from, to })) return false;
  const number = lastNumberIn(text, from, to);
  // "Rounds 2-7" between rows 3 and 4: of all that the picture shows.
  if (isAround(text, { from, to, next }, lastNumberIn(text, row.from, row.to))) return true;
  if (number < 2 || number > lastNumberIn(text, row.from, row.to)) return false;
  const below = startsBelow(scan, next);
  return below === null || below === 'label';
}

/** A range in which lie the row above and the one whose label stands below. */
function isAround(text: string, { from, to, next }: Stretch, above: number): boolean {
  const range = /(\d{1,3})\s?[-–]\s?(\d{1,3})$/.exec(text.slice(from, to));
  if (!range || Number(range[1]) > above) return false;
  const below = /^\s*r[a-z]*\.? ?(\d{1,3})/i.exec(text.slice(next, next + 40));
  const follows = Number(below?.[1] ?? 0) === above + 1;
  return follows && Number(range[2]) >= above + (Number(range[1]) < above ? 1 : 0);
}

/** "… after round 2" below a row of that number. */
const isPastRow = (
  { text }: Scan,
  row: Span | null | undefined,
  from: number,
  to: number,
): boolean =>
  !!row && Number(/\d+$/.exec(text.slice(from, to))?.[0]) === lastNumberIn(text, row.from, row.to);

/** "Rows 9-12: coral" below "Rows 2-20: ch 1, turn, sc across": what colour rows are that were told. */
function isStripe({ text, open, blocks }: Scan, from: number, to: number): boolean {
  const code = text.charCodeAt(from) | 32;
  if (code !== 114 || to - from > 36) return false;
  const found = STRIPE.exec(text.slice(from, to));
  const name = (found?.[2] ?? '').toLowerCase();
  if (!found || (isKnownWord(name) && !isColour(name))) return false;
  // A heading may stand between: "Colour sequence:"
  const row =
    open?.kind === 'instruction' ? open : blocks.findLast(({ kind }) => kind === 'instruction');
  if (!row) return false;
  const told = TO_THE_END.test(text.slice(row.from, row.from + 24));
  return told || Number(found[1]) <= lastNumberIn(text, row.from, row.to);
}

/** "R2-end:", "Row 3 and beyond:", "Rows 2+:" */
const TO_THE_END =
  /^r[a-z]*[ .]?\d{1,3} ?(?:\+|(?:-|–|—|to|until|and) ?(?:the )?(?:end|up|on(?:wards)?|beyond)\b)/i;

const STRIPE =
  /^r(?:ows?|nds?|ounds?)?[ .]?(?:\d{1,3}\s?[-–—]\s?)?(\d{1,3}): (?:[A-Za-z]{3,12} )?([A-Za-z]{3,12})\.?$/i;

function takeBlank(scan: Scan): void {
  const { open, text } = scan;
  // A page's columns may break within a bracket: what is open goes on below the blank line.
  if (open?.kind === 'instruction' && breaksOff(text, open)) return;
  // "Round 1:" above a blank line still waits for its work.
  if (!(open?.kind === 'instruction' && (open.bare || open.alone))) close(scan);
  scan.afterBlank = true;
}

function takeFence(scan: Scan, line: LineSpan): number | null {
  const fence = fenceOf(scan.text.slice(line.from, Math.min(line.to, line.from + 200)));
  if (!fence) return null;
  close(scan);
  scan.afterBlank = true;
  const name = chartNameOf(fence.info);
  // The marks of other fenced blocks are passed over, and what they hold is read as text.
  if (name === null) return line.next;
  const inside = chartInside(scan.text, line.next, fence.mark);
  const inner = { innerFrom: inside.from, innerTo: inside.to };
  scan.blocks.push({ kind: 'chart', name, from: line.from, to: inside.next, ...inner });
  skipCuts(scan, inside.next);
  return inside.next;
}

function takeHeading(scan: Scan, from: number, to: number): boolean {
  const found = /^(#{1,6})\s+(\S.*?)\s*#*$/.exec(scan.text.slice(from, Math.min(to, from + 300)));
  if (!found) return false;
  const level = found[1]?.length ?? 1;
  const name = titleWords(found[2] ?? '');
  const named = sectionNamed(name);
  // "### Shell" below "## Special stitches" stays among the special stitches.
  const inherits = named === null && scan.section !== 'work' && level > scan.sectionLevel;
  pushHeading(scan, { from, to, level, name }, named ?? (inherits ? scan.section : 'work'));
  if (!inherits) scan.sectionLevel = level;
  return true;
}

/** A line, cut where labels stand in the middle of it. */
function takeStretches(scan: Scan, { from, to, next }: Stretch): void {
  let at = from;
  for (;;) {
    const cut = nextCut(scan, at, to);
    take(scan, cut === null ? { from: at, to, next } : { from: at, to: cut, next: to });
    scan.afterBlank = false;
    if (cut === null) return;
    at = cut;
  }
}

function nextCut(scan: Scan, from: number, to: number): number | null {
  for (;;) {
    const cut = scan.cuts[scan.cut];
    if (!cut || cut.at >= to) return null;
    scan.cut++;
    if (cut.at <= from || scan.section === 'comments') continue;
    if (cut.bare === null && isSizeLead(scan.text, from, cut.at)) continue;
    if (cut.opens && !isBehindProse(scan, from, cut.at)) continue;
    if (cut.bare === null) return cut.at;
    const last = lastRow(scan, from, cut.at);
    // "… R12 dec x6 (6). For the cap: R1 6 sc in MR": the next piece counts from one again.
    const follows = cut.bare === last + 1 || (cut.bare === 1 && last > 1);
    if (scan.options.layout === 'pasted' && follows) return cut.at;
  }
}

/** The number of the row in front of a cut: of the label at `from`, or of the row that is open. */
function lastRow(scan: Scan, from: number, cut: number): number {
  const here = lastNumberIn(scan.text, from, cut);
  if (isBareCut(scan, from) || scan.open?.kind !== 'instruction') return here;
  return Math.max(lastNumberIn(scan.text, scan.open.from, cut), here);
}

/** Whether the line was cut at `from`, before a label with no sign behind it. */
function isBareCut({ cuts, cut }: Scan, from: number): boolean {
  for (let i = cut - 1; i >= 0; i--) {
    const before = cuts[i];
    if (!before || before.at < from) return false;
    if (before.at === from) return before.bare !== null;
  }
  return false;
}

/** Whether the line so far is no work, and none goes on in it. */
const isBehindProse = (scan: Scan, from: number, to: number): boolean =>
  scan.section === 'work' &&
  (scan.open?.kind !== 'instruction' || scan.afterBlank) &&
  startsInstruction(scan.text, from, to) === null;

const SIZE = String.raw`(?:\d?x*[sml]|small|medium|large|x-?large)`;
const SIZE_LEAD = new RegExp(
  String.raw`^\W*(?:for )?(?:(?:all )?sizes?\b[^:]*|[^:]* only|` +
    `${SIZE}(?:(?:[,/& ]| and )+${SIZE})*) ?: *$`,
  'i',
);

/** "Size L only: Rnd 8: …" has one label: the size belongs to the row. */
const isSizeLead = (text: string, from: number, to: number): boolean =>
  to - from <= 60 && SIZE_LEAD.test(text.slice(from, to));

/** The highest row number that the label at `from` names; 0 where none stands. */
function lastNumberIn(text: string, from: number, to: number): number {
  const label =
    /^(?!\W*(?:ch|chain)\b)\D{0,10}(\d{1,3})(?:st|nd|rd|d|th)?(?:\s*(?:-|–|—|to|and|&|,)\s*(?:r|rnd|row)?\s?(\d{1,3}))?/i.exec(
      text.slice(from, Math.min(to, from + 40)),
    );
  return label ? Number(label[2] ?? label[1]) : 0;
}

function take(scan: Scan, stretch: Stretch): void {
  const { text } = scan;
  let { to } = stretch;
  while (to > stretch.from && isBlankCode(text.charCodeAt(to - 1))) to--;
  const at = { from: afterBullet(text, stretch.from, to), to, next: stretch.next };
  if (at.from >= to) return;
  const work = workBehindName(scan, at);
  if (work > at.from) {
    const name = text.slice(at.from, work).replace(/\s*[-–—]\s*$|,\s*$|\s*(?:…|\.{3})\s*$/, '');
    const above = scan.blocks.findLast(({ kind }) => kind === 'heading');
    const title = titleWords(name);
    const isSame = above?.kind === 'heading' && above.name === title;
    const section = SPECIALS_AND_NAME.test(text.slice(at.from, work + 40)) ? 'specials' : 'work';
    if (!isSame) pushHeading(scan, { from: at.from, to: work, level: 0, name: title }, section);
    return take(scan, { ...stretch, from: work });
  }
  const opens =
    opensStep(text, stretch.from) ||
    opensPart(text, stretch.from) ||
    (scan.open?.kind === 'instruction' && namesPart(text, at.from));
  if (opens || opensItem(scan, at) || followsCounted(scan, at) || tellsRows(scan, at)) close(scan);
  if (opensStep(text, stretch.from) && takeStep(scan, at)) return;
  if (scan.section === 'comments') addProse(scan, at);
  else if (!takeCount(scan, at)) takeWords(scan, at, startsHere(scan, at));
}

/**
 * "Step 2: Work Row 1" names the row whose work stands below, "Step 5: Repeat to square size" no more
 * than what the step is about. Steps are work, whatever heading stood above them.
 */
function takeStep(scan: Scan, at: Stretch): boolean {
  if (scan.section === 'comments' || scan.options.titles !== 'lines') return false;
  const words = scan.text.slice(at.from, at.to);
  const row = ROW_OF_STEP.exec(words);
  if (!row && (words.length > 60 || /\d|[,;]/.test(words) || endsWithStop(words))) return false;
  if (!row && WORKED_STEP.test(words)) return false;
  scan.section = 'work';
  if (row) openSplitLabel(scan, { ...at, from: at.from + (row[1]?.length ?? 0) });
  else addProse(scan, at);
  return true;
}

const ROW_OF_STEP =
  /^((?:work |make |begin |crochet )?(?:the )?)(?:row|rnd|round) \d{1,3}(?: \([^)]{1,30}\))?[:.]?$/i;

/** "Sc in every dc until you reach the end": a row, though no full stop ends it. */
const WORKED_STEP =
  /^(?:sc|hdc|dc|htr|tr|(?:single|half double|double|treble) crochet)\b.* (?:each|every|across|around|to the end|until you reach the end)\b/i;

const endsWithStop = (words: string): boolean => /[.!]$/.test(words);

/** "half treble crochet (htc). The ties …" below "The bib is worked in": the talk goes on. */
function endsSentenceAbove({ text, open, afterBlank }: Scan, { from }: Span): boolean {
  if (open?.kind !== 'prose' || afterBlank) return false;
  const code = text.charCodeAt(from);
  return (
    code >= 97 && code <= 122 && TALK_GOES_ON.test(text.slice(Math.max(0, open.to - 12), open.to))
  );
}

const TALK_GOES_ON = /\s(?:in|into|to|of|the|an?|with|using|is|are|for)$/i;

/** Inside a row or a paragraph only a label is looked for: nothing else would end it. */
function startsHere(scan: Scan, at: Stretch): Starts {
  if (endsSentenceAbove(scan, at)) return null;
  if (isHeldOpen(scan, at)) return 'likely';
  if (isNextInList(scan, at)) return 'label';
  const row = goesOnSurely(scan, at);
  if (!row && !isSurelyProse(scan)) return startsOf(scan, at);
  // "In round 2, you will …" below "Round 2": the same row.
  const told = scan.open?.bare === true && TOLD_OF.test(scan.text.slice(at.from, at.from + 12));
  if (!told && isLabelled(scan.text, at.from, at.to)) return 'label';
  return row ? 'likely' : null;
}

const TOLD_OF = /^(?:in|for|on) r/i;

/** The order matters: a label wins over all, and a bare label takes whatever comes next. */
function takeWords(scan: Scan, at: Stretch, starts: Starts): void {
  const waits = scan.open?.kind === 'instruction' && scan.open.bare;
  if (isSplitLabel(scan.text, at, at.next)) openSplitLabel(scan, at);
  else if (waits && isHalfLabel(scan)) extend(scan, at);
  else if (starts === 'label' && mayHoldRow(scan, at)) openInstruction(scan, at, starts);
  else if (isRowsTitle(scan, at) || isCapitalTitle(scan, at) || isNameBetween(scan, at, starts))
    pushTitle(scan, at);
  else if (
    waits ||
    isStepOfRow(scan, at) ||
    tellsCount(scan, at, starts) ||
    isClauseBelow(scan, at, starts) ||
    isTalkWithin(scan, at, starts)
  )
    extend(scan, at);
  else if (takeNamed(scan, at, starts)) return;
  else if (continues(scan, at, starts)) extend(scan, at);
  else if (starts !== 'label' && mayBeWork(scan, at, starts)) openInstruction(scan, at, starts);
  else addProse(scan, at);
}

/** "You will now have 24 sc in your circle. [24 sc]" straight below a row without a count. */
function tellsCount(
  { text, open, afterBlank }: Scan,
  { from, to }: Stretch,
  starts: Starts,
): boolean {
  if (open?.kind !== 'instruction' || afterBlank || starts !== null) return false;
  return (
    TELLS_COUNT.test(text.slice(from, from + 12)) &&
    COUNTED.test(text.slice(Math.max(from, to - 24), to)) &&
    !endsWithCount(text, open.from, open.to)
  );
}

const TELLS_COUNT = /^(?:you|this|there|at the|now|that|we|so)\b/i;

/** "- Pull the ring closed" below "Round 1:" and "- 15 dc in the ring": what a list below a label tells is the row's. */
function isStepOfRow({ text, open, afterBlank }: Scan, { from }: Stretch): boolean {
  if (open?.kind !== 'instruction' || !open.alone || open.bare || afterBlank) return false;
  const sign = listSignBefore(text, from);
  return sign !== '' && sign === listSignBefore(text, open.lineFrom);
}

/**
 * "Skip the next 3 dc, work 3 dc in next space" in a paragraph below "Row 3:" and "Chain 4": clauses
 * with blank lines between. What has its count is over, and a foundation begins another piece.
 */
function isClauseBelow(
  { text, open, afterBlank }: Scan,
  { from, to }: Span,
  starts: Starts,
): boolean {
  if (open?.kind !== 'instruction' || !open.alone || open.bare || !afterBlank) return false;
  const again = starts === null && /^(?:rep|rpt|repeat)\b[^.]*\*/i.test(text.slice(from, to));
  if (starts !== 'command' && starts !== 'likely' && !again) return false;
  if (endsWithCount(text, open.from, open.to)) return false;
  const here = text.slice(from, Math.min(to, from + 40));
  return (
    !BEGINS_PIECE.test(here) && !ENDED.test(text.slice(Math.max(open.from, open.to - 40), open.to))
  );
}

/**
 * "You will now work along the ends of the rows." between "Ch 1, turn." and "Make 6 sc …", below a
 * label with a line of its own: the row goes on behind the sentence, which is a remark of it.
 */
function isTalkWithin(scan: Scan, { next }: Stretch, starts: Starts): boolean {
  const { text, open, afterBlank } = scan;
  if (starts !== null || open?.kind !== 'instruction' || !open.alone || afterBlank) return false;
  if (endsWithCount(text, open.from, open.to) || /^[ \t]*\r?\n/.test(text.slice(next, next + 8)))
    return false;
  const below = startsBelow(scan, next);
  return below === 'command' || below === 'likely';
}

const BEGINS_PIECE =
  /^(?:(?:ch|chain) \d{2,}|(?:make|begin|start|with)\b|(?:join|attach) (?!(?:with|using) (?:an? |the )?(?:sl ?st|slip|ss)\b|to\b|in\b|the r|round)\S|fasten|finish|for )/i;
const ENDED = /\b(?:fasten|finish|break|cut) (?:off|(?:the )?(?:yarn|thread))\b[^.]*\.?$/i;

/** "Round" or "10th", which waits for its other half. */
const isHalfLabel = ({ text, open }: Scan): boolean =>
  open !== null &&
  (isRowWord(text, open.from, open.to) || isOrdinalAlone(text, open.from, open.to));

/** "SHELL", "TAIL" above "R1: …" or above its colour: a part, though a stitch is so called. */
function isCapitalTitle({ text, options, section, open }: Scan, at: Stretch): boolean {
  if (open?.bare || section === 'comments' || options.titles === 'headings') return false;
  if (at.to - at.from > 24 || at.to - at.from < 3) return false;
  if (!CAPITAL_TITLE.test(text.slice(at.from, at.to))) return false;
  return FIRST_ROW.test(text.slice(at.next, at.next + 80));
}

const CAPITAL_TITLE =
  /^(?!(?:TURN|REPEAT|REP|JOIN|FO|CH|ROW|ROUND|RND)\b)\p{Lu}{3,}(?: \p{Lu}{2,})?:?$/u;
/** Straight below, or behind one line that names the colour or makes the chain. */
const FIRST_ROW =
  /^\s*(?:(?:in|with|using|use|make|chain|ch) [^\n:]{1,30}\n\s*)?(?:r|rnd|round|row|step) ?1\s?[:.)–-]/i;

/** "Slipper Body" between a row and "Round 1:" or "Step 1:", with no blank line: the next part. */
function isNameBetween(
  { text, options, section, open, sawWork }: Scan,
  at: Stretch,
  starts: Starts,
): boolean {
  if (starts !== null || !open || (open.kind !== 'instruction' && open.kind !== 'prose'))
    return false;
  if (open.bare || (open.kind === 'prose' && !sawWork)) return false;
  if (section === 'comments' || options.titles !== 'lines' || at.to - at.from > 32) return false;
  if (!/[.)\]!]/.test(text[open.to - 1] ?? '') || !NAME_BETWEEN.test(text.slice(at.from, at.to)))
    return false;
  return FIRST_ROW.test(text.slice(at.next, at.next + 80));
}

const NAME_BETWEEN = /^\p{Lu}\p{Ll}+(?: (?:\p{Lu}?\p{Ll}+|\d)){0,3}:?$/u;

/** "Increasing rows", "Decreasing rounds:", "4To make the ears:" on a line of their own. */
const isRowsTitle = ({ text, options, section }: Scan, { from, to }: Span): boolean =>
  to - from < 44 &&
  section !== 'comments' &&
  options.titles === 'lines' &&
  /^(?:[A-Z][a-z]+ing (?:rows|rounds|rnds|section)\W*|\d{0,2}\.? ?To (?:make|crochet|work) (?:the|its|your|an?|each|both)(?: [a-z]{3,14}){1,3} ?:)$/.test(
    text.slice(from, to),
  );

function pushTitle(scan: Scan, { from, to }: Stretch): void {
  pushHeading(scan, { from, to, level: 0, name: titleWords(scan.text.slice(from, to)) }, 'work');
}

function openSplitLabel(scan: Scan, at: Stretch): void {
  openChainAbove(scan, at.from);
  openBlock(scan, 'instruction', at);
  scan.sawWork = true;
  if (scan.open) scan.open.bare = true;
}

/** The foundation chain of a first row that nothing but the paragraph above it tells of. */
function openChainAbove(scan: Scan, row: number): void {
  if (scan.sawWork || scan.options.titles === 'headings') return;
  if (!worksIntoChain(scan.text, row)) return;
  close(scan);
  const above = scan.blocks.at(-1);
  const chain = above?.kind === 'prose' ? chainInProse(scan.text, above) : null;
  if (above?.kind === 'prose' && chain) return cutChain(scan, scan.blocks.length - 1, chain);
  // The multiple of a stitch often stands at the head of its page.
  for (const [i, block] of scan.blocks.entries()) {
    const isTalk = block.kind === 'prose' || block.kind === 'definition';
    const multiple = isTalk ? multipleInProse(scan.text, block) : null;
    if (multiple) return cutChain(scan, i, multiple);
  }
}

/** Cuts a foundation chain out of the talk around it. */
function cutChain({ blocks }: Scan, i: number, chain: Span): void {
  const above = blocks[i];
  if (above?.kind !== 'prose' && above?.kind !== 'definition') return;
  const { section } = above;
  const parts: Block[] = [{ kind: 'instruction', ...chain }];
  if (chain.from > above.from)
    parts.unshift({ kind: 'prose', from: above.from, to: chain.from, section });
  if (above.to > chain.to) parts.push({ kind: 'prose', from: chain.to, to: above.to, section });
  blocks.splice(i, 1, ...parts);
}

function openInstruction(scan: Scan, at: Stretch, starts: Starts): void {
  if (starts === 'label') openChainAbove(scan, at.from);
  openBlock(scan, 'instruction', at);
  scan.sawWork = true;
  if (starts === 'label' && scan.open) {
    scan.open.bare = isLabelAlone(scan.text, at.from, at.to);
    scan.open.alone = scan.open.bare;
  }
  // Materials and notes without a heading behind them end where the work begins.
  if (scan.options.titles === 'lines') scan.section = 'work';
}
