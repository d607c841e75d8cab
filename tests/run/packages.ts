import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './steps.ts';

type Locked = { version: string; dev?: boolean; license?: string; link?: boolean };
export type Package = { name: string; version: string; licence: string; ships: boolean };

/** Licences under which a package may be in what we ship. */
const free = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'MPL-2.0'];
export const mayShip = (licence: string) => free.includes(licence);

/** Every package of the lock file; `ships` are those that may get into the extension. */
export function packages(): Package[] {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, Locked>;
  };
  return Object.entries(lock.packages)
    .filter(([path]) => path !== '')
    .map(([path, { version, dev, license }]) => ({
      name: path.replace(/^.*node_modules\//, ''),
      version,
      licence: license ?? ownWords(path),
      ships: !dev,
    }));
}

/** What a package says of itself where the lock file does not. */
function ownWords(path: string): string {
  const file = join(root, path, 'package.json');
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')).license ?? 'not said') : 'not installed';
}
