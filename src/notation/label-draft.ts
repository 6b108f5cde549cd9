/** A row's label while it is being read. */
import type { RowLabel } from './tree.ts';

export type LabelDraft = { -readonly [K in keyof RowLabel]: RowLabel[K] };

const NO_NUMBERS: readonly number[] = [];

/** Used again for every line that may have a label; most have none. */
const shared: LabelDraft = {
  word: '',
  numbers: NO_NUMBERS,
  lastBySize: null,
  firstBySize: null,
  every: null,
  openEnd: false,
  next: null,
  side: null,
  sizes: '',
  yarn: null,
  text: '',
  from: 0,
  to: 0,
};

/** A label that says nothing yet; good until the next is asked for. */
export function clearedLabel(): LabelDraft {
  const draft = shared;
  draft.word = '';
  draft.numbers = NO_NUMBERS;
  draft.lastBySize = null;
  draft.firstBySize = null;
  draft.every = null;
  draft.openEnd = false;
  draft.next = null;
  draft.side = null;
  draft.sizes = '';
  draft.yarn = null;
  draft.text = '';
  return draft;
}

export const copyOfLabel = (draft: LabelDraft): RowLabel => ({
  word: draft.word,
  numbers: draft.numbers,
  lastBySize: draft.lastBySize,
  firstBySize: draft.firstBySize,
  every: draft.every,
  openEnd: draft.openEnd,
  next: draft.next,
  side: draft.side,
  sizes: draft.sizes,
  yarn: draft.yarn,
  text: draft.text,
  from: draft.from,
  to: draft.to,
});
