import type { Routine, Step } from '../../../core/wash-day/routine.ts';
import { productById } from '../../../use/acts/matters/products.ts';
import type { World } from '../../world.ts';

/** What a step is called on a day: its kind, and its product where the routine has another step of that kind. */
export function stepWords({ t, remembered }: World, { steps }: Routine, step: Step): string {
  const kind = t(`routine.kind.${step.kind}`);
  const name = productById(remembered, step.product)?.name;
  const alone = steps.every((other) => other.id === step.id || other.kind !== step.kind);
  return alone || name === undefined ? kind : t('plan.step', { kind, name });
}
