import type { Reading } from '../../core/reading/reading.ts';
import type { Compared } from '../../use/acts/matters/pins.ts';
import { judgeKept, judgeMet } from '../../use/judge/judge-met.ts';
import type { Check } from '../../use/judge/judge-product.ts';
import type { World } from '../world.ts';

/** One product of a comparison, as it is known, read and held against the head and the routine in use. */
export type ComparedColumn = {
  product: Compared;
  reading: Reading | undefined;
  notForHair?: boolean;
  checks: Check[];
};

export function columnOf(world: World, compared: Compared): ComparedColumn {
  const { pin } = compared;
  const kept = 'product' in pin && world.remembered.products.find(({ id }) => id === pin.product);
  const held = kept ? judgeKept(world, kept) : 'met' in pin ? judgeMet(world, pin.met) : undefined;
  if (!held) return { product: compared, reading: undefined, checks: [] };
  const { reading, judged, notForHair, checks } = held;
  const { kind, use } = judged;
  return {
    product: { ...compared, ...(kind && { kind }), ...(use && { use }) },
    reading,
    notForHair,
    checks,
  };
}
