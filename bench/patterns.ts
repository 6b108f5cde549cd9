/** Texts for the benches: joined rounds of the kinds that a bag has, made by a small generator. */

/** `rounds` rounds of `around` stitches (a multiple of 24), with front matter and stated counts. */
export function bagOf(rounds: number, around: number): string {
  if (around % 24 !== 0) throw new RangeError('the rounds repeat over 2, 3, 4, 6 and 8 stitches');
  const head = `---\ntitle: Long Quay bag\nterms: US\nyarn: { A: { weight: 3 }, B: { weight: 3 } }\n---`;
  const notes = '## Notes\n\nThe ch 1 at the start of a round does not count as a stitch.';
  const rows = Array.from({ length: rounds }, (_, i) => {
    const { words, noun } = roundOf(i, around);
    return `Rnd ${i + 1}: ${words} (${around} ${noun})`;
  });
  const start = `With A, ch ${around}; join with sl st in first ch to form a ring.`;
  return [head, notes, '## Bag', start, ...rows, 'Fasten off.', ''].join('\n\n');
}

/** A round as many as it was: nine shapes in turn, their numbers moved on at every pass. */
function roundOf(i: number, around: number): { readonly words: string; readonly noun: string } {
  const pass = Math.floor(i / SHAPES.length);
  const shape = SHAPES[i % SHAPES.length]!;
  return { words: shape(around, pass), noun: i % SHAPES.length === 2 ? 'hdc' : 'sts' };
}

type Shape = (around: number, pass: number) => string;

const JOIN = 'join with sl st in first st.';

const SHAPES: readonly Shape[] = [
  () => `Ch 1, sc in same st as join and in each st around; ${JOIN}`,
  (around, pass) => {
    const run = 1 + (pass % (around - 2));
    const rest = around - run;
    return `Ch 1, sc in first ${run} sts, with B, sc in next ${rest} sts, with A; ${JOIN}`;
  },
  () => `Ch 1, hdc in each st around; ${JOIN}`,
  () => `Ch 1, *2 sc in next st, sc2tog, sc in next st; rep from * around; ${JOIN}`,
  (around, pass) => {
    const plain = 1 + (pass % 3);
    const times = around / 24;
    const rest = 24 - 3 - plain;
    return `Ch 1, *sc in next ${plain} sts, (inc, dec), sc in next ${rest} sts; rep from * ${times - 1} more times; ${JOIN}`;
  },
  () => `Ch 1, *sc in next st, dc in next st; rep from * around; ${JOIN}`,
  () => `Ch 1, (sc in next 2 sts, FPdc around next st) around; ${JOIN}`,
  (around) =>
    `Ch 1, (3 sc in next st, sk next 2 sts, sc in next 3 sts) ${around / 6} times; ${JOIN}`,
  (around) => `Ch 1, working in back loops only, sc in next ${around} sts; ${JOIN}`,
];
