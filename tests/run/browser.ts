// `npm run browser [names]`: builds, then the end-to-end tests whose file names match.
import { run } from './steps.ts';

process.exit(
  run('vitest', ['run', '--config', 'tests/browser/vitest.config.ts', ...process.argv.slice(2)]).status ?? 1,
);
