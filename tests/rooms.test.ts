import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, it } from 'vitest';

// Imports run downhill. Types may also be taken from where the arrow `type` says.
const root = resolve(import.meta.dirname, '..');
const allowed: Record<string, { code: string[]; types: string[] }> = {
  dictionary: { code: ['dictionary'], types: ['core'] },
  core: { code: ['core'], types: [] },
  store: { code: ['store', 'core'], types: [] },
  contract: { code: ['contract', 'core'], types: ['store'] },
  ui: { code: ['ui', 'core'], types: ['store', 'contract'] },
  page: { code: ['page', 'find', 'ui', 'core'], types: ['contract', 'store'] },
  // what is found in a page's letters is decided in the background: no document there
  find: { code: ['find', 'core'], types: ['contract'] },
};
const outside = (from: string, spec: string) =>
  from === 'core' ? ['fuse.js'].includes(spec) : from !== 'page';

const roomOf = (file: string) => {
  const path = relative(root, file).split('/');
  if (path[0] === 'src') return path[1]!.replace(/\.tsx?$/, '');
  return path[0]!;
};

const files = ['src', 'dictionary'].flatMap((dir) =>
  readdirSync(join(root, dir), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(root, dir, file)),
);

it('imports run downhill', () => {
  const wrong: string[] = [];
  for (const file of files) {
    const rules = allowed[roomOf(file)];
    for (const [, type, spec] of readFileSync(file, 'utf8').matchAll(
      /^(?:import|export)\s+(type\b)?[^;]*?from\s+'([^']+)'/gm,
    )) {
      const to = spec!.startsWith('.') ? roomOf(resolve(dirname(file), spec!)) : '';
      const fine = to
        ? rules && [...rules.code, ...(type ? rules.types : [])].includes(to)
        : type || outside(roomOf(file), spec!);
      if (!fine) wrong.push(`${relative(root, file)} → ${spec}`);
    }
  }
  expect(files.length).toBeGreaterThan(5);
  expect(wrong).toEqual([]);
});
