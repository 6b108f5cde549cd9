/** What `loopwright letter` may be asked. */
import { Command, Option } from 'commander';
import { BORDERS } from '../src/index.ts';
import { boxes, share } from './amounts.ts';
import { Unusable } from './design.ts';
import type { LetterAsked } from './letter.ts';

const examples = `
Examples:
  loopwright letter "TIDE" --mesh "dc, ch 1"              a chart block, to paste into a pattern
  loopwright letter "Low" "Tide" --align left             two lines
  loopwright letter "Łódź" --height 9 --border steps      larger and bolder, with a border
  loopwright letter "Anna" --font letters.ttf --height 14 --gauge "8 boxes x 7.5 rnds = 10 cm"

The chart goes to standard output, remarks to standard error. Our own letters are 5, 7 or 9 boxes high,
or a multiple of these; accents and tails stand beyond. With --gauge, letters of a font keep their shape.

Exit status:
  0  the chart was made
  1  it was not, or a letter is missing
  2  something could not be run: a file that cannot be read, an option that does not exist`;

export function letterCommand(): Command {
  return new Command('letter')
    .description('Turn words into a filet chart.')
    .argument('<words...>', 'the words, each line in quotes')
    .option('--height <boxes>', 'height of a capital', boxes(1), 7)
    .option('--font <file>', 'an outline font (TTF, OTF, WOFF) in place of our own letters')
    .option('--mesh <words>', 'the mesh, as "dc, ch 1"')
    .option('--gauge <words>', 'the gauge of the mesh, as "8 boxes x 7.5 rnds = 10 cm"')
    .option('--threshold <share>', 'part of a box that a font must cover to fill it', share, 0.5)
    .option(
      '--spacing <boxes>',
      'open boxes between letters; with --font, more than its own',
      boxes(0),
    )
    .option('--word-space <boxes>', 'open boxes between words', boxes(1))
    .option('--line-space <rows>', 'open rows between lines', boxes(0), 2)
    .addOption(
      new Option('--align <side>', 'where shorter lines stand')
        .choices(['left', 'centre', 'right'])
        .default('centre'),
    )
    .option('--margin <boxes>', 'open boxes around the words', boxes(0))
    .addOption(new Option('--border <kind>', 'a border around all').choices([...BORDERS]))
    .option('--name <name>', "the chart's name; else the words")
    .option('-o, --output <file>', 'write the chart to a file')
    .option('--no-color', 'no colour')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright letter --help tells what can be asked)')
    .exitOverride()
    .action(async (words: string[], asked: LetterAsked) => {
      try {
        // Loaded only now: fonts are no concern of other commands.
        const { letter } = await import('./letter.ts');
        process.exitCode = await letter(words, asked);
      } catch (error) {
        if (!(error instanceof Unusable)) throw error;
        process.stderr.write(`loopwright: ${error.message}\n`);
        process.exitCode = 2;
      }
    });
}
