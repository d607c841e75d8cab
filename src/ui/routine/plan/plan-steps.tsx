import type { Step } from '../../../core/wash-day/routine.ts';
import type { World } from '../../world.ts';
import { cadenceWords } from '../steps/step-editor.tsx';

/** The steps of a plan that is not taken yet, with how often each comes where it is not every wash. */
export function PlanSteps(props: {
  world: World;
  steps: readonly Step[];
  nameOf: (product: string | undefined) => string;
}) {
  const { t } = props.world;
  return (
    <ol class="plain-list stack">
      {props.steps.map((step) => (
        <li key={step.id}>
          {t('plan.step', { kind: t(`routine.kind.${step.kind}`), name: props.nameOf(step.product) })}
          {step.cadence.every !== 'wash' && <span class="hint"> {cadenceWords(t, step.cadence)}</span>}
        </li>
      ))}
    </ol>
  );
}
