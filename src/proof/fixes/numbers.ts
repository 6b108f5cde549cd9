/** Changes to numbers as they are written. */
import type { Fix } from '../../finding/index.ts';
import type { PlacedInstruction } from '../../manuscript/index.ts';
import type { Numbers } from '../../notation/index.ts';
import type { Edit, Span } from '../../source/index.ts';
import type { Scene } from '../scene.ts';
import { replacement } from './proposals.ts';

/** Where the number of one size stands, if it is written in figures. */
export function figureSpan(
  { manuscript }: Scene,
  numbers: Numbers,
  { base, size }: { base: number; size: number },
): Span | null {
  const from = base + numbers.from;
  const words = manuscript.text.slice(from, base + numbers.to);
  const single = numbers.values.length === 1;
  const value = single ? numbers.values[0] : numbers.values[size];
  const figures = [...words.matchAll(/\d+|[-–—](?!\s*\d)/g)];
  const hit = single ? figures.find(([said]) => Number(said) === value) : figures[size];
  if (!hit || Number(hit[0]) !== value) return null;
  return { from: from + hit.index, to: from + hit.index + hit[0].length };
}

/** Another number in place of that of one size. */
export function numberFix(
  scene: Scene,
  numbers: Numbers,
  at: { placed: PlacedInstruction; size: number; to: number },
): Fix | null {
  const span = figureSpan(scene, numbers, { base: at.placed.from, size: at.size });
  if (!span || !Number.isInteger(at.to) || at.to < 1) return null;
  const fix = replacement(scene.manuscript.text, span, String(at.to));
  const beside = besides(scene, span);
  const was = scene.manuscript.text.slice(span.from, span.to);
  return { ...fix, title: `change "${was}${beside}" to "${at.to}${beside}"` };
}

/** A number alone says little: some words beside it help to find it. */
function besides({ manuscript }: Scene, { to }: Span): string {
  const after = /^ ?(?:more )?[a-z][\w-]{0,8}\b/i.exec(manuscript.text.slice(to, to + 16));
  return (after?.[0] ?? '').replace(/\s+/g, ' ');
}

export const together = (title: string, edits: readonly Edit[]): Fix => ({ title, edits });
