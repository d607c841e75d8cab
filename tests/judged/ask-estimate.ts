import { shareOf } from '../../src/core/reading/reading.ts';
import { readingOf } from './label-reading.ts';
import type { Row } from './rows.ts';

export type EstimateAnswer = { low: number; high: number };

/** How much of an ingredient is likely in it, in percent? */
export function askEstimate(label: Row, ingredient: string): EstimateAnswer {
  const { mentions } = readingOf(label);
  const wanted = ingredient.toLowerCase();
  const mention =
    mentions.find(({ raw }) => raw.toLowerCase() === wanted) ??
    mentions.find(({ found }) => found.how !== 'none' && found.name.toLowerCase() === wanted) ??
    mentions.find(({ raw }) => raw.toLowerCase().includes(wanted));
  if (!mention) throw new Error(`${ingredient} is not on label ${label.id}`);
  const { min, max } = shareOf(mention);
  return { low: min, high: max };
}
