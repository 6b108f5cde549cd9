// npm test: everything that must hold before a change goes in. All steps run even if one fails,
// so that one run shows all there is to mend; the last line counts them with the tests.
// `npm test -- NAME` builds and runs only the test files whose path has NAME in it.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { installChromium } from './chromium.mjs';
import { install } from './setup.mjs';
import { root, runNode, runTool } from './tools.mjs';

const filters = process.argv.slice(2);
const reportFile = join(root, 'node_modules/.cache/vitest-report.json');

install();
installChromium();

const steps = [
  { name: 'types', run: types },
  ...(filters.length > 0
    ? []
    : [
        {
          name: 'lint',
          run: () => runTool('@biomejs/biome', 'biome', ['check', '--error-on-warnings', '.']),
        },
        ...(existsSync(join(root, 'scripts/catalogue.mjs'))
          ? [{ name: 'generated files', run: () => runNode(['scripts/catalogue.mjs', '--check']) }]
          : []),
      ]),
];

const outcomes = steps.map(({ name, run }) => {
  console.log(`\n== ${name}`);
  const status = run();
  console.log(status === 0 ? `${name}: ok` : `${name}: FAILED (status ${status})`);
  return { name, passed: status === 0 };
});

console.log('\n== tests');
const tests = runTests();
summarise();

/** Checks the types of everything and, by the way, brings dist/ up to date, which CLI tests start. */
function types() {
  // Output files can be gone while the build info still says that they are up to date.
  const made = ['dist/src/index.js', 'dist/cli/main.js'].every((path) =>
    existsSync(join(root, path)),
  );
  return runTool('typescript', 'tsc', made ? ['-b'] : ['-b', '--force']);
}

/** Runs vitest and counts from its own JSON report, which must be of this run. */
function runTests() {
  mkdirSync(join(root, 'node_modules/.cache'), { recursive: true });
  rmSync(reportFile, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  const status = runTool('vitest', 'vitest', ['run', ...reporters, ...filters]);
  if (!existsSync(reportFile)) return { status, passed: 0, failed: 1, skipped: 0, unloaded: [] };
  const report = JSON.parse(readFileSync(reportFile, 'utf8'));
  // A file that cannot be loaded has no tests to count, so it counts as one that failed.
  const unloaded = report.testResults
    .filter((file) => file.status === 'failed' && file.assertionResults.length === 0)
    .map((file) => file.name.replace(root, ''));
  const counted = report.numFailedTests + unloaded.length;
  return {
    status,
    passed: report.numPassedTests,
    // An error outside any test makes vitest fail with no test to blame.
    failed: counted === 0 && status !== 0 ? 1 : counted,
    skipped: report.numPendingTests + report.numTodoTests,
    unloaded,
  };
}

function summarise() {
  const failedSteps = outcomes.filter(({ passed }) => !passed).map(({ name }) => name);
  for (const name of tests.unloaded) console.log(`Could not be loaded: ${name}`);
  if (tests.skipped > 0) console.log(`Skipped: ${tests.skipped}`);
  if (tests.failed > 0) failedSteps.push('tests');
  const counts = outcomes.map(({ name }) => name).join(', ');
  console.log(
    failedSteps.length > 0 ? `\nFailed: ${failedSteps.join(', ')}` : '\nAll steps passed.',
  );
  console.log(`Counted: the tests, and one each for ${counts}.`);
  const passed = outcomes.filter((outcome) => outcome.passed).length + tests.passed;
  const failed = outcomes.filter((outcome) => !outcome.passed).length + tests.failed;
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || tests.status !== 0 ? 1 : 0;
}
