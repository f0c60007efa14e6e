/**
 * `npm test`: sets up, then lint, import directions, types and all tests. Each of the checks before them counts as a test.
 * The closing line `N passed, N failed` is printed last, alone; the exit code says whether anything failed.
 * With --soak the long versions of the tests run; further arguments go to the test runner.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { endWithNpm, run, runTool, SetUpError, setUp } from '../src/set-up.mjs';

const given = process.argv.slice(2);
const runnerArguments = given.filter((argument) => argument !== '--soak');
const environment = given.includes('--soak') ? { SOAK: '1' } : {};

const checks = [
  {
    name: 'lint',
    tool: '@biomejs/biome/bin/biome',
    parameters: ['ci', '--error-on-warnings', '--colors=off'],
  },
  {
    name: 'import directions',
    tool: 'dependency-cruiser/bin/dependency-cruise.mjs',
    parameters: ['src', '--config', '.dependency-cruiser.cjs'],
  },
  { name: 'types', tool: 'typescript/bin/tsc', parameters: ['--noEmit', '-p', 'tsconfig.json'] },
  {
    name: 'types of the web app',
    tool: 'typescript/bin/tsc',
    parameters: ['--noEmit', '-p', 'src/web/tsconfig.json'],
  },
];

/** @returns counts of the tests; a file that could not be run, or an error outside every test, counts as failed */
async function runTests() {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-report-'));
  const report = join(folder, 'report.json');
  try {
    const code = await runTool(
      'vitest/vitest.mjs',
      ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...runnerArguments],
      { environment },
    );
    const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(
      readFileSync(report, 'utf8'),
    );
    const brokenFiles = testResults.filter(
      ({ status, assertionResults }) =>
        status === 'failed' && !assertionResults.some((result) => result.status === 'failed'),
    ).length;
    const failed = numFailedTests + brokenFiles;
    return {
      passed: numPassedTests,
      failed: failed === 0 && code !== 0 ? 1 : failed,
      skipped: numPendingTests + numTodoTests,
    };
  } catch (error) {
    process.stderr.write(`The test runner left no report: ${error.message}\n`);
    return { passed: 0, failed: 1, skipped: 0 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function main() {
  const total = { passed: 0, failed: 0, skipped: 0 };
  try {
    await setUp();
    // Side by side, since each keeps one processor busy; what one of them complains of names its files.
    await Promise.all(
      checks.map(async ({ name, tool, parameters }) => {
        const code = await runTool(tool, parameters);
        process.stdout.write(code === 0 ? `passed: ${name}\n` : `FAILED: ${name}\n`);
        total[code === 0 ? 'passed' : 'failed'] += 1;
      }),
    );
    if (process.env.CI) {
      process.stdout.write('\nknown vulnerabilities\n');
      const code = await run(process.execPath, ['tests/audit.mjs']);
      // Where the registry cannot be asked, nothing was checked: that is said, and not counted.
      if (code < 2) total[code === 0 ? 'passed' : 'failed'] += 1;
    }
    const tests = await runTests();
    for (const key of Object.keys(total)) total[key] += tests[key];
  } catch (error) {
    process.stderr.write(`${error instanceof SetUpError ? error.message : error.stack}\n`);
    total.failed += 1;
  }
  process.exitCode = total.failed === 0 ? 0 : 1;
  const skipped = total.skipped === 0 ? '' : `, ${total.skipped} skipped`;
  process.stdout.write(`\n${total.passed} passed, ${total.failed} failed${skipped}\n`);
}

endWithNpm();
await main();
