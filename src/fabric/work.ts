/** Works a whole manuscript: every size, every part, every copy. */
import type { Manuscript, Part } from '../manuscript/index.ts';
import type { Instruction, SpecialStitch, StandingOrder, Step } from '../notation/index.ts';
import { workPart } from './choose.ts';
import { bareEdge } from './edge.ts';
import { type KnownRows, newKnownRows } from './expand.ts';
import {
  type Cloth,
  type Convention,
  type Fabric,
  NOTHING_MADE,
  type RowRecord,
} from './fabric.ts';
import { type Bench, type Hands, NO_MOVES, newHands, placeOfStep, TOO_MANY } from './hands.ts';
import { newHeights } from './heights.ts';
import { newKindTable } from './kinds.ts';
import { leftOpen } from './left-open.ts';
import { keyOf, madeTwice } from './parked.ts';
import { newProgress, type PartRun, type PartSetting, type Progress } from './part.ts';
import type { Choices } from './readings.ts';
import { edgeFor } from './row-edge.ts';
import { shapeOf } from './shape.ts';

/** More stitches than any piece has; over it the work stops and says so. */
export const MOST_STITCHES = 1_000_000;

/**
 * Copies of a part are alike, save for where they are joined; more than a few prove nothing new, but yarn
 * is counted by them. So many are worked in any case, and so many more as long as the fabric stays small.
 */
const SOME_COPIES = 20;
const MOST_COPIES = 1000;
const SMALL = 100_000;

interface Settled extends Convention {
  readonly otherwise: { readonly sizeIndex: number; readonly reading: string }[];
}

interface Shop {
  readonly manuscript: Manuscript;
  readonly bench: Bench;
  readonly conventions: Map<string, Settled>;
  readonly notChecked: Set<string>;
  /** Readings found in the first size, by part. */
  readonly usual: Map<number, Choices>;
}

/** The fabric of the manuscript. Never throws on what a manuscript may hold. */
export function work(manuscript: Manuscript): Fabric {
  const bench: Bench = {
    kinds: newKindTable(),
    origins: [{ from: 0, to: 0 }],
    yarns: [...manuscript.head.yarns],
    terms: manuscript.terms.terms,
    specials: specialsOf(manuscript),
    heights: newHeights(manuscript),
    limit: { stitches: MOST_STITCHES, moves: 0, most: MOST_STITCHES },
    chosen: new Map(),
    toldGaps: new Map(),
  };
  const shop: Shop = {
    manuscript,
    bench,
    conventions: new Map(),
    notChecked: new Set(),
    usual: new Map(),
  };
  const sizes = Math.max(1, manuscript.head.sizes.length);
  const cloths = Array.from({ length: sizes }, (_, i) => workSize(shop, i));
  return {
    kinds: bench.kinds,
    cloths,
    origins: bench.origins,
    conventions: [...shop.conventions.values()],
    yarns: bench.yarns,
    notChecked: [...shop.notChecked],
  };
}

function specialsOf(manuscript: Manuscript): ReadonlyMap<string, SpecialStitch> {
  const specials = new Map<string, SpecialStitch>();
  for (const special of manuscript.specials) {
    specials.set(special.key, special);
    for (const alias of special.aliases) if (!specials.has(alias)) specials.set(alias, special);
  }
  return specials;
}

function workSize(shop: Shop, sizeIndex: number): Cloth {
  const hands = newHands(shop.bench, sizeIndex);
  const rows: RowRecord[] = [];
  let progress = newProgress();
  const otherParts = new Map<string, KnownRows>();
  try {
    for (const [partIndex, part] of shop.manuscript.parts.entries()) {
      const copies = Math.max(1, Math.min(part.copies, MOST_COPIES));
      let instance = 1;
      for (; instance <= copies && isAnother(hands, instance); instance++) {
        hands.instance = instance;
        progress = startPart(hands, part, progress);
        takeUp(hands, part, { partIndex, progress, text: shop.manuscript.text });
        const run = workOnce(shop, hands, { part, partIndex, instance, progress, otherParts });
        rows.push(...run.rows);
        if (run.isCut) throw TOO_MANY;
        progress = run.progress;
        park(hands, part, progress, keyOf(partIndex, instance));
        otherParts.set(part.name.toLowerCase(), { ...progress.known, elsewhere: true });
      }
      if (instance <= part.copies && instance > 1) {
        shop.notChecked.add(`${part.name}: ${instance - 1} of ${part.copies} copies were worked.`);
      }
    }
  } catch (problem) {
    if (problem !== TOO_MANY) throw problem;
    rows.push(tooMany(shop, hands, rows));
  }
  return { sizeIndex, nodes: hands.nodes, rows: leftOpen(rows, shop.manuscript) };
}

const isAnother = (hands: Hands, instance: number): boolean =>
  instance <= SOME_COPIES || hands.nodes.n < SMALL;

/** A part that goes on keeps edge and numbering; any other begins with nothing in hand. */
function startPart(hands: Hands, part: Part, progress: Progress): Progress {
  if (part.continues && !goesToNewChain(part, progress)) return progress;
  // A foundation or ring that nothing was worked into yet waits for this part's first row.
  const waits = progress.before.row === null && hands.edge.kind !== 'none';
  if (waits && !makesItsStart(part)) return progress;
  // A heading may stand in the middle of one piece, and number its rows from 1 again; a second copy is another piece.
  const isCopy = hands.instance > 1;
  if (!isCopy && !hands.fastened && progress.before.row !== null && !startsAnew(part)) {
    return { ...progress, known: newKnownRows() };
  }
  hands.fastened = false;
  hands.ringUnderstood = false;
  hands.edge = bareEdge('none');
  hands.pending = null;
  hands.moves = NO_MOVES;
  hands.foundation = null;
  hands.stem = 'w0';
  return newProgress();
}

/** Rows counted from 1 again, on a chain of their own: another piece, though no heading says so. */
function goesToNewChain({ instructions }: Part, { before }: Progress): boolean {
  const first = instructions.find(({ instruction }) => instruction.steps.length > 0)?.instruction;
  if (before.row === null || first === undefined) return false;
  return opensWithChain(first) || isAllInFirst(first);
}

/** Which piece is on the hook: one that goes on, or this part's own. */
function takeUp(
  hands: Hands,
  part: Part,
  at: { partIndex: number; progress: Progress; text: string },
): void {
  const from = part.instructions[0]?.from ?? 0;
  const words = at.text.slice(from, part.instructions.at(-1)?.to ?? from);
  hands.partName = `${part.name.toLowerCase()} ${madeTwice(words)}`.trim();
  if (at.progress.before.row === null) hands.ownPiece = keyOf(at.partIndex, hands.instance);
}

/** What is made is kept with its last edge: a row of a later part may join it. */
function park(hands: Hands, part: Part, { before }: Progress, key: string): void {
  if (part.name === '' || !before.row) return;
  const edge = edgeFor(hands, before, 'made', { turned: !before.row.ring, throughPicots: false });
  hands.parked.push({ key, name: part.name.toLowerCase(), edge });
  // A part below that goes on stands on this one's edge.
  hands.ownPiece = key;
}

/** Does the part make a chain or ring of its own before its first row? */
function makesItsStart(part: Part): boolean {
  const first = part.instructions.find(({ instruction }) => instruction.steps.length > 0);
  const shape = first && shapeOf(first.instruction);
  const chains = first?.instruction.steps.some((step) => step.kind === 'chain') ?? false;
  return shape !== undefined && ((shape.idle && chains) || shape.usesRing);
}

/** Does the part begin with a ring, a chain or yarn joined, rather than on what was made before? */
function startsAnew(part: Part): boolean {
  for (const { instruction } of part.instructions) {
    const shape = shapeOf(instruction);
    if (instruction.steps.some((step) => step.kind === 'piece')) return false;
    if (shape.usesRing || instruction.steps.some(joinsYarnSomewhere)) return true;
    const chains = instruction.steps.some((step) => step.kind === 'chain');
    if (shape.idle && chains) return true;
    const { firstWork } = shape;
    if (shape.idle || !firstWork) continue;
    if (opensWithChain(instruction)) return true;
    if (addsToRow(instruction.steps)) return false;
    const { place, stitch } = firstWork;
    if (stitch.foundation || place?.fromHook) return true;
    if (!place && isFoundation(instruction.steps[0])) return true;
    if (!place) return firstWork.n !== null && firstWork.until === null && !chains;
    if (isAllInFirst(instruction)) return true;
    return place.nouns[0]?.kind === 'chain';
  }
  return true;
}

/** "Sleeve - Chain 34. 1 row single crochet": far longer than what starts a row. */
const isFoundation = (step: Step | undefined): boolean =>
  step?.kind === 'chain' && (step.n?.values[0] ?? 0) >= SHORTEST_FOUNDATION;

const SHORTEST_FOUNDATION = 12;

/** "Join A in any row end"; "Join B and continue in sc" is a change of colour. */
const joinsYarnSomewhere = (step: Step, i: number, steps: readonly Step[]): boolean =>
  step.kind === 'join' &&
  step.yarn !== null &&
  (step.place !== null ||
    step.with !== null ||
    steps.slice(i + 1).find(({ kind }) => kind !== 'remark')?.kind !== 'work');

/** "Rnd 1: Ch 2, 6 sc in first st": what is worked goes into one stitch of a chain just made. */
function isAllInFirst({ label, steps }: Instruction): boolean {
  const [first, work, ...rest] = steps;
  if (label?.numbers[0] !== 1 || first?.kind !== 'chain' || work?.kind !== 'work') return false;
  const { place, n } = work;
  return (
    (first.n?.values[0] ?? 0) <= 4 &&
    (n?.values[0] ?? 0) >= 4 &&
    place?.pick === 'first' &&
    place.n === null &&
    !rest.some((step) => step.kind === 'work' || step.kind === 'repeat')
  );
}

/** "Row 1: 8 ch, …": longer than a turning chain of its stitch, it is what the row is worked on. */
function opensWithChain({ label, steps }: Instruction): boolean {
  const [first] = steps;
  if (addsToRow(steps)) return false;
  // "Ch 8 (counts as dc and ch 5), turn" stands on the row beneath.
  const stands = first?.kind === 'chain' && first.countsAs?.counts === true;
  return (
    first?.kind === 'chain' && !stands && label?.numbers[0] === 1 && (first.n?.values[0] ?? 0) > 6
  );
}

/** "Row 1: Ch 22, turn, hdc in 3rd ch from hook and in next 19 ch, hdc in each st across": sleeves. */
function addsToRow(steps: Instruction['steps']): boolean {
  if (steps[0]?.kind !== 'chain' || steps[1]?.kind !== 'turn') return false;
  const works = steps.filter((step) => step.kind === 'work');
  const on = works.at(-1);
  return (
    works.length > 1 &&
    works[0]?.place?.fromHook === true &&
    on?.place?.pick === 'each' &&
    on.place.nouns.every(({ kind }) => kind === 'stitch' || kind === 'stem')
  );
}

/** "Ch 2 (counts as hdc here and throughout)" in a row of an earlier part holds for later ones too. */
const throughout = (parts: readonly Part[]): StandingOrder[] =>
  parts.flatMap(({ instructions }) =>
    instructions.flatMap(({ from, instruction }) =>
      instruction.orders.flatMap((order) =>
        order.kind === 'start-chain' && order.countsAs.throughout
          ? [{ ...order, from: order.from + from, to: order.to + from }]
          : [],
      ),
    ),
  );

function workOnce(
  shop: Shop,
  hands: Hands,
  at: {
    part: Part;
    partIndex: number;
    instance: number;
    progress: Progress;
    otherParts: ReadonlyMap<string, KnownRows>;
  },
): PartRun {
  const { manuscript } = shop;
  const setting: PartSetting = {
    ...at,
    orders: [
      ...manuscript.orders,
      ...throughout(manuscript.parts.slice(0, at.partIndex)),
      ...at.part.orders,
    ],
    charts: manuscript.charts,
    sizes: manuscript.head.sizes,
    otherParts: at.otherParts,
    text: manuscript.text,
  };
  const usual = shop.usual.get(at.partIndex) ?? new Map();
  const { run, choices, untried } = workPart(hands, setting, usual);
  if (!shop.usual.has(at.partIndex)) shop.usual.set(at.partIndex, choices);
  noteConventions(shop, run, choices, { partIndex: at.partIndex, sizeIndex: hands.sizeIndex });
  if (untried > 0) {
    shop.notChecked.add(
      `${at.part.name || 'The pattern'}: more ways of reading were open than were tried.`,
    );
  }
  return run;
}

function noteConventions(
  shop: Shop,
  run: PartRun,
  choices: Choices,
  at: { readonly partIndex: number; readonly sizeIndex: number },
): void {
  for (const asked of run.asked.values()) {
    const { doubt, custom, alternatives, local } = asked;
    // Where only one row's words are in doubt, the reading that its sums asked for is told.
    const need = local ? run.needs.find((other) => other.doubt === doubt) : undefined;
    const reading = choices.get(doubt) ?? need?.reading ?? custom;
    if (local && reading === custom) continue;
    const because = reading === custom ? 'custom' : 'count';
    const others = [custom, ...alternatives].filter((other) => other !== reading);
    const { from, to } = need ?? asked;
    put(shop, { doubt, ...at, reading, alternatives: others, because, from, to });
  }
  for (const [doubt, settled] of run.settled) put(shop, { doubt, ...at, ...settled });
}

const keyFor = ({ partIndex, doubt }: Pick<Convention, 'partIndex' | 'doubt'>): string =>
  `${partIndex} ${doubt}`;

function put(shop: Shop, convention: Omit<Convention, 'otherwise'>): void {
  const { sizeIndex, reading } = convention;
  const known = shop.conventions.get(keyFor(convention));
  if (!known) shop.conventions.set(keyFor(convention), { ...convention, otherwise: [] });
  else if (known.sizeIndex !== sizeIndex && known.reading !== reading) {
    known.otherwise.push({ sizeIndex, reading });
  }
}

/** The row at which the million was reached: what comes after it was not worked. */
function tooMany(shop: Shop, hands: Hands, rows: readonly RowRecord[]): RowRecord {
  shop.notChecked.add('Rows after the millionth stitch were not worked.');
  const last = rows.at(-1);
  const { from, to } = placeOfStep(hands);
  return {
    id: 'limit',
    part: last?.part ?? '',
    partIndex: last?.partIndex ?? 0,
    instance: hands.instance,
    label: '',
    number: null,
    range: null,
    instruction: 0,
    sizeIndex: hands.sizeIndex,
    side: 'RS',
    used: 0,
    available: 0,
    tally: NOTHING_MADE,
    stated: [],
    verdict: 'unchecked',
    facts: [{ kind: 'limit', what: 'stitches', from, to }],
    nodes: { from: hands.nodes.n, to: hands.nodes.n },
    ring: false,
    closes: false,
    joined: false,
    joins: false,
    isBorder: false,
    from,
    to,
  };
}
