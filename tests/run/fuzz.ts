// `npm run fuzz [-- TIMES [SEED]]`: files and labels that nobody wrote, a million of each kind unless told otherwise.
// Says how far it is, and with the same seed goes on where it was interrupted.
import { run } from './steps.ts';

const [times = '1000000', seed = String(Math.floor(Math.random() * 1e9))] = process.argv.slice(2);
console.log(`to go on with this later: npm run fuzz -- ${times} ${seed}`);
const done = run(
  'vitest',
  [
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--testTimeout=36000000',
    '--maxWorkers=100%',
    'fuzz',
    'keeping/plan-file',
  ],
  {
    env: { STRANDLINE_FUZZ: times, STRANDLINE_FUZZ_SEED: seed },
  },
);
process.exitCode = done.status ?? 1;
