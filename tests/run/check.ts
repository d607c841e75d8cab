// One command for every static check; `npm run fix` mends what can be mended.
import { checks } from './checks.ts';
import { runAll } from './steps.ts';

process.exitCode = runAll(checks).failed ? 1 : 0;
