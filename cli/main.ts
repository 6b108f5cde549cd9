/** The command line: what may be asked, and what is said when it cannot be done. */
import { createRequire } from 'node:module';
import { Command, CommanderError, Option } from 'commander';
import { chartCommand } from './chart-command.ts';
import { type CheckOptions, check } from './check.ts';
import { letterCommand } from './letter-command.ts';
import { measureCommand } from './measure-command.ts';
import { endQuietlyOnClosedPipe } from './output.ts';
import { placeCommand } from './place-command.ts';
import { shapeCommand } from './shape-command.ts';
import { spaceCommand } from './space-command.ts';
import { traceCommand } from './trace-command.ts';
import { faultOfOurs } from './work.ts';

const { version } = createRequire(import.meta.url)('loopwright/package.json') as {
  version: string;
};

const beginnings = `
Begin with:
  loopwright check my-pattern.md      is every count right, and where is it not?
  loopwright measure my-pattern.md    how large it comes out, and what yarn it takes
  loopwright check -                  paste a pattern, end with Ctrl-D

docs/writing.md tells how a pattern is written, and what may stand at its head.`;

const examples = `
Examples:
  loopwright check shawl.pattern.md            one pattern, with its table of rounds
  loopwright check patterns/                   all *.pattern.md, *.md and *.txt in a folder
  loopwright check patterns/ --rounds          the same with tables
  loopwright check blanket.txt --terms uk      read in UK terms
  loopwright check - < pasted.txt              from standard input
  loopwright check patterns/ --format json     for a program; docs/check-json.md tells the shape
  loopwright check patterns/ --format sarif    for code hosts and editors

Exit status:
  0  every row was read and worked, and there is no error
  1  a row was not read or worked, or there is an error, or there is no row at all (notes that
     lie beside patterns in a folder may have none)
  2  something could not be run: a file that cannot be read, an option that does not exist`;

endQuietlyOnClosedPipe();
const program = new Command('loopwright')
  .description('Reads a crochet pattern, works it stitch by stitch and proves each count.')
  .version(version, '-V, --version', 'print the version')
  .helpOption('-h, --help', 'print this help')
  .helpCommand('help [command]', 'print help on a command')
  .addHelpText('after', beginnings)
  .showHelpAfterError('(loopwright --help tells what can be asked)')
  .configureOutput({ outputError: (words, print) => print(withCheckOffered(words)) })
  .exitOverride();
program.addCommand(checkCommand());
program.addCommand(measureCommand());
program.addCommand(chartCommand());
program.addCommand(shapeCommand(version));
program.addCommand(letterCommand());
program.addCommand(traceCommand());
program.addCommand(placeCommand());
program.addCommand(spaceCommand());
await run();

function checkCommand(): Command {
  return new Command('check')
    .description('Work patterns stitch by stitch and say what does not come out.')
    .argument('<file...>', 'files, folders, or - for standard input')
    .addOption(
      new Option('--format <form>', 'how to report')
        .choices(['text', 'json', 'sarif'])
        .default('text'),
    )
    .addOption(
      new Option('--terms <terms>', 'read in these terms, whatever the pattern says')
        .choices(['us', 'uk', 'auto'])
        .default('auto', 'auto: as the pattern says, else by its words'),
    )
    .option('--rounds', 'show the table of rounds (a single file always does)')
    .option('--no-rounds', 'leave it out')
    .option('--no-color', 'no colour; NO_COLOR in the environment does the same')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', examples)
    .showHelpAfterError('(loopwright check --help tells what can be asked)')
    .exitOverride()
    .action(async (paths: string[], asked: Asked) => {
      process.exitCode = await check(paths, { ...asked, terms: termsOf(asked.terms), version });
    });
}

interface Asked extends Pick<CheckOptions, 'format' | 'rounds' | 'color'> {
  readonly terms: 'us' | 'uk' | 'auto';
}

/** Who names a pattern and no command most likely wants it checked. */
function withCheckOffered(words: string): string {
  const [, file] = /^error: unknown command '(.+)'/.exec(words) ?? [];
  if (file === undefined || !/[./\\]/.test(file)) return words;
  return `${words.trimEnd()}\nTo check that pattern: loopwright check ${file}\n`;
}

function termsOf(asked: Asked['terms']): CheckOptions['terms'] {
  if (asked === 'auto') return 'auto';
  return asked === 'us' ? 'US' : 'UK';
}

/** Status 2 for all that keeps the program from running, so that scripts can tell it from a finding. */
async function run(): Promise<void> {
  try {
    await program.parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) {
      process.exitCode = error.exitCode === 0 ? 0 : 2;
      return;
    }
    process.stderr.write(`loopwright: ${faultOfOurs(error)}\n`);
    process.exitCode = 2;
  }
}
