import { entries, findingFacts, limits, patterns } from '../../../dictionary/index.ts';
import { practice } from '../../../dictionary/practice.ts';
import { createReadings } from '../../../src/use/reading/readings.ts';
import { written } from './written.ts';

export { practice };

/** Labels read by the project's own dictionary, with what the build wrote ahead of it. */
export const readingsOfDictionary = () =>
  createReadings({ entries, patterns, limits, findingFacts, practice }, written);
