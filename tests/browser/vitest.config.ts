import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// End to end, one file at a time: two cores and real browsers.
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/browser/*.test.ts', 'tests/browser/{paint,keep,routine,panel}*.ts'],
    globalSetup: ['tests/browser/build.ts'],
    environment: 'node',
    fileParallelism: false,
    maxWorkers: 1,
    // No claims about speed: above the sum of what a test waits for, on a machine with other work too.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 20_000, interval: 60 } },
  },
});
