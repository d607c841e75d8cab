// Random wash days for property tests, brute force and the bench; seeded, so a failure can be met again.

import type { Candidate } from '../../src/core/plan/suggest.ts';
import { type ProductKind, productKinds, usualUse } from '../../src/core/product/product.ts';
import {
  butter,
  careful,
  day,
  fatty,
  glutamate,
  glycerin,
  type Hand,
  hand,
  laureth,
  middling,
  oatExtract,
  type Plan,
  pvp,
  silicone,
  silk,
  softener,
  sparing,
  thirsty,
  unknown,
  water,
  wheat,
} from './hand-read.ts';

const parts: Hand[] = [
  glycerin,
  fatty,
  softener,
  softener,
  butter,
  silk,
  wheat,
  oatExtract,
  silicone,
  pvp,
  unknown,
];
export const heads = [careful, sparing, middling, thirsty, undefined];

/** mulberry32 */
export function seeded(seed: number) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function randomDay(seed: number, steps: number, products: number) {
  const next = seeded(seed);
  const pick = <T>(from: readonly T[]) => from[Math.floor(next() * from.length)]!;
  const label = (kind: ProductKind) =>
    hand([
      water,
      ...(kind === 'cleanser' ? [pick([glutamate, laureth])] : []),
      ...parts.filter(() => next() < 0.3),
    ]);
  const kinds = productKinds.filter((kind) => kind !== 'refresh-spray');
  const plans: Plan[] = Array.from({ length: steps }, () => pick(kinds))
    .toSorted((a, b) => productKinds.indexOf(a) - productKinds.indexOf(b))
    .map((kind) => ({ kind, of: label(kind) }));
  const candidates: Candidate[] = Array.from({ length: products }, (_, index) => {
    const kind = index < steps ? plans[index]!.kind : pick(kinds);
    return { product: `c${index}`, kind, use: usualUse[kind], reading: label(kind), owned: next() < 0.7 };
  });
  return { ...day(plans, pick(heads)), candidates };
}
