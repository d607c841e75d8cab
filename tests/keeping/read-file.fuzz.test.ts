// Files that nobody wrote: whatever a file holds, it is read or told what is wrong with it, in bounded time.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/store/files/read-file.ts';
import { currentVersion } from '../../src/store/schema/migrations.ts';
import { tried } from '../run/fuzz-runs.ts';
import { spent } from '../spent.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from './made.ts';

const whole = {
  strandline: 'everything',
  version: currentVersion,
  made: '2026-03-01T12:00:00.000Z',
  heads: [madeHead()],
  products: [madeProduct(), madeProduct({ id: 'p2' })],
  routines: [madeRoutine()],
  log: [madeLog()],
  sites: [{ origin: 'https://shop.example', paused: false, notLists: ['x'], listsAt: [] }],
  readAs: { Panthenoll: 'Panthenol' },
  settings: {
    units: 'metric',
    underline: { protein: true, moisture: true },
    glyphSize: 'medium',
    reach: 'press',
    welcomed: true,
    pinned: [{ product: 'p1' }, 'p2', '{"name":"x","text":"y"}'],
  },
  photos: {},
  aside: [],
};

/** Reads it, and looks at what every answer promises. */
function sound(text: string) {
  const read = readFile(text);
  if (read.ok) return read;
  expect(read.issues.length).toBeGreaterThan(0);
  expect(read.issues.length).toBeLessThanOrEqual(50);
  for (const { line, column, path, said } of read.issues) {
    expect(line).toBeGreaterThan(0);
    expect(column).toBeGreaterThan(0);
    expect(typeof path).toBe('string');
    expect(said.key).toMatch(/^keeping\.issue\./);
  }
  return read;
}

it('the whole file is a file', () => {
  expect(readFile(JSON.stringify(whole)).ok).toBe(true);
});

// Past failures stay.
describe('is told what is wrong', () => {
  const turned = '{"toString":1,"valueOf":2}';
  const withId = (id: string) => JSON.stringify(whole).replace('"id":"p1"', `"id":${id}`);
  it.each<[string, string]>([
    ['a version that is an object', `{"strandline":"everything","version":${turned}}`],
    ['a version in a list', '{"strandline":"everything","version":[1]}'],
    ['an id that is an object', withId(turned)],
    [
      'an id that is an object, of the first version',
      `{"strandline":"everything","version":1,"heads":[{"id":${turned},"avoid":["x"]}]}`,
    ],
    [
      'an origin that is an object',
      JSON.stringify(whole).replace('"origin":"https://shop.example"', `"origin":${turned}`),
    ],
    ['a file that names its own prototype', '{"__proto__":{"strandline":"everything","version":2}}'],
    [
      'a head without anything',
      `{"strandline":"everything","version":1,"heads":[null,[],3,{"__proto__":null}]}`,
    ],
    ['a list of lists without end', '['.repeat(100_000)],
    ['nothing', ''],
    ['half a surrogate', '\ud800'],
  ])('%s', (_, text) => {
    expect(sound(text).ok).toBe(false);
  });

  it('200,000 wrong products, in the time a reader waits', { timeout: 60_000 }, () => {
    const text = JSON.stringify({
      ...whole,
      products: Array.from({ length: 200_000 }, (_, i) => ({ id: i })),
    });
    const took = spent(() => expect(sound(text).ok).toBe(false));
    expect(took).toBeLessThan(8000);
  });

  it('200,000 heads of the first version that are none', { timeout: 60_000 }, () => {
    const text = JSON.stringify({ strandline: 'everything', version: 1, heads: Array(200_000).fill(7) });
    const took = spent(() => expect(sound(text).ok).toBe(false));
    expect(took).toBeLessThan(8000);
  });
});

const odd = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>(
    { toString: 1, valueOf: 2 },
    { constructor: { prototype: 1 } },
    JSON.parse('{"__proto__":{"id":"x"}}'),
    'constructor',
    '__proto__',
    -0,
    1e308,
    [],
    {},
    null,
    '9999-99-99',
    `data:image/png;base64,${'A'.repeat(20)}`,
  ),
);

/** Puts something odd in one place of a value, or takes that place away. */
function spoiled(value: unknown, path: number[], by: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined || typeof value !== 'object' || value === null) return by;
  const keys = Object.keys(value);
  if (keys.length === 0) return by;
  const key = keys[step % keys.length]!;
  const inner = spoiled((value as Record<string, unknown>)[key], rest, by);
  if (Array.isArray(value)) return value.with(Number(key), inner);
  const { [key]: _, ...others } = value as Record<string, unknown>;
  return inner === undefined ? others : { ...others, [key]: inner };
}

describe('never throws', () => {
  it('for a file with odd things in it', () =>
    tried(
      'odd things in a file',
      fc.property(
        fc.array(fc.tuple(fc.array(fc.nat(40), { maxLength: 6 }), fc.oneof(odd, fc.constant(undefined))), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.constantFrom(1, 2, currentVersion),
        (spoils, version) => {
          let file: unknown = { ...whole, version };
          for (const [path, by] of spoils) file = spoiled(file, path, by);
          sound(JSON.stringify(file) ?? '');
        },
      ),
      2000,
    ));

  it('for a file with letters changed, cut or doubled', () => {
    const text = JSON.stringify(whole, null, 1);
    return tried(
      'letters of a file changed',
      fc.property(
        fc.nat(text.length),
        fc.nat(30),
        fc.string({ maxLength: 5, unit: 'binary' }),
        (at, cut, put) => {
          sound(text.slice(0, at) + put + text.slice(at + cut));
        },
      ),
      1000,
    );
  });

  it('for any JSON, and for anything at all', () =>
    tried(
      'any JSON',
      fc.property(fc.oneof(fc.json(), fc.string({ unit: 'binary' })), (text) => void sound(text)),
      1000,
    ));
});
