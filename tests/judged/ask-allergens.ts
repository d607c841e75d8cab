import { notBuilt } from './not-built.ts';

export type AllergenAnswer = { said: string[]; maybe: string[] };

/** Which families does a printed name bring up, surely or possibly? */
export function askAllergens(_printedName: string): AllergenAnswer {
  return notBuilt('askAllergens');
}
