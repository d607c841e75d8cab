import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root, run, type Tally } from './steps.ts';

/** What this module reads of Vitest's JSON report. */
type Report = {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  testResults: { status: string; assertionResults: { status: string }[] }[];
};

/** Runs a Vitest suite in full view and counts its tests; a file that cannot even load counts as one failure. */
export function runSuite(name: string, config: string, rest: string[] = []): Tally {
  const folder = join(root, '.output', 'results');
  const file = join(folder, `${name}.json`);
  mkdirSync(folder, { recursive: true });
  rmSync(file, { force: true });
  const done = run(
    'vitest',
    [
      'run',
      '--config',
      config,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
      ...rest,
    ],
    { env: { STRANDLINE_BUILT: '1' } },
  );
  let report: Report;
  try {
    report = JSON.parse(readFileSync(file, 'utf8')) as Report;
  } catch {
    console.log(`FAIL ${name}: Vitest left no report (exit code ${done.status})`);
    return { passed: 0, failed: 1, skipped: 0 };
  }
  const unloaded = report.testResults.filter(
    (each) => each.status === 'failed' && !each.assertionResults.some(({ status }) => status === 'failed'),
  ).length;
  const failed = report.numFailedTests + unloaded;
  return {
    passed: report.numPassedTests,
    // Errors outside any test (an unhandled rejection) fail the run too.
    failed: failed === 0 && done.status !== 0 ? 1 : failed,
    skipped: report.numPendingTests,
  };
}
