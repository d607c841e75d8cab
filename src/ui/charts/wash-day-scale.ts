import type { GlyphName } from '../../contract/paint-order.ts';
import type { BringStep, Brought, Together } from '../../core/amounts/brings.ts';
import { steps } from '../../core/amounts/brings.ts';

/** Units across: a narrow picture is drawn near its size in a panel of 320 pixels, so that its words stay legible. */
export const pictureWide = (wide: boolean) => (wide ? 760 : 288);

export const sides = ['protein', 'moisture'] as const;
export type Side = (typeof sides)[number];

/** Boxes from the middle outward that a step fills: none, one, two, three. */
export const filledBoxes = (step: BringStep): number => steps.indexOf(step);
export const mostSteps = steps.length - 1;

export const glyphsOfSide = {
  protein: { free: 'free', small: 'small', large: 'large', unknown: 'bearing' },
  moisture: { humectant: 'draws', emollient: 'softens', occlusive: 'seals' },
} as const satisfies Record<Side, Record<string, GlyphName>>;

/** The parts of a side that are worth a word, the larger first. */
export function partsOfSide(brings: Together, side: Side): GlyphName[] {
  const parts: [GlyphName, Brought][] =
    side === 'protein'
      ? Object.entries(brings.protein.bySize).map(([key, each]) => [
          glyphsOfSide.protein[key as keyof typeof glyphsOfSide.protein],
          each,
        ])
      : Object.entries(brings.moisture.byRole).map(([key, each]) => [
          glyphsOfSide.moisture[key as keyof typeof glyphsOfSide.moisture],
          each,
        ]);
  return parts
    .filter(([, { step }]) => step !== 'none')
    .toSorted(([, a], [, b]) => b.mg.likely - a.mg.likely)
    .map(([glyph]) => glyph);
}
