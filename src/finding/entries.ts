// Made by `npm run catalogue` from src/finding/catalogue/. Change the entries there.
import type { Severity } from './finding.ts';

/** An entry of the catalogue, less its explanation, which `docs/findings/` holds. */
export interface Entry {
  readonly code: string;
  readonly severity: Severity;
  /** In the forms of `wording.ts`. */
  readonly title: string;
}

/** All messages, sorted by code. */
export const entries: readonly Entry[] = [
  {
    code: 'box-in-doubt',
    severity: 'note',
    title:
      '{boxes: boxes} {boxes|lies|lie} within a tenth of the threshold: {filled #} came out filled, {open #} open.',
  },
  {
    code: 'caution-missing',
    severity: 'note',
    title: 'This is a pattern for {what}; it gives no caution about {hazard}.',
  },
  {
    code: 'chart-differs',
    severity: 'error',
    title: '{row} works {made} where {chart} has {drawn}, box {box #} in the order of work.',
  },
  {
    code: 'chart-doubled',
    severity: 'warning',
    title: 'Two charts bear the name {name}.',
  },
  {
    code: 'chart-empty',
    severity: 'error',
    title: '{chart} has no rows.',
  },
  {
    code: 'chart-missing',
    severity: 'error',
    title: '{row} works {chart}; the pattern has no such chart[, but it has {nearest}].',
  },
  {
    code: 'chart-pair',
    severity: 'error',
    title:
      'Row {chartRow #} of {chart} has {has #} cells of {kind} side by side; each {kind} takes 2.',
  },
  {
    code: 'chart-row-broken',
    severity: 'error',
    title: 'Row {chartRow #} of {chart} has cells without a box between boxes.',
  },
  {
    code: 'chart-row-missing',
    severity: 'error',
    title: '{row} needs row {needed #} of {chart}; the chart has {have: rows}.',
  },
  {
    code: 'chart-rows-differ',
    severity: 'error',
    title: 'Row {chartRow #} of {chart} has {has: boxes}; the others have {others #}.',
  },
  {
    code: 'chart-rows-left',
    severity: 'warning',
    title: 'The pattern works {used: rows} of {chart}; the chart has {have #}.',
  },
  {
    code: 'chart-sign-unknown',
    severity: 'error',
    title: '{chart} has the sign "{sign}", which its list of signs does not explain.',
  },
  {
    code: 'chart-width',
    severity: 'error',
    title: '{chart} is {width: boxes} wide; {row} gives it {given #}.',
  },
  {
    code: 'colour-not-joined',
    severity: 'warning',
    title: '{row} works with {yarn}, which was fastened off and not joined again.',
  },
  {
    code: 'colour-not-named',
    severity: 'warning',
    title: '{row} works with {yarn}, which the materials do not name.',
  },
  {
    code: 'corner-touch',
    severity: 'note',
    title: 'In {chart} filled boxes meet only at a corner in {places: places}.',
  },
  {
    code: 'count-mismatch',
    severity: 'error',
    title: '{row} makes {made: [unit]}; the pattern says {stated #}.',
  },
  {
    code: 'counter-closes',
    severity: 'note',
    title:
      'In {chart} {places: boxes} {places|is|are} open and shut in by filled ones; in thick yarn {places|it closes|they close}.',
  },
  {
    code: 'counter-lost',
    severity: 'warning',
    title: 'An inner space of {letters} is lost in boxes.',
  },
  {
    code: 'design-faint',
    severity: 'warning',
    title: 'In {yarn}, {chart} will hardly be seen: filled boxes and open ones look much alike.',
  },
  {
    code: 'file-too-large',
    severity: 'error',
    title: 'The file holds {size}; files of up to {limit} are read.',
  },
  {
    code: 'font-unusable',
    severity: 'error',
    title: 'The font cannot be used: {why}.',
  },
  {
    code: 'foreign-term',
    severity: 'error',
    title: '"{stitch}" is not a stitch in {terms} terms, and this pattern is set to {terms} terms.',
  },
  {
    code: 'front-matter-broken',
    severity: 'error',
    title: 'The front matter cannot be read: {reason}.',
  },
  {
    code: 'front-matter-unclosed',
    severity: 'error',
    title: 'The front matter begins with "---" and has no "---" to end it.',
  },
  {
    code: 'front-matter-value',
    severity: 'warning',
    title: '"{entry}" says {value}, which cannot be read as {what}.',
  },
  {
    code: 'gap-under-box',
    severity: 'warning',
    title:
      'Gaps in {letters} are {boxes} of a box at the narrowest; {enough: boxes} of height would make it 1.',
  },
  {
    code: 'gauge-unlikely',
    severity: 'warning',
    title: 'The gauge "{gauge}" is unlikely: {why}.',
  },
  {
    code: 'handles-unequal',
    severity: 'warning',
    title: 'The handles differ: one has {first: chains}, the other {second #}.',
  },
  {
    code: 'height-not-drawn',
    severity: 'error',
    title:
      'There are no letters of {height} boxes; heights are {heights}[, and near it {nearest}].',
  },
  {
    code: 'letter-broken',
    severity: 'warning',
    title: 'Pieces of {letters} come apart or grow together in boxes.',
  },
  {
    code: 'letter-missing',
    severity: 'error',
    title: '"{sign}" is not drawn in {where}; it is left out.',
  },
  {
    code: 'letters-alike',
    severity: 'warning',
    title: '"{sign}" and "{other}" come out as the same boxes.',
  },
  {
    code: 'line-too-long',
    severity: 'error',
    title: 'Line {line #} holds {size}; lines of up to {limit} are read.',
  },
  {
    code: 'lone-box',
    severity: 'note',
    title: '{boxes: boxes} {boxes|stands|stand} filled and alone in open ground.',
  },
  {
    code: 'mesh-count',
    severity: 'error',
    title:
      '{row} works boxes of {step: stitches} over {have #}; worked {how}, {left #} {left|is|are} left over.',
  },
  {
    code: 'motif-off-centre',
    severity: 'note',
    title: '{chart} has {before: stitches} before it and {after #} after it.',
  },
  {
    code: 'nesting-too-deep',
    severity: 'error',
    title: 'Brackets stand {depth #} deep; up to {limit #} are read.',
  },
  {
    code: 'no-instructions',
    severity: 'warning',
    title: 'There is no row or round in this text.',
  },
  {
    code: 'not-worked',
    severity: 'note',
    title: '"{words}" is understood, but not worked stitch by stitch yet.',
  },
  {
    code: 'open-count',
    severity: 'note',
    title: 'The foundation chain has no number, so {row} cannot be checked against it.',
  },
  {
    code: 'open-length',
    severity: 'note',
    title: '{row} is worked to a length; {why}.',
  },
  {
    code: 'pattern-incomplete',
    severity: 'note',
    title: 'The head of the pattern does not give {missing}.',
  },
  {
    code: 'picture-blank',
    severity: 'warning',
    title: 'All boxes came out {kind}.',
  },
  {
    code: 'picture-coarse',
    severity: 'warning',
    title: 'The picture has {pixels: pixels} across for {boxes: boxes}.',
  },
  {
    code: 'picture-flat',
    severity: 'note',
    title: 'The picture has no clear parting of dark and light; the threshold is one of many.',
  },
  {
    code: 'picture-size',
    severity: 'error',
    title: 'The size of {what} must be {least #} to {most #} {of}.',
  },
  {
    code: 'place-missing',
    severity: 'error',
    title: '{row} works into {place}; {source} has {have}.',
  },
  {
    code: 'range-mismatch',
    severity: 'warning',
    title: '{label} {count|is|are} {count: [unit]} by number; the words beside say {said #}.',
  },
  {
    code: 'reading-differs',
    severity: 'warning',
    title: '{row} fits only if {reading}; elsewhere {usual}.',
  },
  {
    code: 'repeat-remainder',
    severity: 'error',
    title: 'The repeat in {row} takes {takes: [unit]}, and {have #} does not divide by {takes #}.',
  },
  {
    code: 'repeat-too-large',
    severity: 'error',
    title: '"{words}" asks for {times: repeats}; up to {limit #} are worked.',
  },
  {
    code: 'round-overrun',
    severity: 'error',
    title: '{row} needs {needed: [unit]} to work into; {before} has {have #}.',
  },
  {
    code: 'row-doubled',
    severity: 'warning',
    title: '{row} is given twice.',
  },
  {
    code: 'row-empty',
    severity: 'error',
    title: '{row} has a label and no work.',
  },
  {
    code: 'row-missing',
    severity: 'warning',
    title: '{before} is followed by {after}; {missing} {count|is|are} not there.',
  },
  {
    code: 'row-order',
    severity: 'warning',
    title: '{row} stands after {before}.',
  },
  {
    code: 'row-reference-loop',
    severity: 'error',
    title: '{row} repeats {through}, and so itself.',
  },
  {
    code: 'row-reference-missing',
    severity: 'error',
    title: '{row} repeats {wanted}; there is none before it.',
  },
  {
    code: 'size-off-gauge',
    severity: 'warning',
    title: '{stated} is stated; by the gauge {part} is {computed}.',
  },
  {
    code: 'size-unknown',
    severity: 'error',
    title: '"{words}" names no size of this pattern; its sizes are {sizes}.',
  },
  {
    code: 'sizes-lengths',
    severity: 'error',
    title: 'This list has {has: numbers}; the pattern has {sizes: sizes}.',
  },
  {
    code: 'small-letters',
    severity: 'note',
    title: 'Small letters of {height: boxes} stand as capitals.',
  },
  {
    code: 'space-size',
    severity: 'warning',
    title: '"{words}" speaks of {named: chains}; the space in {before} has {made #}.',
  },
  {
    code: 'special-doubled',
    severity: 'warning',
    title: 'The special stitch "{stitch}" is defined twice, and not alike.',
  },
  {
    code: 'special-undefined',
    severity: 'warning',
    title: '{row} works "{stitch}", and the pattern does not say how it is made.',
  },
  {
    code: 'special-unused',
    severity: 'note',
    title: 'The special stitch "{stitch}" is defined and not used.',
  },
  {
    code: 'star-missing',
    severity: 'warning',
    title: '"{words}" goes back to a "{mark}", and {row} has none.',
  },
  {
    code: 'star-unpaired',
    severity: 'warning',
    title: 'The "{mark}" in {row} stands alone: nothing repeats from it.',
  },
  {
    code: 'stitches-left',
    severity: 'error',
    title: '{row} uses {used #} of {have: [unit]} in {before}; {left #} {left|is|are} left over.',
  },
  {
    code: 'stroke-under-box',
    severity: 'warning',
    title:
      'Strokes of {letters} are {boxes} of a box at the thinnest; {enough: boxes} of height would make it 1.',
  },
  {
    code: 'swatch-short',
    severity: 'note',
    title: 'The gauge is given over {over}, and the swatch is {swatch}: it was not counted so.',
  },
  {
    code: 'swatch-small',
    severity: 'note',
    title:
      'The gauge was counted over {counted}, and the piece is {size}: a quarter of one there is {off} here.',
  },
  {
    code: 'terms-inferred',
    severity: 'note',
    title: 'The pattern does not say if its terms are US or UK; it is read as {terms}, {because}.',
  },
  {
    code: 'terms-mixed',
    severity: 'warning',
    title: 'US and UK terms are mixed: {us: words} {us|speaks|speak} for US, {uk #} for UK.',
  },
  {
    code: 'times-two-readings',
    severity: 'warning',
    title: '"{words}" can mean {first #} or {second #} times in all.',
  },
  {
    code: 'too-many-stitches',
    severity: 'error',
    title: '{row} brings the work to {stitches: stitches}; up to {limit #} are worked.',
  },
  {
    code: 'two-readings',
    severity: 'warning',
    title: '"{words}" can be read in two ways: {first}, or {second}.',
  },
  {
    code: 'unbalanced-bracket',
    severity: 'warning',
    title: 'The bracket "{bracket}" has no partner.',
  },
  {
    code: 'undefined-stitch',
    severity: 'error',
    title:
      '"{stitch}" is not a stitch in {terms} terms, nor one that this pattern defines[; "{nearest}" is].',
  },
  {
    code: 'unknown-front-matter-key',
    severity: 'note',
    title: '"{entry}" is no entry that Loopwright uses[; "{nearest}" is].',
  },
  {
    code: 'unread',
    severity: 'error',
    title: 'These words were not understood: "{words}".',
  },
  {
    code: 'will-cup',
    severity: 'warning',
    title: '{part} may cup: {row} has {made: stitches}, and about {flat #} would lie flat.',
  },
  {
    code: 'will-ruffle',
    severity: 'warning',
    title: '{part} may ruffle: {row} has {made: stitches}, and about {flat #} would lie flat.',
  },
  {
    code: 'words-empty',
    severity: 'error',
    title: 'There are no words to letter, or more than {most: signs}.',
  },
  {
    code: 'wrong-noun',
    severity: 'note',
    title: '"{words}" names {named}; {before} has {found} here.',
  },
];
