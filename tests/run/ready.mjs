// Runs on any Node, before anything is installed: makes node_modules match the lockfile, then runs the
// named script with the pinned Node. Plain JavaScript, no dependencies.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const stamp = `${root}node_modules/.strandline-lock`;
const node = `${root}node_modules/node/bin/node${process.platform === 'win32' ? '.exe' : ''}`;
const lock = createHash('sha256')
  .update(readFileSync(`${root}package-lock.json`))
  .digest('hex');
const fresh = existsSync(node) && existsSync(stamp) && readFileSync(stamp, 'utf8') === lock;

if (!fresh) {
  const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8'));
  const wanted = Object.keys(packages).filter((at) => at.startsWith('node_modules/'));
  console.log(
    `node_modules is missing or stale. To be installed there with npm ci, from the npm registry, as package-lock.json pins them: ${wanted.length} packages, Node ${packages['node_modules/node'].version} among them.`,
  );
  const npm = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (npm.status !== 0) {
    console.error('npm ci failed: the packages could not be installed. Is the npm registry reachable?');
    process.exit(npm.status ?? 1);
  }
  writeFileSync(stamp, lock);
}

const [script, ...rest] = process.argv.slice(2);
if (script) process.exit(spawnSync(node, [script, ...rest], { cwd: root, stdio: 'inherit' }).status ?? 1);
