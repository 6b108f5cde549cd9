/**
 * The facts of all rows, sorted out: one cause gives one fact a row, what follows from an earlier
 * fault is left out, and the same fact in several rows, copies and sizes is drawn together.
 */
import {
  type Cloth,
  type Fact,
  type FactKind,
  isFixed,
  MISFITS,
  type RowRecord,
} from '../fabric/index.ts';
import { cover, type Span } from '../source/index.ts';
import { carriedOn, NOTHING_CARRIED, ownFacts, type Words } from './carried.ts';
import { askedBy, holds, type Scene, type Sighting, type Sightings, workedFrom } from './scene.ts';
import { oddLists } from './text/sizes-lengths.ts';

/** Of several misfits in a row the first of this list explains the others. */
const CAUSES: readonly FactKind[] = [
  'chart-width',
  'mesh',
  'no-place',
  'remainder',
  'overrun',
  'left',
  'count',
];

/** Words that were not followed to their end: sums of that row say nothing. */
const UNFOLLOWED: ReadonlySet<FactKind> = new Set([
  'unread',
  'not-worked',
  'chart-missing',
  'chart-row',
  'row-missing',
  'row-loop',
  'limit',
]);

/** `behindGap`: ids of the rows that stand behind a row number that is not there. */
export function sightingsOf(scene: Scene, behindGap: ReadonlySet<string>): readonly Sightings[] {
  const found = new Map<string, Group>();
  /** The first misfit of each instruction in its own row. */
  const ofWords = new Map<number, Group>();
  for (const cloth of scene.fabric.cloths) {
    for (const sighting of ofCloth(scene, cloth, behindGap)) {
      const { fact, row } = sighting;
      const isMisfit = MISFITS.has(fact.kind) || OF_COUNTS.has(fact.kind);
      const words = isMisfit ? workedFrom(scene, row, cloth) : null;
      const isAgain = words !== null && words.from !== row.from;
      const own = ofWords.get(row.from);
      const isSameRange = isMisfit && own?.all[0]?.cloth === cloth && own.all[0]?.row !== row;
      // Seen in its own row already: rows that work those words again show nothing new.
      const inPart = fact.kind === 'not-followed' ? keyOfPart(row) : '';
      const group =
        found.get(inPart) ??
        found.get(keyOf(fact.kind, fact)) ??
        found.get(keyOf(fact.kind, row)) ??
        (isAgain ? ofWords.get(words.from) : undefined) ??
        (isSameRange ? own : undefined);
      if (group) {
        group.all.push(sighting);
        continue;
      }
      const at = pointOf(sighting);
      const first = { at, all: [sighting] };
      found.set(inPart || keyOf(fact.kind, at), first);
      if (words && !isAgain && !ofWords.has(words.from)) ofWords.set(words.from, first);
    }
  }
  const groups = [...found.values()];
  const faulty = new Set(
    groups.flatMap(({ all }) =>
      MISFITS.has(all[0]?.fact.kind ?? 'reading') ? all.map(pieceOf) : [],
    ),
  );
  return groups.flatMap(({ at, all }) => {
    // The reading of a part is what most of its rows need: a row that is wrong has had its say in it.
    const told = all.filter((one) => one.fact.kind !== 'reading' || !faulty.has(pieceOf(one)));
    return told.length > 0 ? [drawnTogether(scene, at, told)] : [];
  });
}

const pieceOf = ({ row }: Sighting): string => `${row.sizeIndex} ${row.partIndex} ${row.instance}`;

/** What a count says of the words, beside its number: told once of the same words. */
const OF_COUNTS: ReadonlySet<FactKind> = new Set(['stems', 'gaps-counted']);

interface Group {
  readonly at: Span;
  readonly all: Sighting[];
}

/** Rows of a part that were not followed are told at one place. */
const keyOfPart = ({ partIndex }: RowRecord): string => `not followed ${partIndex}`;

const keyOf = (kind: FactKind, { from, to }: Span): string => `${kind} ${from} ${to}`;

function drawnTogether(scene: Scene, at: Span, all: readonly Sighting[]): Sightings {
  const { cloths } = scene.fabric;
  const sizes = new Set(all.map(({ cloth }) => cloth.sizeIndex));
  const names = scene.manuscript.head.sizes;
  return {
    first: all[0] as Sighting,
    at,
    rows: [...new Set(all.map(({ row }) => row.id))],
    again: all.filter(({ row }) => row.from !== all[0]?.row.from).map(({ row }) => row),
    sizes: sizes.size === cloths.length ? [] : [...sizes].map((i) => names[i] ?? `size ${i + 1}`),
  };
}

/** Words of another row, worked again here: this row is where to point. */
const pointOf = ({ fact, row }: Sighting): Span => {
  if (holds(row, fact) || row.to <= row.from) return fact;
  return { from: row.from, to: row.to };
};

function ofCloth(scene: Scene, cloth: Cloth, behindGap: ReadonlySet<string>): Sighting[] {
  const all: Sighting[] = [];
  const odd = oddLists(scene);
  let before: RowRecord | null = null;
  let former: RowRecord | null = null;
  let isSure = true;
  let carried = NOTHING_CARRIED;
  let last = -1;
  /** Instructions of which a misfit is told. */
  const ofWords = new Set<number>();
  for (const row of cloth.rows) {
    if (startsPiece(scene, former, row)) {
      before = null;
      isSure = true;
      carried = NOTHING_CARRIED;
      last = -1;
    }
    former = row;
    let isOdd = false;
    for (let at = last + 1; at <= row.instruction; at++) {
      isOdd ||= odd.has(`${row.partIndex} ${at}`);
    }
    isSure &&= !isOdd;
    last = row.instruction;
    const own = behindGap.has(row.id) || !isSure ? ofItsWords(scene, row) : row;
    const source = workedFrom(scene, row, cloth);
    const isTold = source !== null && source.from !== row.from && ofWords.has(source.from);
    const words: Words = {
      worked: source?.instruction.steps ?? [],
      asked: askedBy(scene, row)?.instruction.steps ?? [],
      isTold,
    };
    const facts = ownFacts(own, { carried, before }, words);
    const told = telling({ ...own, facts }, before, isOdd).filter(
      (fact) => fact.kind !== 'limit' || fact.what !== 'stitches' || ofWords.size === 0,
    );
    for (const fact of told) all.push({ fact, row, before, cloth });
    if (told.some(({ kind }) => MISFITS.has(kind))) ofWords.add(source?.from ?? row.from);
    carried = carriedOn({ carried, before }, row, { told, isTold });
    isSure = sureAfter(row, isSure);
    if (row.nodes.to > row.nodes.from) before = row;
  }
  return all;
}

const startsPiece = (scene: Scene, former: RowRecord | null, row: RowRecord): boolean => {
  if (!former) return true;
  if (former.partIndex === row.partIndex) return former.instance !== row.instance;
  return scene.manuscript.parts[row.partIndex]?.continues !== true;
};

/** Is what this row leaves to the next one known? A stated count makes it so. */
function sureAfter(row: RowRecord, before: boolean): boolean {
  const states = row.stated.some(
    ({ unit }) => unit === null || unit === 'stitch' || unit === 'stem',
  );
  if (row.verdict === 'proven') return true;
  if (row.verdict === 'unstated' || row.verdict === 'omitted') return before;
  // An unread row leaves its stated count behind only if it left any places at all.
  return states && (row.verdict !== 'unread' || row.nodes.to > row.nodes.from);
}

/** The facts of a row that tell something: of its misfits only the cause, and none behind an odd list of sizes. */
function telling(row: RowRecord, before: RowRecord | null, isOdd: boolean): readonly Fact[] {
  // Where a row goes on in pieces that are not followed, nobody knows which spaces it names.
  const joins = row.facts.some(({ kind }) => kind === 'not-worked');
  const others = row.facts.filter(
    ({ kind }) => !MISFITS.has(kind) && !(joins && kind === 'space-size'),
  );
  const misfits = row.facts.filter((fact) => MISFITS.has(fact.kind) && !follows(fact, before));
  if (misfits.length === 0) return others;
  if (isOdd || others.some(({ kind }) => UNFOLLOWED.has(kind))) return others;
  const cause = CAUSES.find((kind) => misfits.some((fact) => fact.kind === kind));
  const [first, ...more] = misfits.filter((fact) => fact.kind === cause);
  if (!first) return others;
  // A reading that made the row fit is no news where the row does not fit all the same.
  const told = others.filter(({ kind }) => kind !== 'reading' && kind !== 'two-readings');
  return [...told, first.kind === 'overrun' ? { ...first, ...covered(first, more) } : first];
}

/**
 * Behind a gap in the numbers, or a row of which nobody knows what it leaves, a row is worked into what it
 * was not written for: that it does not come out there is no fault of its own. What its words alone fix it makes on any row.
 */
function ofItsWords(scene: Scene, row: RowRecord): RowRecord {
  const { stitches } = row.tally;
  const steps = askedBy(scene, row)?.instruction.steps ?? [];
  const fixed = isFixed(steps, stitches, row.sizeIndex);
  const isOwn = (fact: Fact): boolean =>
    !MISFITS.has(fact.kind) || (fixed && fact.kind === 'count' && fact.computed === stitches);
  return { ...row, facts: row.facts.filter(isOwn) };
}

/** Stitches that the row before made in places that are not there are left over here. */
function follows(fact: Fact, before: RowRecord | null): boolean {
  if (fact.kind !== 'left') return false;
  const over = before?.facts.find(({ kind }) => kind === 'overrun');
  return over?.kind === 'overrun' && fact.left === over.needed - over.have;
}

const covered = (first: Span, more: readonly Span[]): Span =>
  more.reduce<Span>((all, one) => cover(all, one), { from: first.from, to: first.to });
