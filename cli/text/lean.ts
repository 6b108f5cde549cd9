/** The lean of the start of round on the sheet: where it matters first, with remedies compared. */
import {
  leanFigures,
  type Paint,
  type PieceLean,
  type Remedy,
  type SizeSheet,
  shortFigure,
  type Units,
  wrap,
} from '../../src/index.ts';

export interface LeanLayout {
  readonly units: Units;
  readonly width: number;
  readonly paint: Paint;
}

export function leanLines({ leans }: SizeSheet, layout: LeanLayout): string[] {
  if (leans.length === 0) return [];
  const placed = leans.filter(({ what }) => what !== 'end');
  const others = leans.filter(({ what }) => what === 'end');
  const lines = ['', layout.paint('strong', 'Lean of the start of round')];
  const told = new Set<string>();
  const isAlone = new Set(leans.map(({ name }) => name)).size === 1;
  for (const lean of placed) {
    const where = `${isAlone ? 'Where' : `${lean.name || 'Piece'}, where`} ${WHERE[lean.what]} (${lean.at})`;
    lines.push(...hanging(`${where}: ${placedSaid(lean, layout.units)}`, layout.width));
    // What holds for the whole piece is not told again for the next thing on it.
    const fresh = lean.remedies.filter(({ words }) => !told.has(`${lean.name} ${words}`));
    for (const { words } of fresh) told.add(`${lean.name} ${words}`);
    lines.push(...remedyLines(fresh, layout.width));
  }
  if (others.length > 0) lines.push(...otherLines(others, layout));
  return lines;
}

const hanging = (text: string, width: number): readonly string[] =>
  wrap('  ', text, Math.max(40, width), '      ');

/** "3 to 5 stitches (1.9 cm to 2.8 cm)", whole stitches. */
function rangeSaid(one: PieceLean, units: Units): string {
  const { stitches } = one.lean;
  const [low, high] = [Math.round(Math.abs(stitches.from)), Math.round(Math.abs(stitches.to))];
  const figures = leanFigures(one);
  const [from, to] = [shortFigure(figures.from, units), shortFigure(figures.to, units)];
  if (low === high) return `about ${low} ${low === 1 ? 'stitch' : 'stitches'} (${from})`;
  return `${low} to ${high} stitches (${from} to ${to})`;
}

const WHERE: Readonly<Record<PieceLean['what'], string>> = {
  motif: 'the motif begins',
  handles: 'the handles begin',
  end: 'the piece ends',
};

const wayOf = ({ lean }: PieceLean): string =>
  lean.stitches.to > 0
    ? 'to the right for right-handers, to the left for left-handers'
    : 'to the left for right-handers, to the right for left-handers';

function placedSaid(one: PieceLean, units: Units): string {
  const { what, from, lean } = one;
  if (lean.stitches.to === 0) {
    return `not known. The ${lean.unknownRounds} rounds beneath lean as your own swatch does (lean: { dc: 0.2 } in front matter, in stitches a round).`;
  }
  const unknown =
    lean.unknownRounds > 0
      ? ` For ${lean.unknownRounds} more ${lean.unknownRounds === 1 ? 'round' : 'rounds'} only your own swatch knows (lean: { mesh: 0.1 } in front matter, in stitches a round).`
      : '';
  return `${rangeSaid(one, units)} ${wayOf(one)}, over ${lean.knownRounds} rounds from ${from} on. ${lean.because}${unknown} Placed by count alone, the ${what === 'motif' ? 'motif stands' : 'handles stand'} off the middle by so much.`;
}

const remedyLines = (remedies: readonly Remedy[], width: number): string[] =>
  remedies.flatMap(({ name, words, effect, leavesUpTo }) =>
    wrap('      ', `${name}, ${leftSaid(leavesUpTo)}: "${words}" ${effect}`, width, '          '),
  );

function leftSaid(stitches: number): string {
  if (stitches === 0) return 'leaves hardly anything';
  const half = Math.max(0.5, Math.round(stitches * 2) / 2);
  return `leaves up to ${half === 0.5 ? 'half a stitch' : half === 1 ? '1 stitch' : `${half} stitches`}`;
}

/** Pieces where nothing has a place of its own: told shortly, and the cures once. */
function otherLines(others: readonly PieceLean[], { units, width }: LeanLayout): string[] {
  const said = others.map(
    (one) => `${one.name || 'the piece'} ${rangeSaid(one, units)} by ${one.until}`,
  );
  const [first] = others;
  return [
    ...hanging(
      `Where no motif or handle shows it: ${said.join('; ')}; ${wayOf(first!)}. ${first!.lean.because}`,
      width,
    ),
    ...remedyLines(first!.remedies, width),
  ];
}
