import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';

export type AllergenAnswer = { said: string[]; maybe: string[] };

const lookup = createLookup(entries, patterns, limits);

/** Which families does a printed name bring up, surely or possibly? Read where names stand: in a list. */
export function askAllergens(printedName: string): AllergenAnswer {
  const mentions = readLabel(`Aqua, ${printedName}`, lookup).mentions.slice(1);
  const said = new Set<string>(mentions.flatMap(({ allergens }) => allergens));
  const maybe = new Set<string>(mentions.flatMap(({ mayBe }) => mayBe));
  return { said: [...said], maybe: [...maybe].filter((family) => !said.has(family)) };
}
