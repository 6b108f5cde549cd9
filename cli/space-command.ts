/** `loopwright space 186 178`: a row that shapes evenly, written and proven. */
import { Command, Option } from 'commander';
import { type SpacedRow, spaceEvenly } from '../src/index.ts';
import { write } from './output.ts';

const examples = `
Examples:
  loopwright space 186 178                 from 186 stitches to 178, evenly
  loopwright space 72,80,88 64,72,80       one row for three sizes
  loopwright space 80 72 --times 3         three such rounds, set between each other
  loopwright space 41 45 --rows --stitch dc

Exit status:
  0  the row is written, and proven
  2  it cannot be done: more than doubled or halved, numbers that are none`;

interface Asked {
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

async function runSpace(from: string, to: string, asked: Asked): Promise<0 | 2> {
  const numbers = (words: string): number[] =>
    words.split(/[,;]/).map((n) => Number(n.trim() || 'x'));
  const times = Number(asked.times);
  if (!Number.isInteger(times) || times < 1 || times > 100) {
    process.stderr.write(`loopwright: --times: "${asked.times}" is no number from 1 to 100\n`);
    return 2;
  }
  const spacing = spaceEvenly({
    from: numbers(from),
    to: numbers(to),
    terms: asked.terms === 'uk' ? 'UK' : 'US',
    worked: asked.rows ? 'rows' : 'rounds',
    times,
    ...(asked.stitch !== undefined && { stitch: asked.stitch }),
  });
  if ('why' in spacing) {
    process.stderr.write(`loopwright: ${spacing.why}\n`);
    return 2;
  }
  await write(spacing.rows.map(rowSaid).join('\n'));
  return 0;
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
