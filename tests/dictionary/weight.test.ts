import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';

const folder = join(import.meta.dirname, '../../dictionary');
const filesOf = (test: (path: string) => boolean) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.json') && file !== 'sources.json' && test(file))
    .map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as unknown);
const weight = (files: unknown[]) => gzipSync(JSON.stringify(files), { level: 9 }).length;

// The worker loads all of it each time it wakes; its keys are written ahead, see `npm run bench cold`. Measured as
// bundled: minified JSON, gzipped together.
it('the dictionary of names weighs at most 175 kB gzipped, 7,000 entries at least', () => {
  const files = filesOf((file) => !/^(?:amounts|finding)/.test(file) && file !== 'kinds.json');
  expect(weight(files)).toBeLessThanOrEqual(175_000);
  expect(files.flat().length).toBeGreaterThan(7000);
});

it('the words of shops weigh at most 18 kB gzipped', () => {
  expect(weight(filesOf((file) => file === 'kinds.json'))).toBeLessThanOrEqual(18_000);
});

it('the usual shares weigh at most 8 kB gzipped', () => {
  expect(weight(filesOf((file) => file.startsWith('amounts')))).toBeLessThanOrEqual(8000);
});

const ofLabels = ['remarks.json', 'label.json'].map((file) => join('finding', file));

// What stands beside a heading, in forty languages, is a tenth of it: without, six in a hundred lists of shops in those
// languages are taken for a part of something (`npm run coverage`, later shops).
it('the words by which lists are found, in the languages of the labels, weigh at most 18.5 kB gzipped', () => {
  expect(
    weight(filesOf((file) => file.startsWith('finding') && !ofLabels.includes(file))),
  ).toBeLessThanOrEqual(18_500);
});

it('the words that stand among names weigh at most 8 kB gzipped', () => {
  expect(weight(filesOf((file) => file === ofLabels[0]))).toBeLessThanOrEqual(8000);
});

it('the words by which a label is taken apart weigh at most 3 kB gzipped', () => {
  expect(weight(filesOf((file) => file === ofLabels[1]))).toBeLessThanOrEqual(3000);
});
