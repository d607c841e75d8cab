import type { Decided } from '../use/knowing.ts';
import type { World } from './world.ts';

/** Does what a form decided; true when it stands. */
export const carryOut = async (world: Pick<World, 'act'>, decided: Decided): Promise<boolean> =>
  (await world.act({ act: 'change', ...decided })).ok;
