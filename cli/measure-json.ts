/** The sheet as JSON, version 1: docs/measure-json.md tells the shape. */
import {
  type Amount,
  type Figure,
  rounded,
  runningLength,
  type Sheet,
  type SizeSheet,
  texOf,
} from '../src/index.ts';

export function measureJson(sheet: Sheet, file: string): string {
  const { title, gauges, notKnown } = sheet;
  const value = {
    version: 1,
    file,
    title,
    hooksMm: gauges.hooks.map(({ mm }) => mm),
    yarns: gauges.yarns.map((yarn) => {
      const run = runningLength(yarn);
      const { name, weightClass, ball, fibre } = yarn;
      return { name, weightClass, ball, fibre, tex: run && tidy(texOf(run.metresPer100g)) };
    }),
    gauges: gauges.records.map((record) => ({
      fabric: record.fabric,
      unit: record.unit,
      unitWidthMm: record.unitWidthMm === null ? null : tidy(record.unitWidthMm),
      rowHeightMm: record.rowHeightMm === null ? null : tidy(record.rowHeightMm),
      widthSpread: tidy(record.widthSpread),
      heightSpread: tidy(record.heightSpread),
      worked: record.worked,
      blocking: record.blocking,
      beforeBlocking: record.before,
      swatches: record.counts.map(({ words }) => words),
    })),
    sizes: sheet.sizes.map(sizeJson),
    lengths: sheet.lengths.map(({ size, part, rows, wanted, reached }) => ({
      size,
      part,
      rows,
      wantedMm: tidy(wanted.mm),
      reachedMm: tidy(reached.mm),
    })),
    notKnown,
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

const tidy = (n: number): number => Number(n.toFixed(3));

function sizeJson({ size, stitches, pieces, yarns, hours, leans, refits }: SizeSheet) {
  return {
    size,
    stitches,
    pieces: pieces.map(({ name, copies, parts, whole }) => ({
      name,
      copies,
      parts: parts.map((part) => ({
        name: part.name,
        form: part.form,
        rows: part.rows,
        labels: part.labels,
        measures: measuresJson(part.measures),
      })),
      whole: measuresJson(whole),
    })),
    yarns: yarns.map((need) => ({
      name: need.name,
      how: need.how,
      because: need.because,
      metres: amountJson(need.metres),
      grams: need.grams && amountJson(need.grams),
      foundationMetres: tidy(need.foundation),
      joinMetres: tidy(need.joins),
      tailMetres: tidy(need.tails),
      seamMetres: tidy(need.seams),
      margin: {
        share: need.margin.share,
        metres: asKnown(need.margin.metres),
        because: need.margin.because,
      },
      balls: need.balls,
      cautions: need.cautions,
    })),
    hours: {
      from: Number(hours.from.toFixed(1)),
      to: Number(hours.to.toFixed(1)),
      because: hours.because,
    },
    leans: leans.map(({ name, what, at, until, lean, remedies }) => ({
      name,
      what,
      at,
      until,
      stitches: { from: tidy(lean.stitches.from), to: tidy(lean.stitches.to) },
      mm: { from: Math.round(lean.mm.from), to: Math.round(lean.mm.to) },
      knownRounds: lean.knownRounds,
      unknownRounds: lean.unknownRounds,
      because: lean.because,
      remedies: remedies.map((remedy) => ({ ...remedy, leavesUpTo: tidy(remedy.leavesUpTo) })),
    })),
    otherCounts: refits.map(refitJson),
  };
}

type Refit = SizeSheet['refits'][number];
type CountRefit = NonNullable<Refit['counts']>;

function refitJson({ name, counts, rows }: Refit) {
  return {
    name,
    count: counts?.count ?? null,
    wantedMm: counts && Math.round(counts.wanted.mm),
    sameCountMm: counts && Math.round(counts.sameCount.mm),
    kept: counts ? counts.demands.map(({ because }) => because) : [],
    counts: counts ? counts.others.map(countJson) : [],
    nearest: counts?.nearest ? countJson(counts.nearest) : null,
    rows: rows.map((part) => ({
      part: part.name,
      first: part.first,
      last: part.last,
      rows: part.rows,
      way: part.way,
      wantedMm: Math.round(part.wanted.mm),
      more: part.more,
      mm: Math.round(part.size.mm),
    })),
  };
}

const countJson = ({ count, size, chains }: CountRefit['others'][number]) => ({
  count,
  mm: Math.round(size.mm),
  chains,
});

/** Sizes that are only assumed are left out: there is nothing to measure by. */
const measuresJson = (measures: Readonly<Record<string, Figure>>): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(measures)
      .filter(([, { how }]) => how !== 'assumed')
      .map(([what, figure]) => [
        what,
        {
          cm: rounded(figure, 'cm'),
          in: rounded(figure, 'in'),
          spread: tidy(figure.spread),
          how: figure.how,
          because: figure.because,
        },
      ]),
  );

const amountJson = ({ value, spread }: Amount) => ({
  value: asKnown(value),
  from: asKnown(value * (1 - spread)),
  to: asKnown(value * (1 + spread)),
});

/** Whole ones; two figures of what is less than ten, so that little does not become nothing. */
const asKnown = (n: number): number => (n < 10 ? Number(n.toPrecision(2)) : Math.round(n));
