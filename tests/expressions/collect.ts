// Every expression that the program tests letters with: of the dictionary's patterns, and of its own code.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseAst } from 'vite';
import { limits, patterns } from '../../dictionary/index.ts';
import { createRemarks } from '../../src/core/label/no-names/remarks.ts';
import { root } from '../run/steps.ts';

export type Expression = { where: string; source: string; flags: string };

const files = ['src', 'entrypoints', 'dictionary'].flatMap((room) =>
  readdirSync(join(root, room), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(root, room, file)),
);

/** What is compiled out of the dictionary's words while something is built. */
function compiledBy(build: () => unknown): { source: string; flags: string }[] {
  const found: { source: string; flags: string }[] = [];
  const Own = RegExp;
  globalThis.RegExp = class extends Own {
    constructor(source: string | RegExp, flags?: string) {
      super(source, flags);
      found.push({ source: this.source, flags: this.flags });
    }
  } as RegExpConstructor;
  try {
    build();
  } finally {
    globalThis.RegExp = Own;
  }
  return found;
}

/** Literals, and what a call of `RegExp` is given as plain letters. */
function inCode(node: unknown, found: { source: string; flags: string }[]): void {
  if (typeof node !== 'object' || node === null) return;
  if (Array.isArray(node)) {
    for (const each of node) inCode(each, found);
    return;
  }
  const { regex } = node as { regex?: { pattern: string; flags: string } };
  if (regex) found.push({ source: regex.pattern, flags: regex.flags });
  for (const value of Object.values(node)) if (typeof value === 'object') inCode(value, found);
}

export function expressions(): Expression[] {
  const code = files.flatMap((file) => {
    const found: { source: string; flags: string }[] = [];
    inCode(parseAst(readFileSync(file, 'utf8'), { lang: file.endsWith('x') ? 'tsx' : 'ts' }), found);
    return found.map((each) => ({ where: relative(root, file), ...each }));
  });
  const facts = patterns.flatMap(({ id, match, not }) =>
    [match, not ?? []].flat().map((source) => ({ where: `patterns.json ${id}`, source, flags: 'u' })),
  );
  const compiled = compiledBy(() => createRemarks(limits.labelWords)).map((each) => ({
    where: 'src/core/label/ with the words of dictionary/finding/',
    ...each,
  }));
  return [...facts, ...code, ...compiled];
}
