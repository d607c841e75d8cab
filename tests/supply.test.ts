// What the project stands on: each direct dependency has its reason in DEVELOPERS.md, and what ships is free to ship.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { mayShip, packages } from './run/packages.ts';
import { root } from './run/steps.ts';

const { dependencies, devDependencies } = JSON.parse(
  readFileSync(join(root, 'package.json'), 'utf8'),
) as Record<string, Record<string, string>>;

it('every direct dependency is pinned and has its reason', () => {
  const developers = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
  const reasons = [...developers.matchAll(/^\| `([^`]+)` +\| +(\S.*?) +\|$/gm)].map(([, name]) => name);
  const all = { ...dependencies, ...devDependencies };
  expect(Object.values(all).filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  expect(Object.keys(all).filter((name) => !reasons.includes(name))).toEqual([]);
});

it('what ships has a licence that lets it', () => {
  const shipped = packages().filter(({ ships }) => ships);
  expect(shipped.length).toBeGreaterThan(4);
  expect(shipped.filter(({ licence }) => !mayShip(licence))).toEqual([]);
});

it('every file that is named in the documents is there: what stands for a threat can be run', () => {
  const named = ['DEVELOPERS.md', 'README.md'].flatMap((file) =>
    [
      ...readFileSync(join(root, file), 'utf8').matchAll(
        /`((?:tests|src|dictionary|entrypoints)\/[\w./-]+)`/g,
      ),
    ].map(([, path]) => path!),
  );
  expect(named.length).toBeGreaterThan(40);
  expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});
