// Made by `npm run catalogue` from src/finding/catalogue/. Change the entries there.
import { type Message, message, type PlainMessage, plainMessage } from './message.ts';
import type { Noun } from './wording.ts';

/**
 * note: {boxes: boxes} {boxes|lies|lie} within a tenth of the threshold: {filled #} came out
 * filled, {open #} open.
 */
export const boxInDoubt: Message<{
  boxes: number;
  filled: number;
  open: number;
}> = message('box-in-doubt');

/** note: This is a pattern for {what}; it gives no caution about {hazard}. */
export const cautionMissing: Message<{
  hazard: string;
  what: string;
}> = message('caution-missing');

/** warning: {row} says that its ch {n #} {here}; a note says that it {there}. */
export const chainContradicts: Message<{
  here: string;
  n: number;
  row: string;
  there: string;
}> = message('chain-contradicts');

/** error: {row} works {made} where {chart} has {drawn}, box {box #} in the order of work. */
export const chartDiffers: Message<{
  box: number;
  chart: string;
  drawn: string;
  made: string;
  row: string;
}> = message('chart-differs');

/** warning: Two charts bear the name {name}. */
export const chartDoubled: Message<{
  name: string;
}> = message('chart-doubled');

/** error: {chart} has no rows. */
export const chartEmpty: Message<{
  chart: string;
}> = message('chart-empty');

/** error: {row} works {chart}; the pattern has no such chart[, but it has {nearest}]. */
export const chartMissing: Message<{
  chart: string;
  nearest?: string;
  row: string;
}> = message('chart-missing');

/**
 * error: Row {chartRow #} of {chart} has {has #} cells of {kind} side by side; each {kind} takes 2.
 */
export const chartPair: Message<{
  chart: string;
  chartRow: number;
  has: number;
  kind: string;
}> = message('chart-pair');

/** error: Row {chartRow #} of {chart} has cells without a box between boxes. */
export const chartRowBroken: Message<{
  chart: string;
  chartRow: number;
}> = message('chart-row-broken');

/** error: {row} needs row {needed #} of {chart}; the chart has {have: rows}. */
export const chartRowMissing: Message<{
  chart: string;
  have: number;
  needed: number;
  row: string;
}> = message('chart-row-missing');

/** error: Row {chartRow #} of {chart} has {has: boxes}; the others have {others #}. */
export const chartRowsDiffer: Message<{
  chart: string;
  chartRow: number;
  has: number;
  others: number;
}> = message('chart-rows-differ');

/** warning: The pattern works {used: rows} of {chart}; the chart has {have #}. */
export const chartRowsLeft: Message<{
  chart: string;
  have: number;
  used: number;
}> = message('chart-rows-left');

/** error: {chart} has the sign "{sign}", which its list of signs does not explain. */
export const chartSignUnknown: Message<{
  chart: string;
  sign: string;
}> = message('chart-sign-unknown');

/** error: {chart} is {width: boxes} wide; {row} gives it {given #}. */
export const chartWidth: Message<{
  chart: string;
  given: number;
  row: string;
  width: number;
}> = message('chart-width');

/**
 * note: The foundation chain has no number; it is worked here with {chains #} chains, {times #}
 * times {of #} and {plus #}.
 */
export const chosenCount: Message<{
  chains: number;
  of: number;
  plus: number;
  times: number;
}> = message('chosen-count');

/** warning: {row} works with {yarn}, which was fastened off and not joined again. */
export const colourNotJoined: Message<{
  row: string;
  yarn: string;
}> = message('colour-not-joined');

/** warning: {row} works with {yarn}, which the materials do not name. */
export const colourNotNamed: Message<{
  row: string;
  yarn: string;
}> = message('colour-not-named');

/** note: In {chart} filled boxes meet only at a corner in {places: places}. */
export const cornerTouch: Message<{
  chart: string;
  places: number;
}> = message('corner-touch');

/** error: {row} makes {made: [unit]}; the pattern says {stated #}. */
export const countMismatch: Message<{
  made: number;
  row: string;
  stated: number;
  unit: Noun;
}> = message('count-mismatch');

/**
 * note: In {chart} {places: boxes} {places|is|are} open and shut in by filled ones; in thick yarn
 * {places|it closes|they close}.
 */
export const counterCloses: Message<{
  chart: string;
  places: number;
}> = message('counter-closes');

/** warning: An inner space of {letters} is lost in boxes. */
export const counterLost: Message<{
  letters: string;
}> = message('counter-lost');

/** warning: In {yarn}, {chart} will hardly be seen: filled boxes and open ones look much alike. */
export const designFaint: Message<{
  chart: string;
  yarn: string;
}> = message('design-faint');

/** error: The file holds {size}; files of up to {limit} are read. */
export const fileTooLarge: Message<{
  limit: string;
  size: string;
}> = message('file-too-large');

/** error: The font cannot be used: {why}. */
export const fontUnusable: Message<{
  why: string;
}> = message('font-unusable');

/** error: "{stitch}" is not a stitch in {terms} terms, and this pattern is set to {terms} terms. */
export const foreignTerm: Message<{
  stitch: string;
  terms: string;
}> = message('foreign-term');

/** error: The front matter cannot be read: {reason}. */
export const frontMatterBroken: Message<{
  reason: string;
}> = message('front-matter-broken');

/** error: The front matter begins with "---" and has no "---" to end it. */
export const frontMatterUnclosed: PlainMessage = plainMessage('front-matter-unclosed');

/** warning: "{entry}" says {value}, which cannot be read as {what}. */
export const frontMatterValue: Message<{
  entry: string;
  value: string;
  what: string;
}> = message('front-matter-value');

/**
 * warning: Gaps in {letters} are {boxes} of a box at the narrowest; {enough: boxes} of height would
 * make it 1.
 */
export const gapUnderBox: Message<{
  boxes: string;
  enough: number;
  letters: string;
}> = message('gap-under-box');

/**
 * warning: {row} makes {made: [unit]} and {spaces}; {stated #} are stated, as if a space were a
 * stitch.
 */
export const gapsCounted: Message<{
  made: number;
  row: string;
  spaces: string;
  stated: number;
  unit: Noun;
}> = message('gaps-counted');

/** warning: The gauge "{gauge}" is unlikely: {why}. */
export const gaugeUnlikely: Message<{
  gauge: string;
  why: string;
}> = message('gauge-unlikely');

/** warning: The handles differ: one has {first: chains}, the other {second #}. */
export const handlesUnequal: Message<{
  first: number;
  second: number;
}> = message('handles-unequal');

/**
 * error: There are no letters of {height} boxes; heights are {heights}[, and near it {nearest}].
 */
export const heightNotDrawn: Message<{
  height: string;
  heights: string;
  nearest?: string;
}> = message('height-not-drawn');

/** warning: Pieces of {letters} come apart or grow together in boxes. */
export const letterBroken: Message<{
  letters: string;
}> = message('letter-broken');

/** error: "{sign}" is not drawn in {where}; it is left out. */
export const letterMissing: Message<{
  sign: string;
  where: string;
}> = message('letter-missing');

/** warning: "{sign}" and "{other}" come out as the same boxes. */
export const lettersAlike: Message<{
  other: string;
  sign: string;
}> = message('letters-alike');

/** error: Line {line #} holds {size}; lines of up to {limit} are read. */
export const lineTooLong: Message<{
  limit: string;
  line: number;
  size: string;
}> = message('line-too-long');

/** note: {boxes: boxes} {boxes|stands|stand} filled and alone in open ground. */
export const loneBox: Message<{
  boxes: number;
}> = message('lone-box');

/**
 * error: {row} works boxes of {step: stitches} over {have #}; worked {how}, {left #} {left|is|are}
 * left over.
 */
export const meshCount: Message<{
  have: number;
  how: string;
  left: number;
  row: string;
  step: number;
}> = message('mesh-count');

/** note: {chart} has {before: stitches} before it and {after #} after it. */
export const motifOffCentre: Message<{
  after: number;
  before: number;
  chart: string;
}> = message('motif-off-centre');

/** error: Brackets stand {depth #} deep; up to {limit #} are read. */
export const nestingTooDeep: Message<{
  depth: number;
  limit: number;
}> = message('nesting-too-deep');

/** warning: There is no row or round in this text. */
export const noInstructions: PlainMessage = plainMessage('no-instructions');

/** note: {row} was not followed here, and so not checked: {why}. */
export const notFollowed: Message<{
  row: string;
  why: string;
}> = message('not-followed');

/** note: "{words}" is understood, but not worked stitch by stitch yet. */
export const notWorked: Message<{
  words: string;
}> = message('not-worked');

/** note: The foundation chain has no number, so {row} cannot be checked against it. */
export const openCount: Message<{
  row: string;
}> = message('open-count');

/** note: {row} is worked to a length; {why}. */
export const openLength: Message<{
  row: string;
  why: string;
}> = message('open-length');

/** note: The head of the pattern does not give {missing}. */
export const patternIncomplete: Message<{
  missing: string;
}> = message('pattern-incomplete');

/** warning: All boxes came out {kind}. */
export const pictureBlank: Message<{
  kind: string;
}> = message('picture-blank');

/** warning: The picture has {pixels: pixels} across for {boxes: boxes}. */
export const pictureCoarse: Message<{
  boxes: number;
  pixels: number;
}> = message('picture-coarse');

/** note: The picture has no clear parting of dark and light; the threshold is one of many. */
export const pictureFlat: PlainMessage = plainMessage('picture-flat');

/** error: The size of {what} must be {least #} to {most #} {of}. */
export const pictureSize: Message<{
  least: number;
  most: number;
  of: string;
  what: string;
}> = message('picture-size');

/** error: {row} works into {place}; {source} has {have}. */
export const placeMissing: Message<{
  have: string;
  place: string;
  row: string;
  source: string;
}> = message('place-missing');

/** warning: {label} {count|is|are} {count: [unit]} by number; the words beside say {said #}. */
export const rangeMismatch: Message<{
  count: number;
  label: string;
  said: number;
  unit: Noun;
}> = message('range-mismatch');

/** note: "{words}" was read as "{reading}". */
export const readAs: Message<{
  reading: string;
  words: string;
}> = message('read-as');

/** warning: {row} fits only if {reading}; elsewhere {usual}. */
export const readingDiffers: Message<{
  reading: string;
  row: string;
  usual: string;
}> = message('reading-differs');

/** error: The repeat in {row} takes {takes: [unit]}, and {have #} does not divide by {takes #}. */
export const repeatRemainder: Message<{
  have: number;
  row: string;
  takes: number;
  unit: Noun;
}> = message('repeat-remainder');

/** error: "{words}" asks for {times: repeats}; up to {limit #} are worked. */
export const repeatTooLarge: Message<{
  limit: number;
  times: number;
  words: string;
}> = message('repeat-too-large');

/** error: {row} needs {needed: [unit]} to work into; {before} has {have #}. */
export const roundOverrun: Message<{
  before: string;
  have: number;
  needed: number;
  row: string;
  unit: Noun;
}> = message('round-overrun');

/** warning: {row} is given twice. */
export const rowDoubled: Message<{
  row: string;
}> = message('row-doubled');

/** error: {row} has a label and no work. */
export const rowEmpty: Message<{
  row: string;
}> = message('row-empty');

/** warning: {before} is followed by {after}; {missing} {count|is|are} not there. */
export const rowMissing: Message<{
  after: string;
  before: string;
  count: number;
  missing: string;
}> = message('row-missing');

/** warning: {row} is the first row of {part}; row 1 is not there. */
export const rowOneMissing: Message<{
  part: string;
  row: string;
}> = message('row-one-missing');

/** warning: {row} stands after {before}. */
export const rowOrder: Message<{
  before: string;
  row: string;
}> = message('row-order');

/** error: {row} repeats {through}, and so itself. */
export const rowReferenceLoop: Message<{
  row: string;
  through: string;
}> = message('row-reference-loop');

/** error: {row} repeats {wanted}; there is none before it. */
export const rowReferenceMissing: Message<{
  row: string;
  wanted: string;
}> = message('row-reference-missing');

/** warning: {stated} is stated; by the gauge {part} is {computed}. */
export const sizeOffGauge: Message<{
  computed: string;
  part: string;
  stated: string;
}> = message('size-off-gauge');

/** error: "{words}" names no size of this pattern; its sizes are {sizes}. */
export const sizeUnknown: Message<{
  sizes: string;
  words: string;
}> = message('size-unknown');

/** error: This list has {has: numbers}; the pattern has {sizes: sizes}. */
export const sizesLengths: Message<{
  has: number;
  sizes: number;
}> = message('sizes-lengths');

/** note: Small letters of {height: boxes} stand as capitals. */
export const smallLetters: Message<{
  height: number;
}> = message('small-letters');

/** warning: "{words}" speaks of {named: chains}; the {thing} in {before} has {made #}. */
export const spaceSize: Message<{
  before: string;
  made: number;
  named: number;
  thing: string;
  words: string;
}> = message('space-size');

/** warning: The special stitch "{stitch}" is defined twice, and not alike. */
export const specialDoubled: Message<{
  stitch: string;
}> = message('special-doubled');

/** warning: {row} works "{stitch}", and the pattern does not say how it is made. */
export const specialUndefined: Message<{
  row: string;
  stitch: string;
}> = message('special-undefined');

/** note: The special stitch "{stitch}" is defined and not used. */
export const specialUnused: Message<{
  stitch: string;
}> = message('special-unused');

/** warning: "{words}" goes back to a "{mark}", and {row} has none. */
export const starMissing: Message<{
  mark: string;
  row: string;
  words: string;
}> = message('star-missing');

/** warning: The "{mark}" in {row} stands alone: nothing repeats from it. */
export const starUnpaired: Message<{
  mark: string;
  row: string;
}> = message('star-unpaired');

/** warning: {row} makes {made #} {stitch} and {others}; the pattern says {stated #} {stitch}. */
export const stitchDiffers: Message<{
  made: number;
  others: string;
  row: string;
  stated: number;
  stitch: string;
}> = message('stitch-differs');

/** error: {row} uses {used #} of {have: [unit]} in {before}; {left #} {left|is|are} left over. */
export const stitchesLeft: Message<{
  before: string;
  have: number;
  left: number;
  row: string;
  unit: Noun;
  used: number;
}> = message('stitches-left');

/**
 * warning: Strokes of {letters} are {boxes} of a box at the thinnest; {enough: boxes} of height
 * would make it 1.
 */
export const strokeUnderBox: Message<{
  boxes: string;
  enough: number;
  letters: string;
}> = message('stroke-under-box');

/** note: The gauge is given over {over}, and the swatch is {swatch}: it was not counted so. */
export const swatchShort: Message<{
  over: string;
  swatch: string;
}> = message('swatch-short');

/**
 * note: The gauge was counted over {counted}, and the piece is {size}: a quarter of one there is
 * {off} here.
 */
export const swatchSmall: Message<{
  counted: string;
  off: string;
  size: string;
}> = message('swatch-small');

/** note: The pattern does not say if its terms are US or UK; it is read as {terms}, {because}. */
export const termsInferred: Message<{
  because: string;
  terms: string;
}> = message('terms-inferred');

/** warning: US and UK terms are mixed: {us: words} {us|speaks|speak} for US, {uk #} for UK. */
export const termsMixed: Message<{
  uk: number;
  us: number;
}> = message('terms-mixed');

/** warning: "{words}" can mean {first #} or {second #} times in all. */
export const timesTwoReadings: Message<{
  first: number;
  second: number;
  words: string;
}> = message('times-two-readings');

/** error: {row} brings the work to {stitches: stitches}; up to {limit #} are worked. */
export const tooManyStitches: Message<{
  limit: number;
  row: string;
  stitches: number;
}> = message('too-many-stitches');

/** note: "{words}" can be read in two ways: {first}, or {second}. */
export const twoReadings: Message<{
  first: string;
  second: string;
  words: string;
}> = message('two-readings');

/** warning: The bracket "{bracket}" has no partner. */
export const unbalancedBracket: Message<{
  bracket: string;
}> = message('unbalanced-bracket');

/**
 * error: "{stitch}" is not a stitch in {terms} terms, nor one that this pattern defines[;
 * "{nearest}" is].
 */
export const undefinedStitch: Message<{
  nearest?: string;
  stitch: string;
  terms: string;
}> = message('undefined-stitch');

/** note: "{entry}" is no entry that Loopwright uses[; "{nearest}" is]. */
export const unknownFrontMatterKey: Message<{
  entry: string;
  nearest?: string;
}> = message('unknown-front-matter-key');

/** error: These words were not understood: "{words}". */
export const unread: Message<{
  words: string;
}> = message('unread');

/** warning: {part} may cup: {row} has {made: stitches}, and about {flat #} would lie flat. */
export const willCup: Message<{
  flat: number;
  made: number;
  part: string;
  row: string;
}> = message('will-cup');

/** warning: {part} may ruffle: {row} has {made: stitches}, and about {flat #} would lie flat. */
export const willRuffle: Message<{
  flat: number;
  made: number;
  part: string;
  row: string;
}> = message('will-ruffle');

/** error: There are no words to letter, or more than {most: signs}. */
export const wordsEmpty: Message<{
  most: number;
}> = message('words-empty');

/** note: The words "{words}" were not understood; {row} comes out without them. */
export const wordsPassed: Message<{
  row: string;
  words: string;
}> = message('words-passed');

/** note: "{words}" names {named}; {before} has {found} here. */
export const wrongNoun: Message<{
  before: string;
  found: string;
  named: string;
  words: string;
}> = message('wrong-noun');
