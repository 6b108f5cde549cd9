/** Words by which rows are named in labels. */
import { isWord, type Reader, type Words, wordsOf } from './reader.ts';
import { W } from './senses.ts';

/** Whether "row" or "round" stands `ahead` tokens from here. */
export const isRowName = (r: Reader, ahead = 0): boolean =>
  isWord(r, W.row, ahead) || isWord(r, W.round, ahead);

/** What a row is for or where it lies: "Set-up row:", "Increase round:". */
export const NAMERS: Words = wordsOf(`
  next start set setup foundation base last final first edging border increase decrease inc dec eyelet
  beading finishing all every each joining starting beginning pattern body handle strap ruffle picot
  shell following short plain additional remaining subsequent further
`);
