// Made by `npm run catalogue` from src/finding/catalogue/. Change the entries there.
import type { Severity } from './finding.ts';

/** An entry of the catalogue, less its explanation, which `docs/findings/` holds. */
export interface Entry {
  readonly code: string;
  readonly severity: Severity;
  /** In the forms of `wording.ts`. */
  readonly title: string;
  /** What to do about it, in a sentence or two. */
  readonly advice: string;
}

/** All messages, sorted by code. */
export const entries: readonly Entry[] = [
  {
    code: 'box-in-doubt',
    severity: 'note',
    title:
      '{boxes: boxes} {boxes|lies|lie} within a tenth of the threshold: {filled #} came out filled, {open #} open.',
    advice: 'Look at them in the chart and turn those that read badly; or try another --threshold.',
  },
  {
    code: 'caution-missing',
    severity: 'note',
    title: 'This is a pattern for {what}; it gives no caution about {hazard}.',
    advice: 'Add a line of caution in your own words.',
  },
  {
    code: 'chain-contradicts',
    severity: 'warning',
    title: '{row} says that its ch {n #} {here}; a note says that it {there}.',
    advice:
      'Change the note or the row. If this row is meant to differ, let the note say so: "unless the row says otherwise".',
  },
  {
    code: 'chart-differs',
    severity: 'error',
    title: '{row} works {made} where {chart} has {drawn}, box {box #} in the order of work.',
    advice: 'Change the row or the chart, whichever is wrong.',
  },
  {
    code: 'chart-doubled',
    severity: 'warning',
    title: 'Two charts bear the name {name}.',
    advice: 'Give each chart its own name.',
  },
  {
    code: 'chart-empty',
    severity: 'error',
    title: '{chart} has no rows.',
    advice: 'Draw the rows, the last line first to be worked, or take the block out.',
  },
  {
    code: 'chart-missing',
    severity: 'error',
    title: '{row} works {chart}; the pattern has no such chart[, but it has {nearest}].',
    advice: 'Add the chart, or put its name right.',
  },
  {
    code: 'chart-pair',
    severity: 'error',
    title:
      'Row {chartRow #} of {chart} has {has #} cells of {kind} side by side; each {kind} takes 2.',
    advice: 'Add or take away a cell, so that the signs stand in pairs.',
  },
  {
    code: 'chart-row-broken',
    severity: 'error',
    title: 'Row {chartRow #} of {chart} has cells without a box between boxes.',
    advice:
      'Fill the gap with boxes, or make a chart for each side and join the yarn again for the second.',
  },
  {
    code: 'chart-row-missing',
    severity: 'error',
    title: '{row} needs row {needed #} of {chart}; the chart has {have: rows}.',
    advice: 'Add rows to the chart, or take rows out of the label.',
  },
  {
    code: 'chart-rows-differ',
    severity: 'error',
    title: 'Row {chartRow #} of {chart} has {has: boxes}; the others have {others #}.',
    advice: 'Add or take away boxes in this row.',
  },
  {
    code: 'chart-rows-left',
    severity: 'warning',
    title: 'The pattern works {used: rows} of {chart}; the chart has {have #}.',
    advice: 'Add rows to the label, or take rows out of the chart.',
  },
  {
    code: 'chart-sign-unknown',
    severity: 'error',
    title: '{chart} has the sign "{sign}", which its list of signs does not explain.',
    advice: 'Put the sign right, or add a line for it at the top of the chart.',
  },
  {
    code: 'chart-width',
    severity: 'error',
    title: '{chart} is {width: boxes} wide; {row} gives it {given #}.',
    advice: 'Change the number of boxes in the row, or add or take away columns of the chart.',
  },
  {
    code: 'chosen-count',
    severity: 'note',
    title:
      'The foundation chain has no number; it is worked here with {chains #} chains, {times #} times {of #} and {plus #}.',
    advice:
      'Nothing, or give the number of the sample: "a multiple of 6 plus 3; the sample has 27".',
  },
  {
    code: 'colour-not-joined',
    severity: 'warning',
    title: '{row} works with {yarn}, which was fastened off and not joined again.',
    advice: 'Say where the yarn is joined: "Join B with sl st in first st".',
  },
  {
    code: 'colour-not-named',
    severity: 'warning',
    title: '{row} works with {yarn}, which the materials do not name.',
    advice: 'Add the yarn to the materials, or put the letter right.',
  },
  {
    code: 'corner-touch',
    severity: 'note',
    title: 'In {chart} filled boxes meet only at a corner in {places: places}.',
    advice: 'Let the boxes of one row overlap those of the next by a box, if the line should hold.',
  },
  {
    code: 'count-mismatch',
    severity: 'error',
    title: '{row} makes {made: [unit]}; the pattern says {stated #}.',
    advice:
      'If the words are right, change the count. If the count is right, look for the stitch, the repeat or the increase that is missing or one too many.',
  },
  {
    code: 'counter-closes',
    severity: 'note',
    title:
      'In {chart} {places: boxes} {places|is|are} open and shut in by filled ones; in thick yarn {places|it closes|they close}.',
    advice:
      'Take larger letters, finer yarn or a mesh of two chains; or leave it, and try a swatch.',
  },
  {
    code: 'counter-lost',
    severity: 'warning',
    title: 'An inner space of {letters} is lost in boxes.',
    advice: 'Take larger letters, a lighter font or a higher --threshold.',
  },
  {
    code: 'design-faint',
    severity: 'warning',
    title: 'In {yarn}, {chart} will hardly be seen: filled boxes and open ones look much alike.',
    advice:
      'Take a finer yarn at the same gauge, a mesh with one chain more, or larger letters, whose strokes are two boxes wide; and work a swatch of some filled and open boxes before you decide.',
  },
  {
    code: 'file-too-large',
    severity: 'error',
    title: 'The file holds {size}; files of up to {limit} are read.',
    advice: 'Give each pattern a file of its own.',
  },
  {
    code: 'font-unusable',
    severity: 'error',
    title: 'The font cannot be used: {why}.',
    advice: 'Take another file of the font, or another font.',
  },
  {
    code: 'foreign-term',
    severity: 'error',
    title: '"{stitch}" is not a stitch in {terms} terms, and this pattern is set to {terms} terms.',
    advice:
      'Write the stitch in the terms of the pattern: the US single crochet is the UK double crochet, the US half double the UK half treble, the US double the UK treble.',
  },
  {
    code: 'front-matter-broken',
    severity: 'error',
    title: 'The front matter cannot be read: {reason}.',
    advice:
      'Look for a quotation mark or bracket that is not closed, a colon without a blank after it, or lines that are not set in equally far.',
  },
  {
    code: 'front-matter-unclosed',
    severity: 'error',
    title: 'The front matter begins with "---" and has no "---" to end it.',
    advice: 'Add a line "---" after the last entry.',
  },
  {
    code: 'front-matter-value',
    severity: 'warning',
    title: '"{entry}" says {value}, which cannot be read as {what}.',
    advice: 'Write the value in one of the forms that the guide shows.',
  },
  {
    code: 'gap-under-box',
    severity: 'warning',
    title:
      'Gaps in {letters} are {boxes} of a box at the narrowest; {enough: boxes} of height would make it 1.',
    advice: 'Take larger letters or a lighter font, and look at the chart.',
  },
  {
    code: 'gaps-counted',
    severity: 'warning',
    title:
      '{row} makes {made: [unit]} and {spaces}; {stated #} are stated, as if a space were a stitch.',
    advice:
      'If the space is meant, count it by its name: "(8 sc, 1 ch-2 sp)". If not, look for the stitch that is missing.',
  },
  {
    code: 'gauge-unlikely',
    severity: 'warning',
    title: 'The gauge "{gauge}" is unlikely: {why}.',
    advice:
      'Look at the swatch again: the number of stitches, the length they were counted over, and its unit. If the numbers are right, check the weight of the yarn and the size of the hook.',
  },
  {
    code: 'handles-unequal',
    severity: 'warning',
    title: 'The handles differ: one has {first: chains}, the other {second #}.',
    advice: 'Make the chains equal, or say that they differ on purpose.',
  },
  {
    code: 'height-not-drawn',
    severity: 'error',
    title:
      'There are no letters of {height} boxes; heights are {heights}[, and near it {nearest}].',
    advice: 'Take one of the heights named, or a font with --font.',
  },
  {
    code: 'letter-broken',
    severity: 'warning',
    title: 'Pieces of {letters} come apart or grow together in boxes.',
    advice: 'Take larger letters, a heavier font or a lower --threshold.',
  },
  {
    code: 'letter-missing',
    severity: 'error',
    title: '"{sign}" is not drawn in {where}; it is left out.',
    advice: 'Write it otherwise, or hand in a font that has the letter with --font.',
  },
  {
    code: 'letters-alike',
    severity: 'warning',
    title: '"{sign}" and "{other}" come out as the same boxes.',
    advice:
      'Take larger letters, another font, or one of our own alphabets, in which no two letters are alike.',
  },
  {
    code: 'line-too-long',
    severity: 'error',
    title: 'Line {line #} holds {size}; lines of up to {limit} are read.',
    advice: 'Give each row a line of its own.',
  },
  {
    code: 'lone-box',
    severity: 'note',
    title: '{boxes: boxes} {boxes|stands|stand} filled and alone in open ground.',
    advice: 'Take the specks away with --clean 1, if they are not meant.',
  },
  {
    code: 'mesh-count',
    severity: 'error',
    title:
      '{row} works boxes of {step: stitches} over {have #}; worked {how}, {left #} {left|is|are} left over.',
    advice:
      'Add or take away stitches in the row before, or begin with a shorter or longer foundation chain.',
  },
  {
    code: 'motif-off-centre',
    severity: 'note',
    title: '{chart} has {before: stitches} before it and {after #} after it.',
    advice: 'Move it by changing the boxes before and after, or leave it if it is meant so.',
  },
  {
    code: 'nesting-too-deep',
    severity: 'error',
    title: 'Brackets stand {depth #} deep; up to {limit #} are read.',
    advice: 'Write the row with fewer brackets.',
  },
  {
    code: 'no-instructions',
    severity: 'warning',
    title: 'There is no row or round in this text.',
    advice:
      'Begin each row with its label: "Rnd 1:", "Row 1:". If there are rows, see that they were copied as text and not as a picture.',
  },
  {
    code: 'not-followed',
    severity: 'note',
    title: '{row} was not followed here, and so not checked: {why}.',
    advice:
      'Nothing, if the row is right as it stands: check its sum by hand. If words were left out, put them in.',
  },
  {
    code: 'not-worked',
    severity: 'note',
    title: '"{words}" is understood, but not worked stitch by stitch yet.',
    advice: 'Nothing: this says only what was not checked.',
  },
  {
    code: 'open-count',
    severity: 'note',
    title: 'The foundation chain has no number, so {row} cannot be checked against it.',
    advice:
      'Nothing, or give the number of the sample: "a multiple of 6 plus 3; the sample has 27".',
  },
  {
    code: 'open-length',
    severity: 'note',
    title: '{row} is worked to a length; {why}.',
    advice:
      'Nothing, or give a gauge in the front matter and say "until piece measures 20 cm from beginning" or "for 20 cm".',
  },
  {
    code: 'pattern-incomplete',
    severity: 'note',
    title: 'The head of the pattern does not give {missing}.',
    advice: 'Add it to the front matter, or leave it while the pattern is a draft.',
  },
  {
    code: 'picture-blank',
    severity: 'warning',
    title: 'All boxes came out {kind}.',
    advice:
      'Try other thresholds with --preview. A light drawing on a transparent ground needs --ground black and --invert.',
  },
  {
    code: 'picture-coarse',
    severity: 'warning',
    title: 'The picture has {pixels: pixels} across for {boxes: boxes}.',
    advice: 'Take a larger picture or fewer boxes.',
  },
  {
    code: 'picture-flat',
    severity: 'note',
    title: 'The picture has no clear parting of dark and light; the threshold is one of many.',
    advice: 'Look at --preview and choose a --threshold.',
  },
  {
    code: 'picture-size',
    severity: 'error',
    title: 'The size of {what} must be {least #} to {most #} {of}.',
    advice: 'Take fewer boxes, a smaller picture or fewer words.',
  },
  {
    code: 'place-missing',
    severity: 'error',
    title: '{row} works into {place}; {source} has {have}.',
    advice:
      'Check whether the row beneath should make that space, or whether this row means a stitch.',
  },
  {
    code: 'range-mismatch',
    severity: 'warning',
    title: '{label} {count|is|are} {count: [unit]} by number; the words beside say {said #}.',
    advice: 'Count once more: "3-7" is five rounds, for both ends count.',
  },
  {
    code: 'read-as',
    severity: 'note',
    title: '"{words}" was read as "{reading}".',
    advice: 'Mend the word if it was meant so; if not, write what was meant.',
  },
  {
    code: 'reading-differs',
    severity: 'warning',
    title: '{row} fits only if {reading}; elsewhere {usual}.',
    advice: 'Change the row so that it reads like the others, or say in the row what it means.',
  },
  {
    code: 'repeat-remainder',
    severity: 'error',
    title: 'The repeat in {row} takes {takes: [unit]}, and {have #} does not divide by {takes #}.',
    advice:
      'Change the number inside the repeat so that it divides, or say what is worked into the stitches that are left: "rep from * to last 2 sts, sc in last 2 sts".',
  },
  {
    code: 'repeat-too-large',
    severity: 'error',
    title: '"{words}" asks for {times: repeats}; up to {limit #} are worked.',
    advice: 'Check the number; a digit may have crept in.',
  },
  {
    code: 'round-overrun',
    severity: 'error',
    title: '{row} needs {needed: [unit]} to work into; {before} has {have #}.',
    advice:
      'Look at the number of repeats first, then at the stitches inside the repeat, then at what stands after it. If this row is right, the row before makes too few.',
  },
  {
    code: 'row-doubled',
    severity: 'warning',
    title: '{row} is given twice.',
    advice:
      'Number them in order; if one of them is an older wording, take it out. Where a range runs into the next row ("Rnds 4-6", then "Rnd 6"), end it one earlier or number what follows one later. If a new part begins here, give it a heading.',
  },
  {
    code: 'row-empty',
    severity: 'error',
    title: '{row} has a label and no work.',
    advice: 'Write what the row does, or take the label out.',
  },
  {
    code: 'row-missing',
    severity: 'warning',
    title: '{before} is followed by {after}; {missing} {count|is|are} not there.',
    advice:
      'Put the missing row back, or number the rows anew. Numbers may start again with each part under a heading of its own.',
  },
  {
    code: 'row-one-missing',
    severity: 'warning',
    title: '{row} is the first row of {part}; row 1 is not there.',
    advice: 'Put the first row back, or say above the second on which stitches it is worked.',
  },
  {
    code: 'row-order',
    severity: 'warning',
    title: '{row} stands after {before}.',
    advice: 'Change the numbers, or put the rows in order.',
  },
  {
    code: 'row-reference-loop',
    severity: 'error',
    title: '{row} repeats {through}, and so itself.',
    advice: 'Write one of the rows out.',
  },
  {
    code: 'row-reference-missing',
    severity: 'error',
    title: '{row} repeats {wanted}; there is none before it.',
    advice: 'Put the number right, or write the row out.',
  },
  {
    code: 'size-off-gauge',
    severity: 'warning',
    title: '{stated} is stated; by the gauge {part} is {computed}.',
    advice:
      'Measure the finished piece. If it has the size stated, the gauge was counted on a tighter or looser swatch than the piece; otherwise the size is to be corrected, or the count.',
  },
  {
    code: 'size-unknown',
    severity: 'error',
    title: '"{words}" names no size of this pattern; its sizes are {sizes}.',
    advice: 'Use the names of the sizes as the head of the pattern gives them.',
  },
  {
    code: 'sizes-lengths',
    severity: 'error',
    title: 'This list has {has: numbers}; the pattern has {sizes: sizes}.',
    advice:
      'Give one number for each size, in order. A single number holds for all sizes; a dash means "not in this size".',
  },
  {
    code: 'small-letters',
    severity: 'note',
    title: 'Small letters of {height: boxes} stand as capitals.',
    advice: 'Nothing, if capitals will do. From a height of 7 there are small letters.',
  },
  {
    code: 'space-size',
    severity: 'warning',
    title: '"{words}" speaks of {named: chains}; the {thing} in {before} has {made #}.',
    advice:
      'Make the name and the space agree: either the chain beneath is wrong, or its name here.',
  },
  {
    code: 'special-doubled',
    severity: 'warning',
    title: 'The special stitch "{stitch}" is defined twice, and not alike.',
    advice: 'Give each its own name.',
  },
  {
    code: 'special-undefined',
    severity: 'warning',
    title: '{row} works "{stitch}", and the pattern does not say how it is made.',
    advice: 'Define it: "Shell: 5 dc in same st".',
  },
  {
    code: 'special-unused',
    severity: 'note',
    title: 'The special stitch "{stitch}" is defined and not used.',
    advice: 'Leave it, or take it out of the list.',
  },
  {
    code: 'star-missing',
    severity: 'warning',
    title: '"{words}" goes back to a "{mark}", and {row} has none.',
    advice: 'Put the star where the repeat begins.',
  },
  {
    code: 'star-unpaired',
    severity: 'warning',
    title: 'The "{mark}" in {row} stands alone: nothing repeats from it.',
    advice: 'Add "rep from *", or take the star out.',
  },
  {
    code: 'stitch-differs',
    severity: 'warning',
    title: '{row} makes {made #} {stitch} and {others}; the pattern says {stated #} {stitch}.',
    advice:
      'Change the stitch word that slipped; or count all of them, "(10 sts)", or each kind by itself, "(4 sc, 6 dc)".',
  },
  {
    code: 'stitches-left',
    severity: 'error',
    title: '{row} uses {used #} of {have: [unit]} in {before}; {left #} {left|is|are} left over.',
    advice:
      'Work the remaining stitches, or say "leave rem sts unworked" if they are meant to stay, as in short rows, at a neckline or for a handle opening.',
  },
  {
    code: 'stroke-under-box',
    severity: 'warning',
    title:
      'Strokes of {letters} are {boxes} of a box at the thinnest; {enough: boxes} of height would make it 1.',
    advice: 'Take larger letters or a heavier font, and look at the chart.',
  },
  {
    code: 'swatch-short',
    severity: 'note',
    title: 'The gauge is given over {over}, and the swatch is {swatch}: it was not counted so.',
    advice:
      'Give the count as it was counted, over the length it was counted over, or work a larger swatch.',
  },
  {
    code: 'swatch-small',
    severity: 'note',
    title:
      'The gauge was counted over {counted}, and the piece is {size}: a quarter of one there is {off} here.',
    advice:
      'Count over a longer stretch, 10 cm or more, and give that number as it is; halves are welcome.',
  },
  {
    code: 'terms-inferred',
    severity: 'note',
    title: 'The pattern does not say if its terms are US or UK; it is read as {terms}, {because}.',
    advice:
      'Write "terms: US" or "terms: UK" in the front matter, or the words "US terms" among the notes.',
  },
  {
    code: 'terms-mixed',
    severity: 'warning',
    title: 'US and UK terms are mixed: {us: words} {us|speaks|speak} for US, {uk #} for UK.',
    advice: 'Say at the head of the pattern which terms it uses, and write all stitches in them.',
  },
  {
    code: 'times-two-readings',
    severity: 'warning',
    title: '"{words}" can mean {first #} or {second #} times in all.',
    advice: 'Write "5 more times": that has one reading.',
  },
  {
    code: 'too-many-stitches',
    severity: 'error',
    title: '{row} brings the work to {stitches: stitches}; up to {limit #} are worked.',
    advice: 'Check the numbers of the row; a digit may have crept in.',
  },
  {
    code: 'two-readings',
    severity: 'note',
    title: '"{words}" can be read in two ways: {first}, or {second}.',
    advice:
      'Say which is meant, once, among the notes: "Ch 2 does not count as a stitch throughout".',
  },
  {
    code: 'unbalanced-bracket',
    severity: 'warning',
    title: 'The bracket "{bracket}" has no partner.',
    advice: 'Add the missing bracket.',
  },
  {
    code: 'undefined-stitch',
    severity: 'error',
    title:
      '"{stitch}" is not a stitch in {terms} terms, nor one that this pattern defines[; "{nearest}" is].',
    advice: 'Define it under "Special stitches", or use the usual word for it.',
  },
  {
    code: 'unknown-front-matter-key',
    severity: 'note',
    title: '"{entry}" is no entry that Loopwright uses[; "{nearest}" is].',
    advice: 'Put the name right, or leave it if it is meant for other readers.',
  },
  {
    code: 'unread',
    severity: 'error',
    title: 'These words were not understood: "{words}".',
    advice:
      'Write a stitch with its place, as in "sc in next 3 sts" or "sk next 2 ch", and define stitches of your own. A remark goes in brackets or in a paragraph of its own.',
  },
  {
    code: 'will-cup',
    severity: 'warning',
    title: '{part} may cup: {row} has {made: stitches}, and about {flat #} would lie flat.',
    advice:
      'Increase more often, or leave out rounds without increases. If the piece is meant to turn up, say so in the pattern, and nothing more is said of it here.',
  },
  {
    code: 'will-ruffle',
    severity: 'warning',
    title: '{part} may ruffle: {row} has {made: stitches}, and about {flat #} would lie flat.',
    advice:
      'Increase less often, or work a round without increases now and then. If it is meant to ruffle, say so in the pattern, and nothing more is said of it here.',
  },
  {
    code: 'words-empty',
    severity: 'error',
    title: 'There are no words to letter, or more than {most: signs}.',
    advice: 'Give the words, each line as a word of the command of its own.',
  },
  {
    code: 'words-passed',
    severity: 'note',
    title: 'The words "{words}" were not understood; {row} comes out without them.',
    advice: 'Nothing, if they are talk. If they order work, write the stitch with its place.',
  },
  {
    code: 'wrong-noun',
    severity: 'note',
    title: '"{words}" names {named}; {before} has {found} here.',
    advice: 'Write the stitch of the row beneath, or simply "sts".',
  },
];
