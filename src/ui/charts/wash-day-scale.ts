import type { GlyphName } from '../../contract/paint-order.ts';
import type { Range } from '../../core/names/entry.ts';
import type { StepStays } from '../../core/wash-day/retained.ts';

export const ticks = [1, 10, 100];
/** Milligrams to a share of the half: a logarithm that starts at nothing. */
export const reach = (mg: number) => Math.min(1, Math.log10(1 + mg) / Math.log10(1 + 400));
export const bar = 7;

/** Proteins by size outward to one side, moisture by role to the other: glyph, pattern and side say it, hue repeats it. */
export const lanes = {
  protein: [
    { key: 'free', glyph: 'free' },
    { key: 'small', glyph: 'small' },
    { key: 'large', glyph: 'large' },
    { key: 'bearing', glyph: 'bearing' },
  ],
  moisture: [
    { key: 'humectant', glyph: 'draws' },
    { key: 'emollient', glyph: 'softens' },
    { key: 'occlusive', glyph: 'seals' },
  ],
} as const satisfies Record<string, { key: string; glyph: GlyphName }[]>;

export const amountOf = (stays: StepStays, key: string): Range => {
  const { protein, moisture, bearing } = stays;
  const all: Record<string, Range> = { ...protein, ...moisture, bearing };
  // A protein of unknown size is drawn as what may bear: hollow.
  if (key === 'bearing')
    return { min: bearing.min + protein.unknown.min, max: bearing.max + protein.unknown.max };
  return all[key]!;
};
