import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { english, faults, translator, type Values } from '../../src/ui/words/index.ts';
import { bestLanguage, languages, wordsFor } from '../../src/ui/words/languages.ts';
import { message } from '../../src/ui/words/message.ts';
import { pseudo } from '../../src/ui/words/pseudo.ts';
import terms from '../../src/ui/words/terms.json' with { type: 'json' };
import { wordArguments, writtenArguments } from '../run/word-arguments.ts';

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
    else if (!/\.(?:html|(?<=shelf\.)js|(?<=shelf\.)csv)$/.test(key!)) exact.set(key!, file);
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

/** Arguments with what the message does with them, and the values it chooses by. */
const shape = (lang: string, word: string) => {
  const { takes, choices } = message(word, lang);
  return [...takes].map(([name, take]) => `${name} ${take} ${[...(choices.get(name) ?? [])].sort()}`).sort();
};

describe.each(Object.keys(languages).filter((each) => each !== 'en'))('%s', async (language) => {
  const words: Record<string, string> = JSON.parse(
    readFileSync(join(root, `src/assets/words/${language}.json`), 'utf8'),
  );
  it('has every word and none too many', () => {
    expect(Object.keys(english).filter((key) => !(key in words))).toEqual([]);
    expect(Object.keys(words).filter((key) => !(key in english))).toEqual([]);
  });
  it('takes the same arguments in each message, and chooses by the same values', () => {
    const wrong = Object.entries(english).flatMap(([key, word]) => {
      const [ours, theirs] = [shape(language, words[key]!), shape('en', word as string)];
      return ours.join() === theirs.join() ? [] : [`${key}: ${ours.join(' | ')} for ${theirs.join(' | ')}`];
    });
    expect(wrong).toEqual([]);
  });
  it('is loaded with its numbers', async () => {
    const t = await wordsFor(language, async () => words);
    expect(t.lang).toBe(language);
    expect(t('shell.place.settings')).not.toBe(english['shell.place.settings']);
    expect(t('panel.one-percent')).not.toBe('panel.one-percent');
  });
});

describe.each(['en', ...Object.keys(languages).filter((each) => each !== 'en')] as (keyof typeof terms)[])(
  'the trade’s words in %s',
  (language) => {
    const {
      terms: trade,
      never,
      care,
    } = terms[language] as { terms: Record<string, string>; never: string[]; care: string };
    const words: Record<string, string> =
      language === 'en'
        ? (english as Record<string, string>)
        : JSON.parse(readFileSync(join(root, `src/assets/words/${language}.json`), 'utf8'));
    it('stand where English has them', () => {
      const wrong = Object.entries(trade).flatMap(([term, stem]) => {
        const [ours, theirs] = [new RegExp(`\\b${term}\\b`, 'i'), new RegExp(stem, 'i')];
        return Object.keys(english).filter(
          (key) => ours.test(english[key] as string) && !theirs.test(words[key]!),
        );
      });
      expect(wrong).toEqual([]);
    });
    it('say an answer with care, and no other, as one with care', () => {
      const t = translator(language, words);
      const chosen = Object.keys(english).filter((key) => words[key]!.includes('{answer, select,'));
      expect(chosen.length).toBeGreaterThan(8);
      const values = { who: 'Wren', names: 'A', n: 2 };
      const wrong = chosen.flatMap((key) =>
        ['suits', 'with-care', 'does-not-suit', 'cannot-tell'].flatMap((answer) => {
          const said = (t as unknown as (key: string, values: Values) => string)(key, { ...values, answer });
          return said.includes(care) === (answer === 'with-care') ? [] : `${key}, ${answer}: ${said}`;
        }),
      );
      expect(wrong).toEqual([]);
      expect(words['shell.answer.with-care']).toContain(care);
    });
    it('are no coinages, and mistake no person for a part of one', () => {
      const said = Object.entries(words).filter(([, word]) =>
        never.some((bad) => new RegExp(bad).test(word)),
      );
      expect(said).toEqual([]);
    });
  },
);

describe('spaces and quotes as each language prints them', () => {
  // By the typographic rules of each language, common practice: no line may begin with these marks.
  const breaks = {
    de: / …|[\d}] %|[“”]\p{L}|["«»]/u,
    es: /[\d}] %|["“”„]/u,
    fr: / [:;?!»%]|« |[^\u00a0\u202f][;?!»]|["“”„]/u,
    'pt-BR': /[\d}]\s%|["„«»]/u,
  };
  it.each(Object.entries(breaks))('%s', (language, wrong) => {
    const words = JSON.parse(readFileSync(join(root, `src/assets/words/${language}.json`), 'utf8'));
    const broken = Object.entries(words as Record<string, string>).filter(([, word]) => wrong.test(word));
    expect(broken).toEqual([]);
  });
});

it.each(['en', ...Object.keys(languages).filter((each) => each !== 'en')])(
  'in %s the name of a button for screen readers has the words printed on it (WCAG 2.2, 2.5.3)',
  (language) => {
    const words: Record<string, string> =
      language === 'en'
        ? (english as Record<string, string>)
        : JSON.parse(readFileSync(join(root, `src/assets/words/${language}.json`), 'utf8'));
    const plain = (word: string) =>
      word
        .toLowerCase()
        .replace(/[…\s]+/g, ' ')
        .trim();
    // `x.what` names the button that prints `x`; those in `apart` are no buttons, or print another message.
    const apart =
      /^(keeping\.export|log\.(change|tally)|panel\.read-as|products\.empty|settings\.|welcome\.)/;
    const pairs = Object.keys(english).flatMap((key) => {
      const printed = /^(.*)[.-]what$/.exec(key)?.[1];
      return printed && printed in english && (!apart.test(key) || /drop/.test(key)) ? [[printed, key]] : [];
    });
    pairs.push(['log.change.do', 'log.change.what']);
    expect(pairs.length).toBeGreaterThan(12);
    const lacking = pairs.filter(
      ([printed, named]) => !plain(words[named!]!).includes(plain(words[printed!]!)),
    );
    expect(lacking).toEqual([]);
  },
);

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

describe('the compiler', () => {
  it('refuses an unknown key, an argument that a message does not take, and one left out', () => {
    const t = translator('en');
    const part = 'gel' as 'gel' | 'foam';
    const asked = () => [
      t('shell.undo'),
      t(`routine.kind.${part}`),
      t('hair.nth-head', { n: 2 }),
      t(part === 'gel' ? 'hair.nth-head' : 'routine.nth', { n: 2 }),
      // @ts-expect-error
      t('shell.no-such'),
      // @ts-expect-error
      t(`shell.place.${part}`),
      // @ts-expect-error
      t('shell.undo', { n: 2 }),
      // @ts-expect-error
      t('hair.nth-head', { n: 2, who: 'Wren' }),
      // @ts-expect-error
      t('products.found', { n: 'two' }),
      // @ts-expect-error
      t('hair.nth-head'),
    ];
    expect(asked).toThrow('no message shell.no-such');
  });
  it('knows the arguments as the messages have them', () => {
    expect(writtenArguments(), 'run `npm run fix`').toBe(wordArguments());
  });
});

describe('saying', () => {
  const t = translator('en', {
    plain: 'Hello {who}',
    n: '{n, plural, one {# name} other {# names}}',
    nth: '{n, selectordinal, one {#st} two {#nd} few {#rd} other {#th}}',
    share: '{n} %',
    chosen: '{kind, select, leave_in {a leave-in} other {another}}',
    day: 'on {day, date, day}',
  });
  const say = (key: string, values?: Values) => t(key, values);
  it('puts in values, plurals, ordinals, choices, lists, days, whole and rounded numbers', () => {
    expect(say('plain', { who: 'Wren' })).toBe('Hello Wren');
    expect(say('plain', { who: ['Wren', 'Ash', 'Lark'] })).toBe('Hello Wren, Ash, and Lark');
    expect(say('plain', { who: '2026-11-25' })).toBe('Hello 2026-11-25');
    expect(say('n', { n: 1 })).toBe('1 name');
    expect(say('n', { n: 0 })).toBe('0 names');
    expect(say('n', { n: 1234 })).toBe('1,234 names');
    expect(say('nth', { n: 22 })).toBe('22nd');
    expect(say('share', { n: 33.3333 })).toBe('33.3 %');
    expect(say('chosen', { kind: 'leave-in' })).toBe('a leave-in');
    expect(say('chosen', { kind: 'gel' })).toBe('another');
    expect(say('day', { day: '2026-11-25' })).toBe('on November 25');
  });
  it('takes what it lacks from English', () => expect(say('shell.undo')).toBe('Undo'));
  it('never takes words from the page for patterns', () => {
    expect(say('plain', { who: "$& {who} '{" })).toBe("Hello $& {who} '{");
  });
  it('reports a message there is none of and an argument it lacks', () => {
    expect(() => say('no.such')).toThrow('no message no.such');
    expect(() => say('plain')).toThrow('plain lacks who');
  });
  it('shows the rest of a message in use all the same', () => {
    const report = faults.report!;
    delete faults.report;
    expect([say('no.such'), say('plain')]).toEqual(['no.such', 'Hello ']);
    faults.report = report;
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
