/** What may be asked of `loopwright measure`. */
import { Command, Option } from 'commander';
import { type MeasureAsked, runMeasure } from './measure.ts';

const examples = `
Examples:
  loopwright measure bag.pattern.md                       sizes, yarn and hours
  loopwright measure bag.pattern.md --units us            in inches, yards and ounces
  loopwright measure bag.pattern.md --gauge "14 sts x 16 rnds = 10 cm in sc"
                                                          at another maker's gauge
  loopwright measure bag.pattern.md --yarn "100 g / 200 m"
                                                          in balls of another yarn
  loopwright measure bag.pattern.md --format json         for a program; docs/measure-json.md

Exit status:
  0  the figures are told, and the pattern has no error
  1  they are told, and the pattern has an error; loopwright check tells more; or no row could be worked
  2  something could not be run: a file that cannot be read, an option that does not exist`;

export function measureCommand(): Command {
  return new Command('measure')
    .description('Say how large a pattern comes out, what yarn it takes and how long it lasts.')
    .argument('<file>', 'a pattern, or - for standard input')
    .option(
      '--gauge <words>',
      "a gauge in place of the pattern's; may be given for each fabric",
      collect,
    )
    .option(
      '--yarn <put-up>',
      'another put-up for all yarns: "100 g / 200 m", or for one: "A: 100 g / 200 m"',
      collect,
      [],
    )
    .addOption(
      new Option('--units <units>', 'units to print')
        .choices(['metric', 'us', 'both'])
        .default('both'),
    )
    .option('--schematic <file>', 'draw the parts to scale, with their lengths, as SVG')
    .addOption(
      new Option('--format <form>', 'how to report').choices(['text', 'json']).default('text'),
    )
    .addOption(
      new Option('--terms <terms>', 'read in these terms, whatever the pattern says')
        .choices(['us', 'uk', 'auto'])
        .default('auto', 'auto: as the pattern says, else by its words'),
    )
    .option('--no-color', 'no colour; NO_COLOR in the environment does the same')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright measure --help tells what can be asked)')
    .exitOverride()
    .action(async (file: string, asked: Asked) => {
      process.exitCode = await runMeasure(file, {
        ...asked,
        gauge: asked.gauge ?? [],
        terms: termsOf(asked.terms),
      });
    });
}

interface Asked extends Omit<MeasureAsked, 'terms' | 'gauge'> {
  readonly gauge?: readonly string[];
  readonly terms: 'us' | 'uk' | 'auto';
}

const termsOf = (asked: Asked['terms']): MeasureAsked['terms'] =>
  asked === 'auto' ? 'auto' : asked === 'us' ? 'US' : 'UK';

/** No default is handed to the option: its help would print it as "[]". */
const collect = (words: string, before: readonly string[] = []): readonly string[] => [
  ...before,
  words,
];
