// Before any end-to-end test: the builds it runs, unless the caller has just made them.
import { run } from '../run/steps.ts';

export const builds = [
  ['build', '--mode', 'localhost'],
  ['build'],
  ['build', '-b', 'firefox', '--mode', 'localhost'],
  ['build', '-b', 'firefox'],
];

export default function setup() {
  if (process.env.STRANDLINE_BUILT) return;
  for (const args of builds) {
    const done = run('wxt', args, { quiet: true });
    if (done.status !== 0) throw new Error(`wxt ${args.join(' ')} failed:\n${done.stdout}${done.stderr}`);
  }
}
