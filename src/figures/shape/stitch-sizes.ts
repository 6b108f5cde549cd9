/** Width and height of every stitch, from the gauges of the pattern: the fabric of a row decides. */
import type { KindTable, RowRecord } from '../../fabric/index.ts';
import { boxSize, fabricGauge, type Gauges, type How } from '../../gauge/index.ts';
import { heightOf, type StemId } from '../../notation/index.ts';
import type { SizesFor } from './piece-graph.ts';
import type { SizesOfRow } from './stitch-graph.ts';

/** How the sizes of a piece's stitches were had, from the least sure of them. */
export interface SizesHad {
  readonly how: How;
  readonly spread: number;
  /** Sentences, each once. */
  readonly because: readonly string[];
}

export interface StitchSizes {
  readonly sizesFor: SizesFor;
  readonly had: () => SizesHad;
}

/** Rows of post stitches stand lower: the stitch begins beside its foot, not on it (ours, by eye). */
const POST_HEIGHT = 0.75;
/** A picot sits on its stitch and takes little room along the row (ours). */
const PICOT = { width: 0.2, height: 0.6 };

export function stitchSizes(gauges: Gauges, kinds: KindTable): StitchSizes {
  const asked = new Asked(gauges);
  const sizesFor: SizesFor = (record, above) => {
    const row = record ?? above;
    if (row && row.tally.boxes > 0) return boxRow(asked, row, kinds);
    return plainRow(asked, kinds, mainStem(row, kinds));
  };
  return { sizesFor, had: () => asked.had() };
}

/** Looks gauges up once each, and remembers which were needed. */
class Asked {
  private readonly gauges: Gauges;
  private readonly byStem = new Map<StemId, ReturnType<typeof fabricGauge>>();
  private readonly notes = new Map<string, { how: How; spread: number }>();

  constructor(gauges: Gauges) {
    this.gauges = gauges;
  }

  stem(stem: StemId): ReturnType<typeof fabricGauge> {
    const known = this.byStem.get(stem);
    if (known) return known;
    const gauge = fabricGauge(this.gauges, stem);
    this.byStem.set(stem, gauge);
    if (stem !== 'slip') this.notes.set(gauge.because, gauge);
    return gauge;
  }

  box(row: RowRecord): { widthMm: number; heightMm: number; gap: number } {
    const gap = this.gauges.meshGap ?? row.tally.spaces[0]?.chains ?? 2;
    const size = boxSize(this.gauges, { post: this.gauges.terms === 'UK' ? 'tr' : 'dc', gap });
    this.notes.set(size.because, size);
    return { ...size, gap };
  }

  had(): SizesHad {
    const all = [...this.notes.values()];
    const rank = (how: How): number => ['swatch', 'estimate', 'assumed'].indexOf(how);
    const how = all.map((note) => note.how).sort((a, b) => rank(b) - rank(a))[0] ?? 'assumed';
    return {
      how,
      spread: Math.max(0, ...all.map(({ spread }) => spread)),
      because: [...this.notes.keys()],
    };
  }
}

/** A row of boxes is as wide as its boxes, whatever stitches fill them. */
function boxRow(asked: Asked, row: RowRecord, kinds: KindTable): SizesOfRow {
  const { widthMm, heightMm, gap } = asked.box(row);
  return {
    widthMm: () => widthMm / (gap + 1),
    heightMm: (kind) => (['chain', 'closer'].includes(kinds.kinds[kind]!.class) ? 0 : heightMm),
  };
}

function plainRow(asked: Asked, kinds: KindTable, main: StemId): SizesOfRow {
  const width = asked.stem(main).stitchWidthMm;
  return {
    widthMm: (number) => {
      const kind = kinds.kinds[number]!;
      if (kind.class === 'ring') return 0;
      if (kind.class === 'picot') return PICOT.width * width;
      // Lies along the space that it closes, as long as it is high.
      if (kind.class === 'closer') return asked.stem(kind.stem ?? main).rowHeightMm;
      return kind.stem === null ? width : asked.stem(kind.stem).stitchWidthMm;
    },
    heightMm: (number) => {
      const kind = kinds.kinds[number]!;
      if (['chain', 'closer', 'ring'].includes(kind.class)) return 0;
      if (kind.class === 'picot') return PICOT.height * width;
      const height = asked.stem(kind.stem ?? main).rowHeightMm;
      return kind.name.includes('-post') ? POST_HEIGHT * height : height;
    },
  };
}

/** The stitch that most of a row is made of. */
export function mainStem(row: RowRecord | null, kinds: KindTable): StemId {
  let best: StemId = 'w0';
  let most = 0;
  for (const [name, n] of row?.tally.byKind ?? []) {
    const stem = kinds.kinds[kinds.byName.get(name) ?? -1]?.stem ?? null;
    if (stem && heightOf(stem) > 0 && n > most) {
      most = n;
      best = stem;
    }
  }
  return best;
}
