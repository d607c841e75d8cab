// How many mentions on labels are found, by set. Called by `npm run coverage`; also runs by itself.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { copiedLabels } from '../core/copied-labels.ts';
import { damagedNames, damages } from '../core/damaged-names.ts';
import { type Dressed, dressedLabels } from '../core/dressed-labels.ts';
import { type FarName, farKinds, farLabels } from '../core/far-labels.ts';
import { scored } from '../core/score-damaged.ts';
import { readWhole, scoredLabel } from '../core/score-dressed.ts';
import { wornLabels } from '../core/worn-labels.ts';
import { root } from './steps.ts';

const shared = process.env.STRANDLINE_SHARED ?? join(root, '..', 'shared');
const counts = [
  join(shared, 'data', 'label-names.tsv'),
  join(root, '..', '..', 'shared', 'data', 'label-names.tsv'),
];
const ownLines = join(root, 'tests', 'dictionary', 'label-lines.txt');

type Row = { name: string; weight: number };
type Coverage = { found: number; of: number; how: Record<string, number>; unread: Row[] };

const lookup = createLookup(entries, patterns, limits);

/** Weighted share of names that are read whole: every mention in the printed name is found. */
function coverageOf(rows: Row[]): Coverage {
  const sum: Coverage = { found: 0, of: 0, how: {}, unread: [] };
  for (const { name, weight } of rows) {
    const { mentions } = readLabel(name, lookup);
    sum.of += weight;
    const read = mentions.length > 0 && mentions.every(({ found }) => found.how !== 'none');
    const how = read ? mentions[0]!.found.how : mentions.length === 0 ? 'no name' : 'none';
    sum.how[how] = (sum.how[how] ?? 0) + weight;
    if (read) sum.found += weight;
    else sum.unread.push({ name, weight });
  }
  return sum;
}

function print(set: string, { found, of, how, unread }: Coverage) {
  const percent = (part: number) => `${((100 * part) / of).toFixed(2)} %`;
  const kinds = ['exact', 'alias', 'pattern', 'mended', 'no name', 'none'].map(
    (kind) => `${kind} ${percent(how[kind] ?? 0)}`,
  );
  console.log(`${set}: ${percent(found)} of ${of} mentions found (${kinds.join(', ')})`);
  if (process.argv.includes('--unread'))
    for (const { name, weight } of unread.sort((a, b) => b.weight - a.weight).slice(0, 400))
      console.log(`${String(weight).padStart(6)} × ${name}`);
}

/** Prints coverage of the counted label names where they are present, else of the project's own label lines. */
export function printNameCoverage(): void {
  const file = counts.find(existsSync);
  if (file) {
    const rows = readFileSync(file, 'utf8')
      .split('\n')
      .slice(1)
      .filter(Boolean)
      .map((line) => line.split('\t'))
      .map(([hair, all, name]) => ({ hair: Number(hair), all: Number(all), name: name! }));
    const set = (of: 'hair' | 'all') =>
      rows.filter((row) => row[of] > 0).map((row) => ({ name: row.name, weight: row[of] }));
    print('names on hair-care labels', coverageOf(set('hair')));
    print('names on all cosmetics labels', coverageOf(set('all')));
    const apart = set('all').filter(({ name }) => isApart(name));
    print('  of these a third never looked at while names were added', coverageOf(apart));
  } else {
    console.log(
      'Coverage of counted label names: skipped, label-names.tsv is not here (STRANDLINE_SHARED names its folder).',
    );
  }
  const lines = readFileSync(ownLines, 'utf8')
    .split('\n')
    .filter((line) => line && !line.startsWith('#'));
  const names = lines.flatMap((line) => readLabel(line, lookup).mentions.map(({ raw }) => raw));
  print('names on the project’s own label lines', coverageOf(names.map((name) => ({ name, weight: 1 }))));
}

/** A third by the letters of the name (FNV-1a), so that it is the same third for everyone. */
function isApart(name: string): boolean {
  let hash = 2166136261;
  for (const letter of name) hash = Math.imul(hash ^ letter.codePointAt(0)!, 16777619) >>> 0;
  return hash % 3 === 0;
}

/** The names of the inventory that lies beside the counts. */
const inventoryBeside = (file: string) =>
  new Set(
    readFileSync(join(dirname(file), 'inci-inventory.tsv'), 'utf8')
      .split('\n')
      .map((line) => line.split('\t')[0]!),
  );

/** Prints how damaged names are read: drawn from the dictionary, and from names as labels print them. */
export function printMending(): void {
  const sets: [string, string[]][] = [['the dictionary', entries.map(({ name }) => name)]];
  const file = counts.find(existsSync);
  if (file) {
    // A printed name may be a misprint, or two: its row would have no true name.
    const inventory = inventoryBeside(file);
    const isTrue = (name: string) =>
      !/\(and\)/i.test(name) &&
      (inventory.has(name.replace(/\s*\([^()]*\)/g, '')) || /exact|alias/.test(lookup.named(name).how));
    sets.push([
      'names as labels print them',
      readFileSync(file, 'utf8')
        .split('\n')
        .slice(1)
        .flatMap((line) => line.split('\t')[2] ?? [])
        .filter((name) => lookup.find(name).how !== 'none' && isTrue(name)),
    ]);
  }
  for (const [from, names] of sets) {
    const rows = scored(damagedNames(names, 6000, 7), lookup);
    const count = (verdict: string) => rows.filter((row) => row.verdict === verdict).length;
    const mended = rows.filter((row) => row.mended);
    const wrong = count('wrong');
    console.log(
      `damaged names drawn from ${from}: ${count('right')} of ${rows.length} right, ${count('left')} left unknown, ` +
        `${count('silent')} under another name without mending; ${wrong} of ${mended.length} mended ones wrong, ` +
        `${rows.filter(({ protein }) => protein).length} made another kind of protein`,
    );
    if (process.argv.includes('--unread'))
      for (const kind of damages) {
        const own = rows.filter((row) => row.kind === kind);
        const right = own.filter(({ verdict }) => verdict === 'right').length;
        console.log(`  ${kind}: ${right} of ${own.length}`);
      }
  }
}

/** Prints how whole labels in two kinds of damage each are read; half of the wordings were never looked at. */
export function printDressed(): void {
  const file = counts.find(existsSync);
  if (!file) return;
  const inventory = inventoryBeside(file);
  // The root of the counts, so that rare names come up as well.
  const names = readFileSync(file, 'utf8')
    .split('\n')
    .map((line) => line.split('\t'))
    .filter(([, , name]) => inventory.has(name!))
    .map(([, all, name]) => ({ name: name!, weight: Math.sqrt(Number(all)) }));
  for (const [wording, seed] of [
    ['first', 101],
    ['second', 202],
  ] as const)
    printWhole('worn labels of another hand', wording, wornLabels(names, 1000, seed, wording));
  for (const [half, seed] of [
    ['looked at', 301],
    ['kept aside', 302],
  ] as const)
    printWhole('labels as shops copy them', half, copiedLabels(names, 1000, seed, half));
  for (const [half, seed, count] of [
    ['looked at', 18, 60],
    ['kept aside', 19, 60],
    ['kept aside', 20, 1000],
  ] as const)
    printWhole('labels in two kinds of damage each', half, dressedLabels(names, count, seed, half));
}

/** Counted names as printed whose name is in the inventory, and of all others there one in sixty-five names drawn. */
export function farNames(file: string): FarName[] {
  const inventory = inventoryBeside(file);
  const bare = (name: string) => name.replace(/\s*\([^()]*\)/g, '').trim();
  const counted = readFileSync(file, 'utf8')
    .split('\n')
    .map((line) => line.split('\t'))
    .filter(([, , name]) => name && inventory.has(bare(name)))
    .map(([, all, name]) => ({ name: name!, inci: bare(name!), weight: Math.sqrt(Number(all)) }));
  const there = new Set(counted.map(({ inci }) => inci));
  const rare = [...inventory].filter((name) => /^[A-Z0-9][A-Z0-9 ,/()'.-]+$/.test(name) && !there.has(name));
  const weight = counted.reduce((sum, row) => sum + row.weight, 0) / 64 / rare.length;
  return [...counted, ...rare.map((name) => ({ name, inci: name, weight }))];
}

/** Prints how whole labels from far away are read; of those kept aside only how many of each kind are not whole. */
export function printFar(): void {
  const file = counts.find(existsSync);
  if (!file) return;
  const names = farNames(file);
  for (const [half, seed] of [
    ['looked at', 401],
    ['kept aside', 402],
  ] as const) {
    const labels = farLabels(names, 1000, seed, half);
    printWhole(`labels from far away of ${farKinds(half).length} kinds`, half, labels);
    if (!process.argv.includes('--kinds')) continue;
    const whole = labels.map((label) => readWhole(scoredLabel(label, lookup)));
    for (const kind of farKinds(half)) {
      const own = whole.filter((_, i) => labels[i]!.kinds.includes(kind));
      console.log(`  ${own.filter(Boolean).length} of ${own.length} whole: ${kind}`);
    }
  }
}

function printWhole(set: string, wordings: string, labels: Pick<Dressed, 'text' | 'names'>[]) {
  const rows = labels.map((label) => scoredLabel(label, lookup));
  const sum = (of: 'names' | 'wrong' | 'silent' | 'unknown') =>
    rows.reduce((all, row) => all + row[of].length, 0);
  const right = rows.reduce((all, row) => all + row.right, 0);
  console.log(
    `${rows.length} ${set}, wordings ${wordings}: ${right} of ${sum('names')} names right, ` +
      `${rows.filter(readWhole).length} labels whole; ${sum('wrong')} mended wrongly, ` +
      `${sum('silent')} read as another without mending, ${sum('unknown')} asked about`,
  );
}

if (import.meta.main) {
  printNameCoverage();
  printDressed();
  printFar();
  printMending();
}
