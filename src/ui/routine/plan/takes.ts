import { type BringStep, stepOfDose } from '../../../core/amounts/brings.ts';
import { hairNumbers } from '../../../core/judge/hair-numbers.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { rememberedAllowance } from '../../../use/in-use.ts';
import type { World } from '../../world.ts';

/**
 * Most protein of a wash day that the hair of a routine takes, where its tolerance is known: the dose by which the
 * rules answer, as a step.
 */
export function takesOf(
  world: World,
  { head: id, washEvery }: Pick<Routine, 'head' | 'washEvery'>,
): BringStep | undefined {
  const { practice } = world;
  const head = world.remembered.heads.find((each) => each.id === id);
  const allowance = rememberedAllowance(world, head);
  if (!allowance?.level) return undefined;
  const { numbers } = hairNumbers({ head, allowance, washEvery, practice });
  return stepOfDose(Math.min(...numbers.map(({ protein }) => protein.suits)), practice.washDay);
}
