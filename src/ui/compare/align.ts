import type { MoistureRole, Range } from '../../core/names/entry.ts';
import { isProtein, type Mention, type Reading } from '../../core/reading/reading.ts';

/** One name of the comparison: where each product has it (index into its mentions), or not at all. */
export type Aligned = { name: string; at: (number | undefined)[] };

const nameOf = ({ found, raw }: Mention) => (found.how === 'none' ? raw : found.name);
const keyOf = (mention: Mention) => nameOf(mention).toLocaleLowerCase('en');

/**
 * Names of all labels, aligned by what they were found as (unknown ones by their letters), ordered by the
 * best place any label gives them. A label that was not read has no names.
 */
export function align(readings: readonly (Reading | undefined)[]): Aligned[] {
  const rows = new Map<string, Aligned>();
  readings.forEach((reading, column) => {
    reading?.mentions.forEach((mention, index) => {
      const key = keyOf(mention);
      const row = rows.get(key) ?? { name: nameOf(mention), at: readings.map(() => undefined) };
      row.at[column] ??= index;
      rows.set(key, row);
    });
  });
  const best = ({ at }: Aligned) => Math.min(...at.filter((place) => place !== undefined));
  return [...rows.values()].toSorted((a, b) => best(a) - best(b));
}

/** Names on all labels, on some, and on one alone, by column. */
export function split(rows: readonly Aligned[], columns: number) {
  const on = ({ at }: Aligned) => at.filter((place) => place !== undefined).length;
  return {
    all: rows.filter((row) => on(row) === columns),
    some: rows.filter((row) => on(row) > 1 && on(row) < columns),
    only: Array.from({ length: columns }, (_, column) =>
      rows.filter((row) => on(row) === 1 && columns > 1 && row.at[column] !== undefined),
    ),
  };
}

export const proteinRows = ['large', 'small', 'free', 'unknown', 'bearing'] as const;
export type ProteinRow = (typeof proteinRows)[number];
export const moistureRows = ['humectant', 'emollient', 'occlusive'] as const satisfies MoistureRole[];

/** The names that answer a row. */
export const proteinsOf = (reading: Reading, row: ProteinRow): Mention[] =>
  reading.mentions.filter((mention) =>
    row === 'bearing'
      ? mention.protein?.kind === 'protein-bearing'
      : isProtein(mention) && mention.protein?.size === row,
  );
export const moistOf = (reading: Reading, role: MoistureRole): Mention[] =>
  reading.mentions.filter(({ moisture }) => moisture.includes(role));

/** What several names can come to together: bounds that surely hold, though the whole label may allow less. */
export const addedShares = (mentions: readonly Mention[]): Range => ({
  min: Math.min(
    100,
    mentions.reduce((sum, { share }) => sum + share.min, 0),
  ),
  max: Math.min(
    100,
    mentions.reduce((sum, { share }) => sum + share.max, 0),
  ),
});
