/** `loopwright space 186 178`: a row that shapes evenly, written and proven. */
import { Command, Option } from 'commander';
import { type SpacedRow, spaceEvenly } from '../src/index.ts';
import { write } from './output.ts';

const examples = `
Examples:
  loopwright space 186 178                 from 186 stitches to 178, evenly
  loopwright space 72,80,88 64,72,80       one row for three sizes
  loopwright space 72,90 64,80             sizes that change by different numbers: a row each
  loopwright space 80 72 --times 3         three such rounds, set between each other
  loopwright space 41 45 --rows --stitch dc

Exit status:
  0  the row is written, and proven
  2  it cannot be done: more than doubled or halved, numbers that are none`;

export interface Asked {
  readonly stitch?: string;
  readonly rows?: true;
  readonly times: string;
  readonly terms: 'us' | 'uk';
}

export function spaceCommand(): Command {
  return new Command('space')
    .description('Write a round or row that goes from one number of stitches to another, evenly.')
    .argument('<from>', 'stitches there are; 72,80,88 for three sizes')
    .argument('<to>', 'stitches wanted')
    .option('--stitch <word>', 'the stitch, such as dc; default sc (dc in UK terms)')
    .option('--rows', 'worked in rows, not in rounds')
    .option('--times <n>', 'rounds that shape alike, each set between the last', '1')
    .addOption(
      new Option('--terms <terms>', 'terms to write in').choices(['us', 'uk']).default('us'),
    )
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright space --help tells what can be asked)')
    .exitOverride()
    .action(async (from: string, to: string, asked: Asked) => {
      process.exitCode = await runSpace(from, to, asked);
    });
}

const numbersIn = (words: string): number[] =>
  words.split(/[,;]/).map((n) => Number(n.trim() || 'x'));

/** Exit status: 0 the rows are written, 2 there are none and it is said why. */
export async function runSpace(from: string, to: string, asked: Asked): Promise<0 | 2> {
  const times = Number(asked.times);
  if (!Number.isInteger(times) || times < 1 || times > 100) {
    return complain(`--times: "${asked.times}" is no number from 1 to 100`);
  }
  const rest = {
    terms: asked.terms === 'uk' ? 'UK' : 'US',
    worked: asked.rows ? 'rows' : 'rounds',
    times,
    ...(asked.stitch !== undefined && { stitch: asked.stitch }),
  } as const;
  const blocks: string[] = [];
  for (const { title, ...counts } of oneRowEach(numbersIn(from), numbersIn(to))) {
    const spacing = spaceEvenly({ ...counts, ...rest });
    if ('why' in spacing) return complain(`${title}${spacing.why}`);
    blocks.push(...spacing.rows.map((row) => title + rowSaid(row)));
  }
  await write(blocks.join('\n'));
  return 0;
}

function complain(why: string): 2 {
  process.stderr.write(`loopwright: ${why}\n`);
  return 2;
}

interface Counts {
  /** "Size 1: " where sizes need rows of their own. */
  readonly title: string;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/** One row serves all sizes that change by the same number; else each has its own. */
function oneRowEach(from: readonly number[], to: readonly number[]): readonly Counts[] {
  const changes = new Set(from.map((n, at) => to[at]! - n));
  if (from.length !== to.length || changes.size < 2) return [{ title: '', from, to }];
  return from.map((n, at) => ({ title: `Size ${at + 1}: `, from: [n], to: [to[at]!] }));
}

function rowSaid({ words, from, to, isAtJoin }: SpacedRow): string {
  const list = (counts: readonly number[]): string =>
    counts.length === 1 ? `${counts[0]}` : `${counts[0]} (${counts.slice(1).join(', ')})`;
  const row = `${words.charAt(0).toUpperCase()}${words.slice(1)}. (${list(to)} sts)`;
  const proof = `  proven: uses ${list(from)} sts, makes ${list(to)}`;
  const warning = isAtJoin
    ? '\n  shaping stands at the join: there are no plain stitches to spare'
    : '';
  return `${row}\n${proof}${warning}\n`;
}
