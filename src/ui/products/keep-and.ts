import { findSame } from '../../core/product/same-product.ts';
import type { Met } from '../../use/knowing.ts';
import type { World } from '../world.ts';

/** Keeps what was met or typed; the id it is kept under, or undefined where it could not be kept. */
export async function keepAnd(world: World, met: Met, owned?: boolean): Promise<string | undefined> {
  const id = findSame(world.remembered.products, met)?.id ?? world.newId();
  const { ok } = await world.act({ act: 'keep', met, id, ...(owned !== undefined && { owned }) });
  return ok ? id : undefined;
}
