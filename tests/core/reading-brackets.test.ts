import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

const lookup = createLookup(entries, patterns, limits);
const names = (text: string) =>
  readLabel(text, lookup).mentions.map(({ found, raw }) => (found.how === 'none' ? `?${raw}` : found.name));

it('brackets that say a name again are no mentions', () => {
  expect(names('Aqua (Water, Eau), Glycerin')).toEqual(['Aqua', 'Glycerin']);
});

it('brackets that list what a name holds are mentions of their own', () => {
  expect(names('Aqua, Parfum (Linalool, Limonene), Glycerin')).toEqual([
    'Aqua',
    'Parfum',
    'Linalool',
    'Limonene',
    'Glycerin',
  ]);
});

it('what stands in brackets is at most what it stands in, and moves no place after it', () => {
  const { mentions } = readLabel('Aqua, Glycerin, Parfum (Linalool, Limonene), Cetyl Alcohol', lookup);
  const [, , parfum, linalool, limonene, cetyl] = mentions;
  expect(linalool!.share.max).toBeLessThanOrEqual(parfum!.share.max);
  expect(limonene!.share.max).toBeLessThanOrEqual(parfum!.share.max);
  // Fourth of four names: a quarter at most, brackets aside.
  expect(cetyl!.share.max).toBeLessThanOrEqual(25 + 1e-9);
  expect(cetyl!.share.max).toBeGreaterThan(1);
});

it('a kit is two lists: amounts of one say nothing of the other', () => {
  const { mentions } = readLabel(
    'Shampoo: Aqua, Sodium Coco-Sulfate, Glycerin, Parfum. Mask: Aqua, Cetyl Alcohol, Hydrolyzed Silk, Parfum',
    lookup,
  );
  expect(mentions).toHaveLength(8);
  expect(mentions[4]!.share.max).toBe(100);
});

it('a plant by the part that its brackets, or what stands around them, name', () => {
  expect(
    names(
      'Aqua, Cocos Nucifera (Coconut Oil), Argan Kernel Extract (Argania spinosa), Aloe Vera (Aloe barbadensis) Leaf Water, Olea europaea L. Fruit Oil',
    ),
  ).toEqual([
    'Aqua',
    'Cocos Nucifera Oil',
    'Argania Spinosa Kernel Extract',
    'Aloe Barbadensis Leaf Water',
    'Olea Europaea Fruit Oil',
  ]);
});
