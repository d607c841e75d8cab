// `npm run fuzz [-- TIMES]`: files and labels that nobody wrote, a million of each kind unless told otherwise.
import { run } from './steps.ts';

const times = process.argv[2] ?? '1000000';
const done = run('vitest', ['run', '--config', 'tests/vitest.config.ts', '--testTimeout=36000000', 'fuzz'], {
  env: { STRANDLINE_FUZZ: times },
});
process.exitCode = done.status ?? 1;
