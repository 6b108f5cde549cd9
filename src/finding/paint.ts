/** Colour for terminals. Nothing is told by colour alone: each painted word also says what it means. */

export type Ink = 'error' | 'warning' | 'note' | 'label' | 'faint' | 'strong';

/** Puts ink on a text, or leaves it as it is. */
export type Paint = (ink: Ink, text: string) => string;

/** ECMA-48 select graphic rendition: 1 bold, 2 faint, 31 red, 33 yellow, 36 cyan. */
const codes: Readonly<Record<Ink, string>> = {
  error: '1;31',
  warning: '1;33',
  note: '1;36',
  label: '36',
  faint: '2',
  strong: '1',
};

export const coloured: Paint = (ink, text) =>
  text === '' ? '' : `\u001b[${codes[ink]}m${text}\u001b[0m`;

export const plain: Paint = (_ink, text) => text;
