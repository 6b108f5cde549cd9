/** What `loopwright chart` may be asked. */
import { Command, InvalidArgumentError, Option } from 'commander';
import { type ChartAsked, runChart } from './chart.ts';

const examples = `
Examples:
  loopwright chart bag.pattern.md -o charts/                   every chart, as SVG, PNG and words
  loopwright chart bag.pattern.md -o charts/ --hand left       for left-handed makers
  loopwright chart bag.pattern.md -o charts/ --only Tide --preview
                                                               one chart, and how it will look
  loopwright chart curtain.pattern.md -o charts/ --page a4     cut to pages, with overlap

Boxes have the proportion of the gauge. The left-handed edition is the same picture, never mirrored.

Exit status:
  0  all charts were drawn
  1  they were, and the pattern has an error; loopwright check tells more
  2  something could not be run: a file that cannot be read, a chart that does not exist`;

export function chartCommand(): Command {
  return new Command('chart')
    .description('Draw the filet charts of a pattern.')
    .argument('<file>', 'a pattern, or - for standard input')
    .requiredOption('-o, --output <folder>', 'where to write; made if it is not there')
    .option('--only <name>', 'only the chart of this name')
    .addOption(
      new Option('--hand <hand>', 'for right- or left-handed makers')
        .choices(['right', 'left'])
        .default('right'),
    )
    .option('--square', 'square boxes, whatever the fabric')
    .addOption(new Option('--page <paper>', 'cut to sheets of paper').choices(['a4', 'letter']))
    .option('--box <mm>', 'shorter side of a box on paper', between(1, 50))
    .option('--preview', 'draw also how it will look in its yarn')
    .option('--scale <pixels>', 'pixels to a millimetre in PNG', between(1, 50), 12)
    .addOption(
      new Option('--terms <terms>', 'read in these terms, whatever the pattern says')
        .choices(['us', 'uk', 'auto'])
        .default('auto', 'auto: as the pattern says, else by its words'),
    )
    .option('--no-color', 'no colour; NO_COLOR in the environment does the same')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright chart --help tells what can be asked)')
    .exitOverride()
    .action(async (file: string, asked: ChartAsked) => {
      process.exitCode = await runChart(file, asked);
    });
}

/** A number, as "4.5". */
const between =
  (least: number, most: number) =>
  (words: string): number => {
    const n = Number(words);
    if (/^\d+(\.\d+)?$/.test(words) && n >= least && n <= most) return n;
    throw new InvalidArgumentError(`It takes a number from ${least} to ${most}.`);
  };
