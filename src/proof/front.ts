/**
 * Where the faces of a piece worked round lie: by what the notes say of the rounds' start, else by two
 * handles, each of which stands over the middle of a face (common practice). Positions are in
 * stitches of the round from its start.
 */
import { type Cloth, type Fabric, placeBelow, type RowRecord } from '../fabric/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { newScene, type Scene } from './scene.ts';
import { openingsOf } from './text/handles.ts';
import { instructionsOf } from './text/rows.ts';

export interface Faces {
  /** Middle of each face, the front first where that is known. */
  readonly middles: readonly [number, number];
  /** A sentence. */
  readonly because: string;
}

/** What starts the round, then where: "The start of the round lies at one side of the bag." */
const START =
  '(?:(?:starts?|beginnings?|joins?|joinings?|seams?) of (?:the |each |every |all )*(?:rounds?|rnds?)|(?:rounds?|rnds?) (?:all )?(?:start|begin|join)s?|(?:the )?(?:join(?:ing)?|seam) (?:lies|is|runs|falls|stays))';
const at = (place: string): RegExp => new RegExp(`${START}[^.]{0,60}\\b(?:${place})`, 'i');
const CENTRE = '(?:cent(?:re|er)|middle)';

const STARTS: readonly { readonly words: RegExp; readonly where: 'side' | 'back' | 'front' }[] = [
  { words: at(`${CENTRE} (?:of the )?back|back ${CENTRE}|back seam`), where: 'back' },
  { words: at(`${CENTRE} (?:of the )?front|front ${CENTRE}`), where: 'front' },
  { words: at('side\\b(?! rows?)(?! rounds?)'), where: 'side' },
];

/** The same for those outside this room: a row of the fabric in the first size. */
export function frontOf(
  manuscript: Manuscript,
  fabric: Fabric,
  round: { readonly record: RowRecord; readonly stitches: number },
): Faces | null {
  const [cloth] = fabric.cloths;
  return cloth ? facesOf(newScene(manuscript, fabric), cloth, round) : null;
}

/** Faces of a round of so many stitches; `null` where nothing tells. */
export function facesOf(
  scene: Scene,
  cloth: Cloth,
  { record, stitches }: { readonly record: RowRecord; readonly stitches: number },
): Faces | null {
  const said = STARTS.find(({ words }) => words.test(scene.manuscript.text));
  if (said?.where === 'side') {
    const middles = [stitches / 4, (3 * stitches) / 4] as const;
    return { middles, because: 'The rounds are said to start at the side.' };
  }
  if (said) {
    const because = `The rounds are said to start at the centre ${said.where}.`;
    const middles =
      said.where === 'back' ? ([stitches / 2, 0] as const) : ([0, stitches / 2] as const);
    return { middles, because };
  }
  return byHandles(scene, cloth, { record, stitches });
}

function byHandles(
  scene: Scene,
  cloth: Cloth,
  { record, stitches }: { readonly record: RowRecord; readonly stitches: number },
): Faces | null {
  const over = handleRow(scene, cloth, record);
  if (!over) return null;
  const [first, second] = over.map(([before, after]) => {
    const under = (node: number): number | null =>
      placeBelow({ fabric: scene.fabric, cloth }, node, record);
    const [left, right] = [under(before), under(after)];
    if (left === null || right === null) return null;
    // The opening lies between the two stitches, and may reach across the round's start.
    return (left + 1 + (right > left ? right : right + stitches)) / 2;
  });
  if (first === null || second === null || first === undefined || second === undefined) return null;
  const because = 'The handles tell where the faces are: each opening lies over the middle of one.';
  return { middles: [first, second], because };
}

/** Stitches before and after the two openings of the first round above that has such. */
function handleRow(
  scene: Scene,
  cloth: Cloth,
  below: RowRecord,
): readonly (readonly [number, number])[] | null {
  for (const row of instructionsOf(scene)) {
    const lengths = openingsOf(row.placed.instruction).map(({ length }) => length);
    if (lengths.length !== 2) continue;
    const worked = cloth.rows.find(
      (one) =>
        one.partIndex === row.partIndex &&
        one.instruction === row.index &&
        one.instance === 1 &&
        one.nodes.from >= below.nodes.to,
    );
    const runs = worked?.ring ? chainRuns(scene, cloth, worked, Math.min(...lengths)) : [];
    if (runs.length === 2) return runs;
  }
  return null;
}

/** Nodes just before and after each run of so many chains or more. */
function chainRuns(
  { fabric }: Scene,
  { nodes }: Cloth,
  row: RowRecord,
  least: number,
): (readonly [number, number])[] {
  const runs: (readonly [number, number])[] = [];
  const isChain = (id: number): boolean =>
    fabric.kinds.kinds[nodes.kind[id] ?? 0]?.class === 'chain';
  for (let from = row.nodes.from; from < row.nodes.to; ) {
    let to = from;
    while (to < row.nodes.to && isChain(to)) to++;
    const inside = from > row.nodes.from && to < row.nodes.to;
    if (inside && to - from >= least) runs.push([from - 1, to]);
    from = Math.max(to, from + 1);
  }
  return runs;
}
