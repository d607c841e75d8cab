// Whole labels with two kinds of damage or dress each, drawn from the dictionary. `npm run coverage` prints the same for
// names as often as labels print them, also in wordings kept aside.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { copiedLabels } from './copied-labels.ts';
import { dressedLabels } from './dressed-labels.ts';
import { farKinds, farLabels } from './far-labels.ts';
import { readWhole, scoredLabel } from './score-dressed.ts';
import { wornLabels } from './worn-labels.ts';

const lookup = createLookup(entries, patterns, limits);
const names = entries
  .filter(({ name }) => /^[\x20-\x7e]{3,60}$/.test(name))
  .map(({ name }) => ({ name: name.toUpperCase(), weight: 1 }));

it.each(['looked at', 'kept aside'] as const)('in wordings %s: nothing is mended wrongly', (half) => {
  const rows = dressedLabels(names, 300, 181, half).map((label) => scoredLabel(label, lookup));
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
  expect(rows.flatMap(({ wrong }) => wrong)).toEqual([]);
  expect(sum(({ right }) => right) / sum((row) => row.names.length)).toBeGreaterThan(0.97);
  expect(rows.filter(readWhole).length / rows.length).toBeGreaterThan(0.75);
});

it.each(['first', 'second'] as const)(
  'worn labels of another hand, %s wordings: no more is mended wrongly than was',
  (which) => {
    const rows = wornLabels(names, 300, 303, which).map((label) => scoredLabel(label, lookup));
    const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
    const all = sum((row) => row.names.length);
    expect(sum(({ wrong }) => wrong.length) / all).toBeLessThan(0.002);
    expect(sum(({ right }) => right) / all).toBeGreaterThan(0.97);
    expect(rows.filter(readWhole).length / rows.length).toBeGreaterThan(0.75);
  },
);

it.each(['looked at', 'kept aside'] as const)('labels as shops copy them, %s: most of them whole', (half) => {
  const rows = copiedLabels(names, 300, 505, half).map((label) => scoredLabel(label, lookup));
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
  const all = sum((row) => row.names.length);
  expect(sum(({ wrong }) => wrong.length) / all).toBeLessThan(0.003);
  expect(sum(({ right }) => right) / all).toBeGreaterThan(0.92);
  expect(rows.filter(readWhole).length / rows.length).toBeGreaterThan(half === 'looked at' ? 0.9 : 0.8);
});

it('labels from far away come in kinds that are kept aside, kinds that are not, and halved ones', () => {
  const [seen, kept] = [farKinds('looked at'), farKinds('kept aside')];
  expect(new Set([...seen, ...kept]).size).toBeGreaterThan(90);
  expect(kept.filter((kind) => !seen.includes(kind)).length).toBeGreaterThan(30);
});

it.each([
  ['looked at', 0.75],
  ['kept aside', 0.63],
] as const)('labels from far away, %s: no fewer are whole than were', (half, floor) => {
  const far = names.map((row) => ({ ...row, inci: row.name }));
  const rows = farLabels(far, 200, 606, half).map((label) => scoredLabel(label, lookup));
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
  const all = sum((row) => row.names.length);
  expect(sum(({ wrong }) => wrong.length) / all).toBeLessThan(0.0015);
  expect(sum(({ right }) => right) / all).toBeGreaterThan(0.9);
  expect(rows.filter(readWhole).length / rows.length).toBeGreaterThan(floor);
});
