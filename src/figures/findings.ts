/** What gauge and counts say against what the pattern states. */
import { type Fabric, MISFITS } from '../fabric/index.ts';
import { type Finding, sizeOffGauge, swatchSmall } from '../finding/index.ts';
import { type GaugeRecord, type Gauges, gaugeFindings, readGauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { length, printLength } from '../units/index.ts';
import { type Figure, sumOf } from './figure.ts';
import { type MeasureName, type PieceSize, pieceSizes } from './part-size.ts';
import { shortFigure } from './print.ts';
import { type StatedSize, statedSizes, type Way } from './stated-sizes.ts';

export function figureFindings(manuscript: Manuscript, fabric: Fabric): readonly Finding[] {
  const gauges = readGauges(manuscript);
  if (gauges.records.length === 0) return [];
  const found = [...gaugeFindings(gauges)];
  // Sizes that rest on a doubtful gauge or on rows that do not come out say nothing.
  if (found.length > 0 || !comesOut(fabric)) return found;
  const sizes = fabric.cloths.map((cloth) => pieceSizes(cloth, fabric, gauges));
  found.push(...smallSwatches(gauges, sizes[0] ?? []));
  for (const stated of statedSizes(manuscript)) {
    const off = offGauge(stated, sizes, manuscript.head.sizes);
    if (off) found.push(off);
  }
  return found;
}

const comesOut = (fabric: Fabric): boolean =>
  fabric.cloths.every(({ rows }) =>
    rows.every(
      ({ verdict, facts }) =>
        verdict !== 'unread' &&
        verdict !== 'unchecked' &&
        !facts.some(({ kind }) => MISFITS.has(kind) || kind === 'open-length'),
    ),
  );

/** Largest length of a piece from which a count over a few stitches is worth a note: 40 cm (ours). */
const LARGE_MM = 400;
/** A quarter stitch over this share of the count is too coarse: 4 %, six units (ours). */
const COARSE = 0.04;

function smallSwatches(gauges: Gauges, pieces: readonly PieceSize[]): readonly Finding[] {
  const figures = pieces.flatMap(({ parts }) =>
    parts.flatMap(({ measures }) => Object.values(measures)),
  );
  const largest = Math.max(0, ...figures.map(({ mm }) => mm));
  if (largest < LARGE_MM) return [];
  return gauges.records.flatMap((record) => {
    const few = fewest(record);
    if (few === null || 0.25 / few.n <= COARSE || record.counts.length > 1) return [];
    const { n, what } = few;
    const said = (mm: number): string => printLength(length(mm, 'mm'), 'cm');
    return [
      swatchSmall(record.span, {
        counted: `${n} ${what}`,
        size: said(largest),
        off: said((largest * 0.25) / n),
      }),
    ];
  });
}

/** Ten centimetres and four inches are what the trade counts over, however few stitches they hold. */
const USUAL_MM = 95;

/** The coarser side of a count over less than that; `null` where there is none. */
function fewest({ counts, unit }: GaugeRecord): { n: number; what: string } | null {
  const sides = counts.flatMap(({ across, up }) => [
    ...(across ? [{ ...across, what: unit === 'box' ? 'boxes' : 'stitches' }] : []),
    ...(up ? [{ ...up, what: up.worked }] : []),
  ]);
  const short = sides.filter(({ mm }) => mm < USUAL_MM).sort((a, b) => a.n - b.n);
  return short[0] ?? null;
}

/** Within 8 %, or two and a half times the spread, a size is what blocking makes of it (ours). */
const ALLOWED = 0.08;

const NAMES: Readonly<Record<Way, readonly MeasureName[]>> = {
  across: ['across', 'wide', 'flat', 'long'],
  around: ['around'],
  wide: ['wide', 'flat', 'across', 'long', 'last edge', 'around'],
  high: ['high', 'long', 'deep', 'wide', 'across', 'strap'],
};

/**
 * Said only of a plain piece: all figures of that way must rest on her own swatch, and none of any
 * part may come near. Toys are filled and assembled, so theirs are left alone.
 */
function offGauge(
  stated: StatedSize,
  sizes: readonly (readonly PieceSize[])[],
  names: readonly string[],
): Finding | null {
  for (const [at, pieces] of sizes.entries()) {
    const mm = stated.mm.length === 1 ? stated.mm[0]! : stated.mm[at];
    if (mm === undefined || (stated.mm.length === 1 && sizes.length > 1)) continue;
    const candidates = candidatesOf(pieces, stated.way);
    const whole = pieces.filter(({ parts }) => parts[0]?.form !== 'edging');
    const isAlone = whole.length === 1 && whole[0]!.copies === 1;
    const isPlain = isAlone && candidates.every(({ how }) => how === 'swatch');
    if (!isPlain || candidates.length === 0) return null;
    const isNear = ({ mm: by, spread }: Figure): boolean =>
      Math.abs(by / mm - 1) <= Math.max(ALLOWED, 2.5 * spread);
    if (candidates.some(isNear)) continue;
    const unit = /in|["″”]/.test(stated.words) ? 'us' : 'metric';
    const nearest = candidates.reduce((a, b) => (off(b, mm) < off(a, mm) ? b : a));
    const sum = [...nearest.because, countSaid(nearest, { mm, unit })].join(' ').trim();
    const size = names[at] ? { sizes: [names[at]] } : {};
    return sizeOffGauge(
      stated,
      {
        stated: stated.words.trim(),
        part: pieces[0]!.name || 'the piece',
        computed: shortFigure(nearest, unit),
      },
      { sum, ...size },
    );
  }
  return null;
}

/** "127 stitches come to 23 in; 20½ in would be 114." */
function countSaid(
  figure: Figure,
  stated: { readonly mm: number; readonly unit: 'us' | 'metric' },
): string {
  const { count } = figure;
  if (!count) return '';
  const { because: _, ...bare } = figure;
  const asked = shortFigure({ ...bare, because: [], mm: stated.mm }, stated.unit);
  const wanted = Math.round((count * stated.mm) / figure.mm);
  return `${count} stitches come to ${shortFigure(figure, stated.unit)}; ${asked} would be ${wanted}.`;
}

const off = ({ mm }: Figure, stated: number): number => Math.abs(Math.log(mm / stated));

/** Every length that a maker could mean: of each part, of the whole, and along several parts. */
function candidatesOf(pieces: readonly PieceSize[], way: Way): readonly Figure[] {
  const found: Figure[] = [];
  for (const { parts, whole } of pieces) {
    if (parts.some(({ form }) => form === 'ball')) return [];
    for (const { measures } of [...parts, { measures: whole }]) {
      found.push(...NAMES[way].flatMap((name) => measures[name] ?? []));
    }
    if (way !== 'high') continue;
    // A hat is measured from the middle of its crown: half across, and on down the side.
    const along = parts.flatMap(({ measures, form }) => {
      const { high, across } = measures;
      if (form === 'round base' && across) return [{ ...across, mm: across.mm / 2 }];
      return high ? [high] : [];
    });
    for (let at = 0; at < along.length; at++) found.push(sumOf(along.slice(at)));
  }
  return found;
}
