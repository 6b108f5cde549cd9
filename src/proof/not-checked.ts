/**
 * What nobody should take for proven: a sentence each. What the hands left untried they tell
 * themselves (`Fabric.notChecked`); this is the rest.
 */
import type { Fabric, Fact, RowRecord } from '../fabric/index.ts';
import { counted, noun } from '../finding/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { lengthsByGauge } from './lengths.ts';
import { drawn, listed, rowName } from './names.ts';
import { chartsLeft } from './not-checked-charts.ts';
import { passedOver } from './passed-over.ts';
import { newScene, type Scene } from './scene.ts';
import { instructionsOf, nameOf, stepsIn } from './text/rows.ts';

export function notChecked(manuscript: Manuscript, fabric: Fabric): string[] {
  const scene = newScene(manuscript, fabric);
  if (manuscript.parts.length === 0) return [];
  return [
    ...rowsLeft(scene),
    ...passedOver(manuscript),
    ...lengths(scene),
    ...lengthsByGauge(scene),
    ...places(scene),
    ...chartsLeft(scene),
    ...numbersSilent(scene),
    'Finished size is checked only where the pattern states it beside its gauge; how much yarn it takes is not checked.',
    'Photographs, sewing up, stuffing and finishing are not checked.',
  ];
}

/** Names of rows, part by part, each once whatever the size or copy. */
function namesOf(scene: Scene, wanted: (row: RowRecord) => boolean): string {
  const byPart = new Map<number, Set<string>>();
  for (const { rows } of scene.fabric.cloths) {
    for (const row of rows) {
      if (!wanted(row)) continue;
      const names = byPart.get(row.partIndex) ?? new Set();
      byPart.set(row.partIndex, names.add(rowName(scene, row)));
    }
  }
  const several = scene.manuscript.parts.length > 1;
  const said = [...byPart].map(([index, names]) => {
    const part = scene.manuscript.parts[index]?.name ?? '';
    const rows = listed(drawn([...names]));
    return several && part !== '' ? `${part}, ${rows}` : rows;
  });
  return said.join('; ');
}

function rowsLeft(scene: Scene): string[] {
  const unread = namesOf(scene, ({ verdict }) => verdict === 'unread');
  const isLost = ({ facts }: RowRecord): boolean =>
    facts.some(({ kind }) => kind === 'not-followed');
  const lost = namesOf(scene, isLost);
  const open = namesOf(scene, (row) => row.verdict === 'unchecked' && !isLost(row));
  return [
    ...(unread ? [`Not understood, and so not checked: ${unread}.`] : []),
    ...(lost
      ? [`Read, but not followed to what the pattern says, and so not checked: ${lost}.`]
      : []),
    ...(open
      ? [`Worked, but not checked, since what lies beneath or the number is not known: ${open}.`]
      : []),
  ];
}

/** Rows to a length, and chains without a number. */
function lengths(scene: Scene): string[] {
  const has = (isOne: (fact: Fact) => boolean) => (row: RowRecord) => row.facts.some(isOne);
  // Where a number of rows stands beside the length, they are worked as often as it says.
  const once = has((fact) => fact.kind === 'open-length' && fact.why !== 'said');
  const length = namesOf(scene, once);
  const chain = namesOf(
    scene,
    has(({ kind }) => kind === 'open-count'),
  );
  return [
    ...(length
      ? [`How many rows are worked to a length: ${length}. They are worked once here.`]
      : []),
    ...(chain ? [`Whether the foundation chain fits: it is given no number (${chain}).`] : []),
  ];
}

/** Steps whose places the maker finds: row ends, "evenly", work through two layers. */
function places(scene: Scene): string[] {
  const ends: string[] = [];
  const even: string[] = [];
  const named: string[] = [];
  for (const { placed } of instructionsOf(scene)) {
    const steps = [...stepsIn(placed.instruction.steps)];
    const name = nameOf(scene, placed);
    const isEnds = steps.some(
      (step) =>
        (step.kind === 'other-side' && step.rowEnds) ||
        (step.kind === 'work' && step.place?.nouns[0]?.kind === 'row-end'),
    );
    if (isEnds && isOpen(scene, placed.from)) ends.push(name);
    if (steps.some((step) => step.kind === 'work' && step.evenly)) even.push(name);
    const told = steps.some((step) => step.kind === 'not-worked');
    if (told && isLeft(scene, placed.from)) named.push(name);
  }
  return [
    ...(ends.length > 0 ? [`How many stitches the row ends take: ${few(ends)}.`] : []),
    ...(even.length > 0 ? [`Where evenly spread stitches go: ${few(even)}.`] : []),
    ...(named.length > 0 ? [`Understood, but not worked stitch by stitch: ${few(named)}.`] : []),
  ];
}

/** Whether a row of the instruction at `from` was not worked stitch by stitch: what closes a round is. */
const isLeft = (scene: Scene, from: number): boolean =>
  scene.fabric.cloths.some(({ rows }) =>
    rows.some((row) => row.from === from && row.facts.some(({ kind }) => kind === 'not-worked')),
  );

/** Whether a row of the instruction at `from` was not checked. */
const isOpen = (scene: Scene, from: number): boolean =>
  scene.fabric.cloths.some(({ rows }) =>
    rows.some(
      (row) => row.from === from && (row.verdict === 'unchecked' || row.verdict === 'unread'),
    ),
  );

/** The first of many. */
function few(names: readonly string[]): string {
  const once = [...new Set(names)];
  const more = once.length - 6;
  return more > 0 ? `${once.slice(0, 6).join(', ')} and ${more} more` : listed(once);
}

/** Rows whose count was not compared: the walk came out, and nothing more is known. */
function numbersSilent(scene: Scene): string[] {
  const rows = scene.fabric.cloths[0]?.rows ?? [];
  const silent = rows.filter((row) => row.verdict === 'unstated' && row.stated.length === 0).length;
  const verb = silent === 1 ? 'states' : 'state';
  // "4 groups of 3 dc", "2 sides with 9 dc": what such a thing is, the hands do not know.
  return [
    ...(silent === 0
      ? []
      : [
          `${counted(silent, noun('rows'))} ${verb} no count: the work comes out, the number is not vouched for.`,
        ]),
    ...uncompared(scene),
  ];
}

/** "(8 sc, 3 flowers)": what a flower is, the hands do not know. A sentence for each thing counted. */
function uncompared(scene: Scene): string[] {
  const things = new Set<string>();
  for (const { rows } of scene.fabric.cloths) {
    for (const { verdict, stated } of rows) {
      if (verdict === 'unread' || verdict === 'omitted') continue;
      for (const { compared, word } of stated) if (!compared) things.add(word);
    }
  }
  return [...things].map((thing) => {
    const rows = namesOf(
      scene,
      ({ verdict, stated }) =>
        verdict !== 'unread' &&
        verdict !== 'omitted' &&
        stated.some(({ compared, word }) => !compared && word === thing),
    );
    const what = thing === '' ? 'Counts' : `The count of ${pluralOf(thing)}`;
    return `${what} in ${rows}: what is counted is not known here, so the number was not compared.`;
  });
}

const pluralOf = (word: string): string => (word.endsWith('s') ? word : `${word}s`);
