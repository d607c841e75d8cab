// How the time of every parser and finder grows with what it is given, doubling after doubling, up to the most it
// takes. Time of the processor, so that a busy machine changes little. Above the bound the bench fails: such a page
// could hold us up.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import { atOnce } from '../../src/core/at-once.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { createFinder } from '../../src/find/finder.ts';
import { findingLists } from '../../src/find/lists-in.ts';
import { factsOf } from '../../src/find/product/product-facts.ts';
import { looseText } from '../../src/find/text/page-text.ts';
import { readFile } from '../../src/store/files/read-file.ts';
import { noClues } from '../find/no-clues.ts';

const steepest = 1.2;
const enough = 8; // ms: what is done sooner is done again until it took so long
const longest = 1500; // ms: a doubling that takes longer is the last
const doublings = 6;
const fitted = 5; // sizes, the largest
const mostOfPage = 1_280_000; // letters
const longestName = 700; // letters: of more than 800 none is looked up
const shortest = 20; // letters

setFlagsFromString('--expose-gc');
/** Takes out the garbage of what ran before: whoever is timed next would else pay for it. */
const tidy = runInNewContext('gc') as () => void;

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

/** Texts of which a lookup has met none: it remembers what it met. */
let turn = 0;
const fresh = (text: string) => `${text} x${turn++}`;
const patternsAlone = createLookup([], patterns, limits);

type Case = [
  name: string,
  run: (text: string) => unknown,
  shapes: Record<string, (n: number) => string>,
  most?: number,
];
const cases: Case[] = [
  ['finding lists', (text) => atOnce(findingLists([looseText(text)], undefined, finder)), shapes],
  [
    'reading a label',
    (text) => readLabel(fresh(text), lookup, {}),
    shapes,
    0.9 * limits.thresholds.longestText,
  ],
  ['looking up a name', (text) => patternsAlone.find(fresh(text.slice(13))), shapes, longestName],
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
      'wrong products': (n) =>
        `{"strandline":"everything","version":2,"products":[${many(n / 9, () => '{"id":1},')}{}]}`,
      letters: (n) => 'x'.repeat(n),
    },
  ],
];

/** Least time of the processor that a run takes, in ms. */
function spent(run: () => unknown): number {
  const once = () => {
    tidy();
    const before = process.cpuUsage();
    for (let times = 1; ; times++) {
      run();
      const { user, system } = process.cpuUsage(before);
      const ms = (user + system) / 1000;
      if (ms > enough) return ms / times;
    }
  };
  return Math.min(once(), once(), once());
}

/** The exponent of growth over the largest sizes: the slope of the straight line through them, both axes logarithmic. */
function exponent(sizes: readonly number[], times: readonly number[]): number {
  const [xs, ys] = [sizes, times].map((values) => values.slice(-fitted).map(Math.log2)) as [
    number[],
    number[],
  ];
  const mean = (values: number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;
  const [x, y] = [mean(xs), mean(ys)];
  const above = xs.reduce((sum, each, i) => sum + (each - x) * (ys[i]! - y), 0);
  return above / xs.reduce((sum, each) => sum + (each - x) ** 2, 0);
}

/** How one thing grows with texts of one shape, and what the largest took. */
function growth(
  run: (text: string) => unknown,
  shape: (n: number) => string,
  most: number,
): { slope: number; ms: number; at: number } {
  const sizes: number[] = [];
  const times: number[] = [];
  for (let doubling = doublings; doubling >= 0 && (times.at(-1) ?? 0) < longest; doubling--) {
    const text = shape(most / 2 ** doubling);
    if (text.length < shortest) continue;
    sizes.push(text.length);
    times.push(spent(() => run(text)));
  }
  return { slope: exponent(sizes, times), ms: times.at(-1)!, at: sizes.at(-1)! };
}

export async function lines(): Promise<string[]> {
  return cases.flatMap(([name, run, of, most = mostOfPage]) =>
    Object.entries(of).map(([shape, make]) => {
      const { slope, ms, at } = growth(run, make, most);
      const steep = slope > steepest;
      if (steep) process.exitCode = 1;
      return `${name}, ${shape}: exponent ${slope.toFixed(2)}, ${ms.toFixed(ms < 10 ? 2 : 0)} ms at ${at} letters${steep ? ` FAIL above ${steepest}` : ''}`;
    }),
  );
}
