/** Texts beyond each limit of the program, and the finding that names it. */
interface Limit {
  readonly name: string;
  readonly code: string;
  readonly text: () => string;
}

const piece = (...lines: string[]): string => `## Piece\n\n${lines.join('\n\n')}\n`;
const FIRST = 'Rnd 1: 6 sc in magic ring. (6)';

export const LIMITS: readonly Limit[] = [
  {
    name: 'a file over 4 MB',
    code: 'file-too-large',
    text: () => `${FIRST}\n\n`.repeat(Math.ceil((4 * 1024 * 1024 + 1) / (FIRST.length + 2))),
  },
  {
    name: 'a line over 256 kB',
    code: 'line-too-long',
    text: () => piece(FIRST, `Rnd 2: ${'sc in next st, '.repeat(18_000)}sc in last st.`),
  },
  {
    name: 'a chain of a thousand million',
    code: 'too-many-stitches',
    text: () => piece('Ch 999999999.'),
  },
  {
    name: 'rounds that double without end',
    code: 'too-many-stitches',
    text: () => piece(FIRST, 'Rnds 2-60: 2 sc in each st around.'),
  },
  {
    name: 'a repeat of a thousand million',
    code: 'repeat-too-large',
    text: () => piece(FIRST, 'Rnd 2: (2 sc in next st) 1000000000 times.'),
  },
  {
    name: 'a repeat of a thousand million in one place',
    code: 'repeat-too-large',
    text: () => piece(FIRST, 'Rnd 2: (Sc in same st) 1000000000 times.'),
  },
  {
    name: 'nesting of 65',
    code: 'nesting-too-deep',
    text: () => piece(FIRST, `Rnd 2: ${'('.repeat(65)}2 sc in next st${') once'.repeat(65)}. (7)`),
  },
  {
    name: 'a round that repeats itself',
    code: 'row-reference-loop',
    text: () => piece(FIRST, 'Rnd 2: Rep rnd 2.'),
  },
  {
    name: 'a round among those that it repeats',
    code: 'row-reference-loop',
    text: () => piece(FIRST, 'Rnd 2: 2 sc in each st around. (12)', 'Rnd 3: Rep rnds 2 and 3.'),
  },
  {
    name: 'two rounds that repeat each other',
    code: 'row-reference-loop',
    text: () => piece(FIRST, 'Rnd 2: Rep rnd 3.', 'Rnd 3: Rep rnd 2.'),
  },
];
