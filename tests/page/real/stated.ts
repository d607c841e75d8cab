// Whole pages that strangers made, saved: those of a Debian source package, python3-recipe-scrapers (MIT), with what
// its own tests state of each. None of them lies here: `node tests/run/coverage-real.ts --fetch` brings them, and
// STRANDLINE_REAL names another folder that holds them.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Half, halfOf } from './halves.ts';

export const folder = process.env.STRANDLINE_REAL ?? resolve(import.meta.dirname, '../../../.output/real');

/** A saved page and what is stated of it. */
export type Saved = { file: string; half: Half; ingredients: string[]; title: string; steps: string[] };

const ending = '.testhtml';

const filesIn = (dir: string, isOne: (name: string) => boolean): string[] =>
  existsSync(dir)
    ? readdirSync(dir, { recursive: true, encoding: 'utf8' })
        .filter(isOne)
        .sort()
        .map((name) => join(dir, name))
    : [];

/** Every saved page, in order; none where the package is not here. */
export function savedPages(dir = folder): Saved[] {
  const stated = new Map(filesIn(dir, (name) => /test_\w+\.py$/.test(name)).flatMap(statedIn));
  return filesIn(dir, (name) => name.endsWith(ending)).map((file) => {
    const name = /(\w+)\.testhtml$/.exec(file)?.[1] ?? '';
    return { file, half: halfOf(name), ...(stated.get(name) ?? { ingredients: [], title: '', steps: [] }) };
  });
}

type Stated = Omit<Saved, 'file' | 'half'>;

/** What the tests of one Python file state, by the name of the page they read. */
function statedIn(file: string): [string, Stated][] {
  const classes = readFileSync(file, 'utf8')
    .split(/^class /m)
    .slice(1);
  return classes.map((code) => {
    const page =
      /test_data\/(\w+)\.testhtml/.exec(code)?.[1] ??
      /test_file_name = "(\w+)"/.exec(code)?.[1] ??
      /scraper_class = (\w+)/.exec(code)?.[1]?.toLowerCase() ??
      '';
    const ingredients = stringsOf(code, 'ingredients');
    const steps = stringsOf(code, 'instructions').flatMap((step) => step.split('\n'));
    return [page, { ingredients, title: stringsOf(code, 'title')[0] ?? '', steps }];
  });
}

/** The strings that a test compares with, literals beside each other as one, as Python has it. */
function stringsOf(code: string, what: string): string[] {
  const body =
    new RegExp(`def test_${what}\\(self\\):\\n([\\s\\S]*?)(?=\\n    def |$)`).exec(code)?.[1] ?? '';
  const found: string[] = [];
  let end = -1;
  for (const { index, 0: whole, 1: double, 2: single } of body.matchAll(literal)) {
    const text = unescaped(double ?? single ?? '');
    if (end >= 0 && body.slice(end, index).trim() === '') found.push((found.pop() ?? '') + text);
    else found.push(text);
    end = index + whole.length;
  }
  return found;
}
const literal = /"((?:[^"\\\n]|\\.)*)"|'((?:[^'\\\n]|\\.)*)'/g;

const letters: Record<string, string> = { n: '\n', t: '\t', r: '\r' };
const unescaped = (text: string): string =>
  text.replace(/\\(?:x([\da-f]{2})|u([\da-f]{4})|(.))/gi, (_, two, four, one) =>
    one === undefined ? String.fromCodePoint(Number.parseInt(two ?? four, 16)) : (letters[one] ?? one),
  );
