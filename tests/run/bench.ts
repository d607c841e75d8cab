// `npm run bench [name… [part…]]`: prints figures, medians of several runs, and the machine they were taken on.
// Each file of tests/bench with `lines()` adds its own. Of these only growth is asserted: the machine is not always
// alone. `npm run bench -- --check` holds ratios to what stands beside them in the same run (tests/bench/check).
import { readdirSync } from 'node:fs';
import { cpus, release, totalmem } from 'node:os';
import { join } from 'node:path';
import { root, run } from './steps.ts';

/** A file's figures: all at the end or one after the other; of the parts named alone, where it has parts. */
type Lines = (parts: string[]) => Promise<string[]> | AsyncIterable<string>;

const [check, wanted] = [process.argv.includes('--check'), process.argv.slice(2)];
const folder = join(root, 'tests/bench');
const names = readdirSync(folder).map((file) => file.replace(/\.ts$/, ''));
const [asked, parts] = [true, false].map((is) => wanted.filter((word) => names.includes(word) === is));
for (const args of [['build'], ['build', '--mode', 'localhost']]) {
  const done = run('wxt', args, { quiet: true });
  if (done.status !== 0) throw new Error(`wxt ${args.join(' ')} failed:\n${done.stdout}${done.stderr}`);
}
const [core] = cpus();
console.log(
  `${cpus().length} × ${core?.model.trim()}, ${Math.round(totalmem() / 2 ** 30)} GiB, ${process.platform} ${release()}, Node ${process.version}`,
);
if (check) {
  const { checkBudgets } = await import('../bench/check/check.ts');
  const past = await checkBudgets((line) => console.log(`  ${line}`));
  console.log(past > 0 ? `${past} past their budgets` : 'all within their budgets');
  process.exitCode = past > 0 ? 1 : 0;
}
for (const file of check ? [] : readdirSync(folder).sort()) {
  const name = file.replace(/\.ts$/, '');
  if (asked!.length > 0 && !asked!.includes(name)) continue;
  const { lines } = (await import(join(folder, file))) as { lines?: Lines };
  if (!lines) continue;
  console.log(`\n${name}`);
  for await (const line of await lines(parts!)) console.log(`  ${line}`);
}
