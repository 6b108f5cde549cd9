// Nodes of the tree from what matters of them: everything else says nothing. Spans are empty, since
// these trees come from no text.
import type {
  ChainStep,
  JoinStep,
  Noun,
  Numbers,
  Place,
  RepeatStep,
  RowLabel,
  RowsAgainStep,
  StatedCount,
  StitchTerm,
  Until,
  WorkStep,
} from '../../src/notation/index.ts';

export const NOWHERE = { from: 0, to: 0 };

export const numbers = (...values: (number | null)[]): Numbers => ({ ...NOWHERE, values });

export const stitch = (said: Partial<StitchTerm>): StitchTerm => ({
  shape: 'one',
  stem: null,
  legs: null,
  special: null,
  loop: null,
  post: null,
  extended: false,
  foundation: false,
  manner: [],
  ...said,
});

export const noun = (said: Partial<Noun>): Noun => ({
  kind: 'stitch',
  stem: null,
  post: null,
  chains: null,
  word: '',
  plural: false,
  corner: false,
  skipped: false,
  ...said,
});

export const place = (said: Partial<Place>): Place => ({
  ...NOWHERE,
  pick: 'next',
  n: null,
  each: false,
  nth: null,
  fromHook: false,
  nouns: [noun({})],
  joinedBy: null,
  until: null,
  of: null,
  loop: null,
  post: null,
  rowsBelow: 0,
  row: null,
  all: false,
  ...said,
});

export const end = (word: string): Until => ({ ...NOWHERE, kind: 'end', word });

export const work = (said: Partial<WorkStep>): WorkStep => ({
  ...NOWHERE,
  kind: 'work',
  n: null,
  numberAfter: false,
  stitch: stitch({}),
  nameFrom: 0,
  nameTo: 0,
  place: null,
  alsoIn: [],
  until: null,
  countsAs: null,
  evenly: false,
  ...said,
});

export const chain = (n: Numbers, said: Partial<ChainStep> = {}): ChainStep => ({
  ...NOWHERE,
  kind: 'chain',
  n,
  countsAs: null,
  open: false,
  multiple: null,
  ...said,
});

export const join = (said: Partial<JoinStep>): JoinStep => ({
  ...NOWHERE,
  kind: 'join',
  place: null,
  with: null,
  ring: false,
  yarn: null,
  ...said,
});

export const repeat = (said: Partial<RepeatStep>): RepeatStep => ({
  ...NOWHERE,
  kind: 'repeat',
  mark: '*',
  steps: [],
  times: { kind: 'missing' },
  ending: null,
  again: false,
  order: NOWHERE,
  ...said,
});

export const rowsAgain = (said: Partial<RowsAgainStep>): RowsAgainStep => ({
  ...NOWHERE,
  kind: 'rows-again',
  changes: [],
  every: null,
  rows: [],
  lastN: null,
  onward: false,
  named: null,
  part: null,
  times: null,
  moreRows: null,
  rowsInAll: null,
  stitchesAtEnd: null,
  measure: null,
  endingWith: null,
  // biome-ignore lint/suspicious/noThenProperty: the tree's own name for the rows after "then".
  then: [],
  even: false,
  ...said,
});

export const label = (said: Partial<RowLabel>): RowLabel => ({
  ...NOWHERE,
  word: 'round',
  numbers: [],
  lastBySize: null,
  firstBySize: null,
  every: null,
  openEnd: false,
  next: null,
  side: null,
  sizes: '',
  yarn: null,
  text: '',
  ...said,
});

export const count = (n: Numbers, said: Partial<StatedCount> = {}): StatedCount => ({
  ...NOWHERE,
  n,
  unit: null,
  stem: null,
  chains: null,
  word: '',
  startChainIncluded: null,
  partial: false,
  ...said,
});
