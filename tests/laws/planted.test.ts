/**
 * Numbers changed by one, and by four, in the examples and in the fixtures that raise nothing: of those that bind at
 * least 98 % are found, at their row or at the next with that row labelled. An even sample; `npm run
 * bench -- planted` tries them all, and tells what binds nothing and why.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { compile } from '../../src/index.ts';
import { isFound, planted } from '../planted/found.ts';
import { plantsIn } from '../planted/plants.ts';

const CASES = 400;
const FOLDERS = ['examples', 'tests/fixtures/normal-practice', 'tests/fixtures/bare'];
const root = new URL('../../', import.meta.url);

const pieces = FOLDERS.flatMap((folder) =>
  readdirSync(new URL(folder, root))
    .filter((name) => /\.(txt|pattern\.md)$/.test(name))
    .map((name) => readFileSync(new URL(`${folder}/${name}`, root), 'utf8')),
)
  .map((text) => compile(text, { fixes: false }))
  .filter(({ findings }) => findings.every(({ severity }) => severity === 'note'));

it(`of ${CASES} planted numbers at least 98 % are found`, () => {
  const all = pieces.flatMap((piece) =>
    plantsIn(piece)
      .filter(({ free, kind }) => free === null && (kind === 'number' || kind === 'count'))
      .map((plant) => ({ piece, plant })),
  );
  expect(all.length).toBeGreaterThan(4000);
  // Spread evenly: a drawn sample had some of them five times.
  const chosen = Array.from(
    { length: CASES },
    (_, i) => all[Math.floor((i * all.length) / CASES)]!,
  );
  const missed = chosen.filter(({ piece, plant }) => {
    const changed = compile(planted(piece.text, plant), { fixes: false, former: piece });
    return !isFound(changed, plant);
  });
  const rate = 1 - missed.length / CASES;
  console.info(`planted numbers found: ${(100 * rate).toFixed(1)} % of ${CASES}`);
  const shown = missed.map(({ piece, plant: { placed, from, to, words } }) => {
    const row = piece.text.slice(placed.from, placed.to);
    return `${piece.text.slice(from, to)} -> ${words}: ${row}`;
  });
  expect(rate, shown.join('\n')).toBeGreaterThanOrEqual(0.98);
}, 900_000);
