/**
 * What slips of typing, of pasting and of scanning may have been. Only long words of the trade and
 * those of its short ones that no other word resembles: "sc", "dc" and "tr" are never guessed, and
 * neither is a number. Held against a list of English words when they were chosen; from memory else.
 */

/** Words of five letters and more, of which one letter may be wrong. */
export const LONG_WORDS = `
 stitch stitches chain chains single double treble trebles triple crochet crochets round rounds
 around across space spaces cluster clusters shell shells bobble bobbles popcorn popcorns picot
 picots magic circle repeat repeats increase increases decrease decreases corner corners center
 centre turning beginning fasten front loops through between together remaining following previous
 times twice evenly initial alternate foundation joining every finish
`;

/** Words of four letters, of which two may have changed places or one is doubled. */
export const SHORT_WORDS =
  'each next into turn join last same loop ring hook with work skip from slip make back';

/** Places in a row, of which two letters may have changed places or one is left out. */
export const PLACE_WORDS: Readonly<Record<string, number>> = { first: 1, second: 2, third: 3 };

/** English words that one wrong letter would make of those. */
export const REAL_WORDS = `
 titch titches stitched hain cain chin chins chai ingle dingle shingle singe singed singled singlet
 rouble doubled doubler doublet tremble trembles trembled tripe tripled tripler triplet triplex trips
 ground grounds founds rotund aground cross pace paces apace spade spades spacer spacers luster
 lusters fluster sell sells hells snell gobble hobble nobble gobbles hobbles nobbles bobbled hobbled
 pivot pivots pixel mafic magi magics circled circler circlet increaser decease deceased deceases
 scorner corer cornet cornets coroner cornier corned enter venter urning tuning turnings beginnings
 fastens afront font fonts oops hoops loopy trough thorough followings pervious precious rimes ties
 tikes tines timed timer timers wice alternated alternates foundations coining joinings rotunda ever fever fist thirds
 salt snap crochety rocket circlets
`;

/** English words that are a letter away from any word of the trade; from memory. */
export const EVERYDAY_WORDS = `
 alike aside bake band barn beach beam bear beat bend bill black blow bold book bore bound bounds bows bright bring
 brow burn cake came cart case cast chair charm chip chop chose clock coil coin cold cook coop core cork cost court
 cows crease crop crow dart drip droop earn ease enter event ever fail fake farm fast fasted faster fell fight firm
 flock flow foam foil fore fork former frost game gape gold grape grip ground grow hail hill hind hoop host hounds itch
 joint kick kill kind king lace lake land lease lend lick light line list lock loin loom lost mail mend mill mind mold
 morn mound mount nail name night nook oven pace pack pail pain paint party past pear pill plate pock pork pound print
 prop rail rake rang reach regain repeal ride rides rook safe sail sake sale sand sane scuff seat send shake ship shook
 sick sight site sized skew skill smart smell snip snuff sold sore sound sounds spill stark stew stop tart teach team
 tell tend text thin thorough tide tides toil told took torn tows trail tree vase wake ware warn wend wides wind witch
 word wore world worm worn gives wide
`;

/** What scanners and hasty fingers make of words that are too short, or too alike, to be guessed. */
export const SCANNED: Readonly<Record<string, string>> = {
  de: 'dc',
  des: 'dc',
  doc: 'dc',
  tum: 'turn',
  lurn: 'turn',
  tuming: 'turning',
  comer: 'corner',
  comers: 'corners',
  duster: 'cluster',
  dusters: 'clusters',
  arid: 'and',
  slitch: 'stitch',
  joing: 'joining',
  turing: 'turning',
  croched: 'crochet',
  laste: 'last',
  sam: 'same',
  seek: 'skip',
};

/** What a scanner makes of "ch" before a number. */
export const SCANNED_CHAIN = 'cn cb eh cli cii';

/** Words that lost the blank between them. */
export const PIECES = `
 in into next each of st sts stitch stitches sc dc hdc edc esc ehdc trc tr htr dtr ch sp sps space loop loops ring and
 from the to around across rep repeat turn join skip sk sl slst same last first row rnd round hook top
 with work end blo flo until then over crochet chain fasten off nxt ea first other side
`;

/** English words that are made of them. */
export const WHOLE_WORDS = `
 inturn inwith inwork string stand standfirst standover standoff strep strow strows stend stover
 stitchwork scand scrow scend scoff trin trend trover chin spin spinto spinoff spring spend thein
 thesp tost repin repand turnaround turnround turnover turnoff turnskin skin skoff topstitch
 topstitches topspin topwork withstand workspace workaround worktop overstand overspin overspend
 overturn inside topside offside ringside withother overskip overtop overwork offspring offend outwork ringwork
`;
