/** `loopwright space 186 178`: a row that shapes evenly, written and proven. */
import { Command, Option } from 'commander';
import { type SpacedRow, spaceEvenly } from '../src/index.ts';
import { write } from './output.ts';

const examples = `
Examples:
  loopwright space 186 178                 from 186 stitches to 178, evenly
  loopwright space 72,80,88 64,72,80       one row for three sizes
  loopwright space 72,90 64,80             sizes that change by different numbers: one row where it serves
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
  const [have, want] = [numbersIn(from), numbersIn(to)];
  const together = spaceEvenly({ from: have, to: want, ...rest });
  // Sizes that no one row serves have a row each.
  const each = 'why' in together ? oneRowEach(have, want) : [];
  const blocks = 'why' in together ? [] : together.rows.map(rowSaid);
  if ('why' in together && each.length === 0) return complain(together.why);
  for (const { title, ...counts } of each) {
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
  /** "Size 1: ". */
  readonly title: string;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/** Each size by itself; empty where there is one size, or not as many of both. */
const oneRowEach = (from: readonly number[], to: readonly number[]): readonly Counts[] =>
  from.length !== to.length || from.length < 2
    ? []
    : from.map((n, at) => ({ title: `Size ${at + 1}: `, from: [n], to: [to[at]!] }));

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
