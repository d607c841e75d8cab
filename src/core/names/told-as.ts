import type { MoistureRole } from './entry.ts';
import type { Found, Known } from './lookup.ts';

/** What a person may say of a name that no dictionary knows. */
export const toldKinds = ['protein', 'humectant', 'emollient', 'occlusive', 'neither'] as const;
export type ToldKind = (typeof toldKinds)[number];
export type ToldAs = { as: ToldKind };

const roles: Partial<Record<ToldKind, MoistureRole>> = {
  humectant: 'humectant',
  emollient: 'emollient',
  occlusive: 'occlusive',
};

/** Tells a found name from every other. One the user tells otherwise is another. */
export const foundKey = (found: Extract<Found, { name: string }>): string =>
  found.how === 'told' ? `${found.as} ${found.name}` : found.name;

/** What follows from it: a protein of no known size, or one thing that moisture does. */
export function knownAs(as: ToldKind): Known {
  const role = roles[as];
  return {
    ...(as === 'protein' && { protein: { kind: 'hydrolyzed', size: 'unknown', sources: [] } }),
    moisture: role ? [role] : [],
    roles: [],
    allergens: [],
    functions: [],
    sources: [],
  };
}
