/** What `loopwright trace` may be asked. */
import { Command, Option } from 'commander';
import { BORDERS } from '../src/index.ts';
import { boxes, share } from './amounts.ts';
import { Unusable } from './design.ts';
import type { TraceAsked } from './trace.ts';

const examples = `
Examples:
  loopwright trace boat.png --width 60 --gauge "8 boxes x 7.5 rnds = 10 cm"
  loopwright trace boat.png --width 60 --preview          see other thresholds beside it
  loopwright trace boat.png --width 60 --threshold 0.4 --clean --border line -o boat.chart.md

The chart goes to standard output, remarks and the preview to standard error. Dark is filled. Rows
follow from the picture's shape and the boxes'.

Exit status:
  0  the chart was made
  1  it was not
  2  something could not be run: a picture that cannot be read, an option that does not exist`;

export function traceCommand(): Command {
  return new Command('trace')
    .description('Turn a picture (PNG, JPEG) into a filet chart.')
    .argument('<picture>', 'the file')
    .requiredOption('--width <boxes>', 'boxes across', boxes(2))
    .option('--mesh <words>', 'the mesh, as "dc, ch 1"')
    .option('--gauge <words>', 'the gauge of the mesh, as "8 boxes x 7.5 rnds = 10 cm"')
    .option('--threshold <share>', 'how dark a box must be to be filled; else by the tones', share)
    .option('--preview', 'show the picture at several thresholds')
    .option('--invert', 'fill the light boxes')
    .option('--mirror', 'turn the picture left to right; never for letters')
    .option('--clean [boxes]', 'take away specks and holes of so many boxes (1)', boxes(0))
    .addOption(
      new Option('--ground <tone>', 'what shows where the picture is transparent')
        .choices(['white', 'black'])
        .default('white'),
    )
    .option('--margin <boxes>', 'open boxes around the picture', boxes(0))
    .addOption(new Option('--border <kind>', 'a border around all').choices([...BORDERS]))
    .option('--name <name>', "the chart's name; else the file's")
    .option('-o, --output <file>', 'write the chart to a file')
    .option('--no-color', 'no colour')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright trace --help tells what can be asked)')
    .exitOverride()
    .action(async (file: string, asked: TraceAsked) => {
      try {
        // Loaded only now: picture decoders are no concern of other commands.
        const { trace } = await import('./trace.ts');
        process.exitCode = await trace(file, asked);
      } catch (error) {
        if (!(error instanceof Unusable)) throw error;
        process.stderr.write(`loopwright: ${error.message}\n`);
        process.exitCode = 2;
      }
    });
}
