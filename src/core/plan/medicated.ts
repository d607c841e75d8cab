import type { Reading } from '../reading/reading.ts';
import type { Candidate } from './suggest.ts';

/** What treats a sick scalp is no cure for build-up or limp hair. */
export const isMedicated = (reading: Reading | undefined): boolean =>
  reading?.mentions.some(({ roles }) => roles.includes('medicated')) ?? false;

/** Products that may be proposed: a medicated one stays where the user put it and is put nowhere else. */
export const proposable = (candidates: readonly Candidate[], placed: ReadonlySet<string | undefined>) =>
  candidates.filter(({ product, reading }) => placed.has(product) || !isMedicated(reading));
