/**
 * Random pieces that are right. The counts are worked out here, by arithmetic on the shape, and
 * owe nothing to the program. A row keeps its numbers apart from its words, so that a single one
 * can be changed.
 */
import fc from 'fast-check';

/** Words between numbers that bind: each of them decides what comes out. */
type Word = string | { readonly n: number };

interface Line {
  readonly words: readonly Word[];
  /** Whether the words make a row, or a foundation. */
  readonly row: boolean;
}

export interface Piece {
  readonly shape: string;
  readonly lines: readonly Line[];
  /** Stitches of each row, by our own arithmetic. */
  readonly made: readonly number[];
}

const n = (value: number): Word => ({ n: value });
const row = (...words: Word[]): Line => ({ words, row: true });
const base = (...words: string[]): Line => ({ words, row: false });

/** The pattern with one heading; `at` and `by` change the number there. */
export function written(piece: Piece, change?: { at: number; by: number }): string {
  let at = 0;
  const lines = piece.lines.map(({ words }) =>
    words
      .map((word) => {
        if (typeof word === 'string') return word;
        return String(word.n + (change && at++ === change.at ? change.by : 0));
      })
      .join(''),
  );
  return `---\ntitle: Trial piece\nterms: US\n---\n\n## Piece\n\n${lines.join('\n\n')}\n`;
}

/** The rows (from 0) and values of the numbers that bind, in order. */
export const bindings = (piece: Piece): { row: number; n: number }[] => {
  let at = -1;
  return piece.lines.flatMap((line) => {
    if (line.row) at++;
    return line.words.flatMap((w) => (typeof w === 'string' ? [] : [{ row: at, n: w.n }]));
  });
};

/** Rows of one stitch, with groups that grow or shrink, turned. */
export const flatRows = (): fc.Arbitrary<Piece> =>
  fc
    .record({
      start: fc.integer({ min: 12, max: 60 }),
      groups: fc.array(fc.record({ plain: fc.integer({ min: 1, max: 4 }), grow: fc.boolean() }), {
        minLength: 2,
        maxLength: 8,
      }),
    })
    .map(({ start, groups }) => {
      const made = [start];
      const lines = [
        base(`Ch ${start + 1}.`),
        row('Row 1: Sc in 2nd ch from hook and in each ch across. (', n(start), ' sc)'),
      ];
      for (const [i, { plain, grow }] of groups.entries()) {
        const before = made.at(-1) ?? 0;
        const width = plain + (grow ? 1 : 2);
        const times = Math.floor(before / width);
        const left = before % width;
        if (times < 2) break;
        const count = before + (grow ? times : -times);
        const shaped = grow ? ', 2 sc in next st) ' : ', sc2tog) ';
        const rest: Word[] = left > 0 ? [', sc in next ', n(left), ' sts'] : [];
        const start = [`Row ${i + 2}: Ch 1, turn, (sc in next `, n(plain), ` sts${shaped}`];
        lines.push(row(...start, n(times), ' times', ...rest, '. (', n(count), ' sc)'));
        made.push(count);
      }
      return { shape: 'flat rows', lines, made };
    });

/** Rounds of a circle, joined or in a spiral, then even, then closed again. */
export const rounds = (): fc.Arbitrary<Piece> =>
  fc
    .record({
      petals: fc.integer({ min: 5, max: 9 }),
      grown: fc.integer({ min: 2, max: 7 }),
      even: fc.integer({ min: 0, max: 4 }),
      joined: fc.boolean(),
    })
    .map(({ petals, grown, even, joined }) => {
      const made: number[] = [];
      const lines: Line[] = [];
      const add = (count: number, ...words: Word[]): void => {
        const head = `Rnd ${lines.length + 1}: ${joined ? 'Ch 1, ' : ''}`;
        const end = joined ? '; join with sl st in first sc. (' : '. (';
        lines.push(row(head, ...words, end, n(count), ')'));
        made.push(count);
      };
      add(petals, n(petals), ' sc in magic ring');
      add(2 * petals, n(2), ' sc in each st around');
      const group = (plain: number, shaped: string): Word[] => [
        '(sc in next ',
        n(plain),
        ` sts, ${shaped}) `,
        n(petals),
        ' times',
      ];
      for (let r = 1; r < grown; r++) add((r + 2) * petals, ...group(r, '2 sc in next st'));
      const widest = (grown + 1) * petals;
      for (let r = 0; r < even; r++) add(widest, 'sc in each of next ', n(widest), ' sts');
      for (let r = grown - 1; r > 0; r--) add((r + 1) * petals, ...group(r, 'sc2tog'));
      return { shape: joined ? 'joined rounds' : 'a spiral', lines, made };
    });

/** An oval in sc: 2n + 2, then 6 more a round. */
export const ovals = (): fc.Arbitrary<Piece> =>
  fc
    .record({ usable: fc.integer({ min: 5, max: 40 }), more: fc.integer({ min: 1, max: 5 }) })
    .map(({ usable, more }) => {
      const along = usable - 2;
      const made = [2 * usable + 2];
      const side: Word[] = ['sc in next ', n(along)];
      const lines = [
        base(`Ch ${usable + 1}.`),
        row(
          ...['Rnd 1: Sc in 2nd ch from hook, ', ...side, ' ch, ', n(3)],
          ...[' sc in last ch; working along opposite side of foundation ch, ', ...side],
          ...[' ch, ', n(2), ' sc in same ch as first sc; join with sl st in first sc. ('],
          ...[n(2 * usable + 2), ' sc)'],
        ),
      ];
      for (let r = 1; r <= more; r++) {
        const group: Word[] = r > 1 ? ['2 sc in next st, sc in next ', n(r - 1), ' sts'] : [];
        const bend = (times: number): Word[] =>
          r > 1
            ? ['(', ...group, ') ', n(times), ' times']
            : ['2 sc in each of next ', n(times), ' sts'];
        const first: Word[] = r > 1 ? group : ['2 sc in next st'];
        const count = 2 * usable + 2 + 6 * r;
        lines.push(
          row(
            ...[`Rnd ${r + 1}: Ch 1, `, ...first, ', ', ...side, ' sts, ', ...bend(3), ', '],
            ...[
              ...side,
              ' sts, ',
              ...bend(2),
              '; join with sl st in first sc. (',
              n(count),
              ' sc)',
            ],
          ),
        );
        made.push(count);
      }
      return { shape: 'an oval', lines, made };
    });

/** Open mesh over a row of dc, the later rows post on post. */
export const meshes = (): fc.Arbitrary<Piece> =>
  fc
    .record({
      boxes: fc.integer({ min: 4, max: 30 }),
      gap: fc.integer({ min: 1, max: 3 }),
      rows: fc.integer({ min: 1, max: 4 }),
    })
    .map(({ boxes, gap, rows }) => {
      const width = boxes * (gap + 1) + 1;
      const lines = [
        base(`Ch ${width + 2}.`),
        row('Row 1: Dc in 4th ch from hook and in each ch across. (', n(width), ' dc)'),
      ];
      for (let r = 0; r < rows; r++) {
        const start = `Row ${r + 2}: Ch ${3 + gap} (counts as dc and ch ${gap}), turn, `;
        const skip: Word[] = r === 0 ? ['sk next ', n(gap), ' sts, '] : [`sk first ch-${gap} sp, `];
        const over = r === 0 ? `sk next ${gap} sts` : `sk next ch-${gap} sp`;
        const group = `(dc in next dc, ch ${gap}, ${over}) `;
        const last = r === 0 ? 'dc in last st' : `dc in 3rd ch of turning ch-${3 + gap}`;
        lines.push(
          row(start, ...skip, group, n(boxes - 1), ` times, ${last}. (`, n(boxes + 1), ' dc)'),
        );
      }
      const made = [width, ...Array.from({ length: rows }, () => boxes + 1)];
      return { shape: 'mesh', lines, made };
    });

/** Shells of odd width between sc, over a row of sc. */
export const shells = (): fc.Arbitrary<Piece> =>
  fc
    .record({ repeats: fc.integer({ min: 2, max: 14 }), half: fc.integer({ min: 1, max: 3 }) })
    .map(({ repeats, half }) => {
      const width = repeats * (2 * half + 2) + 1;
      const size = 2 * half + 1;
      const count = repeats * (size + 1) + 1;
      const lines = [
        base(`Ch ${width + 1}.`),
        row('Row 1: Sc in 2nd ch from hook and in each ch across. (', n(width), ' sc)'),
        row(
          ...['Row 2: Ch 1, turn, sc in first st, (sk next ', n(half), ' sts, ', n(size)],
          ...[' dc in next st, sk next ', n(half), ' sts, sc in next st) ', n(repeats)],
          ...[' times. (', n(count), ' sts)'],
        ),
      ];
      return { shape: 'shells', lines, made: [width, count] };
    });

export const pieces = (): fc.Arbitrary<Piece> =>
  fc.oneof(flatRows(), rounds(), ovals(), meshes(), shells());
