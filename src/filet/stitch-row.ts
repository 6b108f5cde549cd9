/**
 * A row of boxes as the stitches that make it, over what lies beneath: "Turn, ch 5 (counts as dc
 * and ch 2), sk next ch-2 sp, dc in next dc, 2 dc in next ch-2 sp, dc in next dc".
 */
import { type StemId, type Terms, wordFor } from '../notation/index.ts';
import { type Atom, atomsInWords } from './atoms.ts';
import { type Beneath, fillAt, type Ground, groundOf, postAt } from './beneath.ts';
import {
  chainsAfterPost,
  chainsForMore,
  chainsOfBar,
  chainsOfPost,
  type FoundationWay,
  foundationOf,
  LACET_CHAINS,
  longStitch,
  type Mesh,
  pitchOf,
  startChains,
} from './mesh.ts';
import { type Unit, unitsOf } from './runs.ts';
import { extentOf, type ShapedRow } from './shape.ts';
import type { WorkedRow, Working } from './working.ts';

export interface Mesher {
  readonly mesh: Mesh;
  readonly working: Working;
  readonly terms: Terms;
  readonly way: FoundationWay;
  readonly on: 'chain' | 'boxes' | 'stitches';
  /** What the next row meets. */
  beneath: Beneath;
}

export function newMesher(
  mesh: Mesh,
  working: Working,
  given: { terms: Terms; on?: Mesher['on']; way?: FoundationWay },
): Mesher {
  const { terms, on = 'chain', way = 'shared' } = given;
  return { mesh, working, terms, way, on, beneath: groundOf(on) };
}

/** The row at hand, and what it makes. */
interface Draft extends Mesher {
  readonly row: WorkedRow;
  readonly shaped: ShapedRow;
  readonly nth: number;
  readonly round: boolean;
  /** Words of this row's terms. */
  readonly post: string;
  readonly low: string;
  readonly fills: Map<number, Ground>;
  readonly posts: Map<number, string>;
  /** Stitches by word, spaces by chains. */
  readonly stitches: Map<string, number>;
  readonly spaces: Map<number, number>;
}

/** The words of the row without label, and its counts. The mesher then stands before the next row. */
export function stitchRow(
  mesher: Mesher,
  row: WorkedRow,
  shaped: ShapedRow,
  nth: number,
): { work: string; count: string } {
  const draft: Draft = {
    ...mesher,
    row,
    shaped,
    nth,
    round: mesher.working.form !== 'flat',
    post: wordFor(mesher.mesh.post, mesher.terms),
    low: wordFor('w0', mesher.terms),
    fills: new Map(),
    posts: new Map(),
    stitches: new Map(),
    spaces: new Map(),
  };
  const { from, to } = extentOf(row.cells);
  const last = to - shaped.addedLast.length;
  const units = unitsOf(row.cells, from, last);
  const boxes = units.map((unit, i) =>
    boxAtoms(draft, unit, i === 0 ? firstWords(draft, unit) : []),
  );
  const added = unitsOf(row.cells, last, to).map((unit, i, all) =>
    addedAtoms(draft, unit, all[i - 1]?.cell ?? null),
  );
  const words = { post: draft.post, skip: mesher.terms === 'UK' ? 'miss' : 'sk' };
  const work = [
    atomsInWords(boxes, words),
    ...added,
    ...(shaped.left > 0 ? ['leave rem sts unworked'] : []),
  ]
    .join(', ')
    .replaceAll(', . ', '. ');
  mesher.beneath = {
    ground: 'open',
    fills: draft.fills,
    posts: draft.posts,
    start: boundary(draft, from, 'before'),
  };
  return { work: work + (draft.round ? joinWords(draft, units[0]) : ''), count: countWords(draft) };
}

/** Boundary before or behind cell `at` of the row, as the work goes. */
function boundary({ row, round }: Draft, at: number, where: 'before' | 'behind'): number {
  const column = row.columns[at] ?? 0;
  const right = (row.reads === 'right-to-left') === (where === 'before');
  const found = column + (right ? 1 : 0);
  return round ? found % row.columns.length : found;
}

const add = <K>(counts: Map<K, number>, key: K, n: number): void => {
  counts.set(key, (counts.get(key) ?? 0) + n);
};

/** What stands before the first box: turn, slip stitches, chain. Counts the first post. */
function firstWords(draft: Draft, unit: Unit): Atom[] {
  const { mesh, post, nth, round, on, shaped, stitches } = draft;
  add(stitches, post, 1);
  if (nth === 0 && on === 'chain' && !round) return [];
  const gap = chainsAfterPost(mesh, unit.cell);
  const counts = `(counts as ${post}${gap > 0 ? ` and ch ${gap}` : ''})`;
  const turns = draft.working.form !== 'round' && (nth > 0 || (on !== 'chain' && !round));
  const turn = turns ? 'turn, ' : '';
  const more = shaped.addedFirst.length;
  if (more > 0 && nth > 0) {
    const first = unit.cell === 'filled' ? 'filled' : 'open';
    return [{ kind: 'words', words: `${turn}ch ${chainsForMore(mesh, more, first)}` }];
  }
  const slips = shaped.slipped > 0 ? `${slipWords(draft, unit.at)}, ` : '';
  return [{ kind: 'words', words: `${turn}${slips}ch ${startChains(mesh, unit.cell)} ${counts}` }];
}

/** "sk first st, sl st in next 2 ch, sl st in next dc": up to the new first post. */
function slipWords(draft: Draft, at: number): string {
  const { terms, mesh, beneath, post, shaped } = draft;
  const slip = terms === 'UK' ? 'ss' : 'sl st';
  const words = [`${terms === 'UK' ? 'miss' : 'sk'} first st`];
  for (let k = at - shaped.slipped; k < at; k++) {
    const fill = fillAt(beneath, draft.row.columns[k] ?? 0);
    const noun = fill === 'filled' ? post : 'ch';
    const n = fill === 'lacet' ? LACET_CHAINS : mesh.gap;
    if (n > 0) words.push(`${slip} in next ${n === 1 ? '' : `${n} `}${noun}`);
    words.push(`${slip} in next ${postAt(beneath, boundary(draft, k, 'behind'), post)}`);
  }
  return words.join(', ');
}

/** One box with the post that closes it. */
function boxAtoms(draft: Draft, unit: Unit, before: readonly Atom[]): Atom[] {
  const { row, round, posts, fills, stitches, post, mesh, low } = draft;
  for (let k = unit.at; k < unit.at + unit.width; k++) fills.set(row.columns[k] ?? 0, unit.cell);
  if (unit.width === 2) {
    posts.set(boundary(draft, unit.at, 'behind'), unit.cell === 'bar' ? 'ch' : low);
  }
  const end = unit.at + unit.width;
  const closes = !(round && end === extentOf(row.cells).to);
  if (closes) add(stitches, post, 1);
  countInside(draft, unit);
  const first = before.length > 0 || unit.at === extentOf(row.cells).from;
  const told = first ? firstFromHook(draft, unit) : null;
  if (told) return [...before, ...told];
  const inside =
    first && unit.cell !== 'filled' ? behindChain(draft, unit) : fillAtoms(draft, unit);
  const close = closes ? [postAtom(draft, end - 1)] : [];
  // A gap of no chains leaves post after post.
  return [...before, ...inside, ...close].filter(
    (atom) => !('n' in atom) || atom.n > 0 || mesh.gap > 0,
  );
}

function countInside({ mesh, post, low, stitches, spaces }: Draft, { cell }: Unit): void {
  if (cell === 'filled') add(stitches, post, mesh.gap);
  else if (cell === 'lacet') {
    add(spaces, LACET_CHAINS, 2);
    add(stitches, low, 1);
  } else add(spaces, cell === 'bar' ? chainsOfBar(mesh.gap) : mesh.gap, 1);
}

/** A first box that begins in a chain counted from the hook: of the foundation, or of boxes added. */
function firstFromHook(draft: Draft, unit: Unit): Atom[] | null {
  const { mesh, post, nth, round, on, shaped, way } = draft;
  const founds = nth === 0 && on === 'chain' && !round;
  const more = nth > 0 ? shaped.addedFirst.length : 0;
  if (!founds && more === 0) return null;
  const open = unit.cell !== 'filled';
  // One open box more has no stitch in its chain: the next goes into the old edge.
  if (more === 1 && open) return [{ kind: 'words', words: `${post} in first st` }];
  const { firstIn } = foundationOf(mesh, {
    boxes: 1,
    first: open ? 'open' : 'filled',
    way: founds ? way : 'shared',
  });
  const skipped = founds
    ? ` (skipped ch count as ${post}${open ? ` and ch ${mesh.gap}` : ''})`
    : '';
  const first: Atom = {
    kind: 'words',
    words: `${post} in ${ordinal(firstIn)} ch from hook${skipped}`,
  };
  if (open || mesh.gap === 0) return [first];
  const rest: Atom = { kind: 'each', n: mesh.gap - 1, noun: 'ch' };
  return [first, ...(mesh.gap > 1 ? [rest] : []), postAtom(draft, unit.at + unit.width - 1)];
}

const ordinal = (n: number): string =>
  n % 10 === 1 && n !== 11
    ? `${n}st`
    : n % 10 === 2 && n !== 12
      ? `${n}nd`
      : n % 10 === 3 && n !== 13
        ? `${n}rd`
        : `${n}th`;

/** The post behind cell `at` of the row. */
function postAtom(draft: Draft, at: number): Atom {
  const { beneath, post, mesh, shaped, row, nth } = draft;
  const place = boundary(draft, at, 'behind');
  const toEdge = extentOf(row.cells).from + shaped.addedFirst.length - 1;
  if (nth > 0 && at === toEdge && shaped.addedFirst.length > 0) {
    return { kind: 'each', n: 1, noun: 'st' };
  }
  if (nth > 0 && at < toEdge) return { kind: 'each', n: 1, noun: 'ch' };
  if (place === beneath.start && !draft.round) {
    const top = ordinal(chainsOfPost(mesh));
    return { kind: 'words', words: `${post} in ${top} ch of turning ch` };
  }
  return { kind: 'each', n: 1, noun: postAt(beneath, place, post) };
}

/** What fills the column of cell `at`; boxes added stand on their own chain. */
function beneathCell({ beneath, row, shaped, nth }: Draft, at: number): Ground {
  const added = nth > 0 && at < extentOf(row.cells).from + shaped.addedFirst.length;
  return added ? 'chain' : fillAt(beneath, row.columns[at] ?? 0);
}

/** Passing over what fills one column. */
function skipAtom(draft: Draft, at: number): Atom {
  const { gap } = draft.mesh;
  switch (beneathCell(draft, at)) {
    case 'open':
      return { kind: 'words', words: `${skipWord(draft)} next ch-${gap} sp` };
    case 'lacet':
      return { kind: 'words', words: `${skipWord(draft)} next ch-${LACET_CHAINS} sp` };
    case 'filled':
      return { kind: 'skip', n: gap, noun: draft.post };
    case 'stitch':
      return { kind: 'skip', n: gap, noun: 'st' };
    default:
      return { kind: 'skip', n: gap, noun: 'ch' };
  }
}

const skipWord = ({ terms }: Draft): string => (terms === 'UK' ? 'miss' : 'sk');

/** Filling one column. */
function fillAtom(draft: Draft, at: number): Atom {
  const { gap } = draft.mesh;
  const into = (chains: number): Atom => ({
    kind: 'words',
    words: `${gap === 1 ? '' : `${gap} `}${draft.post} in next ch-${chains} sp`,
  });
  switch (beneathCell(draft, at)) {
    case 'open':
      return into(gap);
    case 'lacet':
      return into(LACET_CHAINS);
    case 'filled':
      return { kind: 'each', n: gap, noun: draft.post };
    case 'stitch':
      return { kind: 'each', n: gap, noun: 'st' };
    default:
      return { kind: 'each', n: gap, noun: 'ch' };
  }
}

const chains = (n: number): Atom => ({ kind: 'words', words: `ch ${n}` });

function fillAtoms(draft: Draft, unit: Unit): Atom[] {
  const { gap } = draft.mesh;
  if (unit.cell === 'filled') return [fillAtom(draft, unit.at)];
  const first = unit.cell === 'lacet' ? LACET_CHAINS : unit.cell === 'bar' ? chainsOfBar(gap) : gap;
  return gap === 0 ? [] : [chains(first), ...behindChain(draft, unit)];
}

/** What follows the first chain of an open box, a lacet or a bar. */
function behindChain(draft: Draft, unit: Unit): Atom[] {
  const { beneath, post, low } = draft;
  if (unit.width === 1) return draft.mesh.gap === 0 ? [] : [skipAtom(draft, unit.at)];
  const over = wholeBar(draft, unit);
  const middle = postAt(beneath, boundary(draft, unit.at, 'behind'), post);
  if (unit.cell === 'bar') {
    if (over) return [{ kind: 'words', words: `${skipWord(draft)} next ch-${over} sp` }];
    const between: Atom = { kind: 'skip', n: 1, noun: middle };
    return [skipAtom(draft, unit.at), between, skipAtom(draft, unit.at + 1)];
  }
  if (over) return [{ kind: 'words', words: `${low} in next ch-${over} sp` }, chains(LACET_CHAINS)];
  return [
    skipAtom(draft, unit.at),
    { kind: 'words', words: `${low} in next ${middle}` },
    chains(LACET_CHAINS),
    skipAtom(draft, unit.at + 1),
  ];
}

/** Chains of a bar that lies right beneath; null where none does. */
function wholeBar(draft: Draft, { at }: Unit): number | null {
  const { beneath, row, mesh, post } = draft;
  const both = [at, at + 1].every((k) => fillAt(beneath, row.columns[k] ?? 0) === 'bar');
  const inside = postAt(beneath, boundary(draft, at, 'behind'), post) === 'ch';
  return both && inside && beneath.fills.size > 0 ? chainsOfBar(mesh.gap) : null;
}

/** A box beyond the row beneath, at the end. */
function addedAtoms(draft: Draft, unit: Unit, behind: Unit['cell'] | null): string {
  const { mesh, post, posts, fills, stitches, spaces, terms, row } = draft;
  for (let k = unit.at; k < unit.at + unit.width; k++) fills.set(row.columns[k] ?? 0, unit.cell);
  if (unit.width === 2) {
    // Told in boxes: only what the next row meets is noted here.
    posts.set(boundary(draft, unit.at, 'behind'), unit.cell === 'bar' ? 'ch' : draft.low);
    return '';
  }
  if (unit.cell === 'filled') {
    add(stitches, post, pitchOf(mesh.gap));
    return `${pitchOf(mesh.gap)} ${foundationWord(mesh.post, terms)}`;
  }
  const long = wordFor(longStitch(mesh), terms);
  add(stitches, long, 1);
  add(spaces, mesh.gap, 1);
  posts.set(boundary(draft, unit.at, 'behind'), long);
  const foot =
    behind === 'filled'
      ? `previous ${post}`
      : behind === 'open'
        ? `previous ${long}`
        : `same st as last ${post}`;
  // Behind a comma the foundation stitches would read as one group with the long one.
  const words = `h ${mesh.gap}, ${long} in ${foot}`;
  return behind === 'filled' ? `. C${words}` : `c${words}`;
}

const foundationWord = (stem: StemId, terms: Terms): string => `f${wordFor(stem, terms)}`;

function joinWords({ mesh, terms }: Draft, first: Unit | undefined): string {
  const slip = terms === 'UK' ? 'ss' : 'sl st';
  const made = startChains(mesh, first?.cell ?? 'open');
  return `; join with ${slip} in ${ordinal(chainsOfPost(mesh))} ch of beg ch-${made}`;
}

function countWords({ stitches, spaces }: Draft): string {
  const counts = [...stitches].filter(([, n]) => n > 0).map(([word, n]) => `${n} ${word}`);
  const gaps = [...spaces]
    .filter(([size, n]) => n > 0 && size > 0)
    .sort(([a], [b]) => a - b)
    .map(([size, n]) => `${n} ch-${size} ${n === 1 ? 'sp' : 'sps'}`);
  return [...counts, ...gaps].join(', ');
}
