import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Import, importsOf } from './run/imports.ts';

const root = resolve(import.meta.dirname, '..');

type Law = { code: string[]; types: string[]; packages: string[] };

/** The table of rooms in DEVELOPERS.md: name, what is in it, then what it may import. */
const law = new Map<string, Law>(
  readFileSync(join(root, 'DEVELOPERS.md'), 'utf8')
    .split('\n')
    .flatMap((line) => {
      const [, room, , code, types, packages] = line.split('|');
      const named = (cell: string) => [...cell.matchAll(/`([^`]+)`/g)].map(([, name]) => name!);
      const [name] = named(room ?? '');
      if (!name?.endsWith('/') || packages === undefined) return [];
      return [
        [
          name.replace(/^src\/|\/$/g, ''),
          { code: named(code!), types: named(types!), packages: named(packages) },
        ] as const,
      ];
    }),
);

const roomOf = (path: string) => path.replace(/^src\//, '').split('/')[0]!;

/** Why a file may not import that; undefined where it may. */
function breach(file: string, { spec, typeOnly }: Import): string | undefined {
  const room = roomOf(file);
  const may = law.get(room);
  if (!may) return `${file}: no such room in DEVELOPERS.md`;
  const has = (list: string[], name: string) =>
    list.some((each) => each === name || name.startsWith(`${each}/`) || each === 'every room');
  if (!spec.startsWith('.')) {
    const fine = typeOnly || has(may.packages, spec);
    return fine ? undefined : `${file} → package ${spec}`;
  }
  const to = roomOf(relative(root, resolve(root, dirname(file), spec)));
  const fine = to === room || has(may.code, to) || (typeOnly && has(may.types, to));
  return fine ? undefined : `${file} → ${spec}${typeOnly ? ' (types)' : ''}`;
}

const files = ['src', 'entrypoints', 'dictionary'].flatMap((dir) =>
  readdirSync(join(root, dir), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(dir, file)),
);

describe('the law of the rooms', () => {
  it('is kept by every file', () => {
    const wrong = files.flatMap((file) =>
      importsOf(file, readFileSync(join(root, file), 'utf8')).flatMap((each) => breach(file, each) ?? []),
    );
    expect(wrong).toEqual([]);
  });

  it('names the room of every file', () => {
    expect(files.filter((file) => !law.has(roomOf(file)))).toEqual([]);
  });

  it.each([
    ['src/core/a.ts', "import { a } from '../store/a.ts'", 'uphill'],
    ['src/core/a.ts', "import type { A } from '../store/a.ts'", 'types uphill'],
    ['src/core/a.ts', "export type { A } from '../ui/a.ts'", 'a type handed on'],
    ['src/core/a.ts', "type A = import('../ui/a.ts').A", 'a type named in place'],
    ['src/core/a.ts', "import { z } from 'zod/mini'", 'a package'],
    ['src/find/a.ts', "const a = await import('../page/a.ts')", 'when it runs'],
    ['src/contract/a.ts', "import { a } from '../core/a.ts'", 'code where types may be taken'],
    ['src/contract/a.ts', "import { type A, b } from '../core/a.ts'", 'code beside types'],
    ['src/page/a.ts', "import { h } from 'preact'", 'a package that weighs on every page'],
    ['src/page/a.ts', "export * from '../store/a.ts'", 'handed on'],
    ['src/store/a.ts', "import '../ui/a.ts'", 'for its effect'],
    ['src/store/a.ts', "new Worker(new URL('../ui/a.ts', import.meta.url))", 'as a worker'],
    ['src/store/a.ts', "import { a } from '../../tests/a.ts'", 'from the tests'],
  ])('would see %s with %s (%s)', (file, text) => {
    expect(importsOf(file, text).flatMap((each) => breach(file, each) ?? [])).toHaveLength(1);
  });

  it.each([
    ['src/core/a.ts', "import { a } from './b/a.ts'"],
    ['src/contract/a.ts', "import type { A } from '../core/a.ts'"],
    ['src/ui/a.ts', "import { render } from 'preact'; import { useState } from 'preact/hooks'"],
    ['entrypoints/a/index.ts', "import { a } from '../../src/page/a.ts'"],
  ])('lets %s have %s', (file, text) => {
    const imports = importsOf(file, text);
    expect(imports.length).toBeGreaterThan(0);
    expect(imports.flatMap((each) => breach(file, each) ?? [])).toEqual([]);
  });
});

describe('addresses for checks from outside', () => {
  it('stand where such checks look for them', async () => {
    const { createLookup } = await import('../src/core/lookup.ts');
    const { readLabel } = await import('../src/core/reading.ts');
    const { findLists } = await import('../src/page/find-lists.ts');
    const { entries, limits, patterns } = await import('../dictionary/index.ts');
    const lookup = createLookup(entries, patterns, limits);
    const names = readLabel('Aqua, Glycerin, Hydrolyzed Keratin', lookup, {}).mentions;
    expect(names).toHaveLength(3);
    expect(findLists).toBeTypeOf('function');
  });

  it('are no part of the extension', () => {
    const importing = files.filter((file) =>
      /page\/find-lists\.ts/.test(readFileSync(join(root, file), 'utf8')),
    );
    expect(importing).toEqual([]);
  });
});
