/** Stitches, their names in both terminologies and their chains, as printed. */

/** The pairs of words, T7, T12, T13, T14. */
export const PAIRS_SOURCE =
  'T7, "Crochet symbol and term pages: UK abbreviations", a UK book publisher, 2015; T12, ' +
  '"Crochet terms by country (US and UK)", a crochet designer site; T13, "American versus ' +
  'European crochet terms", a lace site; T14, "Knitting and crochet abbreviations", an ' +
  'Australian craft chain';

export const PAIRS = [
  { us: 'ss', uk: 'ss' },
  { us: 'sc', uk: 'dc' },
  { us: 'hdc', uk: 'htr' },
  { us: 'dc', uk: 'tr' },
  { us: 'tr', uk: 'dtr' },
  { us: 'dtr', uk: 'trtr' },
  { us: 'dtr', uk: 'ttr' },
  { us: 'trtr', uk: 'qtr' },
] as const;

/** Pairs of shaped stitches and other words, with the sentence that is the same in both. */
export const SHAPED_PAIRS = [
  { us: 'sc2tog', uk: 'dc2tog' },
  { us: 'dc2tog', uk: 'tr2tog' },
] as const;

/** Nominal heights in chains, a convention and no measurement. */
export const HEIGHTS_SOURCE =
  'T2, "How to crochet a turning chain (table)", a how-to publisher; T6, "Mehr Häkelmaschen ' +
  '(stitch heights 0 to 5)", a German pattern blog; triple treble and taller derived, one more each';

export const HEIGHTS = [
  { us: 'ss', height: 0 },
  { us: 'sc', height: 1 },
  { us: 'hdc', height: 2 },
  { us: 'dc', height: 3 },
  { us: 'tr', height: 4 },
  { us: 'dtr', height: 5 },
  { us: 'trtr', height: 6 },
  { us: 'qtr', height: 7 },
] as const;

/**
 * Turning chains of T2 (with T5, "Tachiagari (starting chains) and stitch height, Japanese
 * practice", a Japanese crochet site, 2020, and T6 alike), whether they count (T2, T3, T15), and
 * the chain from the hook for the first stitch.
 */
export const TURNING_SOURCE =
  'T2, "How to crochet a turning chain (table)"; T3, "Turning chains when working crochet in rows ' +
  'or rounds", a crochet blog, 2009; T15, "The lowdown on turning chains in patterns", 2013';

export const TURNING = [
  { stitch: 'sc', chain: 1, counts: false, first: 2 },
  { stitch: 'hdc', chain: 2, counts: true, first: 3 },
  { stitch: 'dc', chain: 3, counts: true, first: 4 },
  { stitch: 'tr', chain: 4, counts: true, first: 5 },
  { stitch: 'dtr', chain: 5, counts: true, first: 6 },
  { stitch: 'trtr', chain: 6, counts: true, first: 7 },
] as const;

/** Shorter chains. */
export const SHORT_SOURCE =
  'T4, "Crochet turning chain: does it count as a stitch (shorter chains)", a UK crochet designer';

export const SHORT_TURNING = [
  { stitch: 'sc', chain: 1 },
  { stitch: 'hdc', chain: 1 },
  { stitch: 'dc', chain: 2 },
  { stitch: 'tr', chain: 3 },
] as const;

/** Chains for a row of so many stitches; the last way gives the counted chain its own base (T5). */
export const FOUNDATIONS = [
  { wanted: 20, stitch: 'sc', chain: 21, nth: 2, counts: false },
  { wanted: 20, stitch: 'dc', chain: 22, nth: 4, counts: true },
  { wanted: 20, stitch: 'hdc', chain: 21, nth: 3, counts: true },
  { wanted: 20, stitch: 'dc', chain: 23, nth: 5, counts: true },
] as const;

export const FOUNDATION_SOURCE =
  'derived: stitches wanted + turning chain - 1 if it counts (T2, T3); ch 23 by T5, "Tachiagari ' +
  '(starting chains) and stitch height, Japanese practice", 2020, where it has a base of its own';
