/** What `loopwright place` may be asked. */
import { Command, Option } from 'commander';
import { boxes } from './amounts.ts';
import { Unusable } from './design.ts';
import type { PlaceAsked } from './place.ts';

const examples = `
Examples:
  loopwright place "TIDE" --around 52 --mesh "dc, ch 1" --margin 2
  loopwright place "TIDE" --around 52 --mesh "dc, ch 1" --gauge "8 boxes x 7.5 rnds = 10 cm" --faces 2
  loopwright place --width 21 --across 60 --mesh "dc, ch 2"
  loopwright place "TIDE" --pattern bag.pattern.md --row 11

Nothing is chosen for you: every position and count is listed with its sum. Boxes are counted in the
order of work. With --pattern the front is known from where its notes say that rounds start, or from two
handles; else a round is taken to start at the side of the piece, and its front is the first half.

Exit status:
  0  it fits
  1  it does not fit, or a letter is missing
  2  something could not be run: a file that cannot be read, an option that does not exist`;

export function placeCommand(): Command {
  return new Command('place')
    .description('Place a word or a chart on a piece: positions, margins, and counts that fit.')
    .argument('[words...]', 'the words, each line in quotes')
    .option('--width <boxes>', 'boxes that a chart is wide, in place of words', boxes(1))
    .option('--around <boxes>', 'boxes around the whole piece', boxes(1))
    .option('--across <boxes>', 'boxes across a flat piece', boxes(1))
    .option('--pattern <file>', 'take the boxes from this pattern')
    .option('--row <number>', 'with --pattern: the row or round of boxes', boxes(1))
    .option('--mesh <words>', 'the mesh, as "dc, ch 1" (default: of the pattern, else "dc, ch 2")')
    .option(
      '--gauge <words>',
      'the gauge of the mesh, as "8 boxes x 7.5 rnds = 10 cm" (default: of the pattern)',
    )
    .option('--height <boxes>', 'height of a capital', boxes(1), 7)
    .option('--margin <boxes>', 'open boxes wanted at each side', boxes(0), 1)
    .option('--faces <number>', '2: on both faces of a round piece', boxes(1), 1)
    .addOption(
      new Option(
        '--start <place>',
        'where rounds start (default: as the pattern tells, else side)',
      ).choices(['side', 'back', 'front']),
    )
    .addOption(
      new Option('--hand <hand>', 'for the middle by eye: who works it')
        .choices(['right', 'left'])
        .default('right'),
    )
    .option('--no-color', 'no colour')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright place --help tells what can be asked)')
    .exitOverride()
    .action(async (words: string[], asked: PlaceAsked) => {
      try {
        const { place } = await import('./place.ts');
        process.exitCode = await place(words, asked);
      } catch (error) {
        if (!(error instanceof Unusable)) throw error;
        process.stderr.write(`loopwright: ${error.message}\n`);
        process.exitCode = 2;
      }
    });
}
