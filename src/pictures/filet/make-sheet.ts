/** From a chart block to all that its drawing needs to know. */
import { type ChartUse, type Fabric, usesOf } from '../../fabric/index.ts';
import { readsOf, type Working } from '../../filet/index.ts';
import { boxSize, type Gauges } from '../../gauge/index.ts';
import type { Cell, Chart, Manuscript } from '../../manuscript/index.ts';
import { STEMS, stemOf } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { againIn } from './again.ts';
import { leanNotes } from './lean-note.ts';
import type { Beside, Sheet, SheetBox, SheetRow } from './sheet.ts';
import { writtenUses } from './written.ts';

export interface SheetOptions {
  /** Default 'right'. The picture is the same for both; only how it is read changes. */
  readonly hand?: Working['hand'];
  /** 'true' to the fabric (the default), or 'square'. */
  readonly boxes?: 'true' | 'square';
}

/** Classic mesh, where neither chart nor fabric names one (filet handbooks). */
const CLASSIC_GAP = 2;

/** The chart as the pattern works it. */
export function sheetOf(
  chart: Chart,
  { manuscript, fabric, gauges }: { manuscript: Manuscript; fabric: Fabric; gauges: Gauges },
  options: SheetOptions = {},
): Sheet {
  const { hand = 'right' } = options;
  const { terms } = manuscript.terms;
  const named = fabric.cloths.map((cloth) => usesOf(chart, fabric, cloth));
  const isNamed = named.some((uses) => uses.length > 0);
  const bySize = isNamed
    ? named
    : fabric.cloths.map((cloth) => writtenUses(chart, fabric, cloth, terms));
  const uses = firstUses(bySize[0] ?? [], chart.rows.length);
  const mesh = meshOf(chart, uses, terms);
  const { title, version, date } = manuscript.head;
  return {
    name: chart.name,
    pattern: title ?? '',
    edition: [version && `version ${version}`, date].filter(Boolean).join(', '),
    form: formOf(uses),
    hand,
    rows: rowsOf(chart, manuscript.text, { uses, bySize, hand }),
    columns: Math.max(0, ...chart.rows.map((row) => row.length)),
    mesh: mesh.value,
    terms,
    box: boxOf(gauges, mesh.value, options),
    times: Math.max(1, ...uses.flatMap((use) => use?.times ?? [])),
    again: againIn(fabric.cloths.map((cloth, i) => ({ cloth, uses: bySize[i] ?? [] }))),
    uses: uses.filter((use) => use !== null),
    notes: [
      ...mesh.notes,
      ...useNotes(bySize[0] ?? [], uses),
      ...leanNotes(uses, { manuscript, fabric }, hand),
    ],
  };
}

const padded = (cells: readonly Cell[], columns: number): readonly Cell[] => [
  ...cells,
  ...new Array<Cell>(columns - cells.length).fill('none'),
];

/** The first use of each chart row; `null` where the pattern never works it. */
function firstUses(uses: readonly ChartUse[], rows: number): readonly (ChartUse | null)[] {
  return Array.from({ length: rows }, (_, row) => uses.find((use) => use.row === row) ?? null);
}

function formOf(uses: readonly (ChartUse | null)[]): Working['form'] {
  const known = uses.filter((use) => use !== null);
  if (!known.some(({ record }) => record.closes)) return 'flat';
  return known.every(({ record }) => record.side === known[0]?.record.side) ? 'round' : 'turned';
}

function meshOf(chart: Chart, uses: readonly (ChartUse | null)[], terms: 'US' | 'UK') {
  const post = chart.mesh?.post ?? (terms === 'US' ? 'dc' : 'tr');
  const worked = uses.find((use) => use?.gap !== null && use?.gap !== undefined)?.gap;
  const gap = chart.mesh?.gap ?? worked ?? CLASSIC_GAP;
  const notes =
    chart.mesh !== null
      ? []
      : worked !== undefined && worked !== null
        ? [
            `The chart names no mesh: it is drawn with ${gap} ch to an open box, as the rows work it.`,
          ]
        : [`The chart names no mesh: ${post} posts with ${gap} ch between them are assumed.`];
  return { value: { post, gap, wraps: wrapsOf(post, terms) }, notes };
}

/** Wraps before the hook goes in: one slash each in the trade's symbols, at most five are drawn. */
function wrapsOf(post: string, terms: 'US' | 'UK'): number {
  const id = stemOf(post, terms);
  const wraps = STEMS.find((stem) => stem.id === id)?.id.match(/^w(\d)$/)?.[1];
  return Math.min(5, Number(wraps ?? 1));
}

function boxOf(
  gauges: Gauges,
  mesh: { readonly post: string; readonly gap: number },
  { boxes = 'true' }: SheetOptions,
): SheetBox {
  const size = boxSize(gauges, mesh);
  if (boxes === 'square') {
    return {
      widthMm: size.widthMm,
      heightMm: size.widthMm,
      from: 'square',
      because: 'Boxes are drawn square, as asked; the fabric may be wider or higher.',
    };
  }
  const { widthMm, heightMm, how } = size;
  return { widthMm, heightMm, from: how === 'swatch' ? 'gauge' : 'usual', because: BECAUSE[how] };
}

/** How the proportion of the boxes was had, for those who work from the chart. */
const BECAUSE: Readonly<Record<'swatch' | 'estimate' | 'assumed', string>> = {
  swatch: 'Boxes have the proportions of the gauge.',
  estimate:
    'No gauge in mesh is given: the boxes are drawn in the proportions that other figures of the pattern lead to.',
  assumed: 'No gauge is given: the boxes are drawn in usual proportions.',
};

interface RowScene {
  readonly uses: readonly (ChartUse | null)[];
  readonly bySize: readonly (readonly ChartUse[])[];
  readonly hand: Working['hand'];
}

function rowsOf(chart: Chart, text: string, scene: RowScene): readonly SheetRow[] {
  const columns = Math.max(0, ...chart.rows.map((row) => row.length));
  const known = scene.uses.find((use) => use !== null);
  return chart.rows.toReversed().map((cells, nth) => {
    const use = scene.uses[nth] ?? null;
    const origin = chart.rowSpans.at(-1 - nth) ?? null;
    const isTurned = formOf(scene.uses) !== 'round' && nth % 2 === 1;
    const record = use?.record;
    const side = record ? (record.side === 'RS' ? 'right' : 'wrong') : isTurned ? 'wrong' : 'right';
    return {
      number: record?.number ?? nth + 1,
      label: record?.label ?? (known ? '' : `Row ${nth + 1}`),
      side,
      reads: readsOf(side, scene.hand),
      cells: padded(cells, columns),
      origins: origin ? signSpans(text, origin) : [],
      origin,
      before: besideOf(scene, nth, 'before'),
      after: besideOf(scene, nth, 'after'),
    };
  });
}

/** Of each sign in a chart's line, in the order of the picture. */
function signSpans(text: string, { from, to }: Span): readonly Span[] {
  let at = from;
  return [...text.slice(from, to)].map((sign) => {
    const span = { from: at, to: at + sign.length };
    at = span.to;
    return span;
  });
}

/** The boxes beside the chart in all sizes; one number if they agree, `null` if one is not known. */
function besideOf(
  { uses, bySize }: RowScene,
  nth: number,
  where: 'before' | 'after',
): Beside | null {
  const own = uses[nth];
  if (!own) return null;
  const all = bySize.map((some) => some.find((use) => use.row === nth)?.[where] ?? null);
  if (all.some((one) => one === null)) return null;
  const sizes = all as readonly Beside[];
  const boxes = sizes.flatMap((one) => one.boxes);
  const kinds = new Set(sizes.map(({ kind }) => kind));
  const kind = kinds.size === 1 ? (sizes[0]?.kind ?? 'mixed') : 'mixed';
  return { boxes: new Set(boxes).size === 1 ? boxes.slice(0, 1) : boxes, kind };
}

function useNotes(all: readonly ChartUse[], firsts: readonly (ChartUse | null)[]): string[] {
  if (all.length === 0) {
    return [
      'No row of the pattern names this chart, nor do written rows make it box for box: it is drawn as worked flat, row 1 from the right side.',
    ];
  }
  const missing = firsts.flatMap((use, row) => (use ? [] : [row + 1]));
  const again = all.filter((use) => !firsts.includes(use) && use.part === null);
  return [
    ...(missing.length > 0
      ? [
          `No row of the pattern works chart row${missing.length > 1 ? 's' : ''} ${missing.join(', ')}, counted from the bottom.`,
        ]
      : []),
    ...joinNote(firsts),
    ...partsNote(all),
    ...(again.length > 0 ? [`The chart is worked again in ${listed(again)}.`] : []),
  ];
}

/** A chart that begins at a round's end and goes on behind the join. */
function joinNote(firsts: readonly (ChartUse | null)[]): string[] {
  const use = firsts.find((one) => one?.acrossJoin);
  if (!use?.acrossJoin) return [];
  const n = use.acrossJoin;
  const [first, last] =
    n === 1 ? ['box 1 is', 'the others'] : [`boxes 1 to ${n} are`, 'the others'];
  return [
    `The chart runs across the join: ${first} worked at the round\u2019s end, ${last} at its start.`,
  ];
}

/** "Row 9 to Row 11 are worked in parts, each by itself." */
function partsNote(all: readonly ChartUse[]): string[] {
  const uses = all.filter(({ part }) => part !== null);
  const [first] = uses;
  const last = uses.at(-1);
  const parts = [...new Set(uses.map(({ part }) => part && `boxes ${part.from} to ${part.to}`))];
  if (!first || !last || parts.length < 2) return [];
  return [`${first.record.label} to ${last.record.label} are worked in parts, each by itself.`];
}

/** "Rnds 6–9"; others by name, the first few of many. */
function listed(uses: readonly ChartUse[]): string {
  const labels = uses.map(({ record }) => record.label);
  // "Rep rows 2-5 twice" gives its rows no numbers.
  if (labels.includes('')) return uses.length === 1 ? 'one more row' : `${uses.length} more rows`;
  const numbers = uses.map(({ record }) => record.number ?? Number.NaN);
  const runs = numbers.every((n, i) => i === 0 || n === (numbers[i - 1] ?? 0) + 1);
  const word = /^\p{L}+/u.exec(labels[0] ?? '')?.[0];
  if (runs && labels.length > 2 && word) return `${word}s ${numbers[0]}–${numbers.at(-1)}`;
  return labels.length > 4
    ? `${labels.slice(0, 3).join(', ')} and ${labels.length - 3} more rows`
    : labels.join(', ');
}
