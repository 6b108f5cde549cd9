export {
  type CueWords,
  gatherCues,
  noCueWords,
  statedTerms,
  type TermCues,
  termCues,
} from './cues.ts';
export { isKnownWord } from './dictionary.ts';
export { opensPlainLabel } from './label-opens.ts';
export { mayLeadWork } from './leads-work.ts';
export { SPELLINGS } from './lexicon.ts';
export { withNearNames } from './near-names.ts';
export { isEnglish } from './near-words.ts';
export { readOrders } from './notes.ts';
export { PLAIN_NOUN } from './noun.ts';
export { NUMBER_WORDS } from './number-words.ts';
export { placeWith } from './place-draft.ts';
export { readInstruction } from './read.ts';
export { nameOfRow } from './rows-again.ts';
export { opensSeam } from './seam.ts';
export { readSpecial, readSpecialAgain } from './special.ts';
export { readsAsWork, startsInstruction, startsWithLabel } from './starts.ts';
export { heightOf, STEMS, type Stem, type StemId, stemOf, wordFor } from './stems.ts';
export { nameSpan, PLAIN_TERM } from './stitch-term.ts';
export type {
  BoxStep,
  ChainStep,
  ChangedNumber,
  ChartStep,
  CountsAs,
  CountUnit,
  Ending,
  EndShaping,
  EvenStep,
  FastenOffStep,
  GroupStep,
  Instruction,
  JoinStep,
  Loop,
  LoopStep,
  MarkStep,
  Measure,
  Multiple,
  NotWorkedStep,
  Noun,
  NounKind,
  Numbers,
  OtherSideStep,
  Pick,
  PieceStep,
  Place,
  Post,
  RemarkStep,
  RepeatStep,
  RingStep,
  RowLabel,
  RowsAgainStep,
  Side,
  SkipStep,
  SpecialStitch,
  SpiralStep,
  StandingOrder,
  StatedCount,
  StemWord,
  Step,
  StitchShape,
  StitchTerm,
  Terms,
  Times,
  TurnStep,
  UnreadStep,
  Until,
  UnworkedStep,
  WorkStep,
  YarnStep,
} from './tree.ts';
export { NO_VOCABULARY, type Vocabulary } from './vocabulary.ts';
export {
  type WriteOptions,
  writeInstruction,
  writeSpecial,
  writeWords,
} from './write/index.ts';
export { isColour } from './yarn-name.ts';
export { yarnSaid, yarnsOfCopies, yarnsOfHeading } from './yarn-said.ts';
