// How the time of every parser and finder grows with what it is given, doubling after doubling. Time of the
// processor, so that a busy machine changes little. Above the bound the bench fails: such a page could hold us up.
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { atOnce } from '../../src/core/at-once.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { createFinder } from '../../src/find/finder.ts';
import { findingLists } from '../../src/find/lists-in.ts';
import { looseText } from '../../src/find/page-text.ts';
import { factsOf } from '../../src/find/product-facts.ts';
import { readFile } from '../../src/store/files/read-file.ts';
import { noClues } from '../find/no-clues.ts';

const steepest = 1.2;
const least = 8; // ms: below it noise is all there is to see
const longest = 1500; // ms: a doubling that takes longer is the last

const lookup = createLookup(entries, patterns, limits);
const finder = createFinder(entries, lookup, findingFacts);
const label = 'Aqua, Cetearyl Alcohol, Glycerin, Hydrolyzed Wheat Protein, Panthenol, Parfum';
const many = (n: number, made: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => made(i)).join('');

/** Texts of about `n` letters that make work hard: none of them is a label. */
const shapes: Record<string, (n: number) => string> = {
  'one long list': (n) => `Ingredients: ${many(n / 20, (i) => `Sodium Laurate ${i}, `)}`,
  'the same list': (n) => `Ingredients: ${many(n / 80, () => `${label}, `)}`,
  'many lists': (n) => many(n / 100, (i) => `Ingredients\n${label} ${i}\n\n\n`),
  spaces: (n) => `Ingredients: Aqua, Glycerin${' '.repeat(n)}Parfum`,
  brackets: (n) => `Ingredients: Aqua ${'('.repeat(n)}`,
  tags: (n) => `Ingredients: Aqua ${'<'.repeat(n)}`,
  'half a tag': (n) => `Ingredients: Aqua ${'<a '.repeat(n / 3)}`,
  commas: (n) => `Ingredients: Aqua${','.repeat(n)}`,
  dots: (n) => `Ingredients: Aqua${'. '.repeat(n / 2)}`,
  digits: (n) => `Ingredients: Aqua, ${'1'.repeat(n)}%`,
  'one long name': (n) => `Ingredients: Aqua, ${'hydrolyzed wheat '.repeat(n / 17)}`,
  'one long word': (n) => `Ingredients: Aqua, ${'x'.repeat(n)}`,
  lines: (n) => `Ingredients\n${many(n / 10, () => 'Glycerin\n')}`,
  headings: (n) => 'Ingredients: '.repeat(n / 13),
  prose: (n) => 'a word of plain text about glycerin and sodium here. '.repeat(n / 52),
};
const nested = (n: number) => `${'{"@graph":['.repeat(n / 13)}${']}'.repeat(n / 13)}`;
const clues = (data: string) =>
  noClues({ base: 'https://shop.example/', heading: 'Goods', title: 'Goods', data: [data] });

type Case = [name: string, run: (text: string) => unknown, shapes: Record<string, (n: number) => string>];
const cases: Case[] = [
  ['finding lists', (text) => atOnce(findingLists([looseText(text)], undefined, finder)), shapes],
  ['reading a label', (text) => readLabel(text, lookup, {}), shapes],
  ['looking up a name', (text) => createLookup([], patterns, limits).find(text.slice(13)), shapes],
  [
    'data of a page',
    (text) => [factsOf(clues(text)), atOnce(findingLists([], clues(text), finder))],
    {
      nested,
      'nested in text': (n) => JSON.stringify({ '@type': 'Product', name: nested(n) }),
      'one product': (n) =>
        JSON.stringify({ '@type': 'Product', name: 'Goods', description: shapes['one long list']!(n) }),
      'many products': (n) =>
        JSON.stringify(
          Array.from({ length: n / 60 }, (_, i) => ({ '@type': 'Product', name: `Goods ${i}` })),
        ),
      'half of it': (n) => `{"@type":"Product","name":"${'\\u0041'.repeat(n / 6)}`,
    },
  ],
  [
    'a file',
    (text) => readFile(text),
    {
      'open brackets': (n) => '['.repeat(n),
      'wrong products': (n) => `{"products":[${many(n / 9, () => '{"id":1},')}{}]}`,
      letters: (n) => 'x'.repeat(n),
    },
  ],
];

const spent = (task: () => unknown): number => {
  const before = process.cpuUsage();
  task();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
};

/** The exponent of growth over the last doublings that can be told from noise; 0 where all are too fast. */
function growth(
  run: (text: string) => unknown,
  shape: (n: number) => string,
): { slope: number; ms: number; at: number } {
  let [slope, ms, at] = [0, 0, 0];
  const times: number[] = [];
  for (let n = 10_000; n <= 1_280_000; n *= 2) {
    const text = shape(n);
    const time = Math.min(...[1, 2, 3].map(() => spent(() => run(text))));
    times.push(time);
    [ms, at] = [time, n];
    const [before] = times.slice(-4);
    // Over three doublings: one alone is at the mercy of the collector.
    if (times.length > 3 && before! > least) slope = Math.log2(time / before!) / 3;
    if (time > longest) break;
  }
  return { slope, ms, at };
}

export async function lines(): Promise<string[]> {
  return cases.flatMap(([name, run, of]) =>
    Object.entries(of).map(([shape, make]) => {
      const { slope, ms, at } = growth(run, make);
      const steep = slope > steepest;
      if (steep) process.exitCode = 1;
      return `${name}, ${shape}: exponent ${slope.toFixed(2)}, ${ms.toFixed(0)} ms at ${at} letters${steep ? ` FAIL above ${steepest}` : ''}`;
    }),
  );
}
