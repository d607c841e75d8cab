// `npm run package`: both store archives, checked as the stores would check them.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { globSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative } from 'node:path';
import { root, run } from './steps.ts';

type Lint = { errors: Message[]; warnings: Message[]; notices: Message[] };
type Message = { code: string; message: string; file?: string; line?: number };

/** SHA-256 of each file in a folder. */
const digestsOf = (folder: string) =>
  new Map(
    readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((file) => [relative(folder, file), createHash('sha256').update(readFileSync(file)).digest('hex')]),
  );

const problems: string[] = [];
for (const args of [['zip'], ['zip', '-b', 'firefox']]) {
  const done = run('wxt', args, { quiet: true });
  if (done.status !== 0) problems.push(`wxt ${args.join(' ')} failed:\n${done.stdout}${done.stderr}`);
}

// Every icon the manifest names is there, and is as large as it says (width at byte 16 of a PNG).
for (const build of ['chrome-mv3', 'firefox-mv3']) {
  const manifest = JSON.parse(readFileSync(join(root, '.output', build, 'manifest.json'), 'utf8')) as {
    icons?: Record<string, string>;
  };
  const icons = Object.entries(manifest.icons ?? {});
  for (const [size, path] of icons) {
    const width = readFileSync(join(root, '.output', build, path)).readUInt32BE(16);
    if (width !== Number(size)) problems.push(`${build}/${path} is ${width} pixels wide, not ${size}`);
  }
  for (const size of [16, 32, 48, 96, 128])
    if (!icons.some(([has]) => Number(has) === size)) problems.push(`${build} has no icon of ${size} pixels`);
}

const ours = globSync(['src/**/*.{ts,tsx}', 'entrypoints/**/*.{ts,tsx}'], { cwd: root }).filter((file) =>
  /innerHTML|outerHTML|insertAdjacentHTML/.test(readFileSync(join(root, file), 'utf8')),
);
if (ours.length) problems.push(`markup is made from strings in ${ours.join(', ')}`);

const lint = spawnSync(
  join(root, 'node_modules/.bin/web-ext'),
  ['lint', '--source-dir', join(root, '.output/firefox-mv3'), '--output', 'json'],
  { encoding: 'utf8', maxBuffer: 1 << 26 },
);
const { errors, warnings, notices } = JSON.parse(lint.stdout) as Lint;
for (const each of [...errors, ...warnings]) {
  problems.push(`web-ext lint: ${each.code} in ${each.file ?? '?'}:${each.line ?? '?'}: ${each.message}`);
}

// What is shipped can be built again by anyone, byte for byte.
const builds = ['chrome-mv3', 'firefox-mv3'];
const digests = () => new Map(builds.map((build) => [build, digestsOf(join(root, '.output', build))]));
const first = digests();
for (const build of builds) rmSync(join(root, '.output', build), { recursive: true });
for (const args of [['build'], ['build', '-b', 'firefox']]) run('wxt', args, { quiet: true });
for (const [build, files] of digests()) {
  const before = first.get(build)!;
  const other = [...new Set([...before.keys(), ...files.keys()])].filter(
    (file) => before.get(file) !== files.get(file),
  );
  for (const file of other) problems.push(`${build}/${file} is not the same when it is built again`);
  console.log(`${build}: ${files.size} files, ${other.length} of them other bytes when built again`);
}
console.log(`web-ext lint: ${errors.length} errors, ${warnings.length} warnings, ${notices.length} notices`);

for (const zip of globSync('.output/*.zip', { cwd: root })) console.log(zip);
for (const problem of problems) console.error(problem);
process.exitCode = problems.length ? 1 : 0;
