// Which silicones stay, by one rule (common practice): what a name's entry says and what the rules weigh agree.
import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import { matterOf } from '../../src/core/judge/matter.ts';
import { createLookup } from '../../src/core/names/lookup.ts';

const lookup = createLookup(entries, patterns, limits);
const asked = (name: string) => {
  const found = lookup.find(name);
  const known = lookup.known(found);
  return { roles: known.roles, film: matterOf({ found, ...known }, practice.matter)?.film };
};
const names = [
  ...entries.map(({ name }) => name),
  ...patterns.flatMap(({ examples }) => examples),
  'PEG-14 Dimethicone',
  'Bis-PEG-12 Dimethicone',
  'Dimethicone Copolyol',
  'Hexyl Dimethicone',
  'Silicone Quaternium-26',
  'Behenyl Dimethicone',
];
const silicones = names.filter(
  (name) => /methicon|siloxan|silsesq|siloxysil|silicone/i.test(name) && !/protein|silk|wheat/i.test(name),
);

it('has some of every kind', () => {
  const films = silicones.map((name) => asked(name).film);
  for (const film of ['strong', 'water', undefined]) expect(films).toContain(film);
  expect(silicones.length).toBeGreaterThan(100);
});

it.each(silicones)('%s: entry and weight agree on its film', (name) => {
  const { roles, film } = asked(name);
  expect(film).toBe(
    roles.includes('water-liftable-film') ? 'water' : roles.includes('film-former') ? 'strong' : undefined,
  );
});

it.each(silicones.filter((name) => /^(?:bis-)?(?:peg|ppg|polyglyceryl)\b|copolyol|peg-\d+$/i.test(name)))(
  '%s is made to go with water',
  (name) => expect(asked(name).roles).toContain('water-liftable-film'),
);

it.each([
  'Guar Hydroxypropyltrimonium Chloride',
  'Hydroxypropyl Guar Hydroxypropyltrimonium Chloride',
  'Cassia Hydroxypropyltrimonium Chloride',
  'Polyquaternium-10',
])('%s is a film that a mild wash lifts', (name) => {
  expect(asked(name).roles).toEqual(expect.arrayContaining(['film-former', 'cationic-conditioner']));
  expect(asked(name).film).toBe('mild');
});

it.each(['Cocodimonium Hydroxypropyl Silk Amino Acids', 'Hydroxypropyltrimonium Corn/Wheat/Soy Amino Acids'])(
  '%s holds on to the surface: it is no free amino acid',
  (name) =>
    expect(lookup.known(lookup.find(name)).protein).toMatchObject({ kind: 'quaternized', size: 'unknown' }),
);

it('what the reader says of a name is asked anew each time', () => {
  const kinds = ['emollient', 'humectant', 'occlusive', 'protein', 'neither'] as const;
  const asked = (as: (typeof kinds)[number], matter: typeof practice.matter) => {
    const found = { how: 'told' as const, name: 'Saltgrass Complex', as };
    return matterOf({ found, ...lookup.known(found) }, matter)?.id;
  };
  // Asked of a copy, nothing is known from before.
  const alone = kinds.map((as) => asked(as, structuredClone(practice.matter)));
  expect(new Set(alone).size).toBeGreaterThan(1);
  expect(kinds.map((as) => asked(as, practice.matter))).toEqual(alone);
});
