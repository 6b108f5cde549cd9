export { type FrontMatter, readFrontMatter } from './front-matter.ts';
export type {
  Cell,
  Chart,
  Head,
  Manuscript,
  Part,
  PlacedInstruction,
} from './manuscript.ts';
export { type ReadOptions, readManuscript } from './read-manuscript.ts';
export { sizesNamed } from './sizes-named.ts';
export { spellingsOf } from './specials.ts';
export { type WritePatternOptions, writePattern } from './write.ts';
export type { Entry } from './yaml-entries.ts';
