/** How high the rows are that were worked, by the gauges of the pattern. */
import { fabricGauge, type Gauges, isCounted, readGauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import type { StemId } from '../notation/index.ts';
import type { RowRecord } from './fabric.ts';
import type { KindTable } from './kinds.ts';

export interface Height {
  readonly mm: number;
  readonly how: 'swatch' | 'estimate';
  /** Sentences. */
  readonly because: readonly string[];
}

export interface Heights {
  /** Is any gauge given? The yarn's usual gauge is no ground to count rows by. */
  readonly known: () => boolean;
  /** A row of this stitch; `null` for a mesh that has no gauge of its own. */
  readonly of: (fabric: StemId | 'mesh') => Height | null;
}

/** The pattern's gauges are read when a length first asks for them: most patterns have none to. */
export function newHeights(manuscript: Manuscript): Heights {
  let gauges: Gauges | null = null;
  const read = (): Gauges => {
    gauges ??= readGauges(manuscript);
    return gauges;
  };
  const found = new Map<StemId | 'mesh', Height | null>();
  return {
    known: () => isCounted(read()),
    of: (fabric) => {
      if (!found.has(fabric)) found.set(fabric, heightIn(read(), fabric));
      return found.get(fabric) ?? null;
    },
  };
}

function heightIn(gauges: Gauges, fabric: StemId | 'mesh'): Height | null {
  const mesh = gauges.records.find(({ isMesh }) => isMesh);
  if (fabric === 'mesh' && !mesh) return null;
  const { rowHeightMm, height } = fabricGauge(gauges, fabric === 'mesh' ? mesh!.fabric : fabric);
  if (height.how === 'assumed') return null;
  return { mm: rowHeightMm, how: height.how, because: [height.because] };
}

const LEVEL: Height = { mm: 0, how: 'swatch', because: [] };
const MIXED = 'A row of several stitches is taken to be as high as its tallest.';

/** Stitches with chains between them lie lower than their gauge, unless they are tall as posts. */
const TOO_LOW_FOR_SPACES: ReadonlySet<StemId> = new Set(['slip', 'w0', 'w0x']);

/** Height of a row by its tallest stitch; `null` where nothing tells it. */
export function heightOf(row: RowRecord, kinds: KindTable, heights: Heights): Height | null {
  if (row.joins || UNSURE.has(row.verdict)) return null;
  if (row.verdict === 'omitted' || row.nodes.to === row.nodes.from) return LEVEL;
  const stems = stemsOf(row, kinds);
  if (!stems || stems.size === 0) return null;
  const each = [...stems].map((stem) => ({ stem, height: heights.of(stem) }));
  const tallest = each.reduce((a, b) => ((b.height?.mm ?? 0) > (a.height?.mm ?? 0) ? b : a));
  if (row.tally.spaces.length > 0) {
    const mesh = heights.of('mesh');
    if (mesh) return mesh;
    if (TOO_LOW_FOR_SPACES.has(tallest.stem)) return null;
  }
  if (!tallest.height || each.length === 1) return tallest.height;
  return { ...tallest.height, how: 'estimate', because: [...tallest.height.because, MIXED] };
}

const UNSURE: ReadonlySet<RowRecord['verdict']> = new Set(['mismatch', 'unread', 'unchecked']);

/** Stems of all stitches; `null` where one has none: a special stitch, one that was not understood. */
function stemsOf({ tally }: RowRecord, kinds: KindTable): ReadonlySet<StemId> | null {
  const stems = new Set<StemId>();
  for (const name of tally.byKind.keys()) {
    const kind = kinds.kinds[kinds.byName.get(name) ?? -1];
    if (!kind?.counted) continue;
    if (kind.stem === null || kind.special !== null) return null;
    stems.add(kind.stem);
  }
  return stems;
}
