/** `loopwright check`: finds the files, checks them on all cores, reports in the form asked for. */
import { coloured, plain } from '../src/index.ts';
import type { CheckedFile } from './checked.ts';
import { type Fault, findFiles } from './files.ts';
import { jsonOf } from './json.ts';
import { wantsColour, widthOfOutput, write } from './output.ts';
import { checkAll } from './pool.ts';
import { progressOf } from './progress.ts';
import { sarifLog, sarifResults } from './sarif.ts';
import { closing, type Outcome, type ReportLayout, report, shortReport } from './text/report.ts';
import { isWithoutRows, statusOf } from './text/summary.ts';
import type { Task } from './work.ts';

export interface CheckOptions {
  readonly format: 'text' | 'json' | 'sarif';
  readonly terms: Task['terms'];
  /** The table of rounds; undefined: for a single file only. */
  readonly rounds?: boolean;
  readonly color: boolean;
  /** Of the program, for SARIF. */
  readonly version: string;
}

/** Exit status: 0 all is well, 1 something is wrong with a pattern, 2 something could not be run. */
export type Status = 0 | 1 | 2;

export async function check(paths: readonly string[], options: CheckOptions): Promise<Status> {
  const { files, faults } = await findFiles(paths);
  for (const fault of faults) complain(fault);
  const reporter = reporterFor(options, files.length);
  const progress = progressOf(files.length);
  let done = 0;
  let faulty = faults.length;
  let status: Status = 0;
  let isRead = files.length === 0;
  await write(reporter.begin);
  for await (const result of checkAll(tasksFor(files, paths, options))) {
    progress.clear();
    if ('why' in result) {
      complain(result);
      faulty += 1;
    } else {
      await write(reporter.each(result));
      if (statusOf(result) === 1) status = 1;
      isRead ||= !isWithoutRows(result);
    }
    done += 1;
    progress.show(done);
  }
  progress.clear();
  await write(reporter.end(faulty));
  // A folder without a single row is no folder of sound patterns.
  if (!isRead) status = 1;
  return faulty > 0 ? 2 : status;
}

function tasksFor(
  files: readonly string[],
  paths: readonly string[],
  { terms }: CheckOptions,
): Task[] {
  const named = new Set(paths);
  return files.map((file) => ({
    file,
    terms,
    ...(!named.has(file) && { found: 'in-folder' as const }),
  }));
}

function complain({ file, why }: Fault): void {
  process.stderr.write(`loopwright: ${file}: ${why}\n`);
}

/** A report in pieces, so that it can be written while later files are still being checked. */
interface Reporter {
  readonly begin: string;
  readonly each: (checked: CheckedFile) => string;
  readonly end: (faults: number) => string;
}

function reporterFor(options: CheckOptions, files: number): Reporter {
  if (options.format === 'json') return jsonReporter();
  if (options.format === 'sarif') return sarifReporter(options.version);
  return textReporter(options, files);
}

function jsonReporter(): Reporter {
  let isFirst = true;
  return {
    begin: '[\n',
    each: (checked) => {
      const comma = isFirst ? '' : ',\n';
      isFirst = false;
      return comma + jsonOf(checked);
    },
    end: () => (isFirst ? ']\n' : '\n]\n'),
  };
}

function sarifReporter(version: string): Reporter {
  const results: object[] = [];
  return {
    begin: '',
    each: (checked) => {
      results.push(...sarifResults(checked));
      return '';
    },
    end: () => sarifLog(results, version),
  };
}

function textReporter({ rounds, color: asked }: CheckOptions, files: number): Reporter {
  const color = wantsColour(asked);
  const layout: ReportLayout = {
    width: widthOfOutput(),
    color,
    paint: color ? coloured : plain,
    table: (rounds ?? files === 1) ? 'shown' : 'left-out',
  };
  if (files === 1) return { begin: '', each: (checked) => report(checked, layout), end: () => '' };
  return manyReporter(layout);
}

/** Files with nothing to tell stand line under line; what is told of others has room around it. */
function manyReporter(layout: ReportLayout): Reporter {
  const outcomes: Outcome[] = [];
  let isApart = true;
  const each = (checked: CheckedFile) => {
    outcomes.push(outcomeOf(checked));
    const { line, rest } = shortReport(checked, layout);
    const before = rest === '' || isApart ? '' : '\n';
    isApart = rest !== '';
    return rest === '' ? `${line}\n` : `${before}${line}\n\n${rest}\n\n`;
  };
  const end = (faults: number) =>
    `${isApart ? '' : '\n'}${closing(outcomes, faults, layout.paint)}`;
  return { begin: '', each, end: (faults) => (outcomes.length === 0 ? '' : end(faults)) };
}

function outcomeOf(checked: CheckedFile): Outcome {
  const findings = checked.findings.map(({ severity }) => ({ severity }));
  return { status: statusOf(checked), findings, totals: checked.totals };
}
