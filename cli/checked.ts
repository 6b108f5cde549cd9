/** What the engine gives back for one text, as far as the command line reports it. */
import type { Compiled } from '../src/index.ts';

/** Without manuscript and fabric: these are large, and stay in the thread that made them. */
export type Checked = Omit<Compiled, 'manuscript' | 'fabric'>;

/** A text with the name under which it is reported. */
export interface CheckedFile extends Checked {
  readonly file: string;
  /** It was not named, but lies in a folder that was: it may be notes, and no pattern at all. */
  readonly found?: 'in-folder';
}
