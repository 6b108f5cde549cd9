/**
 * Rows of a chart that are worked several times one after the other: read from the order in which the
 * fabric's rows work them. Where that order is no plain repeat (up and down again, repeats within
 * repeats, another order in another size), nothing is bracketed and the sentences alone tell it.
 */
import type { ChartUse, Cloth } from '../../fabric/index.ts';

/** Chart rows from 0 at the bottom; `to` is the last one. */
export interface Again {
  readonly from: number;
  readonly to: number;
  /** Whole passes: one number a size of the pattern, or one if all sizes agree. */
  readonly times: readonly number[];
  /** Last row of a pass that ends before the others do; `null` where all are whole. */
  readonly endsAt: number | null;
}

/** `sizes`: the uses of one chart in each size, with the cloth that they are of. */
export function againIn(
  sizes: readonly { readonly cloth: Cloth; readonly uses: readonly ChartUse[] }[],
): readonly Again[] {
  const all = sizes.map(({ cloth, uses }) => loopsOfPiece(cloth, uses));
  const [first = []] = all;
  if (!all.every((loops) => loops.length === first.length)) return [];
  return first.flatMap((loop, i): Again[] => {
    const same = all.flatMap((loops) => (isLike(loops[i], loop) ? (loops[i] as Loop) : []));
    if (same.length < all.length) return [];
    const times = same.map((one) => one.times);
    return [{ ...loop, times: new Set(times).size === 1 ? times.slice(0, 1) : times }];
  });
}

interface Loop {
  readonly from: number;
  readonly to: number;
  readonly times: number;
  readonly endsAt: number | null;
}

const isLike = (a: Loop | undefined, b: Loop): boolean =>
  a !== undefined && a.from === b.from && a.to === b.to && a.endsAt === b.endsAt;

/** Worked on a front and on a back alike, the chart has one order; else none that a bracket could show. */
function loopsOfPiece(cloth: Cloth, uses: readonly ChartUse[]): readonly Loop[] {
  if (uses.some(({ part }) => part !== null)) return [];
  const [first, ...others] = chainsOf(cloth, uses).map(loopsIn);
  if (!first) return [];
  const agree = others.every(
    (loops) =>
      loops.length === first.length &&
      loops.every((loop, i) => {
        const own = first[i];
        return own !== undefined && isLike(loop, own) && loop.times === own.times;
      }),
  );
  return agree ? first : [];
}

/** Chart rows in the order of work, cut where rows of the piece come between that work no chart row. */
function chainsOf(cloth: Cloth, uses: readonly ChartUse[]): readonly (readonly number[])[] {
  const place = new Map(cloth.rows.map((record, i) => [record, i]));
  const chains: number[][] = [];
  let last = Number.NaN;
  let part = -1;
  for (const { record, row } of uses) {
    const at = place.get(record) ?? Number.NaN;
    if (at === last + 1 && record.partIndex === part) chains.at(-1)?.push(row);
    else chains.push([row]);
    [last, part] = [at, record.partIndex];
  }
  return chains;
}

/** Every step back, from row b to row a, begins another pass of the rows a to b. */
function loopsIn(chain: readonly number[]): readonly Loop[] {
  const passes = passesIn(chain);
  if (!passes) return [];
  const loops = new Map<string, Loop>();
  for (const [i, pass] of passes.entries()) {
    const before = passes[i - 1];
    if (!before) continue;
    const [from, to] = [pass.from, before.to];
    const isWhole = pass.to >= to;
    // A pass that ends early and is not the last: up and down again, or repeats within repeats.
    if (!isWhole && i < passes.length - 1) return [];
    const loop = loops.get(`${from} ${to}`) ?? { from, to, times: 1, endsAt: null };
    loops.set(`${from} ${to}`, {
      ...loop,
      times: loop.times + (isWhole ? 1 : 0),
      endsAt: isWhole ? loop.endsAt : pass.to,
    });
  }
  const found = [...loops.values()].sort((a, b) => a.from - b.from);
  const apart = found.every((loop, i) => i === 0 || loop.from > (found[i - 1]?.to ?? 0));
  return apart ? found.filter(({ times }) => times > 1) : [];
}

interface Pass {
  readonly from: number;
  readonly to: number;
}

/** Runs of rows that go up one by one; `null` where a row is left out. */
function passesIn(chain: readonly number[]): readonly Pass[] | null {
  const passes: Pass[] = [];
  for (const row of chain) {
    const last = passes.at(-1);
    if (last && row === last.to + 1) passes[passes.length - 1] = { ...last, to: row };
    else if (last && row > last.to) return null;
    else passes.push({ from: row, to: row });
  }
  return passes;
}
