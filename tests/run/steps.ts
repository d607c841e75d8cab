import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a program of node_modules/.bin with the pinned Node first on the path. */
export function run(program: string, args: string[], options: { quiet?: boolean } = {}) {
  const bin = `${root}node_modules/.bin`;
  return spawnSync(`${bin}/${program}`, args, {
    cwd: root,
    stdio: options.quiet ? 'pipe' : 'inherit',
    encoding: 'utf8',
    env: { ...process.env, PATH: `${bin}:${process.env.PATH}` },
  });
}

/** Runs named steps one after another, says which failed, returns the exit code. */
export function runAll(steps: [name: string, program: string, args: string[]][]): number {
  const failed: string[] = [];
  for (const [name, program, args] of steps) {
    const from = performance.now();
    const done = run(program, args, { quiet: true });
    const good = done.status === 0;
    if (!good) {
      failed.push(name);
      process.stdout.write(`${done.stdout ?? ''}${done.stderr ?? ''}\n`);
    }
    console.log(`${good ? 'ok  ' : 'FAIL'} ${name} (${Math.round(performance.now() - from)} ms)`);
  }
  return failed.length ? 1 : 0;
}
