/**
 * Stitch names as data. Short forms and full names agree with the trade council's published lists
 * of abbreviations (US and UK, see docs/sources.md); older and sloppy forms: notation met in print,
 * common practice. A phrase may be written with spaces, hyphens or abbreviation stops.
 */
import type { StemWord, StitchShape } from './tree.ts';

/** Stem, then the ways it is written, separated by bars. Plurals with "s" are added. */
export const STEM_NAMES: Readonly<Record<StemWord, string>> = {
  // "SI st" is a scanner's slip.
  ss: 'ss|slst|sl st|si st|slip stitch|slip st|sl stitch|slipstitch|slp st|sl|slip|sst|s st|slstitch',
  // "se", "dce" and "ine" are scanners' slips.
  sc: 'sc|scing|se|s c|single crochet|single|singles|singlecrochet|sing crochet',
  hdc: 'hdc|hdcing|h d c|h dc|s d c|half double crochet|half dc|hf dc|half double|halfdouble|half d c|sdc',
  dc: 'dc|dcing|d c|double crochet|double|doubles|dbl crochet|dble crochet|dbl|doublecrochet',
  htr: 'htr|half treble|half treble crochet|half tr|half trebles|short treble|h tr|htc',
  tr: 'tr|trc|tc|tr c|t c|treble crochet|treble|triple crochet|trebles|treb|trb|triple|triples',
  dtr:
    'dtr|dtrc|d tr|d trc|d tr c|double treble|double treble crochet|double tr|double trebles|' +
    'double triple crochet|double triple|dble treble|dbl tr|dbltr|double crochet treble',
  trtr:
    'trtr|ttr|tr tr|trtrc|tr tr c|triple treble|triple treble crochet|triple tr|trip tr|trip treble|' +
    'treble treble|ttrc',
  qtr: 'qtr|quadtr|quad tr|quad treble|quadruple treble|quadruple treble crochet|quadruple tr',
  quintr: 'quintr|quint tr|quintuple treble|quintuple treble crochet',
  sextr: 'sextr|sextuple treble',
  hdtr: 'hdtr|half double treble',
  esc: 'esc|exsc|extended single crochet|ex sc|extended sc|ext sc|extsc',
  ehdc: 'ehdc|exhdc|extended half double crochet|extended hdc|ex hdc',
  edc: 'edc|exdc|extended double crochet|extended dc|ex dc|ext dc',
  plain: 'plain',
  // "long" itself also tells how long something is: see `oldLong` in `stitch.ts`.
  long: 'longs',
  etr: 'etr|extended treble|extended treble crochet|extended tr|ex tr',
  ehtr: 'ehtr|extended half treble',
  edtr: 'edtr|extended double treble|extended dtr',
};

/** Shapes that stand by themselves, with the ways they are written. */
export const SHAPE_NAMES: readonly {
  readonly shape: StitchShape;
  readonly legs?: number;
  readonly manner?: string;
  readonly stem?: StemWord;
  readonly names: string;
}[] = [
  { shape: 'increase', names: 'inc|ine|increase|incr|increases|incs|increasing|icn' },
  { shape: 'together', names: 'dec|dce|decrease|decr|decreases|decs|decreasing' },
  {
    shape: 'together',
    manner: 'invisible',
    names: 'invdec|inv dec|idec|invisible dec|invisible decrease|inv decrease',
  },
  {
    shape: 'increase',
    manner: 'invisible',
    names: 'invinc|inv inc|invisible inc|invisible increase',
  },
  { shape: 'together', legs: 3, names: 'double dec|double decrease|ddec|dbl dec|dble dec' },
  { shape: 'increase', legs: 3, names: 'double inc|double increase|dinc|dbl inc|triple increase' },
  {
    shape: 'cluster',
    names: 'cluster|cl|clus|clust|clstr|clusters|cls|cluster st|cluster stitch|cl st',
  },
  { shape: 'bobble', names: 'bobble|bobbles|bob|bobs|bobble st|bobble stitch|bbl|bo' },
  {
    shape: 'puff',
    names: 'puff|puffs|pf|puff st|puff stitch|puff sts|puff stitches|pfst|ps|puffst',
  },
  {
    shape: 'popcorn',
    names: 'popcorn|popcorns|pop|pops|pc|pcs|popcorn st|popcorn stitch|pc st|popc',
  },
  { shape: 'shell', names: 'shell|shells|sh|shs|shell st|shell stitch|fan|fans' },
  { shape: 'v', names: 'v st|v stitch|vst|vsts|v sts|v stitches|vstitch' },
  { shape: 'picot', names: 'picot|picots|pic|pics|picot st|pct|p|ps_' },
  {
    shape: 'one',
    stem: 'sc',
    manner: 'reverse',
    names: 'rsc|revsc|crab stitch|crab st|reverse sc|reverse single crochet|rev sc',
  },
  {
    shape: 'one',
    stem: 'sc',
    manner: 'waistcoat',
    names: 'csc|waistcoat stitch|waistcoat st',
  },
  { shape: 'one', stem: 'hdc', manner: 'herringbone', names: 'hhdc|hbhdc' },
  { shape: 'one', stem: 'dc', manner: 'linked', names: 'ldc|linked dc' },
  { shape: 'one', manner: 'crossed', stem: 'dc', names: 'cdc|crossed dc' },
];

/** Short stems that take FP/BP, tog, dec and inc glued on: "fpdc", "dcfp", "sctog", "scinc". */
export const GLUED_STEMS: readonly StemWord[] = [
  'ss',
  'sc',
  'hdc',
  'dc',
  'htr',
  'tr',
  'trc',
  'dtr',
  'trtr',
];

/** Words before a name that tell how it is worked; they change no count. */
export const MANNERS: Readonly<Record<string, string>> = {
  reverse: 'reverse',
  rev: 'reverse',
  linked: 'linked',
  spike: 'spike',
  long: 'long',
  crossed: 'crossed',
  loose: 'loose',
  tight: 'tight',
  tall: 'tall',
  waistcoat: 'waistcoat',
  split: 'split',
  surface: 'surface',
  thermal: 'thermal',
  herringbone: 'herringbone',
  standing: 'standing',
  invisible: 'invisible',
  inv: 'invisible',
  joining: 'joining',
  partial: 'partial',
  modified: 'modified',
  mod: 'modified',
  drop: 'spike',
  dropped: 'spike',
  elongated: 'long',
  plain: 'plain',
  half: 'half',
  regular: 'plain',
  normal: 'plain',
};
