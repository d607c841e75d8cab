import type { ProteinKind } from '../../src/core/names/entry.ts';
import { type ExpectedProtein, expected } from '../store/expected.ts';

/** Kinds that are shown with their reason and never counted. */
const uncounted: ProteinKind[] = ['protein-bearing', 'protein-surfactant'];

/** How many protein mentions the toolbar badge shows for these. */
export const counted = (proteins: ExpectedProtein[]): number =>
  proteins.filter(([, kind]) => !uncounted.includes(kind)).length;

/** What the badge says on the page of a good. */
export const badgeFor = (id: string): string => String(counted(expected[id]!));

/** Letters that get a protein line, sorted; a surfactant built on protein has its card, but no line. */
export const underlined = (proteins: ExpectedProtein[]): string[] =>
  proteins.flatMap(([printed, kind]) => (kind === 'protein-surfactant' ? [] : [printed])).sort();
