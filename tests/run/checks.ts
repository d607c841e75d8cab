import type { Step } from './steps.ts';

/** Every static check. */
export const checks: Step[] = [
  ['lint and format', 'biome', ['check', '--config-path=.biome.json', '--error-on-warnings', '.']],
  ['types', 'tsc', ['-p', 'tsconfig.json']],
  ['types of core, without DOM', 'tsc', ['-p', 'src/core/tsconfig.json', '--noEmit']],
  ['dead code', 'knip', ['--config', '.knip.json', '--no-progress']],
  ['duplicate code', 'jscpd', ['--config', '.jscpd.json', 'src', 'entrypoints', 'dictionary']],
  [
    'rooms, packages, expressions and dictionary',
    'vitest',
    [
      'run',
      '--config',
      'tests/vitest.config.ts',
      'tests/rooms.test.ts',
      'tests/supply.test.ts',
      'tests/expressions',
      'tests/dictionary',
    ],
  ],
];
