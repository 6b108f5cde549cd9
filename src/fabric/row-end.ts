import { fact, type Hands, numberFor, placeOfStep, remaining } from './hands.ts';
import { allSteps, type RowShape } from './shape.ts';
import { noGroupAhead } from './take.ts';

/** Did the walk end where the row ends? */
export function noteEnd(
  hands: Hands,
  shape: RowShape,
  { agrees, turns }: { agrees: boolean; turns: boolean },
): void {
  const { edge } = hands;
  if (edge.open || edge.kind === 'into' || edge.kind === 'none' || shape.idle) return;
  if (hands.loose || hands.spread) return;
  if (hands.missing > 0) {
    const have = edge.counted;
    const at = hands.lackAt ?? placeOfStep(hands);
    return fact(hands, { kind: 'overrun', needed: have + hands.missing, have, ...at });
  }
  if (hands.aside) return;
  const left = remaining(hands);
  // Only places of earlier rows were worked: those of the row beneath stay behind them.
  if (hands.earlier.size > 0 && (hands.used <= 1 || left <= hands.passed)) return;
  if (hands.leaveSaid !== null && hands.leaveSaid !== left && !hands.tookSpace) {
    // "Leave last 5 sts", where the row has come within four of the end.
    const over = hands.leaveSaid - left;
    if (over > 0) {
      const have = edge.counted;
      return fact(hands, { kind: 'overrun', needed: have + over, have, ...placeOfStep(hands) });
    }
    return fact(hands, {
      kind: 'left',
      left: left - hands.leaveSaid,
      have: edge.counted - hands.leaveSaid,
      used: hands.used,
      ...placeOfStep(hands),
    });
  }
  // Where pieces meet, the stitch beside the join is often left to it.
  if (hands.pieces && left === 1 && agrees) return;
  if (left <= hands.passed && (hands.sought || noGroupAhead(hands))) return;
  if (left === 0 || hands.leave || shape.onlySlips || (hands.optionalLast && left === 1)) return;
  if (hands.tookSpace && (left <= Math.max(hands.passed, 1) || !hands.tookStitch)) return;
  const isSkipped = edge.ring && hands.skips.has(left);
  if (isSkipped && (agrees || endsWithSpace(hands) || passBeginsWith(hands, shape, left))) return;
  if (meantToLeave(hands, { left, agrees, turns })) return;
  if (turns && hands.statedStitches < 0 && left <= slippedFirst(hands, shape) + 1) return;
  // What a first side left is worked to its end by the second.
  const onRest = edge === hands.skippedEdge;
  if (agrees && hands.statedStitches > 0 && joinsElsewhere(shape) && !onRest) return;
  if (edge.ring && left === 1 && loopsFromJoin(shape)) return;
  // "*Ch 7, sk 1, sc in next; rep from * 14 times, ch 3, tr in same place as beginning": over a last one.
  const reachesStart = left === 1 || hands.skips.has(left - 1);
  if (edge.ring && reachesStart && endsWhereItBegan(shape)) return;
  if (edge.kind === 'foundation' && shape.join && hands.used === 1 && inOneChain(shape)) return;
  // "Ch 2. Row 1: in 1st ch: hdc, sc, hdc": the one at the hook turns.
  if (edge.kind === 'foundation' && hands.used === 1 && edge.n <= TINY && inFirstChain(shape))
    return;
  noteLeft(hands, left);
}

/**
 * "(Sk 2 sts, shell in next) 4 times, sc in last st (16)": where the count is met, the skip before the
 * last stitch goes without saying.
 */
export function passSkipToLast(hands: Hands, { steps }: RowShape): void {
  const last = steps.findLast(({ kind }) => kind === 'work' || kind === 'group');
  const inLast = last && 'place' in last && last.place?.pick === 'last' && !last.place.n;
  if (!inLast) return;
  const skips = [...allSteps(steps)].flatMap((step) =>
    step.kind === 'skip' ? [numberFor(hands, step.place.n) ?? 1] : [],
  );
  hands.facts = hands.facts.filter((fact) => fact.kind !== 'left' || !skips.includes(fact.left));
}

/** "Attach yarn there, hdc in next 11 sts (12)": a part of the round, from where yarn is joined. */
const joinsElsewhere = ({ steps, join, goesRound }: RowShape): boolean =>
  !join && !goesRound && steps.some((step) => step.kind === 'join' && step.yarn === 'yarn');

/** "*Ch 10, sc in next sc; rep from * 6 times, ch 4, dtr in same place as beginning": on the joined one. */
function endsWhereItBegan({ steps }: RowShape): boolean {
  const last = steps.findLast(({ kind }) => kind === 'work' || kind === 'join');
  const place = last && 'place' in last ? last.place : null;
  if (place?.pick === 'same') return place.of?.nouns[0]?.kind === 'start-chain';
  // "*Ch 5, sc in next sc; rep from * 10 times, ch 2, dc in first sc": of the row beneath, where none of its own stands.
  const first = steps.find(({ kind }) => kind === 'chain' || kind === 'work' || kind === 'repeat');
  const loops = first?.kind === 'repeat' && first.steps[0]?.kind === 'chain';
  const closes = last?.kind === 'work' && steps[steps.indexOf(last) - 1]?.kind === 'chain';
  return loops && closes && place?.pick === 'first' && place.nouns[0]?.kind === 'stem';
}

/** "*Ch 4, sk 3, sc in next st* 5 times, ch 4, sk 3, sl st in first ch": the first stitch holds both ends. */
function loopsFromJoin({ steps, join }: RowShape): boolean {
  const first = steps.find(({ kind }) => kind === 'chain' || kind === 'repeat' || kind === 'work');
  const opens = first?.kind === 'repeat' ? first.steps[0] : first;
  const chain = opens?.kind === 'chain' && (opens.n?.values[0] ?? 1) > 1;
  return chain && join?.place?.pick === 'first' && join.place.nouns[0]?.kind === 'chain';
}

/** "In initial chain work (dc, ch 1) 6 times, join": the chain's one loop is the ring. */
const inOneChain = ({ steps }: RowShape): boolean =>
  [...allSteps(steps)].some(
    ({ kind, ...step }) =>
      (kind === 'group' || kind === 'repeat' || kind === 'work') &&
      'place' in step &&
      (step.place?.nouns[0]?.kind === 'chain' || step.place?.nouns[0]?.kind === 'start-chain'),
  );

/** A chain so short is begun in, and not worked along: its other links turn. */
const TINY = 3;

const inFirstChain = ({ steps }: RowShape): boolean =>
  steps.some(
    (step) =>
      (step.kind === 'work' || step.kind === 'group') &&
      step.place?.pick === 'first' &&
      step.place.nouns[0]?.kind === 'chain',
  );

/** "*Sk 1 dc, V-st in next dc; rep from * 6 times, join": what each pass skips first is left before the join too. */
function passBeginsWith(hands: Hands, { steps, join }: RowShape, left: number): boolean {
  const repeat = steps.findLast(({ kind }) => kind === 'repeat' || kind === 'work');
  if (!join || repeat?.kind !== 'repeat') return false;
  const [first, ...more] = repeat.steps.filter(({ kind }) => kind !== 'remark');
  if (first?.kind !== 'skip' || more.at(-1)?.kind === 'skip') return false;
  return (numberFor(hands, first.place.n) ?? 1) === left;
}

export function noteLeft(hands: Hands, left: number): void {
  const have = hands.edge.counted;
  fact(hands, { kind: 'left', left, have, used: hands.used, ...placeOfStep(hands) });
}

/**
 * The last thing made is a chain over what is left before the join. Where a skip was said behind that
 * chain, it has told what the chain spans.
 */
function endsWithSpace({ bench, nodes, skipped, rowFrom }: Hands): boolean {
  const classOf = (id: number) => bench.kinds.kinds[nodes.kind[id] ?? 0]?.class;
  let end = nodes.n;
  while (end > rowFrom && classOf(end - 1) === 'slip') end--;
  let id = end;
  while (id > rowFrom && (classOf(id - 1) === 'chain' || classOf(id - 1) === 'closer')) id--;
  return id < end && skipped.nodes <= id;
}

/**
 * Short rows: a row that says "turn", or the row behind it that does so first, after a stated or plain number of stitches leaves the rest
 * on purpose. One or two stitches left are more likely a slip.
 */
const meantToLeave = (
  hands: Hands,
  end: { left: number; agrees: boolean; turns: boolean },
): boolean =>
  end.turns &&
  end.left > 2 &&
  (end.agrees ||
    ((hands.edge.ring || hands.edge === hands.skippedEdge) && hands.statedStitches < 0)) &&
  hands.edge.kind === 'row';

/**
 * "Sl st in next sc, ch 1, sc in same st, sc in next 7 sc, turn": a row that slips in on one side leaves as
 * much on the other, with one more for the stitch under the hook.
 */
function slippedFirst({ sizeIndex, edge }: Hands, { steps }: RowShape): number {
  if (edge.ring || edge.kind !== 'row') return -1;
  const first = steps.find(({ kind }) => kind !== 'remark' && kind !== 'turn');
  if (first?.kind !== 'work' || first.stitch.stem !== 'ss') return -1;
  const { n, place } = first;
  return n?.values[sizeIndex] ?? place?.n?.values[sizeIndex] ?? 1;
}
