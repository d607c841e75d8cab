import { practice } from '../../dictionary/practice.ts';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import type { Entry } from '../../src/core/names/entry.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { createNameSearch } from '../../src/core/names/search-names.ts';
import { readAsOf } from '../../src/core/product/read-as.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { type Change, nothingRemembered, type Remembered } from '../../src/store/remembered.ts';
import { translator } from '../../src/ui/words/index.ts';
import type { Detail, PlaceName, World } from '../../src/ui/world.ts';
import { decide } from '../../src/use/acts/acts.ts';

const protein = (
  kind: 'hydrolyzed' | 'amino-acid' | 'protein-bearing',
  size: 'free' | 'small' | 'large',
) => ({
  protein: { kind, size, sources: ['common-practice'] },
});
const entry = (name: string, rest: Partial<Entry> = {}): Entry => ({
  name,
  sources: ['from-memory'],
  ...rest,
});

/** A dictionary of a handful of names, for views: what each is, is written from memory. */
const entries: Entry[] = [
  entry('Aqua', { aliases: ['Water', 'Eau'], roles: ['water'] }),
  entry('Glycerin', { moisture: ['humectant'] }),
  entry('Cetearyl Alcohol', { moisture: ['emollient'], roles: ['fatty-alcohol'] }),
  entry('Panthenol', { moisture: ['humectant'] }),
  entry('Petrolatum', { moisture: ['occlusive'] }),
  entry('Behentrimonium Methosulfate', { roles: ['cationic-conditioner'] }),
  entry('Hydrolyzed Wheat Protein', { ...protein('hydrolyzed', 'large'), allergens: ['wheat'] }),
  entry('Hydrolyzed Silk', protein('hydrolyzed', 'small')),
  entry('Arginine', protein('amino-acid', 'free')),
  entry('Yogurt Extract', protein('protein-bearing', 'large')),
  entry('Phenoxyethanol', { roles: ['preservative'] }),
  entry('Parfum', { aliases: ['Fragrance'], roles: ['fragrance'] }),
  entry('Linalool', { roles: ['fragrance-allergen'], allergens: ['sensitizer'] }),
];

const lookup = createLookup(entries, [], {
  limits: [{ name: 'Phenoxyethanol', rinseOff: 1, leaveOn: 1, sources: ['from-memory'] }],
  thresholds: {
    freeBelow: 1,
    leadingWithin: 5,
    readAtLeast: 0.6,
    listAtLeast: 0.5,
    colourantsAtMost: 5,
    alphabeticalFrom: 6,
    longestText: 40000,
  },
});

const searchNames = createNameSearch(entries, lookup.close);

export const creamText =
  'Aqua, Cetearyl Alcohol, Glycerin, Behentrimonium Methosulfate, Hydrolyzed Wheat Protein, Hydrolyzed Silk, Phenoxyethanol, Panthenol, Parfum';
export const gelText = 'Aqua, Glycerin, Panthenol, Phenoxyethanol, Glycerine Extra, Parfum';

export const nothing: Remembered = nothingRemembered();

export type Told = { changes: Change[]; said: string[]; went: [PlaceName, Detail | undefined][] };

/** A world without a browser: readings at once, changes noted and not made. Nothing in it is real. */
export function fakeWorld(over: Partial<World> = {}): { world: World; told: Told } {
  const told: Told = { changes: [], said: [], went: [] };
  let nth = 0;
  const world: World = {
    t: translator('en'),
    practice,
    sources,
    today: '2026-11-25',
    remembered: nothing,
    page: null,
    reading: (text, as) =>
      readLabel(text, lookup, { market: 'eu', readAs: world.remembered.readAs, ...readAsOf(as) }),
    close: async (names) => names.map((name) => lookup.close(name)),
    lookUp: async (typed) =>
      searchNames(typed).map((hit) => ({ ...hit, known: lookup.known(lookup.find(hit.name)) })),
    act: async (act) => {
      const now = world.now?.() ?? world.today;
      const { changes, say } = decide(act, { remembered: world.remembered, practice: world.practice, now });
      told.changes.push(...changes);
      if (say) world.say(world.t(say.key, say.values));
      return { ok: true, ...(say && { say }) };
    },
    change: (...changes) => world.act({ act: 'change', changes }),
    undo: async () => true,
    say: (words) => void told.said.push(words),
    go: (place, detail) => void told.went.push([place, detail]),
    save: () => undefined,
    newId: () => `id-${++nth}`,
    ...over,
  };
  return { world, told };
}
