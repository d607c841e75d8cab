import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { english, translator, type Word } from '../../src/ui/words/index.ts';
import { bestLanguage, languages, wordsFor } from '../../src/ui/words/languages.ts';
import { pseudo } from '../../src/ui/words/pseudo.ts';

const root = resolve(import.meta.dirname, '../..');
const filesIn = (dir: string, kind: RegExp) =>
  readdirSync(join(root, dir), { recursive: true, encoding: 'utf8' })
    .filter((file) => kind.test(file) && !file.includes('words/'))
    .map((file) => join(dir, file));
const code = [...filesIn('src', /\.tsx?$/), ...filesIn('entrypoints', /\.tsx?$/)];
const data = filesIn('dictionary', /\.json$/);

const areas = readdirSync(join(root, 'src/ui/words/en')).map((file) => file.replace('.json', ''));
const area = `(?:${areas.join('|')})`;
/** Keys written out, and keys put together: their pieces in between stand for one word of a key. */
const written = new RegExp(`['"\`]@?(${area}\\.[\\w.-]+)['"\`]`, 'g');
const puttogether = new RegExp(`\`@?(${area}\\.[^\`]*\\$\\{[^\`]*)\``, 'g');

const exact = new Map<string, string>();
const dynamic = new Map<string, { file: string; test: RegExp }>();
for (const file of code) {
  const text = readFileSync(join(root, file), 'utf8').replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
  for (const [, key] of text.matchAll(written))
    if (key!.endsWith('.')) dynamic.set(key!, { file, test: new RegExp(`^${key!.replaceAll('.', '\\.')}`) });
    else if (!key!.endsWith('.html')) exact.set(key!, file);
  for (const [, key] of text.matchAll(puttogether)) {
    const pattern = key!
      .split(/\$\{(?:[^{}]|\{[^{}]*\})*\}/)
      .map((piece) => piece.replace(/[.*+?^$()|[\]\\]/g, '\\$&'))
      .join('[\\w-]+');
    dynamic.set(key!, { file, test: new RegExp(`^${pattern}$`) });
  }
}
for (const file of data)
  for (const [, key] of readFileSync(join(root, file), 'utf8').matchAll(written)) exact.set(key!, file);

describe('the catalogue', () => {
  const keys = Object.keys(english);
  it('has every word that is asked for', () => {
    const missing = [
      ...[...exact].filter(([key]) => !(key in english)).map(([key, file]) => `${key} (${file})`),
      ...[...dynamic]
        .filter(([, { test }]) => !keys.some((key) => test.test(key)))
        .map(([key, { file }]) => `${key} (${file})`),
    ];
    expect(missing).toEqual([]);
  });
  it('has no word that nobody asks for', () => {
    const used = (key: string) => exact.has(key) || [...dynamic.values()].some(({ test }) => test.test(key));
    expect(keys.filter((key) => !used(key))).toEqual([]);
  });
  it('keeps each word in the file of its area', () => {
    for (const name of areas) {
      const words = JSON.parse(readFileSync(join(root, `src/ui/words/en/${name}.json`), 'utf8'));
      expect(Object.keys(words).filter((key) => !key.startsWith(`${name}.`))).toEqual([]);
    }
  });
  it('would notice a missing and an unused word', () => {
    expect(exact.size).toBeGreaterThan(200);
    expect(dynamic.size).toBeGreaterThan(40);
  });
});

const forms = (word: Word | undefined) => (typeof word === 'string' ? [word] : Object.values(word ?? {}));
const places = (word: Word | undefined) =>
  [
    ...new Set(forms(word).flatMap((form) => [...form.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!))),
  ].sort();

describe.each(Object.keys(languages).filter((each) => each !== 'en'))('%s', async (language) => {
  const words: Record<string, Word> = JSON.parse(
    readFileSync(join(root, `src/assets/words/${language}.json`), 'utf8'),
  );
  it('has every word and none too many', () => {
    expect(Object.keys(english).filter((key) => !(key in words))).toEqual([]);
    expect(Object.keys(words).filter((key) => !(key in english))).toEqual([]);
  });
  it('puts the same values into each', () => {
    const wrong = Object.keys(english).filter((key) => {
      const [ours, theirs] = [places(words[key]), places(english[key])];
      return ours.join() !== theirs.join();
    });
    expect(wrong).toEqual([]);
  });
  it('has the plural forms its numbers need', () => {
    const needed = ['one', 'other'];
    const wrong = Object.entries(english).filter(([key, word]) => {
      if (typeof word === 'string') return typeof words[key] !== 'string';
      const ours = words[key];
      return typeof ours === 'string' || !ours || needed.some((form) => !(form in ours));
    });
    expect(wrong.map(([key]) => key)).toEqual([]);
  });
  it('is loaded with its numbers', async () => {
    const t = await wordsFor(language, async () => words);
    expect(t.lang).toBe(language);
    expect(t('shell.place.settings')).not.toBe(english['shell.place.settings']);
    expect(t('panel.one-percent')).not.toBe('panel.one-percent');
  });
});

it('a language whose file cannot be read leaves English', async () => {
  const t = await wordsFor('xx', () => Promise.reject(new Error('gone')));
  expect(t('shell.undo')).toBe('Undo');
});

describe('choosing a language', () => {
  it.each([
    [['en-GB'], 'en'],
    [['xx'], 'en'],
    [[undefined, 'EN'], 'en'],
    [[], 'en'],
    [[undefined, 'fr-CA'], 'fr'],
    [['de-AT', 'fr'], 'de'],
    [['pt-PT'], 'pt-BR'],
    [['es', 'en'], 'es'],
  ])('%j is %s', (wanted, got) => expect(bestLanguage(wanted)).toBe(got));
});

describe('saying', () => {
  const t = translator('en', {
    plain: 'Hello {who}',
    n: { one: '{n} name', other: '{n} names' },
    share: '{n} %',
    refers: 'a {what}',
  });
  it('puts in values, plurals, whole and rounded numbers, and other words', () => {
    expect(t('plain', { who: 'Wren' })).toBe('Hello Wren');
    expect(t('n', { n: 1 })).toBe('1 name');
    expect(t('n', { n: 0 })).toBe('0 names');
    expect(t('n', { n: 1234 })).toBe('1,234 names');
    expect(t('share', { n: 33.3333 })).toBe('33.3 %');
    expect(t('refers', { what: '@routine.kind.gel' })).toBe('a gel');
    expect(t('refers', { what: '@nobody' })).toBe('a @nobody');
    expect(t('plain', { who: '2026-11-25' })).toBe('Hello November 25');
  });
  it('shows an unknown key as itself and takes what it lacks from English', () => {
    expect(t('no.such')).toBe('no.such');
    expect(t('shell.undo')).toBe('Undo');
    expect(t('plain')).toBe('Hello {who}');
  });
  it('never takes words from the page for patterns', () => {
    expect(t('plain', { who: '$& {who}' })).toBe('Hello $& {who}');
  });
});

it('the stand-in language is longer, accented, and keeps the values', () => {
  const t = translator('en-XA', pseudo(english));
  const said = t('panel.read-as.done', { printed: 'A', name: 'B' });
  expect(said).toMatch(/^\[A .* B\.·+\]$/);
  expect(said.length).toBeGreaterThan(
    translator('en')('panel.read-as.done', { printed: 'A', name: 'B' }).length * 1.3,
  );
});
