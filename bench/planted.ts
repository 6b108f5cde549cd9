/**
 * Numbers changed by one and by four, and other small slips, planted one at a time in every proven row of the
 * examples and of the fixtures that raise nothing: the share that is found, what is missed, and what
 * was taken to bind nothing and why. Not timed. `npm run bench -- planted`
 */
import { readdirSync, readFileSync } from 'node:fs';
import { type Compiled, compile } from '../dist/src/index.js';
import { isFound, planted } from '../tests/planted/found.ts';
import { type Plant, type PlantKind, plantsIn } from '../tests/planted/plants.ts';

const FOLDERS = ['examples', 'tests/fixtures/normal-practice', 'tests/fixtures/bare'];
const root = new URL('../', import.meta.url);
/** Words of a row that are shown on each side of the change. */
const SHOWN = 60;

interface Score {
  planted: number;
  found: number;
}

const shares = new Map<PlantKind, Score>();
const freed = new Map<string, Score>();

function tell(file: string, former: Compiled, plant: Plant): void {
  const { text } = former;
  const piece = compile(planted(text, plant), { fixes: false, former });
  const isSeen = isFound(piece, plant);
  add(plant.free === null ? shares : freed, plant.free ?? plant.kind, isSeen);
  if (isSeen || plant.free !== null) return;
  const { from, to, words, role, placed } = plant;
  const before = text.slice(Math.max(placed.from, from - SHOWN), from).replace(/\s+/g, ' ');
  const after = text.slice(to, Math.min(placed.to, to + SHOWN)).replace(/\s+/g, ' ');
  console.log(`missed: ${file} [${role}] ${before}{${text.slice(from, to)} -> ${words}}${after}`);
}

function add<K>(scores: Map<K, Score>, key: K | string, isSeen: boolean): void {
  const score = scores.get(key as K) ?? { planted: 0, found: 0 };
  scores.set(key as K, score);
  score.planted++;
  if (isSeen) score.found++;
}

let pieces = 0;
for (const folder of FOLDERS) {
  for (const name of readdirSync(new URL(folder, root)).sort()) {
    if (!/\.(txt|pattern\.md)$/.test(name)) continue;
    const text = readFileSync(new URL(`${folder}/${name}`, root), 'utf8');
    const piece = compile(text, { fixes: false });
    if (piece.findings.some(({ severity }) => severity !== 'note')) continue;
    pieces++;
    for (const plant of plantsIn(piece)) tell(name, piece, plant);
  }
}

console.log(`${pieces} pieces that raise nothing`);
const share = ({ planted: all, found }: Score): string =>
  `${found} of ${all} found, ${((100 * found) / all).toFixed(1)} %`;
for (const [why, score] of freed) console.log(`binds nothing, ${why}: ${share(score)}`);
for (const [kind, score] of shares) console.log(`${kind}: ${share(score)}`);
