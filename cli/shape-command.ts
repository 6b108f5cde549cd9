/** What may be asked of `loopwright shape`. */
import { Command, Option } from 'commander';
import { runShape, type ShapeAsked } from './shape.ts';

const examples = `
Examples:
  loopwright shape bag.pattern.md                    how large each piece is, flat or not
  loopwright shape bag.pattern.md -o bag.svg         a drawing of the pieces, to scale
  loopwright shape bag.pattern.md -o bag.png         the same as a picture
  loopwright shape bag.pattern.md -o bag.glb         in three dimensions (glTF), stitch by stitch
  loopwright shape hat.pattern.md --size "adult S"   another size than the first
  loopwright shape otter.pattern.md --part head      one piece alone
  loopwright shape bag.pattern.md --format json      for a program; docs/shape-json.md
  loopwright shape bag.pattern.md --gauge "14 sts x 16 rnds = 10 cm in sc"

Exit status:
  0  the shape is told, and the pattern has no error
  1  it is told, and the pattern has an error; loopwright check tells more
  2  something could not be run: a file that cannot be read, an option that does not exist`;

/** `version`: of the program, for the head of a glTF file. */
export function shapeCommand(version: string): Command {
  return new Command('shape')
    .description('Work out the shape of a pattern in three dimensions, and draw it.')
    .argument('<file>', 'a pattern, or - for standard input')
    .option('-o, --output <file>', 'write the shape: .svg, .png or .glb')
    .option('--size <name>', 'a size by its name or its number; the first where none is asked for')
    .option('--part <name>', 'only the piece with this part; the beginning of its name is enough')
    .option(
      '--gauge <words>',
      "a gauge in place of the pattern's; may be given for each fabric",
      // No default is handed over: the help would print it as "[]".
      (words: string, before: readonly string[] = []) => [...before, words],
    )
    .addOption(
      new Option('--units <units>', 'units to print')
        .choices(['metric', 'us', 'both'])
        .default('both'),
    )
    .addOption(
      new Option(
        '--hand <hand>',
        'as a right- or left-handed maker works it; words are not mirrored',
      )
        .choices(['right', 'left'])
        .default('right'),
    )
    .addOption(
      new Option('--format <form>', 'how to report').choices(['text', 'json']).default('text'),
    )
    .addOption(
      new Option('--terms <terms>', 'read in these terms, whatever the pattern says')
        .choices(['us', 'uk', 'auto'])
        .default('auto', 'auto: as the pattern says, else by its words'),
    )
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright shape --help tells what can be asked)')
    .exitOverride()
    .action(async (file: string, asked: Asked) => {
      process.exitCode = await runShape(file, {
        ...asked,
        gauge: asked.gauge ?? [],
        terms: termsOf(asked.terms),
        version,
      });
    });
}

interface Asked extends Omit<ShapeAsked, 'terms' | 'version' | 'gauge'> {
  readonly gauge?: readonly string[];
  readonly terms: 'us' | 'uk' | 'auto';
}

const termsOf = (asked: Asked['terms']): ShapeAsked['terms'] =>
  asked === 'auto' ? 'auto' : asked === 'us' ? 'US' : 'UK';
