import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { type Truth, truthOf } from './protein-truth.ts';

// CosIng inventory, European Commission, export of December 2020; kept beside the project, never in it.
const shared = process.env.STRANDLINE_SHARED ?? resolve(import.meta.dirname, '../../../shared');
const inventory = join(shared, 'data/inci-inventory.tsv');
const file = existsSync(inventory) ? inventory : undefined;
const lookup = createLookup(entries, patterns, limits);
const kinds: Truth[] = [
  'amino-acid',
  'peptide',
  'hydrolyzed',
  'quaternized',
  'whole',
  'protein-bearing',
  'protein-surfactant',
  'none',
];

it(
  file ? 'confusion table over the inventory' : 'SKIPPED: no inci-inventory.tsv beside the project',
  ({ skip }) => {
    if (!file) return skip('set STRANDLINE_SHARED to the folder that holds data/inci-inventory.tsv');
    const names = readFileSync(file, 'utf8')
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.split('\t')[0]!);
    const table = new Map(kinds.map((truth) => [truth, new Map(kinds.map((read) => [read, 0]))]));
    const wrong: string[] = [];
    let undecided = 0;
    for (const name of names) {
      const truth = truthOf(name);
      if (truth === undefined) {
        undecided++;
        continue;
      }
      const read: Truth = lookup.known(lookup.find(name)).protein?.kind ?? 'none';
      const row = table.get(truth)!;
      row.set(read, row.get(read)! + 1);
      if (truth !== read) wrong.push(`${name}: ${truth}, read as ${read}`);
    }
    const cell = (text: string | number) => String(text).padStart(19);
    console.log(
      [
        `truth ↓, read →${' '.repeat(4)}${kinds.map(cell).join('')}`,
        ...kinds.map(
          (truth) => truth.padEnd(19) + kinds.map((read) => cell(table.get(truth)!.get(read)!)).join(''),
        ),
        `${names.length - undecided} of ${names.length} names judged, ${wrong.length} read otherwise; ${undecided} are mixtures and extracts judged only where they stand among the hard names`,
        ...wrong.slice(0, Number(process.env.SHOW_WRONG ?? 20)),
      ].join('\n'),
    );
    expect(wrong.length / (names.length - undecided)).toBeLessThan(0.001);
  },
);
