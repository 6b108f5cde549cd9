/** A stretch of the manuscript: UTF-16 offsets, `to` exclusive. Every node of every stage has one. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The span that holds both. */
export const cover = (a: Span, b: Span): Span => ({
  from: Math.min(a.from, b.from),
  to: Math.max(a.to, b.to),
});

/** The same span counted from another origin: tree spans count from their instruction's start. */
export const shift = (span: Span, by: number): Span => ({
  from: span.from + by,
  to: span.to + by,
});
