import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a program of node_modules/.bin with the pinned Node first on the path. */
export function run(
  program: string,
  args: string[],
  options: { quiet?: boolean; env?: Record<string, string> } = {},
) {
  const bin = `${root}node_modules/.bin`;
  return spawnSync(`${bin}/${program}`, args, {
    cwd: root,
    stdio: options.quiet ? 'pipe' : 'inherit',
    encoding: 'utf8',
    env: { ...process.env, ...options.env, PATH: `${bin}:${process.env.PATH}` },
  });
}

export type Step = [name: string, program: string, args: string[]];
export type Tally = { passed: number; failed: number; skipped: number };

/** Runs named steps one after another, says what failed of each, and counts. */
export function runAll(steps: Step[]): Tally {
  const tally: Tally = { passed: 0, failed: 0, skipped: 0 };
  for (const [name, program, args] of steps) {
    const from = performance.now();
    const done = run(program, args, { quiet: true });
    const good = done.status === 0;
    if (!good) process.stdout.write(`${done.stdout ?? ''}${done.stderr ?? ''}\n`);
    tally[good ? 'passed' : 'failed']++;
    console.log(`${good ? 'ok  ' : 'FAIL'} ${name} (${Math.round(performance.now() - from)} ms)`);
  }
  return tally;
}
