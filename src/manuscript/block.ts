/** The pieces of a manuscript between its line ends, in order; whatever is in none is blank. */
import type { Span } from '../source/index.ts';
import type { Section } from './sections.ts';

/** A heading, or a lone line that names a part (`level` 0). `name` is without its marks. */
export interface HeadingBlock extends Span {
  readonly kind: 'heading';
  readonly level: number;
  readonly name: string;
  readonly section: Section;
}

/** A labelled row, or a run of stitch commands. */
interface InstructionBlock extends Span {
  readonly kind: 'instruction';
}

/** Text that is not worked, and under which kind of heading it stands. */
export interface ProseBlock extends Span {
  readonly kind: 'prose';
  readonly section: Section;
}

/** Words that look like the definition of a stitch. */
interface DefinitionBlock extends Span {
  readonly kind: 'definition';
  readonly section: Section;
}

/** "Make 2.", alone on its line. */
interface CopiesBlock extends Span {
  readonly kind: 'copies';
  readonly copies: number;
}

/** A fenced chart; `innerFrom` to `innerTo` hold the lines between the fences. */
export interface ChartBlock extends Span {
  readonly kind: 'chart';
  readonly name: string;
  readonly innerFrom: number;
  readonly innerTo: number;
}

export type Block =
  | HeadingBlock
  | InstructionBlock
  | ProseBlock
  | DefinitionBlock
  | CopiesBlock
  | ChartBlock;
