// Names and folders. A name at the top of a file means one thing: what one file exports no other exports, nor has for itself in the
// same room, under the same name.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './run/steps.ts';

const declared =
  /^(export )?(?:async )?(?:function\*?|const|let|type|interface|class)\s+([A-Za-z_$][\w$]*)/gm;

const files = ['src', 'entrypoints', 'dictionary']
  .flatMap((room) =>
    readdirSync(join(root, room), { recursive: true, encoding: 'utf8' }).map((file) => join(room, file)),
  )
  .filter((file) => /\.tsx?$/.test(file));

/** `src/core/label`, `src/ui`: what is small enough that a reader meets both. */
const roomOf = (file: string) =>
  file
    .split('/')
    .slice(0, file.startsWith('src/core/') ? 3 : 2)
    .join('/');

type Name = { name: string; file: string; exported: boolean };

function namesOf(file: string, text: string): Name[] {
  const found = text.matchAll(declared);
  return [...found].map(([, exported, name]) => ({ name: name!, file, exported: exported !== undefined }));
}

/** Names that stand in two files and are exported by one: anywhere if by both, else within one room. */
function twice(all: readonly Name[]): string[] {
  const byName = Map.groupBy(all, ({ name }) => name);
  return [...byName].flatMap(([name, places]) => {
    const clash = places.some(
      (one, at) =>
        one.exported &&
        places.some(
          (other, also) =>
            at !== also &&
            one.file !== other.file &&
            (other.exported || roomOf(one.file) === roomOf(other.file)),
        ),
    );
    return clash ? [`${name}: ${places.map(({ file }) => file).join(', ')}`] : [];
  });
}

it('an exported name means one thing', () => {
  expect(files.length).toBeGreaterThan(300);
  const all = files.flatMap((file) => namesOf(file, readFileSync(join(root, file), 'utf8')));
  expect(twice(all)).toEqual([]);
});

it('no folder of the program holds much more than a dozen files by itself', () => {
  const folders = Map.groupBy(files, (file) => dirname(file));
  expect([...folders].filter(([, inside]) => inside.length > 14).map(([folder]) => folder)).toEqual([]);
});

describe('the check itself', () => {
  const names = (file: string, text: string) => namesOf(file, text);

  it('sees two exports of one name, and one beside what its room has for itself', () => {
    const step = names('src/core/plan/a.ts', 'export type Step = 1;\nconst own = 2;');
    expect(twice([...step, ...names('src/ui/b.ts', 'export const Step = 2;')])).toHaveLength(1);
    expect(twice([...step, ...names('src/core/plan/b.ts', 'function Step() {}')])).toHaveLength(1);
  });

  it('leaves alone what two files have for themselves, and what is far apart', () => {
    const step = names('src/core/plan/a.ts', 'export type Step = 1;\nconst own = 2;');
    expect(twice([...step, ...names('src/core/plan/b.ts', 'const own = 3;')])).toEqual([]);
    expect(twice([...step, ...names('src/ui/b.ts', 'const Step = 3;')])).toEqual([]);
  });
});
