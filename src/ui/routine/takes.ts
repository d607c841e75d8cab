import type { BringStep } from '../../core/amounts/brings.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { allowanceFor } from '../../use/in-use.ts';
import type { World } from '../world.ts';

/** Most protein of a wash day that the hair of a routine takes, where its tolerance is known. */
export function takesOf(world: World, routine: Pick<Routine, 'head'>): BringStep | undefined {
  const head = world.remembered.heads.find(({ id }) => id === routine.head);
  const level = allowanceFor(world, head)?.level;
  return level && world.practice.washDay.brings.takes[level];
}
