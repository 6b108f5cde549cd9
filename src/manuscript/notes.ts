/** Standing orders of prose, with absolute spans. */
import { readOrders, type StandingOrder } from '../notation/index.ts';
import type { ProseBlock } from './block.ts';
import type { Section } from './sections.ts';

/** Lists of materials and of abbreviations ("BLO = back loops only") order nothing. */
const WITHOUT: ReadonlySet<Section> = new Set(['comments', 'materials', 'abbreviations']);

export function ordersOf(text: string, block: ProseBlock): readonly StandingOrder[] {
  if (WITHOUT.has(block.section)) return [];
  return readOrders(text, block.from, block.to).map((order) => shiftDeep(order, block.from));
}

/** The same value with all spans in it, at any depth, counted from another origin. */
function shiftDeep<T>(value: T, by: number): T {
  if (by === 0 || typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((item: unknown) => shiftDeep(item, by)) as T;
  const moved: Record<string, unknown> = {};
  for (const [key, item] of Object.entries(value)) {
    const isOffset = (key === 'from' || key === 'to') && typeof item === 'number';
    moved[key] = isOffset ? item + by : shiftDeep<unknown>(item, by);
  }
  return moved as T;
}
