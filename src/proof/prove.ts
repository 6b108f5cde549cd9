/** Plan and fabric in, findings out: every rule in turn, none of which changes anything. */
import { type Fabric, type Fact, MISFITS, type RowRecord } from '../fabric/index.ts';
import type { Finding } from '../finding/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { findingFor } from './facts/index.ts';
import { propose, proposedFor } from './fixes/proposals.ts';
import { habitsOnce } from './habits.ts';
import { drawn, listed, rowName } from './names.ts';
import { newScene, type Scene } from './scene.ts';
import { sightingsOf } from './sightings.ts';
import { textFindings } from './text/index.ts';
import { unreadOnce } from './unread-once.ts';

export function prove(manuscript: Manuscript, fabric: Fabric): Finding[] {
  const scene = newScene(manuscript, fabric);
  const findings = textFindings(scene);
  const behindGap = rowsOf(findings, 'row-missing');
  const explained = explainedBy(scene, findings);
  for (const found of sightingsOf(scene, behindGap)) {
    if (found.rows.every((row) => explained(row, found.first.fact))) continue;
    const finding = findingFor(scene, found);
    if (!finding) continue;
    const isListed = found.first.fact.kind === 'not-followed';
    findings.push(isListed ? finding : withRowsAgain(scene, finding, found.again));
  }
  return unreadOnce(habitsOnce(findings));
}

/** What the words alone have told already, the sums of the same row need not tell again. */
function explainedBy(
  scene: Scene,
  findings: readonly Finding[],
): (row: string, fact: Fact) => boolean {
  const unfollowed = rowsOf(findings, 'nesting-too-deep');
  const unequal = rowsOf(findings, 'handles-unequal');
  const unpaired = new Set(
    ['star-missing', 'star-unpaired', 'unbalanced-bracket'].flatMap((code) => [
      ...rowsOf(findings, code),
    ]),
  );
  const ofOtherTerms = new Set([
    ...rowsOf(findings, 'foreign-term'),
    ...rowsOf(findings, 'terms-mixed'),
  ]);
  const ofNoSize = rowsOf(findings, 'size-unknown');
  const onNothing = rowsOf(findings, 'row-one-missing');
  const empty = rowsOf(findings, 'row-empty');
  const differences = handleDifferences(scene, unequal);
  const behindSkipped = rowsBehind(scene, rowsOf(findings, 'reading-differs'));
  return (row, fact) =>
    // Along handles of unequal length what is worked differs by as much.
    (fact.kind === 'overrun' && differences.has(fact.needed - fact.have)) ||
    (fact.kind === 'left' && differences.has(fact.left)) ||
    // It works into the top of skipped chains that the row before could not count.
    (behindSkipped.has(row) && isOffByOne(fact)) ||
    (ofOtherTerms.has(row) && fact.kind === 'stems') ||
    (ofNoSize.has(row) && MISFITS.has(fact.kind)) ||
    (onNothing.has(row) && MISFITS.has(fact.kind)) ||
    // Where a repeat begins or ends is not known.
    (unpaired.has(row) && MISFITS.has(fact.kind)) ||
    unfollowed.has(row) ||
    empty.has(row) ||
    (unequal.has(row) && fact.kind === 'count' && fact.unit === 'space');
}

/** By how many chains the long spaces of these rows differ. */
function handleDifferences({ fabric }: Scene, ids: ReadonlySet<string>): ReadonlySet<number> {
  const differences = new Set<number>();
  for (const { rows } of fabric.cloths) {
    for (const { id, tally } of rows) {
      const [long, longest] = tally.spaces.slice(-2);
      if (ids.has(id) && long && longest) differences.add(longest.chains - long.chains);
    }
  }
  return differences;
}

/** The row is a stitch off. */
const isOffByOne = (fact: Fact): boolean =>
  (fact.kind === 'overrun' && fact.needed - fact.have === 1) ||
  (fact.kind === 'left' && fact.left === 1) ||
  (fact.kind === 'count' && Math.abs(fact.value - fact.computed) === 1);

/** Ids of the rows worked behind these, up to the first that is proven or does not come out. */
function rowsBehind({ fabric }: Scene, ids: ReadonlySet<string>): ReadonlySet<string> {
  const behind = new Set<string>();
  for (const { rows } of fabric.cloths) {
    let isBehind = false;
    for (const row of rows) {
      if (isBehind) behind.add(row.id);
      const isOpen = row.verdict === 'unstated' || row.verdict === 'unchecked';
      isBehind = ids.has(row.id) || (isBehind && isOpen);
    }
  }
  return behind;
}

/** "Rows 5 and 7 work the same words": they are not told by themselves. */
function withRowsAgain(scene: Scene, finding: Finding, again: readonly RowRecord[]): Finding {
  const names = drawn([...new Set(again.map((row) => rowName(scene, row)))]);
  if (names.length === 0) return finding;
  const isOne = names.length === 1 && !/ and | to /.test(names[0] ?? '');
  const said = names.length > MOST_NAMES ? [...names.slice(0, MOST_NAMES), 'others'] : names;
  const more = `${listed(said)} ${isOne ? 'works' : 'work'} the same words.`;
  const sum = `${finding.sum} ${more.charAt(0).toUpperCase()}${more.slice(1)}`.trim();
  return propose({ ...finding, sum }, proposedFor(finding));
}

/** Rows named one by one that work the same words. */
const MOST_NAMES = 4;

const rowsOf = (findings: readonly Finding[], code: string): ReadonlySet<string> =>
  new Set(findings.flatMap((one) => (one.code === code ? one.rows : [])));
